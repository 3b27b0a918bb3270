//! What a photo says of itself: when and where it was taken.
//!
//! Phones often strip it, and anybody can write it, so it proves nothing; where it contradicts the record, somebody
//! should ask. Source: CIPA DC-008 (Exif 2.32), 4.6.5 and 4.6.6, read by the library kamadak-exif.

use std::io::Cursor;

use exif::{DateTime, Exif, In, Rational, Reader, Tag, Value};

/// What a photo says; absent where it says nothing, or nothing that can be read.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Said {
    pub taken: Option<Taken>,
    /// Latitude and longitude in degrees, north and east positive.
    pub place: Option<(f64, f64)>,
}

/// When a photo was taken, by the clock of the camera.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Taken {
    /// The local time as if it were UTC, in milliseconds since 1970.
    pub local_ms: i64,
    /// How far it is ahead of UTC in minutes, where the camera says so.
    pub offset_min: Option<i32>,
}

/// Returns what a photo says of itself. A broken one says nothing.
pub fn said(photo: &[u8]) -> Said {
    // The library that reads it is not ours: should it ever panic on a hostile file, the file says nothing.
    let read = || Reader::new().read_from_container(&mut Cursor::new(photo)).ok();
    let Some(exif) = std::panic::catch_unwind(read).ok().flatten() else { return Said::default() };
    Said { taken: taken(&exif), place: place(&exif) }
}

fn taken(exif: &Exif) -> Option<Taken> {
    let mut at = DateTime::from_ascii(text(exif, Tag::DateTimeOriginal)?).ok()?;
    if let Some(offset) = text(exif, Tag::OffsetTimeOriginal) {
        // Without an offset that can be read, the camera says none.
        let _ = at.parse_offset(offset);
    }
    let day = chrono::NaiveDate::from_ymd_opt(at.year.into(), at.month.into(), at.day.into())?;
    let local = day.and_hms_opt(at.hour.into(), at.minute.into(), at.second.into())?;
    Some(Taken { local_ms: local.and_utc().timestamp_millis(), offset_min: at.offset.map(i32::from) })
}

fn place(exif: &Exif) -> Option<(f64, f64)> {
    let one = |angle, side, negative: &[u8]| {
        let Value::Rational(parts) = &exif.get_field(angle, In::PRIMARY)?.value else { return None };
        let [degrees, minutes, seconds] = parts[..] else { return None };
        let degrees = number(degrees)? + number(minutes)? / 60.0 + number(seconds)? / 3600.0;
        Some(if text(exif, side)?.starts_with(negative) { -degrees } else { degrees })
    };
    let lat = one(Tag::GPSLatitude, Tag::GPSLatitudeRef, b"S")?;
    let lon = one(Tag::GPSLongitude, Tag::GPSLongitudeRef, b"W")?;
    // Cameras without a fix write nought and nought; that is no place.
    (lat.abs() <= 90.0 && lon.abs() <= 180.0 && (lat, lon) != (0.0, 0.0)).then_some((lat, lon))
}

fn number(part: Rational) -> Option<f64> {
    (part.denom != 0).then(|| part.to_f64())
}

fn text(exif: &Exif, tag: Tag) -> Option<&[u8]> {
    match &exif.get_field(tag, In::PRIMARY)?.value {
        Value::Ascii(lines) => lines.first().map(Vec::as_slice),
        _ => None,
    }
}

#[cfg(test)]
pub mod tests {
    use super::*;

    /// Returns a JPEG file that holds nothing but an APP1 segment with these entries, little-endian (Exif 2.32, 4.5).
    pub fn photo(date: &str, offset: Option<&str>, degrees: Option<[(u32, u8); 2]>) -> Vec<u8> {
        let mut heap = vec![];
        let mut entry = |tag: u16, kind: u16, count: u32, value: &[u8], base: u32| {
            let mut bytes = [tag.to_le_bytes(), kind.to_le_bytes()].concat();
            bytes.extend(count.to_le_bytes());
            if value.len() <= 4 {
                bytes.extend(value.iter().chain(&[0; 4]).take(4));
            } else {
                bytes.extend((base + heap.len() as u32).to_le_bytes());
                heap.extend(value);
            }
            bytes
        };
        // Header 8, first directory 2 + 2 × 12 + 4, Exif directory 2 + 2 × 12 + 4, GPS directory 2 + 4 × 12 + 4.
        let (exif, gps, base) = (38_u32, 68_u32, 122_u32);
        let text = |text: &str| [text.as_bytes(), &[0]].concat();
        let rational = |e5: u32| {
            let parts = [e5, 100_000, 0, 1, 0, 1];
            parts.into_iter().flat_map(u32::to_le_bytes).collect::<Vec<u8>>()
        };
        let first = [entry(0x8769, 4, 1, &exif.to_le_bytes(), base), entry(0x8825, 4, 1, &gps.to_le_bytes(), base)];
        let (date, offset) = (text(date), text(offset.unwrap_or("   :  ")));
        let times =
            [entry(0x9003, 2, date.len() as u32, &date, base), entry(0x9011, 2, offset.len() as u32, &offset, base)];
        let [(lat, north), (lon, east)] = degrees.unwrap_or_default();
        let places = [
            entry(1, 2, 2, &[north, 0], base),
            entry(2, 5, 3, &rational(lat), base),
            entry(3, 2, 2, &[east, 0], base),
            entry(4, 5, 3, &rational(lon), base),
        ];
        let directory =
            |entries: &[Vec<u8>]| [&(entries.len() as u16).to_le_bytes()[..], &entries.concat(), &[0; 4]].concat();
        let tiff =
            [b"II*\0\x08\0\0\0".to_vec(), directory(&first), directory(&times), directory(&places), heap].concat();
        let length = (2 + 6 + tiff.len() as u16).to_be_bytes();
        [&b"\xff\xd8\xff\xe1"[..], &length, b"Exif\0\0", &tiff, b"\xff\xd9"].concat()
    }

    /// 2026-10-14T11:55:02Z, by `date -u -d @1791978902`.
    #[test]
    fn time_and_place_are_read_as_the_camera_wrote_them() {
        let found = said(&photo("2026:10:14 13:55:02", Some("+02:00"), Some([(4_641_207, b'N'), (2_488_530, b'W')])));
        let taken = found.taken.unwrap();
        assert_eq!((taken.local_ms - 120 * 60_000, taken.offset_min), (1_791_978_902_000, Some(120)));
        assert_eq!(found.place, Some((46.41207, -24.8853)));
    }

    #[test]
    fn what_is_absent_is_absent() {
        let found = said(&photo("    :  :     :  :  ", None, None));
        assert_eq!(found, Said::default());
        assert_eq!(said(&photo("2026:10:14 13:55:02", None, None)).taken.unwrap().offset_min, None);
        for broken in [&b""[..], b"\xff\xd8\xff\xe1\xff\xffExif\0\0II*\0\xff\xff\xff\xff", b"a letter"] {
            assert_eq!(said(broken), Said::default());
        }
    }

    #[test]
    fn no_garbage_makes_it_panic() {
        let whole = photo("2026:10:14 13:55:02", Some("+02:00"), Some([(4_641_207, b'N'), (2_488_530, b'W')]));
        for at in 0..whole.len() {
            for byte in [0, 0x7f, 0xff] {
                let mut garbage = whole.clone();
                garbage[at] = byte;
                let _ = said(&garbage);
                let _ = said(&garbage[..at]);
            }
        }
    }
}
