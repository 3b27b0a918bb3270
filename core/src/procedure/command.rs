//! What can be asked and reported.

use serde::{Deserialize, Serialize};

use super::answer::{Answer, Value};
use super::happening::Happening;
use super::line::{Defect, Line};
use super::plan::{Plan, Temperatures};
use super::practice::Mishap;
use super::repair::CorrectionOf;
use super::rules::Rule;
use super::stage::Outcome;
use crate::checks::named::Worked;
use crate::facts::Moment;
use crate::shelf::Contract;
use crate::words;

/// A command to a repair. Asks are gated and may be refused; reports are always recorded.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "command", rename_all = "snake_case", deny_unknown_fields)]
pub enum Command {
    /// Ask: open a repair.
    Open {
        id: String,
        number: String,
        rehearsal: bool,
        line: Box<Line>,
        defect: Box<Defect>,
        contract: Box<Contract>,
        #[serde(default)]
        video_before: String,
    },
    /// Ask: give a rehearsal a clock of its own, and what goes wrong on purpose.
    Practise {
        mishaps: Vec<Mishap>,
        surprise: bool,
        pace: u32,
        /// What the device's own clocks show.
        real: Moment,
    },
    /// Ask: let the clock of a rehearsal run at another pace.
    SetPace {
        pace: u32,
        real: Moment,
    },
    /// Ask: work by this plan.
    AcceptPlan {
        plan: Box<Plan>,
    },
    /// Ask: begin the next stage. The first one begins an attempt.
    GoOn,
    /// Ask: is there time, before the parts are joined, at these temperatures?
    SecondGo {
        temperatures: Temperatures,
    },
    /// Ask: may the packer be let down?
    Release,
    /// Ask: accept or reject what the camera shows.
    Judge {
        accept: bool,
        #[serde(default)]
        reasons: Vec<String>,
    },
    /// Ask: waive a rule, by the foreman.
    Waive {
        rule: Rule,
        #[serde(default)]
        subject: String,
        reason: String,
        foreman: String,
    },
    /// Ask: let one of the branches count, by the foreman.
    ChooseBranch {
        /// The head that counts, 64 hexadecimal digits.
        head: String,
        reason: String,
        foreman: String,
    },
    /// Ask: hand the hold that runs over to another phone.
    HandOver {
        /// To whom or which phone, in words.
        #[serde(default)]
        to: String,
    },
    /// Ask: go on with a hold that another phone handed over.
    TakeOver {
        /// What the clocks of the first phone showed at `ours`; none if it is not here.
        theirs: Option<Moment>,
        ours: Moment,
        /// Somebody read the first phone's clock and typed it.
        #[serde(default)]
        typed: bool,
    },
    /// Ask: begin another attempt after the pipe has been viewed again.
    NewAttempt {
        pipe_unharmed: bool,
        packer_unharmed: bool,
    },
    /// Ask: close the repair without a patch.
    CloseUnrepaired {
        reason: String,
    },
    /// Ask: put a signature under the record.
    Sign {
        name: String,
        statement: String,
        strokes: Vec<Vec<(i32, i32)>>,
    },
    /// Ask: give the certificate its number.
    Issue {
        number: String,
    },
    /// Ask: let the issued certificate no longer count, by the foreman.
    Void {
        reason: String,
        foreman: String,
    },
    /// Report: a task of the method statement is answered.
    Answer {
        task: String,
        answer: Answer,
    },
    /// Report: something happened, now or some time ago.
    Report {
        happening: Happening,
        #[serde(default)]
        ago_ms: i64,
    },
    /// Report: the attempt is over without an accepted patch.
    EndAttempt {
        outcome: Outcome,
        #[serde(default)]
        reasons: Vec<String>,
        in_pipe: String,
    },
    /// Report: an earlier value was wrong.
    Correct {
        of: CorrectionOf,
        value: Value,
        reason: String,
    },
    /// Report: a check was worked out for this repair.
    WorkOut {
        worked: Box<Worked>,
    },
    Note {
        text: String,
    },
    /// Report: a photo was taken; its bytes are already kept.
    Photo {
        #[serde(default)]
        key: String,
        #[serde(default)]
        label: String,
        sha256: String,
        bytes: u64,
        media_type: String,
        /// The SHA-256 of the photo that this one is a marked-up copy of.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        copy_of: Option<String>,
    },
}

impl Command {
    /// Returns the command as it is recorded: sentences that a screen offered are in English, whoever picked them.
    pub fn as_recorded(self) -> Self {
        match self {
            Self::EndAttempt { outcome, reasons, in_pipe } => Self::EndAttempt {
                outcome,
                reasons: reasons.iter().map(|reason| words::as_recorded(reason)).collect(),
                in_pipe: words::as_recorded(&in_pipe),
            },
            other => other,
        }
    }
}
