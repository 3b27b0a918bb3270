//! A rehearsal that is played: its own clock, which runs faster, and what goes wrong on purpose.
//!
//! The clock is a plain function of what is recorded and of the device's moment, so it begins where it was after any
//! interruption. Only a rehearsal has one; a repair keeps the device's own clocks.

mod world;

use serde::{Deserialize, Serialize};

pub use world::{Seen, Sight, sights};

use super::repair::{Attempt, Repair};
use crate::facts::Moment;

/// What can go wrong on purpose, in the first attempt.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Mishap {
    /// The pressure falls during the hold.
    LeakingPacker,
    /// The wet-out takes the time that the placement needs.
    LateCrew,
    /// The resin has stood in the sun.
    HotDay,
    /// The loaded packer stops short of the mark.
    PackerStuck,
    /// The wall clock of the phone is set ahead during the hold.
    WrongClock,
    /// The patch covers a lateral that has to be opened again.
    LateralUnderPatch,
}

impl Mishap {
    /// Every mishap, in the order in which the job meets them.
    pub const ALL: [Self; 6] = [
        Self::HotDay,
        Self::LateCrew,
        Self::PackerStuck,
        Self::LeakingPacker,
        Self::WrongClock,
        Self::LateralUnderPatch,
    ];
}

/// The fastest that the clock runs: a minute in a second.
pub const MOST_PACE: u32 = 60;

/// How long after joining a late crew stands still, and how long after the target pressure the other mishaps strike.
/// Chosen for practice; no source.
const LATE_AFTER_MS: i64 = 4 * 60_000;
const LEAK_AFTER_MS: i64 = 5 * 60_000;
const CLOCK_AFTER_MS: i64 = 6 * 60_000;

/// By how much the wall clock is set ahead.
const SET_AHEAD_MS: i64 = 37 * 60_000;

/// The clock of a rehearsal and its mishaps.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Practice {
    pub mishaps: Vec<Mishap>,
    /// Nobody was told which.
    pub surprise: bool,
    /// Simulated milliseconds in a millisecond, 1 to [`MOST_PACE`].
    pub pace: u32,
    /// What the device's clocks showed when the pace was set.
    pub real: Moment,
    /// What the rehearsal's clocks showed then, without what mishaps do to them.
    pub shown: Moment,
}

impl Practice {
    /// Returns the rehearsal's moment before mishaps: never earlier than where the pace was set.
    ///
    /// Within one start of the device its boot clock tells how long it was, across a restart its wall clock.
    pub fn plain(&self, real: &Moment) -> Moment {
        let same = self.real.boot_id == real.boot_id;
        let passed = if same { real.boot_ms - self.real.boot_ms } else { real.at_ms - self.real.at_ms };
        later(&self.shown, passed.max(0).saturating_mul(i64::from(self.pace)))
    }

    /// Returns whether this goes wrong on purpose.
    pub fn has(&self, mishap: Mishap) -> bool {
        self.mishaps.contains(&mishap)
    }

    /// Returns the same clock at another pace from now on.
    pub fn paced(&self, pace: u32, real: &Moment) -> Self {
        Self { pace, shown: self.plain(real), real: real.clone(), ..self.clone() }
    }
}

/// Returns what the clocks of a rehearsal show while the device's show `real`; `None` for a repair without such clocks.
///
/// It never runs backwards: what is recorded is never later than now.
pub fn moment(repair: &Repair, real: &Moment) -> Option<Moment> {
    let practice = repair.practice.as_ref()?;
    let mut shown = later(&practice.plain(real), 0);
    let first = repair.attempts.first();
    if let Some(first) = first.filter(|_| practice.has(Mishap::LateCrew)) {
        shown = later(&shown, delay(repair, first, shown.boot_ms));
    }
    shown = later(&shown, (repair.last_moment.boot_ms - shown.boot_ms).max(0));
    let target = first.and_then(|first| first.target.as_ref()).filter(|_| practice.has(Mishap::WrongClock));
    if target.is_some_and(|target| shown.boot_ms >= target.at.moment.boot_ms + CLOCK_AFTER_MS) {
        shown.at_ms += SET_AHEAD_MS;
    }
    Some(shown)
}

fn later(moment: &Moment, by_ms: i64) -> Moment {
    Moment {
        at_ms: moment.at_ms.saturating_add(by_ms),
        boot_ms: moment.boot_ms.saturating_add(by_ms),
        ..moment.clone()
    }
}

/// A late crew leaves half of the margin: too little to connect and inflate.
fn delay(repair: &Repair, attempt: &Attempt, now_boot_ms: i64) -> i64 {
    let (Some(plan), Some(strikes)) = (&repair.plan, late_from(attempt)) else { return 0 };
    let working = super::times::working_time(plan, attempt).unwrap_or_default().as_ms();
    let margin = plan.contract.margin_ms.value.as_ms();
    if now_boot_ms < strikes { 0 } else { (working - LATE_AFTER_MS - margin / 2).max(0) }
}

/// Returns when the crew stands still, by the boot clock; `None` where the packer was on its way before.
fn late_from(attempt: &Attempt) -> Option<i64> {
    let strikes = attempt.joined.as_ref()?.moment.boot_ms + LATE_AFTER_MS;
    let before = |at: &super::Stamp| at.moment.boot_ms + at.ago_ms < strikes;
    let on_its_way = attempt.insertion.as_ref().is_some_and(before)
        || attempt.target.as_ref().is_some_and(|target| before(&target.at))
        || attempt.ended.as_ref().is_some_and(|ended| before(&ended.at));
    (!on_its_way).then_some(strikes)
}

/// Returns whether a mishap has shown itself by now.
pub fn struck(repair: &Repair, mishap: Mishap, now: &Moment) -> bool {
    let Some(attempt) = repair.attempts.first().filter(|_| repair.practice.as_ref().is_some_and(|one| one.has(mishap)))
    else {
        return false;
    };
    let until = attempt.ended.as_ref().map_or(now.boot_ms, |ended| ended.at.moment.boot_ms);
    let target = attempt.target.as_ref().map(|target| target.at.moment.boot_ms);
    let let_down = attempt.released.as_ref().map_or(until, |(at, _)| at.moment.boot_ms);
    match mishap {
        Mishap::HotDay => !attempt.temperatures.is_empty(),
        Mishap::LateCrew => late_from(attempt).is_some_and(|from| until >= from),
        Mishap::PackerStuck => world::stuck_from(repair, attempt).is_some_and(|from| until >= from),
        Mishap::LeakingPacker => target.is_some_and(|target| let_down >= target + LEAK_AFTER_MS),
        Mishap::WrongClock => target.is_some_and(|target| now.boot_ms >= target + CLOCK_AFTER_MS),
        Mishap::LateralUnderPatch => attempt.released.is_some(),
    }
}

#[cfg(test)]
mod tests;
