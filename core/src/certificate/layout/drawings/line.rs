//! The line to scale, from node to node, with laterals, patch and both stationings.

use super::{polygon, scale};
use crate::certificate::content::{Known, Lateral, Note, Place};
use crate::certificate::display::Pen;
use crate::certificate::layout::grid::{self, SMALL, Style, TINY};
use crate::certificate::layout::labels::{Area, spread};
use crate::certificate::layout::page_one::Cut;
use crate::certificate::layout::sheet::{Sheet, Slant};
use crate::certificate::layout::text;
use crate::certificate::layout::words::{metre, metres, number};
use crate::words::tell;
use crate::words::{Of, metres_between, value};

const SCALES: [f64; 12] = [50.0, 100.0, 150.0, 200.0, 250.0, 300.0, 400.0, 500.0, 600.0, 750.0, 1000.0, 1500.0];
/// What is left for the pipe between the two nodes.
const ROOM: f64 = grid::WIDTH - 22.0;
/// Half the height of the drawn pipe.
const HALF: f64 = 1.5;
/// How far a lateral sticks out.
const STUB: f64 = 3.2;

/// The geometry: stations to millimetres on the page.
struct Axis {
    left: f64,
    length_m: f64,
    mm_per_m: f64,
    /// The centre of the pipe.
    y: f64,
}

impl Axis {
    fn x(&self, station_m: f64) -> f64 {
        self.left + station_m.clamp(0.0, self.length_m) * self.mm_per_m
    }

    fn right(&self) -> f64 {
        self.x(self.length_m)
    }
}

/// Sets the drawing below the cursor.
pub fn set(sheet: &mut Sheet, place: &Place, cut: &mut Cut) {
    let length_m = place.length_um.as_m().max(0.1);
    let scale = scale(length_m, ROOM, &SCALES);
    sheet.figure(&alt(place), |sheet| {
        sheet.y += grid::LINE;
        sheet.text(grid::LEFT, sheet.y, &tell!("cert-line-the_line_to_scale"), SMALL.bold());
        sheet.y += 12.0;
        let axis = Axis { left: grid::LEFT + 11.0, length_m, mm_per_m: 1000.0 / scale, y: sheet.y };
        let (down, hidden) = pipe(sheet, place, &axis);
        caption(sheet, place, scale, hidden);
        if hidden > 0 {
            cut.texts.push(Note { label: tell!("cert-findings-laterals"), text: format!("{}.", laterals(place)) });
        }
        sheet.y += 8.2 + down;
        stations(sheet, place, &axis);
        sheet.y += 10.4;
    });
}

fn alt(place: &Place) -> String {
    let patch = match &place.patch {
        Known::Known(patch) => tell!("cert-line-patch_at", stretch = metres_between(patch.from_um, patch.to_um)),
        Known::Absent(why) => tell!("cert-clock-no_patch", why),
    };
    tell!("cert-line-the_line_to_scale_left", patch, upstream = place.upstream, laterals = laterals(place))
}

fn laterals(place: &Place) -> String {
    if place.laterals.is_empty() {
        return tell!("cert-line-no_lateral");
    }
    let one = |lateral: &Lateral| {
        let opened = lateral.opened_percent.map_or(String::new(), |percent| tell!("cert-line-opened_to", percent));
        tell!(
            "cert-line-dn_oclock",
            opened,
            at = metres(lateral.station_um, 2),
            unit = metre(),
            dn = lateral.dn_mm,
            hour = lateral.hour
        )
    };
    tell!("cert-line-laterals_at", each = place.laterals.iter().map(one).collect::<Vec<_>>().join(", "))
}

fn caption(sheet: &mut Sheet, place: &Place, scale: f64, hidden: usize) {
    let laterals = match (one_size(place), place.laterals.is_empty()) {
        (_, true) => tell!("cert-line-no_lateral"),
        (Some(dn), _) => tell!("cert-line-laterals_dn", dn),
        (None, _) => tell!("cert-line-dn_of_a_lateral_in"),
    };
    let hidden = if hidden > 0 { tell!("cert-line-of_them_without_their_figures", hidden) } else { String::new() };
    let text = tell!("cert-line-1_seen_from_above_flow", scale = scale.to_string(), laterals, hidden);
    sheet.text(grid::LEFT + 34.0, sheet.y - 12.0, &text, TINY);
}

/// The size that all laterals have.
fn one_size(place: &Place) -> Option<u32> {
    let first = place.laterals.first()?.dn_mm;
    place.laterals.iter().all(|lateral| lateral.dn_mm == first).then_some(first)
}

