//! Figures with their units, as the reader has them.
//!
//! Conversions are exact: of whole recorded steps, in integers, rounded once, to the nearest unless the name says
//! `_up` or `_down`. Sources of the US customary units: NIST SP 811 (2008), B.8 and B.9: 1 in = 25.4 mm and
//! 1 ft = 304.8 mm exactly, 1 lb = 453.592 37 g exactly, 1 oz = 1/16 lb, 1 lbf = 4.448 221 615 260 5 N, 1 psi = 4.448 221 615 260 5 N / (25.4 mm)²,
//! t(°F) = 1.8 t(°C) + 32.

use super::catalogue::say;
use super::{Dates, Language, Units, reader};
use crate::units::{Length, Mass, Pressure, Span, Temperature};

/// What is shown: a recorded quantity in one of its usual units.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Of {
    /// Micrometres as m or ft.
    Metres,
    /// Micrometres as mm or in.
    Millimetres,
    /// Pascals as bar or psi.
    Bar,
    /// Thousandths of a degree Celsius as °C or °F.
    Celsius,
    /// Milligrams as g or oz.
    Grams,
    /// Milligrams as kg or lb.
    Kilograms,
    /// Newtons as kN or lbf.
    Force,
}

/// How many decimals a figure has.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Decimals {
    /// So many.
    Just(usize),
    /// Up to so many, without zeros at the end.
    Most(usize),
    /// All that were recorded, and at least so many; where the unit is another than the recorded one, the usual ones.
    Recorded(usize),
}

/// Which way a figure is cut.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Cut {
    Nearest,
    Down,
    Up,
}

/// `(steps · times + shift) / over` is the figure.
struct Scale {
    unit: &'static str,
    shift: i128,
    times: i128,
    over: i128,
    /// Decimals of a customary figure; `None` where the unit is a power of ten of the recorded steps.
    usual: Option<usize>,
    /// Decimals down to the recorded step.
    digits: usize,
}

const fn si(unit: &'static str, digits: usize) -> Scale {
    Scale { unit, shift: 0, times: 1, over: 10_i128.pow(digits as u32), usual: None, digits }
}

const fn us(unit: &'static str, times: i128, over: i128, usual: usize) -> Scale {
    Scale { unit, shift: 0, times, over, usual: Some(usual), digits: usual }
}

fn scale(of: Of) -> Scale {
    match (of, reader().units) {
        (Of::Metres, Units::Si) => si("m", 6),
        (Of::Millimetres, Units::Si) => si("mm", 3),
        (Of::Bar, Units::Si) => si("bar", 5),
        (Of::Celsius, Units::Si) => si("°C", 3),
        (Of::Grams, Units::Si) => si("g", 3),
        (Of::Kilograms, Units::Si) => si("kg", 6),
        (Of::Force, Units::Si) => si("kN", 3),
        (Of::Metres, Units::Us) => us("ft", 1, 304_800, 2),
        (Of::Millimetres, Units::Us) => us("in", 1, 25_400, 2),
        (Of::Bar, Units::Us) => us("psi", 6_451_600_000, 44_482_216_152_605, 1),
        (Of::Celsius, Units::Us) => Scale { shift: 160_000, ..us("°F", 9, 5_000, 1) },
        (Of::Grams, Units::Us) => us("oz", 1_000_000, 28_349_523_125, 1),
        (Of::Kilograms, Units::Us) => us("lb", 100_000, 45_359_237_000, 3),
        (Of::Force, Units::Us) => us("lbf", 10_000_000_000_000, 44_482_216_152_605, 0),
    }
}

/// Returns the unit in which a quantity is shown.
pub fn unit(of: Of) -> &'static str {
    scale(of).unit
}

/// Returns a quantity in the unit in which it is shown, for a drawing.
pub fn value(of: Of, steps: f64) -> f64 {
    let scale = scale(of);
    (steps * scale.times as f64 + scale.shift as f64) / scale.over as f64
}

