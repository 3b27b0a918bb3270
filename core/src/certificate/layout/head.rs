//! The foot of page 1: the head of the record, what the seal proves and what it does not, and the code.

use super::flow::labelled;
use super::grid::{self, TINY, rule};
use super::labels::Area;
use super::sheet::{Sheet, corners};
use super::text;
use super::words;
use crate::certificate::content::{Kind, Seal};
use crate::certificate::display::Role;
use qrcodegen::{QrCode, QrCodeEcc};

const STEP: f64 = 3.12;
/// Lines of one sentence.
const MOST_LINES: usize = 3;
/// The side of the code.
const CODE: f64 = 21.0;

/// Returns the height of the block in mm.
pub fn height(sheet: &Sheet) -> f64 {
    let code = code(sheet);
    let text: usize = rows(sheet, code.is_some()).iter().map(|(_, lines)| lines.len()).sum();
    let least = if code.is_some() { CODE + 0.8 } else { 0.0 };
    (0.6 + text as f64 * STEP + 1.5).max(least).max(15.0)
}

/// Sets the block below the cursor.
pub fn set(sheet: &mut Sheet) {
    let top = sheet.y;
    let code = code(sheet);
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
        let alt = "QR code with what the page says: number, repair, result, date, entries and head of the record";
        sheet.figure(alt, |sheet| draw(sheet, &code, (grid::RIGHT - CODE, top + 1.4)));
    }
}

fn indent(sheet: &Sheet) -> f64 {
    if sheet.is(Kind::Rehearsal) { 31.0 } else { 27.0 }
}

/// Labels and their lines.
fn rows(sheet: &Sheet, coded: bool) -> Vec<(&'static str, Vec<String>)> {
    let width = grid::WIDTH - indent(sheet) - if coded { CODE + 6.0 } else { 0.0 };
    let lines = |text: &str| text::wrap_at_most(sheet.fonts, text, width, TINY, MOST_LINES).0;
    words(sheet, coded).into_iter().map(|(label, text)| (label, lines(&text))).collect()
}

fn words(sheet: &Sheet, coded: bool) -> [(&'static str, String); 3] {
    let head = &sheet.content.head;
    let digits = words::grouped(&head.sha256.chars().take(64).collect::<String>());
    let entries = head.entries;
    let sealed = sealed(sheet);
    match (sheet.content.kind, sealed) {
        (Kind::Rehearsal, sealed) => [
            (
                "Head of the practice",
                format!("{digits}\n{entries} entries, each marked as a rehearsal. No code to scan: this record is not to be looked up."),
            ),
            (
                "What it shows",
                match sealed {
                    Some((when, _)) => format!("that nothing changed since these rehearsal keys signed it, {when}. The keys were made for this practice and thrown away; “mendline verify” says: a sound rehearsal, not a record."),
                    None => "nothing: no key signed it, and a drawn line proves nothing.".to_string(),
                },
            ),
            (
                "What it is not",
                "a record of a repair. It may be kept for training. Anyone who shows it as proof of a repair is wrong.".to_string(),
            ),
        ],
        (_, Some((when, key))) => [
            ("Head of the record", head_words(&digits, entries, coded)),
            ("The seal proves", format!("no change to this file since it was sealed, {when}, with key {key} …")),
            (
                "It does not prove",
                "who held the phone, or that a hand reading is true. A drawn line alone proves nothing. Whose key it is, the owner learns from the contractor, not from this page.".to_string(),
            ),
        ],
        (_, None) => [
            ("Head of the record", head_words(&digits, entries, coded)),
            ("Not sealed by a key", "A drawn line proves nothing, and this file can be changed without a trace.".to_string()),
            (
                "What can be checked",
                "the head above against the record: it names every entry, but not this page.".to_string(),
            ),
        ],
    }
}

fn head_words(digits: &str, entries: u32, coded: bool) -> String {
    let code = if coded { " The code holds the same head." } else { "" };
    format!("{digits}\n{entries} entries, SHA-256, each entry holds the one before.{code}")
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

/// The code, unless there is none to draw: on a rehearsal, or where its text is too long for a code.
fn code(sheet: &Sheet) -> Option<QrCode> {
    let text = sheet.content.qr.as_ref().filter(|_| !sheet.is(Kind::Rehearsal))?;
    QrCode::encode_text(&text.to_uppercase(), QrCodeEcc::Medium).ok()
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
