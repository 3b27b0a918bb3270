//! What the updates of a file did: each may fill one field, and add what that field shows.

use std::collections::BTreeSet;

use lopdf::xref::XrefEntry;
use lopdf::{Dictionary, Document, Object, ObjectId};

use super::super::sign::fields;
use super::elements::is_left_out;
use super::parts::{Update, is_table};

/// Said where the updates can't be followed, so that nobody knows what was signed first.
pub const NO_BASE: &str = "The file before the first signature can't be told from it.";

/// The keys that a signature may have; others can change what it stands for.
const SIGNATURE_KEYS: [&[u8]; 8] =
    [b"Type", b"Filter", b"SubFilter", b"ByteRange", b"Contents", b"Name", b"Reason", b"M"];

/// What could change a page while it is looked at; a certificate holds nothing of it.
fn active(name: &[u8]) -> bool {
    matches!(
        name,
        b"JS"
            | b"JavaScript"
            | b"OpenAction"
            | b"AA"
            | b"XFA"
            | b"OCProperties"
            | b"RichMediaContent"
            | b"Movie"
            | b"Launch"
    )
}

/// Returns what is wrong with the updates of a file whose signatures end at `ends`, in their order.
pub fn flaws(updates: &[Update], ends: &[usize]) -> Vec<String> {
    let Some(first) = ends.first() else { return vec![] };
    let Some(place) = updates.iter().position(|update| update.end == *first) else {
        return vec![NO_BASE.into()];
    };
    let mut found = vec![];
    if place > 0 {
        found.push("The file was put together from several updates before it was signed.".into());
    }
    found.extend(updates[place..].iter().flat_map(|update| update.flaws.clone()));
    found
}

/// Returns what an update changed beyond filling one field.
pub fn changed(before: &Document, update: &Document) -> Vec<String> {
    let mut found = vec![];
    for key in [&b"Root"[..], b"Info", b"ID", b"Encrypt"] {
        if before.trailer.get(key).ok() != update.trailer.get(key).ok() {
            found.push(format!("An update changed the {} of the file.", String::from_utf8_lossy(key)));
        }
    }
    found.extend(lost(before, update));
    let known: Vec<ObjectId> = fields(before).into_iter().map(|(_, id)| id).collect();
    let mut filled = vec![];
    for (id, new) in update.objects.iter().filter(|(_, new)| !is_table(new)) {
        match before.objects.get(id) {
            Some(old) if known.contains(id) && fills(old, new) => filled.push(*id),
            Some(old) if new != old => found.push(format!("An update changed {} (object {}).", what(new), id.0)),
            Some(_) => {}
            None if renumbered(before, *id) => {
                found.push(format!("An update put {} (object {}) in another's place.", what(new), id.0));
            }
            None => {}
        }
    }
    let shown = match filled[..] {
        [field] => belongs(before, update, field),
        _ => {
            found.push(format!("An update filled {} signature fields; it may fill one.", filled.len()));
            BTreeSet::new()
        }
    };
    let added = |(id, new): &(&ObjectId, &Object)| !before.objects.contains_key(id) && !is_table(new);
    for (id, new) in update.objects.iter().filter(added) {
        if !shown.contains(id) {
            found.push(format!("An update added {} (object {}) that no signature shows.", what(new), id.0));
        } else if let Some(flaw) = strange(new) {
            found.push(format!("{flaw} (object {}).", id.0));
        }
    }
    found
}

/// Says whether the number was another object's, of another generation: whatever names that one finds it no more.
fn renumbered(before: &Document, (number, _): ObjectId) -> bool {
    before.objects.range((number, 0)..=(number, u16::MAX)).next().is_some()
}

/// Returns what an update takes out, by calling its place free, or by naming a place where nothing can be read.
fn lost(before: &Document, update: &Document) -> Vec<String> {
    let listed = update.reference_table.entries.iter();
    let gone = listed.filter(|(number, _)| **number != 0 && !update.objects.keys().any(|id| id.0 == **number));
    gone.filter_map(|(number, entry)| {
        let old = before.objects.iter().find(|(id, _)| id.0 == *number);
        match (old, entry) {
            (Some((_, old)), _) => Some(format!("An update took out {} (object {number}).", what(old))),
            (None, XrefEntry::Free | XrefEntry::UnusableFree) => None,
            (None, _) => Some(format!("An update holds something that can't be read (object {number}).")),
        }
    })
    .collect()
}

