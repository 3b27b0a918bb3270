//! A signature under a PDF: an update behind its last byte that fills one empty field and changes nothing else.
//!
//! Source: ISO 32000-1, 12.8 (signatures), 7.5.6 (incremental updates); ETSI EN 319 142-1, 5.3 (PAdES baseline B-B). The
//! appearance embeds its face and uses no transparency, so that a PDF/A-3a file with tags stays one.

use std::collections::BTreeSet;
use std::fmt::Write;

use chrono::{DateTime, FixedOffset};
use lopdf::{Dictionary, Document, IncrementalDocument, Object, ObjectId, Stream, StringFormat, dictionary};
use printpdf::ParsedFont;
use sha2::{Digest, Sha256};

use super::{Certificate, PrivateKey, SealError, cms};
use crate::certificate::display::Weight;
use crate::certificate::fonts::{Fonts, MM_PER_PT};

/// Bytes kept for the signature: twice what one takes with a chain, and room for a time stamp later.
pub(super) const ROOM: usize = 8192;
/// Stands for a number that is known when all is written; as long as any.
const UNKNOWN: i64 = 9_999_999_999;
const SIZE_PT: f64 = 5.6;
const STEP_PT: f64 = 6.9;
const MARGIN_PT: f64 = 3.0;

/// Who signs, with what.
pub struct Signer<'a> {
    pub key: &'a PrivateKey,
    /// The certificate of the key first, then those that vouch for it.
    pub chain: &'a [Certificate],
    pub fonts: &'a Fonts,
}

/// What a signature says and shows.
#[derive(Clone, Debug, Default)]
pub struct Block {
    /// The name of the empty field.
    pub field: String,
    pub name: String,
    /// What the name is put to.
    pub statement: String,
    /// Milliseconds since 1970 UTC, as the signer's device has it, and how far its local time is ahead, in minutes.
    pub at_ms: i64,
    pub offset_min: i32,
    /// The drawn line: strokes of points, y downwards, in any one unit.
    pub strokes: Vec<Vec<(i32, i32)>>,
    /// Shown beside the drawn line: up to three short lines.
    pub lines: Vec<String>,
}

/// Returns the PDF with one more signature behind its last byte.
///
/// Errors: `NotSignable` if it can't be read, has no such field, or the field is signed; `Unusable` as [`cms::sign`].
pub fn sign(pdf: &[u8], signer: &Signer, block: &Block) -> Result<Vec<u8>, SealError> {
    let before = Document::load_mem(pdf).map_err(|why| not(&why.to_string()))?;
    let field = empty_field(&before, &block.field)
        .ok_or_else(|| not(&format!("it has no empty field “{}” for the signature", block.field)))?;
    let mut update = IncrementalDocument::create_from(pdf.to_vec(), before);
    update.new_document.version = "1.7".into();
    fill(&mut update, field, signer, block).map_err(|why| not(&why.to_string()))?;
    let mut bytes = Vec::with_capacity(pdf.len() + 64 * 1024);
    update.save_to(&mut bytes).map_err(|why| not(&why.to_string()))?;
    seal(bytes, pdf.len(), signer)
}

fn not(what: &str) -> SealError {
    SealError::NotSignable { what: what.to_owned() }
}

/// Returns the fields of the form, by their names.
pub(super) fn fields(file: &Document) -> Vec<(String, ObjectId)> {
    let listed = || {
        let form = file.dereference(file.catalog().ok()?.get(b"AcroForm").ok()?).ok()?.1.as_dict().ok()?;
        let fields = form.get(b"Fields").ok()?.as_array().ok()?;
        Some(fields.iter().filter_map(|field| field.as_reference().ok()).filter_map(|id| named(file, id)).collect())
    };
    listed().unwrap_or_default()
}

fn named(file: &Document, id: ObjectId) -> Option<(String, ObjectId)> {
    let name = file.get_dictionary(id).ok()?.get(b"T").ok()?;
    Some((lopdf::decode_text_string(name).ok()?, id))
}

fn empty_field(file: &Document, name: &str) -> Option<ObjectId> {
    let (_, id) = fields(file).into_iter().find(|(known, _)| known == name)?;
    let field = file.get_dictionary(id).ok()?;
    let empty = field.get(b"FT").is_ok_and(|kind| kind.as_name().is_ok_and(|kind| kind == b"Sig")) && !field.has(b"V");
    empty.then_some(id)
}

fn fill(update: &mut IncrementalDocument, field: ObjectId, signer: &Signer, block: &Block) -> Result<(), SealError> {
    let lost = |why: lopdf::Error| not(&why.to_string());
    update.opt_clone_object_to_new_document(field).map_err(lost)?;
    let size = size(&update.new_document, field)?;
    let shown = appearance(&mut update.new_document, signer.fonts, block, size)?;
    let unknown = Object::Integer(UNKNOWN);
    let signature = update.new_document.add_object(dictionary! {
        "Type" => "Sig", "Filter" => "Adobe.PPKLite", "SubFilter" => "ETSI.CAdES.detached",
        "ByteRange" => vec![0.into(), unknown.clone(), unknown.clone(), unknown],
        "Contents" => Object::String(vec![0; ROOM], StringFormat::Hexadecimal),
        "Name" => text_string(&block.name), "Reason" => text_string(&block.statement),
        "M" => Object::string_literal(date(block.at_ms, block.offset_min)?),
    });
    let field = update.new_document.get_object_mut(field).and_then(Object::as_dict_mut).map_err(lost)?;
    field.set("V", signature);
    field.set("AP", dictionary! { "N" => shown });
    Ok(())
}

