//! Checks every chain in one pass over the table, in the order of the file, by several readers at once.
//!
//! Most chains are plain: one device, each entry after the one before. Of those nothing is held but where they end.
//! Every other chain is named, and has to be checked whole.

use std::collections::{BTreeSet, HashMap};
use std::num::NonZero;
use std::thread;

use rusqlite::types::ValueRef;
use rusqlite::{Connection, OpenFlags, Row};

use super::{Fault, Hash, link};

/// More readers than this wait for the disk.
const MOST_READERS: usize = 8;
/// A reader is not worth its start for fewer entries.
const LEAST_ENTRIES: i64 = 5_000;

/// A part of a chain that went by: what its first entry follows, and where it ends.
struct Part {
    device: Box<str>,
    first: (i64, Option<Hash>),
    last: (i64, Hash),
    plain: bool,
}

type Parts = HashMap<Box<str>, Part>;

/// Returns the repairs whose chains are not plain, the shelf's among them.
///
/// Errors: the table can't be read to its end.
pub(super) fn not_plain(connection: &Connection) -> Result<BTreeSet<String>, Fault> {
    let ends = "SELECT coalesce(min(id), 0), coalesce(max(id), -1) FROM journal";
    let (first, last): (i64, i64) = connection.query_row(ends, [], |row| Ok((row.get(0)?, row.get(1)?)))?;
    let wanted = (last.saturating_sub(first) / LEAST_ENTRIES).clamp(0, readers() as i64 - 1);
    let others: Vec<Connection> = (0..wanted).map_while(|_| another(connection)).collect();
    let step = last.saturating_sub(first) / (others.len() as i64 + 1) + 1;
    let range = |place: usize| {
        let from = first.saturating_add(step * place as i64);
        (from, from.saturating_add(step - 1))
    };
    let read = thread::scope(|scope| {
        let others: Vec<_> = others
            .into_iter()
            .enumerate()
            .map(|(place, other)| scope.spawn(move || parts(&other, range(place + 1))))
            .collect();
        let own = parts(connection, range(0));
        let lost = || Fault::Io { what: "a reader of the journal ended early".to_owned() };
        let others = others.into_iter().map(|other| other.join().unwrap_or_else(|_| Err(lost())));
        std::iter::once(own).chain(others).collect::<Result<Vec<Parts>, Fault>>()
    });
    Ok(joined(read?))
}

fn readers() -> usize {
    thread::available_parallelism().map_or(1, NonZero::get).min(MOST_READERS)
}

/// Opens the same file once more; `None` where that does not go, and so the first connection has to do.
fn another(connection: &Connection) -> Option<Connection> {
    let path = connection.path().filter(|path| !path.is_empty())?;
    let flags = OpenFlags::SQLITE_OPEN_READ_ONLY | OpenFlags::SQLITE_OPEN_NO_MUTEX;
    let other = Connection::open_with_flags(path, flags).ok()?;
    let finds = other.prepare("SELECT 1 FROM journal LIMIT 1").and_then(|mut one| one.exists([]));
    finds.is_ok_and(|finds| finds).then_some(other)
}

/// Reads the entries numbered so, both ends included.
fn parts(connection: &Connection, (from, to): (i64, i64)) -> Result<Parts, Fault> {
    let sql = "SELECT repair, device, seq, prev, body, hash FROM journal NOT INDEXED
        WHERE id BETWEEN ?1 AND ?2 ORDER BY id";
    let mut statement = connection.prepare(sql)?;
    let mut rows = statement.query([from, to])?;
    let mut parts = Parts::new();
    while let Some(row) = rows.next()? {
        pass(&mut parts, row)?;
    }
    Ok(parts)
}

fn pass(parts: &mut Parts, row: &Row) -> Result<(), Fault> {
    let (repair, device, seq) = (text(row, 0)?, text(row, 1)?, row.get::<_, i64>(2)?);
    let (prev, body, hash) = (bytes(row, 3)?, bytes(row, 4)?, bytes(row, 5)?);
    let prev = prev.try_into().ok().map(Hash::from_bytes);
    let hash = hash.try_into().ok().map(Hash::from_bytes);
    // The length tells nothing at all from more than one.
    let one = bytes(row, 3)?.len() == 32 * usize::from(prev.is_some());
    let right = hash.filter(|hash| one && link(repair, device, seq as u64, prev.as_slice(), body) == *hash);
    match (parts.get_mut(repair), right) {
        (Some(part), Some(hash)) => {
            part.plain &=
                *part.device == *device && part.last.0.checked_add(1) == Some(seq) && prev == Some(part.last.1);
            part.last = (seq, hash);
        }
        (Some(part), None) => part.plain = false,
        (None, right) => {
            let hash = right.unwrap_or(Hash::from_bytes([0; 32]));
            let part = Part { device: device.into(), first: (seq, prev), last: (seq, hash), plain: right.is_some() };
            parts.insert(repair.into(), part);
        }
    }
    Ok(())
}

/// Joins what the readers saw, in their order.
fn joined(read: Vec<Parts>) -> BTreeSet<String> {
    let (mut ends, mut odd) = (Parts::new(), BTreeSet::new());
    for (repair, part) in read.into_iter().flatten() {
        let follows = match ends.get(&repair) {
            None => part.first == (1, None),
            Some(before) => {
                before.device == part.device
                    && before.last.0.checked_add(1) == Some(part.first.0)
                    && part.first.1 == Some(before.last.1)
            }
        };
        if !(follows && part.plain) {
            odd.insert(repair.to_string());
        }
        ends.insert(repair, part);
    }
    odd
}

fn text<'a>(row: &'a Row, column: usize) -> Result<&'a str, Fault> {
    let strange = |what: &str| Fault::Corrupt { what: format!("the journal holds {what} where a text belongs") };
    row.get_ref(column)?.as_str().map_err(|_| strange("something else"))
}

fn bytes<'a>(row: &'a Row, column: usize) -> Result<&'a [u8], Fault> {
    match row.get_ref(column)? {
        ValueRef::Blob(bytes) => Ok(bytes),
        _ => Err(Fault::Corrupt { what: "the journal holds something else where bytes belong".to_owned() }),
    }
}
