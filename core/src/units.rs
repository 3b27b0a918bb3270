//! Quantities that are recorded: integers, so that equal readings have equal bytes and equal hashes.
//!
//! A unit is named whenever a number goes in or out. Conversions from floating point round to the nearest step;
//! where a direction is safe, the caller rounds before it comes here. NaN and infinities become `None`.

use serde::{Deserialize, Serialize};

/// Defines a quantity stored as an integer count of its smallest step.
macro_rules! quantity {
    ($(#[$doc:meta])* $name:ident, $step:ident / $as_step:ident, { $($from:ident / $as:ident = $per:expr),+ $(,)? }) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
        #[serde(transparent)]
        pub struct $name(i64);

        impl $name {
            /// Returns the quantity of `steps` smallest steps.
            pub const fn $step(steps: i64) -> Self {
                Self(steps)
            }

            /// Returns the number of smallest steps.
            pub const fn $as_step(self) -> i64 {
                self.0
            }

            $(
                /// Returns the quantity to the nearest step, or `None` if it is not finite or too large to store.
                pub fn $from(value: f64) -> Option<Self> {
                    let steps = (value * $per).round();
                    (steps.is_finite() && steps.abs() < 9.0e15).then_some(Self(steps as i64))
                }

                /// Returns the quantity in the named unit.
                pub fn $as(self) -> f64 {
                    self.0 as f64 / $per
                }
            )+
        }
    };
}

quantity!(
    /// A length, to the nearest micrometre.
    Length, from_um / as_um, { from_mm / as_mm = 1e3, from_m / as_m = 1e6 }
);
quantity!(
    /// A pressure, to the nearest pascal; gauge or net as the name of the field says.
    Pressure, from_pa / as_pa, { from_bar / as_bar = 1e5, from_kpa / as_kpa = 1e3 }
);
quantity!(
    /// A mass, to the nearest milligram.
    Mass, from_mg / as_mg, { from_g / as_g = 1e3, from_kg / as_kg = 1e6 }
);
quantity!(
    /// A temperature, to the nearest thousandth of a degree Celsius.
    Temperature, from_millicelsius / as_millicelsius, { from_celsius / as_celsius = 1e3 }
);
quantity!(
    /// A span of time, to the nearest millisecond.
    Span, from_ms / as_ms, { from_s / as_s = 1e3, from_min / as_min = 60e3 }
);

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_length_survives_the_round_trip() {
        assert_eq!(Length::from_mm(196.5).map(Length::as_m), Some(0.1965));
    }

    #[test]
    fn what_is_not_finite_is_refused() {
        assert_eq!(Pressure::from_bar(f64::NAN), None);
        assert_eq!(Temperature::from_celsius(f64::INFINITY), None);
    }
}
