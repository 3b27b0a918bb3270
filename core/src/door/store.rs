//! The open data folder: the journal, and what was already replayed from it.

use std::collections::HashMap;
use std::path::{Path, PathBuf};

use super::brought::Begun;
use super::history::History;
use super::response::Problem;
use crate::facts::Facts;
use crate::journal::{Appended, Draft, Entry, Fault, Hash, Journal, NUMBERS, SHELF, Sqlite, Write, codec, is_reserved};
use crate::procedure::apply::apply_record;
use crate::procedure::{Event, Record, Repair};
use crate::register::{Register, Row};
use crate::shelf::{Person, ShelfEvent, ShelfRecord, ShelfState, TakenNumber};
use crate::view;

/// The journal with a memory of what it says. The memory is only ever a copy: heads that moved throw it away.
pub struct Store {
    pub folder: PathBuf,
    pub journal: Sqlite,
    /// Whose own head a repair is told by, where several devices went on with it.
    pub(super) device: String,
    /// As far as the edge tells.
    pub(super) free_bytes: Option<u64>,
    shelf: Option<(Vec<Hash>, ShelfState)>,
    numbers: Option<(Vec<Hash>, Vec<TakenNumber>)>,
    repairs: HashMap<String, (Vec<Hash>, Repair)>,
    /// The certificate that was checked last, for whose photos somebody looks.
    pub(super) begun: Option<Box<Begun>>,
}

/// More repairs are not remembered: what a day's work touches, however many there are in the folder.
const MOST_REMEMBERED: usize = 64;

/// What a request is to write, beside the entries themselves.
pub struct Writing<'a> {
    pub request: &'a str,
    pub request_hash: Hash,
    pub facts: &'a Facts,
    /// The same by the clocks of the device: the shelf keeps those, also while a rehearsal is played.
    pub real: &'a Facts,
}

impl Store {
    /// Opens the data folder, creating it when it is not there.
    ///
    /// Errors: the folder can't be created; the faults of opening the journal.
    pub fn open(folder: &Path) -> Result<Self, Fault> {
        std::fs::create_dir_all(folder).map_err(|problem| Fault::Io { what: problem.to_string() })?;
        let journal = Sqlite::open(&folder.join("journal.sqlite"))?;
        let mut store = Self {
            folder: folder.to_owned(),
            journal,
            device: String::new(),
            free_bytes: None,
            shelf: None,
            numbers: None,
            repairs: HashMap::new(),
            begun: None,
        };
        match store.list_all() {
            // What can still be read of it is shown and exported.
            Err(fault @ Fault::Corrupt { .. }) => store.journal.close_to_writing(fault),
            outcome => outcome?,
        }
        Ok(store)
    }

    /// Says which device asks. What another one saw is read again.
    pub fn asked_by(&mut self, device: &str) {
        if self.device != device {
            device.clone_into(&mut self.device);
            self.repairs.clear();
        }
    }

    /// Reads everything again, because the journal is another one now.
    pub(super) fn forget(&mut self) {
        self.shelf = None;
        self.repairs.clear();
    }

    fn list_all(&mut self) -> Result<(), Fault> {
        if self.journal.writable().is_ok() && !self.journal.unlisted()?.is_empty() {
            self.rebuild()?;
        }
        Ok(())
    }

    /// Returns the people of the shelf. Where the shelf is broken there are none, and the folder is only read.
    pub fn people(&mut self) -> Result<Vec<Person>, Fault> {
        match self.shelf() {
            Err(fault @ (Fault::Damaged(_) | Fault::Corrupt { .. })) => {
                self.journal.close_to_writing(fault);
                Ok(vec![])
            }
            shelf => Ok(shelf?.documents.people.clone()),
        }
    }

    /// Returns the shelf as it stands.
    pub fn shelf(&mut self) -> Result<&ShelfState, Fault> {
        let heads = self.journal.heads(SHELF)?;
        if self.shelf.as_ref().is_none_or(|(seen, _)| *seen != heads) {
            let entries = self.journal.entries(SHELF)?;
            let records = entries.iter().map(codec::decode).collect::<Result<Vec<ShelfRecord>, _>>()?;
            self.shelf = Some((heads, ShelfState::replay(&records)));
        }
        self.shelf.as_ref().map(|(_, shelf)| shelf).ok_or(Fault::Io { what: "the shelf was lost".into() })
    }

    /// Returns a repair as it stands.
    ///
    /// Errors: `unknown_repair`, or the journal's faults.
    pub fn repair(&mut self, id: &str) -> Result<Repair, Problem> {
        let unknown = || Problem::error("unknown_repair", "There is no such repair in this folder.");
        if is_reserved(id) {
            return Err(unknown());
        }
        let heads = self.journal.heads(id)?;
        if let Some((seen, repair)) = self.repairs.get(id)
            && *seen == heads
        {
            return Ok(repair.clone());
        }
        let repair = self.replayed(id)?.ok_or_else(unknown)?;
        self.remember(id, heads, &repair);
        Ok(repair)
    }

    fn remember(&mut self, id: &str, heads: Vec<Hash>, repair: &Repair) {
        if self.repairs.len() >= MOST_REMEMBERED {
            self.repairs.clear();
        }
        self.repairs.insert(id.to_owned(), (heads, repair.clone()));
    }

