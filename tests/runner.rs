//! One test binary: a module for each promise.

mod ask;
mod backup;
mod bad_disks;
mod bundles;
mod certificate;
mod check;
mod check_values;
mod clocks;
mod door;
mod handover;
mod inspection;
mod kills;
mod paper;
mod practice;
mod record;
mod roles;
mod rules_page;
mod seal;
mod serve;
mod tampered_file;
mod tidy;
mod verify;
