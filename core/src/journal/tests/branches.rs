//! Properties of random branches, written on several devices that know more or less of each other.

use std::collections::{BTreeMap, BTreeSet};

use proptest::prelude::*;

use super::*;

/// One step of a made-up history: a device writes after the heads of its own journal, or takes in what another has.
#[derive(Clone, Debug)]
enum Step {
    Write(usize),
    Take { from: usize, to: usize },
}

const DEVICES: [&str; 3] = ["laptop", "phone", "tablet"];

fn steps() -> impl Strategy<Value = Vec<Step>> {
    let device = || 0..DEVICES.len();
    let step = prop_oneof![
        2 => device().prop_map(Step::Write),
        1 => (device(), device()).prop_map(|(from, to)| Step::Take { from, to }),
    ];
    prop::collection::vec(step, 0..30)
}

/// Returns what each device holds after the steps.
fn play(steps: &[Step]) -> Vec<Memory> {
    let mut journals = vec![Memory::new(); DEVICES.len()];
    for (number, step) in steps.iter().enumerate() {
        let request = format!("r{number}");
        match step {
            Step::Write(device) => {
                let heads = journals[*device].heads(REPAIR).unwrap();
                let draft = Draft { device: DEVICES[*device].into(), ..draft(heads, &request) };
                written(journals[*device].append(&write(&request, vec![draft])));
            }
            Step::Take { from, to } => {
                let bundle = journals[*from].entries(REPAIR).unwrap();
                written(receive(&mut journals[*to], &request, bundle));
            }
        }
    }
    journals
}

fn everything(journals: &[Memory]) -> Memory {
    let mut all = Memory::new();
    for (number, journal) in journals.iter().enumerate() {
        written(receive(&mut all, &format!("all-{number}"), journal.entries(REPAIR).unwrap()));
    }
    all
}

proptest! {
    #[test]
    fn each_entry_comes_after_those_that_it_follows(steps in steps()) {
        let entries = everything(&play(&steps)).entries(REPAIR).unwrap();
        let mut seen = BTreeSet::new();
        for entry in &entries {
            prop_assert!(entry.prev.iter().all(|prev| seen.contains(prev)));
            seen.insert(entry.hash);
        }
        let writes = steps.iter().filter(|step| matches!(step, Step::Write(_))).count();
        prop_assert_eq!(entries.len(), writes);
    }

    #[test]
    fn the_order_does_not_depend_on_who_came_first(steps in steps()) {
        let mut journals = play(&steps);
        let forwards = everything(&journals);
        journals.reverse();
        let backwards = everything(&journals);
        prop_assert_eq!(forwards.entries(REPAIR), backwards.entries(REPAIR));
        prop_assert_eq!(forwards.heads(REPAIR), backwards.heads(REPAIR));
    }

    #[test]
    fn an_entry_names_its_own_last_and_every_head_that_it_saw(steps in steps()) {
        let entries = everything(&play(&steps)).entries(REPAIR).unwrap();
        let mut own: BTreeMap<&str, &Entry> = BTreeMap::new();
        for entry in &entries {
            let last = own.insert(&entry.device, entry);
            prop_assert_eq!(entry.seq, last.map_or(1, |last| last.seq + 1));
            prop_assert!(last.is_none_or(|last| entry.prev.contains(&last.hash)));
        }
    }

    #[test]
    fn an_entry_on_all_heads_joins_them(steps in steps()) {
        let mut all = everything(&play(&steps));
        let joined = add(&mut all, "join");
        prop_assert_eq!(all.heads(REPAIR), Ok(vec![joined.hash]));
        let entries = all.entries(REPAIR).unwrap();
        prop_assert_eq!(heads_of(&entries), vec![joined.hash]);
        prop_assert_eq!(entries.last(), Some(&joined));
    }

    #[test]
    fn any_flipped_bit_of_any_entry_is_found(steps in steps(), pick: prop::sample::Index, bit: prop::sample::Index) {
        let mut entries = everything(&play(&steps)).entries(REPAIR).unwrap();
        prop_assume!(!entries.is_empty());
        let place = pick.index(entries.len());
        let entry = &mut entries[place];
        let mut bytes: Vec<u8> = entry.prev.iter().flat_map(|hash| *hash.as_bytes()).collect();
        let (prev, body) = (bytes.len(), entry.body.len());
        bytes.extend(&entry.body);
        bytes.extend(entry.hash.as_bytes());
        bytes.extend(entry.seq.to_le_bytes());
        let bit = bit.index(bytes.len() * 8);
        bytes[bit / 8] ^= 1 << (bit % 8);
        entry.prev = bytes[..prev].as_chunks::<32>().0.iter().copied().map(Hash::from_bytes).collect();
        entry.body = bytes[prev..prev + body].to_vec();
        entry.hash = Hash::from_bytes(bytes[prev + body..prev + body + 32].try_into().unwrap());
        entry.seq = u64::from_le_bytes(bytes[prev + body + 32..].try_into().unwrap());
        let damage = Damage { repair: REPAIR.into(), device: entry.device.clone(), seq: entry.seq, flaw: Flaw::Altered };
        prop_assert_eq!(check(&entries), Err(Fault::Unsound(damage)));
    }

    #[test]
    fn any_entry_with_a_follower_is_missed_when_taken_out(steps in steps(), pick: prop::sample::Index) {
        let mut entries = everything(&play(&steps)).entries(REPAIR).unwrap();
        let heads = heads_of(&entries);
        prop_assume!(entries.len() > heads.len());
        let followed: Vec<usize> = (0..entries.len()).filter(|place| !heads.contains(&entries[*place].hash)).collect();
        entries.remove(followed[pick.index(followed.len())]);
        prop_assert!(check(&entries).is_err());
    }
}
