//! Files that are too large for one request: made here and fetched piece by piece, or brought piece by piece.
//!
//! A transfer that broke off goes on where it stopped, on either side. What has arrived counts for nothing until its
//! owner has read it whole.

use std::fs::{self, File};
use std::io::{self, Read, Seek, SeekFrom, Write};
use std::path::{Path, PathBuf};
use std::time::SystemTime;

use super::response::Problem;
use crate::journal::Hash;

/// The most bytes of one piece.
pub const PIECE: usize = 4 << 20;

/// The most bytes of a file that is brought.
const MOST: u64 = 16 << 30;

/// Files that are only half here are kept, but no more than so many.
const HALVES: usize = 4;

const LEAVING: &str = "leaving";
const ARRIVING: &str = "arriving";

/// Returns the place where a file to be fetched is made, and takes away those that were made before.
pub fn leaving(folder: &Path, name: &str) -> Result<PathBuf, Problem> {
    let place = folder.join(LEAVING);
    let cleared = || {
        fs::create_dir_all(&place)?;
        fs::read_dir(&place)?
            .flatten()
            .filter(|old| old.file_name() != name)
            .try_for_each(|old| fs::remove_file(old.path()))
    };
    cleared().map_err(|why| failed(&why))?;
    Ok(place.join(name))
}

/// Returns at most [`PIECE`] bytes of a file that was made, from a place on, and how long the file is.
///
/// Errors: `no_such_file` if there is none of this name; `io`.
pub fn fetch(folder: &Path, name: &str, from: u64) -> Result<(Vec<u8>, u64), Problem> {
    let gone = || Problem::error("no_such_file", "This file is not here any more. Make it again.");
    // A name leads to nothing but the files that were made.
    let plain =
        !name.is_empty() && name.bytes().all(|letter| letter.is_ascii_alphanumeric() || b"-.".contains(&letter));
    if !plain || name.starts_with('.') {
        return Err(gone());
    }
    let mut file = File::open(folder.join(LEAVING).join(name)).map_err(|_| gone())?;
    let read = |file: &mut File| {
        let of = file.metadata()?.len();
        file.seek(SeekFrom::Start(from.min(of)))?;
        let mut bytes = Vec::new();
        file.take(PIECE as u64).read_to_end(&mut bytes)?;
        Ok((bytes, of))
    };
    read(&mut file).map_err(|why| failed(&why))
}

/// A file that is brought.
pub struct Arriving {
    path: PathBuf,
    of: u64,
}

impl Arriving {
    /// Returns the place of a file of this name and length. Nothing is made yet.
    ///
    /// Errors: `bad_request` if it is longer than may be brought.
    pub fn of(folder: &Path, name: &str, of: u64) -> Result<Self, Problem> {
        if of > MOST {
            return Err(Problem::error("bad_request", "The file is larger than 16 GB. It was not taken in."));
        }
        let whose = Hash::of(format!("{of} {name}").as_bytes()).to_string();
        Ok(Self { path: folder.join(ARRIVING).join(whose), of })
    }

    /// Takes a piece and returns how many bytes are here, from the first on. The next piece begins there.
    ///
    /// What is here already and says something else belongs to another file, and is given up for this piece.
    pub fn take(&self, from: u64, bytes: &[u8]) -> Result<u64, Problem> {
        if bytes.len() > PIECE || from.saturating_add(bytes.len() as u64) > self.of {
            return Err(Problem::error("bad_request", "The piece is too long. Nothing of it was kept."));
        }
        self.write(from, bytes).map_err(|why| failed(&why))
    }

    fn write(&self, from: u64, bytes: &[u8]) -> io::Result<u64> {
        if let Some(place) = self.path.parent().filter(|_| !self.path.exists()) {
            fs::create_dir_all(place)?;
            few(place)?;
        }
        let mut file = File::options().read(true).write(true).create(true).truncate(false).open(&self.path)?;
        let here = file.metadata()?.len();
        if from > here {
            return Ok(here);
        }
        file.seek(SeekFrom::Start(from))?;
        let mut old = Vec::new();
        Read::by_ref(&mut file).take(bytes.len() as u64).read_to_end(&mut old)?;
        if old == bytes[..old.len()] {
            file.write_all(&bytes[old.len()..])?;
        } else {
            file.set_len(from)?;
            file.seek(SeekFrom::Start(from))?;
            file.write_all(bytes)?;
        }
        Ok(file.metadata()?.len())
    }

    /// Opens the file when all of it is here.
    ///
    /// Errors: `not_whole` with what is missing.
    pub fn whole(&self) -> Result<File, Problem> {
        let file = File::open(&self.path).map_err(|_| self.missing(0))?;
        let here = file.metadata().map_err(|why| failed(&why))?.len();
        if here == self.of { Ok(file) } else { Err(self.missing(here)) }
    }

