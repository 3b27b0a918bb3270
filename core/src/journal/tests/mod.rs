//! What the journal's tests share: worlds and small builders.

mod branches;
mod killed;
mod on_file;
mod promises;
mod swept;
mod tampered;

use std::path::Path;

use super::*;
use crate::register::Register;

const REPAIR: &str = "QM-26-014";

/// A journal, how to open it again, and how to look at what it kept.
trait World {
    type Kept: Journal + Register;
    fn start() -> Self;
    fn kept(&mut self) -> &mut Self::Kept;
    fn open_again(&mut self);
}

struct InMemory(Memory);

impl World for InMemory {
    type Kept = Memory;
    fn start() -> Self {
        Self(Memory::new())
    }
    fn kept(&mut self) -> &mut Memory {
        &mut self.0
    }
    fn open_again(&mut self) {}
}

struct OnDisk {
    folder: tempfile::TempDir,
    kept: Sqlite,
}

impl World for OnDisk {
    type Kept = Sqlite;
    fn start() -> Self {
        let folder = tempfile::tempdir().unwrap();
        let kept = Sqlite::open(&file(folder.path())).unwrap();
        Self { folder, kept }
    }
    fn kept(&mut self) -> &mut Sqlite {
        &mut self.kept
    }
    fn open_again(&mut self) {
        self.kept = Sqlite::open(&file(self.folder.path())).unwrap();
    }
}

fn file(folder: &Path) -> std::path::PathBuf {
    folder.join("journal.sqlite")
}

fn draft(heads: Vec<Hash>, body: &str) -> Draft {
    Draft { repair: REPAIR.into(), device: "phone".into(), heads, branch: None, body: body.into() }
}

fn write(request: &str, drafts: Vec<Draft>) -> Write<'_> {
    let request_hash = Hash::of(request.as_bytes());
    Write { request, request_hash, received: vec![], drafts, rows: vec![], answer: request.into() }
}

fn written(appended: Result<Appended, Fault>) -> Vec<Entry> {
    match appended {
        Ok(Appended::Written(entries)) => entries,
        other => panic!("not written: {other:?}"),
    }
}

/// Appends one entry on the present heads.
fn add(journal: &mut impl Journal, request: &str) -> Entry {
    let heads = journal.heads(REPAIR).unwrap();
    written(journal.append(&write(request, vec![draft(heads, request)]))).remove(0)
}

/// An entry of another device.
fn foreign(device: &str, seq: u64, prev: Vec<Hash>, body: &str) -> Entry {
    let hash = link(REPAIR, device, seq, &prev, body.as_bytes());
    Entry { repair: REPAIR.into(), device: device.into(), seq, prev, body: body.into(), hash }
}

fn receive(journal: &mut impl Journal, request: &str, received: Vec<Entry>) -> Result<Appended, Fault> {
    journal.append(&Write { received, ..write(request, vec![]) })
}

fn sorted(hashes: &[Hash]) -> Vec<Hash> {
    let mut hashes = hashes.to_vec();
    hashes.sort();
    hashes
}
