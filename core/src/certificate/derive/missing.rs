//! What keeps a certificate from being made: missing or contradicting evidence, and decisions that nobody has taken.

use super::{hold, kind, place, subject};
use crate::certificate::content::Kind;
use crate::facts::Facts;
use crate::procedure;
use crate::procedure::answer::{self, Answer, FieldProblem};
use crate::procedure::gate::{self, Around, Ask};
use crate::procedure::plan::Plan;
use crate::procedure::repair::{Attempt, Repair, Stamp};
use crate::procedure::rules::{self, Broken, Rule, n, t};
use crate::procedure::stage::Stage;
use crate::procedure::times;
use crate::shelf::Person;

/// Returns what stands in the way of the paper that [`super::derive`] would make, in the order of the work.
///
/// Empty if it can be made, once it has its number. A record of a rejected or unrepaired defect needs to say which pipe
/// and whose contract; a certificate needs everything. Empty, too, for a repair that is still going on: there is no paper
/// to judge.
pub fn refusals(repair: &Repair, people: &[Person]) -> Vec<Broken> {
    let Some(kind) = kind(repair) else { return vec![] };
    let accepted = repair.accepted().is_some() && matches!(kind, Kind::Accepted | Kind::Rehearsal);
    let facts = Facts::default();
    let prefix = if repair.rehearsal { "REHEARSAL" } else { "" };
    let mut found = gate::gate(repair, Ask::Issue { number: prefix }, &Around { facts: &facts, people });
    if !accepted {
        found.retain(|broken| broken.rule == Rule::NotCertain);
        return found;
    }
    match (repair.plan.as_ref(), subject(repair)) {
        (Some(plan), Some(attempt)) => found.extend(work(repair, plan, attempt)),
        _ => found.push(Broken::bare(Rule::PlanMissing)),
    }
    found
}

fn work(repair: &Repair, plan: &Plan, attempt: &Attempt) -> Vec<Broken> {
    let mut found = evidence(plan, attempt);
    found.extend(contradictions(attempt));
    found.extend(tasks(plan, attempt));
    found.extend(undecided(repair, plan, attempt));
    found.extend(unsound(repair));
    found.extend(gate::gaps(repair, attempt));
    found
}

fn evidence(plan: &Plan, attempt: &Attempt) -> Vec<Broken> {
    let there = [
        ("When the parts were joined", attempt.joined.is_some()),
        ("When target pressure was reached", attempt.target.is_some()),
        ("When the packer was let down", attempt.released.is_some()),
        ("Where the patch came to rest: at the mark, or how far past it", attempt.rest().is_some()),
        ("A hold with readings", procedure::hold::state(plan, attempt).is_some() && !attempt.readings.is_empty()),
    ];
    there
        .into_iter()
        .filter(|(_, there)| !there)
        .map(|(what, _)| Broken::with(Rule::NotCertain, &[("what", t(what))]).about(what))
        .collect()
}

/// Returns what the record says in an order that can't have been. The mark may be filled in after target pressure.
fn contradictions(attempt: &Attempt) -> Vec<Broken> {
    let course: Vec<(&str, &Stamp)> = [
        ("the parts were joined", attempt.joined.as_ref()),
        ("target pressure was reached", attempt.target.as_ref().map(|target| &target.at)),
        ("the packer was let down", attempt.released.as_ref().map(|(at, _)| at)),
    ]
    .into_iter()
    .filter_map(|(what, at)| Some((what, at?)))
    .collect();
    let before =
        |pair: &&[(&str, &Stamp)]| matches!(pair, [(_, a), (_, b)] if times::between(&a.moment, &b.moment) < 0);
    course
        .windows(2)
        .filter(before)
        .filter_map(|pair| {
            let [(first, _), (second, _)] = pair else { return None };
            let what = format!("The record says that {second} before {first}. Correct or reject it.");
            Some(Broken::with(Rule::BadValue, &[("what", t(what))]).about(*second))
        })
        .collect()
}

