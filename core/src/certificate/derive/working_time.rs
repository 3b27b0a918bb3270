//! The working time: allowed, used, and what happened on the way.

use super::{Case, words};
use crate::certificate::content::{Known, Moment, WorkingTime};
use crate::procedure::plan::{Budget, Plan, Warmest};
use crate::procedure::repair::{Attempt, Stamp};
use crate::procedure::times;
use crate::shelf::method::TaskKind;
use crate::units::Span;
use crate::words::tell;

/// Returns the working time of the paper's attempt.
pub fn working_time(case: &Case) -> Known<WorkingTime> {
    let Some((plan, attempt)) = case.work() else { return Known::Absent(tell!("cert-hold-no_attempt_was_begun")) };
    let Some(joined) = &attempt.joined else { return Known::Absent(tell!("cert-hold-the_parts_were_never_joined")) };
    let (used, allowed) = (used(attempt), allowed(plan, attempt));
    Known::Known(WorkingTime {
        remark: remark(attempt, plan, used, allowed),
        joined_at_ms: case.at(joined),
        used_ms: used.map_or_else(|| Known::Absent(tell!("cert-hold-target_pressure_was_never_reached")), Known::Known),
        allowed_ms: allowed.map_or_else(|| Known::Absent(tell!("cert-working_time-no_row_of_the_sheet")), Known::Known),
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
        None => tell!("cert-working_time-outside_the_sheet_its_shortest"),
    }
}

fn whose(warmest: Warmest) -> String {
    match warmest {
        Warmest::Resin => tell!("place-resin"),
        Warmest::Air => tell!("place-air"),
        Warmest::Pipe => tell!("place-pipe"),
    }
}

fn remark(attempt: &Attempt, plan: &Plan, used: Option<Span>, allowed: Option<Span>) -> String {
    let allowed = allowed.map(words::lasting).unwrap_or_default();
    let by = match governing(plan, attempt) {
        Some(budget) => tell!(
            "cert-working_time-at_the_warmest",
            temperature = words::celsius(budget.warmest_mc),
            whose = whose(budget.warmest)
        ),
        None => tell!("cert-working_time-outside_the_sheet_its_shortest_2"),
    };
    let margin = margin(plan, attempt).map(|left| {
        if left.as_ms() < 0 {
            tell!("cert-working_time-late_by", time = words::lasting(Span::from_ms(-left.as_ms())))
        } else {
            tell!("cert-working_time-margin", time = words::lasting(left))
        }
    });
    let margin = margin.unwrap_or_default();
    match used.map(words::lasting) {
        Some(used) => tell!("cert-working_time-used", used, allowed, by, margin),
        None => tell!("cert-working_time-never_reached", allowed, by, margin),
    }
}

/// Returns what happened from joining to target pressure. What was filled in later has no place on the line.
fn events(case: &Case, attempt: &Attempt, joined: &Stamp) -> Vec<Moment> {
    let task = |kind, words: String| {
        let answered = attempt.answer(kind).filter(|answered| answered.answer.done() && !answered.late);
        answered.map(|answered| (words, &answered.at))
    };
    let target = attempt.target.as_ref().map(|target| &target.at);
    let taps = [
        Some((tell!("cert-notes-parts_joined"), joined)),
        task(TaskKind::Mixed, tell!("cert-working_time-mixed")),
        task(TaskKind::Soaked, tell!("cert-working_time-soaked")),
        attempt.insertion.as_ref().map(|at| (tell!("cert-notes-insertion_begun"), at)),
        attempt.at_mark.as_ref().map(|mark| (tell!("cert-working_time-at_the_mark"), &mark.at)),
        attempt.air_joined.as_ref().map(|at| (tell!("cert-working_time-air_joined"), at)),
        target.map(|at| (tell!("cert-sheets-target_pressure"), at)),
    ];
    let (from, to) = (case.at(joined), target.map_or(i64::MAX, |at| case.at(at)));
    let mut found: Vec<Moment> = taps
        .into_iter()
        .flatten()
        .map(|(words, at)| Moment { words, at_ms: case.at(at) })
        .filter(|event| (from..=to).contains(&event.at_ms))
        .collect();
    found.sort_by_key(|event| event.at_ms);
    found
}
