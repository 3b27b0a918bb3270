//! How far a figure reaches: its box, for readers that reflow or magnify (ISO 32000-1, 14.8.5.4.3).

use crate::certificate::display::{Document, Element, Mark, Pen, Role, Text};
use crate::certificate::fonts::{Fonts, MM_PER_PT};
use crate::maths::{cos, sin};

/// Left, top, right, bottom in mm from the top left corner of the page.
type Area = [f64; 4];

/// Returns for every element that is a figure with marks its box: left, bottom, right, top in points from the lower left
/// corner of its page, outwards to a whole point. A figure stands on one page.
pub fn figures(document: &Document, fonts: &Fonts) -> Vec<Option<[i64; 4]>> {
    let mut areas: Vec<Option<Area>> = vec![None; document.elements.len()];
    for item in document.pages.iter().flat_map(|page| &page.items) {
        let Some(figure) = item.element.and_then(|element| figure_of(&document.elements, element)) else { continue };
        let reach = mark(&item.mark, fonts);
        areas[figure] = Some(areas[figure].map_or(reach, |area| union(area, reach)));
    }
    areas.into_iter().map(|area| area.map(|area| points(area, document.height_mm))).collect()
}

/// The outermost figure that holds an element.
fn figure_of(elements: &[Element], element: usize) -> Option<usize> {
    let mut line = std::iter::successors(Some(element), |at| elements[*at].parent);
    line.by_ref().filter(|at| elements[*at].role == Role::Figure).last()
}

fn mark(mark: &Mark, fonts: &Fonts) -> Area {
    match mark {
        Mark::Text(one) => text(one, fonts),
        Mark::Line(line) => path([line.from, line.to].iter(), Some(&line.pen)),
        Mark::Shape(shape) => path(shape.rings.iter().flatten(), shape.pen.as_ref()),
        Mark::Picture(picture) => [picture.x, picture.y, picture.x + picture.width, picture.y + picture.height],
    }
}

/// A text reaches one size above its baseline and a quarter of it below.
fn text(text: &Text, fonts: &Fonts) -> Area {
    let (width, em) = (fonts.width_mm(&text.text, text.size_pt, text.weight), text.size_pt * MM_PER_PT);
    let angle = text.turn_deg.to_radians();
    let (sin, cos) = (sin(angle), cos(angle));
    let corner = |along: f64, up: f64| (text.x + along * cos - up * sin, text.y - along * sin - up * cos);
    path([corner(0.0, em), corner(width, em), corner(0.0, -em / 4.0), corner(width, -em / 4.0)].iter(), None)
}

fn path<'a>(points: impl Iterator<Item = &'a (f64, f64)>, pen: Option<&Pen>) -> Area {
    let half = pen.map_or(0.0, |pen| pen.width_mm / 2.0);
    let start = [f64::MAX, f64::MAX, f64::MIN, f64::MIN];
    points.fold(start, |area, (x, y)| union(area, [x - half, y - half, x + half, y + half]))
}

fn union(a: Area, b: Area) -> Area {
    [a[0].min(b[0]), a[1].min(b[1]), a[2].max(b[2]), a[3].max(b[3])]
}

fn points([left, top, right, bottom]: Area, height: f64) -> [i64; 4] {
    let point = |mm: f64| mm / MM_PER_PT;
    [
        point(left).floor() as i64,
        point(height - bottom).floor() as i64,
        point(right).ceil() as i64,
        point(height - top).ceil() as i64,
    ]
}
