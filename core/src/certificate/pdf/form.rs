//! The form of the file: an empty signature field above each line that is signed on (ISO 32000-1, 12.7.4.5).
//!
//! The page says name, role, instant and statement below the line. What a signature adds stands in its field: the
//! drawn line, and the key. So an update that signs touches the field, its appearance and the signature, and no page.

use super::archive::{catalog, text_string};
use crate::certificate::display::{Document, SignaturePlace};
use crate::certificate::fonts::MM_PER_PT;
use crate::words::{self, Reader, tell};
use lopdf::{Object, ObjectId, Stream, dictionary};

/// Print and Locked (ISO 32000-1, table 165): shown on paper, not moved by a reader.
const FLAGS: i64 = 4 | 128;
/// SignaturesExist and AppendOnly (ISO 32000-1, table 219): a reader saves by appending.
const SIGNATURE_FLAGS: i64 = 3;

/// A field on its page.
#[derive(Clone, Copy, Debug)]
pub struct Widget {
    pub id: ObjectId,
    /// The page, counted from 0.
    pub page: usize,
    /// Its element, by its place in [`Document::elements`].
    pub element: usize,
}

/// Adds the fields and returns them.
///
/// Errors: if the file is not built as expected.
pub fn add(file: &mut lopdf::Document, document: &Document, reader: Reader) -> Result<Vec<Widget>, lopdf::Error> {
    let pages: Vec<ObjectId> = file.get_pages().into_values().collect();
    let mut widgets = Vec::new();
    for place in &document.signatures {
        let Some(page) = pages.get(place.page) else { continue };
        let says = words::for_reader(reader, || match place.name {
            "technician" => tell!("cert-form-technician"),
            _ => tell!("cert-form-foreman"),
        });
        let id = field(file, (place.name, &says), rectangle(document, place), *page);
        annotate(file, *page, id)?;
        widgets.push(Widget { id, page: place.page, element: place.element });
    }
    if !widgets.is_empty() {
        let fields: Vec<Object> = widgets.iter().map(|widget| widget.id.into()).collect();
        catalog(file)?.set("AcroForm", dictionary! { "Fields" => fields, "SigFlags" => SIGNATURE_FLAGS });
    }
    Ok(widgets)
}

fn field(
    file: &mut lopdf::Document,
    (name, says): (&str, &str),
    [left, bottom, right, top]: [f32; 4],
    page: ObjectId,
) -> ObjectId {
    let frame = [0.0, 0.0, right - left, top - bottom].map(Object::Real).to_vec();
    let nothing = Stream::new(
        dictionary! { "Type" => "XObject", "Subtype" => "Form", "BBox" => frame, "Resources" => dictionary! {} },
        Vec::new(),
    );
    let appearance = file.add_object(nothing);
    file.add_object(dictionary! {
        "Type" => "Annot", "Subtype" => "Widget", "FT" => "Sig", "F" => FLAGS, "P" => page,
        "T" => text_string(name), "TU" => text_string(says),
        "Rect" => [left, bottom, right, top].map(Object::Real).to_vec(),
        "AP" => dictionary! { "N" => appearance },
    })
}

fn annotate(file: &mut lopdf::Document, page: ObjectId, annotation: ObjectId) -> Result<(), lopdf::Error> {
    let page = file.get_object_mut(page)?.as_dict_mut()?;
    let mut all = page.get(b"Annots").and_then(Object::as_array).cloned().unwrap_or_default();
    all.push(annotation.into());
    page.set("Annots", all);
    Ok(())
}

/// Left, bottom, right, top in points from the lower left corner of the page.
fn rectangle(document: &Document, place: &SignaturePlace) -> [f32; 4] {
    let points = |mm: f64| ((mm / MM_PER_PT * 1000.0).round() / 1000.0) as f32;
    let bottom = document.height_mm - place.top - place.height;
    [points(place.left), points(bottom), points(place.left + place.width), points(bottom + place.height)]
}
