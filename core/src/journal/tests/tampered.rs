//! What somebody does to the file behind the program's back, and how it is named.

use rusqlite::Connection;

use super::*;

/// Returns a journal of five entries by "phone" in REPAIR and one entry elsewhere, after `sql` was run on its file
/// with the triggers taken off.
fn after(sql: &str) -> OnDisk {
    let mut world = OnDisk::start();
    (1..=5).for_each(|number| drop(add(&mut world.kept, &format!("r{number}"))));
    let elsewhere = Draft { repair: "elsewhere".into(), ..draft(vec![], "planned") };
    world.kept.append(&write("r6", vec![elsewhere])).unwrap();
    let raw = Connection::open(file(world.folder.path())).unwrap();
    raw.execute_batch(
        "DROP TRIGGER journal_no_update; DROP TRIGGER journal_no_delete; DROP TRIGGER journal_no_replace",
    )
    .unwrap();
    assert_ne!(raw.execute(sql, []).unwrap(), 0, "{sql} changed nothing");
    world.open_again();
    world
}

fn damage(seq: u64, flaw: Flaw) -> Damage {
    Damage { repair: REPAIR.into(), device: "phone".into(), seq, flaw }
}

#[test]
fn a_changed_entry_is_found_and_named() {
    for sql in [
        "UPDATE journal SET body = x'00' WHERE id = 3",
        "UPDATE journal SET body = zeroblob(length(body) + 1) WHERE id = 3",
        "UPDATE journal SET prev = x'' WHERE id = 3",
        "UPDATE journal SET prev = zeroblob(32) WHERE id = 3",
        "UPDATE journal SET hash = zeroblob(32) WHERE id = 3",
    ] {
        let world = after(sql);
        let found = damage(3, Flaw::Altered);
        assert_eq!(world.kept.entries(REPAIR), Err(Fault::Damaged(found.clone())), "{sql}");
        assert_eq!(world.kept.verify(REPAIR), Err(Fault::Damaged(found.clone())), "{sql}");
        assert_eq!(world.kept.verify_all(), Ok(vec![found]), "{sql}");
    }
}

#[test]
fn another_number_device_or_repair_is_found_and_named() {
    let world = after("UPDATE journal SET seq = 33 WHERE id = 3");
    assert_eq!(world.kept.verify_all(), Ok(vec![damage(33, Flaw::Altered)]));
    let world = after("UPDATE journal SET device = 'laptop' WHERE id = 3");
    assert_eq!(world.kept.verify_all(), Ok(vec![Damage { device: "laptop".into(), ..damage(3, Flaw::Altered) }]));
    let world = after("UPDATE journal SET repair = 'elsewhere' WHERE id = 3");
    let moved = Damage { repair: "elsewhere".into(), ..damage(3, Flaw::Altered) };
    assert_eq!(world.kept.verify_all(), Ok(vec![damage(4, Flaw::Gap { expected: 3 }), moved]));
}

#[test]
fn an_entry_taken_out_is_found_by_the_one_after_it() {
    let world = after("DELETE FROM journal WHERE id = 3");
    assert_eq!(world.kept.verify_all(), Ok(vec![damage(4, Flaw::Gap { expected: 3 })]));
    let world = after("DELETE FROM journal WHERE id = 1");
    assert_eq!(world.kept.verify_all(), Ok(vec![damage(2, Flaw::Gap { expected: 1 })]));
}

#[test]
fn an_entry_of_another_device_taken_out_is_found_by_the_one_after_it() {
    let mut world = OnDisk::start();
    let theirs = foreign("laptop", 1, vec![], "planned");
    receive(&mut world.kept, "r1", vec![theirs.clone()]).unwrap();
    add(&mut world.kept, "r2");
    let raw = Connection::open(file(world.folder.path())).unwrap();
    raw.execute_batch("DROP TRIGGER journal_no_delete; DELETE FROM journal WHERE device = 'laptop'").unwrap();
    assert_eq!(world.kept.verify_all(), Ok(vec![damage(1, Flaw::Follows { prev: theirs.hash })]));
}

