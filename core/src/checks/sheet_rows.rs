//! A data sheet's times against temperature: points or ranges, and what lies between them.

use serde::{Deserialize, Serialize};

use super::Refused;
use super::field::{Allowed, Field};
use crate::maths;
use crate::units::{Span, Temperature};

/// Zero Celsius in kelvin, exact by definition (NIST SP 811, 2008, B.1.1).
pub const ZERO_CELSIUS_K: f64 = 273.15;

/// Where the interpolation comes from.
pub const SOURCE: &str =
    "Arrhenius rate law: ln t straight against 1/T between two points, never outside (design rule)";

const SHEET_CELSIUS: Field = Field::from("sheet temperature", "°C", -100.0, 300.0);
const SHEET_MINUTES: Field = Field::above("sheet minutes", "min", 0.0, 1e6);
pub const SHEET: Field = Field::other("sheet", "", Allowed::Rows(&[SHEET_CELSIUS, SHEET_MINUTES]));
pub const SHEET_TEMPERATURE_C: Field = Field::from("temperature_c", "°C", -100.0, 300.0);

/// A row of a data sheet's table: a time at one temperature, or one time for a range.
///
/// A single figure "at reference temperature" is a range whose source says for which temperatures it holds.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "kind", rename_all = "snake_case", deny_unknown_fields)]
pub enum Row {
    Point { at_millicelsius: Temperature, lasts_ms: Span },
    Range { from_millicelsius: Temperature, to_millicelsius: Temperature, lasts_ms: Span, source: String },
}

/// Which value counts where two rows meet at one temperature.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SafeSide {
    /// The shorter, for a working time.
    Shorter,
    /// The longer, for a hold.
    Longer,
}

/// A row's end: a temperature and the time that holds there.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Knot {
    pub celsius: f64,
    pub minutes: f64,
}

/// Returns the rows as points in rising temperature; a range gives its two ends.
///
/// Rows come coldest first; a row may begin where the one before it ends.
///
/// Errors: those of [`checked`]; `SourceMissing` for a range that doesn't say where it comes from.
/// Source: design rule of this project.
pub fn knots(rows: &[Row]) -> Result<Vec<Knot>, Refused> {
    let mut knots: Vec<Knot> = Vec::with_capacity(rows.len() * 2);
    let mut numbers = Vec::with_capacity(rows.len() * 2);
    for (index, row) in rows.iter().enumerate() {
        for knot in ends(row, index + 1)? {
            knots.push(knot);
            numbers.push(index + 1);
        }
    }
    checked(&knots, |index| numbers.get(index).copied().unwrap_or(index))?;
    Ok(knots)
}

fn ends(row: &Row, number: usize) -> Result<Vec<Knot>, Refused> {
    let knot = |at: Temperature, lasts: Span| Knot { celsius: at.as_celsius(), minutes: lasts.as_min() };
    match row {
        Row::Point { at_millicelsius, lasts_ms } => Ok(vec![knot(*at_millicelsius, *lasts_ms)]),
        Row::Range { source, .. } if source.trim().is_empty() => {
            Err(Refused::SourceMissing { field: format!("row {number} of the data sheet") })
        }
        Row::Range { from_millicelsius, to_millicelsius, lasts_ms, .. } => {
            Ok(vec![knot(*from_millicelsius, *lasts_ms), knot(*to_millicelsius, *lasts_ms)])
        }
    }
}

/// Says whether the points can be a sheet's; `number` gives the row that a point stands in.
///
/// Errors: `RowsMissing`; `RowNotPositive`; `RowsOutOfOrder`; `RowLongerWhenWarmer` (resin sets faster when warmer, so
/// it is a slip of typing); `OutOfRange` outside −100 to 300 °C or above a million minutes, NaN and infinities too.
pub fn checked(knots: &[Knot], number: impl Fn(usize) -> usize) -> Result<(), Refused> {
    if knots.is_empty() {
        return Err(Refused::RowsMissing);
    }
    let mut before: Option<Knot> = None;
    for (index, knot) in knots.iter().enumerate() {
        let row = number(index);
        SHEET_CELSIUS.check(knot.celsius)?;
        if knot.minutes <= 0.0 {
            return Err(Refused::RowNotPositive { row });
        }
        SHEET_MINUTES.check(knot.minutes)?;
        match before {
            Some(before) if knot.celsius < before.celsius => return Err(Refused::RowsOutOfOrder { row }),
            Some(before) if knot.minutes > before.minutes => return Err(Refused::RowLongerWhenWarmer { row }),
            _ => before = Some(*knot),
        }
    }
    Ok(())
}

