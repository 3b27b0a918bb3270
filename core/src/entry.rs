//! What somebody typed: a number with its unit, kept as typed and as the recorded quantity.
//!
//! `12 psi`, `8 1/2 in`, `1.2 bar`, `50 °F`. A number without a unit takes the unit that stands beside the field. A value
//! that would be plausible in another unit is asked about before it is taken, never changed.

mod compound;

use serde::{Deserialize, Serialize};
use thiserror::Error;

use crate::units::{Length, Mass, Pressure, Span, Temperature};
pub use compound::turned;

/// A pound-force per square inch in pascals: 0.45359237 kg × 9.80665 m/s² over 0.0254² m² (NIST SP 811, 2008, B.8).
const PSI_PA: f64 = 0.453_592_37 * 9.806_65 / (0.0254 * 0.0254);

/// What kind of quantity a field holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Kind {
    Length,
    Pressure,
    Mass,
    Temperature,
    Span,
}

/// A unit that may be typed, in the word that it is recorded by.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Unit {
    Millimetre,
    Centimetre,
    Metre,
    Inch,
    Foot,
    Pascal,
    Millibar,
    Kilopascal,
    Megapascal,
    Bar,
    Psi,
    Gram,
    Kilogram,
    Ounce,
    Pound,
    Celsius,
    Fahrenheit,
    Second,
    Minute,
    Hour,
}

/// The recorded quantity.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Serialize, Deserialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Measured {
    Length { um: Length },
    Pressure { pa: Pressure },
    Mass { mg: Mass },
    Temperature { millicelsius: Temperature },
    Span { ms: Span },
}

/// A value as typed and as recorded.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Entered {
    pub typed: String,
    pub unit: Unit,
    pub measured: Measured,
}

/// Why an entry can't be read. Each says what was typed.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, Error)]
#[serde(tag = "rule", rename_all = "snake_case")]
pub enum Unreadable {
    #[error("nothing is typed")]
    Empty,
    #[error("{typed} is not a number")]
    NotANumber { typed: String },
    #[error("{typed} could be a thousand or a decimal: write it without the comma, or with a point")]
    Ambiguous { typed: String },
    #[error("{unit} is no unit of this field: use {known}")]
    UnknownUnit { unit: String, known: String },
    #[error("{typed} is too large")]
    TooLarge { typed: String },
}

/// A question before a value is taken.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Slip {
    /// The same number in other units of its kind that would be plausible; may be empty.
    pub meant: Vec<Entered>,
}

/// One unit: its kind, its words (the first is shown), and what makes it the smallest step: `steps = value·per + offset`.
struct Row(Unit, Kind, &'static [&'static str], f64, f64);

const ROWS: &[Row] = &[
    Row(Unit::Millimetre, Kind::Length, &["mm"], 1e3, 0.0),
    Row(Unit::Centimetre, Kind::Length, &["cm"], 1e4, 0.0),
    Row(Unit::Metre, Kind::Length, &["m"], 1e6, 0.0),
    Row(Unit::Inch, Kind::Length, &["in", "inch", "inches", "\"", "″"], 25_400.0, 0.0),
    Row(Unit::Foot, Kind::Length, &["ft", "foot", "feet", "'", "′"], 304_800.0, 0.0),
    Row(Unit::Pascal, Kind::Pressure, &["Pa"], 1.0, 0.0),
    Row(Unit::Millibar, Kind::Pressure, &["mbar", "hPa"], 100.0, 0.0),
    Row(Unit::Kilopascal, Kind::Pressure, &["kPa"], 1e3, 0.0),
    Row(Unit::Megapascal, Kind::Pressure, &["MPa"], 1e6, 0.0),
    Row(Unit::Bar, Kind::Pressure, &["bar"], 1e5, 0.0),
    Row(Unit::Psi, Kind::Pressure, &["psi", "psig"], PSI_PA, 0.0),
    Row(Unit::Gram, Kind::Mass, &["g"], 1e3, 0.0),
    Row(Unit::Kilogram, Kind::Mass, &["kg"], 1e6, 0.0),
    Row(Unit::Ounce, Kind::Mass, &["oz"], 453_592.37 / 16.0, 0.0),
    Row(Unit::Pound, Kind::Mass, &["lb", "lbs"], 453_592.37, 0.0),
    Row(Unit::Celsius, Kind::Temperature, &["°C", "C", "ºC", "degC"], 1e3, 0.0),
    Row(Unit::Fahrenheit, Kind::Temperature, &["°F", "F", "degF"], 1e3 / 1.8, -32e3 / 1.8),
    Row(Unit::Second, Kind::Span, &["s", "sec"], 1e3, 0.0),
    Row(Unit::Minute, Kind::Span, &["min"], 60e3, 0.0),
    Row(Unit::Hour, Kind::Span, &["h", "hr"], 3_600e3, 0.0),
];

