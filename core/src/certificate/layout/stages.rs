//! The stages: begun, lasted, what was done, and where they lie in the day.

use super::flow::Heading;
use super::grid::{self, SMALL, TINY, rule};
use super::labels::Area;
use super::sheet::{Sheet, Slant};
use super::words;
use crate::certificate::content::{Bar, BarKind, Known, Stage, Stages, headings};
use crate::certificate::display::{Pen, Role};
use crate::words::tell;

/// Where notes begin.
const NOTE: f64 = 26.0;
/// Where the lengths begin.
const LASTED: f64 = 41.0;
/// Where the axis begins.
const AXIS: f64 = 62.0;
const NOTE_STEP: f64 = 3.2;
/// The height of a bar.
const BAR: f64 = 2.1;

/// Sets heading and table below the cursor, or says why there is none.
pub fn set(sheet: &mut Sheet) {
    let content = sheet.content;
    match &content.stages {
        Known::Known(stages) => table(sheet, stages),
        Known::Absent(why) => absent(sheet, headings::STAGES, why),
    }
}

/// Sets a heading and the reason why nothing follows.
pub fn absent(sheet: &mut Sheet, heading: &'static str, why: &str) {
    Heading { key: heading, remark: "", keep: 8.0 }.set(sheet);
    for line in sheet.wrap(&tell!("cert-stages-not_on_these_pages", why), grid::WIDTH, SMALL) {
        sheet.need(grid::ROW);
        sheet.y += grid::ROW;
        let y = sheet.y;
        sheet.element(Role::P, |sheet| sheet.text(grid::LEFT, y, &line, SMALL));
    }
    sheet.y += 1.0;
}

fn table(sheet: &mut Sheet, stages: &Stages) {
    Heading { key: headings::STAGES, remark: &stages.remark, keep: 20.0 }.set(sheet);
    let axis = Axis::of(sheet, &stages.rows);
    sheet.element(Role::Table, |sheet| {
        sheet.element(Role::Tr, |sheet| head(sheet, &axis, false));
        for (index, stage) in stages.rows.iter().enumerate() {
            let note = sheet.wrap(&dated(sheet, stage), grid::WIDTH - NOTE, TINY);
            if sheet.need(grid::LINE + note.len() as f64 * NOTE_STEP + 0.8) {
                sheet.decorate(|sheet| head(sheet, &axis, true));
            }
            sheet.element(Role::Tr, |sheet| row(sheet, index, stage, &note, &axis));
        }
    });
    sheet.y += 0.4;
    if let Some(carried) = &stages.carried {
        let lines = sheet.wrap(carried, grid::WIDTH, TINY);
        sheet.need(3.6 * lines.len().min(6) as f64);
        sheet.element(Role::P, |sheet| sheet.lines(grid::LEFT, &lines, TINY, 3.6));
    }
}

/// The note, with the day where it is not the day of the document, and with reasons that are too long for a column.
fn dated(sheet: &Sheet, stage: &Stage) -> String {
    let day = |at| sheet.clock.date(at);
    let room = LASTED - NOTE - 0.5;
    match &stage.begun_at_ms {
        Known::Known(at) if day(*at) != day(sheet.content.at_ms) => {
            tell!("cert-stages-on", date = day(*at), note = stage.note)
        }
        Known::Absent(why) if sheet.measure(why, SMALL) > room => {
            tell!("cert-stages-not_begun", why, note = stage.note)
        }
        _ => match &stage.lasted_ms {
            Known::Absent(why) if sheet.measure(why, SMALL) > room => {
                tell!("cert-stages-no_end", why, note = stage.note)
            }
            _ => stage.note.clone(),
        },
    }
}

/// The value, or the reason why there is none, which the note repeats where it is too long for the column.
fn known<T>(value: &Known<T>, say: impl Fn(&T) -> String) -> String {
    match value {
        Known::Known(value) => say(value),
        Known::Absent(why) => why.clone(),
    }
}

fn head(sheet: &mut Sheet, axis: &Axis, continued: bool) {
    sheet.y += grid::LINE;
    let y = sheet.y;
    let first = if continued { tell!("cert-stages-stage_continued") } else { tell!("cert-stages-stage") };
    for (x, title) in [(0.0, first), (NOTE, tell!("cert-stages-begun")), (LASTED, tell!("cert-stages-lasted"))] {
        sheet.element(Role::Th, |sheet| sheet.text(grid::LEFT + x, y, &title, TINY.bold()));
    }
    sheet.element(Role::Th, |sheet| axis.scale(sheet));
    sheet.rule(y + 1.3, rule::HEAD);
    sheet.y += 1.4;
}

