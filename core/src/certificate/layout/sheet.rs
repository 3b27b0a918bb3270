//! The sheet that everything is set on: pages, the cursor, and the strokes of the pen.

use super::grid::{self, Align, Style};
use super::labels::Area;
use super::photos::Shown;
use super::text::{self, References};
use super::words::Clock;
use super::{rehearsal, running};
use crate::certificate::content::{Content, Kind};
use crate::certificate::display::{
    Bookmark, Element, Item, Line, Mark, Page, Pen, Picture, Role, Shape, SignaturePlace, Text,
};
use crate::certificate::fonts::Fonts;
use qrcodegen::QrCode;

/// Letters of the words for a figure: a text in the file has at most 32 767 bytes (ISO 19005-3, 6.1.13).
const MOST_OF_ALT: usize = 8_000;

/// Pages in the making.
pub struct Sheet<'a> {
    pub content: &'a Content,
    pub fonts: &'a Fonts,
    pub clock: Clock,
    /// Where headings stood in the pass before.
    references: &'a References,
    /// What can be shown of each photo.
    pub shown: &'a [Shown],
    /// The code of the first page.
    pub code: Option<&'a QrCode>,
    /// Where headings stand now.
    pub found: References,
    pub bookmarks: Vec<Bookmark>,
    pub signatures: Vec<SignaturePlace>,
    pub width: f64,
    pub height: f64,
    /// The last baseline that was set, or the top of the page.
    pub y: f64,
    /// The lowest baseline on this page.
    pub bottom: f64,
    pub pages: Vec<Page>,
    pub elements: Vec<Element>,
    open: Vec<usize>,
    /// Which page the pen is on.
    page: usize,
    decorating: bool,
}

/// A place to go back to.
pub struct Remembered {
    items: usize,
    elements: usize,
    signatures: usize,
    y: f64,
}

impl<'a> Sheet<'a> {
    pub fn new(
        content: &'a Content,
        fonts: &'a Fonts,
        clock: Clock,
        references: &'a References,
        shown: &'a [Shown],
        code: Option<&'a QrCode>,
    ) -> Self {
        let (width, height) = grid::size(content.paper);
        Self {
            content,
            fonts,
            clock,
            references,
            shown,
            code,
            found: References::new(),
            bookmarks: Vec::new(),
            signatures: Vec::new(),
            width,
            height,
            y: 0.0,
            bottom: 0.0,
            pages: Vec::new(),
            elements: Vec::new(),
            open: Vec::new(),
            page: 0,
            decorating: false,
        }
    }

    pub fn is(&self, kind: Kind) -> bool {
        self.content.kind == kind
    }

    // Pages and the cursor.

    /// Begins a page, with its frame and header.
    pub fn new_page(&mut self) {
        self.pages.push(Page::default());
        self.page = self.pages.len() - 1;
        let first = self.page == 0;
        self.bottom = if first { grid::bottom_first(self.height) } else { self.height - grid::FOOT };
        self.decorate(|sheet| {
            if sheet.is(Kind::Rehearsal) {
                rehearsal::frame(sheet);
            }
            if !first {
                running::header(sheet);
            }
        });
        self.y = if first { grid::TOP_FIRST } else { grid::TOP };
    }

    /// Begins a new page unless `height` mm are left, and returns whether it did.
    pub fn need(&mut self, height: f64) -> bool {
        let full = self.y + height > self.bottom + 1e-6;
        if full {
            self.new_page();
        }
        full
    }

    /// Returns how many mm are left on this page.
    pub fn room(&self) -> f64 {
        self.bottom - self.y
    }

    pub fn at_top(&self) -> bool {
        self.y <= grid::TOP
    }

    /// Moves the pen to an earlier page.
    pub fn turn_to(&mut self, page: usize) {
        self.page = page.min(self.pages.len().saturating_sub(1));
    }

    /// Notes on which page a heading stands.
    pub fn bookmark(&mut self, heading: &'static str, title: &str) {
        self.found.insert(heading, self.page + 1);
        self.bookmarks.push(Bookmark { title: title.to_string(), page: self.page });
    }

