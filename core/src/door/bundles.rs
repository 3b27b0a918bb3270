//! Requests about repairs on their way: make a bundle and hand it out, take one in.

use std::fs::File;
use std::io::{BufReader, BufWriter};

use chrono::DateTime;
use serde::Serialize;

use super::pieces::{self, Arriving};
use super::response::{Answer, Problem};
use super::travel::fingerprint;
use super::{Visit, device_key, packed};
use crate::bundle::Refused;
use crate::journal::{Fault, Journal};
use crate::register::Register;
use crate::view::Summary;

/// What there is to send, and from whom bundles were taken in.
#[derive(Clone, Debug, Serialize)]
pub struct BundlesView {
    pub device: String,
    /// The key of this device, for whoever takes its bundles in.
    pub key: String,
    /// The last one changed first.
    pub repairs: Vec<Summary>,
    /// Devices met before, with their keys.
    pub known: Vec<(String, String)>,
}

/// A file that was made and can be fetched piece by piece.
#[derive(Clone, Debug, Default, Serialize)]
pub struct MadeFile {
    pub name: String,
    pub bytes: u64,
    pub repairs: usize,
    pub entries: usize,
    pub photos: usize,
    /// Photos that are not here or were changed: they do not go along.
    pub missing: usize,
    /// How many files a backup holds.
    pub files: usize,
}

impl Visit<'_> {
    pub(super) fn bundles(&mut self) -> Result<Answer, Problem> {
        let rows = self.store.journal.list(SHOWN)?;
        let key = fingerprint(&device_key::open(&self.store.folder, &self.seed)?);
        Ok(Answer::Bundles(BundlesView {
            device: self.facts.device.clone(),
            key,
            repairs: rows.iter().filter_map(|row| serde_json::from_slice(&row.summary).ok()).collect(),
            known: self.store.shelf()?.devices.clone().into_iter().collect(),
        }))
    }

    /// Makes a bundle of these repairs, of those changed since a moment, or of all.
    pub(super) fn pack(&mut self, repairs: &[String], since_ms: Option<i64>) -> Result<Answer, Problem> {
        let wanted = match since_ms {
            None => repairs.to_vec(),
            Some(since_ms) => self.changed(repairs, since_ms)?,
        };
        if wanted.is_empty() && (since_ms.is_some() || self.store.journal.repairs()?.is_empty()) {
            return Err(Problem::error("nothing_to_send", "There is no such repair to send. Nothing was made."));
        }
        let key = device_key::open(&self.store.folder, &self.seed)?;
        let at_ms = self.facts.moment.at_ms;
        let name = format!("{}-{}.mendline", super::repairs::device_prefix(&self.facts.device), stamp(at_ms));
        let path = pieces::leaving(&self.store.folder, &name)?;
        let file = File::create(&path).map_err(|why| pieces::failed(&why))?;
        let device = self.facts.device.clone();
        let sent = self
            .store
            .send(&wanted, &device, at_ms, &key, BufWriter::new(file))
            .inspect_err(|_| drop(std::fs::remove_file(&path)))?;
        Ok(Answer::Made(MadeFile {
            name,
            bytes: path.metadata().map_err(|why| pieces::failed(&why))?.len(),
            repairs: sent.repairs,
            entries: sent.entries,
            photos: sent.photos,
            missing: sent.missing.len(),
            files: 0,
        }))
    }

    fn changed(&self, among: &[String], since_ms: i64) -> Result<Vec<String>, Problem> {
        let rows = self.store.journal.list(ALL)?;
        let wanted = rows.into_iter().filter(|row| row.changed_ms >= since_ms).map(|row| row.repair);
        Ok(wanted.filter(|repair| among.is_empty() || among.contains(repair)).collect())
    }

    pub(super) fn piece(&self, name: &str, from: u64) -> Result<Answer, Problem> {
        let (bytes, of) = pieces::fetch(&self.store.folder, name, from)?;
        Ok(Answer::Piece { from, of, bytes: packed(&bytes) })
    }

    pub(super) fn bring(&self, name: &str, of: u64, from: u64, bytes: &[u8]) -> Result<Answer, Problem> {
        self.store.journal.writable()?;
        Ok(Answer::Brought { here: Arriving::of(&self.store.folder, name, of)?.take(from, bytes)?, of })
    }

    /// Takes in the bundle that was brought. A refused one leaves nothing behind.
    pub(super) fn take_in(&mut self, name: &str, of: u64, key: &str) -> Result<Answer, Problem> {
        let brought = Arriving::of(&self.store.folder, name, of)?;
        let mut file = BufReader::new(brought.whole()?);
        let key: String = key.split_whitespace().collect::<String>().to_lowercase();
        let named = (!key.is_empty()).then_some(key.as_str());
        match self.store.take_in(&mut file, named, &self.facts) {
            Ok(taken) => {
                brought.drop();
                Ok(Answer::Taken(taken))
            }
            // The disk may be free again in a moment: the bundle stays for another try.
            Err(Refused::Journal(fault)) if passing(&fault) => Err(fault.into()),
            Err(refused) => {
                brought.drop();
                Err(Problem::error("bundle_refused", refused.to_string()))
            }
        }
    }
}

/// How many repairs are shown to be picked; the others go along by their date, or all at once.
const SHOWN: usize = 200;

/// More rows than any folder has.
const ALL: usize = 10_000_000;

const fn passing(fault: &Fault) -> bool {
    matches!(fault, Fault::DiskFull | Fault::Locked | Fault::ReadOnly | Fault::NoPermission { .. })
}

/// Returns a moment as it stands in the names of files, in UTC.
pub fn stamp(at_ms: i64) -> String {
    DateTime::from_timestamp_millis(at_ms).map_or_else(String::new, |at| at.format("%Y%m%d-%H%M%S").to_string())
}
