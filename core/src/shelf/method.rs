//! The method statement: the tasks inside each stage, in the contractor's own words.
//!
//! The order of the stages, the gates and the rules are code. What is done inside a stage, how it is worded and in
//! which order is this data, so that a crew can follow the instructions of the kit in use.

use serde::{Deserialize, Serialize};

use super::sheets::InstrumentKind;
use crate::procedure::stage::Stage;
use crate::words::retold;

/// One contractor's way of working.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Method {
    pub id: String,
    pub title: String,
    pub tasks: Vec<Task>,
}

/// Something to do and to answer for in a stage.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Task {
    pub key: String,
    pub stage: Stage,
    pub kind: TaskKind,
    pub label: String,
    #[serde(default)]
    pub detail: String,
    /// A caution that stands beside the task.
    #[serde(default)]
    pub caution: String,
    #[serde(default = "yes")]
    pub mandatory: bool,
    /// Whether "does not apply, because" is an answer.
    #[serde(default)]
    pub may_not_apply: bool,
}

fn yes() -> bool {
    true
}

/// What a task asks for. The gates read the answers of the kinds that they need; `Confirm` is for the rest.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum TaskKind {
    Confirm,
    Suitability,
    Permit,
    Air,
    Flow,
    Cleaned,
    ViewedAgain,
    MeasuredDiameter,
    PackerTest,
    Lots,
    Instruments,
    Temperatures,
    Battery,
    BareEnds,
    PartsUsed,
    Mixed,
    Soaked,
    Seam,
    AtTheMark,
    AllBack,
    PackerCondition,
    Edges,
    Folds,
    Infiltration,
    Surface,
    Laterals,
    Tightness,
    Waste,
    FlowRestored,
}

/// What a field of a task looks like, so that every screen can draw it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Field {
    pub key: &'static str,
    /// In English; [`Field::told`] for a reader.
    pub label: String,
    pub optional: bool,
    pub shape: Shape,
}

impl Field {
    /// Returns the field with label and choices in the language of who reads.
    pub fn told(mut self) -> Self {
        self.label = retold(&self.label);
        if let Shape::Choice { options } = &mut self.shape {
            options.iter_mut().for_each(|(_, words)| *words = retold(words));
        }
        if let Shape::Number { unit, .. } = &mut self.shape {
            *unit = retold(unit);
        }
        self
    }
}

/// What goes into a field.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Shape {
    /// A whole number of smallest steps; `per` of them make one `unit` on the screen, shown with `decimals`.
    Number {
        unit: String,
        per: i64,
        decimals: u8,
        least: i64,
        most: i64,
        step: i64,
    },
    Text,
    Choice {
        options: Vec<(&'static str, String)>,
    },
    /// An ISO 8601 date.
    Date,
    /// Milliseconds since 1970 in UTC, entered as a local time.
    Time,
    /// The id of an instrument of this kind.
    Instrument {
        of: InstrumentKind,
    },
}

impl TaskKind {
    /// The kinds without which the gates cannot be answered; a method statement must hold each of them.
    pub const NEEDED: [(Self, Stage); 11] = [
        (Self::Suitability, Stage::Staging),
        (Self::Permit, Stage::Staging),
        (Self::Cleaned, Stage::Staging),
        (Self::MeasuredDiameter, Stage::Staging),
        (Self::PackerTest, Stage::Staging),
        (Self::Lots, Stage::Staging),
        (Self::Temperatures, Stage::Staging),
        (Self::BareEnds, Stage::SleeveChange),
        (Self::AllBack, Stage::Deflation),
        (Self::Edges, Stage::Verification),
        (Self::Folds, Stage::Verification),
    ];

    /// Whether an answer stays valid for the next attempt, because it is about the site and not about the patch.
    pub fn stays_valid(self) -> bool {
        matches!(self, Self::Suitability | Self::Permit | Self::Flow | Self::MeasuredDiameter | Self::Instruments)
    }

    /// Returns the fields as a reader sees them, in the order to show them.
    pub fn told_fields(self) -> Vec<Field> {
        self.fields().into_iter().map(Field::told).collect()
    }

