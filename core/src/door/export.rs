//! What is kept of every repair, as files, sound or broken: read from the data folder without writing to it.

use std::path::Path;

use super::history::History;
use super::record;
use super::repairs::file_name;
use crate::journal::{Damage, Entry, Fault, Journal, SHELF, Sqlite, check, codec};
use crate::procedure::{Record, Repair, replay};

/// The record of one repair as a file.
pub struct Exported {
    pub name: String,
    pub bytes: Vec<u8>,
    /// The first entry that does not fit; the file holds it and all others as they are stored.
    pub damage: Option<Damage>,
}

/// All that can be read of a folder.
pub struct Export {
    /// The shelf first, then the repairs by their ids.
    pub files: Vec<Exported>,
    /// Why not everything could be read, if the journal file itself is damaged.
    pub unread: Option<Fault>,
}

/// Returns the records of a data folder. Also reads a journal that is damaged, that can't be written, or that a newer
/// version wrote, as far as its entries can be reached.
///
/// Errors: there is no journal, or not an entry of it can be read.
pub fn export(folder: &Path) -> Result<Export, Fault> {
    let journal = Sqlite::open_as_stored(&folder.join("journal.sqlite"))?;
    let whole = journal.repairs().and_then(|repairs| {
        let ids = std::iter::once(SHELF.to_owned()).chain(repairs);
        ids.map(|id| Ok((journal.stored(&id)?, id))).collect::<Result<Vec<_>, Fault>>()
    });
    let (chains, unread) = match whole {
        Ok(chains) => (chains, None),
        Err(_) => {
            let (entries, fault) = journal.reached();
            (by_repair(entries), fault)
        }
    };
    let files = chains.iter().filter(|(entries, _)| !entries.is_empty()).map(|(entries, id)| file(id, entries));
    Ok(Export { files: files.collect::<Result<_, Fault>>()?, unread })
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
