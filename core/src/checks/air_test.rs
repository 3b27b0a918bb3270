//! Low-pressure air tests of a line. The standards differ eightfold: a result always names its own.

use super::Refused;
use super::field::{Allowed, Field};
use super::wall::{FOOT_M, INCH_MM, INSIDE_DIAMETER_MM};
use crate::maths;

pub const F1417_SOURCE: &str = "ASTM F1417, table 2 and its formula, Q = 0.0015 ft³/(min·ft²)";
pub const EN1610_SOURCE: &str = "EN 1610, method L, read in the German federal guideline BFR Abwasser, annex A-2.5.2; \
    16/DN for dry concrete is from memory";

pub const LENGTH_M: Field = Field::above("length_m", "m", 0.0, 100_000.0);
pub const DROP_PSI: Field = Field::from("drop_psi", "psi", 0.5, 1.0);
/// Only where groundwater stands above the pipe: the test begins with so much more.
pub const START_PSI: Field = Field::above("start_psi", "psi", 0.0, 100.0).needed("groundwater stands above the pipe");
pub const GROUNDWATER_FT: Field =
    Field::from("groundwater_above_pipe_ft", "ft", 0.0, 100.0).needed("groundwater stands above the pipe");
pub const MOST_PSI: Field = Field::above("most_psi", "psi", 0.0, 100.0).needed("groundwater stands above the pipe");
pub const DN_MM: Field = Field::above("dn_mm", "mm", 0.0, 10_000.0);
pub const METHOD: Field = Field::other("method", "", Allowed::OneOf(&["LA", "LB", "LC", "LD"]));
pub const DRY_CONCRETE: Field = Field::other("dry_concrete", "", Allowed::YesNo);

/// An air test after ASTM F1417.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct F1417 {
    pub time_s: f64,
    /// Up to this length the time does not depend on the length.
    pub length_for_minimum_time_m: f64,
}

/// Returns the least time of the pressure drop: `T = 0.085·D·K/Q` for 1.0 psi, half of it for 0.5 psi.
///
/// `T` in s, `D` in inches, `L` in feet, `K = max(1, 0.000419·D·L)`, `Q = 0.0015`. No rounding.
/// Errors: `OutOfRange` with the field; the drop is 0.5 or 1.0 psi, nothing between.
/// Source: [`F1417_SOURCE`]. Vectors: `fixtures/checks/air-test-f1417.json`.
pub fn f1417(inside_diameter_mm: f64, length_m: f64, drop_psi: f64) -> Result<F1417, Refused> {
    let diameter_in = INSIDE_DIAMETER_MM.check(inside_diameter_mm)? / INCH_MM;
    let length_ft = LENGTH_M.check(length_m)? / FOOT_M;
    if drop_psi != 0.5 && drop_psi != 1.0 {
        return Err(Refused::out_of_range(DROP_PSI.name, "must be 0.5 or 1.0 psi"));
    }
    let factor = (0.000_419 * diameter_in * length_ft).max(1.0);
    Ok(F1417 {
        time_s: 0.085 * diameter_in * factor / 0.0015 * drop_psi,
        length_for_minimum_time_m: FOOT_M / (0.000_419 * diameter_in),
    })
}

/// An air test after EN 1610, method L.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct En1610 {
    pub start_pressure_mbar: f64,
    pub allowed_drop_mbar: f64,
    pub time_min: f64,
    /// To the nearest half minute up to 5 min, to the minute above; halves go up.
    pub time_rounded_min: f64,
}

/// Which pressure the test begins with.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Method {
    La,
    Lb,
    Lc,
    Ld,
}

impl Method {
    /// Returns the method of that name, or `None`.
    pub fn named(name: &str) -> Option<Self> {
        match name {
            "LA" => Some(Self::La),
            "LB" => Some(Self::Lb),
            "LC" => Some(Self::Lc),
            "LD" => Some(Self::Ld),
            _ => None,
        }
    }

    /// Returns the starting pressure and the allowed drop in mbar.
    pub fn pressures(self) -> (f64, f64) {
        match self {
            Self::La => (10.0, 2.5),
            Self::Lb => (50.0, 10.0),
            Self::Lc => (100.0, 15.0),
            Self::Ld => (200.0, 15.0),
        }
    }
}

