//! What the register promises, in memory and on disk; memory is the model that the file must match.

use proptest::prelude::*;

use super::*;
use crate::journal::{Draft, Hash, Journal, Memory, Sqlite, Write};

fn row(repair: &str, changed_ms: i64) -> Row {
    Row {
        repair: repair.into(),
        number: format!("QM-26-{repair}"),
        line: "L-104".into(),
        nodes: "MH 17 – MH 18".into(),
        street: "Färberweg".into(),
        changed_ms,
        summary: b"{}".to_vec(),
        ..Row::default()
    }
}

fn disk() -> (tempfile::TempDir, Sqlite) {
    let folder = tempfile::tempdir().unwrap();
    let kept = Sqlite::open(&folder.path().join("journal.sqlite")).unwrap();
    (folder, kept)
}

/// Runs `check` on both kinds of register, holding `rows`.
fn on_both(rows: &[Row], check: impl Fn(&dyn Register)) {
    let mut memory = Memory::new();
    memory.replace_all(rows).unwrap();
    check(&memory);
    let (_folder, mut kept) = disk();
    kept.replace_all(rows).unwrap();
    check(&kept);
}

fn ids(rows: Result<Vec<Row>, Fault>) -> Vec<String> {
    rows.unwrap().into_iter().map(|row| row.repair).collect()
}

fn append(journal: &mut impl Journal, request: &str, repair: &str, rows: Vec<Row>) -> Result<(), Fault> {
    let heads = journal.heads(repair).unwrap();
    let draft = Draft { repair: repair.into(), device: "phone".into(), heads, branch: None, body: b"{}".to_vec() };
    let (request_hash, answer) = (Hash::of(request.as_bytes()), vec![]);
    journal.append(&Write { request, request_hash, received: vec![], drafts: vec![draft], rows, answer }).map(drop)
}

#[test]
fn a_row_is_written_with_its_entries_and_over_the_row_before() {
    fn check(mut kept: impl Journal + Register) {
        let first = Row { lots: vec!["B-2".into(), "A-1".into(), "B-2".into()], ..row("014", 1) };
        let second = Row { lots: vec!["C-3".into()], live: true, ..row("014", 2) };
        append(&mut kept, "r1", "014", vec![first.clone()]).unwrap();
        let lots = vec!["A-1".to_owned(), "B-2".to_owned()];
        assert_eq!(kept.row("014"), Ok(Some(Row { lots, ..first })));
        append(&mut kept, "r2", "014", vec![second.clone()]).unwrap();
        assert_eq!(kept.row("014"), Ok(Some(second.clone())));
        assert_eq!(kept.live(), Ok(vec![second]));
        assert_eq!(ids(kept.search("a-1", 9)), [] as [&str; 0], "the old lot is gone from the search");
        assert_eq!(ids(kept.search("c-3", 9)), ["014"]);
        assert_eq!(kept.row("015"), Ok(None));
    }
    check(Memory::new());
    check(disk().1);
}

#[test]
fn a_refused_request_leaves_no_row() {
    let (_folder, mut kept) = disk();
    let stale = Draft {
        repair: "014".into(),
        device: "phone".into(),
        heads: vec![Hash::of(b"old")],
        branch: None,
        body: vec![],
    };
    let (request, request_hash) = ("r1", Hash::of(b"r1"));
    let rows = vec![row("014", 1)];
    let write = Write { request, request_hash, received: vec![], drafts: vec![stale], rows, answer: vec![] };
    assert!(kept.append(&write).is_err());
    assert_eq!(kept.row("014"), Ok(None));
}

#[test]
fn a_list_begins_with_the_latest_change() {
    let rows = [row("a", 5), row("b", 7), row("c", 5), row("d", 1)];
    on_both(&rows, |register| {
        assert_eq!(ids(register.list(3)), ["b", "c", "a"]);
        assert_eq!(ids(register.list(9)), ["b", "c", "a", "d"]);
    });
}

#[test]
fn a_search_finds_every_word_anywhere_whatever_its_capitals_and_accents() {
    let other = Row { street: "Mill Lane".into(), certificate: Some("C-2026-8".into()), ..row("015", 2) };
    let lot = Row { lots: vec!["R 77/5".into()], line: "50%_\"'".into(), ..row("016", 3) };
    on_both(&[row("014", 1), other, lot], |register| {
        let found = |text| ids(register.search(text, 9));
        assert_eq!(found("FARBER"), ["016", "014"]);
        assert_eq!(found("färberweg"), ["016", "014"]);
        assert_eq!(found("mill 015"), ["015"]);
        assert_eq!(found("c-2026"), ["015"]);
        assert_eq!(found("77/5"), ["016"]);
        assert_eq!(found("14"), ["014"], "two letters");
        assert_eq!(found("mh 17 farb 4"), ["014"], "long and short words together");
        assert_eq!(found("50%_\"'"), ["016"]);
        assert_eq!(found("%"), ["016"]);
        assert_eq!(found("mill\0lane"), ["015"], "a character that nobody can type parts words");
        assert_eq!(found("laneC"), [] as [&str; 0], "no word runs from one value into the next");
        assert_eq!(found(" \t"), [] as [&str; 0]);
        assert_eq!(ids(register.search("qm-26", 2)), ["016", "015"]);
    });
}

