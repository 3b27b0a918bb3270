//! Text before it is set: what must stay together, page references, lines.

use super::grid::Style;
use crate::certificate::content::headings;
use crate::certificate::fonts::Fonts;
use crate::words::{Language, reader};
use std::collections::BTreeMap;

const NO_BREAK: char = '\u{a0}';
/// A number keeps these behind it.
const UNITS: [&str; 18] =
    ["mm", "m", "min", "h", "s", "bar", "°C", "kg", "kN", "%", "g", "in", "ft", "psi", "°F", "lb", "oz", "lbf"];
/// These keep a number or a capital behind them.
const NAMES: [&str; 40] = [
    "MH",
    "DN",
    "page",
    "pages",
    "Page",
    "Pages",
    "photo",
    "photos",
    "no.",
    "lot",
    "p.",
    "item",
    "table",
    "Table",
    "section",
    "attempt",
    "check",
    "Check",
    "Attempt",
    "Seite",
    "Seiten",
    "Foto",
    "Fotos",
    "Nr.",
    "Charge",
    "Chargen",
    "Versuch",
    "página",
    "páginas",
    "Página",
    "foto",
    "fotos",
    "n.º",
    "lote",
    "lotes",
    "intento",
    "Intento",
    "n°",
    "tentative",
    "Tentative",
];

/// In French, these keep what stands before them.
const FRENCH: [char; 5] = [':', ';', '?', '!', '»'];

/// On which page each heading stands, as found by the pass before.
pub type References = BTreeMap<&'static str, usize>;

/// Returns `text` with `@<heading>` replaced by the number of its page; `–` where there is no such heading.
pub fn resolve(text: &str, references: &References) -> String {
    if !text.contains("@<") {
        return text.to_string();
    }
    headings::ALL.iter().fold(text.to_string(), |text, heading| {
        let mark = format!("@<{heading}>");
        if text.contains(&mark) {
            let page = references.get(heading).map_or("–".to_string(), usize::to_string);
            text.replace(&mark, &page)
        } else {
            text
        }
    })
}

/// Returns `text` with no-break spaces where a number has its unit, a sign its number, a name its number.
pub fn glue(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    let mut words = text.split(' ').peekable();
    while let Some(word) = words.next() {
        out.push_str(word);
        if let Some(next) = words.peek() {
            out.push(if belongs(word, next) { NO_BREAK } else { ' ' });
        }
    }
    out
}

fn belongs(word: &str, next: &str) -> bool {
    let number = word.ends_with(|last: char| last.is_ascii_digit());
    let sign = word.ends_with(['≤', '≥', '±', '>']);
    let french =
        reader().language == Language::Fr && (word == "«" || FRENCH.iter().any(|mark| next.starts_with(*mark)));
    french
        || (number && starts_with_unit(next))
        || (sign && next.starts_with(|first: char| first.is_ascii_digit()))
        || (next.starts_with(|first: char| first.is_ascii_digit() || first.is_ascii_uppercase())
            && NAMES.contains(&word.trim_start_matches(|first: char| !first.is_alphanumeric())))
}

fn starts_with_unit(word: &str) -> bool {
    UNITS
        .iter()
        .any(|unit| word.strip_prefix(unit).is_some_and(|rest| !rest.starts_with(|next: char| next.is_alphanumeric())))
}

/// Returns `text` in lines no wider than `width` mm, at least one. A word wider than that is cut where it reaches the
/// edge.
pub fn wrap(fonts: &Fonts, text: &str, width: f64, style: Style) -> Vec<String> {
    let text = glue(&fonts.printable(text));
    let lines =
        |paragraph| Lines { fonts, width, style, done: Vec::new(), line: String::new(), used: 0.0 }.of(paragraph);
    text.split('\n').flat_map(lines).collect()
}

/// Returns at most `most` lines, the last with `…` where something is left out, and whether something is.
pub fn wrap_at_most(fonts: &Fonts, text: &str, width: f64, style: Style, most: usize) -> (Vec<String>, bool) {
    let mut lines = wrap(fonts, text, width, style);
    if lines.len() <= most {
        return (lines, false);
    }
    lines.truncate(most.max(1));
    if let Some(last) = lines.last_mut() {
        while !last.is_empty() && fonts.width_mm(&format!("{last} …"), style.size_pt, style.weight) > width {
            last.pop();
        }
        last.push_str(" …");
    }
    (lines, true)
}

