//! The crew's own times: what its recorded wet-outs and pushes say about the next one.

use serde::{Deserialize, Serialize};

use super::Refused;
use super::refused::span_not_negative;
use crate::units::Span;

/// From so many records on, a crew's own times count.
pub const FEWEST_RECORDS: usize = 5;

/// More than this many records say no more; the newest are taken.
const MOST_RECORDS: usize = 500;

/// Where a time comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "from", rename_all = "snake_case")]
pub enum TimeSource {
    /// Entered by hand: fewer than five are recorded.
    Estimate { recorded: usize },
    /// The crew's own records.
    Records { recorded: usize },
}

/// How long a step takes this crew.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct CrewTime {
    pub median_ms: Span,
    /// Nine of ten took no longer; the plan counts with it.
    pub ninetieth_ms: Span,
    pub source: TimeSource,
}

/// Returns the median and the 90th percentile of a crew's records once there are five, the estimate before.
///
/// Records come oldest first; the newest 500 count. The median of an even number is the mean of the middle two, rounded up
/// to 1 ms; the percentile is the nearest rank, `⌈0.9·n⌉`, so that it is always a time that was really taken.
/// Errors: `OutOfRange` for a time below zero.
/// Source: design rule of this project (nearest-rank percentile).
pub fn crew_time(records: &[Span], estimate: Span) -> Result<CrewTime, Refused> {
    span_not_negative("estimate", estimate)?;
    let sorted = newest_sorted(records)?;
    let recorded = sorted.len();
    if recorded < FEWEST_RECORDS {
        let source = TimeSource::Estimate { recorded };
        return Ok(CrewTime { median_ms: estimate, ninetieth_ms: estimate, source });
    }
    let at = |rank: usize| sorted.get(rank).copied().unwrap_or(estimate.as_ms());
    let (low, high) = (at((recorded - 1) / 2), at(recorded / 2));
    Ok(CrewTime {
        median_ms: Span::from_ms(low + (high - low + 1) / 2),
        ninetieth_ms: Span::from_ms(at((recorded * 9).div_ceil(10) - 1)),
        source: TimeSource::Records { recorded },
    })
}

fn newest_sorted(records: &[Span]) -> Result<Vec<i64>, Refused> {
    let newest = records.get(records.len().saturating_sub(MOST_RECORDS)..).unwrap_or_default();
    let mut sorted = Vec::with_capacity(newest.len());
    for record in newest {
        sorted.push(span_not_negative("recorded time", *record)?.as_ms());
    }
    sorted.sort_unstable();
    Ok(sorted)
}

/// Returns the probability, in whole percent rounded down, that placement ends inside the working time.
///
/// `left_after_fixed` is the working time less connect and inflate and the margin; every recorded wet-out is paired with
/// every recorded push × loading factor, and the share that fits is multiplied by `n/(n + 1)`, n the shorter record: the
/// next one may be slower than all n before, by chance `1/(n + 1)`. So five records never promise more than 83 %.
/// `None` below five records of either. Errors: `OutOfRange` for a time below zero or a factor outside 100…1000 %.
/// Source: design rule of this project; the chance of a new extreme is distribution-free (order statistics).
pub fn chance_in_time(
    wet_outs: &[Span],
    pushes: &[Span],
    loading_factor_pct: u32,
    left_after_fixed: Span,
) -> Result<Option<u8>, Refused> {
    if !(100..=1000).contains(&loading_factor_pct) {
        return Err(Refused::out_of_range("loading factor", "must be 100 to 1000 %"));
    }
    let (wet_outs, pushes) = (newest_sorted(wet_outs)?, newest_sorted(pushes)?);
    let shorter = wet_outs.len().min(pushes.len());
    if shorter < FEWEST_RECORDS {
        return Ok(None);
    }
    let fits = |wet_out: i64| {
        // In hundredths of a millisecond, so that the factor rounds in nobody's favour.
        let left = i128::from(left_after_fixed.as_ms()) * 100 - i128::from(wet_out) * 100;
        pushes.partition_point(|push| i128::from(*push) * i128::from(loading_factor_pct) <= left)
    };
    let fitting: usize = wet_outs.iter().map(|wet_out| fits(*wet_out)).sum();
    let (pairs, possible) = (wet_outs.len() * pushes.len(), shorter + 1);
    Ok(u8::try_from(fitting * 100 * shorter / (pairs * possible)).ok())
}