fn row(sheet: &mut Sheet, index: usize, stage: &Stage, note: &[String], axis: &Axis) {
    sheet.y += grid::LINE;
    let y = sheet.y;
    let begun = known(&stage.begun_at_ms, |at| sheet.clock.second(*at));
    let lasted = match (&stage.begun_at_ms, &stage.lasted_ms) {
        (Known::Absent(_), Known::Absent(_)) => String::new(),
        (_, lasted) => known(lasted, |span| words::duration(*span)),
    };
    let name = format!("{}  {}", index + 1, stage.name);
    let cells = [(0.0, &name, NOTE - 1.0), (NOTE, &begun, LASTED - NOTE - 0.5), (LASTED, &lasted, AXIS - LASTED - 0.5)];
    for (index, (x, text, room)) in cells.into_iter().enumerate() {
        let style = SMALL.bold_if(index == 0);
        sheet.element(Role::Td, |sheet| sheet.cell((grid::LEFT + x, y), room, text, style));
    }
    sheet.element(Role::Td, |sheet| {
        stage.bars.iter().for_each(|bar| set_bar(sheet, axis, bar, y));
        sheet.lines(grid::LEFT + NOTE, note, TINY, NOTE_STEP);
    });
    sheet.line((grid::LEFT, sheet.y + 1.35), (grid::RIGHT, sheet.y + 1.35), Pen::black(rule::ROW).grey(rule::ROW_GREY));
    sheet.y += 0.8;
}

fn set_bar(sheet: &mut Sheet, axis: &Axis, bar: &Bar, y: f64) {
    let from = axis.x(sheet, bar.from_ms);
    let width = (axis.x(sheet, bar.to_ms) - from).max(0.5).min((grid::RIGHT - from).max(0.5));
    let area = Area::new(from, y - BAR, from + width, y);
    match bar.kind {
        BarKind::Ok => sheet.fill_area(Area { right: area.right + 0.02, ..area }, 0.0),
        BarKind::Gap => {
            sheet.stroke_area(area, Pen::black(0.18));
            sheet.hatch(area, 0.9, 0.18, Slant::Rising);
        }
        BarKind::Out | BarKind::Wait | BarKind::Old => sheet.stroke_area(area, Pen::black(0.25)),
    }
    let Some(label) = &bar.label else { return };
    let wide = sheet.measure(label, TINY);
    if matches!(bar.kind, BarKind::Wait | BarKind::Out) && wide + 2.0 < width {
        sheet.text(from + width / 2.0, y - 0.35, label, TINY.centre());
    } else if bar.kind == BarKind::Old && area.right + 1.2 + wide < grid::RIGHT {
        sheet.text(area.right + 1.2, y - 0.3, label, TINY);
    } else if bar.kind == BarKind::Old && from - 1.2 - wide > grid::LEFT + AXIS {
        sheet.text(from - 1.2, y - 0.3, label, TINY.right());
    }
}

/// The time axis, in minutes of the clock.
struct Axis {
    from: f64,
    to: f64,
    tick: f64,
}

impl Axis {
    fn of(sheet: &Sheet, stages: &[Stage]) -> Self {
        let instants = stages.iter().flat_map(|stage| {
            let begun = stage.begun_at_ms.value().copied();
            stage.bars.iter().flat_map(|bar| [bar.from_ms, bar.to_ms]).chain(begun)
        });
        let (first, last) = instants.fold((i64::MAX, i64::MIN), |(a, b), at| (a.min(at), b.max(at)));
        let (first, last) = if first > last { (0, 3_600_000) } else { (first, last) };
        let (first, last) = (sheet.clock.axis_min(first), sheet.clock.axis_min(last));
        let length = last - first;
        let tick = [30.0, 60.0, 120.0, 240.0, 480.0, 1440.0].into_iter().find(|tick| length / tick <= 9.5);
        let tick = tick.unwrap_or((length / 9.0 / 1440.0).ceil() * 1440.0);
        let from = (first / 30.0).floor() * 30.0;
        Self { from, to: ((last / 30.0).ceil() * 30.0).max(from + 30.0), tick }
    }

    fn x(&self, sheet: &Sheet, at_ms: i64) -> f64 {
        self.at(sheet.clock.axis_min(at_ms)).clamp(grid::LEFT + AXIS, grid::RIGHT)
    }

    fn at(&self, minute: f64) -> f64 {
        grid::LEFT + AXIS + (minute - self.from) / (self.to - self.from) * (grid::WIDTH - AXIS)
    }

    /// Sets the times above the axis, and its ticks.
    fn scale(&self, sheet: &mut Sheet) {
        let y = sheet.y;
        let mut minute = (self.from / self.tick).ceil() * self.tick;
        while minute <= self.to + 1e-6 {
            let at = sheet.clock.from_axis_min(minute);
            let text = if self.tick < 1440.0 { sheet.clock.minute(at) } else { sheet.clock.day(at) };
            let x = self.at(minute);
            let half = sheet.measure(&text, TINY) / 2.0;
            let centre = x.min(grid::RIGHT - half);
            sheet.text(centre, y, &text, TINY.centre());
            sheet.line((x, y + 1.3), (x, y + 2.2), Pen::black(0.18));
            minute += self.tick;
        }
    }
}
