//! The record of a repair as one file: its whole chain, readable by anybody, checkable without this program's folder.

use serde::{Deserialize, Serialize};

use super::response::Problem;
use crate::certificate::ChainFacts;
use crate::journal::{Entry, Fault, Hash, heads_of};
use crate::procedure::Repair;

/// What the file calls itself.
const FORM: &str = "mendline-record/1";

/// A larger file is not read. A day of readings, one a minute, takes a sixteenth of it.
pub const MOST_BYTES: usize = 16 << 20;

/// A record file. The body of an entry is the text that was hashed, letter for letter.
#[derive(Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct RecordFile {
    form: String,
    /// Stands at the top so that nobody takes a rehearsal for a record.
    pub rehearsal: bool,
    pub repair: String,
    pub number: String,
    pub heads: Vec<Hash>,
    entries: Vec<RecordEntry>,
}

#[derive(Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct RecordEntry {
    device: String,
    seq: u64,
    prev: Vec<Hash>,
    hash: Hash,
    body: String,
}

impl RecordFile {
    /// Returns the file that these bytes are.
    ///
    /// Errors: why they are not a record that this program reads, in a sentence.
    pub fn read(bytes: &[u8]) -> Result<Self, String> {
        if bytes.len() > MOST_BYTES {
            let most = MOST_BYTES >> 20;
            return Err(format!(
                "This file is larger than the record of any repair ({most} MB at most), and was not read. Ask for the record of one repair."
            ));
        }
        let file: Self =
            serde_json::from_slice(bytes).map_err(|problem| format!("This is not a record of Mendline: {problem}."))?;
        if file.form != FORM {
            return Err(format!("This record has the form {}; this program reads {FORM}.", file.form));
        }
        Ok(file)
    }

    /// Returns how many entries it holds.
    pub fn count(&self) -> usize {
        self.entries.len()
    }
}

/// Returns what a chain says of itself.
///
/// Errors: as [`write`].
pub fn chain(repair: &Repair, entries: &[Entry], device: &str) -> Result<ChainFacts, Problem> {
    Ok(ChainFacts {
        head_hex: heads_of(entries).iter().map(ToString::to_string).collect::<Vec<_>>().join(" "),
        entries: entries.len() as u64,
        device: device.to_owned(),
        record: write(repair, entries)?,
    })
}

/// Returns the bytes of a record file.
///
/// Errors: an entry whose body is not text, which this program never writes.
pub fn write(repair: &Repair, entries: &[Entry]) -> Result<Vec<u8>, Problem> {
    if entries.iter().any(|entry| std::str::from_utf8(&entry.body).is_err()) {
        return Err(Problem::error("record", "An entry of this repair is not text."));
    }
    write_as_stored(&repair.id, Some(repair), entries).map_err(Problem::from)
}

/// Returns the bytes of a record file of a chain that may be broken; `repair` is what could be followed of it.
///
/// An entry that was changed so that it is no text has U+FFFD for each part that is none: a check names that entry.
pub fn write_as_stored(id: &str, repair: Option<&Repair>, entries: &[Entry]) -> Result<Vec<u8>, Fault> {
    let texts = entries.iter().map(|entry| RecordEntry {
        device: entry.device.clone(),
        seq: entry.seq,
        prev: entry.prev.clone(),
        hash: entry.hash,
        body: String::from_utf8_lossy(&entry.body).into_owned(),
    });
    let file = RecordFile {
        form: FORM.to_owned(),
        rehearsal: repair.is_some_and(|repair| repair.rehearsal),
        repair: id.to_owned(),
        number: repair.map_or_else(String::new, |repair| repair.number.clone()),
        heads: heads_of(entries),
        entries: texts.collect(),
    };
    serde_json::to_vec_pretty(&file).map_err(|problem| Fault::Io { what: problem.to_string() })
}

/// Returns the entries of a file, as a journal holds them.
pub fn entries_of(file: &RecordFile) -> Vec<Entry> {
    file.entries
        .iter()
        .map(|entry| Entry {
            repair: file.repair.clone(),
            device: entry.device.clone(),
            seq: entry.seq,
            prev: entry.prev.clone(),
            hash: entry.hash,
            body: entry.body.clone().into_bytes(),
        })
        .collect()
}
