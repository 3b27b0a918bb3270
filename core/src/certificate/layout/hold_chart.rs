//! The hold: pressure and temperature on one time axis, with the window and the minutes that count.

use super::flow::Heading;
use super::grid::{self, Align, SMALL, TINY};
use super::labels::{Area, spread};
use super::sheet::{Sheet, Slant};
use super::stages::absent;
use super::words;
use crate::certificate::content::{Hold, Interval, Known, Reading, Run, Side, Source, headings};
use crate::certificate::display::Pen;
use crate::certificate::fonts::MM_PER_PT;
use crate::units::Temperature;

use super::drawings::polygon;

/// Where the axes begin and end.
const AXIS_LEFT: f64 = grid::LEFT + 14.0;
const AXIS_RIGHT: f64 = grid::RIGHT - 26.0;
const PRESSURE: f64 = 38.0;
const TEMPERATURE: f64 = 24.0;
const HATCH: (f64, f64) = (2.0, 0.13);

/// Sets the charts below the cursor, or says why there are none.
pub fn set(sheet: &mut Sheet) {
    let content = sheet.content;
    match &content.hold {
        Known::Known(hold) if !hold.readings.is_empty() => charts(sheet, hold),
        Known::Known(_) => absent(sheet, headings::HOLD, "no reading was taken"),
        Known::Absent(why) => absent(sheet, headings::HOLD, why),
    }
}

fn charts(sheet: &mut Sheet, hold: &Hold) {
    Heading { key: headings::HOLD, title: headings::HOLD, remark: &hold.remark, keep: 84.0 }.set(sheet);
    let time = Time::of(sheet, hold);
    sheet.y += 6.4;
    let top = sheet.y;
    sheet.figure(&pressure_alt(hold), |sheet| {
        pressure(sheet, hold, &time, top);
        counted(sheet, hold, &time, top + PRESSURE + 1.6);
    });
    let below = top + PRESSURE + 10.2;
    sheet.figure("Temperature of pipe wall and patch end in degrees Celsius against time of day", |sheet| {
        temperature(sheet, hold, &time, below);
        time.ticks(sheet, [top + PRESSURE, below + TEMPERATURE]);
    });
    sheet.y = below + TEMPERATURE + 4.8;
}

fn pressure_alt(hold: &Hold) -> String {
    let window = &hold.window;
    format!(
        "Pressure in bar against time of day: {} readings; window {} to {} bar; {} counted",
        hold.readings.len(),
        words::bar(window.lower_pa),
        words::bar(window.upper_pa),
        words::minutes(hold.counted_ms)
    )
}

/// The time axis, in minutes of the clock.
struct Time {
    from: f64,
    to: f64,
    tick: f64,
}

impl Time {
    fn of(sheet: &Sheet, hold: &Hold) -> Self {
        let ends =
            hold.readings.iter().map(|one| one.at_ms).chain(hold.runs.iter().flat_map(|run| [run.from_ms, run.to_ms]));
        let (first, last) = ends.fold((hold.begun_at_ms, hold.begun_at_ms), |(a, b), at| (a.min(at), b.max(at)));
        let (first, last) = (sheet.clock.axis_min(first), sheet.clock.axis_min(last));
        let ticks = [5.0, 10.0, 15.0, 30.0, 60.0, 120.0, 240.0, 480.0, 1440.0];
        let tick = ticks.into_iter().find(|tick| (last - first) / tick <= 11.0).unwrap_or((last - first) / 10.0);
        let from = (first / tick).floor() * tick;
        Self { from, to: ((last / tick).ceil() * tick).max(from + tick), tick }
    }

    fn x(&self, sheet: &Sheet, at_ms: i64) -> f64 {
        self.at(sheet.clock.axis_min(at_ms)).clamp(AXIS_LEFT, AXIS_RIGHT)
    }

    fn at(&self, minute: f64) -> f64 {
        AXIS_LEFT + (minute - self.from) / (self.to - self.from) * (AXIS_RIGHT - AXIS_LEFT)
    }

