//! The hold: which minutes count, what was not witnessed, where the pressure left the window, and when release may be.

use serde::{Deserialize, Serialize};

use super::Refused;
use super::pressure_window::water_pressure;
use super::refused::{in_our_time, on_a_gauge, span_not_negative};
use crate::units::{Length, Pressure, Span};

/// A pressure reading. Readings come in order of time.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Reading {
    /// Elapsed time, on one line of the boot clock.
    pub at_ms: i64,
    pub gauge_pa: Pressure,
    /// The device was restarted between the reading before and this one.
    pub after_restart: bool,
}

/// What becomes of two readings that are too far apart.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum GapRule {
    /// Nothing between them counts. Holds where the contract says nothing.
    #[default]
    WholeGapLost,
    /// Interval and grace count, only what is beyond is lost.
    ExcessLost,
}

/// From which moment the sheet counts the hold.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum CountsFrom {
    Joining,
    TargetPressure,
}

/// What the readings are judged by.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct HoldTerms {
    pub low_pa: Pressure,
    pub high_pa: Pressure,
    pub least_net_pa: Pressure,
    pub head_um: Length,
    pub interval_ms: Span,
    pub grace_ms: Span,
    pub gap_rule: GapRule,
    pub counts_from: CountsFrom,
    pub required_ms: Span,
    /// When the parts were joined, on the same line of time as the readings.
    pub joined_ms: i64,
}

/// What a stretch of the hold is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum StretchKind {
    /// From joining to the first reading, where the sheet counts from joining.
    BeforePressure,
    Counted,
    /// One of the two readings was outside the window.
    OutsideWindow,
    /// The readings were too far apart, or the device was restarted between them.
    NotWitnessed,
}

/// A stretch of the hold, for drawing. Stretches follow each other without a hole.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct HoldStretch {
    pub from_ms: i64,
    pub to_ms: i64,
    pub kind: StretchKind,
}

/// On which side of the window the pressure was.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Side {
    Below,
    Above,
}

/// A run of readings outside the window, on one side.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Excursion {
    pub side: Side,
    /// The reading farthest outside; of equals the first.
    pub worst_at_ms: i64,
    pub worst_pa: Pressure,
    /// How far outside the window.
    pub depth_pa: Pressure,
    /// The longest that it can have lasted: between the neighbouring readings on the other side of the limit.
    pub longest_ms: Span,
    /// No reading after it was back inside: it may be going on.
    pub open: bool,
    /// Time since joining at the worst reading.
    pub resin_age_ms: Span,
    /// Net pressure at the worst reading: gauge less the water above the invert.
    pub net_pa: Pressure,
    /// The net pressure fell below the least net pressure before the required hold was reached.
    pub doubtful: bool,
}

/// What the readings show.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Hold {
    /// The sum of everything that counts.
    pub counted_ms: Span,
    /// How much is missing; never below zero.
    pub missing_ms: Span,
    /// The reading at which the required hold was reached.
    pub reached_at_ms: Option<i64>,
    pub not_witnessed_ms: Span,
    pub outside_ms: Span,
    /// In order of time.
    pub stretches: Vec<HoldStretch>,
    /// In order of time.
    pub excursions: Vec<Excursion>,
    /// Some excursion is doubtful: the patch may have lost the wall while it gelled.
    pub doubtful: bool,
}

/// How the hold stands now.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Outlook {
    /// What would count in addition with a good reading now.
    pub pending_ms: Span,
    /// When release is possible at the earliest, if every reading from now on is good and in time.
    pub earliest_release_ms: i64,
    /// The next reading is due; `None` before the first.
    pub reading_due_ms: Option<i64>,
    /// From here on the time since the last reading is not witnessed; `None` before the first.
    pub gap_from_ms: Option<i64>,
}

