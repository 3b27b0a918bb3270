//! The shelf as its entries tell it: every document by its id, the last kept one counts.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use super::{Contract, Instrument, Method, PackerSheet, PatchSheet, Person, ResinSheet, Shelf};
use crate::facts::{Facts, Moment};
use crate::inspection::InspectionFile;

/// One entry of the shelf's journal.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ShelfRecord {
    pub facts: Facts,
    pub events: Vec<ShelfEvent>,
}

/// What happened to the shelf.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(tag = "event", rename_all = "snake_case", deny_unknown_fields)]
pub enum ShelfEvent {
    Kept {
        document: Box<Document>,
    },
    TakenOff {
        kind: DocumentKind,
        id: String,
    },
    InspectionImported {
        name: String,
        sha256: String,
        file: Box<InspectionFile>,
    },
    /// A repair took this certificate number; it is never used again.
    NumberTaken {
        number: String,
        repair: String,
    },
    /// The foreman let a certificate no longer count; its number stays taken.
    NumberVoided {
        number: String,
        repair: String,
        reason: String,
    },
    /// A bundle of this device was taken in for the first time; from then on only this key speaks for it.
    DeviceMet {
        device: String,
        key: String,
    },
    /// A backup of the folder was saved.
    BackedUp {
        name: String,
        bytes: u64,
    },
    /// The code of a hold on another phone was photographed `age_ms` ago: its clock is shown here.
    HoldFollowed {
        repair: String,
        code: String,
        age_ms: i64,
    },
    /// The clock of that hold is no longer shown here.
    HoldUnfollowed {
        repair: String,
    },
}

/// A document of the shelf.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(tag = "kind", content = "sheet", rename_all = "snake_case")]
pub enum Document {
    Person(Person),
    Contract(Box<Contract>),
    Resin(Box<ResinSheet>),
    Patch(Box<PatchSheet>),
    Packer(Box<PackerSheet>),
    Instrument(Instrument),
    Method(Method),
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum DocumentKind {
    Person,
    Contract,
    Resin,
    Patch,
    Packer,
    Instrument,
    Method,
    Inspection,
}

/// An imported inspection file.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Imported {
    pub name: String,
    pub sha256: String,
    pub at_ms: i64,
    pub file: InspectionFile,
}

/// The documents, and what else the shelf's journal tells.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct ShelfState {
    pub documents: Shelf,
    /// By the SHA-256 of the file.
    pub inspections: BTreeMap<String, Imported>,
    /// Certificate numbers that were taken, in their order.
    pub numbers: Vec<TakenNumber>,
    /// The keys of other devices, by the device.
    pub devices: BTreeMap<String, String>,
    /// When the last backup was saved.
    pub backed_up_ms: Option<i64>,
    /// The holds of other phones that are followed by their codes, by the repair.
    pub followed: BTreeMap<String, FollowedCode>,
}

/// The code of a hold on another phone.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FollowedCode {
    /// All that it says.
    pub code: String,
    /// What the clocks here showed when the picture was taken.
    pub at: Moment,
    /// How old the picture was when it was brought.
    pub age_ms: i64,
}

/// A certificate number that a repair took.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TakenNumber {
    pub number: String,
    /// The id of the repair.
    pub repair: String,
    pub at_ms: i64,
    pub voided: Option<VoidedNumber>,
}

/// Why a number does not count.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct VoidedNumber {
    pub reason: String,
    pub person: Option<String>,
    pub at_ms: i64,
}

/// A document that is found by its id.
trait HasId {
    fn id(&self) -> &str;
}

macro_rules! has_id {
    ($($name:ident),+) => { $(impl HasId for $name { fn id(&self) -> &str { &self.id } })+ };
}

has_id!(Person, Contract, ResinSheet, PatchSheet, PackerSheet, Instrument, Method);

