//! What the pages of a certificate say, as plain data: facts, numbers with units, and short sentences.
//!
//! Whoever derives a `Content` does all arithmetic on evidence and words every sentence; the layout only wraps,
//! scales, numbers and breaks pages. Nothing here is looked up again later: the same `Content` gives the same bytes.
//!
//! **Stations** are measured from the centre of the upstream node, whatever the inspection counted from.
//! **Clock hours** are 1 to 12, looking downstream. **Instants** are milliseconds since 1970-01-01 UTC; all are shown
//! at [`Content::utc_offset_min`]. **Spans** are shown as minutes and whole seconds, so hand over whole seconds,
//! already rounded in nobody's favour.
//!
//! **Page references.** `@<The hold>` in a sentence becomes the number of the page where that heading stands; the
//! headings are in [`headings`]. Any other `@<…>` is printed as it is.
//!
//! **Absent values.** [`Known::Absent`] carries the reason, and the page prints the reason in the value's place.

mod course;
mod evidence;
mod place;

pub use course::*;
pub use evidence::*;
pub use place::*;

use serde::{Deserialize, Serialize};

/// In [`Content::made_by`], between the program and its device.
pub const ON_DEVICE: &str = ", device ";

use crate::words::Reader;

/// The headings that a page reference may name.
pub mod headings {
    pub const STAGES: &str = "The nine stages";
    pub const WORKING_TIME: &str = "Working time";
    pub const HOLD: &str = "The hold";
    pub const READINGS: &str = "All readings";
    pub const MATERIALS: &str = "Materials, tools and lots";
    pub const SHEETS: &str = "Values from the data sheets and the contract";
    pub const CHECKS: &str = "Computed checks";
    pub const FINDINGS: &str = "Findings of the verification";
    pub const DEPARTURES: &str = "Departures in full";
    pub const NOTES: &str = "Notes in full";
    pub const ATTEMPTS: &str = "Other attempts";
    pub const CORRECTIONS: &str = "Corrections";
    pub const PHOTOS: &str = "Photos";
    pub const CAUTIONS: &str = "Cautions";
    /// Every heading that can be referred to.
    pub const ALL: [&str; 14] = [
        STAGES,
        WORKING_TIME,
        HOLD,
        READINGS,
        MATERIALS,
        SHEETS,
        CHECKS,
        FINDINGS,
        DEPARTURES,
        NOTES,
        ATTEMPTS,
        CORRECTIONS,
        PHOTOS,
        CAUTIONS,
    ];
}

/// A value, or why there is none.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Known<T> {
    /// The value.
    Known(T),
    /// Why it is absent: a short clause without a full stop, printed in the value's place.
    Absent(String),
}

impl<T> Known<T> {
    /// Returns the value, if there is one.
    pub fn value(&self) -> Option<&T> {
        match self {
            Known::Known(value) => Some(value),
            Known::Absent(_) => None,
        }
    }
}

/// Everything that one certificate or record says.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Content {
    /// What the paper is: this decides title, result sign, frame and fixed words.
    pub kind: Kind,
    pub paper: Paper,
    /// The language of every sentence here, and the units and dates of the pages.
    pub reader: Reader,
    /// The number of the certificate, such as `K3F-0147`, without the word REHEARSAL.
    pub number: String,
    /// The program and its version for the footer, such as `Mendline 0.9, offline`.
    pub made_by: String,
    /// The instant of the document: its date on every page and in the file's metadata.
    pub at_ms: i64,
    /// The offset of every clock time on the pages from UTC, in minutes, −840 to 840.
    pub utc_offset_min: i32,
    pub result: ResultLine,
    /// The answers below the result, in order: off the rules, which pipe, where, what was mended, who signs. Up to
    /// six; five are usual; more stand on a later page. Labels differ by kind (`Why rejected`, `What was practised`).
    pub answers: Vec<Answer>,
    /// The pipe in the header of each later page, such as `SS-03107   MH 031 → MH 032`.
    pub running_head: String,
    /// The identity, left column: owner, contract, order, contractor, repair, working time. A value may hold `\n`. Up to
    /// eight; more stand on a later page.
    pub identity_left: Vec<Pair>,
    /// The identity, right column: position, measured ID, flow, video, hold, full cure.
    pub identity_right: Vec<Pair>,
    /// The line, the patch and the defect, for the three drawings of page 1.
    pub place: Known<Place>,
    /// What stands before the departures: a doubtful attempt, the reasons of a rejection, what comes next. On a
    /// rehearsal or an unrepaired record: what it is not.
    pub reasons: Vec<Note>,
    /// The waived rules, in the order of their labels.
    pub departures: Vec<Departure>,
    /// Excursions, gaps, attempts, clock changes, corrections: kept and printed, waived by nobody.
    pub notes: Vec<Note>,
    /// Who signs, technician first. Up to four; two are usual.
    pub signatures: Vec<Signature>,
    pub head: Head,
    pub seal: Seal,
    /// The record that lies inside the file. Known: the file is PDF/A-3a. Absent: it is PDF/A-2a, and why.
    #[serde(default = "no_record")]
    pub record: Known<RecordCopy>,
    /// What the QR code says; written in capitals, so use only what survives that. `None`: no code is drawn, and the
    /// page doesn't speak of one. A rehearsal never has a code.
    pub qr: Option<String>,
    pub stages: Known<Stages>,
    pub working_time: Known<WorkingTime>,
    pub hold: Known<Hold>,
    /// Resin, patch, packer, sleeve, instruments.
    pub materials: Vec<Material>,
    pub sheets: Sheets,
    pub checks: Vec<Check>,
    /// The end thrust and what it is not: one or two sentences. `None` where nothing was inflated.
    pub danger: Option<String>,
    pub findings: Vec<Finding>,
    /// Attempts before this one, and after it.
    pub attempts: Vec<Attempt>,
    pub corrections: Vec<Correction>,
    /// In the order in which sentences call them: the first is photo 1.
    pub photos: Vec<Photo>,
    /// What this paper is not, and how to check and keep it.
    pub cautions: Vec<Pair>,
}

