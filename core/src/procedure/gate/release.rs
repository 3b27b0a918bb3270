//! May the packer be let down, and is everything back?

use super::super::hold;
use super::super::plan::Plan;
use super::super::repair::{Attempt, Repair};
use super::super::rules::{Broken, Rule, n, t};
use super::super::stage::Stage;
use super::super::times;
use super::open_tasks::tasks_closed;
use super::standing;
use crate::shelf::method::TaskKind;

/// Returns what stands in the way of release.
pub fn release(repair: &Repair) -> Vec<Broken> {
    let Some((plan, attempt)) = times::plan_and_attempt(repair).filter(|(_, attempt)| attempt.ended.is_none()) else {
        return vec![standing(repair)];
    };
    if attempt.stage() != Stage::Hold {
        return vec![Broken::with(Rule::OutOfOrder, &[("stage", t(attempt.stage().word()))])];
    }
    let mut found: Vec<Broken> = hold_short(plan, attempt).into_iter().collect();
    if let Some(state) = hold::state(plan, attempt)
        && state.outside_sheet.is_some()
    {
        let first = state.coldest.as_millicelsius();
        let values = [("temperature_mc", n(first)), ("limit_mc", n(first_row(plan)))];
        found.push(Broken::with(Rule::HoldNotCovered, &values));
    }
    match attempt.sample.last() {
        None => found.push(Broken::bare(Rule::SampleMissing)),
        Some((_, false)) => found.push(Broken::bare(Rule::SampleSoft)),
        Some((_, true)) => {}
    }
    found
}

fn first_row(plan: &Plan) -> i64 {
    use crate::shelf::sheets::TimeRows;
    match &plan.resin.hold.rows {
        TimeRows::Points { points } => points.first().map_or(0, |point| point.at_mc.as_millicelsius()),
        TimeRows::Range { from_mc, .. } => from_mc.as_millicelsius(),
    }
}

/// Returns the departure for a hold that is too short so far.
pub fn hold_short(plan: &Plan, attempt: &Attempt) -> Option<Broken> {
    let state = hold::state(plan, attempt)?;
    let (counted, required) = (state.shown.counted_ms.as_ms(), state.terms.required_ms.as_ms());
    let values = [("counted_ms", n(counted)), ("required_ms", n(required))];
    (counted < required).then(|| Broken::with(Rule::HoldShort, &values))
}

/// Returns what stands between deflation and verification.
pub fn deflation(plan: &Plan, attempt: &Attempt) -> Vec<Broken> {
    let mut found = tasks_closed(plan, attempt, &[Stage::Deflation]);
    let Some(answer) = attempt.answer(TaskKind::AllBack).map(|answered| &answered.answer) else { return found };
    let missing: Vec<&str> = ["sleeve", "membrane", "bands"]
        .into_iter()
        .filter(|field| answer.text(field) == Some("missing"))
        .map(|field| if field == "bands" { "binding" } else { field })
        .collect();
    if !missing.is_empty() {
        found.push(Broken::with(Rule::LeftBehind, &[("what", t(missing.join(", ")))]));
    }
    found
}
