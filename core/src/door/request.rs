//! What can be asked of the core.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use super::by_hand::ByHand;
use super::intake::Unsaid;
use crate::entry::Typed;
use crate::facts::Position;
use crate::inspection::SameHour;
use crate::procedure::Command;
use crate::procedure::line::{Defect, Line};
use crate::procedure::plan::PlanChoice;
use crate::procedure::practice::Mishap;
use crate::seal::Secret;
use crate::shelf::{Document, DocumentKind};
use crate::words::Reader;

/// A request with what the asking side knows of the world.
#[derive(Clone, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Envelope {
    /// Made by the asking side; the same id twice changes nothing and gets the first answer.
    pub id: String,
    #[serde(default)]
    pub person: Option<String>,
    #[serde(default)]
    pub position: Position,
    #[serde(default)]
    pub battery_pct: Option<u8>,
    /// In which language and units the answer is said; what is recorded does not depend on it.
    #[serde(default)]
    pub reader: Reader,
    /// What was typed with a unit of its own, by the name of its field; kept beside the events as it was typed.
    #[serde(default)]
    pub typed: BTreeMap<String, String>,
    /// How long the tap waited before it got through, in milliseconds: a report happened that long ago.
    #[serde(default)]
    pub waited_ms: u32,
    /// When it happened by what stands on paper, in milliseconds since 1970 by the wall clock: it is keyed in now.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub on_paper_ms: Option<i64>,
    /// The PIN of who taps, or a new one. It stands beside the request and not in it, because of a request a hash is
    /// kept, and whoever knows the hash of so short a secret knows the secret.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pin: Option<Secret>,
    /// The password of a key file; where a PIN is changed, the old one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub password: Option<Secret>,
    pub request: Request,
}

