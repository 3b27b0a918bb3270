//! What can be searched for, and the same rows in memory.

use std::cmp::Reverse;

use unicode_normalization::UnicodeNormalization;
use unicode_normalization::char::is_combining_mark;

use super::{Register, Row};
use crate::journal::{Fault, Journal, Memory};

/// Returns everything of a row that can be searched for, folded, a line for each value.
pub(super) fn words(row: &Row) -> String {
    let fixed = [&row.number, &row.line, &row.nodes, &row.street];
    let values: Vec<&str> = fixed.into_iter().chain(&row.certificate).chain(&row.lots).map(String::as_str).collect();
    fold(&values.join("\n"))
}

/// Returns `text` in lower case without accents; control characters part words.
pub(super) fn fold(text: &str) -> String {
    let bare = text.nfkd().filter(|letter| !is_combining_mark(*letter)).flat_map(char::to_lowercase);
    bare.map(|letter| if letter.is_control() { '\n' } else { letter }).collect()
}

impl Register for Memory {
    fn count(&self) -> Result<usize, Fault> {
        Ok(self.rows.len())
    }

    fn row(&self, repair: &str) -> Result<Option<Row>, Fault> {
        Ok(self.rows.get(repair).cloned())
    }

    fn list(&self, limit: usize) -> Result<Vec<Row>, Fault> {
        Ok(latest(self, limit, |_| true))
    }

    fn live(&self) -> Result<Vec<Row>, Fault> {
        Ok(latest(self, usize::MAX, |row| row.live))
    }

    fn search(&self, text: &str, limit: usize) -> Result<Vec<Row>, Fault> {
        let text = fold(text);
        let mut parts = text.split_whitespace().peekable();
        if parts.peek().is_none() {
            return Ok(Vec::new());
        }
        let parts: Vec<&str> = parts.collect();
        Ok(latest(self, limit, |row| {
            let words = words(row);
            parts.iter().all(|part| words.contains(part))
        }))
    }

    fn unlisted(&self) -> Result<Vec<String>, Fault> {
        Ok(self.repairs()?.into_iter().filter(|repair| !self.rows.contains_key(repair)).collect())
    }

    fn replace_all(&mut self, rows: &[Row]) -> Result<(), Fault> {
        self.rows = rows.iter().map(|row| (row.repair.clone(), row.tidy())).collect();
        Ok(())
    }
}

fn latest(memory: &Memory, limit: usize, wanted: impl Fn(&Row) -> bool) -> Vec<Row> {
    let mut rows: Vec<&Row> = memory.rows.values().filter(|row| wanted(row)).collect();
    rows.sort_by_key(|row| Reverse((row.changed_ms, &row.repair)));
    rows.into_iter().take(limit).cloned().collect()
}

impl Row {
    /// Returns the row with its lots sorted, each once: the form in which it is kept.
    pub(crate) fn tidy(&self) -> Self {
        let mut row = self.clone();
        row.lots.sort();
        row.lots.dedup();
        row
    }
}
