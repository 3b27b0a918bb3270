//! One test binary: a module for each promise.

mod ask;
mod certificate;
mod check;
mod check_values;
mod inspection;
mod serve;
