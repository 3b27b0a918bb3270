//! The temperatures of pipe wall and patch end.

use super::axes::{Scale, Time, curve, gaps, upright};
use super::{AXIS_LEFT, AXIS_RIGHT, TEMPERATURE};
use crate::certificate::content::{Hold, Reading};
use crate::certificate::display::Pen;
use crate::certificate::layout::drawings::polygon;
use crate::certificate::layout::grid::{self, TINY};
use crate::certificate::layout::labels::spread;
use crate::certificate::layout::sheet::Sheet;
use crate::certificate::layout::words;
use crate::words::tell;

/// Draws the panel below `top`.
pub fn set(sheet: &mut Sheet, hold: &Hold, time: &Time, top: f64) {
    let bottom = top + TEMPERATURE;
    sheet.text(grid::LEFT, top - 1.6, &tell!("cert-temperature-temperature", degree = words::degree()), TINY.bold());
    let values = hold.readings.iter().flat_map(|one| [one.pipe_millicelsius, one.patch_millicelsius]).flatten();
    let (low, high) = values.map(words::shown_celsius).fold((f64::MAX, f64::MIN), |(a, b), v| (a.min(v), b.max(v)));
    sheet.line((AXIS_LEFT, top), (AXIS_LEFT, bottom), Pen::black(0.25));
    sheet.line((AXIS_LEFT, bottom), (AXIS_RIGHT, bottom), Pen::black(0.25));
    if low > high {
        sheet.text(AXIS_LEFT + 2.0, top + 4.0, &tell!("cert-temperature-not_read"), TINY);
        return;
    }
    let (low, high) =
        ((low / 10.0).floor() * 10.0, ((high / 10.0).ceil() * 10.0).max((low / 10.0).floor() * 10.0 + 10.0));
    let scale = Scale { low, high, bottom, height: TEMPERATURE };
    gaps(sheet, hold, time, (top, bottom));
    let steps = [5.0, 10.0, 20.0, 50.0, 100.0, 500.0];
    let step = steps.into_iter().find(|step| (high - low) / step <= 10.0).unwrap_or((high - low) / 10.0);
    upright(sheet, &scale, step, 0);
    let pipe = |one: &Reading| one.pipe_millicelsius.map(|t| scale.y(words::shown_celsius(t)));
    let patch = |one: &Reading| one.patch_millicelsius.map(|t| scale.y(words::shown_celsius(t)));
    curve(sheet, hold, time, pipe, Pen::black(0.3));
    curve(sheet, hold, time, patch, Pen::black(0.3).dashed(1.2, 0.8));
    for one in &hold.readings {
        let x = time.x(sheet, one.at_ms);
        if let Some(y) = pipe(one) {
            sheet.outline(polygon((x, y), (0.65, 0.65), 16), Pen::black(0.22));
        }
        if let Some(y) = patch(one) {
            sheet.fill(vec![(x, y - 0.78), (x + 0.78, y), (x, y + 0.78), (x - 0.78, y)], 0.0);
        }
    }
    let last = |y: &dyn Fn(&Reading) -> Option<f64>| hold.readings.iter().rev().find_map(y);
    let mut named: Vec<(f64, String)> =
        [(last(&patch), tell!("cert-temperature-patch_end")), (last(&pipe), tell!("cert-temperature-pipe_wall"))]
            .into_iter()
            .filter_map(|(y, name)| y.map(|y| (y + 0.8, name)))
            .collect();
    named.sort_by(|a, b| a.0.total_cmp(&b.0));
    let wanted: Vec<(f64, f64)> = named.iter().map(|(y, _)| (*y, 2.9)).collect();
    for ((_, name), y) in named.iter().zip(spread(&wanted, top - 2.0, bottom + 3.0)) {
        sheet.text(AXIS_RIGHT + 1.5, y, name, TINY);
    }
}
