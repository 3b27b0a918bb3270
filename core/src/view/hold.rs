//! The hold as its screen draws it. Times are by the wall clock of now, so that a clock that was set shifts nothing.

use serde::Serialize;

use super::leak::{LeakView, leak};
use crate::checks::hold::{Excursion, StretchKind};
use crate::facts::Moment;
use crate::procedure::happening::ReadBy;
use crate::procedure::hold::{self, HoldState};
use crate::procedure::plan::{Plan, Window};
use crate::procedure::repair::{Attempt, Repair};
use crate::procedure::times;
use crate::units::Length;

#[derive(Clone, Debug, Serialize)]
pub struct HoldView {
    pub counted_ms: i64,
    pub required_ms: i64,
    pub missing_ms: i64,
    /// What would count in addition with a good reading now.
    pub pending_ms: i64,
    pub not_witnessed_ms: i64,
    pub outside_ms: i64,
    pub earliest_release_ms: i64,
    pub reading_due_ms: Option<i64>,
    pub gap_from_ms: Option<i64>,
    pub coldest_mc: i64,
    pub window: Window,
    pub target_ms: i64,
    pub readings: Vec<ReadingView>,
    pub stretches: Vec<StretchView>,
    pub excursions: Vec<Excursion>,
    pub upstream_um: Option<Length>,
    /// The hold is over: the packer was let down.
    pub released_ms: Option<i64>,
    pub leak: LeakView,
}

#[derive(Clone, Debug, Serialize)]
pub struct ReadingView {
    pub at_ms: i64,
    pub gauge_pa: i64,
    pub pipe_mc: Option<i64>,
    pub water_mc: Option<i64>,
    pub patch_mc: Option<i64>,
    pub upstream_um: Option<i64>,
    pub by: ReadBy,
    pub inside: bool,
    pub why: String,
    /// Keyed in from paper.
    pub paper: bool,
    /// What the time since the reading before is worth.
    pub counted_ms: i64,
    pub witnessed: bool,
    /// Its number among the readings, from 0; `None` for the target pressure.
    pub index: Option<usize>,
}

#[derive(Clone, Debug, Serialize)]
pub struct StretchView {
    pub from_ms: i64,
    pub to_ms: i64,
    pub kind: StretchKind,
}

impl HoldView {
    /// Returns it without what it wants next, where another phone has the hold: one phone reminds, not two.
    pub fn watched(self, repair: &Repair, device: &str) -> Self {
        if repair.is_away(device) { Self { reading_due_ms: None, gap_from_ms: None, ..self } } else { self }
    }
}

/// Returns the hold of an attempt, or `None` before target pressure.
pub fn hold(plan: &Plan, attempt: &Attempt, now: &Moment) -> Option<HoldView> {
    let state = hold::state(plan, attempt)?;
    let target = attempt.target.as_ref()?;
    let joined = attempt.joined.as_ref()?;
    let origin = now.at_ms - times::between(&joined.moment, now);
    let outlook = hold::outlook(&state, attempt, now);
    let wall = |at: i64| origin + at;
    Some(HoldView {
        counted_ms: state.shown.counted_ms.as_ms(),
        required_ms: state.terms.required_ms.as_ms(),
        missing_ms: state.shown.missing_ms.as_ms(),
        pending_ms: outlook.map_or(0, |outlook| outlook.pending_ms.as_ms()),
        not_witnessed_ms: state.shown.not_witnessed_ms.as_ms(),
        outside_ms: state.shown.outside_ms.as_ms(),
        earliest_release_ms: wall(outlook.map_or(0, |outlook| outlook.earliest_release_ms)),
        reading_due_ms: outlook.and_then(|outlook| outlook.reading_due_ms).map(wall),
        gap_from_ms: outlook.and_then(|outlook| outlook.gap_from_ms).map(wall),
        coldest_mc: state.coldest.as_millicelsius(),
        window: plan.computed.window.clone().told(),
        target_ms: wall(times::between(&joined.moment, &target.at.moment)),
        readings: readings(&state, attempt, origin),
        stretches: state
            .shown
            .stretches
            .iter()
            .map(|stretch| StretchView {
                from_ms: wall(stretch.from_ms),
                to_ms: wall(stretch.to_ms),
                kind: stretch.kind,
            })
            .collect(),
        excursions: state.shown.excursions.clone(),
        upstream_um: attempt.readings.iter().rev().find_map(|reading| reading.upstream_um),
        leak: leak(plan, attempt, &joined.moment, origin),
        released_ms: attempt.released.as_ref().map(|(at, _)| wall(times::between(&joined.moment, &at.moment))),
    })
}

fn readings(state: &HoldState, attempt: &Attempt, origin: i64) -> Vec<ReadingView> {
    let worth = |from: i64, to: i64, kind: StretchKind| {
        let inside =
            state.shown.stretches.iter().filter(|one| one.kind == kind && one.from_ms >= from && one.to_ms <= to);
        inside.map(|one| one.to_ms - one.from_ms).sum::<i64>()
    };
    let before = |place: usize| place.checked_sub(1).and_then(|place| state.readings.get(place));
    state
        .readings
        .iter()
        .enumerate()
        .map(|(place, read)| {
            let index = place.checked_sub(1);
            let recorded = index.and_then(|index| attempt.readings.get(index));
            let from = before(place).map_or(read.at_ms, |earlier| earlier.at_ms);
            ReadingView {
                at_ms: origin + read.at_ms,
                gauge_pa: read.gauge_pa.as_pa(),
                pipe_mc: recorded.and_then(|one| one.pipe_mc).map(|read| read.as_millicelsius()),
                water_mc: recorded.and_then(|one| one.water_mc).map(|read| read.as_millicelsius()),
                patch_mc: recorded.and_then(|one| one.patch_mc).map(|read| read.as_millicelsius()),
                upstream_um: recorded.and_then(|one| one.upstream_um).map(Length::as_um),
                by: recorded.map_or(ReadBy::Hand, |one| one.by),
                inside: (state.terms.low_pa..=state.terms.high_pa).contains(&read.gauge_pa),
                why: recorded.map_or_else(String::new, |one| one.why.clone()),
                // The first is the target pressure.
                paper: recorded
                    .map_or(index.is_none() && attempt.target.as_ref().is_some_and(|one| one.at.paper), |one| {
                        one.at.paper
                    }),
                counted_ms: worth(from, read.at_ms, StretchKind::Counted),
                witnessed: worth(from, read.at_ms, StretchKind::NotWitnessed) == 0,
                index,
            }
        })
        .collect()
}