/// Returns the figure of recorded steps without its unit, with a true minus and the decimal sign of the language.
pub fn figure(of: Of, steps: i64, decimals: Decimals, cut: Cut) -> String {
    let scale = scale(of);
    let places = match (decimals, scale.usual) {
        (Decimals::Just(places) | Decimals::Most(places), None) => places,
        (Decimals::Just(_) | Decimals::Most(_) | Decimals::Recorded(_), Some(usual)) => usual,
        (Decimals::Recorded(_), None) => scale.digits,
    };
    let ten = 10_i128.pow(places as u32);
    let (over, sum) = (scale.over, (i128::from(steps) * scale.times + scale.shift) * ten);
    let whole = match cut {
        Cut::Down => sum.div_euclid(over),
        Cut::Up => -(-sum).div_euclid(over),
        // Halves go away from zero, as a person rounds.
        Cut::Nearest => (sum.abs() * 2 + over) / (2 * over) * sum.signum(),
    };
    let least = match decimals {
        Decimals::Just(_) => places,
        Decimals::Most(_) => 0,
        Decimals::Recorded(least) => least.min(places),
    };
    decimal(whole, places, least)
}

/// Returns whole steps of a tenth, hundredth, … as a decimal with at least `least` places.
fn decimal(steps: i128, places: usize, least: usize) -> String {
    let ten = 10_u128.pow(places as u32);
    let (whole, rest) = (steps.unsigned_abs() / ten, steps.unsigned_abs() % ten);
    let decimals = if places == 0 { String::new() } else { format!("{rest:0places$}") };
    let kept = decimals.trim_end_matches('0').len().max(least);
    let sign = if steps < 0 { "−" } else { "" };
    if kept == 0 { format!("{sign}{whole}") } else { format!("{sign}{whole}{}{}", point(), &decimals[..kept]) }
}

/// Returns the decimal sign of the language (CLDR: a comma in German, Spanish and French).
pub fn point() -> char {
    if reader().language == Language::En { '.' } else { ',' }
}

/// Returns a computed number with so many decimals, to the nearest, with the decimal sign of the language.
pub fn number(value: f64, decimals: usize) -> String {
    let text = format!("{value:.decimals$}");
    let zero = text.trim_start_matches('-').chars().all(|letter| matches!(letter, '0' | '.'));
    let sign = if text.starts_with('-') && !zero { "−" } else { "" };
    format!("{sign}{}", text.trim_start_matches('-').replace('.', point().encode_utf8(&mut [0; 4])))
}

/// Returns figure and unit.
pub fn quantity(of: Of, steps: i64, decimals: Decimals, cut: Cut) -> String {
    format!("{} {}", figure(of, steps, decimals, cut), unit(of))
}

/// Returns two figures and their unit: `8 to 24 °C`.
pub fn between(of: Of, from: i64, to: i64, decimals: Decimals) -> String {
    let figure = |steps| figure(of, steps, decimals, Cut::Nearest);
    say(
        "quantity-between",
        &[("from", (&figure(from)).into()), ("to", (&figure(to)).into()), ("unit", unit(of).into())],
    )
}

/// Returns a recorded number with the unit that its key ends in: `show("cover_um", 134_000)` is `134 mm`.
pub fn show(key: &str, number: i64) -> String {
    match key.rsplit('_').next().unwrap_or_default() {
        "um" if number.abs() >= 2_000_000 => quantity(Of::Metres, number, Decimals::Just(2), Cut::Nearest),
        "um" => quantity(Of::Millimetres, number, Decimals::Most(1), Cut::Nearest),
        "pa" => quantity(Of::Bar, number, Decimals::Just(2), Cut::Nearest),
        "mc" => quantity(Of::Celsius, number, Decimals::Most(1), Cut::Nearest),
        "mg" => quantity(Of::Grams, number, Decimals::Most(0), Cut::Nearest),
        "ms" => span(number),
        "pct" => format!("{number} %"),
        _ => number.to_string(),
    }
}

/// Returns whether a recorded number is a bare count: its key ends in no unit.
pub fn unitless(key: &str) -> bool {
    !matches!(key.rsplit('_').next(), Some("um" | "pa" | "mc" | "mg" | "ms" | "pct"))
}

/// Returns a span as `1 h 05 min`, `6 min 17 s` or `40 s`; whole seconds, cut toward zero.
pub fn span(ms: i64) -> String {
    let seconds = ms.abs() / 1000;
    let (hours, minutes, rest) = (seconds / 3600, seconds / 60 % 60, seconds % 60);
    let sign = if ms < 0 { "−" } else { "" };
    match (hours, minutes, rest) {
        (0, 0, rest) => format!("{sign}{rest} s"),
        (0, minutes, rest) => format!("{sign}{minutes} min {rest:02} s"),
        (hours, minutes, _) => format!("{sign}{hours} h {minutes:02} min"),
    }
}