/// More rows match than are fetched to be sorted, so that the search goes back through the latest instead.
#[test]
fn what_is_in_nearly_every_row_is_found_as_what_is_rare() {
    let rows: Vec<Row> = (0..2_600).map(|number| row(&format!("{number:04}"), number % 700)).collect();
    on_both(&rows, |register| {
        let found = ids(register.search("QM-26", 5));
        assert_eq!(found, ["2099", "1399", "0699", "2098", "1398"]);
        assert_eq!(ids(register.search("qm-26-1399", 5)), ["1399"]);
    });
}

#[test]
fn a_register_that_was_dropped_is_missed_and_can_be_made_again() {
    let (folder, mut kept) = disk();
    for number in 0..3 {
        let repair = format!("repair-{number}");
        append(&mut kept, &format!("r{number}"), &repair, vec![row(&repair, number)]).unwrap();
    }
    let (list, search) = (kept.list(9), kept.search("qm-26", 9));
    assert_eq!(kept.unlisted(), Ok(vec![]));
    drop(kept);
    let path = folder.path().join("journal.sqlite");
    let raw = rusqlite::Connection::open(&path).unwrap();
    raw.execute_batch("DROP TABLE register_search; DROP TABLE register_lot; DROP TABLE register_repair").unwrap();
    drop(raw);

    let mut kept = Sqlite::open(&path).unwrap();
    assert_eq!(kept.verify_all(), Ok(vec![]), "the journal is untouched");
    let repairs = kept.repairs().unwrap();
    assert_eq!(kept.unlisted(), Ok(repairs.clone()));
    let rows: Vec<Row> = repairs.iter().zip(0..).map(|(repair, number)| row(repair, number)).collect();
    kept.replace_all(&rows).unwrap();
    assert_eq!((kept.list(9), kept.search("qm-26", 9)), (list, search));
    assert_eq!(kept.unlisted(), Ok(vec![]));
}

fn rows() -> impl Strategy<Value = Vec<Row>> {
    let text = || "[aBcÄé1 -]{0,5}";
    let row = ("[a-d]", text(), text(), text(), 0..4_i64, any::<bool>(), prop::collection::vec("[xyz]", 0..3));
    let row = row.prop_map(|(repair, number, line, street, changed_ms, live, lots)| Row {
        repair,
        number,
        line,
        street,
        changed_ms,
        live,
        lots,
        ..Row::default()
    });
    prop::collection::vec(row, 0..12)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]
    #[test]
    fn the_file_answers_as_the_memory_does(rows in rows(), text in "[aBcÄé1xyz -]{0,6}", limit in 0..5_usize) {
        let (mut memory, (_folder, mut kept)) = (Memory::new(), disk());
        for (number, row) in rows.iter().enumerate() {
            let request = format!("r{number}");
            append(&mut memory, &request, &row.repair, vec![row.clone()]).unwrap();
            append(&mut kept, &request, &row.repair, vec![row.clone()]).unwrap();
        }
        prop_assert_eq!(kept.search(&text, limit), memory.search(&text, limit));
        prop_assert_eq!(kept.live(), memory.live());
        prop_assert_eq!(kept.list(limit), memory.list(limit));
        let before = kept.list(99).unwrap();
        kept.replace_all(&before).unwrap();
        prop_assert_eq!(&kept.list(99).unwrap(), &before);
        prop_assert_eq!(kept.search(&text, limit), memory.search(&text, limit));
    }
}

/// The register may be dropped at any time; one of another form is, and is filled from the entries by whoever opens it.
#[test]
fn a_register_of_another_form_is_made_anew() {
    let (folder, mut kept) = disk();
    append(&mut kept, "r1", "014", vec![row("014", 1)]).unwrap();
    drop(kept);
    let path = folder.path().join("journal.sqlite");
    let reopened = Sqlite::open(&path).unwrap();
    assert_eq!(reopened.count(), Ok(1), "one of this form stays");
    reopened.connection().execute_batch("CREATE INDEX register_by_line ON register_repair (line)").unwrap();
    drop(reopened);
    let reopened = Sqlite::open(&path).unwrap();
    assert_eq!(reopened.count(), Ok(0));
    assert_eq!(reopened.unlisted(), Ok(vec!["014".to_owned()]));
    let sql = "SELECT count(*) FROM sqlite_schema WHERE name = 'register_by_line'";
    assert_eq!(reopened.connection().query_row(sql, [], |row| row.get::<_, i64>(0)), Ok(0));
}
