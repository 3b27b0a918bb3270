//! Required hold: how long the pressure has to stay before release.

use super::Refused;
use super::sheet_rows::{Row, SafeSide, interpolate, knots};
use crate::units::{Span, Temperature};

/// Returns the hold that the sheet asks for at the coldest reading of pipe and water.
///
/// Between points `ln t` against `1/T`; warmer than the last row: that row's time, for nothing says that a warmer pipe
/// needs less. Rounded up to the whole minute.
///
/// Errors: `ColderThanSheet`; those of [`knots`].
/// Source: the resin's data sheet; the choice of the coldest is a design rule of this project.
pub fn required_hold(rows: &[Row], coldest: Temperature) -> Result<Span, Refused> {
    let knots = knots(rows)?;
    let last = knots.last().ok_or(Refused::RowsMissing)?;
    let minutes = interpolate(&knots, coldest.as_celsius().min(last.celsius), SafeSide::Longer)?;
    Ok(whole_minutes_up(minutes))
}

/// Returns the required hold over every reading so far, oldest first: it only grows, and a colder reading counts back to
/// the start.
///
/// `None` without readings. Errors: those of [`required_hold`] at the coldest.
pub fn required_hold_so_far(rows: &[Row], readings: &[Temperature]) -> Result<Option<Span>, Refused> {
    readings.iter().min().map(|coldest| required_hold(rows, *coldest)).transpose()
}

/// Returns the span in whole minutes, rounded up. The last bit of the exponential (1e-9 min) does not make a minute.
pub(super) fn whole_minutes_up(minutes: f64) -> Span {
    Span::from_ms((minutes - 1e-9).ceil() as i64 * 60_000)
}

#[cfg(test)]
mod tests {
    use super::super::sheet_rows::tests::{celsius, minutes, point};
    use super::*;
    use proptest::prelude::*;

    fn rows() -> Vec<Row> {
        vec![point(10.0, 75.0), point(15.0, 48.0)]
    }

    #[test]
    fn a_cold_pipe_asks_for_whole_minutes_rounded_up() {
        assert_eq!(required_hold(&rows(), celsius(12.8)), Ok(minutes(59.0)));
        assert_eq!(required_hold(&rows(), celsius(13.0)), Ok(minutes(58.0)));
    }

    #[test]
    fn warmer_than_the_sheet_gains_nothing_and_colder_is_refused() {
        assert_eq!(required_hold(&rows(), celsius(30.0)), Ok(minutes(48.0)));
        assert!(matches!(required_hold(&rows(), celsius(9.9)), Err(Refused::ColderThanSheet { .. })));
    }

    #[test]
    fn a_colder_reading_makes_it_grow_and_a_warmer_one_does_not_shrink_it() {
        let so_far =
            |read: &[f64]| required_hold_so_far(&rows(), &read.iter().map(|c| celsius(*c)).collect::<Vec<_>>());
        assert_eq!(so_far(&[]), Ok(None));
        assert!(so_far(&[14.0, 12.0]).unwrap() > so_far(&[14.0]).unwrap());
        assert_eq!(so_far(&[14.0, 12.0, 14.9]), so_far(&[14.0, 12.0]));
    }

    proptest! {
        #[test]
        fn colder_never_needs_less(a in 10_000i64..40_000, b in 10_000i64..40_000) {
            let (cold, warm) = (Temperature::from_millicelsius(a.min(b)), Temperature::from_millicelsius(a.max(b)));
            prop_assert!(required_hold(&rows(), cold).unwrap() >= required_hold(&rows(), warm).unwrap());
        }
    }
}
