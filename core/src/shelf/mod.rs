//! What stands on the shelf: contract, data sheets, method statements, people and inspections.
//!
//! No process number is built into the core. Each comes from one of these documents, with its source beside it.

pub mod contract;
pub mod examples;
pub mod method;
pub mod people;
pub mod practice;
pub mod sheets;
pub mod state;

use serde::{Deserialize, Serialize};

pub use contract::Contract;
pub use method::Method;
pub use people::{Person, Role};
pub use sheets::{Instrument, PackerSheet, PatchSheet, ResinSheet};
pub use state::{Document, DocumentKind, FollowedCode, ShelfEvent, ShelfRecord, ShelfState, TakenNumber};

/// A value and where it was read: document, page, clause or label.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Sourced<T> {
    pub value: T,
    pub source: String,
}

/// Everything on the shelf, each list in the order to show it.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct Shelf {
    pub people: Vec<Person>,
    pub contracts: Vec<Contract>,
    pub resins: Vec<ResinSheet>,
    pub patches: Vec<PatchSheet>,
    pub packers: Vec<PackerSheet>,
    pub instruments: Vec<Instrument>,
    pub methods: Vec<Method>,
}

/// The documents that a plan is made from, wherever they are kept.
#[derive(Clone, Copy, Debug, Default)]
pub struct ShelfView<'a> {
    pub contracts: &'a [Contract],
    pub resins: &'a [ResinSheet],
    pub patches: &'a [PatchSheet],
    pub packers: &'a [PackerSheet],
    pub instruments: &'a [Instrument],
    pub methods: &'a [Method],
}

impl Shelf {
    /// Returns the documents without copying them.
    pub fn view(&self) -> ShelfView<'_> {
        ShelfView {
            contracts: &self.contracts,
            resins: &self.resins,
            patches: &self.patches,
            packers: &self.packers,
            instruments: &self.instruments,
            methods: &self.methods,
        }
    }
}
