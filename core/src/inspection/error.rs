//! Why a file was not read.

use serde::{Deserialize, Serialize};
use thiserror::Error;

/// The first thing in the file that can't be read. Nothing of the file is imported.
#[derive(Clone, Debug, PartialEq, Eq, Error, Serialize, Deserialize)]
#[error("line {line}: expected {expected}, found {found}")]
pub struct ReadError {
    /// Stable name of the kind of fault.
    pub code: ReadCode,
    /// Where, counted from 1. A fault at the end of the file names its last line.
    pub line: u64,
    /// What would have been right there.
    pub expected: String,
    /// What stands there, shortened, without control characters.
    pub found: String,
}

/// The kinds of fault, by a name that stays.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum ReadCode {
    /// Neither the text form nor the XML form.
    NotAnInspectionFile,
    /// More bytes, inspections, observations or columns than are read.
    TooLarge,
    /// A character that no text holds, such as a zero byte.
    ControlCharacter,
    /// A line `#A…` is missing, empty, or contradicts another.
    FileHeader,
    /// A line stands where another kind of line belongs.
    OutOfOrder,
    /// The file ends before its last inspection does.
    CutShort,
    /// A column or field has no name, or a name twice.
    Column,
    /// A row holds more cells than there are columns.
    TooManyCells,
    /// A quoted text does not end on its line, or goes on behind its end.
    Quote,
    /// An observation has no main code.
    NoCode,
    /// A cell should hold a number.
    Number,
    /// A cell should hold a clock hour, 1 to 12.
    ClockHour,
    /// A cell should hold a date.
    Date,
    /// A cell should hold a time of day.
    Time,
    /// A cell should hold the direction of inspection.
    Direction,
    /// The XML is not well formed, or an element stands where it does not belong.
    Xml,
    /// The XML declares a document type; such files are refused.
    Doctype,
    /// The XML uses an entity beyond the five predefined and the numeric ones.
    Entity,
}

impl ReadError {
    pub(super) fn new(code: ReadCode, line: u64, expected: impl Into<String>, found: impl AsRef<str>) -> Self {
        Self { code, line, expected: expected.into(), found: shown(found.as_ref()) }
    }
}

/// Returns the text fit for one line of a message: at most 60 characters, control characters replaced.
pub(super) fn shown(text: &str) -> String {
    const MOST: usize = 60;
    let clean = |c: char| if c.is_control() { '\u{FFFD}' } else { c };
    let mut out: String = text.chars().take(MOST).map(clean).collect();
    if text.chars().nth(MOST).is_some() {
        out.push('…');
    }
    if out.is_empty() {
        out.push_str("nothing");
    }
    out
}
