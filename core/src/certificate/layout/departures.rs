//! What went off the rules, on page 1: reasons first, departures, then notes.
//!
//! Where the room is short, notes drop first, from the last; then the reasons of departures; then whole departures.

use super::flow::labelled;
use super::grid::{self, HEADING, SMALL, rule};
use super::page_one::Cut;
use super::sheet::Sheet;
use super::text;
use super::wording;
use crate::certificate::content::{Departure, Note, headings};
use crate::certificate::display::Role;
use crate::words::tell;

const INDENT: f64 = 23.0;
const STEP: f64 = 3.6;

/// A labelled sentence, in lines.
#[derive(Clone)]
struct Row {
    label: String,
    lines: Vec<String>,
}

impl Row {
    fn of(sheet: &Sheet, label: &str, text: &str) -> Self {
        Self { label: label.to_string(), lines: sheet.wrap(text, grid::WIDTH - INDENT, SMALL) }
    }
}

/// Sets the block so that its last line stands above `bottom`.
pub fn set(sheet: &mut Sheet, bottom: f64, cut: &mut Cut) {
    sheet.y += 4.0;
    sheet.rule(sheet.y - 1.0, rule::SECTION);
    sheet.y += 3.6;
    let y = sheet.y;
    let heading = wording::off_the_rules(sheet.content.kind);
    sheet.element(Role::H2, |sheet| sheet.text(grid::LEFT, y, &heading, HEADING));
    sheet.y += 1.0;
    let chosen = choose(sheet, bottom - sheet.y);
    cut.notes |= chosen.without_notes;
    cut.departures |= chosen.without_departures;
    sheet.element(Role::L, |sheet| {
        for row in &chosen.rows {
            labelled(sheet, &row.label, &row.lines, INDENT, (SMALL.bold(), SMALL), STEP);
        }
    });
}

#[derive(Clone, Default)]
struct Choice {
    rows: Vec<Row>,
    without_notes: bool,
    without_departures: bool,
}

/// Returns the fullest choice that fits in `room` mm, or the shortest of all.
fn choose(sheet: &Sheet, room: f64) -> Choice {
    let all = Rows::of(sheet);
    let mut last = Choice::default();
    for choice in all.choices() {
        let count: usize = choice.rows.iter().map(|row| row.lines.len()).sum();
        last = choice;
        if count as f64 * STEP <= room {
            break;
        }
    }
    last
}

/// All that could be printed.
struct Rows<'s, 'a> {
    sheet: &'s Sheet<'a>,
    reasons: Vec<Row>,
    /// With their reasons.
    departures: Vec<Row>,
    /// Without.
    rules: Vec<Row>,
    notes: Vec<Row>,
    more_notes: Row,
}

impl<'s, 'a> Rows<'s, 'a> {
    fn of(sheet: &'s Sheet<'a>) -> Self {
        let content = sheet.content;
        let notes = |notes: &[Note]| notes.iter().map(|note| Row::of(sheet, &note.label, &note.text)).collect();
        let whole = |one: &Departure| Row::of(sheet, &one.label, &format!("{} {}", one.rule, one.reason));
        Self {
            sheet,
            reasons: notes(&content.reasons),
            departures: content.departures.iter().map(whole).collect(),
            rules: content.departures.iter().map(|one| Row::of(sheet, &one.label, &one.rule)).collect(),
            notes: notes(&content.notes),
            more_notes: Row::of(sheet, "", &tell!("cert-departures-more_notes_each_in_full", page = headings::NOTES)),
        }
    }

    /// The choices, fullest first: without the last notes, without the reasons of departures, without the last
    /// departures, without the last reasons.
    fn choices(&self) -> impl Iterator<Item = Choice> + '_ {
        let fewer_notes = (0..=self.notes.len()).rev().map(|kept| self.with_notes(kept));
        let fewer_departures = (0..=self.rules.len()).rev().map(|kept| self.with_rules(kept));
        let fewer_reasons = (0..self.reasons.len()).rev().map(|kept| self.with_reasons(kept));
        fewer_notes.chain(fewer_departures).chain(fewer_reasons)
    }

    fn with_notes(&self, kept: usize) -> Choice {
        let without_notes = kept < self.notes.len();
        let mut rows = [&self.reasons[..], &self.departures, &self.notes[..kept]].concat();
        rows.extend(without_notes.then(|| self.more_notes.clone()));
        Choice { rows, without_notes, without_departures: false }
    }

    fn with_rules(&self, kept: usize) -> Choice {
        let without_notes = !self.notes.is_empty();
        let mut rows = [&self.reasons[..], &self.rules[..kept]].concat();
        rows.extend(self.more_departures(kept));
        rows.extend((without_notes && kept == self.rules.len()).then(|| self.more_notes.clone()));
        Choice { rows, without_notes, without_departures: !self.rules.is_empty() }
    }

    fn with_reasons(&self, kept: usize) -> Choice {
        let mut rows = self.reasons[..kept].to_vec();
        rows.extend(self.more_departures(0));
        rows.push(self.more_notes.clone());
        Choice { rows, without_notes: true, without_departures: !self.rules.is_empty() }
    }

    /// Says which departures are left out after the first so many, or that their reasons are.
    fn more_departures(&self, kept: usize) -> Option<Row> {
        let all = &self.sheet.content.departures;
        let left = &all[kept..];
        let page = tell!("cert-departures-page", page = headings::DEPARTURES);
        let names = left.iter().map(|one| one.short.as_str()).collect::<Vec<_>>().join("; ");
        let (label, text) = match (left.len(), kept) {
            (0, 0) => return None,
            (0, _) => (String::new(), tell!("cert-departures-each_with_reason_name_and", page)),
            (count, 0) => (counted(count), tell!("cert-departures-each_in_full", names, page)),
            (count, _) => {
                (tell!("cert-departures-and_more", count), tell!("cert-departures-each_in_full", names, page))
            }
        };
        let (lines, cut) =
            text::wrap_at_most(self.sheet.fonts, &self.sheet.resolve(&text), grid::WIDTH - INDENT, SMALL, 2);
        // Many names would push out what they stand for.
        Some(if cut {
            Row::of(self.sheet, &label, &tell!("cert-departures-each_in_full_2", page))
        } else {
            Row { label, lines }
        })
    }
}

/// Returns `1 departure`, `2 departures`.
fn counted(count: usize) -> String {
    tell!("cert-count-departures", count)
}
