//! The working time: allowed, used, and what happened on the way.

use super::{Case, words};
use crate::certificate::content::{Known, Moment, WorkingTime};
use crate::procedure::plan::{Budget, Plan, Warmest};
use crate::procedure::repair::{Attempt, Stamp};
use crate::procedure::times;
use crate::shelf::method::TaskKind;
use crate::units::Span;

/// Returns the working time of the paper's attempt.
pub fn working_time(case: &Case) -> Known<WorkingTime> {
    let Some((plan, attempt)) = case.work() else { return Known::Absent("no attempt was begun".into()) };
    let Some(joined) = &attempt.joined else { return Known::Absent("the parts were never joined".into()) };
    let (used, allowed) = (used(attempt), allowed(plan, attempt));
    Known::Known(WorkingTime {
        remark: remark(attempt, plan, used, allowed),
        joined_at_ms: case.at(joined),
        used_ms: used.map_or_else(|| Known::Absent("target pressure was never reached".into()), Known::Known),
        allowed_ms: allowed.map_or_else(|| Known::Absent("no row of the sheet holds".into()), Known::Known),
        events: events(case, attempt, joined),
    })
}

/// Returns the time from joining to target pressure, rounded up to whole seconds.
pub fn used(attempt: &Attempt) -> Option<Span> {
    let (joined, target) = (attempt.joined.as_ref()?, attempt.target.as_ref()?);
    Some(words::up_s(Span::from_ms(times::between(&joined.moment, &target.at.moment))))
}

/// Returns the working time that ran, cut to whole seconds.
pub fn allowed(plan: &Plan, attempt: &Attempt) -> Option<Span> {
    times::working_time(plan, attempt).map(words::down_s)
}

/// Returns what was left over, cut to whole seconds; below zero it was too late.
pub fn margin(plan: &Plan, attempt: &Attempt) -> Option<Span> {
    let late = times::late_by(plan, attempt, &attempt.target.as_ref()?.at)?;
    Some(words::down_s(Span::from_ms(-late)))
}

/// Returns the budget whose working time is the one that ran: of the second go, or of a later set of temperatures.
pub fn governing(plan: &Plan, attempt: &Attempt) -> Option<Budget> {
    let ran = times::working_time(plan, attempt)?;
    let go = attempt.second_go.as_ref().map(|go| go.budget.clone());
    let sets = attempt.temperatures.iter().filter_map(|(_, set)| times::budget_now(plan, Some(attempt), set).ok());
    go.into_iter().chain(sets).find(|budget| budget.working_ms == ran)
}

/// Returns `19.2 °C (resin)`, or that the temperatures lie outside the sheet.
pub fn governed_by(plan: &Plan, attempt: &Attempt) -> String {
    match governing(plan, attempt) {
        Some(budget) => format!("{} ({})", words::celsius(budget.warmest_mc), whose(budget.warmest)),
        None => "outside the sheet: its shortest time".into(),
    }
}

fn whose(warmest: Warmest) -> &'static str {
    match warmest {
        Warmest::Resin => "resin",
        Warmest::Air => "air",
        Warmest::Pipe => "pipe",
    }
}

fn remark(attempt: &Attempt, plan: &Plan, used: Option<Span>, allowed: Option<Span>) -> String {
    let used = used.map_or_else(
        || "target pressure was never reached;".into(),
        |used| format!("used {} of", words::lasting(used)),
    );
    let allowed = allowed.map(words::lasting).unwrap_or_default();
    let by = match governing(plan, attempt) {
        Some(budget) => format!("at {} ({}, the warmest)", words::celsius(budget.warmest_mc), whose(budget.warmest)),
        None => "outside the sheet: its shortest time stands in".into(),
    };
    let margin = margin(plan, attempt).map(|left| {
        if left.as_ms() < 0 {
            format!("; LATE by {}", words::lasting(Span::from_ms(-left.as_ms())))
        } else {
            format!("; margin {}", words::lasting(left))
        }
    });
    format!("{used} {allowed} allowed {by}{}", margin.unwrap_or_default())
}

/// Returns what happened from joining to target pressure. What was filled in later has no place on the line.
fn events(case: &Case, attempt: &Attempt, joined: &Stamp) -> Vec<Moment> {
    let task = |kind, words: &'static str| {
        let answered = attempt.answer(kind).filter(|answered| answered.answer.done() && !answered.late);
        answered.map(|answered| (words, &answered.at))
    };
    let target = attempt.target.as_ref().map(|target| &target.at);
    let taps = [
        Some(("parts joined", joined)),
        task(TaskKind::Mixed, "mixed"),
        task(TaskKind::Soaked, "soaked"),
        attempt.insertion.as_ref().map(|at| ("insertion begun", at)),
        attempt.at_mark.as_ref().map(|mark| ("at the mark", &mark.at)),
        attempt.air_joined.as_ref().map(|at| ("air joined", at)),
        target.map(|at| ("target pressure", at)),
    ];
    let (from, to) = (case.at(joined), target.map_or(i64::MAX, |at| case.at(at)));
    let mut found: Vec<Moment> = taps
        .into_iter()
        .flatten()
        .map(|(words, at)| Moment { words: words.into(), at_ms: case.at(at) })
        .filter(|event| (from..=to).contains(&event.at_ms))
        .collect();
    found.sort_by_key(|event| event.at_ms);
    found
}
