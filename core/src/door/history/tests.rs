//! Two devices on one repair: both go on, nothing is joined unseen, the foreman chooses, and any order gives the same.

use proptest::prelude::*;

use super::*;
use crate::facts::{Facts, Moment};
use crate::journal::{Draft, Journal, Memory, Write};
use crate::procedure::tests::kit::World;

const REPAIR: &str = "R-1";
const DEVICES: [&str; 3] = ["laptop", "phone", "tablet"];

/// A device that writes as the store does.
struct Device {
    name: &'static str,
    journal: Memory,
    requests: usize,
}

impl Device {
    fn new(name: &'static str) -> Self {
        Self { name, journal: Memory::new(), requests: 0 }
    }

    fn write(&mut self, events: Vec<Event>, received: Vec<Entry>) {
        self.requests += 1;
        let request = format!("{}-{}", self.name, self.requests);
        let heads = self.journal.heads(REPAIR).unwrap();
        let chooses = events.iter().any(|event| matches!(event, Event::BranchChosen { .. }));
        let branch = (heads.len() > 1 && !chooses).then(|| self.history().own(self.name).unwrap());
        let moment = Moment { at_ms: self.requests as i64, boot_id: self.name.into(), ..Moment::default() };
        let facts = Facts { moment, device: self.name.into(), ..Facts::default() };
        let body = codec::encode(&Record { facts, events: events.clone() }).unwrap();
        let draft = Draft { repair: REPAIR.into(), device: self.name.into(), heads, branch, body };
        let drafts = if events.is_empty() { vec![] } else { vec![draft] };
        let request_hash = Hash::of(request.as_bytes());
        let write = Write { request: &request, request_hash, received, drafts, rows: vec![], answer: vec![] };
        self.journal.append(&write).unwrap();
    }

    fn note(&mut self, text: &str) {
        self.write(vec![Event::Noted { text: text.into() }], vec![]);
    }

    fn take(&mut self, from: &[Entry]) {
        self.write(vec![], from.to_vec());
    }

    fn choose(&mut self, head: Hash) {
        let over = self.history().heads().iter().filter(|one| **one != head).map(Hash::to_string).collect();
        let (reason, foreman) = ("the phone was at the manhole".into(), "varga".into());
        self.write(vec![Event::BranchChosen { head: head.to_string(), over, reason, foreman }], vec![]);
    }

    fn entries(&self) -> Vec<Entry> {
        self.journal.entries(REPAIR).unwrap()
    }

    fn history(&self) -> History {
        History::read(self.entries()).unwrap()
    }

    fn notes(&self) -> Vec<String> {
        let repair = self.history().seen_by(self.name).unwrap();
        repair.notes.into_iter().map(|note| note.text).collect()
    }
}

fn opened() -> Event {
    let events = World::opened().records.remove(0).events;
    let opened = events.into_iter().find(|event| matches!(event, Event::Opened { .. }));
    opened.unwrap()
}

/// The phone opens a repair, the laptop has it, and both go on.
fn apart() -> (Device, Device) {
    let (mut phone, mut laptop) = (Device::new("phone"), Device::new("laptop"));
    phone.write(vec![opened()], vec![]);
    laptop.take(&phone.entries());
    phone.note("phone 1");
    laptop.note("laptop 1");
    let (from_phone, from_laptop) = (phone.entries(), laptop.entries());
    phone.take(&from_laptop);
    laptop.take(&from_phone);
    (phone, laptop)
}

#[test]
fn each_device_goes_on_with_its_own_and_joins_nothing() {
    let (mut phone, mut laptop) = apart();
    phone.note("phone 2");
    laptop.note("laptop 2");
    assert_eq!(phone.notes(), ["phone 1", "phone 2"]);
    assert_eq!(laptop.notes(), ["laptop 1", "laptop 2"]);
    assert_eq!(phone.history().heads().len(), 2);
    let branches = phone.history().seen_by("phone").unwrap().branches;
    assert_eq!(
        branches.iter().filter(|branch| branch.own).map(|branch| &*branch.device).collect::<Vec<_>>(),
        ["phone"]
    );
}

#[test]
fn what_was_not_chosen_is_set_aside_on_every_device_and_stays_in_the_journal() {
    let (mut phone, mut laptop) = apart();
    let head = laptop.history().own("phone").unwrap();
    laptop.choose(head);
    phone.take(&laptop.entries());
    // The laptop's own entries are behind the choice now: it goes on with what was chosen.
    laptop.note("laptop 2");
    phone.take(&laptop.entries());
    for device in [&phone, &laptop] {
        assert_eq!(device.notes(), ["phone 1", "laptop 2"], "{}", device.name);
        assert_eq!(device.history().heads().len(), 1);
        assert_eq!(device.history().seen_by(device.name).unwrap().choices.len(), 1);
        assert!(device.entries().iter().any(|entry| String::from_utf8_lossy(&entry.body).contains("laptop 1")));
    }
}

#[test]
fn two_choices_apart_from_each_other_are_a_branch_again() {
    let (mut phone, mut laptop) = apart();
    let (own_phone, own_laptop) = (phone.history().own("phone").unwrap(), laptop.history().own("laptop").unwrap());
    phone.choose(own_phone);
    laptop.choose(own_laptop);
    phone.take(&laptop.entries());
    assert_eq!(phone.history().heads().len(), 2);
    assert_eq!(phone.notes(), ["phone 1"]);
    let other = phone.history().own("laptop").unwrap();
    phone.choose(other);
    assert_eq!(phone.notes(), ["laptop 1"]);
}

