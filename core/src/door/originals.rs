//! The original photos that somebody brings beside a certificate, against those that its record names.
//!
//! A photo is known by its SHA-256, whatever its file is called. A file that is called by the SHA-256 of a photo and is
//! not that photo was changed. What a photo says of itself (Exif) is compared with the record where it says anything.

use std::collections::BTreeMap;

use serde::Serialize;

use super::verdict::{Finding, Look, Looked, Verdict};
use crate::exif::{self, Said};
use crate::facts::Position;
use crate::geodesy::{self, Place};
use crate::procedure::Repair;
use crate::procedure::repair::Stamp;
use crate::words;

/// A photo is taken, then handed over: by no more than this. No source; a photo found later in the gallery is asked about.
const HANDED_OVER_MS: i64 = 60 * 60_000;
/// The clock of a camera may be ahead of the device's by this. No source.
const AHEAD_MS: i64 = 60_000;
/// How far a place may be off beyond three times the accuracy that the record states (68 % each). No source.
const OFF_M: f64 = 50.0;
/// The accuracy of a place that states none. No source.
const UNSTATED_M: f64 = 50.0;

/// A photo that a record names.
#[derive(Clone, Debug, PartialEq, Eq)]
struct Named {
    sha256: String,
    title: String,
    at: Stamp,
}

/// Returns the photos that a repair's record names, in their order, each once.
fn named(repair: &Repair) -> Vec<Named> {
    let mut found: Vec<Named> = vec![];
    for photo in &repair.photos {
        if !found.iter().any(|known| known.sha256 == photo.sha256) {
            let asked = repair.contract.photos.iter().find(|rule| rule.key == photo.key).map(|rule| &rule.label);
            let written = Some(&photo.label).filter(|label| !label.trim().is_empty());
            let title = format!("{} ({})", written.or(asked).unwrap_or(&photo.key), photo.stage.word());
            found.push(Named { sha256: photo.sha256.clone(), title, at: photo.at.clone() });
        }
    }
    found
}

/// What became of the photos of a record.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct Originals {
    /// In the order of the record.
    pub photos: Vec<Original>,
    /// Files that the record does not name.
    pub others: Vec<String>,
    /// Files that could not be read, each with why.
    pub unreadable: Vec<String>,
}

impl Originals {
    /// Says everything in the language of who reads.
    pub fn told(&mut self) {
        for photo in &mut self.photos {
            if let Some((title, stage)) = photo.title.strip_suffix(')').and_then(|title| title.rsplit_once(" (")) {
                photo.title = format!("{} ({})", words::retold(title), words::retold(stage));
            }
            photo.taken.iter_mut().chain(&mut photo.place).for_each(|one| one.says = words::retold(&one.says));
        }
        for one in &mut self.unreadable {
            if let Some((name, why)) = one.rsplit_once(": ") {
                *one = format!("{name}: {}", words::retold(why));
            }
        }
    }
}

/// One photo of the record.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Original {
    pub sha256: String,
    /// What it shows, and the stage.
    pub title: String,
    pub state: State,
    /// The files that are it, or that are called by its SHA-256 and are not.
    pub files: Vec<String>,
    /// What it says of when it was taken; absent where it says nothing.
    pub taken: Option<Compared>,
    /// What it says of where it was taken; absent where it says nothing, or where the record has no position.
    pub place: Option<Compared>,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum State {
    /// Byte for byte as it was recorded.
    Found,
    Missing,
    /// A file is called by its SHA-256, and holds something else.
    Changed,
}

/// What a photo says of itself beside what the record says.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Compared {
    /// Near enough to be believed. A photo that is not is no proof of a false record: ask.
    pub agrees: bool,
    /// By how much they differ, as a clause.
    pub says: String,
}

/// Looks at files one by one, so that only one is held at a time.
#[derive(Clone)]
pub struct Search {
    named: BTreeMap<String, Named>,
    found: Originals,
}

impl Search {
    /// Begins to look for the photos that a checked file names.
    pub fn of(verdict: &Verdict) -> Self {
        let named = verdict.repair.as_deref().map(named).unwrap_or_default();
        Self::for_photos(&named)
    }

