//! A bundle that means harm is refused, and the data folder is byte for byte as it was before.

use mendline_core::bundle::{FORM, Head, Writer};
use mendline_core::door::fingerprint;
use mendline_core::journal::{Entry, Hash, link};
use mendline_core::seal::{PrivateKey, Seed};

use super::{Device, with_photo};

const MAGIC: &[u8] = b"mendline-bundle\n";

fn evil() -> PrivateKey {
    PrivateKey::fresh(&Seed::new([66; 32]).expect("random"))
}

/// Takes the bundle in both ways, at once and piece by piece. Neither may leave anything behind.
fn refuses(device: &mut Device, bytes: &[u8], says: &str) {
    let before = device.everything();
    let refused = device.take(bytes).expect_err(says);
    assert!(refused.contains(says), "{refused}");
    assert!(device.everything() == before, "{says}: something was written");
    device.bring("evil.mendline", bytes);
    let refused = device.take_brought("evil.mendline", bytes.len());
    let told = refused["error"]["says"].as_str().unwrap_or_else(|| panic!("{says}: {refused}")).to_owned();
    assert!(told.contains(says), "{told}");
    assert!(device.everything() == before, "{says}: something was left behind");
}

/// Returns a bundle with these entries and photos, soundly signed by whoever made it.
fn made(device: &str, key: &PrivateKey, entries: &[Entry], photos: &[&[u8]]) -> Vec<u8> {
    let head = Head { v: FORM, device: device.into(), key: fingerprint(key), at_ms: 0 };
    let mut writer = Writer::begin(vec![], &head).expect("a head");
    entries.iter().for_each(|entry| writer.entry(entry).expect("an entry"));
    photos.iter().for_each(|photo| writer.photo(photo).expect("a photo"));
    writer.finish(key).expect("a signature")
}

fn case(entries: &[Entry], photos: &[&[u8]]) -> Vec<u8> {
    made("evil", &evil(), entries, photos)
}

fn entry(repair: &str, seq: u64, prev: Vec<Hash>, body: &[u8]) -> Entry {
    let hash = link(repair, "evil", seq, &prev, body);
    Entry { repair: repair.into(), device: "evil".into(), seq, prev, body: body.to_vec(), hash }
}

/// Returns the frames of a bundle: each with its letter, its length and its content.
fn frames(bytes: &[u8]) -> Vec<Vec<u8>> {
    let mut rest = &bytes[MAGIC.len()..];
    let mut found = vec![];
    while !rest.is_empty() {
        let length = u64::from_le_bytes(rest[1..9].try_into().expect("eight bytes")) as usize;
        let (frame, behind) = rest.split_at(9 + length);
        found.push(frame.to_vec());
        rest = behind;
    }
    found
}

fn joined(frames: &[Vec<u8>]) -> Vec<u8> {
    [MAGIC.to_vec(), frames.concat()].concat()
}

fn frame(letter: u8, length: u64, content: &[u8]) -> Vec<u8> {
    [&[letter][..], &length.to_le_bytes(), content].concat()
}

fn head_of(v: u32) -> Vec<u8> {
    let head = Head { v, device: "evil".into(), key: fingerprint(&evil()), at_ms: 0 };
    let text = serde_json::to_vec(&head).expect("JSON");
    frame(b'H', text.len() as u64, &text)
}

#[test]
fn a_path_reaches_nothing() {
    let (mut phone, mut laptop) = (Device::new("phone"), Device::new("laptop"));
    let repair = with_photo(&mut phone);
    for path in ["../../etc/passwd", "/etc/passwd", "..\\..\\boot.ini", "photos/../../device-key", "\0"] {
        refuses(&mut laptop, &case(&[entry(path, 1, vec![], b"{}")], &[]), "can't be read");
        // With a sound body too: the repair inside is another one than the entry says.
        let body = phone.entries(&repair)[0].body.clone();
        refuses(&mut laptop, &case(&[entry(path, 1, vec![], &body)], &[]), "does not open it");
    }
    for name in ["shelf", "", &"x".repeat(201)] {
        refuses(&mut laptop, &case(&[entry(name, 1, vec![], b"{}")], &[]), "belong to no repair");
    }
}

#[test]
fn nothing_can_swell() {
    let mut laptop = Device::new("laptop");
    // A zip bomb and a packed file are no bundles: nothing of a bundle is ever unpacked.
    refuses(&mut laptop, b"PK\x03\x04 a zip file", "not a bundle");
    refuses(&mut laptop, b"\x1f\x8b\x08 packed", "not a bundle");
    // A part that says it is huge: refused by its length, before a byte of it is asked for.
    for (letter, most) in [(b'E', 8 << 20), (b'P', 64 << 20), (b'S', 4 << 10), (b'H', 4 << 10)] {
        for length in [most + 1, 1 << 40, u64::MAX] {
            let bytes = joined(&[head_of(FORM), frame(letter, length, b"")]);
            refuses(&mut laptop, &bytes, "are allowed");
        }
        // As large as allowed, and not there: no memory is taken for what does not come.
        let bytes = joined(&[head_of(FORM), frame(letter, most, b"only this")]);
        refuses(&mut laptop, &bytes, "did not arrive whole");
    }
}

