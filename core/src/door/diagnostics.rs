//! What support asks for when something goes wrong: version, platform, counts, faults, sizes. No name, no position.
//!
//! Nothing that a person typed goes in, not even an id: a repair may be named by its street. Only numbers, and words
//! that stand in this program.

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

use chrono::DateTime;
use serde::Serialize;

use super::response::{Answer, Problem};
use super::store::Store;
use super::{App, Visit, packed};
use crate::journal::{Fault, Journal};
use crate::register::Register;
use crate::view::Summary;

/// The parts of a data folder. What else lies there is counted as `other`, because its name may be anybody's.
const PARTS: &[&str] = &[
    "journal.sqlite",
    "journal.sqlite-wal",
    "journal.sqlite-shm",
    "photos",
    "certificates",
    "keys",
    "leaving",
    "arriving",
];

/// More repairs than this are not counted.
const MOST: usize = 1_000_000;

/// The file for support.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct Diagnostics {
    pub form: &'static str,
    pub version: &'static str,
    /// System and processor, as Rust names them.
    pub platform: String,
    /// The day in UTC; the offset would be a coarse position.
    pub day: String,
    /// Codes of faults, and how often: the folder as a whole, and each repair whose chain is broken.
    pub faults: BTreeMap<&'static str, usize>,
    pub free_bytes: Option<u64>,
    /// By part of the folder.
    pub files: BTreeMap<&'static str, Weight>,
    /// By status; `live` are those whose clock runs.
    pub repairs: BTreeMap<String, usize>,
    /// By kind of document; people by their role.
    pub documents: BTreeMap<&'static str, usize>,
    pub people: BTreeMap<&'static str, usize>,
}

/// How many files, and how large together.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize)]
pub struct Weight {
    pub files: u64,
    pub bytes: u64,
}

impl Diagnostics {
    /// Returns what can be said of a folder from outside; `fault` is why it could not be opened. `at_ms` is now, in
    /// milliseconds since 1970.
    pub fn from_outside(folder: &Path, fault: Option<&Fault>, at_ms: i64) -> Self {
        let mut told = Self {
            form: "mendline-diagnostics/1",
            version: env!("CARGO_PKG_VERSION"),
            platform: format!("{} {}", std::env::consts::OS, std::env::consts::ARCH),
            day: DateTime::from_timestamp_millis(at_ms).map(|at| at.date_naive().to_string()).unwrap_or_default(),
            ..Self::default()
        };
        told.weigh(folder);
        told.note(fault);
        told
    }

    /// Returns the file as JSON text, made to be read by whoever hands it out.
    pub fn text(&self) -> String {
        serde_json::to_string_pretty(self).unwrap_or_default() + "\n"
    }

    fn note(&mut self, fault: Option<&Fault>) {
        if let Some(fault) = fault {
            *self.faults.entry(fault.code()).or_default() += 1;
        }
    }

    fn weigh(&mut self, folder: &Path) {
        for entry in fs::read_dir(folder).into_iter().flatten().flatten() {
            let part = PARTS.iter().find(|part| entry.file_name() == **part).copied().unwrap_or("other");
            let weight = weight(&entry.path());
            let sum = self.files.entry(part).or_default();
            sum.files += weight.files;
            sum.bytes += weight.bytes;
        }
    }

    fn count(&mut self, store: &mut Store) {
        self.note(store.journal.writable().err().as_ref());
        self.free_bytes = store.free_bytes;
        match store.journal.verify_all() {
            Ok(damage) if damage.is_empty() => {}
            Ok(damage) => *self.faults.entry("damaged").or_default() += damage.len(),
            Err(fault) => self.note(Some(&fault)),
        }
        match store.journal.list(MOST) {
            Ok(rows) => rows.iter().for_each(|row| {
                let status = serde_json::from_slice::<Summary>(&row.summary).ok().map(|line| line.status);
                *self.repairs.entry(word(&status)).or_default() += 1;
                if row.live {
                    *self.repairs.entry("live".into()).or_default() += 1;
                }
            }),
            Err(fault) => self.note(Some(&fault)),
        }
        match store.shelf().map(|state| state.documents.clone()) {
            Ok(shelf) => {
                self.documents = BTreeMap::from([
                    ("contracts", shelf.contracts.len()),
                    ("resins", shelf.resins.len()),
                    ("patches", shelf.patches.len()),
                    ("packers", shelf.packers.len()),
                    ("instruments", shelf.instruments.len()),
                    ("methods", shelf.methods.len()),
                ]);
                for person in &shelf.people {
                    *self.people.entry(super::keys::word(person.role)).or_default() += 1;
                }
            }
            Err(fault) => self.note(Some(&fault)),
        }
    }
}

/// Returns the word of a status as the record writes it; `unreadable` where there is none.
fn word(status: &impl Serialize) -> String {
    let written = serde_json::to_value(status).ok();
    written.as_ref().and_then(|word| word.as_str()).unwrap_or("unreadable").to_owned()
}

/// A link is counted and not followed.
fn weight(path: &Path) -> Weight {
    let Ok(about) = path.symlink_metadata() else { return Weight::default() };
    if !about.is_dir() {
        return Weight { files: 1, bytes: about.len() };
    }
    let inside = fs::read_dir(path).into_iter().flatten().flatten().map(|entry| weight(&entry.path()));
    inside.fold(Weight::default(), |sum, one| Weight { files: sum.files + one.files, bytes: sum.bytes + one.bytes })
}

impl App {
    /// Returns the diagnostics of the open folder. `at_ms` is now, in milliseconds since 1970.
    pub fn diagnostics(&mut self, at_ms: i64) -> Diagnostics {
        diagnostics(&mut self.store, at_ms)
    }
}

fn diagnostics(store: &mut Store, at_ms: i64) -> Diagnostics {
    let mut told = Diagnostics::from_outside(&store.folder, None, at_ms);
    told.count(store);
    told
}

impl Visit<'_> {
    pub(super) fn diagnostics(&mut self) -> Result<Answer, Problem> {
        let told = diagnostics(self.store, self.real.at_ms);
        let name = format!("mendline-diagnostics-{}.json", told.day);
        let bytes = packed(told.text().as_bytes());
        Ok(Answer::File { name, media_type: "application/json".into(), bytes })
    }
}
