//! Taking in is idempotent, commutative and associative: real journals, cut and sent in any way, end as one journal.

use mendline_core::bundle::{FORM, Head, Writer};
use mendline_core::door::{App, fingerprint};
use mendline_core::journal::{Entry, Hash, Journal, Sqlite, codec};
use mendline_core::procedure::{Event, Record};
use mendline_core::seal::{PrivateKey, Seed};
use mendline_tests::rehearsal;
use proptest::prelude::*;
use serde_json::{Value, json};

use super::Device;

/// The journal of a whole job: two attempts, a hold with a gap, waivers, a correction, photos, signatures.
fn job() -> Vec<Vec<Entry>> {
    let kept = Sqlite::open(&rehearsal().join("data/journal.sqlite")).expect("it opens");
    let repairs = kept.repairs().expect("repairs");
    repairs.iter().map(|repair| kept.entries(repair).expect("a whole chain")).collect()
}

fn key(of: &str) -> PrivateKey {
    PrivateKey::fresh(&Seed::new([of.len() as u8 + of.as_bytes()[0]; 32]).expect("random"))
}

fn bundle(from: &str, entries: &[Entry]) -> Vec<u8> {
    let head = Head { v: FORM, device: from.into(), key: fingerprint(&key(from)), at_ms: 0 };
    let mut writer = Writer::begin(vec![], &head).expect("a head");
    entries.iter().for_each(|entry| writer.entry(entry).expect("an entry"));
    writer.finish(&key(from)).expect("a signature")
}

/// A device goes on from some entry of a real journal, and writes so many of its own.
#[derive(Clone, Debug)]
struct Branch {
    device: usize,
    from: prop::sample::Index,
    notes: usize,
}

const DEVICES: [&str; 4] = ["tablet", "office", "second phone", "van"];

/// What is sent: by whom, and up to which entry of each repair.
#[derive(Clone, Debug)]
struct Sent {
    by: usize,
    cut: prop::sample::Index,
}

fn branches() -> impl Strategy<Value = Vec<Branch>> {
    let one = (0..DEVICES.len(), any::<prop::sample::Index>(), 1..4_usize);
    prop::collection::vec(one.prop_map(|(device, from, notes)| Branch { device, from, notes }), 0..4)
}

/// Returns the entries of a repair with branches off them, each after all that it follows.
fn grown(base: &[Entry], branches: &[Branch]) -> Vec<Entry> {
    let mut all = base.to_vec();
    for (number, branch) in branches.iter().enumerate() {
        // A device of its own for each branch: a device never leaves its own line.
        let device = format!("{} {number}", DEVICES[branch.device]);
        let mut prev = base[branch.from.index(base.len())].hash;
        for seq in 1..=branch.notes as u64 {
            let mut record: Record = codec::decode(&base[0]).expect("a record");
            record.facts.device.clone_from(&device);
            record.events = vec![Event::Noted { text: format!("{device}, {seq}") }];
            let body = codec::encode(&record).expect("bytes");
            let repair = base[0].repair.clone();
            let hash = mendline_core::journal::link(&repair, &device, seq, &[prev], &body);
            all.push(Entry { repair, device: device.clone(), seq, prev: vec![prev], body, hash });
            prev = hash;
        }
    }
    all
}

/// Returns the part of a journal that somebody had at some moment: some entries, and all that they follow.
fn part(all: &[Entry], upto: usize) -> Vec<Entry> {
    let mut wanted: std::collections::HashSet<Hash> = [all[upto].hash].into();
    let mut kept = vec![];
    for entry in all.iter().rev() {
        if wanted.contains(&entry.hash) {
            wanted.extend(&entry.prev);
            kept.push(entry.clone());
        }
    }
    kept.reverse();
    kept
}

/// All that can be told of a folder: chains, heads, and what the screens show of each repair and of the lists.
#[derive(Debug, PartialEq)]
struct State {
    entries: Vec<Vec<Entry>>,
    heads: Vec<Vec<Hash>>,
    shown: Vec<Value>,
    listed: Value,
}

