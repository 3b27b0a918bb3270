//! Drawn pictures in the place of photos: a view along a pipe, grey, with the patch as a ring. Nothing in them is real.

use image::codecs::jpeg::JpegEncoder;
use image::{GrayImage, ImageResult, Luma};

const WIDE: u32 = 1200;
const HIGH: u32 = 900;

/// Returns a JPEG for one of the asked photos. `seed` makes two of a kind differ.
pub fn picture(key: &str, seed: u32) -> ImageResult<Vec<u8>> {
    let patched = matches!(key, "upstream_edge" | "downstream_edge" | "mark" | "lateral");
    let cracked = key == "before";
    let flat = matches!(key, "cover" | "mat" | "gauge");
    let picture = GrayImage::from_fn(WIDE, HIGH, |x, y| {
        let grain = x.wrapping_mul(31).wrapping_add(y.wrapping_mul(17)).wrapping_add(seed.wrapping_mul(97)) % 7;
        Luma([if flat { flat_view(key, x, y) } else { pipe_view(x, y, patched, cracked) }.saturating_add(grain as u8)])
    });
    let mut jpeg = vec![];
    JpegEncoder::new_with_quality(&mut jpeg, 80).encode_image(&picture)?;
    Ok(jpeg)
}

/// Rings that grow darker toward the far end; light where a patch lies.
fn pipe_view(x: u32, y: u32, patched: bool, cracked: bool) -> u8 {
    let (across, down) = (f64::from(x) - f64::from(WIDE) / 2.0, f64::from(y) - f64::from(HIGH) / 2.0);
    let away = (across * across + down * down).sqrt();
    if away < 90.0 {
        return 12;
    }
    let wall = (60.0 + away * 0.22).min(205.0) as u8;
    let joint = (away as u32 % 160) < 5;
    let patch = patched && (210.0..330.0).contains(&away);
    let crack = cracked && (130.0..400.0).contains(&away) && down < 0.0 && (across + down * 0.12).abs() < 4.0;
    match (crack, patch, joint) {
        (true, _, _) => 18,
        (_, true, _) => 235,
        (_, _, true) => wall / 2,
        _ => wall,
    }
}

/// A disc for a cover or a gauge, a weave for a mat.
fn flat_view(key: &str, x: u32, y: u32) -> u8 {
    if key == "mat" {
        return if (x / 24 + y / 24).is_multiple_of(2) { 176 } else { 148 };
    }
    let (across, down) = (f64::from(x) - f64::from(WIDE) / 2.0, f64::from(y) - f64::from(HIGH) / 2.0);
    let away = (across * across + down * down).sqrt();
    let needle = key == "gauge" && across > 0.0 && (down + across * 0.5).abs() < 5.0 && away < 300.0;
    match away {
        _ if needle => 20,
        away if away < 330.0 => {
            if key == "gauge" {
                225
            } else {
                95
            }
        }
        away if away < 350.0 => 25,
        _ => 130,
    }
}