/// Returns the time in minutes at a temperature inside the table: `ln t` runs straight against `1/T` between two points.
///
/// `t` in minutes, `T` in kelvin. On a row's own temperature the row's time comes back exactly; where two rows meet, the
/// one on the safe side. No rounding. The points have passed [`checked`].
///
/// Errors: `ColderThanSheet`, `WarmerThanSheet`, `RowsMissing`; `OutOfRange` for a temperature that is none.
/// Source: Arrhenius rate law, common practice for resin and concrete; between the sheet's rows only (design rule of this
/// project). Vectors: `fixtures/checks/working-time.json`.
pub fn interpolate(knots: &[Knot], celsius: f64, side: SafeSide) -> Result<f64, Refused> {
    let (Some(first), Some(last)) = (knots.first(), knots.last()) else { return Err(Refused::RowsMissing) };
    let read_millicelsius = stored(SHEET_TEMPERATURE_C.check(celsius)?);
    if celsius < first.celsius {
        return Err(Refused::ColderThanSheet { read_millicelsius, first_millicelsius: stored(first.celsius) });
    }
    if celsius > last.celsius {
        return Err(Refused::WarmerThanSheet { read_millicelsius, last_millicelsius: stored(last.celsius) });
    }
    let here = knots.iter().filter(|knot| knot.celsius == celsius).map(|knot| knot.minutes);
    let exact = match side {
        SafeSide::Shorter => here.reduce(f64::min),
        SafeSide::Longer => here.reduce(f64::max),
    };
    let around = |pair: &[Knot]| match pair {
        [cold, warm] if cold.celsius < celsius && celsius < warm.celsius => Some(between(*cold, *warm, celsius)),
        _ => None,
    };
    exact.or_else(|| knots.windows(2).find_map(around)).ok_or(Refused::RowsMissing)
}

fn stored(celsius: f64) -> Temperature {
    Temperature::from_celsius(celsius).unwrap_or_default()
}

fn between(cold: Knot, warm: Knot, celsius: f64) -> f64 {
    let (a, b) = (inverse_kelvin(cold.celsius), inverse_kelvin(warm.celsius));
    let share = (inverse_kelvin(celsius) - a) / (b - a);
    let (ln_cold, ln_warm) = (maths::ln(cold.minutes), maths::ln(warm.minutes));
    maths::exp(ln_cold + share * (ln_warm - ln_cold)).clamp(warm.minutes, cold.minutes)
}

fn inverse_kelvin(celsius: f64) -> f64 {
    1.0 / (celsius + ZERO_CELSIUS_K)
}

#[cfg(test)]
pub(super) mod tests {
    use super::*;

    pub fn celsius(value: f64) -> Temperature {
        Temperature::from_celsius(value).unwrap()
    }

    pub fn minutes(value: f64) -> Span {
        Span::from_min(value).unwrap()
    }

    pub fn point(at: f64, lasts: f64) -> Row {
        Row::Point { at_millicelsius: celsius(at), lasts_ms: minutes(lasts) }
    }

    pub fn range(from: f64, to: f64, lasts: f64) -> Row {
        Row::Range {
            from_millicelsius: celsius(from),
            to_millicelsius: celsius(to),
            lasts_ms: minutes(lasts),
            source: "invented sheet, table 2".into(),
        }
    }

    #[test]
    fn a_row_gives_its_own_time_exactly() {
        let knots = knots(&[point(15.0, 45.0), point(20.0, 30.0)]).unwrap();
        assert_eq!(interpolate(&knots, 15.0, SafeSide::Shorter), Ok(45.0));
        assert_eq!(interpolate(&knots, 20.0, SafeSide::Shorter), Ok(30.0));
    }

    #[test]
    fn where_two_ranges_meet_the_safe_side_counts() {
        let knots = knots(&[range(10.0, 15.0, 60.0), range(15.0, 20.0, 40.0)]).unwrap();
        assert_eq!(interpolate(&knots, 15.0, SafeSide::Shorter), Ok(40.0));
        assert_eq!(interpolate(&knots, 15.0, SafeSide::Longer), Ok(60.0));
        assert!((interpolate(&knots, 12.0, SafeSide::Shorter).unwrap() - 60.0).abs() < 1e-9);
    }

    #[test]
    fn rows_that_cannot_be_right_are_refused() {
        assert_eq!(knots(&[]), Err(Refused::RowsMissing));
        assert_eq!(knots(&[point(20.0, 30.0), point(15.0, 45.0)]), Err(Refused::RowsOutOfOrder { row: 2 }));
        assert_eq!(knots(&[point(15.0, 30.0), point(20.0, 45.0)]), Err(Refused::RowLongerWhenWarmer { row: 2 }));
        assert_eq!(knots(&[point(15.0, 0.0)]), Err(Refused::RowNotPositive { row: 1 }));
        assert_eq!(knots(&[range(20.0, 10.0, 30.0)]), Err(Refused::RowsOutOfOrder { row: 1 }));
        let unsourced = Row::Range {
            from_millicelsius: celsius(5.0),
            to_millicelsius: celsius(25.0),
            lasts_ms: minutes(30.0),
            source: " ".into(),
        };
        assert!(matches!(knots(&[unsourced]), Err(Refused::SourceMissing { .. })));
    }
}
