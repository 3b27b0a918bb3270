//! The course of the work: stages, working time, hold.

use super::Known;
use crate::units::{Pressure, Span, Temperature};
use serde::{Deserialize, Serialize};

/// The stages of the attempt.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Stages {
    /// Right of the heading, in clauses parted by `; `: the last clauses give way where there is no room.
    pub remark: String,
    /// In the order of the work; numbered from 1.
    pub rows: Vec<Stage>,
    /// What stays valid from an earlier attempt: one sentence below the table.
    pub carried: Option<String>,
}

/// One stage.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Stage {
    pub name: String,
    /// Absent: why it was not begun, such as `not reached`.
    pub begun_at_ms: Known<i64>,
    /// Absent: why it has no end, or no length.
    pub lasted_ms: Known<Span>,
    /// What was done, in clauses parted by `; `.
    pub note: String,
    /// What is drawn on the time axis, in order of time.
    pub bars: Vec<Bar>,
}

/// A stretch of time on the axis of the stages.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Bar {
    pub from_ms: i64,
    pub to_ms: i64,
    pub kind: BarKind,
    /// Written in the bar where it fits, beside it for [`BarKind::Old`]: `waiting for full cure`.
    pub label: Option<String>,
}

/// How a bar is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum BarKind {
    /// Work, or counted minutes: black.
    Ok,
    /// Not witnessed: hatched.
    Gap,
    /// Pressure outside the window: open.
    Out,
    /// Waiting: open.
    Wait,
    /// Carried over from an earlier attempt: open.
    Old,
}

/// From joining to target pressure.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct WorkingTime {
    /// Right of the heading: used, allowed, at what temperature and whose, margin.
    pub remark: String,
    pub joined_at_ms: i64,
    /// From joining to target pressure; absent: target pressure was never reached, and why.
    pub used_ms: Known<Span>,
    /// The working time at the warmest reading; absent: no row of the sheet holds.
    pub allowed_ms: Known<Span>,
    /// What happened on the way, in order of time, joining and target pressure among it.
    pub events: Vec<Moment>,
}

/// Something that happened at an instant.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Moment {
    /// A few words: `soaked, bound`.
    pub words: String,
    pub at_ms: i64,
}

/// The hold under pressure.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Hold {
    /// Right of the heading: counted, required and at what temperature, out of window, not witnessed.
    pub remark: String,
    /// Target pressure reached: the first reading is not before it.
    pub begun_at_ms: i64,
    /// In order of time.
    pub readings: Vec<Reading>,
    /// Neighbouring intervals of one kind, joined into one, in order of time; they fill the hold without a hole.
    pub runs: Vec<Run>,
    pub window: Window,
    /// Absent: why the hold is not known.
    pub required_ms: Known<Span>,
    /// The sum of the counted runs, rounded down to whole seconds.
    pub counted_ms: Span,
}

/// One reading of gauge and thermometers.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Reading {
    pub at_ms: i64,
    /// Gauge pressure.
    pub pressure_pa: Pressure,
    /// `None`: not read.
    pub pipe_millicelsius: Option<Temperature>,
    /// At the patch end; `None`: not read.
    pub patch_millicelsius: Option<Temperature>,
    pub source: Source,
    pub side: Side,
    /// The interval that ends here; `None` for the first reading.
    pub before: Option<Interval>,
    /// What was done about a pressure outside the window: `hose coupling tightened`.
    pub why: Option<String>,
}

/// Who read it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Source {
    Hand,
    Sensor,
    /// By hand, on paper, and keyed in later.
    Paper,
}

/// Where a pressure stands against the window.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Side {
    Inside,
    Low,
    High,
}

/// What an interval between two readings is worth.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Interval {
    /// Both ends inside the window, near enough: counted.
    Counted,
    /// Nobody looked for too long: not witnessed.
    Gap,
    /// An end outside the window: not counted.
    Out,
}

/// A run of intervals of one kind.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Run {
    pub from_ms: i64,
    pub to_ms: i64,
    pub kind: Interval,
    /// What is written in its bar: its length in whole seconds. (`to − from`, or what the gap rule leaves of it.)
    pub length_ms: Span,
}

/// The limits of the gauge pressure.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Window {
    /// Rounded up.
    pub lower_pa: Pressure,
    /// Whose limit it is: `least gauge`.
    pub lower_name: String,
    /// Rounded down.
    pub upper_pa: Pressure,
    /// Whose limit it is: `host pipe`.
    pub upper_name: String,
    /// The sheet's least net pressure; `None`: the sheet has none.
    pub least_net: Option<LeastNet>,
}

/// The least net pressure and what it is on the gauge.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct LeastNet {
    pub net_pa: Pressure,
    /// Net plus the water's pressure.
    pub gauge_pa: Pressure,
}