    /// Notes the room for a signature, as a field of that name.
    pub fn signature(&mut self, name: &'static str, area: Area) {
        let (page, element) = (self.page, self.elements.len());
        let (width, height) = (area.width(), area.height());
        self.elements.push(Element { role: Role::Form, parent: self.open.last().copied(), alt: None });
        self.signatures.push(SignaturePlace { name, page, element, left: area.left, top: area.top, width, height });
    }

    // Structure.

    /// Draws inside an element: figures keep their strokes, elsewhere strokes are decoration.
    pub fn element<T>(&mut self, role: Role, draw: impl FnOnce(&mut Self) -> T) -> T {
        self.within(Element { role, parent: self.open.last().copied(), alt: None }, draw)
    }

    /// Draws a figure that is described by `alt`.
    pub fn figure<T>(&mut self, alt: &str, draw: impl FnOnce(&mut Self) -> T) -> T {
        let alt = Some(self.fonts.printable(&self.resolve(alt)).chars().take(MOST_OF_ALT).collect());
        self.within(Element { role: Role::Figure, parent: self.open.last().copied(), alt }, draw)
    }

    /// Draws what is no content: frames, headers, footers.
    pub fn decorate<T>(&mut self, draw: impl FnOnce(&mut Self) -> T) -> T {
        let before = std::mem::replace(&mut self.decorating, true);
        let result = draw(self);
        self.decorating = before;
        result
    }

    fn within<T>(&mut self, element: Element, draw: impl FnOnce(&mut Self) -> T) -> T {
        if self.decorating {
            return draw(self);
        }
        self.elements.push(element);
        self.open.push(self.elements.len() - 1);
        let result = draw(self);
        self.open.pop();
        result
    }

    // Text.

    pub fn resolve(&self, text: &str) -> String {
        text::resolve(text, self.references)
    }

    /// Returns `text`, with its page references, in lines no wider than `width` mm.
    pub fn wrap(&self, text: &str, width: f64, style: Style) -> Vec<String> {
        text::wrap(self.fonts, &self.resolve(text), width, style)
    }

    /// Returns the width of `text` as it will be set.
    pub fn measure(&self, text: &str, style: Style) -> f64 {
        self.fonts.width_mm(&self.set(text), style.size_pt, style.weight)
    }

    /// Sets one line with its baseline at `y`, and returns its width.
    pub fn text(&mut self, x: f64, y: f64, text: &str, style: Style) -> f64 {
        self.turned(x, y, 0.0, text, style)
    }

    /// Sets one line turned anticlockwise about (`x`, `y`), and returns its width.
    pub fn turned(&mut self, x: f64, y: f64, turn_deg: f64, text: &str, style: Style) -> f64 {
        let text = self.set(text);
        let width = self.fonts.width_mm(&text, style.size_pt, style.weight);
        let back = match style.align {
            Align::Left => 0.0,
            Align::Centre => width / 2.0,
            Align::Right => width,
        };
        if !text.is_empty() {
            let mark =
                Text { x: x - back, y, text, size_pt: style.size_pt, weight: style.weight, ink: style.ink, turn_deg };
            self.put(Mark::Text(mark));
        }
        width
    }

    /// Sets one line in at most `room` mm, the rest cut and shown to be cut, and returns its width.
    pub fn cell(&mut self, (x, y): (f64, f64), room: f64, text: &str, style: Style) -> f64 {
        let (lines, _) = text::wrap_at_most(self.fonts, &self.resolve(text), room, style, 1);
        lines.first().map_or(0.0, |line| self.text(x, y, line, style))
    }

    /// Sets lines below the cursor, one every `step` mm.
    pub fn lines(&mut self, x: f64, lines: &[String], style: Style, step: f64) {
        for line in lines {
            self.y += step;
            self.text(x, self.y, line, style);
        }
    }

    /// Sets lines from the baseline `y` on, without moving the cursor.
    pub fn lines_at(&mut self, x: f64, y: f64, lines: &[String], style: Style) {
        for (index, line) in lines.iter().enumerate() {
            self.text(x, y + grid::ROW * index as f64, line, style);
        }
    }

    fn set(&self, text: &str) -> String {
        text::glue(&self.fonts.printable(&self.resolve(text))).replace('\n', " ")
    }

    // Strokes.

