//! Answers to the tasks of the method statement, in words.

use super::{Case, words};
use crate::procedure::answer::{Answer, Value};
use crate::procedure::repair::{Answered, Attempt};
use crate::procedure::stage::Stage;
use crate::shelf::method::{Field, Shape, TaskKind};
use crate::units::Span;

/// Says whether a task is answered again and again in the ordinary course, so that a later answer replaces nothing.
pub fn repeats(kind: TaskKind) -> bool {
    matches!(kind, TaskKind::Air | TaskKind::Temperatures | TaskKind::Battery)
}

/// Returns the answer to a kind of task in the paper's attempt, if the task was done.
pub fn done<'a>(case: &Case<'a>, kind: TaskKind) -> Option<&'a Answered> {
    case.attempt?.answer(kind).filter(|answered| answered.answer.done())
}

/// Returns why there is no value of a kind of task: nobody answered, it doesn't apply, or it was not right.
pub fn why_not(case: &Case, kind: TaskKind) -> String {
    match case.attempt.and_then(|attempt| attempt.answer(kind)).map(|answered| &answered.answer) {
        None | Some(Answer::Done { .. }) => "not recorded".into(),
        Some(Answer::DoesNotApply { because }) => format!("does not apply, because {}", words::bare(because)),
        Some(Answer::NotRight { because }) => format!("not right, because {}", words::bare(because)),
    }
}

/// Returns the answers of a stage in the order of the method statement, each a clause.
///
/// What was only confirmed is counted, not listed; carried answers are said elsewhere.
pub fn clauses(case: &Case, attempt: &Attempt, stage: Stage) -> Vec<String> {
    let mut found: Vec<String> = vec![];
    let mut confirmed = 0;
    for answered in in_order(case, attempt, stage) {
        match (&answered.answer, clause(case, answered)) {
            (Answer::Done { .. }, None) if answered.kind == TaskKind::Confirm => confirmed += 1,
            (Answer::Done { .. }, None) => {}
            (Answer::Done { .. }, Some(clause)) => found.push(clause),
            (Answer::DoesNotApply { because }, _) => {
                found.push(format!(
                    "{}: does not apply, because {}",
                    words::small(&answered.label),
                    words::bare(because)
                ));
            }
            (Answer::NotRight { because }, _) => {
                found.push(format!("{}: NOT RIGHT, because {}", words::small(&answered.label), words::bare(because)));
            }
        }
    }
    if confirmed > 0 {
        let method = case.plan.map_or("the method statement", |plan| plan.method.id.as_str());
        found.push(format!("{} of {method} confirmed", words::many(confirmed, "more task")));
    }
    found
}

fn in_order<'a>(case: &Case<'a>, attempt: &'a Attempt, stage: Stage) -> Vec<&'a Answered> {
    let place = |key: &str| case.plan.and_then(|plan| plan.method.tasks.iter().position(|task| task.key == key));
    let mut answers: Vec<(&String, &Answered)> = attempt
        .answers
        .iter()
        .filter(|(_, answered)| answered.stage == stage && answered.carried_from.is_none())
        .collect();
    answers.sort_by_key(|(key, _)| place(key).unwrap_or(usize::MAX));
    answers.into_iter().map(|(_, answered)| answered).collect()
}