    /// Returns the fields to fill in, in the order to show them. `Confirm` has none: doing it is the answer.
    pub fn fields(self) -> Vec<Field> {
        match self {
            Self::Confirm | Self::Suitability | Self::Soaked => vec![],
            Self::Permit => vec![
                text("number", "Permit number"),
                choice("entry", "Does anybody go below?", &[("none", "Nobody"), ("entry", "Somebody")]),
                optional(text("who", "Who is below, who attends")),
            ],
            Self::Air => vec![
                number("oxygen_permille", "Oxygen", "%", 10, 1, 0, 1000, 1),
                number("flammable_pct", "Flammable", "% LFL", 1, 0, 0, 100, 1),
                number("hydrogen_sulfide_ppm", "H₂S", "ppm", 1, 0, 0, 1000, 1),
                number("carbon_monoxide_ppm", "CO", "ppm", 1, 0, 0, 5000, 1),
                optional(instrument("meter", "Gas meter", InstrumentKind::GasMeter)),
            ],
            Self::Flow => vec![
                text("how", "How the flow is kept away"),
                time("until_ms", "Until when it holds"),
                optional(number("plugs", "Plugs set", "", 1, 0, 0, 20, 1)),
            ],
            Self::Cleaned => vec![time("at_ms", "Cleaned at"), optional(text("how", "How"))],
            Self::ViewedAgain => vec![time("at_ms", "Viewed again at"), optional(text("found", "Anything new"))],
            Self::MeasuredDiameter => vec![
                number("least_um", "Smallest inside diameter", "mm", 1000, 1, 50_000, 3_000_000, 500),
                number("most_um", "Largest inside diameter", "mm", 1000, 1, 50_000, 3_000_000, 500),
                optional(text("how", "How it was measured")),
            ],
            Self::PackerTest => vec![
                number("gauge_pa", "Pressure", "bar", 100_000, 2, 0, 2_000_000, 1_000),
                number("held_ms", "Held for", "min", 60_000, 0, 0, 3_600_000, 60_000),
                number("drop_pa", "Drop", "bar", 100_000, 2, 0, 2_000_000, 1_000),
            ],
            Self::Lots => vec![
                text("lot_a", "Lot of part A"),
                date("expires_a", "Part A good until"),
                text("lot_b", "Lot of part B"),
                date("expires_b", "Part B good until"),
                number("stored_least_mc", "Stored, coldest", "°C", 1000, 0, -40_000, 60_000, 1_000),
                number("stored_most_mc", "Stored, warmest", "°C", 1000, 0, -40_000, 80_000, 1_000),
                text("lot_patch", "Lot of the patch"),
                optional(text("lot_sleeve", "Lot of the sleeve")),
            ],
            Self::Instruments => vec![
                instrument("gauge", "Pressure gauge", InstrumentKind::PressureGauge),
                instrument("thermometer", "Thermometer", InstrumentKind::Thermometer),
                instrument("counter", "Camera counter", InstrumentKind::CameraCounter),
                optional(instrument("tape", "Tape", InstrumentKind::Tape)),
                optional(instrument("scale", "Scale", InstrumentKind::Scale)),
            ],
            Self::Temperatures => {
                // Between the summit of a high road and the deepest low over the sea; absolute, not gauge.
                let outside =
                    number("outside_pa", "Air pressure outside, absolute", "bar", 100_000, 3, 50_000, 110_000, 100);
                temperatures().into_iter().chain([optional(outside)]).collect()
            }
            Self::Battery => vec![number("pct", "Battery", "%", 1, 0, 0, 100, 1)],
            Self::BareEnds => vec![
                number("front_um", "Bare end, front", "mm", 1000, 0, 0, 3_000_000, 1_000),
                number("rear_um", "Bare end, rear", "mm", 1000, 0, 0, 3_000_000, 1_000),
            ],
            Self::PartsUsed => vec![
                choice("how", "Parts", &[("containers", "Whole containers, both emptied"), ("weighed", "Weighed")]),
                optional(number("mass_a_mg", "Part A", "g", 1000, 0, 0, 100_000_000, 1_000)),
                optional(number("mass_b_mg", "Part B", "g", 1000, 0, 0, 100_000_000, 1_000)),
            ],
            Self::Mixed => vec![number("mixed_ms", "Mixed for", "s", 1000, 0, 0, 3_600_000, 10_000)],
            Self::Seam => vec![number("hour", "Seam, looking downstream", "o’clock", 1, 0, 1, 12, 1)],
            Self::AtTheMark => vec![
                number("counter_um", "Centre by the counter", "m", 1_000_000, 2, 0, 5_000_000_000, 10_000),
                optional(number(
                    "beyond_um",
                    "Past the mark (short of it: −)",
                    "mm",
                    1000,
                    0,
                    -5_000_000,
                    5_000_000,
                    1_000,
                )),
            ],
            Self::AllBack => vec![
                choice("rope", "Pulled by", &[("rope", "The rope"), ("rods", "The rods")]),
                choice("sleeve", "Sleeve", &[("back", "All of it back"), ("missing", "Something missing")]),
                choice(
                    "membrane",
                    "Membrane",
                    &[("none", "None used"), ("back", "All of it back"), ("missing", "Something missing")],
                ),
                choice("bands", "Binding", &[("back", "All of it back"), ("missing", "Something missing")]),
            ],
            Self::PackerCondition => vec![choice("packer", "Packer", &[("sound", "Sound"), ("damaged", "Damaged")])],
            Self::Edges => vec![
                choice("upstream", "Upstream edge", EDGE),
                choice("downstream", "Downstream edge", EDGE),
                optional(text("where", "Where it stands off")),
            ],
            Self::Folds => vec![
                number("height_um", "Highest fold (0 for none)", "mm", 1000, 0, 0, 500_000, 1_000),
                optional(number("hour", "At, looking downstream", "o’clock", 1, 0, 1, 12, 1)),
                optional(number("hour_to", "Clockwise to", "o’clock", 1, 0, 1, 12, 1)),
                optional(number(
                    "from_um",
                    "Begins, from the upstream node",
                    "m",
                    1_000_000,
                    2,
                    0,
                    5_000_000_000,
                    10_000,
                )),
                optional(number("to_um", "Ends", "m", 1_000_000, 2, 0, 5_000_000_000, 10_000)),
                optional(text("where", "Where")),
            ],
            Self::Infiltration => vec![choice(
                "seen",
                "Water coming in",
                &[
                    ("none", "None seen"),
                    ("sweating", "Sweating"),
                    ("dripping", "Dripping"),
                    ("flowing", "Flowing"),
                    ("gushing", "Gushing"),
                ],
            )],
            Self::Surface => vec![choice(
                "surface",
                "Surface",
                &[("sound", "No dry, no soft area"), ("dry", "Dry area"), ("soft", "Soft area")],
            )],
            Self::Laterals => vec![number("coupons", "Coupons recovered", "", 1, 0, 0, 50, 1)],
            Self::Tightness => vec![
                text("method", "Method and standard"),
                choice("result", "Result", &[("tight", "Tight"), ("not_tight", "Not tight")]),
                optional(text("values", "Pressure, drop, time")),
            ],
            Self::Waste => vec![
                text("what", "What"),
                number("mass_g", "How much", "kg", 1000, 1, 0, 10_000_000, 100),
                text("where_to", "Where to"),
                optional(text("ticket", "Ticket")),
            ],
            Self::FlowRestored => vec![number("plugs", "Plugs taken out", "", 1, 0, 0, 20, 1)],
        }
    }
}

