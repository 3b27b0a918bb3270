//! What somebody would see on the street while a rehearsal is played: gauge, thermometers, counter, sample, camera.
//!
//! Every figure follows from the plan, what is recorded and the rehearsal's clock. The temperatures and rates are
//! invented for practice and are no advice.

use serde::Serialize;

use super::{LEAK_AFTER_MS, Mishap, Practice};
use crate::facts::Moment;
use crate::procedure::happening::Happening;
use crate::procedure::plan::Plan;
use crate::procedure::repair::{Attempt, Repair};
use crate::procedure::rules::Rule;
use crate::procedure::stage::{PatchPlace, Stage};
use crate::procedure::times;

/// What is seen. The name of a measured one ends in its unit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Seen {
    ResinMc,
    AirMc,
    PipeMc,
    WaterMc,
    LeastUm,
    MostUm,
    CounterUm,
    GaugePa,
    UpstreamUm,
    /// The resin stands in cold water.
    ResinCools,
    CrewLate,
    PackerAtMark,
    RodsStuck,
    /// Pulled by the rope, the packer comes back.
    RopeComes,
    Hiss,
    ClockOdd,
    SampleSoft,
    SampleHard,
    EdgesBonded,
    EdgeLifted,
    FoldUm,
    LateralCovered,
}

/// One thing that is seen, with its value in the step that its name ends in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Sight {
    pub seen: Seen,
    pub value: Option<i64>,
}

const fn words(seen: Seen) -> Sight {
    Sight { seen, value: None }
}

const fn value(seen: Seen, value: i64) -> Sight {
    Sight { seen, value: Some(value) }
}

const MINUTE_MS: i64 = 60_000;
const RESIN_MC: i64 = 19_200;
const HOT_RESIN_MC: i64 = 27_000;
/// In cold water the resin loses this much in a minute.
const COOLING_MC: i64 = 400;
/// How long a leaking packer takes from the target pressure to the least of the window when it leaks.
const LEAKS_FOR_MS: i64 = 5 * MINUTE_MS;
const RAISING_MS: i64 = 2 * MINUTE_MS;

/// Returns what there is to see now, instruments first; nothing without a plan, or when the attempt is over.
pub fn sights(repair: &Repair, now: &Moment) -> Vec<Sight> {
    let (Some(practice), Some((plan, attempt))) = (&repair.practice, times::plan_and_attempt(repair)) else {
        return vec![];
    };
    if attempt.ended.is_some() {
        return vec![];
    }
    let on = |mishap| attempt.n == 1 && practice.has(mishap);
    match attempt.stage() {
        Stage::Planned => vec![],
        Stage::Staging => {
            let mut seen = thermometers(practice, attempt, now);
            seen.push(value(Seen::LeastUm, plan.choice.diameter_least_um.as_um()));
            seen.push(value(Seen::MostUm, plan.choice.diameter_most_um.as_um()));
            seen
        }
        Stage::TestPush => {
            let mut seen = vec![value(Seen::CounterUm, centre(plan)), words(Seen::PackerAtMark)];
            seen.extend(thermometers(practice, attempt, now));
            seen
        }
        Stage::SleeveChange => thermometers(practice, attempt, now),
        Stage::WetOut => {
            let mut seen = thermometers(practice, attempt, now);
            if on(Mishap::LateCrew) && super::struck(repair, Mishap::LateCrew, now) {
                seen.insert(0, words(Seen::CrewLate));
            }
            seen
        }
        Stage::Placement | Stage::Inflation => pushing(repair, plan, attempt, now, on(Mishap::PackerStuck)),
        Stage::Hold => holding(repair, plan, attempt, now, practice),
        Stage::Deflation => vec![value(Seen::GaugePa, 0), words(Seen::RopeComes)],
        Stage::Verification => camera(plan, attempt),
    }
}

fn thermometers(practice: &Practice, attempt: &Attempt, now: &Moment) -> Vec<Sight> {
    let hot = attempt.n == 1 && practice.has(Mishap::HotDay);
    let first = attempt.temperatures.first().map(|(at, _)| at.moment.boot_ms);
    let cooled = first.map_or(0, |from| (now.boot_ms - from) * COOLING_MC / MINUTE_MS);
    let resin = if hot { (HOT_RESIN_MC - cooled).max(RESIN_MC) } else { RESIN_MC };
    let air = if hot { 19_000 } else { 13_100 };
    let mut seen = vec![
        value(Seen::ResinMc, resin / 100 * 100),
        value(Seen::AirMc, air),
        value(Seen::PipeMc, 12_800),
        value(Seen::WaterMc, 13_400),
    ];
    if hot && first.is_some() && resin > RESIN_MC {
        seen.push(words(Seen::ResinCools));
    }
    seen
}

fn centre(plan: &Plan) -> i64 {
    plan.computed.patches.first().map_or(0, |patch| (patch.from_um.as_um() + patch.to_um.as_um()) / 2)
}