    fn for_photos(named: &[Named]) -> Self {
        let photos = named.iter().map(|named| Original {
            sha256: named.sha256.clone(),
            title: named.title.clone(),
            state: State::Missing,
            files: vec![],
            taken: None,
            place: None,
        });
        let named = named.iter().map(|named| (named.sha256.clone(), named.clone())).collect();
        Self { named, found: Originals { photos: photos.collect(), ..Originals::default() } }
    }

    /// Looks at a file.
    pub fn file(&mut self, name: &str, bytes: &[u8]) {
        let sha256 = super::hex(&<sha2::Sha256 as sha2::Digest>::digest(bytes));
        let called = |photo: &&mut Original| name.to_lowercase().contains(&photo.sha256);
        if let Some(photo) = self.found.photos.iter_mut().find(|photo| photo.sha256 == sha256) {
            if photo.state != State::Found {
                *photo = Original { state: State::Found, files: vec![], ..photo.clone() };
            }
            photo.files.push(name.to_owned());
            if let Some(named) = self.named.get(&sha256) {
                let said = exif::said(bytes);
                photo.taken = taken(&said, &named.at);
                photo.place = place(&said, &named.at.position);
            }
        } else if let Some(photo) = self.found.photos.iter_mut().find(called) {
            if photo.state != State::Found {
                photo.state = State::Changed;
                photo.files.push(name.to_owned());
            } else {
                self.found.others.push(name.to_owned());
            }
        } else {
            self.found.others.push(name.to_owned());
        }
    }

    /// Notes a file that could not be read.
    pub fn unreadable(&mut self, name: &str, why: &str) {
        self.found.unreadable.push(format!("{name}: {why}"));
    }

    /// Returns the verdict with what was found so far beside it.
    ///
    /// A photo that is missing says nothing: it may still come. One that was changed makes a sound verdict `Changed`.
    pub fn beside(&self, mut verdict: Verdict) -> Verdict {
        if verdict.finding == Finding::Unreadable {
            return verdict;
        }
        let of = self.found.photos.len();
        let changed = self.found.count(State::Changed);
        verdict.looked.push(Looked { at: Look::Originals, right: changed == 0 });
        if changed > 0 {
            verdict.finding = Finding::Changed;
            let says =
                format!("Of {of} photos that the record names, {changed} were changed since they were recorded.");
            verdict.says = format!("{} {says}", verdict.says);
        }
        Verdict { originals: Some(self.found.clone()), ..verdict }
    }
}

impl Originals {
    /// Returns how many photos of the record are in a state.
    pub fn count(&self, state: State) -> usize {
        self.photos.iter().filter(|photo| photo.state == state).count()
    }
}

/// Compares when a photo was taken with when it was recorded. Without an offset of its own, the device's is taken.
fn taken(said: &Said, at: &Stamp) -> Option<Compared> {
    let taken = said.taken?;
    let offset_min = taken.offset_min.unwrap_or(at.moment.offset_min);
    let before_ms = at.moment.at_ms - (taken.local_ms - i64::from(offset_min) * 60_000);
    let (minutes, seconds) = (before_ms.abs() / 60_000, before_ms.abs() % 60_000 / 1_000);
    let side = if before_ms < 0 { "after" } else { "before" };
    Some(Compared {
        agrees: (-AHEAD_MS..=HANDED_OVER_MS).contains(&before_ms),
        says: format!("taken {minutes} min {seconds:02} s {side} it was recorded"),
    })
}

