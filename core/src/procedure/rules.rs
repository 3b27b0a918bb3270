//! The rule table: what must hold, who may waive it, and the sentence that says so.
//!
//! It drives the gates, the screens, the certificate and the page in the docs, so it stands in one place.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use super::answer::Value;
use super::stage::Stage;
use crate::shelf::Role;
use crate::words::{self, Filling};

/// Values that belong to a rule: numbers in the step that the key's unit names, or texts.
pub type RuleValues = BTreeMap<String, Value>;

/// How hard a rule is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Kind {
    /// Can't be waived.
    Never,
    /// The foreman may waive it with a reason; it is printed.
    Departure,
    /// Asked and recorded.
    Question,
    /// Kept and printed.
    Note,
}

/// A row of the table.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Row {
    pub rule: Rule,
    /// Where it is looked at; `None` for every stage.
    pub stage: Option<Stage>,
    pub kind: Kind,
}

/// A row as a table shows it, for who reads.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct ShownRow {
    #[serde(flatten)]
    pub row: Row,
    /// The sentence, with the names of its values in braces.
    pub says: String,
    /// What opens it again.
    pub way_out: String,
}

/// Returns the table with its sentences.
pub fn shown() -> Vec<ShownRow> {
    let raw = |row: &Row, attribute| words::raw(&row.rule.message(), attribute);
    TABLE.iter().map(|row| ShownRow { row: *row, says: raw(row, ""), way_out: raw(row, "way-out") }).collect()
}

macro_rules! rules {
    ($($name:ident, $stage:expr, $kind:ident;)+) => {
        /// A rule, by its code.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
        #[serde(rename_all = "snake_case")]
        pub enum Rule { $($name),+ }

        /// Every rule, in the order of the stages.
        pub const TABLE: &[Row] = &[$(Row { rule: Rule::$name, stage: $stage, kind: Kind::$kind }),+];
    };
}

use Stage::{Deflation, Hold, Inflation, Placement, Planned, SleeveChange, Staging, TestPush, Verification, WetOut};

rules! {
    PlanMissing, Some(Planned), Never;
    ChoiceMissing, Some(Planned), Never;
    CoverShort, Some(Planned), Departure;
    DiameterOutsidePacker, Some(Planned), Departure;
    DiameterOutsidePatch, Some(Planned), Departure;
    PatchOutsideLine, Some(Planned), Never;
    PatchLongerThanPacker, Some(Planned), Never;
    RodsDontTurn, Some(Planned), Never;
    TooShortToBind, Some(Planned), Never;
    MembraneInBend, Some(Planned), Never;
    MembraneShort, Some(Planned), Never;
    PressureNotNamed, Some(Planned), Never;
    WindowEmpty, Some(Planned), Never;
    OutsideSheet, Some(Planned), Never;
    BatchTooLarge, Some(Planned), Never;
    NoTime, Some(WetOut), Never;
    ClosureBeforeHoldEnd, Some(WetOut), Departure;
    StorageShort, Some(WetOut), Departure;
    TemperaturesOld, Some(WetOut), Never;
    TemperaturesMissing, Some(WetOut), Never;
    BranchOpen, None, Never;
    TaskOpen, None, Never;
    TaskNotRight, None, Never;
    NotSuitable, Some(Staging), Never;
    ResinExpired, Some(Staging), Never;
    StorageOutside, Some(Staging), Departure;
    AirAlarm, Some(Staging), Never;
    AirOld, Some(Staging), Never;
    DiameterDiffers, Some(Staging), Departure;
    PackerTestShort, Some(Staging), Departure;
    PackerLeaks, Some(Staging), Never;
    InstrumentOverdue, Some(Staging), Departure;
    CleaningOld, Some(Staging), Departure;
    MarkNotReached, Some(TestPush), Never;
    PackerNotBack, Some(TestPush), Never;
    BareEndShort, Some(SleeveChange), Departure;
    BareEndsUnequal, Some(SleeveChange), Departure;
    GoMissing, Some(WetOut), Never;
    JoinedWithoutGo, Some(WetOut), Departure;
    JoinedExpired, Some(WetOut), Departure;
    RatioOutside, Some(WetOut), Departure;
    MixingShort, Some(WetOut), Departure;
    LateFillIn, Some(WetOut), Note;
    CentreShifted, Some(Placement), Departure;
    LateInflation, Some(Inflation), Departure;
    LateTapInFavour, None, Departure;
    PressureLost, Some(Hold), Departure;
    WindowMissed, Some(Hold), Note;
    HoldShort, Some(Hold), Departure;
    SampleSoft, Some(Hold), Never;
    SampleMissing, Some(Hold), Never;
    ReadingCopied, Some(Hold), Question;
    HoldNotCovered, Some(Hold), Departure;
    ReleasedEarly, Some(Deflation), Departure;
    PulledByRods, Some(Deflation), Departure;
    LeftBehind, Some(Deflation), Never;
    PackerDamaged, Some(Deflation), Note;
    TroubleReported, None, Departure;
    EdgeLifted, Some(Verification), Departure;
    FoldHigh, Some(Verification), Departure;
    WaterComes, Some(Verification), Departure;
    SurfaceNotSound, Some(Verification), Departure;
    LateralCovered, Some(Verification), Never;
    LateralOpening, Some(Verification), Departure;
    LateralCutEarly, Some(Verification), Departure;
    CouponMissing, Some(Verification), Departure;
    TestedEarly, Some(Verification), Departure;
    TightnessMissing, Some(Verification), Departure;
    NotTight, Some(Verification), Departure;
    PhotoMissing, None, Departure;
    NewAttemptAsked, Some(Verification), Never;
    DepartureOpen, Some(Verification), Never;
    ForemanNeeded, None, Never;
    ReadsOnly, None, Never;
    PinMissing, None, Never;
    PersonMissing, None, Never;
    ReasonMissing, None, Never;
    NotCertain, Some(Verification), Never;
    ValueMissing, None, Never;
    ValueWrong, None, Never;
    SignatureMissing, Some(Verification), Never;
    SignatureEmpty, Some(Verification), Never;
    NotComplete, Some(Verification), Never;
    RehearsalOnly, None, Never;
    OutOfOrder, None, Never;
    StageOrder, None, Never;
    BadValue, None, Never;
    FarFromNode, None, Question;
    ClockSet, None, Question;
}

