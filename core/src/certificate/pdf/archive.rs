//! What makes the file fit for an archive: metadata, output intent, language, outline (ISO 19005-3, ISO 14289-1).

use super::srgb;
use crate::certificate::content::Content;
use crate::certificate::display::{Bookmark, Document};
use crate::certificate::layout::words::Clock;
use lopdf::{Dictionary, Object, ObjectId, Stream, StringFormat, dictionary};

/// Adds all of it.
///
/// Errors: if the file is not built as expected.
pub fn add(file: &mut lopdf::Document, content: &Content, document: &Document) -> Result<(), lopdf::Error> {
    file.version = "1.7".to_string();
    let profile = Stream::new(dictionary! { "N" => 3, "Alternate" => "DeviceRGB" }, srgb::profile());
    let profile = file.add_object(profile);
    let intent = dictionary! {
        "Type" => "OutputIntent", "S" => "GTS_PDFA1", "DestOutputProfile" => profile,
        "OutputConditionIdentifier" => Object::string_literal("sRGB"),
        "Info" => Object::string_literal("sRGB IEC61966-2.1"),
    };
    let intent = file.add_object(intent);
    let mut metadata =
        Stream::new(dictionary! { "Type" => "Metadata", "Subtype" => "XML" }, xmp(content, document).into_bytes());
    metadata.allows_compression = false;
    let metadata = file.add_object(metadata);
    let outline = outline(file, &document.bookmarks);
    let catalog = catalog(file)?;
    catalog.set("OutputIntents", vec![Object::Reference(intent)]);
    catalog.set("Metadata", metadata);
    catalog.set("Lang", Object::string_literal(content.reader.language.tag()));
    catalog.set("ViewerPreferences", dictionary! { "DisplayDocTitle" => true });
    catalog.set("PageMode", "UseNone");
    if let Some(outline) = outline {
        catalog.set("Outlines", outline);
    }
    info(file, content, document)?;
    for page in file.get_pages().into_values() {
        let page = file.get_object_mut(page)?.as_dict_mut()?;
        page.remove(b"TrimBox");
        page.remove(b"Annots");
    }
    Ok(())
}

/// Returns the catalog.
///
/// Errors: if there is none.
pub fn catalog(file: &mut lopdf::Document) -> Result<&mut Dictionary, lopdf::Error> {
    let id = file.trailer.get(b"Root")?.as_reference()?;
    file.get_object_mut(id)?.as_dict_mut()
}

/// Returns a text string: UTF-16 with its mark (ISO 32000-1, 7.9.2.2).
pub fn text_string(text: &str) -> Object {
    let units = std::iter::once(0xFEFF).chain(text.encode_utf16());
    Object::String(units.flat_map(u16::to_be_bytes).collect(), StringFormat::Hexadecimal)
}

/// Writes the information dictionary anew: the same as the metadata, and no empty entry.
fn info(file: &mut lopdf::Document, content: &Content, document: &Document) -> Result<(), lopdf::Error> {
    let id = file.trailer.get(b"Info")?.as_reference()?;
    let date = Object::string_literal(pdf_date(content));
    let made_by = text_string(&plain(&content.made_by));
    let info = dictionary! {
        "Title" => text_string(&document.title), "Creator" => made_by.clone(), "Producer" => made_by,
        "CreationDate" => date.clone(), "ModDate" => date,
    };
    file.set_object(id, info);
    Ok(())
}

fn clock(content: &Content) -> Option<Clock> {
    Clock::at_offset(content.utc_offset_min).ok()
}

/// `2026-10-14T15:02:52+02:00`.
fn iso_date(content: &Content) -> String {
    clock(content).map_or_else(String::new, |clock| {
        format!("{}T{}{}", clock.date(content.at_ms), clock.second(content.at_ms), clock.offset())
    })
}

