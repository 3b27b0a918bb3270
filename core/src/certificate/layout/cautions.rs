//! The last words: what the paper is not, how to check it, how to keep it.

use super::flow::{self, Heading};
use super::grid::{self, INDENT, ROW, SMALL, TINY};
use super::sheet::Sheet;
use super::wording;
use crate::certificate::content::headings;
use crate::certificate::display::Role;

/// Sets the cautions and the end below the cursor.
pub fn set(sheet: &mut Sheet) {
    let content = sheet.content;
    let title = wording::cautions(content.kind);
    let rows = content.cautions.len().clamp(2, 8) as f64;
    Heading { key: headings::CAUTIONS, title, remark: "", keep: rows * ROW + 2.0 }.set(sheet);
    flow::sentences(sheet, content.cautions.iter().map(|pair| (pair.label.as_str(), pair.value.as_str())));
    let end = wording::end(content.kind);
    let last = content.cautions.last().and_then(|pair| sheet.wrap(&pair.value, grid::WIDTH - INDENT, SMALL).pop());
    let used = last.map_or(grid::WIDTH, |line| INDENT + sheet.measure(&line, SMALL));
    if used + sheet.measure(end, TINY) + 4.0 > grid::WIDTH {
        sheet.need(grid::LINE);
        sheet.y += grid::LINE;
    }
    let y = sheet.y;
    sheet.element(Role::P, |sheet| sheet.text(grid::RIGHT, y, end, TINY.right()));
}
