//! Equivalent age: what time at the read temperatures is worth at a reference temperature.

use serde::{Deserialize, Serialize};

use super::Refused;
use super::field::{Allowed, Field};
use super::required_hold::whole_minutes_up;
use super::sheet_rows::ZERO_CELSIUS_K;
use crate::maths;
use crate::units::{Span, Temperature};

/// Where the formula comes from.
pub const SOURCE: &str =
    "ASTM C1074, equivalent age in its Arrhenius form, 273.15 K for 0 °C; used for resin by analogy";

pub const ACTIVATION_KELVIN: Field = Field::above("activation_kelvin", "K", 0.0, 50_000.0);
pub const REFERENCE_C: Field = Field::from("reference_c", "°C", -100.0, 300.0);
const SEGMENT_MINUTES: Field = Field::from("minutes", "min", 0.0, 1e6);
const SEGMENT_CELSIUS: Field = Field::from("temperature", "°C", -100.0, 300.0);
pub const SEGMENTS: Field = Field::other("segments", "", Allowed::Rows(&[SEGMENT_MINUTES, SEGMENT_CELSIUS]));

/// How fast a resin ages, from its sheet.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Ageing {
    /// Activation energy divided by the gas constant, `Q = Ea/R`.
    pub activation_kelvin: f64,
    pub reference_millicelsius: Temperature,
}

/// A stretch of time at one temperature.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Stretch {
    pub lasts_ms: Span,
    pub at_millicelsius: Temperature,
}

impl Ageing {
    /// Returns how many minutes at the reference one minute at `at` is worth: `exp(−Q·(1/T − 1/Tr))`, T in kelvin.
    ///
    /// Errors: `OutOfRange` for `Q` or a temperature outside its range. Source: [`SOURCE`].
    pub fn rate(&self, at: Temperature) -> Result<f64, Refused> {
        rate(self.activation_kelvin, self.reference_millicelsius.as_celsius(), at.as_celsius())
    }
}

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

/// Returns the equivalent age in minutes of stretches of recorded time. As [`equivalent_minutes`].
pub fn equivalent_age(ageing: &Ageing, stretches: &[Stretch]) -> Result<f64, Refused> {
    let segments: Vec<_> =
        stretches.iter().map(|stretch| (stretch.lasts_ms.as_min(), stretch.at_millicelsius.as_celsius())).collect();
    equivalent_minutes(ageing.activation_kelvin, ageing.reference_millicelsius.as_celsius(), &segments)
}

/// Returns the required hold, lengthened where the resin has aged less than the sheet's reference hold by its end.
///
/// `sheet_hold` is the required hold from the sheet's rows, `needed_at_reference` the hold that the sheet asks for at the
/// reference temperature, `stretches` what has passed so far. The rest is taken at the coldest temperature read.
/// Rounded up to the whole minute. Never shorter than `sheet_hold`, however warm it was.
///
/// Errors: those of [`equivalent_age`].
/// Source: design rule of this project.
pub fn lengthened(
    sheet_hold: Span,
    needed_at_reference: Span,
    ageing: &Ageing,
    stretches: &[Stretch],
) -> Result<Span, Refused> {
    let Some(coldest) = stretches.iter().map(|stretch| stretch.at_millicelsius).min() else {
        return Ok(sheet_hold);
    };
    let passed: f64 = stretches.iter().map(|stretch| stretch.lasts_ms.as_min()).sum();
    let missing = needed_at_reference.as_min() - equivalent_age(ageing, stretches)?;
    if missing <= 0.0 {
        return Ok(sheet_hold);
    }
    let minutes = passed + missing / ageing.rate(coldest)?;
    if minutes.is_finite() && minutes < 1e9 {
        Ok(sheet_hold.max(whole_minutes_up(minutes)))
    } else {
        Err(Refused::out_of_range("equivalent age", "asks for a hold too long to store"))
    }
}

#[cfg(test)]
mod tests {
    use super::super::sheet_rows::tests::{celsius, minutes};
    use super::*;
    use proptest::prelude::*;

    fn ageing() -> Ageing {
        Ageing { activation_kelvin: 5000.0, reference_millicelsius: celsius(20.0) }
    }

    fn stretch(lasts: f64, at: f64) -> Stretch {
        Stretch { lasts_ms: minutes(lasts), at_millicelsius: celsius(at) }
    }

    #[test]
    fn at_the_reference_a_minute_is_a_minute() {
        assert_eq!(equivalent_age(&ageing(), &[stretch(60.0, 20.0)]), Ok(60.0));
        assert_eq!(equivalent_age(&ageing(), &[]), Ok(0.0));
    }

    #[test]
    fn cold_lengthens_the_hold_and_warmth_never_shortens_it() {
        let hold = |at| lengthened(minutes(60.0), minutes(60.0), &ageing(), &[stretch(30.0, at)]).unwrap();
        assert!(hold(12.0) > minutes(60.0));
        assert_eq!(hold(35.0), minutes(60.0));
        assert_eq!(lengthened(minutes(60.0), minutes(60.0), &ageing(), &[]), Ok(minutes(60.0)));
    }

    #[test]
    fn what_no_resin_does_is_refused() {
        for activation_kelvin in [0.0, -1.0, f64::NAN, f64::INFINITY] {
            let ageing = Ageing { activation_kelvin, ..ageing() };
            assert!(matches!(ageing.rate(celsius(10.0)), Err(Refused::OutOfRange { .. })));
        }
        assert!(equivalent_age(&ageing(), &[stretch(-1.0, 10.0)]).is_err());
        assert!(equivalent_age(&ageing(), &[stretch(1.0, -273.15)]).is_err());
    }

    proptest! {
        #[test]
        fn warmer_ages_faster(a in -30_000i64..60_000, b in -30_000i64..60_000) {
            let (cold, warm) = (Temperature::from_millicelsius(a.min(b)), Temperature::from_millicelsius(a.max(b)));
            prop_assert!(ageing().rate(warm).unwrap() >= ageing().rate(cold).unwrap());
        }
    }
}
