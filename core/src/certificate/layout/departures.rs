//! What went off the rules, on page 1: reasons first, departures, then notes.
//!
//! Where the room is short, notes drop first, from the last; then the reasons of departures; then whole departures.

use super::flow::labelled;
use super::grid::{self, HEADING, SMALL, rule};
use super::page_one::Cut;
use super::sheet::Sheet;
use super::wording;
use crate::certificate::content::{Content, headings};
use crate::certificate::display::Role;

const INDENT: f64 = 23.0;
const STEP: f64 = 3.6;

/// A labelled sentence.
type Row = (String, String);

/// Sets the block so that its last line stands above `bottom`.
pub fn set(sheet: &mut Sheet, bottom: f64, cut: &mut Cut) {
    sheet.y += 4.0;
    sheet.rule(sheet.y - 1.0, rule::SECTION);
    sheet.y += 3.6;
    let y = sheet.y;
    let heading = wording::off_the_rules(sheet.content.kind);
    sheet.element(Role::H2, |sheet| sheet.text(grid::LEFT, y, heading, HEADING));
    sheet.y += 1.0;
    let chosen = choose(sheet, bottom - sheet.y);
    cut.notes |= chosen.without_notes;
    cut.departures |= chosen.without_departures;
    sheet.element(Role::L, |sheet| {
        for (label, text) in &chosen.rows {
            let lines = lines(sheet, text);
            labelled(sheet, label, &lines, INDENT, (SMALL.bold(), SMALL), STEP);
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
    let mut last = Choice::default();
    for choice in choices(sheet.content) {
        let count: usize = choice.rows.iter().map(|(_, text)| lines(sheet, text).len()).sum();
        last = choice;
        if count as f64 * STEP <= room {
            break;
        }
    }
    last
}

/// Returns the choices, fullest first.
fn choices(content: &Content) -> Vec<Choice> {
    let mut choices = Vec::new();
    let full = departures(content, true);
    let notes: Vec<Row> = content.notes.iter().map(|note| (note.label.clone(), note.text.clone())).collect();
    for kept in (0..=notes.len()).rev() {
        let without_notes = kept < notes.len();
        let mut rows = [reasons(content, content.reasons.len()), full.clone(), notes[..kept].to_vec()].concat();
        rows.extend(without_notes.then(more_notes));
        choices.push(Choice { rows, without_notes, without_departures: false });
    }
    let without_notes = !notes.is_empty();
    let short = departures(content, false);
    for kept in (0..=short.len()).rev() {
        let mut rows = [reasons(content, content.reasons.len()), short[..kept].to_vec()].concat();
        rows.extend(more_departures(content, kept));
        rows.extend((without_notes && kept == short.len()).then(more_notes));
        choices.push(Choice { rows, without_notes, without_departures: !short.is_empty() });
    }
    for kept in (0..content.reasons.len()).rev() {
        let mut rows = reasons(content, kept);
        rows.extend(more_departures(content, 0));
        rows.push(more_notes());
        choices.push(Choice { rows, without_notes: true, without_departures: !short.is_empty() });
    }
    choices
}

fn reasons(content: &Content, most: usize) -> Vec<Row> {
    content.reasons.iter().take(most).map(|note| (note.label.clone(), note.text.clone())).collect()
}

fn departures(content: &Content, whole: bool) -> Vec<Row> {
    let text = |rule: &str, reason: &str| if whole { format!("{rule} {reason}") } else { rule.to_string() };
    content.departures.iter().map(|one| (one.label.clone(), text(&one.rule, &one.reason))).collect()
}

fn more_notes() -> Row {
    (String::new(), format!("More notes, each in full: page @<{}>.", headings::NOTES))
}

/// Says which departures are left out, or only how many.
fn more_departures(content: &Content, kept: usize) -> Option<Row> {
    let left = &content.departures[kept..];
    let names: Vec<&str> = left.iter().map(|one| one.short.as_str()).collect();
    let page = format!("page @<{}>", headings::DEPARTURES);
    match (left.len(), kept) {
        (0, _) => (!content.departures.is_empty())
            .then(|| (String::new(), format!("Each with reason, name and time: {page}."))),
        (count, 0) => Some((format!("{count} departures"), format!("{}: {page}.", names.join("; ")))),
        (count, _) => Some((format!("and {count} more"), format!("{}. Each in full: {page}.", names.join("; ")))),
    }
}

fn lines(sheet: &Sheet, text: &str) -> Vec<String> {
    sheet.wrap(text, grid::WIDTH - INDENT, SMALL)
}
