//! What can happen on the street. A report is always recorded, from any stage, whatever rule it breaks.

use serde::{Deserialize, Serialize};

use super::plan::Temperatures;
use super::stage::PatchPlace;
use crate::units::{Length, Pressure, Temperature};

/// One thing that happened.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "what", rename_all = "snake_case", deny_unknown_fields)]
pub enum Happening {
    /// Temperatures were read.
    TemperaturesRead {
        temperatures: Temperatures,
    },
    /// The test push began.
    PushBegun,
    /// The packer stands where the patch is to go; in the test push, never inflated.
    MarkReached {
        /// Station of the packer's centre by the counter, from the node that the plan counts from.
        #[serde(default)]
        counter_um: Option<Length>,
    },
    /// The packer is back from the test push.
    PackerBack {
        sound: bool,
    },
    /// A was poured into B: the working time runs.
    Joined,
    /// The loaded packer went into the pipe.
    InsertionBegun,
    /// The loaded packer is at the mark. Past the mark counts positive.
    AtTheMark {
        #[serde(default)]
        counter_um: Option<Length>,
        #[serde(default)]
        beyond_um: Option<Length>,
    },
    /// The air line is joined, the regulator backed off to zero.
    AirJoined,
    /// The gauge shows the target pressure.
    TargetReached {
        gauge_pa: Pressure,
    },
    /// A reading during the hold.
    Reading {
        gauge_pa: Pressure,
        #[serde(default)]
        pipe_mc: Option<Temperature>,
        #[serde(default)]
        water_mc: Option<Temperature>,
        /// At the end of the patch, where a sensor is there.
        #[serde(default)]
        patch_mc: Option<Temperature>,
        /// Depth of the water upstream of the packer.
        #[serde(default)]
        upstream_um: Option<Length>,
        #[serde(default)]
        by: ReadBy,
        /// The instrument's id.
        #[serde(default)]
        gauge: String,
        #[serde(default)]
        why: String,
        /// Pressure of the air outside, absolute; asked once, for the estimate of a leak.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        outside_pa: Option<Pressure>,
    },
    /// The sample in the manhole was felt. Soft forbids release; hard alone proves nothing.
    SampleFelt {
        hard: bool,
    },
    /// The packer was let down. `emergency` if it was not asked for.
    Released {
        emergency: bool,
    },
    PressureLost,
    Burst,
    Stuck,
    WaterComing,
    GasAlarm,
    Stopped {
        why: String,
    },
    /// Where the patch was when the working time was over.
    PatchIs {
        place: PatchPlace,
    },
    /// A lateral under or near the patch was opened.
    LateralOpened {
        lateral: usize,
        open_pct: i64,
        coupon: bool,
    },
    /// The air or water test began.
    TightnessTested {
        tight: bool,
        method: String,
    },
}

/// Who read an instrument.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum ReadBy {
    #[default]
    Hand,
    Sensor,
}
