//! Local times, and who did it.

use crate::words::tell;
use chrono::{DateTime, NaiveDate, NaiveDateTime};

use crate::facts::Moment;
use crate::procedure::Stamp;
use crate::shelf::Person;
use crate::words;

/// The clock of the pages: one offset from UTC for every time, and the day that needs no naming.
#[derive(Clone, Debug)]
pub struct Clock {
    offset_min: i32,
    day: Option<NaiveDate>,
    anchor: Option<Moment>,
}

impl Clock {
    /// Returns the clock that shows times at the offset of `day`, and names the date of what lies on another day.
    ///
    /// The course of an attempt is timed from `anchor`: see [`Clock::course`].
    pub fn of(day: &Moment, anchor: Option<&Moment>) -> Self {
        let offset_min = day.offset_min.clamp(-840, 840);
        let clock = Self { offset_min, day: None, anchor: anchor.cloned() };
        Self { day: clock.local(day.at_ms).map(|at| at.date()), ..clock }
    }

    /// Returns the minutes that the shown times are ahead of UTC, −840 to 840.
    pub fn offset_min(&self) -> i32 {
        self.offset_min
    }

    /// Returns `09:29`, or `2026-10-13 09:29` on another day; seconds are dropped.
    pub fn minute(&self, at_ms: i64) -> String {
        self.shown(at_ms, "%H:%M")
    }

    /// Returns `09:29:10`, or `2026-10-13 09:29:10` on another day.
    pub fn second(&self, at_ms: i64) -> String {
        self.shown(at_ms, "%H:%M:%S")
    }

    /// Returns `2026-10-14`, or the date as the reader writes it.
    pub fn date(&self, at_ms: i64) -> String {
        self.local(at_ms)
            .map_or_else(|| tell!("cert-when-no_such_day"), |at| at.format(words::date_pattern()).to_string())
    }

    /// Returns `+02:00`.
    pub fn offset(&self) -> String {
        let sign = if self.offset_min < 0 { "−" } else { "+" };
        format!("{sign}{:02}:{:02}", self.offset_min.abs() / 60, self.offset_min.abs() % 60)
    }

    /// Returns when something of the attempt happened, in milliseconds since 1970.
    ///
    /// Within the start of the device in which the anchor lies, the clock that nobody can set tells how long after the
    /// anchor it was, so that a changed clock doesn't bend the course. Otherwise the wall clock does.
    pub fn course(&self, moment: &Moment) -> i64 {
        match &self.anchor {
            Some(anchor) if anchor.boot_id == moment.boot_id => anchor.at_ms + moment.boot_ms - anchor.boot_ms,
            _ => moment.at_ms,
        }
    }

    fn shown(&self, at_ms: i64, pattern: &str) -> String {
        let Some(at) = self.local(at_ms) else { return tell!("cert-when-no_such_time") };
        let time = at.format(pattern).to_string();
        if self.day == Some(at.date()) { time } else { format!("{} {time}", at.format(words::date_pattern())) }
    }

    fn local(&self, at_ms: i64) -> Option<NaiveDateTime> {
        let local_ms = at_ms.checked_add(i64::from(self.offset_min) * 60_000)?;
        DateTime::from_timestamp_millis(local_ms).map(|at| at.naive_utc())
    }
}

/// Returns the name of a person, or the id that the list doesn't know.
pub fn name(people: &[Person], id: Option<&str>) -> String {
    let Some(id) = id.filter(|id| !id.trim().is_empty()) else { return tell!("cert-when-nobody_picked") };
    let known = people.iter().find(|person| person.id == id);
    known.map_or_else(|| tell!("cert-when-not_in_the_list", id), |person| person.name.clone())
}

/// Returns `Tomas Ekdal, 09:03`: who tapped, and when it happened.
pub fn by(people: &[Person], clock: &Clock, stamp: &Stamp) -> String {
    let paper = if stamp.paper { tell!("cert-when-from_paper") } else { String::new() };
    format!("{}, {}{paper}", name(people, stamp.person.as_deref()), clock.minute(stamp.moment.at_ms))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn moment(at_ms: i64, boot_ms: i64, boot: &str) -> Moment {
        Moment { at_ms, offset_min: 120, boot_ms, boot_id: boot.into() }
    }

    /// 2026-10-14T07:29:10Z, by `date -u -d @1791962950`.
    const AT: i64 = 1_791_962_950_000;

    #[test]
    fn times_are_local_and_another_day_is_named() {
        let clock = Clock::of(&moment(AT, 0, "a"), None);
        assert_eq!([clock.minute(AT), clock.second(AT), clock.offset()], ["09:29", "09:29:10", "+02:00"]);
        assert_eq!(clock.minute(AT - 86_400_000), "2026-10-13 09:29");
        assert_eq!(clock.minute(i64::MAX), "no such time");
    }

    #[test]
    fn a_clock_that_was_set_does_not_bend_the_course() {
        let anchor = moment(AT, 5_000, "a");
        let clock = Clock::of(&anchor, Some(&anchor));
        // Four minutes back, while 100 s passed.
        assert_eq!(clock.course(&moment(AT - 140_000, 105_000, "a")), AT + 100_000);
        assert_eq!(clock.course(&moment(AT + 7, 3, "b")), AT + 7);
    }

    #[test]
    fn an_unknown_id_is_printed_and_said_to_be_unknown() {
        assert_eq!(name(&[], Some("p9")), "p9 (not in the list)");
        assert_eq!(name(&[], None), "nobody picked");
    }
}
