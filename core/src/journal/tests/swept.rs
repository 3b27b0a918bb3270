//! Chains that several readers check at once, and chains that are not read again.

use rusqlite::Connection;

use super::*;

const REPAIRS: [&str; 3] = ["a", "b", "c"];
const TURNS: usize = 60;
const A_TURN: usize = 40;

/// Three chains whose entries lie between each other, enough of them for several readers.
fn many() -> OnDisk {
    let mut world = OnDisk::start();
    for turn in 0..TURNS {
        let drafts = (0..A_TURN * REPAIRS.len()).map(|place| {
            let repair = REPAIRS[place % REPAIRS.len()];
            Draft { repair: repair.into(), ..draft(world.kept.heads(repair).unwrap(), &format!("{turn} {place}")) }
        });
        let drafts = drafts.collect();
        written(world.kept.append(&write(&format!("r{turn}"), drafts)));
    }
    world
}

fn tampered(sql: &str) -> Vec<(String, u64)> {
    let mut world = many();
    let raw = Connection::open(file(world.folder.path())).unwrap();
    let guards = "DROP TRIGGER journal_no_update; DROP TRIGGER journal_no_delete; DROP TRIGGER journal_no_replace";
    raw.execute_batch(guards).unwrap();
    raw.execute_batch(sql).unwrap();
    world.open_again();
    let swept = world.kept.verify_all().unwrap();
    assert_eq!(Ok(&swept), broken_chains(&world.kept).as_ref(), "read at once as one by one: {sql}");
    swept.into_iter().map(|damage| (damage.repair, damage.seq)).collect()
}

#[test]
fn chains_that_lie_across_the_readers_are_whole() {
    assert_eq!(tampered(""), []);
}

#[test]
fn whatever_is_changed_is_named_wherever_a_reader_begins() {
    let last = (TURNS * A_TURN) as u64;
    for seq in [1, 2, last / 2, last - 1] {
        let place = format!("repair = 'b' AND seq = {seq}");
        assert_eq!(tampered(&format!("UPDATE journal SET body = x'00' WHERE {place}")), [("b".to_owned(), seq)]);
        assert_eq!(tampered(&format!("DELETE FROM journal WHERE {place}")), [("b".to_owned(), seq + 1)]);
    }
    let swapped = "UPDATE journal SET repair = 'd' WHERE repair = 'a' AND seq = 1500;
        UPDATE journal SET repair = 'a' WHERE repair = 'c' AND seq = 1500;
        UPDATE journal SET repair = 'c' WHERE repair = 'd'";
    assert_eq!(tampered(swapped), [("a".to_owned(), 1500), ("c".to_owned(), 1500)]);
    // A whole half cut out of the middle, so that one reader sees nothing of it.
    assert_eq!(tampered("DELETE FROM journal WHERE repair = 'c' AND seq < 1500"), [("c".to_owned(), 1500)]);
}

#[test]
fn chains_of_several_devices_are_checked_whole() {
    let mut world = many();
    let heads = world.kept.heads("b").unwrap();
    let theirs = Draft { repair: "b".into(), device: "laptop".into(), ..draft(heads, "theirs") };
    written(world.kept.append(&write("theirs", vec![theirs])));
    assert_eq!(world.kept.verify_all(), Ok(vec![]));
}

#[test]
fn a_chain_that_is_known_is_read_again_when_somebody_else_has_written() {
    let mut world = OnDisk::start();
    let first = add(&mut world.kept, "r1");
    assert_eq!(world.kept.heads(REPAIR), Ok(vec![first.hash]));
    let second = add(&mut Sqlite::open(&file(world.folder.path())).unwrap(), "r2");
    assert_eq!(world.kept.heads(REPAIR), Ok(vec![second.hash]));
    let raw = Connection::open(file(world.folder.path())).unwrap();
    raw.execute_batch("DROP TRIGGER journal_no_update; UPDATE journal SET body = x'00' WHERE seq = 1").unwrap();
    let found = Damage { repair: REPAIR.into(), device: "phone".into(), seq: 1, flaw: Flaw::Altered };
    assert_eq!(world.kept.heads(REPAIR), Err(Fault::Damaged(found.clone())));
    let refused = world.kept.append(&write("r3", vec![draft(vec![second.hash], "on a broken chain")]));
    assert_eq!(refused, Err(Fault::Damaged(found)));
}

/// Nothing of a write that was refused is taken for known.
#[test]
fn a_refused_write_leaves_what_is_known_as_it_was() {
    let mut world = OnDisk::start();
    let first = add(&mut world.kept, "r1");
    let twice =
        vec![draft(vec![first.hash], "kept?"), Draft { repair: "b".into(), ..draft(vec![first.hash], "moved") }];
    assert_eq!(world.kept.append(&write("r2", twice)), Err(Fault::Moved { repair: "b".into() }));
    assert_eq!(world.kept.heads(REPAIR), Ok(vec![first.hash]));
    assert_eq!(add(&mut world.kept, "r3").seq, 2);
}

#[test]
fn a_repair_that_was_written_without_its_row_is_missed() {
    let mut world = OnDisk::start();
    add(&mut world.kept, "r1");
    assert_eq!(world.kept.unlisted(), Ok(vec![REPAIR.to_owned()]));
    let sheet = Draft { repair: SHELF.into(), ..draft(vec![], "sheet") };
    written(world.kept.append(&write("r2", vec![sheet])));
    world.open_again();
    assert_eq!(world.kept.unlisted(), Ok(vec![REPAIR.to_owned()]), "still");
}
