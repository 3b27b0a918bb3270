//! Where chains end that were checked before, so that they need not be read again for every request.

use std::collections::HashMap;

use super::chain::Tips;

/// More are forgotten, all at once: a request touches a few.
const MOST: usize = 256;

/// What is known holds as long as no other connection writes to the file.
#[derive(Debug, Default)]
pub(super) struct Known {
    version: i64,
    tips: HashMap<String, Tips>,
}

impl Known {
    /// Returns where a chain ends, if that was learned at this version of the file.
    pub fn tips(&self, version: i64, repair: &str) -> Option<Tips> {
        (self.version == version).then(|| self.tips.get(repair).cloned()).flatten()
    }

    /// Keeps where a chain ends. What was learned at another version is forgotten.
    pub fn learn(&mut self, version: i64, repair: &str, tips: Tips) {
        if self.version != version || self.tips.len() >= MOST {
            self.tips.clear();
        }
        self.version = version;
        self.tips.insert(repair.to_owned(), tips);
    }
}
