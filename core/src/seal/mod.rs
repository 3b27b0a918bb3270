//! Keys of people, and the signatures that they put under a PDF.
//!
//! - [`secret`]: PINs and random numbers · [`key`]: a P-256 key, locked by a PIN · [`x509`]: its certificate.
//! - [`p12`]: keys that a company or a trust service gave out.
//! - [`cms`]: the signature itself, as bytes · [`sign`]: put under a PDF · [`verify`]: checked again.
//!
//! Pure: bytes in, bytes out. Where keys are kept and who may use them is settled at the door.
//!
//! A signature proves that nothing was changed since this key signed, and no more. When it was made is what the signer's
//! device said; whose key it is, the certificate says, and a reader believes it who trusts the certificate.

pub mod cms;
pub mod key;
pub mod p12;
pub mod secret;
pub mod sign;
pub mod verify;
pub mod x509;

pub use key::PrivateKey;
pub use secret::{Secret, Seed};
pub use sign::{Block, Signer, sign};
pub use x509::Certificate;

/// Why something about a key or a signature could not be done.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum SealError {
    /// The PIN does not open the key, or the password not the file.
    #[error("This PIN or password is not right.")]
    WrongSecret,
    #[error("A PIN needs {least} characters or more, not all the same.", least = secret::LEAST)]
    WeakPin,
    #[error("The device gave no random numbers. No key was made. Start the device again.")]
    NoRandom,
    /// A key, a certificate or a key file that can't be read or used.
    #[error("{what}")]
    Unusable { what: String },
    /// A PDF that can't be signed.
    #[error("The PDF can't be signed: {what}.")]
    NotSignable { what: String },
}

impl SealError {
    pub(crate) fn unusable(what: impl Into<String>) -> Self {
        Self::Unusable { what: what.into() }
    }
}
