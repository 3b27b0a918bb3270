//! The medium as SQLite's way to files.
//!
//! The only code of the project that may use `unsafe`: SQLite calls it through C function pointers. One connection at
//! a time may be open on a disk, because locks are not kept.
#![allow(unsafe_code)]

use std::collections::BTreeMap;
use std::ffi::{CStr, c_char, c_int, c_void};
use std::path::PathBuf;
use std::ptr::{copy_nonoverlapping, null_mut};
use std::sync::atomic::{AtomicPtr, AtomicU64, Ordering};
use std::sync::{Arc, LazyLock, Mutex, MutexGuard, Once, PoisonError};

use rusqlite::ffi;

use crate::medium::{Medium, Refusal};

type Shared = Arc<Mutex<Medium>>;

/// Disks by the first part of a path.
static DISKS: LazyLock<Mutex<BTreeMap<String, Shared>>> = LazyLock::new(Mutex::default);
/// SQLite's own file layer: its clock and its random numbers stay in use.
static REAL: AtomicPtr<ffi::sqlite3_vfs> = AtomicPtr::new(null_mut());

/// A disk with a name of its own. Every path below it goes to its [`Medium`].
pub struct Disk {
    name: String,
    medium: Shared,
}

impl Disk {
    /// Returns a new, empty disk. From the first on, this process reaches no real file through SQLite.
    pub fn new() -> Self {
        static REGISTERED: Once = Once::new();
        static COUNT: AtomicU64 = AtomicU64::new(0);
        REGISTERED.call_once(register);
        let name = format!("disk-{}", COUNT.fetch_add(1, Ordering::Relaxed));
        let medium = Shared::default();
        lock(&DISKS).insert(name.clone(), medium.clone());
        Self { name, medium }
    }

    /// Returns the path of a file on this disk.
    pub fn path(&self, file: &str) -> PathBuf {
        PathBuf::from(format!("/{}/{file}", self.name))
    }

    /// Returns the medium, to look at it or to break it. Let it go before SQLite is called again.
    pub fn medium(&self) -> MutexGuard<'_, Medium> {
        lock(&self.medium)
    }
}

impl Default for Disk {
    fn default() -> Self {
        Self::new()
    }
}

impl Drop for Disk {
    fn drop(&mut self) {
        lock(&DISKS).remove(&self.name);
    }
}

fn lock<T>(mutex: &Mutex<T>) -> MutexGuard<'_, T> {
    mutex.lock().unwrap_or_else(PoisonError::into_inner)
}

fn disk_of(path: &str) -> Option<Shared> {
    lock(&DISKS).get(path.strip_prefix('/')?.split('/').next()?).cloned()
}

/// An open file. SQLite keeps room for it and hands it back by its first field.
#[repr(C)]
struct Open {
    base: ffi::sqlite3_file,
    state: *mut State,
}

struct State {
    medium: Shared,
    path: String,
    /// The index of the write-ahead log lives in memory that outlasts no process, as in the real thing.
    shared_pages: Vec<Box<[u64]>>,
}

fn register() {
    // SAFETY: no argument; SQLite returns a table that lives as long as the process.
    let real = unsafe { ffi::sqlite3_vfs_find(null_mut()) };
    REAL.store(real, Ordering::Release);
    let vfs = Box::new(ffi::sqlite3_vfs {
        iVersion: 1,
        szOsFile: size_of::<Open>() as c_int,
        mxPathname: 512,
        pNext: null_mut(),
        zName: c"faulty".as_ptr(),
        pAppData: null_mut(),
        xOpen: Some(open),
        xDelete: Some(delete),
        xAccess: Some(access),
        xFullPathname: Some(full_pathname),
        xDlOpen: None,
        xDlError: None,
        xDlSym: None,
        xDlClose: None,
        xRandomness: Some(randomness),
        xSleep: Some(sleep),
        xCurrentTime: Some(current_time),
        xGetLastError: Some(last_error),
        xCurrentTimeInt64: None,
        xSetSystemCall: None,
        xGetSystemCall: None,
        xNextSystemCall: None,
    });
    // SAFETY: the table is leaked, so it lives as long as SQLite may call it.
    let registered = unsafe { ffi::sqlite3_vfs_register(Box::into_raw(vfs), 1) };
    assert_eq!(registered, ffi::SQLITE_OK, "SQLite takes the faulty disk");
}