/// Returns the test time: `t = (1/K_p)·ln(p0/(p0 − Δp))`, `K_p = 12/DN`, for dry concrete `16/DN`, at most 0.058.
///
/// `t` in min, `DN` in mm, pressures in mbar. Errors: `OutOfRange` (`dn_mm`).
/// Source: [`EN1610_SOURCE`]. Vectors: `fixtures/checks/air-test-en1610.json`.
pub fn en1610(dn_mm: f64, method: Method, dry_concrete: bool) -> Result<En1610, Refused> {
    let dn = DN_MM.check(dn_mm)?;
    let (start_pressure_mbar, allowed_drop_mbar) = method.pressures();
    let factor = (if dry_concrete { 16.0 } else { 12.0 } / dn).min(0.058);
    let time_min = maths::ln(start_pressure_mbar / (start_pressure_mbar - allowed_drop_mbar)) / factor;
    Ok(En1610 { start_pressure_mbar, allowed_drop_mbar, time_min, time_rounded_min: rounded(time_min) })
}

fn rounded(minutes: f64) -> f64 {
    if minutes <= 5.0 { (minutes * 2.0).round() / 2.0 } else { minutes.round() }
}

/// Returns the starting pressure raised for groundwater: `p + 0.43 psi/ft × head above the pipe's centre line`, psi.
///
/// Test pressures can kill: above `most_psi` (a city code read here says 10 psi in all) it is refused.
/// Errors: `OutOfRange` for a pressure outside 0…100 psi, a head outside 0…100 ft, or a sum above `most_psi`.
/// Source: City Code of Eldridge, Iowa (constants read); local codes win.
pub fn raised_for_groundwater(start_psi: f64, head_ft: f64, most_psi: f64) -> Result<f64, Refused> {
    let (start, head, most) = (START_PSI.check(start_psi)?, GROUNDWATER_FT.check(head_ft)?, MOST_PSI.check(most_psi)?);
    Field::above("raised test pressure", "psi", 0.0, most).check(start + 0.43 * head)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn a_drop_between_both_tables_is_refused() {
        assert!(f1417(200.0, 30.0, 0.75).is_err());
        assert!(f1417(200.0, 30.0, f64::NAN).is_err());
    }

    #[test]
    fn up_to_the_minimum_length_the_time_stays() {
        let long = f1417(200.0, 30.0, 1.0).unwrap().length_for_minimum_time_m;
        let time = |length| f1417(200.0, length, 1.0).unwrap().time_s;
        assert_eq!(time(long * 0.99), time(1.0));
        assert!(time(long * 1.01) > time(1.0));
    }

    #[test]
    fn times_are_rounded_to_half_minutes_up_to_five_and_to_minutes_above() {
        assert_eq!([4.74, 4.76, 5.0, 5.4, 5.6].map(rounded), [4.5, 5.0, 5.0, 5.0, 6.0]);
    }

    #[test]
    fn groundwater_raises_the_test_pressure_up_to_the_codes_limit() {
        // City Code of Eldridge, Iowa: 4.0 psi above 6 ft of groundwater is 6.58 psi, never above 10 psi.
        assert!((raised_for_groundwater(4.0, 6.0, 10.0).unwrap() - 6.58).abs() < 1e-12);
        assert!(raised_for_groundwater(4.0, 14.0, 10.0).is_err());
    }

    proptest! {
        #[test]
        fn a_longer_or_wider_line_never_takes_less(d in 50.0..1500.0f64, l in 1.0..500.0f64, more in 1.0..2.0f64) {
            let time = |d, l| f1417(d, l, 0.5).unwrap().time_s;
            prop_assert!(time(d * more, l) >= time(d, l) && time(d, l * more) >= time(d, l));
        }

        #[test]
        fn dry_concrete_never_takes_longer(dn in 50.0..3000.0f64) {
            let time = |dry| en1610(dn, Method::Lc, dry).unwrap().time_min;
            prop_assert!(time(true) <= time(false));
        }
    }
}
