//! The state of a repair: everything that its entries say, put together.

use std::collections::{BTreeMap, BTreeSet};

use serde::{Deserialize, Serialize};

use super::answer::Answer;
use super::happening::{Happening, ReadBy};
use super::line::{Defect, Line};
use super::plan::{Budget, Plan, Temperatures};
use super::practice::Practice;
use super::rules::{Rule, RuleValues};
use super::stage::{Outcome, PatchPlace, Stage};
use crate::checks::named::Worked;
use crate::facts::{Facts, Moment, Position};
use crate::shelf::method::TaskKind;
use crate::shelf::{Contract, Role};
use crate::units::{Length, Pressure, Temperature};

/// When and by whom something was recorded, and when it happened if that was earlier.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Stamp {
    /// When it happened, on both clocks.
    pub moment: Moment,
    /// How long before the tap it happened; zero for a tap in time.
    pub ago_ms: i64,
    /// It was keyed in from paper.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub paper: bool,
    pub person: Option<String>,
    pub device: String,
    pub position: Position,
}

impl Stamp {
    /// Returns the stamp of something that happened `ago_ms` before the tap.
    pub fn of(facts: &Facts, ago_ms: i64) -> Self {
        let mut moment = facts.moment.clone();
        moment.at_ms -= ago_ms;
        moment.boot_ms -= ago_ms;
        Self {
            moment,
            ago_ms: ago_ms + facts.keyed_after_ms(),
            paper: facts.keyed.is_some(),
            person: facts.person.clone(),
            device: facts.device.clone(),
            position: facts.position.clone(),
        }
    }

    /// Returns when it was tapped, in milliseconds since 1970 by the wall clock.
    pub fn tapped_ms(&self) -> i64 {
        self.moment.at_ms + self.ago_ms
    }
}

/// One defect in one line, from the plan to the certificate.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Repair {
    pub id: String,
    pub number: String,
    pub rehearsal: bool,
    pub opened: Stamp,
    pub line: Line,
    pub defect: Defect,
    pub contract: Contract,
    pub video_before: String,
    pub plan: Option<Plan>,
    pub attempts: Vec<Attempt>,
    pub broken: Vec<Broken>,
    pub waivers: Vec<Waiver>,
    pub corrections: Vec<Correction>,
    pub notes: Vec<Note>,
    /// Checks that were worked out, oldest first; of the same name the last one counts.
    pub worked: Vec<WorkedOut>,
    pub photos: Vec<Photo>,
    pub clock_jumps: Vec<ClockJump>,
    pub signatures: Vec<Signature>,
    /// The keys that signed the issued certificate, in their order.
    #[serde(default)]
    pub seals: Vec<Sealed>,
    pub issued: Option<Issued>,
    /// Records that were issued before the repair went on, oldest first; each is superseded by the next.
    #[serde(default)]
    pub issued_before: Vec<Issued>,
    /// Which of them the foreman voided, and why.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub voided: Vec<Voided>,
    pub closed: Option<Closed>,
    /// The heads, where several devices went on and nobody has chosen yet; filled in from the journal.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub branches: Vec<Branch>,
    /// What the foreman chose where devices had gone on apart, oldest first.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub choices: Vec<Choice>,
    /// The clock of a rehearsal that is played.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub practice: Option<Practice>,
    /// The last moment that an entry saw, to notice a clock that was set.
    pub last_moment: Moment,
    pub last_device: String,
    pub entries: u64,
}

/// One go at mending the defect.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Attempt {
    pub n: u32,
    pub spans: Vec<StageSpan>,
    pub answers: BTreeMap<String, Answered>,
    pub temperatures: Vec<(Stamp, Temperatures)>,
    pub test_push: TestPush,
    pub go: Option<Go>,
    pub second_go: Option<Go>,
    pub joined: Option<Stamp>,
    pub insertion: Option<Stamp>,
    pub at_mark: Option<AtMark>,
    pub air_joined: Option<Stamp>,
    pub target: Option<Target>,
    pub readings: Vec<Reading>,
    pub sample: Vec<(Stamp, bool)>,
    pub released: Option<(Stamp, bool)>,
    pub troubles: Vec<(Stamp, Happening)>,
    pub place: Option<(Stamp, PatchPlace)>,
    pub laterals: Vec<LateralOpened>,
    pub tightness: Option<(Stamp, bool, String)>,
    pub doubts: Vec<Doubt>,
    /// The last time that its hold went to another phone.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub handed: Option<HandedOver>,
    pub ended: Option<AttemptEnded>,
}