    pub fn line(&mut self, from: (f64, f64), to: (f64, f64), pen: Pen) {
        self.put(Mark::Line(Line { from, to, pen }));
    }

    /// Draws a rule across the text at `y`.
    pub fn rule(&mut self, y: f64, width_mm: f64) {
        self.line((grid::LEFT, y), (grid::RIGHT, y), Pen::black(width_mm));
    }

    /// Fills a closed path with a grey.
    pub fn fill(&mut self, ring: Vec<(f64, f64)>, grey: f64) {
        self.put(Mark::Shape(Shape { rings: vec![ring], fill: Some(grey), pen: None, closed: true }));
    }

    /// Fills a closed path with white and strokes its outline.
    pub fn outline(&mut self, ring: Vec<(f64, f64)>, pen: Pen) {
        self.put(Mark::Shape(Shape { rings: vec![ring], fill: Some(1.0), pen: Some(pen), closed: true }));
    }

    /// Strokes a path, open or closed.
    pub fn stroke(&mut self, points: Vec<(f64, f64)>, pen: Pen, closed: bool) {
        self.put(Mark::Shape(Shape { rings: vec![points], fill: None, pen: Some(pen), closed }));
    }

    /// Fills many rings as one path.
    pub fn fill_all(&mut self, rings: Vec<Vec<(f64, f64)>>) {
        self.put(Mark::Shape(Shape { rings, fill: Some(0.0), pen: None, closed: true }));
    }

    pub fn fill_area(&mut self, area: Area, grey: f64) {
        self.fill(corners(area), grey);
    }

    pub fn outline_area(&mut self, area: Area, pen: Pen) {
        self.outline(corners(area), pen);
    }

    pub fn stroke_area(&mut self, area: Area, pen: Pen) {
        self.stroke(corners(area), pen, true);
    }

    /// Hatches an area at 45 degrees, lines `step` mm apart along its edges.
    pub fn hatch(&mut self, area: Area, step: f64, width_mm: f64, slant: Slant) {
        let (width, height) = (area.width(), area.height());
        let count = ((width + height - 1e-6) / step).floor().clamp(0.0, 2000.0) as u32;
        for index in 1..=count {
            let t = f64::from(index) * step;
            let (u1, mut v1) = ((t - height).max(0.0), t.min(height));
            let (u2, mut v2) = (t.min(width), (t - width).max(0.0));
            if slant == Slant::Falling {
                (v1, v2) = (height - v1, height - v2);
            }
            let at = |u: f64, v: f64| (area.left + u, area.top + v);
            self.line(at(u1, v1), at(u2, v2), Pen::black(width_mm));
        }
    }

    pub fn picture(&mut self, picture: Picture) {
        self.put(Mark::Picture(picture));
    }

    fn put(&mut self, mark: Mark) {
        let inside = self.open.last().copied();
        let figure = self.open.iter().any(|&index| self.elements[index].role == Role::Figure);
        let content = !self.decorating && (figure || matches!(mark, Mark::Text(_) | Mark::Picture(_)));
        if let Some(page) = self.pages.get_mut(self.page) {
            page.items.push(Item { element: inside.filter(|_| content), mark });
        }
    }

    /// Returns what is needed to take back all that follows on this page.
    pub fn remember(&self) -> Remembered {
        Remembered {
            items: self.pages.get(self.page).map_or(0, |page| page.items.len()),
            elements: self.elements.len(),
            signatures: self.signatures.len(),
            y: self.y,
        }
    }

    /// Takes back what was drawn on this page since `mark`.
    pub fn take_back(&mut self, mark: &Remembered) {
        if let Some(page) = self.pages.get_mut(self.page) {
            page.items.truncate(mark.items);
        }
        self.elements.truncate(mark.elements);
        self.signatures.truncate(mark.signatures);
        self.y = mark.y;
    }
}

/// Which way a hatch leans.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Slant {
    /// From the lower left to the upper right.
    Rising,
    Falling,
}

/// Returns the corners of an area, clockwise from the upper left.
pub fn corners(area: Area) -> Vec<(f64, f64)> {
    vec![(area.left, area.top), (area.right, area.top), (area.right, area.bottom), (area.left, area.bottom)]
}