/// Says whether a field was empty and is now signed, and is otherwise the same.
fn fills(old: &Object, new: &Object) -> bool {
    let (Ok(old), Ok(new)) = (old.as_dict(), new.as_dict()) else { return false };
    let rest = |field: &Dictionary| {
        let mut rest = field.clone();
        rest.remove(b"V");
        rest.remove(b"AP");
        rest
    };
    let signature = old.get(b"FT").is_ok_and(|kind| kind.as_name().is_ok_and(|kind| kind == b"Sig"));
    let only_normal = new.get(b"AP").and_then(Object::as_dict).is_ok_and(|shown| shown.len() == 1 && shown.has(b"N"));
    signature && !old.has(b"V") && new.has(b"V") && only_normal && same(&rest(old), &rest(new))
}

fn same(one: &Dictionary, other: &Dictionary) -> bool {
    one.len() == other.len() && one.iter().all(|(key, value)| other.get(key).ok() == Some(value))
}

/// Returns the new objects that the signature and the appearance of a field lead to.
fn belongs(before: &Document, update: &Document, field: ObjectId) -> BTreeSet<ObjectId> {
    let mut found = BTreeSet::new();
    let mut open: Vec<&Object> = vec![];
    if let Ok(field) = update.get_dictionary(field) {
        open.extend([field.get(b"V").ok(), field.get(b"AP").ok()].into_iter().flatten());
    }
    while let Some(object) = open.pop() {
        match object {
            Object::Reference(id) if !before.objects.contains_key(id) && found.insert(*id) => {
                open.extend(update.objects.get(id));
            }
            Object::Array(all) => open.extend(all),
            Object::Dictionary(all) => open.extend(all.iter().map(|(_, value)| value)),
            Object::Stream(stream) => open.extend(stream.dict.iter().map(|(_, value)| value)),
            _ => {}
        }
    }
    found
}

/// Returns what an object that a signature brings must not be.
fn strange(object: &Object) -> Option<&'static str> {
    let plain = object.as_dict().or_else(|_| object.as_stream().map(|stream| &stream.dict)).ok()?;
    let unknown = |(key, _): (&Vec<u8>, &Object)| !SIGNATURE_KEYS.contains(&key.as_slice());
    if plain.has_type(b"Sig") && plain.iter().any(unknown) {
        return Some("A signature carries more than a signature");
    }
    let kinds: [&[u8]; 4] = [b"Page", b"Pages", b"Catalog", b"Annot"];
    kinds.iter().any(|kind| plain.has_type(kind)).then_some("A signature brings a page or a note of its own")
}

fn what(object: &Object) -> &'static str {
    if is_left_out(object) {
        return "the structure";
    }
    let plain = object.as_dict().or_else(|_| object.as_stream().map(|stream| &stream.dict)).ok();
    match plain.and_then(|plain| plain.get(b"Type").ok()?.as_name().ok()) {
        Some(b"Page" | b"Pages") => "a page",
        Some(b"Catalog") => "the catalog",
        Some(b"Annot") => "a field",
        Some(b"Font" | b"FontDescriptor") => "a font",
        Some(b"EmbeddedFile" | b"Filespec") => "the file inside",
        Some(b"Metadata") => "the description of the file",
        Some(b"Sig") => "a signature",
        Some(b"StructElem" | b"StructTreeRoot") => "the structure",
        _ => "what a page shows",
    }
}

/// Returns what could act by itself in a reader.
pub fn active_content(file: &Document) -> Option<String> {
    let found = file.objects.iter().find(|(_, object)| acts(object));
    found.map(|((number, _), _)| format!("The file holds something that acts by itself (object {number})."))
}

fn acts(object: &Object) -> bool {
    let mut open = vec![object];
    while let Some(object) = open.pop() {
        let inner = match object {
            Object::Array(all) => {
                open.extend(all);
                continue;
            }
            Object::Dictionary(inner) => inner,
            Object::Stream(stream) => &stream.dict,
            _ => continue,
        };
        for (key, value) in inner.iter() {
            if active(key) || value.as_name().is_ok_and(active) {
                return true;
            }
            open.push(value);
        }
    }
    false
}
