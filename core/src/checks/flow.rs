//! Flow in a circular pipe: part-full flow, and how much a plugged line can store.

use std::f64::consts::PI;

use super::Refused;
use super::air_test::LENGTH_M;
use super::field::Field;
use super::wall::INSIDE_DIAMETER_MM;
use crate::maths;

pub const MANNING_SOURCE: &str =
    "Manning's equation in SI units with the geometry of a circular segment, common practice";
pub const STORAGE_SOURCE: &str =
    "geometry: volume of a circular pipe below a level surface, closed form (cylindrical wedge)";

pub const SLOPE: Field = Field::above("slope", "m/m", 0.0, 1.0);
pub const SLOPE_OR_LEVEL: Field = Field::from("slope", "m/m", 0.0, 1.0);
pub const MANNING_N: Field = Field::above("manning_n", "s/m^(1/3)", 0.0, 1.0);
pub const DEPTH_MM: Field = Field::from("depth_mm", "mm", 0.0, 10_000.0);
pub const INFLOW_L_S: Field = Field::above("inflow_l_s", "l/s", 0.0, 1e6);
pub const ALLOWED_DEPTH_M: Field = Field::above("allowed_depth_m", "m", 0.0, 500.0);

/// Part-full flow.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PartialFlow {
    pub velocity_m_s: f64,
    pub flow_l_s: f64,
    /// Flow divided by that of the full pipe; above 1 at about nine tenths of the depth.
    pub flow_to_full: f64,
}

/// Returns part-full flow: `v = R^⅔·√S/n`, `Q = v·A`, for a segment of the circle below `depth`.
///
/// `A = r²·(φ − sin φ·cos φ)`, `R = A/(2·r·φ)`, `φ = acos(1 − depth/r)`. No rounding; 0 for no depth.
/// Errors: `OutOfRange` with the field; the depth is at most the diameter.
/// Source: [`MANNING_SOURCE`]. Vectors: `fixtures/checks/partial-flow.json`.
pub fn partial_flow(
    inside_diameter_mm: f64,
    slope: f64,
    manning_n: f64,
    depth_mm: f64,
) -> Result<PartialFlow, Refused> {
    let radius = INSIDE_DIAMETER_MM.check(inside_diameter_mm)? / 2e3;
    let speed = maths::sqrt(SLOPE.check(slope)?) / MANNING_N.check(manning_n)?;
    let depth = DEPTH_MM.check(depth_mm)? / 1e3;
    if depth_mm > inside_diameter_mm {
        return Err(Refused::out_of_range(DEPTH_MM.name, "must not be above the inside diameter"));
    }
    let velocity = |phi: f64| {
        if phi <= 0.0 { 0.0 } else { maths::pow(segment_area(radius, phi) / (2.0 * radius * phi), 2.0 / 3.0) * speed }
    };
    let phi = half_angle(radius, depth);
    let (velocity_m_s, area) = (velocity(phi), segment_area(radius, phi));
    let full = velocity(PI) * PI * radius * radius;
    Ok(PartialFlow {
        velocity_m_s,
        flow_l_s: velocity_m_s * area * 1e3,
        flow_to_full: if full > 0.0 { velocity_m_s * area / full } else { 0.0 },
    })
}

/// Returns half the angle that the water surface spans, 0 to π.
fn half_angle(radius: f64, depth: f64) -> f64 {
    maths::acos((1.0 - depth / radius).clamp(-1.0, 1.0))
}

fn segment_area(radius: f64, phi: f64) -> f64 {
    radius * radius * (phi - maths::sin(phi) * maths::cos(phi))
}

/// What a plugged line can hold back.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Storage {
    pub storage_l: f64,
    pub minutes: f64,
}

/// A line upstream of a plug.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PluggedLine {
    pub inside_diameter_mm: f64,
    pub length_m: f64,
    pub slope: f64,
    pub inflow_l_s: f64,
    /// Above the invert at the plug.
    pub allowed_depth_m: f64,
}

/// Returns how much the line stores up to the allowed depth at the plug, and how long the inflow takes to fill it.
///
/// The surface is level and the line dry at the start; the volume of the pipe below the surface is summed along the line,
/// which ends at its length: `V = ∫ A(depth − S·x) dx`. Manholes and laterals don't count, on the safe side. No rounding.
/// Errors: `OutOfRange` with the field.
/// Source: [`STORAGE_SOURCE`]. Vectors: `fixtures/checks/time-to-surcharge.json`.
pub fn time_to_surcharge(line: &PluggedLine) -> Result<Storage, Refused> {
    let radius = INSIDE_DIAMETER_MM.check(line.inside_diameter_mm)? / 2e3;
    let (length, slope) = (LENGTH_M.check(line.length_m)?, SLOPE_OR_LEVEL.check(line.slope)?);
    let inflow = INFLOW_L_S.check(line.inflow_l_s)?;
    let depth = ALLOWED_DEPTH_M.check(line.allowed_depth_m)?;
    let storage_l = volume_m3(radius, length, slope, depth) * 1e3;
    Ok(Storage { storage_l, minutes: storage_l / inflow / 60.0 })
}

