//! A data sheet's times against temperature: points or ranges, and what lies between them.

use serde::{Deserialize, Serialize};

use super::Refused;
use crate::maths;
use crate::units::{Span, Temperature};

/// Zero Celsius in kelvin, exact by definition (NIST SP 811, 2008, B.1.1).
pub const ZERO_CELSIUS_K: f64 = 273.15;

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
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Knot {
    pub at: Temperature,
    pub lasts: Span,
}

/// Returns the rows as points in rising temperature; a range gives its two ends.
///
/// Rows come coldest first; a row may begin where the one before it ends.
///
/// Errors: `RowsMissing`; `RowNotPositive`; `RowsOutOfOrder`; `RowLongerWhenWarmer` (resin sets faster when warmer, so
/// it is a slip of typing); `SourceMissing` for a range that doesn't say where it comes from; `OutOfRange` at or below
/// absolute zero.
/// Source: design rule of this project.
pub fn knots(rows: &[Row]) -> Result<Vec<Knot>, Refused> {
    let mut knots: Vec<Knot> = Vec::with_capacity(rows.len() * 2);
    for (index, row) in rows.iter().enumerate() {
        let number = index + 1;
        for knot in ends(row, number)? {
            accept(knots.last(), knot, number)?;
            knots.push(knot);
        }
    }
    if knots.is_empty() { Err(Refused::RowsMissing) } else { Ok(knots) }
}

fn ends(row: &Row, number: usize) -> Result<Vec<Knot>, Refused> {
    match row {
        Row::Point { at_millicelsius, lasts_ms } => Ok(vec![Knot { at: *at_millicelsius, lasts: *lasts_ms }]),
        Row::Range { source, .. } if source.trim().is_empty() => {
            Err(Refused::SourceMissing { field: format!("row {number} of the data sheet") })
        }
        Row::Range { from_millicelsius, to_millicelsius, lasts_ms, .. } => {
            Ok(vec![Knot { at: *from_millicelsius, lasts: *lasts_ms }, Knot { at: *to_millicelsius, lasts: *lasts_ms }])
        }
    }
}

fn accept(before: Option<&Knot>, knot: Knot, row: usize) -> Result<(), Refused> {
    if knot.lasts <= Span::from_ms(0) {
        return Err(Refused::RowNotPositive { row });
    }
    if knot.at.as_celsius() <= -ZERO_CELSIUS_K {
        return Err(Refused::out_of_range("temperature of a row", "must be above absolute zero"));
    }
    match before {
        Some(before) if knot.at < before.at => Err(Refused::RowsOutOfOrder { row }),
        Some(before) if knot.lasts > before.lasts => Err(Refused::RowLongerWhenWarmer { row }),
        _ => Ok(()),
    }
}

/// Returns the time in minutes at a temperature inside the table: `ln t` runs straight against `1/T` between two points.
///
/// `t` in minutes, `T` in kelvin. On a row's own temperature the row's time comes back exactly; where two rows meet, the
/// one on the safe side. No rounding.
///
/// Errors: `ColderThanSheet`, `WarmerThanSheet`; those of [`knots`] come before.
/// Source: Arrhenius rate law, common practice for resin and concrete; between the sheet's rows only (design rule of this
/// project). Vectors: `fixtures/checks/working-time.json`.
pub fn interpolate(knots: &[Knot], at: Temperature, side: SafeSide) -> Result<f64, Refused> {
    let (Some(first), Some(last)) = (knots.first(), knots.last()) else {
        return Err(Refused::RowsMissing);
    };
    if at < first.at {
        return Err(Refused::ColderThanSheet { read_millicelsius: at, first_millicelsius: first.at });
    }
    if at > last.at {
        return Err(Refused::WarmerThanSheet { read_millicelsius: at, last_millicelsius: last.at });
    }
    let here = knots.iter().filter(|knot| knot.at == at).map(|knot| knot.lasts);
    let exact = match side {
        SafeSide::Shorter => here.min(),
        SafeSide::Longer => here.max(),
    };
    if let Some(lasts) = exact {
        return Ok(lasts.as_min());
    }
    let between = knots.windows(2).find_map(|pair| match pair {
        [cold, warm] if cold.at < at && at < warm.at => Some(between(*cold, *warm, at)),
        _ => None,
    });
    between.ok_or(Refused::RowsMissing)
}

fn between(cold: Knot, warm: Knot, at: Temperature) -> f64 {
    let (a, b) = (inverse_kelvin(cold.at), inverse_kelvin(warm.at));
    let share = (inverse_kelvin(at) - a) / (b - a);
    let (ln_cold, ln_warm) = (maths::ln(cold.lasts.as_min()), maths::ln(warm.lasts.as_min()));
    maths::exp(ln_cold + share * (ln_warm - ln_cold)).clamp(warm.lasts.as_min(), cold.lasts.as_min())
}

fn inverse_kelvin(at: Temperature) -> f64 {
    1.0 / (at.as_celsius() + ZERO_CELSIUS_K)
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
        assert_eq!(interpolate(&knots, celsius(15.0), SafeSide::Shorter), Ok(45.0));
        assert_eq!(interpolate(&knots, celsius(20.0), SafeSide::Shorter), Ok(30.0));
    }

    #[test]
    fn where_two_ranges_meet_the_safe_side_counts() {
        let knots = knots(&[range(10.0, 15.0, 60.0), range(15.0, 20.0, 40.0)]).unwrap();
        assert_eq!(interpolate(&knots, celsius(15.0), SafeSide::Shorter), Ok(40.0));
        assert_eq!(interpolate(&knots, celsius(15.0), SafeSide::Longer), Ok(60.0));
        assert!((interpolate(&knots, celsius(12.0), SafeSide::Shorter).unwrap() - 60.0).abs() < 1e-9);
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
