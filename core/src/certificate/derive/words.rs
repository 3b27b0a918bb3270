//! Numbers and sentences as they are printed.
//!
//! What was recorded is printed to its last digit. What has to be cut is cut in nobody's favour: `_up` and `_down` in a
//! name say which way.

use crate::certificate::content::Around;
use crate::units::{Length, Mass, Pressure, Span, Temperature};

/// Returns whole steps as a decimal number, with all its digits and at least `least` decimals.
///
/// `per` steps make one unit; it is a power of ten, at least 1.
pub fn exact(steps: i64, per: i64, least: usize) -> String {
    let digits = per.max(1).ilog10() as usize;
    let (whole, rest) = (steps.abs() / per.max(1), steps.abs() % per.max(1));
    let decimals = if digits == 0 { String::new() } else { format!("{rest:0digits$}") };
    let kept = decimals.trim_end_matches('0').len().max(least.min(digits));
    let sign = if steps < 0 { "−" } else { "" };
    if kept == 0 { format!("{sign}{whole}") } else { format!("{sign}{whole}.{}", &decimals[..kept]) }
}

/// Returns `196.5 mm`.
pub fn mm(length: Length) -> String {
    format!("{} mm", mm_bare(length))
}

/// Returns `196.5`.
pub fn mm_bare(length: Length) -> String {
    exact(length.as_um(), 1_000, 0)
}

/// Returns an inside diameter, as `199.0`.
pub fn inside(diameter: Length) -> String {
    exact(diameter.as_um(), 1_000, 1)
}

/// Returns whole millimetres, rounded down; below zero away from zero.
pub fn mm_down(length: Length) -> i64 {
    length.as_um().div_euclid(1_000)
}

/// Returns whole millimetres, rounded up.
pub fn mm_up(length: Length) -> i64 {
    -(-length.as_um()).div_euclid(1_000)
}

/// Returns metres to the centimetre, to the nearest: a place, no measure of merit.
pub fn metres(length: Length) -> String {
    exact(nearest(length.as_um(), 10_000), 100, 2)
}

/// Returns metres to the millimetre, to the nearest.
pub fn metres_mm(length: Length) -> String {
    exact(nearest(length.as_um(), 1_000), 1_000, 3)
}

fn nearest(steps: i64, by: i64) -> i64 {
    (steps + by / 2).div_euclid(by)
}

/// Returns `1.04 bar`, with more decimals where more were recorded.
pub fn bar(pressure: Pressure) -> String {
    format!("{} bar", bar_bare(pressure))
}

/// Returns `1.04`.
pub fn bar_bare(pressure: Pressure) -> String {
    exact(pressure.as_pa(), 100_000, 2)
}

/// Returns `0.96 bar`, rounded down to the hundredth.
pub fn bar_down(pressure: Pressure) -> String {
    format!("{} bar", exact(pressure.as_pa().div_euclid(1_000), 100, 2))
}

/// Returns `0.06 bar`, rounded up to the hundredth.
pub fn bar_up(pressure: Pressure) -> String {
    format!("{} bar", exact(-(-pressure.as_pa()).div_euclid(1_000), 100, 2))
}

/// Returns `12.6 °C`.
pub fn celsius(temperature: Temperature) -> String {
    format!("{} °C", exact(temperature.as_millicelsius(), 1_000, 1))
}

/// Returns `8 to 24 °C`.
pub fn celsius_range(from: Temperature, to: Temperature) -> String {
    let bare = |at: Temperature| exact(at.as_millicelsius(), 1_000, 0);
    format!("{} to {} °C", bare(from), bare(to))
}

/// Returns `812 g`.
pub fn grams(mass: Mass) -> String {
    format!("{} g", exact(mass.as_mg(), 1_000, 0))
}

/// Returns a span cut to whole seconds.
pub fn down_s(span: Span) -> Span {
    Span::from_ms(span.as_ms().div_euclid(1_000) * 1_000)
}

/// Returns a span rounded up to whole seconds.
pub fn up_s(span: Span) -> Span {
    Span::from_ms(-(-span.as_ms()).div_euclid(1_000) * 1_000)
}

/// Returns `61 min 22 s`; what is left of a second is dropped.
pub fn min_s(span: Span) -> String {
    let seconds = span.as_ms().abs() / 1_000;
    format!("{}{} min {:02} s", minus(span), seconds / 60, seconds % 60)
}

/// Returns `60 min`, or `60 min 30 s` where there are seconds.
pub fn minutes(span: Span) -> String {
    let text = min_s(span);
    text.strip_suffix(" 00 s").map_or(text.clone(), str::to_owned)
}

