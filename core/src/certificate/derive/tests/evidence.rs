//! Nothing that somebody recorded is left out, and nothing is left blank.

use serde_json::Value;

use super::kit::Story;
use super::story::{
    accepted, discarded, left_in_pipe, mended, never_begun, planned, practised, pressed, rejected, released, verified,
};
use crate::certificate::content::{Content, Known};
use crate::facts::{NoPosition, Position};
use crate::procedure::repair::{Attempt, Repair};
use crate::procedure::{Command, Happening};

/// Cells that may be empty because another cell of their row says what there is to say.
const MAY_BE_EMPTY: [&str; 9] = ["lot", "expiry", "amount", "note", "inputs", "limit", "margin", "evidence", "short"];

fn blanks(value: &Value, path: &str, found: &mut Vec<String>) {
    match value {
        Value::String(text) => {
            let key = path.rsplit('.').next().unwrap_or_default();
            let blank = text.trim().is_empty() && !MAY_BE_EMPTY.contains(&key);
            // An unsigned line has no statement to be quoted.
            if (blank && key != "statement") || text.contains("{") || text.contains("0.00000°") {
                found.push(format!("{path}: “{text}”"));
            }
        }
        Value::Array(items) => items.iter().for_each(|item| blanks(item, path, found)),
        Value::Object(fields) => fields.iter().for_each(|(key, item)| blanks(item, &format!("{path}.{key}"), found)),
        Value::Null | Value::Bool(_) | Value::Number(_) => {}
    }
}

#[test]
fn no_value_is_blank_on_any_paper() {
    for story in [mended(), practised(), rejected(), left_in_pipe(), never_begun()] {
        let content = serde_json::to_value(story.content().unwrap()).unwrap();
        let mut found = vec![];
        blanks(&content, "", &mut found);
        assert_eq!(found, Vec::<String>::new());
    }
}

#[test]
fn every_list_of_evidence_is_filled() {
    let content = mended().content().unwrap();
    let lengths = [
        content.departures.len(),
        content.notes.len(),
        content.materials.len(),
        content.sheets.rows.len(),
        content.checks.len(),
        content.findings.len(),
        content.attempts.len(),
        content.corrections.len(),
        content.photos.len(),
        content.cautions.len(),
    ];
    assert!(lengths.iter().all(|length| *length > 0), "{lengths:?}");
}

fn last(repair: &mut Repair) -> &mut Attempt {
    repair.attempts.last_mut().unwrap()
}

type Change = (&'static str, fn(&mut Repair));

/// Everything that is recorded beside the answers, each taken away.
const CHANGES: [Change; 26] = [
    ("joined", |repair| last(repair).joined = None),
    ("insertion", |repair| last(repair).insertion = None),
    ("at the mark", |repair| last(repair).at_mark = None),
    ("air joined", |repair| last(repair).air_joined = None),
    ("target", |repair| last(repair).target = None),
    ("readings", |repair| last(repair).readings.clear()),
    ("why of a reading", |repair| last(repair).readings.iter_mut().for_each(|read| read.why.clear())),
    ("sample", |repair| last(repair).sample.clear()),
    ("release", |repair| last(repair).released = None),
    ("laterals", |repair| last(repair).laterals.clear()),
    ("doubts", |repair| last(repair).doubts.clear()),
    ("go", |repair| last(repair).go = None),
    ("second go", |repair| last(repair).second_go = None),
    ("spans", |repair| last(repair).spans.clear()),
    ("reasons", |repair| last(repair).ended.as_mut().unwrap().reasons.clear()),
    ("test push", |repair| last(repair).test_push = Default::default()),
    ("first attempt", |repair| drop(repair.attempts.remove(0))),
    ("place of the first patch", |repair| repair.attempts[0].place = None),
    ("waivers", |repair| repair.waivers.clear()),
    ("corrections", |repair| repair.corrections.clear()),
    ("photos", |repair| repair.photos.clear()),
    ("video", |repair| repair.video_before.clear()),
    ("street", |repair| repair.line.street.clear()),
    ("what it carries", |repair| repair.line.carries.clear()),
    ("position", |repair| {
        let none = Position::Absent { why: NoPosition::Refused };
        last(repair).spans.iter_mut().for_each(|span| span.begun.position = none.clone());
        last(repair).joined.as_mut().unwrap().position = none.clone();
        repair.photos.iter_mut().for_each(|photo| photo.at.position = none.clone());
    }),
    ("measured ID", |repair| repair.plan.as_mut().unwrap().choice.diameter_most_um = Default::default()),
];

/// Returns the content of a rejected repair after a change; no photo is at hand, so that none has to be reduced.
fn after(story: &Story, change: impl FnOnce(&mut Repair)) -> Content {
    let mut story = story.clone().changed(change);
    story.originals.clear();
    story.content().unwrap()
}

#[test]
fn whatever_is_taken_away_is_missed_on_the_paper() {
    let story = rejected();
    let whole = after(&story, |_| {});
    for (what, change) in CHANGES {
        assert_ne!(after(&story, change), whole, "{what}");
    }
}

#[test]
fn every_answer_is_missed_when_it_is_taken_away() {
    let story = rejected();
    let whole = after(&story, |_| {});
    let keys: Vec<String> = story.repair().attempts[1].answers.keys().cloned().collect();
    assert!(keys.len() > 50);
    for key in keys {
        let less = after(&story, |repair| drop(last(repair).answers.remove(&key)));
        // What was carried with the test push is said by the test push.
        let of_the_push = ["dry_push", "mark_agrees", "obstacles", "back"].contains(&key.as_str());
        assert_eq!(less == whole, of_the_push, "{key}");
    }
}

#[test]
fn a_note_and_an_alarm_are_printed_with_who_and_when() {
    let mut story = pressed(discarded(planned(false)));
    story.at("09:31").does(Command::Note { text: "The owner’s inspector looked on".into() });
    story.reports(Happening::GasAlarm);
    let content = accepted(verified(released(story), 2_000)).content().unwrap();
    let note = |label: &str| content.notes.iter().find(|note| note.label == label).unwrap().text.as_str();
    assert_eq!(note("Written"), "The owner’s inspector looked on. Tomas Ekdal, 09:31.");
    assert_eq!(note("Reported"), "Gas alarm. Tomas Ekdal, 09:31.");
}

#[test]
fn a_photo_whose_original_is_gone_or_changed_says_so() {
    let mut story = mended();
    let first = story.content().unwrap().photos[0].original_sha256.clone();
    story.originals.insert(first.clone(), b"other bytes".to_vec());
    let why = |story: &Story| match story.content().unwrap().photos[0].copy.clone() {
        Known::Absent(why) => why,
        Known::Known(_) => panic!("a copy of the wrong bytes"),
    };
    assert_eq!(why(&story), "the file on this device is not the original: its SHA-256 is another");
    story.originals.remove(&first);
    assert_eq!(why(&story), "the original is not on this device");
}

#[test]
fn a_marked_up_copy_names_the_photo_that_it_was_drawn_on() {
    let mut last = String::new();
    let story = mended().changed(|repair| {
        let original = repair.photos[2].sha256.clone();
        let copy = repair.photos.last_mut().unwrap();
        copy.copy_of = Some(original);
        copy.label = "Edge stands off".into();
        last.clone_from(&copy.sha256);
    });
    let content = story.content().unwrap();
    let copy = content.photos.iter().find(|photo| photo.original_sha256 == last).unwrap();
    assert_eq!(copy.title, "Edge stands off (marked-up copy of photo 3)");
}