static METHODS: ffi::sqlite3_io_methods = ffi::sqlite3_io_methods {
    iVersion: 2,
    xClose: Some(close),
    xRead: Some(read),
    xWrite: Some(write),
    xTruncate: Some(truncate),
    xSync: Some(sync),
    xFileSize: Some(file_size),
    xLock: Some(take_lock),
    xUnlock: Some(unlock),
    xCheckReservedLock: Some(check_reserved_lock),
    xFileControl: Some(file_control),
    xSectorSize: Some(sector_size),
    xDeviceCharacteristics: Some(device_characteristics),
    xShmMap: Some(shared_page),
    xShmLock: Some(shared_lock),
    xShmBarrier: Some(shared_barrier),
    xShmUnmap: Some(shared_unmap),
    xFetch: None,
    xUnfetch: None,
};

/// SAFETY of all that follow: SQLite calls them with pointers that are valid as its documentation of `sqlite3_vfs` and
/// `sqlite3_io_methods` says, and with a file only between its `open` and its `close`.
unsafe extern "C" fn open(
    _: *mut ffi::sqlite3_vfs,
    name: *const c_char,
    file: *mut ffi::sqlite3_file,
    flags: c_int,
    out: *mut c_int,
) -> c_int {
    unsafe { (*file).pMethods = std::ptr::null() };
    let Some(path) = (unsafe { text(name) }) else { return ffi::SQLITE_CANTOPEN };
    let Some(medium) = disk_of(&path) else { return ffi::SQLITE_CANTOPEN };
    let read_only = {
        let mut disk = lock(&medium);
        let (makes, there) = (flags & ffi::SQLITE_OPEN_CREATE != 0, disk.has(&path));
        let read_only = disk.refusal == Refusal::ReadOnly || flags & ffi::SQLITE_OPEN_READONLY != 0;
        if disk.has_power().is_err() || disk.refusal == Refusal::NoPermission || (!there && (!makes || read_only)) {
            return ffi::SQLITE_CANTOPEN;
        }
        disk.make(&path);
        read_only
    };
    let state = Box::new(State { medium, path, shared_pages: vec![] });
    unsafe {
        (*file.cast::<Open>()).state = Box::into_raw(state);
        (*file).pMethods = &raw const METHODS;
        if !out.is_null() {
            let kept = flags & !(ffi::SQLITE_OPEN_READWRITE | ffi::SQLITE_OPEN_READONLY);
            *out = kept | if read_only { ffi::SQLITE_OPEN_READONLY } else { ffi::SQLITE_OPEN_READWRITE };
        }
    }
    ffi::SQLITE_OK
}

unsafe fn text(name: *const c_char) -> Option<String> {
    if name.is_null() { None } else { unsafe { CStr::from_ptr(name) }.to_str().ok().map(str::to_owned) }
}

unsafe fn state<'a>(file: *mut ffi::sqlite3_file) -> &'a mut State {
    unsafe { &mut *(*file.cast::<Open>()).state }
}

unsafe extern "C" fn close(file: *mut ffi::sqlite3_file) -> c_int {
    drop(unsafe { Box::from_raw((*file.cast::<Open>()).state) });
    ffi::SQLITE_OK
}

