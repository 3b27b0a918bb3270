//! Is the record whole? Every value of a repair, looked at one by one, whatever it is about.
//!
//! A value that a later version adds is asked for from the start: what may be absent stands in [`MAY_BE_ABSENT`], and
//! nowhere else.

use serde::Serialize;
use serde_json::Value;

use super::super::plan::Plan;
use super::super::repair::{Attempt, Repair};
use super::super::rules::{Broken, Rule, t};
use crate::words::{self, say};

/// What may be null, an empty text or an empty list, each with its reason. A path is that of the record, with the attempt
/// that the paper is about under `attempt` and the others under `earlier`; `*` is one step of it, `**` any number.
pub const MAY_BE_ABSENT: &[(&str, &str)] = &[
    ("**.person", "What happened is recorded even if nobody was picked; the paper then says so."),
    ("**.accuracy_mm", "Not every source of a position states its accuracy."),
    ("**.subject", "Names which one, where a rule can be broken more than once."),
    ("**.carried_from", "Only what was taken over from an earlier attempt has one."),
    ("**.water_mc", "Water is measured only where some stands or runs."),
    ("**.values", "Not every rule and not every task has values."),
    ("line.carries", "The inspection need not say what the pipe carries."),
    ("line.street", "A pipe may lie in no street."),
    ("line.laterals", "A line may have none."),
    ("line.*.place", "The owner need not have given coordinates."),
    ("defect.observations.*.code", "What was entered by hand has words and no code."),
    ("defect.origin.date", "An inspection file need not say its day; it is named by its hash."),
    ("defect.origin.lines", "An inspection file need not have lines."),
    ("video_before", "The inspection's own video, where there is one."),
    ("**contract.crew", "A contract need not name the crew: who did what stands at each task."),
    ("**contract.pressure_most_pa", "The contract need not limit the pressure: packer and patch do."),
    ("**contract.host_pipe_most_pa", "Nobody need have said what the host pipe bears."),
    ("**contract.photos", "A contract may ask for no photos."),
    ("plan.choice.counter", "The mark was made with the camera on the defect, so no counter counts."),
    ("plan.choice.tape", "Whoever reads the mark off whole rods needs no tape."),
    ("plan.choice.below", "Only a way in by rods needs somebody below."),
    ("plan.choice.centre_um", "The centre of the defect, unless one was set by hand."),
    ("plan.choice.closures", "Nothing need end."),
    ("plan.resin.cure_counts_from", "The hold's moment, unless the sheet names another."),
    ("plan.patch.membrane", "Not every patch needs one."),
    ("plan.computed.membrane_*", "Not every patch needs one."),
    ("plan.computed.covered", "The patch need not cover a lateral."),
    ("plan.computed.cover.errors", "With the camera on the defect and a mark read in the same run none may be left."),
    ("**.budget.enough_at_mc", "The sheet need not have a temperature that gives enough."),
    ("plan.method.tasks.*.detail", "A label may say all."),
    ("plan.method.tasks.*.caution", "Not every task is dangerous."),
    ("plan.instruments.*.calibrated_to", "Not every instrument is calibrated; overdue is another rule."),
    (
        "attempt.answers.*.answer.values.*",
        "Judged by its own field: its kind, its range, and whether it must be there.",
    ),
    ("attempt.answers.*.before", "The first answer may be the last."),
    ("attempt.answers.*.before.**.values.*", "Corrected since; judged when it was given."),
    ("attempt.insertion", "Two taps are asked while resin runs; this is not one of them."),
    ("attempt.air_joined", "Two taps are asked while resin runs; this is not one of them."),
    ("attempt.at_mark", "The task at the mark may say it instead."),
    ("attempt.at_mark.counter_um", "The rope or the rods tell it too."),
    ("attempt.at_mark.beyond_um", "The task at the mark may say it instead."),
    ("attempt.test_push.reached.1", "The counter is read where there is one."),
    ("attempt.readings.*.pipe_mc", "Pressure is read without it; the hold counts by the coldest that was read."),
    ("attempt.readings.*.patch_mc", "Needs a sensor."),
    ("attempt.readings.*.upstream_um", "Needs somebody at the node above."),
    ("attempt.readings.*.gauge", "A reading by hand is by the gauge of the task."),
    ("attempt.readings.*.why", "Only an unusual reading has a reason."),
    ("attempt.troubles", "Nothing need go wrong."),
    ("attempt.place", "Asked only when the working time ran out."),
    ("attempt.laterals", "Only where the patch covers some; a covered one that nobody opened is another rule."),
    ("attempt.tightness", "Asked where the contract asks; its absence is another rule."),
    ("attempt.doubts", "Nothing need be in doubt."),
    ("attempt.ended.reasons", "An accepted attempt needs none."),
    ("attempt.ended.in_pipe", "An accepted patch stays in the pipe."),
    ("attempt.handed.**", "Not every hold goes to another phone, nor is the first one always at hand."),
    ("earlier", "The first attempt may be the last."),
    ("earlier.*.answers", "An attempt that was given up may have ended before this."),
    ("earlier.*.temperatures", "An attempt that was given up may have ended before this."),
    ("earlier.*.test_push.*", "An attempt that was given up may have ended before this."),
    ("earlier.*.go", "An attempt that was given up may have ended before this."),
    ("earlier.*.second_go", "An attempt that was given up may have ended before this."),
    ("earlier.*.joined", "An attempt that was given up may have ended before this."),
    ("earlier.*.target", "An attempt that was given up may have ended before this."),
    ("earlier.*.readings", "An attempt that was given up may have ended before this."),
    ("earlier.*.sample", "An attempt that was given up may have ended before this."),
    ("earlier.*.released", "An attempt that was given up may have ended before this."),
    ("broken", "Nothing need go wrong."),
    ("waivers", "Nothing need be waived; what must be is another rule."),
    ("corrections", "Nothing need be corrected."),
    ("corrections.*.old", "What is filled in late had nothing before."),
    ("notes", "Nobody need have noted anything."),
    ("worked", "Checks on demand."),
    ("worked.*.worked.fields.**", "What went into a check is judged by the check."),
    (
        "worked.*.worked.result.**",
        "What came out of a check is read by those who need it; its absence is another rule.",
    ),
    ("photos", "A missing photo is another rule."),
    ("photos.*.key", "A photo that nobody asked for."),
    ("photos.*.label", "A photo that nobody asked for."),
    ("clock_jumps", "No clock need have been set."),
    ("signatures", "A missing signature is another rule."),
    ("signatures.*.key", "A drawn line without a key; the paper says that it proves nothing."),
    ("seals", "Keys sign the paper when it is made."),
    ("issued", "A missing number is another rule."),
    ("issued_before", "The first record may be the last."),
    ("closed", "Only a repair without a patch is closed."),
];

