//! The plain words of a code, in the language of who reads. The words are ours; the codes and their meaning are those of EN 13508-2.
//!
//! Source: code tables `eucodes.csv` and `eucodes_full_de.csv` of the R package kwb.en13508.2 (MIT), which hold EN
//! 13508-2:2003+A1:2011. All words stand in `words/table.rs`.

mod table;

use super::{Clock, Observation};
use crate::words::retold;
use table::{CODES, Code, MATERIALS, QUANTITIES, SHAPES, USES};

/// Returns the plain words of a code with its characterisations, such as `Crack, lengthwise`.
///
/// A characterisation without words stands as it is, as in `Crack, lengthwise, Q`; a code without words stands as it
/// is with `unknown code` behind it.
pub fn words(code: &str, char1: Option<&str>, char2: Option<&str>) -> String {
    let Some(entry) = CODES.iter().find(|entry| entry.code == code) else {
        return unknown(code);
    };
    let instead = char1.and_then(|char1| find(entry.instead, char1));
    let mut parts = vec![retold(instead.unwrap_or(entry.name))];
    if instead.is_none() {
        parts.extend(char1.and_then(|char1| characterisation(entry.first, char1)));
    }
    parts.extend(char2.and_then(|char2| characterisation(entry.second, char2)));
    parts.join(", ")
}

/// Returns the words of an observation with its size, where the code has one, and its clock position.
///
/// The clock hour is the one of the file, as seen looking in the direction of inspection: say so beside it.
pub fn describe(observation: &Observation) -> String {
    let mut text = plain(observation);
    if let Some(clock) = clock_phrase(observation.clock_from, observation.clock_to) {
        text.push_str(", ");
        text.push_str(&clock);
    }
    text
}

/// Returns the words of an observation with its size, without the clock position.
pub fn plain(observation: &Observation) -> String {
    let o = observation;
    let mut text = words(&o.code, o.char1.as_deref(), o.char2.as_deref());
    if let Some(size) = size(o) {
        text.push_str(", ");
        text.push_str(&size);
    }
    text
}

/// Returns `at 9 o'clock` or `from 11 to 1 o'clock`; `None` without a clock hour.
///
/// From an hour to the same hour stays a question: it may mean all round or one spot.
pub fn clock_phrase(from: Option<Clock>, to: Option<Clock>) -> Option<String> {
    match (from, to) {
        (Some(from), Some(to)) if from == to => {
            Some(retold(&format!("from {from} to {to} o'clock (all round, or one spot?)")))
        }
        (Some(from), Some(to)) => Some(retold(&format!("from {from} to {to} o'clock"))),
        (Some(at), None) | (None, Some(at)) => Some(retold(&format!("at {at} o'clock"))),
        (None, None) => None,
    }
}

/// Returns the plain words of a material code (ACD), such as `vitrified clay`; a code without words stands as it is.
pub fn material(code: &str) -> String {
    find(MATERIALS, code).map_or_else(|| unknown(code), retold)
}

/// Returns what a line is used for (ACK), such as `foul sewer`; a code without words stands as it is.
pub fn used_for(code: &str) -> String {
    find(USES, code).map_or_else(|| unknown(code), retold)
}

/// Returns the plain words of a shape code (ACA, AEC), such as `round`; a code without words stands as it is.
pub fn shape(code: &str) -> String {
    find(SHAPES, code).map_or_else(|| unknown(code), retold)
}

fn unknown(code: &str) -> String {
    format!("{code}, {}", retold("unknown code"))
}

/// Returns all main codes that have words, in the order of the table.
pub fn main_codes() -> impl Iterator<Item = &'static str> {
    CODES.iter().map(|entry: &Code| entry.code)
}

/// Returns the first quantification as the code means it: the name of a node, or a number with its unit.
fn size(observation: &Observation) -> Option<String> {
    if matches!(observation.code.as_str(), "BCD" | "BCE") {
        return observation.quant1.as_ref().map(|node| node.as_written.clone());
    }
    let quantity = QUANTITIES.iter().find(|quantity| {
        let char1 = observation.char1.as_deref().unwrap_or_default();
        quantity.code == observation.code && (quantity.first.is_empty() || quantity.first.contains(&char1))
    })?;
    let number = observation.quant1.as_ref()?.number()?;
    Some(retold(&format!("{}{number}{}", quantity.before, quantity.behind)))
}

