//! The wall unrolled and cut at 6 o'clock, so that any hour has its place: patch, defect, laterals, findings, cover.

use super::{hours, polygon, scale};
use crate::certificate::content::{Around, Known, Lateral, Place, Stretch};
use crate::certificate::display::Pen;
use crate::certificate::layout::grid::{self, SMALL, TINY};
use crate::certificate::layout::labels::{Area, spread};
use crate::certificate::layout::sheet::{Sheet, Slant};
use crate::certificate::layout::text;
use crate::certificate::layout::words::{self, metres};
use crate::units::Length;
use crate::words::mm_down;
use crate::words::tell;
use std::f64::consts::PI;

const SCALES: [f64; 12] = [4.0, 5.0, 10.0, 15.0, 20.0, 25.0, 40.0, 50.0, 75.0, 100.0, 200.0, 500.0];
/// How long the patch may be drawn.
const ROOM: f64 = 66.0;
/// The height of the whole ring.
const RING: f64 = 20.0;

/// The geometry of the unrolled wall.
pub struct Wall {
    pub area: Area,
    centre_m: f64,
    mm_per_m: f64,
}

impl Wall {
    pub fn x(&self, station_m: f64) -> f64 {
        (self.area.left + self.area.right) / 2.0 + (station_m - self.centre_m) * self.mm_per_m
    }

    /// As [`Wall::x`], kept inside the drawing.
    fn inside(&self, station_m: f64) -> f64 {
        self.x(station_m).clamp(self.area.left, self.area.right)
    }

    fn y(&self, hour: f64) -> f64 {
        self.area.top + (hour - 6.0).rem_euclid(12.0) / 12.0 * RING
    }

    /// Returns the rectangles of a stretch: two where the cut at 6 o'clock parts it, none outside the drawing.
    fn pieces(&self, stretch: Stretch, around: Around) -> Vec<Area> {
        let (from, to) = hours(around);
        let start = if around == Around::All { 0.0 } else { (from - 6.0).rem_euclid(12.0) };
        let end = start + (to - from);
        let (left, right) = (self.inside(stretch.from_um.as_m()), self.inside(stretch.to_um.as_m()));
        let right = right.max((left + 1.0).min(self.area.right));
        let piece =
            |a: f64, b: f64| Area::new(left, self.area.top + a / 12.0 * RING, right, self.area.top + b / 12.0 * RING);
        let pieces =
            if end <= 12.0 { vec![piece(start, end)] } else { vec![piece(start, 12.0), piece(0.0, end - 12.0)] };
        pieces.into_iter().filter(|piece| piece.width() > 0.0 && piece.height() > 0.0).collect()
    }
}

/// Sets the drawing below the cursor.
pub fn set(sheet: &mut Sheet, place: &Place) {
    let Some(main) = place.patch.value().copied().or(place.observations.first().map(|one| one.stretch)) else {
        return;
    };
    let (from, to) = (main.from_um.as_m(), main.to_um.as_m());
    let scale = scale((to - from).max(0.05), ROOM, &SCALES);
    sheet.figure(&alt(place), |sheet| {
        sheet.y += grid::LINE;
        sheet.text(grid::LEFT, sheet.y, &tell!("cert-patch-patch_and_defect"), SMALL.bold());
        caption(sheet, place, scale);
        sheet.y += 6.8;
        let area = Area::new(grid::LEFT + 5.0, sheet.y, grid::LEFT + 82.0, sheet.y + RING);
        let wall = Wall { area, centre_m: (from + to) / 2.0, mm_per_m: 1000.0 / scale };
        let mut drawing = Drawing { sheet, place, wall, taken: Vec::new(), hatched: Vec::new(), aside: Vec::new() };
        drawing.frame();
        drawing.set();
        sheet.y = area.bottom + 4.3;
    });
}

fn caption(sheet: &mut Sheet, place: &Place, scale: f64) {
    let text = tell!(
        "cert-patch-1_along_the_pipe_wall",
        scale = scale.to_string(),
        unit = words::metre(),
        upstream = place.upstream
    );
    let (lines, _) = text::wrap_at_most(sheet.fonts, &text, grid::column(4) - grid::LEFT - 36.0, TINY, 1);
    sheet.lines_at(grid::LEFT + 34.0, sheet.y, &lines, TINY);
}

