//! People, picked from a list. Nobody is authenticated until people have keys.

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
}