/// Returns `4 h 13 min 50 s`, `24 h`, `7 min` or `40 s`; what is left of a second is dropped.
pub fn lasting(span: Span) -> String {
    let seconds = span.as_ms().abs() / 1_000;
    let (hours, minutes, rest) = (seconds / 3_600, seconds / 60 % 60, seconds % 60);
    let text = match (hours, minutes, rest) {
        (0, 0, rest) => format!("{rest} s"),
        (0, minutes, 0) => format!("{minutes} min"),
        (0, minutes, rest) => format!("{minutes} min {rest:02} s"),
        (hours, 0, 0) => format!("{hours} h"),
        (hours, minutes, 0) => format!("{hours} h {minutes:02} min"),
        (hours, minutes, rest) => format!("{hours} h {minutes:02} min {rest:02} s"),
    };
    format!("{}{text}", minus(span))
}

fn minus(span: Span) -> &'static str {
    if span.as_ms() < 0 { "−" } else { "" }
}

/// Returns `11 to 1 o’clock`, `at 6 o’clock` or `all round`.
pub fn hours(around: Around) -> String {
    match around {
        Around::All => "all round".into(),
        Around::At(hour) => format!("at {hour} o’clock"),
        Around::Arc { from_hour, to_hour } => format!("{from_hour} to {to_hour} o’clock"),
    }
}

/// Returns `1 departure` or `2 departures`.
pub fn many(count: usize, word: &str) -> String {
    if count == 1 { format!("1 {word}") } else { format!("{count} {word}s") }
}

/// Returns a text with a small first letter, unless it begins with an abbreviation or a formula.
pub fn small(text: &str) -> String {
    let mut letters = text.chars();
    let Some(first) = letters.next() else { return String::new() };
    let a_word = letters.next().is_none_or(|second| second.is_lowercase() || second.is_whitespace());
    if a_word { format!("{}{}", first.to_lowercase(), &text[first.len_utf8()..]) } else { text.to_owned() }
}

/// Returns a text with a capital first letter.
pub fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| format!("{}{}", first.to_uppercase(), letters.as_str()))
}

/// Returns a text that ends in a full stop.
pub fn stopped(text: &str) -> String {
    let text = text.trim();
    if text.is_empty() || text.ends_with(['.', '!', '?', '”']) { text.to_owned() } else { format!("{text}.") }
}

/// Returns a text without its full stop.
pub fn bare(text: &str) -> &str {
    text.trim().trim_end_matches('.')
}

/// Returns the text, or what is said where there is none.
pub fn or<'a>(text: &'a str, otherwise: &'a str) -> &'a str {
    if text.trim().is_empty() { otherwise } else { text.trim() }
}

/// Returns the parts that are not empty, joined.
pub fn joined(parts: impl IntoIterator<Item = String>, between: &str) -> String {
    parts.into_iter().filter(|part| !part.is_empty()).collect::<Vec<_>>().join(between)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_recorded_value_keeps_every_digit() {
        assert_eq!(exact(149_600, 1_000, 0), "149.6");
        assert_eq!(exact(150_000, 1_000, 0), "150");
        assert_eq!(exact(130_000, 100_000, 2), "1.30");
        assert_eq!(exact(109_960, 100_000, 2), "1.0996");
        assert_eq!(exact(-40, 1_000, 1), "−0.04");
        assert_eq!(exact(7, 1, 2), "7");
    }

    #[test]
    fn what_is_cut_is_cut_the_named_way() {
        assert_eq!((mm_down(Length::from_um(134_999)), mm_down(Length::from_um(-1))), (134, -1));
        assert_eq!((mm_up(Length::from_um(29_001)), mm_up(Length::from_um(29_000))), (30, 29));
        assert_eq!(bar_down(Pressure::from_pa(96_154)), "0.96 bar");
        assert_eq!(bar_up(Pressure::from_pa(5_001)), "0.06 bar");
        assert_eq!(down_s(Span::from_ms(3_682_999)).as_ms(), 3_682_000);
        assert_eq!(up_s(Span::from_ms(1_490_001)).as_ms(), 1_491_000);
    }

    #[test]
    fn spans_keep_minutes_and_seconds() {
        assert_eq!(min_s(Span::from_ms(3_682_000)), "61 min 22 s");
        assert_eq!(minutes(Span::from_ms(3_600_000)), "60 min");
        assert_eq!(lasting(Span::from_ms(15_230_000)), "4 h 13 min 50 s");
        assert_eq!(lasting(Span::from_ms(26 * 3_600_000)), "26 h");
        assert_eq!(min_s(Span::from_ms(-80_000)), "−1 min 20 s");
    }

    #[test]
    fn a_first_letter_becomes_small_except_in_an_abbreviation() {
        let texts = ["Permit", "DN 200", "H₂S", "A patch", "Édge", ""].map(small);
        assert_eq!(texts, ["permit", "DN 200", "H₂S", "a patch", "édge", ""]);
    }

    #[test]
    fn a_place_is_rounded_to_the_nearest() {
        assert_eq!(metres(Length::from_um(7_257_000)), "7.26");
        assert_eq!(metres_mm(Length::from_um(7_256_600)), "7.257");
    }
}
