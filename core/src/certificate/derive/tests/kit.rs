//! Tells the story of a repair command by command, by the rules of the procedure, as a phone would.

use std::collections::BTreeMap;
use std::io::Cursor;

use image::{ImageFormat, RgbImage};
use sha2::{Digest, Sha256};

use crate::certificate::content::Content;
use crate::certificate::derive::{ChainFacts, derive};
use crate::facts::{Facts, Moment, NoPosition, Position, PositionSource};
use crate::procedure::answer::{Answer, Value};
use crate::procedure::repair::Repair;
use crate::procedure::rules::{Broken, Rule};
use crate::procedure::{Command, Happening, apply, decide};
use crate::shelf::{Person, Shelf, examples};

/// Local midnight of 2026-10-14 at +02:00, by `date -u -d "2026-10-13T22:00:00Z" +%s`.
pub const MIDNIGHT_MS: i64 = 1_791_928_800_000;
pub const DAY_MS: i64 = 86_400_000;

/// Returns the instant of a local time of the day, as `09:04:20`.
pub fn at_ms(time: &str) -> i64 {
    let parts: Vec<i64> = time.split(':').map(|part| part.parse().unwrap()).collect();
    MIDNIGHT_MS + (parts[0] * 3_600 + parts[1] * 60 + parts.get(2).copied().unwrap_or(0)) * 1_000
}

/// A repair as it grows.
#[derive(Clone)]
pub struct Story {
    pub repair: Option<Repair>,
    pub shelf: Shelf,
    pub originals: BTreeMap<String, Vec<u8>>,
    boot_id: String,
    booted_ms: i64,
    /// How far the wall clock is set ahead.
    pub clock_off_ms: i64,
    pub position: Position,
    pub person: String,
    pub device: String,
    time_ms: i64,
}

impl Story {
    pub fn new() -> Self {
        Self {
            repair: None,
            shelf: examples::shelf().unwrap(),
            originals: BTreeMap::new(),
            boot_id: "boot-1".into(),
            booted_ms: MIDNIGHT_MS - DAY_MS,
            clock_off_ms: 0,
            position: at_the_cover(),
            person: "ekdal".into(),
            device: "K3F".into(),
            time_ms: MIDNIGHT_MS,
        }
    }

    pub fn repair(&self) -> &Repair {
        self.repair.as_ref().unwrap()
    }

    pub fn people(&self) -> &[Person] {
        &self.shelf.people
    }

    /// Goes on at a local time.
    pub fn at(&mut self, time: &str) -> &mut Self {
        self.time_ms = at_ms(time);
        self
    }

    pub fn by(&mut self, person: &str, device: &str) -> &mut Self {
        self.person = person.into();
        self.device = device.into();
        self
    }

    /// Starts the device anew at a local time.
    pub fn restarts(&mut self, time: &str) -> &mut Self {
        (self.boot_id, self.booted_ms) = ("boot-2".into(), at_ms(time));
        self
    }

    pub fn moment(&self) -> Moment {
        Moment {
            at_ms: self.time_ms + self.clock_off_ms,
            offset_min: 120,
            boot_ms: self.time_ms - self.booted_ms,
            boot_id: format!("{} of {}", self.boot_id, self.device),
        }
    }

    fn facts(&self) -> Facts {
        Facts {
            keyed: None,
            moment: self.moment(),
            position: self.position.clone(),
            person: Some(self.person.clone()),
            device: self.device.clone(),
            battery_pct: Some(80),
            typed: BTreeMap::new(),
            key: None,
        }
    }

    /// Does what is asked or reported. Panics where the rules refuse it.
    pub fn does(&mut self, command: Command) -> &mut Self {
        let facts = self.facts();
        let events = decide(self.repair.as_ref(), &command, &facts, self.people())
            .unwrap_or_else(|refusal| panic!("{command:?} is refused: {refusal:?}"));
        let mut repair = events.iter().fold(self.repair.take(), |repair, event| apply(repair, event, &facts)).unwrap();
        repair.last_moment = facts.moment.clone();
        repair.last_device = facts.device.clone();
        repair.entries += 1;
        self.repair = Some(repair);
        self
    }

    pub fn reports(&mut self, happening: Happening) -> &mut Self {
        self.does(Command::Report { happening, ago_ms: 0 })
    }

    pub fn answers(&mut self, task: &str, values: &[(&str, Value)]) -> &mut Self {
        let values = values.iter().map(|(key, value)| ((*key).to_owned(), value.clone())).collect();
        self.does(Command::Answer { task: task.into(), answer: Answer::Done { values } })
    }

    pub fn does_not_apply(&mut self, task: &str, because: &str) -> &mut Self {
        self.does(Command::Answer { task: task.into(), answer: Answer::DoesNotApply { because: because.into() } })
    }

    /// Confirms each of these tasks.
    pub fn confirms(&mut self, tasks: &[&str]) -> &mut Self {
        for task in tasks {
            self.answers(task, &[]);
        }
        self
    }

    /// Keeps a small picture whose colour is its own.
    pub fn photo(&mut self, key: &str, label: &str) -> &mut Self {
        let shade = self.originals.len() as u8 * 20;
        let bytes = picture(shade);
        let sha256 = hex(&bytes);
        let size = bytes.len() as u64;
        self.originals.insert(sha256.clone(), bytes);
        self.does(Command::Photo {
            key: key.into(),
            label: label.into(),
            sha256,
            bytes: size,
            media_type: "image/jpeg".into(),
            copy_of: None,
        })
    }

    pub fn waives(&mut self, rule: Rule, subject: &str, reason: &str) -> &mut Self {
        self.does(Command::Waive { rule, subject: subject.into(), reason: reason.into(), foreman: "varga".into() })
    }

    pub fn signs(&mut self, statement: &str) -> &mut Self {
        let strokes = vec![vec![(100, 500), (300, 200), (500, 600), (900, 400)], vec![(200, 800), (800, 820)]];
        self.does(Command::Sign { name: String::new(), statement: statement.into(), strokes })
    }

    /// Changes the repair behind the back of the rules, to see what the content makes of it.
    pub fn changed(mut self, change: impl FnOnce(&mut Repair)) -> Self {
        change(self.repair.as_mut().unwrap());
        self
    }

    pub fn content(&self) -> Result<Content, Vec<Broken>> {
        let chain = ChainFacts {
            head_hex: format!("7c41e09a53d2{}81ab", "0".repeat(48)),
            entries: self.repair().entries,
            device: "K3F".into(),
            record: b"{}".to_vec(),
        };
        let originals = |sha: &str| self.originals.get(sha).cloned();
        derive(self.repair(), &chain, self.people(), &originals, self.moment())
    }
}

pub fn hex(bytes: &[u8]) -> String {
    Sha256::digest(bytes).iter().map(|byte| format!("{byte:02x}")).collect()
}

fn picture(shade: u8) -> Vec<u8> {
    let picture = RgbImage::from_fn(64, 48, |x, y| image::Rgb([shade, x as u8 * 3, y as u8 * 4]));
    let mut bytes = Vec::new();
    picture.write_to(&mut Cursor::new(&mut bytes), ImageFormat::Jpeg).unwrap();
    bytes
}

pub fn at_the_cover() -> Position {
    Position::Fix {
        lat_e7: 464_120_700,
        lon_e7: -248_853_000,
        accuracy_mm: Some(4_000),
        age_ms: 3_000,
        source: PositionSource::Receiver,
    }
}

pub fn no_position() -> Position {
    Position::Absent { why: NoPosition::Unavailable }
}