/// Returns `196.5 mm`, with all that was recorded.
pub fn mm(length: Length) -> String {
    quantity(Of::Millimetres, length.as_um(), Decimals::Recorded(0), Cut::Nearest)
}

/// Returns `196.5`.
pub fn mm_bare(length: Length) -> String {
    figure(Of::Millimetres, length.as_um(), Decimals::Recorded(0), Cut::Nearest)
}

/// Returns the unit of [`mm_bare`].
pub fn mm_unit() -> &'static str {
    unit(Of::Millimetres)
}

/// Returns `180 to 230 mm`.
pub fn mm_between(from: Length, to: Length) -> String {
    between(Of::Millimetres, from.as_um(), to.as_um(), Decimals::Recorded(0))
}

/// Returns an inside diameter: `199.0 mm`.
pub fn inside_unit(diameter: Length) -> String {
    quantity(Of::Millimetres, diameter.as_um(), Decimals::Recorded(1), Cut::Nearest)
}

/// Returns the least and the most inside diameter: `196.5 to 199.0 mm`.
pub fn inside_between(least: Length, most: Length) -> String {
    between(Of::Millimetres, least.as_um(), most.as_um(), Decimals::Recorded(1))
}

/// Returns whole millimetres with the unit, rounded down: `134 mm`.
pub fn mm_down(length: Length) -> String {
    quantity(Of::Millimetres, length.as_um(), Decimals::Just(0), Cut::Down)
}

/// Returns whole millimetres with the unit, rounded up.
pub fn mm_up(length: Length) -> String {
    quantity(Of::Millimetres, length.as_um(), Decimals::Just(0), Cut::Up)
}

/// Returns `7.26 m`, to the nearest centimetre: a place, no measure of merit.
pub fn metres(length: Length) -> String {
    quantity(Of::Metres, length.as_um(), Decimals::Just(2), Cut::Nearest)
}

/// Returns `7.257 m`, to the nearest millimetre.
pub fn metres_mm(length: Length) -> String {
    quantity(Of::Metres, length.as_um(), Decimals::Just(3), Cut::Nearest)
}

/// Returns a distance in whole metres or feet.
pub fn metres_whole(metres: f64) -> String {
    format!("{} {}", number(value(Of::Metres, metres * 1e6), 0), unit(Of::Metres))
}

/// Returns recorded millimetres in whole metres or feet, rounded up.
pub fn metres_whole_up(millimetres: i64) -> String {
    let metres = value(Of::Metres, millimetres as f64 * 1e3);
    format!("{} {}", number(metres.ceil(), 0), unit(Of::Metres))
}

/// Returns `7.26 to 7.86 m`.
pub fn metres_between(from: Length, to: Length) -> String {
    between(Of::Metres, from.as_um(), to.as_um(), Decimals::Just(2))
}

/// Returns `1.04 bar`, with more decimals where more were recorded.
pub fn bar(pressure: Pressure) -> String {
    quantity(Of::Bar, pressure.as_pa(), Decimals::Recorded(2), Cut::Nearest)
}

/// Returns `1.04`.
pub fn bar_bare(pressure: Pressure) -> String {
    figure(Of::Bar, pressure.as_pa(), Decimals::Recorded(2), Cut::Nearest)
}

/// Returns the unit of [`bar_bare`].
pub fn bar_unit() -> &'static str {
    unit(Of::Bar)
}

/// Returns `0.96 bar`, rounded down to the hundredth.
pub fn bar_down(pressure: Pressure) -> String {
    quantity(Of::Bar, pressure.as_pa(), Decimals::Just(2), Cut::Down)
}

/// Returns `0.06 bar`, rounded up to the hundredth.
pub fn bar_up(pressure: Pressure) -> String {
    quantity(Of::Bar, pressure.as_pa(), Decimals::Just(2), Cut::Up)
}

/// Returns `0.059 bar`, rounded up to the thousandth: water is never made lighter.
pub fn bar_fine_up(pressure: Pressure) -> String {
    quantity(Of::Bar, pressure.as_pa(), Decimals::Just(3), Cut::Up)
}