#[cfg(test)]
mod tests {
    use super::super::sheet_rows::tests::minutes;
    use super::*;
    use proptest::prelude::*;

    fn spans(values: &[f64]) -> Vec<Span> {
        values.iter().map(|value| minutes(*value)).collect()
    }

    #[test]
    fn before_the_fifth_record_the_estimate_counts() {
        let found = crew_time(&spans(&[9.0, 10.0, 11.0, 12.0]), minutes(15.0)).unwrap();
        assert_eq!((found.median_ms, found.ninetieth_ms), (minutes(15.0), minutes(15.0)));
        assert_eq!(found.source, TimeSource::Estimate { recorded: 4 });
    }

    #[test]
    fn from_the_fifth_on_the_crews_own_times_count() {
        let five = crew_time(&spans(&[12.0, 9.0, 11.0, 10.0, 14.0]), minutes(15.0)).unwrap();
        assert_eq!((five.median_ms, five.ninetieth_ms), (minutes(11.0), minutes(14.0)));
        let ten: Vec<f64> = (1..=10).map(f64::from).collect();
        let ten = crew_time(&spans(&ten), minutes(15.0)).unwrap();
        assert_eq!((ten.median_ms, ten.ninetieth_ms), (minutes(5.5), minutes(9.0)));
    }

    #[test]
    fn five_records_never_promise_more_than_83_percent() {
        let (wet_outs, pushes) = (spans(&[10.0; 5]), spans(&[4.0; 5]));
        assert_eq!(chance_in_time(&wet_outs, &pushes, 125, minutes(15.0)), Ok(Some(83)));
        assert_eq!(chance_in_time(&wet_outs, &pushes, 125, Span::from_ms(minutes(15.0).as_ms() - 1)), Ok(Some(0)));
        assert_eq!(chance_in_time(&wet_outs, &pushes[..4], 125, minutes(15.0)), Ok(None));
    }

    #[test]
    fn half_of_the_pairs_is_half_of_the_promise() {
        let wet_outs = spans(&[8.0, 8.0, 8.0, 12.0, 12.0, 12.0]);
        let pushes = spans(&[4.0; 6]);
        // 18 of 36 pairs fit, 6/7 of a half is 42.86 %.
        assert_eq!(chance_in_time(&wet_outs, &pushes, 100, minutes(13.0)), Ok(Some(42)));
    }

    #[test]
    fn a_time_below_zero_is_refused() {
        assert!(crew_time(&[Span::from_ms(-1)], minutes(1.0)).is_err());
        assert!(crew_time(&[], Span::from_ms(-1)).is_err());
        assert!(chance_in_time(&[], &[], 99, minutes(1.0)).is_err());
    }

    proptest! {
        #[test]
        fn more_time_never_lowers_the_chance(
            wet_outs in prop::collection::vec(0i64..3_000_000, 5..30), pushes in prop::collection::vec(0i64..3_000_000, 5..30),
            a in -100_000i64..9_000_000, b in -100_000i64..9_000_000,
        ) {
            let spans = |values: &[i64]| values.iter().map(|ms| Span::from_ms(*ms)).collect::<Vec<_>>();
            let chance = |left: i64| chance_in_time(&spans(&wet_outs), &spans(&pushes), 130, Span::from_ms(left)).unwrap().unwrap();
            prop_assert!(chance(a.max(b)) >= chance(a.min(b)));
            prop_assert!(chance(i64::MAX / 200) < 100);
        }

        #[test]
        fn the_percentile_is_never_below_the_median(records in prop::collection::vec(0i64..9_000_000, 0..40)) {
            let records: Vec<_> = records.into_iter().map(Span::from_ms).collect();
            let found = crew_time(&records, minutes(10.0)).unwrap();
            prop_assert!(found.ninetieth_ms >= found.median_ms);
        }
    }
}