fn alt(place: &Place) -> String {
    let patch = match &place.patch {
        Known::Known(patch) => {
            tell!(
                "cert-patch-patch_to",
                from = metres(patch.from_um, 3),
                to = metres(patch.to_um, 3),
                unit = words::metre()
            )
        }
        Known::Absent(why) => tell!("cert-clock-no_patch", why),
    };
    let seen = place.observations.iter().map(|one| {
        let (from, to) = (metres(one.stretch.from_um, 3), metres(one.stretch.to_um, 3));
        tell!("cert-patch-to", from, to, code = one.code, unit = words::metre(), around = words::hours(one.around))
    });
    let cover = match &place.cover {
        Known::Known(cover) => {
            let whole = |mm: i64| mm_down(Length::from_um(mm.saturating_mul(1_000)));
            tell!(
                "cert-patch-cover_left_upstream_and_downstream",
                upstream = whole(cover.upstream_mm),
                downstream = whole(cover.downstream_mm)
            )
        }
        Known::Absent(_) => String::new(),
    };
    tell!("cert-patch-the_wall_unrolled", patch, cover, seen = seen.collect::<String>())
}

pub struct Drawing<'s, 'a> {
    pub sheet: &'s mut Sheet<'a>,
    pub place: &'s Place,
    pub wall: Wall,
    /// What labels must not meet.
    pub taken: Vec<Area>,
    /// What was observed, by its place in the list: only its own label may stand on it.
    pub hatched: Vec<(usize, Area)>,
    /// Labels that found no place in the drawing.
    pub aside: Vec<String>,
}

impl Drawing<'_, '_> {
    fn frame(&mut self) {
        let Area { left, top, right, bottom } = self.wall.area;
        for y in [top, bottom] {
            self.sheet.line((left, y), (right, y), Pen::black(0.3));
        }
        self.sheet.line((left, top), (left, bottom), Pen::black(0.18));
        for (quarter, hour) in [(0.0, "6"), (0.25, "9"), (0.5, "12"), (0.75, "3"), (1.0, "6")] {
            let y = top + quarter * RING;
            self.sheet.line((left - 1.0, y), (left, y), Pen::black(0.18));
            self.sheet.text(left - 1.6, y + 0.8, hour, TINY.right());
        }
    }

    fn set(&mut self) {
        if let Known::Known(patch) = &self.place.patch {
            self.patch(*patch);
        }
        self.observations();
        let openings = self.laterals();
        let marks = self.marks();
        self.labels(&openings, &marks);
        self.dimensions();
    }

    fn patch(&mut self, patch: Stretch) {
        let Area { top, bottom, .. } = self.wall.area;
        let (left, right) = (self.wall.x(patch.from_um.as_m()), self.wall.x(patch.to_um.as_m()));
        self.sheet.stroke_area(Area::new(left, top, right, bottom), Pen::black(0.5));
        for x in [left, right] {
            self.sheet.line((x, top), (x, bottom), Pen::black(0.9));
            self.taken.push(Area::new(x - 0.6, top, x + 0.6, bottom));
        }
    }

    /// Draws what was observed, the defect hatched one way, the rest the other.
    fn observations(&mut self) {
        for (index, one) in self.place.observations.iter().enumerate() {
            for piece in self.wall.pieces(one.stretch, one.around) {
                if index > 0 {
                    self.sheet.fill_area(piece, 1.0);
                }
                let (step, slant) = if index == 0 { (1.3, Slant::Rising) } else { (0.8, Slant::Falling) };
                self.sheet.hatch(piece, step, 0.3, slant);
                self.sheet.stroke_area(piece, Pen::black(0.3));
                self.hatched.push((index, piece));
            }
        }
    }

