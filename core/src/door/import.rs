//! Taking in a record that another folder gave out: its entries as they are, checked before anything is written.

use std::collections::HashSet;

use super::history::History;
use super::record::{RecordFile, entries_of};
use super::response::{Answer, Problem};
use super::{Visit, with_writing};
use crate::journal::{self, Entry, Hash, Journal, heads_of, is_reserved};
use crate::procedure::Repair;
use crate::view;

impl Visit<'_> {
    /// Writes the entries of a record that are not here yet, and shows the repair. What is here already stays; a record
    /// that went another way since becomes a branch.
    ///
    /// Errors: `not_a_record`; the journal's faults if the chain is broken or does not join what is here;
    /// `record_differs` if the top of the file does not say what its entries say.
    pub(super) fn import_record(&mut self, bytes: &[u8]) -> Result<Answer, Problem> {
        let file = RecordFile::read(bytes).map_err(|says| Problem::error("not_a_record", says))?;
        let received = entries_of(&file);
        journal::check(&received)?;
        let alone = followed(&received, "")?.filter(|repair| says_the_same(&file, &received, repair));
        if alone.is_none() {
            return Err(Problem::error(
                "record_differs",
                "The top of this record does not say what its entries say. Nothing was taken in; ask for the file again.",
            ));
        }
        let id = file.repair.clone();
        let after = self.with_what_is_here(&id, &received)?;
        with_writing(self, |store, writing| store.receive(writing, &id, received, view::row(&after)))?;
        self.repair(&id)
    }

    /// Returns the repair as all entries tell it, those that are here and those that came.
    fn with_what_is_here(&self, id: &str, received: &[Entry]) -> Result<Repair, Problem> {
        let mut all = self.store.journal.entries(id)?;
        let here: HashSet<Hash> = all.iter().map(|entry| entry.hash).collect();
        all.extend(received.iter().filter(|entry| !here.contains(&entry.hash)).cloned());
        followed(&journal::in_order(&all)?, &self.facts.device)?
            .ok_or_else(|| Problem::error("not_opened", "The repair has not been opened."))
    }
}

/// Returns the repair that entries tell to a device, `None` if they open none.
fn followed(entries: &[Entry], device: &str) -> Result<Option<Repair>, Problem> {
    Ok(History::read(entries.to_vec())?.seen_by(device))
}

fn says_the_same(file: &RecordFile, entries: &[Entry], repair: &Repair) -> bool {
    !is_reserved(&file.repair)
        && file.repair == repair.id
        && file.number == repair.number
        && file.rehearsal == repair.rehearsal
        && file.heads == heads_of(entries)
}
