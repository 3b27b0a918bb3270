//! The keys of this device: files beside the journal, each locked by its person's PIN. They never leave it.
//!
//! A wrong PIN is counted before it is tried, so that switching off in between wins nothing. After three of them each
//! further one is waited for, by the clock that nobody can set.

use std::fs;
use std::io::Write;
use std::path::{Path, PathBuf};

use serde::{Deserialize, Serialize};

use super::response::Problem;
use crate::facts::Moment;
use crate::procedure::times;
use crate::seal::{PrivateKey, SealError, Secret};

/// So many wrong PINs cost nothing.
const FREE: u32 = 3;
const FIRST_WAIT_MS: i64 = 5_000;
const LONGEST_WAIT_MS: i64 = 3_600_000;

/// What was tried on a key since it was last opened.
#[derive(Clone, Debug, Default, Serialize, Deserialize)]
struct Tries {
    wrong: u32,
    last: Moment,
}

/// Keeps a locked key under the fingerprint of its certificate.
pub fn keep(folder: &Path, fingerprint: &str, pem: &str) -> Result<(), Problem> {
    write(&path(folder, fingerprint, "pem"), pem.as_bytes())
}

/// Opens a key of this device.
///
/// Errors: `key_elsewhere` if this device does not hold it; `pin_wait` with the time to wait; `pin_wrong`.
pub fn open(folder: &Path, fingerprint: &str, pin: &Secret, now: &Moment) -> Result<PrivateKey, Problem> {
    let elsewhere =
        |_| Problem::error("key_elsewhere", "The key of this person is on another device, and is used there.");
    let pem = fs::read_to_string(path(folder, fingerprint, "pem")).map_err(elsewhere)?;
    let tries_at = path(folder, fingerprint, "tries");
    let tries = tries(&tries_at);
    let left = wait_ms(tries.wrong) - times::between(&tries.last, now).max(0);
    if left > 0 {
        let says = format!("Too many wrong PINs. The next can be tried in {} s.", left.saturating_add(999) / 1000);
        return Err(Problem::error("pin_wait", says));
    }
    let counted = Tries { wrong: tries.wrong.saturating_add(1), last: now.clone() };
    let text = serde_json::to_vec(&counted).map_err(|why| Problem::error("io", why.to_string()))?;
    write(&tries_at, &text)?;
    let key = PrivateKey::unlock(&pem, pin).map_err(problem)?;
    fs::remove_file(&tries_at).map_err(|why| failed(&why))?;
    Ok(key)
}

/// How long to wait after so many wrong PINs: 5 s after the third, then twice as long each time, up to an hour.
fn wait_ms(wrong: u32) -> i64 {
    match wrong.checked_sub(FREE) {
        None => 0,
        Some(more) => (FIRST_WAIT_MS << more.min(20)).min(LONGEST_WAIT_MS),
    }
}

/// A count that can't be read is taken for the worst that still can be waited for.
fn tries(path: &Path) -> Tries {
    match fs::read(path) {
        Ok(bytes) => serde_json::from_slice(&bytes).unwrap_or(Tries { wrong: FREE, last: Moment::default() }),
        Err(_) => Tries::default(),
    }
}

/// Returns the words for a problem with a key.
pub fn problem(why: SealError) -> Problem {
    let code = match why {
        SealError::WrongSecret => "pin_wrong",
        SealError::WeakPin => "pin_weak",
        SealError::NoRandom => "no_random",
        SealError::Unusable { .. } => "key",
        SealError::NotSignable { .. } => "not_signable",
    };
    Problem::error(code, why.to_string())
}

fn path(folder: &Path, fingerprint: &str, kind: &str) -> PathBuf {
    folder.join("keys").join(format!("{fingerprint}.{kind}"))
}

/// Writes a whole file or none, for this person's eyes only.
fn write(path: &Path, bytes: &[u8]) -> Result<(), Problem> {
    let half = path.with_extension("new");
    let written = || {
        if let Some(folder) = path.parent() {
            fs::create_dir_all(folder)?;
        }
        let mut options = fs::OpenOptions::new();
        options.write(true).create(true).truncate(true);
        #[cfg(unix)]
        std::os::unix::fs::OpenOptionsExt::mode(&mut options, 0o600);
        let mut file = options.open(&half)?;
        file.write_all(bytes)?;
        file.sync_all()?;
        fs::rename(&half, path)
    };
    written().map_err(|why| failed(&why))
}

fn failed(why: &std::io::Error) -> Problem {
    Problem::error("io", format!("The key could not be read or written: {why}. What was recorded is safe."))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::seal::Seed;

    fn at(seconds: i64) -> Moment {
        Moment { at_ms: 0, boot_ms: seconds * 1000, boot_id: "one".into(), ..Moment::default() }
    }

    fn code(opened: Result<PrivateKey, Problem>) -> String {
        match opened {
            Ok(_) => "open".into(),
            Err(Problem::Error { code, .. }) => code,
            Err(other) => panic!("{other:?}"),
        }
    }

    #[test]
    fn each_wrong_pin_after_the_third_is_waited_for() {
        let folder = tempfile::tempdir().unwrap();
        let seed = Seed::new([5; 32]).unwrap();
        let pem = PrivateKey::fresh(&seed).lock(&Secret::new("271828"), &seed).unwrap();
        keep(folder.path(), "ab", &pem).unwrap();
        let ask = |pin: &str, seconds| code(open(folder.path(), "ab", &Secret::new(pin), &at(seconds)));
        assert_eq!([ask("000001", 0), ask("000001", 0), ask("000001", 0)], ["pin_wrong"; 3]);
        assert_eq!([ask("271828", 1), ask("271828", 4)], ["pin_wait"; 2]);
        assert_eq!(ask("000001", 5), "pin_wrong");
        assert_eq!([ask("271828", 14), ask("271828", 15)], ["pin_wait", "open"]);
        assert_eq!(ask("000001", 15), "pin_wrong", "the count begins anew");
    }

    /// Switched off and on again, the count goes on, and the wall clock tells how long was waited.
    #[test]
    fn a_restart_forgets_no_wrong_pin() {
        let folder = tempfile::tempdir().unwrap();
        let seed = Seed::new([5; 32]).unwrap();
        keep(folder.path(), "ab", &PrivateKey::fresh(&seed).lock(&Secret::new("271828"), &seed).unwrap()).unwrap();
        let at = |boot: &str, seconds: i64| Moment {
            at_ms: seconds * 1000,
            boot_ms: 0,
            boot_id: boot.into(),
            ..Moment::default()
        };
        let ask =
            |pin: &str, boot: &str, seconds| code(open(folder.path(), "ab", &Secret::new(pin), &at(boot, seconds)));
        assert_eq!([ask("000001", "one", 0), ask("000001", "two", 0), ask("000001", "three", 0)], ["pin_wrong"; 3]);
        assert_eq!([ask("271828", "four", 4), ask("271828", "five", 5)], ["pin_wait", "open"]);
    }

    #[test]
    fn the_wait_doubles_up_to_an_hour() {
        assert_eq!([0, 2, 3, 4, 5].map(wait_ms), [0, 0, 5_000, 10_000, 20_000]);
        assert_eq!(wait_ms(u32::MAX), LONGEST_WAIT_MS);
    }

    #[test]
    fn a_key_of_another_device_is_named_as_such() {
        let folder = tempfile::tempdir().unwrap();
        assert_eq!(code(open(folder.path(), "cd", &Secret::new("271828"), &at(0))), "key_elsewhere");
    }
}
