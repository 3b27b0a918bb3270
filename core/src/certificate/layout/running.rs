//! What every page carries: header and footer.

use super::grid::{self, BODY, SMALL, TINY, rule};
use super::labels::Area;
use super::sheet::Sheet;
use super::text;
use super::wording;
use super::words;
use crate::certificate::content::{Kind, ON_DEVICE, Seal};

/// Follows the program and its version.
const OFFLINE: &str = ", offline";
use crate::words::tell;

/// The baseline of the header.
const HEADER: f64 = 11.0;

/// Draws the header of a later page: number, pipe, date, result.
pub fn header(sheet: &mut Sheet) {
    let content = sheet.content;
    let number = sheet.cell((grid::LEFT, HEADER), 40.0, &content.number, BODY.bold());
    let result = result(sheet);
    let (lines, _) = text::wrap_at_most(sheet.fonts, &result, 90.0, SMALL.bold(), 1);
    let result = lines.concat();
    let reversed = wording::reversed(content.kind);
    let width = sheet.measure(&result, SMALL.bold());
    if reversed {
        sheet.fill_area(Area::new(grid::RIGHT - width - 3.0, 8.2, grid::RIGHT, 12.2), 0.0);
    }
    let edge = if reversed { grid::RIGHT - 1.5 } else { grid::RIGHT };
    sheet.text(edge, HEADER, &result, SMALL.bold().right().white_if(reversed));
    let pipe = format!("{}   {}", content.running_head, sheet.clock.date(content.at_ms));
    let room = (grid::WIDTH - number - width - 12.0).max(20.0);
    sheet.cell((grid::LEFT + number + 5.0, HEADER), room, &pipe, SMALL);
    sheet.rule(12.9, rule::FINE);
}

/// Draws the footers, when the number of pages is known.
pub fn footers(sheet: &mut Sheet) {
    let content = sheet.content;
    let pages = sheet.pages.len();
    let y = sheet.height - 8.5;
    let left = wording::footer(content.kind, content.seal != Seal::None);
    let middle = tell!(
        "cert-running-record_head",
        hash = words::short_hash(&content.head.sha256),
        made = made_by(&content.made_by)
    );
    for page in 0..pages {
        sheet.turn_to(page);
        sheet.decorate(|sheet| {
            sheet.rule(y - 4.0, rule::FINE);
            let beside = sheet.text(grid::LEFT, y, &left, TINY);
            let number = sheet.text(
                grid::RIGHT,
                y,
                &tell!("cert-running-page_of", pages, page = page + 1),
                SMALL.bold().right(),
            );
            // Centred between its neighbours where it is too long for the middle of the page.
            let (from, to) = (grid::LEFT + beside + 5.0, grid::RIGHT - number - 5.0);
            let half = (sheet.measure(&middle, TINY) / 2.0).min((to - from) / 2.0);
            let centre = (grid::LEFT + grid::WIDTH / 2.0 + 8.0).min(to - half).max(from + half);
            sheet.cell((centre, y), to - from, &middle, TINY.centre());
        });
    }
}

/// Returns which program made the paper, and on which device; in other words than these, as it is.
fn made_by(recorded: &str) -> String {
    match recorded.split_once(OFFLINE) {
        Some((program, rest)) => match rest.strip_prefix(ON_DEVICE) {
            Some(device) => tell!("cert-running-made_by", program, device),
            None => recorded.to_owned(),
        },
        None => recorded.to_owned(),
    }
}

fn result(sheet: &Sheet) -> String {
    let result = &sheet.content.result;
    match sheet.content.kind {
        Kind::Rehearsal => tell!("cert-answers-rehearsal"),
        Kind::Accepted | Kind::Rejected | Kind::Unrepaired => {
            format!("{} {}", result.headline, result.short).trim_end().to_string()
        }
    }
}
