//! The labels of the unrolled wall: each where it meets nothing, or in the column at the right.

use super::patch::Drawing;
use crate::certificate::content::{Cover, Known, Lateral, Observation, Place};
use crate::certificate::fonts::MM_PER_PT;
use crate::certificate::layout::grid::{Align, SMALL, Style, TINY};
use crate::certificate::layout::labels::Area;
use crate::certificate::layout::text;
use crate::certificate::layout::words::{self, metres};
use crate::units::Length;
use crate::words::tell;
use crate::words::{mm_down, mm_up};

/// The width of the column.
const COLUMN: f64 = 33.0;
/// Lines that the column holds.
const COLUMN_LINES: usize = 7;

impl Drawing<'_, '_> {
    /// Sets all labels, the most telling first.
    pub fn labels(&mut self, openings: &[(Lateral, Area)], marks: &[Vec<Area>]) {
        self.mark_labels(marks);
        self.defect_labels();
        self.lateral_labels(openings);
        self.plain_labels();
        self.column();
    }

    fn mark_labels(&mut self, drawn: &[Vec<Area>]) {
        for (mark, pieces) in self.place.marks.iter().zip(drawn) {
            let text = format!("{} {}", mark.label, mark.words);
            let set = pieces.iter().any(|frame| {
                let places = [
                    (frame.left + 1.5, frame.top - 1.0, Align::Left),
                    (frame.right + 1.0, frame.top + 2.6, Align::Left),
                    (frame.right + 1.0, frame.bottom - 0.8, Align::Left),
                    (frame.left + 1.5, frame.bottom + 2.6, Align::Left),
                ];
                self.label(&text, SMALL.bold(), &places, (self.wall.area, None))
            });
            if !set {
                self.aside.push(text);
            }
            self.taken.extend(pieces.iter().map(|piece| piece.grown(0.3)));
        }
    }

    /// Sets each code on its own hatch if there is room, else beside it.
    fn defect_labels(&mut self) {
        for (index, one) in self.place.observations.iter().enumerate() {
            let mut pieces: Vec<Area> =
                self.hatched.iter().filter(|(owner, _)| *owner == index).map(|(_, area)| *area).collect();
            pieces.sort_by(|a, b| size(*b).total_cmp(&size(*a)));
            let set = pieces.iter().any(|piece| self.on_the_hatch(index, one, *piece))
                || pieces
                    .iter()
                    .any(|piece| self.label(&one.code, SMALL.bold(), &beside_hatch(*piece), (self.wall.area, None)));
            if !set {
                self.aside.push(beside(one));
            }
        }
    }

    fn on_the_hatch(&mut self, index: usize, one: &Observation, area: Area) -> bool {
        let wide = self.sheet.measure(&one.code, SMALL.bold()) + 3.0 < area.width() && area.height() > 4.0;
        let (x, y) = area.centre();
        let at = |kx: f64, ky: f64| (area.left + area.width() * kx, area.top + area.height() * ky, Align::Centre);
        let mut places = vec![(x, y + 0.8, Align::Centre)];
        places.extend([0.3, 0.75, 0.5].iter().flat_map(|ky| [0.25, 0.75, 0.35, 0.65].map(|kx| at(kx, *ky))));
        wide && self.label(&one.code, SMALL.bold(), &places, (area, Some(index)))
    }

    fn lateral_labels(&mut self, openings: &[(Lateral, Area)]) {
        let patch_left =
            self.place.patch.value().map_or(self.wall.area.left, |patch| self.wall.x(patch.from_um.as_m()));
        for (lateral, opening) in openings {
            let mut places = around(*opening).to_vec();
            let x = (patch_left + 1.2).max(opening.centre().0 - 14.0);
            places.extend([(x, opening.bottom + 2.6, Align::Left), (x, opening.top - 1.0, Align::Left)]);
            let station = metres(lateral.station_um, 2);
            let long = tell!("cert-patch-lateral_dn", station, dn = lateral.dn_mm);
            let short = tell!("cert-patch-dn", station, dn = lateral.dn_mm);
            let bounds = self.wall.area;
            if !self.label(&long, TINY, &places, (bounds, None)) && !self.label(&short, TINY, &places, (bounds, None)) {
                self.aside.push(long);
            }
        }
    }

    fn plain_labels(&mut self) {
        let Known::Known(patch) = &self.place.patch else { return };
        let Area { left, top, bottom, .. } = self.wall.area;
        let (from, to) = (self.wall.x(patch.from_um.as_m()), self.wall.x(patch.to_um.as_m()));
        let (high, low) = (top + 3.2, bottom - 1.2);
        let host = [(left + 0.8, high, Align::Left), (left + 0.8, low, Align::Left), (to + 1.0, high, Align::Left)];
        self.label(&tell!("cert-pressure-host_pipe"), TINY, &host, (self.wall.area, None));
        let inside = [
            (from + 1.2, high, Align::Left),
            (from + 1.2, low, Align::Left),
            (to - 1.2, high, Align::Right),
            (to - 1.2, low, Align::Right),
        ];
        self.label(&tell!("cert-place-patch"), TINY, &inside, (self.wall.area, None));
    }

