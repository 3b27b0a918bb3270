//! Working time: how long the mixed resin stays workable.

use serde::{Deserialize, Serialize};

use super::Refused;
use super::sheet_rows::{Knot, Row, SafeSide, interpolate, knots};
use crate::units::{Mass, Span, Temperature};

/// The three temperatures that bear on the working time.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Temperatures {
    pub resin_millicelsius: Temperature,
    pub air_millicelsius: Temperature,
    pub pipe_millicelsius: Temperature,
}

/// Which of the three was read.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Place {
    Resin,
    Air,
    Pipe,
}

impl Temperatures {
    /// Returns each place with its temperature, in the order resin, air, pipe.
    pub fn each(&self) -> [(Place, Temperature); 3] {
        [
            (Place::Resin, self.resin_millicelsius),
            (Place::Air, self.air_millicelsius),
            (Place::Pipe, self.pipe_millicelsius),
        ]
    }

    /// Returns the warmest place and its temperature; of equals the first in the order resin, air, pipe.
    pub fn warmest(&self) -> (Place, Temperature) {
        let resin = (Place::Resin, self.resin_millicelsius);
        self.each().into_iter().fold(resin, |warmest, next| if next.1 > warmest.1 { next } else { warmest })
    }
}

/// What a resin sheet says about its working time.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct WorkingTimeSheet {
    pub rows: Vec<Row>,
    pub least_resin_millicelsius: Option<Temperature>,
    pub most_resin_millicelsius: Option<Temperature>,
    /// The greatest batch that the rows hold for.
    pub most_batch_mg: Option<Mass>,
}

/// A working time with the reading that governs it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct WorkingTime {
    pub lasts_ms: Span,
    pub warmest: Place,
    pub warmest_millicelsius: Temperature,
}

/// Returns the working time of a batch: the sheet's row at the warmest of resin, air and pipe.
///
/// Rounded down to the whole second. Errors: those of [`working_time`]; `ResinTooCold`, `ResinTooWarm`, `BatchTooHeavy`
/// where the sheet names a limit; `OutOfRange` for a batch that weighs nothing.
/// Source: the resin's data sheet; the choice of the warmest is a design rule of this project.
pub fn working_time_of_batch(
    sheet: &WorkingTimeSheet,
    read: &Temperatures,
    batch: Mass,
) -> Result<WorkingTime, Refused> {
    resin_within(sheet, read.resin_millicelsius)?;
    batch_within(sheet, batch)?;
    let (warmest, warmest_millicelsius) = read.warmest();
    Ok(WorkingTime { lasts_ms: working_time(&sheet.rows, warmest_millicelsius)?, warmest, warmest_millicelsius })
}

fn resin_within(sheet: &WorkingTimeSheet, read: Temperature) -> Result<(), Refused> {
    if let Some(least) = sheet.least_resin_millicelsius.filter(|least| read < *least) {
        return Err(Refused::ResinTooCold { read_millicelsius: read, least_millicelsius: least });
    }
    match sheet.most_resin_millicelsius {
        Some(most) if read > most => Err(Refused::ResinTooWarm { read_millicelsius: read, most_millicelsius: most }),
        _ => Ok(()),
    }
}

fn batch_within(sheet: &WorkingTimeSheet, batch: Mass) -> Result<(), Refused> {
    if batch <= Mass::from_mg(0) {
        return Err(Refused::out_of_range("batch", "must weigh more than 0 g"));
    }
    match sheet.most_batch_mg {
        Some(most) if batch > most => Err(Refused::BatchTooHeavy { batch_mg: batch, most_mg: most }),
        _ => Ok(()),
    }
}

/// Returns the working time at the warmest temperature, on the safe side of the sheet.
///
/// Between points `ln t` against `1/T`; colder than the first row: that row's time, for nothing says that cold resin
/// stays workable longer. Rounded down to the whole second.
///
/// Errors: `WarmerThanSheet`; those of [`knots`].
/// Source: design rule of this project. Vectors: `fixtures/checks/working-time.json`.
pub fn working_time(rows: &[Row], warmest: Temperature) -> Result<Span, Refused> {
    let knots = knots(rows)?;
    clamped(&knots, warmest.as_celsius())
}

fn clamped(knots: &[Knot], warmest: f64) -> Result<Span, Refused> {
    let first = knots.first().ok_or(Refused::RowsMissing)?;
    let minutes = interpolate(knots, warmest.max(first.celsius), SafeSide::Shorter)?;
    Ok(whole_seconds_down(minutes))
}

fn whole_seconds_down(minutes: f64) -> Span {
    // A sheet's minutes are stored to the millisecond, so 1e-6 s only undoes the last bit of the multiplication.
    Span::from_ms((minutes * 60.0 + 1e-6).floor() as i64 * 1000)
}

/// Returns the warmest temperature at which the sheet still gives the needed time, rounded down to 0.1 °C.
///
/// `None` if even the coldest row is too short, or the rows are unusable. The answer is never above the last row, and
/// [`working_time`] at it is never below `needed`.
/// Source: inverse of [`working_time`].
pub fn temperature_giving(rows: &[Row], needed: Span) -> Option<Temperature> {
    let knots = knots(rows).ok()?;
    let (first, last) = (knots.first()?, knots.last()?);
    if clamped(&knots, first.celsius).ok()? < needed {
        return None;
    }
    // Tenths of a degree, halved until the boundary lies between two neighbours: the time never rises with warmth.
    let (mut enough, mut too_warm) = (tenths_down(first.celsius) - 1, tenths_down(last.celsius) + 1);
    while too_warm - enough > 1 {
        let middle = enough + (too_warm - enough) / 2;
        match clamped(&knots, from_tenths(middle).as_celsius()) {
            Ok(time) if time >= needed => enough = middle,
            _ => too_warm = middle,
        }
    }
    Some(from_tenths(enough))
}