/// Returns the clause for a task that was done; `None` for what other parts of the page say.
fn clause(case: &Case, answered: &Answered) -> Option<String> {
    let said = values(case, answered.kind, &answered.answer);
    let at = || case.clock.minute(answered.at.moment.at_ms);
    Some(match answered.kind {
        TaskKind::Permit => permit(&answered.answer),
        TaskKind::Air => format!("air read {}: {said}", times(case, answered)),
        TaskKind::Suitability | TaskKind::Soaked => words::small(&answered.label),
        TaskKind::BareEnds => format!("bare ends: {said}"),
        TaskKind::PackerTest => format!("packer test: {said}"),
        TaskKind::ViewedAgain | TaskKind::Cleaned | TaskKind::MeasuredDiameter | TaskKind::Mixed | TaskKind::Seam => {
            said
        }
        TaskKind::PartsUsed | TaskKind::PackerCondition | TaskKind::Battery | TaskKind::AtTheMark => said,
        TaskKind::Temperatures => format!("temperatures {}: {said}", times(case, answered)),
        TaskKind::AllBack => said,
        TaskKind::Edges => format!("full turn at both edges {}", at()),
        TaskKind::Waste => format!("waste {}", at()),
        TaskKind::FlowRestored => format!("flow restored {}", at()),
        TaskKind::Confirm | TaskKind::Flow | TaskKind::Lots | TaskKind::Instruments => return None,
        TaskKind::Folds | TaskKind::Infiltration | TaskKind::Surface => return None,
        TaskKind::Laterals | TaskKind::Tightness => return None,
    })
}

fn permit(answer: &Answer) -> String {
    let number = answer.text("number").unwrap_or("without a number");
    let who = match (answer.text("entry"), answer.text("who")) {
        (Some("entry"), Some(who)) => format!("below: {who}"),
        (Some("entry"), None) => "somebody below, nobody says who".into(),
        _ => "nobody below".into(),
    };
    format!("permit {number}, {who}")
}

/// Returns every time at which a repeated task was answered.
fn times(case: &Case, answered: &Answered) -> String {
    let earlier = answered.before.iter().map(|(at, _)| at);
    let all = earlier.chain([&answered.at]).map(|at| case.clock.minute(at.moment.at_ms));
    words::joined(all, ", ")
}

/// Returns the values of an answer with the names of their fields, in the order of the fields.
pub fn values(case: &Case, kind: TaskKind, answer: &Answer) -> String {
    match answer {
        Answer::DoesNotApply { because } => format!("does not apply, because {}", words::bare(because)),
        Answer::NotRight { because } => format!("not right, because {}", words::bare(because)),
        Answer::Done { values } => {
            let named = kind.fields().into_iter().filter_map(|field| {
                let shown = value(case, &field, values.get(field.key)?);
                let name = words::small(field.label.split(" (").next().unwrap_or(field.label));
                (!shown.is_empty()).then(|| format!("{name} {shown}"))
            });
            words::joined(named, ", ")
        }
    }
}

/// Returns one value with its unit, to its last digit.
fn value(case: &Case, field: &Field, value: &Value) -> String {
    match (&field.shape, value) {
        (Shape::Number { unit, per, decimals, .. }, Value::Number(steps)) => number(*steps, *per, *decimals, unit),
        (Shape::Time, Value::Number(at_ms)) => case.clock.minute(*at_ms),
        (Shape::Choice { options }, Value::Text(key)) => {
            let known = options.iter().find(|(option, _)| option == key);
            known.map_or_else(|| key.clone(), |(_, label)| words::small(label))
        }
        (Shape::Instrument { .. }, Value::Text(id)) => instrument(case, id),
        (_, Value::Text(text)) => text.trim().to_owned(),
        (_, Value::Number(number)) => number.to_string(),
    }
}

fn number(steps: i64, per: i64, decimals: u8, unit: &str) -> String {
    let is_time = matches!((unit, per), ("min", 60_000) | ("s", 1_000));
    if is_time {
        return words::lasting(Span::from_ms(steps));
    }
    let text = words::exact(steps, per, usize::from(decimals));
    if unit.is_empty() { text } else { format!("{text} {unit}") }
}

/// Returns the name of an instrument, or its id where the plan has no such instrument.
pub fn instrument(case: &Case, id: &str) -> String {
    let known = case.plan.and_then(|plan| plan.instruments.iter().find(|instrument| instrument.id == id));
    known.map_or_else(|| format!("{id} (not in the plan)"), |instrument| instrument.name.clone())
}
