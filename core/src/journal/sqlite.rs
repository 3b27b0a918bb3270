//! The journal in one SQLite file, shared by every program that opens the same data folder.

use std::cell::RefCell;
use std::collections::HashSet;
use std::path::Path;
use std::time::Duration;

use rusqlite::config::DbConfig;
use rusqlite::{Connection, ErrorCode, OpenFlags, OptionalExtension, Row, TransactionBehavior, params};

use super::chain::Chain;
use super::known::Known;
use super::plan::{Plan, plan};
use super::{
    Appended, Damage, Entry, Fault, Flaw, Hash, Journal, NUMBERS, SHELF, Write, is_reserved, reading, schema, sweep,
};
use crate::register::store;

/// How long a write waits for another program's write.
const PATIENCE: Duration = Duration::from_secs(5);

/// How long to wait before the file is tried again where SQLite does not wait itself.
const PAUSE: Duration = Duration::from_millis(20);

/// How many pages the log holds before it is written back into the file, by the request that comes next. Every request
/// adds about ten, so that fewer than one in a hundred waits for that.
const LOG_PAGES: i64 = 4_000;

/// A journal file. Several may be open on the same file: one writes at a time, all read.
#[derive(Debug)]
pub struct Sqlite {
    connection: Connection,
    /// Why nothing more is written, if so.
    closed: Option<Fault>,
    known: RefCell<Known>,
}

/// Which forms of the file are taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Forms {
    Known,
    /// Also a newer one, or an older one that can't be brought up: the entries are read as they are stored.
    Any,
}

impl Sqlite {
    /// Opens or creates the journal at `path`; its folder must exist.
    ///
    /// A file that can't be written opens for reading: then every append is refused with `ReadOnly`.
    ///
    /// Errors: `NotADatabase` for another program's file; `Newer` for a newer form; both leave the file as it is.
    /// `Locked`, `Corrupt`, `DiskFull`, `Io` as the disk has it; those of [`Self::open_for_reading`].
    pub fn open(path: &Path) -> Result<Self, Fault> {
        let flags = OpenFlags::SQLITE_OPEN_READ_WRITE | OpenFlags::SQLITE_OPEN_CREATE;
        match Self::start(path, flags, Forms::Known) {
            Err(Fault::Io { .. } | Fault::ReadOnly) if path.is_file() => Self::open_for_reading(path),
            outcome => outcome,
        }
    }

    /// Opens an existing journal for reading only, also where nothing beside it can be written.
    ///
    /// Errors: as `open`; `Io` if there is none; `ReadOnly` if its form is older and would have to be brought up;
    /// `NoPermission`; `LogApart` if its last entries can't be reached.
    pub fn open_for_reading(path: &Path) -> Result<Self, Fault> {
        reading::open(path, Forms::Known)
    }

    /// Opens an existing journal for reading its entries only, whichever form of Mendline's it has.
    ///
    /// Errors: as [`Self::open_for_reading`], but for `Newer` and an older form.
    pub fn open_as_stored(path: &Path) -> Result<Self, Fault> {
        reading::open(path, Forms::Any)
    }

    /// Opens `path`, which `flags` may make a URI.
    pub(super) fn start(path: &Path, flags: OpenFlags, forms: Forms) -> Result<Self, Fault> {
        let name = path.display().to_string();
        let not_ours = |fault| match fault {
            Fault::NotADatabase { .. } => Fault::NotADatabase { path: name.clone() },
            other => other,
        };
        let mut connection = Connection::open_with_flags(path, flags | OpenFlags::SQLITE_OPEN_NO_MUTEX)?;
        connection.busy_timeout(PATIENCE)?;
        connection.set_db_config(DbConfig::SQLITE_DBCONFIG_DEFENSIVE, true)?;
        let form = match schema::form_at_once(&connection, &name).map_err(not_ours) {
            Err(Fault::Newer { found, .. }) if forms == Forms::Any => found,
            form => form?,
        };
        prepare(&connection)?;
        let only_read = connection.is_readonly("main")?;
        if !only_read {
            write_ahead(&connection)?;
            schema::bring_up(&mut connection, &name)?;
        } else if form != schema::KNOWN && forms == Forms::Known {
            return Err(Fault::ReadOnly);
        }
        Ok(Self { connection, closed: only_read.then_some(Fault::ReadOnly), known: RefCell::default() })
    }

    /// Errors: why nothing is written to this file.
    pub fn writable(&self) -> Result<(), Fault> {
        self.closed.clone().map_or(Ok(()), Err)
    }

    /// Writes nothing more: from now on every write is refused with `why`, the first that was given.
    pub fn close_to_writing(&mut self, why: Fault) {
        self.closed.get_or_insert(why);
    }

    /// Says whether any repair has an entry with this hash.
    pub fn has(&self, hash: Hash) -> Result<bool, Fault> {
        let sql = "SELECT 1 FROM journal WHERE hash = ?1";
        Ok(self.connection.prepare_cached(sql)?.exists([hash.as_bytes()])?)
    }

