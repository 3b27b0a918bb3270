//! Why a check gives no answer: a stable rule code, and the values that broke it.

use serde::{Deserialize, Serialize};
use thiserror::Error;

use crate::units::{Length, Mass, Pressure, Span, Temperature};

/// The reason that a check refuses to answer.
///
/// The serialized `rule` is stable: screens look their sentence up by it. The message is for a terminal and a log.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, Error)]
#[serde(tag = "rule", rename_all = "snake_case")]
#[non_exhaustive]
pub enum Refused {
    #[error("{field} {must}")]
    OutOfRange { field: String, must: String },
    #[error("{field} has no source: say from which sheet, label, instrument or contract clause it comes")]
    SourceMissing { field: String },

    #[error("the data sheet has no rows for this time: enter them")]
    RowsMissing,
    #[error("row {row} of the data sheet has no positive time")]
    RowNotPositive { row: usize },
    #[error(
        "row {row} of the data sheet begins below the row before it, or ends before it begins: put the rows in order"
    )]
    RowsOutOfOrder { row: usize },
    #[error("row {row} of the data sheet lasts longer than a colder row: check what was typed")]
    RowLongerWhenWarmer { row: usize },
    #[error("{:.1} °C is warmer than the sheet's last row, {:.1} °C: no time is known there", read_millicelsius.as_celsius(), last_millicelsius.as_celsius())]
    WarmerThanSheet { read_millicelsius: Temperature, last_millicelsius: Temperature },
    #[error("{:.1} °C is colder than the sheet's first row, {:.1} °C: no time is known there", read_millicelsius.as_celsius(), first_millicelsius.as_celsius())]
    ColderThanSheet { read_millicelsius: Temperature, first_millicelsius: Temperature },
    #[error("the resin is at {:.1} °C, the sheet asks for at least {:.1} °C: warm it", read_millicelsius.as_celsius(), least_millicelsius.as_celsius())]
    ResinTooCold { read_millicelsius: Temperature, least_millicelsius: Temperature },
    #[error("the resin is at {:.1} °C, the sheet allows at most {:.1} °C: cool it", read_millicelsius.as_celsius(), most_millicelsius.as_celsius())]
    ResinTooWarm { read_millicelsius: Temperature, most_millicelsius: Temperature },
    #[error("a batch of {:.0} g is above the {:.0} g that the sheet's times hold for: split it", batch_mg.as_g(), most_mg.as_g())]
    BatchTooHeavy { batch_mg: Mass, most_mg: Mass },

    #[error("no upper pressure limit is known: enter the packer's, the patch's, the host pipe's or the contract's")]
    NoUpperLimit,
    #[error("no pressure fits: at least {:.2} bar ({low_by}), at most {:.2} bar ({high_by})", low_pa.as_bar(), high_pa.as_bar())]
    WindowEmpty { low_pa: Pressure, low_by: String, high_pa: Pressure, high_by: String },
    #[error("reading {index} is older than the one before it")]
    ReadingsOutOfOrder { index: usize },

    #[error("{:.3} m is outside the line, which is {:.3} m long", station_um.as_m(), line_um.as_m())]
    OutsideLine { station_um: Length, line_um: Length },
    #[error("the patch is not beyond the reading point ({point}): the path would be {:.3} m", path_um.as_m())]
    BehindReadingPoint { point: String, path_um: Length },
    #[error(
        "rigid rods don't turn the corner ({corner}): push with a hose, pull a rope from the other node, or name who works below"
    )]
    RodsDoNotTurn { corner: String },
    #[error("somebody works below, and nobody is named")]
    WhoIsBelow,
    #[error("the clock runs from {hour} to {hour}: say all round, or one spot")]
    AllRoundOrSpot { hour: u8 },

    #[error("{:.0} mm is too short for both groups of bands: {:.0} mm would do", length_um.as_mm(), needed_um.as_mm())]
    TooShortToBind { length_um: Length, needed_um: Length },
    #[error("a membrane is for a straight pipe only, and the line has a bend")]
    MembraneInBend,
    #[error("the membrane reaches {:.0} mm past the patch, the sheet asks for {:.0} mm", reach_um.as_mm(), least_um.as_mm())]
    MembraneTooShort { reach_um: Length, least_um: Length },
    #[error("the pipe measures {:.1} mm, the packer takes {:.0} to {:.0} mm", measured_um.as_mm(), least_um.as_mm(), most_um.as_mm())]
    PackerDoesNotFit { measured_um: Length, least_um: Length, most_um: Length },
    #[error("the shorter bare end is {:.0} mm, the sheet asks for {:.0} mm", end_um.as_mm(), least_um.as_mm())]
    BareEndShort { end_um: Length, least_um: Length },
    #[error("the bare ends differ by {:.0} mm, {:.0} mm is allowed: centre the patch", by_um.as_mm(), most_um.as_mm())]
    BareEndsUnequal { by_um: Length, most_um: Length },
    #[error("the seam overlaps by {:.0} mm at this diameter, the sheet asks for {:.0} mm", overlap_um.as_mm(), least_um.as_mm())]
    SeamTooShort { overlap_um: Length, least_um: Length },
    #[error("the overlap with its placement errors, {:.0} mm, leaves nothing of a {:.0} mm patch", overlap_um.as_mm(), patch_um.as_mm())]
    OverlapTooLong { overlap_um: Length, patch_um: Length },
}