    /// Draws the openings of laterals under the patch; returns what was drawn.
    fn laterals(&mut self) -> Vec<(Lateral, Area)> {
        let area = self.wall.area;
        let girth_mm =
            PI * self.place.inside_um.value().map_or(f64::from(self.place.dn_mm), |inside| inside.as_mm()).max(1.0);
        let near = |lateral: &&Lateral| {
            let x = self.wall.x(lateral.station_um.as_m());
            x > area.left && x < area.right && (lateral.covered || self.under_patch(lateral))
        };
        let mut drawn = Vec::new();
        for lateral in self.place.laterals.iter().filter(near).cloned().collect::<Vec<_>>() {
            let dn = f64::from(lateral.dn_mm);
            let (rx, ry) = (dn / 2000.0 * self.wall.mm_per_m, dn / girth_mm * RING / 2.0);
            let (x, y) = (self.wall.x(lateral.station_um.as_m()), self.wall.y(f64::from(lateral.hour)));
            for shift in [0.0, RING, -RING] {
                if y + shift + ry < area.top || y + shift - ry > area.bottom {
                    continue;
                }
                let ring = polygon((x, y + shift), (rx, ry), 36);
                let ring = ring.into_iter().map(|(x, y)| (x, y.clamp(area.top, area.bottom))).collect();
                self.sheet.outline(ring, Pen::black(0.35));
            }
            let opening = Area::new(x - rx, y - ry, x + rx, y + ry);
            self.taken.push(opening);
            drawn.push((lateral, opening));
        }
        drawn
    }

    fn under_patch(&self, lateral: &Lateral) -> bool {
        self.place.patch.value().is_some_and(|patch| {
            let station = lateral.station_um.as_m();
            station > patch.from_um.as_m() - 0.02 && station < patch.to_um.as_m() + 0.02
        })
    }

    /// Draws findings as dashed frames; returns their rectangles.
    fn marks(&mut self) -> Vec<Vec<Area>> {
        let mut drawn = Vec::new();
        for mark in &self.place.marks {
            let pieces = self.wall.pieces(mark.stretch, mark.around);
            for piece in &pieces {
                self.sheet.stroke_area(*piece, Pen::black(0.5).dashed(1.2, 0.7));
            }
            drawn.push(pieces);
        }
        drawn
    }

    /// Draws the measured lengths above the wall, before the errors are taken off, and the stations below.
    fn dimensions(&mut self) {
        let Some(defect) = self.place.observations.first().map(|one| one.stretch) else { return };
        let patch = self.place.patch.value().copied().unwrap_or(defect);
        let mut stations = [patch.from_um, defect.from_um, defect.to_um, patch.to_um];
        stations.sort();
        let stations: Vec<_> = if patch == defect { stations[1..3].to_vec() } else { stations.to_vec() };
        let area = self.wall.area;
        let x = |wall: &Wall, station: crate::units::Length| wall.inside(station.as_m());
        let y = area.top - 2.0;
        let mut wanted = Vec::new();
        for pair in stations.windows(2) {
            let (a, b) = (x(&self.wall, pair[0]), x(&self.wall, pair[1]));
            let text = words::millimetres(Length::from_um(pair[1].as_um().saturating_sub(pair[0].as_um())));
            self.sheet.line((a, y), (b, y), Pen::black(0.18));
            wanted.push(((a + b) / 2.0, self.sheet.measure(&text, TINY) + 1.5, text));
        }
        for station in &stations {
            let x = x(&self.wall, *station);
            self.sheet.line((x, y - 1.1), (x, area.top), Pen::black(0.18));
            self.sheet.line((x - 0.7, y + 0.7), (x + 0.7, y - 0.7), Pen::black(0.3));
        }
        let centres: Vec<(f64, f64)> = wanted.iter().map(|(x, width, _)| (*x, *width)).collect();
        for ((_, _, text), x) in wanted.iter().zip(spread(&centres, area.left, area.right + 6.0)) {
            self.sheet.text(x, y - 0.8, text, TINY.centre());
        }
        self.stations_below(&stations);
    }

    fn stations_below(&mut self, stations: &[crate::units::Length]) {
        let Area { left, right, bottom, .. } = self.wall.area;
        let texts: Vec<String> = stations.iter().map(|station| metres(*station, 3)).collect();
        let wanted: Vec<(f64, f64)> = stations
            .iter()
            .zip(&texts)
            .map(|(station, text)| (self.wall.inside(station.as_m()), self.sheet.measure(text, TINY) + 1.5))
            .collect();
        for ((text, (from, _)), x) in texts.iter().zip(&wanted).zip(spread(&wanted, left - 2.0, right + 6.0)) {
            self.sheet.line((*from, bottom), (*from, bottom + 0.7), Pen::black(0.18));
            self.sheet.line((*from, bottom + 0.7), (x, bottom + 1.4), Pen::black(0.18));
            self.sheet.text(x, bottom + 3.7, text, TINY.centre());
        }
    }
}
