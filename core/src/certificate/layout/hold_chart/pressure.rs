//! The pressure: window, readings, excursions with what was done about them.

use super::axes::{Scale, Time, curve, gaps, upright};
use super::{AXIS_LEFT, AXIS_RIGHT, PRESSURE};
use crate::certificate::content::{Hold, Interval, Reading, Side, Source};
use crate::certificate::display::Pen;
use crate::certificate::fonts::MM_PER_PT;
use crate::certificate::layout::drawings::polygon;
use crate::certificate::layout::grid::{self, Align, TINY};
use crate::certificate::layout::labels::{Area, spread};
use crate::certificate::layout::sheet::Sheet;
use crate::certificate::layout::words;
use crate::words::tell;

/// Draws the panel below `top`.
pub fn set(sheet: &mut Sheet, hold: &Hold, time: &Time, top: f64) {
    let bottom = top + PRESSURE;
    let (scale, step) = pressure_scale(hold, bottom);
    sheet.text(grid::LEFT, top - 1.6, &tell!("cert-pressure-pressure", unit = words::bar_unit()), TINY.bold());
    legend(sheet, top - 1.6);
    gaps(sheet, hold, time, (top, bottom));
    upright(sheet, &scale, step, 1);
    sheet.line((AXIS_LEFT, top), (AXIS_LEFT, bottom), Pen::black(0.25));
    sheet.line((AXIS_LEFT, bottom), (AXIS_RIGHT, bottom), Pen::black(0.25));
    let limits = limits(hold, &scale);
    set_limits(sheet, &limits, &scale);
    not_witnessed(sheet, hold, time, &scale);
    let mut taken = obstacles(sheet, hold, time, &scale, &limits);
    curve(sheet, hold, time, |one| Some(scale.y(words::shown_bar(one.pressure_pa))), Pen::black(0.35));
    for one in &hold.readings {
        let (x, y) = (time.x(sheet, one.at_ms), scale.y(words::shown_bar(one.pressure_pa)));
        point(sheet, one, (x, y));
        if one.side != Side::Inside {
            outside(sheet, one, (x, y), Area::new(AXIS_LEFT, top, AXIS_RIGHT, bottom), &mut taken);
        }
    }
}

fn legend(sheet: &mut Sheet, y: f64) {
    let text = tell!("cert-pressure-read_by_hand_sensor_outside");
    sheet.text(AXIS_RIGHT, y, &text, TINY.right());
}

/// Returns the scale, and the step of its ticks in bar.
fn pressure_scale(hold: &Hold, bottom: f64) -> (Scale, f64) {
    let values = hold.readings.iter().map(|one| words::shown_bar(one.pressure_pa));
    let window = [words::shown_bar(hold.window.lower_pa), words::shown_bar(hold.window.upper_pa)];
    let (low, high) = values.chain(window).fold((f64::MAX, f64::MIN), |(a, b), value| (a.min(value), b.max(value)));
    let steps = [0.05, 0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0];
    let step = steps.into_iter().skip(1).find(|step| (high - low + 0.2) / step <= 12.0).unwrap_or((high - low) / 10.0);
    let low = ((low - 1.2 * step) / (2.0 * step)).floor() * 2.0 * step;
    let high = ((high + 0.4 * step) / step).ceil() * step;
    (Scale { low, high, bottom, height: PRESSURE }, step)
}

/// A line across the chart, named at the right in two lines.
struct Limit {
    bar: f64,
    name: String,
    value: String,
    pen: Pen,
}

fn limits(hold: &Hold, scale: &Scale) -> Vec<Limit> {
    let window = &hold.window;
    let (upper, lower) = (words::shown_bar(window.upper_pa), words::shown_bar(window.lower_pa));
    let limit = |bar: f64, name: &str| Limit {
        bar,
        name: name.to_string(),
        value: format!("{} {}", words::number(bar, 2), words::bar_unit()),
        pen: Pen::black(0.35).dashed(2.0, 1.0),
    };
    let mut limits =
        vec![limit(upper, &tell!("cert-pressure-upper_limit")), limit(lower, &tell!("cert-pressure-lower_limit"))];
    if let Some(least) = window.least_net {
        let bar = words::shown_bar(least.gauge_pa);
        if bar > scale.low && bar < lower - 0.005 {
            limits.push(Limit {
                bar,
                name: tell!("cert-pressure-least_net", net = words::bar(least.net_pa)),
                value: tell!("cert-pressure-gauge", value = words::number(bar, 3), unit = words::bar_unit()),
                pen: Pen::black(0.3).dashed(0.4, 0.8),
            });
        }
    }
    limits
}

fn set_limits(sheet: &mut Sheet, limits: &[Limit], scale: &Scale) {
    let wanted: Vec<(f64, f64)> = limits.iter().map(|limit| (scale.y(limit.bar) + 0.2, 5.6)).collect();
    let places = spread(&wanted, scale.bottom - scale.height - 2.0, scale.bottom + 1.0);
    for (limit, label) in limits.iter().zip(places) {
        let y = scale.y(limit.bar);
        sheet.line((AXIS_LEFT, y), (AXIS_RIGHT, y), limit.pen);
        sheet.text(AXIS_RIGHT + 1.5, label, &limit.name, TINY);
        sheet.text(AXIS_RIGHT + 1.5, label + 2.5, &limit.value, TINY.bold());
    }
}

