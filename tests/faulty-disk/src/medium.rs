//! What is on the disk, what is only in its cache, and what a power cut leaves of it.

use std::collections::BTreeMap;

use crate::chance::Chance;

/// A disk writes a sector whole or not at all; a longer write may be torn between sectors.
pub const SECTOR: usize = 512;

/// What the disk answers from now on, in place of doing what it is asked.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Refusal {
    #[default]
    None,
    /// Nothing more fits.
    Full,
    /// Files open for reading only.
    ReadOnly,
    /// Files don't open at all.
    NoPermission,
    /// Another process holds every lock.
    Locked,
    /// Reading and writing fail.
    Broken,
}

/// Files by name.
#[derive(Clone, Debug, Default)]
pub struct Medium {
    files: BTreeMap<String, File>,
    /// Taken out, but not yet on the disk.
    removed: BTreeMap<String, File>,
    /// A disk that lies says that everything is written, and writes when it likes.
    pub lies: bool,
    pub refusal: Refusal,
    /// How many more changes happen before the power goes; `None` for a reliable supply.
    pub changes_left: Option<u64>,
    pub changes: u64,
}

#[derive(Clone, Debug, Default)]
struct File {
    now: Vec<u8>,
    /// As of the last sync, or `None` if not even the name is on the disk.
    synced: Option<Vec<u8>>,
    cached: Vec<Change>,
}

#[derive(Clone, Debug)]
enum Change {
    Write { at: usize, bytes: Vec<u8> },
    Cut { to: usize },
}

/// The power is gone; every call fails until it is back.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct NoPower;

impl Medium {
    pub fn has(&self, name: &str) -> bool {
        self.files.contains_key(name)
    }

    pub fn make(&mut self, name: &str) {
        self.files.entry(name.to_owned()).or_default();
    }

    pub fn bytes(&self, name: &str) -> &[u8] {
        self.files.get(name).map_or(&[], |file| &file.now)
    }

    /// Puts a file on the disk as it is, cache and all.
    pub fn put(&mut self, name: &str, bytes: &[u8]) {
        let file = File { now: bytes.to_vec(), synced: Some(bytes.to_vec()), cached: vec![] };
        self.files.insert(name.to_owned(), file);
    }

    pub fn write(&mut self, name: &str, at: usize, bytes: &[u8]) -> Result<(), NoPower> {
        self.change(name, Change::Write { at, bytes: bytes.to_vec() })
    }

    pub fn cut(&mut self, name: &str, to: usize) -> Result<(), NoPower> {
        self.change(name, Change::Cut { to })
    }

    /// The change under which the power goes is still in the cache, and may be torn.
    fn change(&mut self, name: &str, change: Change) -> Result<(), NoPower> {
        self.has_power()?;
        if let Some(file) = self.files.get_mut(name) {
            change.on(&mut file.now);
            file.cached.push(change);
        }
        self.spend()
    }

    /// With the first sync of a new journal or log, SQLite syncs the folder too: then every name in it is on the disk,
    /// and every file that was taken out is gone.
    ///
    /// Source: SQLite's `os_unix.c`, `UNIXFILE_DIRSYNC`.
    pub fn sync(&mut self, name: &str) -> Result<(), NoPower> {
        self.spend()?;
        let Some(file) = self.files.get_mut(name).filter(|_| !self.lies) else { return Ok(()) };
        let syncs_folder = file.synced.is_none() && (name.ends_with("-wal") || name.ends_with("-journal"));
        file.synced = Some(file.now.clone());
        file.cached.clear();
        if syncs_folder {
            self.removed.clear();
            for file in self.files.values_mut() {
                file.synced.get_or_insert_default();
            }
        }
        Ok(())
    }

    pub fn remove(&mut self, name: &str, and_sync: bool) -> Result<(), NoPower> {
        self.has_power()?;
        let file = self.files.remove(name);
        if let Some(file) = file.filter(|file| file.synced.is_some() && (!and_sync || self.lies)) {
            self.removed.insert(name.to_owned(), file);
        }
        self.spend()
    }

    pub fn has_power(&self) -> Result<(), NoPower> {
        if self.changes_left == Some(0) { Err(NoPower) } else { Ok(()) }
    }

    fn spend(&mut self) -> Result<(), NoPower> {
        self.has_power()?;
        self.changes += 1;
        self.changes_left = self.changes_left.map(|left| left - 1);
        self.has_power()
    }

    /// Cuts the power and switches it on again: of what was not synced, chance decides what is on the disk, sector by
    /// sector and in no order.
    pub fn cut_power(&mut self, chance: &mut Chance) {
        let kept_pct = [0, 25, 50, 75, 95, 100][chance.below(6) as usize];
        for (name, file) in std::mem::take(&mut self.removed) {
            if !self.files.contains_key(&name) && chance.happens(50) {
                self.files.insert(name, file);
            }
        }
        self.files.retain(|_, file| file.synced.is_some() || chance.happens(kept_pct));
        for file in self.files.values_mut() {
            let mut left = file.synced.take().unwrap_or_default();
            file.cached.drain(..).for_each(|change| change.in_part(&mut left, kept_pct, chance));
            file.now.clone_from(&left);
            file.synced = Some(left);
        }
        self.changes_left = None;
    }
}

impl Change {
    fn on(&self, bytes: &mut Vec<u8>) {
        match self {
            Self::Cut { to } => bytes.truncate(*to),
            Self::Write { at, bytes: fresh } => lay(bytes, *at, fresh),
        }
    }

    fn in_part(&self, bytes: &mut Vec<u8>, kept_pct: u64, chance: &mut Chance) {
        match self {
            Self::Cut { .. } if chance.happens(kept_pct) => self.on(bytes),
            Self::Cut { .. } => {}
            Self::Write { at, bytes: fresh } => {
                let (mut from, end) = (*at, at + fresh.len());
                while from < end {
                    let to = end.min((from / SECTOR + 1) * SECTOR);
                    if chance.happens(kept_pct) {
                        lay(bytes, from, &fresh[from - at..to - at]);
                    }
                    from = to;
                }
            }
        }
    }
}

/// What lies before the start and was never written is zero.
fn lay(bytes: &mut Vec<u8>, at: usize, fresh: &[u8]) {
    let end = at + fresh.len();
    if bytes.len() < end {
        bytes.resize(end, 0);
    }
    bytes[at..end].copy_from_slice(fresh);
}
