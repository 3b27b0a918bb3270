//! Pictures decoded within bounds, the right way up: what the label reader looks at, and small copies for screens.

use std::io::Cursor;

use image::codecs::jpeg::JpegEncoder;
use image::imageops::FilterType;
use image::{DynamicImage, ImageDecoder, ImageReader, Limits, metadata::Orientation};

/// The memory that decoding may take, in bytes: a picture of 100 million pixels.
const MEMORY: u64 = 400_000_000;
/// The quality of the JPEG compression of a small copy, of 100.
const QUALITY: u8 = 80;

/// Why a picture can't be looked at.
#[derive(Debug, thiserror::Error)]
#[error("The picture can't be read ({0}). Take it again, as JPEG or PNG.")]
pub struct Unreadable(#[from] image::ImageError);

/// Returns the picture of a JPEG or PNG file, turned as the camera was held.
///
/// Errors: `Unreadable` for anything but a sound picture, or one that takes too much memory.
pub fn decoded(bytes: &[u8]) -> Result<DynamicImage, Unreadable> {
    let mut decoder =
        ImageReader::new(Cursor::new(bytes)).with_guessed_format().map_err(image::ImageError::from)?.into_decoder()?;
    let mut limits = Limits::default();
    limits.max_alloc = Some(MEMORY);
    decoder.set_limits(limits)?;
    // A camera that says nothing, or nonsense, was held upright.
    let orientation = decoder.orientation().unwrap_or(Orientation::NoTransforms);
    let mut picture = DynamicImage::from_decoder(decoder)?;
    picture.apply_orientation(orientation);
    Ok(picture)
}

/// Returns the picture with no side longer than `longest_px`; a smaller one keeps its size.
pub fn within(picture: &DynamicImage, longest_px: u32) -> DynamicImage {
    if picture.width().max(picture.height()) <= longest_px {
        return picture.clone();
    }
    picture.resize(longest_px, longest_px, FilterType::Triangle)
}

/// Returns a small copy for a screen, as JPEG without metadata. It is shown, never kept as evidence.
///
/// Errors: as [`decoded`].
pub fn small(bytes: &[u8], longest_px: u32) -> Result<Vec<u8>, Unreadable> {
    let picture = within(&decoded(bytes)?, longest_px.max(1)).to_rgb8();
    let mut jpeg = Vec::new();
    picture.write_with_encoder(JpegEncoder::new_with_quality(&mut jpeg, QUALITY))?;
    Ok(jpeg)
}

#[cfg(test)]
mod tests {
    use super::*;
    use image::{ImageFormat, RgbImage};

    fn png(width: u32, height: u32) -> Vec<u8> {
        let mut bytes = Vec::new();
        let picture = RgbImage::from_fn(width, height, |x, y| image::Rgb([x as u8, y as u8, 120]));
        picture.write_to(&mut Cursor::new(&mut bytes), ImageFormat::Png).unwrap();
        bytes
    }

    #[test]
    fn a_small_copy_keeps_the_proportions() {
        let copy = decoded(&small(&png(600, 300), 200).unwrap()).unwrap();
        assert_eq!((copy.width(), copy.height()), (200, 100));
    }

    #[test]
    fn a_picture_that_is_small_already_is_not_enlarged() {
        let copy = decoded(&small(&png(60, 30), 200).unwrap()).unwrap();
        assert_eq!((copy.width(), copy.height()), (60, 30));
    }

    #[test]
    fn what_is_no_picture_is_said() {
        assert!(decoded(b"not a picture").is_err());
        assert!(small(&png(60, 30)[..100], 200).is_err());
    }
}
