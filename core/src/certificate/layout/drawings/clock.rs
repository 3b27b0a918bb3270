//! The clock face, looking downstream: patch, defect, further observations, laterals, findings.

use super::{hours, polygon};
use crate::certificate::content::{Around, Known, Place};
use crate::certificate::display::Pen;
use crate::certificate::layout::grid::{self, Align, SMALL, TINY};
use crate::certificate::layout::labels::spread;
use crate::certificate::layout::sheet::Sheet;
use crate::certificate::layout::text;
use crate::certificate::layout::words;
use crate::maths::{cos, sin};
use crate::words::tell;
use std::f64::consts::PI;

const RADIUS: f64 = 9.8;
/// Further observations that find room inside the ring.
const RINGS: usize = 4;
/// Labels on one side.
const LABELS: usize = 5;
/// The height of a label: two lines and air.
const LABEL: f64 = 5.6;

struct Face {
    x: f64,
    y: f64,
}

impl Face {
    fn at(&self, radius: f64, hour: f64) -> (f64, f64) {
        let angle = (hour * 30.0 - 90.0) * PI / 180.0;
        (self.x + radius * cos(angle), self.y + radius * sin(angle))
    }

    fn arc(&self, radius: f64, from: f64, to: f64) -> Vec<(f64, f64)> {
        (0..=24).map(|step| self.at(radius, from + (to - from) * f64::from(step) / 24.0)).collect()
    }

    fn sector(&self, outer: f64, inner: f64, from: f64, to: f64) -> Vec<(f64, f64)> {
        let mut ring = self.arc(outer, from, to);
        ring.extend(self.arc(inner, from, to).into_iter().rev());
        ring
    }
}

/// What is written beside the face: the hour that it belongs to, and two lines.
struct Label {
    hour: f64,
    first: String,
    second: String,
}

/// Sets the face at the right, below the cursor.
pub fn set(sheet: &mut Sheet, place: &Place) {
    sheet.figure(&alt(place), |sheet| {
        sheet.y += grid::LINE;
        let x = grid::column(4);
        sheet.text(x, sheet.y, &tell!("cert-clock-clock_face"), SMALL.bold());
        sheet.text(x + 21.0, sheet.y, &tell!("cert-clock-looking_downstream"), TINY);
        let face = Face { x: x + 28.0, y: sheet.y + 17.0 };
        dial(sheet, &face, place.patch.value().is_some());
        let mut labels = observations(sheet, &face, place);
        labels.extend(marks(sheet, &face, place));
        labels.extend(laterals(sheet, &face, place));
        let (first, second) = if place.patch.value().is_some() {
            (tell!("cert-place-patch"), tell!("cert-words-all_round"))
        } else {
            (tell!("cert-clock-no_patch_set_1"), tell!("cert-clock-no_patch_set_2"))
        };
        labels.push(Label { hour: 7.6, first, second });
        set_labels(sheet, &face, labels);
    });
}

fn alt(place: &Place) -> String {
    let seen: Vec<String> =
        place.observations.iter().map(|one| format!("{} {}", one.code, words::hours(one.around))).collect();
    let patch = match &place.patch {
        Known::Known(_) => tell!("cert-clock-patch_all_round"),
        Known::Absent(why) => tell!("cert-clock-no_patch", why),
    };
    let laterals = place.laterals.iter().filter(|one| one.covered);
    let laterals = laterals.map(|one| format!(", lateral DN {} at {} o’clock", one.dn_mm, one.hour));
    tell!(
        "cert-clock-clock_face_looking_downstream",
        patch,
        seen = seen.join(", "),
        laterals = laterals.collect::<String>()
    )
}

fn dial(sheet: &mut Sheet, face: &Face, patched: bool) {
    let centre = (face.x, face.y);
    sheet.stroke(polygon(centre, (RADIUS + 0.9, RADIUS + 0.9), 72), Pen::black(0.9), true);
    if patched {
        sheet.stroke(polygon(centre, (RADIUS - 0.7, RADIUS - 0.7), 72), Pen::black(0.25), true);
    }
    for hour in 0..12 {
        let long = if hour % 3 == 0 { 2.9 } else { 2.3 };
        let hour = f64::from(hour);
        sheet.line(face.at(RADIUS + 1.6, hour), face.at(RADIUS + long, hour), Pen::black(0.25));
    }
    for (hour, dx, dy, align) in [
        (12, 0.0, -3.5, Align::Centre),
        (3, 3.6, 0.9, Align::Left),
        (6, 0.0, 5.6, Align::Centre),
        (9, -3.6, 0.9, Align::Right),
    ] {
        let (x, y) = face.at(RADIUS, f64::from(hour));
        sheet.text(x + dx, y + dy, &hour.to_string(), SMALL.at(align));
    }
}

