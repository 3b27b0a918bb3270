//! The header of a JPEG file: size, components and EXIF orientation. The picture itself is never decoded here.

use crate::words::tell;

/// What a page must know of a JPEG file.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Header {
    /// As stored, before any turning.
    pub width: u16,
    /// As stored, before any turning.
    pub height: u16,
    /// 1 grey, 3 colour.
    pub components: u8,
}

/// Why a JPEG file can't be shown.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum Fault {
    #[error("{}", tell!("cert-jpeg-not_jpeg"))]
    NotJpeg,
    #[error("{}", tell!("cert-jpeg-cut_off"))]
    Short,
    #[error("{}", tell!("cert-jpeg-no_size"))]
    NoSize,
    #[error("{}", tell!("cert-jpeg-colour"))]
    Colour,
    #[error("{}", tell!("cert-jpeg-coding"))]
    Coding,
}

/// Returns the size and the components from the start-of-frame segment.
///
/// Errors: `NotJpeg` without the start marker, `Short` if it ends in the middle of a segment or lacks the end marker,
/// `NoSize` without a frame or with a side of 0, `Colour` unless grey or three components, `Coding` for anything but
/// baseline, extended or progressive Huffman coding with 8 bits, which is what PDF's DCTDecode takes.
/// Source: ITU-T T.81, B.1.1.3 and B.2.2; ISO 32000-1, 7.4.8.
pub fn header(bytes: &[u8]) -> Result<Header, Fault> {
    let mut segments = Segments::of(bytes)?;
    while let Some((marker, data)) = segments.next_segment()? {
        let frame = matches!(marker, 0xC0..=0xCF) && !matches!(marker, 0xC4 | 0xC8 | 0xCC);
        if frame {
            let header = frame_header(marker, data)?;
            return if bytes.ends_with(&[0xFF, 0xD9]) || ends_padded(bytes) { Ok(header) } else { Err(Fault::Short) };
        }
    }
    Err(Fault::NoSize)
}

/// Returns the EXIF orientation, 1 to 8; 1 where there is none or it can't be read.
///
/// Source: EXIF 2.32 (CIPA DC-008), tag 0x0112 of the first directory.
pub fn orientation(bytes: &[u8]) -> u8 {
    let Ok(mut segments) = Segments::of(bytes) else { return 1 };
    while let Ok(Some((marker, data))) = segments.next_segment() {
        if marker == 0xE1
            && let Some(tiff) = data.strip_prefix(b"Exif\0\0")
        {
            return tiff_orientation(tiff).filter(|turn| (1..=8).contains(turn)).unwrap_or(1) as u8;
        }
    }
    1
}

fn frame_header(marker: u8, data: &[u8]) -> Result<Header, Fault> {
    let &[bits, h1, h0, w1, w0, components, ..] = data else { return Err(Fault::Short) };
    if !matches!(marker, 0xC0..=0xC2) || bits != 8 {
        return Err(Fault::Coding);
    }
    let header = Header { width: u16::from_be_bytes([w1, w0]), height: u16::from_be_bytes([h1, h0]), components };
    match header {
        Header { width: 0, .. } | Header { height: 0, .. } => Err(Fault::NoSize),
        Header { components: 1 | 3, .. } => Ok(header),
        _ => Err(Fault::Colour),
    }
}

/// Some cameras pad the file after its end marker.
fn ends_padded(bytes: &[u8]) -> bool {
    let tail = bytes.iter().rposition(|byte| *byte != 0).map_or(0, |last| last + 1);
    bytes[..tail].ends_with(&[0xFF, 0xD9])
}

/// The segments before the compressed data.
struct Segments<'a> {
    rest: &'a [u8],
}

impl<'a> Segments<'a> {
    fn of(bytes: &'a [u8]) -> Result<Self, Fault> {
        bytes.strip_prefix(&[0xFF, 0xD8]).map(|rest| Self { rest }).ok_or(Fault::NotJpeg)
    }

    /// Returns marker and data of the next segment, or `None` where the compressed data or the end comes.
    fn next_segment(&mut self) -> Result<Option<(u8, &'a [u8])>, Fault> {
        let (&0xFF, rest) = self.rest.split_first().ok_or(Fault::Short)? else { return Err(Fault::NotJpeg) };
        let fill = rest.iter().take_while(|byte| **byte == 0xFF).count();
        let (&marker, rest) = rest[fill..].split_first().ok_or(Fault::Short)?;
        if matches!(marker, 0xD9 | 0xDA) {
            return Ok(None);
        }
        let length = rest.first_chunk().map(|bytes| usize::from(u16::from_be_bytes(*bytes))).ok_or(Fault::Short)?;
        let data = rest.get(2..length).ok_or(Fault::Short)?;
        self.rest = &rest[length..];
        Ok(Some((marker, data)))
    }
}

