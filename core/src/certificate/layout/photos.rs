//! The photos, three in a row: never cropped, never stretched, turned as they were held.

use super::flow::Heading;
use super::grid::{self, SMALL, TINY};
use super::labels::Area;
use super::sheet::Sheet;
use super::text;
use super::words;
use crate::certificate::content::{Kind, Known, Photo, headings};
use crate::certificate::display::{Pen, Picture, Role};
use crate::certificate::jpeg;
use crate::words::tell;
use sha2::{Digest, Sha256};

const COLUMNS: usize = 3;
const WIDTH: f64 = 53.33;
const HEIGHT: f64 = 40.0;
const PITCH: f64 = WIDTH + 8.0;
/// From the cursor to the first row: the heading with what stands around it.
const ABOVE: f64 = 13.0;
/// How far the air below a row may reach into the margin.
const AIR: f64 = 2.4;
const TITLE_STEP: f64 = 3.2;
const STEP: f64 = 3.0;

/// What the layout knows of a photo's copy: width, height and orientation, or why it can't be shown.
pub type Shown = Result<(f64, f64, u8), String>;

/// Returns what can be shown of each photo: only a copy whose bytes have the hash that the page prints.
pub fn examine(photos: &[Photo]) -> Vec<Shown> {
    photos.iter().map(examine_one).collect()
}

fn examine_one(photo: &Photo) -> Shown {
    let copy = match &photo.copy {
        Known::Known(copy) => copy,
        Known::Absent(why) => return Err(why.clone()),
    };
    if copy.jpeg.is_empty() {
        return Err(tell!("cert-photos-the_copy_is_not_at"));
    }
    let hash: String = Sha256::digest(&copy.jpeg).iter().map(|byte| format!("{byte:02x}")).collect();
    if hash != copy.sha256 {
        return Err(tell!("cert-photos-the_copy_is_not_the"));
    }
    let header = jpeg::header(&copy.jpeg)
        .map_err(|fault| tell!("cert-photos-the_copy_cant_be_shown", fault = fault.to_string()))?;
    Ok((f64::from(header.width), f64::from(header.height), copy.orientation.clamp(1, 8)))
}

/// Returns whether there are photos whose first row does not fit below the cursor.
pub fn need_a_page(sheet: &Sheet) -> bool {
    let row = &sheet.content.photos[..sheet.content.photos.len().min(COLUMNS)];
    !row.is_empty() && sheet.room() < ABOVE + height(&captions(sheet, row, 0))
}

/// Sets the photos below the cursor; nothing where there are none.
pub fn set(sheet: &mut Sheet) {
    let content = sheet.content;
    if content.photos.is_empty() {
        return;
    }
    let remark = tell!("cert-photos-reduced_copies_the_originals_stay");
    let rows: Vec<&[Photo]> = content.photos.chunks(COLUMNS).collect();
    let first = rows.first().map_or(0.0, |row| height(&captions(sheet, row, 0)));
    Heading { key: headings::PHOTOS, remark: &remark, keep: first + 2.0 }.set(sheet);
    sheet.y += 2.0;
    let last = rows.len() - 1;
    for (index, row) in rows.into_iter().enumerate() {
        let captions = captions(sheet, row, index * COLUMNS);
        // Below the last row the paper may end.
        let air = if index == last { 0.0 } else { AIR };
        if sheet.need(height(&captions) - air) {
            sheet.y += 2.0;
        }
        for (column, caption) in captions.iter().enumerate() {
            one(sheet, index * COLUMNS + column, caption, grid::LEFT + column as f64 * PITCH);
        }
        sheet.y += height(&captions);
    }
}

/// The lines below a photo.
struct Caption {
    title: Vec<String>,
    facts: Vec<String>,
}

fn captions(sheet: &Sheet, row: &[Photo], before: usize) -> Vec<Caption> {
    row.iter().enumerate().map(|(index, photo)| caption(sheet, before + index + 1, photo)).collect()
}

fn caption(sheet: &Sheet, number: usize, photo: &Photo) -> Caption {
    let clock = sheet.clock;
    let other_day = clock.date(photo.at_ms) != clock.date(sheet.content.at_ms);
    let day = if other_day { format!("{} ", clock.date(photo.at_ms)) } else { String::new() };
    let bundle = match &photo.bundle {
        Some(bundle) => tell!("cert-photos-in_bundle", bundle),
        None => String::new(),
    };
    let copy = match &photo.copy {
        Known::Known(copy) => tell!("cert-photos-this_copy", hash = words::short_hash(&copy.sha256)),
        Known::Absent(_) => tell!("cert-photos-no_copy"),
    };
    let facts = [
        (format!("{day}{} {}, {}", clock.second(photo.at_ms), clock.offset(), photo.stage), 1),
        (photo.position.clone(), 2),
        (tell!("cert-photos-original", bundle, hash = words::short_hash(&photo.original_sha256)), 2),
        (copy, 1),
    ];
    let lines = |text: &str, style, most| text::wrap_at_most(sheet.fonts, &sheet.resolve(text), WIDTH, style, most).0;
    Caption {
        title: lines(&format!("{number}  {}", photo.title), SMALL.bold(), 4),
        facts: facts.iter().flat_map(|(text, most)| lines(text, TINY, *most)).collect(),
    }
}

fn height(captions: &[Caption]) -> f64 {
    let titles = captions.iter().map(|one| one.title.len()).max().unwrap_or(0) as f64 * TITLE_STEP;
    let facts = captions.iter().map(|one| one.facts.len()).max().unwrap_or(0) as f64 * STEP;
    HEIGHT + 3.6 + titles + facts
}

fn one(sheet: &mut Sheet, index: usize, caption: &Caption, x: f64) {
    let top = sheet.y;
    let alt = tell!("cert-photos-photo", title = caption.title.join(" "));
    let shown = sheet.shown.get(index).cloned().unwrap_or_else(|| Err(tell!("cert-photos-it_was_not_examined")));
    sheet.figure(&alt, |sheet| match shown {
        Ok((width, height, orientation)) => {
            let turned = orientation >= 5;
            let (width, height) = if turned { (height, width) } else { (width, height) };
            let scale = (WIDTH / width).min(HEIGHT / height);
            let (width, height) = (width * scale, height * scale);
            sheet.picture(Picture { photo: index, x, y: top, width, height, orientation });
        }
        Err(why) => missing(sheet, x, top, &why),
    });
    if sheet.is(Kind::Rehearsal) {
        sheet.decorate(|sheet| {
            sheet.fill_area(Area::new(x + 1.5, top + 1.5, x + 24.5, top + 6.5), 1.0);
            sheet.text(x + 13.0, top + 5.0, &tell!("cert-answers-rehearsal"), SMALL.bold().centre());
        });
    }
    sheet.element(Role::P, |sheet| {
        sheet.y = top + HEIGHT + 3.6 - TITLE_STEP;
        sheet.lines(x, &caption.title, SMALL.bold(), TITLE_STEP);
        sheet.y += TITLE_STEP - STEP - 0.2;
        sheet.lines(x, &caption.facts, TINY, STEP);
    });
    sheet.y = top;
}

/// Draws a frame that says why there is no picture.
fn missing(sheet: &mut Sheet, x: f64, top: f64, why: &str) {
    sheet.stroke_area(Area::new(x, top, x + WIDTH, top + HEIGHT), Pen::black(0.25).dashed(1.2, 0.8));
    let (lines, _) = text::wrap_at_most(sheet.fonts, &tell!("cert-photos-no_picture", why), WIDTH - 6.0, SMALL, 8);
    sheet.lines_at(x + 3.0, top + 8.0, &lines, SMALL);
}
