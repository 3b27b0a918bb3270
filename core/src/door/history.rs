//! Which entries of a repair count, where two devices went on from the same entry.
//!
//! All entries are kept. Until the foreman chooses, each device goes on with its own; after the choice, what was not
//! chosen is set aside. A join that nobody chose, as older versions wrote it, counts both sides.

use std::collections::{BTreeSet, HashMap};

use crate::journal::{Entry, Fault, Hash, codec, heads_of};
use crate::procedure::repair::Branch;
use crate::procedure::{Event, Record, Repair, replay};

/// How many devices may work at one repair. More are no crew, and would make every look at the repair slow.
pub const MOST_DEVICES: usize = 32;

/// The entries of one repair with what they say, each after all that it follows.
pub struct History {
    pub entries: Vec<Entry>,
    pub records: Vec<Record>,
    places: HashMap<Hash, usize>,
    devices: HashMap<String, usize>,
    /// By entry, then by device: the number of the last entry of that device that it knew, itself included. Empty
    /// where there is one head and no choice, and so everything counts.
    known: Vec<Vec<u64>>,
    heads: Vec<Hash>,
}

impl History {
    /// Reads entries of one repair, which are checked and stand each after those that it follows.
    ///
    /// Errors: an entry that can't be decoded; more than [`MOST_DEVICES`] devices.
    pub fn read(entries: Vec<Entry>) -> Result<Self, Fault> {
        let records = entries.iter().map(codec::decode).collect::<Result<Vec<Record>, _>>()?;
        let mut devices = HashMap::new();
        for entry in &entries {
            let next = devices.len();
            devices.entry(entry.device.clone()).or_insert(next);
        }
        if devices.len() > MOST_DEVICES {
            let what = format!("a repair with entries of {} devices; {MOST_DEVICES} are allowed", devices.len());
            return Err(Fault::Io { what });
        }
        let places = entries.iter().enumerate().map(|(place, entry)| (entry.hash, place)).collect();
        let heads = heads_of(&entries);
        let mut history = Self { entries, records, places, devices, known: vec![], heads };
        if history.heads.len() > 1 || history.records.iter().any(|record| chosen(record).is_some()) {
            history.know();
        }
        Ok(history)
    }

    fn know(&mut self) {
        for entry in &self.entries {
            let mut known = vec![0; self.devices.len()];
            for before in entry.prev.iter().filter_map(|prev| self.known.get(*self.places.get(prev)?)) {
                known.iter_mut().zip(before).for_each(|(most, one)| *most = (*most).max(*one));
            }
            known[self.devices[&entry.device]] = entry.seq;
            self.known.push(known);
        }
    }

    /// Returns the hashes that no entry follows, sorted; several on a branch.
    pub fn heads(&self) -> &[Hash] {
        &self.heads
    }

    /// Returns the head that a device goes on from: of those that follow its own last entry, or of all if it has none,
    /// the one with the most entries behind it. `None` without entries.
    pub fn own(&self, device: &str) -> Option<Hash> {
        if let [only] = self.heads[..] {
            return Some(only);
        }
        let column = self.devices.get(device).copied();
        let last = self.entries.iter().filter(|entry| entry.device == device).map(|entry| entry.seq).max().unwrap_or(0);
        let known = |head: &&Hash| self.places.get(head).map(|place| &self.known[*place]);
        let follows = |head: &&Hash| column.is_none_or(|column| known(head).is_some_and(|known| known[column] >= last));
        let behind = |head: &&Hash| known(head).map_or(0, |known| known.iter().sum::<u64>());
        // Of two that are equally long the first by its hash, so that every device without entries says the same.
        self.heads.iter().rev().filter(follows).max_by_key(behind).copied()
    }

    /// Returns the places of the entries that count at a head, in their order.
    pub fn line(&self, head: Hash) -> BTreeSet<usize> {
        if self.known.is_empty() {
            return (0..self.entries.len()).collect();
        }
        let mut found = BTreeSet::new();
        let mut open: Vec<usize> = self.places.get(&head).copied().into_iter().collect();
        while let Some(place) = open.pop() {
            if found.insert(place) {
                open.extend(self.before(place));
            }
        }
        found
    }

    /// What an entry goes on from. What one of its heads has already set aside or taken in, does not count beside it.
    fn before(&self, place: usize) -> Vec<usize> {
        let entry = &self.entries[place];
        if let Some(head) = chosen(&self.records[place]).and_then(|head| head.parse().ok())
            && entry.prev.contains(&head)
        {
            return self.places.get(&head).copied().into_iter().collect();
        }
        let all: Vec<usize> = entry.prev.iter().filter_map(|prev| self.places.get(prev).copied()).collect();
        let within = |one: usize, other: usize| {
            let entry = &self.entries[one];
            one != other && self.known[other][self.devices[&entry.device]] >= entry.seq
        };
        all.iter().copied().filter(|one| !all.iter().any(|other| within(*one, *other))).collect()
    }

    /// Returns the repair as it stands at a head, with the branches that are open; `None` if the entries open none.
    pub fn repair(&self, head: Hash) -> Option<Repair> {
        let mut repair = replay(self.line(head).into_iter().map(|place| &self.records[place]))?;
        if self.heads.len() > 1 {
            repair.branches = self.heads.iter().filter_map(|one| self.branch(*one, *one == head)).collect();
        }
        Some(repair)
    }

    /// Returns the repair as a device sees it.
    pub fn seen_by(&self, device: &str) -> Option<Repair> {
        self.repair(self.own(device)?)
    }

    fn branch(&self, head: Hash, own: bool) -> Option<Branch> {
        let place = *self.places.get(&head)?;
        let facts = &self.records[place].facts;
        Some(Branch {
            head: head.to_string(),
            device: self.entries[place].device.clone(),
            person: facts.person.clone(),
            at_ms: facts.moment.at_ms,
            own,
        })
    }
}

fn chosen(record: &Record) -> Option<&str> {
    record.events.iter().find_map(|event| match event {
        Event::BranchChosen { head, .. } => Some(head.as_str()),
        _ => None,
    })
}

#[cfg(test)]
mod tests;
