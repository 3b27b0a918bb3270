//! One test binary: a module for each promise.
