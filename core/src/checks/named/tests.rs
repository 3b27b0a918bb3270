//! Every named check against its fixture, against what nobody should type, and against its page in the docs.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

use proptest::prelude::*;
use serde::Deserialize;
use serde_json::Map;

use super::*;
use crate::checks::field::Allowed;

/// One case of a fixture: fields in, and either expected values or a refusal.
#[derive(Deserialize)]
struct Case {
    id: String,
    fields: Value,
    #[serde(default)]
    expected: BTreeMap<String, Expected>,
    refused: Option<RefusedCase>,
    source: String,
    provenance: String,
}

#[derive(Deserialize)]
struct Expected {
    value: Value,
    tolerance: Option<f64>,
}

#[derive(Deserialize)]
struct RefusedCase {
    field: String,
    rule: String,
}

fn repository() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("..")
}

fn cases(check: &Check) -> Vec<Case> {
    let path = repository().join(format!("fixtures/checks/{}.json", check.name));
    let text = std::fs::read_to_string(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
    serde_json::from_str(&text).unwrap_or_else(|error| panic!("{}: {error}", path.display()))
}

/// Returns the deviation as a share of the expected value, or plain where 0 is expected.
fn deviation(id: &str, name: &str, expected: &Expected, found: &Value) -> f64 {
    let (Some(wanted), Some(found_number), Some(tolerance)) =
        (expected.value.as_f64(), found.as_f64(), expected.tolerance)
    else {
        assert_eq!(&expected.value, found, "{id}: {name}");
        return 0.0;
    };
    let off = (found_number - wanted).abs();
    assert!(off <= tolerance + 1e-12 * wanted.abs(), "{id}: {name} is {found}, {wanted} ± {tolerance} is expected");
    if wanted == 0.0 { off } else { off / wanted.abs() }
}

/// Runs a check's fixture and returns its worst deviation from values of a given provenance.
fn worst(check: &Check, provenance: impl Fn(&str) -> bool) -> f64 {
    let mut worst: f64 = 0.0;
    for case in cases(check) {
        let result = run(check.name, &case.fields);
        if let Some(refused) = &case.refused {
            let error = result.expect_err(&case.id);
            assert_eq!(
                (error.field.as_deref(), error.rule.as_str()),
                (Some(&*refused.field), &*refused.rule),
                "{}",
                case.id
            );
            continue;
        }
        let found = result.unwrap_or_else(|error| panic!("{}: {error}", case.id));
        for (name, expected) in &case.expected {
            let off = deviation(&case.id, name, expected, &found[name]);
            if provenance(&case.provenance) {
                worst = worst.max(off);
            }
        }
    }
    worst
}

#[test]
fn every_check_agrees_with_its_fixture() {
    for check in all() {
        worst(check, |_| true);
    }
}

#[test]
fn every_case_names_its_source_and_where_that_comes_from() {
    for check in all() {
        let cases = cases(check);
        assert!(cases.iter().any(|case| case.refused.is_some()), "{}: no refusal is tested", check.name);
        for case in cases {
            assert!(!case.source.is_empty(), "{}", case.id);
            assert!(["read", "computed", "memory", "design rule"].contains(&&*case.provenance), "{}", case.id);
            assert_eq!(case.expected.is_empty(), case.refused.is_some(), "{}", case.id);
        }
    }
}

#[test]
fn every_result_names_its_source_and_nothing_that_the_list_does_not_name() {
    for check in all() {
        let listed: Vec<&str> = check.out.iter().map(|(name, ..)| *name).chain(["source"]).collect();
        for case in cases(check) {
            if let Ok(found) = run(check.name, &case.fields) {
                assert!(found["source"].as_str().is_some_and(|source| !source.is_empty()));
                let unlisted = found.as_object().unwrap().keys().find(|key| !listed.contains(&key.as_str()));
                assert_eq!(unlisted, None, "{}", check.name);
            }
        }
    }
}

#[test]
fn an_unknown_check_and_what_is_no_object_are_refused() {
    assert_eq!(run("ovality", &json!({})).unwrap_err().rule, "unknown_check");
    for data in [json!(null), json!([2]), json!("2")] {
        assert_eq!(run("ovality-factor", &data).unwrap_err().rule, "not_an_object");
    }
}

#[test]
fn a_field_left_out_is_named_and_never_guessed() {
    for check in all() {
        let Some(good) = cases(check).into_iter().find(|case| case.refused.is_none()) else { panic!("{}", check.name) };
        let good = good.fields.as_object().unwrap().clone();
        for field in check.fields.iter().filter(|field| field.needed.is_empty()) {
            let mut without = good.clone();
            without.remove(field.name);
            let error = run(check.name, &Value::Object(without)).unwrap_err();
            assert_eq!((error.field.as_deref(), &*error.rule), (Some(field.name), "missing"), "{}", check.name);
        }
    }
}

#[test]
fn a_number_outside_its_range_is_named() {
    for check in all() {
        let Some(good) = cases(check).into_iter().find(|case| case.refused.is_none()) else { panic!("{}", check.name) };
        for field in check.fields {
            let Allowed::Number { least, most, .. } = field.allowed else { continue };
            if field.name == "station_m" || !field.needed.is_empty() {
                continue;
            }
            for value in [least - 1.0, most + 1.0, f64::MAX, f64::MIN] {
                let mut bad = good.fields.clone();
                bad[field.name] = json!(value);
                let error = run(check.name, &bad).unwrap_err();
                assert_eq!(error.field.as_deref(), Some(field.name), "{} {value}", check.name);
            }
        }
    }
}

#[test]
fn the_list_tells_every_field_with_unit_range_and_source() {
    let list = list();
    assert_eq!(list.as_array().unwrap().len(), 18);
    for check in list.as_array().unwrap() {
        assert!(!check["source"].as_str().unwrap().is_empty());
        assert!(!check["fields"].as_array().unwrap().is_empty() && !check["out"].as_array().unwrap().is_empty());
        for field in check["fields"].as_array().unwrap() {
            assert!(!field["allowed"].as_str().unwrap().is_empty(), "{field}");
        }
    }
}

fn table() -> String {
    let mut rows = String::from(
        "| check | formula | source | cases, of them read | worst deviation from read | from all |\n|---|---|---|---|---|---|\n",
    );
    for check in all() {
        let cases = cases(check);
        let read = cases.iter().filter(|case| case.provenance == "read").count();
        let from_read = if read == 0 { "none read".into() } else { share(worst(check, |from| from == "read")) };
        let from_all = share(worst(check, |_| true));
        let (name, formula, source, count) = (check.name, check.formula, check.source, cases.len());
        rows += &format!("| `{name}` | {formula} | {source} | {count}, {read} | {from_read} | {from_all} |\n");
    }
    rows
}

/// One digit, rounded up, so that another machine's last bit does not change the page.
fn share(worst: f64) -> String {
    if worst < 1e-9 { "below 1e-9".into() } else { format!("{:.0e}", worst * 1.499_999) }
}

/// With `MENDLINE_WRITE_DOCS=1` the table is written instead.
#[test]
fn the_table_in_the_docs_is_the_one_that_the_fixtures_give() {
    let path = repository().join("docs/checks.md");
    let page = std::fs::read_to_string(&path).unwrap();
    let (begin, end) = ("<!-- table begins -->\n", "<!-- table ends -->");
    let (before, rest) = page.split_once(begin).unwrap();
    let (old, after) = rest.split_once(end).unwrap();
    if std::env::var_os("MENDLINE_WRITE_DOCS").is_some() {
        std::fs::write(&path, format!("{before}{begin}{}{end}{after}", table())).unwrap();
    } else {
        assert_eq!(old, table(), "docs/checks.md is stale: run this test with MENDLINE_WRITE_DOCS=1");
    }
}

/// Anything that JSON can say.
fn anything() -> impl Strategy<Value = Value> {
    let leaf = prop_oneof![
        Just(Value::Null),
        any::<bool>().prop_map(Value::from),
        any::<f64>().prop_map(|number| json!(number)),
        any::<i64>().prop_map(Value::from),
        "[a-zA-Z0-9_-]{0,24}".prop_map(Value::from),
        Just(json!("fully_deteriorated")),
    ];
    leaf.prop_recursive(3, 24, 4, |inner| {
        prop_oneof![
            prop::collection::vec(inner.clone(), 0..4).prop_map(Value::from),
            prop::collection::btree_map("[a-z_]{1,8}", inner, 0..4)
                .prop_map(|map| Value::Object(map.into_iter().collect::<Map<_, _>>())),
        ]
    })
}

fn inside(field: &Field) -> BoxedStrategy<Value> {
    match field.allowed {
        Allowed::Number { least, most, .. } => {
            prop_oneof![Just(least), Just(most), least..=most].prop_map(|number| json!(number)).boxed()
        }
        Allowed::OneOf(words) => prop::sample::select(words).prop_map(Value::from).boxed(),
        Allowed::YesNo => any::<bool>().prop_map(Value::from).boxed(),
        Allowed::Text => Just(json!("contract C.2.1")).boxed(),
        Allowed::Object(fields) => object(fields).boxed(),
        Allowed::Rows(columns) => {
            let row = columns.iter().map(inside).collect::<Vec<_>>();
            prop::collection::vec(row, 0..8).prop_map(|rows| json!(rows)).boxed()
        }
    }
}

fn object(fields: &'static [Field]) -> impl Strategy<Value = Value> {
    fields.iter().map(inside).collect::<Vec<_>>().prop_map(|values| {
        Value::Object(fields.iter().zip(values).map(|(field, value)| (field.name.to_owned(), value)).collect())
    })
}

fn finite_or_none(value: &Value) -> bool {
    match value {
        Value::Null => false,
        Value::Object(object) => object.values().all(finite_or_none),
        _ => true,
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn no_input_panics(number in 0..18usize, values in prop::collection::vec(anything(), 16)) {
        let check = all()[number];
        let fields = check.fields.iter().zip(values).map(|(field, value)| (field.name.to_owned(), value));
        let _ = run(check.name, &Value::Object(fields.collect()));
    }

    #[test]
    fn whatever_is_inside_the_ranges_gives_finite_numbers_or_a_refusal(
        (number, fields) in (0..18usize).prop_flat_map(|number| (Just(number), object(all()[number].fields))),
    ) {
        let check = all()[number];
        // What may be null says so in the list.
        let nullable = ["pressure-decay", "geodesic"].contains(&check.name);
        if let Ok(found) = run(check.name, &fields) {
            prop_assert!(nullable || finite_or_none(&found), "{} {} {}", check.name, fields, found);
        }
    }
}
