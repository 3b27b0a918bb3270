//! The foot of page 1: the head of the record, what the seal proves and what it does not, and the code.

use super::flow::labelled;
use super::grid::{self, TINY, rule};
use super::labels::Area;
use super::sheet::{Sheet, corners};
use super::text;
use super::words;
use crate::certificate::content::{Content, Kind, Seal};
use crate::certificate::display::Role;
use crate::words::tell;
use qrcodegen::{Mask, QrCode, QrCodeEcc, QrSegment, Version};

const STEP: f64 = 3.12;
/// Lines of one sentence.
const MOST_LINES: usize = 3;
/// The side of the code.
const CODE: f64 = 21.0;

/// Returns the height of the block in mm.
pub fn height(sheet: &Sheet) -> f64 {
    let code = sheet.code;
    let text: usize = rows(sheet, code.is_some()).iter().map(|(_, lines)| lines.len()).sum();
    let least = if code.is_some() { CODE + 0.8 } else { 0.0 };
    (0.6 + text as f64 * STEP + 1.5).max(least).max(15.0)
}

/// Sets the block below the cursor.
pub fn set(sheet: &mut Sheet) {
    let top = sheet.y;
    let code = sheet.code;
    let rows = rows(sheet, code.is_some());
    sheet.rule(top - 0.6, rule::FINE);
    sheet.y += 0.6;
    let indent = indent(sheet);
    sheet.element(Role::L, |sheet| {
        for (label, lines) in &rows {
            labelled(sheet, label, lines, indent, (TINY.bold(), TINY), STEP);
        }
    });
    if let Some(code) = code {
        let alt = tell!("cert-head-qr_code_with_what_the");
        sheet.figure(&alt, |sheet| draw(sheet, code, (grid::RIGHT - CODE, top + 1.4)));
    }
}

fn indent(sheet: &Sheet) -> f64 {
    if sheet.is(Kind::Rehearsal) { 31.0 } else { 27.0 }
}

/// Labels and their lines.
fn rows(sheet: &Sheet, coded: bool) -> Vec<(String, Vec<String>)> {
    let width = grid::WIDTH - indent(sheet) - if coded { CODE + 6.0 } else { 0.0 };
    let lines = |text: &str| text::wrap_at_most(sheet.fonts, text, width, TINY, MOST_LINES).0;
    words(sheet, coded).into_iter().map(|(label, text)| (label, lines(&text))).collect()
}

fn words(sheet: &Sheet, coded: bool) -> [(String, String); 3] {
    let head = &sheet.content.head;
    let digits = words::grouped(&head.sha256.chars().take(64).collect::<String>());
    let entries = head.entries;
    let count = tell!("cert-head-entries", entries);
    let sealed = sealed(sheet);
    match (sheet.content.kind, sealed) {
        (Kind::Rehearsal, sealed) => [
            (
                tell!("cert-head-head_of_the_practice"),
                tell!("cert-head-entries_each_marked_as_a", digits, entries = count),
            ),
            (
                tell!("cert-head-what_it_shows"),
                match sealed {
                    Some((when, _)) => tell!("cert-head-that_nothing_changed_since_these", when),
                    None => tell!("cert-head-nothing_no_key_signed_it"),
                },
            ),
            (tell!("cert-head-what_it_is_not"), tell!("cert-head-a_record_of_a_repair")),
        ],
        (_, Some((when, key))) => [
            (tell!("cert-head-head_of_the_record"), head_words(&digits, entries, coded)),
            (tell!("cert-head-the_seal_proves"), tell!("cert-head-no_change_to_this_file", when, key)),
            (tell!("cert-head-it_does_not_prove"), tell!("cert-head-who_held_the_phone_or")),
        ],
        (_, None) => [
            (tell!("cert-head-head_of_the_record"), head_words(&digits, entries, coded)),
            (tell!("cert-head-not_sealed_by_a_key"), tell!("cert-head-a_drawn_line_proves_nothing")),
            (tell!("cert-head-what_can_be_checked"), tell!("cert-head-the_head_above_against_the")),
        ],
    }
}

fn head_words(digits: &str, entries: u32, coded: bool) -> String {
    let entries = tell!("cert-head-entries", entries);
    match coded {
        true => tell!("cert-head-chain_and_code", digits, entries),
        false => tell!("cert-head-chain", digits, entries),
    }
}

/// When it is sealed, and the first digits of the key.
fn sealed(sheet: &Sheet) -> Option<(String, String)> {
    match &sheet.content.seal {
        Seal::None => None,
        Seal::Key { at_ms, fingerprint } => {
            let clock = sheet.clock;
            let when = format!("{} {} {}", clock.date(*at_ms), clock.second(*at_ms), clock.offset());
            Some((when, words::grouped(&fingerprint.chars().take(16).collect::<String>())))
        }
    }
}

/// Returns the code, unless there is none to draw: on a rehearsal, or where its text is too long for a code.
pub fn code(content: &Content) -> Option<QrCode> {
    encoded(content, None)
}

/// Returns a code of the same size in the first pattern that comes: to find the best takes most of the time.
pub fn room_for_code(content: &Content) -> Option<QrCode> {
    encoded(content, Some(Mask::new(0)))
}

fn encoded(content: &Content, mask: Option<Mask>) -> Option<QrCode> {
    let text = content.qr.as_ref().filter(|_| content.kind != Kind::Rehearsal)?;
    let parts = QrSegment::make_segments(&text.to_uppercase());
    QrCode::encode_segments_advanced(&parts, QrCodeEcc::Medium, Version::MIN, Version::MAX, mask, true).ok()
}

/// Draws the code as one path: a run of dark modules is one rectangle, a little higher than a module against seams.
fn draw(sheet: &mut Sheet, code: &QrCode, (x, y): (f64, f64)) {
    let modules = code.size();
    let side = CODE / f64::from(modules);
    let mut rings = Vec::new();
    for row in 0..modules {
        let mut column = 0;
        while column < modules {
            let start = column;
            while code.get_module(column, row) {
                column += 1;
            }
            if column > start {
                let top = y + f64::from(row) * side;
                let left = x + f64::from(start) * side;
                rings.push(corners(Area::new(left, top, x + f64::from(column) * side, top + side * 1.01)));
            }
            column += 1;
        }
    }
    sheet.fill_all(rings);
}
