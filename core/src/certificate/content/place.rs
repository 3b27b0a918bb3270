//! Where the patch is, and what lies around it.

use super::Known;
use crate::units::Length;
use serde::{Deserialize, Serialize};

/// The line, the patch and the defect, for the drawings.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Place {
    /// The name of the node where the flow begins; drawn left.
    pub upstream: String,
    /// The name of the node where the flow goes; drawn right.
    pub downstream: String,
    /// From node centre to node centre.
    pub length_um: Length,
    /// The nominal size of the pipe.
    pub dn_mm: u32,
    /// The greatest measured inside diameter; absent: laterals are drawn by the nominal size.
    pub inside_um: Known<Length>,
    /// Of the whole line, in any order. Empty: the page says `no lateral`.
    pub laterals: Vec<Lateral>,
    /// Where the patch lies; absent where none was set.
    pub patch: Known<Stretch>,
    /// What the inspection saw at the patch; the first is the defect that was to be mended. At least one.
    pub observations: Vec<Observation>,
    /// What the verification found outside the limits, drawn dashed.
    pub marks: Vec<Mark>,
    /// Of the first observation; absent where no patch was set.
    pub cover: Known<Cover>,
}

/// A stretch of the pipe, from upstream to downstream.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Stretch {
    pub from_um: Length,
    pub to_um: Length,
}

/// A connection to the line.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Lateral {
    pub station_um: Length,
    /// Clock hour, 1 to 12.
    pub hour: u8,
    pub dn_mm: u32,
    /// Whether the patch lies over it.
    pub covered: bool,
    /// How much of its bore is open again, in per cent; `None`: not covered, or not yet opened.
    pub opened_percent: Option<u8>,
}

/// How far round the wall something reaches.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Around {
    /// The whole ring.
    All,
    /// One spot at this clock hour, 1 to 12.
    At(u8),
    /// Clockwise from one hour to another, looking downstream; the two differ.
    Arc { from_hour: u8, to_hour: u8 },
}

/// A coded observation of EN 13508-2.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Observation {
    /// Main code and characterizations, such as `BAB B A`.
    pub code: String,
    /// The code in words, with a capital.
    pub words: String,
    pub stretch: Stretch,
    pub around: Around,
}

/// A finding that has a place on the wall.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Mark {
    /// As in the reasons: `F1`.
    pub label: String,
    /// One or two words: `fold`.
    pub words: String,
    pub stretch: Stretch,
    pub around: Around,
}

/// How far the patch reaches beyond the defect when all errors are taken off.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Cover {
    /// The sum of the errors, rounded up.
    pub errors_mm: i64,
    /// Rounded down; negative where the defect may stick out.
    pub upstream_mm: i64,
    /// Rounded down.
    pub downstream_mm: i64,
    /// What the contract or the sheet asks for on each side.
    pub required_mm: Known<i64>,
}
