//! The bytes of a frame: a letter for its kind, its length in eight bytes (the least significant first), its content.

use sha2::{Digest, Sha256};

use crate::journal::Hash;

/// Every bundle begins with these bytes, whatever its form.
pub const MAGIC: &[u8; 16] = b"mendline-bundle\n";

/// The letter and the length.
pub const PREFIX: usize = 9;

/// What a frame holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    Head,
    Entry,
    Photo,
    Signature,
}

impl Kind {
    pub const fn letter(self) -> u8 {
        match self {
            Self::Head => b'H',
            Self::Entry => b'E',
            Self::Photo => b'P',
            Self::Signature => b'S',
        }
    }

    pub const fn of(letter: u8) -> Option<Self> {
        match letter {
            b'H' => Some(Self::Head),
            b'E' => Some(Self::Entry),
            b'P' => Some(Self::Photo),
            b'S' => Some(Self::Signature),
            _ => None,
        }
    }

    /// Returns the most bytes that a frame of this kind may hold.
    pub const fn most(self) -> u64 {
        match self {
            Self::Head | Self::Signature => 4 << 10,
            Self::Entry => 8 << 20,
            Self::Photo => 64 << 20,
        }
    }
}

/// The hash over all frames so far, in their order.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Running(Hash);

impl Running {
    pub fn start() -> Self {
        Self(Hash::of(MAGIC))
    }

    /// Takes a frame in: SHA-256 over the hash before it, its letter, its length and its content.
    pub fn add(&mut self, kind: Kind, content: &[u8]) {
        let hasher = Sha256::new()
            .chain_update(self.0.as_bytes())
            .chain_update([kind.letter()])
            .chain_update((content.len() as u64).to_le_bytes())
            .chain_update(content);
        self.0 = Hash::from_bytes(hasher.finalize().into());
    }

    pub const fn hash(self) -> Hash {
        self.0
    }

    /// Returns what the device signs: a tag, so that no signature can be taken for one of another kind, and the hash.
    pub fn message(self) -> Vec<u8> {
        [b"mendline/bundle/1", &self.0.as_bytes()[..]].concat()
    }
}