/// A paragraph on its way into lines. Widths are sums of advances, so a line grows by the width of what it gets.
struct Lines<'a> {
    fonts: &'a Fonts,
    width: f64,
    style: Style,
    done: Vec<String>,
    line: String,
    used: f64,
}

impl Lines<'_> {
    fn of(mut self, paragraph: &str) -> Vec<String> {
        let space = self.measure(" ");
        for (index, word) in paragraph.split(' ').enumerate() {
            let width = self.measure(word);
            let gap = if index == 0 || self.line.is_empty() { 0.0 } else { space };
            if self.used + gap + width <= self.width + 1e-9 {
                self.add(if gap > 0.0 { " " } else { "" }, gap);
                self.add(word, width);
            } else if width <= self.width {
                self.end_line();
                self.add(word, width);
            } else {
                self.add(if gap > 0.0 { " " } else { "" }, gap);
                self.add_cut(word);
            }
        }
        self.done.push(self.line);
        self.done
    }

    fn add(&mut self, text: &str, width: f64) {
        self.line.push_str(text);
        self.used += width;
    }

    fn end_line(&mut self) {
        self.done.push(std::mem::take(&mut self.line));
        self.used = 0.0;
    }

    /// Adds a word that is wider than a line, letter by letter; each line takes at least one.
    fn add_cut(&mut self, word: &str) {
        for character in word.chars() {
            let letter = character.to_string();
            let width = self.measure(&letter);
            if self.used + width > self.width && !self.line.is_empty() {
                self.end_line();
            }
            self.add(&letter, width);
        }
    }

    fn measure(&self, text: &str) -> f64 {
        self.fonts.width_mm(text, self.style.size_pt, self.style.weight)
    }
}

#[cfg(test)]
mod tests {
    use super::super::grid::BODY;
    use super::*;

    #[test]
    fn a_number_keeps_its_unit_and_a_name_its_number() {
        assert_eq!(
            glue("at 26 h, DN 200 (photo 3) ≥ 60 min of MH 031"),
            "at 26\u{a0}h, DN\u{a0}200 (photo\u{a0}3) ≥\u{a0}60\u{a0}min of MH\u{a0}031"
        );
    }

    #[test]
    fn a_word_that_only_begins_like_a_unit_is_not_glued() {
        assert_eq!(glue("2 minutes, 3 house, in 5 steps"), "2 minutes, 3 house, in 5 steps");
    }

    #[test]
    fn no_line_is_wider_than_its_column_and_nothing_is_lost() {
        let fonts = Fonts::bundled().unwrap();
        let text = "A Donaudampfschifffahrtselektrizitätenhauptbetriebswerkbauunterbeamtengesellschaft of 12 persons";
        let lines = wrap(&fonts, text, 30.0, BODY);
        assert!(lines.iter().all(|line| fonts.width_mm(line, BODY.size_pt, BODY.weight) <= 30.0 + 1e-6), "{lines:?}");
        let letters = |text: &str| text.chars().filter(|c| !c.is_whitespace()).collect::<String>();
        assert_eq!(letters(&lines.concat()), letters(text));
    }

    #[test]
    fn a_column_narrower_than_a_letter_still_ends() {
        let fonts = Fonts::bundled().unwrap();
        assert_eq!(wrap(&fonts, "abc", 0.1, BODY), ["a", "b", "c"]);
    }

    #[test]
    fn a_reference_becomes_a_page_and_a_stranger_stays() {
        let references = References::from([(headings::HOLD, 2)]);
        assert_eq!(resolve("page @<The hold>, @<Elsewhere>", &references), "page 2, @<Elsewhere>");
    }

    #[test]
    fn what_is_left_out_is_shown_by_an_ellipsis() {
        let fonts = Fonts::bundled().unwrap();
        let (lines, cut) = wrap_at_most(&fonts, &"word ".repeat(50), 40.0, BODY, 2);
        assert!(cut && lines.len() == 2 && lines[1].ends_with('…'));
    }
}