/// Returns what counts of a hold: the time between consecutive readings that are both inside the window and no further
/// apart than interval + grace.
///
/// Both limits of the window belong to it, exactly interval + grace is near enough. A longer gap is not witnessed, whole
/// or only the excess by the gap rule; across a restart nothing is. Where the sheet counts from joining, the time up to
/// the first reading counts too. All in whole milliseconds, nothing is rounded.
///
/// Errors: `ReadingsOutOfOrder` (also before joining); `OutOfRange` for spans below zero, an interval of zero, a window
/// upside down, or a head below zero.
/// Source: design rule of this project.
pub fn hold(terms: &HoldTerms, readings: &[Reading]) -> Result<Hold, Refused> {
    terms_are_sound(terms)?;
    in_order(terms, readings)?;
    let stretches = stretches(terms, readings);
    let counted_ms = total(&stretches, counts);
    let reached_at_ms = reached_at(terms, readings, &stretches);
    let excursions = excursions(terms, readings, reached_at_ms)?;
    Ok(Hold {
        counted_ms,
        missing_ms: Span::from_ms((terms.required_ms.as_ms() - counted_ms.as_ms()).max(0)),
        reached_at_ms,
        not_witnessed_ms: total(&stretches, |kind| kind == StretchKind::NotWitnessed),
        outside_ms: total(&stretches, |kind| kind == StretchKind::OutsideWindow),
        doubtful: excursions.iter().any(|excursion| excursion.doubtful),
        stretches,
        excursions,
    })
}

/// Returns how the hold stands at `now_ms`, on the same line of time as the readings.
///
/// `restarted_since` says that the device was restarted after the last reading: then nothing is pending. `pending_ms` is
/// a promise only, it counts with the next good reading. Errors: those of [`hold`]; `ReadingsOutOfOrder` for a now before
/// the last reading.
pub fn outlook(
    terms: &HoldTerms,
    readings: &[Reading],
    now_ms: i64,
    restarted_since: bool,
) -> Result<Outlook, Refused> {
    let next = Reading { at_ms: now_ms, gauge_pa: terms.low_pa, after_restart: restarted_since };
    let with_next: Vec<Reading> = readings.iter().copied().chain([next]).collect();
    let (now, then) = (hold(terms, readings)?, hold(terms, &with_next)?);
    let pending = then.counted_ms.as_ms() - now.counted_ms.as_ms();
    // What is already pending beyond the need moves the release back into the past: then it is now.
    let earliest_release_ms = match now.reached_at_ms {
        Some(reached) => reached,
        None => now_ms.saturating_add((now.missing_ms.as_ms() - pending).max(0)),
    };
    let last = readings.last().map(|reading| reading.at_ms);
    let due = |after: i64| last.map(|at| at.saturating_add(after));
    Ok(Outlook {
        pending_ms: Span::from_ms(pending),
        earliest_release_ms,
        reading_due_ms: due(terms.interval_ms.as_ms()),
        gap_from_ms: due(farthest(terms)),
    })
}

fn terms_are_sound(terms: &HoldTerms) -> Result<(), Refused> {
    span_not_negative("grace", terms.grace_ms)?;
    span_not_negative("reading interval", terms.interval_ms)?;
    on_a_gauge("least net", terms.least_net_pa)?;
    on_a_gauge("pressure window", terms.low_pa)?;
    on_a_gauge("pressure window", terms.high_pa)?;
    span_not_negative("required hold", terms.required_ms)?;
    if terms.interval_ms <= Span::from_ms(0) {
        return Err(Refused::out_of_range("reading interval", "must be above 0"));
    }
    if terms.low_pa > terms.high_pa {
        return Err(Refused::out_of_range("pressure window", "must have its lower limit below its upper"));
    }
    water_pressure(terms.head_um).map(|_| ())
}

fn in_order(terms: &HoldTerms, readings: &[Reading]) -> Result<(), Refused> {
    let mut before = in_our_time("joining", terms.joined_ms)?;
    for (index, reading) in readings.iter().enumerate() {
        on_a_gauge("reading", reading.gauge_pa)?;
        if in_our_time("reading", reading.at_ms)? < before {
            return Err(Refused::ReadingsOutOfOrder { index });
        }
        before = reading.at_ms;
    }
    Ok(())
}

fn farthest(terms: &HoldTerms) -> i64 {
    terms.interval_ms.as_ms().saturating_add(terms.grace_ms.as_ms())
}

fn counts(kind: StretchKind) -> bool {
    matches!(kind, StretchKind::Counted | StretchKind::BeforePressure)
}

fn total(stretches: &[HoldStretch], of: impl Fn(StretchKind) -> bool) -> Span {
    Span::from_ms(stretches.iter().filter(|part| of(part.kind)).map(|part| part.to_ms - part.from_ms).sum())
}

