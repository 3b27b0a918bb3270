//! Numbers and instants as they are printed.

use crate::certificate::CertificateError;
use crate::certificate::content::Around;
use crate::units::{Length, Pressure, Span, Temperature};
use crate::words::tell;
use crate::words::{self, Cut, Decimals, Of};
use chrono::{DateTime, FixedOffset};

/// The clock of the pages: one offset from UTC.
#[derive(Clone, Copy)]
pub struct Clock {
    offset: FixedOffset,
}

impl Clock {
    /// Returns the clock at `offset_min` minutes east of UTC.
    ///
    /// Errors: `Content` beyond ±14 hours.
    pub fn at_offset(offset_min: i32) -> Result<Self, CertificateError> {
        (-840..=840)
            .contains(&offset_min)
            .then(|| FixedOffset::east_opt(offset_min * 60))
            .flatten()
            .map(|offset| Self { offset })
            .ok_or_else(|| CertificateError::Content { what: format!("an offset of {offset_min} min from UTC") })
    }

    /// Returns `09:29`, the seconds dropped.
    pub fn minute(self, at_ms: i64) -> String {
        self.format(at_ms, "%H:%M")
    }

    /// Returns `09:29:10`, the fraction dropped.
    pub fn second(self, at_ms: i64) -> String {
        self.format(at_ms, "%H:%M:%S")
    }

    /// Returns `2026-10-14`, or the date as the reader writes it.
    pub fn date(self, at_ms: i64) -> String {
        self.format(at_ms, words::date_pattern())
    }

    /// Returns `10-14`: the date without its year.
    pub fn day(self, at_ms: i64) -> String {
        self.format(at_ms, words::day_pattern())
    }

    /// Returns `+02:00`.
    pub fn offset(self) -> String {
        self.offset.to_string()
    }

    /// Returns the minutes since local midnight of the first day of the epoch: a number for axes.
    pub fn axis_min(self, at_ms: i64) -> f64 {
        at_ms as f64 / 60e3 + f64::from(self.offset.local_minus_utc()) / 60.0
    }

    /// Returns the instant of a number from [`Clock::axis_min`].
    pub fn from_axis_min(self, minutes: f64) -> i64 {
        ((minutes - f64::from(self.offset.local_minus_utc()) / 60.0) * 60e3).round() as i64
    }

    fn format(self, at_ms: i64, pattern: &str) -> String {
        match DateTime::from_timestamp_millis(at_ms) {
            Some(instant) => instant.with_timezone(&self.offset).format(pattern).to_string(),
            None => tell!("cert-when-no_such_time"),
        }
    }
}

/// Returns `61 min 22 s`; a fraction of a second is dropped.
pub fn minutes(span: Span) -> String {
    let seconds = span.as_ms() / 1000;
    format!("{}{} min {:02} s", minus(seconds), seconds.abs() / 60, seconds.abs() % 60)
}

/// Returns `1 h 20 min 48 s`, without seconds where there are none.
pub fn duration(span: Span) -> String {
    let total = span.as_ms() / 1000;
    let seconds = total.abs();
    let (hours, rest) = (seconds / 3600, seconds % 3600);
    let minutes = if hours > 0 { format!("{hours} h {:02} min", rest / 60) } else { format!("{} min", rest / 60) };
    let tail = if rest % 60 > 0 { format!(" {:02} s", rest % 60) } else { String::new() };
    format!("{}{minutes}{tail}", minus(total))
}

/// Returns metres with `decimals` decimals, or feet, without the unit.
pub fn metres(length: Length, decimals: usize) -> String {
    words::figure(Of::Metres, length.as_um(), Decimals::Just(decimals), Cut::Nearest)
}

/// Returns whole millimetres with their unit, or inches.
pub fn millimetres(length: Length) -> String {
    words::quantity(Of::Millimetres, length.as_um(), Decimals::Just(0), Cut::Nearest)
}

/// Returns bar with two decimals, or psi, without the unit.
pub fn bar(pressure: Pressure) -> String {
    words::figure(Of::Bar, pressure.as_pa(), Decimals::Just(2), Cut::Nearest)
}

