//! The time budget: what is left of the working time once every step has had its share.

use serde::{Deserialize, Serialize};

use super::Refused;
use super::refused::span_not_negative;
use crate::units::Span;

/// The shares of the working time. None has a default: each is entered, measured or taken from the sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Shares {
    pub wet_out_ms: Span,
    /// The time of the test push.
    pub push_ms: Span,
    /// How much longer the loaded packer takes, in percent of the test push: 100 or more.
    pub loading_factor_pct: u32,
    pub connect_and_inflate_ms: Span,
    pub margin_ms: Span,
}

/// The budget with each part named; every part is a span, `spare_ms` may be below zero.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Budget {
    pub working_time_ms: Span,
    pub wet_out_ms: Span,
    /// The push of the loaded packer: test push × loading factor.
    pub loaded_push_ms: Span,
    pub connect_and_inflate_ms: Span,
    pub margin_ms: Span,
    pub spare_ms: Span,
}

/// The latest time of each step, milliseconds on the same clock as `joined`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct LatestTimes {
    /// Insertion begins: the packer's way into the pipe.
    pub way_in_ms: i64,
    /// The packer is at the mark, the air line is joined.
    pub inflate_ms: i64,
    /// Target pressure reached, with the margin kept.
    pub on_target_ms: i64,
    /// The working time ends.
    pub deadline_ms: i64,
}

impl Budget {
    /// Says whether there is time: nothing is missing. Exactly enough is enough.
    pub fn is_go(&self) -> bool {
        self.spare_ms >= Span::from_ms(0)
    }

    /// Returns the working time that would make it a go: the sum of all shares.
    pub fn needed(&self) -> Span {
        Span::from_ms(self.working_time_ms.as_ms() - self.spare_ms.as_ms())
    }

    /// Returns the latest times of each step for parts joined at `joined_ms`.
    ///
    /// They may lie before `joined_ms` when the budget is no go.
    pub fn latest_times(&self, joined_ms: i64) -> LatestTimes {
        let deadline_ms = joined_ms.saturating_add(self.working_time_ms.as_ms());
        let on_target_ms = deadline_ms.saturating_sub(self.margin_ms.as_ms());
        let inflate_ms = on_target_ms.saturating_sub(self.connect_and_inflate_ms.as_ms());
        LatestTimes {
            way_in_ms: inflate_ms.saturating_sub(self.loaded_push_ms.as_ms()),
            inflate_ms,
            on_target_ms,
            deadline_ms,
        }
    }
}

/// Returns the budget: `spare = W − wet-out − push × loading factor − connect and inflate − margin`.
///
/// The loaded push is rounded up to the millisecond.
/// Errors: `OutOfRange` for a span below zero or above a year, or a loading factor below 100 % or above 1000 %.
/// Source: design rule of this project.
pub fn budget(working_time: Span, shares: &Shares) -> Result<Budget, Refused> {
    let working_time_ms = sound("working time", working_time)?;
    let wet_out_ms = sound("wet-out", shares.wet_out_ms)?;
    let loaded_push_ms = loaded(sound("push", shares.push_ms)?, shares.loading_factor_pct)?;
    let connect_and_inflate_ms = sound("connect and inflate", shares.connect_and_inflate_ms)?;
    let margin_ms = sound("margin", shares.margin_ms)?;
    let used: i64 =
        [wet_out_ms, loaded_push_ms, connect_and_inflate_ms, margin_ms].iter().map(|part| part.as_ms()).sum();
    let spare_ms = Span::from_ms(working_time_ms.as_ms() - used);
    Ok(Budget { working_time_ms, wet_out_ms, loaded_push_ms, connect_and_inflate_ms, margin_ms, spare_ms })
}

fn sound(field: &str, span: Span) -> Result<Span, Refused> {
    const YEAR_MS: i64 = 366 * 24 * 3_600_000;
    let span = span_not_negative(field, span)?;
    if span.as_ms() <= YEAR_MS { Ok(span) } else { Err(Refused::out_of_range(field, "must be at most a year")) }
}

fn loaded(push: Span, factor_pct: u32) -> Result<Span, Refused> {
    if !(100..=1000).contains(&factor_pct) {
        return Err(Refused::out_of_range("loading factor", "must be 100 to 1000 %"));
    }
    Ok(Span::from_ms((push.as_ms() * i64::from(factor_pct) + 99) / 100))
}

/// Returns the deadline that stands after another temperature reading: a warmer reading may only shorten it.
pub fn deadline(joined_ms: i64, working_times: &[Span]) -> Option<i64> {
    working_times.iter().min().map(|shortest| joined_ms.saturating_add(shortest.as_ms()))
}

#[cfg(test)]
mod tests {
    use super::super::sheet_rows::tests::minutes;
    use super::*;
    use proptest::prelude::*;

    fn shares() -> Shares {
        Shares {
            wet_out_ms: minutes(13.0),
            push_ms: minutes(6.0),
            loading_factor_pct: 125,
            connect_and_inflate_ms: minutes(3.0),
            margin_ms: minutes(5.0),
        }
    }

    #[test]
    fn every_part_is_named_and_the_rest_is_spare() {
        let found = budget(minutes(32.0), &shares()).unwrap();
        assert_eq!(found.loaded_push_ms, minutes(7.5));
        assert_eq!(found.spare_ms, minutes(3.5));
        assert_eq!(found.needed(), minutes(28.5));
        assert!(found.is_go());
    }

    #[test]
    fn exactly_enough_is_a_go_and_a_millisecond_less_is_not() {
        assert!(budget(minutes(28.5), &shares()).unwrap().is_go());
        assert!(!budget(Span::from_ms(minutes(28.5).as_ms() - 1), &shares()).unwrap().is_go());
    }

    #[test]
    fn latest_times_count_back_from_the_deadline() {
        let times = budget(minutes(32.0), &shares()).unwrap().latest_times(1_000);
        assert_eq!(times.deadline_ms, 1_000 + 32 * 60_000);
        assert_eq!(times.on_target_ms, 1_000 + 27 * 60_000);
        assert_eq!(times.inflate_ms, 1_000 + 24 * 60_000);
        assert_eq!(times.way_in_ms, 1_000 + 24 * 60_000 - 450_000);
    }

    #[test]
    fn a_warmer_reading_only_shortens_the_deadline() {
        assert_eq!(deadline(0, &[minutes(30.0), minutes(28.0), minutes(40.0)]), Some(28 * 60_000));
        assert_eq!(deadline(0, &[]), None);
    }

    #[test]
    fn a_negative_share_and_a_faster_loaded_push_are_refused() {
        assert!(budget(minutes(30.0), &Shares { margin_ms: Span::from_ms(-1), ..shares() }).is_err());
        assert!(budget(minutes(30.0), &Shares { loading_factor_pct: 99, ..shares() }).is_err());
        assert!(budget(minutes(1e9), &shares()).is_err());
    }

    proptest! {
        #[test]
        fn a_slower_push_never_leaves_more(a in 0i64..7_200_000, b in 0i64..7_200_000, factor in 100u32..300) {
            let spare = |push| {
                let shares = Shares { push_ms: Span::from_ms(push), loading_factor_pct: factor, ..shares() };
                budget(minutes(40.0), &shares).unwrap().spare_ms
            };
            prop_assert!(spare(a.max(b)) <= spare(a.min(b)));
        }
    }
}