    fn missing(&self, here: u64) -> Problem {
        Problem::error("not_whole", format!("Only {here} of {} bytes are here. Choose the file again.", self.of))
    }

    /// Takes the file away again, and the folder of such files when it is empty.
    pub fn drop(&self) {
        let _ = fs::remove_file(&self.path);
        let _ = self.path.parent().map(fs::remove_dir);
    }
}

/// Takes away the oldest halves, so that a new one has room.
fn few(place: &Path) -> io::Result<()> {
    let age = |path: &PathBuf| fs::metadata(path).and_then(|about| about.modified()).unwrap_or(SystemTime::UNIX_EPOCH);
    let mut halves: Vec<PathBuf> = fs::read_dir(place)?.flatten().map(|half| half.path()).collect();
    halves.sort_by_key(age);
    let over = (halves.len() + 1).saturating_sub(HALVES);
    halves[..over].iter().try_for_each(fs::remove_file)
}

/// Returns the problem of a disk that can't be read or written.
pub fn failed(why: &io::Error) -> Problem {
    let says = match why.kind() {
        io::ErrorKind::StorageFull => {
            "The disk is full. What was recorded is safe. Free some space and try again.".into()
        }
        _ => format!("The file could not be read or written: {why}. What was recorded is safe."),
    };
    Problem::error("io", says)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn code<T>(outcome: Result<T, Problem>) -> String {
        match outcome {
            Ok(_) => "ok".into(),
            Err(Problem::Error { code, .. }) => code,
            Err(other) => format!("{other:?}"),
        }
    }

    #[test]
    fn a_file_that_broke_off_goes_on_where_it_stopped() {
        let folder = tempfile::tempdir().unwrap();
        let one = Arriving::of(folder.path(), "a", 10).unwrap();
        assert_eq!(one.take(0, b"01234").unwrap(), 5);
        assert_eq!(code(one.whole()), "not_whole");
        // The same again, a piece too far ahead, one that overlaps, and the end.
        assert_eq!(one.take(0, b"012").unwrap(), 5);
        assert_eq!(one.take(7, b"789").unwrap(), 5);
        assert_eq!(one.take(3, b"34567").unwrap(), 8);
        assert_eq!(one.take(8, b"89").unwrap(), 10);
        let mut text = String::new();
        one.whole().unwrap().read_to_string(&mut text).unwrap();
        assert_eq!(text, "0123456789");
        one.drop();
        assert_eq!(fs::read_dir(folder.path()).unwrap().count(), 0);
    }

    #[test]
    fn half_of_another_file_of_that_name_is_given_up() {
        let folder = tempfile::tempdir().unwrap();
        let one = Arriving::of(folder.path(), "a", 10).unwrap();
        one.take(0, b"01234567").unwrap();
        assert_eq!(one.take(0, b"abc").unwrap(), 3);
    }

    #[test]
    fn too_much_is_not_kept_and_few_halves_are() {
        let folder = tempfile::tempdir().unwrap();
        let of = |name: &str, of| Arriving::of(folder.path(), name, of);
        assert_eq!(code(of("a", u64::MAX)), "bad_request");
        assert_eq!(code(of("a", 3).unwrap().take(2, b"ab")), "bad_request");
        assert_eq!(code(of("a", 3).unwrap().take(u64::MAX, b"ab")), "bad_request");
        for name in ["a", "b", "c", "d", "e", "f"] {
            of(name, 3).unwrap().take(0, b"a").unwrap();
        }
        assert_eq!(fs::read_dir(folder.path().join(ARRIVING)).unwrap().count(), HALVES);
    }

    #[test]
    fn a_name_leads_to_no_other_file() {
        let folder = tempfile::tempdir().unwrap();
        fs::write(folder.path().join("device-key"), "secret").unwrap();
        fs::write(leaving(folder.path(), "one.bundle").unwrap(), "abcdef").unwrap();
        assert_eq!(fetch(folder.path(), "one.bundle", 4).unwrap(), (b"ef".to_vec(), 6));
        assert_eq!(fetch(folder.path(), "one.bundle", u64::MAX).unwrap(), (vec![], 6));
        for name in ["../device-key", "..", ".", "", "/etc/passwd", "two.bundle", "a\0"] {
            assert_eq!(code(fetch(folder.path(), name, 0)), "no_such_file", "{name:?}");
        }
        leaving(folder.path(), "two.bundle").unwrap();
        assert_eq!(code(fetch(folder.path(), "one.bundle", 0)), "no_such_file");
    }
}
