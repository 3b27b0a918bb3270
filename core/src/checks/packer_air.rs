//! The air in a packer: what cooling does to its pressure, and whether it leaks.

use super::Refused;
use super::field::{Allowed, Field};
use super::pressure_window::WATER_BAR_PER_M;
use super::sheet_rows::ZERO_CELSIUS_K;
use super::student;
use crate::maths;

pub const GAS_SOURCE: &str = "ideal gas at constant volume, p/T constant with absolute pressure and kelvin";
pub const NET_SOURCE: &str = "gauge pressure less fresh water, 0.0980665 bar/m (NIST SP 811, 2008, B.8)";
pub const DECAY_SOURCE: &str = "straight line by least squares through readings brought to the first temperature by the gas \
    law, 95 % by Student's t; 5 readings and 0.02 bar/h are design rules of this project";

pub const GAUGE_BAR: Field = Field::from("gauge_bar", "bar", 0.0, 1000.0);
pub const TEMPERATURE_BEFORE_C: Field = Field::from("temperature_before_c", "°C", -100.0, 300.0);
pub const TEMPERATURE_AFTER_C: Field = Field::from("temperature_after_c", "°C", -100.0, 300.0);
pub const ATMOSPHERIC_BAR: Field = Field::from("atmospheric_bar", "bar", 0.3, 1.5);
pub const GROUNDWATER_HEAD_M: Field = Field::from("groundwater_head_m", "m", 0.0, 1000.0);
pub const LOWER_LIMIT_BAR: Field = Field::from("lower_limit_bar", "bar", 0.0, 1000.0);
const MINUTE: Field = Field::from("minutes", "min", 0.0, 1e6);
const CELSIUS: Field = Field::from("temperature", "°C", -100.0, 300.0);
pub const READINGS: Field = Field::other("readings", "", Allowed::Rows(&[MINUTE, GAUGE_BAR, CELSIUS]));

/// The fewest readings that allow a verdict.
pub const FEWEST: usize = 5;
/// Below this fall a packer counts as steady.
const STEADY_BAR_PER_H: f64 = 0.02;
/// A greater rise from one reading to the next means that air was added.
const ADDED_BAR: f64 = 0.02;
/// The standard atmosphere: 101 325 Pa (ISO 2533:1975; NIST SP 811, 2008, B.8).
pub const STANDARD_ATMOSPHERE_BAR: f64 = 1.013_25;

/// Returns the gauge pressure after a change of temperature: `p₂ = (p₁ + p_atm)·T₂/T₁ − p_atm`, bar, without rounding.
///
/// `T` in kelvin; the packer's volume and the atmosphere stay. Errors: `OutOfRange` with the field.
/// Source: [`GAS_SOURCE`]. Vectors: `fixtures/checks/packer-pressure.json`.
pub fn after_cooling(gauge_bar: f64, before_c: f64, after_c: f64, atmospheric_bar: f64) -> Result<f64, Refused> {
    let gauge = GAUGE_BAR.check(gauge_bar)?;
    let before = TEMPERATURE_BEFORE_C.check(before_c)? + ZERO_CELSIUS_K;
    let after = TEMPERATURE_AFTER_C.check(after_c)? + ZERO_CELSIUS_K;
    let atmosphere = ATMOSPHERIC_BAR.check(atmospheric_bar)?;
    Ok((gauge + atmosphere) * after / before - atmosphere)
}

/// Returns the net pressure on the wall in kPa: `p_gauge − ρ·g·h`, without rounding. Below zero the water wins.
///
/// Errors: `OutOfRange` with the field.
/// Source: [`NET_SOURCE`]. Vectors: `fixtures/checks/net-pressure.json`.
pub fn net_kpa(gauge_bar: f64, groundwater_head_m: f64) -> Result<f64, Refused> {
    let head = GROUNDWATER_HEAD_M.check(groundwater_head_m)?;
    Ok((GAUGE_BAR.check(gauge_bar)? - WATER_BAR_PER_M * head) * 100.0)
}

/// A reading of a closed packer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PackerReading {
    pub minutes: f64,
    pub gauge_bar: f64,
    pub celsius: f64,
}