fn observations(sheet: &mut Sheet, face: &Face, place: &Place) -> Vec<Label> {
    let mut labels = Vec::new();
    for (index, one) in place.observations.iter().enumerate() {
        let (from, to) = hours(one.around);
        let inside = index.saturating_sub(1) as f64 * 0.9;
        let (outer, inner) =
            if index == 0 { (RADIUS - 1.3, RADIUS - 4.4) } else { (RADIUS - 5.0 - inside, RADIUS - 5.6 - inside) };
        if index <= RINGS {
            sheet.fill(face.sector(outer, inner, from, to), 0.0);
        }
        let first = if index == 0 { tell!("cert-place-defect_2") } else { one.code.clone() };
        labels.push(Label { hour: middle(one.around), first, second: short(one.around) });
    }
    labels
}

fn marks(sheet: &mut Sheet, face: &Face, place: &Place) -> Vec<Label> {
    let mut labels = Vec::new();
    for mark in &place.marks {
        let (from, to) = hours(mark.around);
        sheet.stroke(face.arc(RADIUS - 5.6, from, to), Pen::black(0.6).dashed(1.2, 0.7), false);
        labels.push(Label {
            hour: middle(mark.around),
            first: tell!("cert-clock-dashed", label = mark.label),
            second: short(mark.around),
        });
    }
    labels
}

fn laterals(sheet: &mut Sheet, face: &Face, place: &Place) -> Vec<Label> {
    let sizes = place.laterals.iter().any(|one| Some(one.dn_mm) != place.laterals.first().map(|first| first.dn_mm));
    let mut labels = Vec::new();
    for lateral in place.laterals.iter().filter(|one| one.covered) {
        let hour = f64::from(lateral.hour);
        let radius = (1.5 * f64::from(lateral.dn_mm) / 100.0 * 200.0 / f64::from(place.dn_mm.max(1))).clamp(1.0, 2.2);
        sheet.outline(polygon(face.at(RADIUS - 2.7, hour), (radius, radius), 24), Pen::black(0.3));
        let second = if sizes { format!("{}, DN {}", lateral.hour, lateral.dn_mm) } else { lateral.hour.to_string() };
        let hour = if lateral.hour == 12 { 11.9 } else { hour };
        labels.push(Label { hour, first: tell!("cert-clock-lateral"), second });
    }
    labels
}

/// The hour at the middle of an arc, 0 to 12.
fn middle(around: Around) -> f64 {
    let (from, to) = hours(around);
    match around {
        Around::All => 4.5,
        Around::At(_) | Around::Arc { .. } => ((from + to) / 2.0).rem_euclid(12.0),
    }
}

fn short(around: Around) -> String {
    match around {
        Around::All => words::hours(around),
        Around::At(hour) => tell!("cert-clock-at", hour),
        Around::Arc { from_hour, to_hour } => tell!("cert-clock-from_to", from_hour, to_hour),
    }
}

/// Sets the labels right and left of the face; the figures 3 and 9 stay free.
fn set_labels(sheet: &mut Sheet, face: &Face, labels: Vec<Label>) {
    let (left, right): (Vec<Label>, Vec<Label>) = labels.into_iter().partition(|label| label.hour >= 6.0);
    for (side, room, mut labels) in [(1.0, 11.0, right), (-1.0, 14.5, left)] {
        labels.truncate(LABELS);
        let mut wanted: Vec<(f64, Label)> =
            labels.into_iter().map(|label| (wanted_y(face, label.hour), label)).collect();
        wanted.sort_by(|a, b| a.0.total_cmp(&b.0));
        let sizes: Vec<(f64, f64)> = wanted.iter().map(|(y, _)| (*y, LABEL)).collect();
        for ((_, label), y) in wanted.iter().zip(spread(&sizes, face.y - 14.0, face.y + 15.0)) {
            let far = if (y - face.y).abs() > 6.0 { 4.6 } else { 6.8 };
            let align = if side > 0.0 { Align::Left } else { Align::Right };
            let x = face.x + side * (RADIUS + far);
            for (text, dy) in [(&label.first, -0.2), (&label.second, 2.2)] {
                let (lines, _) = text::wrap_at_most(sheet.fonts, text, room, TINY, 1);
                sheet.lines_at(x, y + dy, &lines, TINY.at(align));
            }
        }
    }
}

fn wanted_y(face: &Face, hour: f64) -> f64 {
    let y = face.at(RADIUS + 1.0, hour).1;
    let off = y - face.y;
    if off.abs() > 3.4 { y.clamp(face.y - 11.0, face.y + 11.0) } else { y + if off >= 0.0 { 4.0 } else { -4.0 } }
}
