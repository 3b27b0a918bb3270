//! What is kept of every repair, as files, sound or broken: read from the data folder without writing to it.

use std::collections::BTreeSet;
use std::path::Path;

use super::history::History;
use super::record;
use super::repairs::file_name;
use crate::journal::{Damage, Entry, Fault, Journal, NUMBERS, SHELF, Sqlite, check, codec};
use crate::procedure::{Record, Repair, replay};

/// The record of one repair as a file.
pub struct Exported {
    pub name: String,
    pub bytes: Vec<u8>,
    /// The first entry that does not fit; the file holds it and all others as they are stored.
    pub damage: Option<Damage>,
}

/// Hands out the records of a data folder one by one: the streams that are no repair's first, then the repairs by their
/// ids. Also reads a journal that is damaged, that can't be written, or that a newer version wrote, as far as its entries
/// can be reached. Returns why not everything could be read, if the journal file itself is damaged.
///
/// One record is held at a time; of a damaged journal all that is left.
/// Errors: there is no journal, or not an entry of it can be read; what `take` says.
pub fn export<Stop: From<Fault>>(
    folder: &Path,
    mut take: impl FnMut(Exported) -> Result<(), Stop>,
) -> Result<Option<Fault>, Stop> {
    let journal = Sqlite::open_as_stored(&folder.join("journal.sqlite"))?;
    let mut out = BTreeSet::new();
    let Ok(repairs) = journal.repairs() else { return reached(&journal, &out, take) };
    for id in [SHELF, NUMBERS].map(str::to_owned).into_iter().chain(repairs) {
        let Ok(entries) = journal.stored(&id) else { return reached(&journal, &out, take) };
        if !entries.is_empty() {
            take(file(&id, &entries)?)?;
        }
        out.insert(id);
    }
    Ok(None)
}

/// Hands out what a walk through a damaged file still reaches, but for what is out already.
fn reached<Stop: From<Fault>>(
    journal: &Sqlite,
    out: &BTreeSet<String>,
    mut take: impl FnMut(Exported) -> Result<(), Stop>,
) -> Result<Option<Fault>, Stop> {
    let (entries, fault) = journal.reached();
    for (entries, id) in by_repair(entries).into_iter().filter(|(_, id)| !out.contains(id)) {
        take(file(&id, &entries)?)?;
    }
    Ok(fault)
}

/// Returns the entries of each repair, in the order in which they are stored.
fn by_repair(entries: Vec<Entry>) -> Vec<(Vec<Entry>, String)> {
    let mut chains = std::collections::BTreeMap::<String, Vec<Entry>>::new();
    for entry in entries {
        chains.entry(entry.repair.clone()).or_default().push(entry);
    }
    chains.into_iter().map(|(id, entries)| (entries, id)).collect()
}

/// Returns the record of one repair as it is stored.
///
/// Errors: the record can't be put into its form.
pub fn file(id: &str, entries: &[Entry]) -> Result<Exported, Fault> {
    let damage = match check(entries) {
        Err(Fault::Unsound(damage)) => Some(damage),
        _ => None,
    };
    let bytes = record::write_as_stored(id, followed(entries).as_ref(), entries)?;
    Ok(Exported { name: format!("{}-record.json", file_name(id)), bytes, damage })
}

/// Returns the repair as far as its entries can be followed.
fn followed(entries: &[Entry]) -> Option<Repair> {
    let whole = check(entries).ok().and_then(|()| History::read(entries.to_vec()).ok());
    whole.map_or_else(
        || {
            let records: Vec<Record> = entries.iter().map_while(|entry| codec::decode(entry).ok()).collect();
            replay(&records)
        },
        |history| history.seen_by(""),
    )
}