/// What the readings of a closed packer say.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Verdict {
    TooFewReadings,
    Leaking,
    CoolingOnly,
    Steady,
}

impl Verdict {
    /// Returns its stable word.
    pub fn word(self) -> &'static str {
        match self {
            Self::TooFewReadings => "too_few_readings",
            Self::Leaking => "leaking",
            Self::CoolingOnly => "cooling_only",
            Self::Steady => "steady",
        }
    }
}

/// The leak with its bounds; `None` below five readings.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Decay {
    pub leak: Option<Leak>,
    pub verdict: Verdict,
}

/// How fast a packer loses pressure at its first reading's temperature; above 0 is losing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Leak {
    pub bar_per_h: f64,
    /// The 95 % bounds.
    pub low: f64,
    pub high: f64,
    /// From the last reading's gauge pressure down to the limit; `None` unless it loses. 0 if it is already there.
    pub minutes_to_limit: Option<f64>,
}

/// Returns the leak of a closed packer from its readings, the cooling taken out.
///
/// Each reading is brought to the first one's temperature: `p' = (p + p_atm)·T₁/T − p_atm`; the leak is the slope of the
/// least-squares line through `p'`, its bounds `± t(0.975; n − 2)·s`. No rounding. *Leaking* if the lower bound is above 0
/// and the leak above 0.02 bar/h; else *cooling only* if the fall without correction is above 0.02 bar/h; else *steady*.
///
/// Errors: `OutOfRange` with the field; `ReadingsOutOfOrder` for times that don't rise.
/// Source: [`DECAY_SOURCE`]. Vectors: `fixtures/checks/pressure-decay.json`.
pub fn decay(readings: &[PackerReading], atmospheric_bar: f64, lower_limit_bar: f64) -> Result<Decay, Refused> {
    let atmosphere = ATMOSPHERIC_BAR.check(atmospheric_bar)?;
    let limit = LOWER_LIMIT_BAR.check(lower_limit_bar)?;
    checked(readings)?;
    let (Some(first), Some(last)) = (readings.first(), readings.last()) else { return Ok(too_few()) };
    if readings.len() < FEWEST {
        return Ok(too_few());
    }
    let at_first = |r: &PackerReading| {
        (r.gauge_bar + atmosphere) * (first.celsius + ZERO_CELSIUS_K) / (r.celsius + ZERO_CELSIUS_K) - atmosphere
    };
    let (slope, error) = line(readings, at_first);
    let (raw_slope, _) = line(readings, |r| r.gauge_bar);
    let (bar_per_h, raw_fall) = (-slope * 60.0, -raw_slope * 60.0);
    let reach = student::quantile_975(readings.len() - 2) * error * 60.0;
    let to_limit = |leak: f64| ((last.gauge_bar - limit) / leak * 60.0).max(0.0);
    let leak = Leak {
        bar_per_h,
        low: bar_per_h - reach,
        high: bar_per_h + reach,
        minutes_to_limit: (bar_per_h > 0.0).then(|| to_limit(bar_per_h)).filter(|minutes| minutes.is_finite()),
    };
    Ok(Decay { leak: Some(leak), verdict: verdict(&leak, raw_fall) })
}

/// Returns the readings since air was last added: from the last one that stands more than 0.02 bar above the one before it,
/// the cooling taken out. Only they are of a closed packer. All of them where none rose, or where they are no readings.
///
/// In order of time. Source: design rule of this project.
pub fn since_added(readings: &[PackerReading], atmospheric_bar: f64) -> &[PackerReading] {
    let rose = |pair: &[PackerReading]| match pair {
        [a, b] => after_cooling(b.gauge_bar, b.celsius, a.celsius, atmospheric_bar)
            .is_ok_and(|at_the_same| at_the_same - a.gauge_bar > ADDED_BAR),
        _ => false,
    };
    let first = readings.windows(2).rposition(rose).map_or(0, |before| before + 1);
    readings.get(first..).unwrap_or(readings)
}

fn too_few() -> Decay {
    Decay { leak: None, verdict: Verdict::TooFewReadings }
}

fn verdict(leak: &Leak, raw_fall: f64) -> Verdict {
    if leak.low > 0.0 && leak.bar_per_h > STEADY_BAR_PER_H {
        Verdict::Leaking
    } else if raw_fall > STEADY_BAR_PER_H {
        Verdict::CoolingOnly
    } else {
        Verdict::Steady
    }
}

