//! A journal in memory: for tests, for rehearsals that leave nothing behind, and as the model that SQLite must match.

use std::collections::{BTreeMap, BTreeSet};

use super::plan::plan;
use super::{Appended, Entry, Fault, Hash, Journal, Write, is_reserved};
use crate::register::Row;

/// Entries, requests and register rows that end with the process.
#[derive(Clone, Debug, Default)]
pub struct Memory {
    pub(super) entries: Vec<Entry>,
    requests: BTreeMap<String, (Hash, Vec<u8>)>,
    pub(crate) rows: BTreeMap<String, Row>,
}

impl Memory {
    /// Returns an empty journal.
    pub fn new() -> Self {
        Self::default()
    }
}

impl Journal for Memory {
    fn stored(&self, repair: &str) -> Result<Vec<Entry>, Fault> {
        Ok(self.entries.iter().filter(|entry| entry.repair == repair).cloned().collect())
    }

    fn repairs(&self) -> Result<Vec<String>, Fault> {
        let repairs = self.entries.iter().map(|entry| entry.repair.clone()).filter(|repair| !is_reserved(repair));
        Ok(repairs.collect::<BTreeSet<_>>().into_iter().collect())
    }

    fn answered(&self, request: &str) -> Result<Option<(Hash, Vec<u8>)>, Fault> {
        Ok(self.requests.get(request).cloned())
    }

    fn append(&mut self, write: &Write) -> Result<Appended, Fault> {
        if let Some((hash, answer)) = self.requests.get(write.request) {
            let same = *hash == write.request_hash;
            let reused = || Fault::RequestReused { request: write.request.to_owned() };
            return same.then(|| Appended::Repeated(answer.clone())).ok_or_else(reused);
        }
        let fresh = plan(write, |repair| self.stored(repair), |_| None)?.fresh;
        self.entries.extend(fresh.iter().cloned());
        self.requests.insert(write.request.to_owned(), (write.request_hash, write.answer.clone()));
        self.rows.extend(write.rows.iter().map(|row| (row.repair.clone(), row.tidy())));
        Ok(Appended::Written(fresh))
    }
}