/// Width and height of a field in points.
fn size(file: &Document, field: ObjectId) -> Result<(f64, f64), SealError> {
    let corners = || {
        let rectangle = file.get_dictionary(field).ok()?.get(b"Rect").ok()?.as_array().ok()?;
        let numbers: Vec<f64> = rectangle.iter().filter_map(|one| one.as_float().ok()).map(f64::from).collect();
        match numbers[..] {
            [left, bottom, right, top] if right > left && top > bottom => Some((right - left, top - bottom)),
            _ => None,
        }
    };
    corners().ok_or_else(|| not("the field for the signature has no size"))
}

/// Writes where the signed bytes stand, signs them, and puts the signature in the room that was kept.
fn seal(mut bytes: Vec<u8>, old: usize, signer: &Signer) -> Result<Vec<u8>, SealError> {
    let lost = || not("the update was not written as expected");
    let open = find(&bytes, b"/Contents<", old).ok_or_else(lost)? + 9;
    let close = open + 2 * ROOM + 2;
    let range = find(&bytes, b"/ByteRange[", old).ok_or_else(lost)? + 10;
    let kept = find(&bytes, b"]", range).ok_or_else(lost)? + 1 - range;
    let numbers = format!("[0 {open} {close} {}", bytes.len().checked_sub(close).ok_or_else(lost)?);
    let written = format!("{numbers:<width$}]", width = kept - 1);
    if written.len() != kept || bytes.get(close - 1) != Some(&b'>') {
        return Err(lost());
    }
    bytes[range..range + kept].copy_from_slice(written.as_bytes());
    let hash = Sha256::new().chain_update(&bytes[..open]).chain_update(&bytes[close..]).finalize();
    let signature = cms::sign(&hash.into(), signer.key, signer.chain)?;
    if signature.len() > ROOM {
        return Err(not("the chain of certificates is too long"));
    }
    let digits: String = signature.iter().map(|byte| format!("{byte:02x}")).collect();
    bytes[open + 1..open + 1 + digits.len()].copy_from_slice(digits.as_bytes());
    Ok(bytes)
}

fn find(bytes: &[u8], wanted: &[u8], from: usize) -> Option<usize> {
    memchr::memmem::find(bytes.get(from..)?, wanted).map(|at| at + from)
}

fn text_string(text: &str) -> Object {
    let units = std::iter::once(0xFEFF).chain(text.encode_utf16());
    Object::String(units.flat_map(u16::to_be_bytes).collect(), StringFormat::Hexadecimal)
}

/// `D:20261014150239+02'00'` (ISO 32000-1, 7.9.4).
fn date(at_ms: i64, offset_min: i32) -> Result<String, SealError> {
    let zone = FixedOffset::east_opt(offset_min * 60);
    let at = DateTime::from_timestamp_millis(at_ms).zip(zone).map(|(at, zone)| at.with_timezone(&zone));
    let at = at.ok_or_else(|| not("the device's clock is out of range"))?;
    Ok(format!("D:{}'", at.format("%Y%m%d%H%M%S%:z").to_string().replace(':', "'")))
}

/// Returns what the field shows: the drawn line at the left, the lines at the right.
fn appearance(
    file: &mut Document,
    fonts: &Fonts,
    block: &Block,
    (width, height): (f64, f64),
) -> Result<ObjectId, SealError> {
    let lines: Vec<String> = block.lines.iter().map(|line| fonts.printable(&line.replace('\n', " "))).collect();
    let used: BTreeSet<char> = lines.iter().flat_map(|line| line.chars()).chain([' ']).collect();
    let face = fonts.subset(Weight::Book, &used).map_err(|why| not(&why.to_string()))?;
    let widest = lines.iter().map(|line| fonts.width_mm(line, SIZE_PT, Weight::Book) / MM_PER_PT).fold(0.0, f64::max);
    let left = (width - widest - MARGIN_PT).max(width / 3.0);
    let mut drawn = String::new();
    strokes(&mut drawn, &block.strokes, (left - 2.0 * MARGIN_PT, height - 2.0));
    words(&mut drawn, &face, &lines, (left, height - STEP_PT));
    let font = embedded(file, &face);
    let frame = vec![0.into(), 0.into(), Object::Real(width as f32), Object::Real(height as f32)];
    let resources = dictionary! { "Font" => dictionary! { "F" => font } };
    let form = dictionary! { "Type" => "XObject", "Subtype" => "Form", "BBox" => frame, "Resources" => resources };
    Ok(file.add_object(Stream::new(form, drawn.into_bytes())))
}

