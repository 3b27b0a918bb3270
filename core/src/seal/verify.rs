//! A signed PDF, checked: who signed what, and whether anything was changed or added since.
//!
//! A signature covers every byte of the file up to its own update, but for the signature itself. So the last one must
//! reach the end of the file; and between two, an update may fill a field and add what that field shows, and nothing
//! else. Anything more could repaint a page under a signature that still counts as valid.
//!
//! Source: ISO 32000-1, 12.8; ETSI EN 319 142-1; the attacks by later updates ("shadow" and "incremental saving").

mod elements;
mod parts;
mod text;
mod updates;

use std::collections::BTreeMap;

use lopdf::{Document, LoadOptions, Object, ObjectId};
use sha2::{Digest, Sha256};

use super::sign::fields;
use super::{Certificate, cms};
use parts::Update;
use updates::NO_BASE;

/// A larger file is not opened. Sixty photos as a certificate carries them take half of it.
pub const MOST_BYTES: usize = 32 << 20;
/// The most that the parts of a file may unfold to, together.
const MOST_UNFOLDED: usize = 64 << 20;
/// A file with more signatures is no certificate; each takes a look at the whole file.
const MOST_SIGNATURES: usize = 8;
/// More pages and files inside are not read.
const MOST_PAGES: usize = 200;
const MOST_ATTACHMENTS: usize = 4;
/// A certificate has fewer headings.
const MOST_HEADINGS: usize = 32;

/// What a PDF shows when it is checked.
#[derive(Debug, Default)]
pub struct Checked {
    /// What is wrong, each as a sentence; empty if nothing is.
    pub flaws: Vec<String>,
    /// In the order in which they were made.
    pub signatures: Vec<Signature>,
    /// What each page says, in the order of the writing, without spaces and breaks.
    pub pages: Vec<String>,
    /// The pictures of the photos, as JPEG files, by their place in the content.
    pub pictures: BTreeMap<usize, Vec<u8>>,
    /// The titles of the outline, each with the page that it leads to, from 1.
    pub headings: BTreeMap<String, usize>,
    /// What the file says of the program that made it.
    pub made_by: String,
    /// The files inside: name and bytes.
    pub attachments: Vec<(String, Vec<u8>)>,
}

/// One signature of a PDF.
#[derive(Debug)]
pub struct Signature {
    /// The field that it fills.
    pub field: String,
    /// Nothing that it covers was changed, and the key of its certificate made it.
    pub intact: bool,
    /// `None` if it could not be read.
    pub certificate: Option<Certificate>,
    /// Others that came with it.
    pub others: Vec<Certificate>,
    /// When the signer's device says that it was made, in milliseconds since 1970 UTC, and its offset in minutes.
    pub at: Option<(i64, i32)>,
    /// What the name was put to.
    pub statement: String,
    /// Where the update ends that it covers.
    end: usize,
}

/// Checks a PDF.
///
/// Errors: a sentence if it is not a PDF that can be read.
pub fn verify(pdf: &[u8]) -> Result<Checked, String> {
    if !pdf.starts_with(b"%PDF-") {
        return Err("This is not a PDF.".into());
    }
    if pdf.len() > MOST_BYTES {
        let most = MOST_BYTES >> 20;
        return Err(format!(
            "This file is larger than any certificate ({most} MB at most), and was not read. Ask for the certificate as it was issued."
        ));
    }
    let (file, updates) = match parts::read(pdf) {
        Some(parts) => (parts.file, Some(parts.updates)),
        None => (load(pdf)?, None),
    };
    let mut checked = Checked {
        pages: text::pages(&file),
        pictures: text::pictures(&file),
        headings: headings(&file),
        made_by: made_by(&file).unwrap_or_default(),
        attachments: attachments(&file),
        ..Checked::default()
    };
    checked.flaws.extend(updates::active_content(&file));
    signatures(pdf, &file, updates, &mut checked);
    Ok(checked)
}

