//! Repairs that go to another device or come from one: what is sent, what is taken in, and what is refused whole.

use std::collections::{BTreeMap, BTreeSet};
use std::io::{Read, Seek, Write as Output};

use serde::Serialize;

use super::App;
use super::history::History;
use super::store::Store;
use crate::bundle::{FORM, Head, Item, Reader, Refused, Writer};
use crate::facts::{Facts, Sensed};
use crate::journal::{Entry, Fault, Hash, Journal, Memory, Write, codec, is_reserved};
use crate::photos;
use crate::procedure::{Event, Record, Repair};
use crate::register::Row;
use crate::seal::PrivateKey;
use crate::shelf::ShelfEvent;
use crate::view;

/// The most bytes of entries in one bundle, about 700 repairs: they are held in memory, because they are taken in whole or
/// not at all, and 256 MiB is what that may take on a phone (`docs/scale.md`).
const MOST: usize = 72 << 20;

/// Why no bundle was made.
#[derive(Debug, thiserror::Error)]
pub enum Unsent {
    #[error("There is no repair {0} in this folder. Nothing was made.")]
    NoRepair(String),
    #[error("These are too many repairs for one file. Send fewer, or only what changed since a day.")]
    TooMany,
    #[error(transparent)]
    Journal(#[from] Fault),
    #[error(transparent)]
    Photo(photos::Fault),
    #[error(
        "The bundle could not be written: {0}. What was recorded is safe. Make room or choose another place, then send it again."
    )]
    Out(std::io::Error),
}

impl Unsent {
    /// Says whether more room or another place lets the same bundle be carried on.
    pub const fn is_of_the_file(&self) -> bool {
        matches!(self, Self::Out(_))
    }
}

/// What was put into a bundle.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Sent {
    pub repairs: usize,
    pub entries: usize,
    pub photos: usize,
    /// Photos that the entries name and this folder does not hold, or holds changed. They did not go along.
    pub missing: Vec<Hash>,
}

/// What came of a bundle.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Taken {
    pub device: String,
    /// The fingerprint of its key.
    pub key: String,
    /// The device was not known here before; from now on only this key speaks for it.
    pub first_met: bool,
    pub repairs: Vec<TakenRepair>,
    pub photos: usize,
}

/// One repair of a bundle.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct TakenRepair {
    pub repair: String,
    pub number: String,
    /// Entries that were not here before.
    pub fresh: usize,
    /// More than one: it went on on several devices, and all of it is kept.
    pub heads: usize,
}

/// A bundle that was looked through to its end.
struct Looked {
    device: String,
    key: String,
    entries: Vec<Entry>,
    photos: BTreeSet<Hash>,
    hash: Hash,
}

impl App {
    /// Writes a bundle of these repairs, or of all if none is named, with their photos.
    ///
    /// `at_ms` is the moment that stands in it. The same folder, moment and key give the same bytes.
    /// Errors: a repair is unknown or its chain is broken; they are too many for one bundle; a photo can't be read; `out`
    /// can't be written.
    pub fn send<W: Output>(
        &mut self,
        repairs: &[String],
        device: &str,
        at_ms: i64,
        key: &PrivateKey,
        out: W,
    ) -> Result<Sent, Unsent> {
        self.store.send(repairs, device, at_ms, key, out)
    }

    /// Takes a bundle in: everything of it in one transaction, or nothing. What is here already changes nothing.
    ///
    /// A device that is met for the first time is believed, and its key is kept; `named` is the key that somebody was
    /// told by another way, and then no other is believed.
    /// Errors: why it is refused; nothing was written.
    pub fn take_in<R: Read + Seek>(
        &mut self,
        input: &mut R,
        named: Option<&str>,
        sensed: &Sensed,
    ) -> Result<Taken, Refused> {
        self.store.asked_by(&sensed.device);
        self.store.take_in(input, named, &facts(sensed))
    }
}