/// A hash made anew over changed bytes is no longer the one that the next entry follows.
#[test]
fn an_entry_changed_with_its_hash_is_found_by_the_one_after_it() {
    let mut world = after("UPDATE journal SET body = x'00' WHERE id = 3");
    let mut entries = world.kept.stored(REPAIR).unwrap();
    let forged = link(REPAIR, "phone", 3, &entries[2].prev, &[0]);
    let raw = Connection::open(file(world.folder.path())).unwrap();
    raw.execute("UPDATE journal SET hash = ?1 WHERE id = 3", [forged.as_bytes()]).unwrap();
    world.open_again();
    let lost = entries.remove(2).hash;
    assert_eq!(world.kept.verify_all(), Ok(vec![damage(4, Flaw::Follows { prev: lost })]));
}

#[test]
fn a_link_of_the_wrong_length_is_found_and_named() {
    for column in ["prev", "hash"] {
        let world = after("UPDATE journal SET body = body WHERE id = 3");
        let raw = Connection::open(file(world.folder.path())).unwrap();
        raw.pragma_update(None, "ignore_check_constraints", "ON").unwrap();
        raw.execute(&format!("UPDATE journal SET {column} = zeroblob(33) WHERE id = 3"), []).unwrap();
        assert_eq!(world.kept.verify(REPAIR), Err(Fault::Damaged(damage(3, Flaw::Altered))), "{column}");
    }
}

/// Source of the page's form: https://www.sqlite.org/fileformat2.html#b_tree_pages (bytes 3 and 4 count the cells).
#[test]
fn an_index_that_hides_the_last_entry_is_found() {
    let mut world = OnDisk::start();
    (1..=5).for_each(|number| drop(add(&mut world.kept, &format!("r{number}"))));
    let sql = "SELECT rootpage FROM sqlite_schema WHERE name = 'sqlite_autoindex_journal_2'";
    let page: u32 = world.kept.connection().query_row(sql, [], |row| row.get(0)).unwrap();
    let path = file(world.folder.path());
    drop(world.kept);
    let mut bytes = std::fs::read(&path).unwrap();
    let count = (page as usize - 1) * 4096 + 4;
    assert_eq!(bytes[count], 5);
    bytes[count] = 4;
    std::fs::write(&path, bytes).unwrap();
    let kept = Sqlite::open(&path).unwrap();
    assert_eq!(kept.verify(REPAIR), Ok(()), "the chain alone can't see it");
    assert_eq!(kept.verify_all().unwrap_err().code(), "corrupt");
}

#[test]
fn a_broken_repair_is_read_as_stored_but_takes_no_more_entries() {
    let mut world = after("UPDATE journal SET body = x'00' WHERE id = 3");
    assert_eq!(world.kept.stored(REPAIR).unwrap().len(), 5);
    let head = world.kept.stored(REPAIR).unwrap()[4].hash;
    let refused = Err(Fault::Damaged(damage(3, Flaw::Altered)));
    assert_eq!(world.kept.append(&write("r7", vec![draft(vec![head], "x")])), refused);
    assert_eq!(receive(&mut world.kept, "r7", vec![foreign("laptop", 1, vec![head], "x")]), refused);
    assert_eq!(world.kept.stored(REPAIR).unwrap().len(), 5, "nothing was repaired or taken out");

    let heads = world.kept.heads("elsewhere").unwrap();
    let elsewhere = Draft { repair: "elsewhere".into(), ..draft(heads, "go") };
    assert_eq!(written(world.kept.append(&write("r7", vec![elsewhere]))).len(), 1, "other repairs go on");
}

/// The chain ends where it ends: that is why a certificate prints the head.
#[test]
fn a_tail_cut_off_is_not_seen_by_the_chain_alone() {
    let world = after("DELETE FROM journal WHERE id = 5");
    assert_eq!(world.kept.verify_all(), Ok(vec![]));
}
