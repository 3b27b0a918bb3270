//! No value makes the pages fail: every number and every text is replaced by strange ones.

use super::content;
use super::pages::assert_neat;
use mendline_core::certificate::Content;
use mendline_core::certificate::fonts::Fonts;
use mendline_core::certificate::layout::lay_out;
use serde_json::{Value, json};
use std::collections::BTreeSet;

/// The keys whose values `pick` accepts.
fn keys(value: &Value, pick: &impl Fn(&Value) -> bool, found: &mut BTreeSet<String>) {
    match value {
        Value::Object(map) => map.iter().for_each(|(key, value)| {
            if pick(value) {
                found.insert(key.clone());
            }
            keys(value, pick, found);
        }),
        Value::Array(values) => values.iter().for_each(|value| keys(value, pick, found)),
        _ => {}
    }
}

/// Puts `with` in the place of every value of `key` that `pick` accepts.
fn replace(value: &mut Value, key: &str, pick: &impl Fn(&Value) -> bool, with: &Value) {
    match value {
        Value::Object(map) => map.iter_mut().for_each(|(name, value)| {
            if name == key && pick(value) {
                *value = with.clone();
            }
            replace(value, key, pick, with);
        }),
        Value::Array(values) => values.iter_mut().for_each(|value| replace(value, key, pick, with)),
        _ => {}
    }
}

/// Lays out the pages with each strange value in the place of each key, and returns how many there were. Pages with
/// strange texts must be neat; strange numbers may make a drawing absurd, but not a failure.
fn try_all(pick: impl Fn(&Value) -> bool, strange: &[Value], neat: bool) -> usize {
    let fonts = Fonts::bundled().unwrap();
    let mut content = content("edge");
    content.photos.truncate(2);
    let plain = serde_json::to_value(&content).unwrap();
    let mut found = BTreeSet::new();
    keys(&plain, &pick, &mut found);
    let mut laid_out = 0;
    for key in &found {
        for with in strange {
            let mut value = plain.clone();
            replace(&mut value, key, &pick, with);
            let Ok(content) = serde_json::from_value::<Content>(value) else { continue };
            match lay_out(&content, &fonts) {
                Ok(pages) if neat => assert_neat(&fonts, &format!("{key} = {with}"), &pages),
                Ok(pages) => assert!(pages.pages.len() > 1),
                Err(error) => assert_eq!(key, "utc_offset_min", "{with}: {error}"),
            }
            laid_out += 1;
        }
    }
    laid_out
}

#[test]
fn no_number_makes_the_pages_fail() {
    let strange = [json!(0), json!(-1), json!(255), json!(i64::MAX), json!(i64::MIN)];
    assert!(try_all(Value::is_number, &strange, false) > 60);
}

#[test]
fn no_text_makes_the_pages_fail() {
    let long = "many words ".repeat(300);
    let strange = [json!(""), json!("\n\n\u{0}\u{202e}"), json!("中".repeat(400)), json!(long), json!("@<The hold>")];
    assert!(try_all(Value::is_string, &strange, true) > 100);
}
