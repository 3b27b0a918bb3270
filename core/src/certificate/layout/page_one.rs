//! Page 1: the ten seconds, the identity, the drawings, what went off the rules, who signs, what the file proves.
//!
//! It never overflows. What doesn't fit is cut, shown to be cut, and printed in full on a later page.

use super::answers;
use super::departures;
use super::drawings;
use super::grid::{self, ROW, SMALL, TITLE, rule};
use super::head;
use super::sheet::Sheet;
use super::signatures;
use super::text;
use super::wording;
use crate::certificate::content::{Note, Pair};
use crate::certificate::display::Role;

/// What page 1 could not hold.
#[derive(Default)]
pub struct Cut {
    /// Texts that were cut, in full, under their labels.
    pub texts: Vec<Note>,
    /// Whether a note was left out.
    pub notes: bool,
    /// Whether a departure or its reason was left out.
    pub departures: bool,
}

/// How many lines a text may take.
#[derive(Clone, Copy)]
pub struct Limits {
    pub first: usize,
    pub second: usize,
    pub identity: usize,
    pub signature: usize,
}

/// From generous to tight.
const LIMITS: [Limits; 4] = [
    Limits { first: 3, second: 4, identity: 4, signature: 6 },
    Limits { first: 2, second: 3, identity: 3, signature: 5 },
    Limits { first: 2, second: 2, identity: 2, signature: 4 },
    Limits { first: 1, second: 1, identity: 1, signature: 3 },
];

/// Lines of the identity that a column may hold.
const MOST_PAIRS: usize = 8;

/// Sets page 1 and returns what it could not hold.
pub fn set(sheet: &mut Sheet) -> Cut {
    sheet.new_page();
    let start = sheet.remember();
    let mut cut = Cut::default();
    for limits in LIMITS {
        sheet.take_back(&start);
        let (trial, spare) = attempt(sheet, limits, 0.0);
        cut = trial;
        if spare >= 0.0 {
            sheet.take_back(&start);
            cut = attempt(sheet, limits, spare).0;
            break;
        }
    }
    cut
}

/// Sets the page with `spare` mm shared out, and returns what was cut and how many mm are left above the signatures.
fn attempt(sheet: &mut Sheet, limits: Limits, spare: f64) -> (Cut, f64) {
    let mut cut = Cut::default();
    title(sheet);
    answers::set(sheet, limits, &mut cut);
    identity(sheet, limits, &mut cut);
    sheet.y += 2.0 + spare * 0.25;
    drawings::set(sheet, &mut cut);
    sheet.y += spare * 0.35;
    let head_top = sheet.bottom - head::height(sheet);
    let signatures_top = head_top - signatures::height(sheet, limits.signature);
    departures::set(sheet, signatures_top - 3.6, &mut cut);
    let left = signatures_top - 3.6 - sheet.y;
    sheet.y = signatures_top;
    signatures::set(sheet, limits.signature, &mut cut);
    sheet.y = head_top;
    head::set(sheet);
    (cut, left)
}

fn title(sheet: &mut Sheet) {
    let content = sheet.content;
    sheet.y += 5.0;
    let y = sheet.y;
    sheet.element(Role::H1, |sheet| {
        sheet.text(grid::LEFT, y, &wording::title(content.kind), TITLE);
        let room = grid::WIDTH - sheet.measure(&wording::title(content.kind), TITLE) - 6.0;
        sheet.cell((grid::RIGHT, y), room, &content.number, TITLE.right());
    });
    sheet.rule(y + 2.2, rule::TITLE);
    sheet.y += 2.0;
}

/// Sets the two columns of the identity.
fn identity(sheet: &mut Sheet, limits: Limits, cut: &mut Cut) {
    let content = sheet.content;
    sheet.y += 2.4;
    sheet.rule(sheet.y, rule::FINE);
    let top = sheet.y + 0.6;
    let ends = [(0, &content.identity_left), (3, &content.identity_right)].map(|(column, pairs)| {
        sheet.y = top;
        sheet.element(Role::L, |sheet| {
            let (shown, left) = pairs.split_at(pairs.len().min(MOST_PAIRS));
            for pair in shown {
                identity_pair(sheet, grid::column(column), pair, limits.identity, cut);
            }
            cut.texts.extend(left.iter().map(|pair| Note { label: pair.label.clone(), text: pair.value.clone() }));
        });
        sheet.y
    });
    sheet.y = ends[0].max(ends[1]);
}

fn identity_pair(sheet: &mut Sheet, x: f64, pair: &Pair, most: usize, cut: &mut Cut) {
    let lines = fitted(sheet, &pair.label, &pair.value, (66.0, SMALL, most), cut);
    sheet.element(Role::Li, |sheet| {
        let first = sheet.y + ROW;
        sheet.element(Role::Lbl, |sheet| sheet.cell((x, first), 19.0, &pair.label, SMALL));
        sheet.element(Role::LBody, |sheet| sheet.lines(x + 20.0, &lines, SMALL, ROW));
    });
}

/// Returns `text` in at most so many lines, and notes it in full if that cuts it.
pub fn fitted(
    sheet: &Sheet,
    label: &str,
    text: &str,
    (width, style, most): (f64, grid::Style, usize),
    cut: &mut Cut,
) -> Vec<String> {
    let (lines, shortened) = text::wrap_at_most(sheet.fonts, &sheet.resolve(text), width, style, most);
    if shortened {
        cut.texts.push(Note { label: label.to_string(), text: text.replace('\n', " ") });
    }
    lines
}
