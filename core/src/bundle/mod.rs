//! Repairs on their way from one device to another, as one file.
//!
//! A bundle is a list of frames: a head, then entries and photos, then a signature. Every frame goes into one running
//! hash, and the device that made the bundle signs the last. Nothing in it is packed, counted in advance or named by a
//! path, so no bundle can grow, allocate or reach beyond what it is.
//!
//! - [`frame`]: the bytes of a frame and the running hash · [`write`]: making one · [`read`]: checking one.
//!
//! Whole chains travel. Taking in the same entries twice, or bundles in another order, gives the same journal.

pub mod frame;
pub mod read;
pub mod write;

use serde::{Deserialize, Serialize};

use crate::journal::{Entry, Hash};

pub use read::{Reader, Refused};
pub use write::Writer;

/// The form that is written today.
pub const FORM: u32 = 1;

/// Who made a bundle, and when.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Head {
    pub v: u32,
    pub device: String,
    /// The public key of the device: a point of P-256 (SEC 1, compressed) in hexadecimal digits.
    pub key: String,
    /// When it was made: Unix time in ms, by the device's wall clock.
    pub at_ms: i64,
}

/// What a bundle carries.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Item {
    /// Each comes after those that it follows.
    Entry(Entry),
    /// The original bytes of a photo; its name is their hash.
    Photo(Vec<u8>),
}

/// An entry without its body, which stands behind it as it is stored.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct EntryHead {
    repair: String,
    device: String,
    seq: u64,
    prev: Vec<Hash>,
    hash: Hash,
}

#[cfg(test)]
mod tests;
