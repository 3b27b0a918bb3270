//! Photos: original bytes in files named by their SHA-256, never re-encoded.
//!
//! A photo is on the disk before the journal names it, so a power cut can leave a file that nothing names, but never
//! a name without its file.

use std::fs::{self, File, OpenOptions};
use std::io::{self, Write};
use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicU64, Ordering};

use serde::Serialize;

use crate::journal::Hash;

/// A photo that is safely on the disk.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Kept {
    pub sha256: Hash,
    pub bytes: u64,
    pub media_type: &'static str,
}

/// A failure to keep or read a photo: what failed, what is safe, what to do.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum Fault {
    #[error("This file is not a photo (JPEG, PNG, WebP, HEIC or AVIF). It was not kept. Take or choose a photo.")]
    NotAPhoto,
    #[error(
        "The disk is full. The photo was not kept; what was recorded before is safe. Free some space, then take it again."
    )]
    DiskFull,
    #[error(
        "Photo {sha256} is not in this folder. The journal is safe. Take in the bundle that carries it, or restore a backup."
    )]
    Missing { sha256: Hash },
    #[error(
        "Photo {sha256} was changed on the disk after it was kept. It was left as it is. Take in the bundle that carries it, or restore a backup."
    )]
    Changed { sha256: Hash },
    #[error(
        "The photo could not be read or written ({what}). What was recorded before is safe. Check the disk, then try again."
    )]
    Io { what: String },
}

impl Fault {
    /// Returns the stable name of the kind of fault, for looking up a sentence.
    pub const fn code(&self) -> &'static str {
        match self {
            Self::NotAPhoto => "not_a_photo",
            Self::DiskFull => "disk_full",
            Self::Missing { .. } => "photo_missing",
            Self::Changed { .. } => "photo_changed",
            Self::Io { .. } => "io",
        }
    }
}

/// Returns the media type that the first bytes announce, or `None` if they are not of a photo.
pub fn media_type(bytes: &[u8]) -> Option<&'static str> {
    Format::of(bytes).map(Format::media_type)
}

/// Keeps a photo below the data folder `dir` as `photos/ab/abcdef….jpg` and returns when it is on the disk.
///
/// The same photo again is fine. A file of that name whose bytes have changed is replaced by these.
///
/// Errors: `NotAPhoto` by the first bytes; `DiskFull`, `Io`: then nothing stands under the photo's name.
pub fn keep(dir: &Path, bytes: &[u8]) -> Result<Kept, Fault> {
    let format = Format::of(bytes).ok_or(Fault::NotAPhoto)?;
    let kept = Kept { sha256: Hash::of(bytes), bytes: bytes.len() as u64, media_type: format.media_type() };
    let path = path(dir, kept.sha256, format);
    let folder = dir.join("photos").join(first_two(kept.sha256));
    if !fs::read(&path).is_ok_and(|found| found == bytes) {
        fs::create_dir_all(&folder)?;
        write_whole(&path, bytes)?;
    }
    for folder in [&folder, &dir.join("photos"), dir] {
        sync_folder(folder)?;
    }
    Ok(kept)
}

/// Returns the bytes of a kept photo, checked against their hash.
///
/// Errors: `Missing`, `Changed`, `Io`.
pub fn read(dir: &Path, sha256: Hash) -> Result<Vec<u8>, Fault> {
    for format in Format::ALL {
        match fs::read(path(dir, sha256, format)) {
            Ok(bytes) if Hash::of(&bytes) == sha256 => return Ok(bytes),
            Ok(_) => return Err(Fault::Changed { sha256 }),
            Err(error) if error.kind() == io::ErrorKind::NotFound => {}
            Err(error) => return Err(error.into()),
        }
    }
    Err(Fault::Missing { sha256 })
}

/// The kinds of photo that phones and cameras make.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Format {
    Jpeg,
    Png,
    Webp,
    Heic,
    Avif,
}

impl Format {
    const ALL: [Self; 5] = [Self::Jpeg, Self::Png, Self::Webp, Self::Heic, Self::Avif];

    /// Returns the format that the first bytes announce.
    ///
    /// Source: JPEG: ITU-T T.81, B.1.1.3. PNG: ISO/IEC 15948, 5.2. WebP: RFC 9649, 2.4. HEIC and AVIF: the `ftyp` box
    /// of ISO/IEC 14496-12, 4.3, with the brands of ISO/IEC 23008-12 and of the AV1 Image File Format, 6.
    fn of(bytes: &[u8]) -> Option<Self> {
        match bytes {
            [0xff, 0xd8, 0xff, ..] => Some(Self::Jpeg),
            [0x89, b'P', b'N', b'G', b'\r', b'\n', 0x1a, b'\n', ..] => Some(Self::Png),
            [b'R', b'I', b'F', b'F', _, _, _, _, b'W', b'E', b'B', b'P', ..] => Some(Self::Webp),
            [a, b, c, d, b'f', b't', b'y', b'p', ..] => Self::of_brands(bytes, u32::from_be_bytes([*a, *b, *c, *d])),
            _ => None,
        }
    }