/// Draws the strokes scaled evenly into an area at the lower left corner.
fn strokes(out: &mut String, strokes: &[Vec<(i32, i32)>], (width, height): (f64, f64)) {
    let points = || strokes.iter().flatten().map(|(x, y)| (f64::from(*x), f64::from(*y)));
    let (mut low, mut high) = ((f64::MAX, f64::MAX), (f64::MIN, f64::MIN));
    for (x, y) in points() {
        low = (low.0.min(x), low.1.min(y));
        high = (high.0.max(x), high.1.max(y));
    }
    let scale = (width / (high.0 - low.0).max(1.0)).min(height / (high.1 - low.1).max(1.0));
    out.push_str("q 0 G 1.1 w 1 J 1 j\n");
    for stroke in strokes.iter().filter(|stroke| !stroke.is_empty()) {
        for (index, (x, y)) in stroke.iter().enumerate() {
            let (x, y) = (f64::from(*x) - low.0, high.1 - f64::from(*y));
            let verb = if index == 0 { "m" } else { "l" };
            // Writing to a string can't fail.
            let _ = writeln!(out, "{:.2} {:.2} {verb}", MARGIN_PT + x * scale, 1.0 + y * scale);
        }
        out.push_str("S\n");
    }
    out.push_str("Q\n");
}

fn words(out: &mut String, face: &ParsedFont, lines: &[String], (x, y): (f64, f64)) {
    let _ = writeln!(out, "BT 0 g /F {SIZE_PT} Tf {STEP_PT} TL {x:.2} {y:.2} Td");
    for line in lines {
        let glyphs = line.chars().map(|letter| face.codepoint_to_glyph.get(&(letter as u32)).copied().unwrap_or(0));
        let digits: String = glyphs.map(|glyph| format!("{glyph:04X}")).collect();
        let _ = writeln!(out, "<{digits}> Tj T*");
    }
    out.push_str("ET\n");
}

/// Adds a reduced face as a font of two-byte glyph numbers that can be read back as text (ISO 32000-1, 9.7).
fn embedded(file: &mut Document, face: &ParsedFont) -> ObjectId {
    let name = Object::Name(face.font_name.clone().unwrap_or_default().into_bytes());
    let thousandths = |units: f64| Object::Integer((units * 1000.0 / f64::from(face.units_per_em)).round() as i64);
    let mut program =
        Stream::new(dictionary! { "Length1" => face.original_bytes.len() as i64 }, face.original_bytes.clone());
    // Left as it is where it can't be made smaller.
    let _ = program.compress();
    let program = file.add_object(program);
    let metrics = &face.pdf_font_metrics;
    let corner = |units: i16| thousandths(f64::from(units));
    let descriptor = file.add_object(dictionary! {
        "Type" => "FontDescriptor", "FontName" => name.clone(), "Flags" => 4,
        "FontBBox" => vec![corner(metrics.x_min), corner(metrics.y_min), corner(metrics.x_max), corner(metrics.y_max)],
        "ItalicAngle" => 0, "Ascent" => thousandths(face.font_metrics.ascent.into()),
        "Descent" => thousandths(face.font_metrics.descent.into()),
        "CapHeight" => thousandths(face.font_metrics.ascent.into()), "StemV" => 80, "FontFile2" => program,
    });
    let widths: Vec<Object> = face.glyph_widths.values().map(|width| thousandths(f64::from(*width))).collect();
    let system = dictionary! {
        "Registry" => Object::string_literal("Adobe"), "Ordering" => Object::string_literal("Identity"), "Supplement" => 0,
    };
    let glyphs = file.add_object(dictionary! {
        "Type" => "Font", "Subtype" => "CIDFontType2", "BaseFont" => name.clone(), "CIDSystemInfo" => system,
        "FontDescriptor" => descriptor, "W" => vec![0.into(), Object::Array(widths)], "CIDToGIDMap" => "Identity",
    });
    let letters = face.codepoint_to_glyph.iter().map(|(letter, glyph)| (u32::from(*glyph), vec![*letter])).collect();
    let map = printpdf::ToUnicodeCMap { mappings: letters }.to_cmap_string("F");
    let map = file.add_object(Stream::new(Dictionary::new(), map.into_bytes()));
    file.add_object(dictionary! {
        "Type" => "Font", "Subtype" => "Type0", "BaseFont" => name, "Encoding" => "Identity-H",
        "DescendantFonts" => vec![Object::Reference(glyphs)], "ToUnicode" => map,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    /// ISO 32000-1, 7.9.4: local time and its offset.
    #[test]
    fn a_date_is_written_in_local_time_with_its_offset() {
        assert_eq!(date(1_791_982_959_000, 120).unwrap(), "D:20261014150239+02'00'");
        assert_eq!(date(1_791_982_959_000, -210).unwrap(), "D:20261014093239-03'30'");
        assert!(date(1_791_982_959_000, 100_000).is_err());
    }
}
