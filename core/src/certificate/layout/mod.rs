//! From content to pages: a display list, complete with page numbers and page references.
//!
//! - [`grid`]: positions and sizes · [`sheet`]: cursor and pen · [`text`]: lines · [`words`]: numbers · [`labels`].
//! - [`flow`]: headings and labelled sentences · [`tables`].
//! - [`page_one`] with [`answers`], [`drawings`], [`departures`], [`signatures`], [`head`].
//! - [`stages`], [`working_time`], [`hold_chart`], [`readings`], [`evidence`], [`photos`], [`cautions`].
//! - [`running`]: header and footer · [`rehearsal`]: frame · [`wording`]: what differs by kind.
//!
//! A page reference or a spare line is known only when all is set, so everything is set more than once, until the
//! pages say what they show.

mod answers;
mod cautions;
mod departures;
mod drawings;
mod evidence;
mod flow;
pub mod grid;
mod head;
mod hold_chart;
mod labels;
mod page_one;
mod photos;
mod readings;
mod rehearsal;
mod running;
mod sheet;
mod signatures;
mod stages;
mod tables;
mod text;
mod wording;
pub mod words;
mod working_time;

use super::CertificateError;
use super::content::Content;
use super::display::Document;
use super::fonts::Fonts;
use sheet::Sheet;
use text::References;
use words::Clock;

/// Passes until page references stand still; two are usual.
const MOST_PASSES: u32 = 5;

/// Returns the pages of `content`.
///
/// Errors: `Content` if the offset from UTC is out of range, or if page references never settle.
pub fn lay_out(content: &Content, fonts: &Fonts) -> Result<Document, CertificateError> {
    crate::words::for_reader(content.reader, || settled(content, fonts))
}

fn settled(content: &Content, fonts: &Fonts) -> Result<Document, CertificateError> {
    let clock = Clock::at_offset(content.utc_offset_min)?;
    let shown = photos::examine(&content.photos);
    let code = head::code(content);
    let mut references = References::new();
    for _ in 0..MOST_PASSES {
        let mut sheet = Sheet::new(content, fonts, clock, &references, &shown, code.as_ref());
        set(&mut sheet);
        if sheet.found == references {
            return Ok(finished(sheet));
        }
        references = sheet.found;
    }
    Err(CertificateError::Content { what: "page references that move whenever they are printed".to_string() })
}

fn set(sheet: &mut Sheet) {
    let cut = page_one::set(sheet);
    sheet.new_page();
    stages::set(sheet);
    working_time::set(sheet);
    hold_chart::set(sheet);
    readings::set(sheet);
    evidence::set(sheet, &cut);
    // Photos that need a new page leave room here: the cautions fill it rather than a page of their own.
    if photos::need_a_page(sheet) && cautions::fit(sheet) {
        cautions::set(sheet);
        photos::set(sheet);
        cautions::end_alone(sheet);
    } else {
        photos::set(sheet);
        cautions::set(sheet);
        cautions::end(sheet);
    }
    running::footers(sheet);
}

fn finished(sheet: Sheet) -> Document {
    Document {
        title: sheet.fonts.printable(&wording::document_title(sheet.content)).replace('\n', " "),
        width_mm: sheet.width,
        height_mm: sheet.height,
        pages: sheet.pages,
        elements: sheet.elements,
        bookmarks: sheet.bookmarks,
        signatures: sheet.signatures,
    }
}
