//! Water test of a line after EN 1610, method W: how much may be added in 30 minutes.

use std::f64::consts::PI;

use super::Refused;
use super::air_test::{DN_MM, LENGTH_M};
use super::field::{Allowed, Field};

pub const SOURCE: &str = "EN 1610, method W, 30 ± 1 min, read as quoted by a clay pipe maker's page";

pub const SCOPE: Field = Field::other("scope", "", Allowed::OneOf(&["pipes", "pipes_and_manholes", "manholes"]));

/// What is tested.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Scope {
    Pipes,
    PipesAndManholes,
    Manholes,
}

impl Scope {
    /// Returns the scope of that name, or `None`.
    pub fn named(name: &str) -> Option<Self> {
        match name {
            "pipes" => Some(Self::Pipes),
            "pipes_and_manholes" => Some(Self::PipesAndManholes),
            "manholes" => Some(Self::Manholes),
            _ => None,
        }
    }

    /// Returns the allowance in litres per square metre of wetted inside surface.
    pub fn allowance_l_m2(self) -> f64 {
        match self {
            Self::Pipes => 0.15,
            Self::PipesAndManholes => 0.20,
            Self::Manholes => 0.40,
        }
    }
}

/// Returns the water that may be added in 30 min: `V = w·π·DN·L`, litres, without rounding.
///
/// `w` allowance (l/m²), `DN` in m here, `L` the wetted length in m. Errors: `OutOfRange` with the field.
/// Source: [`SOURCE`]. Vectors: `fixtures/checks/water-test-en1610.json`.
pub fn allowed_l(dn_mm: f64, length_m: f64, scope: Scope) -> Result<f64, Refused> {
    let (dn_m, length) = (DN_MM.check(dn_mm)? / 1e3, LENGTH_M.check(length_m)?);
    Ok(scope.allowance_l_m2() * PI * dn_m * length)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_line_with_its_manholes_may_lose_a_third_more() {
        let one = |scope| allowed_l(200.0, 30.0, scope).unwrap();
        assert!((one(Scope::PipesAndManholes) / one(Scope::Pipes) - 4.0 / 3.0).abs() < 1e-12);
        assert!(allowed_l(0.0, 30.0, Scope::Pipes).is_err());
    }
}
