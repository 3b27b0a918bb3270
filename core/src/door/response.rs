//! What the core answers.

use std::collections::BTreeMap;

use serde::Serialize;

use crate::entry::Heard;
use crate::journal::Fault;
use crate::label::{self, Label};
use crate::photos;
use crate::procedure::planning::Proposal;
use crate::procedure::rules::{Broken, Refusal, ShownRow};
use crate::shelf::Shelf;
use crate::view::{BrokenView, Paper, RepairView, Summary, Today};
use crate::words::{Language, Pattern};

use super::backups::Storage;
use super::branches::BranchesView;
use super::bundles::{BundlesView, MadeFile};
use super::checks::ChecksView;
use super::following::FollowedView;
use super::intake::{InspectionView, ListedFile};
use super::numbers::NumberRow;
use super::travel::{Taken, Unsent};
use super::verdict::Verdict;

/// An answer to a request that was carried out.
#[derive(Debug, Serialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Answer {
    Today {
        #[serde(flatten)]
        today: Box<Today>,
        /// Holds of other phones, the next to be read first.
        followed: Vec<FollowedView>,
        storage: Storage,
    },
    List {
        repairs: Vec<Summary>,
    },
    Repair(Box<RepairView>),
    Shelf(Box<Shelf>),
    Inspections {
        files: Vec<ListedFile>,
    },
    Inspection(Box<InspectionView>),
    Branches(Box<BranchesView>),
    Followed(Box<FollowedView>),
    Bundles(BundlesView),
    Made(MadeFile),
    Piece {
        from: u64,
        of: u64,
        bytes: String,
    },
    /// How many bytes of a file are here.
    Brought {
        here: u64,
        of: u64,
    },
    Taken(Taken),
    Restored {
        repairs: usize,
        files: usize,
        damaged: usize,
    },
    Plan {
        repair: Box<RepairView>,
        proposal: Box<Proposal>,
        shelf: Box<Shelf>,
    },
    Photo {
        media_type: String,
        bytes: String,
    },
    Label(Label),
    Paper {
        repair: Box<RepairView>,
        paper: Box<Paper>,
    },
    File {
        name: String,
        media_type: String,
        bytes: String,
    },
    Checked(Box<Verdict>),
    Rules {
        rules: Vec<ShownRow>,
    },
    Words {
        language: Language,
        messages: BTreeMap<String, Pattern>,
    },
    Check {
        output: serde_json::Value,
    },
    Checks(Box<ChecksView>),
    Read {
        entries: Vec<Heard>,
    },
    Numbers {
        numbers: Vec<NumberRow>,
    },
    Rebuilt {
        repairs: usize,
    },
}

/// Why a request was not carried out. Nothing was written.
#[derive(Debug)]
pub enum Problem {
    /// The rules say no.
    Refused(Vec<BrokenView>),
    /// Something failed, or the request makes no sense.
    Error { code: String, says: String },
}

impl Problem {
    /// Returns an error with a stable code and a sentence.
    pub fn error(code: &str, says: impl Into<String>) -> Self {
        Self::Error { code: code.to_owned(), says: says.into() }
    }

    /// Returns the refusal by these rules.
    pub fn refused(broken: &[Broken]) -> Self {
        Self::Refused(broken.iter().map(BrokenView::bare).collect())
    }
}

impl From<Refusal> for Problem {
    fn from(refusal: Refusal) -> Self {
        Self::refused(&refusal.broken)
    }
}

impl From<Fault> for Problem {
    fn from(fault: Fault) -> Self {
        Self::error(fault.code(), fault.to_string())
    }
}

impl From<Unsent> for Problem {
    fn from(why: Unsent) -> Self {
        match why {
            Unsent::Journal(fault) => fault.into(),
            Unsent::Photo(fault) => fault.into(),
            Unsent::TooMany => Self::error("too_many", why.to_string()),
            Unsent::NoRepair(_) => Self::error("nothing_to_send", why.to_string()),
            Unsent::Out(_) => Self::error("bundle", why.to_string()),
        }
    }
}

impl From<label::Fault> for Problem {
    fn from(fault: label::Fault) -> Self {
        Self::error("label", fault.to_string())
    }
}

impl From<photos::Fault> for Problem {
    fn from(fault: photos::Fault) -> Self {
        Self::error("photo", fault.to_string())
    }
}
