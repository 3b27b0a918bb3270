//! The working time: what was used of it, on the way from joining to target pressure.

use super::flow::Heading;
use super::grid::{self, SMALL, TINY};
use super::labels::Area;
use super::sheet::{Sheet, Slant};
use super::stages::absent;
use super::text;
use super::words;
use crate::certificate::content::{Known, WorkingTime, headings};
use crate::certificate::display::Pen;
use crate::units::Span;
use crate::words::tell;

/// The height of the bar.
const BAR: f64 = 4.0;
/// Rows of labels above the bar.
const ROWS: usize = 3;
const ROW: f64 = 3.0;

/// Sets the bar below the cursor, or says why there is none.
pub fn set(sheet: &mut Sheet) {
    let content = sheet.content;
    match &content.working_time {
        Known::Known(time) => bar(sheet, time),
        Known::Absent(why) => absent(sheet, headings::WORKING_TIME, why),
    }
}

/// Minutes to millimetres.
struct Scale {
    most: f64,
}

impl Scale {
    fn x(&self, minutes: f64) -> f64 {
        grid::LEFT + minutes.clamp(0.0, self.most) / self.most * grid::WIDTH
    }
}

fn bar(sheet: &mut Sheet, time: &WorkingTime) {
    Heading { key: headings::WORKING_TIME, remark: &time.remark, keep: 24.0 }.set(sheet);
    let used = time.used_ms.value().map(|span| span.as_min());
    let allowed = time.allowed_ms.value().map(|span| span.as_min());
    let events = time.events.iter().map(|event| elapsed(time, event.at_ms));
    let last = events.chain(used).chain(allowed).fold(1.0, f64::max);
    let step = [5.0, 10.0, 15.0, 30.0, 60.0].into_iter().find(|step| last / step <= 14.0).unwrap_or(last / 10.0);
    let scale = Scale { most: (last * 1.06 / step).ceil() * step };
    sheet.figure(&alt(time), |sheet| {
        sheet.y += 10.4;
        let y = sheet.y;
        bars(sheet, &scale, time, (used, allowed));
        events_above(sheet, &scale, time, allowed);
        ticks(sheet, &scale, step, y + BAR);
    });
    sheet.y += 8.8;
}

fn elapsed(time: &WorkingTime, at_ms: i64) -> f64 {
    at_ms.saturating_sub(time.joined_at_ms) as f64 / 60e3
}

fn alt(time: &WorkingTime) -> String {
    let say = |known: &Known<Span>| match known {
        Known::Known(span) => words::minutes(*span),
        Known::Absent(why) => why.clone(),
    };
    tell!("cert-working_time-working_time_used_allowed", used = say(&time.used_ms), allowed = say(&time.allowed_ms))
}

/// Draws what was used black, what was left open, what was too long hatched.
fn bars(sheet: &mut Sheet, scale: &Scale, time: &WorkingTime, (used, allowed): (Option<f64>, Option<f64>)) {
    let y = sheet.y;
    let area = |from: f64, to: f64| Area::new(scale.x(from), y, scale.x(to), y + BAR);
    let end = used.or(allowed).unwrap_or(scale.most);
    let in_time = used.map_or(0.0, |used| allowed.map_or(used, |allowed| used.min(allowed)));
    sheet.fill_area(area(0.0, in_time), 0.0);
    if let Some(allowed) = allowed {
        if in_time < allowed {
            let left = area(in_time, allowed);
            sheet.stroke_area(left, Pen::black(0.25));
            let words = if used.is_some() { tell!("cert-working_time-not_used") } else { absent_word(&time.used_ms) };
            if sheet.measure(&words, TINY) + 2.0 < left.width() {
                sheet.text(left.centre().0, y + 2.9, &words, TINY.centre());
            }
        } else if end > allowed {
            let late = area(allowed, end);
            sheet.stroke_area(late, Pen::black(0.25));
            sheet.hatch(late, 1.2, 0.25, Slant::Rising);
        }
        let x = scale.x(allowed);
        sheet.line((x, y - 3.2), (x, y + BAR + 1.0), Pen::black(0.7));
        let word = tell!("cert-working_time-allowed");
        let left = (x + 1.2).min(grid::RIGHT - sheet.measure(&word, SMALL.bold()));
        sheet.text(left, y - 1.2, &word, SMALL.bold());
    }
}

fn absent_word(known: &Known<Span>) -> String {
    match known {
        Known::Known(_) => String::new(),
        Known::Absent(why) => why.clone(),
    }
}

/// A label that was set: its edges and its row.
struct Placed {
    left: f64,
    right: f64,
    row: usize,
}

/// Sets the events above the bar, from the last to the first: a label that meets another steps up.
fn events_above(sheet: &mut Sheet, scale: &Scale, time: &WorkingTime, allowed: Option<f64>) {
    let y = sheet.y;
    let mut placed: Vec<Placed> = Vec::new();
    let before_limit = allowed.map_or(grid::RIGHT, |allowed| scale.x(allowed) - 2.0);
    for (index, event) in time.events.iter().enumerate().rev() {
        let x = scale.x(elapsed(time, event.at_ms));
        let minute = sheet.clock.minute(event.at_ms);
        let (words, _) = text::wrap_at_most(sheet.fonts, &event.words, 50.0, TINY, 1);
        let label = format!("{} {minute}", words.concat());
        let width = sheet.measure(&label, TINY);
        let limit = if x > before_limit { grid::RIGHT } else { before_limit };
        let left = |row: usize| {
            if row == 0 {
                (x - width / 2.0).min(limit - width).max(grid::LEFT)
            } else {
                (x - 1.0).min(limit - width).max(grid::LEFT)
            }
        };
        let free = |row: &usize| {
            let (from, to) = (left(*row), left(*row) + width);
            placed.iter().all(|other| match other.row.cmp(row) {
                std::cmp::Ordering::Equal => to + 1.5 <= other.left || from >= other.right + 1.5,
                std::cmp::Ordering::Less => x > other.right + 1.0 || x < other.left - 1.0,
                std::cmp::Ordering::Greater => true,
            })
        };
        let row = (0..ROWS).find(free).unwrap_or(ROWS);
        if row < ROWS {
            let top = y - 1.4 - row as f64 * ROW;
            sheet.line((x, top), (x, y), Pen::black(0.25));
            sheet.text(left(row), top - 0.8, &label, TINY);
            placed.push(Placed { left: left(row), right: left(row) + width, row });
        }
        if index > 0 {
            sheet.line((x, y), (x, y + BAR), Pen::black(0.25).grey(1.0));
        }
    }
}

fn ticks(sheet: &mut Sheet, scale: &Scale, step: f64, y: f64) {
    let count = (scale.most / step).round() as u32;
    for index in 0..=count {
        let value = f64::from(index) * step;
        let x = scale.x(value);
        sheet.line((x, y), (x, y + 1.0), Pen::black(0.18));
        let unit = if index == count { " min" } else { "" };
        let style = match index {
            0 => TINY,
            _ if index == count => TINY.right(),
            _ => TINY.centre(),
        };
        sheet.text(x, y + 3.6, &format!("{value:.0}{unit}"), style);
    }
}
