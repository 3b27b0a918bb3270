//! What must not be shown, logged or kept: PINs, passwords, and the random bytes that keys are made of.

use std::fmt;

use hmac::{Hmac, KeyInit, Mac};
use serde::{Deserialize, Serialize};
use sha2::Sha256;
use zeroize::Zeroizing;

use super::SealError;

/// The fewest characters of a PIN.
pub const LEAST: usize = 6;

/// A PIN or a password. It is wiped from memory when it is dropped, and never shown by `Debug`.
#[derive(Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(from = "String", into = "String")]
pub struct Secret(Zeroizing<String>);

impl From<String> for Secret {
    fn from(text: String) -> Self {
        Self(Zeroizing::new(text))
    }
}

impl From<Secret> for String {
    fn from(mut secret: Secret) -> Self {
        std::mem::take(&mut *secret.0)
    }
}

impl Secret {
    pub fn new(text: &str) -> Self {
        Self(Zeroizing::new(text.to_owned()))
    }

    pub fn as_str(&self) -> &str {
        &self.0
    }

    /// Says whether this will do for a new PIN.
    ///
    /// Errors: `WeakPin` if it is shorter than [`LEAST`] characters, or one character again and again.
    pub fn strong_enough(&self) -> Result<(), SealError> {
        let first = self.0.chars().next();
        let varied = self.0.chars().any(|letter| Some(letter) != first);
        if self.0.chars().count() >= LEAST && varied { Ok(()) } else { Err(SealError::WeakPin) }
    }
}

impl fmt::Debug for Secret {
    fn fmt(&self, formatter: &mut fmt::Formatter) -> fmt::Result {
        formatter.write_str("Secret(…)")
    }
}

/// Fresh random bytes of one request, from which everything secret of it is derived.
///
/// The core has no random source of its own. A seed is used for one request only.
#[derive(Clone)]
pub struct Seed(Zeroizing<[u8; 32]>);

impl Seed {
    /// Errors: `NoRandom` if all bytes are nought, as where an edge forgot to ask the system.
    pub fn new(bytes: [u8; 32]) -> Result<Self, SealError> {
        if bytes == [0; 32] { Err(SealError::NoRandom) } else { Ok(Self(Zeroizing::new(bytes))) }
    }

    /// Returns 32 bytes for one purpose: HMAC-SHA-256 of its name under the seed (as HKDF-Expand, RFC 5869, 2.3).
    pub fn derive(&self, purpose: &str) -> Zeroizing<[u8; 32]> {
        // A key of any length is accepted by HMAC; a refusal would be a bug of the library.
        let Ok(mut mac) = Hmac::<Sha256>::new_from_slice(&*self.0) else { return Zeroizing::new([0; 32]) };
        mac.update(purpose.as_bytes());
        mac.update(&[1]);
        Zeroizing::new(mac.finalize().into_bytes().into())
    }

    /// Returns 16 bytes for one purpose.
    pub fn derive_16(&self, purpose: &str) -> [u8; 16] {
        let whole = self.derive(purpose);
        std::array::from_fn(|at| whole[at])
    }
}

impl fmt::Debug for Seed {
    fn fmt(&self, formatter: &mut fmt::Formatter) -> fmt::Result {
        formatter.write_str("Seed(…)")
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_secret_is_never_shown() {
        let secret = Secret::new("271828");
        assert!(!format!("{secret:?}").contains("271828"));
        assert!(!format!("{:?}", Seed::new([7; 32]).unwrap()).contains('7'));
    }

    #[test]
    fn a_short_or_even_pin_is_refused() {
        for weak in ["", "12345", "000000", "aaaaaaaa"] {
            assert_eq!(Secret::new(weak).strong_enough(), Err(SealError::WeakPin), "{weak}");
        }
        assert_eq!(Secret::new("271828").strong_enough(), Ok(()));
    }

    #[test]
    fn no_random_numbers_is_no_seed() {
        assert!(matches!(Seed::new([0; 32]), Err(SealError::NoRandom)));
    }

    /// RFC 5869, A.1 (SHA-256): with the pseudorandom key and info of the vector, the first block of HKDF-Expand.
    #[test]
    fn a_purpose_is_derived_as_the_first_block_of_hkdf() {
        let prk = unhex("077709362c2e32df0ddc3f0dc47bba6390b6c73bb50f9c3122ec844ad7c2b3e5");
        let info = unhex("f0f1f2f3f4f5f6f7f8f9");
        let mut mac = Hmac::<Sha256>::new_from_slice(&prk).unwrap();
        mac.update(&info);
        mac.update(&[1]);
        let okm = unhex("3cb25f25faacd57a90434f64d0362f2a2d2d0a90cf1a5a4c5db02d56ecc4c5bf");
        assert_eq!(mac.finalize().into_bytes().to_vec(), okm);
        let seed = Seed::new(prk.try_into().unwrap()).unwrap();
        let mut same = Hmac::<Sha256>::new_from_slice(&*seed.0).unwrap();
        same.update(b"key\x01");
        assert_eq!(seed.derive("key").to_vec(), same.finalize().into_bytes().to_vec());
        assert_ne!(seed.derive("key"), seed.derive("salt"));
    }

    fn unhex(digits: &str) -> Vec<u8> {
        (0..digits.len()).step_by(2).map(|at| u8::from_str_radix(&digits[at..at + 2], 16).unwrap()).collect()
    }
}
