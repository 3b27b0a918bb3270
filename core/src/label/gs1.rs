//! Element strings: application identifiers and what stands behind them.

use chrono::Datelike as _;
use serde::Serialize;

/// The separator behind a value of variable length: FNC1, passed on as ASCII 29.
const SEPARATOR: char = '\u{1d}';

/// What a label says. At least one of the three is there.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct Label {
    /// The product: a GTIN of 14 digits, its check digit verified.
    pub product: Option<String>,
    pub lot: Option<String>,
    /// The last good day, `YYYY-MM-DD`.
    pub expires: Option<String>,
}

/// What is wrong with what a code says: it is read again or typed, never guessed.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum Wrong {
    #[error(
        "The product number {number} has a wrong check digit: {printed} stands there, {computed} is right. Photograph the label again; if it stays so, type what is printed and tell the supplier."
    )]
    CheckDigit { number: String, printed: u32, computed: u32 },
    #[error("The code gives “{value}” as a date, which is none. Type what is printed.")]
    Date { value: String },
    #[error("The code ends within application identifier ({identifier}). Photograph the label again.")]
    CutOff { identifier: String },
    #[error(
        "The code has “{value}” where application identifier ({identifier}) asks for something else. Type what is printed."
    )]
    Value { identifier: &'static str, value: String },
    #[error("The picture shows two labels: “{one}” and “{other}”. Photograph one of them alone.")]
    TwoLabels { one: String, other: String },
    #[error(
        "The code says neither product, lot nor last good day. Look for another code on the label, or type what is printed."
    )]
    NothingOfUse,
}

/// Returns the length behind the identifier of element strings that end without a separator, in characters.
///
/// Source: GS1 General Specifications, release 24, figure 7.8.5-2 (lengths there count the two digits of the identifier).
fn fixed_length(first_two: &str) -> Option<usize> {
    let whole = match first_two {
        "00" => 20,
        "01" | "02" | "03" => 16,
        "04" => 18,
        "11" | "12" | "13" | "14" | "15" | "16" | "17" | "18" | "19" => 8,
        "20" => 4,
        "31" | "32" | "33" | "34" | "35" | "36" => 10,
        "41" => 16,
        _ => return None,
    };
    Some(whole - 2)
}

/// Returns what an element string says of product (01), lot (10) and last good day (17); the rest is passed over.
///
/// Errors: `CheckDigit`, `Date`, `CutOff`, `Value`, and `TwoLabels` if one thing is said twice and differently.
pub fn parsed(text: &str, year: i32) -> Result<Label, Wrong> {
    let mut rest = text.trim_start_matches(SEPARATOR);
    let mut label = Label::default();
    while !rest.is_empty() {
        let (identifier, value, after) = next(rest)?;
        label = label.with(element(identifier, value, year)?)?;
        rest = after;
    }
    Ok(label)
}

/// Cuts one element off: its first two digits, what stands behind them, and the rest.
fn next(text: &str) -> Result<(&str, &str, &str), Wrong> {
    let cut_off = || Wrong::CutOff { identifier: text.chars().take(2).collect() };
    let (identifier, behind) = text.split_at_checked(2).ok_or_else(cut_off)?;
    let (value, after) = match fixed_length(identifier) {
        Some(length) => behind.split_at_checked(length).ok_or_else(cut_off)?,
        None => behind.split_once(SEPARATOR).unwrap_or((behind, "")),
    };
    Ok((identifier, value, after.trim_start_matches(SEPARATOR)))
}

fn element(identifier: &str, value: &str, year: i32) -> Result<Label, Wrong> {
    Ok(match identifier {
        "01" => Label { product: Some(product(value)?), ..Label::default() },
        "10" => Label { lot: Some(lot(value)?), ..Label::default() },
        "17" => Label { expires: Some(last_day(value, year)?), ..Label::default() },
        _ => Label::default(),
    })
}

/// Returns a GTIN whose check digit is right: weights 3 and 1 from the right, up to the next ten.
///
/// Source: GS1 General Specifications, release 24, 7.9.1.
fn product(value: &str) -> Result<String, Wrong> {
    let digits: Option<Vec<u32>> = value.chars().map(|digit| digit.to_digit(10)).collect();
    let Some([front @ .., printed]) = digits.as_deref().filter(|digits| digits.len() == 14) else {
        return Err(Wrong::Value { identifier: "01", value: value.into() });
    };
    let computed = check_digit(front);
    if computed != *printed {
        return Err(Wrong::CheckDigit { number: value.into(), printed: *printed, computed });
    }
    Ok(value.to_owned())
}

fn check_digit(front: &[u32]) -> u32 {
    let sum: u32 =
        front.iter().rev().enumerate().map(|(place, digit)| if place % 2 == 0 { 3 * digit } else { *digit }).sum();
    (10 - sum % 10) % 10
}

/// Returns a lot of 1 to 20 characters of the set that GS1 allows.
///
/// Source: GS1 General Specifications, release 24, 3.4.1 and figure 7.11-1.
fn lot(value: &str) -> Result<String, Wrong> {
    let allowed = |letter: char| letter.is_ascii_alphanumeric() || "!\"%&'()*+,-./_:;<=>?".contains(letter);
    if (1..=20).contains(&value.len()) && value.chars().all(allowed) {
        return Ok(value.to_owned());
    }
    Err(Wrong::Value { identifier: "10", value: value.into() })
}