fn volume_m3(radius: f64, length: f64, slope: f64, depth: f64) -> f64 {
    let rise = slope * length;
    // A rise this small would lose the difference of two sums in their last digits; the middle is exact enough there.
    if rise < 1e-7 * radius {
        return segment_area(radius, half_angle(radius, depth - rise / 2.0)) * length;
    }
    (area_summed(radius, depth) - area_summed(radius, depth - rise)) / slope
}

/// Returns `∫ A dh` from the invert to `depth`: `r³·(sin φ − sin³φ/3 − φ·cos φ)`, and the full area above the crown.
fn area_summed(radius: f64, depth: f64) -> f64 {
    let phi = half_angle(radius, depth);
    let sine = maths::sin(phi);
    let inside = radius * radius * radius * (sine - sine * sine * sine / 3.0 - phi * maths::cos(phi));
    inside + PI * radius * radius * (depth - 2.0 * radius).max(0.0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn line() -> PluggedLine {
        PluggedLine { inside_diameter_mm: 200.0, length_m: 40.0, slope: 0.01, inflow_l_s: 0.5, allowed_depth_m: 0.3 }
    }

    #[test]
    fn half_full_runs_as_fast_as_full_and_carries_half() {
        let full = partial_flow(200.0, 0.01, 0.013, 200.0).unwrap();
        let half = partial_flow(200.0, 0.01, 0.013, 100.0).unwrap();
        assert!((half.velocity_m_s / full.velocity_m_s - 1.0).abs() < 1e-12);
        assert!((half.flow_to_full - 0.5).abs() < 1e-12 && (full.flow_to_full - 1.0).abs() < 1e-12);
    }

    #[test]
    fn no_water_no_flow_and_above_the_crown_is_refused() {
        assert_eq!(partial_flow(200.0, 0.01, 0.013, 0.0).unwrap().flow_l_s, 0.0);
        assert!(partial_flow(200.0, 0.01, 0.013, 200.1).is_err());
    }

    #[test]
    fn a_level_line_filled_to_the_crown_stores_its_whole_volume() {
        let full = PI * 0.1 * 0.1 * 40.0 * 1e3;
        let level = PluggedLine { slope: 0.0, allowed_depth_m: 0.2, ..line() };
        assert!((time_to_surcharge(&level).unwrap().storage_l - full).abs() < 1e-9);
        let deep = PluggedLine { allowed_depth_m: 5.0, ..line() };
        assert!((time_to_surcharge(&deep).unwrap().storage_l - full).abs() < 1e-9);
    }

    #[test]
    fn half_full_at_the_plug_stores_the_cylindrical_wedge() {
        // The wedge ("hoof of Archimedes") of radius r and height h holds 2/3·r²·h.
        let wedge = PluggedLine { allowed_depth_m: 0.1, length_m: 40.0, slope: 0.01, ..line() };
        let expected = 2.0 / 3.0 * 0.1 * 0.1 * (0.1 / 0.01) * 1e3;
        assert!((time_to_surcharge(&wedge).unwrap().storage_l - expected).abs() < 1e-9);
    }

    fn summed(line: &PluggedLine) -> f64 {
        let (radius, steps) = (line.inside_diameter_mm / 2e3, 20_000);
        let step = line.length_m / f64::from(steps);
        let depth = |i: i32| line.allowed_depth_m - line.slope * step * (f64::from(i) + 0.5);
        (0..steps).map(|i| segment_area(radius, half_angle(radius, depth(i).max(0.0))) * step * 1e3).sum()
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(64))]
        #[test]
        fn the_closed_form_agrees_with_plain_summing(
            inside_diameter_mm in 80.0..600.0f64, length_m in 1.0..200.0f64, slope in 0.0..0.1f64, allowed_depth_m in 0.01..3.0f64,
        ) {
            let line = PluggedLine { inside_diameter_mm, length_m, slope, inflow_l_s: 1.0, allowed_depth_m };
            let (closed, plain) = (time_to_surcharge(&line).unwrap().storage_l, summed(&line));
            prop_assert!((closed - plain).abs() <= 1e-3 * plain + 1e-6, "{} {}", closed, plain);
        }

        #[test]
        fn a_higher_allowed_depth_never_stores_less(a in 0.001..2.0f64, b in 0.001..2.0f64, slope in 0.0..0.2f64) {
            let stored = |allowed_depth_m| time_to_surcharge(&PluggedLine { allowed_depth_m, slope, ..line() }).unwrap().storage_l;
            prop_assert!(stored(a.max(b)) >= stored(a.min(b)) - 1e-9);
        }
    }
}
