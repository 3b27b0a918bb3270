//! What travels arrives as it was sent, or not at all.

use proptest::prelude::*;

use super::frame::{Kind, MAGIC};
use super::*;
use crate::journal::{Appended, Draft, Journal, Memory, Write, link};
use crate::seal::{PrivateKey, Seed};

const REPAIR: &str = "QM-26-014";
const DEVICES: [&str; 3] = ["laptop", "phone", "tablet"];

fn key(byte: u8) -> PrivateKey {
    PrivateKey::fresh(&Seed::new([byte; 32]).unwrap())
}

fn head_of(device: &str, key: &PrivateKey) -> Head {
    let point = key.public().to_sec1_point(true);
    let hex = point.as_bytes().iter().map(|byte| format!("{byte:02x}")).collect();
    Head { v: FORM, device: device.into(), key: hex, at_ms: 1_791_964_800_000 }
}

fn bundle(entries: &[Entry], photos: &[&[u8]]) -> Vec<u8> {
    let key = key(7);
    let mut writer = Writer::begin(Vec::new(), &head_of("phone", &key)).unwrap();
    entries.iter().for_each(|entry| writer.entry(entry).unwrap());
    photos.iter().for_each(|photo| writer.photo(photo).unwrap());
    writer.finish(&key).unwrap()
}

fn all(bytes: &[u8]) -> Result<Vec<Item>, Refused> {
    let mut reader = Reader::begin(bytes)?;
    let mut items = vec![];
    while let Some(item) = reader.item()? {
        items.push(item);
    }
    Ok(items)
}

fn entry(seq: u64, prev: Vec<Hash>, body: &str) -> Entry {
    let hash = link(REPAIR, "phone", seq, &prev, body.as_bytes());
    Entry { repair: REPAIR.into(), device: "phone".into(), seq, prev, body: body.into(), hash }
}

fn two() -> Vec<Entry> {
    let first = entry(1, vec![], "planned\n with a line in it");
    let second = entry(2, vec![first.hash], "go");
    vec![first, second]
}

#[test]
fn what_was_sent_arrives() {
    let items = all(&bundle(&two(), &[b"a photo"])).unwrap();
    let [first, second] = two().try_into().unwrap();
    assert_eq!(items, [Item::Entry(first), Item::Entry(second), Item::Photo(b"a photo".to_vec())]);
}

#[test]
fn the_same_content_gives_the_same_bytes() {
    assert_eq!(bundle(&two(), &[b"a photo"]), bundle(&two(), &[b"a photo"]));
}

/// One flipped bit anywhere is found, and so is every cut and every byte too many.
#[test]
fn no_change_passes() {
    let whole = bundle(&two(), &[b"a photo"]);
    for at in 0..whole.len() {
        let mut changed = whole.clone();
        changed[at] ^= 1 << (at % 8);
        assert!(all(&changed).is_err(), "byte {at}");
        assert!(all(&whole[..at]).is_err(), "cut at {at}");
    }
    assert!(all(&[&whole[..], b"x"].concat()).is_err());
    assert!(matches!(all(&whole[..whole.len() - 1]), Err(Refused::Cut { .. })));
}

fn framed(letter: u8, length: u64, content: &[u8]) -> Vec<u8> {
    [&MAGIC[..], &[letter], &length.to_le_bytes(), content].concat()
}

#[test]
fn what_claims_to_be_huge_is_refused_before_it_is_read() {
    for kind in [Kind::Head, Kind::Entry, Kind::Photo, Kind::Signature] {
        let refused = all(&framed(kind.letter(), u64::MAX, b"")).unwrap_err();
        assert_eq!(refused, Refused::TooLarge { at: 16, bytes: u64::MAX, most: kind.most() });
        // As much as is allowed, but it never comes.
        assert_eq!(all(&framed(kind.letter(), kind.most(), b"x")), Err(Refused::Cut { at: 16 }));
    }
}

#[test]
fn a_newer_form_is_named_whatever_else_it_holds() {
    let head = br#"{"v":2,"devices":["phone"],"more":true}"#;
    let refused = all(&framed(b'H', head.len() as u64, head)).unwrap_err();
    assert_eq!(refused, Refused::Newer { found: 2, known: FORM });
}

