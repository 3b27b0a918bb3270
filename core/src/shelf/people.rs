//! People, picked from a list. Who has a key says by its PIN that it is really them.

use serde::{Deserialize, Serialize};

/// What somebody may do on the job.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Role {
    Technician,
    Foreman,
    /// Reads for the owner; changes nothing.
    Reader,
}

/// One person of the crew, the office or the owner.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Person {
    pub id: String,
    pub name: String,
    pub role: Role,
    #[serde(default)]
    pub organisation: String,
    /// The keys that the person had, the latest last. What is secret of a key stays on its device.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub keys: Vec<PersonKey>,
}

/// The public side of a key.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PersonKey {
    /// The SHA-256 of the certificate, 64 hexadecimal digits.
    pub fingerprint: String,
    /// The certificate and those that vouch for it: DER in base64.
    pub certificates: Vec<String>,
    pub made_ms: i64,
    /// The device that holds the key.
    pub device: String,
    #[serde(default)]
    pub revoked: Option<Revoked>,
}

/// A key that is no longer good.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Revoked {
    /// Signatures from this instant on don't count.
    pub from_ms: i64,
    pub reason: String,
}

impl Person {
    /// Returns the key that the person signs with: the latest, unless it is revoked.
    pub fn key(&self) -> Option<&PersonKey> {
        self.keys.last().filter(|key| key.revoked.is_none())
    }
}