/// One stage of an attempt in time.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct StageSpan {
    pub stage: Stage,
    pub begun: Stamp,
    pub ended: Option<Stamp>,
}

/// The answer to a task.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Answered {
    pub kind: TaskKind,
    pub stage: Stage,
    pub label: String,
    pub answer: Answer,
    pub at: Stamp,
    /// Filled in after its stage, as things of the wet-out may be.
    pub late: bool,
    /// Earlier answers to the same task, oldest first.
    pub before: Vec<(Stamp, Answer)>,
    /// The attempt in which it was answered, if not this one.
    pub carried_from: Option<u32>,
}

/// The test push: the dry packer goes to the mark and back, never inflated.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct TestPush {
    pub begun: Option<Stamp>,
    pub reached: Option<(Stamp, Option<Length>)>,
    pub back: Option<(Stamp, bool)>,
    /// The attempt in which it was made, if not this one.
    pub carried_from: Option<u32>,
}

/// A go for the resin's time.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Go {
    pub at: Stamp,
    pub budget: Budget,
    pub temperatures: Temperatures,
}

/// The loaded packer at the mark.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct AtMark {
    pub at: Stamp,
    pub counter_um: Option<Length>,
    pub beyond_um: Option<Length>,
}

/// Target pressure reached.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Target {
    pub at: Stamp,
    pub gauge_pa: Pressure,
}

/// One reading of the hold.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Reading {
    pub at: Stamp,
    pub gauge_pa: Pressure,
    pub pipe_mc: Option<Temperature>,
    pub water_mc: Option<Temperature>,
    pub patch_mc: Option<Temperature>,
    pub upstream_um: Option<Length>,
    pub by: ReadBy,
    pub gauge: String,
    pub why: String,
    /// Pressure of the air outside, absolute, where it was read with this one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub outside_pa: Option<Pressure>,
}

/// A lateral that was opened.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct LateralOpened {
    pub at: Stamp,
    pub lateral: usize,
    pub open_pct: i64,
    pub coupon: bool,
}

/// What makes an attempt doubtful.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Doubt {
    pub at: Stamp,
    pub rule: Rule,
    pub values: RuleValues,
}

/// A rule that a report or an answer broke; it needs the foreman before the certificate.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Broken {
    pub at: Stamp,
    pub attempt: u32,
    pub rule: Rule,
    /// What it is about, where a rule can be broken more than once.
    pub subject: String,
    pub values: RuleValues,
}

/// A rule waived by the foreman.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Waiver {
    pub at: Stamp,
    pub attempt: u32,
    pub rule: Rule,
    pub subject: String,
    pub values: RuleValues,
    pub reason: String,
    pub foreman: String,
}

/// A value that was corrected; the old one stays.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Correction {
    pub at: Stamp,
    pub attempt: u32,
    pub of: CorrectionOf,
    pub label: String,
    pub old: String,
    pub new: String,
    pub reason: String,
}

/// What a correction is about.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "kind", rename_all = "snake_case", deny_unknown_fields)]
pub enum CorrectionOf {
    Task { task: String, field: String },
    Reading { index: usize, field: ReadingField },
}

/// The value of a reading that can be corrected.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum ReadingField {
    GaugePa,
    PipeMc,
    WaterMc,
}

/// A check that was worked out for this repair.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct WorkedOut {
    pub at: Stamp,
    pub attempt: u32,
    pub stage: Stage,
    pub worked: Worked,
}

#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Note {
    pub at: Stamp,
    pub text: String,
}

/// A photo; its bytes lie in a file named by their SHA-256.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Photo {
    pub at: Stamp,
    pub attempt: u32,
    pub stage: Stage,
    /// The photo rule that it answers, or empty.
    pub key: String,
    pub label: String,
    pub sha256: String,
    pub bytes: u64,
    pub media_type: String,
    /// The SHA-256 of the photo that this one is a marked-up copy of.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub copy_of: Option<String>,
}

/// The wall clock was set while the device ran.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct ClockJump {
    pub at: Stamp,
    /// How far the wall clock went ahead of the boot clock; negative if it was set back.
    pub by_ms: i64,
    /// The device was started anew in between, so only the wall clock tells how long.
    pub restarted: bool,
}

/// A hold was handed over to another phone.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct HandedOver {
    pub at: Stamp,
    /// To whom or which phone, in words.
    pub to: String,
    pub taken: Option<TakenOver>,
}

