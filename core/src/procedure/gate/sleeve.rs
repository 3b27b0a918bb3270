//! The bare ends: they keep the packer from bursting the patch open at one end.

use super::super::plan::Plan;
use super::super::repair::{Attempt, Repair};
use super::super::rules::{Broken, Rule, n};
use super::super::stage::Stage;
use super::open_tasks::{photos_there, tasks_closed};
use crate::shelf::method::TaskKind;

/// Returns what stands between the sleeve change and the wet-out.
pub fn sleeve_change(repair: &Repair, plan: &Plan, attempt: &Attempt) -> Vec<Broken> {
    let mut found = tasks_closed(plan, attempt, &[Stage::SleeveChange]);
    found.extend(bare_ends(plan, attempt));
    found.extend(photos_there(repair, plan, attempt, &[Stage::SleeveChange]));
    found
}

/// Returns the departure for a packer that leaves too little bare beyond a centred patch, seen in the plan.
pub fn bare_end_planned(plan: &Plan) -> Option<Broken> {
    let bare = plan.packer.body_um.as_um().saturating_sub(plan.patch.length_um.as_um()).div_euclid(2);
    let required = plan.patch.bare_end_least_um.value.as_um();
    (bare < required)
        .then(|| Broken::with(Rule::BareEndShort, &[("least_um", n(bare)), ("required_um", n(required))]).about("plan"))
}

fn bare_ends(plan: &Plan, attempt: &Attempt) -> Vec<Broken> {
    let Some(answer) = attempt.answer(TaskKind::BareEnds).map(|answered| &answered.answer) else { return vec![] };
    let (Some(front), Some(rear)) = (answer.number("front_um"), answer.number("rear_um")) else { return vec![] };
    let (required, tolerance) =
        (plan.patch.bare_end_least_um.value.as_um(), plan.patch.bare_end_tolerance_um.value.as_um());
    let (least, difference) = (front.min(rear), (front - rear).abs());
    let mut found = vec![];
    if least < required {
        found.push(Broken::with(Rule::BareEndShort, &[("least_um", n(least)), ("required_um", n(required))]));
    }
    if difference > tolerance {
        let values = [("difference_um", n(difference)), ("tolerance_um", n(tolerance))];
        found.push(Broken::with(Rule::BareEndsUnequal, &values));
    }
    found
}
