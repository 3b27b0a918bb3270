//! Wall thickness of a lining after ASTM F1216, appendix X1: a check for a licensed engineer, not a design.
//!
//! The standard's inch-pound constants are used and every value converted exactly: its SI text rounds them (0.00064 MPa
//! for 0.093 psi), so that both texts differ by up to 0.2 %.

use serde::{Deserialize, Serialize};

use super::Refused;
use super::field::{Allowed, Field};
use crate::maths;

/// An inch in millimetres, exact (NIST SP 811, 2008, B.8).
pub const INCH_MM: f64 = 25.4;
/// A foot in metres, exact (NIST SP 811, 2008, B.8).
pub const FOOT_M: f64 = 0.3048;
/// A pound-force in newtons, exact: 0.45359237 kg × 9.80665 m/s² (NIST SP 811, 2008, B.8).
pub const POUND_FORCE_N: f64 = 0.453_592_37 * 9.806_65;
/// A pound-force per square inch in kilopascals, exact to the last bit.
pub const PSI_KPA: f64 = POUND_FORCE_N / (0.0254 * 0.0254) / 1e3;

/// Water above the invert, psi per foot: 62.4 lb/ft³ / 144 in²/ft².
const WATER_PSI_PER_FT: f64 = 62.4 / 144.0;
/// Water above the crown in the total load, psi per foot, as the standard prints it.
const WATER_IN_LOAD_PSI_PER_FT: f64 = 0.433;
/// The least stiffness `E/(12·DR³)`, psi.
const LEAST_STIFFNESS_PSI: f64 = 0.093;

pub const OVALITY_PCT: Field = Field::from("ovality_pct", "%", 0.0, 50.0);
pub const CONDITION: Field =
    Field::other("condition", "", Allowed::OneOf(&["partially_deteriorated", "fully_deteriorated"]));
pub const INSIDE_DIAMETER_MM: Field = Field::above("inside_diameter_mm", "mm", 0.0, 10_000.0);
pub const MODULUS_LONG_TERM_MPA: Field = Field::above("modulus_long_term_mpa", "MPa", 0.0, 1e6);
pub const MODULUS_INITIAL_MPA: Field = Field::above("modulus_initial_mpa", "MPa", 0.0, 1e6);
pub const FLEXURAL_STRENGTH_MPA: Field = Field::above("flexural_strength_mpa", "MPa", 0.0, 1e5);
pub const SAFETY_FACTOR: Field = Field::from("safety_factor", "", 1.0, 20.0);
pub const ENHANCEMENT_FACTOR: Field = Field::above("enhancement_factor", "", 0.0, 50.0);
pub const POISSON_RATIO: Field = Field::from("poisson_ratio", "", 0.0, 0.5);
pub const GROUNDWATER_ABOVE_INVERT_M: Field = Field::from("groundwater_above_invert_m", "m", 0.0, 500.0);
const FULLY: &str = "for fully_deteriorated";
pub const COVER_ABOVE_CROWN_M: Field = Field::above("cover_above_crown_m", "m", 0.0, 500.0).needed(FULLY);
pub const GROUNDWATER_ABOVE_CROWN_M: Field = Field::from("groundwater_above_crown_m", "m", 0.0, 500.0).needed(FULLY);
pub const SOIL_UNIT_WEIGHT_KN_M3: Field = Field::above("soil_unit_weight_kn_m3", "kN/m³", 0.0, 100.0).needed(FULLY);
pub const LIVE_LOAD_KPA: Field = Field::from("live_load_kpa", "kPa", 0.0, 1e5).needed(FULLY);
pub const SOIL_MODULUS_MPA: Field = Field::above("soil_modulus_mpa", "MPa", 0.0, 1e5).needed(FULLY);
pub const EDITION: Field = Field::other("edition", "", Allowed::OneOf(&["f1216-07b", "f1216-07a"])).needed(FULLY);

/// Where the formulas come from.
pub const SOURCE: &str = "ASTM F1216, appendix X1 (edition named in the result), formulas read in M. Najafi, Trenchless \
    Technology Piping (2010), sec. 2.7; inch-pound constants, converted by NIST SP 811 (2008)";

/// Where the ovality factor comes from.
pub const OVALITY_SOURCE: &str =
    "ASTM F1216, X1.2.1, read with its table in M. Najafi, Trenchless Technology Piping (2010), sec. 2.7";

