//! What only a file can show: closed history, forms, readers and writers beside each other.

use std::fs;
use std::sync::Barrier;
use std::thread;

use rusqlite::Connection;

use super::*;

#[test]
fn history_is_closed_by_the_database_itself() {
    let mut world = OnDisk::start();
    add(&mut world.kept, "r1");
    let raw = Connection::open(file(world.folder.path())).unwrap();
    for sql in [
        "UPDATE journal SET body = x'00'",
        "DELETE FROM journal",
        "INSERT OR REPLACE INTO journal SELECT * FROM journal",
        "INSERT OR REPLACE INTO journal SELECT NULL, repair, device, seq, prev, x'00', hash FROM journal",
        "INSERT OR REPLACE INTO journal SELECT NULL, repair, device, seq, prev, x'00', zeroblob(32) FROM journal",
        "UPDATE OR REPLACE journal SET seq = 2",
        "UPDATE request SET answer = x'00'",
        "DELETE FROM request",
        "INSERT OR REPLACE INTO request SELECT request, hash, x'00' FROM request",
    ] {
        let refused = raw.execute(sql, []).unwrap_err().to_string();
        assert!(refused.contains("append-only"), "{sql}: {refused}");
    }
    assert_eq!(world.kept.verify_all(), Ok(vec![]));
    assert_eq!(world.kept.answered("r1").unwrap().unwrap().1, b"r1");
}

#[test]
fn a_value_of_the_wrong_type_is_refused() {
    let world = OnDisk::start();
    let raw = Connection::open(file(world.folder.path())).unwrap();
    let sql = "INSERT INTO journal (repair, device, seq, prev, body, hash)
        VALUES ('r', 'd', 'one', x'', x'', zeroblob(32))";
    assert!(raw.execute(sql, []).is_err());
}

#[test]
fn the_file_is_kept_as_carefully_as_it_says() {
    let world = OnDisk::start();
    let pragma = |name| world.kept.connection().pragma_query_value(None, name, |row| row.get::<_, i64>(0)).unwrap();
    // https://www.sqlite.org/pragma.html: synchronous FULL is 2, temp_store MEMORY is 2.
    assert_eq!((pragma("synchronous"), pragma("temp_store"), pragma("foreign_keys")), (2, 2, 1));
    let mode: String = world.kept.connection().pragma_query_value(None, "journal_mode", |row| row.get(0)).unwrap();
    assert_eq!(mode, "wal");
}

#[test]
fn a_newer_form_is_refused_and_left_as_it_is() {
    let world = OnDisk::start();
    let path = file(world.folder.path());
    drop(world.kept);
    Connection::open(&path).unwrap().pragma_update(None, "user_version", 99).unwrap();
    let before = fs::read(&path).unwrap();
    let newer = Fault::Newer { found: 99, known: schema::KNOWN };
    assert_eq!(Sqlite::open(&path).unwrap_err(), newer);
    assert_eq!(Sqlite::open_for_reading(&path).unwrap_err(), newer);
    assert_eq!(fs::read(&path).unwrap(), before);
}

#[test]
fn a_file_of_another_program_is_refused_and_left_as_it_is() {
    let folder = tempfile::tempdir().unwrap();
    let path = file(folder.path());
    Connection::open(&path).unwrap().execute_batch("CREATE TABLE other (x); PRAGMA user_version = 1").unwrap();
    let before = fs::read(&path).unwrap();
    let refused = Fault::NotADatabase { path: path.display().to_string() };
    assert_eq!(Sqlite::open(&path).unwrap_err(), refused);
    assert_eq!(fs::read(&path).unwrap(), before);

    fs::write(&path, "a letter, and no database at all; long enough to be more than a header of any kind").unwrap();
    assert_eq!(Sqlite::open(&path).unwrap_err(), refused);
}

#[test]
fn a_folder_that_is_not_there_is_said() {
    let folder = tempfile::tempdir().unwrap();
    assert_eq!(Sqlite::open(&file(&folder.path().join("none"))).unwrap_err().code(), "io");
    assert_eq!(Sqlite::open_for_reading(&file(folder.path())).unwrap_err().code(), "io");
}

#[test]
fn an_older_form_is_brought_up_and_keeps_its_entries() {
    let world = OnDisk::start();
    let path = file(world.folder.path());
    drop(world.kept);
    let raw = Connection::open(&path).unwrap();
    let register = ["search", "lot", "repair", "upto"].map(|table| format!("DROP TABLE register_{table};"));
    raw.execute_batch(&register.concat()).unwrap();
    raw.pragma_update(None, "user_version", 1).unwrap();
    drop(raw);
    assert_eq!(Sqlite::open_for_reading(&path).unwrap_err(), Fault::ReadOnly);
    let mut kept = Sqlite::open(&path).unwrap();
    let entry = add(&mut kept, "r1");
    assert_eq!(Sqlite::open_for_reading(&path).unwrap().entries(REPAIR), Ok(vec![entry]));
}