impl Store {
    pub(super) fn send<W: Output>(
        &mut self,
        repairs: &[String],
        device: &str,
        at_ms: i64,
        key: &PrivateKey,
        out: W,
    ) -> Result<Sent, Unsent> {
        let journal = &self.journal;
        let repairs = if repairs.is_empty() { journal.repairs()? } else { repairs.to_vec() };
        let head = Head { v: FORM, device: device.to_owned(), key: fingerprint(key), at_ms };
        let mut writer = Writer::begin(out, &head).map_err(Unsent::Out)?;
        let (mut sent, mut photos, mut bytes) = (Sent::default(), BTreeSet::new(), 0);
        for repair in &repairs {
            let entries = journal.entries(repair)?;
            if entries.is_empty() || is_reserved(repair) {
                return Err(Unsent::NoRepair(repair.clone()));
            }
            // What nobody could take in is not sent.
            bytes += entries.iter().map(|entry| entry.body.len()).sum::<usize>();
            if bytes > MOST {
                return Err(Unsent::TooMany);
            }
            for entry in &entries {
                writer.entry(entry).map_err(Unsent::Out)?;
                photos.extend(named(&codec::decode(entry)?));
            }
            sent.repairs += 1;
            sent.entries += entries.len();
        }
        for sha256 in photos {
            match photos::read(&self.folder, sha256) {
                Ok(bytes) => {
                    writer.photo(&bytes).map_err(Unsent::Out)?;
                    sent.photos += 1;
                }
                Err(photos::Fault::Missing { .. } | photos::Fault::Changed { .. }) => sent.missing.push(sha256),
                Err(other) => return Err(Unsent::Photo(other)),
            }
        }
        writer.finish(key).map_err(Unsent::Out)?;
        Ok(sent)
    }

    pub(super) fn take_in<R: Read + Seek>(
        &mut self,
        input: &mut R,
        named: Option<&str>,
        facts: &Facts,
    ) -> Result<Taken, Refused> {
        self.journal.writable()?;
        let looked = look_through(&mut *input)?;
        let first_met = self.believes(&looked, named)?;
        let (mut repairs, rows) = self.merged(&looked.entries)?;
        input.rewind()?;
        keep_photos(&self.folder, &mut *input, looked.hash)?;
        let met = ShelfEvent::DeviceMet { device: looked.device.clone(), key: looked.key.clone() };
        let drafts = if first_met { vec![self.shelf_draft(facts, vec![met])?] } else { vec![] };
        let request = format!("bundle-{}", looked.hash);
        let written = self.journal.append(&Write {
            request: &request,
            request_hash: looked.hash,
            received: looked.entries,
            drafts,
            rows,
            answer: vec![],
        })?;
        if let crate::journal::Appended::Repeated(_) = written {
            repairs.iter_mut().for_each(|repair| repair.fresh = 0);
        }
        let (device, key, photos) = (looked.device, looked.key, looked.photos.len());
        Ok(Taken { device, key, first_met, repairs, photos })
    }
}

/// Returns who made a bundle and how many entries and photos it carries, when all of it is sound.
///
/// Errors: why it is not.
pub fn look_at_bundle(input: impl Read) -> Result<(Head, usize, usize), Refused> {
    let mut reader = Reader::begin(input)?;
    let (mut entries, mut photos) = (0, 0);
    while let Some(item) = reader.item()? {
        match item {
            Item::Entry(_) => entries += 1,
            Item::Photo(_) => photos += 1,
        }
    }
    Ok((reader.head().clone(), entries, photos))
}

/// Returns the public key as it stands in bundles, in hexadecimal digits.
pub fn fingerprint(key: &PrivateKey) -> String {
    key.public().to_sec1_point(true).as_bytes().iter().map(|byte| format!("{byte:02x}")).collect()
}

fn look_through(input: impl Read) -> Result<Looked, Refused> {
    let mut reader = Reader::begin(input)?;
    let (mut entries, mut photos, mut bytes) = (Vec::new(), BTreeSet::new(), 0);
    let mut asked = BTreeSet::new();
    while let Some(item) = reader.item()? {
        match item {
            Item::Entry(entry) => {
                bytes += entry.body.len();
                if bytes > MOST {
                    return Err(refused("Its entries are too large to be taken in at once. Send fewer repairs."));
                }
                asked.extend(self::named(&read(&entry)?));
                entries.push(entry);
            }
            Item::Photo(photo) => {
                photos::media_type(&photo).ok_or_else(|| refused("It carries a file that is no photo."))?;
                photos.insert(Hash::of(&photo));
            }
        }
    }
    if let Some(stray) = photos.difference(&asked).next() {
        return Err(Refused::StrayPhoto { sha256: *stray });
    }
    let Head { device, key, .. } = reader.head().clone();
    Ok(Looked { device, key, entries, photos, hash: reader.hash() })
}