unsafe extern "C" fn read(file: *mut ffi::sqlite3_file, into: *mut c_void, count: c_int, at: i64) -> c_int {
    let (state, count, at) = (unsafe { state(file) }, count as usize, at as usize);
    let disk = lock(&state.medium);
    if disk.has_power().is_err() || disk.refusal == Refusal::Broken {
        return ffi::SQLITE_IOERR_READ;
    }
    let all = disk.bytes(&state.path);
    let found = &all[at.min(all.len())..(at + count).min(all.len())];
    unsafe {
        std::ptr::write_bytes(into.cast::<u8>(), 0, count);
        copy_nonoverlapping(found.as_ptr(), into.cast::<u8>(), found.len());
    }
    if found.len() == count { ffi::SQLITE_OK } else { ffi::SQLITE_IOERR_SHORT_READ }
}

unsafe extern "C" fn write(file: *mut ffi::sqlite3_file, from: *const c_void, count: c_int, at: i64) -> c_int {
    let state = unsafe { state(file) };
    let bytes = unsafe { std::slice::from_raw_parts(from.cast::<u8>(), count as usize) };
    let mut disk = lock(&state.medium);
    match disk.refusal {
        Refusal::Full => return ffi::SQLITE_FULL,
        Refusal::ReadOnly => return ffi::SQLITE_READONLY,
        Refusal::Broken => return ffi::SQLITE_IOERR_WRITE,
        Refusal::None | Refusal::NoPermission | Refusal::Locked => {}
    }
    disk.write(&state.path, at as usize, bytes).map_or(ffi::SQLITE_IOERR_WRITE, |()| ffi::SQLITE_OK)
}

unsafe extern "C" fn truncate(file: *mut ffi::sqlite3_file, to: i64) -> c_int {
    let state = unsafe { state(file) };
    let mut disk = lock(&state.medium);
    disk.cut(&state.path, to as usize).map_or(ffi::SQLITE_IOERR_TRUNCATE, |()| ffi::SQLITE_OK)
}

unsafe extern "C" fn sync(file: *mut ffi::sqlite3_file, _: c_int) -> c_int {
    let state = unsafe { state(file) };
    let mut disk = lock(&state.medium);
    if disk.refusal == Refusal::Broken {
        return ffi::SQLITE_IOERR_FSYNC;
    }
    disk.sync(&state.path).map_or(ffi::SQLITE_IOERR_FSYNC, |()| ffi::SQLITE_OK)
}

unsafe extern "C" fn file_size(file: *mut ffi::sqlite3_file, size: *mut i64) -> c_int {
    let state = unsafe { state(file) };
    unsafe { *size = lock(&state.medium).bytes(&state.path).len() as i64 };
    ffi::SQLITE_OK
}

fn busy(medium: &Shared) -> c_int {
    if lock(medium).refusal == Refusal::Locked { ffi::SQLITE_BUSY } else { ffi::SQLITE_OK }
}

unsafe extern "C" fn take_lock(file: *mut ffi::sqlite3_file, _: c_int) -> c_int {
    busy(&unsafe { state(file) }.medium)
}

unsafe extern "C" fn unlock(_: *mut ffi::sqlite3_file, _: c_int) -> c_int {
    ffi::SQLITE_OK
}

unsafe extern "C" fn check_reserved_lock(_: *mut ffi::sqlite3_file, held: *mut c_int) -> c_int {
    unsafe { *held = 0 };
    ffi::SQLITE_OK
}

unsafe extern "C" fn file_control(_: *mut ffi::sqlite3_file, _: c_int, _: *mut c_void) -> c_int {
    ffi::SQLITE_NOTFOUND
}

unsafe extern "C" fn sector_size(_: *mut ffi::sqlite3_file) -> c_int {
    crate::medium::SECTOR as c_int
}

/// As SQLite takes every disk that it does not know better: a torn write spoils nothing beside it.
unsafe extern "C" fn device_characteristics(_: *mut ffi::sqlite3_file) -> c_int {
    ffi::SQLITE_IOCAP_POWERSAFE_OVERWRITE
}

