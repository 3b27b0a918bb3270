//! The pressure window: between which gauge pressures the patch is pressed and nothing is overloaded.

use serde::{Deserialize, Serialize};

use super::Refused;
use super::refused::{not_negative, on_a_gauge};
use crate::units::{Length, Pressure};

/// The pressure of fresh water per metre of head: 1000 kg/m³ × 9.80665 m/s² = 0.0980665 bar/m.
pub const WATER_BAR_PER_M: f64 = 0.098_066_5;

/// What the sheets say from below.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Least {
    pub gauge_pa: Pressure,
    /// Against the pipe wall, after the groundwater has pushed back.
    pub net_pa: Pressure,
    pub source: String,
}

/// One limit from above, with the part that it protects.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Limit {
    /// E.g. "packer P-07 at 199 mm", "patch", "host pipe", "contract".
    pub name: String,
    pub most_pa: Pressure,
    pub source: String,
}

/// What sets the lower limit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum LowGoverns {
    LeastGauge,
    LeastNetAndWater,
}

/// The window, gauge; both limits belong to it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Window {
    pub low_pa: Pressure,
    pub low_governs: LowGoverns,
    pub high_pa: Pressure,
    /// The name of the limit that governs; of equals the first.
    pub high_governs: String,
    /// The pressure of the water above the invert.
    pub water_pa: Pressure,
}

impl Window {
    /// Says whether a gauge pressure lies inside; a reading on a limit is inside.
    pub fn holds(&self, gauge: Pressure) -> bool {
        (self.low_pa..=self.high_pa).contains(&gauge)
    }

    /// Returns the lower limit as it may be printed: rounded up to 0.01 bar, never too low.
    pub fn printed_low(&self) -> Pressure {
        hundredths_up(self.low_pa)
    }

    /// Returns the upper limit as it may be printed: rounded down to 0.01 bar, never too high.
    pub fn printed_high(&self) -> Pressure {
        Pressure::from_pa(self.high_pa.as_pa().div_euclid(1000).saturating_mul(1000))
    }
}

fn hundredths_up(pressure: Pressure) -> Pressure {
    Pressure::from_pa(pressure.as_pa().saturating_add(999).div_euclid(1000).saturating_mul(1000))
}

/// Returns the pressure of a head of fresh water: `p = 0.0980665 bar/m × head`, rounded up to the pascal.
///
/// Errors: `OutOfRange` for a head below zero or above 1000 m.
/// Source: NIST SP 811 (2008), B.8, metre of water (conventional). Vectors: `fixtures/checks/net-pressure.json`.
pub fn water_pressure(head: Length) -> Result<Pressure, Refused> {
    let head_um = not_negative("head above the invert", head)?.as_um();
    if head_um > 1_000_000_000 {
        return Err(Refused::out_of_range("head above the invert", "must be at most 1000 m"));
    }
    // 9806.65 Pa/m, counted in units of 1e-8 Pa so that no digit is lost.
    let scaled = i128::from(head_um) * 980_665;
    Ok(Pressure::from_pa(((scaled + 99_999_999) / 100_000_000) as i64))
}

/// Returns the net pressure on the wall: gauge less the water above the invert, rounded down to the pascal.
///
/// Below zero the water wins. Errors: those of [`water_pressure`].
/// Source: design rule of this project. Vectors: `fixtures/checks/net-pressure.json`.
pub fn net_pressure(gauge: Pressure, head: Length) -> Result<Pressure, Refused> {
    Ok(Pressure::from_pa(gauge.as_pa().saturating_sub(water_pressure(head)?.as_pa())))
}

/// Returns the window: low = max(least gauge, least net + 0.0980665 bar/m × head), high = min over the limits.
///
/// The computed lower limit is rounded up to 0.01 bar; a typed one stays as typed. Of equal lower limits the least gauge
/// governs.
///
/// Errors: `NoUpperLimit`; `WindowEmpty` with both sides named; `OutOfRange` for a pressure below zero or a limit that is
/// not above zero; `SourceMissing`; those of [`water_pressure`].
/// Source: design rule of this project; the water's weight as in [`water_pressure`].
pub fn pressure_window(least: &Least, head: Length, limits: &[Limit]) -> Result<Window, Refused> {
    least_is_sound(least)?;
    let water_pa = water_pressure(head)?;
    let against_water = hundredths_up(Pressure::from_pa(least.net_pa.as_pa().saturating_add(water_pa.as_pa())));
    let (low_pa, low_governs) = if least.gauge_pa >= against_water {
        (least.gauge_pa, LowGoverns::LeastGauge)
    } else {
        (against_water, LowGoverns::LeastNetAndWater)
    };
    let high = lowest(limits)?;
    if low_pa > high.most_pa {
        let low_by = match low_governs {
            LowGoverns::LeastGauge => "least gauge",
            LowGoverns::LeastNetAndWater => "least net and water",
        };
        let (low_by, high_by) = (low_by.into(), high.name.clone());
        return Err(Refused::WindowEmpty { low_pa, low_by, high_pa: high.most_pa, high_by });
    }
    Ok(Window { low_pa, low_governs, high_pa: high.most_pa, high_governs: high.name.clone(), water_pa })
}

