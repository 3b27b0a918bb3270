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
use super::content::{Content, headings};
use super::display::Document;
use super::fonts::Fonts;
use photos::Shown;
use qrcodegen::QrCode;
use sheet::Sheet;
use std::collections::BTreeMap;
use text::References;
use words::Clock;

/// Passes until page references stand still; two are usual.
const MOST_PASSES: u32 = 5;

/// Returns the pages of `content`.
///
/// Errors: `Content` if the offset from UTC is out of range, or if page references never settle.
pub fn lay_out(content: &Content, fonts: &Fonts) -> Result<Document, CertificateError> {
    crate::words::for_reader(content.reader, || Given::of(content, fonts, head::code(content))?.settled())
}

/// Returns the same pages for who looks at their words alone: the code of the first page is of the same size, and no more.
///
/// `headings` says on which page, from 1, a heading of that title is said to stand. Where that is right, one pass is
/// enough; where it is not, it changes nothing.
/// Errors: as [`lay_out`].
pub fn lay_out_again(
    content: &Content,
    fonts: &Fonts,
    headings: &BTreeMap<String, usize>,
) -> Result<Document, CertificateError> {
    crate::words::for_reader(content.reader, || {
        let given = Given::of(content, fonts, head::room_for_code(content))?;
        let references = stand(content, headings);
        match given.pass(&references) {
            sheet if sheet.found == references => Ok(finished(sheet)),
            _ => given.settled(),
        }
    })
}

/// Returns where headings stand by their titles.
fn stand(content: &Content, titles: &BTreeMap<String, usize>) -> References {
    let page = |heading: &str| titles.get(&wording::heading(heading, content)).copied();
    headings::ALL.iter().filter_map(|heading| Some((*heading, page(heading)?))).collect()
}

/// What every pass goes by.
struct Given<'a> {
    content: &'a Content,
    fonts: &'a Fonts,
    clock: Clock,
    shown: Vec<Shown>,
    code: Option<QrCode>,
}

impl<'a> Given<'a> {
    fn of(content: &'a Content, fonts: &'a Fonts, code: Option<QrCode>) -> Result<Self, CertificateError> {
        let (clock, shown) = (Clock::at_offset(content.utc_offset_min)?, photos::examine(&content.photos));
        Ok(Self { content, fonts, clock, shown, code })
    }

    fn pass<'b>(&'b self, references: &'b References) -> Sheet<'b> {
        let mut sheet = Sheet::new(self.content, self.fonts, self.clock, references, &self.shown, self.code.as_ref());
        set(&mut sheet);
        sheet
    }

    fn settled(&self) -> Result<Document, CertificateError> {
        let mut references = References::new();
        for _ in 0..MOST_PASSES {
            let sheet = self.pass(&references);
            if sheet.found == references {
                return Ok(finished(sheet));
            }
            references = sheet.found;
        }
        Err(CertificateError::Content { what: "page references that move whenever they are printed".to_string() })
    }
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

#[cfg(test)]
mod tests {
    use super::*;
    use std::fs::{read_dir, read_to_string};

    /// Else whoever checks a certificate sets every page three times.
    #[test]
    fn one_pass_is_enough_where_the_outline_is_right() {
        let fonts = Fonts::bundled().unwrap();
        let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/../fixtures/certificates");
        let mut looked_at = 0;
        for file in read_dir(folder).unwrap() {
            let content: Content = serde_json::from_str(&read_to_string(file.unwrap().path()).unwrap()).unwrap();
            let outline = lay_out(&content, &fonts).unwrap().bookmarks;
            let titles = outline.into_iter().map(|one| (one.title, one.page + 1)).collect();
            let references = crate::words::for_reader(content.reader, || stand(&content, &titles));
            let given = Given::of(&content, &fonts, head::room_for_code(&content)).unwrap();
            let found = crate::words::for_reader(content.reader, || given.pass(&references).found);
            assert_eq!(found, references, "{}", content.number);
            looked_at += 1;
        }
        assert!(looked_at >= 6);
    }
}
