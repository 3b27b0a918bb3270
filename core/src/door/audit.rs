//! Is a data folder whole, and does it still hold what was handed out?
//!
//! A chain can't see its own tail cut off, nor that the whole file was put back to an older copy. Records and
//! certificates lie outside the folder and name what it must hold.

use std::collections::HashSet;
use std::path::Path;

use super::record::{RecordFile, entries_of};
use crate::journal::{Fault, Hash, Journal, Sqlite, check};

/// Returns a sentence for each thing that is wrong with the folder; none if nothing is.
///
/// `records` are record files by name, `heads` are heads as printed on certificates.
/// Errors: the journal can't be opened.
pub fn audit(folder: &Path, records: &[(String, Vec<u8>)], heads: &[Hash]) -> Result<Vec<String>, Fault> {
    let journal = Sqlite::open_for_reading(&folder.join("journal.sqlite"))?;
    let mut found = match journal.verify_all() {
        Ok(damages) => damages.iter().map(|damage| format!("{damage} Nothing was repaired.")).collect(),
        Err(fault) => vec![fault.to_string()],
    };
    for (name, bytes) in records {
        found.extend(missing(&journal, name, bytes)?);
    }
    for head in heads {
        if !journal.has(*head)? {
            found.push(format!("No entry has the head {head}. {ROLLED_BACK}"));
        }
    }
    Ok(found)
}

const ROLLED_BACK: &str = "The end of its chain was cut off, or the folder was put back to an older copy. Look for a newer copy of the folder.";

/// Returns what is wrong with the folder by this record: the first of its entries that the folder does not hold.
fn missing(journal: &Sqlite, name: &str, bytes: &[u8]) -> Result<Option<String>, Fault> {
    let file = match RecordFile::read(bytes) {
        Ok(file) => file,
        Err(says) => return Ok(Some(format!("{name}: {says}"))),
    };
    let entries = entries_of(&file);
    if let Err(fault) = check(&entries) {
        return Ok(Some(format!("{name} itself is broken and shows nothing: {fault}")));
    }
    let held: HashSet<Hash> = match journal.stored(&file.repair) {
        Ok(stored) => stored.iter().map(|entry| entry.hash).collect(),
        Err(Fault::Damaged(_) | Fault::Corrupt { .. }) => return Ok(None),
        Err(other) => return Err(other),
    };
    let first = entries.iter().find(|entry| !held.contains(&entry.hash));
    Ok(first.map(|entry| {
        let (repair, seq, device) = (&entry.repair, entry.seq, &entry.device);
        format!(
            "Repair {repair}, entry {seq} of device {device} stands in {name} and not in this folder. {ROLLED_BACK}"
        )
    }))
}
