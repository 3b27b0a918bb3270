//! The key of this device: it signs what the device sends. A file beside the journal that only its owner may read.

use std::fs::{self, File};
use std::io::{self, Write};
use std::path::Path;

use super::response::Problem;
use crate::seal::{PrivateKey, Seed};

const NAME: &str = "device-key";

/// Returns the key of the device, made from `fresh` at the first time.
///
/// Errors: `io` if it can't be read or written; `device_key` if it is damaged. The file stays as it is.
pub fn open(folder: &Path, fresh: &[u8; 32]) -> Result<PrivateKey, Problem> {
    let path = folder.join(NAME);
    let problem = |what: &dyn std::fmt::Display| Problem::error("io", format!("{}: {what}", path.display()));
    if !path.exists() {
        make(folder, &path, fresh).map_err(|why| problem(&why))?;
    }
    let digits = fs::read_to_string(&path).map_err(|why| problem(&why))?;
    let damaged = || {
        let says = format!("{} is damaged: restore it from a backup.", path.display());
        Problem::error("device_key", says)
    };
    Ok(PrivateKey::fresh(&seed(digits.trim()).ok_or_else(damaged)?))
}

fn make(folder: &Path, path: &Path, fresh: &[u8; 32]) -> io::Result<()> {
    let digits: String = fresh.iter().map(|byte| format!("{byte:02x}")).collect();
    let part = folder.join(format!("{NAME}.{}", &digits[..8]));
    let mut file = private(&part)?;
    file.write_all(digits.as_bytes())?;
    file.sync_all()?;
    // Of two that make one at once, the first stays.
    let linked = fs::hard_link(&part, path);
    fs::remove_file(&part)?;
    linked.or_else(|why| if path.exists() { Ok(()) } else { Err(why) })
}

fn seed(digits: &str) -> Option<Seed> {
    if digits.len() != 64 || !digits.is_ascii() {
        return None;
    }
    let mut bytes = [0; 32];
    for (place, byte) in bytes.iter_mut().enumerate() {
        *byte = u8::from_str_radix(digits.get(2 * place..2 * place + 2)?, 16).ok()?;
    }
    Seed::new(bytes).ok()
}

fn private(path: &Path) -> io::Result<File> {
    let mut options = File::options();
    options.write(true).create(true).truncate(true);
    #[cfg(unix)]
    std::os::unix::fs::OpenOptionsExt::mode(&mut options, 0o600);
    options.open(path)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::door::fingerprint;

    #[test]
    fn the_key_is_made_once_and_a_damaged_one_is_left_as_it_is() {
        let folder = tempfile::tempdir().unwrap();
        let first = fingerprint(&open(folder.path(), &[7; 32]).unwrap());
        assert_eq!(fingerprint(&open(folder.path(), &[8; 32]).unwrap()), first);
        assert_eq!(fs::read_dir(folder.path()).unwrap().count(), 1);
        fs::write(folder.path().join(NAME), "not a key").unwrap();
        assert!(open(folder.path(), &[9; 32]).is_err());
        assert_eq!(fs::read_to_string(folder.path().join(NAME)).unwrap(), "not a key");
    }
}