fn read(entry: &Entry) -> Result<Record, Refused> {
    // The shelf belongs to its folder; a bundle never reaches it.
    if is_reserved(&entry.repair) || entry.repair.is_empty() || entry.repair.len() > 200 || entry.device.len() > 200 {
        return Err(refused("It carries entries that belong to no repair."));
    }
    codec::decode(entry).map_err(unsound)
}

fn unsound(fault: Fault) -> Refused {
    match fault {
        Fault::Damaged(damage) => Refused::Journal(Fault::Unsound(damage)),
        other => Refused::Journal(other),
    }
}

/// Photos lie under their hash; until an entry names them, nobody sees them.
fn keep_photos(folder: &std::path::Path, input: impl Read, wanted: Hash) -> Result<(), Refused> {
    let mut reader = Reader::begin(input)?;
    while let Some(item) = reader.item()? {
        if let Item::Photo(bytes) = item {
            photos::keep(folder, &bytes).map_err(|fault| Refused::Entry(fault.to_string()))?;
        }
    }
    if reader.hash() == wanted { Ok(()) } else { Err(refused("The file was changed while it was read.")) }
}

impl Store {
    /// Says whether the device is met for the first time.
    ///
    /// Errors: `OtherKey`, `NotTheNamedKey`.
    fn believes(&mut self, looked: &Looked, named: Option<&str>) -> Result<bool, Refused> {
        let found = looked.key.clone();
        if named.is_some_and(|named| named != found) {
            return Err(Refused::NotTheNamedKey { found });
        }
        match self.shelf()?.devices.get(&looked.device) {
            Some(known) if *known != found => {
                Err(Refused::OtherKey { device: looked.device.clone(), known: known.clone(), found })
            }
            known => Ok(known.is_none()),
        }
    }

    /// Returns what each repair becomes with these entries, and its row in the lists. Writes nothing.
    fn merged(&self, received: &[Entry]) -> Result<(Vec<TakenRepair>, Vec<Row>), Refused> {
        let mut by_repair = BTreeMap::<&str, Vec<&Entry>>::new();
        for entry in received {
            by_repair.entry(&entry.repair).or_default().push(entry);
        }
        let (mut repairs, mut rows) = (vec![], vec![]);
        for (id, entries) in by_repair {
            // Copied one repair at a time: a bundle may hold thousands.
            let (taken, row) = self.merged_one(id, entries.into_iter().cloned().collect())?;
            repairs.push(taken);
            rows.push(row);
        }
        Ok((repairs, rows))
    }

    fn merged_one(&self, id: &str, received: Vec<Entry>) -> Result<(TakenRepair, Row), Refused> {
        // A broken chain here takes nothing in, and is named as ours.
        self.journal.verify(id)?;
        let stored = self.journal.stored(id)?;
        let here: BTreeSet<Hash> = stored.iter().map(|entry| entry.hash).collect();
        let fresh = received.iter().map(|entry| entry.hash).collect::<BTreeSet<_>>().difference(&here).count();
        let mut whole = Memory::new();
        whole.append(&Write {
            request: "merge",
            request_hash: Hash::of(b"merge"),
            received: [stored, received].concat(),
            drafts: vec![],
            rows: vec![],
            answer: vec![],
        })?;
        let history = History::read(whole.entries(id)?).map_err(unsound)?;
        let repair: Repair = history
            .seen_by(&self.device)
            .filter(|repair| repair.id == id)
            .ok_or_else(|| refused("The first entry of a repair does not open it."))?;
        let taken =
            TakenRepair { repair: id.to_owned(), number: repair.number.clone(), fresh, heads: history.heads().len() };
        Ok((taken, view::row(&repair)))
    }
}

/// Returns the photos that a record names.
fn named(record: &Record) -> Vec<Hash> {
    let photo = |event: &Event| match event {
        Event::PhotoKept { sha256, .. } => sha256.parse().ok(),
        _ => None,
    };
    record.events.iter().filter_map(photo).collect()
}

fn facts(sensed: &Sensed) -> Facts {
    Facts { moment: sensed.moment.clone(), device: sensed.device.clone(), ..Facts::default() }
}

fn refused(says: &str) -> Refused {
    Refused::Entry(says.to_owned())
}
