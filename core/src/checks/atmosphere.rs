//! Air readings against limits: the contract's, or those of a named regulation.

use super::Refused;
use super::field::{Allowed, Field};

pub const OXYGEN_PCT: Field = Field::from("oxygen_pct", "% by volume", 0.0, 100.0);
pub const FLAMMABLE_PCT_LFL: Field = Field::from("flammable_pct_lfl", "% of the lower flammable limit", 0.0, 1000.0);
pub const HYDROGEN_SULFIDE_PPM: Field = Field::from("hydrogen_sulfide_ppm", "ppm", 0.0, 1e6);
pub const CARBON_MONOXIDE_PPM: Field = Field::from("carbon_monoxide_ppm", "ppm", 0.0, 1e6);
pub const OXYGEN_MIN_PCT: Field = Field::from("oxygen_min_pct", "% by volume", 0.0, 100.0).needed("optional");
pub const OXYGEN_MAX_PCT: Field = Field::from("oxygen_max_pct", "% by volume", 0.0, 100.0).needed("optional");
pub const LIMITS_SOURCE: Field = Field::other("source", "", Allowed::Text);
pub const LIMITS: Field = Field::other(
    "limits",
    "",
    Allowed::Object(&[
        OXYGEN_MIN_PCT,
        OXYGEN_MAX_PCT,
        FLAMMABLE_PCT_LFL,
        HYDROGEN_SULFIDE_PPM,
        CARBON_MONOXIDE_PPM,
        LIMITS_SOURCE,
    ]),
)
.needed("optional");

pub const SOURCE: &str = "29 CFR 1910.146(b) for oxygen and flammables, its Appendix E for the alarms";

/// What the meter shows.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Air {
    pub oxygen_pct: f64,
    pub flammable_pct_lfl: f64,
    pub hydrogen_sulfide_ppm: f64,
    pub carbon_monoxide_ppm: f64,
}

/// From where on nobody goes in. Oxygen may be exactly at its limits; the others alarm at theirs.
#[derive(Clone, Debug, PartialEq)]
pub struct Limits {
    pub oxygen_min_pct: f64,
    pub oxygen_max_pct: f64,
    pub flammable_pct_lfl: f64,
    pub hydrogen_sulfide_ppm: f64,
    pub carbon_monoxide_ppm: f64,
    pub source: String,
}

impl Limits {
    /// Returns the limits of 29 CFR 1910.146 and its Appendix E: oxygen 19.5 to 23.5 %, 10 % LFL, 10 ppm H2S, 35 ppm CO.
    pub fn regulation() -> Self {
        Self {
            oxygen_min_pct: 19.5,
            oxygen_max_pct: 23.5,
            flammable_pct_lfl: 10.0,
            hydrogen_sulfide_ppm: 10.0,
            carbon_monoxide_ppm: 35.0,
            source: SOURCE.into(),
        }
    }

    fn checked(&self) -> Result<(), Refused> {
        let least = OXYGEN_MIN_PCT.check(self.oxygen_min_pct)?;
        if OXYGEN_MAX_PCT.check(self.oxygen_max_pct)? < least {
            return Err(Refused::out_of_range(OXYGEN_MAX_PCT.name, "must not be below oxygen_min_pct"));
        }
        FLAMMABLE_PCT_LFL.check(self.flammable_pct_lfl)?;
        HYDROGEN_SULFIDE_PPM.check(self.hydrogen_sulfide_ppm)?;
        CARBON_MONOXIDE_PPM.check(self.carbon_monoxide_ppm)?;
        if self.source.trim().is_empty() {
            return Err(Refused::SourceMissing { field: "limits".into() });
        }
        Ok(())
    }
}

/// Returns the fields that alarm, in the order oxygen, flammables, hydrogen sulfide, carbon monoxide; none is acceptable.
///
/// Errors: `OutOfRange` with the field; `SourceMissing` for limits that nobody can name.
/// Source: the limits' own; see [`SOURCE`]. Vectors: `fixtures/checks/atmosphere.json`.
pub fn alarms(air: &Air, limits: &Limits) -> Result<Vec<&'static str>, Refused> {
    limits.checked()?;
    let oxygen = OXYGEN_PCT.check(air.oxygen_pct)?;
    let at_or_above = |field: &Field, read: f64, limit: f64| Ok::<_, Refused>(field.check(read)? >= limit);
    let found = [
        (OXYGEN_PCT.name, oxygen < limits.oxygen_min_pct || oxygen > limits.oxygen_max_pct),
        (FLAMMABLE_PCT_LFL.name, at_or_above(&FLAMMABLE_PCT_LFL, air.flammable_pct_lfl, limits.flammable_pct_lfl)?),
        (
            HYDROGEN_SULFIDE_PPM.name,
            at_or_above(&HYDROGEN_SULFIDE_PPM, air.hydrogen_sulfide_ppm, limits.hydrogen_sulfide_ppm)?,
        ),
        (
            CARBON_MONOXIDE_PPM.name,
            at_or_above(&CARBON_MONOXIDE_PPM, air.carbon_monoxide_ppm, limits.carbon_monoxide_ppm)?,
        ),
    ];
    Ok(found.into_iter().filter(|(_, alarm)| *alarm).map(|(name, _)| name).collect())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn fresh() -> Air {
        Air { oxygen_pct: 20.9, flammable_pct_lfl: 0.0, hydrogen_sulfide_ppm: 0.0, carbon_monoxide_ppm: 0.0 }
    }

    #[test]
    fn everything_that_alarms_is_named() {
        let bad =
            Air { oxygen_pct: 18.0, flammable_pct_lfl: 10.0, hydrogen_sulfide_ppm: 10.0, carbon_monoxide_ppm: 35.0 };
        let found = alarms(&bad, &Limits::regulation()).unwrap();
        assert_eq!(found, ["oxygen_pct", "flammable_pct_lfl", "hydrogen_sulfide_ppm", "carbon_monoxide_ppm"]);
        assert_eq!(alarms(&fresh(), &Limits::regulation()), Ok(vec![]));
    }

    #[test]
    fn the_contracts_limits_count_and_need_a_source() {
        let strict = Limits { hydrogen_sulfide_ppm: 5.0, source: "contract C.2.1".into(), ..Limits::regulation() };
        let air = Air { hydrogen_sulfide_ppm: 6.0, ..fresh() };
        assert_eq!(alarms(&air, &strict), Ok(vec!["hydrogen_sulfide_ppm"]));
        let nameless = Limits { source: String::new(), ..strict };
        assert!(matches!(alarms(&air, &nameless), Err(Refused::SourceMissing { .. })));
    }

    #[test]
    fn a_meter_that_shows_nonsense_is_refused() {
        for oxygen_pct in [-0.1, 100.1, f64::NAN] {
            assert!(alarms(&Air { oxygen_pct, ..fresh() }, &Limits::regulation()).is_err());
        }
    }
}
