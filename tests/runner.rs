//! One test binary: a module for each promise.

mod ask;
mod serve;