fn tenths_down(celsius: f64) -> i64 {
    (celsius * 10.0 + 1e-6).floor() as i64
}

fn from_tenths(tenths: i64) -> Temperature {
    Temperature::from_millicelsius(tenths * 100)
}

/// Returns the places that must be cooled to `most`, with what was read there: the way out of a no go.
///
/// All three are looked at, because cooling the resin alone gains nothing in a warm pipe.
pub fn too_warm(read: &Temperatures, most: Temperature) -> Vec<(Place, Temperature)> {
    read.each().into_iter().filter(|(_, at)| *at > most).collect()
}

#[cfg(test)]
mod tests {
    use super::super::sheet_rows::tests::{celsius, minutes, point, range};
    use super::*;
    use proptest::prelude::*;

    fn sheet() -> WorkingTimeSheet {
        WorkingTimeSheet {
            rows: vec![point(15.0, 45.0), point(20.0, 30.0)],
            least_resin_millicelsius: Some(celsius(10.0)),
            most_resin_millicelsius: Some(celsius(25.0)),
            most_batch_mg: Mass::from_kg(2.0),
        }
    }

    fn temperatures(resin: f64, air: f64, pipe: f64) -> Temperatures {
        Temperatures {
            resin_millicelsius: celsius(resin),
            air_millicelsius: celsius(air),
            pipe_millicelsius: celsius(pipe),
        }
    }

    #[test]
    fn the_worked_example_gives_31_minutes_58_seconds() {
        let found = working_time_of_batch(&sheet(), &temperatures(19.2, 13.1, 12.8), Mass::from_mg(1_218_000)).unwrap();
        assert_eq!(found.warmest, Place::Resin);
        assert_eq!(found.lasts_ms, Span::from_ms((31 * 60 + 58) * 1000));
    }

    #[test]
    fn a_warm_pipe_governs_over_cool_resin() {
        assert_eq!(temperatures(15.0, 14.0, 19.0).warmest(), (Place::Pipe, celsius(19.0)));
        assert_eq!(temperatures(15.0, 15.0, 15.0).warmest().0, Place::Resin);
    }

    #[test]
    fn colder_than_the_sheet_gains_nothing_and_warmer_is_refused() {
        let rows = sheet().rows;
        assert_eq!(working_time(&rows, celsius(-5.0)), Ok(minutes(45.0)));
        assert!(matches!(working_time(&rows, celsius(20.001)), Err(Refused::WarmerThanSheet { .. })));
    }

    #[test]
    fn cold_resin_hot_resin_and_a_heavy_batch_are_refused() {
        let light = Mass::from_mg(1_000_000);
        let refusal =
            |resin, batch| working_time_of_batch(&sheet(), &temperatures(resin, 12.0, 12.0), batch).unwrap_err();
        assert!(matches!(refusal(9.9, light), Refused::ResinTooCold { .. }));
        assert!(matches!(refusal(25.1, light), Refused::ResinTooWarm { .. }));
        assert!(matches!(refusal(18.0, Mass::from_mg(2_000_001)), Refused::BatchTooHeavy { .. }));
        assert!(matches!(refusal(18.0, Mass::from_mg(0)), Refused::OutOfRange { .. }));
    }

    #[test]
    fn the_way_out_names_a_temperature_and_the_places_above_it() {
        let rows = sheet().rows;
        let most = temperature_giving(&rows, minutes(36.0)).unwrap();
        assert!(working_time(&rows, most).unwrap() >= minutes(36.0));
        assert!(working_time(&rows, celsius(most.as_celsius() + 0.1)).unwrap() < minutes(36.0));
        let warm: Vec<_> =
            too_warm(&temperatures(19.2, 21.0, 12.8), most).into_iter().map(|(place, _)| place).collect();
        assert_eq!(warm, [Place::Resin, Place::Air]);
        assert_eq!(temperature_giving(&rows, minutes(45.1)), None);
        assert_eq!(temperature_giving(&rows, minutes(5.0)), Some(celsius(20.0)));
        assert_eq!(temperature_giving(&[range(5.0, 25.0, 30.0)], minutes(30.0)), Some(celsius(25.0)));
    }

    proptest! {
        #[test]
        fn warmer_never_gives_longer(a in -20_000i64..20_000, b in -20_000i64..20_000) {
            let rows = vec![point(5.0, 80.0), point(15.0, 45.0), point(20.0, 30.0)];
            let (cold, warm) = (Temperature::from_millicelsius(a.min(b)), Temperature::from_millicelsius(a.max(b)));
            prop_assert!(working_time(&rows, warm).unwrap() <= working_time(&rows, cold).unwrap());
        }

        #[test]
        fn the_inverse_gives_at_least_what_was_asked(needed in 1i64..4_800_000) {
            let rows = vec![point(5.03, 80.0), range(10.0, 12.0, 55.0), point(20.07, 30.0)];
            let most = temperature_giving(&rows, Span::from_ms(needed)).unwrap();
            prop_assert!(working_time(&rows, most).unwrap() >= Span::from_ms(needed));
        }
    }
}
