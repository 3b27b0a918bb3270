//! The register's tables in the journal's file.

use rusqlite::types::Value;
use rusqlite::{Connection, OptionalExtension, TransactionBehavior, params, params_from_iter};

use super::search::{fold, words};
use super::{After, Filter, Register, Row};
use crate::journal::schema::remake_register;
use crate::journal::{Fault, SHELF, Sqlite};

const COLUMNS: &str = "r.repair, r.number, r.line, r.nodes, r.street, r.status, r.stage, r.attempt, r.live, \
                       r.changed_ms, r.certificate, r.summary";
const LATEST_FIRST: &str = "ORDER BY r.changed_ms DESC, r.repair DESC";

/// Writes a row over the one that its repair had, inside the caller's transaction.
pub(crate) fn put(connection: &Connection, row: &Row) -> Result<(), Fault> {
    let id = put_repair(connection, row)?;
    connection.prepare_cached("DELETE FROM register_lot WHERE repair = ?1")?.execute([&row.repair])?;
    let mut lot = connection.prepare_cached("INSERT OR IGNORE INTO register_lot (lot, repair) VALUES (?1, ?2)")?;
    row.lots.iter().try_for_each(|name| lot.execute(params![name, row.repair]).map(drop))?;
    connection.prepare_cached("DELETE FROM register_search WHERE rowid = ?1")?.execute([id])?;
    let mut search = connection.prepare_cached("INSERT INTO register_search (rowid, words) VALUES (?1, ?2)")?;
    search.execute(params![id, words(row)])?;
    Ok(())
}

fn put_repair(connection: &Connection, row: &Row) -> Result<i64, Fault> {
    let sql = "INSERT INTO register_repair
        (repair, number, line, nodes, street, status, stage, attempt, live, changed_ms, certificate, summary)
        VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12)
        ON CONFLICT (repair) DO UPDATE SET number = ?2, line = ?3, nodes = ?4, street = ?5, status = ?6, stage = ?7,
        attempt = ?8, live = ?9, changed_ms = ?10, certificate = ?11, summary = ?12 RETURNING id";
    let mut statement = connection.prepare_cached(sql)?;
    let values = params![
        row.repair,
        row.number,
        row.line,
        row.nodes,
        row.street,
        row.status,
        row.stage,
        row.attempt,
        row.live,
        row.changed_ms,
        row.certificate,
        row.summary
    ];
    Ok(statement.query_row(values, |found| found.get(0))?)
}

impl Register for Sqlite {
    fn row(&self, repair: &str) -> Result<Option<Row>, Fault> {
        let sql = format!("SELECT {COLUMNS} FROM register_repair r WHERE r.repair = ?1");
        let found = self.connection().prepare_cached(&sql)?.query_row([repair], read).optional()?;
        found.map(|row| with_lots(self.connection(), row)).transpose()
    }

    fn list(&self, filter: &Filter, limit: usize, after: Option<&After>) -> Result<Vec<Row>, Fault> {
        let mut query = Query::default();
        for (column, wanted) in
            [("r.status = ?", &filter.status), ("r.stage = ?", &filter.stage), ("r.line = ?", &filter.line)]
        {
            wanted.iter().for_each(|value| query.and(column, [value.clone().into()]));
        }
        if let Some(lot) = &filter.lot {
            query.and("r.repair IN (SELECT repair FROM register_lot WHERE lot = ?)", [lot.clone().into()]);
        }
        if let Some(last) = after {
            query.and("(r.changed_ms, r.repair) < (?, ?)", [last.changed_ms.into(), last.repair.clone().into()]);
        }
        query.rows(self.connection(), "register_repair r", limit)
    }

    fn live(&self) -> Result<Vec<Row>, Fault> {
        let mut query = Query::default();
        query.and("r.live = 1", []);
        query.rows(self.connection(), "register_repair r", usize::MAX)
    }

    fn search(&self, text: &str, limit: usize) -> Result<Vec<Row>, Fault> {
        let text = fold(text);
        // A trigram index knows nothing shorter than three letters; such words are looked for in what is left.
        let (long, short): (Vec<&str>, Vec<&str>) = text.split_whitespace().partition(|word| word.chars().count() >= 3);
        let mut query = Query::default();
        if !long.is_empty() {
            let phrases: Vec<String> = long.iter().map(|word| format!("\"{}\"", word.replace('"', "\"\""))).collect();
            query.and("register_search MATCH ?", [phrases.join(" AND ").into()]);
        } else if short.is_empty() {
            return Ok(Vec::new());
        }
        short.iter().for_each(|word| query.and("instr(s.words, ?) > 0", [(*word).to_owned().into()]));
        query.rows(self.connection(), "register_search s JOIN register_repair r ON r.id = s.rowid", limit)
    }

    fn unlisted(&self) -> Result<Vec<String>, Fault> {
        let sql = "SELECT DISTINCT repair FROM journal WHERE repair <> ?1
            AND NOT EXISTS (SELECT 1 FROM register_repair r WHERE r.repair = journal.repair) ORDER BY repair";
        let mut statement = self.connection().prepare_cached(sql)?;
        let repairs = statement.query_map([SHELF], |row| row.get(0))?;
        Ok(repairs.collect::<Result<_, _>>()?)
    }

    fn replace_all(&mut self, rows: &[Row]) -> Result<(), Fault> {
        self.writable()?;
        let transaction = self.connection_mut().transaction_with_behavior(TransactionBehavior::Immediate)?;
        remake_register(&transaction)?;
        rows.iter().try_for_each(|row| put(&transaction, row))?;
        Ok(transaction.commit()?)
    }
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
        status: row.get(5)?,
        stage: row.get(6)?,
        attempt: row.get(7)?,
        live: row.get(8)?,
        changed_ms: row.get(9)?,
        certificate: row.get(10)?,
        lots: Vec::new(),
        summary: row.get(11)?,
    })
}

fn with_lots(connection: &Connection, row: Row) -> Result<Row, Fault> {
    let mut statement = connection.prepare_cached("SELECT lot FROM register_lot WHERE repair = ?1 ORDER BY lot")?;
    let lots = statement.query_map([&row.repair], |found| found.get(0))?.collect::<Result<_, _>>()?;
    Ok(Row { lots, ..row })
}