#[test]
fn what_the_other_device_wrote_before_it_knew_of_the_choice_is_a_branch_again() {
    let (mut phone, mut laptop) = apart();
    let head = phone.history().own("phone").unwrap();
    phone.choose(head);
    laptop.note("laptop 2");
    phone.take(&laptop.entries());
    assert_eq!(phone.history().heads().len(), 2);
    assert_eq!(phone.notes(), ["phone 1"]);
}

#[test]
fn a_device_without_entries_sees_the_longer_branch() {
    let (mut phone, laptop) = apart();
    phone.note("phone 2");
    let mut office = Device::new("tablet");
    office.take(&laptop.entries());
    office.take(&phone.entries());
    assert_eq!(office.notes(), ["phone 1", "phone 2"]);
}

/// Joins without a choice were written by older versions: they replay as they did.
#[test]
fn an_old_join_that_nobody_chose_counts_both() {
    let (phone, _) = apart();
    let mut journal = phone.journal.clone();
    let heads = journal.heads(REPAIR).unwrap();
    let facts = Facts { device: "phone".into(), ..Facts::default() };
    let body = codec::encode(&Record { facts, events: vec![Event::Noted { text: "joined".into() }] }).unwrap();
    let draft = Draft { repair: REPAIR.into(), device: "phone".into(), heads, branch: None, body };
    let request_hash = Hash::of(b"old");
    let drafts = vec![draft];
    let write = Write { request: "old", request_hash, received: vec![], drafts, rows: vec![], answer: vec![] };
    journal.append(&write).unwrap();
    let history = History::read(journal.entries(REPAIR).unwrap()).unwrap();
    let notes: Vec<_> = history.seen_by("phone").unwrap().notes.into_iter().map(|note| note.text).collect();
    assert_eq!(notes, ["laptop 1", "phone 1", "joined"]);
}

#[test]
fn more_devices_than_a_crew_has_are_refused() {
    let mut one = Device::new("phone");
    one.write(vec![opened()], vec![]);
    let first = one.entries().remove(0);
    let more = (0..MOST_DEVICES).map(|n| Entry { device: format!("d{n}"), ..first.clone() });
    assert!(History::read(std::iter::once(first.clone()).chain(more).collect()).is_err());
}

#[derive(Clone, Debug)]
enum Act {
    Note(usize),
    Send { from: usize, to: usize },
    Choose { device: usize, which: usize },
}

fn acts() -> impl Strategy<Value = Vec<Act>> {
    let device = || 0..DEVICES.len();
    let act = prop_oneof![
        3 => device().prop_map(Act::Note),
        2 => (device(), device()).prop_map(|(from, to)| Act::Send { from, to }),
        1 => (device(), 0..4usize).prop_map(|(device, which)| Act::Choose { device, which }),
    ];
    prop::collection::vec(act, 0..24)
}

/// Returns what each device holds after the acts; all begin with the same opened repair.
fn after(acts: &[Act]) -> Vec<Device> {
    let mut devices: Vec<Device> = DEVICES.into_iter().map(Device::new).collect();
    devices[0].write(vec![opened()], vec![]);
    let first = devices[0].entries();
    devices[1..].iter_mut().for_each(|device| device.take(&first));
    for (number, act) in acts.iter().enumerate() {
        match act {
            Act::Note(device) => devices[*device].note(&format!("note {number}")),
            Act::Send { from, to } => {
                let entries = devices[*from].entries();
                devices[*to].take(&entries);
            }
            Act::Choose { device, which } => {
                let heads = devices[*device].history().heads().to_vec();
                if heads.len() > 1 {
                    devices[*device].choose(heads[which % heads.len()]);
                }
            }
        }
    }
    devices
}

proptest! {
    /// Whoever takes in the same bundles, in any order, grouped in any way, split anywhere, once or twice, holds the
    /// same entries and sees the same repair.
    #[test]
    fn any_order_of_bundles_tells_the_same_repair(
        acts in acts(),
        order in Just([0, 1, 2]).prop_shuffle(),
        cuts in prop::collection::vec(0..100usize, 3),
    ) {
        let sent: Vec<Vec<Entry>> = after(&acts).iter().map(Device::entries).collect();
        let (mut straight, mut shuffled, mut grouped, mut pair) =
            (Device::new("office"), Device::new("office"), Device::new("office"), Device::new("office"));
        sent.iter().for_each(|entries| straight.take(entries));
        for (index, cut) in order.iter().zip(&cuts) {
            // First a part of the chain, then the whole of it, then once more.
            let part = cut % (sent[*index].len() + 1);
            shuffled.take(&sent[*index][..part]);
            shuffled.take(&sent[*index]);
            shuffled.take(&sent[*index]);
        }
        pair.take(&sent[order[1]]);
        pair.take(&sent[order[2]]);
        grouped.take(&pair.entries());
        grouped.take(&sent[order[0]]);
        let seen = straight.history().seen_by("office");
        for other in [&shuffled, &grouped] {
            prop_assert_eq!(straight.entries(), other.entries());
            prop_assert_eq!(&seen, &other.history().seen_by("office"));
            for device in DEVICES {
                prop_assert_eq!(straight.history().seen_by(device), other.history().seen_by(device));
            }
        }
        prop_assert!(seen.is_some());
    }

    /// Until somebody chooses, what a device sees is what it wrote or took in before it wrote: nothing foreign slips in.
    #[test]
    fn no_foreign_entry_counts_beside_an_own_head(acts in acts()) {
        for device in after(&acts) {
            let history = device.history();
            let line = history.line(history.own(device.name).unwrap());
            let written = history.entries.iter().rev().find(|entry| entry.device == device.name);
            let Some(written) = written else { continue };
            let own = history.line(written.hash);
            let heads = history.heads().len();
            prop_assert!(own.is_subset(&line) || heads == 1 || history.records.iter().any(|one| chosen(one).is_some()));
        }
    }
}
