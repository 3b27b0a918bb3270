//! The journal: what happened, in entries that are only ever added.
//!
//! It sees bytes and links, never what they mean. Every entry of a repair names the entries before it by their hash,
//! so nothing between the first entry and a head can be changed or taken out unseen. A chain can't see its own tail
//! cut off or a rewrite of the whole: that is why every certificate prints and signs the head.

mod chain;
pub mod codec;
mod copy;
mod fault;
mod known;
mod link;
mod memory;
mod plan;
mod reading;
pub(crate) mod schema;
pub(crate) mod sqlite;
mod sweep;

use serde::{Deserialize, Serialize};

use crate::register::Row;
use chain::Chain;
pub use fault::{Damage, Fault, Flaw};
pub use link::{Hash, NotAHash, link};
pub use memory::Memory;
pub use sqlite::Sqlite;

/// The stream that holds what belongs to no single repair: contract, data sheets, people, inspections.
pub const SHELF: &str = "shelf";

/// The stream that holds the certificate numbers that were taken: apart from the shelf, which every request reads.
pub const NUMBERS: &str = "numbers";

/// Says whether a stream is no repair's.
pub fn is_reserved(stream: &str) -> bool {
    [SHELF, NUMBERS].contains(&stream)
}

/// An entry as it is stored.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Entry {
    pub repair: String,
    pub device: String,
    /// Counts the entries of this device in this repair, from 1.
    pub seq: u64,
    /// The device's own last entry of this repair and every foreign head that it had seen; sorted, each once.
    pub prev: Vec<Hash>,
    pub body: Vec<u8>,
    /// `link` over all of the above.
    pub hash: Hash,
}

/// An entry to be written by this device.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Draft {
    pub repair: String,
    pub device: String,
    /// All heads of the repair when this was decided. Two drafts for one repair in one write share them, and the
    /// second follows the first.
    pub heads: Vec<Hash>,
    /// `None` follows all heads, which joins a branch. `Some` follows that head alone and leaves the branch open,
    /// unless the device's own last entry is another head: a device always follows itself.
    pub branch: Option<Hash>,
    pub body: Vec<u8>,
}

/// All that one request writes, in one transaction: everything or nothing.
#[derive(Clone, Debug)]
pub struct Write<'a> {
    pub request: &'a str,
    pub request_hash: Hash,
    /// Entries of other devices, each after those that it follows. Those already here are passed over.
    pub received: Vec<Entry>,
    /// Written after `received`.
    pub drafts: Vec<Draft>,
    pub rows: Vec<Row>,
    pub answer: Vec<u8>,
}

/// What became of a write.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Appended {
    /// The entries that are new here: first those received, then those drafted.
    Written(Vec<Entry>),
    /// The same request was answered before. Nothing was written; this was the answer.
    Repeated(Vec<u8>),
}

/// A place where entries are kept. Append-only: no method changes or takes out an entry.
pub trait Journal {
    /// Returns the entries of a repair as they are stored, in the order they arrived, without any check: for
    /// exporting a broken chain. Empty for an unknown repair.
    fn stored(&self, repair: &str) -> Result<Vec<Entry>, Fault>;

    /// Returns the ids of all repairs, sorted, without the streams that are no repair's.
    fn repairs(&self) -> Result<Vec<String>, Fault>;

    /// Returns the hash and the answer of a request that was written, or `None` for a new one.
    fn answered(&self, request: &str) -> Result<Option<(Hash, Vec<u8>)>, Fault>;

    /// Writes all of a request, or nothing.
    ///
    /// Errors: `Moved` if a repair's heads are not those that a draft was decided on; `RequestReused` if the id was
    /// written with another hash; `Damaged` if a repair's stored chain is broken; `Unsound` if a received entry does
    /// not fit; `Locked`, `DiskFull`, `ReadOnly`, `Corrupt`, `Io` as the disk has it.
    fn append(&mut self, write: &Write) -> Result<Appended, Fault>;

    /// Returns the checked entries of a repair in causal order: each after all that it follows, otherwise by device
    /// and number; the same on every machine that holds the same entries. Empty for an unknown repair.
    ///
    /// Errors: `Damaged`, naming the first bad entry.
    fn entries(&self, repair: &str) -> Result<Vec<Entry>, Fault> {
        let chain = Chain::check(self.stored(repair)?).map_err(Fault::Damaged)?;
        Ok(chain.into_causal_order())
    }

    /// Returns the checked heads of a repair, sorted: none for an unknown repair, several on a branch.
    ///
    /// Errors: `Damaged`, naming the first bad entry.
    fn heads(&self, repair: &str) -> Result<Vec<Hash>, Fault> {
        let chain = Chain::check(self.stored(repair)?).map_err(Fault::Damaged)?;
        Ok(chain.into_tips().heads())
    }

    /// Checks the chain of one repair. Errors: `Damaged`, naming the first bad entry.
    fn verify(&self, repair: &str) -> Result<(), Fault> {
        Chain::check(self.stored(repair)?).map(drop).map_err(Fault::Damaged)
    }

    /// Returns the first bad entry of every broken chain, the shelf's first; empty if all are sound.
    ///
    /// Errors: `Corrupt` if the chains are sound but the file is not.
    fn verify_all(&self) -> Result<Vec<Damage>, Fault> {
        broken_chains(self)
    }
}

fn broken_chains(journal: &(impl Journal + ?Sized)) -> Result<Vec<Damage>, Fault> {
    let mut damages = Vec::new();
    for repair in [SHELF, NUMBERS].map(str::to_owned).into_iter().chain(journal.repairs()?) {
        damages.extend(Chain::check(journal.stored(&repair)?).err());
    }
    Ok(damages)
}

/// Returns the hashes that none of `entries` follows, sorted.
pub fn heads_of(entries: &[Entry]) -> Vec<Hash> {
    let mut heads: std::collections::BTreeSet<Hash> = entries.iter().map(|entry| entry.hash).collect();
    for prev in entries.iter().flat_map(|entry| &entry.prev) {
        heads.remove(prev);
    }
    heads.into_iter().collect()
}

/// Checks entries that lie outside a journal, as [`check`], and returns them.
///
/// Errors: as [`check`].
pub fn checked(entries: Vec<Entry>) -> Result<Vec<Entry>, Fault> {
    Chain::check(entries).map(|chain| chain.into_rest(0).0).map_err(Fault::Unsound)
}

/// Checks entries that lie outside a journal (in a bundle), each after those that it follows, all of one repair.
///
/// Errors: `Unsound`, naming the first bad entry.
pub fn check(entries: &[Entry]) -> Result<(), Fault> {
    Chain::check(entries.iter().cloned()).map(drop).map_err(Fault::Unsound)
}

#[cfg(test)]
mod tests;

/// Returns entries of one repair in causal order: each after all that it follows, otherwise by device and number.
///
/// Errors: `Unsound`, naming the first entry that does not follow from those before it.
pub fn in_order(entries: &[Entry]) -> Result<Vec<Entry>, Fault> {
    let chain = Chain::check(entries.iter().cloned()).map_err(Fault::Unsound)?;
    Ok(chain.into_causal_order())
}