/// Returns the date of `YYMMDD`; day 00 is the last day of its month.
///
/// Source: GS1 General Specifications, release 24, 3.4.7; the century by 7.12.
fn last_day(value: &str, year: i32) -> Result<String, Wrong> {
    let wrong = || Wrong::Date { value: value.into() };
    let number = |from: usize| value.get(from..from + 2).and_then(|two| two.parse::<u8>().ok()).ok_or_else(wrong);
    let (two, month, day) = (number(0)?, number(2)?, number(4)?);
    if !value.chars().all(|digit| digit.is_ascii_digit()) {
        return Err(wrong());
    }
    let whole = century(i32::from(two), year) + i32::from(two);
    let first = chrono::NaiveDate::from_ymd_opt(whole, month.into(), 1).ok_or_else(wrong)?;
    let days = first.num_days_in_month();
    let day = if day == 0 { days } else { day };
    chrono::NaiveDate::from_ymd_opt(whole, month.into(), day.into()).map(|date| date.to_string()).ok_or_else(wrong)
}

/// Returns the hundreds of the year that two digits stand for: within 49 years back and 50 ahead of now.
fn century(two: i32, year: i32) -> i32 {
    let hundreds = year - year.rem_euclid(100);
    match two - year.rem_euclid(100) {
        51..=99 => hundreds - 100,
        -99..=-50 => hundreds + 100,
        _ => hundreds,
    }
}

impl Label {
    /// Returns what both say together.
    ///
    /// Errors: `TwoLabels` if they differ in anything.
    pub fn with(self, other: Self) -> Result<Self, Wrong> {
        Ok(Self {
            product: same(self.product, other.product)?,
            lot: same(self.lot, other.lot)?,
            expires: same(self.expires, other.expires)?,
        })
    }

    /// Returns itself if it says anything.
    ///
    /// Errors: `NothingOfUse`.
    pub fn said_something(self) -> Result<Self, Wrong> {
        if self == Self::default() { Err(Wrong::NothingOfUse) } else { Ok(self) }
    }
}

fn same(one: Option<String>, other: Option<String>) -> Result<Option<String>, Wrong> {
    match (one, other) {
        (Some(one), Some(other)) if one != other => Err(Wrong::TwoLabels { one, other }),
        (one, other) => Ok(one.or(other)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn says(text: &str) -> Result<Label, Wrong> {
        parsed(text, 2026)
    }

    /// Source: GS1 General Specifications, release 24, figure 7.9.1-1: the number 6 2 9 1 0 4 1 5 0 0 2 1 has check digit 3
    /// (recalled from memory; the digit was computed by hand besides).
    #[test]
    fn a_check_digit_is_computed_from_the_right() {
        assert_eq!(check_digit(&[6, 2, 9, 1, 0, 4, 1, 5, 0, 0, 2, 1]), 3);
        assert_eq!(check_digit(&[0, 9, 5, 0, 6, 0, 0, 0, 1, 3, 4, 3, 5]), 2);
    }

    #[test]
    fn a_wrong_check_digit_is_named() {
        let wrong = Wrong::CheckDigit { number: "09506000134350".into(), printed: 0, computed: 2 };
        assert_eq!(says("0109506000134350"), Err(wrong));
    }

    #[test]
    fn the_order_does_not_matter_and_other_identifiers_are_passed_over() {
        let all = Label {
            product: Some("09506000134352".into()),
            lot: Some("L1".into()),
            expires: Some("2027-02-28".into()),
        };
        for text in [
            "01095060001343521727022810L1",
            "10L1\u{1d}17270228\u{1d}0109506000134352",
            "21X9\u{1d}310300125010L1\u{1d}010950600013435217270228",
        ] {
            assert_eq!(says(text), Ok(all.clone()), "{text}");
        }
    }

    /// Source: GS1 General Specifications, release 24, 3.4.7 (day 00) and 7.12 (century); 2028 is a leap year.
    #[test]
    fn dates_of_two_digits_find_their_month_and_century() {
        for (code, date) in
            [("280200", "2028-02-29"), ("270200", "2027-02-28"), ("760101", "2076-01-01"), ("770101", "1977-01-01")]
        {
            assert_eq!(parsed(&format!("17{code}"), 2026).unwrap().expires.as_deref(), Some(date));
        }
        assert_eq!(parsed("17020101", 1998).unwrap().expires.as_deref(), Some("2002-01-01"));
        for none in ["271301", "270230", "27 101", "+70101"] {
            assert_eq!(says(&format!("17{none}")), Err(Wrong::Date { value: none.into() }));
        }
    }

    #[test]
    fn what_is_cut_off_or_said_twice_is_refused() {
        assert_eq!(says("0109506"), Err(Wrong::CutOff { identifier: "01".into() }));
        assert_eq!(says("10A\u{1d}10B"), Err(Wrong::TwoLabels { one: "A".into(), other: "B".into() }));
        assert!(matches!(says("10123456789012345678901"), Err(Wrong::Value { identifier: "10", .. })));
        assert_eq!(parsed("", 2026).unwrap().said_something(), Err(Wrong::NothingOfUse));
    }

    proptest! {
        #[test]
        fn no_text_makes_it_fail(text in "\\PC{0,40}", year in 1900..2300) {
            let _ = parsed(&text, year);
        }

        #[test]
        fn one_wrong_digit_of_a_product_is_always_found(front in prop::array::uniform13(0u32..10), place in 0usize..14, by in 1u32..10) {
            let mut digits = front.to_vec();
            digits.push(check_digit(&front));
            digits[place] = (digits[place] + by) % 10;
            let text: String = digits.iter().map(u32::to_string).collect();
            prop_assert!(product(&text).is_err());
        }
    }
}