#[test]
fn what_is_no_bundle_is_named() {
    for bytes in [&b""[..], b"PK\x03\x04", b"mendline-bundle", &[0xff; 400]] {
        assert_eq!(all(bytes), Err(Refused::NotABundle));
    }
}

/// The key in the head is part of what is signed, so nobody can put another one there.
#[test]
fn a_signature_of_another_key_is_refused() {
    let writer = Writer::begin(Vec::new(), &head_of("phone", &key(7))).unwrap();
    assert_eq!(all(&writer.finish(&key(8)).unwrap()), Err(Refused::WrongSignature));
}

#[derive(Clone, Debug)]
enum Step {
    Write(usize),
    Send { from: usize, to: usize },
}

fn steps() -> impl Strategy<Value = Vec<Step>> {
    let device = || 0..DEVICES.len();
    let step = prop_oneof![
        2 => device().prop_map(Step::Write),
        1 => (device(), device()).prop_map(|(from, to)| Step::Send { from, to }),
    ];
    prop::collection::vec(step, 0..20)
}

fn write(request: &str, received: Vec<Entry>, drafts: Vec<Draft>) -> Write<'_> {
    let request_hash = Hash::of(request.as_bytes());
    Write { request, request_hash, received, drafts, rows: vec![], answer: vec![] }
}

/// Takes a bundle in, as the door does. Returns how many entries were new.
fn take(journal: &mut Memory, request: &str, bytes: &[u8]) -> usize {
    let entry = |item| if let Item::Entry(entry) = item { Some(entry) } else { None };
    let received = all(bytes).unwrap().into_iter().filter_map(entry).collect();
    match journal.append(&write(request, received, vec![])).unwrap() {
        Appended::Written(fresh) => fresh.len(),
        Appended::Repeated(_) => 0,
    }
}

/// Returns what each device sends after the steps.
fn sent(steps: &[Step]) -> Vec<Vec<u8>> {
    let mut journals = vec![Memory::new(); DEVICES.len()];
    for (number, step) in steps.iter().enumerate() {
        let request = format!("r{number}");
        match step {
            Step::Write(device) => {
                let heads = journals[*device].heads(REPAIR).unwrap();
                let (repair, device_id) = (REPAIR.to_owned(), DEVICES[*device].to_owned());
                let draft = Draft { repair, device: device_id, heads, branch: None, body: request.clone().into() };
                journals[*device].append(&write(&request, vec![], vec![draft])).unwrap();
            }
            Step::Send { from, to } => {
                let bytes = bundle(&journals[*from].entries(REPAIR).unwrap(), &[]);
                take(&mut journals[*to], &request, &bytes);
            }
        }
    }
    journals.iter().map(|journal| bundle(&journal.entries(REPAIR).unwrap(), &[])).collect()
}

proptest! {
    /// In any order, grouped in any way, once or twice: the same journal.
    #[test]
    fn taking_in_is_idempotent_commutative_and_associative(steps in steps(), order in Just([0, 1, 2]).prop_shuffle()) {
        let sent = sent(&steps);
        let mut straight = Memory::new();
        for (number, bytes) in sent.iter().enumerate() {
            take(&mut straight, &format!("t{number}"), bytes);
        }
        let mut shuffled = Memory::new();
        for (number, device) in order.iter().enumerate() {
            take(&mut shuffled, &format!("t{number}"), &sent[*device]);
            prop_assert_eq!(take(&mut shuffled, &format!("again{number}"), &sent[*device]), 0);
        }
        // (a + b) + c, with a + b sent on as one bundle, in the shuffled order.
        let mut pair = Memory::new();
        take(&mut pair, "a", &sent[order[1]]);
        take(&mut pair, "b", &sent[order[2]]);
        let mut grouped = Memory::new();
        take(&mut grouped, "a+b", &bundle(&pair.entries(REPAIR).unwrap(), &[]));
        take(&mut grouped, "c", &sent[order[0]]);
        prop_assert_eq!(straight.entries(REPAIR), shuffled.entries(REPAIR));
        prop_assert_eq!(straight.entries(REPAIR), grouped.entries(REPAIR));
        prop_assert_eq!(straight.heads(REPAIR), grouped.heads(REPAIR));
    }

    #[test]
    fn no_bytes_make_the_reader_fail(bytes in prop::collection::vec(any::<u8>(), 0..300)) {
        let _ = all(&bytes);
        let _ = all(&[&MAGIC[..], &bytes].concat());
    }
}