fn no_record() -> Known<RecordCopy> {
    Known::Absent("no record was handed over".into())
}

/// What the paper is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Kind {
    /// Accepted by the foreman: the certificate.
    Accepted,
    /// A record of a repair that the foreman rejected.
    Rejected,
    /// A record of practice: framed and titled so, without code; never a certificate.
    Rehearsal,
    /// A record of a repair that was closed without a mended pipe.
    Unrepaired,
}

/// The size of the pages.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Paper {
    /// 210 × 297 mm.
    A4,
    /// 215.9 × 279.4 mm.
    Letter,
}

/// The result in one line.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ResultLine {
    /// One word in capitals: `ACCEPTED`, `REJECTED`, `REHEARSAL`, `UNREPAIRED`.
    pub headline: String,
    /// What follows it on page 1: `by the foreman, with 2 departures`.
    pub tail: String,
    /// What follows it in the header of later pages: `with 2 departures`. May be empty.
    pub short: String,
}

/// One of the answers that a reader gets in ten seconds.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Answer {
    /// The question, such as `Which pipe`.
    pub label: String,
    /// The answer, set bold.
    pub first: String,
    /// The next line, set plain.
    pub second: Option<String>,
}

/// A label and its value.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Pair {
    pub label: String,
    pub value: String,
}

/// A labelled sentence.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Note {
    /// One or two words: `Excursion`, `Not witnessed`, `F1`.
    pub label: String,
    /// Whole sentences.
    pub text: String,
}

/// A rule that the foreman waived.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Departure {
    /// `D1`, `D2`, …
    pub label: String,
    /// The rule with its values and where it stands: one sentence.
    pub rule: String,
    /// The reason, who waived it, when: whole sentences.
    pub reason: String,
    /// A few words for one line with others, such as `lateral opened to 94 %`.
    pub short: String,
}

/// One person's signature.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Signature {
    pub name: String,
    /// With a capital: `Technician`.
    pub role: String,
    /// What is put a name to, without quotation marks. On a rehearsal: what the practice signature proves.
    pub statement: String,
    /// Absent: not signed, and why.
    pub signed: Known<Signed>,
}

/// How somebody signed.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Signed {
    pub at_ms: i64,
    /// `phone K3F`; on a rehearsal `rehearsal key 2522 7773 …`.
    pub device: String,
    /// Whether the person was known by a PIN; the page says so. That one was not known, the answer to who signs says.
    pub authenticated: bool,
    /// The drawn line: strokes of points `[x, y]`, y downwards, in any one unit; scaled evenly to its place. `None`: no
    /// line was drawn, and the page says so.
    pub strokes: Option<Vec<Vec<[i32; 2]>>>,
}

/// The head of the record's chain.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Head {
    /// 64 hexadecimal digits, small letters: SHA-256 of the last entry.
    pub sha256: String,
    /// The number of entries in the chain.
    pub entries: u32,
}

/// What protects the file from change.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Seal {
    /// No key: the page says that a drawn line proves nothing.
    None,
    /// The file will be signed by this key right after it is built.
    Key {
        /// When it is sealed.
        at_ms: i64,
        /// The key's fingerprint, hexadecimal, 16 digits or more.
        fingerprint: String,
    },
}

/// The record inside the file.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct RecordCopy {
    /// The name of the file, such as `record.json`: letters and figures of ASCII, `-` and `.`.
    pub name: String,
    /// Of `json`: 64 hexadecimal digits.
    pub sha256: String,
    /// The bytes of the file. Not serialized: a snapshot names them by their hash.
    #[serde(skip)]
    pub json: Vec<u8>,
}
