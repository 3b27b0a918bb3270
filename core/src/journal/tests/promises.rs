//! What every kind of journal promises: one suite, run in memory and on disk.

use super::*;

/// Runs each promise on both kinds of journal.
macro_rules! promises {
    ($($name:ident),+ $(,)?) => {
        mod in_memory { $(#[test] fn $name() { super::$name::<super::super::InMemory>(); })+ }
        mod on_disk { $(#[test] fn $name() { super::$name::<super::super::OnDisk>(); })+ }
    };
}

promises!(
    an_unknown_repair_is_empty,
    entries_follow_each_other,
    what_was_kept_is_there_after_opening_again,
    a_repeated_request_changes_nothing,
    a_request_id_used_for_something_else_is_refused,
    a_decision_on_old_heads_is_refused_whole,
    two_drafts_in_one_write_follow_each_other,
    a_branch_stays_open_until_an_entry_names_both_heads,
    a_branch_can_be_followed_without_joining_it,
    received_entries_that_are_here_are_passed_over,
    received_entries_that_do_not_fit_are_refused_whole,
    a_device_that_counts_one_number_twice_is_named,
    the_shelf_is_no_repair,
    several_repairs_are_written_in_one_request,
);

fn an_unknown_repair_is_empty<W: World>() {
    let mut world = W::start();
    let kept = world.kept();
    assert_eq!(kept.entries(REPAIR), Ok(vec![]));
    assert_eq!(kept.heads(REPAIR), Ok(vec![]));
    assert_eq!(kept.repairs(), Ok(vec![]));
    assert_eq!(kept.answered("r1"), Ok(None));
    assert_eq!(kept.verify_all(), Ok(vec![]));
}

fn entries_follow_each_other<W: World>() {
    let mut world = W::start();
    let (first, second) = (add(world.kept(), "r1"), add(world.kept(), "r2"));
    assert_eq!((first.seq, first.prev.clone()), (1, vec![]));
    assert_eq!((second.seq, second.prev.clone()), (2, vec![first.hash]));
    assert_eq!(world.kept().heads(REPAIR), Ok(vec![second.hash]));
    assert_eq!(heads_of(&[first.clone(), second.clone()]), [second.hash]);
    assert_eq!(world.kept().entries(REPAIR), Ok(vec![first, second]));
}

fn what_was_kept_is_there_after_opening_again<W: World>() {
    let mut world = W::start();
    let entries = vec![add(world.kept(), "r1"), add(world.kept(), "r2")];
    world.open_again();
    assert_eq!(world.kept().entries(REPAIR), Ok(entries));
    assert_eq!(world.kept().answered("r2"), Ok(Some((Hash::of(b"r2"), b"r2".to_vec()))));
    assert_eq!(world.kept().repairs(), Ok(vec![REPAIR.to_owned()]));
}

fn a_repeated_request_changes_nothing<W: World>() {
    let mut world = W::start();
    let first = add(world.kept(), "r1");
    let again = write("r1", vec![draft(vec![first.hash], "again")]);
    assert_eq!(world.kept().append(&again), Ok(Appended::Repeated(b"r1".to_vec())));
    assert_eq!(world.kept().entries(REPAIR), Ok(vec![first]));
}

fn a_request_id_used_for_something_else_is_refused<W: World>() {
    let mut world = W::start();
    let first = add(world.kept(), "r1");
    let other = Write { request_hash: Hash::of(b"other"), ..write("r1", vec![draft(vec![first.hash], "x")]) };
    let refused = Err(Fault::RequestReused { request: "r1".into() });
    assert_eq!(world.kept().append(&other), refused);
    assert_eq!(world.kept().entries(REPAIR), Ok(vec![first]));
}

fn a_decision_on_old_heads_is_refused_whole<W: World>() {
    let mut world = W::start();
    let first = add(world.kept(), "r1");
    let second = add(world.kept(), "r2");
    let moved = Err(Fault::Moved { repair: REPAIR.into() });
    for heads in [vec![], vec![first.hash], vec![first.hash, second.hash], vec![Hash::of(b"none")]] {
        let on_the_shelf = Draft { repair: SHELF.into(), ..draft(vec![], "sheet") };
        assert_eq!(world.kept().append(&write("r3", vec![on_the_shelf, draft(heads, "late")])), moved);
    }
    assert_eq!(world.kept().entries(REPAIR), Ok(vec![first, second]));
    assert_eq!(world.kept().entries(SHELF), Ok(vec![]));
    assert_eq!(world.kept().answered("r3"), Ok(None));
}

fn two_drafts_in_one_write_follow_each_other<W: World>() {
    let mut world = W::start();
    let drafts = vec![draft(vec![], "joined"), draft(vec![], "note")];
    let entries = written(world.kept().append(&write("r1", drafts)));
    assert_eq!(entries[1].prev, [entries[0].hash]);
    assert_eq!(world.kept().entries(REPAIR), Ok(entries));
}

fn a_branch_stays_open_until_an_entry_names_both_heads<W: World>() {
    let mut world = W::start();
    let first = add(world.kept(), "r1");
    let mine = add(world.kept(), "r2");
    let theirs = foreign("laptop", 1, vec![first.hash], "theirs");
    receive(world.kept(), "r3", vec![theirs.clone()]).unwrap();
    let heads = world.kept().heads(REPAIR).unwrap();
    assert_eq!(heads, sorted(&[mine.hash, theirs.hash]));
    let joined = add(world.kept(), "choice");
    assert_eq!(joined.prev, heads);
    assert_eq!(world.kept().heads(REPAIR), Ok(vec![joined.hash]));
    assert_eq!(world.kept().entries(REPAIR), Ok(vec![first, theirs, mine, joined]));
}

fn a_branch_can_be_followed_without_joining_it<W: World>() {
    let mut world = W::start();
    let first = add(world.kept(), "r1");
    let mine = add(world.kept(), "r2");
    let theirs = foreign("laptop", 1, vec![first.hash], "theirs");
    receive(world.kept(), "r3", vec![theirs.clone()]).unwrap();
    let heads = sorted(&[mine.hash, theirs.hash]);
    let report = Draft { branch: Some(mine.hash), ..draft(heads.clone(), "pressure lost") };
    let report = written(world.kept().append(&write("r4", vec![report]))).remove(0);
    assert_eq!(report.prev, [mine.hash]);
    assert_eq!(world.kept().heads(REPAIR), Ok(sorted(&[report.hash, theirs.hash])));
    let gone = Draft { branch: Some(first.hash), ..draft(sorted(&[report.hash, theirs.hash]), "x") };
    assert_eq!(world.kept().append(&write("r5", vec![gone])), Err(Fault::Moved { repair: REPAIR.into() }));
}

fn received_entries_that_are_here_are_passed_over<W: World>() {
    let mut world = W::start();
    let first = add(world.kept(), "r1");
    let theirs = foreign("laptop", 1, vec![first.hash], "theirs");
    let both = vec![first.clone(), theirs.clone()];
    assert_eq!(written(receive(world.kept(), "r2", both.clone())), [theirs]);
    assert_eq!(written(receive(world.kept(), "r3", both.clone())), []);
    assert_eq!(world.kept().entries(REPAIR), Ok(both));
}

fn received_entries_that_do_not_fit_are_refused_whole<W: World>() {
    let mut world = W::start();
    let first = add(world.kept(), "r1");
    let good = foreign("laptop", 1, vec![first.hash], "good");
    let other = Hash::of(b"none");
    let cases = [
        (Entry { body: b"bad".to_vec(), ..foreign("laptop", 2, vec![good.hash], "x") }, Flaw::Altered),
        (foreign("laptop", 3, vec![good.hash], "x"), Flaw::Gap { expected: 2 }),
        (foreign("laptop", 2, sorted(&[good.hash, other]), "x"), Flaw::Follows { prev: other }),
        (foreign("laptop", 2, vec![first.hash], "x"), Flaw::OwnSkipped),
        (foreign("laptop", 2, vec![good.hash, good.hash], "x"), Flaw::Unsorted),
    ];
    for (bad, flaw) in cases {
        let damage = Damage { repair: REPAIR.into(), device: "laptop".into(), seq: bad.seq, flaw };
        assert_eq!(receive(world.kept(), "r2", vec![good.clone(), bad]), Err(Fault::Unsound(damage)));
    }
    assert_eq!(world.kept().entries(REPAIR), Ok(vec![first]));
    assert_eq!(world.kept().answered("r2"), Ok(None));
}

fn a_device_that_counts_one_number_twice_is_named<W: World>() {
    let mut world = W::start();
    add(world.kept(), "r1");
    let damage = Damage { repair: REPAIR.into(), device: "phone".into(), seq: 1, flaw: Flaw::Twin };
    let copy = foreign("phone", 1, vec![], "from a copied data folder");
    assert_eq!(receive(world.kept(), "r2", vec![copy]), Err(Fault::Unsound(damage)));
}

fn the_shelf_is_no_repair<W: World>() {
    let mut world = W::start();
    let sheet = Draft { repair: SHELF.into(), ..draft(vec![], "sheet") };
    let entries = written(world.kept().append(&write("r1", vec![sheet])));
    assert_eq!(world.kept().repairs(), Ok(vec![]));
    assert_eq!(world.kept().entries(SHELF), Ok(entries));
}

fn several_repairs_are_written_in_one_request<W: World>() {
    let mut world = W::start();
    let drafts = ["b", "a"].map(|repair| Draft { repair: repair.into(), ..draft(vec![], "planned") });
    let entries = written(world.kept().append(&write("r1", drafts.to_vec())));
    assert_eq!(world.kept().repairs(), Ok(vec!["a".to_owned(), "b".to_owned()]));
    assert_eq!(world.kept().entries("b"), Ok(vec![entries[0].clone()]));
}
