//! The link: a hash over the exact bytes of an entry and over everything that came before it.

use std::fmt;
use std::str::FromStr;

use serde::{Deserialize, Deserializer, Serialize, Serializer};
use sha2::{Digest, Sha256};

/// Names the hashed form. Another form of entry gets another tag, so no bytes can be read as both.
const TAG: &[u8] = b"mendline/entry/1";

/// A SHA-256 hash, shown and serialized as 64 lower-case hexadecimal digits.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Hash([u8; 32]);

/// The text is not 64 hexadecimal digits.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
#[error("a hash is written as 64 hexadecimal digits")]
pub struct NotAHash;

impl Hash {
    /// Returns the SHA-256 of `bytes` (FIPS 180-4).
    pub fn of(bytes: &[u8]) -> Self {
        Self(Sha256::digest(bytes).into())
    }

    /// Returns the hash with these 32 bytes.
    pub const fn from_bytes(bytes: [u8; 32]) -> Self {
        Self(bytes)
    }

    /// Returns the 32 bytes.
    pub const fn as_bytes(&self) -> &[u8; 32] {
        &self.0
    }
}

/// Returns the link of an entry: SHA-256 over the tag `mendline/entry/1`, `repair`, `device`, `seq`, the number of
/// `prev`, each of them, and `body`. Texts and the body are framed by their length in bytes; every number is eight
/// bytes, the least significant first. `prev` is hashed in the order given.
///
/// Source: FIPS 180-4 for SHA-256; the framing is Mendline's own and pinned by a test.
pub fn link(repair: &str, device: &str, seq: u64, prev: &[Hash], body: &[u8]) -> Hash {
    let mut hasher = Sha256::new_with_prefix(TAG);
    frame(&mut hasher, repair.as_bytes());
    frame(&mut hasher, device.as_bytes());
    hasher.update(seq.to_le_bytes());
    hasher.update((prev.len() as u64).to_le_bytes());
    for hash in prev {
        hasher.update(hash.0);
    }
    frame(&mut hasher, body);
    Hash(hasher.finalize().into())
}

fn frame(hasher: &mut Sha256, bytes: &[u8]) {
    hasher.update((bytes.len() as u64).to_le_bytes());
    hasher.update(bytes);
}

impl fmt::Display for Hash {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.iter().try_for_each(|byte| write!(out, "{byte:02x}"))
    }
}

impl fmt::Debug for Hash {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "Hash({self})")
    }
}

impl FromStr for Hash {
    type Err = NotAHash;

    fn from_str(text: &str) -> Result<Self, NotAHash> {
        let digits = text.as_bytes();
        if digits.len() != 64 {
            return Err(NotAHash);
        }
        let mut bytes = [0; 32];
        for (byte, pair) in bytes.iter_mut().zip(digits.chunks_exact(2)) {
            *byte = (nibble(pair[0])? << 4) | nibble(pair[1])?;
        }
        Ok(Self(bytes))
    }
}

fn nibble(digit: u8) -> Result<u8, NotAHash> {
    char::from(digit).to_digit(16).map(|value| value as u8).ok_or(NotAHash)
}

impl Serialize for Hash {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for Hash {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        String::deserialize(deserializer)?.parse().map_err(serde::de::Error::custom)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Vectors: computed outside Rust, with Python's `hashlib` and `struct` over the framing described at `link`.
    #[test]
    fn links_are_pinned_to_exact_hex() {
        let first = link("QM-26-014", "phone-a", 1, &[], br#"{"v":1}"#);
        assert_eq!(first.to_string(), "914fba18bec4004b87b6d1ff4caa74b94238ecb1833344176bb092ec6c03d8dc");
        let second = link("QM-26-014", "phone-a", 2, &[first], br#"{"v":1,"note":"go"}"#);
        assert_eq!(second.to_string(), "9dc4dfe3b204268c975467910171dbe6514258b8579a54caa5a20fcd712f263d");
    }

    #[test]
    fn bytes_moved_from_one_field_to_the_next_give_another_link() {
        assert_ne!(link("ab", "c", 1, &[], b""), link("a", "bc", 1, &[], b""));
        assert_ne!(link("a", "b", 1, &[], &[0; 32]), link("a", "b", 1, &[Hash([0; 32])], b""));
    }

    #[test]
    fn a_hash_is_serialized_as_hex_and_read_back() {
        let hash = Hash::of(b"abc");
        // Source: FIPS 180-4, the example for the message "abc".
        let hex = "\"ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad\"";
        assert_eq!(serde_json::to_string(&hash).unwrap(), hex);
        assert_eq!(serde_json::from_str::<Hash>(hex).unwrap(), hash);
    }

    #[test]
    fn text_that_is_not_64_hex_digits_is_refused() {
        for text in ["", "ab", &"g".repeat(64), &"a".repeat(63), &"é".repeat(32)] {
            assert_eq!(text.parse::<Hash>(), Err(NotAHash), "{text}");
        }
    }
}
