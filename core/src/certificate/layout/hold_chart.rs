//! The hold: pressure and temperature on one time axis, with the window and the minutes that count.

mod axes;
mod pressure;
mod temperature;

use super::flow::Heading;
use super::grid::{self, SMALL, TINY};
use super::labels::Area;
use super::sheet::Sheet;
use super::stages::absent;
use super::words;
use crate::certificate::content::{Hold, Interval, Known, headings};
use crate::certificate::display::Pen;
use crate::words::tell;
use axes::Time;

/// Where the axes begin and end.
const AXIS_LEFT: f64 = grid::LEFT + 14.0;
const AXIS_RIGHT: f64 = grid::RIGHT - 26.0;
/// The heights of the two panels.
const PRESSURE: f64 = 38.0;
const TEMPERATURE: f64 = 24.0;

/// Sets the charts below the cursor, or says why there are none.
pub fn set(sheet: &mut Sheet) {
    let content = sheet.content;
    match &content.hold {
        Known::Known(hold) if !hold.readings.is_empty() => charts(sheet, hold),
        Known::Known(_) => absent(sheet, headings::HOLD, &tell!("cert-chart-no_reading_was_taken")),
        Known::Absent(why) => absent(sheet, headings::HOLD, why),
    }
}

fn charts(sheet: &mut Sheet, hold: &Hold) {
    Heading { key: headings::HOLD, remark: &hold.remark, keep: 84.0 }.set(sheet);
    let time = Time::of(sheet, hold);
    sheet.y += 6.4;
    let top = sheet.y;
    sheet.figure(&pressure_alt(hold), |sheet| {
        pressure::set(sheet, hold, &time, top);
        counted(sheet, hold, &time, top + PRESSURE + 1.6);
    });
    let below = top + PRESSURE + 10.2;
    let temperature = tell!("cert-chart-temperature_of_pipe_wall_and", degree = words::degree());
    sheet.figure(&temperature, |sheet| {
        temperature::set(sheet, hold, &time, below);
        time.ticks(sheet, [top + PRESSURE, below + TEMPERATURE]);
    });
    sheet.y = below + TEMPERATURE + 4.8;
}

fn pressure_alt(hold: &Hold) -> String {
    let (window, unit) = (&hold.window, words::bar_unit());
    tell!(
        "cert-chart-pressure_in_against_time_of",
        unit,
        count = hold.readings.len(),
        lower = words::bar(window.lower_pa),
        upper = words::bar(window.upper_pa),
        time = words::minutes(hold.counted_ms)
    )
}

/// Draws the strip that sums the counted minutes.
fn counted(sheet: &mut Sheet, hold: &Hold, time: &Time, top: f64) {
    let base = top + 2.25;
    sheet.text(AXIS_LEFT - 1.8, base, &tell!("cert-chart-counted"), TINY.bold().right());
    for run in &hold.runs {
        let area = Area::new(time.x(sheet, run.from_ms), top, time.x(sheet, run.to_ms), top + 2.8);
        let count = run.kind == Interval::Counted;
        if count {
            sheet.fill_area(area, 0.0);
        } else {
            sheet.stroke_area(area, Pen::black(0.18));
        }
        let style = TINY.bold_if(count).white_if(count).centre();
        let label = words::minutes(run.length_ms);
        if sheet.measure(&label, style) + 2.0 < area.width() {
            sheet.text(area.centre().0, base, &label, style);
        }
    }
    sheet.text(AXIS_RIGHT + 1.5, base, &format!("= {}", words::minutes(hold.counted_ms)), SMALL.bold());
}
