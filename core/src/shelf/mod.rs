//! What stands on the shelf: contract, data sheets, method statements, people and inspections.
//!
//! No process number is built into the core. Each comes from one of these documents, with its source beside it.

pub mod contract;
pub mod method;
pub mod people;
pub mod sheets;

use serde::{Deserialize, Serialize};

pub use contract::Contract;
pub use method::Method;
pub use people::{Person, Role};
pub use sheets::{Instrument, PackerSheet, PatchSheet, ResinSheet};

/// A value and where it was read: document, page, clause or label.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Sourced<T> {
    pub value: T,
    pub source: String,
}
