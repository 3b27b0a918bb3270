//! Requests about backups, and how the storage is: space, and the age of the last backup.

use std::fs::File;
use std::io::BufWriter;
use std::path::Path;

use serde::Serialize;

use super::pieces::{self, Arriving};
use super::response::{Answer, Problem};
use super::store::Writing;
use super::{App, Visit, with_writing};
use crate::facts::{Facts, Sensed};
use crate::journal::Hash;
use crate::register::Register;
use crate::seal::Secret;
use crate::shelf::ShelfEvent;

pub use super::backup::Restored;
use super::bundles::{MadeFile, stamp};

/// A backup older than this is asked for: seven days. Our own choice, no source.
const OLD_MS: i64 = 7 * 24 * 3_600_000;

/// Less free space than this is said: 500 MB, a hundred photos or so. Our own choice, no source.
const LOW_BYTES: u64 = 500_000_000;

/// How the storage of this folder is.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct Storage {
    /// Bytes that are free where the folder lies, as far as the device tells.
    pub free_bytes: Option<u64>,
    pub low: bool,
    /// When the last backup was made, by the wall clock.
    pub backed_up_ms: Option<i64>,
    /// There is something to back up, and the last backup is old or there is none.
    pub backup_due: bool,
}

impl Visit<'_> {
    /// Makes a backup, encrypted with the password of the envelope, to be fetched piece by piece.
    pub(super) fn back_up(&mut self) -> Result<Answer, Problem> {
        let name = format!("mendline-{}.tar.age", stamp(self.facts.moment.at_ms));
        let path = pieces::leaving(&self.store.folder, &name)?;
        let passphrase = self.password.clone().unwrap_or_default();
        let made = File::create(&path).map_err(|why| pieces::failed(&why));
        let written = made.and_then(|file| self.store.back_up(&passphrase, BufWriter::new(file)));
        let files = written.inspect_err(|_| drop(std::fs::remove_file(&path)))?;
        let bytes = path.metadata().map_err(|why| pieces::failed(&why))?.len();
        Ok(Answer::Made(MadeFile { name, bytes, files, ..MadeFile::default() }))
    }

    /// Notes that a backup was saved.
    pub(super) fn note_backup(&mut self, name: &str, bytes: u64) -> Result<Answer, Problem> {
        let event = ShelfEvent::BackedUp { name: name.to_owned(), bytes };
        self.store.shelf()?;
        with_writing(self, |store, writing| store.record_shelf(writing, vec![event]))?;
        self.today()
    }

    /// Restores the backup that was brought, opened by the password of the envelope. A refused one stays for another try
    /// with another passphrase.
    pub(super) fn restore(&mut self, name: &str, of: u64) -> Result<Answer, Problem> {
        let brought = Arriving::of(&self.store.folder, name, of)?;
        let passphrase = self.password.clone().unwrap_or_default();
        let restored = self.store.restore(brought.whole()?, &passphrase);
        let again = |problem: &Problem| matches!(problem, Problem::Error { code, .. } if code == "passphrase_wrong" || code == "io");
        if restored.as_ref().err().is_none_or(|problem| !again(problem)) {
            brought.drop();
        }
        let Restored { repairs, files, damaged } = restored?;
        Ok(Answer::Restored { repairs, files, damaged })
    }

    pub(super) fn storage(&mut self) -> Result<Storage, Problem> {
        let free_bytes = self.store.free_bytes;
        let backed_up_ms = self.store.shelf().ok().and_then(|shelf| shelf.backed_up_ms);
        let old = backed_up_ms.is_none_or(|at_ms| self.facts.moment.at_ms - at_ms > OLD_MS);
        Ok(Storage {
            free_bytes,
            low: free_bytes.is_some_and(|free| free < LOW_BYTES),
            backed_up_ms,
            // One row is enough to know: counting all chains would take longer with every repair.
            backup_due: old && !self.store.journal.list(1)?.is_empty(),
        })
    }
}

impl App {
    /// Says how many bytes are free where the folder lies; `None` where the device does not tell.
    pub fn set_free_bytes(&mut self, free_bytes: Option<u64>) {
        self.store.free_bytes = free_bytes;
    }

    /// Writes a backup to a new file and notes it. Returns how many files went in.
    ///
    /// Errors: a sentence; a file of that name is left as it is.
    pub fn back_up(&mut self, passphrase: &Secret, out: &Path, sensed: &Sensed) -> Result<usize, String> {
        let io = |why: std::io::Error| format!("{}: {why}", out.display());
        let file = File::create_new(out).map_err(io)?;
        let written = self.store.back_up(passphrase, BufWriter::new(&file)).map_err(words);
        let files = written.inspect_err(|_| drop(std::fs::remove_file(out)))?;
        file.sync_all().map_err(io)?;
        let bytes = file.metadata().map_err(io)?.len();
        let name = out.file_name().map_or_else(String::new, |name| name.to_string_lossy().into_owned());
        let facts = Facts { moment: sensed.moment.clone(), device: sensed.device.clone(), ..Facts::default() };
        let request: String = sensed.fresh.iter().map(|byte| format!("{byte:02x}")).collect();
        let request_hash = Hash::of(name.as_bytes());
        self.store.shelf().map_err(|fault| fault.to_string())?;
        // A folder that can only be read is backed up all the same; then nobody notes it.
        if self.store.journal.writable().is_ok() {
            let writing = Writing { request: &request, request_hash, facts: &facts, real: &facts };
            self.store.record_shelf(&writing, vec![ShelfEvent::BackedUp { name, bytes }]).map_err(words)?;
        }
        Ok(files)
    }

    /// Brings a backup into this folder, which must be empty.
    ///
    /// Errors: a sentence; nothing was restored.
    pub fn restore(&mut self, input: File, passphrase: &Secret, device: &str) -> Result<Restored, String> {
        self.store.asked_by(device);
        self.store.restore(input, passphrase).map_err(words)
    }
}

fn words(problem: Problem) -> String {
    match problem {
        Problem::Error { says, .. } => says,
        Problem::Refused(broken) => broken.into_iter().map(|one| one.says).collect::<Vec<_>>().join(" "),
    }
}
