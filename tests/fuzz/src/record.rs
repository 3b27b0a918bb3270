//! Record files. An input is either such a file, or the bodies of its entries, a line each: those are linked here, so
//! that the search is not stopped by hashes.

use mendline_core::door::{Finding, check_record};
use mendline_core::journal::{Entry, Hash, heads_of, link};
use serde_json::{Value, json};

use crate::folder::Folder;

const DEVICE: &str = "k3f0rehearsal";

pub fn run(bytes: &[u8]) {
    if bytes.starts_with(b"{\"form\"") || bytes.starts_with(b"{\n") {
        let _ = check_record("a.json", bytes);
        return;
    }
    let Ok(text) = std::str::from_utf8(bytes) else { return };
    let file = file(&linked(text.lines()));
    let verdict = check_record("a.json", file.to_string().as_bytes());
    if verdict.told.is_none() {
        return;
    }
    assert_ne!(verdict.finding, Finding::Unreadable, "told of what can't be read");
    let mut folder = Folder::with_examples();
    let taken = folder.import(&file.to_string());
    assert!(taken.is_object());
    folder.ends_sound();
}

/// Returns entries of one device, each after the one before.
pub fn linked<'a>(bodies: impl Iterator<Item = &'a str>) -> Vec<Entry> {
    let mut bodies = bodies.peekable();
    let repair = bodies.peek().map_or_else(String::new, |first| repair_of(first));
    let mut entries: Vec<Entry> = vec![];
    for (place, body) in bodies.enumerate() {
        let prev: Vec<Hash> = entries.last().map(|entry| entry.hash).into_iter().collect();
        let seq = place as u64 + 1;
        let hash = link(&repair, DEVICE, seq, &prev, body.as_bytes());
        entries.push(Entry { repair: repair.clone(), device: DEVICE.into(), seq, prev, body: body.into(), hash });
    }
    entries
}

/// Returns the id of the repair that this body opens.
pub fn repair_of(body: &str) -> String {
    let body: Value = serde_json::from_str(body).unwrap_or_default();
    body["events"][0]["id"].as_str().unwrap_or("none").to_owned()
}

/// Returns the record file that holds these entries.
pub fn file(entries: &[Entry]) -> Value {
    let shown = |entry: &Entry| {
        let body = String::from_utf8_lossy(&entry.body);
        json!({ "device": entry.device, "seq": entry.seq, "prev": entry.prev, "hash": entry.hash, "body": body })
    };
    // What stands at the top must be what the first entry says.
    let first: Value = entries.first().and_then(|entry| serde_json::from_slice(&entry.body).ok()).unwrap_or_default();
    let opened = &first["events"][0];
    json!({
        "form": "mendline-record/1",
        "rehearsal": opened["rehearsal"].as_bool().unwrap_or_default(),
        "repair": entries.first().map_or("", |entry| &entry.repair),
        "number": opened["number"].as_str().unwrap_or_default(),
        "heads": heads_of(entries),
        "entries": entries.iter().map(shown).collect::<Vec<_>>(),
    })
}
