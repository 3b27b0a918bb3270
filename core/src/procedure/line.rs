//! The pipe and what is wrong with it, as taken from the inspection or entered by hand.
//!
//! Every station in a repair counts from the centre of the upstream node; clock positions look downstream.

use serde::{Deserialize, Serialize};

use super::plan::FromNode;
use crate::units::Length;

/// The pipe between two nodes.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Line {
    /// The owner's key for the pipe.
    pub asset: String,
    pub upstream: Node,
    pub downstream: Node,
    /// Between the centres of the nodes.
    pub length_um: Length,
    /// Nominal height.
    pub height_um: Length,
    pub material: String,
    /// What it carries: foul, surface water, combined.
    #[serde(default)]
    pub carries: String,
    #[serde(default)]
    pub street: String,
    #[serde(default)]
    pub laterals: Vec<Lateral>,
}

/// A manhole, chamber or cleanout, with the coordinates that the owner gave, if any.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Node {
    pub name: String,
    #[serde(default)]
    pub place: Option<Coordinates>,
}

/// WGS 84, in units of 1e-7 degree.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Coordinates {
    pub lat_e7: i64,
    pub lon_e7: i64,
}

/// A pipe that joins the line.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Lateral {
    pub station_um: Length,
    pub clock: u8,
    pub diameter_um: Length,
}

/// The defect to mend: one or several observations taken together.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Defect {
    pub from_um: Length,
    pub to_um: Length,
    pub observations: Vec<Seen>,
    pub origin: Origin,
}

impl Defect {
    /// Returns the middle between its ends, rounded down to the micrometre.
    pub fn centre(&self) -> Length {
        Length::from_um((self.from_um.as_um() + self.to_um.as_um()).div_euclid(2))
    }

    /// Returns its length along the pipe.
    pub fn length(&self) -> Length {
        Length::from_um(self.to_um.as_um() - self.from_um.as_um())
    }
}

/// One observation of the defect.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Seen {
    /// EN 13508-2 code with its characterisations, as "BAB B A"; empty if entered by hand.
    pub code: String,
    pub words: String,
    pub from_um: Length,
    pub to_um: Length,
    #[serde(default)]
    pub around: Around,
}

/// Where round the pipe, looking downstream.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "kind", rename_all = "snake_case", deny_unknown_fields)]
pub enum Around {
    /// Nobody said.
    #[default]
    Unknown,
    AllRound,
    At {
        hour: u8,
    },
    /// Clockwise from one hour to the other, over 12 if need be.
    Between {
        from: u8,
        to: u8,
    },
}

/// Where the defect was read.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "kind", rename_all = "snake_case", deny_unknown_fields)]
pub enum Origin {
    Inspection {
        file: String,
        sha256: String,
        date: String,
        lines: Vec<u64>,
        /// The node where the camera's counter stood at zero.
        #[serde(default)]
        counted_from: FromNode,
    },
    ByHand,
}
