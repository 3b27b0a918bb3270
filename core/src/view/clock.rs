//! The clocks that run: working time while resin is mixed, and full cure afterwards.

use serde::Serialize;

use crate::checks::budget::Budget;
use crate::facts::Moment;
use crate::procedure::plan::Plan;
use crate::procedure::repair::Attempt;
use crate::procedure::times;
use crate::units::Span;

/// The working time, from joining to target pressure. Times are by the wall clock of now.
#[derive(Clone, Debug, Serialize)]
pub struct ClockView {
    pub joined_ms: i64,
    pub working_ms: i64,
    /// What is left; negative when it is over.
    pub left_ms: i64,
    pub deadline_ms: i64,
    /// At the latest, to keep the margin.
    pub way_in_ms: i64,
    pub inflate_ms: i64,
    pub on_target_ms: i64,
    /// Until when the parts must be mixed at least.
    pub mix_until_ms: i64,
    pub insertion_ms: Option<i64>,
    pub at_mark_ms: Option<i64>,
    pub air_joined_ms: Option<i64>,
    /// It stopped with the target pressure.
    pub stopped_ms: Option<i64>,
    /// The device was started anew since joining: the longer of both clocks counts.
    pub restarted: bool,
}

/// Returns the working time of an attempt, or `None` before joining.
pub fn clock(plan: &Plan, attempt: &Attempt, now: &Moment) -> Option<ClockView> {
    let joined = attempt.joined.as_ref()?;
    let working = times::working_time(plan, attempt)?;
    let elapsed = times::since_joining(attempt, joined, now);
    // By now's wall clock, so that a clock that was set in between does not shift the deadline.
    let joined_ms = now.at_ms - elapsed;
    let latest = shares(plan, attempt, working).latest_times(joined_ms);
    Some(ClockView {
        joined_ms,
        working_ms: working.as_ms(),
        left_ms: working.as_ms() - elapsed,
        deadline_ms: latest.deadline_ms,
        way_in_ms: latest.way_in_ms,
        inflate_ms: latest.inflate_ms,
        on_target_ms: latest.on_target_ms,
        mix_until_ms: joined_ms + plan.resin.mixing_least_ms.value.as_ms(),
        insertion_ms: attempt.insertion.as_ref().map(|at| at.moment.at_ms),
        at_mark_ms: attempt.at_mark.as_ref().map(|mark| mark.at.moment.at_ms),
        air_joined_ms: attempt.air_joined.as_ref().map(|at| at.moment.at_ms),
        stopped_ms: attempt.target.as_ref().map(|target| target.at.moment.at_ms),
        restarted: times::restarted(&joined.moment, now),
    })
}

fn shares(plan: &Plan, attempt: &Attempt, working: Span) -> Budget {
    let go = attempt.second_go.as_ref().or(attempt.go.as_ref()).map_or(&plan.computed.budget, |go| &go.budget);
    Budget {
        working_time_ms: working,
        wet_out_ms: go.wet_out_ms,
        loaded_push_ms: go.loaded_push_ms,
        connect_and_inflate_ms: go.connect_ms,
        margin_ms: go.margin_ms,
        spare_ms: go.spare_ms,
    }
}

/// Full cure: from when cutting and testing are allowed.
#[derive(Clone, Debug, Serialize)]
pub struct CureView {
    pub from_ms: i64,
    pub until_ms: i64,
    pub reached: bool,
}

/// Returns the full-cure clock, or `None` before it runs.
pub fn cure(plan: &Plan, attempt: &Attempt, now: &Moment) -> Option<CureView> {
    let from = times::cure_counts_from(plan, attempt)?;
    let until_ms = times::full_cure_ms(plan, attempt)?;
    let lasts = until_ms - from.moment.at_ms;
    let elapsed = times::between(&from.moment, now);
    Some(CureView { from_ms: now.at_ms - elapsed, until_ms: now.at_ms - elapsed + lasts, reached: elapsed >= lasts })
}
