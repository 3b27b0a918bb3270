//! The entries of one repair as a chain: what may come next, where it is broken, in what order it is read.

use std::collections::{BTreeMap, BTreeSet, HashMap};

use super::{Damage, Draft, Entry, Fault, Flaw, Hash, link};

/// Where a checked chain ends: all that the next entry depends on.
#[derive(Clone, Debug, Default)]
pub(super) struct Tips {
    lasts: HashMap<String, (u64, Hash)>,
    heads: BTreeSet<Hash>,
}

impl Tips {
    /// Returns the hashes that no entry follows, sorted: none for an empty chain, several on a branch.
    pub fn heads(&self) -> Vec<Hash> {
        self.heads.iter().copied().collect()
    }

    /// Returns the entry that a draft becomes, and takes it in: it follows `after` and the device's own last entry.
    pub fn write(&mut self, draft: &Draft, after: &[Hash]) -> Entry {
        let last = self.lasts.get(&draft.device);
        let seq = last.map_or(1, |(seq, _)| seq + 1);
        let prev: BTreeSet<Hash> = after.iter().copied().chain(last.map(|(_, hash)| *hash)).collect();
        let prev: Vec<Hash> = prev.into_iter().collect();
        let hash = link(&draft.repair, &draft.device, seq, &prev, &draft.body);
        let (repair, device, body) = (draft.repair.clone(), draft.device.clone(), draft.body.clone());
        let entry = Entry { repair, device, seq, prev, body, hash };
        self.take(&entry);
        entry
    }

    /// Returns the heads that a draft follows: all that it was decided on, or the one of its branch.
    ///
    /// Errors: `Moved` if the heads are no longer those that it was decided on.
    pub fn base(&self, draft: &Draft) -> Result<Vec<Hash>, Fault> {
        let current = draft.heads.iter().copied().collect::<BTreeSet<_>>() == self.heads;
        match draft.branch {
            None if current => Ok(draft.heads.clone()),
            Some(branch) if current && self.heads.contains(&branch) => Ok(vec![branch]),
            _ => Err(Fault::Moved { repair: draft.repair.clone() }),
        }
    }

    fn take(&mut self, entry: &Entry) {
        for prev in &entry.prev {
            self.heads.remove(prev);
        }
        self.heads.insert(entry.hash);
        self.lasts.insert(entry.device.clone(), (entry.seq, entry.hash));
    }
}

/// A chain in which every entry has been checked.
#[derive(Clone, Debug, Default)]
pub(super) struct Chain {
    entries: Vec<Entry>,
    places: HashMap<Hash, usize>,
    tips: Tips,
}

impl Chain {
    /// Returns the chain of entries in stored order, in which each comes after those that it follows.
    ///
    /// Errors: the first entry that does not fit.
    pub fn check(stored: impl IntoIterator<Item = Entry>) -> Result<Self, Damage> {
        let mut chain = Self::default();
        for entry in stored {
            chain.take(entry)?;
        }
        Ok(chain)
    }

    pub fn into_tips(self) -> Tips {
        self.tips
    }

    pub fn len(&self) -> usize {
        self.entries.len()
    }

    /// Returns the entries from a place on, in stored order, and where the chain ends.
    pub fn into_rest(mut self, from: usize) -> (Vec<Entry>, Tips) {
        (self.entries.split_off(from), self.tips)
    }

    pub fn has(&self, entry: &Entry) -> bool {
        self.places.get(&entry.hash).is_some_and(|place| self.entries[*place] == *entry)
    }

    /// Adds an entry that was written elsewhere or before.
    pub fn take(&mut self, entry: Entry) -> Result<(), Damage> {
        if let Some(flaw) = self.flaw(&entry) {
            return Err(Damage { repair: entry.repair, device: entry.device, seq: entry.seq, flaw });
        }
        self.push(entry);
        Ok(())
    }

    fn push(&mut self, entry: Entry) {
        self.tips.take(&entry);
        self.places.insert(entry.hash, self.entries.len());
        self.entries.push(entry);
    }

    fn flaw(&self, entry: &Entry) -> Option<Flaw> {
        if link(&entry.repair, &entry.device, entry.seq, &entry.prev, &entry.body) != entry.hash {
            return Some(Flaw::Altered);
        }
        if !entry.prev.is_sorted_by(|a, b| a < b) {
            return Some(Flaw::Unsorted);
        }
        let last = self.tips.lasts.get(&entry.device);
        let expected = last.map_or(1, |(seq, _)| seq + 1);
        if entry.seq < expected {
            return Some(Flaw::Twin);
        }
        if entry.seq > expected {
            return Some(Flaw::Gap { expected });
        }
        if let Some(prev) = entry.prev.iter().find(|prev| !self.places.contains_key(prev)) {
            return Some(Flaw::Follows { prev: *prev });
        }
        let skipped = last.is_some_and(|(_, own)| !entry.prev.contains(own));
        skipped.then_some(Flaw::OwnSkipped)
    }

    /// Returns the entries in causal order: each after all that it follows; what is free is ordered by device and
    /// number. The same entries come in the same order whatever order they arrived in.
    pub fn into_causal_order(self) -> Vec<Entry> {
        let mut missing: Vec<usize> = self.entries.iter().map(|entry| entry.prev.len()).collect();
        let mut followers: Vec<Vec<usize>> = vec![Vec::new(); self.entries.len()];
        for (place, entry) in self.entries.iter().enumerate() {
            entry.prev.iter().for_each(|prev| followers[self.places[prev]].push(place));
        }
        let key = |place: usize| (self.entries[place].device.clone(), self.entries[place].seq);
        let free = (0..missing.len()).filter(|place| missing[*place] == 0);
        let mut free: BTreeMap<_, usize> = free.map(|place| (key(place), place)).collect();
        let mut order = Vec::with_capacity(self.entries.len());
        while let Some((_, place)) = free.pop_first() {
            order.push(place);
            for follower in &followers[place] {
                missing[*follower] -= 1;
                if missing[*follower] == 0 {
                    free.insert(key(*follower), *follower);
                }
            }
        }
        let mut entries: Vec<Option<Entry>> = self.entries.into_iter().map(Some).collect();
        order.into_iter().filter_map(|place| entries[place].take()).collect()
    }
}
