//! Marks as page operators, in marked sequences that the structure can name.

use crate::certificate::display::{Document, Ink, Item, Line, Mark, Page, Pen, Picture, Role, Shape, Text, Weight};
use crate::certificate::fonts::MM_PER_PT;
use crate::maths::{cos, sin};
use printpdf::{
    Color, CurTransMat, DictItem, FontId, Greyscale, LineDashPattern, LinePoint, Op, PaintMode, PdfFontHandle, Point,
    Polygon, PolygonRing, Pt, TextItem, TextMatrix, TextRenderingMode, WindingOrder, XObjectId, XObjectTransform,
};
use std::collections::BTreeMap;

/// Which element each marked sequence of a page belongs to: its number is its place.
pub type Marked = Vec<usize>;

/// Returns the resource name of a face.
pub fn font_name(weight: Weight) -> &'static str {
    match weight {
        Weight::Book => "Book",
        Weight::Bold => "Bold",
    }
}

/// Returns the resource name of a photo.
pub fn picture_name(index: usize) -> String {
    format!("Photo{index}")
}

/// Returns the character that is written for one that only steers the breaking of lines.
pub fn plain(character: char) -> char {
    if character == '\u{a0}' { ' ' } else { character }
}

/// Returns the operators of a page, and the elements of its marked sequences.
pub fn page(document: &Document, page: &Page) -> (Vec<Op>, Marked) {
    let mut writer = Writer { document, ops: Vec::new(), marked: Vec::new(), state: State::default() };
    let mut rest = page.items.as_slice();
    while let Some(first) = rest.first() {
        let run = rest.iter().take_while(|item| item.element == first.element).count();
        let (now, later) = rest.split_at(run);
        writer.sequence(first.element, now);
        rest = later;
    }
    (writer.ops, writer.marked)
}

/// What the page has been told already.
#[derive(Default)]
struct State {
    fill: Option<f64>,
    stroke: Option<f64>,
    width: Option<f64>,
    dash: Option<Option<(f64, f64)>>,
    outlined: bool,
}

struct Writer<'a> {
    document: &'a Document,
    ops: Vec<Op>,
    marked: Marked,
    state: State,
}

