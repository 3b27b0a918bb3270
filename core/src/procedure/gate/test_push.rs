//! The first go: the dry packer has been at the mark and is back, and the resin gives time enough.

use super::super::plan::{Budget, Plan};
use super::super::repair::{Attempt, Repair};
use super::super::rules::{Broken, Rule};
use super::super::stage::Stage;
use super::super::times;
use super::open_tasks::{photos_there, tasks_closed};

/// Returns what stands between the test push and the sleeve change.
pub fn test_push(repair: &Repair, plan: &Plan, attempt: &Attempt) -> Vec<Broken> {
    let push = &attempt.test_push;
    let mut found = tasks_closed(plan, attempt, &[Stage::TestPush]);
    if push.reached.is_none() {
        found.push(Broken::bare(Rule::MarkNotReached));
    } else {
        found.extend(go(plan, attempt));
    }
    if !push.back.as_ref().is_some_and(|(_, sound)| *sound) {
        found.push(Broken::bare(Rule::PackerNotBack));
    }
    found.extend(photos_there(repair, plan, attempt, &[Stage::TestPush]));
    found
}

/// Returns why the resin gives no time, by the measured push and the temperatures read last.
pub fn go(plan: &Plan, attempt: &Attempt) -> Option<Broken> {
    match budget_for_go(plan, attempt) {
        Ok(budget) => times::too_short(&budget),
        Err(broken) => Some(broken),
    }
}

/// Returns the budget for the go: with the measured push and the temperatures read last.
///
/// Errors: `TemperaturesMissing`, or what the temperatures break.
pub fn budget_for_go(plan: &Plan, attempt: &Attempt) -> Result<Budget, Broken> {
    let (_, temperatures) = attempt.last_temperatures().ok_or_else(|| Broken::bare(Rule::TemperaturesMissing))?;
    times::budget_now(plan, Some(attempt), temperatures)
}
