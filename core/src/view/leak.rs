//! Whether the packer leaks, from the readings of a hold: cooling told from a leak, and how long the pressure lasts.

use serde::Serialize;

use crate::checks::packer_air::{self, ATMOSPHERIC_BAR, FEWEST, Leak, PackerReading, Verdict};
use crate::facts::Moment;
use crate::procedure::hold;
use crate::procedure::plan::Plan;
use crate::procedure::repair::{Attempt, Reading};
use crate::procedure::times;
use crate::shelf::method::TaskKind;
use crate::units::{Pressure, Temperature};

/// What the readings say of a leak.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum LeakVerdict {
    /// Nobody has said what the air outside presses: without it cooling can't be told from a leak.
    OutsideMissing,
    TooFewReadings,
    Steady,
    CoolingOnly,
    Leaking,
}

/// The estimate of a leak. Pressures are rounded so that the leak never looks smaller, the moment so that it never looks later.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct LeakView {
    pub verdict: LeakVerdict,
    /// Pressure of the air outside, absolute, as it was read.
    pub outside_pa: Option<Pressure>,
    /// The readings with a temperature since air was last added, and how many more a verdict needs.
    pub readings: usize,
    pub missing: usize,
    /// By the wall clock of now.
    pub since_ms: Option<i64>,
    /// What is lost in an hour, with its 95 % bounds; below 0 is gained.
    pub per_hour_pa: Option<i64>,
    pub low_pa: Option<i64>,
    pub high_pa: Option<i64>,
    /// When a leaking packer reaches the lower limit, by the wall clock of now.
    pub limit_ms: Option<i64>,
}

/// Returns the estimate for a hold whose line of time begins at `origin_ms`, the joining by the wall clock of now.
pub fn leak(plan: &Plan, attempt: &Attempt, joined: &Moment, origin_ms: i64) -> LeakView {
    let outside = outside(attempt);
    let readings = closed_packer(attempt, joined, outside);
    let wall = |minutes: f64| origin_ms + (minutes * 60_000.0).floor() as i64;
    let limit_bar = plan.computed.window.lower_pa.as_bar();
    let found = outside.and_then(|outside| packer_air::decay(&readings, outside.as_bar(), limit_bar).ok());
    let leak = found.and_then(|found| found.leak);
    let verdict = match (outside, found.map(|found| found.verdict)) {
        (None, _) => LeakVerdict::OutsideMissing,
        (Some(_), None | Some(Verdict::TooFewReadings)) => LeakVerdict::TooFewReadings,
        (Some(_), Some(Verdict::Steady)) => LeakVerdict::Steady,
        (Some(_), Some(Verdict::CoolingOnly)) => LeakVerdict::CoolingOnly,
        (Some(_), Some(Verdict::Leaking)) => LeakVerdict::Leaking,
    };
    let pascal = |of: fn(&Leak) -> f64, round: fn(f64) -> f64| leak.map(|leak| round(of(&leak) * 1e5) as i64);
    LeakView {
        verdict,
        outside_pa: outside,
        readings: readings.len(),
        missing: FEWEST.saturating_sub(readings.len()),
        since_ms: readings.first().map(|first| wall(first.minutes)),
        per_hour_pa: pascal(|leak| leak.bar_per_h, f64::ceil),
        low_pa: pascal(|leak| leak.low, f64::floor),
        high_pa: pascal(|leak| leak.high, f64::ceil),
        limit_ms: leak
            .filter(|_| verdict == LeakVerdict::Leaking)
            .and_then(|leak| Some(wall(readings.last()?.minutes + leak.minutes_to_limit?))),
    }
}

/// Returns the pressure of the air outside as it was last read, in the hold or at staging; `None` if nobody gave one that can be.
pub fn outside(attempt: &Attempt) -> Option<Pressure> {
    let read = attempt.readings.iter().rev().find_map(|reading| reading.outside_pa);
    let told = || {
        let answered = attempt.answers.values().filter(|answered| answered.kind == TaskKind::Temperatures);
        answered.filter_map(|answered| answered.answer.number("outside_pa")).map(Pressure::from_pa).next_back()
    };
    read.or_else(told).filter(|outside| ATMOSPHERIC_BAR.check(outside.as_bar()).is_ok())
}

/// Returns the readings of the hold that carry a temperature of patch or pipe since air was last added, in minutes from
/// joining. The standard atmosphere stands in where nobody gave the outside pressure: it only says where air was added.
pub fn closed_packer(attempt: &Attempt, joined: &Moment, outside: Option<Pressure>) -> Vec<PackerReading> {
    let warm =
        |reading: &Reading| Some((times::between(joined, &reading.at.moment), reading.gauge_pa, warmth(reading)?));
    let mut readings: Vec<PackerReading> = Vec::new();
    for (ms, gauge, at) in hold::held(attempt).iter().filter_map(warm) {
        let minutes = ms as f64 / 60_000.0;
        // Two readings in one moment, or a clock that ran backwards, make no line.
        if readings.last().is_none_or(|last| last.minutes < minutes) {
            readings.push(PackerReading { minutes, gauge_bar: gauge.as_bar(), celsius: at.as_celsius() });
        }
    }
    let outside_bar = outside.map_or(packer_air::STANDARD_ATMOSPHERE_BAR, Pressure::as_bar);
    packer_air::since_added(&readings, outside_bar).to_vec()
}

