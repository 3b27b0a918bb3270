//! The whole data folder as one encrypted file, and back: a tar archive in the age format (age-encryption.org/v1).
//!
//! In it go the journal, as SQLite's own backup copies it while others may write, the photos, the certificates and the
//! keys of people. What names the device stays with the device, so that two folders never write as one.

use std::fs::{self, File};
use std::io::{self, BufReader, Read, Write};
use std::path::{Component, Path, PathBuf};

use age::secrecy::SecretString;
use age::{DecryptError, Decryptor, Encryptor, scrypt};

use super::pieces::failed;
use super::response::Problem;
use super::store::Store;
use crate::journal::{Journal, SHELF, Sqlite};
use crate::seal::Secret;

/// The fewest characters of a passphrase.
const LEAST: usize = 10;

/// 2 to this power rounds of scrypt: a second or so on a phone, and 128 MiB. Source: RFC 7914 with r = 8, p = 1.
const WORK: u8 = 17;

/// A file that asks for more is refused: it would take minutes and gigabytes.
const MOST_WORK: u8 = 20;

const JOURNAL: &str = "journal.sqlite";
const FOLDERS: [&str; 3] = ["photos", "certificates", "keys"];

/// Where a backup is unpacked before it counts.
const RESTORING: &str = "restoring";

/// What came back.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Restored {
    pub repairs: usize,
    pub files: usize,
    /// Chains that were broken when the backup was made. They are as they were.
    pub damaged: usize,
}

impl Store {
    /// Writes a backup and returns how many files went in.
    ///
    /// Errors: `passphrase_weak`; the folder can't be read, or `out` not written.
    pub(super) fn back_up<W: Write>(&self, passphrase: &Secret, out: W) -> Result<usize, Problem> {
        strong(passphrase)?;
        let copy = self.folder.join("leaving").join(JOURNAL);
        fs::create_dir_all(self.folder.join("leaving")).map_err(|why| failed(&why))?;
        self.journal.copy_to(&copy)?;
        let written = write(&self.folder, &copy, passphrase, out).map_err(|why| failed(&why));
        fs::remove_file(&copy).map_err(|why| failed(&why))?;
        written
    }

    /// Brings a backup into this folder, which must be empty. All of it counts, or nothing.
    ///
    /// Errors: `not_empty`; `passphrase_wrong`; `backup_unreadable` with what is wrong; `newer`; the disk's.
    pub(super) fn restore(&mut self, input: File, passphrase: &Secret) -> Result<Restored, Problem> {
        self.journal.writable()?;
        if !self.journal.repairs()?.is_empty() || !self.journal.stored(SHELF)?.is_empty() {
            let says = "This folder holds a record already. Nothing was changed. Restore into an empty folder, or a fresh installation.";
            return Err(Problem::error("not_empty", says));
        }
        let place = self.folder.join(RESTORING);
        let _ = fs::remove_dir_all(&place);
        let outcome = self.unpacked(&place, input, passphrase);
        let _ = fs::remove_dir_all(&place);
        outcome
    }

    fn unpacked(&mut self, place: &Path, input: File, passphrase: &Secret) -> Result<Restored, Problem> {
        let files = unpack(place, input, passphrase)?;
        let from = place.join(JOURNAL);
        if !from.is_file() {
            return Err(unreadable("there is no journal in it"));
        }
        let damaged = Sqlite::open(&from)?.verify_all()?.len();
        // Files first: until the journal names them, nobody sees them.
        for folder in FOLDERS {
            move_in(&place.join(folder), &self.folder.join(folder)).map_err(|why| failed(&why))?;
        }
        self.journal.become_copy_of(&from)?;
        self.forget();
        Ok(Restored { repairs: self.rebuild()?, files, damaged })
    }
}

fn strong(passphrase: &Secret) -> Result<(), Problem> {
    let text = passphrase.as_str();
    if text.chars().count() < LEAST || passphrase.strong_enough().is_err() {
        let says = format!("The passphrase needs {LEAST} characters or more, not all the same. Four words are good.");
        return Err(Problem::error("passphrase_weak", says));
    }
    Ok(())
}

fn write<W: Write>(folder: &Path, journal: &Path, passphrase: &Secret, out: W) -> io::Result<usize> {
    let mut recipient = scrypt::Recipient::new(SecretString::from(passphrase.as_str().to_owned()));
    recipient.set_work_factor(WORK);
    let encryptor = Encryptor::with_recipients(std::iter::once(&recipient as &dyn age::Recipient));
    let sealed = encryptor.map_err(io::Error::other)?.wrap_output(out)?;
    let mut archive = tar::Builder::new(sealed);
    archive.mode(tar::HeaderMode::Deterministic);
    archive.append_path_with_name(journal, JOURNAL)?;
    let mut files = 1;
    for name in FOLDERS {
        for path in files_below(&folder.join(name))? {
            let inside = path.strip_prefix(folder).map_err(io::Error::other)?;
            if sound(inside) {
                archive.append_path_with_name(&path, inside)?;
                files += 1;
            }
        }
    }
    archive.into_inner()?.finish()?.flush()?;
    Ok(files)
}