fn state(device: &mut Device, repairs: &[String]) -> State {
    let kept = Sqlite::open(&device.folder.path().join("journal.sqlite")).expect("it opens");
    let told = |device: &mut Device, repair: &String| {
        // Everybody looks at the same moment.
        let envelope = json!({ "id": "look", "request": { "do": "repair", "repair": repair } }).to_string();
        let sensed = mendline_core::facts::Sensed { device: device.name.into(), ..Default::default() };
        let answer: Value = serde_json::from_str(&device.app.handle(&envelope, &sensed)).expect("JSON");
        assert!(answer["ok"].is_object(), "{answer}");
        answer["ok"]["repair"].clone()
    };
    State {
        entries: repairs.iter().map(|repair| kept.entries(repair).expect("a chain")).collect(),
        heads: repairs.iter().map(|repair| kept.heads(repair).expect("a chain")).collect(),
        shown: repairs.iter().map(|repair| told(device, repair)).collect(),
        listed: device.ok(json!({ "do": "list" }))["repairs"].clone(),
    }
}

fn receiver() -> Device {
    let folder = mendline_tests::empty_folder();
    let app = App::open(folder.path()).expect("the folder opens");
    Device { folder, app, name: "receiver", seconds: 0 }
}

fn taken(bundles: impl IntoIterator<Item = Vec<u8>>, repairs: &[String]) -> (State, Device) {
    let mut device = receiver();
    for bytes in bundles {
        device.take(&bytes).expect("it is taken in");
    }
    (state(&mut device, repairs), device)
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 6, max_shrink_iters: 20, ..ProptestConfig::default() })]

    #[test]
    fn however_real_journals_are_cut_sent_and_grouped_they_end_as_one(
        branches in branches(),
        cuts in prop::collection::vec((0..DEVICES.len(), any::<prop::sample::Index>()).prop_map(|(by, cut)| Sent { by, cut }), 1..5),
        order in Just((0..32_usize).collect::<Vec<_>>()).prop_shuffle(),
        groups in prop::collection::vec(any::<bool>(), 32),
    ) {
        let journals: Vec<Vec<Entry>> = job().iter().map(|base| grown(base, &branches)).collect();
        let mut repairs: Vec<String> = journals.iter().map(|all| all[0].repair.clone()).collect();
        repairs.sort();
        // Parts of each repair, and at the end of the list every branch of every repair whole.
        let mut parts: Vec<(usize, Vec<Entry>)> = vec![];
        for all in &journals {
            parts.extend(cuts.iter().map(|sent| (sent.by, part(all, sent.cut.index(all.len())))));
            let heads = mendline_core::journal::heads_of(all);
            let whole = all.iter().enumerate().filter(|(_, entry)| heads.contains(&entry.hash));
            parts.extend(whole.map(|(place, _)| (place % DEVICES.len(), part(all, place))));
        }
        let sent: Vec<Vec<u8>> = parts.iter().map(|(by, entries)| bundle(DEVICES[*by], entries)).collect();
        let (straight, mut once) = taken(sent.clone(), &repairs);
        // All of it is there, and nothing else.
        for (all, there) in journals.iter().map(|all| (all, &straight.entries[repairs.iter().position(|id| *id == all[0].repair).expect("known")])) {
            prop_assert_eq!(all.len(), there.len());
        }
        // Idempotent: everything again, in any order, writes nothing.
        let before = once.everything();
        for place in order.iter().filter(|place| **place < sent.len()) {
            let again = once.take(&sent[*place]).expect("again");
            prop_assert!(again.repairs.iter().all(|repair| repair.fresh == 0) && !again.first_met);
        }
        prop_assert!(once.everything() == before, "taking in again wrote something");
        prop_assert_eq!(&state(&mut once, &repairs), &straight);
        // Commutative: in another order.
        let mut rest: Vec<usize> = order.iter().copied().filter(|place| *place < sent.len()).collect();
        rest.extend(32..sent.len());
        let (shuffled, _) = taken(rest.iter().map(|place| sent[*place].clone()), &repairs);
        prop_assert_eq!(&shuffled, &straight);
        // Associative: some are first put together by others, who send on what they have.
        let mut grouped = vec![];
        let mut device = receiver();
        for (turn, place) in rest.iter().enumerate() {
            device.take(&sent[*place]).expect("it is taken in");
            if groups[turn % groups.len()] {
                grouped.push(device.send(&[]));
                device = receiver();
            }
        }
        let mut last = vec![];
        if !Sqlite::open(&device.folder.path().join("journal.sqlite")).expect("it opens").repairs().expect("repairs").is_empty() {
            last.push(device.send(&[]));
        }
        let (associated, mut end) = taken(grouped.into_iter().chain(last), &repairs);
        prop_assert_eq!(&associated, &straight);
        // And the lists made anew say the same as those that grew.
        end.ok(json!({ "do": "rebuild" }));
        prop_assert_eq!(&state(&mut end, &repairs), &straight);
    }
}
