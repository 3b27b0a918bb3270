//! What floods the screen: the working time is over, or the pressure left its window.

use serde::Serialize;

use super::hold::HoldView;
use crate::facts::Moment;
use crate::procedure::plan::Plan;
use crate::procedure::repair::Attempt;
use crate::procedure::stage::PatchPlace;
use crate::procedure::times;

#[derive(Clone, Debug, Serialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Trouble {
    /// The working time is over and the patch is not at pressure.
    TimeOver { over_ms: i64, deadline_ms: i64, place: Option<PatchPlace> },
    /// The last reading is outside the window.
    Pressure { low: bool, gauge_pa: i64, at_ms: i64, outside_for_ms: i64, resin_age_ms: i64, doubtful: bool },
}

/// Returns the trouble that the screen must show first.
pub fn trouble(plan: &Plan, attempt: &Attempt, hold: Option<&HoldView>, now: &Moment) -> Option<Trouble> {
    time_over(plan, attempt, now).or_else(|| pressure(attempt, hold?, now))
}

fn time_over(plan: &Plan, attempt: &Attempt, now: &Moment) -> Option<Trouble> {
    let joined = attempt.joined.as_ref().filter(|_| attempt.resin_runs())?;
    let over_ms = times::since_joining(attempt, joined, now) - times::working_time(plan, attempt)?.as_ms();
    let place = attempt.place.as_ref().map(|(_, place)| *place);
    (over_ms > 0).then(|| Trouble::TimeOver { over_ms, deadline_ms: now.at_ms - over_ms, place })
}

fn pressure(attempt: &Attempt, hold: &HoldView, now: &Moment) -> Option<Trouble> {
    if attempt.released.is_some() || attempt.ended.is_some() {
        return None;
    }
    let last = hold.readings.last().filter(|last| !last.inside)?;
    let excursion = hold.excursions.last()?;
    let joined = attempt.joined.as_ref()?;
    Some(Trouble::Pressure {
        low: last.gauge_pa < hold.window.lower_pa.as_pa(),
        gauge_pa: last.gauge_pa,
        at_ms: last.at_ms,
        outside_for_ms: excursion.longest_ms.as_ms().max(now.at_ms - last.at_ms),
        resin_age_ms: times::between(&joined.moment, now),
        doubtful: excursion.doubtful,
    })
}
