//! Where a repair stands.

use serde::{Deserialize, Serialize};

/// The stages of an attempt, in their order.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Stage {
    Planned,
    Staging,
    TestPush,
    SleeveChange,
    WetOut,
    Placement,
    Inflation,
    Hold,
    Deflation,
    Verification,
}

impl Stage {
    /// Every stage, in order.
    pub const ALL: [Self; 10] = [
        Self::Planned,
        Self::Staging,
        Self::TestPush,
        Self::SleeveChange,
        Self::WetOut,
        Self::Placement,
        Self::Inflation,
        Self::Hold,
        Self::Deflation,
        Self::Verification,
    ];

    /// Returns the stage after this one, or `None` after the last.
    pub fn next(self) -> Option<Self> {
        Self::ALL.into_iter().find(|stage| *stage > self)
    }

    /// Returns the word for it on pages and in messages.
    pub fn word(self) -> &'static str {
        match self {
            Self::Planned => "Plan",
            Self::Staging => "Staging",
            Self::TestPush => "Test push",
            Self::SleeveChange => "Sleeve change",
            Self::WetOut => "Wet-out",
            Self::Placement => "Placement",
            Self::Inflation => "Inflation",
            Self::Hold => "Hold",
            Self::Deflation => "Deflation",
            Self::Verification => "Verification",
        }
    }
}

/// How an attempt ended.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Outcome {
    Accepted,
    /// Found wrong after verification.
    Rejected,
    /// Patch thrown away before it set on the wall.
    Discarded,
    /// Set in the wrong place, stuck, or not retrievable.
    LeftInPipe,
    /// Ended before the parts were joined.
    Abandoned,
}

/// Where the patch is when the working time runs out.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum PatchPlace {
    OnTable,
    InPipe,
    TouchingWall,
    Stuck,
}
