//! End thrust: how hard a blown-out end pushes. A number for keeping away, never a pass mark.

use std::f64::consts::PI;

use serde::{Deserialize, Serialize};

use super::Refused;
use super::packer_air::GAUGE_BAR;
use super::pressure_window::WATER_BAR_PER_M;
use super::refused::{not_negative, on_a_gauge, positive};
use super::wall::INSIDE_DIAMETER_MM;
use crate::units::{Length, Pressure};

/// Where the formula comes from.
pub const SOURCE: &str = "statics, pressure × area; a danger-zone number, never a pass mark";

/// The thrust on one end, in newtons, each part rounded up.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct EndThrust {
    pub from_air_n: i64,
    /// From water standing behind a packer that plugs the line.
    pub from_water_n: i64,
    pub total_n: i64,
}

/// Returns the thrust on one end: `F = π/4·ID²·p`, and `ρ·g·h·A` from water behind it.
///
/// `gauge` the air pressure, `inside_diameter` the largest measured, `water_behind` the depth above the invert (0 if the
/// line is not plugged). The water is taken at the invert, on the safe side. Rounded up to 1 N.
///
/// Errors: `OutOfRange` for a gauge pressure or a depth below zero, or a diameter not above zero; nothing above 100 m.
/// Source: statics, pressure × area; NIST SP 811 (2008), B.8 for the water. Vectors: `fixtures/checks/end-thrust.json`.
pub fn end_thrust(gauge: Pressure, inside_diameter: Length, water_behind: Length) -> Result<EndThrust, Refused> {
    if on_a_gauge("gauge pressure", gauge)? < Pressure::from_pa(0) {
        return Err(Refused::out_of_range("gauge pressure", "must not be below 0"));
    }
    let metres = at_most_100_m("inside diameter", positive("inside diameter", inside_diameter)?)?;
    let depth = at_most_100_m("water behind the packer", not_negative("water behind the packer", water_behind)?)?;
    let area = PI / 4.0 * metres * metres;
    let from_air_n = up(area * gauge.as_pa() as f64)?;
    let from_water_n = up(area * depth * WATER_BAR_PER_M * 1e5)?;
    Ok(EndThrust { from_air_n, from_water_n, total_n: from_air_n.saturating_add(from_water_n) })
}

/// Returns the air's thrust on one end in newtons, without rounding: `F = π/4·ID²·p`.
///
/// Errors: `OutOfRange` with the field. Source: [`SOURCE`]. Vectors: `fixtures/checks/end-thrust.json`.
pub fn force_n(gauge_bar: f64, inside_diameter_mm: f64) -> Result<f64, Refused> {
    let pascal = GAUGE_BAR.check(gauge_bar)? * 1e5;
    let metres = INSIDE_DIAMETER_MM.check(inside_diameter_mm)? / 1e3;
    Ok(PI / 4.0 * metres * metres * pascal)
}

fn at_most_100_m(field: &str, length: Length) -> Result<f64, Refused> {
    let metres = length.as_m();
    if metres <= 100.0 { Ok(metres) } else { Err(Refused::out_of_range(field, "must be at most 100 m")) }
}

fn up(newtons: f64) -> Result<i64, Refused> {
    if newtons < 9e15 { Ok(newtons.ceil() as i64) } else { Err(Refused::out_of_range("thrust", "is too large")) }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn thrust(bar: f64, mm: f64, water_m: f64) -> EndThrust {
        let (gauge, id) = (Pressure::from_bar(bar).unwrap(), Length::from_mm(mm).unwrap());
        end_thrust(gauge, id, Length::from_m(water_m).unwrap()).unwrap()
    }

    #[test]
    fn thrusts_match_values_computed_by_hand() {
        assert_eq!(thrust(1.0, 150.0, 0.0).total_n, 1768);
        assert_eq!(thrust(1.5, 200.0, 0.0).total_n, 4713);
        assert_eq!(thrust(1.0, 300.0, 0.0).total_n, 7069);
    }

    #[test]
    fn water_behind_a_plugging_packer_adds_to_it() {
        let found = thrust(1.32, 199.0, 0.40);
        assert_eq!(found.total_n, found.from_air_n + found.from_water_n);
        assert_eq!(found.from_water_n, 123);
    }

    #[test]
    fn no_diameter_no_answer() {
        let zero = Length::from_um(0);
        assert!(end_thrust(Pressure::from_pa(100_000), zero, zero).is_err());
        assert!(end_thrust(Pressure::from_pa(-1), Length::from_um(1), zero).is_err());
        assert!(end_thrust(Pressure::from_pa(1), Length::from_um(1), Length::from_um(-1)).is_err());
    }
}
