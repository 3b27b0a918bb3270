//! A disk in memory under SQLite, for tests of power cuts and failing media.
//!
//! - [`medium`]: what is on the disk, what is only in its cache, and what a power cut leaves of it.
//! - [`vfs`]: the same as SQLite's way to files. The only code of the project that may use `unsafe`.
//! - [`chance`]: the same accidents in every run.
//!
//! SQLite is taken as it is built into the journal; its file layer is replaced, nothing else.
//! Source: <https://www.sqlite.org/vfs.html>, <https://www.sqlite.org/atomiccommit.html> (what SQLite assumes of a disk).

#![allow(clippy::expect_used)]

pub mod chance;
pub mod medium;
pub mod vfs;

pub use chance::Chance;
pub use medium::{Medium, Refusal};
pub use vfs::Disk;
