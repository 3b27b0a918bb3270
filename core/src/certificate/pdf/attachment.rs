//! The record inside the file, as an associated file that any reader can take out (ISO 19005-3, 6.8; ISO 32000-1, 7.11).

use super::archive::{catalog, pdf_date, text_string};
use crate::certificate::content::{Content, RecordCopy};
use crate::words::{self, tell};
use lopdf::{Object, ObjectId, Stream, StringFormat, dictionary};
use md5::{Digest, Md5};

/// Attaches the record to the file.
///
/// Errors: if the file is not built as expected.
pub fn add(file: &mut lopdf::Document, content: &Content, record: &RecordCopy) -> Result<(), lopdf::Error> {
    let specification = specification(file, content, record);
    let named = vec![text_string(&record.name), specification.into()];
    let catalog = catalog(file)?;
    catalog.set("Names", dictionary! { "EmbeddedFiles" => dictionary! { "Names" => named } });
    catalog.set("AF", vec![Object::Reference(specification)]);
    Ok(())
}

fn specification(file: &mut lopdf::Document, content: &Content, record: &RecordCopy) -> ObjectId {
    // MD5 is what the format asks for here (ISO 32000-1, table 46); it guards against nothing but a torn copy.
    let checksum = Object::String(Md5::digest(&record.json).to_vec(), StringFormat::Hexadecimal);
    let date = Object::string_literal(pdf_date(content));
    let embedded = file.add_object(Stream::new(
        dictionary! {
            "Type" => "EmbeddedFile", "Subtype" => "application/json",
            "Params" => dictionary! {
                "Size" => record.json.len() as i64, "CheckSum" => checksum, "CreationDate" => date.clone(), "ModDate" => date,
            },
        },
        record.json.clone(),
    ));
    file.add_object(dictionary! {
        "Type" => "Filespec", "F" => Object::string_literal(record.name.as_str()), "UF" => text_string(&record.name),
        "Desc" => text_string(&words::for_reader(content.reader, || tell!("cert-attachment-description"))), "AFRelationship" => "Data",
        "EF" => dictionary! { "F" => embedded, "UF" => embedded },
    })
}
