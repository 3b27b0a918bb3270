//! Sentences as they are printed, and their figures.
//!
//! What was recorded is printed to its last digit. What has to be cut is cut in nobody's favour: `_up` and `_down` in a
//! name say which way.

pub use crate::certificate::layout::words::hours;
use crate::words::tell;
use crate::words::{Language, reader};
pub use crate::words::{
    bar, bar_bare, bar_down, bar_fine_up, bar_unit, bar_up, celsius, celsius_range, celsius_short, day, down_s, exact,
    force_up, grams, inside_between, inside_unit, lasting, measured, metres, metres_between, metres_mm, metres_whole,
    metres_whole_up, min_s, minutes, mm, mm_bare, mm_between, mm_down, mm_unit, recorded, retold, retold_parts, up_s,
};

/// Returns a message that counts: `1 departure` or `2 departures`.
pub fn many(id: &str, count: usize) -> String {
    tell!(id, count)
}

/// Returns a text with a small first letter, unless it begins with an abbreviation or a formula.
///
/// In German it stays as it is: nouns begin with a capital wherever they stand.
pub fn small(text: &str) -> String {
    if reader().language == Language::De {
        return text.to_owned();
    }
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
    if text.is_empty() || text.ends_with(['.', '!', '?', '”', '“', '»']) {
        text.to_owned()
    } else {
        format!("{text}.")
    }
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
    fn a_first_letter_becomes_small_except_in_an_abbreviation() {
        let texts = ["Permit", "DN 200", "H₂S", "A patch", "Édge", ""].map(small);
        assert_eq!(texts, ["permit", "DN 200", "H₂S", "a patch", "édge", ""]);
    }
}
