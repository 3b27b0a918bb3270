//! The display list: what is drawn where, and what it is to somebody who can't see it.
//!
//! Lengths are in millimetres from the top left corner, sizes of type in points, text stands on its baseline.
//! Items are in the order of painting, which is also the order of reading.

/// The laid-out document.
#[derive(Clone, Debug)]
pub struct Document {
    pub title: String,
    pub width_mm: f64,
    pub height_mm: f64,
    pub pages: Vec<Page>,
    /// The structure: each element after its parent, in reading order among its siblings.
    pub elements: Vec<Element>,
    /// Headings for the outline, in order.
    pub bookmarks: Vec<Bookmark>,
    /// Where a key may sign.
    pub signatures: Vec<SignaturePlace>,
}

/// The names of the signature fields, in the order of the content's signatures: whoever signs after these has no field.
pub const SIGNATURE_FIELDS: [&str; 2] = ["technician", "foreman"];

/// The room above a line that is signed on: a field, for the drawn line and for what the key adds.
#[derive(Clone, Debug)]
pub struct SignaturePlace {
    /// One of [`SIGNATURE_FIELDS`].
    pub name: &'static str,
    /// Counted from 0.
    pub page: usize,
    /// The place of its element in [`Document::elements`].
    pub element: usize,
    pub left: f64,
    pub top: f64,
    pub width: f64,
    pub height: f64,
}

/// One page.
#[derive(Clone, Debug, Default)]
pub struct Page {
    pub items: Vec<Item>,
}

/// A heading and its page.
#[derive(Clone, Debug)]
pub struct Bookmark {
    pub title: String,
    /// Counted from 0.
    pub page: usize,
}

/// Something drawn.
#[derive(Clone, Debug)]
pub struct Item {
    /// The element that it belongs to, by its place in [`Document::elements`]; `None`: decoration.
    pub element: Option<usize>,
    pub mark: Mark,
}

/// An element of the structure.
#[derive(Clone, Debug)]
pub struct Element {
    pub role: Role,
    /// `None`: a child of the document.
    pub parent: Option<usize>,
    /// For figures: what is seen, in words.
    pub alt: Option<String>,
}

/// Standard structure types of ISO 32000-1, 14.8.4.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Role {
    H1,
    H2,
    P,
    L,
    Li,
    Lbl,
    LBody,
    Table,
    Tr,
    Th,
    /// The head of a row.
    ThRow,
    Td,
    Figure,
    /// A field; it holds no marks.
    Form,
    Sect,
}

/// A drawn thing.
#[derive(Clone, Debug)]
pub enum Mark {
    Text(Text),
    Line(Line),
    Shape(Shape),
    Picture(Picture),
}

/// A run of text in one style.
#[derive(Clone, Debug)]
pub struct Text {
    pub x: f64,
    /// The baseline.
    pub y: f64,
    pub text: String,
    pub size_pt: f64,
    pub weight: Weight,
    pub ink: Ink,
    /// Anticlockwise, in degrees, about the start of the baseline.
    pub turn_deg: f64,
}

/// The two faces.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Weight {
    Book,
    Bold,
}

/// How letters are painted.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Ink {
    Black,
    White,
    /// Only the outline, in this grey (0 black, 1 white).
    Outline(f64),
}

/// A stroked straight line.
#[derive(Clone, Debug)]
pub struct Line {
    pub from: (f64, f64),
    pub to: (f64, f64),
    pub pen: Pen,
}

/// A path of straight pieces, filled, stroked or both.
#[derive(Clone, Debug)]
pub struct Shape {
    pub rings: Vec<Vec<(f64, f64)>>,
    /// A grey; `None`: not filled.
    pub fill: Option<f64>,
    pub pen: Option<Pen>,
    pub closed: bool,
}

/// How a line is stroked.
#[derive(Clone, Copy, Debug)]
pub struct Pen {
    pub width_mm: f64,
    /// 0 black, 1 white.
    pub grey: f64,
    /// Length of dash and of gap in mm.
    pub dash: Option<(f64, f64)>,
}

impl Pen {
    /// Returns a black, solid pen.
    pub const fn black(width_mm: f64) -> Self {
        Self { width_mm, grey: 0.0, dash: None }
    }

    /// Returns this pen, dashed.
    pub const fn dashed(self, dash_mm: f64, gap_mm: f64) -> Self {
        Self { dash: Some((dash_mm, gap_mm)), ..self }
    }

    /// Returns this pen in another grey.
    pub const fn grey(self, grey: f64) -> Self {
        Self { grey, ..self }
    }
}

/// A photo, fitted into a box without cropping or stretching.
#[derive(Clone, Debug)]
pub struct Picture {
    /// The place of the photo in the content.
    pub photo: usize,
    pub x: f64,
    pub y: f64,
    pub width: f64,
    pub height: f64,
    /// EXIF orientation, 1 to 8.
    pub orientation: u8,
}
