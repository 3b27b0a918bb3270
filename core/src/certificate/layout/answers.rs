//! The six answers that a reader gets in ten seconds, with the result sign.

use super::drawings::polygon;
use super::grid::{self, BODY, HEADING, LINE, RESULT, Style, TAIL};
use super::labels::Area;
use super::page_one::{Cut, Limits, fitted};
use super::sheet::Sheet;
use super::wording;
use crate::certificate::content::{Answer, Kind, Note};
use crate::certificate::display::{Pen, Role};
use crate::words::tell;

/// Where the answers begin.
fn left() -> f64 {
    grid::column(1)
}

/// Their width.
const WIDTH: f64 = grid::WIDTH - 30.0;

/// Answers that page 1 holds.
const MOST: usize = 6;

/// Sets the result and the answers.
pub fn set(sheet: &mut Sheet, limits: Limits, cut: &mut Cut) {
    sheet.element(Role::L, |sheet| {
        result(sheet, cut);
        let answers = &sheet.content.answers;
        let (shown, left) = answers.split_at(answers.len().min(MOST));
        for answer in shown {
            set_answer(sheet, answer, limits, cut);
        }
        cut.texts.extend(left.iter().map(in_full));
    });
}

fn result(sheet: &mut Sheet, cut: &mut Cut) {
    let content = sheet.content;
    sheet.y += 10.0;
    let y = sheet.y;
    sheet.element(Role::Li, |sheet| {
        sheet.element(Role::Lbl, |sheet| sheet.text(grid::LEFT, y, &tell!("cert-answers-result"), BODY));
        let reversed = wording::reversed(content.kind);
        if reversed {
            sheet.fill_area(Area::new(left(), y - 7.0, grid::RIGHT, y + 2.2), 0.0);
        }
        let shift = if reversed { 1.6 } else { 0.0 };
        sheet.element(Role::LBody, |sheet| {
            sign(sheet, left() + 3.6 + shift, y - 2.5, 3.6 - shift / 8.0);
            let x = left() + 10.0 + shift * 1.25;
            let base = y + shift / 8.0;
            let headline = sheet.cell((x, base), 100.0, &content.result.headline, RESULT.white_if(reversed));
            tail(sheet, (x + headline + 3.0, base), reversed, cut);
        });
    });
    sheet.y += 1.4;
}

/// Sets what follows the result: smaller where the room asks for it, cut where even that is too wide.
fn tail(sheet: &mut Sheet, (x, y): (f64, f64), reversed: bool, cut: &mut Cut) {
    let tail = &sheet.content.result.tail;
    let room = (grid::RIGHT - x - if reversed { 3.0 } else { 0.0 }).max(10.0);
    let style = [TAIL, HEADING].into_iter().find(|style| sheet.measure(tail, *style) <= room).unwrap_or(BODY.bold());
    let lines = fitted(sheet, &tell!("cert-answers-result"), tail, (room, style, 1), cut);
    sheet.lines_at(x, y, &lines, style.white_if(reversed));
}

/// Draws one of the silhouettes, told apart without colour, in a circle of radius `r` about (`x`, `y`).
fn sign(sheet: &mut Sheet, x: f64, y: f64, r: f64) {
    let kind = sheet.content.kind;
    let square = Area::new(x - r * 0.8, y - r * 0.8, x + r * 0.8, y + r * 0.8);
    let alt = match kind {
        Kind::Accepted => tell!("cert-answers-a_tick_in_a_black"),
        Kind::Rejected => tell!("cert-answers-a_cross_in_a_white"),
        Kind::Rehearsal => tell!("cert-answers-an_r_in_a_lozenge"),
        Kind::Unrepaired => tell!("cert-answers-a_bar_in_a_white"),
    };
    sheet.figure(&alt, |sheet| match kind {
        Kind::Accepted => {
            sheet.fill(polygon((x, y), (r, r), 48), 0.0);
            let tick = vec![(x - 0.5 * r, y + 0.02 * r), (x - 0.12 * r, y + 0.4 * r), (x + 0.52 * r, y - 0.38 * r)];
            sheet.stroke(tick, Pen::black(r * 0.2).grey(1.0), false);
        }
        Kind::Rejected => {
            let k = 0.5 * r;
            sheet.fill_area(square, 1.0);
            sheet.line((x - k, y - k), (x + k, y + k), Pen::black(r * 0.24));
            sheet.line((x - k, y + k), (x + k, y - k), Pen::black(r * 0.24));
        }
        Kind::Rehearsal => {
            let k = 1.1 * r;
            sheet.outline(vec![(x, y - k), (x + k, y), (x, y + k), (x - k, y)], Pen::black(0.5));
            sheet.text(x, y + 0.42 * r, "R", Style { size_pt: r * 3.0, ..HEADING }.centre());
        }
        Kind::Unrepaired => {
            sheet.fill_area(square, 1.0);
            sheet.line((x - 0.5 * r, y), (x + 0.5 * r, y), Pen::black(r * 0.24));
        }
    });
}

fn in_full(answer: &Answer) -> Note {
    let second = answer.second.as_deref().unwrap_or_default();
    Note { label: answer.label.clone(), text: format!("{} {second}", answer.first) }
}

fn set_answer(sheet: &mut Sheet, answer: &Answer, limits: Limits, cut: &mut Cut) {
    sheet.y += 6.0;
    let y = sheet.y;
    let first = fitted(sheet, &answer.label, &answer.first, (WIDTH, HEADING, limits.first), cut);
    let second = answer
        .second
        .as_ref()
        .map_or_else(Vec::new, |second| fitted(sheet, &answer.label, second, (WIDTH, BODY, limits.second), cut));
    sheet.element(Role::Li, |sheet| {
        sheet.element(Role::Lbl, |sheet| sheet.cell((grid::LEFT, y), 28.0, &answer.label, BODY));
        sheet.element(Role::LBody, |sheet| {
            sheet.y -= 4.4;
            sheet.lines(left(), &first, HEADING, 4.4);
            sheet.lines(left(), &second, BODY, LINE);
        });
    });
}
