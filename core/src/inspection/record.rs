//! What an inspection file says, as plain data: codes as they stand, quantities with their unit in the name.

use super::Clock;
use crate::units::Length;
use chrono::{NaiveDate, NaiveTime};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// One file, read whole.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct InspectionFile {
    /// Text or XML.
    pub form: Form,
    /// #A2: the language of the remarks, ISO 639. `None` if the file does not say.
    pub language: Option<String>,
    /// #A6, as written; programs write their own text here.
    pub version: Option<String>,
    /// What had to be read around, in the order of the file.
    pub notices: Vec<Notice>,
    /// In the order of the file; never empty.
    pub inspections: Vec<Inspection>,
}

/// The form of a file.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Form {
    /// Lines with `#A1=` … `#Z`.
    Text,
    /// `DATA`, `ZA`, `ZB`, `ZC`.
    Xml,
}

/// Something that was read around and that a reader should know of.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Notice {
    /// Stable name of the kind of notice.
    pub code: NoticeCode,
    /// Where, counted from 1; 1 if it concerns the whole file.
    pub line: u64,
    /// The same in plain words.
    pub text: String,
}

/// The kinds of notice, by a name that stays.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum NoticeCode {
    /// Read in another character set than the file names.
    CharacterSet,
    /// Some characters have no meaning in the character set.
    LostCharacters,
    /// A column or field that EN 13508-2 does not have: left out.
    UnknownColumn,
    /// A value that EN 13508-2 does not have: left out.
    UnknownValue,
    /// The start node was taken from the observation BCD.
    StartNodeFromObservation,
    /// The file ends without `#Z`.
    NoEndMark,
    /// There are more notices than are listed.
    MoreNotices,
}

/// One run of the camera along one line.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Inspection {
    /// AAA.
    pub line: Option<String>,
    /// AAB: the node where this run of the camera starts, and where stations are counted from.
    pub start_node: Option<String>,
    /// The node at the other end: of AAD and AAF the one that is not the start node; else what BCE names.
    pub end_node: Option<String>,
    /// AAD. Not tied to the flow: files put the upper or the lower node here.
    pub node_1: Option<String>,
    /// AAF. Not tied to the flow.
    pub node_2: Option<String>,
    /// AAK.
    pub direction: Option<Direction>,
    /// ABQ: the expected length of the inspection.
    pub length_um: Option<Length>,
    /// Station of the last observation BCE: where the camera arrived at the other end.
    pub arrival_um: Option<Length>,
    /// ACB.
    pub height_um: Option<Length>,
    /// ACC.
    pub width_um: Option<Length>,
    /// ACA, the code.
    pub shape: Option<String>,
    /// ACD, the code.
    pub material: Option<String>,
    /// ABF.
    pub date: Option<NaiveDate>,
    /// ABG, local time.
    pub time: Option<NaiveTime>,
    /// AAJ: the place in words, mostly the street.
    pub street: Option<String>,
    /// AAN.
    pub town: Option<String>,
    /// ABA: the coding standard.
    pub standard: Option<String>,
    /// ABC: the code of the point that stations are counted from.
    pub reference_point: Option<String>,
    /// ABH.
    pub inspector: Option<String>,
    /// Every other header field that has a value, by its code.
    pub other: BTreeMap<String, String>,
    /// Line of the file where the inspection begins, counted from 1.
    pub source_line: u64,
    /// In the order of the file; may be empty.
    pub observations: Vec<Observation>,
}

/// The direction of inspection, AAK.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum Direction {
    /// With the flow: the start node is the upper one.
    #[serde(rename = "A")]
    WithFlow,
    /// Against the flow: the start node is the lower one.
    #[serde(rename = "B")]
    AgainstFlow,
}

impl Direction {
    /// Returns the code of AAK.
    pub const fn code(self) -> &'static str {
        match self {
            Self::WithFlow => "A",
            Self::AgainstFlow => "B",
        }
    }
}

/// One observation.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Observation {
    /// I: distance from the start node's reference point.
    pub station_um: Option<Length>,
    /// J, as written: `A1` begins stretch 1, `B1` ends it.
    pub continuous: Option<String>,
    /// A: the main code, such as `BAB`; never empty.
    pub code: String,
    /// B.
    pub char1: Option<String>,
    /// C.
    pub char2: Option<String>,
    /// D. Unit and meaning depend on the code: mm, per cent, degrees, or a node's name.
    pub quant1: Option<Quantification>,
    /// E.
    pub quant2: Option<Quantification>,
    /// G: where it begins, clockwise, looking in the direction of inspection.
    pub clock_from: Option<Clock>,
    /// H: where it ends, clockwise from `clock_from`.
    pub clock_to: Option<Clock>,
    /// K: `true` if the file says "at a joint" (`A`). The format has no code for "not at a joint", so an empty cell
    /// stays `None`.
    pub at_joint: Option<bool>,
    /// F, with its spaces.
    pub remark: Option<String>,
    /// L: the place in words.
    pub place: Option<String>,
    /// M.
    pub photo: Option<String>,
    /// N.
    pub video: Option<String>,
    /// Line of the file, counted from 1.
    pub source_line: u64,
}

/// A quantification: a number where it is one, and always the text, because a node may be called `0031`.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Quantification {
    /// As written, without spaces around.
    pub as_written: String,
    /// The number to the nearest millionth, if it is one.
    pub millionths: Option<i64>,
}

impl Quantification {
    /// Returns the number, if it is one.
    pub fn number(&self) -> Option<f64> {
        self.millionths.map(|millionths| millionths as f64 / 1e6)
    }
}