fn stretches(terms: &HoldTerms, readings: &[Reading]) -> Vec<HoldStretch> {
    let mut found = Vec::with_capacity(readings.len() + 1);
    if let (CountsFrom::Joining, Some(first)) = (terms.counts_from, readings.first()) {
        let kind = StretchKind::BeforePressure;
        found.push(HoldStretch { from_ms: terms.joined_ms, to_ms: first.at_ms, kind });
    }
    for pair in readings.windows(2) {
        if let [a, b] = pair {
            push_between(terms, a, b, &mut found);
        }
    }
    found
}

fn push_between(terms: &HoldTerms, a: &Reading, b: &Reading, found: &mut Vec<HoldStretch>) {
    let (from_ms, to_ms) = (a.at_ms, b.at_ms);
    let inside = side(terms, a.gauge_pa).is_none() && side(terms, b.gauge_pa).is_none();
    let too_far = to_ms - from_ms > farthest(terms);
    if too_far && inside && !b.after_restart && terms.gap_rule == GapRule::ExcessLost {
        let edge = from_ms + farthest(terms);
        found.push(HoldStretch { from_ms, to_ms: edge, kind: StretchKind::Counted });
        found.push(HoldStretch { from_ms: edge, to_ms, kind: StretchKind::NotWitnessed });
        return;
    }
    let kind = match (too_far || b.after_restart, inside) {
        (true, _) => StretchKind::NotWitnessed,
        (false, true) => StretchKind::Counted,
        (false, false) => StretchKind::OutsideWindow,
    };
    found.push(HoldStretch { from_ms, to_ms, kind });
}

fn reached_at(terms: &HoldTerms, readings: &[Reading], stretches: &[HoldStretch]) -> Option<i64> {
    let mut ahead = stretches.iter().peekable();
    let mut counted = 0;
    let reached = |reading: &&Reading| {
        while let Some(part) = ahead.next_if(|part| part.to_ms <= reading.at_ms) {
            if counts(part.kind) {
                counted += part.to_ms - part.from_ms;
            }
        }
        counted >= terms.required_ms.as_ms()
    };
    readings.iter().find(reached).map(|reading| reading.at_ms)
}

fn side(terms: &HoldTerms, gauge: Pressure) -> Option<Side> {
    if gauge < terms.low_pa {
        Some(Side::Below)
    } else if gauge > terms.high_pa {
        Some(Side::Above)
    } else {
        None
    }
}

fn depth(terms: &HoldTerms, gauge: Pressure) -> i64 {
    (terms.low_pa.as_pa() - gauge.as_pa()).max(gauge.as_pa() - terms.high_pa.as_pa())
}

fn excursions(terms: &HoldTerms, readings: &[Reading], reached_at_ms: Option<i64>) -> Result<Vec<Excursion>, Refused> {
    let water = water_pressure(terms.head_um)?;
    let judge = Judge { terms, reached_at_ms, water };
    let mut found = Vec::new();
    let mut start = 0;
    for run in readings.chunk_by(|a, b| side(terms, a.gauge_pa) == side(terms, b.gauge_pa)) {
        let end = start + run.len();
        let before = start.checked_sub(1).and_then(|index| readings.get(index));
        found.extend(judge.excursion(before, run, readings.get(end)));
        start = end;
    }
    Ok(found)
}

/// What a run of readings outside the window is judged by.
struct Judge<'a> {
    terms: &'a HoldTerms,
    reached_at_ms: Option<i64>,
    water: Pressure,
}

