//! Equivalent age: what time at the read temperatures is worth at a reference temperature.

use super::Refused;
use super::field::{Allowed, Field};
use super::sheet_rows::ZERO_CELSIUS_K;
use crate::maths;

/// Where the formula comes from.
pub const SOURCE: &str =
    "ASTM C1074, equivalent age in its Arrhenius form, 273.15 K for 0 °C; used for resin by analogy";

pub const ACTIVATION_KELVIN: Field = Field::above("activation_kelvin", "K", 0.0, 50_000.0);
pub const REFERENCE_C: Field = Field::from("reference_c", "°C", -100.0, 300.0);
const SEGMENT_MINUTES: Field = Field::from("minutes", "min", 0.0, 1e6);
const SEGMENT_CELSIUS: Field = Field::from("temperature", "°C", -100.0, 300.0);
pub const SEGMENTS: Field = Field::other("segments", "", Allowed::Rows(&[SEGMENT_MINUTES, SEGMENT_CELSIUS]));

/// Returns how many minutes at the reference one minute at `celsius` is worth.
fn rate(activation_kelvin: f64, reference_c: f64, celsius: f64) -> Result<f64, Refused> {
    let activation = ACTIVATION_KELVIN.check(activation_kelvin)?;
    let reference = REFERENCE_C.check(reference_c)? + ZERO_CELSIUS_K;
    let kelvin = SEGMENT_CELSIUS.check(celsius)? + ZERO_CELSIUS_K;
    Ok(maths::exp(-activation * (1.0 / kelvin - 1.0 / reference)))
}

/// Returns the equivalent age in minutes: `te = Σ exp(−Q·(1/Ti − 1/Tr))·Δti`, from segments of (minutes, °C).
///
/// `Q` in kelvin, temperatures from −100 to 300 °C. No rounding; 0 without segments.
/// Errors: `OutOfRange` with the field, also for a sum too large to be a number.
/// Source: [`SOURCE`]. Vectors: `fixtures/checks/equivalent-age.json`.
pub fn equivalent_minutes(activation_kelvin: f64, reference_c: f64, segments: &[(f64, f64)]) -> Result<f64, Refused> {
    let mut age = 0.0;
    for &(minutes, celsius) in segments {
        age += rate(activation_kelvin, reference_c, celsius)? * SEGMENT_MINUTES.check(minutes)?;
    }
    if age.is_finite() { Ok(age) } else { Err(Refused::out_of_range("segments", "add up to more than can be stored")) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn age(segments: &[(f64, f64)]) -> Result<f64, Refused> {
        equivalent_minutes(5000.0, 20.0, segments)
    }

    #[test]
    fn at_the_reference_a_minute_is_a_minute() {
        assert_eq!(age(&[(60.0, 20.0)]), Ok(60.0));
        assert_eq!(age(&[]), Ok(0.0));
    }

    #[test]
    fn what_no_resin_does_is_refused() {
        for activation_kelvin in [0.0, -1.0, f64::NAN, f64::INFINITY] {
            let found = equivalent_minutes(activation_kelvin, 20.0, &[(1.0, 10.0)]);
            assert!(matches!(found, Err(Refused::OutOfRange { .. })));
        }
        assert!(age(&[(-1.0, 10.0)]).is_err());
        assert!(age(&[(1.0, -273.15)]).is_err());
    }

    proptest! {
        #[test]
        fn warmer_ages_faster(a in -30.0f64..60.0, b in -30.0f64..60.0) {
            prop_assert!(age(&[(1.0, a.max(b))]).unwrap() >= age(&[(1.0, a.min(b))]).unwrap());
        }
    }
}
