//! The form of the database file: numbered steps, each taken once and for ever.

use rusqlite::{Connection, TransactionBehavior};

use super::Fault;

/// Marks a file as Mendline's: "MEND" in ASCII.
const APPLICATION: i64 = 0x4D45_4E44;

/// A released step is never edited: a change of form is a new step at the end.
const STEPS: [&str; 2] = [include_str!("schema/0001_journal.sql"), REGISTER];

/// The register's tables as they are now. They may be dropped and made again at any time.
const REGISTER: &str = include_str!("schema/0002_register.sql");

/// The form that this program writes.
pub(super) const KNOWN: i64 = STEPS.len() as i64;

/// Returns the form of the file, 0 for an empty one, without writing anything; inside a transaction.
///
/// Errors: `NotADatabase` for another program's file; `Newer` for a form that this program doesn't know.
fn form(connection: &Connection, path: &str) -> Result<i64, Fault> {
    let application: i64 = connection.pragma_query_value(None, "application_id", |row| row.get(0))?;
    let found: i64 = connection.pragma_query_value(None, "user_version", |row| row.get(0))?;
    let tables: i64 = connection.query_row("SELECT count(*) FROM sqlite_schema", [], |row| row.get(0))?;
    match (application, found) {
        (0, 0) if tables == 0 => Ok(0),
        (APPLICATION, found) if found > KNOWN => Err(Fault::Newer { found, known: KNOWN }),
        (APPLICATION, found) if found > 0 => Ok(found),
        _ => Err(Fault::NotADatabase { path: path.to_owned() }),
    }
}

/// Returns the form as it was at one moment, outside a transaction.
///
/// What is read one after the other could be half before and half after another program makes the file, and look foreign.
pub(super) fn form_at_once(connection: &Connection, path: &str) -> Result<i64, Fault> {
    form(&*connection.unchecked_transaction()?, path)
}

/// Takes the steps that the file lacks, all in one transaction, and makes a register anew, empty, that was dropped or has
/// another form. Another program may have taken them meanwhile.
pub(super) fn bring_up(connection: &mut Connection, path: &str) -> Result<(), Fault> {
    if form_at_once(connection, path)? == KNOWN && has_register(connection)? {
        return Ok(());
    }
    let transaction = connection.transaction_with_behavior(TransactionBehavior::Immediate)?;
    let found = form(&transaction, path)?;
    for step in STEPS.iter().skip(usize::try_from(found).unwrap_or(0)) {
        transaction.execute_batch(step)?;
    }
    if !has_register(&transaction)? {
        remake_register(&transaction)?;
    }
    transaction.pragma_update(None, "application_id", APPLICATION)?;
    transaction.pragma_update(None, "user_version", KNOWN)?;
    Ok(transaction.commit()?)
}

/// Drops the register's tables and makes them anew, empty, inside the caller's transaction.
pub(crate) fn remake_register(connection: &Connection) -> Result<(), Fault> {
    for table in REGISTER_TABLES {
        connection.execute_batch(&format!("DROP TABLE IF EXISTS {table}"))?;
    }
    Ok(connection.execute_batch(REGISTER)?)
}

/// Says whether the register's tables and indexes are those that this program makes, to the letter.
fn has_register(connection: &Connection) -> Result<bool, Fault> {
    let sql = "SELECT name, sql FROM sqlite_schema WHERE name GLOB 'register_*' AND sql IS NOT NULL
        AND name NOT GLOB 'register_search_*'";
    let mut statement = connection.prepare(sql)?;
    let found = statement.query_map([], |row| Ok((row.get(0)?, row.get(1)?)))?;
    let found: Vec<(String, String)> = found.collect::<Result<_, _>>()?;
    let named = |table: &str| found.iter().any(|(name, _)| name == table);
    Ok(REGISTER_TABLES.iter().all(|table| named(table)) && found.iter().all(|(_, sql)| REGISTER.contains(sql)))
}

/// In the order in which they can be dropped.
const REGISTER_TABLES: [&str; 4] = ["register_search", "register_lot", "register_repair", "register_upto"];