/// Ends whatever can be unfolded (ISO 32000-1, 7.3.8).
const STREAM_ENDS: &[u8] = b"endstream";

/// The library that reads PDF is not ours: should it ever panic on a hostile file, that file is damaged, no more.
fn load(pdf: &[u8]) -> Result<Document, String> {
    let damaged = |why: String| format!("This PDF is damaged and can't be read: {why}.");
    let parts = memchr::memmem::find_iter(pdf, STREAM_ENDS).count();
    let most = MOST_UNFOLDED / parts.max(1);
    let load = || Document::load_mem_with_options(pdf, LoadOptions::with_max_decompressed_size(most));
    match std::panic::catch_unwind(load) {
        Ok(Ok(file)) if file.catalog().is_ok() => Ok(file),
        Ok(Ok(_)) => Err(damaged("it has no catalog".into())),
        Ok(Err(why)) => Err(damaged(why.to_string())),
        Err(_) => Err(damaged("its parts contradict each other".into())),
    }
}

fn signatures(pdf: &[u8], file: &Document, updates: Option<Vec<Update>>, checked: &mut Checked) {
    let mut found = vec![];
    let fields = fields(file).len();
    if fields > MOST_SIGNATURES {
        checked.flaws.push(format!("It has {fields} fields for signatures; {MOST_SIGNATURES} are allowed."));
        return;
    }
    let mut hashes = Hashes::of(pdf);
    for (name, signed) in filled(file) {
        match signed.and_then(|signed| one(&mut hashes, &name, signed)) {
            Ok((signature, flaw)) => {
                checked.flaws.extend(flaw.map(|flaw| format!("The signature “{name}” does not hold: {flaw}.")));
                found.push(signature);
            }
            Err(why) => checked.flaws.push(format!("The signature “{name}” does not hold: {why}.")),
        }
    }
    found.sort_by_key(|signature| signature.end);
    let ends: Vec<usize> = found.iter().map(|signature| signature.end).collect();
    if let Some(last) = ends.last() {
        let more = pdf.len().saturating_sub(*last);
        if more > 0 {
            checked.flaws.push(format!("{more} bytes were added after the last signature."));
        }
        let updates = updates.or_else(|| parts::read(&pdf[..*last]).map(|parts| parts.updates));
        checked.flaws.extend(updates.map_or(vec![NO_BASE.into()], |updates| updates::flaws(&updates, &ends)));
    }
    checked.signatures = found;
}

/// Returns the values of the fields that are filled, in the order of what their signatures cover.
fn filled(file: &Document) -> Vec<(String, Result<&lopdf::Dictionary, String>)> {
    let value = |id| file.get_dictionary(id).ok()?.get(b"V").ok();
    let signed = |value| file.dereference(value).ok().and_then(|(_, signed)| signed.as_dict().ok());
    let values = fields(file).into_iter().filter_map(|(name, id)| Some((name, value(id)?)));
    let mut found: Vec<_> =
        values.map(|(name, value)| (name, signed(value).ok_or("its value is no signature".to_owned()))).collect();
    found.sort_by_key(|(_, signed)| {
        let range = signed.as_ref().ok()?.get(b"ByteRange").ok()?.as_array().ok()?;
        range.get(1)?.as_i64().ok()
    });
    found
}

/// The hashes of what signatures cover. One covers all that the one before it covers, so the file is read once.
struct Hashes<'a> {
    pdf: &'a [u8],
    hashed: usize,
    hasher: Sha256,
}

impl<'a> Hashes<'a> {
    fn of(pdf: &'a [u8]) -> Self {
        Self { pdf, hashed: 0, hasher: Sha256::new() }
    }

    /// Returns the SHA-256 of the bytes up to `open`, and from `close` to `end`.
    fn around(&mut self, open: usize, close: usize, end: usize) -> [u8; 32] {
        if open < self.hashed {
            *self = Self::of(self.pdf);
        }
        self.hasher.update(&self.pdf[self.hashed..open]);
        self.hashed = open;
        self.hasher.clone().chain_update(&self.pdf[close..end]).finalize().into()
    }
}

