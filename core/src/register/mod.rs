//! The register: lists, live holds, lots and search, in rows beside the journal.
//!
//! A row is written in the same transaction as the entries that it sums up, and can be made anew from them: dropping
//! the register loses nothing.

mod search;
pub(crate) mod store;

use serde::{Deserialize, Serialize};

use crate::journal::Fault;

/// What the lists show of one repair. Plain data: what the words mean is settled by those who write them.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Row {
    pub repair: String,
    /// The number that people use for it.
    pub number: String,
    pub line: String,
    pub nodes: String,
    pub street: String,
    /// Whether a clock is running in it.
    pub live: bool,
    /// When it was last written to: Unix time in ms.
    pub changed_ms: i64,
    pub certificate: Option<String>,
    /// Lots of material used in it; order and repeats don't matter.
    pub lots: Vec<String>,
    /// The rest that a list shows, as JSON bytes.
    pub summary: Vec<u8>,
}

/// Reads the rows. Lists come with the latest change first; rows changed in the same millisecond by descending id.
pub trait Register {
    /// Returns how many repairs are listed.
    fn count(&self) -> Result<usize, Fault>;

    /// Returns the row of a repair.
    fn row(&self, repair: &str) -> Result<Option<Row>, Fault>;

    /// Returns at most `limit` rows, from the latest on.
    fn list(&self, limit: usize) -> Result<Vec<Row>, Fault>;

    /// Returns all rows in which a clock is running.
    fn live(&self) -> Result<Vec<Row>, Fault>;

    /// Returns at most `limit` rows in which every word of `text` occurs in the number, line, nodes, street,
    /// certificate or a lot. Capitals and accents don't matter. No words find nothing.
    fn search(&self, text: &str, limit: usize) -> Result<Vec<Row>, Fault>;

    /// Returns the repairs that have entries but no row, sorted: anything here means that the register must be
    /// rebuilt.
    fn unlisted(&self) -> Result<Vec<String>, Fault>;

    /// Replaces the whole register by `rows`, in one transaction.
    fn replace_all(&mut self, rows: &[Row]) -> Result<(), Fault>;
}

#[cfg(test)]
mod tests;