#[test]
fn huge_counts_are_refused() {
    let (mut phone, mut laptop) = (Device::new("phone"), Device::new("laptop"));
    let repair = with_photo(&mut phone);
    let first = phone.entries(&repair)[0].clone();
    // Entries of more devices than any crew has.
    let many: Vec<Entry> = (0..40)
        .map(|n| {
            let device = format!("device-{n}");
            let body = phone.entries(&repair)[1].body.clone();
            let hash = link(&repair, &device, 1, &[first.hash], &body);
            Entry { repair: repair.clone(), device, seq: 1, prev: vec![first.hash], body, hash }
        })
        .collect();
    refuses(&mut laptop, &case(&[vec![first.clone()], many].concat(), &[]), "32 are allowed");
    // A number far ahead, and the highest there is.
    for seq in [3, u64::MAX] {
        let body = phone.entries(&repair)[1].body.clone();
        let hash = link(&repair, &first.device, seq, &[first.hash], &body);
        let far = Entry { seq, prev: vec![first.hash], body, hash, ..first.clone() };
        refuses(&mut laptop, &case(&[first.clone(), far], &[]), "should be number 2");
    }
    // An entry that follows very many others that are not there.
    let prev: Vec<Hash> = (0..10_000_u32)
        .map(|n| Hash::of(&n.to_le_bytes()))
        .collect::<std::collections::BTreeSet<_>>()
        .into_iter()
        .collect();
    refuses(&mut laptop, &case(&[entry(&repair, 1, prev, &first.body)], &[]), "which is missing");
}

#[test]
fn wrong_hashes_and_stray_files_are_refused() {
    let (mut phone, mut laptop) = (Device::new("phone"), Device::new("laptop"));
    let repair = with_photo(&mut phone);
    let sound = phone.entries(&repair);
    let mut changed = sound.clone();
    changed[1].body.push(b' ');
    refuses(&mut laptop, &case(&changed, &[]), "its bytes no longer give its hash");
    let mut renamed = sound.clone();
    renamed[1].hash = Hash::of(b"another");
    refuses(&mut laptop, &case(&renamed, &[]), "its bytes no longer give its hash");
    refuses(&mut laptop, &case(&sound[1..], &[]), "should be number 1");
    refuses(&mut laptop, &case(&sound, &[b"\x89PNG\r\n\x1a\nother"]), "none of its entries names");
    refuses(&mut laptop, &case(&sound, &[b"#!/bin/sh"]), "no photo");
    refuses(&mut laptop, &case(&[entry("R", 1, vec![], br#"{"v":1}"#)], &[]), "can't be read");
}

#[test]
fn a_future_form_is_named_as_such() {
    let mut laptop = Device::new("laptop");
    refuses(&mut laptop, &joined(&[head_of(FORM + 1)]), "newer Mendline");
    refuses(&mut laptop, &joined(&[head_of(u32::MAX)]), "newer Mendline");
    refuses(&mut laptop, &case(&[entry("R", 1, vec![], br#"{"v":99}"#)], &[]), "newer");
    refuses(&mut laptop, &joined(&[head_of(FORM), frame(b'X', 0, b"")]), "unknown kind");
}

#[test]
fn nobody_speaks_for_another_device() {
    let (mut phone, mut laptop) = (Device::new("phone"), Device::new("laptop"));
    let repair = with_photo(&mut phone);
    let sound = phone.entries(&repair);
    laptop.take(&phone.send(&[])).expect("the phone is met");
    // Sound in every other way, but with a key of somebody else.
    refuses(&mut laptop, &made("phone", &evil(), &sound, &[]), "by another key");
    // The head of the phone, signed by somebody else.
    let mut stolen = frames(&phone.send(&[]));
    let signature = frames(&case(&sound, &[])).pop().expect("a signature");
    *stolen.last_mut().expect("a signature") = signature;
    refuses(&mut laptop, &joined(&stolen), "signature of the bundle is not right");
}

#[test]
fn cut_reordered_doubled_and_lengthened_bundles_are_refused() {
    let (mut phone, mut laptop) = (Device::new("phone"), Device::new("laptop"));
    with_photo(&mut phone);
    let whole = phone.send(&[]);
    let parts = frames(&whole);
    assert_eq!(parts.len(), 5, "head, two entries, a photo, a signature");
    // Cut at every border of a part, and around it.
    let mut at = MAGIC.len();
    for part in &parts {
        for cut in [at, at + 1, at + 9, at + part.len() / 2] {
            let cut = &whole[..cut.min(whole.len() - 1)];
            refuses(&mut laptop, cut, "did not arrive whole");
        }
        at += part.len();
    }
    for (one, other) in [(1, 2), (1, 3), (2, 3)] {
        let mut swapped = parts.clone();
        swapped.swap(one, other);
        refuses(&mut laptop, &joined(&swapped), "");
    }
    for place in 1..4 {
        let mut fewer = parts.clone();
        fewer.remove(place);
        refuses(&mut laptop, &joined(&fewer), "signature of the bundle is not right");
        let mut doubled = parts.clone();
        doubled.insert(place, parts[place].clone());
        refuses(&mut laptop, &joined(&doubled), "signature of the bundle is not right");
    }
    let mut headed = parts.clone();
    headed.insert(1, parts[0].clone());
    refuses(&mut laptop, &joined(&headed), "second head");
    refuses(&mut laptop, &[&whole[..], b"more"].concat(), "behind the signature");
    refuses(&mut laptop, &[&whole[..], &whole[..]].concat(), "behind the signature");
    // What was refused so often is taken in when it comes as it was sent.
    laptop.take(&whole).expect("it is taken in");
}

/// Every single byte counts, wherever it stands.
#[test]
fn a_bundle_with_one_changed_byte_is_refused() {
    let (mut phone, mut laptop) = (Device::new("phone"), Device::new("laptop"));
    with_photo(&mut phone);
    let whole = phone.send(&[]);
    let before = laptop.everything();
    for place in (0..whole.len()).step_by(7) {
        let mut changed = whole.clone();
        changed[place] ^= 1;
        assert!(laptop.take(&changed).is_err(), "byte {place}");
    }
    assert!(laptop.everything() == before);
}
