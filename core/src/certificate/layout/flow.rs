//! Text that flows: headings that keep company, labelled sentences.

use super::grid::{self, HEADING, INDENT, LINE, ROW, SMALL, Style, rule};
use super::sheet::Sheet;
use super::wording;
use crate::certificate::content::Kind;
use crate::certificate::display::Role;
use crate::words::tell;

/// A heading with its remark.
pub struct Heading<'a> {
    /// The name that page references use; its words are those of [`wording::heading`].
    pub key: &'static str,
    /// Right of the title, in clauses parted by `; `: the last give way where there is no room. May be empty.
    pub remark: &'a str,
    /// What must follow on the same page, in mm.
    pub keep: f64,
}

impl Heading<'_> {
    /// Sets the heading, on a new page unless it keeps its company here.
    pub fn set(&self, sheet: &mut Sheet) {
        let above = if sheet.at_top() { 0.0 } else { 5.0 };
        sheet.need(above + LINE + 2.0 + self.keep);
        if !sheet.at_top() {
            sheet.y += 5.0;
            sheet.rule(sheet.y - 1.0, rule::SECTION);
        }
        sheet.y += LINE;
        let title = wording::heading(self.key, sheet.content);
        sheet.bookmark(self.key, &title);
        let mut used = 0.0;
        sheet.element(Role::H2, |sheet| used = sheet.text(grid::LEFT, sheet.y, &title, HEADING));
        if sheet.is(Kind::Rehearsal) {
            let y = sheet.y;
            let word = sheet.decorate(|sheet| {
                sheet.text(grid::LEFT + used + 4.0, y, &tell!("cert-answers-rehearsal"), SMALL.bold())
            });
            used += 4.0 + word;
        }
        remark(sheet, self.remark, grid::WIDTH - used - 6.0);
        sheet.y += 2.0;
    }
}

/// Sets a remark at the right edge in at most `room` mm: clauses give way from the last, then words.
fn remark(sheet: &mut Sheet, remark: &str, room: f64) {
    let mut shown = remark;
    while !shown.is_empty() && sheet.measure(shown, SMALL) > room {
        shown = shown.rsplit_once("; ").or_else(|| shown.rsplit_once(' ')).map_or("", |(kept, _)| kept);
    }
    if !shown.is_empty() {
        let y = sheet.y;
        sheet.element(Role::P, |sheet| sheet.text(grid::RIGHT, y, shown, SMALL.right()));
    }
}

/// Sets a label and its text below the cursor, the text at an indent, one line every `step` mm.
pub fn labelled(sheet: &mut Sheet, label: &str, lines: &[String], indent: f64, styles: (Style, Style), step: f64) {
    sheet.element(Role::Li, |sheet| {
        let first = sheet.y + step;
        if !label.is_empty() {
            sheet.element(Role::Lbl, |sheet| sheet.cell((grid::LEFT, first), indent - 1.0, label, styles.0));
        }
        sheet.element(Role::LBody, |sheet| sheet.lines(grid::LEFT + indent, lines, styles.1, step));
    });
}

/// Sets labelled sentences below one another, each whole on a page.
pub fn sentences<'a>(sheet: &mut Sheet, sentences: impl Iterator<Item = (&'a str, &'a str)>) {
    sheet.element(Role::L, |sheet| {
        for (label, text) in sentences {
            let lines = sheet.wrap(text, grid::WIDTH - INDENT, SMALL);
            sheet.need(lines.len() as f64 * ROW);
            labelled(sheet, label, &lines, INDENT, (SMALL.bold(), SMALL), ROW);
        }
    });
}