/// Draws pipe, nodes, laterals, patch, labels and arrow; returns how far the lower labels were moved down, and how
/// many laterals have no label.
fn pipe(sheet: &mut Sheet, place: &Place, axis: &Axis) -> (f64, usize) {
    let (left, right, y) = (axis.left, axis.right(), axis.y);
    for side in [y - HALF, y + HALF] {
        sheet.line((left, side), (right, side), Pen::black(0.3));
    }
    for x in [left, right] {
        sheet.outline(polygon((x, y), (3.1, 3.1), 48), Pen::black(0.5));
    }
    let names = nodes(sheet, place, axis);
    place.laterals.iter().for_each(|lateral| stub(sheet, axis, lateral));
    let centre = mended(sheet, place, axis);
    let above =
        Row { labels: labels(place, axis, true, None), low: grid::LEFT + names.0 + 2.0, high: right + 9.0 - names.1 };
    let below = Row {
        labels: labels(place, axis, false, Some((axis.x(centre), mended_label(place, centre)))),
        low: grid::LEFT,
        high: grid::RIGHT,
    };
    let (_, hidden_above) = above.set(sheet, axis, centre, -1.0);
    let (down, hidden_below) = below.set(sheet, axis, centre, 1.0);
    arrow(sheet, axis, centre);
    (down, hidden_above + hidden_below)
}

/// Sets the names of the nodes and returns their widths.
fn nodes(sheet: &mut Sheet, place: &Place, axis: &Axis) -> (f64, f64) {
    let most = (axis.right() + 11.0 - grid::LEFT) / 2.0 - 2.0;
    let mut set = |name: &str, x: f64, style: Style| sheet.cell((x, axis.y - 4.4), most, name, style);
    (set(&place.upstream, grid::LEFT, SMALL.bold()), set(&place.downstream, axis.right() + 11.0, SMALL.bold().right()))
}

/// Looking downstream 7 to 11 o'clock lie left, which is up on the page; 12 and 6 are drawn down.
fn is_above(lateral: &Lateral) -> bool {
    (7..=11).contains(&lateral.hour)
}

fn stub(sheet: &mut Sheet, axis: &Axis, lateral: &Lateral) {
    let side = if is_above(lateral) { -1.0 } else { 1.0 };
    let half = (f64::from(lateral.dn_mm) / 100.0 * 0.62).clamp(0.45, 1.5);
    let (x, y) = (axis.x(lateral.station_um.as_m()), axis.y + side * HALF);
    for wall in [x - half, x + half] {
        sheet.line((wall, y), (wall, y + side * STUB), Pen::black(0.25));
    }
}

/// Draws the patch black, or the defect hatched where no patch was set; returns the station of its centre.
fn mended(sheet: &mut Sheet, place: &Place, axis: &Axis) -> f64 {
    let defect = place.observations.first().map(|one| one.stretch);
    let patch = place.patch.value().copied();
    let Some(stretch) = patch.or(defect) else { return axis.length_m / 2.0 };
    let (from, to) = (axis.x(stretch.from_um.as_m()), axis.x(stretch.to_um.as_m()));
    let area = Area::new(from - 0.2, axis.y - HALF, from + (to - from).max(1.6) + 0.2, axis.y + HALF);
    if patch.is_some() {
        sheet.fill_area(area, 0.0);
    } else {
        sheet.stroke_area(area, Pen::black(0.25));
        sheet.hatch(area, 0.8, 0.2, Slant::Rising);
    }
    (stretch.from_um.as_m() + stretch.to_um.as_m()) / 2.0
}

fn mended_label(place: &Place, centre: f64) -> String {
    let word =
        if place.patch.value().is_some() { tell!("cert-place-patch") } else { tell!("cert-line-defect_no_patch") };
    format!("{word} {}", number(value(Of::Metres, centre * 1e6), 2))
}

/// A label and where it wants to stand.
struct Label {
    x: f64,
    text: String,
    patch: bool,
}

impl Label {
    fn style(&self) -> Style {
        if self.patch { SMALL.bold() } else { TINY }
    }
}

fn labels(place: &Place, axis: &Axis, above: bool, patch: Option<(f64, String)>) -> Vec<Label> {
    let sizes = one_size(place).is_none();
    let mut labels: Vec<Label> = place
        .laterals
        .iter()
        .filter(|lateral| is_above(lateral) == above && !lateral.covered)
        .map(|lateral| {
            let size = if sizes { format!(" ({})", lateral.dn_mm) } else { String::new() };
            let text = format!("{}{size}", metres(lateral.station_um, 2));
            Label { x: axis.x(lateral.station_um.as_m()), text, patch: false }
        })
        .collect();
    labels.extend(patch.map(|(x, text)| Label { x, text, patch: true }));
    labels.sort_by(|a, b| a.x.total_cmp(&b.x));
    labels
}

/// One row of labels, above or below the pipe.
struct Row {
    labels: Vec<Label>,
    low: f64,
    high: f64,
}