/// Numbers that may be below zero, by the end of their name; a temperature down to absolute zero.
const MAY_BE_NEGATIVE: &[&str] = &[
    "_mc",
    "lat_e7",
    "lon_e7",
    "offset_min",
    "boot_ms",
    "beyond_um",
    "by_ms",
    "spare_ms",
    "upstream_um",
    "downstream_um",
];

/// What every paper asks for by a name of its own, also that of a rejected or unrepaired defect.
const ASKED_BY_NAME: &[&str] = &[
    "line.asset",
    "line.upstream.name",
    "line.downstream.name",
    "line.material",
    "contract.title",
    "contract.owner",
    "contract.contractor",
];

const ABSOLUTE_ZERO_MC: i64 = -273_150;

/// Where a value is told about: the beginning of its path, the name of the part, and how it is mended.
const PARTS: &[(&str, &str, &str)] = &[
    ("line", "line", "opening"),
    ("defect", "defect", "opening"),
    ("number", "repair", "opening"),
    ("contract", "contract", "document"),
    ("plan.contract", "contract", "document"),
    ("plan.resin", "resin", "document"),
    ("plan.patch", "patch", "document"),
    ("plan.packer", "packer", "document"),
    ("plan.method", "method", "document"),
    ("plan.instruments", "instruments", "document"),
    ("plan", "plan", "plan"),
    ("attempt.answers", "answers", "answer"),
    ("attempt", "attempt", "journal"),
    ("photos", "photos", "journal"),
    ("waivers", "waivers", "journal"),
    ("signatures", "signatures", "journal"),
    ("issued", "number", "journal"),
    ("", "repair", "journal"),
];

