//! The frame of a rehearsal: nobody takes the page for a certificate, not even cropped, copied or upside down.

use super::grid::{ACROSS, FRAME, Style};
use super::labels::Area;
use super::sheet::{Sheet, Slant};
use crate::maths::{atan2, cos, sin};
use crate::words::tell;

/// From the edge of the paper.
const MARGIN: f64 = 4.2;
/// Of the hatched frame.
const BAND: f64 = 3.0;

/// Draws the hatched frame with the word on all four sides, and the word in outline across the page.
pub fn frame(sheet: &mut Sheet) {
    let (width, height) = (sheet.width, sheet.height);
    let outer = Area::new(MARGIN, MARGIN, width - MARGIN, height - MARGIN);
    let inner = outer.grown(-BAND);
    for side in [
        Area::new(outer.left, outer.top, outer.right, inner.top),
        Area::new(outer.left, inner.bottom, outer.right, outer.bottom),
        Area::new(outer.left, inner.top, inner.left, inner.bottom),
        Area::new(inner.right, inner.top, outer.right, inner.bottom),
    ] {
        sheet.hatch(side, 1.8, 0.6, Slant::Rising);
    }
    let says = tell!("cert-answers-rehearsal");
    let word = sheet.measure(&says, FRAME);
    for step in [-1.0, 0.0, 1.0] {
        let x = width / 2.0 + step * 62.0;
        for y in [outer.top, inner.bottom] {
            sheet.fill_area(Area::new(x - word / 2.0 - 2.0, y - 0.2, x + word / 2.0 + 2.0, y + BAND + 0.2), 1.0);
            sheet.text(x, y + 2.6, &says, FRAME.centre());
        }
        let y = height / 2.0 + step * 80.0;
        for x in [outer.left, inner.right] {
            sheet.fill_area(Area::new(x - 0.2, y - word / 2.0 - 2.0, x + BAND + 0.2, y + word / 2.0 + 2.0), 1.0);
            sheet.turned(x + 2.6, y + word / 2.0, 90.0, &says, FRAME);
        }
    }
    across(sheet, &says, ACROSS);
}

fn across(sheet: &mut Sheet, says: &str, style: Style) {
    let (width, height) = (sheet.width, sheet.height);
    let angle = atan2(height - 60.0, width - 30.0);
    let half = sheet.measure(says, style) / 2.0;
    let (x, y) = (width / 2.0 - half * cos(angle) + 9.0, height / 2.0 + half * sin(angle) + 8.0);
    sheet.turned(x, y, angle.to_degrees(), says, style);
}