impl Rule {
    /// Returns its row of the table.
    pub fn row(self) -> &'static Row {
        // The macro makes one row a rule, in the order of the enum.
        &TABLE[self as usize]
    }

    /// Returns its code as it stands in JSON and in the docs.
    pub fn code(self) -> String {
        serde_json::to_value(self).ok().and_then(|value| value.as_str().map(str::to_owned)).unwrap_or_default()
    }

    /// Returns who may waive it: nobody, or the foreman.
    pub fn waived_by(self) -> Option<Role> {
        (self.row().kind == Kind::Departure).then_some(Role::Foreman)
    }

    /// Returns the sentence with the values put in, in the language and the units of who reads.
    pub fn says(self, values: &RuleValues) -> String {
        self.filled("", values)
    }

    /// Returns what opens it again, with the values put in.
    pub fn way_out(self, values: &RuleValues) -> String {
        self.filled("way-out", values)
    }

    fn message(self) -> String {
        format!("rule-{}", self.code())
    }

    fn filled(self, attribute: &str, values: &RuleValues) -> String {
        // A count decides the form of the sentence, so it goes in as a number.
        let shown = values.iter().map(|(key, value)| match value {
            Value::Number(number) if words::unitless(key) => (key, Err(*number)),
            Value::Number(number) => (key, Ok(words::show(key, *number))),
            Value::Text(text) => (key, Ok(words::retold(text))),
        });
        let shown: Vec<_> = shown.collect();
        let fillings: Vec<(&str, Filling)> = shown
            .iter()
            .map(|(key, value)| (key.as_str(), value.as_ref().map_or_else(|n| Filling::Number(*n), |text| text.into())))
            .collect();
        words::say_of(&self.message(), attribute, &fillings)
    }
}

/// A rule that stands in the way, with its values.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Broken {
    pub rule: Rule,
    #[serde(default)]
    pub subject: String,
    pub values: RuleValues,
}

impl Broken {
    /// Returns a broken rule without values.
    pub fn bare(rule: Rule) -> Self {
        Self { rule, subject: String::new(), values: RuleValues::new() }
    }

    /// Returns a broken rule with its values.
    pub fn with(rule: Rule, values: &[(&str, Value)]) -> Self {
        let values = values.iter().map(|(key, value)| ((*key).to_owned(), value.clone())).collect();
        Self { rule, subject: String::new(), values }
    }

    /// Names what it is about, where a rule can be broken more than once.
    pub fn about(mut self, subject: impl Into<String>) -> Self {
        self.subject = subject.into();
        self
    }
}

/// The rules say no: every rule that stands in the way. Nothing was written.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Refusal {
    pub broken: Vec<Broken>,
}

impl Refusal {
    /// Returns the refusal for one rule.
    pub fn one(broken: Broken) -> Self {
        Self { broken: vec![broken] }
    }

    /// Returns `Ok` if nothing stands in the way.
    pub fn unless_empty(broken: Vec<Broken>) -> Result<(), Self> {
        if broken.is_empty() { Ok(()) } else { Err(Self { broken }) }
    }
}

/// Shorthand for a number value.
pub fn n(number: i64) -> Value {
    Value::Number(number)
}

/// Shorthand for a text value.
pub fn t(text: impl Into<String>) -> Value {
    Value::Text(text.into())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_rule_finds_its_own_row() {
        for row in TABLE {
            assert_eq!(row.rule.row().rule, row.rule);
        }
    }

    #[test]
    fn a_sentence_carries_its_values_with_their_units() {
        let broken = Broken::with(Rule::CoverShort, &[("cover_um", n(134_000)), ("required_um", n(150_000))]);
        assert_eq!(broken.rule.says(&broken.values), "Cover is 134 mm after all errors; 150 mm is asked.");
    }

    #[test]
    fn whatever_closes_a_gate_says_what_opens_it() {
        let none = RuleValues::new();
        let closes = |row: &&Row| matches!(row.kind, Kind::Never | Kind::Departure);
        let dumb = |row: &&Row| row.rule.says(&none).is_empty() || row.rule.way_out(&none).is_empty();
        let dumb: Vec<_> = TABLE.iter().filter(closes).filter(dumb).map(|row| row.rule).collect();
        assert!(dumb.is_empty(), "{dumb:?}");
    }

    #[test]
    fn only_a_departure_can_be_waived() {
        assert_eq!(Rule::NoTime.waived_by(), None);
        assert_eq!(Rule::HoldShort.waived_by(), Some(Role::Foreman));
    }
}
