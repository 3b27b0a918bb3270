//! The axes that pressure and temperature share: time along, values up; gaps, and curves that break at them.

use super::{AXIS_LEFT, AXIS_RIGHT};
use crate::certificate::content::{Hold, Interval, Reading};
use crate::certificate::display::Pen;
use crate::certificate::layout::grid::TINY;
use crate::certificate::layout::labels::Area;
use crate::certificate::layout::sheet::{Sheet, Slant};
use crate::certificate::layout::words;

const HATCH: (f64, f64) = (2.0, 0.13);

/// The time axis, in minutes of the clock.
pub struct Time {
    from: f64,
    to: f64,
    tick: f64,
}

impl Time {
    pub fn of(sheet: &Sheet, hold: &Hold) -> Self {
        let ends =
            hold.readings.iter().map(|one| one.at_ms).chain(hold.runs.iter().flat_map(|run| [run.from_ms, run.to_ms]));
        let (first, last) = ends.fold((hold.begun_at_ms, hold.begun_at_ms), |(a, b), at| (a.min(at), b.max(at)));
        let (first, last) = (sheet.clock.axis_min(first), sheet.clock.axis_min(last));
        let ticks = [5.0, 10.0, 15.0, 30.0, 60.0, 120.0, 240.0, 480.0, 1440.0];
        let tick = ticks.into_iter().find(|tick| (last - first) / tick <= 11.0).unwrap_or((last - first) / 10.0);
        let from = (first / tick).floor() * tick;
        Self { from, to: ((last / tick).ceil() * tick).max(from + tick), tick }
    }

    pub fn x(&self, sheet: &Sheet, at_ms: i64) -> f64 {
        self.at(sheet.clock.axis_min(at_ms)).clamp(AXIS_LEFT, AXIS_RIGHT)
    }

    fn at(&self, minute: f64) -> f64 {
        AXIS_LEFT + (minute - self.from) / (self.to - self.from) * (AXIS_RIGHT - AXIS_LEFT)
    }

    pub fn ticks(&self, sheet: &mut Sheet, axes: [f64; 2]) {
        let count = ((self.to - self.from) / self.tick).round() as u32;
        for index in 0..=count {
            let minute = self.from + f64::from(index) * self.tick;
            for y in axes {
                sheet.line((self.at(minute), y), (self.at(minute), y + 1.0), Pen::black(0.18));
            }
            let text = sheet.clock.minute(sheet.clock.from_axis_min(minute));
            sheet.text(self.at(minute), axes[1] + 3.6, &text, TINY.centre());
        }
    }
}

/// An upright axis.
pub struct Scale {
    pub low: f64,
    pub high: f64,
    pub bottom: f64,
    pub height: f64,
}

impl Scale {
    pub fn y(&self, value: f64) -> f64 {
        self.bottom - (value - self.low) / (self.high - self.low) * self.height
    }
}

/// Draws the ticks of an upright axis, every second with its figure.
pub fn upright(sheet: &mut Sheet, scale: &Scale, step: f64, decimals: usize) {
    let count = ((scale.high - scale.low) / step).round() as u32;
    for index in 0..=count {
        let value = scale.low + f64::from(index) * step;
        let y = scale.y(value);
        sheet.line((AXIS_LEFT - 1.0, y), (AXIS_LEFT, y), Pen::black(0.18));
        if index % 2 == 0 {
            sheet.text(AXIS_LEFT - 1.8, y + 0.8, &words::number(value, decimals), TINY.right());
        }
    }
}

/// Hatches the minutes that nobody saw.
pub fn gaps(sheet: &mut Sheet, hold: &Hold, time: &Time, (top, bottom): (f64, f64)) {
    for run in hold.runs.iter().filter(|run| run.kind == Interval::Gap) {
        let area = Area::new(time.x(sheet, run.from_ms), top, time.x(sheet, run.to_ms), bottom);
        sheet.hatch(area, HATCH.0, HATCH.1, Slant::Rising);
    }
}

/// Draws a curve through the readings, broken at gaps and where there is no value.
pub fn curve(sheet: &mut Sheet, hold: &Hold, time: &Time, y: impl Fn(&Reading) -> Option<f64>, pen: Pen) {
    let mut path = Vec::new();
    for one in &hold.readings {
        if one.before == Some(Interval::Gap) {
            flush(sheet, &mut path, pen);
        }
        match y(one) {
            Some(y) => path.push((time.x(sheet, one.at_ms), y)),
            None => flush(sheet, &mut path, pen),
        }
    }
    flush(sheet, &mut path, pen);
}

fn flush(sheet: &mut Sheet, path: &mut Vec<(f64, f64)>, pen: Pen) {
    let points = std::mem::take(path);
    if points.len() > 1 {
        sheet.stroke(points, pen, false);
    }
}