    /// Looks at the major brand and those it is compatible with, in a box of `length` bytes.
    fn of_brands(bytes: &[u8], length: u32) -> Option<Self> {
        let content = bytes.get(8..usize::try_from(length).ok()?)?;
        let (brands, _) = content.as_chunks::<4>();
        // The second word is the version of the major brand.
        let mut brands = brands.iter().enumerate().filter(|(place, _)| *place != 1);
        brands.find_map(|(_, brand)| match brand {
            b"heic" | b"heix" | b"heim" | b"heis" => Some(Self::Heic),
            b"avif" => Some(Self::Avif),
            _ => None,
        })
    }

    const fn media_type(self) -> &'static str {
        match self {
            Self::Jpeg => "image/jpeg",
            Self::Png => "image/png",
            Self::Webp => "image/webp",
            Self::Heic => "image/heic",
            Self::Avif => "image/avif",
        }
    }

    const fn ending(self) -> &'static str {
        match self {
            Self::Jpeg => "jpg",
            Self::Png => "png",
            Self::Webp => "webp",
            Self::Heic => "heic",
            Self::Avif => "avif",
        }
    }
}

fn path(dir: &Path, sha256: Hash, format: Format) -> PathBuf {
    dir.join("photos").join(first_two(sha256)).join(format!("{sha256}.{}", format.ending()))
}

/// Spreads the files over 256 folders, so that none grows too long to list.
fn first_two(sha256: Hash) -> String {
    format!("{:02x}", sha256.as_bytes()[0])
}

/// Writes beside `path` and renames, so that the name only ever stands for the whole photo.
fn write_whole(path: &Path, bytes: &[u8]) -> Result<(), Fault> {
    static COUNT: AtomicU64 = AtomicU64::new(0);
    let number = COUNT.fetch_add(1, Ordering::Relaxed);
    let part = path.with_extension(format!("{}-{number}.part", std::process::id()));
    let written = write_and_sync(&part, bytes).and_then(|()| fs::rename(&part, path));
    if written.is_err() {
        // The first failure is the one to tell; what is left under the other name does no harm.
        let _ = fs::remove_file(&part);
    }
    Ok(written?)
}

fn write_and_sync(path: &Path, bytes: &[u8]) -> io::Result<()> {
    let mut file = OpenOptions::new().write(true).create(true).truncate(true).open(path)?;
    file.write_all(bytes)?;
    file.sync_all()
}

/// Makes a new name in a folder survive a power cut; only Unix needs and allows it.
fn sync_folder(folder: &Path) -> io::Result<()> {
    if cfg!(unix) { File::open(folder)?.sync_all() } else { Ok(()) }
}

impl From<io::Error> for Fault {
    fn from(error: io::Error) -> Self {
        match error.kind() {
            io::ErrorKind::StorageFull | io::ErrorKind::QuotaExceeded => Self::DiskFull,
            _ => Self::Io { what: error.to_string() },
        }
    }
}

#[cfg(test)]
mod tests {
    use std::io::Cursor;

    use image::{ImageFormat, RgbImage};
    use proptest::prelude::*;

    use super::*;

    fn photo(format: ImageFormat) -> Vec<u8> {
        let mut bytes = Cursor::new(Vec::new());
        RgbImage::from_fn(8, 8, |x, y| image::Rgb([x as u8 * 30, y as u8 * 30, 90]))
            .write_to(&mut bytes, format)
            .unwrap();
        bytes.into_inner()
    }

    /// The start of a file as the phone's encoder writes it, after ISO/IEC 14496-12, 4.3.
    fn boxed(brands: &[&[u8; 4]]) -> Vec<u8> {
        let mut bytes = (brands.len() as u32 * 4 + 12).to_be_bytes().to_vec();
        bytes.extend(b"ftyp");
        bytes.extend(brands[0]);
        bytes.extend([0; 4]);
        brands[1..].iter().for_each(|brand| bytes.extend(*brand));
        bytes.extend(b"\0\0\0\x08mdat");
        bytes
    }

    fn files(dir: &Path) -> Vec<String> {
        let mut names = Vec::new();
        for folder in fs::read_dir(dir.join("photos")).unwrap() {
            for file in fs::read_dir(folder.unwrap().path()).unwrap() {
                names.push(file.unwrap().path().strip_prefix(dir).unwrap().display().to_string());
            }
        }
        names.sort();
        names
    }