#[test]
fn a_reader_reads_but_does_not_write() {
    let mut world = OnDisk::start();
    let entry = add(&mut world.kept, "r1");
    let mut reader = Sqlite::open_for_reading(&file(world.folder.path())).unwrap();
    assert_eq!(reader.entries(REPAIR), Ok(vec![entry.clone()]));
    let refused = reader.append(&write("r2", vec![draft(vec![entry.hash], "x")]));
    assert_eq!(refused, Err(Fault::ReadOnly));
}

#[test]
fn two_programs_write_to_one_folder_in_turn() {
    let mut world = OnDisk::start();
    let first = add(&mut world.kept, "r1");
    let mut other = Sqlite::open(&file(world.folder.path())).unwrap();
    let second = add(&mut other, "r2");
    let late = world.kept.append(&write("r3", vec![draft(vec![first.hash], "late")]));
    assert_eq!(late, Err(Fault::Moved { repair: REPAIR.into() }));
    let third = add(&mut world.kept, "r3");
    assert_eq!(other.entries(REPAIR), Ok(vec![first, second, third]));
}

#[test]
fn a_write_waits_for_another_and_then_says_so() {
    let mut world = OnDisk::start();
    let raw = Connection::open(file(world.folder.path())).unwrap();
    raw.execute_batch("BEGIN IMMEDIATE").unwrap();
    world.kept.connection().busy_timeout(std::time::Duration::from_millis(20)).unwrap();
    assert_eq!(world.kept.append(&write("r1", vec![draft(vec![], "x")])), Err(Fault::Locked));
    assert_eq!(world.kept.entries(REPAIR), Ok(vec![]), "reading goes on");
    raw.execute_batch("ROLLBACK").unwrap();
    add(&mut world.kept, "r1");
}

#[test]
fn many_programs_may_create_and_write_the_same_file_at_once() {
    let folder = tempfile::tempdir().unwrap();
    let start = Barrier::new(8);
    thread::scope(|scope| {
        for number in 0..8 {
            let (start, path) = (&start, file(folder.path()));
            scope.spawn(move || {
                start.wait();
                let mut kept = Sqlite::open(&path).unwrap();
                let (repair, request) = (format!("repair-{number}"), format!("r{number}"));
                kept.append(&write(&request, vec![Draft { repair, ..draft(vec![], "planned") }])).unwrap();
            });
        }
    });
    let kept = Sqlite::open(&file(folder.path())).unwrap();
    assert_eq!(kept.repairs().unwrap().len(), 8);
    assert_eq!(kept.verify_all(), Ok(vec![]));
}

/// The last page of a database bounds its size, so a limit on pages stands in for a full disk.
/// Source: https://www.sqlite.org/pragma.html#pragma_max_page_count (SQLITE_FULL when it is reached).
#[test]
fn a_full_disk_refuses_the_whole_request_and_keeps_the_rest() {
    let mut world = OnDisk::start();
    let first = add(&mut world.kept, "r1");
    let pages: i64 = world.kept.connection().pragma_query_value(None, "page_count", |row| row.get(0)).unwrap();
    world.kept.connection().pragma_update(None, "max_page_count", pages).unwrap();
    let large = Draft { body: vec![7; 100_000], ..draft(vec![first.hash], "") };
    assert_eq!(world.kept.append(&write("r2", vec![large])), Err(Fault::DiskFull));
    world.open_again();
    assert_eq!(world.kept.entries(REPAIR), Ok(vec![first]));
    assert_eq!(world.kept.answered("r2"), Ok(None));
    add(&mut world.kept, "r2");
}

#[test]
fn a_file_with_overwritten_pages_is_called_damaged() {
    let mut world = OnDisk::start();
    for number in 0..200 {
        add(&mut world.kept, &format!("request-{number}"));
    }
    let path = file(world.folder.path());
    drop(world.kept);
    let mut bytes = fs::read(&path).unwrap();
    let half = bytes.len() / 2 / 4096 * 4096;
    bytes[4096..half].fill(0x5a);
    fs::write(&path, bytes).unwrap();
    let found = Sqlite::open(&path).and_then(|kept| kept.verify_all()).unwrap_err();
    assert_eq!(found.code(), "corrupt", "{found}");
}
