//! Who signs: the drawn line, name, role, instant, device, and what the name is put to.
//!
//! Where a key will sign, the drawn line is left to the field: it appears with the signature and not before.

use super::grid::{self, BODY, HEADING, SMALL, rule};
use super::labels::Area;
use super::page_one::{Cut, fitted};
use super::sheet::Sheet;
use super::wording;
use crate::certificate::content::{Kind, Known, Seal, Signature};
use crate::certificate::display::{Pen, Role, SIGNATURE_FIELDS};
use crate::words::tell;

/// From the heading to the line that is signed on.
const LINE_DROP: f64 = 10.4;
/// Above that line: the drawn line, and what the key adds.
const ROOM: f64 = 8.4;
const NAME_STEP: f64 = 3.8;
const STEP: f64 = 3.6;
const GUTTER: f64 = 4.0;

/// Returns the height of the block in mm, where a name or a statement takes at most so many lines.
pub fn height(sheet: &Sheet, most: usize) -> f64 {
    let width = column_width(sheet);
    let columns =
        sheet.content.signatures.iter().map(|one| Below::of(sheet, one, (width, most), &mut Cut::default()).height());
    3.6 + LINE_DROP + columns.fold(0.0, f64::max) + 2.4
}

/// Sets the block below the cursor, and notes what it cuts.
pub fn set(sheet: &mut Sheet, most: usize, cut: &mut Cut) {
    sheet.rule(sheet.y - 1.0, rule::SECTION);
    sheet.y += 3.6;
    let y = sheet.y;
    let heading = wording::signatures(sheet.content.kind);
    sheet.element(Role::H2, |sheet| sheet.text(grid::LEFT, y, &heading, HEADING));
    let width = column_width(sheet);
    let content = sheet.content;
    for (index, signature) in content.signatures.iter().enumerate() {
        let x = grid::LEFT + index as f64 * (width + GUTTER);
        sheet.y = y + LINE_DROP;
        let below = Below::of(sheet, signature, (width, most), cut);
        sheet.element(Role::Sect, |sheet| {
            if let Some(field) = SIGNATURE_FIELDS.get(index) {
                sheet.signature(field, Area::new(x, sheet.y - ROOM, x + width, sheet.y));
            }
            one(sheet, signature, &below, (x, width));
        });
    }
}

fn column_width(sheet: &Sheet) -> f64 {
    let count = sheet.content.signatures.len().clamp(2, 4) as f64;
    (grid::WIDTH - (count - 1.0) * GUTTER) / count
}

/// The lines below one signature.
struct Below {
    name: Vec<String>,
    facts: Vec<String>,
    statement: Vec<String>,
}

impl Below {
    fn of(sheet: &Sheet, signature: &Signature, (width, most): (f64, usize), cut: &mut Cut) -> Self {
        let statement = match (&signature.signed, sheet.content.kind) {
            (_, Kind::Rehearsal) => signature.statement.clone(),
            (Known::Known(_), _) => tell!("cert-signatures-quoted", statement = signature.statement),
            (Known::Absent(_), _) => String::new(),
        };
        let mut lines = |text: &str, style| match text {
            "" => Vec::new(),
            text => fitted(sheet, &signature.role, text, (width, style, most), cut),
        };
        Self {
            name: lines(&signature.name, BODY.bold()),
            facts: lines(&facts(sheet, signature), SMALL),
            statement: lines(&statement, SMALL),
        }
    }

    fn height(&self) -> f64 {
        NAME_STEP * self.name.len() as f64 + STEP * (self.facts.len() + self.statement.len()) as f64
    }
}

fn facts(sheet: &Sheet, signature: &Signature) -> String {
    let clock = sheet.clock;
    match &signature.signed {
        Known::Absent(why) => tell!("cert-signatures-not_signed", why, role = signature.role),
        Known::Known(signed) => {
            let when = format!("{} {} {}", clock.date(signed.at_ms), clock.second(signed.at_ms), clock.offset());
            let known = if signed.authenticated { tell!("cert-signatures-pin") } else { String::new() };
            let drawn = if signed.strokes.is_some() { String::new() } else { tell!("cert-signatures-no_line_drawn") };
            format!("{}, {when}, {}{known}{drawn}", signature.role, signed.device)
        }
    }
}

fn one(sheet: &mut Sheet, signature: &Signature, below: &Below, (x, width): (f64, f64)) {
    let base = sheet.y;
    if sheet.content.seal == Seal::None
        && let Known::Known(signed) = &signature.signed
        && let Some(strokes) = &signed.strokes
    {
        let area = Area::new(x + 4.0, base - 7.6, x + (width - 4.0).min(58.0), base + 1.0);
        sheet
            .figure(&tell!("cert-signatures-line_drawn_by", name = signature.name), |sheet| draw(sheet, strokes, area));
    }
    sheet.line((x, base), (x + width, base), Pen::black(0.25));
    sheet.element(Role::P, |sheet| {
        if sheet.is(Kind::Rehearsal) {
            sheet.text(x + width, base + NAME_STEP, &tell!("cert-signatures-practice"), BODY.bold().right());
        }
        sheet.lines(x, &below.name, BODY.bold(), NAME_STEP);
        sheet.lines(x, &below.facts, SMALL, STEP);
        sheet.lines(x, &below.statement, SMALL, STEP);
    });
}

/// Draws strokes scaled evenly into an area, standing on its lower edge.
fn draw(sheet: &mut Sheet, strokes: &[Vec<[i32; 2]>], area: Area) {
    let points = || strokes.iter().flatten().map(|[x, y]| (f64::from(*x), f64::from(*y)));
    let (mut low, mut high) = ((f64::MAX, f64::MAX), (f64::MIN, f64::MIN));
    for (x, y) in points() {
        low = (low.0.min(x), low.1.min(y));
        high = (high.0.max(x), high.1.max(y));
    }
    let scale = (area.width() / (high.0 - low.0).max(1.0)).min(area.height() / (high.1 - low.1).max(1.0));
    let place = |[x, y]: &[i32; 2]| {
        (area.left + (f64::from(*x) - low.0) * scale, area.bottom - (high.1 - f64::from(*y)) * scale)
    };
    for stroke in strokes {
        let mut path: Vec<(f64, f64)> = stroke.iter().map(place).collect();
        if let [(x, y)] = path[..] {
            path.push((x + 0.3, y));
        }
        if !path.is_empty() {
            sheet.stroke(path, Pen::black(0.38), false);
        }
    }
}
