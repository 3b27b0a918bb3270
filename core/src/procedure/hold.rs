//! The hold of an attempt, judged by the plan: the readings as the checks take them, and what they show.

use super::plan::Plan;
use super::repair::{Attempt, Reading, Stamp};
use super::rules::Broken;
use super::times;
use crate::checks::hold::{self, HoldTerms, Outlook};
use crate::facts::Moment;
use crate::shelf::contract::GapRule;
use crate::shelf::sheets::CountsFrom;
use crate::units::{Span, Temperature};

/// How a hold stands, on a line of time that begins at joining.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct HoldState {
    pub terms: HoldTerms,
    pub readings: Vec<hold::Reading>,
    pub shown: hold::Hold,
    /// The temperature that sets the required hold.
    pub coldest: Temperature,
    pub coldest_at: Option<Stamp>,
    /// The pipe is colder than the hold table: its longest time stands in, and the foreman decides.
    pub outside_sheet: Option<Broken>,
}

/// Returns how the hold stands, or `None` before target pressure.
///
/// Target pressure counts as the first reading, by hand.
pub fn state(plan: &Plan, attempt: &Attempt) -> Option<HoldState> {
    let joined = attempt.joined.as_ref()?;
    let readings = line(attempt, &joined.moment)?;
    let (coldest, coldest_at) = times::coldest_in_hold(attempt)
        .map_or((times::coldest(&plan.choice.temperatures), None), |(cold, at)| (cold, Some(at)));
    let asked = times::at_coldest(&plan.resin.hold, coldest);
    let outside_sheet = asked.as_ref().err().cloned();
    let terms = terms(plan, asked.unwrap_or_else(|_| times::longest(&plan.resin.hold)));
    let shown = hold::hold(&terms, &readings).ok()?;
    Some(HoldState { terms, readings, shown, coldest, coldest_at, outside_sheet })
}

/// Returns the readings up to the release: what is read of a packer that was let down holds nothing.
pub fn held(attempt: &Attempt) -> &[Reading] {
    let Some((released, _)) = &attempt.released else { return &attempt.readings };
    let before = |reading: &&Reading| times::between(&reading.at.moment, &released.moment) >= 0;
    &attempt.readings[..attempt.readings.iter().take_while(before).count()]
}

/// Returns how the hold stands now; `None` if the clock runs before the last reading.
pub fn outlook(state: &HoldState, attempt: &Attempt, now: &Moment) -> Option<Outlook> {
    let joined = attempt.joined.as_ref()?;
    let last = held(attempt).last().map(|reading| &reading.at).or(attempt.target.as_ref().map(|target| &target.at))?;
    let restarted = times::restarted(&last.moment, now);
    let at = times::between(&joined.moment, now).max(state.readings.last().map_or(0, |reading| reading.at_ms));
    hold::outlook(&state.terms, &state.readings, at, restarted).ok()
}

fn terms(plan: &Plan, required: Span) -> HoldTerms {
    let contract = &plan.contract;
    HoldTerms {
        low_pa: plan.computed.window.lower_pa,
        high_pa: plan.computed.window.upper_pa,
        least_net_pa: plan.computed.window.net_least_pa,
        head_um: plan.choice.head_um,
        interval_ms: contract.reading_interval_ms.value,
        grace_ms: contract.reading_grace_ms.value,
        gap_rule: match contract.gap_rule.value {
            GapRule::Whole => hold::GapRule::WholeGapLost,
            GapRule::Excess => hold::GapRule::ExcessLost,
        },
        counts_from: match plan.resin.counts_from.value {
            CountsFrom::Joined => hold::CountsFrom::Joining,
            CountsFrom::TargetPressure => hold::CountsFrom::TargetPressure,
        },
        required_ms: required,
        joined_ms: 0,
    }
}

fn line(attempt: &Attempt, joined: &Moment) -> Option<Vec<hold::Reading>> {
    let target = attempt.target.as_ref()?;
    let pressures = std::iter::once((&target.at, target.gauge_pa))
        .chain(held(attempt).iter().map(|reading| (&reading.at, reading.gauge_pa)));
    let mut readings: Vec<hold::Reading> = Vec::new();
    let mut before: &Moment = &target.at.moment;
    let mut at_ms = 0;
    for (stamp, gauge_pa) in pressures {
        // A clock that ran backwards across a restart must not reorder what was read one after the other.
        at_ms = times::between(joined, &stamp.moment).max(at_ms);
        readings.push(hold::Reading { at_ms, gauge_pa, after_restart: times::restarted(before, &stamp.moment) });
        before = &stamp.moment;
    }
    Some(readings)
}
