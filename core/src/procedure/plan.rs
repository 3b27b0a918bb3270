//! The plan: what the crew chose, the sheets it rests on, and what was computed from them.
//!
//! An accepted plan holds copies of its documents, so that a later edit on the shelf cannot change an old repair.

use serde::{Deserialize, Serialize};

use crate::shelf::{Contract, Instrument, Method, PackerSheet, PatchSheet, ResinSheet};
use crate::units::{Length, Mass, Pressure, Span, Temperature};
use crate::words::retold;

/// An accepted plan.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Plan {
    pub choice: PlanChoice,
    pub contract: Contract,
    pub resin: ResinSheet,
    pub patch: PatchSheet,
    pub packer: PackerSheet,
    pub method: Method,
    pub instruments: Vec<Instrument>,
    pub computed: Computed,
}

/// What the crew chooses and measures before it starts.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct PlanChoice {
    pub contract: String,
    pub resin: String,
    pub patch: String,
    pub packer: String,
    pub method: String,
    pub counter: String,
    pub tape: String,
    /// Inside diameter, measured or, until then, nominal.
    pub diameter_least_um: Length,
    pub diameter_most_um: Length,
    pub diameter_measured: bool,
    pub temperatures: Temperatures,
    /// Groundwater above the invert at the defect.
    pub head_um: Length,
    /// Water that may stand behind the packer.
    pub behind_um: Length,
    pub way_in: WayIn,
    pub from_node: FromNode,
    pub reading_point: ReadingPoint,
    pub rod_um: Length,
    /// Who is below, if the way in needs somebody.
    pub below: String,
    /// The mark was made with the camera on the defect in the same run, so the inspection's error drops out.
    pub marked_on_defect: bool,
    /// Centre of the patch, if not the centre of the defect.
    pub centre_um: Option<Length>,
    /// Several patches overlap, because one is too short; a centre set by hand stands alone.
    pub in_series: bool,
    /// Patches of the series that are placed already; this repair places the next.
    pub series_done: u8,
    /// The node where the inspection's counter stood at zero; its error grows with the distance from there.
    pub inspected_from: FromNode,
    /// Batches that the resin is mixed in, one after the other; 0 counts as 1.
    pub batches: u8,
    /// Where the seam of the wrap lies, looking downstream; 0 as long as nobody chose.
    pub seam_hour: u8,
    pub closures: Vec<Closure>,
}

/// Temperatures read together.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Temperatures {
    pub resin_mc: Temperature,
    pub air_mc: Temperature,
    pub pipe_mc: Temperature,
    #[serde(default)]
    pub water_mc: Option<Temperature>,
}

/// What brings the packer to the defect.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum WayIn {
    /// Pulled by a rope from the other node, the hose following.
    #[default]
    Rope,
    /// Pushed by the stiff hose.
    Hose,
    /// Pushed by rigid rods from below, or from a straight cleanout.
    Rods,
}

/// The node that the packer goes in by and stations on the mark count from.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum FromNode {
    #[default]
    Upstream,
    Downstream,
}

/// Where the mark on hose, rope or rod is read.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct ReadingPoint {
    pub kind: ReadingPointKind,
    /// From the node's centre to the point, along the pipe.
    pub offset_um: Length,
    /// Riser between the point and the line, for a cleanout.
    pub riser_um: Length,
    /// Length along the bends between them.
    pub bends_um: Length,
    pub bends: i64,
}

#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum ReadingPointKind {
    #[default]
    PipeMouth,
    CleanoutCap,
}

/// Something that ends: lane closure, permit, plug, residents' outage.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Closure {
    pub what: String,
    pub until_ms: i64,
}

/// What was computed when the plan was accepted.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Computed {
    /// Several when one patch is too short; each is a repair of its own, and this repair places the first of the list.
    pub patches: Vec<PlacedPatch>,
    pub cover: Cover,
    pub mark: Mark,
    pub sleeve_um: Length,
    /// From the sleeve's front end; the first and the last stand where the packer's body ends.
    pub sleeve_bands_um: Vec<Length>,
    /// From the patch's front end.
    pub patch_bands_um: Vec<Length>,
    #[serde(default)]
    pub membrane_um: Option<Length>,
    /// From the membrane's front end.
    #[serde(default)]
    pub membrane_bands_um: Vec<Length>,
    /// Laterals that the patch would cover, by their place in the line's list.
    pub covered: Vec<usize>,
    /// Length of mat round the pipe, seam included.
    pub wrap_um: Length,
    /// One batch: what is mixed at a time.
    pub batch_mg: Mass,
    pub budget: Budget,
    pub hold_ms: Span,
    pub hold_at_mc: Temperature,
    pub full_cure_ms: Span,
    pub window: Window,
    /// Thrust on an end of the packer at the top of the window, in newtons, with the water behind it.
    pub thrust_n: i64,
}

/// A patch and where it goes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PlacedPatch {
    pub from_um: Length,
    pub to_um: Length,
}

impl PlacedPatch {
    /// Returns the middle between its ends, rounded down to the micrometre.
    pub fn centre(&self) -> Length {
        Length::from_um((self.from_um.as_um() + self.to_um.as_um()).div_euclid(2))
    }
}

/// Cover of the defect on each side, and the errors that were taken off.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Cover {
    pub upstream_um: Length,
    pub downstream_um: Length,
    pub errors: Vec<ErrorTerm>,
    pub required_um: Length,
}

impl Cover {
    /// Returns the cover with the names of its errors in the language of who reads.
    pub fn told(mut self) -> Self {
        for error in &mut self.errors {
            error.what = retold(&error.what);
            error.source = retold(&error.source);
        }
        self
    }

    /// Returns the lesser of both sides.
    pub fn least(&self) -> Length {
        self.upstream_um.min(self.downstream_um)
    }
}

/// One error that may have shifted the patch from the defect.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ErrorTerm {
    pub what: String,
    pub um: Length,
    pub source: String,
}

/// Where the mark goes on hose, rope or rods.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Mark {
    /// From the reading point to the centre of the patch.
    pub path_um: Length,
    pub whole_rods: i64,
    /// Beyond the whole rods.
    pub remainder_um: Length,
}

/// The time budget of the resin.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Budget {
    pub working_ms: Span,
    /// The warmest of resin, air and pipe, which decides.
    pub warmest_mc: Temperature,
    pub warmest: Warmest,
    pub wet_out_ms: Span,
    pub push_ms: Span,
    /// The push with the loading factor.
    pub loaded_push_ms: Span,
    pub connect_ms: Span,
    pub margin_ms: Span,
    /// What is left over; negative is a no-go.
    pub spare_ms: Span,
    /// The warmest temperature that would still give enough, in all three, if the sheet has one.
    #[serde(default)]
    pub enough_at_mc: Option<Temperature>,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Warmest {
    Resin,
    Air,
    Pipe,
}

impl Window {
    /// Returns the window with what governs it in the language of who reads.
    pub fn told(self) -> Self {
        Self { lower_governs: retold(&self.lower_governs), upper_governs: retold(&self.upper_governs), ..self }
    }
}

/// The gauge pressures between which the hold counts.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Window {
    pub lower_pa: Pressure,
    pub upper_pa: Pressure,
    pub lower_governs: String,
    pub upper_governs: String,
    /// Gauge pressure of the groundwater at the invert.
    pub water_pa: Pressure,
    /// Least net pressure of the patch sheet.
    pub net_least_pa: Pressure,
    /// Where the crew aims: the middle, to 0.01 bar.
    pub target_pa: Pressure,
}
