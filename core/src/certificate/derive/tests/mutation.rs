//! Every value of a finished record, dropped and spoiled in turn: each is refused by its name, or stands in the table of
//! what may be absent.

use std::collections::BTreeSet;

use serde_json::{Value, json};

use super::kit::Story;
use super::story::mended;
use crate::certificate::derive::refusals;
use crate::procedure::gate::{may_be_absent, standing};
use crate::procedure::repair::Repair;
use crate::procedure::rules::Rule;

/// Spoilings of numbers that are free to be anything, each with its reason. The step at its end, or the path, is named.
const FREE: &[(&str, &str)] = &[
    (
        ".values.",
        "What the foreman saw when deciding: a cover may be below zero. A task's own values have their range.",
    ),
    ("_mc", "Temperatures may be below zero; −1 in thousandths is one."),
    ("lat_e7", "South."),
    ("lon_e7", "West."),
    ("offset_min", "West of Greenwich."),
    ("boot_ms", "What happened before the device was started is counted back from its start."),
    ("beyond_um", "Short of the mark."),
    ("by_ms", "The clock was set back."),
    ("spare_ms", "Planned with too little time; the second go measures anew."),
    ("upstream_um", "The defect reaches out of the patch; the cover is another rule."),
    ("downstream_um", "The defect reaches out of the patch; the cover is another rule."),
];

/// A step of a path: the attempt that the paper is about is called `attempt` in the table.
fn as_in_the_table(repair: &Value, path: &[String]) -> Vec<String> {
    let last = repair["attempts"].as_array().unwrap().len() - 1;
    match path {
        [attempts, at, rest @ ..] if attempts == "attempts" => {
            let own = *at == last.to_string();
            let start: &[&str] = if own { &["attempt"] } else { &["earlier", "0"] };
            start.iter().map(|step| (*step).to_owned()).chain(rest.iter().cloned()).collect()
        }
        _ => path.to_vec(),
    }
}

fn leaves(path: &mut Vec<String>, value: &Value, found: &mut Vec<(Vec<String>, Value)>) {
    let mut go = |step: String, inner: &Value| {
        path.push(step);
        leaves(path, inner, found);
        path.pop();
    };
    match value {
        Value::Object(fields) => fields.iter().for_each(|(key, inner)| go(key.clone(), inner)),
        Value::Array(rows) => rows.iter().enumerate().for_each(|(at, inner)| go(at.to_string(), inner)),
        leaf => found.push((path.clone(), leaf.clone())),
    }
    if value.is_array() && !path.is_empty() {
        found.push((path.clone(), value.clone()));
    }
    // A part that need not be there is dropped as a whole, too.
    if value.is_object() && !path.is_empty() {
        found.push((path.clone(), value.clone()));
    }
}

fn at<'a>(tree: &'a mut Value, path: &[String]) -> &'a mut Value {
    path.iter().fold(tree, |inner, step| match inner {
        Value::Array(rows) => &mut rows[step.parse::<usize>().unwrap()],
        other => &mut other[step.as_str()],
    })
}

/// Returns what the value can be spoiled to, with a word for it.
fn spoiled(value: &Value) -> Vec<(&'static str, Value)> {
    match value {
        Value::Null => vec![],
        Value::String(_) => vec![("null", Value::Null), ("empty", json!(" ")), ("kind", json!(7))],
        Value::Number(_) => vec![("null", Value::Null), ("negative", json!(-1_i64)), ("kind", json!("NaN"))],
        Value::Bool(_) => vec![("null", Value::Null), ("kind", json!("maybe"))],
        Value::Array(_) => vec![("null", Value::Null), ("empty", json!([])), ("kind", json!("none"))],
        Value::Object(_) => vec![("null", Value::Null), ("kind", json!("none"))],
    }
}

/// A rule with what it is about, its sentence and its way out.
type Refused = (Rule, String, String, String);

/// Says how a spoiled state is met: it can't be read, it is refused with these rules, or it passes.
fn met(story: &Story, tree: Value) -> Result<Vec<Refused>, String> {
    let repair: Repair = serde_json::from_value(tree).map_err(|error| error.to_string())?;
    let mut found = refusals(&repair, story.people());
    if repair.ending().is_none() {
        found.push(standing(&repair));
    }
    let refused = found.into_iter().map(|broken| {
        (broken.rule, broken.subject.clone(), broken.rule.says(&broken.values), broken.rule.way_out(&broken.values))
    });
    Ok(refused.collect())
}

/// Fails where a refusal says nothing, or speaks of another value than the one that was spoiled.
fn named(path: &[String], found: &[Refused]) {
    let spoiled = path.join(".");
    for (rule, subject, says, way_out) in found {
        assert!(!says.is_empty() && !way_out.is_empty(), "{spoiled}: {rule:?} says nothing");
        let of_the_value = matches!(rule, Rule::ValueMissing | Rule::ValueWrong);
        assert!(!of_the_value || subject.starts_with(&spoiled), "{spoiled}: {subject} is named instead");
    }
}

/// Returns the path with rows of a list taken for one; of stamps, what is inside counts once for a part of the record.
fn alike(path: &[String]) -> String {
    let inside = path.iter().position(|step| step == "moment" || step == "position").unwrap_or(0);
    let list = |step: &String| step.chars().all(|c| c.is_ascii_digit());
    let any = |at: usize, step: &String| {
        let attempt = at == 1 && path[0] == "attempts";
        (list(step) && !attempt) || (2..inside).contains(&at)
    };
    let mut steps: Vec<&str> =
        path.iter().enumerate().map(|(at, step)| if any(at, step) { "*" } else { step.as_str() }).collect();
    steps.dedup();
    steps.join(".")
}

fn excused(path: &[String], how: &str) -> bool {
    let last = path.last().unwrap().as_str();
    let joined = path.join(".");
    match how {
        "negative" => FREE.iter().any(|(end, _)| last.ends_with(end) || (path[0] == "waivers" && joined.contains(end))),
        _ => may_be_absent(path),
    }
}

#[test]
fn every_value_that_is_dropped_or_spoiled_is_refused_by_name_or_may_be_absent() {
    let story = mended();
    let whole = serde_json::to_value(story.repair()).unwrap();
    assert_eq!(met(&story, whole.clone()), Ok(vec![]), "the whole record is refused");
    let mut values = vec![];
    leaves(&mut vec![], &whole, &mut values);
    let mut seen = BTreeSet::new();
    values.retain(|(path, _)| seen.insert(alike(path)));
    let (mut refused, mut unreadable, mut passed) = (0, 0, vec![]);
    for (path, value) in &values {
        let known = as_in_the_table(&whole, path);
        for (how, other) in spoiled(value) {
            let mut tree = whole.clone();
            *at(&mut tree, path) = other;
            match met(&story, tree) {
                Err(_) => unreadable += 1,
                Ok(found) if found.is_empty() => {
                    if !excused(&known, how) {
                        passed.push(format!("{} {how}", known.join(".")));
                    }
                }
                Ok(found) => {
                    refused += 1;
                    named(&known, &found);
                }
            }
        }
    }
    println!("{} values: {refused} spoilings refused by the rules, {unreadable} not readable", values.len());
    assert!(passed.is_empty(), "{} pass:\n{}", passed.len(), passed.join("\n"));
    assert!(refused > 500, "{refused}");
}
