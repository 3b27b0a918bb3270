//! A complete repair with one thing dropped or spoiled: refused by name, with where to mend it.
//!
//! What there is to drop is not listed here: it is every value in the state of the repair, as it is serialized, so a
//! new field is asked about by itself. A value that may be empty stands in `may_be_empty.txt`, each with why.

use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;
use std::sync::OnceLock;

use mendline_core::certificate::derive::refusals;
use mendline_core::procedure::Repair;
use mendline_core::shelf::Person;
use mendline_tests::earnest::{Desk, FOREMAN, bytes, state};
use mendline_tests::empty_folder;
use serde_json::{Value, json};

/// Returns a certified repair as its record tells it, and the people of its folder.
fn complete() -> &'static (Value, Vec<Person>) {
    static DONE: OnceLock<(Value, Vec<Person>)> = OnceLock::new();
    DONE.get_or_init(|| {
        let folder = empty_folder();
        let (mut desk, repair) = Desk::with_record(folder.path(), true);
        desk.certified(&repair);
        let record = bytes(&desk.ok(FOREMAN, json!({ "do": "record", "repair": repair })));
        let people = desk.ok(FOREMAN, json!({ "do": "shelf" }))["people"].clone();
        let whole = serde_json::to_value(state(&record).0).unwrap();
        (whole, serde_json::from_value(people).unwrap())
    })
}

/// Returns the place of every value: as a pointer (RFC 6901), and as a pattern in which every index is `*`.
fn places(value: &Value, at: &str, pattern: &str, found: &mut Vec<(String, String)>) {
    let children: Vec<(String, String, &Value)> = match value {
        Value::Object(all) => {
            all.iter().map(|(key, value)| (key.replace('~', "~0").replace('/', "~1"), key.clone(), value)).collect()
        }
        Value::Array(all) => {
            all.iter().enumerate().map(|(index, value)| (index.to_string(), "*".to_owned(), value)).collect()
        }
        _ => vec![],
    };
    for (key, name, value) in children {
        let (at, pattern) = (format!("{at}/{key}"), format!("{pattern}/{name}"));
        places(value, &at, &pattern, found);
        found.push((at, pattern));
    }
}

/// Returns what a value could be spoiled to.
fn spoiled(value: &Value) -> Vec<Value> {
    let mut found = vec![Value::Null];
    match value {
        Value::Null => return vec![],
        Value::String(text) if !text.is_empty() => found.push(json!("")),
        Value::Array(all) if !all.is_empty() => found.push(json!([])),
        Value::Object(all) if !all.is_empty() => found.push(json!({})),
        _ => {}
    }
    found
}

/// What may be empty: a pattern, or the beginning of one that ends in `/**`, with why.
fn may_be_empty() -> BTreeMap<String, String> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("certificate/may_be_empty.txt");
    let text = std::fs::read_to_string(path).unwrap();
    let lines = text.lines().filter(|line| !line.trim().is_empty() && !line.starts_with('#'));
    lines.map(|line| line.split_once(" | ").expect("PATTERN | WHY")).map(|(a, b)| (a.trim().into(), b.into())).collect()
}

fn allowed<'a>(table: &'a BTreeMap<String, String>, pattern: &str) -> Option<&'a String> {
    table.keys().find(|known| match known.strip_suffix("/**") {
        Some(start) => pattern == start || pattern.starts_with(&format!("{start}/")),
        None => *known == pattern,
    })
}

#[test]
fn every_value_that_is_dropped_is_refused_by_name_with_where_to_mend_it() {
    let (state, people) = complete();
    let whole: Repair = serde_json::from_value(state.clone()).unwrap();
    assert_eq!(refusals(&whole, people), vec![], "the whole repair is refused");
    let mut all = vec![];
    places(state, "", "", &mut all);
    let table = may_be_empty();
    let (mut passed, mut used, mut refused) = (BTreeSet::new(), BTreeSet::new(), 0);
    for (at, pattern) in all {
        if let Some(known) = allowed(&table, &pattern) {
            used.insert(known.clone());
            continue;
        }
        for value in spoiled(state.pointer(&at).unwrap()) {
            let mut changed = state.clone();
            *changed.pointer_mut(&at).unwrap() = value.clone();
            // What can't be decoded is no repair: the reader of the journal names the field.
            let Ok(repair) = serde_json::from_value::<Repair>(changed) else { continue };
            if repair == whole {
                continue;
            }
            let broken = refusals(&repair, people);
            if broken.is_empty() {
                passed.insert(format!("{pattern} = {value}"));
            }
            refused += usize::from(!broken.is_empty());
            for one in broken {
                let (says, way_out) = (one.rule.says(&one.values), one.rule.way_out(&one.values));
                assert!(!says.contains('{') && !says.is_empty() && !way_out.is_empty(), "{at}: {says} {way_out}");
            }
        }
    }
    assert!(passed.is_empty(), "nobody refuses:\n{}", passed.into_iter().collect::<Vec<_>>().join("\n"));
    assert!(refused > 40, "only {refused} values were refused");
    let idle: Vec<_> = table.keys().filter(|known| !used.contains(*known)).collect();
    assert!(idle.is_empty(), "nothing is there that these name: {idle:?}");
}