    fn ticks(&self, sheet: &mut Sheet, axes: [f64; 2]) {
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
struct Scale {
    low: f64,
    high: f64,
    bottom: f64,
    height: f64,
}

impl Scale {
    fn y(&self, value: f64) -> f64 {
        self.bottom - (value - self.low) / (self.high - self.low) * self.height
    }
}

fn pressure(sheet: &mut Sheet, hold: &Hold, time: &Time, top: f64) {
    let bottom = top + PRESSURE;
    let (scale, step) = pressure_scale(hold, bottom);
    sheet.text(grid::LEFT, top - 1.6, "Pressure, bar", TINY.bold());
    legend(sheet, top - 1.6);
    gaps(sheet, hold, time, (top, bottom), |_| true);
    upright(sheet, &scale, step, 1);
    sheet.line((AXIS_LEFT, top), (AXIS_LEFT, bottom), Pen::black(0.25));
    sheet.line((AXIS_LEFT, bottom), (AXIS_RIGHT, bottom), Pen::black(0.25));
    let limits = limits(hold, &scale);
    set_limits(sheet, &limits, &scale);
    not_witnessed(sheet, hold, time, &scale);
    let mut taken = obstacles(sheet, hold, time, &scale, &limits);
    curve(sheet, hold, time, |one| Some(scale.y(one.pressure_pa.as_bar())), Pen::black(0.35));
    for one in &hold.readings {
        let (x, y) = (time.x(sheet, one.at_ms), scale.y(one.pressure_pa.as_bar()));
        point(sheet, one, (x, y));
        if one.side != Side::Inside {
            outside(sheet, one, (x, y), Area::new(AXIS_LEFT, top, AXIS_RIGHT, bottom), &mut taken);
        }
    }
}

fn legend(sheet: &mut Sheet, y: f64) {
    let text = "●  read by hand     □  sensor     ▼  outside the window     hatched: not witnessed";
    sheet.text(AXIS_RIGHT, y, text, TINY.right());
}

/// Returns the scale, and the step of its ticks in bar.
fn pressure_scale(hold: &Hold, bottom: f64) -> (Scale, f64) {
    let values = hold.readings.iter().map(|one| one.pressure_pa.as_bar());
    let window = [hold.window.lower_pa.as_bar(), hold.window.upper_pa.as_bar()];
    let (low, high) = values.chain(window).fold((f64::MAX, f64::MIN), |(a, b), value| (a.min(value), b.max(value)));
    let steps = [0.05, 0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0];
    let step = steps.into_iter().skip(1).find(|step| (high - low + 0.2) / step <= 12.0).unwrap_or((high - low) / 10.0);
    let low = ((low - 1.2 * step) / (2.0 * step)).floor() * 2.0 * step;
    let high = ((high + 0.4 * step) / step).ceil() * step;
    (Scale { low, high, bottom, height: PRESSURE }, step)
}

/// Draws the ticks of an upright axis, every second with its figure.
fn upright(sheet: &mut Sheet, scale: &Scale, step: f64, decimals: usize) {
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

/// A line across the chart, named at the right in two lines.
struct Limit {
    bar: f64,
    name: String,
    value: String,
    pen: Pen,
}

fn limits(hold: &Hold, scale: &Scale) -> Vec<Limit> {
    let window = &hold.window;
    let (upper, lower) = (window.upper_pa.as_bar(), window.lower_pa.as_bar());
    let limit = |bar: f64, name: &str| Limit {
        bar,
        name: name.to_string(),
        value: format!("{} bar", words::number(bar, 2)),
        pen: Pen::black(0.35).dashed(2.0, 1.0),
    };
    let mut limits = vec![limit(upper, "upper limit"), limit(lower, "lower limit")];
    if let Some(least) = window.least_net {
        let bar = least.gauge_pa.as_bar();
        if bar > scale.low && bar < lower - 0.005 {
            limits.push(Limit {
                bar,
                name: format!("least net {}", words::bar(least.net_pa)),
                value: format!("= {} gauge", words::number(bar, 3)),
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

/// Hatches the minutes that nobody saw.
fn gaps(sheet: &mut Sheet, hold: &Hold, time: &Time, (top, bottom): (f64, f64), which: impl Fn(&Run) -> bool) {
    for run in hold.runs.iter().filter(|run| run.kind == Interval::Gap && which(run)) {
        let area = Area::new(time.x(sheet, run.from_ms), top, time.x(sheet, run.to_ms), bottom);
        sheet.hatch(area, HATCH.0, HATCH.1, Slant::Rising);
    }
}

/// Writes into the wide gaps what they are.
fn not_witnessed(sheet: &mut Sheet, hold: &Hold, time: &Time, scale: &Scale) {
    let width = sheet.measure("not witnessed", TINY.bold()) + 2.0;
    let window = &hold.window;
    let middle = (scale.y(window.lower_pa.as_bar()) + scale.y(window.upper_pa.as_bar())) / 2.0;
    let y = middle.min(scale.bottom - width / 2.0).max(scale.bottom - scale.height + width / 2.0);
    for run in hold.runs.iter().filter(|run| run.kind == Interval::Gap) {
        let (from, to) = (time.x(sheet, run.from_ms), time.x(sheet, run.to_ms));
        if to - from > 4.6 {
            let x = (from + to) / 2.0;
            sheet.fill_area(Area::new(x - 2.1, y - width / 2.0, x + 2.1, y + width / 2.0), 1.0);
            sheet.turned(x + 0.9, y + width / 2.0 - 1.0, 90.0, "not witnessed", TINY.bold());
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
    let points: Vec<(f64, f64)> =
        hold.readings.iter().map(|one| (time.x(sheet, one.at_ms), scale.y(one.pressure_pa.as_bar()))).collect();
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

/// Draws a curve through the readings, broken at gaps and where there is no value.
fn curve(sheet: &mut Sheet, hold: &Hold, time: &Time, y: impl Fn(&Reading) -> Option<f64>, pen: Pen) {
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

fn point(sheet: &mut Sheet, one: &Reading, (x, y): (f64, f64)) {
    match (one.side, one.source) {
        (Side::Inside, Source::Hand) => sheet.fill(polygon((x, y), (0.75, 0.75), 16), 0.0),
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
    let value = format!("{} bar at {}", words::bar(one.pressure_pa), sheet.clock.minute(one.at_ms));
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

/// Draws the strip that sums the counted minutes.
fn counted(sheet: &mut Sheet, hold: &Hold, time: &Time, top: f64) {
    let base = top + 2.25;
    sheet.text(AXIS_LEFT - 1.8, base, "counted", TINY.bold().right());
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

fn temperature(sheet: &mut Sheet, hold: &Hold, time: &Time, top: f64) {
    let bottom = top + TEMPERATURE;
    sheet.text(grid::LEFT, top - 1.6, "Temperature, °C", TINY.bold());
    let values = hold.readings.iter().flat_map(|one| [one.pipe_millicelsius, one.patch_millicelsius]).flatten();
    let (low, high) = values.map(Temperature::as_celsius).fold((f64::MAX, f64::MIN), |(a, b), v| (a.min(v), b.max(v)));
    sheet.line((AXIS_LEFT, top), (AXIS_LEFT, bottom), Pen::black(0.25));
    sheet.line((AXIS_LEFT, bottom), (AXIS_RIGHT, bottom), Pen::black(0.25));
    if low > high {
        sheet.text(AXIS_LEFT + 2.0, top + 4.0, "not read", TINY);
        return;
    }
    let (low, high) =
        ((low / 10.0).floor() * 10.0, ((high / 10.0).ceil() * 10.0).max((low / 10.0).floor() * 10.0 + 10.0));
    let scale = Scale { low, high, bottom, height: TEMPERATURE };
    gaps(sheet, hold, time, (top, bottom), |_| true);
    let steps = [5.0, 10.0, 20.0, 50.0, 100.0, 500.0];
    let step = steps.into_iter().find(|step| (high - low) / step <= 10.0).unwrap_or((high - low) / 10.0);
    upright(sheet, &scale, step, 0);
    let pipe = |one: &Reading| one.pipe_millicelsius.map(|t| scale.y(t.as_celsius()));
    let patch = |one: &Reading| one.patch_millicelsius.map(|t| scale.y(t.as_celsius()));
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
    let mut named: Vec<(f64, &str)> = [(last(&patch), "◆ patch end"), (last(&pipe), "○ pipe wall")]
        .into_iter()
        .filter_map(|(y, name)| y.map(|y| (y + 0.8, name)))
        .collect();
    named.sort_by(|a, b| a.0.total_cmp(&b.0));
    let wanted: Vec<(f64, f64)> = named.iter().map(|(y, _)| (*y, 2.9)).collect();
    for ((_, name), y) in named.iter().zip(spread(&wanted, top - 2.0, bottom + 3.0)) {
        sheet.text(AXIS_RIGHT + 1.5, y, name, TINY);
    }
}