impl Unit {
    fn row(self) -> &'static Row {
        // Every unit has its row; a test holds that.
        ROWS.iter().find(|row| row.0 == self).unwrap_or(&ROWS[0])
    }

    /// Returns what kind of quantity it measures.
    pub fn kind(self) -> Kind {
        self.row().1
    }

    /// Returns the word to show, e.g. `psi`.
    pub fn word(self) -> &'static str {
        self.row().2.first().copied().unwrap_or_default()
    }

    /// Returns a quantity in this unit, without rounding; `None` for a quantity of another kind.
    pub fn show(self, measured: Measured) -> Option<f64> {
        let Row(_, kind, _, per, offset) = self.row();
        (*kind == measured.kind()).then(|| (measured.steps() as f64 - offset) / per)
    }

    fn measure(self, value: f64) -> Option<Measured> {
        let Row(_, kind, _, per, offset) = self.row();
        let steps = (value * per + offset).round();
        if !(steps.is_finite() && steps.abs() < 9e15) {
            return None;
        }
        Some(Measured::of(*kind, steps as i64))
    }
}

impl Measured {
    /// Returns the quantity of `steps` smallest steps.
    pub fn of(kind: Kind, steps: i64) -> Self {
        match kind {
            Kind::Length => Self::Length { um: Length::from_um(steps) },
            Kind::Pressure => Self::Pressure { pa: Pressure::from_pa(steps) },
            Kind::Mass => Self::Mass { mg: Mass::from_mg(steps) },
            Kind::Temperature => Self::Temperature { millicelsius: Temperature::from_millicelsius(steps) },
            Kind::Span => Self::Span { ms: Span::from_ms(steps) },
        }
    }

    /// Returns what kind of quantity it is.
    pub fn kind(self) -> Kind {
        match self {
            Self::Length { .. } => Kind::Length,
            Self::Pressure { .. } => Kind::Pressure,
            Self::Mass { .. } => Kind::Mass,
            Self::Temperature { .. } => Kind::Temperature,
            Self::Span { .. } => Kind::Span,
        }
    }

    fn steps(self) -> i64 {
        match self {
            Self::Length { um } => um.as_um(),
            Self::Pressure { pa } => pa.as_pa(),
            Self::Mass { mg } => mg.as_mg(),
            Self::Temperature { millicelsius } => millicelsius.as_millicelsius(),
            Self::Span { ms } => ms.as_ms(),
        }
    }
}

/// Returns what was typed into a field whose label shows `beside`, to the nearest smallest step.
///
/// A number may have a decimal point or comma, a sign, or a fraction (`8 1/2`); the unit follows, with or without a space.
/// Errors: [`Unreadable`]; a comma before exactly three digits is asked about, for it may part thousands.
/// Source: NIST SP 811 (2008), B.8, exact factors. Vectors: the tests beside.
pub fn read(typed: &str, beside: Unit) -> Result<Entered, Unreadable> {
    let (digits, word) = split(typed)?;
    let unit = unit_of(word, beside)?;
    let value = number(digits, typed)?;
    let measured = unit.measure(value).ok_or_else(|| Unreadable::TooLarge { typed: typed.into() })?;
    Ok(Entered { typed: typed.into(), unit, measured })
}

/// Returns a typed number in the unit that stands beside its field, without rounding: `plain("8 in", "mm")` is 203.2.
///
/// A unit without kin (`ppm`) may be typed as it stands beside the field, or left out.
/// Errors: [`Unreadable`]. Source: NIST SP 811 (2008), B.8 and B.9.
pub fn plain(typed: &str, beside: &str) -> Result<f64, Unreadable> {
    let (digits, word) = split(typed)?;
    let known = ROWS.iter().find(|row| row.2.first() == Some(&beside)).map(|row| row.0);
    let value = number(digits, typed)?;
    match known {
        Some(beside) => {
            let (Row(_, _, _, per, offset), Row(_, _, _, own, own_offset)) =
                (unit_of(word, beside)?.row(), beside.row());
            let converted = if per == own { value } else { (value * per + offset - own_offset) / own };
            Some(converted)
                .filter(|value| value.is_finite())
                .ok_or_else(|| Unreadable::TooLarge { typed: typed.into() })
        }
        None if word.is_empty() || word == beside => Ok(value),
        None => compound::turned(value, word, beside).ok_or_else(|| {
            let kin = compound::kin(beside);
            let known = if kin.is_empty() { beside.into() } else { kin.join(", ") };
            Unreadable::UnknownUnit { unit: word.into(), known }
        }),
    }
}