impl Writer<'_> {
    fn sequence(&mut self, element: Option<usize>, items: &[Item]) {
        match element {
            None => self.ops.push(Op::BeginMarkedContent { tag: "Artifact".to_string() }),
            Some(element) => {
                let number = DictItem::Int(self.marked.len() as i64);
                self.marked.push(element);
                let properties = DictItem::Dict { map: BTreeMap::from([("MCID".to_string(), number)]) };
                let tag = role_name(self.document.elements[element].role).to_string();
                self.ops.push(Op::BeginMarkedContentWithProperties { tag, properties });
            }
        }
        for (index, item) in items.iter().enumerate() {
            let more = items[index + 1..].iter().any(|item| matches!(item.mark, Mark::Text(_)));
            match &item.mark {
                Mark::Text(text) => self.text(text, more),
                Mark::Line(line) => self.line(line),
                Mark::Shape(shape) => self.shape(shape),
                Mark::Picture(picture) => self.picture(picture),
            }
        }
        self.ops.push(Op::EndMarkedContent);
    }

    /// Shows a text; where `more` follows in the same sequence, a space parts them for those who read by structure.
    fn text(&mut self, text: &Text, more: bool) {
        match text.ink {
            Ink::Black => self.fill(0.0),
            Ink::White => self.fill(1.0),
            Ink::Outline(grey) => self.pen(&Pen { width_mm: 0.5 * MM_PER_PT, grey, dash: None }),
        }
        let outlined = matches!(text.ink, Ink::Outline(_));
        self.ops.push(Op::StartTextSection);
        if outlined != self.state.outlined {
            let mode = if outlined { TextRenderingMode::Stroke } else { TextRenderingMode::Fill };
            self.ops.push(Op::SetTextRenderingMode { mode });
            self.state.outlined = outlined;
        }
        let font = PdfFontHandle::External(FontId(font_name(text.weight).to_string()));
        self.ops.push(Op::SetFont { font, size: Pt(rounded(text.size_pt)) });
        let pos = self.point((text.x, text.y));
        if text.turn_deg == 0.0 {
            self.ops.push(Op::SetTextCursor { pos });
        } else {
            let angle = text.turn_deg.to_radians();
            let (sin, cos) = (sin(angle) as f32, cos(angle) as f32);
            self.ops.push(Op::SetTextMatrix { matrix: TextMatrix::Raw([cos, sin, -sin, cos, pos.x.0, pos.y.0]) });
        }
        let letters = text.text.chars().map(plain).chain(more.then_some(' ')).collect();
        self.ops.push(Op::ShowText { items: vec![TextItem::Text(letters)] });
        self.ops.push(Op::EndTextSection);
    }

    fn line(&mut self, line: &Line) {
        self.pen(&line.pen);
        let points = self.points(&[line.from, line.to]);
        self.ops.push(Op::DrawLine { line: printpdf::Line { points, is_closed: false } });
    }

    fn shape(&mut self, shape: &Shape) {
        if let Some(grey) = shape.fill {
            self.fill(grey);
        }
        if let Some(pen) = &shape.pen {
            self.pen(pen);
        }
        let mode = match (shape.fill, shape.pen) {
            (Some(_), Some(_)) => PaintMode::FillStroke,
            (Some(_), None) => PaintMode::Fill,
            (None, _) => PaintMode::Stroke,
        };
        if shape.closed {
            let rings = shape.rings.iter().map(|ring| PolygonRing { points: self.points(ring) }).collect();
            self.ops.push(Op::DrawPolygon { polygon: Polygon { rings, mode, winding_order: WindingOrder::NonZero } });
        } else {
            for ring in &shape.rings {
                let points = self.points(ring);
                self.ops.push(Op::DrawLine { line: printpdf::Line { points, is_closed: false } });
            }
        }
    }

    /// Places the unit square of the picture so that its orientation is undone (EXIF 2.32, tag 0x0112).
    fn picture(&mut self, picture: &Picture) {
        let (w, h) = (points(picture.width), points(picture.height));
        let (x, y) = (points(picture.x), points(self.document.height_mm - picture.y - picture.height));
        let matrix = match picture.orientation {
            2 => [-w, 0.0, 0.0, h, x + w, y],
            3 => [-w, 0.0, 0.0, -h, x + w, y + h],
            4 => [w, 0.0, 0.0, -h, x, y + h],
            5 => [0.0, -h, -w, 0.0, x + w, y + h],
            6 => [0.0, -h, w, 0.0, x, y + h],
            7 => [0.0, h, w, 0.0, x, y],
            8 => [0.0, h, -w, 0.0, x + w, y],
            _ => [w, 0.0, 0.0, h, x, y],
        };
        self.ops.push(Op::SaveGraphicsState);
        self.ops.push(Op::SetTransformationMatrix { matrix: CurTransMat::Raw(matrix.map(rounded)) });
        self.ops.push(Op::UseXobject {
            id: XObjectId(picture_name(picture.photo)),
            transform: XObjectTransform { no_auto_scale: true, ..Default::default() },
        });
        self.ops.push(Op::RestoreGraphicsState);
    }

    fn fill(&mut self, grey: f64) {
        if self.state.fill != Some(grey) {
            self.ops.push(Op::SetFillColor { col: colour(grey) });
            self.state.fill = Some(grey);
        }
    }

    fn pen(&mut self, pen: &Pen) {
        if self.state.stroke != Some(pen.grey) {
            self.ops.push(Op::SetOutlineColor { col: colour(pen.grey) });
            self.state.stroke = Some(pen.grey);
        }
        if self.state.width != Some(pen.width_mm) {
            self.ops.push(Op::SetOutlineThickness { pt: Pt(rounded(points(pen.width_mm))) });
            self.state.width = Some(pen.width_mm);
        }
        if self.state.dash != Some(pen.dash) && (pen.dash.is_some() || self.state.dash.is_some()) {
            let lengths = pen.dash.map_or_else(Vec::new, |(dash, gap)| vec![points(dash), points(gap)]);
            let pattern = lengths.into_iter().map(rounded).collect();
            self.ops.push(Op::SetLineDashPattern { dash: LineDashPattern { offset: 0.0, pattern } });
            self.state.dash = Some(pen.dash);
        }
    }

    fn points(&self, path: &[(f64, f64)]) -> Vec<LinePoint> {
        path.iter().map(|point| LinePoint { p: self.point(*point), bezier: false }).collect()
    }

    fn point(&self, (x, y): (f64, f64)) -> Point {
        Point { x: Pt(rounded(points(x))), y: Pt(rounded(points(self.document.height_mm - y))) }
    }
}

/// Returns the name of a structure type.
pub fn role_name(role: Role) -> &'static str {
    match role {
        Role::H1 => "H1",
        Role::H2 => "H2",
        Role::P => "P",
        Role::L => "L",
        Role::Li => "LI",
        Role::Lbl => "Lbl",
        Role::LBody => "LBody",
        Role::Table => "Table",
        Role::Tr => "TR",
        Role::Th | Role::ThRow => "TH",
        Role::Td => "TD",
        Role::Figure => "Figure",
        Role::Form => "Form",
        Role::Sect => "Sect",
    }
}

fn colour(grey: f64) -> Color {
    Color::Greyscale(Greyscale { percent: rounded(grey.clamp(0.0, 1.0)), icc_profile: None })
}

fn points(mm: f64) -> f64 {
    mm / MM_PER_PT
}

/// A thousandth of a point is finer than any printer; fewer digits make a smaller file.
fn rounded(value: f64) -> f32 {
    ((value * 1000.0).round() / 1000.0) as f32
}
