//! The clocks, the device and the random source: read here, handed to the core as data.
//!
//! The window takes this file by `#[path]`, so that phone, laptop and terminal sense the world in one way.

use std::fs::File;
use std::io::{Error, ErrorKind, Read, Result, Write};
use std::path::Path;

use mendline_core::facts::{Moment, Sensed};

/// What stays the same while this process runs.
pub struct Ports {
    device: String,
    boot_id: String,
}

impl Ports {
    /// Reads the device's id from `folder`, making one at the first start.
    ///
    /// Errors: the folder can't be read or written, the id in it is damaged, or the system gives no random bytes.
    pub fn open(folder: &Path) -> Result<Self> {
        Ok(Self { device: device_id(&folder.join("device"))?, boot_id: boot_id()? })
    }

    /// Returns the ports of a folder that is only read and can't keep a device's id.
    ///
    /// Errors: the system gives no random bytes.
    pub fn of_a_reader() -> Result<Self> {
        Ok(Self { device: hex(&random::<16>()?), boot_id: boot_id()? })
    }

    /// Returns what the device senses at this moment, with fresh random bytes.
    ///
    /// Errors: the system gives no random bytes.
    pub fn sense(&self) -> Result<Sensed> {
        Ok(Sensed { moment: self.moment(), device: self.device.clone(), fresh: random()?, seed: random()? })
    }

    fn moment(&self) -> Moment {
        let now = chrono::Local::now();
        Moment {
            at_ms: now.timestamp_millis(),
            offset_min: now.offset().local_minus_utc() / 60,
            boot_ms: boot_ms(),
            boot_id: self.boot_id.clone(),
        }
    }
}

/// Returns how many bytes are free where `folder` lies; `None` where the system does not tell.
pub fn free_bytes(folder: &Path) -> Option<u64> {
    #[cfg(unix)]
    return rustix::fs::statvfs(folder).ok().map(|about| about.f_bavail.saturating_mul(about.f_frsize));
    #[cfg(not(unix))]
    return {
        let _ = folder;
        None
    };
}

/// Returns the folder that holds the data of this person on this computer when no other is named.
///
/// Errors: the system names no home.
#[cfg(not(any(target_os = "android", target_os = "ios")))]
pub fn usual_folder() -> Result<std::path::PathBuf> {
    let data = dirs::data_dir().ok_or_else(|| Error::new(ErrorKind::NotFound, "the system names no data folder"))?;
    Ok(data.join("mendline"))
}

/// Returns random bytes from the system.
pub fn random<const N: usize>() -> Result<[u8; N]> {
    let mut bytes = [0; N];
    getrandom::fill(&mut bytes).map_err(Error::other)?;
    Ok(bytes)
}

/// Returns `bytes` as lower-case hexadecimal digits.
pub fn hex(bytes: &[u8]) -> String {
    bytes.iter().map(|byte| format!("{byte:02x}")).collect()
}

/// The lock lets two first starts at the same time agree on one id. A start that was killed before it wrote leaves an
/// empty file, which the next one fills.
fn device_id(path: &Path) -> Result<String> {
    let mut file = File::options().read(true).append(true).create(true).open(path)?;
    lock(&file)?;
    let mut id = String::new();
    file.read_to_string(&mut id)?;
    if id.is_empty() {
        id = hex(&random::<16>()?);
        file.write_all(id.as_bytes())?;
        file.sync_all()?;
    }
    if id.len() == 32 && id.bytes().all(|digit| digit.is_ascii_hexdigit()) {
        return Ok(id);
    }
    let says = format!("{} is damaged: restore it from a backup of the data folder", path.display());
    Err(Error::new(ErrorKind::InvalidData, says))
}

/// Where the platform has no file locks, an app runs once.
fn lock(file: &File) -> Result<()> {
    match file.lock() {
        Err(problem) if problem.kind() == ErrorKind::Unsupported => Ok(()),
        outcome => outcome,
    }
}

/// Returns the system's name for this start of the device. Where an app may not read it, every process gets a name of
/// its own: time that runs across a restart of the app is then as little proved as across a restart of the device.
fn boot_id() -> Result<String> {
    match std::fs::read_to_string("/proc/sys/kernel/random/boot_id") {
        Ok(id) if cfg!(any(target_os = "linux", target_os = "android")) => Ok(id.trim().to_owned()),
        _ => Ok(format!("process-{}", hex(&random::<16>()?))),
    }
}

/// Milliseconds since the device started, sleep included.
#[cfg(any(target_os = "linux", target_os = "android"))]
fn boot_ms() -> i64 {
    let since = rustix::time::clock_gettime(rustix::time::ClockId::Boottime);
    since.tv_sec * 1000 + since.tv_nsec / 1_000_000
}

/// Milliseconds since this process first asked: the boot id names the process here.
#[cfg(not(any(target_os = "linux", target_os = "android")))]
fn boot_ms() -> i64 {
    static FIRST: std::sync::LazyLock<std::time::Instant> = std::sync::LazyLock::new(std::time::Instant::now);
    i64::try_from(FIRST.elapsed().as_millis()).unwrap_or(i64::MAX)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_device_keeps_its_id() {
        let folder = tempfile::tempdir().unwrap();
        let first = Ports::open(folder.path()).unwrap().sense().unwrap();
        let second = Ports::open(folder.path()).unwrap().sense().unwrap();
        assert_eq!(first.device, second.device);
        assert_eq!(first.device.len(), 32);
        assert_ne!(first.fresh, second.fresh);
    }

    #[test]
    fn first_starts_at_the_same_time_agree_on_one_id() {
        let folder = tempfile::tempdir().unwrap();
        let starts: Vec<_> = (0..16)
            .map(|_| {
                let folder = folder.path().to_owned();
                std::thread::spawn(move || Ports::open(&folder).unwrap().device)
            })
            .collect();
        let mut ids: Vec<_> = starts.into_iter().map(|start| start.join().unwrap()).collect();
        ids.dedup();
        assert_eq!(ids.len(), 1);
    }

    #[test]
    fn a_damaged_id_is_refused_and_kept_as_it_is() {
        let folder = tempfile::tempdir().unwrap();
        std::fs::write(folder.path().join("device"), "not an id").unwrap();
        let problem = Ports::open(folder.path()).err().unwrap().to_string();
        assert!(problem.contains("device is damaged"), "{problem}");
        assert_eq!(std::fs::read_to_string(folder.path().join("device")).unwrap(), "not an id");
    }

    #[test]
    fn both_clocks_run_forward_and_name_one_boot() {
        let ports = Ports::open(tempfile::tempdir().unwrap().path()).unwrap();
        let (first, second) = (ports.moment(), ports.moment());
        assert!(second.boot_ms >= first.boot_ms && first.boot_ms > 0);
        assert_eq!(first.boot_id, second.boot_id);
        assert!(first.at_ms > 1_700_000_000_000 && (-14 * 60..=14 * 60).contains(&first.offset_min));
    }

    /// Outside check: the kernel's own count of seconds since the start, sleep included (proc(5), uptime).
    #[cfg(target_os = "linux")]
    #[test]
    fn the_boot_clock_agrees_with_the_kernel() {
        let uptime = std::fs::read_to_string("/proc/uptime").unwrap();
        let kernel_s: f64 = uptime.split(' ').next().unwrap().parse().unwrap();
        assert!((boot_ms() as f64 / 1000.0 - kernel_s).abs() < 5.0);
    }
}