impl Row {
    /// Sets the row; returns how far the labels were moved off, and how many were left out: the farthest from the
    /// patch first.
    fn set(mut self, sheet: &mut Sheet, axis: &Axis, centre: f64, side: f64) -> (f64, usize) {
        let width = |label: &Label| sheet.measure(&label.text, label.style()) + 1.8;
        let all = self.labels.len();
        while self.labels.iter().map(width).sum::<f64>() > self.high - self.low && !self.labels.is_empty() {
            let far = |label: &Label| if label.patch { -1.0 } else { (label.x - axis.x(centre)).abs() };
            let farthest =
                (0..self.labels.len()).max_by(|a, b| far(&self.labels[*a]).total_cmp(&far(&self.labels[*b])));
            farthest.map(|index| self.labels.remove(index));
        }
        let wanted: Vec<(f64, f64)> = self.labels.iter().map(|label| (label.x, width(label))).collect();
        let places = spread(&wanted, self.low, self.high);
        let moved = places.iter().zip(&self.labels).any(|(x, label)| (x - label.x).abs() > 0.3);
        let off = if moved { 1.9 } else { 0.0 };
        let edge = axis.y + side * (HALF + STUB);
        for (x, label) in places.into_iter().zip(&self.labels) {
            let start = if label.patch { pointer(sheet, axis, label.x) } else { edge };
            if moved {
                sheet.line((label.x, start), (x, edge + side * off), Pen::black(0.18));
            }
            let base = edge + side * off + if side < 0.0 { -0.9 } else { 2.6 };
            sheet.text(x, base, &label.text, label.style().centre());
        }
        (off, all - self.labels.len())
    }
}

/// Draws the pointer to the patch and returns its lower end.
fn pointer(sheet: &mut Sheet, axis: &Axis, x: f64) -> f64 {
    let (top, end) = (axis.y + HALF + 0.5, axis.y + HALF + 2.4);
    sheet.fill(vec![(x, top), (x - 1.1, end), (x + 1.1, end)], 0.0);
    end
}

/// Draws the flow arrow where the patch leaves room for it.
fn arrow(sheet: &mut Sheet, axis: &Axis, centre: f64) {
    let clear = |station: &f64| station - centre > 0.5 || centre - station > 16.0 / axis.mm_per_m;
    let station = [0.8, 0.86, 0.74, 0.68, 0.62, 0.56, 0.5, 0.44]
        .map(|part| axis.length_m * part)
        .into_iter()
        .find(clear)
        .unwrap_or(axis.length_m * 0.8);
    let (x, y) = (axis.x(station), axis.y);
    sheet.line((x, y), (x + 9.0, y), Pen::black(0.25));
    sheet.fill(vec![(x + 11.0, y), (x + 8.6, y - 0.8), (x + 8.6, y + 0.8)], 0.0);
}

/// Draws the two stationings, from both ends.
fn stations(sheet: &mut Sheet, place: &Place, axis: &Axis) {
    let step = [1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0, 500.0];
    let length = value(Of::Metres, axis.length_m * 1e6);
    let step = step.into_iter().find(|step| length / step <= 14.0).unwrap_or(length / 10.0);
    for (row, name, reversed) in [(0.0, &place.upstream, false), (4.8, &place.downstream, true)] {
        let y = sheet.y + row;
        let label = tell!("cert-line-0_from", name, unit = metre());
        let style = TINY.bold();
        let (lines, _) = text::wrap_at_most(sheet.fonts, &label, (axis.right() - axis.left) / 2.0, style, 1);
        let label = lines.into_iter().next().unwrap_or_default();
        sheet.line((axis.left, y), (axis.right(), y), Pen::black(0.18));
        ticks(sheet, axis, (y, step, reversed), sheet.measure(&label, style));
        if reversed {
            sheet.text(axis.right() - 0.8, y + 3.2, &label, style.right());
        } else {
            sheet.text(axis.left + 0.8, y + 3.2, &label, style);
        }
    }
}

fn ticks(sheet: &mut Sheet, axis: &Axis, (y, step, reversed): (f64, f64, bool), label: f64) {
    let zero = if reversed { axis.right() } else { axis.left };
    let length = value(Of::Metres, axis.length_m * 1e6);
    let count = (length / step + 1e-9).floor() as u32;
    for index in 0..=count {
        let shown = f64::from(index) * step;
        let station_m = shown / length * axis.length_m;
        let x = axis.x(if reversed { axis.length_m - station_m } else { station_m });
        let (drop, width) = if index == 0 { (1.8, 0.4) } else { (1.0, 0.18) };
        sheet.line((x, y), (x, y + drop), Pen::black(width));
        let text = number(shown, 0);
        let half = sheet.measure(&text, TINY) / 2.0;
        if index > 0 && (x - zero).abs() - half > label + 1.5 {
            sheet.text(x, y + 3.2, &text, TINY.centre());
        }
    }
}