fn least_is_sound(least: &Least) -> Result<(), Refused> {
    if least.source.trim().is_empty() {
        return Err(Refused::SourceMissing { field: "least pressure".into() });
    }
    let zero = Pressure::from_pa(0);
    let (gauge, net) = (on_a_gauge("least gauge", least.gauge_pa)?, on_a_gauge("least net", least.net_pa)?);
    if gauge < zero || net < zero {
        return Err(Refused::out_of_range("least pressure", "must not be below 0"));
    }
    Ok(())
}

fn lowest(limits: &[Limit]) -> Result<&Limit, Refused> {
    for limit in limits {
        if limit.source.trim().is_empty() {
            return Err(Refused::SourceMissing { field: limit.name.clone() });
        }
        if on_a_gauge(&limit.name, limit.most_pa)? <= Pressure::from_pa(0) {
            return Err(Refused::out_of_range(&limit.name, "must be above 0"));
        }
    }
    limits.iter().min_by_key(|limit| limit.most_pa).ok_or(Refused::NoUpperLimit)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn bar(value: f64) -> Pressure {
        Pressure::from_bar(value).unwrap()
    }

    fn head(metres: f64) -> Length {
        Length::from_m(metres).unwrap()
    }

    fn least(gauge: f64, net: f64) -> Least {
        Least { gauge_pa: bar(gauge), net_pa: bar(net), source: "invented patch sheet, p. 2".into() }
    }

    fn limits(values: &[(&str, f64)]) -> Vec<Limit> {
        let limit =
            |&(name, most): &(&str, f64)| Limit { name: name.into(), most_pa: bar(most), source: "label".into() };
        values.iter().map(limit).collect()
    }

    #[test]
    fn the_worked_example_is_1_10_to_1_40_bar() {
        let limits = limits(&[("packer at 199 mm", 1.50), ("patch", 1.60), ("host pipe", 1.40), ("contract", 1.50)]);
        let window = pressure_window(&least(1.10, 0.90), head(0.80), &limits).unwrap();
        assert_eq!((window.low_pa, window.low_governs), (bar(1.10), LowGoverns::LeastGauge));
        assert_eq!((window.high_pa, window.high_governs.as_str()), (bar(1.40), "host pipe"));
        assert_eq!(window.water_pa, Pressure::from_pa(7846));
    }

    #[test]
    fn deep_groundwater_lifts_the_lower_limit_and_it_is_rounded_up() {
        let window = pressure_window(&least(1.10, 0.90), head(2.60), &limits(&[("packer", 1.35)])).unwrap();
        assert_eq!((window.low_pa, window.low_governs), (bar(1.16), LowGoverns::LeastNetAndWater));
    }

    #[test]
    fn printed_limits_are_never_too_wide() {
        let typed = limits(&[("packer", 1.409)]);
        let window = pressure_window(&least(1.101, 0.0), head(0.0), &typed).unwrap();
        assert_eq!((window.printed_low(), window.printed_high()), (bar(1.11), bar(1.40)));
        assert!(window.holds(bar(1.101)) && !window.holds(bar(1.100)));
    }

    #[test]
    fn an_empty_window_names_both_sides() {
        let refusal = pressure_window(&least(1.10, 0.90), head(8.0), &limits(&[("host pipe", 1.40)])).unwrap_err();
        let Refused::WindowEmpty { low_by, high_by, .. } = refusal else { panic!("{refusal}") };
        assert_eq!((low_by.as_str(), high_by.as_str()), ("least net and water", "host pipe"));
        assert!(pressure_window(&least(1.40, 0.0), head(0.0), &limits(&[("host pipe", 1.40)])).is_ok());
        assert_eq!(pressure_window(&least(1.10, 0.90), head(0.8), &[]), Err(Refused::NoUpperLimit));
    }

    #[test]
    fn water_heads_match_published_values() {
        // NIST SP 811 (2008), B.8: 1 m of water (conventional) = 9.806 65 kPa.
        assert_eq!(water_pressure(head(1.0)), Ok(Pressure::from_pa(9807)));
        assert_eq!(water_pressure(head(100.0)), Ok(Pressure::from_pa(980_665)));
        assert!(water_pressure(head(-0.1)).is_err());
    }

    #[test]
    fn net_pressure_is_never_too_high() {
        assert_eq!(net_pressure(bar(1.0), head(1.0)), Ok(Pressure::from_pa(90_193)));
        assert_eq!(net_pressure(bar(0.0), head(1.0)), Ok(Pressure::from_pa(-9_807)));
    }

    proptest! {
        #[test]
        fn no_pressures_panic(a in any::<(i64, i64, i64, i64)>()) {
            let pa = Pressure::from_pa;
            let least = Least { gauge_pa: pa(a.0), net_pa: pa(a.1), source: "label".into() };
            let limit = Limit { name: "packer".into(), most_pa: pa(a.2), source: "label".into() };
            if let Ok(window) = pressure_window(&least, Length::from_um(a.3), &[limit]) {
                prop_assert!(window.printed_low() >= window.low_pa && window.printed_high() <= window.high_pa);
            }
            let _ = net_pressure(pa(a.0), Length::from_um(a.3));
        }

        #[test]
        fn more_water_never_lowers_the_window(a in 0i64..50_000_000, b in 0i64..50_000_000) {
            let low = |head| pressure_window(&least(1.0, 0.9), Length::from_um(head), &limits(&[("packer", 9.0)])).unwrap().low_pa;
            prop_assert!(low(a.max(b)) >= low(a.min(b)));
        }
    }
}