/// Another phone goes on with it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct TakenOver {
    pub at: Stamp,
    /// What the clocks of the first phone showed at `ours`; none if it was not there, or took its own hold back.
    pub theirs: Option<Moment>,
    pub ours: Moment,
}

/// How an attempt ended.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct AttemptEnded {
    pub at: Stamp,
    pub outcome: Outcome,
    pub reasons: Vec<String>,
    /// Somebody has looked and says whether anything of it is still in the pipe.
    pub in_pipe: String,
}

/// A key signed the issued certificate.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Sealed {
    pub at: Stamp,
    pub role: Role,
    pub name: String,
    /// The certificate of the key: DER in base64.
    pub certificate: String,
    /// The SHA-256 of the file with this signature.
    pub file: String,
}

/// One of the ways in which a repair went on, by its last entry.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Branch {
    pub head: String,
    pub device: String,
    pub person: Option<String>,
    /// By the wall clock of that device.
    pub at_ms: i64,
    /// The state is told by this one.
    pub own: bool,
}

/// The foreman's choice between branches.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Choice {
    pub at: Stamp,
    pub head: String,
    pub over: Vec<String>,
    pub reason: String,
    pub foreman: String,
}

/// A drawn line with a name. Without a key it proves nothing about who drew it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Signature {
    pub at: Stamp,
    pub role: Role,
    pub name: String,
    pub statement: String,
    /// Strokes in thousandths of the pad's width and height.
    pub strokes: Vec<Vec<(i32, i32)>>,
    /// The fingerprint of the key that was opened with its PIN for it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub key: Option<String>,
}

/// The certificate was issued.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Issued {
    pub at: Stamp,
    pub number: String,
}

/// The foreman let a certificate no longer count.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Voided {
    pub at: Stamp,
    pub number: String,
    pub reason: String,
    pub foreman: String,
}

/// The repair was closed without an accepted patch.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Closed {
    pub at: Stamp,
    pub reason: String,
}

/// Adds whoever stands under a key that names a person.
fn named(state: &serde_json::Value, found: &mut BTreeSet<String>) {
    match state {
        serde_json::Value::Object(all) => {
            for (key, value) in all {
                if let (true, Some(id)) = (["person", "foreman"].contains(&key.as_str()), value.as_str()) {
                    found.insert(id.to_owned());
                }
                named(value, found);
            }
        }
        serde_json::Value::Array(all) => all.iter().for_each(|one| named(one, found)),
        _ => {}
    }
}

/// Where a repair stands as a whole.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Standing {
    /// No plan yet, or a plan and no attempt.
    Planned,
    /// An attempt is under way.
    Underway,
    /// The last attempt ended without an accepted patch; another may begin.
    Between,
    /// An attempt was accepted; the certificate may be signed.
    Complete,
    /// Closed without a patch.
    Unrepaired,
}

/// What a repair has come to, where a record of it can be signed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Ending {
    Accepted,
    /// The last attempt was rejected; another may follow, under a record of its own.
    Rejected,
    /// Closed without a patch, or with a patch left in the pipe.
    Unrepaired,
}

impl Repair {
    /// Returns the ids of everybody who is named in the state, each once.
    pub fn people(&self) -> BTreeSet<String> {
        let state = serde_json::to_value(self).unwrap_or_default();
        let mut found = BTreeSet::new();
        named(&state, &mut found);
        found
    }

    /// Returns why an earlier certificate of this repair no longer counts: a whole sentence.
    pub fn why_superseded(&self, number: &str) -> &str {
        let voided = self.voided.iter().rev().find(|voided| voided.number == number);
        voided.map_or("The repair went on after it.", |voided| voided.reason.as_str())
    }

    /// Returns the attempt that was begun last, ended or not.
    pub fn last_attempt(&self) -> Option<&Attempt> {
        self.attempts.last()
    }

    /// Returns the attempt under way.
    pub fn attempt(&self) -> Option<&Attempt> {
        self.attempts.last().filter(|attempt| attempt.ended.is_none())
    }

    /// Returns the last hand-over of the hold that runs, taken or not.
    pub fn handed(&self) -> Option<&HandedOver> {
        self.attempt().filter(|attempt| attempt.released.is_none())?.handed.as_ref()
    }