/// What can be asked. Bytes travel as base64 (RFC 4648).
#[derive(Clone, Debug, Serialize, Deserialize)]
#[serde(tag = "do", rename_all = "snake_case", deny_unknown_fields)]
pub enum Request {
    /// The first screen.
    Today,
    /// Repairs, found by words in number, line, node, street, lot or certificate; all if there are none.
    List {
        #[serde(default)]
        text: String,
    },
    /// One repair as its screens show it.
    Repair {
        repair: String,
    },
    /// Everything on the shelf.
    Shelf,
    /// Put a document on the shelf, or replace the one with its id.
    Keep {
        document: Box<Document>,
    },
    TakeOff {
        kind: DocumentKind,
        id: String,
    },
    /// Put the invented examples on the shelf.
    TakeExamples,
    /// All documents of the shelf but people, as a file for another device.
    HandOutSheets,
    /// Take such a file in, all of it or nothing.
    TakeSheets {
        #[serde(default)]
        name: String,
        bytes: String,
    },
    /// The inspection files on the shelf.
    Inspections,
    /// Read an inspection file and put it on the shelf; nothing of a broken file is kept.
    ImportInspection {
        name: String,
        bytes: String,
    },
    /// One line of an inspection file, in plain words, with both stations.
    Inspection {
        file: String,
        index: usize,
    },
    /// Open a repair on picked observations.
    OpenFromInspection {
        file: String,
        index: usize,
        observations: Vec<usize>,
        /// What "from an hour to the same hour" means, where it was asked.
        #[serde(default)]
        same_hour: Option<SameHour>,
        /// What identifies the pipe and the inspection does not say.
        #[serde(default)]
        unsaid: Unsaid,
        contract: String,
        #[serde(default)]
        number: String,
        #[serde(default)]
        rehearsal: bool,
        #[serde(default)]
        video_before: String,
    },
    /// Open a repair on a defect entered by hand.
    OpenByHand {
        line: Box<Line>,
        defect: Box<Defect>,
        contract: String,
        #[serde(default)]
        number: String,
        #[serde(default)]
        rehearsal: bool,
        #[serde(default)]
        video_before: String,
    },
    /// Open a repair on a defect as somebody wrote it down, counted from either node and looking either way.
    EnterByHand {
        seen: Box<ByHand>,
        contract: String,
        #[serde(default)]
        number: String,
        #[serde(default)]
        rehearsal: bool,
        #[serde(default)]
        video_before: String,
    },
    /// Open a rehearsal on the built-in practice line, planned, with a clock of its own.
    Practise {
        /// What goes wrong on purpose.
        #[serde(default)]
        mishaps: Vec<Mishap>,
        /// One mishap that nobody names.
        #[serde(default)]
        surprise: bool,
        /// How many times as fast the clock runs, 1 to 60.
        pace: u32,
    },
    /// Let the clock of a rehearsal run at another pace from now on.
    Pace {
        repair: String,
        pace: u32,
    },
    /// Where several devices went on with a repair: what each did.
    Branches {
        repair: String,
    },
    /// Go on with a hold that another phone handed over: by a photo of its code taken `age_ms` ago, by what its clock
    /// shows (`14:05:30`), by the code that the hold was `followed` by, or by none of them if it is not here. The phone that
    /// handed it over takes it back by none.
    TakeOver {
        repair: String,
        #[serde(default)]
        photo: String,
        #[serde(default)]
        age_ms: i64,
        #[serde(default)]
        clock: String,
        #[serde(default, skip_serializing_if = "std::ops::Not::not")]
        followed: bool,
    },
    /// Show the clock of a hold on another phone, by a photo of its code taken `age_ms` ago. Its record stays there.
    Follow {
        photo: String,
        #[serde(default)]
        age_ms: i64,
    },
    /// A hold that is followed by its code; the first screen where it is not any more.
    Followed {
        repair: String,
    },
    /// Show that clock no longer.
    Unfollow {
        repair: String,
    },
    /// What can go to another device, and the key of this one.
    Bundles,
    /// Make a bundle of these repairs, or of all if none is named; of them those changed since a moment, if one is.
    Pack {
        #[serde(default)]
        repairs: Vec<String>,
        #[serde(default)]
        since_ms: Option<i64>,
    },
    /// A piece of a file that was made, from a byte on.
    Piece {
        name: String,
        from: u64,
    },
    /// Bring a piece of a file that is `of` bytes long.
    Bring {
        name: String,
        of: u64,
        from: u64,
        bytes: String,
    },
    /// Take in the bundle that was brought, all of it or nothing.
    TakeIn {
        name: String,
        of: u64,
        /// The key of the sending device, if somebody was told it; then no other is believed.
        #[serde(default)]
        key: String,
    },
    /// Make a backup of the whole folder, encrypted with the password of the envelope.
    BackUp,
    /// A backup was saved where the person wanted it.
    NoteBackup {
        name: String,
        bytes: u64,
    },
    /// Restore the backup that was brought into this folder, which must be empty.
    Restore {
        name: String,
        of: u64,
    },
    /// What a plan would be; writes nothing. Without a choice, a first one is suggested.
    Plan {
        repair: String,
        #[serde(default)]
        choice: Option<Box<PlanChoice>>,
    },
    /// Work by this plan.
    AcceptPlan {
        repair: String,
        choice: Box<PlanChoice>,
    },
    /// A command to a repair.
    Tell {
        repair: String,
        command: Command,
    },
    /// Keep a photo and note it in the repair.
    KeepPhoto {
        repair: String,
        #[serde(default)]
        key: String,
        #[serde(default)]
        label: String,
        bytes: String,
        /// The SHA-256 of the photo of this repair that this one is a marked-up copy of.
        #[serde(default)]
        copy_of: Option<String>,
    },
    /// A photo: its original bytes, or a small copy for a screen.
    Photo {
        sha256: String,
        #[serde(default)]
        longest_px: Option<u32>,
    },
    /// What the GS1 code on a photographed label says; keeps nothing.
    ReadLabel {
        bytes: String,
    },
    /// The job on paper: every task with its fields, once there is a plan.
    Paper {
        repair: String,
    },
    /// Give the certificate its number.
    Issue {
        repair: String,
    },
    /// Let the issued certificate no longer count: by the foreman, whose PIN the envelope carries, with a reason.
    Void {
        repair: String,
        reason: String,
    },
    /// Every certificate number of this device, and what became of it.
    Numbers,
    /// Sign the issued certificate with the key of who taps, opened by the PIN of the envelope. A rehearsal is signed
    /// with keys made on the spot.
    Seal {
        repair: String,
    },
    /// Make a key for a person, locked by the PIN of the envelope.
    MakeKey {
        person: String,
    },
    /// Take a key file (PKCS#12), opened by the password of the envelope and locked by its PIN.
    ImportKey {
        person: String,
        bytes: String,
    },
    /// Lock the key of somebody with another PIN: the new one is the envelope's PIN, the old one its password.
    ChangePin {
        person: String,
    },
    /// Mark the key of a person as no longer good from an instant on.
    RevokeKey {
        person: String,
        from_ms: i64,
        reason: String,
    },
    /// The certificates of a person's keys, as PEM, to hand to owners.
    PersonCertificate {
        person: String,
    },
    /// The certificate as PDF; before it is issued, a draft that says so.
    Certificate {
        repair: String,
    },
    /// The record of a repair, to keep or to check: its chain with all entries.
    Record {
        repair: String,
    },
    /// Take in a record that another folder gave out: its entries, as they are.
    ImportRecord {
        name: String,
        bytes: String,
    },
    /// Check a record that somebody brings.
    CheckRecord {
        name: String,
        bytes: String,
    },
    /// Look whether a photo that was brought is one of the certificate that was checked last; `head` is its head.
    CheckOriginal {
        head: String,
        name: String,
        of: u64,
    },
    /// The rule table.
    Rules,
    /// The sentences of the screens, in the language of who reads.
    Words,
    /// One of the named checks.
    Check {
        name: String,
        input: serde_json::Value,
    },
    /// What was typed into fields, each in its own unit: its value, why it can't be read, or what may have been meant.
    Read {
        entries: Vec<Typed>,
    },
    /// Every check with its fields; for a repair, what of them is known already and what was worked out.
    ///
    /// With a name and fields one is worked out as well, and nothing is written. A number may be text with its unit.
    Checks {
        #[serde(default)]
        repair: String,
        #[serde(default)]
        name: String,
        #[serde(default)]
        input: Option<serde_json::Value>,
    },
    /// Work out a check for a repair and keep it in its record.
    WorkOut {
        repair: String,
        name: String,
        input: serde_json::Value,
    },
    /// A file for support: version, platform, counts, faults, sizes; no name and no position.
    Diagnostics,
    /// Make the register anew from the journal.
    Rebuild,
}