    /// Returns the certificate numbers that were taken, in their order; those of the shelf first, where older versions
    /// kept them.
    pub fn numbers(&mut self) -> Result<Vec<TakenNumber>, Fault> {
        let heads = self.journal.heads(NUMBERS)?;
        if self.numbers.as_ref().is_none_or(|(seen, _)| *seen != heads) {
            let start = ShelfState { numbers: self.shelf()?.numbers.clone(), ..ShelfState::default() };
            let entries = self.journal.entries(NUMBERS)?;
            let records = entries.iter().map(codec::decode).collect::<Result<Vec<ShelfRecord>, _>>()?;
            let events = records.iter().flat_map(|record| record.events.iter().map(|event| (event, &record.facts)));
            let after = events.fold(start, |shelf, (event, facts)| shelf.apply(event, facts));
            self.numbers = Some((heads, after.numbers));
        }
        Ok(self.numbers.iter().flat_map(|(_, numbers)| numbers).cloned().collect())
    }

    fn replayed(&self, id: &str) -> Result<Option<Repair>, Fault> {
        Ok(History::read(self.journal.entries(id)?)?.seen_by(&self.device))
    }

    /// Records events of a repair, its row of the register, and the certificate number that it takes, in one transaction.
    ///
    /// `before` is the repair that the events were decided on, `None` if they open it. Where several devices went on, the
    /// entry follows this device's own head and leaves the others as they are, unless the foreman chose. Returns the
    /// repair after the events.
    pub fn record(
        &mut self,
        writing: &Writing,
        before: Option<Repair>,
        id: &str,
        events: Vec<Event>,
        number: Option<ShelfEvent>,
    ) -> Result<Repair, Problem> {
        let chooses = events.iter().any(|event| matches!(event, Event::BranchChosen { .. }));
        let apart = before.as_ref().is_some_and(|repair| !repair.branches.is_empty());
        let own = before.iter().flat_map(|repair| &repair.branches).find(|branch| branch.own && !chooses);
        let branch = own.and_then(|branch| branch.head.parse().ok());
        let record = Record { facts: writing.facts.clone(), events };
        let after = apply_record(before, &record)
            .ok_or_else(|| Problem::error("not_opened", "The repair has not been opened."))?;
        let heads = self.repairs.get(id).map_or_else(Vec::new, |(heads, _)| heads.clone());
        let mut drafts = vec![Draft { branch, ..draft(id, heads, writing.facts, codec::encode(&record)?) }];
        if let Some(taken) = number {
            let heads = self.numbers.as_ref().map_or_else(Vec::new, |(heads, _)| heads.clone());
            let record = ShelfRecord { facts: writing.real.clone(), events: vec![taken] };
            drafts.push(draft(NUMBERS, heads, writing.real, codec::encode(&record)?));
        }
        match self.write(writing, drafts, vec![view::row(&after)], id)? {
            Appended::Written(entries) if !apart => {
                let heads = entries.iter().filter(|entry| entry.repair == id).map(|entry| entry.hash).collect();
                self.remember(id, heads, &after);
                Ok(after)
            }
            // Which entries count is told by all heads.
            // Or another program sent the same request first; what it wrote stands.
            Appended::Written(_) | Appended::Repeated(_) => self.repair(id),
        }
    }

    /// Records events of the shelf.
    pub fn record_shelf(&mut self, writing: &Writing, events: Vec<ShelfEvent>) -> Result<(), Problem> {
        let draft = self.shelf_draft(writing.real, events)?;
        self.write(writing, vec![draft], vec![], SHELF)?;
        Ok(())
    }

    /// Writes entries of another device, those already here passed over, with the repair's row.
    pub fn receive(&mut self, writing: &Writing, id: &str, received: Vec<Entry>, row: Row) -> Result<Appended, Fault> {
        self.journal.append(&Write {
            request: writing.request,
            request_hash: writing.request_hash,
            received,
            drafts: vec![],
            rows: vec![row],
            answer: id.as_bytes().to_vec(),
        })
    }

    pub(super) fn shelf_draft(&self, facts: &Facts, events: Vec<ShelfEvent>) -> Result<Draft, Fault> {
        let heads = self.shelf.as_ref().map_or_else(Vec::new, |(heads, _)| heads.clone());
        Ok(draft(SHELF, heads, facts, codec::encode(&ShelfRecord { facts: facts.clone(), events })?))
    }

    fn write(
        &mut self,
        writing: &Writing,
        drafts: Vec<Draft>,
        rows: Vec<Row>,
        answer: &str,
    ) -> Result<Appended, Fault> {
        let write = Write {
            request: writing.request,
            request_hash: writing.request_hash,
            received: vec![],
            drafts,
            rows,
            answer: answer.as_bytes().to_vec(),
        };
        self.journal.append(&write)
    }

    /// Makes the register anew from the journal. Returns how many repairs it lists.
    pub fn rebuild(&mut self) -> Result<usize, Fault> {
        let repairs = self.journal.repairs()?;
        let device = self.device.clone();
        self.journal.list_anew(&repairs, |id, entries| row(id, entries, &device))?;
        Ok(repairs.len())
    }
}

/// A repair whose chain is broken stays in the journal as it is, and in the lists, so that nobody misses it.
fn row(id: &str, entries: Result<Vec<Entry>, Fault>, device: &str) -> Result<Row, Fault> {
    match entries.and_then(History::read).map(|history| history.seen_by(device)) {
        Ok(Some(repair)) => Ok(view::row(&repair)),
        Ok(None) | Err(Fault::Damaged(_) | Fault::Newer { .. }) => Ok(view::damaged_row(id)),
        Err(other) => Err(other),
    }
}

/// An entry that follows the heads that the decision was made on; another writer in between makes the journal refuse it.
fn draft(repair: &str, heads: Vec<Hash>, facts: &Facts, body: Vec<u8>) -> Draft {
    Draft { repair: repair.to_owned(), device: facts.device.clone(), heads, branch: None, body }
}