/// Returns from when on a stuck packer stands still, by the boot clock.
pub fn stuck_from(repair: &Repair, attempt: &Attempt) -> Option<i64> {
    let plan = repair.plan.as_ref()?;
    let push = plan.computed.budget.loaded_push_ms.as_ms();
    Some(attempt.insertion.as_ref()?.moment.boot_ms + push * 6 / 10)
}

fn pushing(repair: &Repair, plan: &Plan, attempt: &Attempt, now: &Moment, sticks: bool) -> Vec<Sight> {
    let begun = attempt.insertion.as_ref().map_or(now.boot_ms, |at| at.moment.boot_ms);
    let push = plan.computed.budget.loaded_push_ms.as_ms().max(1);
    let stuck = stuck_from(repair, attempt).filter(|_| sticks).filter(|from| now.boot_ms >= *from);
    let until = stuck.unwrap_or(now.boot_ms).max(begun);
    // In a straight line: nobody reads a speed off it.
    let done_permille = ((until - begun).saturating_mul(1000) / push).min(1000);
    let mut seen = vec![value(Seen::CounterUm, centre(plan) / 1000 * done_permille)];
    let given_up = attempt.troubles.iter().any(|(_, one)| *one == Happening::Stuck)
        || attempt.place.as_ref().is_some_and(|(_, place)| matches!(place, PatchPlace::Stuck | PatchPlace::InPipe));
    match (stuck, done_permille >= 1000) {
        (Some(_), _) if given_up => seen.push(words(Seen::RopeComes)),
        (Some(_), _) => seen.push(words(Seen::RodsStuck)),
        (None, true) => seen.push(words(Seen::PackerAtMark)),
        (None, false) => {}
    }
    if let Some(joined) = &attempt.air_joined {
        let target = plan.computed.window.target_pa.as_pa();
        let raised = (now.boot_ms - joined.moment.boot_ms).clamp(0, RAISING_MS);
        seen.push(value(Seen::GaugePa, target / 1000 * raised / RAISING_MS * 1000));
    }
    seen
}

fn holding(repair: &Repair, plan: &Plan, attempt: &Attempt, now: &Moment, practice: &Practice) -> Vec<Sight> {
    let Some(target) = &attempt.target else { return vec![] };
    let since = now.boot_ms - target.at.moment.boot_ms;
    // A needle is never quite still, and the pipe cools and warms by a tenth.
    let wobble = (since / MINUTE_MS * 7) % 3 - 1;
    let leaking = attempt.n == 1 && practice.has(Mishap::LeakingPacker);
    let lost = if leaking { leaked(plan, attempt, now) } else { 0 };
    let gauge = (plan.computed.window.target_pa.as_pa() + wobble * 1000 - lost).max(0);
    let mut seen = vec![
        value(Seen::GaugePa, gauge / 1000 * 1000),
        value(Seen::PipeMc, 12_800 + wobble * 100),
        value(Seen::UpstreamUm, 350_000 + since / (10 * MINUTE_MS) * 10_000),
    ];
    if lost > 0 {
        seen.push(words(Seen::Hiss));
    }
    if super::struck(repair, Mishap::WrongClock, now) {
        seen.push(words(Seen::ClockOdd));
    }
    let hard = since * 5 >= plan.computed.hold_ms.as_ms() * 4;
    seen.push(words(if hard { Seen::SampleHard } else { Seen::SampleSoft }));
    seen
}

/// Returns how much pressure is lost: nothing after the leak was seen to, which a reading says by its reason.
fn leaked(plan: &Plan, attempt: &Attempt, now: &Moment) -> i64 {
    let Some(target) = &attempt.target else { return 0 };
    let from = target.at.moment.boot_ms + LEAK_AFTER_MS;
    let mended = |at: i64, why: &str| at >= from && !why.trim().is_empty();
    if attempt.readings.iter().any(|one| mended(one.at.moment.boot_ms, &one.why)) {
        return 0;
    }
    let window = &plan.computed.window;
    let fall = (window.target_pa.as_pa() - window.lower_pa.as_pa()).max(1000);
    (now.boot_ms - from).max(0).saturating_mul(fall) / LEAKS_FOR_MS
}

fn camera(plan: &Plan, attempt: &Attempt) -> Vec<Sight> {
    let let_go = [Rule::PressureLost, Rule::ReleasedEarly, Rule::LateInflation];
    let lifted = attempt.doubts.iter().any(|doubt| let_go.contains(&doubt.rule));
    let mut seen = vec![words(if lifted { Seen::EdgeLifted } else { Seen::EdgesBonded }), value(Seen::FoldUm, 2_000)];
    let opened = |index: &&usize| attempt.laterals.iter().any(|one| one.lateral == **index);
    if plan.computed.covered.iter().any(|index| !opened(&index)) {
        seen.push(words(Seen::LateralCovered));
    }
    seen
}