impl Request {
    /// Returns the repair whose clock tells the time for this request, where it has one of its own.
    pub fn about(&self) -> Option<&str> {
        match self {
            Self::Repair { repair }
            | Self::Pace { repair, .. }
            | Self::Branches { repair }
            | Self::Plan { repair, .. }
            | Self::AcceptPlan { repair, .. }
            | Self::Tell { repair, .. }
            | Self::KeepPhoto { repair, .. }
            | Self::Paper { repair }
            | Self::Issue { repair }
            | Self::Seal { repair }
            | Self::Certificate { repair }
            | Self::Record { repair }
            | Self::Checks { repair, .. }
            | Self::WorkOut { repair, .. } => Some(repair),
            _ => None,
        }
    }

    /// Returns whether this can stand on paper: what is told, photographed or looked at of a repair. A name is put to
    /// something, a certificate is numbered and a hold handed over, where the screen shows what it is: now.
    pub fn on_paper(&self) -> bool {
        match self {
            Self::Tell { command, .. } => {
                !matches!(command, Command::Sign { .. } | Command::ChooseBranch { .. } | Command::HandOver { .. })
            }
            Self::Repair { .. } | Self::KeepPhoto { .. } => true,
            _ => false,
        }
    }

    /// Says whether only the crew may ask for it, beside what the rules of the repair say of each command.
    pub const fn is_for_crew(&self) -> bool {
        matches!(
            self,
            Self::Keep { .. }
                | Self::TakeOff { .. }
                | Self::TakeExamples
                | Self::TakeSheets { .. }
                | Self::ImportInspection { .. }
                | Self::ImportRecord { .. }
                | Self::TakeIn { .. }
                | Self::Follow { .. }
                | Self::Unfollow { .. }
                | Self::KeepPhoto { .. }
                | Self::BackUp
                | Self::NoteBackup { .. }
                | Self::MakeKey { .. }
                | Self::ImportKey { .. }
                | Self::RevokeKey { .. }
                | Self::Seal { .. }
        )
    }
}
