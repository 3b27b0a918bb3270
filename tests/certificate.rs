//! The certificate as a reader gets it: judged by other people's PDF tools and by its own display list.

mod archive;
mod code;
mod fields;
mod hostile;
mod pages;
mod pdf;
mod photos;
mod tags;

use mendline_core::certificate::Content;
use mendline_core::certificate::content::{Known, RecordCopy};
use sha2::{Digest, Sha256};
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

/// The invented certificates in `fixtures/certificates`.
pub const NAMES: [&str; 6] = ["accepted", "rejected", "rehearsal", "unrepaired", "edge", "stress"];

fn fixtures() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../fixtures")
}

/// Returns a certificate of the fixtures, with the bytes of its photos.
pub fn content(name: &str) -> Content {
    let path = fixtures().join("certificates").join(format!("{name}.json"));
    let text = std::fs::read_to_string(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
    let mut content: Content = serde_json::from_str(&text).unwrap_or_else(|error| panic!("{name}: {error}"));
    let pictures = pictures();
    for photo in &mut content.photos {
        if let Known::Known(copy) = &mut photo.copy {
            copy.jpeg = pictures.get(&copy.sha256).cloned().unwrap_or_default();
        }
    }
    content.record = record();
    content
}

/// A record to lie inside: what it says is tested elsewhere, that it comes out as it went in here.
pub fn record() -> Known<RecordCopy> {
    let json = br#"{"form":"mendline-record/1"}"#.to_vec();
    Known::Known(RecordCopy { name: "record.json".into(), sha256: sha256(&json), json })
}

/// The pictures of `fixtures/photos` by their hash.
fn pictures() -> BTreeMap<String, Vec<u8>> {
    let files = std::fs::read_dir(fixtures().join("photos")).expect("the fixtures have photos");
    let bytes = files.map(|file| std::fs::read(file.expect("a file").path()).expect("a picture"));
    bytes.map(|bytes| (sha256(&bytes), bytes)).collect()
}

pub fn sha256(bytes: &[u8]) -> String {
    Sha256::digest(bytes).iter().map(|byte| format!("{byte:02x}")).collect()
}
