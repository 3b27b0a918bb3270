//! The last words: what the paper is not, how to check it, how to keep it.

use super::flow::{self, Heading};
use super::grid::{self, INDENT, ROW, SMALL, TINY};
use super::sheet::Sheet;
use super::wording;
use crate::certificate::content::headings;
use crate::certificate::display::Role;

/// From the cursor to the first line: the heading with what stands around it.
const ABOVE: f64 = 11.0;

/// Returns whether all of them fit below the cursor.
pub fn fit(sheet: &Sheet) -> bool {
    let lines: usize = sheet.content.cautions.iter().map(|pair| lines(sheet, &pair.value).len()).sum();
    ABOVE + lines as f64 * ROW < sheet.room()
}

/// Sets the cautions below the cursor.
pub fn set(sheet: &mut Sheet) {
    let content = sheet.content;
    let rows = content.cautions.len().clamp(2, 8) as f64;
    Heading { key: headings::CAUTIONS, remark: "", keep: rows * ROW + 2.0 }.set(sheet);
    flow::sentences(sheet, content.cautions.iter().map(|pair| (pair.label.as_str(), pair.value.as_str())));
}

/// Sets the last words behind the last caution, or below it.
pub fn end(sheet: &mut Sheet) {
    let last = sheet.content.cautions.last().and_then(|pair| lines(sheet, &pair.value).pop());
    let used = last.map_or(grid::WIDTH, |line| INDENT + sheet.measure(&line, SMALL));
    if used + sheet.measure(&wording::end(sheet.content.kind), TINY) + 4.0 > grid::WIDTH {
        sheet.need(grid::LINE);
        sheet.y += grid::LINE;
    }
    end_here(sheet);
}

/// Sets the last words below what stands last, on the same page.
pub fn end_alone(sheet: &mut Sheet) {
    sheet.y = sheet.y.min(sheet.bottom);
    end_here(sheet);
}

fn end_here(sheet: &mut Sheet) {
    let (y, end) = (sheet.y, wording::end(sheet.content.kind));
    sheet.element(Role::P, |sheet| sheet.text(grid::RIGHT, y, &end, TINY.right()));
}

fn lines(sheet: &Sheet, text: &str) -> Vec<String> {
    sheet.wrap(text, grid::WIDTH - INDENT, SMALL)
}
