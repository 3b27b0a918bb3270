//! One test binary: a module for each promise.

mod ask;
mod certificate;
mod check;
mod check_values;
mod door;
mod inspection;
mod kills;
mod record;
mod rules_page;
mod seal;
mod serve;
mod tidy;
