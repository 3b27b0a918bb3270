//! Updates slipped in between the two signatures: whatever part of the file they change, add or take out is named.
//!
//! Every later reader shows the changed page, and the second signature covers it; the first does not. Source of the
//! attacks: "Shadow Attacks" (NDSS 2021) and "Processing Dangerous Paths" (NDSS 2021); ISO 32000-1, 7.5.4 to 7.5.6.

use std::collections::BTreeMap;

use lopdf::{Document, IncrementalDocument, Object, ObjectId, StringFormat};
use mendline_core::seal::verify::{Checked, verify};

use super::attacks::updated;
use super::{put, unsigned};

fn flaws(pdf: &[u8]) -> Vec<String> {
    match verify(pdf) {
        Ok(Checked { flaws, .. }) => flaws,
        Err(says) => vec![says],
    }
}

fn signed_once() -> Vec<u8> {
    put(&unsigned("rejected"), "technician", "Tomas Ekdal", 1)
}

fn then_by_the_foreman(pdf: &[u8]) -> Vec<String> {
    flaws(&put(pdf, "foreman", "Ines Varga", 2))
}

/// One object of every kind that the file has: by its type, and by the keys that it holds where it names none.
fn one_of_each(pdf: &[u8]) -> BTreeMap<String, ObjectId> {
    let file = Document::load_mem(pdf).unwrap();
    let kind = |object: &Object| {
        let inner = object.as_dict().or_else(|_| object.as_stream().map(|stream| &stream.dict));
        let Ok(inner) = inner else { return object.enum_variant().to_owned() };
        let name = |key: &[u8]| {
            inner.get(key).and_then(Object::as_name).map(|name| String::from_utf8_lossy(name).into_owned())
        };
        let keys =
            || inner.iter().map(|(key, _)| String::from_utf8_lossy(key).into_owned()).collect::<Vec<_>>().join(" ");
        format!(
            "{} {} {}",
            name(b"Type").unwrap_or_else(|_| keys()),
            name(b"S").unwrap_or_default(),
            name(b"Subtype").unwrap_or_default()
        )
    };
    file.objects.iter().map(|(id, object)| (kind(object), *id)).collect()
}

/// Changes something small in an object, whatever it is.
fn change(object: &mut Object) {
    match object {
        Object::Stream(stream) => stream.content.push(b'\n'),
        Object::Dictionary(inner) => inner.set("Changed", 1),
        Object::Array(all) => all.push(1.into()),
        other => *other = Object::String(b"changed".to_vec(), StringFormat::Literal),
    }
}

/// Covered by the second signature, and so shown as signed by every reader: one object of each kind that there is.
#[test]
fn what_is_changed_before_the_second_signature_is_named() {
    let one = signed_once();
    let all = one_of_each(&one);
    assert!(all.len() > 25, "{all:?}");
    for (kind, id) in all {
        // The update of the foreman fills this one; what else it may not change, the attacks say.
        if kind.starts_with("Annot") || kind.starts_with("Sig") {
            continue;
        }
        let changed = updated(&one, |update| {
            update.opt_clone_object_to_new_document(id).unwrap();
            change(update.new_document.get_object_mut(id).unwrap());
        });
        // An object on which signing rests can be spoiled so that nobody can sign.
        let told = std::panic::catch_unwind(|| then_by_the_foreman(&changed)).unwrap_or_else(|_| flaws(&changed));
        let named = |flaw: &String| flaw.contains("An update changed") || flaw.contains("after the last signature");
        assert!(told.iter().any(named), "{kind}: {told:?}");
    }
}

fn page(update: &IncrementalDocument) -> ObjectId {
    *update.get_prev_documents().get_pages().values().next().unwrap()
}

/// Sets the table entry of an object of the update to another line, before the second signature covers it.
fn entry(pdf: &[u8], number: u32, line: &str) -> Vec<u8> {
    let head = format!("\n{number} 1\n");
    let at = pdf.windows(head.len()).rposition(|part| part == head.as_bytes()).unwrap() + head.len();
    let mut changed = pdf.to_vec();
    changed[at..at + line.len()].copy_from_slice(line.as_bytes());
    changed
}

#[test]
fn what_is_taken_out_or_given_another_generation_is_named() {
    let one = signed_once();
    let touch = updated(&one, |update| {
        let page = page(update);
        update.opt_clone_object_to_new_document(page).unwrap();
    });
    let number = Document::load_mem(&one).unwrap().get_pages()[&1].0;
    let freed = entry(&touch, number, "0000000000 65535 f");
    let told = flaws(&freed);
    assert!(!told.is_empty(), "a page was taken out");
    let elsewhere = entry(&touch, number, "0000000017 00000 n");
    assert!(!flaws(&elsewhere).is_empty(), "a page stands elsewhere");

    let renamed = updated(&one, |update| {
        let id = page(update);
        let copy = update.get_prev_documents().get_object(id).unwrap().clone();
        update.new_document.objects.insert((id.0, 1), copy);
        update.new_document.max_id = update.get_prev_documents().max_id;
    });
    assert!(!flaws(&renamed).is_empty(), "a page was renumbered");
}

/// Elements of the structure are not kept when a file is read: one is a change even where nothing, or the same, is put in
/// its place.
#[test]
fn an_element_of_the_structure_that_is_written_again_is_named() {
    let one = signed_once();
    let element = one_of_each(&one).into_iter().find(|(kind, _)| kind.starts_with("StructElem P")).unwrap().1;
    for put in [None, Some(Object::Null), Some(Object::Real(0.0))] {
        let changed = updated(&one, |update| {
            update.opt_clone_object_to_new_document(element).unwrap();
            if let Some(put) = &put {
                *update.new_document.get_object_mut(element).unwrap() = put.clone();
            }
        });
        let told = then_by_the_foreman(&changed);
        assert!(told.iter().any(|flaw| flaw.contains(&format!("(object {})", element.0))), "{put:?}: {told:?}");
    }
}
