//! The second go, with fresh temperatures, just before the parts are joined.

use super::super::plan::{Budget, Closure, Plan, Temperatures};
use super::super::repair::{Attempt, Repair};
use super::super::rules::{Broken, Rule, n, t};
use super::super::stage::Stage;
use super::super::storing;
use super::super::times;
use super::staging::{air, lots};
use super::{Around, standing};
use crate::units::Span;

/// Returns what stands in the way of joining the parts at these temperatures.
pub fn second_go(repair: &Repair, temperatures: &Temperatures, around: &Around) -> Vec<Broken> {
    let Some((plan, attempt)) = times::plan_and_attempt(repair).filter(|(_, attempt)| attempt.ended.is_none()) else {
        return vec![standing(repair)];
    };
    if attempt.stage() != Stage::WetOut || attempt.joined.is_some() {
        return vec![Broken::with(Rule::OutOfOrder, &[("stage", t(attempt.stage().word()))])];
    }
    let now = &around.facts.moment;
    let mut found = lots(plan, attempt, now);
    found.extend(air(plan, attempt, now));
    match times::budget_now(plan, Some(attempt), temperatures) {
        Err(broken) => found.push(broken),
        Ok(budget) => {
            found.extend(times::too_short(&budget));
            found.extend(closures_that_end_first(plan, attempt, &budget, temperatures, now.at_ms));
            let hold = planned_hold(plan, attempt, temperatures);
            found.extend(storing::storing(repair, attempt, &budget, hold, now).as_ref().and_then(storing::short));
        }
    }
    found
}

/// Returns the closures that would end before the hold does, if the parts were joined now.
///
/// The hold is taken at the coldest of pipe and water of these temperatures and of all read before.
pub fn closures_that_end_first(
    plan: &Plan,
    attempt: &Attempt,
    budget: &Budget,
    temperatures: &Temperatures,
    now_ms: i64,
) -> Vec<Broken> {
    let hold = planned_hold(plan, attempt, temperatures);
    let work = budget.wet_out_ms.as_ms() + budget.loaded_push_ms.as_ms() + budget.connect_ms.as_ms();
    let end_ms = now_ms + work + hold.as_ms();
    closures_before(&plan.choice.closures, end_ms)
}

/// Returns the hold at the coldest of pipe and water, of these temperatures and of all read before.
pub fn planned_hold(plan: &Plan, attempt: &Attempt, temperatures: &Temperatures) -> Span {
    let cold = times::coldest_so_far(attempt)
        .map_or(times::coldest(temperatures), |(cold, _)| cold.min(times::coldest(temperatures)));
    times::at_coldest(&plan.resin.hold, cold).unwrap_or_else(|_| times::longest(&plan.resin.hold))
}

/// Returns the closures that end before a moment.
pub fn closures_before(closures: &[Closure], end_ms: i64) -> Vec<Broken> {
    closures
        .iter()
        .filter(|closure| closure.until_ms < end_ms)
        .map(|closure| {
            let values = [("what", t(closure.what.clone())), ("before_ms", n(end_ms.saturating_sub(closure.until_ms)))];
            Broken::with(Rule::ClosureBeforeHoldEnd, &values).about(closure.what.clone())
        })
        .collect()
}