/// Returns the date of the document, as `D:20261014150252+02'00'`.
pub fn pdf_date(content: &Content) -> String {
    let iso = iso_date(content);
    let (local, offset) = iso.split_at(iso.len().saturating_sub(6));
    let digits: String = local.chars().filter(char::is_ascii_digit).collect();
    format!("D:{digits}{}'", offset.replace(':', "'"))
}

/// A text that XML can hold: without control characters.
fn plain(text: &str) -> String {
    text.chars().filter(|letter| !letter.is_control() && !matches!(letter, '\u{fffe}' | '\u{ffff}')).collect()
}

fn escaped(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;")
}

fn xmp(content: &Content, document: &Document) -> String {
    let (title, program) = (escaped(&document.title), escaped(&plain(&content.made_by)));
    // Part 3 allows an attachment of any form, part 2 does not (ISO 19005-2, 6.8).
    let part = if content.record.value().is_some() { 3 } else { 2 };
    let (language, date) = (escaped(content.reader.language.tag()), iso_date(content));
    format!(
        r#"<?xpacket begin="{mark}" id="W5M0MpCehiHzreSzNTczkc9d"?>
<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/" xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/" xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
<dc:format>application/pdf</dc:format>
<dc:title><rdf:Alt><rdf:li xml:lang="x-default">{title}</rdf:li></rdf:Alt></dc:title>
<dc:language><rdf:Bag><rdf:li>{language}</rdf:li></rdf:Bag></dc:language>
<xmp:CreateDate>{date}</xmp:CreateDate>
<xmp:ModifyDate>{date}</xmp:ModifyDate>
<xmp:MetadataDate>{date}</xmp:MetadataDate>
<xmp:CreatorTool>{program}</xmp:CreatorTool>
<pdf:Producer>{program}</pdf:Producer>
<pdfaid:part>{part}</pdfaid:part>
<pdfaid:conformance>A</pdfaid:conformance>
<pdfuaid:part>1</pdfuaid:part>
</rdf:Description>
{EXTENSION}
</rdf:RDF></x:xmpmeta>
<?xpacket end="r"?>"#,
        mark = '\u{feff}',
    )
}

/// PDF/A-3 asks for a description of every schema that it does not know (ISO 19005-3, 6.6.2.3).
const EXTENSION: &str = r#"<rdf:Description rdf:about="" xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/" xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#" xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
<pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
<pdfaSchema:schema>PDF/UA identification schema</pdfaSchema:schema>
<pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
<pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
<pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
<pdfaProperty:name>part</pdfaProperty:name>
<pdfaProperty:valueType>Integer</pdfaProperty:valueType>
<pdfaProperty:category>internal</pdfaProperty:category>
<pdfaProperty:description>The part of ISO 14289 that the file is written by</pdfaProperty:description>
</rdf:li></rdf:Seq></pdfaSchema:property>
</rdf:li></rdf:Bag></pdfaExtension:schemas>
</rdf:Description>"#;

/// Adds the headings as an outline, in order.
fn outline(file: &mut lopdf::Document, bookmarks: &[Bookmark]) -> Option<ObjectId> {
    let pages: Vec<ObjectId> = file.get_pages().into_values().collect();
    let root = file.new_object_id();
    let ids: Vec<ObjectId> = bookmarks.iter().map(|_| file.new_object_id()).collect();
    let (first, last) = (*ids.first()?, *ids.last()?);
    for (index, bookmark) in bookmarks.iter().enumerate() {
        let page = *pages.get(bookmark.page)?;
        let mut item = dictionary! {
            "Title" => text_string(&bookmark.title), "Parent" => root,
            "Dest" => vec![page.into(), "Fit".into()],
        };
        if index > 0 {
            item.set("Prev", ids[index - 1]);
        }
        if let Some(next) = ids.get(index + 1) {
            item.set("Next", *next);
        }
        file.set_object(ids[index], item);
    }
    let count = bookmarks.len() as i64;
    file.set_object(root, dictionary! { "Type" => "Outlines", "First" => first, "Last" => last, "Count" => count });
    Some(root)
}