fn checked(readings: &[PackerReading]) -> Result<(), Refused> {
    for reading in readings {
        MINUTE.check(reading.minutes)?;
        GAUGE_BAR.check(reading.gauge_bar)?;
        CELSIUS.check(reading.celsius)?;
    }
    let back = readings.windows(2).position(|pair| matches!(pair, [a, b] if b.minutes <= a.minutes));
    match back {
        Some(index) => Err(Refused::ReadingsOutOfOrder { index: index + 1 }),
        None => Ok(()),
    }
}

/// Returns slope and standard error of the slope of the least-squares line, per minute.
fn line(readings: &[PackerReading], value: impl Fn(&PackerReading) -> f64) -> (f64, f64) {
    let count = readings.len() as f64;
    let mean = |of: &dyn Fn(&PackerReading) -> f64| readings.iter().map(of).sum::<f64>() / count;
    let (mean_x, mean_y) = (mean(&|r| r.minutes), mean(&value));
    let square: f64 = readings.iter().map(|r| (r.minutes - mean_x) * (r.minutes - mean_x)).sum();
    let slope = readings.iter().map(|r| (r.minutes - mean_x) * (value(r) - mean_y)).sum::<f64>() / square;
    let rest = |r: &PackerReading| value(r) - mean_y - slope * (r.minutes - mean_x);
    let rests: f64 = readings.iter().map(|r| rest(r) * rest(r)).sum();
    (slope, maths::sqrt(rests / (count - 2.0) / square))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn readings(count: usize, leak: f64, cooling: f64) -> Vec<PackerReading> {
        let one = |i: usize| {
            let minutes = i as f64 * 10.0;
            let celsius = 20.0 - cooling * minutes / 60.0;
            let at_first = 1.30 - leak * minutes / 60.0;
            let gauge_bar = after_cooling(at_first, 20.0, celsius, 1.013).unwrap();
            PackerReading { minutes, gauge_bar, celsius }
        };
        (0..count).map(one).collect()
    }

    fn decay_of(readings: &[PackerReading]) -> Decay {
        decay(readings, 1.013, 1.10).unwrap()
    }

    #[test]
    fn cooling_alone_is_told_from_a_leak() {
        assert_eq!(decay_of(&readings(7, 0.0, 10.0)).verdict, Verdict::CoolingOnly);
        assert_eq!(decay_of(&readings(7, 0.1, 10.0)).verdict, Verdict::Leaking);
        assert_eq!(decay_of(&readings(7, 0.0, 0.0)).verdict, Verdict::Steady);
        assert_eq!(decay_of(&readings(4, 0.5, 0.0)).verdict, Verdict::TooFewReadings);
        assert_eq!(decay_of(&[]).verdict, Verdict::TooFewReadings);
    }

    #[test]
    fn a_clean_leak_is_found_with_the_minutes_that_are_left() {
        let leak = decay_of(&readings(7, 0.1, 0.0)).leak.unwrap();
        assert!((leak.bar_per_h - 0.1).abs() < 1e-9 && (leak.high - leak.low).abs() < 1e-6);
        // 1.30 bar less 0.1 bar in the hour: 0.10 bar above the limit is another hour.
        assert!((leak.minutes_to_limit.unwrap() - 60.0).abs() < 1e-6);
        assert_eq!(decay_of(&readings(7, -0.1, 0.0)).leak.unwrap().minutes_to_limit, None);
    }

    #[test]
    fn times_that_do_not_rise_are_refused() {
        let mut twice = readings(6, 0.1, 0.0);
        twice[3].minutes = twice[2].minutes;
        assert_eq!(decay(&twice, 1.013, 1.1), Err(Refused::ReadingsOutOfOrder { index: 3 }));
        twice[3].minutes = f64::NAN;
        assert!(decay(&twice, 1.013, 1.1).is_err());
    }

    #[test]
    fn only_what_follows_the_last_rise_is_of_a_closed_packer() {
        let of = |gauges: &[(f64, f64)]| -> Vec<PackerReading> {
            let one = |(i, &(gauge_bar, celsius)): (usize, &(f64, f64))| PackerReading {
                minutes: i as f64,
                gauge_bar,
                celsius,
            };
            gauges.iter().enumerate().map(one).collect()
        };
        let left = |gauges: &[(f64, f64)]| since_added(&of(gauges), 1.013).len();
        assert_eq!(left(&[]), 0);
        assert_eq!(left(&[(1.3, 12.0), (1.2, 12.0), (1.31, 12.0), (1.2, 12.0), (1.3, 12.0), (1.29, 12.0)]), 2);
        // A gauge that is read a hundredth higher adds no air, nor does a pipe that grows warm.
        assert_eq!(left(&[(1.3, 12.0), (1.31, 12.0), (1.3, 12.0)]), 3);
        assert_eq!(left(&[(1.3, 12.0), (1.34, 17.0), (1.34, 17.0)]), 3);
    }

    /// NIST Statistical Reference Datasets, Norris (linear regression, 36 points), <https://www.itl.nist.gov/div898/strd/>,
    /// data and certified values read in public copies.
    const NORRIS: [(f64, f64); 36] = [
        (0.2, 0.1),
        (337.4, 338.8),
        (118.2, 118.1),
        (884.6, 888.0),
        (10.1, 9.2),
        (226.5, 228.1),
        (666.3, 668.5),
        (996.3, 998.5),
        (448.6, 449.1),
        (777.0, 778.9),
        (558.2, 559.2),
        (0.4, 0.3),
        (0.6, 0.1),
        (775.5, 778.1),
        (666.9, 668.8),
        (338.0, 339.3),
        (447.5, 448.9),
        (11.6, 10.8),
        (556.0, 557.7),
        (228.1, 228.3),
        (995.8, 998.0),
        (887.6, 888.8),
        (120.2, 119.6),
        (0.3, 0.3),
        (0.3, 0.6),
        (556.8, 557.6),
        (339.1, 339.3),
        (887.2, 888.0),
        (999.0, 998.5),
        (779.0, 778.9),
        (11.1, 10.2),
        (118.3, 117.6),
        (229.2, 228.9),
        (669.1, 668.4),
        (448.9, 449.2),
        (0.5, 0.2),
    ];

    #[test]
    fn the_line_agrees_with_certified_values() {
        let reading = |&(minutes, gauge_bar): &(f64, f64)| PackerReading { minutes, gauge_bar, celsius: 20.0 };
        let readings: Vec<_> = NORRIS.iter().map(reading).collect();
        let (slope, error) = line(&readings, |reading| reading.gauge_bar);
        assert!((slope / 1.002_116_818_020_45 - 1.0).abs() < 1e-13, "{slope}");
        assert!((error / 0.429_796_848_199_937e-3 - 1.0).abs() < 1e-11, "{error}");
    }

    #[test]
    fn one_bar_cooled_from_20_to_10_degrees_falls_by_0_069_bar() {
        assert!((1.0 - after_cooling(1.0, 20.0, 10.0, 1.013_25).unwrap() - 0.068_7).abs() < 1e-4);
    }

    proptest! {
        #[test]
        fn colder_air_never_presses_more(gauge in 0.0..10.0f64, a in -40.0..80.0f64, b in -40.0..80.0f64) {
            let after = |celsius| after_cooling(gauge, 20.0, celsius, 1.013).unwrap();
            prop_assert!(after(a.min(b)) <= after(a.max(b)));
        }

        #[test]
        fn the_leak_that_was_put_in_comes_out(leak in -0.3..0.3f64, cooling in -20.0..20.0f64) {
            let found = decay_of(&readings(12, leak, cooling)).leak.unwrap();
            prop_assert!((found.bar_per_h - leak).abs() < 1e-9);
            prop_assert!(found.low <= found.bar_per_h && found.bar_per_h <= found.high);
        }

        #[test]
        fn no_readings_panic(values in prop::collection::vec(any::<(f64, f64, f64)>(), 0..12), a in any::<f64>(), b in any::<f64>()) {
            let readings: Vec<_> = values.iter().map(|&(minutes, gauge_bar, celsius)| PackerReading { minutes, gauge_bar, celsius }).collect();
            let _ = decay(&readings, a, b);
        }
    }
}