fn warmth(reading: &Reading) -> Option<Temperature> {
    reading.patch_mc.or(reading.pipe_mc)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::procedure::happening::Happening;
    use crate::procedure::stage::Stage;
    use crate::procedure::tests::kit::{World, bar, reading};

    fn leak_of(world: &World) -> LeakView {
        let repair = world.repair();
        let (plan, attempt) = times::plan_and_attempt(repair).unwrap();
        let joined = &attempt.joined.as_ref().unwrap().moment;
        leak(plan, attempt, joined, joined.at_ms)
    }

    fn outside(happening: Happening, pa: i64) -> Happening {
        let Happening::Reading { gauge_pa, pipe_mc, water_mc, patch_mc, upstream_um, by, gauge, why, .. } = happening
        else {
            return happening;
        };
        let outside_pa = Some(Pressure::from_pa(pa));
        Happening::Reading { gauge_pa, pipe_mc, water_mc, patch_mc, upstream_um, by, gauge, why, outside_pa }
    }

    /// Reads every ten minutes: gauge pressure and pipe wall; the air outside with the first.
    fn read(gauges: &[(f64, f64)], outside_pa: Option<i64>) -> World {
        let mut world = World::in_stage(Stage::Hold);
        for (place, (gauge, pipe)) in gauges.iter().enumerate() {
            world.after(10.0);
            let plain = reading(*gauge, *pipe);
            world.report(match outside_pa {
                Some(pa) if place == 0 => outside(plain, pa),
                _ => plain,
            });
        }
        world
    }

    #[test]
    fn without_the_air_outside_nothing_is_assumed() {
        let found = leak_of(&read(&[(1.30, 12.0), (1.29, 12.0), (1.28, 12.0), (1.27, 12.0), (1.26, 12.0)], None));
        assert_eq!((found.verdict, found.outside_pa, found.per_hour_pa), (LeakVerdict::OutsideMissing, None, None));
        assert_eq!(found.readings, 5);
    }

    #[test]
    fn a_value_that_no_air_has_counts_as_none() {
        let found = leak_of(&read(&[(1.30, 12.0), (1.29, 12.0)], Some(1_013)));
        assert_eq!(found.verdict, LeakVerdict::OutsideMissing);
    }

    #[test]
    fn four_readings_are_too_few_and_say_how_many_are_missing() {
        let found = leak_of(&read(&[(1.30, 12.0), (1.29, 12.0), (1.28, 12.0), (1.27, 12.0)], Some(101_300)));
        assert_eq!((found.verdict, found.missing), (LeakVerdict::TooFewReadings, 1));
    }

    #[test]
    fn an_even_fall_in_an_even_pipe_is_a_leak_with_its_minutes() {
        // 0.01 bar in ten minutes is 0.06 bar in the hour. The limit is the plan's.
        let world = read(&[(1.30, 12.0), (1.29, 12.0), (1.28, 12.0), (1.27, 12.0), (1.26, 12.0)], Some(101_300));
        let found = leak_of(&world);
        assert_eq!(found.verdict, LeakVerdict::Leaking);
        assert!((found.per_hour_pa.unwrap() - 6_000).abs() <= 1, "{found:?}");
        let (plan, attempt) = times::plan_and_attempt(world.repair()).unwrap();
        let last = attempt.readings.last().unwrap().at.moment.at_ms;
        let room = 1.26 - plan.computed.window.lower_pa.as_bar();
        let minutes = room / 0.06 * 60.0;
        let told = (found.limit_ms.unwrap() - last) as f64 / 60_000.0;
        assert!((told - minutes).abs() < 0.1, "{told} against {minutes}");
    }

    #[test]
    fn the_fall_of_a_cooling_pipe_is_cooling() {
        // Ideal gas at constant volume: (1.30 + 1.013)·(273.15 + 12 − n)/(273.15 + 12) − 1.013, to 0.001 bar.
        let cooling = [(1.300, 12.0), (1.292, 11.0), (1.284, 10.0), (1.276, 9.0), (1.268, 8.0)];
        let found = leak_of(&read(&cooling, Some(101_300)));
        assert_eq!((found.verdict, found.limit_ms), (LeakVerdict::CoolingOnly, None));
    }

    #[test]
    fn air_that_was_added_begins_the_estimate_anew() {
        let world = read(
            &[(1.30, 12.0), (1.27, 12.0), (1.24, 12.0), (1.21, 12.0), (1.30, 12.0), (1.27, 12.0), (1.24, 12.0)],
            Some(101_300),
        );
        let found = leak_of(&world);
        assert_eq!((found.verdict, found.readings, found.missing), (LeakVerdict::TooFewReadings, 3, 2));
    }

    #[test]
    fn a_steady_packer_is_steady() {
        let found = leak_of(&read(&[(1.30, 12.0); 6], Some(101_300)));
        assert_eq!((found.verdict, found.per_hour_pa), (LeakVerdict::Steady, Some(0)));
        assert_eq!(bar(1.30).as_pa(), 130_000);
    }
}
