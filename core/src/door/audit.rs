//! Is a data folder whole, and does it still hold what was handed out?
//!
//! A chain can't see its own tail cut off, nor that the whole file was put back to an older copy. Records, certificates
//! and bundles lie outside the folder and name what it must hold.

use std::collections::{BTreeMap, HashSet};
use std::path::Path;

use super::record::{RecordFile, entries_of};
use crate::bundle::{Item, Reader, frame};
use crate::journal::{Entry, Fault, Hash, Journal, Sqlite, check};
use crate::seal::verify::verify;

/// Returns a sentence for each thing that is wrong with the folder; none if nothing is.
///
/// `witnesses` are files that were handed out, by name: records, certificates, bundles. `heads` are heads as printed on
/// certificates. A witness that was changed itself is named and shows nothing.
/// Errors: the journal can't be opened.
pub fn audit(folder: &Path, witnesses: &[(String, Vec<u8>)], heads: &[Hash]) -> Result<Vec<String>, Fault> {
    let journal = Sqlite::open_for_reading(&folder.join("journal.sqlite"))?;
    let mut found = match journal.verify_all() {
        Ok(damages) => damages.iter().map(|damage| format!("{damage} Nothing was repaired.")).collect(),
        Err(fault) => vec![fault.to_string()],
    };
    for (name, bytes) in witnesses {
        match shown(bytes) {
            Ok(Shown::Entries(chains)) => {
                for (repair, entries) in chains {
                    found.extend(missing(&journal, name, &repair, &entries)?);
                }
            }
            Ok(Shown::Heads(printed)) => found.extend(not_here(&journal, name, &printed)?),
            Err(says) => found.push(format!("{name}: {says}")),
        }
    }
    for head in heads {
        if !journal.has(*head)? {
            found.push(format!("No entry has the head {head}. {ROLLED_BACK}"));
        }
    }
    Ok(found)
}

const ROLLED_BACK: &str = "The end of its chain was cut off, or the folder was put back to an older copy. Look for a newer copy of the folder.";

/// What a witness says that the folder must hold.
enum Shown {
    /// By repair; checked.
    Entries(BTreeMap<String, Vec<Entry>>),
    /// What is printed and could be the head of a chain; one of them is.
    Heads(Vec<Hash>),
}

/// Errors: why a file shows nothing, as a sentence.
fn shown(bytes: &[u8]) -> Result<Shown, String> {
    if bytes.starts_with(frame::MAGIC) {
        sent(bytes).map(Shown::Entries)
    } else if bytes.starts_with(b"%PDF-") {
        certified(bytes)
    } else {
        recorded(bytes).map(Shown::Entries)
    }
}

fn recorded(bytes: &[u8]) -> Result<BTreeMap<String, Vec<Entry>>, String> {
    let file = RecordFile::read(bytes)?;
    checked([(file.repair.clone(), entries_of(&file))].into())
}

fn sent(bytes: &[u8]) -> Result<BTreeMap<String, Vec<Entry>>, String> {
    let mut reader = Reader::begin(bytes).map_err(|refused| refused.to_string())?;
    let mut chains = BTreeMap::<String, Vec<Entry>>::new();
    while let Some(item) = reader.item().map_err(|refused| refused.to_string())? {
        if let Item::Entry(entry) = item {
            chains.entry(entry.repair.clone()).or_default().push(entry);
        }
    }
    checked(chains)
}

fn checked(chains: BTreeMap<String, Vec<Entry>>) -> Result<BTreeMap<String, Vec<Entry>>, String> {
    for entries in chains.values() {
        check(entries).map_err(|fault| format!("It is itself broken and shows nothing: {fault}"))?;
    }
    Ok(chains)
}

/// A certificate shows what the record inside it shows. Without one, the head on its pages counts, if a key signed them.
fn certified(bytes: &[u8]) -> Result<Shown, String> {
    let pdf = verify(bytes)?;
    if !pdf.flaws.is_empty() {
        return Err(format!("It was itself changed and shows nothing: {}", pdf.flaws.join(" ")));
    }
    if let Some((_, record)) = pdf.attachments.iter().find(|(name, _)| name.ends_with(".json")) {
        return recorded(record).map(Shown::Entries);
    }
    let printed = hashes(&pdf.pages.concat());
    if pdf.signatures.is_empty() || printed.is_empty() {
        return Err("It holds no record, and no key has signed a head on its pages: it shows nothing.".into());
    }
    Ok(Shown::Heads(printed))
}

/// Returns all that could be a hash in a text without spaces, where what stands beside it may look like part of it.
fn hashes(text: &str) -> Vec<Hash> {
    let digits = |byte: &u8| matches!(byte, b'0'..=b'9' | b'a'..=b'f');
    let windows = text.as_bytes().windows(64).filter(|window| window.iter().all(digits));
    windows.filter_map(|window| std::str::from_utf8(window).ok()?.parse().ok()).collect()
}

fn not_here(journal: &Sqlite, name: &str, printed: &[Hash]) -> Result<Option<String>, Fault> {
    for hash in printed {
        if journal.has(*hash)? {
            return Ok(None);
        }
    }
    Ok(Some(format!("No entry has the head that {name} prints. {ROLLED_BACK}")))
}

/// Returns the first of these entries that the folder does not hold.
fn missing(journal: &Sqlite, name: &str, repair: &str, entries: &[Entry]) -> Result<Option<String>, Fault> {
    let held: HashSet<Hash> = match journal.stored(repair) {
        Ok(stored) => stored.iter().map(|entry| entry.hash).collect(),
        Err(Fault::Damaged(_) | Fault::Corrupt { .. }) => return Ok(None),
        Err(other) => return Err(other),
    };
    let first = entries.iter().find(|entry| !held.contains(&entry.hash));
    Ok(first.map(|Entry { seq, device, .. }| {
        format!(
            "Repair {repair}, entry {seq} of device {device} stands in {name} and not in this folder. {ROLLED_BACK}"
        )
    }))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_hash_is_found_between_what_looks_like_part_of_it() {
        let hash = "ab".repeat(32);
        let found = hashes(&format!("Head{hash}149entries, {}", "12".repeat(10)));
        assert!(found.contains(&hash.parse().unwrap()));
        assert_eq!(hashes(&"a".repeat(63)), []);
    }
}