/// Returns what the record of a repair lacks or says wrongly, in the order of the record. `attempt` is the one that the
/// paper is about.
pub fn gaps(repair: &Repair, attempt: &Attempt) -> Vec<Broken> {
    let mut all = tree(repair).unwrap_or_default();
    if let Value::Object(fields) = &mut all {
        // Kept by the journal, not by the people, or only while the repair goes on.
        for passing in ["attempts", "branches", "choices", "practice"] {
            fields.remove(passing);
        }
        let others: Vec<&Attempt> = repair.attempts.iter().filter(|other| other.n != attempt.n).collect();
        fields.insert("attempt".into(), tree(attempt).unwrap_or_default());
        fields.insert("earlier".into(), tree(&others).unwrap_or_default());
    }
    let mut found = vec![];
    walk(&mut vec![], &all, &mut found);
    found.retain(|broken| !ASKED_BY_NAME.contains(&broken.subject.as_str()));
    found
}

/// Returns what the documents of a plan lack or say wrongly: a figure without its source, a sheet without its name.
pub fn gaps_of_documents(plan: &Plan) -> Vec<Broken> {
    let documents = [
        ("contract", tree(&plan.contract)),
        ("resin", tree(&plan.resin)),
        ("patch", tree(&plan.patch)),
        ("packer", tree(&plan.packer)),
        ("method", tree(&plan.method)),
        ("instruments", tree(&plan.instruments)),
    ];
    let mut found = vec![];
    for (name, document) in documents {
        walk(&mut vec!["plan".into(), name.into()], &document.unwrap_or_default(), &mut found);
    }
    found
}

fn tree(of: &impl Serialize) -> Option<Value> {
    serde_json::to_value(of).ok()
}

fn walk(path: &mut Vec<String>, value: &Value, found: &mut Vec<Broken>) {
    match value {
        Value::Object(fields) => {
            for (key, inner) in fields {
                path.push(key.clone());
                walk(path, inner, found);
                path.pop();
            }
        }
        Value::Array(rows) if !rows.is_empty() => {
            for (at, inner) in rows.iter().enumerate() {
                path.push(at.to_string());
                walk(path, inner, found);
                path.pop();
            }
        }
        leaf => found.extend(broken(path, leaf)),
    }
}

fn broken(path: &[String], leaf: &Value) -> Option<Broken> {
    let last = path.last().map_or("", String::as_str);
    match leaf {
        Value::Null | Value::Array(_) => (!may_be_absent(path)).then(|| missing(path)),
        Value::String(text) if text.trim().is_empty() => (!may_be_absent(path)).then(|| missing(path)),
        Value::String(text) => {
            let hash = last == "sha256" || last == "copy_of" || (last == "file" && path[0] == "seals");
            let figure = path.iter().any(|step| step == "values") && path[0] != "worked" && !words::unitless(last);
            ((hash && !is_sha256(text)) || figure).then(|| wrong(path, text))
        }
        Value::Number(number) => {
            let number = number.as_i64()?;
            let least = match MAY_BE_NEGATIVE.iter().find(|end| last.ends_with(**end)) {
                Some(&"_mc") => ABSOLUTE_ZERO_MC,
                Some(_) => i64::MIN,
                None if judged_elsewhere(path) => i64::MIN,
                None => 0,
            };
            (number < least).then(|| wrong(path, &number.to_string()))
        }
        _ => None,
    }
}