    /// Returns the first bad entry of every broken chain, the shelf's first; empty if all are sound. The file's own
    /// structure is not checked.
    ///
    /// Errors: the entries can't be read to their end.
    pub fn verify_chains(&self) -> Result<Vec<Damage>, Fault> {
        let odd = sweep::not_plain(&self.connection)?;
        let shelf = odd.get(SHELF).into_iter();
        let mut damages = Vec::new();
        for repair in shelf.chain(odd.iter().filter(|repair| *repair != SHELF)) {
            damages.extend(Chain::check(self.stored(repair)?).err());
        }
        Ok(damages)
    }

    pub(crate) fn connection(&self) -> &Connection {
        &self.connection
    }

    pub(crate) fn connection_mut(&mut self) -> &mut Connection {
        &mut self.connection
    }
}

/// Switches to a write-ahead log. SQLite does not wait for another program here, whatever the busy timeout says.
///
/// Source: observed, by the test that lets many programs create the same file at once.
fn write_ahead(connection: &Connection) -> Result<(), Fault> {
    for _ in 0..PATIENCE.as_millis() / PAUSE.as_millis() {
        match connection.pragma_update_and_check(None, "journal_mode", "WAL", |_| Ok(())).map_err(Fault::from) {
            Err(Fault::Locked) => std::thread::sleep(PAUSE),
            outcome => return outcome,
        }
    }
    Err(Fault::Locked)
}

fn prepare(connection: &Connection) -> Result<(), Fault> {
    connection.pragma_update(None, "synchronous", "FULL")?;
    connection.pragma_update(None, "fullfsync", "ON")?;
    connection.pragma_update(None, "wal_autocheckpoint", LOG_PAGES)?;
    connection.pragma_update(None, "temp_store", "MEMORY")?;
    connection.pragma_update(None, "foreign_keys", "ON")?;
    connection.pragma_update(None, "cell_size_check", "ON")?;
    connection.pragma_update(None, "trusted_schema", "OFF")?;
    connection.set_prepared_statement_cache_capacity(64);
    Ok(())
}

impl Journal for Sqlite {
    fn stored(&self, repair: &str) -> Result<Vec<Entry>, Fault> {
        stored(&self.connection, repair)
    }

    fn repairs(&self) -> Result<Vec<String>, Fault> {
        let sql = format!("{EACH_REPAIR} SELECT repair FROM each WHERE repair NOT IN (?1, ?2)");
        let mut statement = self.connection.prepare_cached(&sql)?;
        let repairs = statement.query_map([SHELF, NUMBERS], |row| row.get(0))?;
        Ok(repairs.collect::<Result<_, _>>()?)
    }

    fn answered(&self, request: &str) -> Result<Option<(Hash, Vec<u8>)>, Fault> {
        answered(&self.connection, request)
    }

    fn append(&mut self, write: &Write) -> Result<Appended, Fault> {
        self.writable()?;
        let transaction = self.connection.transaction_with_behavior(TransactionBehavior::Immediate)?;
        let version = version(&transaction)?;
        if let Some((hash, answer)) = answered(&transaction, write.request)? {
            let same = hash == write.request_hash;
            let reused = || Fault::RequestReused { request: write.request.to_owned() };
            return same.then_some(Appended::Repeated(answer)).ok_or_else(reused);
        }
        let known = self.known.borrow();
        let planned = plan(write, |repair| stored(&transaction, repair), |repair| known.tips(version, repair));
        drop(known);
        let Plan { fresh, tips } = planned?;
        let before = last_entry(&transaction)?;
        fresh.iter().try_for_each(|entry| insert(&transaction, entry))?;
        if lists_all(write, &fresh) {
            store::listed(&transaction, before, last_entry(&transaction)?)?;
        }
        write.rows.iter().try_for_each(|row| store::put(&transaction, row))?;
        transaction
            .prepare_cached("INSERT INTO request (request, hash, answer) VALUES (?1, ?2, ?3)")?
            .execute(params![write.request, write.request_hash.as_bytes(), write.answer])?;
        transaction.commit()?;
        let mut known = self.known.borrow_mut();
        tips.into_iter().for_each(|(repair, tips)| known.learn(version, &repair, tips));
        Ok(Appended::Written(fresh))
    }

    /// A chain that was checked is not read again until another connection writes to the file.
    fn heads(&self, repair: &str) -> Result<Vec<Hash>, Fault> {
        let version = version(&self.connection)?;
        if let Some(tips) = self.known.borrow().tips(version, repair) {
            return Ok(tips.heads());
        }
        let tips = Chain::check(self.stored(repair)?).map_err(Fault::Damaged)?.into_tips();
        let heads = tips.heads();
        self.known.borrow_mut().learn(version, repair, tips);
        Ok(heads)
    }

    fn verify_all(&self) -> Result<Vec<Damage>, Fault> {
        let damages = self.verify_chains()?;
        if damages.is_empty() {
            check_file(&self.connection)?;
        }
        Ok(damages)
    }
}

/// Names each repair once, by one look into the index for each, however many entries it has.
pub(crate) const EACH_REPAIR: &str = "WITH RECURSIVE each(repair) AS (SELECT min(repair) FROM journal UNION ALL
    SELECT (SELECT min(repair) FROM journal WHERE repair > each.repair) FROM each WHERE each.repair IS NOT NULL)";