/// Returns `15 °C`, with the decimals that it has.
pub fn celsius_short(temperature: Temperature) -> String {
    quantity(Of::Celsius, temperature.as_millicelsius(), Decimals::Recorded(0), Cut::Nearest)
}

/// Returns a recorded value of a field in the unit that the field names, or in the reader's for it.
///
/// `per` steps make one `unit`; it is a power of ten, at least 1.
pub fn measured(steps: i64, per: i64, least: usize, unit: &str) -> String {
    // A field may record kilograms in grams.
    let of = match unit {
        "m" => Some((Of::Metres, 1_000_000)),
        "mm" => Some((Of::Millimetres, 1_000)),
        "bar" => Some((Of::Bar, 100_000)),
        "°C" => Some((Of::Celsius, 1_000)),
        "g" => Some((Of::Grams, 1_000)),
        "kg" => Some((Of::Kilograms, 1_000_000)),
        _ => None,
    };
    let of = of.filter(|(_, fine)| fine % per.max(1) == 0).map(|(of, fine)| (of, fine / per.max(1)));
    match of {
        Some((of, finer)) => quantity(of, steps.saturating_mul(finer), Decimals::Recorded(least), Cut::Nearest),
        None if unit.is_empty() => exact(steps, per, least),
        None => format!("{} {unit}", exact(steps, per, least)),
    }
}

/// Returns whole steps as a decimal number, with all its digits and at least `least` decimals.
///
/// `per` steps make one unit; it is a power of ten, at least 1.
pub fn exact(steps: i64, per: i64, least: usize) -> String {
    let places = per.max(1).ilog10() as usize;
    decimal(i128::from(steps), places, least.min(places))
}

/// Returns `12.6 °C`, with all that was recorded.
pub fn celsius(temperature: Temperature) -> String {
    quantity(Of::Celsius, temperature.as_millicelsius(), Decimals::Recorded(1), Cut::Nearest)
}

/// Returns `12.6 °C`, rounded down to the tenth: a limit that is not to be passed is never made warmer.
pub fn celsius_down(temperature: Temperature) -> String {
    quantity(Of::Celsius, temperature.as_millicelsius(), Decimals::Just(1), Cut::Down)
}

/// Returns `8 to 24 °C`.
pub fn celsius_range(from: Temperature, to: Temperature) -> String {
    between(Of::Celsius, from.as_millicelsius(), to.as_millicelsius(), Decimals::Recorded(0))
}

/// Returns `4.36 kN` of recorded newtons, rounded up: a danger is never made smaller.
pub fn force_up(newtons: i64) -> String {
    quantity(Of::Force, newtons, Decimals::Just(2), Cut::Up)
}

/// Returns `812 g`.
pub fn grams(mass: Mass) -> String {
    quantity(Of::Grams, mass.as_mg(), Decimals::Recorded(0), Cut::Nearest)
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

/// Returns how a date is written, in the conversion specifications of strftime (ISO C).
pub fn date_pattern() -> &'static str {
    let reader = reader();
    match (reader.dates, reader.language, reader.units) {
        (Dates::Iso, ..) => "%Y-%m-%d",
        (Dates::Local, Language::En, Units::Si) => "%-d %b %Y",
        (Dates::Local, Language::En, Units::Us) => "%b %-d, %Y",
        (Dates::Local, Language::De, _) => "%d.%m.%Y",
        (Dates::Local, Language::Es | Language::Fr, _) => "%d/%m/%Y",
    }
}

/// Returns a day that was written as 2026-10-14 (ISO 8601) as the reader writes it; any other text as it stands.
pub fn day(text: &str) -> String {
    let day = text.parse::<chrono::NaiveDate>();
    day.map_or_else(|_| text.to_owned(), |day| day.format(date_pattern()).to_string())
}

/// Returns how a date is written without its year, as [`date_pattern`].
pub fn day_pattern() -> &'static str {
    let reader = reader();
    match (reader.dates, reader.language, reader.units) {
        (Dates::Iso, ..) => "%m-%d",
        (Dates::Local, Language::En, Units::Si) => "%-d %b",
        (Dates::Local, Language::En, Units::Us) => "%b %-d",
        (Dates::Local, Language::De, _) => "%d.%m.",
        (Dates::Local, Language::Es | Language::Fr, _) => "%d/%m",
    }
}

fn minus(span: Span) -> &'static str {
    if span.as_ms() < 0 { "−" } else { "" }
}
