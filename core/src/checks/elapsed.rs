//! Elapsed time between two moments, where the phone may have been restarted or its clock set in between.

use serde::{Deserialize, Serialize};

use super::Refused;
use crate::facts::Moment;
use crate::units::Span;

/// Elapsed time, and by which clock.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "by", rename_all = "snake_case")]
pub enum Elapsed {
    /// Within one boot. `wall_jump_ms` is how far the wall clock was set forward (below zero: back) in between.
    BootClock { lasts_ms: Span, wall_jump_ms: Span },
    /// Across a restart: the wall clock alone, which may have been set. Below zero it certainly was.
    WallClock { lasts_ms: Span, at_least_ms: Span },
}

impl Elapsed {
    /// Returns the elapsed time for a working time: the longer reading counts.
    ///
    /// Across a restart that is the wall clock's, or the time since the start where that alone is longer.
    pub fn longer(&self) -> Span {
        match *self {
            Self::BootClock { lasts_ms, .. } => lasts_ms,
            Self::WallClock { lasts_ms, at_least_ms } => lasts_ms.max(at_least_ms),
        }
    }

    /// Says whether the time was witnessed by a clock that nobody can set: only then may hold minutes count.
    pub fn is_witnessed(&self) -> bool {
        matches!(self, Self::BootClock { .. })
    }

    /// Returns the jump of the wall clock if it is larger than `tolerance`.
    ///
    /// Across a restart only a wall clock behind the time since the start can be told.
    pub fn clock_jump(&self, tolerance: Span) -> Option<Span> {
        let jump = match *self {
            Self::BootClock { wall_jump_ms, .. } => wall_jump_ms,
            Self::WallClock { lasts_ms, at_least_ms } => {
                Span::from_ms(lasts_ms.as_ms().saturating_sub(at_least_ms.as_ms()).min(0))
            }
        };
        (jump.as_ms().saturating_abs() > tolerance.as_ms()).then_some(jump)
    }
}

/// Returns the time from one moment to a later one: within one boot id the boot clock's, across a restart the wall
/// clock's, marked so.
///
/// Errors: `BootClockWentBack` within one boot id.
/// Source: design rule of this project.
pub fn elapsed(from: &Moment, to: &Moment) -> Result<Elapsed, Refused> {
    let wall = to.at_ms.saturating_sub(from.at_ms);
    if from.boot_id != to.boot_id {
        let (lasts_ms, at_least_ms) = (Span::from_ms(wall), Span::from_ms(to.boot_ms.max(0)));
        return Ok(Elapsed::WallClock { lasts_ms, at_least_ms });
    }
    let boot = to.boot_ms.saturating_sub(from.boot_ms);
    if boot < 0 {
        return Err(Refused::BootClockWentBack { by_ms: Span::from_ms(boot.saturating_neg()) });
    }
    let wall_jump_ms = Span::from_ms(wall.saturating_sub(boot));
    Ok(Elapsed::BootClock { lasts_ms: Span::from_ms(boot), wall_jump_ms })
}

/// Returns the working time spent along moments in order: the longest that the clocks allow.
///
/// Each piece counts by its longer reading; across a restart the sum is no shorter than the wall clock's whole
/// difference. 0 for fewer than two moments. Errors: those of [`elapsed`].
/// Source: design rule of this project.
pub fn working_time_spent(moments: &[Moment]) -> Result<Span, Refused> {
    let (Some(first), Some(last)) = (moments.first(), moments.last()) else {
        return Ok(Span::from_ms(0));
    };
    let mut sum = 0_i64;
    for pair in moments.windows(2) {
        if let [from, to] = pair {
            sum = sum.saturating_add(elapsed(from, to)?.longer().as_ms());
        }
    }
    let restarted = moments.iter().any(|moment| moment.boot_id != first.boot_id);
    let whole = if restarted { last.at_ms.saturating_sub(first.at_ms) } else { sum };
    Ok(Span::from_ms(sum.max(whole)))
}

/// Where a second phone takes over: the same instant on both boot clocks.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Handover {
    pub first: Moment,
    pub second: Moment,
}

