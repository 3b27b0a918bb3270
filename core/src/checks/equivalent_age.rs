//! Equivalent age: what time at the read temperatures is worth at a reference temperature.

use serde::{Deserialize, Serialize};

use super::Refused;
use super::required_hold::whole_minutes_up;
use super::sheet_rows::ZERO_CELSIUS_K;
use crate::maths;
use crate::units::{Span, Temperature};

/// How fast a resin ages, from its sheet.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Ageing {
    /// Activation energy divided by the gas constant, `Q = Ea/R`, in kelvin; above 0, at most 50 000.
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
    /// Errors: `OutOfRange` for `Q` outside 0…50 000 K, or a temperature at or below absolute zero.
    /// Source: ASTM C1074 (equivalent age, Arrhenius form), used for resin by analogy. Vectors:
    /// `fixtures/checks/equivalent-age.json`.
    pub fn rate(&self, at: Temperature) -> Result<f64, Refused> {
        self.rate_at(at.as_celsius())
    }

    fn rate_at(&self, celsius: f64) -> Result<f64, Refused> {
        if !(self.activation_kelvin > 0.0 && self.activation_kelvin <= 50_000.0) {
            return Err(Refused::out_of_range("activation_kelvin", "must be above 0 and at most 50 000 K"));
        }
        let (kelvin, reference) = (kelvin(celsius)?, kelvin(self.reference_millicelsius.as_celsius())?);
        Ok(maths::exp(-self.activation_kelvin * (1.0 / kelvin - 1.0 / reference)))
    }
}

fn kelvin(celsius: f64) -> Result<f64, Refused> {
    let kelvin = celsius + ZERO_CELSIUS_K;
    if kelvin > 0.0 { Ok(kelvin) } else { Err(Refused::out_of_range("temperature", "must be above absolute zero")) }
}

/// Returns the equivalent age in minutes at the reference temperature: `te = Σ exp(−Q·(1/Ti − 1/Tr))·Δti`.
///
/// No rounding; 0 without stretches. Errors: those of [`Ageing::rate`]; `OutOfRange` for a negative stretch or a sum too
/// large to store.
/// Source: ASTM C1074 (equivalent age, Arrhenius form). Vectors: `fixtures/checks/equivalent-age.json`.
pub fn equivalent_age(ageing: &Ageing, stretches: &[Stretch]) -> Result<f64, Refused> {
    let mut age = 0.0;
    for stretch in stretches {
        let lasts = super::refused::span_not_negative("a stretch", stretch.lasts_ms)?;
        age += ageing.rate(stretch.at_millicelsius)? * lasts.as_min();
    }
    if age.is_finite() { Ok(age) } else { Err(Refused::out_of_range("equivalent age", "is too large to store")) }
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