impl Judge<'_> {
    /// Returns the excursion of a run between its neighbours; `None` for a run inside the window.
    fn excursion(&self, before: Option<&Reading>, run: &[Reading], after: Option<&Reading>) -> Option<Excursion> {
        let (first, last) = (run.first()?, run.last()?);
        let side = side(self.terms, first.gauge_pa)?;
        let depth = |reading: &Reading| depth(self.terms, reading.gauge_pa);
        let worst = run.iter().fold(first, |worst, next| if depth(next) > depth(worst) { next } else { worst });
        let longest = after.unwrap_or(last).at_ms - before.unwrap_or(first).at_ms;
        Some(Excursion {
            side,
            worst_at_ms: worst.at_ms,
            worst_pa: worst.gauge_pa,
            depth_pa: Pressure::from_pa(depth(worst)),
            longest_ms: Span::from_ms(longest),
            open: after.is_none(),
            resin_age_ms: Span::from_ms(worst.at_ms - self.terms.joined_ms),
            net_pa: self.net(worst),
            doubtful: run.iter().any(|reading| self.lost_the_wall(reading)),
        })
    }

    fn net(&self, reading: &Reading) -> Pressure {
        Pressure::from_pa(reading.gauge_pa.as_pa().saturating_sub(self.water.as_pa()))
    }

    fn lost_the_wall(&self, reading: &Reading) -> bool {
        let gelling = self.reached_at_ms.is_none_or(|reached| reading.at_ms < reached);
        gelling && self.net(reading) < self.terms.least_net_pa
    }
}

#[cfg(test)]
mod tests {
    use super::super::sheet_rows::tests::minutes;
    use super::*;
    use proptest::prelude::*;

    fn bar(value: f64) -> Pressure {
        Pressure::from_bar(value).unwrap()
    }

    fn terms() -> HoldTerms {
        HoldTerms {
            low_pa: bar(1.10),
            high_pa: bar(1.40),
            least_net_pa: bar(0.90),
            head_um: Length::from_m(0.80).unwrap(),
            interval_ms: minutes(10.0),
            grace_ms: minutes(0.5),
            gap_rule: GapRule::WholeGapLost,
            counts_from: CountsFrom::TargetPressure,
            required_ms: minutes(30.0),
            joined_ms: -minutes(25.0).as_ms(),
        }
    }

    fn at(minute: f64, gauge: f64) -> Reading {
        Reading { at_ms: minutes(minute).as_ms(), gauge_pa: bar(gauge), after_restart: false }
    }

    fn read(values: &[(f64, f64)]) -> Vec<Reading> {
        values.iter().map(|&(minute, gauge)| at(minute, gauge)).collect()
    }

    fn steady() -> Vec<Reading> {
        read(&[(0.0, 1.30), (10.0, 1.30), (20.0, 1.30), (30.0, 1.30)])
    }

    #[test]
    fn steady_readings_count_in_full() {
        let found = hold(&terms(), &steady()).unwrap();
        assert_eq!((found.counted_ms, found.missing_ms), (minutes(30.0), minutes(0.0)));
        assert_eq!(found.reached_at_ms, Some(minutes(30.0).as_ms()));
        assert!(found.excursions.is_empty() && !found.doubtful);
    }

    #[test]
    fn the_limits_and_the_last_millisecond_of_grace_belong_to_it() {
        let found = hold(&terms(), &read(&[(0.0, 1.10), (10.5, 1.40)])).unwrap();
        assert_eq!(found.counted_ms, minutes(10.5));
        let mut late = read(&[(0.0, 1.10), (10.5, 1.40)]);
        late[1].at_ms += 1;
        assert_eq!(hold(&terms(), &late).unwrap().counted_ms, minutes(0.0));
    }

    #[test]
    fn a_gap_is_lost_whole_or_only_its_excess() {
        let readings = read(&[(0.0, 1.30), (13.0, 1.30), (20.0, 1.30)]);
        let whole = hold(&terms(), &readings).unwrap();
        assert_eq!((whole.counted_ms, whole.not_witnessed_ms), (minutes(7.0), minutes(13.0)));
        let excess = hold(&HoldTerms { gap_rule: GapRule::ExcessLost, ..terms() }, &readings).unwrap();
        assert_eq!((excess.counted_ms, excess.not_witnessed_ms), (minutes(17.5), minutes(2.5)));
        assert_eq!(GapRule::default(), GapRule::WholeGapLost);
    }

    #[test]
    fn nothing_across_a_restart_is_witnessed_whatever_the_gap_rule() {
        for gap_rule in [GapRule::WholeGapLost, GapRule::ExcessLost] {
            let mut readings = steady();
            readings[2].after_restart = true;
            let found = hold(&HoldTerms { gap_rule, ..terms() }, &readings).unwrap();
            assert_eq!((found.counted_ms, found.not_witnessed_ms), (minutes(20.0), minutes(10.0)));
        }
    }

