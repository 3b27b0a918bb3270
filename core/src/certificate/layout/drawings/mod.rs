//! The three drawings of page 1: the line to scale, the patch on the unrolled wall, the clock face.

mod clock;
mod line;
mod patch;
mod patch_labels;

use super::grid::{self, SMALL, TINY, rule};
use super::page_one::Cut;
use super::sheet::Sheet;
use crate::certificate::content::{Around, Known};
use crate::maths::{cos, sin};
use crate::words::tell;
use std::f64::consts::TAU;

/// Sets the drawings below the cursor, or says why there are none.
pub fn set(sheet: &mut Sheet, cut: &mut Cut) {
    sheet.rule(sheet.y, rule::FINE);
    match &sheet.content.place {
        Known::Known(place) => {
            line::set(sheet, place, cut);
            let top = sheet.y;
            patch::set(sheet, place);
            let end = sheet.y;
            sheet.y = top;
            clock::set(sheet, place);
            sheet.y = end;
        }
        Known::Absent(why) => {
            sheet.y += grid::LINE;
            sheet.text(grid::LEFT, sheet.y, &tell!("cert-mod-no_drawing"), SMALL.bold());
            sheet.text(grid::LEFT + 34.0, sheet.y, why, TINY);
        }
    }
}

/// Returns the corners of an ellipse about `centre`, clockwise from the right.
pub fn polygon(centre: (f64, f64), radius: (f64, f64), corners: u32) -> Vec<(f64, f64)> {
    (0..corners)
        .map(|index| {
            let angle = TAU * f64::from(index) / f64::from(corners);
            (centre.0 + radius.0 * cos(angle), centre.1 + radius.1 * sin(angle))
        })
        .collect()
}

/// Returns the first scale `1 : n` of `scales` at which `length_m` is no longer than `room_mm`; the last, doubled as
/// often as needed, where none is.
fn scale(length_m: f64, room_mm: f64, scales: &[f64]) -> f64 {
    let fits = |scale: &f64| length_m * 1000.0 / scale <= room_mm;
    scales.iter().copied().find(fits).unwrap_or_else(|| {
        let mut scale = scales.last().copied().unwrap_or(1.0);
        while !fits(&scale) && scale < 1e12 {
            scale *= 2.0;
        }
        scale
    })
}

/// Returns where an observation begins and ends, in hours clockwise; a spot is given a width to be seen by.
fn hours(around: Around) -> (f64, f64) {
    match around {
        Around::All => (0.0, 12.0),
        Around::At(hour) => (f64::from(hour) - 0.3, f64::from(hour) + 0.3),
        Around::Arc { from_hour, to_hour } => {
            let from = f64::from(from_hour);
            (from, from + (f64::from(to_hour) - from).rem_euclid(12.0))
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_arc_across_twelve_runs_clockwise() {
        assert_eq!(hours(Around::Arc { from_hour: 11, to_hour: 1 }), (11.0, 13.0));
        assert_eq!(hours(Around::Arc { from_hour: 12, to_hour: 3 }), (12.0, 15.0));
    }

    #[test]
    fn the_scale_is_the_largest_that_fits() {
        assert_eq!(scale(38.4, 154.0, &[200.0, 250.0, 300.0]), 250.0);
        assert_eq!(scale(1000.0, 154.0, &[200.0, 250.0]), 8000.0);
    }
}