/// Which edition's equation for the fully deteriorated pipe.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum Edition {
    /// The ovality factor stands inside the root.
    #[serde(rename = "f1216-07b")]
    F1216_07b,
    /// The ovality factor stands before the root.
    #[serde(rename = "f1216-07a")]
    F1216_07a,
}

/// The pipe and the lining.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Lining {
    pub inside_diameter_mm: f64,
    pub ovality_pct: f64,
    pub modulus_long_term_mpa: f64,
    pub modulus_initial_mpa: f64,
    /// Short or long term, as the user gives it.
    pub flexural_strength_mpa: f64,
    pub safety_factor: f64,
    pub enhancement_factor: f64,
    pub poisson_ratio: f64,
    pub groundwater_above_invert_m: f64,
}

/// What the ground does to a pipe that carries no load any more.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Ground {
    pub cover_above_crown_m: f64,
    pub groundwater_above_crown_m: f64,
    pub soil_unit_weight_kn_m3: f64,
    pub live_load_kpa: f64,
    pub soil_modulus_mpa: f64,
    pub edition: Edition,
}

/// The thicknesses that each limit asks for, and the greatest of them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Wall {
    pub groundwater_kpa: f64,
    pub buckling_mm: f64,
    pub bending_mm: f64,
    pub stiffness_mm: f64,
    pub full: Option<FullWall>,
    pub required_mm: f64,
    pub governs: &'static str,
}

/// The fully deteriorated pipe's part of it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FullWall {
    pub total_load_kpa: f64,
    pub buoyancy_factor: f64,
    pub elastic_support: f64,
    pub full_mm: f64,
    pub edition: Edition,
}

/// Returns the ovality reduction factor: `C = ((1 − q/100)/(1 + q/100)²)³`.
///
/// `q` ovality in percent, 0 to 50. No unit, no rounding; 1 for a round pipe, less for an oval one.
/// Errors: `OutOfRange` (`ovality_pct`).
/// Source: ASTM F1216, X1.2.1. Vectors: `fixtures/checks/ovality-factor.json`.
pub fn ovality_factor(ovality_pct: f64) -> Result<f64, Refused> {
    let q = OVALITY_PCT.check(ovality_pct)? / 100.0;
    let base = (1.0 - q) / ((1.0 + q) * (1.0 + q));
    Ok(base * base * base)
}

/// Returns the wall thickness that each limit asks for, in mm without rounding.
///
/// Buckling `t = D/((2·K·E_L·C/(P·N·(1−ν²)))^⅓ + 1)`; bending `1.5·q·(1+q)·DR² − 0.5·(1+q)·DR = σ/(P·N)` (0 for a round
/// pipe); least stiffness `E/(12·DR³) ≥ 0.093 psi` with the initial modulus, which the standard asks of the fully
/// deteriorated pipe and which counts here for both; with `ground`, the fully deteriorated pipe's buckling. `P` is the
/// water above the invert, 62.4 lb/ft³; without water, buckling and bending ask for nothing. `DR = D/t`, `q` as a
/// fraction. Bending uses the strength that the user gives.
///
/// Errors: `OutOfRange` with the field.
/// Source: [`SOURCE`]. Vectors: `fixtures/checks/wall-thickness.json`.
pub fn wall(lining: &Lining, ground: Option<&Ground>) -> Result<Wall, Refused> {
    let factor = ovality_factor(lining.ovality_pct)?;
    let checked = Checked::of(lining)?;
    let full = ground.map(|ground| full_wall(&checked, factor, ground)).transpose()?;
    let buckling_mm = buckling_in(&checked, factor) * INCH_MM;
    let bending_mm = bending_in(&checked) * INCH_MM;
    let stiffness_mm = stiffness_in(&checked) * INCH_MM;
    let full_mm = full.map_or(0.0, |full| full.full_mm);
    let limits = [("buckling", buckling_mm), ("bending", bending_mm), ("stiffness", stiffness_mm), ("full", full_mm)];
    let (governs, required_mm) =
        limits.into_iter().fold(("buckling", 0.0), |most, next| if next.1 > most.1 { next } else { most });
    let groundwater_kpa = checked.water_psi * PSI_KPA;
    Ok(Wall { groundwater_kpa, buckling_mm, bending_mm, stiffness_mm, full, required_mm, governs })
}

/// The lining in inches and psi, every field inside its range.
struct Checked {
    diameter_in: f64,
    ovality: f64,
    long_term_psi: f64,
    initial_psi: f64,
    strength_psi: f64,
    safety: f64,
    enhancement: f64,
    poisson: f64,
    water_psi: f64,
}