impl Handover {
    /// Returns a moment of the second phone on the first phone's clocks, or `None` if the second phone was restarted
    /// since.
    pub fn on_the_first(&self, moment: &Moment) -> Option<Moment> {
        (moment.boot_id == self.second.boot_id).then(|| Moment {
            offset_min: moment.offset_min,
            at_ms: moment.at_ms.saturating_sub(self.second.at_ms).saturating_add(self.first.at_ms),
            boot_ms: moment.boot_ms.saturating_sub(self.second.boot_ms).saturating_add(self.first.boot_ms),
            boot_id: self.first.boot_id.clone(),
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn moment(at_ms: i64, boot_ms: i64, boot_id: &str) -> Moment {
        Moment { at_ms, offset_min: 0, boot_ms, boot_id: boot_id.into() }
    }

    fn span(ms: i64) -> Span {
        Span::from_ms(ms)
    }

    #[test]
    fn within_one_boot_the_boot_clock_counts_and_a_set_clock_shows() {
        let found = elapsed(&moment(100_000, 5_000, "a"), &moment(40_000, 65_000, "a")).unwrap();
        assert_eq!(found, Elapsed::BootClock { lasts_ms: span(60_000), wall_jump_ms: span(-120_000) });
        assert_eq!(found.longer(), span(60_000));
        assert_eq!(found.clock_jump(span(2_000)), Some(span(-120_000)));
        assert_eq!(found.clock_jump(span(120_000)), None);
    }

    #[test]
    fn across_a_restart_the_wall_clock_counts_and_is_not_witnessed() {
        let found = elapsed(&moment(0, 900_000, "a"), &moment(60_000, 20_000, "b")).unwrap();
        assert_eq!((found.longer(), found.is_witnessed()), (span(60_000), false));
        assert_eq!(found.clock_jump(span(2_000)), None);
    }

    #[test]
    fn for_the_working_time_the_longer_reading_counts() {
        let set_back = elapsed(&moment(0, 900_000, "a"), &moment(-3_600_000, 45_000, "b")).unwrap();
        assert_eq!(set_back.longer(), span(45_000));
        assert_eq!(set_back.clock_jump(span(2_000)), Some(span(-3_645_000)));
        let moments = [moment(0, 0, "a"), moment(60_000, 60_000, "a"), moment(90_000, 10_000, "b")];
        assert_eq!(working_time_spent(&moments), Ok(span(90_000)));
        let back = [moment(0, 0, "a"), moment(60_000, 60_000, "a"), moment(30_000, 10_000, "b")];
        assert_eq!(working_time_spent(&back), Ok(span(70_000)));
        assert_eq!(working_time_spent(&[]), Ok(span(0)));
    }

    #[test]
    fn a_boot_clock_that_goes_back_is_refused() {
        let refusal = elapsed(&moment(0, 10, "a"), &moment(0, 3, "a"));
        assert_eq!(refusal, Err(Refused::BootClockWentBack { by_ms: span(7) }));
    }

    #[test]
    fn a_second_phone_goes_on_on_the_first_ones_clocks() {
        let handover = Handover { first: moment(1_000, 500, "a"), second: moment(4_000, 90_000, "z") };
        assert_eq!(handover.on_the_first(&moment(64_000, 150_000, "z")), Some(moment(61_000, 60_500, "a")));
        assert_eq!(handover.on_the_first(&moment(64_000, 1, "y")), None);
    }

    proptest! {
        #[test]
        fn no_clock_setting_makes_the_working_time_shorter(wall in -10_000_000i64..10_000_000, boot in 0i64..10_000_000) {
            let spent = working_time_spent(&[moment(0, 0, "a"), moment(wall, boot, "b")]).unwrap();
            prop_assert!(spent >= span(boot) && spent >= span(wall));
        }

        #[test]
        fn no_moment_panics(a in any::<(i64, i64)>(), b in any::<(i64, i64)>(), same in any::<bool>()) {
            let _ = elapsed(&moment(a.0, a.1, "a"), &moment(b.0, b.1, if same { "a" } else { "b" }));
        }
    }
}
