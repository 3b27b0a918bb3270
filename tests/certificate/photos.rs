//! Photos on the page: turned as they were held, framed with a reason where they can't be shown.

use super::{content, sha256};
use image::metadata::Orientation;
use image::{DynamicImage, ImageFormat, Rgb, RgbImage};
use mendline_core::certificate::content::{Content, Known, PhotoCopy};
use mendline_core::certificate::display::Mark;
use mendline_core::certificate::fonts::Fonts;
use mendline_core::certificate::{build, layout};
use std::io::Cursor;
use std::path::Path;
use std::process::Command;

const RED: [u8; 3] = [220, 30, 30];
const BLUE: [u8; 3] = [30, 30, 220];
const YELLOW: [u8; 3] = [230, 220, 30];
const BLACK: [u8; 3] = [10, 10, 10];

/// A picture whose four corners differ: red, blue, yellow, black, as one reads.
fn upright() -> DynamicImage {
    let colour = |x: u32, y: u32| match (x < 60, y < 40) {
        (true, true) => RED,
        (false, true) => BLUE,
        (true, false) => YELLOW,
        (false, false) => BLACK,
    };
    RgbImage::from_fn(120, 80, |x, y| Rgb(colour(x, y))).into()
}

/// The upright picture as a camera stores it that was held so.
fn stored(orientation: u8) -> Vec<u8> {
    let opposite = match orientation {
        6 => 8,
        8 => 6,
        other => other,
    };
    let mut picture = upright();
    picture.apply_orientation(Orientation::from_exif(opposite).unwrap());
    let mut bytes = Vec::new();
    picture.write_to(&mut Cursor::new(&mut bytes), ImageFormat::Jpeg).unwrap();
    bytes
}

fn with_copy(jpeg: Vec<u8>, orientation: u8) -> Content {
    let mut content = content("unrepaired");
    content.photos.truncate(1);
    content.photos[0].copy = Known::Known(PhotoCopy { sha256: sha256(&jpeg), orientation, jpeg });
    content
}

/// Draws the page of the photo with Poppler and returns the colours at the middle of its four corners.
fn corners(name: &str, content: &Content) -> Option<[[u8; 3]; 4]> {
    let document = layout::lay_out(content, &Fonts::bundled().unwrap()).unwrap();
    let (page, picture) = document.pages.iter().enumerate().find_map(|(number, page)| {
        page.items.iter().find_map(|item| match &item.mark {
            Mark::Picture(picture) => Some((number + 1, picture.clone())),
            _ => None,
        })
    })?;
    let base = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
    std::fs::write(base.with_extension("pdf"), build(content).unwrap()).unwrap();
    let number = page.to_string();
    let run = Command::new("pdftoppm")
        .args(["-r", "72", "-png", "-singlefile", "-f", &number, "-l", &number])
        .args([base.with_extension("pdf"), base.clone()])
        .status();
    if run.is_err() {
        println!("skipped: pdftoppm is not installed");
        return None;
    }
    let drawn = image::open(base.with_extension("png")).unwrap().to_rgb8();
    let at = |kx: f64, ky: f64| {
        let pixel = |mm: f64| (mm / 25.4 * 72.0) as u32;
        drawn.get_pixel(pixel(picture.x + picture.width * kx), pixel(picture.y + picture.height * ky)).0
    };
    Some([at(0.25, 0.25), at(0.75, 0.25), at(0.25, 0.75), at(0.75, 0.75)])
}

#[test]
fn a_photo_stands_upright_however_the_camera_was_held() {
    for orientation in 1..=8 {
        let content = with_copy(stored(orientation), orientation);
        let Some(drawn) = corners(&format!("held-{orientation}"), &content) else { return };
        for (corner, wanted) in drawn.iter().zip([RED, BLUE, YELLOW, BLACK]) {
            let near = corner.iter().zip(wanted).all(|(a, b)| a.abs_diff(b) < 25);
            assert!(near, "orientation {orientation}: {drawn:?}");
        }
    }
}

#[test]
fn a_picture_that_cannot_be_shown_leaves_a_frame_with_the_reason() {
    let whole = stored(1);
    let mut tampered = with_copy(whole.clone(), 1);
    let Known::Known(copy) = &mut tampered.photos[0].copy else { panic!("it has a copy") };
    copy.jpeg[200] ^= 1;
    for (content, reason) in [
        (with_copy(Vec::new(), 1), "not at hand"),
        (with_copy(b"GIF89a".to_vec(), 1), "not a JPEG file"),
        (with_copy(whole[..whole.len() - 40].to_vec(), 1), "cut off"),
        (tampered, "its hash differs"),
    ] {
        let document = layout::lay_out(&content, &Fonts::bundled().unwrap()).unwrap();
        let text: String = document
            .pages
            .iter()
            .flat_map(|page| &page.items)
            .filter_map(|item| match &item.mark {
                Mark::Text(text) => Some(format!("{} ", text.text.replace('\u{a0}', " "))),
                _ => None,
            })
            .collect();
        assert!(text.contains("No picture:") && text.contains(reason), "{reason}");
        build(&content).unwrap();
    }
}
