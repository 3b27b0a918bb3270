//! The display list as a PDF file: tagged, archivable, the same bytes for the same pages.
//!
//! - [`ink`]: marks to page operators · [`structure`]: the tree of what they mean.
//! - [`extent`]: how far a figure reaches.
//! - [`form`]: the empty signature fields.
//! - [`attachment`]: the record inside the file.
//! - [`archive`]: metadata, output intent, outline · [`srgb`]: the colour profile.
//!
//! The file is written to be PDF/A-3a and PDF/UA-1; without a record inside it is PDF/A-2a, which allows no such attachment. It is not encrypted and holds no link, no script.

mod archive;
mod attachment;
mod extent;
mod form;
mod ink;
mod srgb;
mod structure;

pub use ink::plain;

use super::CertificateError;
use super::content::{Content, Known};
use super::display::{Document, Mark, Weight};
use super::fonts::Fonts;
use lopdf::{Object, StringFormat};
use printpdf::{
    DictItem, ExternalStream, ExternalXObject, FontId, Mm, PdfDocument, PdfFont, PdfPage, PdfSaveOptions, XObject,
    XObjectId,
};
use sha2::{Digest, Sha256};
use std::collections::BTreeSet;

/// Bytes of an identifier.
const ID: usize = 16;

/// Returns the file.
///
/// Errors: `Font` if a face can't be reduced; `Pdf` if the writer warns of anything.
pub fn write(content: &Content, document: &Document, fonts: &Fonts) -> Result<Vec<u8>, CertificateError> {
    let mut pages = Vec::new();
    let mut tagged = Vec::new();
    for page in &document.pages {
        let (ops, marked) = ink::page(document, page);
        pages.push(PdfPage::new(Mm(document.width_mm as f32), Mm(document.height_mm as f32), ops));
        tagged.push(marked);
    }
    let mut pdf = PdfDocument::new(&document.title);
    for weight in [Weight::Book, Weight::Bold] {
        let face = PdfFont::new(fonts.subset(weight, &used(document, weight))?);
        pdf.resources.fonts.map.insert(FontId(ink::font_name(weight).to_string()), face);
    }
    for (index, photo) in shown(document) {
        let xobject = picture(content, index).ok_or_else(|| fault(format!("photo {photo} has no picture")))?;
        pdf.resources.xobjects.map.insert(XObjectId(ink::picture_name(index)), xobject);
    }
    pdf.with_pages(pages);
    let options =
        PdfSaveOptions { optimize: false, subset_fonts: false, image_optimization: None, ..Default::default() };
    let mut warnings = Vec::new();
    let mut file = pdf.to_lopdf_document(&options, &mut warnings);
    if let Some(warning) = warnings.first() {
        return Err(fault(warning.msg.clone()));
    }
    let extents = extent::figures(document, fonts);
    finish(&mut file, content, document, &structure::Marks { tagged, extents })
        .map_err(|error| fault(error.to_string()))?;
    save(file)
}

/// Adds what the writer of pages knows nothing of.
fn finish(
    file: &mut lopdf::Document,
    content: &Content,
    document: &Document,
    marks: &structure::Marks,
) -> Result<(), lopdf::Error> {
    archive::add(file, content, document)?;
    if let Known::Known(record) = &content.record {
        attachment::add(file, content, record)?;
    }
    let widgets = form::add(file, document, content.reader)?;
    structure::add(file, document, marks, &widgets)
}

fn fault(what: String) -> CertificateError {
    CertificateError::Pdf { what }
}

/// The characters that a face must have.
fn used(document: &Document, weight: Weight) -> BTreeSet<char> {
    let texts = document.pages.iter().flat_map(|page| &page.items).filter_map(|item| match &item.mark {
        Mark::Text(text) if text.weight == weight => Some(&text.text),
        _ => None,
    });
    texts.flat_map(|text| text.chars()).map(ink::plain).chain([' ']).collect()
}

/// The photos that are shown: their place in the content, and their number.
fn shown(document: &Document) -> impl Iterator<Item = (usize, usize)> + '_ {
    document.pages.iter().flat_map(|page| &page.items).filter_map(|item| match &item.mark {
        Mark::Picture(picture) => Some((picture.photo, picture.photo + 1)),
        _ => None,
    })
}

/// The JPEG bytes as they are.
fn picture(content: &Content, index: usize) -> Option<XObject> {
    let copy = content.photos.get(index)?.copy.value()?;
    let header = super::jpeg::header(&copy.jpeg).ok()?;
    let name = |text: &str| DictItem::Name(text.as_bytes().to_vec());
    let colour = if header.components == 1 { "DeviceGray" } else { "DeviceRGB" };
    let dict = [
        ("Type", name("XObject")),
        ("Subtype", name("Image")),
        ("Width", DictItem::Int(header.width.into())),
        ("Height", DictItem::Int(header.height.into())),
        ("BitsPerComponent", DictItem::Int(8)),
        ("ColorSpace", name(colour)),
        ("Filter", name("DCTDecode")),
    ];
    let dict = dict.into_iter().map(|(key, value)| (key.to_string(), value)).collect();
    let stream = ExternalStream { dict, content: copy.jpeg.clone(), compress: false };
    Some(XObject::External(ExternalXObject { stream, width: None, height: None, dpi: None }))
}

/// Returns the bytes, with an identifier made from them as they are while it is all noughts (ISO 32000-1, 14.4).
fn save(mut file: lopdf::Document) -> Result<Vec<u8>, CertificateError> {
    let noughts = Object::String(vec![0; ID], StringFormat::Hexadecimal);
    file.trailer.set("ID", vec![noughts.clone(), noughts]);
    file.compress();
    let mut bytes = Vec::new();
    file.save_to(&mut bytes).map_err(|error| fault(error.to_string()))?;
    let pair = |digits: &str| format!("[<{digits}><{digits}>]");
    let id: String = Sha256::digest(&bytes)[..ID].iter().map(|byte| format!("{byte:02X}")).collect();
    let place = memchr::memmem::rfind(&bytes, pair(&"0".repeat(2 * ID)).as_bytes());
    let place = place.ok_or_else(|| fault("the file has no room for its identifier".into()))?;
    bytes[place..place + pair(&id).len()].copy_from_slice(pair(&id).as_bytes());
    Ok(bytes)
}