/// Returns the digits and the unit of what was typed.
fn split(typed: &str) -> Result<(&str, &str), Unreadable> {
    let text = typed.trim();
    if text.is_empty() {
        return Err(Unreadable::Empty);
    }
    let part_of_number =
        |c: char| c.is_ascii_digit() || matches!(c, '.' | ',' | '+' | '-' | '−' | '/' | ' ' | '\u{a0}');
    let (digits, word) = text.split_at(text.find(|c| !part_of_number(c)).unwrap_or(text.len()));
    Ok((digits.trim(), word.trim()))
}

/// A field as it was filled in: what was typed, the unit that stands beside, and what would be plausible there.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Typed {
    pub id: String,
    pub typed: String,
    pub beside: String,
    /// Least and most that are plausible, in smallest steps; none where everything is.
    #[serde(default)]
    pub likely: Option<(i64, i64)>,
}

/// What was understood of a field. Nothing is taken as long as there is a problem or a question.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Heard {
    pub id: String,
    /// In the unit that stands beside the field.
    pub value: Option<f64>,
    pub problem: Option<String>,
    /// The value is not plausible, and these would be: what to type instead.
    pub meant: Vec<String>,
}

/// Returns what was understood of a typed field.
///
/// A value outside what is plausible is asked about where the same number in another unit would be plausible.
/// Source: [`plain`], [`slip`].
pub fn heard(field: &Typed) -> Heard {
    let none = Heard { id: field.id.clone(), value: None, problem: None, meant: vec![] };
    match plain(&field.typed, &field.beside) {
        Err(why) => Heard { problem: Some(why.to_string()), ..none },
        Ok(value) => Heard { value: Some(value), meant: meant(field), ..none },
    }
}

fn meant(field: &Typed) -> Vec<String> {
    let beside = ROWS.iter().find(|row| row.2.first() == Some(&field.beside.as_str())).map(|row| row.0);
    let (Some(beside), Some((least, most))) = (beside, field.likely) else { return vec![] };
    let Ok(entered) = read(&field.typed, beside) else { return vec![] };
    let kind = beside.kind();
    let asked = slip(&entered, Measured::of(kind, least), Measured::of(kind, most));
    let digits = split(&field.typed).map_or("", |(digits, _)| digits);
    asked.map_or_else(Vec::new, |slip| slip.meant.iter().map(|one| format!("{digits} {}", one.unit.word())).collect())
}

fn unit_of(word: &str, beside: Unit) -> Result<Unit, Unreadable> {
    if word.is_empty() {
        return Ok(beside);
    }
    let kind = beside.kind();
    let of_kind = || ROWS.iter().filter(|row| row.1 == kind);
    // As written first, for Pa, mbar and MPa differ by a letter's case; then as a hurried thumb writes it.
    let exact = of_kind().find(|row| row.2.contains(&word));
    let near = || of_kind().find(|row| row.2.iter().any(|known| known.eq_ignore_ascii_case(word)));
    exact.or_else(near).map(|row| row.0).ok_or_else(|| {
        let known: Vec<_> = of_kind().filter_map(|row| row.2.first().copied()).collect();
        Unreadable::UnknownUnit { unit: word.into(), known: known.join(", ") }
    })
}

fn number(digits: &str, typed: &str) -> Result<f64, Unreadable> {
    let not_a_number = || Unreadable::NotANumber { typed: typed.into() };
    let text = digits.replace('−', "-").replace('\u{a0}', " ");
    let (whole, fraction) = match text.split_once('/') {
        None => (text.as_str(), 0.0),
        Some((left, below)) => {
            let (whole, above) = left.trim().rsplit_once(' ').unwrap_or(("0", left.trim()));
            let (above, below) = (count(above).ok_or_else(not_a_number)?, count(below).ok_or_else(not_a_number)?);
            if below == 0 {
                return Err(not_a_number());
            }
            (whole, f64::from(above) / f64::from(below))
        }
    };
    let whole = decimal(whole.trim(), typed)?;
    let sign = if whole.is_sign_negative() { -1.0 } else { 1.0 };
    Ok(whole + sign * fraction)
}

