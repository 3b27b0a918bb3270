//! Data sheets of resin, patch, packer and instruments, as the crew enters or imports them.

use serde::{Deserialize, Serialize};

use super::Sourced;
use crate::units::{Length, Mass, Pressure, Span, Temperature};

/// What the maker of a resin states about it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ResinSheet {
    pub id: String,
    pub name: String,
    /// Issue of the sheet, as printed on it.
    pub issue: String,
    pub parts: Parts,
    /// The mass that the times hold for; a larger batch is refused.
    pub batch_most_mg: Sourced<Mass>,
    pub temperature_least_mc: Sourced<Temperature>,
    pub temperature_most_mc: Sourced<Temperature>,
    pub working_time: TimeTable,
    pub hold: TimeTable,
    pub full_cure: TimeTable,
    pub counts_from: Sourced<CountsFrom>,
    /// Where the sheet counts full cure from another moment than the hold.
    #[serde(default)]
    pub cure_counts_from: Option<Sourced<CountsFrom>>,
    pub mixing_least_ms: Sourced<Span>,
    pub storage_least_mc: Sourced<Temperature>,
    pub storage_most_mc: Sourced<Temperature>,
}

/// How the parts A and B are measured out.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "kind", rename_all = "snake_case", deny_unknown_fields)]
pub enum Parts {
    /// Whole containers, A poured into B to the last drop.
    Containers { kit: String, mass_mg: Mass, source: String },
    /// Parts weighed; `ratio_permille` is the mass of A for a thousand of B.
    Weighed { ratio_permille: i64, tolerance_permille: i64, source: String },
}

/// A time that depends on temperature.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct TimeTable {
    pub rows: TimeRows,
    pub source: String,
}

/// The rows of a sheet: points to interpolate between, or one figure for a range.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "kind", rename_all = "snake_case", deny_unknown_fields)]
pub enum TimeRows {
    /// Points in rising temperature.
    Points { points: Vec<TimeAt> },
    /// One time "at reference temperature", valid from and to.
    Range { from_mc: Temperature, to_mc: Temperature, ms: Span },
}

/// A time at a temperature.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct TimeAt {
    pub at_mc: Temperature,
    pub ms: Span,
}

impl ResinSheet {
    /// Returns the moment from which full cure counts: the hold's, unless the sheet names another.
    pub fn cure_counts_from(&self) -> CountsFrom {
        self.cure_counts_from.as_ref().unwrap_or(&self.counts_from).value
    }
}

/// The moment from which hold and full cure count.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum CountsFrom {
    Joined,
    TargetPressure,
}

/// What the maker of a patch states about it, and the size it comes in.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PatchSheet {
    pub id: String,
    pub name: String,
    pub length_um: Length,
    /// Inside diameters that it can line.
    pub diameter_least_um: Length,
    pub diameter_most_um: Length,
    /// Overlap of the seam round the pipe.
    pub seam_overlap_um: Sourced<Length>,
    pub plies: i64,
    /// Resin that soaks one patch at the largest diameter.
    pub resin_mg: Sourced<Mass>,
    pub gauge_least_pa: Sourced<Pressure>,
    pub net_least_pa: Sourced<Pressure>,
    pub pressure_most_pa: Sourced<Pressure>,
    pub bare_end_least_um: Sourced<Length>,
    pub bare_end_tolerance_um: Sourced<Length>,
    pub binding: Binding,
    /// Whether a membrane goes between sleeve and patch, and how far it reaches beyond the patch on each side.
    #[serde(default)]
    pub membrane: Option<Membrane>,
}

/// How the patch is tied to the packer.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Binding {
    /// Bands at each end.
    pub end_bands: i64,
    /// From the edge of the patch to the first band.
    pub edge_um: Length,
    /// Between the bands of an end.
    pub apart_um: Length,
    /// Most distance between the bands in the middle.
    pub pitch_um: Length,
    pub source: String,
}

/// A membrane that keeps the resin off the sleeve.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Membrane {
    pub beyond_um: Length,
    pub pitch_um: Length,
    pub source: String,
}

/// What stands on a packer's label and sheet.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PackerSheet {
    pub id: String,
    pub name: String,
    pub serial: String,
    /// Length of the rubber body that a patch can sit on.
    pub body_um: Length,
    pub diameter_least_um: Sourced<Length>,
    pub diameter_most_um: Sourced<Length>,
    /// Most gauge pressure at an inside diameter, in rising diameter; the row at or above the pipe's size counts.
    pub pressure_most: Vec<PressureAt>,
    /// Gauge pressure of the test in the open, restrained.
    pub test_pressure_pa: Sourced<Pressure>,
    pub test_ms: Sourced<Span>,
    pub sleeve_front_um: Sourced<Length>,
    pub sleeve_rear_um: Sourced<Length>,
    pub sleeve_pitch_um: Sourced<Length>,
    pub front_fitting_um: Length,
    pub air_fitting_um: Length,
    /// Whether water can pass through it while it is inflated.
    pub flow_through: bool,
}

/// A pressure limit at a diameter.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PressureAt {
    pub diameter_um: Length,
    pub most_pa: Pressure,
    pub source: String,
}

/// A gauge, thermometer, counter, scale, tape or gas meter.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Instrument {
    pub id: String,
    pub kind: InstrumentKind,
    pub name: String,
    /// Last day of its calibration, ISO 8601 date; empty where none is asked.
    #[serde(default)]
    pub calibrated_to: String,
    /// Error in parts per million of what it measures.
    #[serde(default)]
    pub error_ppm: i64,
    /// Error that does not depend on what it measures, for a counter or tape.
    #[serde(default)]
    pub error_um: Length,
    pub source: String,
}

/// What an instrument measures.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum InstrumentKind {
    PressureGauge,
    Thermometer,
    CameraCounter,
    Scale,
    Tape,
    GasMeter,
}