/// Returns a number that changes when another connection has written to the file.
///
/// Source: <https://www.sqlite.org/pragma.html#pragma_data_version>.
fn version(connection: &Connection) -> Result<i64, Fault> {
    Ok(connection.prepare_cached("PRAGMA data_version")?.query_row([], |row| row.get(0))?)
}

/// Returns the number of the last entry, 0 if there is none.
pub(crate) fn last_entry(connection: &Connection) -> Result<i64, Fault> {
    let sql = "SELECT coalesce(max(id), 0) FROM journal";
    Ok(connection.prepare_cached(sql)?.query_row([], |row| row.get(0))?)
}

/// Says whether every repair that is written to gets its row.
fn lists_all(write: &Write, fresh: &[Entry]) -> bool {
    let listed: HashSet<&str> = write.rows.iter().map(|row| row.repair.as_str()).collect();
    fresh.iter().all(|entry| is_reserved(&entry.repair) || listed.contains(entry.repair.as_str()))
}

/// Checks the pages and indexes of the journal's own tables: an index that has lost a row hides the end of a chain.
fn check_file(connection: &Connection) -> Result<(), Fault> {
    for table in ["journal", "request"] {
        let sql = format!("PRAGMA integrity_check({table})");
        let found: String = connection.query_row(&sql, [], |row| row.get(0))?;
        if found != "ok" {
            return Err(Fault::Corrupt { what: found });
        }
    }
    Ok(())
}

fn answered(connection: &Connection, request: &str) -> Result<Option<(Hash, Vec<u8>)>, Fault> {
    let mut statement = connection.prepare_cached("SELECT hash, answer FROM request WHERE request = ?1")?;
    let found = statement.query_row([request], |row| Ok((Hash::from_bytes(row.get(0)?), row.get(1)?)));
    Ok(found.optional()?)
}

fn insert(connection: &Connection, entry: &Entry) -> Result<(), Fault> {
    let sql = "INSERT INTO journal (repair, device, seq, prev, body, hash) VALUES (?1, ?2, ?3, ?4, ?5, ?6)";
    let prev: Vec<u8> = entry.prev.iter().flat_map(|hash| *hash.as_bytes()).collect();
    let seq = i64::try_from(entry.seq).map_err(|_| Fault::Io { what: "an entry number is too large".to_owned() })?;
    let mut statement = connection.prepare_cached(sql)?;
    statement.execute(params![entry.repair, entry.device, seq, prev, entry.body, entry.hash.as_bytes()])?;
    Ok(())
}

fn stored(connection: &Connection, repair: &str) -> Result<Vec<Entry>, Fault> {
    let sql = "SELECT device, seq, prev, body, hash FROM journal WHERE repair = ?1 ORDER BY id";
    let mut statement = connection.prepare_cached(sql)?;
    let mut rows = statement.query([repair])?;
    let mut entries = Vec::new();
    while let Some(row) = rows.next()? {
        entries.push(entry(repair.to_owned(), row)?);
    }
    Ok(entries)
}

/// Returns the checked entries of a repair in causal order.
pub(crate) fn checked(connection: &Connection, repair: &str) -> Result<Vec<Entry>, Fault> {
    let chain = Chain::check(stored(connection, repair)?).map_err(Fault::Damaged)?;
    Ok(chain.into_causal_order())
}

/// Reads device, number, links, body and hash from the first five columns.
pub(super) fn entry(repair: String, row: &Row) -> Result<Entry, Fault> {
    let (device, seq, prev): (String, i64, Vec<u8>) = (row.get(0)?, row.get(1)?, row.get(2)?);
    let seq = u64::try_from(seq).unwrap_or(0);
    let (body, hash): (Vec<u8>, Vec<u8>) = (row.get(3)?, row.get(4)?);
    match (hashes(&prev), hash.try_into()) {
        (Some(prev), Ok(hash)) => Ok(Entry { repair, device, seq, prev, body, hash: Hash::from_bytes(hash) }),
        _ => Err(Fault::Damaged(Damage { repair, device, seq, flaw: Flaw::Altered })),
    }
}

/// Returns the hashes that lie end to end in `bytes`, or `None` if the last is not whole.
fn hashes(bytes: &[u8]) -> Option<Vec<Hash>> {
    let (whole, rest) = bytes.as_chunks::<32>();
    rest.is_empty().then(|| whole.iter().copied().map(Hash::from_bytes).collect())
}

impl From<rusqlite::Error> for Fault {
    fn from(error: rusqlite::Error) -> Self {
        let what = error.to_string();
        match error.sqlite_error_code() {
            Some(ErrorCode::DiskFull) => Self::DiskFull,
            Some(ErrorCode::DatabaseBusy | ErrorCode::DatabaseLocked) => Self::Locked,
            Some(ErrorCode::ReadOnly) => Self::ReadOnly,
            Some(ErrorCode::NotADatabase) => Self::NotADatabase { path: "This file".to_owned() },
            Some(ErrorCode::DatabaseCorrupt) => Self::Corrupt { what },
            _ => Self::Io { what },
        }
    }
}
