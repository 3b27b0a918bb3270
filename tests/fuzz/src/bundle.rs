//! Bundles. An input is either a bundle, or a list of its parts without hashes and signature: those are put in here, so
//! that the search is not stopped by them.
//!
//! A part is a line: `E` and one letter for its device, then the body of an entry; `J` the same, but after all heads;
//! `P` a photo.

use std::collections::HashMap;
use std::io::Cursor;

use mendline_core::bundle::{FORM, Head, Writer};
use mendline_core::door::{fingerprint, look_at_bundle};
use mendline_core::journal::{Entry, Hash, heads_of, link};
use mendline_core::seal::{PrivateKey, Seed};

use crate::folder::Folder;
use crate::record::repair_of;

pub fn run(bytes: &[u8]) {
    if bytes.starts_with(b"mendline-bundle\n") {
        let _ = look_at_bundle(bytes);
        return;
    }
    let bundle = sealed(bytes);
    assert!(look_at_bundle(&bundle[..]).is_ok(), "a bundle that was just made is refused");
    let mut folder = Folder::with_examples();
    let sensed = folder.sensed();
    let taken = folder.app().take_in(&mut Cursor::new(&bundle), None, &sensed);
    let again = folder.app().take_in(&mut Cursor::new(&bundle), None, &sensed);
    match (taken, again) {
        (Ok(_), again) => assert!(again.is_ok_and(|again| again.repairs.iter().all(|repair| repair.fresh == 0))),
        (Err(_), again) => assert!(again.is_err(), "refused at first, taken in afterwards"),
    }
    folder.ends_sound();
}

fn sealed(bytes: &[u8]) -> Vec<u8> {
    let key = PrivateKey::fresh(&Seed::new([7; 32]).expect("not all nought"));
    let head = Head { v: FORM, device: "phone".into(), key: fingerprint(&key), at_ms: 1_791_990_000_000 };
    let mut writer = Writer::begin(Vec::new(), &head).expect("memory takes it");
    let mut chain = Chain::default();
    for line in bytes.split(|byte| *byte == b'\n') {
        match line {
            [b'P', photo @ ..] => writer.photo(photo).expect("small enough"),
            [how @ (b'E' | b'J'), device, body @ ..] => {
                writer.entry(chain.add(*how == b'J', *device, body)).expect("small enough");
            }
            _ => {}
        }
    }
    writer.finish(&key).expect("memory takes it")
}

/// The entries of one repair, each device after its own last one.
#[derive(Default)]
struct Chain {
    repair: Option<String>,
    entries: Vec<Entry>,
    lasts: HashMap<u8, (u64, Hash)>,
}

impl Chain {
    fn add(&mut self, joins: bool, device: u8, body: &[u8]) -> &Entry {
        let repair = self.repair.get_or_insert_with(|| repair_of(&String::from_utf8_lossy(body))).clone();
        let own = self.lasts.get(&device).copied();
        let mut prev = match own {
            Some((_, hash)) if !joins => vec![hash],
            None if !joins => self.entries.first().map(|entry| entry.hash).into_iter().collect(),
            own => heads_of(&self.entries).into_iter().chain(own.map(|(_, hash)| hash)).collect(),
        };
        prev.sort();
        prev.dedup();
        let (seq, name) = (own.map_or(1, |(seq, _)| seq + 1), char::from(device).to_string());
        let hash = link(&repair, &name, seq, &prev, body);
        self.lasts.insert(device, (seq, hash));
        self.entries.push(Entry { repair, device: name, seq, prev, body: body.to_vec(), hash });
        &self.entries[self.entries.len() - 1]
    }
}