/// Returns degrees Celsius with one decimal, or Fahrenheit, without the unit.
pub fn celsius(temperature: Temperature) -> String {
    words::figure(Of::Celsius, temperature.as_millicelsius(), Decimals::Just(1), Cut::Nearest)
}

/// Returns a recorded pressure in the unit in which the chart shows it.
pub fn shown_bar(pressure: Pressure) -> f64 {
    words::value(Of::Bar, pressure.as_pa() as f64)
}

/// Returns a recorded temperature in the unit in which the chart shows it.
pub fn shown_celsius(temperature: Temperature) -> f64 {
    words::value(Of::Celsius, temperature.as_millicelsius() as f64)
}

/// Returns the units in which the pages show lengths along the pipe, pressures and temperatures.
pub fn metre() -> &'static str {
    words::unit(Of::Metres)
}

pub fn bar_unit() -> &'static str {
    words::unit(Of::Bar)
}

pub fn degree() -> &'static str {
    words::unit(Of::Celsius)
}

/// Returns `11 to 1 o’clock`, `at 6 o’clock` or `all round`.
pub fn hours(around: Around) -> String {
    match around {
        Around::All => tell!("cert-words-all_round"),
        Around::At(hour) => tell!("cert-words-at_oclock", hour),
        Around::Arc { from_hour, to_hour } => tell!("cert-words-to_oclock", from_hour, to_hour),
    }
}

/// Returns the first 4, the next 4 and the last 4 digits of a hash: `7c41 e09a … 81ab`.
pub fn short_hash(hex: &str) -> String {
    match (hex.get(..4), hex.get(4..8), hex.len().checked_sub(4).and_then(|at| hex.get(at..))) {
        (Some(a), Some(b), Some(z)) if hex.len() > 12 => format!("{a} {b} … {z}"),
        _ => hex.to_string(),
    }
}

/// Returns the digits of a hash in groups of four.
pub fn grouped(hex: &str) -> String {
    let digits: Vec<char> = hex.chars().collect();
    digits.chunks(4).map(|group| group.iter().collect::<String>()).collect::<Vec<_>>().join(" ")
}

pub use crate::words::number;

fn minus(value: i64) -> &'static str {
    if value < 0 { "−" } else { "" }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_instant_is_shown_at_the_offset() {
        let clock = Clock::at_offset(120).unwrap();
        // 2026-10-14T07:29:10Z, by `date -u -d @1791962950`.
        let at = 1_791_962_950_999;
        assert_eq!(
            [clock.minute(at), clock.second(at), clock.date(at), clock.offset()],
            ["09:29", "09:29:10", "2026-10-14", "+02:00"]
        );
        assert_eq!(clock.second(clock.from_axis_min(clock.axis_min(at))), "09:29:10");
    }

    #[test]
    fn an_offset_beyond_fourteen_hours_is_refused() {
        assert!(Clock::at_offset(841).is_err() && Clock::at_offset(-840).is_ok());
    }

    #[test]
    fn an_instant_beyond_the_calendar_is_said_to_be_none() {
        assert_eq!(Clock::at_offset(0).unwrap().date(i64::MAX), "no such time");
    }

    #[test]
    fn spans_keep_their_seconds() {
        assert_eq!(minutes(Span::from_ms(3_682_999)), "61 min 22 s");
        assert_eq!(duration(Span::from_ms(4_848_000)), "1 h 20 min 48 s");
        assert_eq!(duration(Span::from_ms(780_000)), "13 min");
        assert_eq!(minutes(Span::from_ms(-80_000)), "−1 min 20 s");
    }

    #[test]
    fn minus_nothing_is_nothing() {
        assert_eq!([number(-0.001, 2), number(-1.5, 1)], ["0.00", "−1.5"]);
    }

    #[test]
    fn a_hash_is_shortened_in_the_middle() {
        assert_eq!(short_hash("7c41e09a53d2000081ab"), "7c41 e09a … 81ab");
        assert_eq!(short_hash("é"), "é");
        assert_eq!(grouped("7c41e09a5"), "7c41 e09a 5");
    }
}
