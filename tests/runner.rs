//! One test binary: a module for each promise.

mod ask;
mod inspection;
mod serve;