const EDGE: &[(&str, &str)] =
    &[("bonded", "Bonded all round"), ("lifted", "Stands off"), ("not_seen", "Could not be seen")];

/// Returns the fields of a set of temperatures; the second go asks the same.
pub fn temperatures() -> Vec<Field> {
    vec![
        degrees("resin_mc", "Resin"),
        degrees("air_mc", "Air"),
        degrees("pipe_mc", "Pipe wall"),
        optional(degrees("water_mc", "Water")),
    ]
}

fn degrees(key: &'static str, label: &'static str) -> Field {
    number(key, label, "°C", 1000, 1, -30_000, 80_000, 500)
}

#[allow(clippy::too_many_arguments)]
fn number(
    key: &'static str,
    label: &'static str,
    unit: &'static str,
    per: i64,
    decimals: u8,
    least: i64,
    most: i64,
    step: i64,
) -> Field {
    Field {
        key,
        label: label.into(),
        optional: false,
        shape: Shape::Number { unit: unit.into(), per, decimals, least, most, step },
    }
}

fn text(key: &'static str, label: &'static str) -> Field {
    Field { key, label: label.into(), optional: false, shape: Shape::Text }
}

fn date(key: &'static str, label: &'static str) -> Field {
    Field { key, label: label.into(), optional: false, shape: Shape::Date }
}

fn time(key: &'static str, label: &'static str) -> Field {
    Field { key, label: label.into(), optional: false, shape: Shape::Time }
}

fn choice(key: &'static str, label: &'static str, options: &[(&'static str, &'static str)]) -> Field {
    let named = options.iter().map(|(key, words)| (*key, (*words).to_owned())).collect();
    Field { key, label: label.into(), optional: false, shape: Shape::Choice { options: named } }
}

fn instrument(key: &'static str, label: &'static str, of: InstrumentKind) -> Field {
    Field { key, label: label.into(), optional: false, shape: Shape::Instrument { of } }
}

fn optional(field: Field) -> Field {
    Field { optional: true, ..field }
}

impl Method {
    /// Returns the tasks of a stage in the order of the statement.
    pub fn of(&self, stage: Stage) -> impl Iterator<Item = &Task> {
        self.tasks.iter().filter(move |task| task.stage == stage)
    }

    /// Returns the needed kinds that the statement lacks, or puts into another stage.
    pub fn lacks(&self) -> Vec<(TaskKind, Stage)> {
        TaskKind::NEEDED
            .into_iter()
            .filter(|(kind, stage)| !self.tasks.iter().any(|task| task.kind == *kind && task.stage == *stage))
            .collect()
    }
}