/// Returns a signature and what is wrong with it.
///
/// Errors: what keeps it from being read at all.
fn one(hashes: &mut Hashes, name: &str, signed: &lopdf::Dictionary) -> Result<(Signature, Option<String>), String> {
    let word = |key: &[u8]| signed.get(key).and_then(Object::as_name).unwrap_or_default();
    if word(b"SubFilter") != b"ETSI.CAdES.detached" {
        return Err("it is of another kind than PAdES".into());
    }
    let pdf = hashes.pdf;
    let (open, close, end) = range(pdf, signed).ok_or("the bytes that it covers are not the file around it")?;
    let der = unpacked(pdf, open, close, signed)?;
    let read = cms::read(&der).map_err(|why| why.to_string())?;
    let hash = hashes.around(open, close, end);
    let made = read.is_of_its_key();
    let at = signed.get(b"M").ok().and_then(|at| instant(at.as_str().ok()?));
    let flaw = if hash != read.hash {
        Some("what it covers was changed since it was made".to_owned())
    } else if !made {
        Some("it was not made by the key of its certificate".to_owned())
    } else {
        out_of_time(&read.certificate, at)
    };
    let signature = Signature {
        field: name.to_owned(),
        intact: hash == read.hash && made,
        certificate: Some(read.certificate),
        others: read.others,
        at,
        statement: signed.get(b"Reason").ok().and_then(|text| lopdf::decode_text_string(text).ok()).unwrap_or_default(),
        end,
    };
    Ok((signature, flaw))
}

fn out_of_time(certificate: &Certificate, at: Option<(i64, i32)>) -> Option<String> {
    let (from, to) = certificate.valid_ms();
    match at {
        None => Some("it does not say when it was made".into()),
        Some((at, _)) if at < from || at > to => {
            Some("it says that it was made when its certificate was not valid".into())
        }
        Some(_) if !certificate.may_sign() => Some("its certificate does not allow to sign".into()),
        Some(_) => None,
    }
}

/// Returns where the signature's own digits begin and end, brackets included, and where the update ends.
fn range(pdf: &[u8], signed: &lopdf::Dictionary) -> Option<(usize, usize, usize)> {
    let numbers = signed.get(b"ByteRange").ok()?.as_array().ok()?;
    let numbers: Vec<usize> = numbers.iter().filter_map(|one| usize::try_from(one.as_i64().ok()?).ok()).collect();
    let [0, open, close, rest] = numbers[..] else { return None };
    let end = close.checked_add(rest)?;
    let whole = open < close && end <= pdf.len();
    let framed = whole && pdf[open] == b'<' && pdf[close - 1] == b'>' && pdf[..end].ends_with(b"%%EOF");
    framed.then_some((open, close, end))
}

/// Returns the signature between the brackets; what is left of the room must be nought, and nothing may be hidden there.
fn unpacked(pdf: &[u8], open: usize, close: usize, signed: &lopdf::Dictionary) -> Result<Vec<u8>, String> {
    let digits = &pdf[open + 1..close - 1];
    let value = |digit: u8| match digit {
        b'0'..=b'9' => Some(digit - b'0'),
        b'a'..=b'f' => Some(digit - b'a' + 10),
        _ => None,
    };
    let (pairs, odd) = digits.as_chunks::<2>();
    let bytes: Option<Vec<u8>> = pairs.iter().map(|[high, low]| Some(value(*high)? << 4 | value(*low)?)).collect();
    let bytes = bytes.filter(|_| odd.is_empty()).ok_or("the room of the signature holds something else")?;
    if signed.get(b"Contents").and_then(Object::as_str).ok().map(without_end) != Some(without_end(&bytes)) {
        return Err("the signature stands elsewhere than it says".into());
    }
    let length = der_length(&bytes).filter(|length| *length <= bytes.len()).ok_or("it can't be read")?;
    if bytes[length..].iter().any(|byte| *byte != 0) {
        return Err("something stands behind it in its room".into());
    }
    Ok(bytes[..length].to_vec())
}