/// Returns the files below a folder, sorted; none if there is no such folder.
fn files_below(folder: &Path) -> io::Result<Vec<PathBuf>> {
    let mut found = vec![];
    let listed = match fs::read_dir(folder) {
        Err(why) if why.kind() == io::ErrorKind::NotFound => return Ok(found),
        listed => listed?,
    };
    for file in listed {
        let file = file?;
        match file.file_type()? {
            kind if kind.is_dir() => found.extend(files_below(&file.path())?),
            kind if kind.is_file() => found.push(file.path()),
            _ => {}
        }
    }
    found.sort();
    Ok(found)
}

/// Says whether a path inside a backup is one of ours: plain names below the known folders, nothing that leads elsewhere.
fn sound(path: &Path) -> bool {
    let names: Option<Vec<&str>> = path
        .components()
        .map(|part| match part {
            Component::Normal(name) => name.to_str(),
            _ => None,
        })
        .collect();
    let plain = |name: &&str| {
        !name.starts_with('.') && name.bytes().all(|letter| letter.is_ascii_alphanumeric() || b"-_.".contains(&letter))
    };
    match names.as_deref() {
        Some([JOURNAL]) => true,
        Some([folder, rest @ ..]) => {
            FOLDERS.contains(folder) && (1..=2).contains(&rest.len()) && rest.iter().all(plain)
        }
        _ => false,
    }
}

fn unpack(place: &Path, input: File, passphrase: &Secret) -> Result<usize, Problem> {
    let decryptor = Decryptor::new_buffered(BufReader::new(input)).map_err(wrong)?;
    if !decryptor.is_scrypt() {
        return Err(unreadable("it was not made with a passphrase"));
    }
    let mut identity = scrypt::Identity::new(SecretString::from(passphrase.as_str().to_owned()));
    identity.set_max_work_factor(MOST_WORK);
    let opened = decryptor.decrypt(std::iter::once(&identity as &dyn age::Identity)).map_err(wrong)?;
    let mut archive = tar::Archive::new(opened);
    let mut files = 0;
    for entry in archive.entries().map_err(torn)? {
        let mut entry = entry.map_err(torn)?;
        let inside = entry.path().map_err(torn)?.into_owned();
        if entry.header().entry_type() != tar::EntryType::Regular || !sound(&inside) {
            return Err(unreadable(&format!("it holds {}, which is nothing of ours", inside.display())));
        }
        keep(&place.join(inside), &mut entry)?;
        files += 1;
    }
    // The age format proves its own end: a file that was cut off is found here at the latest.
    io::copy(&mut archive.into_inner(), &mut io::sink()).map_err(torn)?;
    Ok(files)
}

fn keep(path: &Path, bytes: &mut impl Read) -> Result<(), Problem> {
    if let Some(folder) = path.parent() {
        fs::create_dir_all(folder).map_err(|why| failed(&why))?;
    }
    let mut options = File::options();
    options.write(true).create_new(true);
    #[cfg(unix)]
    std::os::unix::fs::OpenOptionsExt::mode(&mut options, 0o600);
    let mut file = options.open(path).map_err(|why| failed(&why))?;
    let mut chunk = vec![0; 64 << 10];
    loop {
        let count = bytes.read(&mut chunk).map_err(torn)?;
        if count == 0 {
            return file.sync_all().map_err(|why| failed(&why));
        }
        file.write_all(&chunk[..count]).map_err(|why| failed(&why))?;
    }
}

/// Moves all files of a folder into another, in the place of those that are there.
fn move_in(from: &Path, to: &Path) -> io::Result<()> {
    for path in files_below(from)? {
        let target = to.join(path.strip_prefix(from).map_err(io::Error::other)?);
        if let Some(folder) = target.parent() {
            fs::create_dir_all(folder)?;
        }
        fs::rename(&path, &target)?;
    }
    Ok(())
}

fn wrong(why: DecryptError) -> Problem {
    match why {
        DecryptError::DecryptionFailed | DecryptError::NoMatchingKeys | DecryptError::KeyDecryptionFailed => {
            Problem::error(
                "passphrase_wrong",
                "The passphrase is not right, or the file was changed. Nothing was restored.",
            )
        }
        DecryptError::ExcessiveWork { .. } => unreadable("its passphrase asks for more work than any backup of ours"),
        DecryptError::Io(why) => torn(why),
        _ => unreadable("it is no backup, or was changed"),
    }
}

fn torn(why: io::Error) -> Problem {
    unreadable(&format!("it did not arrive whole, or was changed: {why}"))
}

fn unreadable(what: &str) -> Problem {
    Problem::error("backup_unreadable", format!("This backup can't be restored: {what}. Nothing was restored."))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_our_own_files_have_a_place() {
        for path in
            ["journal.sqlite", "photos/ab/abcd.jpg", "certificates/00ff.pdf", "keys/00ff.pem", "keys/00ff.tries"]
        {
            assert!(sound(Path::new(path)), "{path}");
        }
        let strange = [
            "",
            "..",
            "/etc/passwd",
            "../journal.sqlite",
            "photos/../device-key",
            "photos",
            "device",
            "device-key",
            "photos/a/b/c",
            "keys/.hidden",
            "journal.sqlite/x",
            "certificates/a b.pdf",
            "leaving/x",
            "./journal.sqlite-wal",
        ];
        for path in strange {
            assert!(!sound(Path::new(path)), "{path}");
        }
    }

    #[test]
    fn a_weak_passphrase_is_refused() {
        assert!(strong(&Secret::new("short")).is_err() && strong(&Secret::new("aaaaaaaaaaaa")).is_err());
        assert!(strong(&Secret::new("four words are good")).is_ok());
    }
}
