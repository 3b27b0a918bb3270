//! The register's tables in the journal's file.

use rusqlite::types::Value;
use rusqlite::{Connection, OptionalExtension, TransactionBehavior, params, params_from_iter};

use super::search::{fold, words};
use super::{Register, Row};
use crate::journal::schema::remake_register;
use crate::journal::sqlite::{EACH_REPAIR, checked, last_entry};
use crate::journal::{Entry, Fault, NUMBERS, SHELF, Sqlite};

const COLUMNS: &str = "r.repair, r.number, r.line, r.nodes, r.street, r.live, r.changed_ms, r.certificate, r.summary";
/// More rows than this are not fetched to be sorted.
const MOST_SORTED: i64 = 2_000;
const LATEST_FIRST: &str = "ORDER BY r.changed_ms DESC, r.repair DESC";

/// Writes a row over the one that its repair had, inside the caller's transaction. Lots and words are written only where
/// they changed: most requests change neither.
pub(crate) fn put(connection: &Connection, row: &Row) -> Result<(), Fault> {
    let id = put_repair(connection, row)?;
    put_lots(connection, row)?;
    let words = words(row);
    let sql = "SELECT words FROM register_search WHERE rowid = ?1";
    let before: Option<String> = connection.prepare_cached(sql)?.query_row([id], |found| found.get(0)).optional()?;
    if before.as_ref() == Some(&words) {
        return Ok(());
    }
    if before.is_some() {
        connection.prepare_cached("DELETE FROM register_search WHERE rowid = ?1")?.execute([id])?;
    }
    let mut search = connection.prepare_cached("INSERT INTO register_search (rowid, words) VALUES (?1, ?2)")?;
    search.execute(params![id, words])?;
    Ok(())
}

fn put_lots(connection: &Connection, row: &Row) -> Result<(), Fault> {
    let wanted = row.tidy().lots;
    if lots(connection, &row.repair)? == wanted {
        return Ok(());
    }
    connection.prepare_cached("DELETE FROM register_lot WHERE repair = ?1")?.execute([&row.repair])?;
    let mut lot = connection.prepare_cached("INSERT INTO register_lot (lot, repair) VALUES (?1, ?2)")?;
    wanted.iter().try_for_each(|name| lot.execute(params![name, row.repair]).map(drop))?;
    Ok(())
}

/// Says that every repair is listed up to the entry `upto`, if that was so up to `before`.
pub(crate) fn listed(connection: &Connection, before: i64, upto: i64) -> Result<(), Fault> {
    let sql = "UPDATE register_upto SET entry = ?2 WHERE entry = ?1";
    connection.prepare_cached(sql)?.execute([before, upto])?;
    Ok(())
}

/// Most requests change neither names nor whether a clock runs: their indexes are not written then.
fn put_repair(connection: &Connection, row: &Row) -> Result<i64, Fault> {
    let sql = "UPDATE register_repair SET changed_ms = ?7, summary = ?9 WHERE repair = ?1 AND number = ?2 AND line = ?3
        AND nodes = ?4 AND street = ?5 AND live = ?6 AND certificate IS ?8 RETURNING id";
    let values = params![
        row.repair,
        row.number,
        row.line,
        row.nodes,
        row.street,
        row.live,
        row.changed_ms,
        row.certificate,
        row.summary
    ];
    let same: Option<i64> = connection.prepare_cached(sql)?.query_row(values, |found| found.get(0)).optional()?;
    if let Some(id) = same {
        return Ok(id);
    }
    let sql = "INSERT INTO register_repair (repair, number, line, nodes, street, live, changed_ms, certificate, summary)
        VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9) ON CONFLICT (repair) DO UPDATE SET number = ?2, line = ?3, nodes = ?4,
        street = ?5, live = ?6, changed_ms = ?7, certificate = ?8, summary = ?9 RETURNING id";
    Ok(connection.prepare_cached(sql)?.query_row(values, |found| found.get(0))?)
}

impl Register for Sqlite {
    fn count(&self) -> Result<usize, Fault> {
        let sql = "SELECT count(*) FROM register_repair";
        let count: i64 = self.connection().prepare_cached(sql)?.query_row([], |row| row.get(0))?;
        Ok(usize::try_from(count).unwrap_or(0))
    }

    fn row(&self, repair: &str) -> Result<Option<Row>, Fault> {
        let sql = format!("SELECT {COLUMNS} FROM register_repair r WHERE r.repair = ?1");
        let found = self.connection().prepare_cached(&sql)?.query_row([repair], read).optional()?;
        found.map(|row| with_lots(self.connection(), row)).transpose()
    }

    fn list(&self, limit: usize) -> Result<Vec<Row>, Fault> {
        Query::default().rows(self.connection(), "register_repair r", limit)
    }

    fn live(&self) -> Result<Vec<Row>, Fault> {
        let mut query = Query::default();
        query.and("r.live = 1", []);
        query.rows(self.connection(), "register_repair r INDEXED BY register_live", usize::MAX)
    }