/// Leaves out the noughts that fill up the room.
fn without_end(bytes: &[u8]) -> &[u8] {
    &bytes[..bytes.iter().rposition(|byte| *byte != 0).map_or(0, |last| last + 1)]
}

/// Returns how long a DER structure is, head included (X.690, 8.1.3).
fn der_length(bytes: &[u8]) -> Option<usize> {
    match bytes {
        [0x30, short @ ..=0x7f, ..] => Some(2 + usize::from(*short)),
        [0x30, 0x81, one, ..] => Some(3 + usize::from(*one)),
        [0x30, 0x82, one, two, ..] => Some(4 + usize::from(u16::from_be_bytes([*one, *two]))),
        _ => None,
    }
}

/// Reads a date such as `D:20261014150239+02'00'`.
fn instant(text: &[u8]) -> Option<(i64, i32)> {
    let plain: String = std::str::from_utf8(text).ok()?.strip_prefix("D:")?.replace('\'', "");
    let at = chrono::DateTime::parse_from_str(&plain, "%Y%m%d%H%M%S%z").ok()?;
    Some((at.timestamp_millis(), at.offset().local_minus_utc() / 60))
}

/// Returns a text without spaces and breaks.
pub fn squeezed(text: &str) -> String {
    text.chars().filter(|letter| !letter.is_whitespace()).collect()
}

fn made_by(file: &Document) -> Option<String> {
    let info = file.dereference(file.trailer.get(b"Info").ok()?).ok()?.1.as_dict().ok()?;
    lopdf::decode_text_string(info.get(b"Creator").ok()?).ok()
}

/// Returns the titles of the outline, as far as it has no levels, with their pages.
fn headings(file: &Document) -> BTreeMap<String, usize> {
    let pages: BTreeMap<ObjectId, usize> =
        file.get_pages().into_iter().map(|(number, id)| (id, number as usize)).collect();
    let outline = file.catalog().and_then(|catalog| catalog.get_deref(b"Outlines", file)?.as_dict());
    let mut next = outline.and_then(|outline| outline.get(b"First")).ok();
    let mut found = BTreeMap::new();
    while let Some(item) = next.and_then(|item| file.dereference(item).ok()?.1.as_dict().ok()) {
        if found.len() >= MOST_HEADINGS {
            break;
        }
        let title = item.get(b"Title").and_then(lopdf::decode_text_string);
        let page = item.get(b"Dest").and_then(Object::as_array).ok().and_then(|to| to.first()?.as_reference().ok());
        let (Ok(title), Some(page)) = (title, page.and_then(|page| pages.get(&page))) else { break };
        if found.insert(title, *page).is_some() {
            break;
        }
        next = item.get(b"Next").ok();
    }
    found
}

/// Returns the files that the catalog names as belonging to the document.
fn attachments(file: &Document) -> Vec<(String, Vec<u8>)> {
    let named = |object: &Object| {
        let specification = file.dereference(object).ok()?.1.as_dict().ok()?;
        let name = lopdf::decode_text_string(specification.get(b"UF").ok()?).ok()?;
        let held = file.dereference(specification.get(b"EF").ok()?).ok()?.1.as_dict().ok()?.get(b"F").ok()?;
        let stream = file.dereference(held).ok()?.1.as_stream().ok()?;
        Some((name, text::plain(stream, MOST_UNFOLDED / MOST_ATTACHMENTS)?))
    };
    let listed = file.catalog().ok().and_then(|catalog| catalog.get(b"AF").ok());
    let listed = listed.and_then(|all| file.dereference(all).ok()?.1.as_array().ok());
    listed.into_iter().flatten().take(MOST_ATTACHMENTS).filter_map(named).collect()
}