impl ShelfState {
    /// Returns the shelf that a list of records tells of, oldest first.
    pub fn replay(records: &[ShelfRecord]) -> Self {
        records.iter().fold(Self::default(), |shelf, record| {
            record.events.iter().fold(shelf, |shelf, event| shelf.apply(event, &record.facts))
        })
    }

    /// Returns the shelf after one event.
    pub fn apply(mut self, event: &ShelfEvent, facts: &Facts) -> Self {
        match event {
            ShelfEvent::Kept { document } => self.keep(document),
            ShelfEvent::TakenOff { kind, id } => self.take_off(*kind, id),
            ShelfEvent::InspectionImported { name, sha256, file } => {
                let imported = Imported {
                    name: name.clone(),
                    sha256: sha256.clone(),
                    at_ms: facts.moment.at_ms,
                    file: (**file).clone(),
                };
                self.inspections.insert(sha256.clone(), imported);
            }
            ShelfEvent::NumberTaken { number, repair } => self.numbers.push(TakenNumber {
                number: number.clone(),
                repair: repair.clone(),
                at_ms: facts.moment.at_ms,
                voided: None,
            }),
            ShelfEvent::NumberVoided { number, reason, .. } => {
                if let Some(taken) = self.numbers.iter_mut().find(|taken| taken.number == *number) {
                    let (reason, person) = (reason.clone(), facts.person.clone());
                    taken.voided = Some(VoidedNumber { reason, person, at_ms: facts.moment.at_ms });
                }
            }
            ShelfEvent::BackedUp { .. } => self.backed_up_ms = Some(facts.moment.at_ms),
            ShelfEvent::HoldFollowed { repair, code, age_ms } => {
                let at = facts.moment.earlier(*age_ms);
                self.followed.insert(repair.clone(), FollowedCode { code: code.clone(), at, age_ms: *age_ms });
            }
            ShelfEvent::HoldUnfollowed { repair } => drop(self.followed.remove(repair)),
            // The first key stays, whatever comes later.
            ShelfEvent::DeviceMet { device, key } => {
                self.devices.entry(device.clone()).or_insert_with(|| key.clone());
            }
        }
        self
    }

    fn keep(&mut self, document: &Document) {
        let shelf = &mut self.documents;
        match document {
            Document::Person(person) => put(&mut shelf.people, person),
            Document::Contract(contract) => put(&mut shelf.contracts, contract.as_ref()),
            Document::Resin(sheet) => put(&mut shelf.resins, sheet.as_ref()),
            Document::Patch(sheet) => put(&mut shelf.patches, sheet.as_ref()),
            Document::Packer(sheet) => put(&mut shelf.packers, sheet.as_ref()),
            Document::Instrument(one) => put(&mut shelf.instruments, one),
            Document::Method(method) => put(&mut shelf.methods, method),
        }
    }

    fn take_off(&mut self, kind: DocumentKind, id: &str) {
        let shelf = &mut self.documents;
        match kind {
            DocumentKind::Person => take(&mut shelf.people, id),
            DocumentKind::Contract => take(&mut shelf.contracts, id),
            DocumentKind::Resin => take(&mut shelf.resins, id),
            DocumentKind::Patch => take(&mut shelf.patches, id),
            DocumentKind::Packer => take(&mut shelf.packers, id),
            DocumentKind::Instrument => take(&mut shelf.instruments, id),
            DocumentKind::Method => take(&mut shelf.methods, id),
            DocumentKind::Inspection => drop(self.inspections.remove(id)),
        }
    }
}

/// Puts a document in the place of the one with its id, or at the end.
fn put<T: HasId + Clone>(list: &mut Vec<T>, document: &T) {
    match list.iter_mut().find(|old| old.id() == document.id()) {
        Some(old) => *old = document.clone(),
        None => list.push(document.clone()),
    }
}

fn take<T: HasId>(list: &mut Vec<T>, id: &str) {
    list.retain(|document| document.id() != id);
}