fn characterisation(list: &[(&'static str, &'static str)], code: &str) -> Option<String> {
    let said = find(list, code).or(match code {
        "Y" | "YY" => Some("kind not known"),
        "Z" => Some("other kind"),
        "-" => Some(""),
        _ => None,
    });
    match said {
        Some("") => None,
        Some(words) => Some(retold(words)),
        None => Some(code.to_owned()),
    }
}

fn find(list: &[(&'static str, &'static str)], code: &str) -> Option<&'static str> {
    list.iter().find(|(entry, _)| *entry == code).map(|(_, words)| *words)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::inspection::Quantification;
    use std::path::Path;

    #[test]
    fn a_code_is_said_in_plain_words() {
        for (code, char1, char2, said) in [
            ("BAB", "B", "A", "Crack, lengthwise"),
            ("BAB", "A", "B", "Hairline crack, round the pipe"),
            ("BAC", "C", "", "Collapsed pipe"),
            ("BAJ", "B", "", "Displaced joint, radial"),
            ("BBA", "B", "", "Roots, fine"),
            ("BBF", "A", "", "Infiltration, sweating"),
            ("BCB", "B", "", "Point repair, local lining"),
            ("BCD", "X", "P", "Start node, structure as the owner defines it"),
            ("BAK", "D", "A", "Fold in the lining, lengthwise"),
        ] {
            let given = |c: &'static str| Some(c).filter(|c| !c.is_empty());
            assert_eq!(words(code, given(char1), given(char2)), said);
        }
    }

    #[test]
    fn what_the_table_does_not_hold_stands_as_it_is() {
        assert_eq!(words("XYZ", Some("A"), None), "XYZ, unknown code");
        assert_eq!(words("BAB", Some("B"), Some("Q")), "Crack, Q");
        assert_eq!(material("QQ"), "QQ, unknown code");
    }

    #[test]
    fn size_and_clock_follow_the_words() {
        let tap = Observation {
            code: "BCA".into(),
            char1: Some("A".into()),
            char2: Some("A".into()),
            quant1: Some(Quantification { as_written: "100".into(), millionths: Some(100_000_000) }),
            clock_from: Clock::new(9),
            ..Observation::default()
        };
        assert_eq!(describe(&tap), "Connection, branch piece, open, DN 100, at 9 o'clock");
        let crack = Observation {
            code: "BAB".into(),
            clock_from: Clock::new(11),
            clock_to: Clock::new(1),
            ..Observation::default()
        };
        assert_eq!(describe(&crack), "Crack, from 11 to 1 o'clock");
    }

    /// Source: both code tables of kwb.en13508.2. Skipped where they do not lie beside the checkout.
    #[test]
    fn every_code_of_the_tables_has_words() {
        let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../shared/en13508");
        let Ok(full) = std::fs::read(folder.join("eucodes_full_de.csv")) else {
            println!("skipped: no code tables beside the checkout");
            return;
        };
        for record in csv::Reader::from_reader(full.as_slice()).records() {
            let record = record.unwrap();
            let field = |i: usize| record.get(i).filter(|text| !text.is_empty());
            let code = field(0).unwrap();
            let entry = CODES.iter().find(|entry| entry.code == code).unwrap_or_else(|| panic!("{code}"));
            if let Some(char1) = field(1) {
                let general = matches!(char1, "-" | "Y" | "YY" | "Z");
                let known = general || find(entry.instead, char1).or(find(entry.first, char1)).is_some();
                assert!(known, "{code} {char1}");
            }
            if let Some(char2) = field(2) {
                let general = matches!(char2, "-" | "Y" | "Z");
                assert!(general || find(entry.second, char2).is_some(), "{code} {char2}");
            }
        }
        let short = std::fs::read(folder.join("eucodes.csv")).unwrap();
        for record in csv::Reader::from_reader(short.as_slice()).records() {
            let record = record.unwrap();
            let code = record.get(1).unwrap();
            match record.get(0).unwrap() {
                "C4" => assert!(find(MATERIALS, code).is_some(), "{code}"),
                "C6" | "T4" | "T5" | "T6" | "T7" => assert!(main_codes().any(|known| known == code), "{code}"),
                _ => {}
            }
        }
    }
}