    #[test]
    fn a_dip_is_reported_with_depth_longest_duration_and_age_of_the_resin() {
        let found = hold(&terms(), &read(&[(0.0, 1.30), (8.0, 1.04), (12.0, 1.05), (20.0, 1.30)])).unwrap();
        let [dip] = found.excursions.as_slice() else { panic!("one excursion, not {:?}", found.excursions) };
        assert_eq!((dip.side, dip.worst_pa, dip.depth_pa), (Side::Below, bar(1.04), bar(0.06)));
        assert_eq!((dip.longest_ms, dip.resin_age_ms, dip.open), (minutes(20.0), minutes(33.0), false));
        assert_eq!(dip.net_pa, Pressure::from_pa(96_154));
        assert!(!dip.doubtful);
        assert_eq!((found.counted_ms, found.outside_ms), (minutes(0.0), minutes(20.0)));
    }

    #[test]
    fn net_pressure_lost_before_the_hold_is_reached_makes_it_doubtful_and_afterwards_not() {
        let early = hold(&terms(), &read(&[(0.0, 1.30), (5.0, 0.86), (10.0, 1.30)])).unwrap();
        assert!(early.doubtful && early.excursions[0].doubtful);
        let mut late = steady();
        late.push(at(35.0, 0.86));
        let found = hold(&terms(), &late).unwrap();
        assert!(!found.doubtful && found.excursions[0].open);
        assert_eq!(found.excursions[0].longest_ms, minutes(5.0));
    }

    #[test]
    fn exactly_the_least_net_pressure_is_not_lost() {
        // 0.90 bar net and 7845.32 Pa of water: 97 846 Pa is enough, 97 845 Pa is not.
        for (gauge, doubtful) in [(97_846, false), (97_845, true)] {
            let mut readings = steady();
            readings[1].gauge_pa = Pressure::from_pa(gauge);
            assert_eq!(hold(&terms(), &readings).unwrap().doubtful, doubtful);
        }
    }

    #[test]
    fn from_above_to_below_without_a_stop_is_two_excursions() {
        let found = hold(&terms(), &read(&[(0.0, 1.30), (5.0, 1.50), (10.0, 1.00), (15.0, 1.30)])).unwrap();
        let sides: Vec<_> = found.excursions.iter().map(|excursion| (excursion.side, excursion.longest_ms)).collect();
        assert_eq!(sides, [(Side::Above, minutes(10.0)), (Side::Below, minutes(10.0))]);
    }

    #[test]
    fn where_the_sheet_counts_from_joining_the_time_before_pressure_counts() {
        let from_joining = HoldTerms { counts_from: CountsFrom::Joining, ..terms() };
        let found = hold(&from_joining, &steady()).unwrap();
        assert_eq!(found.counted_ms, minutes(55.0));
        assert_eq!(found.stretches[0].kind, StretchKind::BeforePressure);
        assert_eq!(found.reached_at_ms, Some(minutes(10.0).as_ms()));
    }

    #[test]
    fn the_outlook_says_what_is_pending_and_when_release_may_be() {
        let readings = read(&[(0.0, 1.30), (10.0, 1.30)]);
        let look = |minute: f64, restarted| outlook(&terms(), &readings, minutes(minute).as_ms(), restarted).unwrap();
        assert_eq!(look(14.0, false).pending_ms, minutes(4.0));
        assert_eq!(look(14.0, false).earliest_release_ms, minutes(30.0).as_ms());
        assert_eq!(look(21.0, false).pending_ms, minutes(0.0));
        assert_eq!(look(21.0, false).earliest_release_ms, minutes(41.0).as_ms());
        assert_eq!(look(14.0, true).earliest_release_ms, minutes(34.0).as_ms());
        assert_eq!(look(14.0, false).reading_due_ms, Some(minutes(20.0).as_ms()));
        assert_eq!(look(14.0, false).gap_from_ms, Some(minutes(20.5).as_ms()));
    }

    #[test]
    fn before_the_first_reading_the_whole_hold_is_ahead_and_after_the_last_it_is_reached() {
        let before = outlook(&terms(), &[], 0, false).unwrap();
        assert_eq!((before.earliest_release_ms, before.reading_due_ms), (minutes(30.0).as_ms(), None));
        let after = outlook(&terms(), &steady(), minutes(36.0).as_ms(), false).unwrap();
        assert_eq!(after.earliest_release_ms, minutes(30.0).as_ms());
    }