impl Checked {
    fn of(lining: &Lining) -> Result<Self, Refused> {
        let water_ft = GROUNDWATER_ABOVE_INVERT_M.check(lining.groundwater_above_invert_m)? / FOOT_M;
        Ok(Self {
            diameter_in: INSIDE_DIAMETER_MM.check(lining.inside_diameter_mm)? / INCH_MM,
            ovality: OVALITY_PCT.check(lining.ovality_pct)? / 100.0,
            long_term_psi: psi(MODULUS_LONG_TERM_MPA.check(lining.modulus_long_term_mpa)?),
            initial_psi: psi(MODULUS_INITIAL_MPA.check(lining.modulus_initial_mpa)?),
            strength_psi: psi(FLEXURAL_STRENGTH_MPA.check(lining.flexural_strength_mpa)?),
            safety: SAFETY_FACTOR.check(lining.safety_factor)?,
            enhancement: ENHANCEMENT_FACTOR.check(lining.enhancement_factor)?,
            poisson: POISSON_RATIO.check(lining.poisson_ratio)?,
            water_psi: water_ft * WATER_PSI_PER_FT,
        })
    }
}

fn psi(megapascal: f64) -> f64 {
    megapascal * 1e3 / PSI_KPA
}

fn buckling_in(lining: &Checked, factor: f64) -> f64 {
    if lining.water_psi <= 0.0 {
        return 0.0;
    }
    let restrained = 2.0 * lining.enhancement * lining.long_term_psi * factor;
    let load = lining.water_psi * lining.safety * (1.0 - lining.poisson * lining.poisson);
    lining.diameter_in / (maths::cbrt(restrained / load) + 1.0)
}

fn bending_in(lining: &Checked) -> f64 {
    if lining.water_psi <= 0.0 || lining.ovality <= 0.0 {
        return 0.0;
    }
    let square = 1.5 * lining.ovality * (1.0 + lining.ovality);
    let linear = 0.5 * (1.0 + lining.ovality);
    let share = lining.strength_psi / (lining.water_psi * lining.safety);
    let ratio = (linear + maths::sqrt(linear * linear + 4.0 * square * share)) / (2.0 * square);
    lining.diameter_in / ratio
}

fn stiffness_in(lining: &Checked) -> f64 {
    lining.diameter_in * maths::cbrt(12.0 * LEAST_STIFFNESS_PSI / lining.initial_psi)
}