unsafe extern "C" fn shared_page(
    file: *mut ffi::sqlite3_file,
    page: c_int,
    size: c_int,
    extend: c_int,
    out: *mut *mut c_void,
) -> c_int {
    let state = unsafe { state(file) };
    let page = page as usize;
    while extend != 0 && state.shared_pages.len() <= page {
        state.shared_pages.push(vec![0_u64; size as usize / 8].into_boxed_slice());
    }
    let found = state.shared_pages.get_mut(page).map_or(null_mut(), |page| page.as_mut_ptr().cast());
    unsafe { *out = found };
    ffi::SQLITE_OK
}

unsafe extern "C" fn shared_lock(file: *mut ffi::sqlite3_file, _: c_int, _: c_int, flags: c_int) -> c_int {
    let takes = flags & ffi::SQLITE_SHM_LOCK != 0 && flags & ffi::SQLITE_SHM_EXCLUSIVE != 0;
    if takes { busy(&unsafe { state(file) }.medium) } else { ffi::SQLITE_OK }
}

unsafe extern "C" fn shared_barrier(_: *mut ffi::sqlite3_file) {
    std::sync::atomic::fence(Ordering::SeqCst);
}

unsafe extern "C" fn shared_unmap(file: *mut ffi::sqlite3_file, _: c_int) -> c_int {
    unsafe { state(file) }.shared_pages.clear();
    ffi::SQLITE_OK
}

unsafe extern "C" fn delete(_: *mut ffi::sqlite3_vfs, name: *const c_char, and_sync: c_int) -> c_int {
    let Some(path) = (unsafe { text(name) }) else { return ffi::SQLITE_IOERR_DELETE };
    let Some(medium) = disk_of(&path) else { return ffi::SQLITE_IOERR_DELETE };
    let mut disk = lock(&medium);
    if !disk.has(&path) {
        return ffi::SQLITE_IOERR_DELETE_NOENT;
    }
    disk.remove(&path, and_sync != 0).map_or(ffi::SQLITE_IOERR_DELETE, |()| ffi::SQLITE_OK)
}

unsafe extern "C" fn access(_: *mut ffi::sqlite3_vfs, name: *const c_char, _: c_int, out: *mut c_int) -> c_int {
    let there = unsafe { text(name) }.is_some_and(|path| disk_of(&path).is_some_and(|disk| lock(&disk).has(&path)));
    unsafe { *out = there.into() };
    ffi::SQLITE_OK
}

unsafe extern "C" fn full_pathname(
    _: *mut ffi::sqlite3_vfs,
    name: *const c_char,
    room: c_int,
    out: *mut c_char,
) -> c_int {
    let bytes = unsafe { CStr::from_ptr(name) }.to_bytes_with_nul();
    if bytes.len() > room as usize {
        return ffi::SQLITE_CANTOPEN;
    }
    unsafe { copy_nonoverlapping(bytes.as_ptr().cast(), out, bytes.len()) };
    ffi::SQLITE_OK
}

unsafe extern "C" fn randomness(_: *mut ffi::sqlite3_vfs, count: c_int, out: *mut c_char) -> c_int {
    let real = REAL.load(Ordering::Acquire);
    unsafe { (*real).xRandomness.map_or(0, |call| call(real, count, out)) }
}

/// Waiting takes no time here; SQLite counts how often it waited.
unsafe extern "C" fn sleep(_: *mut ffi::sqlite3_vfs, micros: c_int) -> c_int {
    micros
}

unsafe extern "C" fn current_time(_: *mut ffi::sqlite3_vfs, out: *mut f64) -> c_int {
    let real = REAL.load(Ordering::Acquire);
    unsafe { (*real).xCurrentTime.map_or(ffi::SQLITE_ERROR, |call| call(real, out)) }
}

unsafe extern "C" fn last_error(_: *mut ffi::sqlite3_vfs, _: c_int, _: *mut c_char) -> c_int {
    0
}

const _: () = assert!(std::mem::offset_of!(Open, base) == 0);