    /// Vectors: an own PNG of one black pixel (PNG, ISO/IEC 15948), its name computed with GNU `sha256sum`.
    #[test]
    fn a_photo_is_named_by_its_hash() {
        let dir = tempfile::tempdir().unwrap();
        let bytes =
            b"\x89PNG\x0d\x0a\x1a\x0a\x00\x00\x00\x0dIHDR\x00\x00\x00\x01\x00\x00\x00\x01\x08\x00\x00\x00\x00:~\x9bU\
            \x00\x00\x00\x0aIDATx\x9cc`\x00\x00\x00\x02\x00\x01H\xaf\xa4q\x00\x00\x00\x00IEND\xaeB`\x82";
        let kept = keep(dir.path(), bytes).unwrap();
        let hex = "eaa4a94ea300e0d2c775968cbe42f0b5b51ceafdeb73d64e9efddf6d4e880865";
        assert_eq!((kept.sha256.to_string().as_str(), kept.bytes, kept.media_type), (hex, 67, "image/png"));
        assert_eq!(files(dir.path()), [format!("photos/{}/{hex}.png", &hex[..2])]);
    }

    #[test]
    fn the_very_bytes_come_back() {
        let dir = tempfile::tempdir().unwrap();
        let formats = [(ImageFormat::Jpeg, "image/jpeg"), (ImageFormat::Png, "image/png")];
        for (format, media_type) in formats {
            let bytes = photo(format);
            let kept = keep(dir.path(), &bytes).unwrap();
            assert_eq!(kept.media_type, media_type);
            assert_eq!(read(dir.path(), kept.sha256), Ok(bytes));
        }
    }

    #[test]
    fn the_formats_of_phones_are_known_by_their_first_bytes() {
        let webp = b"RIFF\x24\0\0\0WEBPVP8 ".to_vec();
        let cases = [
            (boxed(&[b"heic", b"mif1", b"heic"]), "image/heic"),
            (boxed(&[b"mif1", b"mif1", b"heic"]), "image/heic"),
            (boxed(&[b"avif", b"mif1", b"miaf"]), "image/avif"),
            (webp, "image/webp"),
        ];
        let dir = tempfile::tempdir().unwrap();
        for (bytes, media_type) in cases {
            let kept = keep(dir.path(), &bytes).unwrap();
            assert_eq!(kept.media_type, media_type);
            assert_eq!(read(dir.path(), kept.sha256), Ok(bytes));
        }
    }

    #[test]
    fn what_is_not_a_photo_is_refused() {
        let dir = tempfile::tempdir().unwrap();
        let long_box = b"\xff\xff\xff\xffftypheic".to_vec();
        for bytes in [vec![], b"%PDF-1.7".to_vec(), b"GIF89a".to_vec(), boxed(&[b"isom", b"mp42"]), long_box] {
            assert_eq!(keep(dir.path(), &bytes), Err(Fault::NotAPhoto), "{bytes:?}");
        }
        assert!(!dir.path().join("photos").exists());
    }

    #[test]
    fn the_same_photo_again_is_one_file() {
        let dir = tempfile::tempdir().unwrap();
        let bytes = photo(ImageFormat::Jpeg);
        assert_eq!(keep(dir.path(), &bytes), keep(dir.path(), &bytes));
        assert_eq!(files(dir.path()).len(), 1, "and no part of a file is left");
    }

    #[test]
    fn a_changed_or_missing_file_is_said() {
        let dir = tempfile::tempdir().unwrap();
        let bytes = photo(ImageFormat::Jpeg);
        let sha256 = keep(dir.path(), &bytes).unwrap().sha256;
        let path = path(dir.path(), sha256, Format::Jpeg);
        fs::write(&path, &bytes[1..]).unwrap();
        assert_eq!(read(dir.path(), sha256), Err(Fault::Changed { sha256 }));
        keep(dir.path(), &bytes).unwrap();
        assert_eq!(read(dir.path(), sha256), Ok(bytes), "the original replaces what was changed");
        fs::remove_file(&path).unwrap();
        assert_eq!(read(dir.path(), sha256), Err(Fault::Missing { sha256 }));
    }

    #[test]
    fn a_place_that_cannot_be_written_is_said() {
        let dir = tempfile::tempdir().unwrap();
        fs::write(dir.path().join("photos"), "a file in the way").unwrap();
        assert_eq!(keep(dir.path(), &photo(ImageFormat::Png)).unwrap_err().code(), "io");
    }

    proptest! {
        #[test]
        fn no_bytes_make_the_check_of_the_format_fail(bytes in prop::collection::vec(any::<u8>(), 0..40)) {
            let mut boxed = bytes.clone();
            boxed.splice(4.min(bytes.len())..8.min(bytes.len()), *b"ftyp");
            let _ = (Format::of(&bytes), Format::of(&boxed));
        }
    }
}