    fn search(&self, text: &str, limit: usize) -> Result<Vec<Row>, Fault> {
        let text = fold(text);
        let words: Vec<&str> = text.split_whitespace().collect();
        if words.is_empty() {
            return Ok(Vec::new());
        }
        let mut query = Query::default();
        let rare = rare(self.connection(), &words)?;
        if let Some(wanted) = &rare {
            query.and("register_search MATCH ?", [wanted.clone().into()]);
        }
        words.iter().for_each(|word| query.and("instr(s.words, ?) > 0", [(*word).to_owned().into()]));
        // What is rare is found by its letters and then sorted; of what is common the latest are soon met by going back.
        let tables = match rare {
            Some(_) => "register_search s JOIN register_repair r ON r.id = s.rowid",
            None => "register_repair r CROSS JOIN register_search s ON s.rowid = r.id",
        };
        query.rows(self.connection(), tables, limit)
    }

    fn unlisted(&self) -> Result<Vec<String>, Fault> {
        let upto = "SELECT max(entry) FROM register_upto";
        let upto: Option<i64> = self.connection().prepare_cached(upto)?.query_row([], |row| row.get(0))?;
        if upto == Some(last_entry(self.connection())?) {
            return Ok(vec![]);
        }
        let sql = format!(
            "{EACH_REPAIR} SELECT repair FROM each WHERE repair NOT IN (?1, ?2)
             AND NOT EXISTS (SELECT 1 FROM register_repair r WHERE r.repair = each.repair)"
        );
        let mut statement = self.connection().prepare_cached(&sql)?;
        let repairs = statement.query_map([SHELF, NUMBERS], |row| row.get(0))?;
        Ok(repairs.collect::<Result<_, _>>()?)
    }

    fn replace_all(&mut self, rows: &[Row]) -> Result<(), Fault> {
        self.replace(|connection| rows.iter().try_for_each(|row| put(connection, row)))
    }
}

impl Sqlite {
    /// Replaces the whole register by a row for each of these repairs, in one transaction, holding one at a time. `row`
    /// gets the checked entries of a repair, or why there are none.
    pub(crate) fn list_anew(
        &mut self,
        repairs: &[String],
        row: impl Fn(&str, Result<Vec<Entry>, Fault>) -> Result<Row, Fault>,
    ) -> Result<(), Fault> {
        self.replace(|connection| {
            repairs.iter().try_for_each(|repair| put(connection, &row(repair, checked(connection, repair))?))
        })
    }

    fn replace(&mut self, fill: impl FnOnce(&Connection) -> Result<(), Fault>) -> Result<(), Fault> {
        self.writable()?;
        let transaction = self.connection_mut().transaction_with_behavior(TransactionBehavior::Immediate)?;
        remake_register(&transaction)?;
        fill(&transaction)?;
        listed(&transaction, 0, last_entry(&transaction)?)?;
        Ok(transaction.commit()?)
    }
}

/// Returns what finds these words by their letters, if no more than [`MOST_SORTED`] rows have them. The index knows
/// nothing shorter than three letters.
fn rare(connection: &Connection, words: &[&str]) -> Result<Option<String>, Fault> {
    let long = words.iter().filter(|word| word.chars().count() >= 3);
    let phrases: Vec<String> = long.map(|word| format!("\"{}\"", word.replace('"', "\"\""))).collect();
    if phrases.is_empty() {
        return Ok(None);
    }
    let wanted = phrases.join(" AND ");
    let sql = "SELECT count(*) FROM (SELECT 1 FROM register_search WHERE register_search MATCH ?1 LIMIT ?2)";
    let found: i64 = connection.prepare_cached(sql)?.query_row(params![wanted, MOST_SORTED + 1], |row| row.get(0))?;
    Ok((found <= MOST_SORTED).then_some(wanted))
}

/// A question to the register, put together from conditions that all must hold.
#[derive(Default)]
struct Query {
    conditions: Vec<&'static str>,
    values: Vec<Value>,
}

impl Query {
    fn and<const N: usize>(&mut self, condition: &'static str, values: [Value; N]) {
        self.conditions.push(condition);
        self.values.extend(values);
    }

    fn rows(mut self, connection: &Connection, tables: &str, limit: usize) -> Result<Vec<Row>, Fault> {
        let condition = if self.conditions.is_empty() { "TRUE".to_owned() } else { self.conditions.join(" AND ") };
        let sql = format!("SELECT {COLUMNS} FROM {tables} WHERE {condition} {LATEST_FIRST} LIMIT ?");
        self.values.push(i64::try_from(limit).unwrap_or(i64::MAX).into());
        let mut statement = connection.prepare_cached(&sql)?;
        let rows = statement.query_map(params_from_iter(self.values), read)?.collect::<Result<Vec<_>, _>>()?;
        rows.into_iter().map(|row| with_lots(connection, row)).collect()
    }
}

fn read(row: &rusqlite::Row) -> rusqlite::Result<Row> {
    Ok(Row {
        repair: row.get(0)?,
        number: row.get(1)?,
        line: row.get(2)?,
        nodes: row.get(3)?,
        street: row.get(4)?,
        live: row.get(5)?,
        changed_ms: row.get(6)?,
        certificate: row.get(7)?,
        lots: Vec::new(),
        summary: row.get(8)?,
    })
}

fn with_lots(connection: &Connection, row: Row) -> Result<Row, Fault> {
    Ok(Row { lots: lots(connection, &row.repair)?, ..row })
}

/// Returns the lots of a repair, sorted.
fn lots(connection: &Connection, repair: &str) -> Result<Vec<String>, Fault> {
    let mut statement = connection.prepare_cached("SELECT lot FROM register_lot WHERE repair = ?1 ORDER BY lot")?;
    let lots = statement.query_map([repair], |found| found.get(0))?.collect::<Result<_, _>>()?;
    Ok(lots)
}