    /// Sets a label at the first place inside `bounds` where it meets nothing; returns whether there was one. On its own
    /// hatch it stands on white.
    fn label(
        &mut self,
        text: &str,
        style: Style,
        places: &[(f64, f64, Align)],
        (bounds, own): (Area, Option<usize>),
    ) -> bool {
        let width = self.sheet.measure(text, style);
        let height = style.size_pt * MM_PER_PT;
        for &(x, y, align) in places {
            let left = match align {
                Align::Left => x,
                Align::Centre => x - width / 2.0,
                Align::Right => x - width,
            };
            let area = Area::new(left - 0.4, y - height * 0.78 - 0.2, left + width + 0.4, y + height * 0.24 + 0.2);
            let foreign = self.hatched.iter().filter(|(owner, _)| Some(*owner) != own).map(|(_, area)| area);
            if !bounds.holds(area) || self.taken.iter().chain(foreign).any(|other| area.meets(*other)) {
                continue;
            }
            if own.is_some() {
                self.sheet.fill_area(area.grown(0.3), 1.0);
            }
            self.sheet.text(left, y, text, style);
            self.taken.push(area);
            return true;
        }
        false
    }

    /// Sets the column right of the drawing: cover, then the labels that found no place.
    fn column(&mut self) {
        let mut rows = cover(self.place);
        rows.extend(self.aside.iter().map(|text| (text.clone(), false)));
        if rows.len() > COLUMN_LINES {
            let more = rows.len() - COLUMN_LINES + 1;
            rows.truncate(COLUMN_LINES - 1);
            rows.push((tell!("cert-patch-and_more_not_drawn", more), false));
        }
        let (x, mut y) = (self.wall.area.right + 3.0, self.wall.area.top + 3.4);
        for (text, bold) in rows {
            let style = TINY.bold_if(bold);
            let (lines, _) = text::wrap_at_most(self.sheet.fonts, &text, COLUMN, style, 1);
            self.sheet.lines_at(x, y, &lines, style);
            y += 3.0;
        }
    }
}

fn size(area: Area) -> f64 {
    area.width() * area.height()
}

fn beside(one: &Observation) -> String {
    format!("{}: {} {}", one.code, metres(one.stretch.from_um, 2), words::metre())
}

/// Places beside an area that may be as high as the wall.
fn beside_hatch(area: Area) -> [(f64, f64, Align); 8] {
    let Area { left, top, right, bottom } = area;
    let (x, y) = area.centre();
    [
        (right + 1.0, y + 0.8, Align::Left),
        (left - 1.0, y + 0.8, Align::Right),
        (x, top - 1.0, Align::Centre),
        (x, bottom + 2.6, Align::Centre),
        (right + 1.0, top + 3.0, Align::Left),
        (right + 1.0, bottom - 1.0, Align::Left),
        (left - 1.0, top + 3.0, Align::Right),
        (left - 1.0, bottom - 1.0, Align::Right),
    ]
}

/// Places around an area: right, left, above, below, then the corners.
fn around(area: Area) -> [(f64, f64, Align); 8] {
    let Area { left, top, right, bottom } = area;
    let (x, y) = area.centre();
    [
        (right + 1.0, y + 0.8, Align::Left),
        (left - 1.0, y + 0.8, Align::Right),
        (x, top - 1.0, Align::Centre),
        (x, bottom + 2.6, Align::Centre),
        (left, bottom + 2.6, Align::Left),
        (right, bottom + 2.6, Align::Right),
        (left, top - 1.0, Align::Left),
        (right, top - 1.0, Align::Right),
    ]
}

fn whole(millimetres: i64) -> Length {
    Length::from_um(millimetres.saturating_mul(1_000))
}

fn cover(place: &Place) -> Vec<(String, bool)> {
    match &place.cover {
        Known::Known(Cover { errors_mm, upstream_mm, downstream_mm, required_mm }) => vec![
            (tell!("cert-patch-cover_of_the_defect"), false),
            (tell!("cert-patch-less_errors_of", length = mm_up(whole(*errors_mm))), false),
            (tell!("cert-patch-upstream", length = mm_down(whole(*upstream_mm))), true),
            (tell!("cert-patch-downstream", length = mm_down(whole(*downstream_mm))), true),
            match required_mm {
                Known::Known(required) => (tell!("cert-patch-required", length = mm_up(whole(*required))), false),
                Known::Absent(why) => (tell!("cert-patch-none_required", why), false),
            },
        ],
        Known::Absent(why) => vec![(tell!("cert-patch-no_cover"), false), (why.clone(), false)],
    }
}