/// Returns the fully deteriorated pipe's wall.
///
/// `q_t = 0.433·Hw + w·H·R_w/144 + W_s` (psi, ft, lb/ft³); `R_w = 1 − 0.33·Hw/H`, at least 0.67;
/// `B' = 1/(1 + 4·e^(−0.065·H))`; 07b: `q_t = (1/N)·√(32·R_w·B'·E'_s·C·E_L·I/D³)`; 07a: `C` before the root; `I = t³/12`.
/// The change between both editions is from memory.
fn full_wall(lining: &Checked, factor: f64, ground: &Ground) -> Result<FullWall, Refused> {
    let cover_ft = COVER_ABOVE_CROWN_M.check(ground.cover_above_crown_m)? / FOOT_M;
    let water_ft = GROUNDWATER_ABOVE_CROWN_M.check(ground.groundwater_above_crown_m)? / FOOT_M;
    let weight = SOIL_UNIT_WEIGHT_KN_M3.check(ground.soil_unit_weight_kn_m3)? * 1e3 * FOOT_M * FOOT_M * FOOT_M;
    let live_psi = LIVE_LOAD_KPA.check(ground.live_load_kpa)? / PSI_KPA;
    let soil_psi = psi(SOIL_MODULUS_MPA.check(ground.soil_modulus_mpa)?);
    let buoyancy_factor = (1.0 - 0.33 * water_ft / cover_ft).max(0.67);
    let elastic_support = 1.0 / (1.0 + 4.0 * maths::exp(-0.065 * cover_ft));
    let soil_load_psi = weight / POUND_FORCE_N * cover_ft * buoyancy_factor / 144.0;
    let load_psi = WATER_IN_LOAD_PSI_PER_FT * water_ft + soil_load_psi + live_psi;
    let (load_factor, root_factor) = match ground.edition {
        Edition::F1216_07b => (1.0, factor),
        Edition::F1216_07a => (factor, 1.0),
    };
    let needed = lining.safety * load_psi / load_factor;
    let support = 32.0 * buoyancy_factor * elastic_support * soil_psi * root_factor * lining.long_term_psi / 12.0;
    Ok(FullWall {
        total_load_kpa: load_psi * PSI_KPA,
        buoyancy_factor,
        elastic_support,
        full_mm: lining.diameter_in * maths::cbrt(needed * needed / support) * INCH_MM,
        edition: ground.edition,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn lining() -> Lining {
        Lining {
            inside_diameter_mm: 200.0,
            ovality_pct: 2.0,
            modulus_long_term_mpa: 862.0,
            modulus_initial_mpa: 1724.0,
            flexural_strength_mpa: 31.0,
            safety_factor: 2.0,
            enhancement_factor: 7.0,
            poisson_ratio: 0.3,
            groundwater_above_invert_m: 3.0,
        }
    }

    fn ground(edition: Edition) -> Ground {
        Ground {
            cover_above_crown_m: 3.0,
            groundwater_above_crown_m: 1.0,
            soil_unit_weight_kn_m3: 18.8,
            live_load_kpa: 5.0,
            soil_modulus_mpa: 5.0,
            edition,
        }
    }

    #[test]
    fn without_water_the_stiffness_governs() {
        let dry = wall(&Lining { groundwater_above_invert_m: 0.0, ..lining() }, None).unwrap();
        assert_eq!((dry.buckling_mm, dry.bending_mm, dry.governs), (0.0, 0.0, "stiffness"));
        assert_eq!(dry.required_mm, dry.stiffness_mm);
    }

    #[test]
    fn a_round_pipe_does_not_bend() {
        assert_eq!(wall(&Lining { ovality_pct: 0.0, ..lining() }, None).unwrap().bending_mm, 0.0);
    }

    #[test]
    fn the_older_edition_asks_for_more_when_the_pipe_is_oval_and_the_same_when_round() {
        let full = |ovality_pct, edition| {
            let lining = Lining { ovality_pct, ..lining() };
            wall(&lining, Some(&ground(edition))).unwrap().full.unwrap().full_mm
        };
        assert!(full(5.0, Edition::F1216_07a) > full(5.0, Edition::F1216_07b));
        assert_eq!(full(0.0, Edition::F1216_07a), full(0.0, Edition::F1216_07b));
    }

    #[test]
    fn the_buoyancy_factor_never_falls_below_0_67() {
        let flooded = Ground { groundwater_above_crown_m: 9.0, ..ground(Edition::F1216_07b) };
        assert_eq!(wall(&lining(), Some(&flooded)).unwrap().full.unwrap().buoyancy_factor, 0.67);
    }

    proptest! {
        #[test]
        fn more_water_never_asks_for_less(a in 0.0..50.0f64, b in 0.0..50.0f64) {
            let at = |water| wall(&Lining { groundwater_above_invert_m: water, ..lining() }, None).unwrap().required_mm;
            prop_assert!(at(a.max(b)) >= at(a.min(b)));
        }

        #[test]
        fn more_oval_never_carries_more(a in 0.0..50.0f64, b in 0.0..50.0f64) {
            prop_assert!(ovality_factor(a.max(b)).unwrap() <= ovality_factor(a.min(b)).unwrap());
        }

        #[test]
        fn the_wall_that_is_asked_for_carries_the_water(
            diameter in 80.0..1000.0f64, water in 0.1..20.0f64, ovality_pct in 0.0..10.0f64,
        ) {
            let lining = Lining { inside_diameter_mm: diameter, groundwater_above_invert_m: water, ovality_pct, ..lining() };
            let found = wall(&lining, None).unwrap();
            let ratio = diameter / found.buckling_mm - 1.0;
            let carried = 2.0 * 7.0 * 862e3 / (1.0 - 0.09) / (ratio * ratio * ratio)
                * ovality_factor(ovality_pct).unwrap() / 2.0;
            prop_assert!((carried / found.groundwater_kpa - 1.0).abs() < 1e-9);
        }

        #[test]
        fn no_input_panics(values in prop::array::uniform9(any::<f64>())) {
            let [a, b, c, d, e, f, g, h, i] = values;
            let lining = Lining {
                inside_diameter_mm: a, ovality_pct: b, modulus_long_term_mpa: c, modulus_initial_mpa: d,
                flexural_strength_mpa: e, safety_factor: f, enhancement_factor: g, poisson_ratio: h,
                groundwater_above_invert_m: i,
            };
            if let Ok(found) = wall(&lining, None) {
                prop_assert!(found.required_mm.is_finite());
            }
        }
    }
}