    #[test]
    fn readings_out_of_order_and_terms_that_cannot_be_are_refused() {
        let back = read(&[(10.0, 1.3), (0.0, 1.3)]);
        assert_eq!(hold(&terms(), &back), Err(Refused::ReadingsOutOfOrder { index: 1 }));
        assert_eq!(hold(&terms(), &[at(-26.0, 1.3)]), Err(Refused::ReadingsOutOfOrder { index: 0 }));
        assert!(hold(&HoldTerms { interval_ms: minutes(0.0), ..terms() }, &steady()).is_err());
        assert!(hold(&HoldTerms { low_pa: bar(1.5), ..terms() }, &steady()).is_err());
        assert!(hold(&HoldTerms { head_um: Length::from_um(-1), ..terms() }, &steady()).is_err());
    }

    fn any_readings() -> impl Strategy<Value = Vec<Reading>> {
        let reading = (0i64..900_000, 80_000i64..150_000, prop::bool::weighted(0.1));
        prop::collection::vec(reading, 0..30).prop_map(|steps| {
            let mut now = 0;
            let next = |(step, gauge, after_restart): (i64, i64, bool)| {
                now += step;
                Reading { at_ms: now, gauge_pa: Pressure::from_pa(gauge), after_restart }
            };
            steps.into_iter().map(next).collect()
        })
    }

    proptest! {
        #[test]
        fn no_readings_panic(values in prop::collection::vec(any::<(i64, i64, bool)>(), 0..8), a in any::<(i64, i64, i64)>(), b in any::<(i64, i64, i64)>()) {
            let mut values = values;
            values.sort_unstable();
            let readings: Vec<_> = values.into_iter().map(|(at_ms, pa, after_restart)| Reading { at_ms, gauge_pa: Pressure::from_pa(pa), after_restart }).collect();
            let terms = HoldTerms {
                low_pa: Pressure::from_pa(a.0), high_pa: Pressure::from_pa(a.1), least_net_pa: Pressure::from_pa(a.2),
                interval_ms: Span::from_ms(b.0), required_ms: Span::from_ms(b.1), joined_ms: b.2, ..terms()
            };
            let _ = outlook(&terms, &readings, a.2, false);
        }

        #[test]
        fn the_stretches_cover_the_hold_without_a_hole(readings in any_readings()) {
            let found = hold(&terms(), &readings).unwrap();
            let whole = readings.last().map_or(0, |last| last.at_ms - readings[0].at_ms);
            let sum = found.counted_ms.as_ms() + found.not_witnessed_ms.as_ms() + found.outside_ms.as_ms();
            prop_assert_eq!(sum, whole);
            prop_assert!(found.stretches.windows(2).all(|pair| pair[0].to_ms == pair[1].from_ms));
        }

        #[test]
        fn the_hold_is_reached_at_the_first_reading_that_makes_it_whole(readings in any_readings()) {
            let required = terms().required_ms;
            let whole = |count: usize| hold(&terms(), &readings[..count]).unwrap().counted_ms >= required;
            let first = (1..=readings.len()).find(|count| whole(*count)).map(|count| readings[count - 1].at_ms);
            prop_assert_eq!(hold(&terms(), &readings).unwrap().reached_at_ms, first);
        }

        #[test]
        fn a_further_reading_never_takes_counted_time_away(readings in any_readings(), gauge in 80_000i64..150_000) {
            let before = hold(&terms(), &readings).unwrap().counted_ms;
            let mut more = readings;
            let at_ms = more.last().map_or(0, |last| last.at_ms) + 60_000;
            more.push(Reading { at_ms, gauge_pa: Pressure::from_pa(gauge), after_restart: false });
            prop_assert!(hold(&terms(), &more).unwrap().counted_ms >= before);
        }

        #[test]
        fn losing_the_whole_gap_never_counts_more_than_losing_its_excess(readings in any_readings()) {
            let whole = hold(&terms(), &readings).unwrap().counted_ms;
            let excess = hold(&HoldTerms { gap_rule: GapRule::ExcessLost, ..terms() }, &readings).unwrap().counted_ms;
            prop_assert!(whole <= excess);
        }
    }
}
