//! The command line of Mendline.
#![allow(clippy::disallowed_methods)]

fn main() {}