impl Refused {
    /// Returns the refusal of a value outside its valid range, e.g. `out_of_range("rod length", "must be above 0")`.
    pub fn out_of_range(field: &str, must: &str) -> Self {
        Self::OutOfRange { field: field.into(), must: must.into() }
    }
}

/// Nothing on a site is longer: sums of a few such lengths can't overflow.
const LONGEST_UM: i64 = 1_000_000_000_000;
/// Nothing takes longer, about 3000 years.
const LONGEST_MS: i64 = 100_000_000_000_000;

/// Returns the length if it is within 1000 km either way, or the refusal that names the field.
pub(super) fn on_earth(field: &str, length: Length) -> Result<Length, Refused> {
    if (-LONGEST_UM..=LONGEST_UM).contains(&length.as_um()) {
        Ok(length)
    } else {
        Err(Refused::out_of_range(field, "must be within 1000 km"))
    }
}

/// Returns the length if it is above zero and at most 1000 km, or the refusal that names the field.
pub(super) fn positive(field: &str, length: Length) -> Result<Length, Refused> {
    if on_earth(field, length)? > Length::from_um(0) {
        Ok(length)
    } else {
        Err(Refused::out_of_range(field, "must be above 0"))
    }
}

/// Returns the length if it is not below zero and at most 1000 km, or the refusal that names the field.
pub(super) fn not_negative(field: &str, length: Length) -> Result<Length, Refused> {
    if on_earth(field, length)? >= Length::from_um(0) {
        Ok(length)
    } else {
        Err(Refused::out_of_range(field, "must not be below 0"))
    }
}

/// Returns the span if it is not below zero and at most about 3000 years, or the refusal that names the field.
pub(super) fn span_not_negative(field: &str, span: Span) -> Result<Span, Refused> {
    match span.as_ms() {
        0..=LONGEST_MS => Ok(span),
        ..0 => Err(Refused::out_of_range(field, "must not be below 0")),
        _ => Err(Refused::out_of_range(field, "must be at most 3000 years")),
    }
}

/// Returns the instant if it lies within about 3000 years of the clock's zero, or the refusal that names the field.
pub(super) fn in_our_time(field: &str, at_ms: i64) -> Result<i64, Refused> {
    if (-LONGEST_MS..=LONGEST_MS).contains(&at_ms) {
        Ok(at_ms)
    } else {
        Err(Refused::out_of_range(field, "must be within 3000 years"))
    }
}

/// Returns the pressure if it is within 10 000 bar either way, or the refusal that names the field.
pub(super) fn on_a_gauge(field: &str, pressure: Pressure) -> Result<Pressure, Refused> {
    if (-1_000_000_000..=1_000_000_000).contains(&pressure.as_pa()) {
        Ok(pressure)
    } else {
        Err(Refused::out_of_range(field, "must be within 10 000 bar"))
    }
}