fn tasks(plan: &Plan, attempt: &Attempt) -> Vec<Broken> {
    let open = Stage::ALL.into_iter().flat_map(|stage| gate::open_tasks(plan, attempt, stage)).map(|task| {
        Broken::with(Rule::TaskOpen, &[("count", n(1)), ("first", t(task.label.clone()))]).about(task.key.clone())
    });
    let wrong = attempt.answers.values().filter_map(|answered| {
        let Answer::NotRight { because } = &answered.answer else { return None };
        let values = [("label", t(answered.label.clone())), ("because", t(because.clone()))];
        Some(Broken::with(Rule::TaskNotRight, &values).about(answered.label.clone()))
    });
    open.chain(wrong).collect()
}

/// Returns the values that their own field does not take, in every attempt.
fn unsound(repair: &Repair) -> Vec<Broken> {
    let answers = repair.attempts.iter().flat_map(|attempt| &attempt.answers);
    let found = answers.flat_map(|(key, answered)| {
        let Answer::Done { values } = &answered.answer else { return vec![] };
        let problems = answer::problems(&answered.kind.fields(), values).into_iter();
        let named = |problem: FieldProblem| {
            let what = format!("{}: {}", answered.label, problem.says);
            Broken::with(Rule::BadValue, &[("what", t(what))]).about(format!("{key}.{}", problem.field))
        };
        problems.map(named).collect()
    });
    found.collect()
}

/// Returns the broken rules that nobody has waived, and those that nobody can waive.
fn undecided(repair: &Repair, plan: &Plan, attempt: &Attempt) -> Vec<Broken> {
    let recorded = repair.broken.iter().filter(|broken| broken.attempt == attempt.n).map(|broken| Broken {
        rule: broken.rule,
        subject: broken.subject.clone(),
        values: broken.values.clone(),
    });
    let mut found: Vec<Broken> = vec![];
    for broken in stands(repair, plan, attempt).into_iter().chain(recorded) {
        let open = match broken.rule.row().kind {
            rules::Kind::Never => true,
            rules::Kind::Departure => !decided(repair, plan, attempt, &broken),
            rules::Kind::Question | rules::Kind::Note => false,
        };
        if open && !found.iter().any(|known| known.rule == broken.rule && known.subject == broken.subject) {
            found.push(broken);
        }
    }
    found
}

/// Returns every rule that the record of the attempt breaks, waived or not.
pub fn stands(repair: &Repair, plan: &Plan, attempt: &Attempt) -> Vec<Broken> {
    let mut found = gate::plan_breaks(plan);
    // No time in the plan is answered by the second go, which measures anew.
    found.retain(|broken| broken.rule != Rule::NoTime);
    found.extend(gate::findings(repair, plan, attempt).into_iter().filter(|broken| broken.rule != Rule::HoldShort));
    found.extend(hold::short(plan, attempt));
    found.extend(closed_laterals(repair, plan, attempt));
    found
}

/// Returns the laterals that lie under the patch only where it came to rest, and that nobody opened.
fn closed_laterals(repair: &Repair, plan: &Plan, attempt: &Attempt) -> Vec<Broken> {
    let unplanned = place::covered(repair, plan, attempt).into_iter().filter(|at| !plan.computed.covered.contains(at));
    let closed = unplanned.filter(|at| !attempt.laterals.iter().any(|opened| opened.lateral == *at));
    closed
        .filter_map(|at| Some((at, repair.line.laterals.get(at)?.station_um.as_um())))
        .map(|(at, station)| {
            Broken::with(Rule::LateralCovered, &[("station_um", n(station))]).about(format!("lateral {at}"))
        })
        .collect()
}

/// Says whether the foreman has waived it: in this attempt, or in an earlier one where it is about the plan.
pub fn decided(repair: &Repair, plan: &Plan, attempt: &Attempt, broken: &Broken) -> bool {
    let of_plan = gate::plan_breaks(plan).contains(broken);
    repair.waivers.iter().any(|waiver| {
        waiver.rule == broken.rule && waiver.subject == broken.subject && (waiver.attempt == attempt.n || of_plan)
    })
}