/// Says whether a number belongs to a rule or to a field, which have ranges of their own.
fn judged_elsewhere(path: &[String]) -> bool {
    path.iter().any(|step| step == "values" || step == "worked")
}

fn is_sha256(text: &str) -> bool {
    text.len() == 64 && text.chars().all(|c| matches!(c, '0'..='9' | 'a'..='f'))
}

/// Says whether the table lets the value at this path be absent. What the last attempt may lack, an earlier one may too.
pub fn may_be_absent(path: &[String]) -> bool {
    let free = |path: &[String]| MAY_BE_ABSENT.iter().any(|(pattern, _)| matches(&steps(pattern), path));
    let of_the_last = match path {
        [earlier, _, rest @ ..] if earlier == "earlier" => [&["attempt".to_owned()], rest].concat(),
        _ => vec![],
    };
    free(path) || free(&of_the_last)
}

fn steps(pattern: &str) -> Vec<&str> {
    // `**contract` stands for the contract of the repair and the copy in its plan.
    match pattern.strip_prefix("**").filter(|rest| !rest.is_empty() && !rest.starts_with('.')) {
        Some(rest) => std::iter::once("**").chain(rest.split('.')).collect(),
        None => pattern.split('.').collect(),
    }
}

fn matches(pattern: &[&str], path: &[String]) -> bool {
    match (pattern, path) {
        ([], []) => true,
        (["**", rest @ ..], _) => (0..=path.len()).any(|skipped| matches(rest, &path[skipped..])),
        ([one, rest @ ..], [step, path @ ..]) => {
            let same = match one.strip_suffix('*') {
                Some(start) => step.starts_with(start),
                None => one == step,
            };
            same && matches(rest, path)
        }
        _ => false,
    }
}

fn missing(path: &[String]) -> Broken {
    said(path, Rule::ValueMissing, None)
}

fn wrong(path: &[String], found: &str) -> Broken {
    said(path, Rule::ValueWrong, Some(found))
}

fn said(path: &[String], rule: Rule, found: Option<&str>) -> Broken {
    let joined = path.join(".");
    let under = |start: &str| start.is_empty() || joined == start || joined.starts_with(&format!("{start}."));
    let (start, part, mend) =
        PARTS.iter().find(|(start, ..)| under(start)).copied().unwrap_or(("", "repair", "journal"));
    // The number of a repair stands by itself; all else is named by its place in the part.
    let within = joined.strip_prefix(start).unwrap_or(&joined).trim_start_matches('.');
    let name = if within.is_empty() { &joined } else { within };
    let mut values = vec![
        ("where", t(say(&format!("whole-{part}"), &[]))),
        ("value", t(name.replace('.', " › ").replace('_', " "))),
        ("mend", t(say(&format!("whole-mend-{mend}"), &[]))),
    ];
    values.extend(found.map(|found| ("found", t(found))));
    Broken::with(rule, &values).about(joined)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn may(path: &str) -> bool {
        may_be_absent(&path.split('.').map(str::to_owned).collect::<Vec<_>>())
    }

    #[test]
    fn a_row_of_the_table_frees_what_it_names_and_no_more() {
        assert!(may("line.street") && may("contract.crew") && may("plan.contract.crew"));
        assert!(may("plan.computed.membrane_um") && may("attempt.joined.person") && may("earlier.0.joined"));
        assert!(!may("contract.owner") && !may("plan.resin.name") && !may("line.asset") && !may("attempt.joined"));
    }

    #[test]
    fn every_row_has_a_reason_and_stands_once() {
        for (at, (pattern, reason)) in MAY_BE_ABSENT.iter().enumerate() {
            assert!(reason.ends_with('.') && reason.len() > 10, "{pattern}");
            assert!(MAY_BE_ABSENT[..at].iter().all(|(other, _)| other != pattern), "{pattern} stands twice");
        }
    }
}