fn tiff_orientation(tiff: &[u8]) -> Option<u16> {
    let big = match tiff.get(..2)? {
        b"MM" => true,
        b"II" => false,
        _ => return None,
    };
    let u16_at = |at: usize| {
        let bytes: [u8; 2] = tiff.get(at..at.checked_add(2)?)?.try_into().ok()?;
        Some(if big { u16::from_be_bytes(bytes) } else { u16::from_le_bytes(bytes) })
    };
    let u32_at = |at: usize| {
        let bytes: [u8; 4] = tiff.get(at..at.checked_add(4)?)?.try_into().ok()?;
        Some(if big { u32::from_be_bytes(bytes) } else { u32::from_le_bytes(bytes) })
    };
    let directory = u32_at(4)? as usize;
    let entries = u16_at(directory)?;
    (0..usize::from(entries))
        .filter_map(|entry| directory.checked_add(2 + 12 * entry))
        .find(|&at| u16_at(at) == Some(0x0112))
        .and_then(|at| u16_at(at.checked_add(8)?))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A file of a frame segment and an empty scan.
    fn file(marker: u8, bits: u8, components: u8) -> Vec<u8> {
        let frame = [bits, 0, 30, 0, 40, components];
        let mut bytes = vec![0xFF, 0xD8, 0xFF, 0xFE, 0, 4, 0xFF, 0xD8];
        bytes.extend([0xFF, 0xFF, marker, 0, 8]);
        bytes.extend(frame);
        bytes.extend([0xFF, 0xDA, 0, 2, 0xFF, 0xD9]);
        bytes
    }

    fn exif(order: &[u8; 2], orientation: u16) -> Vec<u8> {
        let big = order == b"MM";
        let u16_of = |value: u16| if big { value.to_be_bytes() } else { value.to_le_bytes() };
        let u32_of = |value: u32| if big { value.to_be_bytes() } else { value.to_le_bytes() };
        let mut tiff = [order.as_slice(), &u16_of(42), &u32_of(8), &u16_of(2)].concat();
        tiff.extend([u16_of(0x010F), u16_of(2), [0, 0], [0, 4], [0, 0], [0, 0]].concat());
        tiff.extend([&u16_of(0x0112)[..], &u16_of(3), &u32_of(1), &u16_of(orientation), &[0, 0]].concat());
        let data = [b"Exif\0\0".as_slice(), &tiff].concat();
        let length = (data.len() as u16 + 2).to_be_bytes();
        [&[0xFF, 0xD8, 0xFF, 0xE1], length.as_slice(), &data, &[0xFF, 0xD9]].concat()
    }

    #[test]
    fn size_and_components_come_from_the_frame() {
        assert_eq!(header(&file(0xC0, 8, 3)), Ok(Header { width: 40, height: 30, components: 3 }));
        assert_eq!(header(&file(0xC2, 8, 1)), Ok(Header { width: 40, height: 30, components: 1 }));
    }

    #[test]
    fn what_a_page_cannot_show_is_refused() {
        assert_eq!(header(&file(0xC0, 8, 4)), Err(Fault::Colour));
        assert_eq!(header(&file(0xC9, 8, 3)), Err(Fault::Coding));
        assert_eq!(header(&file(0xC1, 12, 3)), Err(Fault::Coding));
        assert_eq!(header(b"\x89PNG"), Err(Fault::NotJpeg));
        assert_eq!(header(&[0xFF, 0xD8, 0xFF, 0xD9]), Err(Fault::NoSize));
    }

    #[test]
    fn a_file_cut_anywhere_is_refused() {
        let whole = file(0xC0, 8, 3);
        for end in 0..whole.len() {
            assert!(header(&whole[..end]).is_err(), "cut at {end}");
        }
    }

    #[test]
    fn zeros_behind_the_end_do_no_harm() {
        let padded = [file(0xC0, 8, 3), vec![0; 16]].concat();
        assert!(header(&padded).is_ok());
    }

    #[test]
    fn the_orientation_is_read_in_either_byte_order() {
        for turn in 1..=8 {
            assert_eq!(orientation(&exif(b"MM", turn)), turn as u8);
            assert_eq!(orientation(&exif(b"II", turn)), turn as u8);
        }
    }

    #[test]
    fn a_strange_or_missing_orientation_is_upright() {
        assert_eq!([orientation(&exif(b"II", 9)), orientation(&exif(b"MM", 0)), orientation(b"x")], [1, 1, 1]);
        let whole = exif(b"MM", 6);
        assert!((0..whole.len()).all(|end| matches!(orientation(&whole[..end]), 1 | 6)));
    }
}
