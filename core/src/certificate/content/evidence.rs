//! The evidence: rows of the tables, and photos.

use super::Known;
use serde::{Deserialize, Serialize};

/// A lot, a tool or an instrument. An empty text leaves its cell empty.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Material {
    pub item: String,
    /// Kind and number.
    pub kind: String,
    pub lot: String,
    /// Expiry of a lot, last test or calibration of a tool.
    pub expiry: String,
    /// Amount used, or range.
    pub amount: String,
    pub note: String,
}

/// The values that were entered from sheets and contract.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Sheets {
    /// Right of the heading: who entered them, when.
    pub remark: String,
    pub rows: Vec<SheetValue>,
}

/// A value from a data sheet or the contract.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SheetValue {
    pub name: String,
    pub as_entered: String,
    /// Document, revision, page or table.
    pub source: String,
}

/// A computed check; numbered by its place.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Check {
    pub name: String,
    /// The formula in words or signs, then its source.
    pub formula: String,
    pub inputs: String,
    pub result: String,
    /// Empty where there is none.
    pub limit: String,
    /// What was left, or `FAILS by …`.
    pub margin: String,
    /// Set bold.
    pub fails: bool,
}

/// What the verification found.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Finding {
    pub what: String,
    /// What was found; begin with `OUTSIDE: ` where it is outside a limit.
    pub found: String,
    /// Photos, person, limit.
    pub evidence: String,
    /// Outside a limit: set bold.
    pub outside: bool,
}

/// An attempt other than the one that this paper is about.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Attempt {
    pub number: u32,
    /// From, to: `06:42–08:41`.
    pub span: String,
    /// What happened, and what became of the material.
    pub what: String,
    /// Where the patch was when the working time ran out; who said so, when.
    pub patch_where: String,
    /// Whether anything of it is in the pipe; who said so, when.
    pub in_pipe: String,
    /// How it ended, by whom, when.
    pub outcome: String,
}

/// A corrected entry: the old value stays.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Correction {
    pub value: String,
    pub old: String,
    pub new: String,
    pub reason: String,
    /// Who, when.
    pub by: String,
}

/// A photo: its facts, and a reduced copy.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Photo {
    pub title: String,
    /// The stage in which it was taken.
    pub stage: String,
    pub at_ms: i64,
    /// Where, or why the place is not known: `7.26 m from MH 031`, `no position: under the van awning`.
    pub position: String,
    /// Of the original file: 64 hexadecimal digits.
    pub original_sha256: String,
    /// The bundle that holds the original; `None`: in none that this device knows of.
    pub bundle: Option<String>,
    /// Absent: a frame is drawn that says why.
    pub copy: Known<PhotoCopy>,
}

/// The reduced copy that the page shows.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PhotoCopy {
    /// Of `jpeg`: 64 hexadecimal digits.
    pub sha256: String,
    /// The EXIF orientation, 1 to 8: how the page turns it. 1 is upright.
    pub orientation: u8,
    /// The bytes of a JPEG file, grey or YCbCr. They pass into the PDF untouched. Not serialized: a snapshot names
    /// them by their hash.
    #[serde(skip)]
    pub jpeg: Vec<u8>,
}
