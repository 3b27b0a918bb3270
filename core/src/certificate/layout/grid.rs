//! The grid of the pages: positions in mm, sizes of type in points.
//!
//! The text is 176 mm wide on A4 and on Letter, so that lines break alike on both; only the height differs.

use crate::certificate::content::Paper;
use crate::certificate::display::{Ink, Weight};

/// The left edge of the text: room for filing.
pub const LEFT: f64 = 20.0;
/// The width of the text.
pub const WIDTH: f64 = 176.0;
/// The right edge of the text.
pub const RIGHT: f64 = LEFT + WIDTH;
/// Where the values of labelled sentences begin.
pub const INDENT: f64 = 30.0;

/// The line step of reading text.
pub const LINE: f64 = 4.0;
/// The line step of tables.
pub const ROW: f64 = 3.5;

/// The top of the first page.
pub const TOP_FIRST: f64 = 12.0;
/// The top of later pages, below the header.
pub const TOP: f64 = 18.0;
/// How far above the lower edge the text ends.
pub const FOOT: f64 = 15.4;

/// Widths of rules, in mm.
pub mod rule {
    pub const TITLE: f64 = 0.7;
    pub const SECTION: f64 = 0.35;
    pub const HEAD: f64 = 0.25;
    pub const FINE: f64 = 0.18;
    pub const ROW: f64 = 0.1;
    /// The only grey besides the outline on a rehearsal.
    pub const ROW_GREY: f64 = 0.55;
}

/// Returns the left edge of column 0 to 5: 26 mm wide, 4 mm apart.
pub fn column(index: u32) -> f64 {
    LEFT + 30.0 * f64::from(index)
}

/// Returns the lowest baseline of the first page: on the grid of reading text, so that the code keeps off the footer.
pub fn bottom_first(height: f64) -> f64 {
    TOP_FIRST + ((height - FOOT - TOP_FIRST) / LINE).floor() * LINE
}

/// Returns width and height in mm.
pub fn size(paper: Paper) -> (f64, f64) {
    match paper {
        Paper::A4 => (210.0, 297.0),
        Paper::Letter => (215.9, 279.4),
    }
}

/// A style of type.
#[derive(Clone, Copy, Debug)]
pub struct Style {
    pub size_pt: f64,
    pub weight: Weight,
    pub ink: Ink,
    pub align: Align,
}

/// Which point of a text stands at its x.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Align {
    Left,
    Centre,
    Right,
}

impl Style {
    const fn of(size_pt: f64) -> Self {
        Self { size_pt, weight: Weight::Book, ink: Ink::Black, align: Align::Left }
    }

    pub const fn bold(self) -> Self {
        Self { weight: Weight::Bold, ..self }
    }

    /// Returns this style in bold if `bold`.
    pub const fn bold_if(self, bold: bool) -> Self {
        if bold { self.bold() } else { self }
    }

    pub const fn white(self) -> Self {
        Self { ink: Ink::White, ..self }
    }

    /// Returns this style in white if `white`.
    pub const fn white_if(self, white: bool) -> Self {
        if white { self.white() } else { self }
    }

    pub const fn at(self, align: Align) -> Self {
        Self { align, ..self }
    }

    pub const fn centre(self) -> Self {
        self.at(Align::Centre)
    }

    pub const fn right(self) -> Self {
        self.at(Align::Right)
    }
}

/// The result.
pub const RESULT: Style = Style::of(20.0).bold();
/// Title and number.
pub const TITLE: Style = Style::of(14.0).bold();
/// What follows the result.
pub const TAIL: Style = Style::of(11.0).bold();
/// Answers and headings.
pub const HEADING: Style = Style::of(9.5).bold();
/// Reading text.
pub const BODY: Style = Style::of(7.5);
/// Tables.
pub const SMALL: Style = Style::of(6.75);
/// Captions and axes: the smallest.
pub const TINY: Style = Style::of(6.25);
/// On the frame of a rehearsal.
pub const FRAME: Style = Style::of(8.5).bold();
/// Across the page of a rehearsal.
pub const ACROSS: Style = Style { ink: Ink::Outline(0.62), ..Style::of(88.0).bold() };