    /// Returns whether the hold that runs is another phone's: handed over by this one, or taken over by that one.
    pub fn is_away(&self, device: &str) -> bool {
        self.handed().is_some_and(|handed| match &handed.taken {
            Some(taken) => taken.at.device != device,
            None => handed.at.device == device,
        })
    }

    /// Returns the accepted attempt.
    pub fn accepted(&self) -> Option<&Attempt> {
        self.attempts.iter().find(|attempt| attempt.outcome() == Some(Outcome::Accepted))
    }

    pub fn standing(&self) -> Standing {
        match self.last_attempt() {
            _ if self.closed.is_some() => Standing::Unrepaired,
            _ if self.accepted().is_some() => Standing::Complete,
            None => Standing::Planned,
            Some(attempt) if attempt.ended.is_none() => Standing::Underway,
            Some(_) => Standing::Between,
        }
    }

    /// Returns what the repair has come to; `None` while there is nothing to sign.
    pub fn ending(&self) -> Option<Ending> {
        match (self.standing(), self.last_attempt().and_then(Attempt::outcome)) {
            (Standing::Complete, _) => Some(Ending::Accepted),
            (Standing::Unrepaired, _) | (Standing::Between, Some(Outcome::LeftInPipe)) => Some(Ending::Unrepaired),
            (Standing::Between, Some(Outcome::Rejected)) => Some(Ending::Rejected),
            (Standing::Planned | Standing::Underway | Standing::Between, _) => None,
        }
    }

    /// Returns the stage of the attempt under way; `Planned` before the first.
    pub fn stage(&self) -> Stage {
        self.last_attempt().map_or(Stage::Planned, Attempt::stage)
    }

    /// Returns the last of each check that was worked out, in the order in which each was worked out first.
    pub fn worked_last(&self) -> Vec<&WorkedOut> {
        let mut names: Vec<&str> = vec![];
        for one in &self.worked {
            if !names.contains(&one.worked.name.as_str()) {
                names.push(&one.worked.name);
            }
        }
        names.into_iter().filter_map(|name| self.last_worked(name)).collect()
    }

    /// Returns the check of this name that was worked out last.
    pub fn last_worked(&self, name: &str) -> Option<&WorkedOut> {
        self.worked.iter().rev().find(|one| one.worked.name == name)
    }

    /// Returns whether the foreman has waived this rule for this subject in this attempt.
    pub fn waived(&self, rule: Rule, subject: &str) -> bool {
        let attempt = self.last_attempt().map_or(1, |attempt| attempt.n);
        self.waivers.iter().any(|waiver| waiver.rule == rule && waiver.subject == subject && waiver.attempt == attempt)
    }

    /// Returns the broken rules of the last attempt that nobody has waived yet.
    pub fn open_departures(&self) -> Vec<&Broken> {
        let attempt = self.last_attempt().map_or(1, |attempt| attempt.n);
        self.broken
            .iter()
            .filter(|broken| broken.attempt == attempt && !self.waived(broken.rule, &broken.subject))
            .collect()
    }
}

impl Attempt {
    pub fn stage(&self) -> Stage {
        self.spans.last().map_or(Stage::Staging, |span| span.stage)
    }

    pub fn outcome(&self) -> Option<Outcome> {
        self.ended.as_ref().map(|ended| ended.outcome)
    }

    /// Returns the answer to the first task of a kind.
    pub fn answer(&self, kind: TaskKind) -> Option<&Answered> {
        self.answers.values().find(|answered| answered.kind == kind)
    }

    /// Returns how far past the mark the patch came to rest, if somebody has said where it did; short of it is negative.
    pub fn rest(&self) -> Option<Length> {
        let answered = self.answer(TaskKind::AtTheMark).map(|answered| &answered.answer).filter(|answer| answer.done());
        let tapped = self.at_mark.as_ref().map(|mark| mark.beyond_um);
        let written = answered.map(|answer| answer.number("beyond_um").map(Length::from_um));
        match (tapped, written) {
            (Some(Some(beyond)), _) | (_, Some(Some(beyond))) => Some(beyond),
            (None, None) => None,
            _ => Some(Length::default()),
        }
    }

    /// Returns whether resin is mixed and the patch is not yet at pressure: nothing may stand in the way.
    pub fn resin_runs(&self) -> bool {
        self.joined.is_some() && self.target.is_none() && self.released.is_none() && self.ended.is_none()
    }

    /// Returns the temperatures read last.
    pub fn last_temperatures(&self) -> Option<&(Stamp, Temperatures)> {
        self.temperatures.last()
    }
}
