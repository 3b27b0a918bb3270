//! Reading a journal where nothing can be written, or where parts of it are damaged.

use std::fs::{self, File};
use std::io::ErrorKind;
use std::path::{Path, PathBuf};

use rusqlite::OpenFlags;

use super::sqlite::{Forms, Sqlite, entry};
use super::{Entry, Fault};

/// Opens an existing journal for reading only.
///
/// SQLite wants to write an index beside the log, even for reading. Where it can't, the file is read as one that
/// nobody changes, which leaves the log unread: so that is done only where there is no log.
///
/// Source: <https://www.sqlite.org/wal.html#readonly>, <https://www.sqlite.org/uri.html#uriimmutable>.
pub(super) fn open(path: &Path, forms: Forms) -> Result<Sqlite, Fault> {
    let flags = OpenFlags::SQLITE_OPEN_READ_ONLY;
    match Sqlite::start(path, flags, forms) {
        Err(Fault::Io { .. } | Fault::ReadOnly) if path.is_file() => {
            ensure_readable(path)?;
            ensure_no_log(path)?;
            Sqlite::start(&immutable(path)?, flags | OpenFlags::SQLITE_OPEN_URI, forms)
        }
        outcome => outcome,
    }
}

fn ensure_readable(path: &Path) -> Result<(), Fault> {
    match File::open(path) {
        Ok(_) => Ok(()),
        Err(problem) if problem.kind() == ErrorKind::PermissionDenied => {
            Err(Fault::NoPermission { path: path.display().to_string() })
        }
        Err(problem) => Err(Fault::Io { what: problem.to_string() }),
    }
}

/// A log of no length holds nothing.
fn ensure_no_log(path: &Path) -> Result<(), Fault> {
    let mut log = path.as_os_str().to_owned();
    log.push("-wal");
    match fs::metadata(log) {
        Err(problem) if problem.kind() == ErrorKind::NotFound => Ok(()),
        Ok(found) if found.len() == 0 => Ok(()),
        _ => Err(Fault::LogApart { path: path.display().to_string() }),
    }
}

fn immutable(path: &Path) -> Result<PathBuf, Fault> {
    let not_text = || Fault::Io { what: format!("{} is not a name in UTF-8", path.display()) };
    let name = path.to_str().ok_or_else(not_text)?;
    let name = name.replace('%', "%25").replace('?', "%3f").replace('#', "%23");
    Ok(format!("file:{name}?immutable=1").into())
}

impl Sqlite {
    /// Returns the entries that a walk through the table still reaches from its two ends, in stored order, without any
    /// index, and what stopped it.
    ///
    /// An entry whose links have no whole length is passed over: it can't be shown as an entry.
    pub fn reached(&self) -> (Vec<Entry>, Option<Fault>) {
        let (from_start, fault) = self.walk("ASC", None);
        let Some(fault) = fault else { return (in_order(from_start), None) };
        let (from_end, _) = self.walk("DESC", from_start.last().map(|(id, _)| *id));
        (in_order(from_start.into_iter().chain(from_end.into_iter().rev()).collect()), Some(fault))
    }

    /// Walks until the end, an entry numbered `before` or less, or a fault.
    fn walk(&self, order: &str, before: Option<i64>) -> (Vec<(i64, Entry)>, Option<Fault>) {
        let mut found = vec![];
        let fault = self.walk_into(order, before, &mut found).err();
        (found, fault)
    }

    fn walk_into(&self, order: &str, before: Option<i64>, found: &mut Vec<(i64, Entry)>) -> Result<(), Fault> {
        let sql =
            format!("SELECT device, seq, prev, body, hash, repair, id FROM journal NOT INDEXED ORDER BY id {order}");
        let mut statement = self.connection().prepare(&sql)?;
        let mut rows = statement.query([])?;
        while let Some(row) = rows.next()? {
            let id = row.get(6)?;
            if before.is_some_and(|before| id <= before) {
                break;
            }
            match entry(row.get(5)?, row) {
                Err(Fault::Damaged(_)) => {}
                entry => found.push((id, entry?)),
            }
        }
        Ok(())
    }
}

fn in_order(found: Vec<(i64, Entry)>) -> Vec<Entry> {
    found.into_iter().map(|(_, entry)| entry).collect()
}
