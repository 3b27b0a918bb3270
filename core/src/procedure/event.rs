//! What is recorded: past tense, never edited.

use serde::{Deserialize, Serialize};

use super::answer::Answer;
use super::happening::Happening;
use super::line::{Defect, Line};
use super::plan::{Budget, Plan, Temperatures};
use super::practice::Mishap;
use super::repair::CorrectionOf;
use super::rules::{Rule, RuleValues};
use super::stage::{Outcome, Stage};
use crate::checks::named::Worked;
use crate::facts::{Facts, Moment};
use crate::shelf::method::TaskKind;
use crate::shelf::{Contract, Role};

/// One entry of a repair's journal: what the device knew, and what came of the request.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Record {
    pub facts: Facts,
    pub events: Vec<Event>,
}

/// Something that was recorded about a repair.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "event", rename_all = "snake_case", deny_unknown_fields)]
pub enum Event {
    Opened {
        id: String,
        number: String,
        rehearsal: bool,
        line: Box<Line>,
        defect: Box<Defect>,
        contract: Box<Contract>,
        #[serde(default)]
        video_before: String,
    },
    PlanAccepted {
        plan: Box<Plan>,
    },
    AttemptBegun {
        n: u32,
        /// Keys of the tasks whose answers stay valid.
        carried: Vec<String>,
        /// The test push stays valid: pipe and packer are unharmed.
        test_push: bool,
    },
    StageBegun {
        stage: Stage,
        #[serde(default)]
        ago_ms: i64,
    },
    Answered {
        task: String,
        kind: TaskKind,
        stage: Stage,
        label: String,
        answer: Answer,
        late: bool,
    },
    Go {
        second: bool,
        budget: Box<Budget>,
        temperatures: Temperatures,
    },
    Happened {
        happening: Happening,
        #[serde(default)]
        ago_ms: i64,
    },
    Doubted {
        rule: Rule,
        values: RuleValues,
    },
    Broke {
        rule: Rule,
        subject: String,
        values: RuleValues,
    },
    Waived {
        rule: Rule,
        subject: String,
        values: RuleValues,
        reason: String,
        foreman: String,
    },
    Corrected {
        of: CorrectionOf,
        label: String,
        old: String,
        new: String,
        /// The new value in smallest steps, or the text itself.
        value: super::answer::Value,
        reason: String,
    },
    WorkedOut {
        stage: Stage,
        worked: Box<Worked>,
    },
    Noted {
        text: String,
    },
    PhotoKept {
        stage: Stage,
        key: String,
        label: String,
        sha256: String,
        bytes: u64,
        media_type: String,
        /// The SHA-256 of the photo that this one is a marked-up copy of.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        copy_of: Option<String>,
    },
    ClockSet {
        by_ms: i64,
        restarted: bool,
    },
    AttemptEnded {
        outcome: Outcome,
        reasons: Vec<String>,
        in_pipe: String,
    },
    Unrepaired {
        reason: String,
    },
    Signed {
        role: Role,
        name: String,
        statement: String,
        strokes: Vec<Vec<(i32, i32)>>,
    },
    Issued {
        number: String,
    },
    /// Two devices went on from the same entry; the foreman chose which of them counts. The entry follows all heads.
    BranchChosen {
        /// The head that counts, 64 hexadecimal digits.
        head: String,
        /// The heads that are set aside. Their entries stay.
        over: Vec<String>,
        reason: String,
        foreman: String,
    },
    /// A rehearsal got a clock of its own, which begins at the entry's moment, and what goes wrong on purpose.
    PractiseBegun {
        mishaps: Vec<Mishap>,
        /// Nobody was told which.
        surprise: bool,
        pace: u32,
        /// What the device's own clocks showed.
        real: Moment,
    },
    /// The clock of a rehearsal runs at another pace.
    PaceSet {
        pace: u32,
        real: Moment,
    },
    /// The foreman voided the issued certificate: it no longer counts, and its number is not used again.
    Voided {
        number: String,
        reason: String,
        foreman: String,
    },
    /// The hold that runs was handed over to another phone. The entry's moment has both clocks of the first one.
    HandedOver {
        to: String,
    },
    /// A phone goes on with a hold that another one handed over.
    TakenOver {
        /// What the clocks of the first phone showed at `ours`; none if it was not there, and then the wall clocks tell.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        theirs: Option<Moment>,
        ours: Moment,
        /// Somebody read the first phone's clock and typed it; else the phone said it by its code.
        #[serde(default, skip_serializing_if = "std::ops::Not::not")]
        typed: bool,
    },
    /// A key signed the issued certificate.
    Sealed {
        role: Role,
        name: String,
        /// The certificate of the key: DER in base64.
        certificate: String,
        /// The SHA-256 of the file with this signature, 64 hexadecimal digits.
        file: String,
    },
}