/// Writes into the wide gaps what they are.
fn not_witnessed(sheet: &mut Sheet, hold: &Hold, time: &Time, scale: &Scale) {
    let width = sheet.measure(&tell!("cert-pressure-not_witnessed"), TINY.bold()) + 2.0;
    let window = &hold.window;
    let middle = (scale.y(words::shown_bar(window.lower_pa)) + scale.y(words::shown_bar(window.upper_pa))) / 2.0;
    let y = middle.min(scale.bottom - width / 2.0).max(scale.bottom - scale.height + width / 2.0);
    for run in hold.runs.iter().filter(|run| run.kind == Interval::Gap) {
        let (from, to) = (time.x(sheet, run.from_ms), time.x(sheet, run.to_ms));
        if to - from > 4.6 {
            let x = (from + to) / 2.0;
            sheet.fill_area(Area::new(x - 2.1, y - width / 2.0, x + 2.1, y + width / 2.0), 1.0);
            sheet.turned(x + 0.9, y + width / 2.0 - 1.0, 90.0, &tell!("cert-pressure-not_witnessed"), TINY.bold());
        }
    }
}

/// What labels in the chart must not meet: gaps, limits, points, and the curve in short pieces.
fn obstacles(sheet: &Sheet, hold: &Hold, time: &Time, scale: &Scale, limits: &[Limit]) -> Vec<Area> {
    let top = scale.bottom - scale.height;
    let gaps = hold.runs.iter().filter(|run| run.kind == Interval::Gap);
    let mut taken: Vec<Area> =
        gaps.map(|run| Area::new(time.x(sheet, run.from_ms), top, time.x(sheet, run.to_ms), scale.bottom)).collect();
    taken.extend(limits.iter().map(|limit| {
        let y = scale.y(limit.bar);
        Area::new(AXIS_LEFT, y - 0.3, AXIS_RIGHT, y + 0.3)
    }));
    let points: Vec<(f64, f64)> = hold
        .readings
        .iter()
        .map(|one| (time.x(sheet, one.at_ms), scale.y(words::shown_bar(one.pressure_pa))))
        .collect();
    taken.extend(points.iter().map(|(x, y)| Area::new(x - 1.2, y - 1.4, x + 1.2, y + 1.4)));
    for pair in points.windows(2) {
        let ((x1, y1), (x2, y2)) = (pair[0], pair[1]);
        taken.extend((0..12).map(|piece| {
            let part = (f64::from(piece) + 0.5) / 12.0;
            let (x, y) = (x1 + part * (x2 - x1), y1 + part * (y2 - y1));
            Area::new(x - 0.4, y - 0.8, x + 0.4, y + 0.8)
        }));
    }
    taken
}

fn point(sheet: &mut Sheet, one: &Reading, (x, y): (f64, f64)) {
    match (one.side, one.source) {
        (Side::Inside, Source::Hand | Source::Paper) => sheet.fill(polygon((x, y), (0.75, 0.75), 16), 0.0),
        (Side::Inside, Source::Sensor) => {
            let half = 0.675;
            sheet.outline_area(Area::new(x - half, y - half, x + half, y + half), Pen::black(0.3));
        }
        (Side::Low | Side::High, _) => {
            let r = 1.5;
            sheet.fill(vec![(x, y + r), (x - r, y - r * 0.8), (x + r, y - r * 0.8)], 0.0);
        }
    }
}

/// Labels a reading outside the window where the label meets nothing; the table of readings has it anyway.
fn outside(sheet: &mut Sheet, one: &Reading, (x, y): (f64, f64), bounds: Area, taken: &mut Vec<Area>) {
    let value = tell!(
        "cert-pressure-at",
        value = words::bar(one.pressure_pa),
        unit = words::bar_unit(),
        at = sheet.clock.minute(one.at_ms)
    );
    let full = one.why.as_ref().map(|why| format!("{value}: {why}"));
    let places = [
        (x + 2.4, y + 0.9, Align::Left),
        (x - 2.4, y + 0.9, Align::Right),
        (x + 2.4, y + 3.4, Align::Left),
        (x - 2.4, y + 3.4, Align::Right),
        (x, y + 4.4, Align::Centre),
        (x + 2.4, y - 1.6, Align::Left),
        (x - 2.4, y - 1.6, Align::Right),
        (x, y - 2.6, Align::Centre),
        (x + 2.4, y + 6.0, Align::Left),
        (x - 2.4, y + 6.0, Align::Right),
    ];
    for text in full.into_iter().chain([value]) {
        for (x, y, align) in places {
            let area = label_area(sheet, &text, (x, y), align);
            if bounds.holds(area) && !taken.iter().any(|other| area.meets(*other)) {
                sheet.text(x, y, &text, TINY.at(align));
                taken.push(area);
                return;
            }
        }
    }
}

fn label_area(sheet: &Sheet, text: &str, (x, y): (f64, f64), align: Align) -> Area {
    let (width, height) = (sheet.measure(text, TINY), TINY.size_pt * MM_PER_PT);
    let left = match align {
        Align::Left => x,
        Align::Centre => x - width / 2.0,
        Align::Right => x - width,
    };
    Area::new(left - 0.4, y - height * 0.78 - 0.2, left + width + 0.4, y + height * 0.24 + 0.2)
}