fn count(text: &str) -> Option<u16> {
    let text = text.trim();
    text.bytes().all(|byte| byte.is_ascii_digit()).then(|| text.parse().ok()).flatten()
}

fn decimal(text: &str, typed: &str) -> Result<f64, Unreadable> {
    let parts_thousands = |(before, after): (&str, &str)| {
        after.len() == 3
            && after.bytes().all(|byte| byte.is_ascii_digit())
            && !before.trim_start_matches(['-', '+', '0']).is_empty()
    };
    if text.matches(',').count() > 1 || text.split_once(',').is_some_and(parts_thousands) {
        return Err(Unreadable::Ambiguous { typed: typed.into() });
    }
    let text = text.replace(',', ".");
    let value: Option<f64> = text.parse().ok();
    value.filter(|value| value.is_finite()).ok_or_else(|| Unreadable::NotANumber { typed: typed.into() })
}

/// Returns the question to ask before taking a value outside what is plausible, or `None` inside it.
///
/// `least` and `most` come from the label, sheet or contract that bears on the field, and belong to it. The same number in
/// another unit of its kind that would be plausible is offered, `psi` for a `bar` first of all.
/// Source: design rule of this project.
pub fn slip(entered: &Entered, least: Measured, most: Measured) -> Option<Slip> {
    let plausible = |measured: Measured| least.steps() <= measured.steps() && measured.steps() <= most.steps();
    let same_kind = least.kind() == entered.measured.kind() && most.kind() == entered.measured.kind();
    if !same_kind || plausible(entered.measured) {
        return None;
    }
    let value = entered.unit.show(entered.measured)?;
    let others = ROWS.iter().filter(|row| row.1 == entered.unit.kind() && row.0 != entered.unit);
    let meant = others.filter_map(|row| {
        let measured = row.0.measure(value).filter(|measured| plausible(*measured))?;
        Some(Entered { typed: entered.typed.clone(), unit: row.0, measured })
    });
    Some(Slip { meant: meant.collect() })
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn measured(typed: &str, beside: Unit) -> Measured {
        read(typed, beside).unwrap().measured
    }

    fn pascals(pa: i64) -> Measured {
        Measured::Pressure { pa: Pressure::from_pa(pa) }
    }

    #[test]
    fn every_unit_has_its_row() {
        let last = Unit::Hour as usize;
        assert_eq!(ROWS.len(), last + 1);
        for (index, row) in ROWS.iter().enumerate() {
            assert_eq!(row.0 as usize, index);
        }
    }

    #[test]
    fn units_match_nist_sp_811() {
        // NIST SP 811 (2008), B.8 and B.9: inch, foot, psi, pound, ounce; degree Fahrenheit.
        assert_eq!(measured("1 in", Unit::Metre), Measured::Length { um: Length::from_um(25_400) });
        assert_eq!(measured("1 ft", Unit::Metre), Measured::Length { um: Length::from_um(304_800) });
        assert_eq!(measured("1000 psi", Unit::Bar), pascals(6_894_757));
        assert_eq!(measured("1 lb", Unit::Kilogram), Measured::Mass { mg: Mass::from_mg(453_592) });
        assert_eq!(measured("100 oz", Unit::Kilogram), Measured::Mass { mg: Mass::from_mg(2_834_952) });
        let fifty = Measured::Temperature { millicelsius: Temperature::from_millicelsius(10_000) };
        assert_eq!(measured("50 °F", Unit::Celsius), fifty);
        assert_eq!(measured("1 bar", Unit::Psi), pascals(100_000));
    }

    #[test]
    fn a_number_alone_takes_the_unit_beside_the_field() {
        assert_eq!(measured("1.2", Unit::Bar), pascals(120_000));
        assert_eq!(read("12", Unit::Psi).unwrap().unit, Unit::Psi);
        assert_eq!(read(" 12psi ", Unit::Bar).unwrap().typed, " 12psi ");
    }

    #[test]
    fn commas_fractions_signs_and_hurried_thumbs_are_read() {
        assert_eq!(measured("1,2 BAR", Unit::Psi), pascals(120_000));
        assert_eq!(measured("8 1/2 in", Unit::Metre), Measured::Length { um: Length::from_um(215_900) });
        assert_eq!(measured("1/2\"", Unit::Metre), Measured::Length { um: Length::from_um(12_700) });
        assert_eq!(measured("-1 1/2 in", Unit::Metre), Measured::Length { um: Length::from_um(-38_100) });
        let cold = Measured::Temperature { millicelsius: Temperature::from_millicelsius(-5_500) };
        assert_eq!(measured("−5,5 °C", Unit::Fahrenheit), cold);
        assert_eq!(measured("0,125 m", Unit::Metre), Measured::Length { um: Length::from_um(125_000) });
    }

    #[test]
    fn what_cannot_be_read_says_why() {
        let why = |typed: &str| read(typed, Unit::Bar).unwrap_err();
        assert_eq!(why("  "), Unreadable::Empty);
        assert!(matches!(why("bar"), Unreadable::NotANumber { .. }));
        assert!(matches!(why("1.2.3 bar"), Unreadable::NotANumber { .. }));
        assert!(matches!(why("1/0 bar"), Unreadable::NotANumber { .. }));
        assert!(matches!(why("NaN"), Unreadable::UnknownUnit { .. } | Unreadable::NotANumber { .. }));
        assert!(matches!(why("inf"), Unreadable::UnknownUnit { .. }));
        assert!(matches!(why("1,200"), Unreadable::Ambiguous { .. }));
        assert!(matches!(why("12 mm"), Unreadable::UnknownUnit { .. }));
        assert!(matches!(why(&"9".repeat(400)), Unreadable::NotANumber { .. } | Unreadable::TooLarge { .. }));
    }

    #[test]
    fn bar_typed_for_psi_is_asked_about() {
        let (least, most) = (pascals(50_000), pascals(250_000));
        let typed = read("16", Unit::Bar).unwrap();
        let slip = slip(&typed, least, most).unwrap();
        let units: Vec<_> = slip.meant.iter().map(|entered| entered.unit).collect();
        assert_eq!(units, [Unit::Psi]);
        assert_eq!(slip.meant[0].measured, pascals(110_316));
    }

    #[test]
    fn a_field_hears_its_unit_and_asks_about_a_slip() {
        let field =
            |typed: &str, likely| Typed { id: "gauge".into(), typed: typed.into(), beside: "bar".into(), likely };
        let window = Some((33_000, 280_000));
        let psi = heard(&field("17.4 psi", window));
        assert!((psi.value.unwrap() - 1.199_69).abs() < 1e-5 && psi.meant.is_empty());
        let slipped = heard(&field("16", window));
        assert_eq!((slipped.value, slipped.meant), (Some(16.0), vec!["16 psi".to_owned()]));
        assert_eq!(heard(&field("1.2", window)).meant, Vec::<String>::new());
        assert_eq!(heard(&field("16", None)).meant, Vec::<String>::new());
        assert!(heard(&field("16 mm", window)).problem.is_some());
    }

    #[test]
    fn what_is_plausible_is_taken_and_what_fits_no_unit_is_still_asked() {
        let (least, most) = (pascals(50_000), pascals(250_000));
        assert_eq!(slip(&read("1.2 bar", Unit::Bar).unwrap(), least, most), None);
        let nonsense = slip(&read("0 bar", Unit::Bar).unwrap(), least, most).unwrap();
        assert!(nonsense.meant.is_empty());
    }

    proptest! {
        #[test]
        fn there_and_back_is_the_same(index in 0..20usize, steps in -1_000_000_000i64..1_000_000_000) {
            let unit = ROWS[index].0;
            let value = (steps as f64 - ROWS[index].4) / ROWS[index].3;
            let typed = format!("{value} {}", unit.word());
            let entered = read(&typed, unit).unwrap();
            prop_assert_eq!(entered.measured.steps(), steps);
            let shown = unit.show(entered.measured).unwrap();
            prop_assert!((shown - value).abs() <= 1e-9 * value.abs().max(1.0));
        }

        #[test]
        fn nothing_typed_panics(typed in ".{0,20}", index in 0..20usize) {
            let _ = read(&typed, ROWS[index].0);
        }

        #[test]
        fn no_run_of_digits_and_signs_panics(typed in "[0-9 ,./+−-]{0,12}(bar|in|°F)?") {
            let _ = read(&typed, Unit::Bar);
        }
    }
}
