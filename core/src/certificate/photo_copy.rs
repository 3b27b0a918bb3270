//! The reduced copy of a photo that the pages carry; the original stays in its file.

use super::content::PhotoCopy;
use super::jpeg;
use crate::words::tell;
use image::codecs::jpeg::JpegEncoder;
use image::imageops::FilterType;
use image::{DynamicImage, ImageDecoder, ImageReader, Limits};
use sha2::{Digest, Sha256};
use std::io::Cursor;

/// The longer side of a copy, in pixels.
pub const LONGEST: u32 = 1600;
/// The quality of the JPEG compression, of 100.
const QUALITY: u8 = 80;
/// The memory that decoding may take, in bytes: a picture of 100 million pixels.
const MEMORY: u64 = 400_000_000;

/// Why no copy could be made.
#[derive(Debug, thiserror::Error)]
pub enum Fault {
    #[error("{}", unreadable(.0))]
    Unreadable(image::ImageError),
    #[error("{}", unwritable(.0))]
    Unwritable(image::ImageError),
}

fn unreadable(why: &image::ImageError) -> String {
    tell!("cert-photo_copy-unreadable", why = why.to_string())
}

fn unwritable(why: &image::ImageError) -> String {
    tell!("cert-photo_copy-unwritable", why = why.to_string())
}

/// Returns a copy of a JPEG or PNG file with no side longer than [`LONGEST`]; a smaller picture keeps its size.
///
/// The copy is a JPEG without metadata: the place and the instant stand in the record, a camera's number nowhere. It
/// keeps the direction in which the original is stored, and says in `orientation` how to turn it.
/// Errors: `Unreadable` for anything but a sound picture, or one that takes too much memory.
pub fn reduced(original: &[u8]) -> Result<PhotoCopy, Fault> {
    let picture = decoded(original).map_err(Fault::Unreadable)?;
    let large = picture.width().max(picture.height()) > LONGEST;
    let picture = if large { picture.resize(LONGEST, LONGEST, FilterType::Triangle) } else { picture };
    let mut jpeg = Vec::new();
    let encoder = JpegEncoder::new_with_quality(&mut jpeg, QUALITY);
    let written = if picture.color().has_color() {
        picture.to_rgb8().write_with_encoder(encoder)
    } else {
        picture.to_luma8().write_with_encoder(encoder)
    };
    written.map_err(Fault::Unwritable)?;
    let sha256 = Sha256::digest(&jpeg).iter().map(|byte| format!("{byte:02x}")).collect();
    Ok(PhotoCopy { sha256, orientation: jpeg::orientation(original), jpeg })
}

fn decoded(original: &[u8]) -> Result<DynamicImage, image::ImageError> {
    let mut decoder = ImageReader::new(Cursor::new(original)).with_guessed_format()?.into_decoder()?;
    let mut limits = Limits::default();
    limits.max_alloc = Some(MEMORY);
    decoder.set_limits(limits)?;
    DynamicImage::from_decoder(decoder)
}

#[cfg(test)]
mod tests {
    use super::*;
    use image::{ImageFormat, RgbImage};

    fn png(width: u32, height: u32) -> Vec<u8> {
        let picture = RgbImage::from_fn(width, height, |x, y| image::Rgb([x as u8, y as u8, 120]));
        let mut bytes = Vec::new();
        picture.write_to(&mut Cursor::new(&mut bytes), ImageFormat::Png).unwrap();
        bytes
    }

    #[test]
    fn a_large_picture_is_reduced_in_proportion() {
        let copy = reduced(&png(2000, 1000)).unwrap();
        let header = jpeg::header(&copy.jpeg).unwrap();
        assert_eq!((header.width, header.height, header.components), (1600, 800, 3));
    }

    #[test]
    fn a_small_picture_keeps_its_size_and_the_copy_is_always_the_same() {
        let original = png(60, 40);
        let copy = reduced(&original).unwrap();
        assert_eq!(jpeg::header(&copy.jpeg).map(|header| (header.width, header.height)), Ok((60, 40)));
        assert_eq!(copy, reduced(&original).unwrap());
    }

    #[test]
    fn what_is_no_picture_is_refused() {
        assert!(matches!(reduced(b"not a picture"), Err(Fault::Unreadable(_))));
        let cut = &png(60, 40)[..200];
        assert!(matches!(reduced(cut), Err(Fault::Unreadable(_))));
    }
}