fn place(said: &Said, recorded: &Position) -> Option<Compared> {
    let (lat, lon) = said.place?;
    let Position::Fix { lat_e7, lon_e7, accuracy_mm, .. } = recorded else { return None };
    let own = Place { lat: *lat_e7 as f64 / 1e7, lon: *lon_e7 as f64 / 1e7 };
    let way = geodesy::way(own, Place { lat, lon }).ok()?;
    let accuracy_m = accuracy_mm.map_or(UNSTATED_M, |mm| mm as f64 / 1_000.0);
    Some(Compared {
        agrees: way.distance_m <= 3.0 * accuracy_m + OFF_M,
        says: format!("taken {:.0} m from the recorded position (± {accuracy_m:.0} m)", way.distance_m),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::exif::tests::photo;
    use crate::facts::{Moment, PositionSource};

    /// 2026-10-14T11:55:02Z.
    const TAKEN_MS: i64 = 1_791_978_902_000;

    fn searched(at_ms: i64, lat_e7: i64, bytes: &[u8], files: &[(&str, &[u8])]) -> Verdict {
        let fix = Position::Fix {
            lat_e7,
            lon_e7: -248_853_000,
            accuracy_mm: Some(5_000),
            age_ms: 0,
            source: PositionSource::Receiver,
        };
        let moment = Moment { at_ms, offset_min: 120, ..Moment::default() };
        let at = Stamp { moment, position: fix, ..Stamp::default() };
        let sha256 = super::super::hex(&<sha2::Sha256 as sha2::Digest>::digest(bytes));
        let mut verdict = Verdict::unreadable("c.pdf", "Sound.".into());
        verdict.finding = Finding::Valid;
        let mut search = Search::for_photos(&[Named { sha256, title: "Edge".into(), at }]);
        files.iter().for_each(|(name, bytes)| search.file(name, bytes));
        search.beside(verdict)
    }

    fn own() -> Vec<u8> {
        photo("2026:10:14 13:55:02", None, Some([(4_641_207, b'N'), (2_488_530, b'W')]))
    }

    fn looked(verdict: &Verdict) -> Vec<(Look, bool)> {
        verdict.looked.iter().map(|look| (look.at, look.right)).collect()
    }

    fn one(verdict: &Verdict) -> &Original {
        &verdict.originals.as_ref().unwrap().photos[0]
    }

    #[test]
    fn a_photo_is_found_by_its_bytes_whatever_its_name() {
        let bytes = own();
        let verdict = searched(TAKEN_MS + 200_000, 464_120_700, &bytes, &[("a.jpg", b"other"), ("b.jpg", &bytes)]);
        let photo = one(&verdict);
        assert_eq!((verdict.finding, photo.state), (Finding::Valid, State::Found));
        assert_eq!(photo.files, ["b.jpg"]);
        assert_eq!(verdict.originals.as_ref().unwrap().others, ["a.jpg"]);
        let says = |one: &Option<Compared>| one.clone().map(|one| (one.agrees, one.says));
        assert_eq!(says(&photo.taken), Some((true, "taken 3 min 20 s before it was recorded".into())));
        assert_eq!(says(&photo.place), Some((true, "taken 0 m from the recorded position (± 5 m)".into())));
    }

    #[test]
    fn a_changed_photo_changes_the_finding_and_a_missing_one_does_not() {
        let bytes = own();
        let called = format!("{}.JPG", one(&searched(TAKEN_MS, 0, &bytes, &[])).sha256.to_uppercase());
        let changed = searched(TAKEN_MS, 464_120_700, &bytes, &[(&called, b"painted over")]);
        assert_eq!((changed.finding, one(&changed).state), (Finding::Changed, State::Changed));
        assert!(changed.says.ends_with("1 were changed since they were recorded."), "{}", changed.says);
        assert_eq!(looked(&changed), [(Look::Originals, false)]);
        let missing = searched(TAKEN_MS, 464_120_700, &bytes, &[]);
        assert_eq!((missing.finding, one(&missing).state), (Finding::Valid, State::Missing));
        assert_eq!((missing.says.as_str(), looked(&missing)), ("Sound.", vec![(Look::Originals, true)]));
        // Beside the sound one, a spoiled one with its name is only another file.
        let both = searched(TAKEN_MS, 464_120_700, &bytes, &[(&called, b"painted over"), ("b.jpg", &bytes)]);
        assert_eq!((both.finding, one(&both).state), (Finding::Valid, State::Found));
    }

    #[test]
    fn a_photo_taken_later_or_elsewhere_does_not_agree_and_what_is_absent_is_absent() {
        let bytes = own();
        // A tenth of a degree of latitude is eleven kilometres.
        let verdict = searched(TAKEN_MS - 120_000, 465_120_700, &bytes, &[("a.jpg", &bytes)]);
        let photo = one(&verdict);
        assert_eq!(photo.taken.as_ref().map(|one| one.agrees), Some(false));
        assert_eq!(photo.place.as_ref().map(|one| one.agrees), Some(false));
        assert_eq!(verdict.finding, Finding::Valid);
        let bare = b"\xff\xd8\xff\xd9";
        let verdict = searched(TAKEN_MS, 0, bare, &[("a.jpg", bare)]);
        assert_eq!((&one(&verdict).taken, &one(&verdict).place), (&None, &None));
    }
}
