//! The record of a repair as one file: its whole chain, readable by anybody, checkable without this program's folder.

use serde::{Deserialize, Serialize};

use super::response::Problem;
use crate::certificate::ChainFacts;
use crate::journal::{self, Entry, Hash, codec, heads_of};
use crate::procedure::{Record, Repair, Standing, replay};

/// What the file calls itself.
const FORM: &str = "mendline-record/1";

/// A record file. The body of an entry is the text that was hashed, letter for letter.
#[derive(Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct RecordFile {
    form: String,
    /// Stands at the top so that nobody takes a rehearsal for a record.
    rehearsal: bool,
    repair: String,
    number: String,
    heads: Vec<Hash>,
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

/// Returns what a chain says of itself.
pub fn chain(entries: &[Entry], device: &str) -> ChainFacts {
    ChainFacts {
        head_hex: heads_of(entries).iter().map(ToString::to_string).collect::<Vec<_>>().join(" "),
        entries: entries.len() as u64,
        device: device.to_owned(),
    }
}

/// Returns the bytes of a record file.
///
/// Errors: an entry whose body is not text, which this program never writes.
pub fn write(repair: &Repair, entries: &[Entry]) -> Result<Vec<u8>, Problem> {
    let not_text = |_| Problem::error("record", "An entry of this repair is not text.");
    let texts = entries.iter().map(|entry| {
        Ok(RecordEntry {
            device: entry.device.clone(),
            seq: entry.seq,
            prev: entry.prev.clone(),
            hash: entry.hash,
            body: String::from_utf8(entry.body.clone()).map_err(not_text)?,
        })
    });
    let file = RecordFile {
        form: FORM.to_owned(),
        rehearsal: repair.rehearsal,
        repair: repair.id.clone(),
        number: repair.number.clone(),
        heads: heads_of(entries),
        entries: texts.collect::<Result<_, Problem>>()?,
    };
    serde_json::to_vec_pretty(&file).map_err(|problem| Problem::error("record", problem.to_string()))
}

/// What came of checking a record.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Verdict {
    pub name: String,
    pub finding: Finding,
    pub says: String,
    pub number: String,
    pub entries: usize,
    pub head: String,
    /// The certificate's number, once issued.
    pub certificate: String,
}

impl Verdict {
    /// Returns the verdict on something that is not a record.
    pub fn unreadable(name: &str, says: String) -> Self {
        Self::bare(name, Finding::Unreadable, says)
    }

    fn bare(name: &str, finding: Finding, says: String) -> Self {
        let name = name.to_owned();
        Self { name, finding, says, number: String::new(), entries: 0, head: String::new(), certificate: String::new() }
    }
}

/// The finding of a check, and the exit code that stands for it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Finding {
    /// Valid and complete.
    Valid = 0,
    /// Changed, invalid, or lacking a signature.
    Changed = 1,
    /// Not a record that can be read.
    Unreadable = 2,
    /// A sound rehearsal, not a record.
    Rehearsal = 3,
}

/// Returns what a record file shows: whether its chain is whole and what it stands for.
pub fn check_record(name: &str, bytes: &[u8]) -> Verdict {
    let verdict = |finding, says| Verdict::bare(name, finding, says);
    let file: RecordFile = match serde_json::from_slice(bytes) {
        Ok(file) => file,
        Err(problem) => return verdict(Finding::Unreadable, format!("This is not a record of Mendline: {problem}.")),
    };
    if file.form != FORM {
        return verdict(
            Finding::Unreadable,
            format!("This record has the form {}; this program reads {FORM}.", file.form),
        );
    }
    let entries = entries_of(&file);
    let (finding, says, certificate) = judge(&file, &entries);
    Verdict {
        number: file.number.clone(),
        entries: entries.len(),
        head: file.heads.iter().map(ToString::to_string).collect::<Vec<_>>().join(" "),
        certificate,
        ..verdict(finding, says)
    }
}

fn entries_of(file: &RecordFile) -> Vec<Entry> {
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

fn judge(file: &RecordFile, entries: &[Entry]) -> (Finding, String, String) {
    let changed = |says: String| (Finding::Changed, says, String::new());
    if let Err(fault) = journal::check(entries) {
        return changed(fault.to_string());
    }
    if heads_of(entries) != file.heads {
        return changed("The head does not belong to the last entry: entries are missing at the end.".into());
    }
    let records: Result<Vec<Record>, _> = entries.iter().map(codec::decode).collect();
    let repair = match records.map(|records| replay(&records)) {
        Ok(Some(repair)) => repair,
        Ok(None) => return changed("The first entry does not open a repair.".into()),
        Err(fault) => return changed(fault.to_string()),
    };
    if (repair.rehearsal, &repair.id, &repair.number) != (file.rehearsal, &file.repair, &file.number) {
        return changed("What stands at the top of the file differs from what its entries say.".into());
    }
    stands_for(&repair)
}

fn stands_for(repair: &Repair) -> (Finding, String, String) {
    let certificate = repair.issued.as_ref().map(|issued| issued.number.clone()).unwrap_or_default();
    let whole = "Every entry follows from the one before; nothing was changed since it was written.";
    if repair.rehearsal {
        return (Finding::Rehearsal, format!("A rehearsal, not a record. {whole}"), certificate);
    }
    match repair.standing() {
        Standing::Complete if repair.issued.is_some() => {
            (Finding::Valid, format!("{whole} The record is complete."), certificate)
        }
        Standing::Unrepaired => {
            (Finding::Valid, format!("{whole} The repair was closed without a patch."), certificate)
        }
        _ => (Finding::Changed, format!("{whole} But the repair is not complete, or not signed."), certificate),
    }
}
