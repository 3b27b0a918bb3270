//! All readings, three columns side by side.

use super::flow::Heading;
use super::grid::{self, SMALL, TINY, rule};
use super::sheet::Sheet;
use super::words;
use crate::certificate::content::{Interval, Known, Reading, Side, Source, headings};
use crate::certificate::display::{Pen, Role};
use crate::units::Temperature;
use crate::words::tell;

const COLUMNS: usize = 3;
/// From column to column.
const PITCH: f64 = 60.0;
const WIDTH: f64 = 56.0;
/// From the heading of a column to its first row.
const FIRST: f64 = 4.6;
const ROW: f64 = 3.5;
/// Rows that keep each other company on a page.
const LEAST: usize = 3;

/// Sets the readings below the cursor; nothing where there are none.
pub fn set(sheet: &mut Sheet) {
    let content = sheet.content;
    let Known::Known(hold) = &content.hold else { return };
    let readings = &hold.readings;
    if readings.is_empty() {
        return;
    }
    let rows = readings.len().div_ceil(COLUMNS).max(3);
    let remark = remark(sheet, readings);
    let keep = grid::LINE + FIRST + rows.min(LEAST) as f64 * ROW;
    Heading { key: headings::READINGS, remark: &remark, keep }.set(sheet);
    sheet.element(Role::Table, |sheet| blocks(sheet, readings));
}

fn remark(sheet: &Sheet, readings: &[Reading]) -> String {
    let paper = readings.iter().any(|one| one.source == Source::Paper);
    let paper = if paper { tell!("cert-readings-p_from_paper") } else { String::new() };
    let key = tell!("cert-readings-h_read_by_hand_s", paper);
    let day = |at| sheet.clock.date(at);
    let from = readings.first().map(|first| day(first.at_ms)).unwrap_or_default();
    let to = readings.last().map(|last| day(last.at_ms)).unwrap_or_default();
    if from == to && to == day(sheet.content.at_ms) { key } else { tell!("cert-readings-to", from, to, key) }
}

/// Sets as many rows as the page holds, in three columns, page after page.
fn blocks(sheet: &mut Sheet, readings: &[Reading]) {
    let mut rest = readings;
    while !rest.is_empty() {
        let wanted = rest.len().div_ceil(COLUMNS);
        let room = ((sheet.room() - grid::LINE - FIRST) / ROW + 1.0).floor().max(0.0) as usize;
        if room < wanted.min(LEAST) {
            sheet.new_page();
            continue;
        }
        let rows = rows_here(wanted, room);
        sheet.y += grid::LINE;
        let top = sheet.y;
        let (now, later) = rest.split_at((rows * COLUMNS).min(rest.len()));
        for (column, block) in now.chunks(rows).enumerate() {
            let x = grid::LEFT + column as f64 * PITCH;
            // One head for each page is read out; beside it the same words are decoration.
            if column == 0 {
                sheet.element(Role::Tr, |sheet| head(sheet, x, top));
            } else {
                sheet.decorate(|sheet| head(sheet, x, top));
            }
            for (row, reading) in block.iter().enumerate() {
                sheet.element(Role::Tr, |sheet| set_row(sheet, reading, x, top + FIRST + row as f64 * ROW));
            }
        }
        sheet.y = top + FIRST + (rows as f64 - 1.0) * ROW + 1.6;
        rest = later;
    }
}

/// Returns how many of the wanted rows this page takes, so that the next doesn't begin with one or two.
fn rows_here(wanted: usize, room: usize) -> usize {
    let rows = wanted.min(room);
    let left = wanted - rows;
    if (1..LEAST).contains(&left) { rows.min(wanted.saturating_sub(LEAST).max(LEAST)) } else { rows }
}

fn head(sheet: &mut Sheet, x: f64, y: f64) {
    sheet.element(Role::Th, |sheet| sheet.text(x + 2.0, y, &tell!("cert-readings-time"), TINY.bold()));
    let degree = words::degree();
    let titles =
        [words::bar_unit().to_owned(), tell!("cert-readings-pipe", degree), tell!("cert-readings-patch", degree)];
    for (edge, title) in [22.0, 33.0, 45.0].into_iter().zip(titles) {
        sheet.element(Role::Th, |sheet| sheet.text(x + edge, y, &title, TINY.bold().right()));
    }
    sheet.element(Role::Th, |_| ());
    sheet.element(Role::Th, |_| ());
    sheet.line((x, y + 1.2), (x + WIDTH, y + 1.2), Pen::black(rule::HEAD));
}

fn set_row(sheet: &mut Sheet, one: &Reading, x: f64, y: f64) {
    let outside = one.side != Side::Inside;
    let celsius = |t: Option<Temperature>| t.map_or("–".to_string(), words::celsius);
    sheet.element(Role::ThRow, |sheet| {
        if matches!(one.before, Some(Interval::Gap | Interval::Out)) {
            sheet.text(x, y, "–", SMALL.bold());
        }
        sheet.text(x + 2.0, y, &sheet.clock.second(one.at_ms), SMALL)
    });
    let cells = [
        (22.0, words::bar(one.pressure_pa), outside),
        (33.0, celsius(one.pipe_millicelsius), false),
        (45.0, celsius(one.patch_millicelsius), false),
    ];
    for (edge, text, bold) in cells {
        sheet.element(Role::Td, |sheet| sheet.text(x + edge, y, &text, SMALL.bold_if(bold).right()));
    }
    let source = match one.source {
        Source::Hand => tell!("cert-readings-h"),
        Source::Sensor => tell!("cert-readings-s"),
        Source::Paper => tell!("cert-readings-p"),
    };
    sheet.element(Role::Td, |sheet| sheet.text(x + 48.0, y, &source, SMALL));
    let word = match (one.side, one.before) {
        (Side::Low, _) => tell!("cert-readings-low"),
        (Side::High, _) => tell!("cert-readings-high"),
        (Side::Inside, Some(Interval::Gap)) => tell!("cert-readings-gap"),
        (Side::Inside, _) => String::new(),
    };
    sheet.element(Role::Td, |sheet| sheet.text(x + 51.0, y, &word, TINY.bold()));
}
