//! Requests about the named checks: the list, one worked out, one kept with a repair.

use std::collections::BTreeMap;

use serde::Serialize;
use serde_json::{Map, Value, json};

use super::Visit;
use super::response::{Answer, Problem};
use crate::checks::named::{self, CheckError, Understood};
use crate::procedure::Command;
use crate::{entry, view, words};

/// Every check, and of a repair what is known for it and what was worked out.
#[derive(Debug, Serialize)]
pub struct ChecksView {
    /// The repair that they are for; none for checks on their own.
    pub repair: Option<String>,
    pub number: String,
    pub rehearsal: bool,
    /// As `mendline check --list` prints them; a field that the reader has in another unit says which (`beside`), and how
    /// much of its own one of that is (`per`, after `plus`).
    pub checks: Value,
    /// By the check's name: fields that the repair knows already.
    pub known: Map<String, Value>,
    /// By its name: what counts of the last of each check that was worked out for the repair, in words.
    pub worked: BTreeMap<String, String>,
    /// What came of the name and the fields that were asked with.
    pub tried: Option<Tried>,
}

/// A check worked out for the screen; nothing is written.
#[derive(Debug, Serialize)]
pub struct Tried {
    pub name: String,
    /// What went in: what the repair knows, and over it what was typed.
    pub given: Value,
    /// The fields as they were understood.
    pub fields: Value,
    pub output: Option<Value>,
    /// What came out, in the reader's words and units.
    pub said: Vec<words::Named>,
    pub problem: Option<CheckError>,
}

impl Visit<'_> {
    pub(super) fn check(&mut self, name: &str, input: &Value) -> Result<Answer, Problem> {
        let output = named::run(name, input).map_err(|problem| Problem::error("check", problem.to_string()))?;
        Ok(Answer::Check { output })
    }

    pub(super) fn checks(&mut self, id: &str, name: &str, input: Option<&Value>) -> Result<Answer, Problem> {
        let repair = if id.is_empty() { None } else { Some(self.store.repair(id)?) };
        let known = |check: &&named::Check| {
            let fields = repair.as_ref().map_or_else(Map::new, |repair| view::known(repair, check.name));
            (check.name.to_owned(), Value::Object(fields))
        };
        Ok(Answer::Checks(Box::new(ChecksView {
            checks: shown(),
            known: named::all().iter().map(known).collect(),
            worked: repair.as_ref().map_or_else(BTreeMap::new, view::worked),
            tried: input.filter(|_| !name.is_empty()).map(|input| {
                let known = repair.as_ref().map_or_else(Map::new, |repair| view::known(repair, name));
                tried(name, over(known, input))
            }),
            number: repair.as_ref().map_or_else(String::new, |repair| repair.number.clone()),
            rehearsal: repair.as_ref().is_some_and(|repair| repair.rehearsal),
            repair: repair.map(|repair| repair.id),
        })))
    }

    pub(super) fn work_out(&mut self, id: &str, name: &str, input: &Value) -> Result<Answer, Problem> {
        let says = |problem: CheckError| Problem::error("check", format!("{problem}."));
        let Understood { fields, typed } = named::understood(name, input).map_err(says)?;
        let worked = named::worked(name, &fields).map_err(says)?;
        self.tell_any(id, &Command::WorkOut { worked: Box::new(named::Worked { typed, ..worked }) })
    }
}

/// Returns the list in the reader's words, each field with the reader's unit where it is another one. What a standard
/// states in psi and ft is asked for as it states it.
fn shown() -> Value {
    let mut all = named::list();
    for check in all.as_array_mut().into_iter().flatten() {
        retell(check, &["formula", "source"]);
    }
    let fields = all.as_array_mut().into_iter().flatten().filter_map(|check| check["fields"].as_array_mut()).flatten();
    for field in fields {
        let unit = field["unit"].as_str().unwrap_or_default();
        let beside = words::unit_beside(unit);
        let (Some(none), Some(one)) = (entry::turned(0.0, beside, unit), entry::turned(1.0, beside, unit)) else {
            continue;
        };
        if beside != unit && !matches!(unit, "psi" | "ft") {
            field["beside"] = json!({ "unit": beside, "per": one - none, "plus": none });
        }
    }
    all
}

/// Puts texts into the reader's words.
fn retell(told: &mut Value, names: &[&str]) {
    for name in names {
        if let Some(text) = told[*name].as_str().map(words::retold) {
            told[*name] = text.into();
        }
    }
}

/// Returns the known fields with the given ones over them; what is no object stays as it is.
fn over(mut known: Map<String, Value>, given: &Value) -> Value {
    let Some(object) = given.as_object() else { return given.clone() };
    known.extend(object.clone());
    Value::Object(known)
}

fn tried(name: &str, given: Value) -> Tried {
    let understood = named::understood(name, &given);
    let fields = understood.as_ref().map_or_else(|_| given.clone(), |found| found.fields.clone());
    let found = understood.and_then(|found| named::run(name, &found.fields));
    let (output, problem) = match found {
        Ok(output) => (Some(output), None),
        Err(problem) => (None, Some(problem)),
    };
    let said = output.as_ref().map_or_else(Vec::new, |output| words::came_out(name, output));
    let output = output.map(|mut output| {
        retell(&mut output, &["source"]);
        output
    });
    Tried { name: name.into(), given, fields, output, said, problem }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::{Language, Reader, for_reader};

    #[test]
    fn the_list_and_what_was_tried_name_their_source_in_the_words_of_the_reader() {
        let said = |language| {
            for_reader(Reader { language, ..Reader::default() }, || {
                let all = shown();
                let listed = all.as_array().and_then(|all| all.iter().find(|one| one["name"] == "end-thrust")).unwrap();
                let tried = tried("end-thrust", json!({ "gauge_bar": 1.5, "inside_diameter_mm": 203.2 }));
                [listed["source"].clone(), tried.output.unwrap()["source"].clone()]
            })
        };
        let begins = |texts: [Value; 2], word: &str| texts.iter().all(|text| text.as_str().unwrap().starts_with(word));
        assert!(begins(said(Language::En), "statics, ") && begins(said(Language::De), "Statik, "));
    }
}
