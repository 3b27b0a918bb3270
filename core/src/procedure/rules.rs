//! The rule table: what must hold, who may waive it, and the sentence that says so.
//!
//! It drives the gates, the screens, the certificate and the page in the docs, so it stands in one place.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use super::answer::Value;
use super::stage::Stage;
use crate::shelf::Role;

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
    /// The sentence, with values in braces.
    pub says: &'static str,
    /// What opens it again.
    pub way_out: &'static str,
}

macro_rules! rules {
    ($($name:ident, $stage:expr, $kind:ident, $says:literal, $way_out:literal;)+) => {
        /// A rule, by its code.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
        #[serde(rename_all = "snake_case")]
        pub enum Rule { $($name),+ }

        /// Every rule, in the order of the stages.
        pub const TABLE: &[Row] = &[$(Row { rule: Rule::$name, stage: $stage, kind: Kind::$kind, says: $says, way_out: $way_out }),+];
    };
}

use Stage::{Deflation, Hold, Inflation, Placement, Planned, SleeveChange, Staging, TestPush, Verification, WetOut};

rules! {
    PlanMissing, Some(Planned), Never, "There is no accepted plan.", "Accept a plan first.";
    ChoiceMissing, Some(Planned), Never, "{what}: nothing is chosen.", "Choose or enter it.";
    CoverShort, Some(Planned), Departure, "Cover is {cover_um} after all errors; {required_um} is asked.", "Take a longer patch, mark with the camera on the defect, or ask the foreman.";
    DiameterOutsidePacker, Some(Planned), Departure, "The pipe measures {least_um} to {most_um}; the packer is for {packer_least_um} to {packer_most_um}.", "Take a packer that fits, or ask the foreman.";
    DiameterOutsidePatch, Some(Planned), Departure, "The pipe measures {least_um} to {most_um}; the patch is for {patch_least_um} to {patch_most_um}.", "Take a patch that fits, or ask the foreman.";
    PatchOutsideLine, Some(Planned), Never, "The patch would reach {out_um} out of the pipe.", "Move its centre, or take a shorter patch.";
    PatchLongerThanPacker, Some(Planned), Never, "The patch is {patch_um} long, the packer {packer_um}.", "Take a longer packer, or a shorter patch.";
    RodsDontTurn, Some(Planned), Never, "Rigid rods don't turn the corner: {corner}.", "Pull by rope from the other node, push with the stiff hose, or name who pushes from below.";
    TooShortToBind, Some(Planned), Never, "{length_um} is too short for both groups of bands.", "Take a patch of {needed_um} or more.";
    MembraneInBend, Some(Planned), Never, "A membrane is for a straight pipe, and there is a bend on the way.", "Take a patch that needs no membrane.";
    MembraneShort, Some(Planned), Never, "The membrane reaches {reach_um} past the patch; the sheet asks {least_um}.", "Take a longer packer, or a shorter patch.";
    PressureNotNamed, Some(Planned), Never, "The label of {packer} names no pressure for a pipe of {most_um}.", "Take a packer whose label names one.";
    WindowEmpty, Some(Planned), Never, "The least pressure {lower_pa} is above the most {upper_pa}.", "Take another packer or patch, or lower the groundwater.";
    OutsideSheet, Some(Planned), Never, "{what} is {temperature_mc}; the sheet ends at {limit_mc}.", "Warm or cool it until the sheet covers it, or take another resin.";
    BatchTooLarge, Some(Planned), Never, "The batch is {batch_mg}; the sheet's times hold up to {most_mg}.", "Split the batch.";
    NoTime, Some(WetOut), Never, "The resin would set before the patch is in place: {short_ms} too short.", "Measure all three again, or cool them: {enough_mc} or colder gives enough.";
    ClosureBeforeHoldEnd, Some(WetOut), Departure, "{what} ends {before_ms} before the hold would.", "Have it extended, or ask the foreman.";
    StorageShort, Some(WetOut), Departure, "The line above stores the inflow for {lasts_ms}; until the hold is over, margin included, {needed_ms} are needed.", "Pump it over, or let it through and set the plug again, or ask the foreman.";
    TemperaturesOld, Some(WetOut), Never, "The temperatures are {age_ms} old; {most_ms} is allowed.", "Measure resin, air and pipe again.";
    TemperaturesMissing, Some(WetOut), Never, "Resin, air and pipe have not been measured.", "Measure all three.";
    BranchOpen, None, Never, "{count} devices went on with this repair apart from each other, and nobody has chosen.", "Look at both, and let the foreman choose which of them counts.";
    TaskOpen, None, Never, "{count} open: {first}.", "Answer each: done, or why not.";
    TaskNotRight, None, Never, "{label}: not right, because {because}.", "Mend it and answer again, or end the attempt.";
    NotSuitable, Some(Staging), Never, "A patch is not the right repair here: {because}", "Close the repair, or plan another one.";
    ResinExpired, Some(Staging), Never, "Lot {lot} was good until {date}.", "Take a lot that is in date.";
    StorageOutside, Some(Staging), Departure, "Stored at {stored_least_mc} to {stored_most_mc}; the sheet allows {least_mc} to {most_mc}.", "Take resin that was kept right, or ask the foreman.";
    AirAlarm, Some(Staging), Never, "The air is outside the limits: {what}.", "Nobody enters. Ventilate, measure again.";
    AirOld, Some(Staging), Never, "The last air reading is {age_ms} old; {most_ms} is allowed while somebody is below.", "Measure the air again.";
    DiameterDiffers, Some(Staging), Departure, "Measured {least_um} to {most_um}; the plan was made for {plan_least_um} to {plan_most_um}.", "Make the plan again with the measured size, or ask the foreman.";
    PackerTestShort, Some(Staging), Departure, "Tested at {gauge_pa} for {held_ms}; the sheet asks {test_pa} for {test_ms}.", "Test again as the sheet says, or ask the foreman.";
    PackerLeaks, Some(Staging), Never, "The packer lost {drop_pa} in the test.", "Mend it or take another packer.";
    InstrumentOverdue, Some(Staging), Departure, "{instrument}: calibration ended {date}.", "Take a calibrated one, or ask the foreman.";
    CleaningOld, Some(Staging), Departure, "Viewed again {age_ms} after cleaning; {most_ms} is allowed.", "Clean and view again, or ask the foreman.";
    MarkNotReached, Some(TestPush), Never, "The packer has not been at the mark.", "Push on to the mark, or bring it back and end the attempt.";
    PackerNotBack, Some(TestPush), Never, "The packer is not back, or not sound.", "Bring it back by the rope, look for cuts.";
    BareEndShort, Some(SleeveChange), Departure, "The shorter bare end is {least_um}; the sheet asks {required_um}.", "Bind the patch again, or ask the foreman.";
    BareEndsUnequal, Some(SleeveChange), Departure, "The bare ends differ by {difference_um}; the sheet allows {tolerance_um}.", "Bind the patch again, or ask the foreman.";
    GoMissing, Some(WetOut), Never, "There is no second go.", "Ask for it with fresh temperatures.";
    JoinedWithoutGo, Some(WetOut), Departure, "The parts were joined without a go.", "The foreman decides after the camera.";
    JoinedExpired, Some(WetOut), Departure, "The parts were joined while a rule stood against it: {what}", "The foreman decides after the camera.";
    RatioOutside, Some(WetOut), Departure, "The ratio of A to B is {ratio_permille} per 1000; the sheet asks {asked_permille} within {tolerance_permille}.", "The foreman decides.";
    MixingShort, Some(WetOut), Departure, "Mixed for {mixed_ms}; the sheet asks {least_ms}.", "The foreman decides.";
    LateFillIn, Some(WetOut), Note, "{count} answers of the wet-out were filled in later.", "";
    CentreShifted, Some(Placement), Departure, "From the actual centre the cover is {cover_um}; {required_um} is asked.", "Move it to the mark, or ask the foreman.";
    LateInflation, Some(Inflation), Departure, "Target pressure came {late_ms} after the working time was over.", "The foreman decides after the camera.";
    LateTapInFavour, None, Departure, "{what} was tapped {ago_ms} later than it happened, in the crew's favour.", "The foreman decides.";
    PressureLost, Some(Hold), Departure, "Net pressure fell to {net_pa}, below the sheet's {least_pa}, before the hold was reached.", "Photos of the full turn; the foreman decides.";
    WindowMissed, Some(Hold), Note, "{gauge_pa} is outside the window {lower_pa} to {upper_pa}.", "Bring the pressure back; these minutes do not count.";
    HoldShort, Some(Hold), Departure, "{counted_ms} counted of {required_ms}.", "Wait, or ask the foreman.";
    SampleSoft, Some(Hold), Never, "The sample is soft.", "Wait and feel it again.";
    SampleMissing, Some(Hold), Never, "Nobody has felt the sample.", "Feel the sample in the manhole.";
    ReadingCopied, Some(Hold), Question, "The last {count} readings are the same to the last digit.", "Read the gauge again.";
    HoldNotCovered, Some(Hold), Departure, "The pipe is {temperature_mc}; the hold table begins at {limit_mc}.", "Warm the pipe; the foreman decides.";
    ReleasedEarly, Some(Deflation), Departure, "Released after {counted_ms} of {required_ms}.", "The foreman decides after the camera.";
    PulledByRods, Some(Deflation), Departure, "It was pulled back by the rods.", "The foreman decides.";
    LeftBehind, Some(Deflation), Never, "Something is missing: {what}.", "Find it before going on.";
    PackerDamaged, Some(Deflation), Note, "The packer came back damaged.", "Mend it before the next attempt.";
    TroubleReported, None, Departure, "{what} was reported while the resin set.", "The foreman decides after the camera.";
    EdgeLifted, Some(Verification), Departure, "An edge is not bonded all round.", "Reject, or the foreman decides.";
    FoldHigh, Some(Verification), Departure, "A fold of {height_um}; the limit is {limit_um}.", "Reject, or the foreman decides.";
    WaterComes, Some(Verification), Departure, "Water comes in: {what}.", "Reject, or the foreman decides.";
    SurfaceNotSound, Some(Verification), Departure, "The surface shows a {what} area.", "Reject, or the foreman decides.";
    LateralCovered, Some(Verification), Never, "The lateral at {station_um} is covered and not opened.", "Open it after full cure.";
    LateralOpening, Some(Verification), Departure, "The lateral at {station_um} is open to {open_pct}; {least_pct} to {most_pct} is asked.", "Trim it, or ask the foreman.";
    LateralCutEarly, Some(Verification), Departure, "The lateral at {station_um} was cut {early_ms} before full cure.", "The foreman decides.";
    CouponMissing, Some(Verification), Departure, "The coupon of the lateral at {station_um} was not recovered.", "Find it, or the foreman decides.";
    TestedEarly, Some(Verification), Departure, "Tested {early_ms} before full cure.", "The foreman decides.";
    TightnessMissing, Some(Verification), Departure, "The contract asks for an air or water test.", "Test after full cure, or ask the foreman.";
    NotTight, Some(Verification), Departure, "The test was not passed.", "Reject, or the foreman decides.";
    PhotoMissing, None, Departure, "A photo is missing: {what}.", "Take it, or ask the foreman.";
    NewAttemptAsked, Some(Verification), Never, "The attempt is doubtful, and the contract asks for a new one.", "Reject, and begin a new attempt.";
    DepartureOpen, Some(Verification), Never, "{count} departures wait for the foreman.", "The foreman waives each with a reason, or rejects.";
    ForemanNeeded, None, Never, "Only a foreman can do this.", "Pick a foreman.";
    PersonMissing, None, Never, "Nobody is picked.", "Pick who you are.";
    ReasonMissing, None, Never, "The reason is missing.", "Say why, in a few words.";
    NotCertain, Some(Verification), Never, "{what} is missing for the certificate.", "Fill it in.";
    SignatureMissing, Some(Verification), Never, "{what} has not signed.", "Sign on the review screen.";
    SignatureEmpty, Some(Verification), Never, "Nothing was drawn.", "Draw the signature.";
    NotComplete, Some(Verification), Never, "There is nothing to sign yet.", "Accept or reject the attempt, or close the repair.";
    RehearsalOnly, None, Never, "A rehearsal can never become a record.", "Open a repair.";
    OutOfOrder, None, Never, "This does not belong to the stage {stage}.", "Do the next step that the screen shows.";
    StageOrder, None, Never, "The repair is {standing}.", "Nothing more can be asked of it.";
    BadValue, None, Never, "{what}", "Mend the value.";
    FarFromNode, None, Question, "The phone is {distance_um} from the node's coordinates.", "Look at the number on the cover.";
    ClockSet, None, Question, "The clock was set by {by_ms}.", "Look at the time.";
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

    /// Returns the sentence with the values put in, units included.
    pub fn says(self, values: &RuleValues) -> String {
        fill(self.row().says, values)
    }

    /// Returns what opens it again, with the values put in.
    pub fn way_out(self, values: &RuleValues) -> String {
        fill(self.row().way_out, values)
    }
}

fn fill(template: &str, values: &RuleValues) -> String {
    values.iter().fold(template.to_owned(), |text, (key, value)| {
        let shown = match value {
            Value::Number(number) => show(key, *number),
            Value::Text(words) => words.clone(),
        };
        text.replace(&format!("{{{key}}}"), &shown)
    })
}

/// Returns a recorded number with the unit that its key ends in.
pub fn show(key: &str, number: i64) -> String {
    match key.rsplit('_').next().unwrap_or_default() {
        "um" if number.abs() >= 2_000_000 => format!("{:.2} m", number as f64 / 1e6),
        "um" => format!("{} mm", trimmed(number as f64 / 1e3, 1)),
        "pa" => format!("{:.2} bar", number as f64 / 1e5),
        "mc" => format!("{} °C", trimmed(number as f64 / 1e3, 1)),
        "mg" => format!("{} g", trimmed(number as f64 / 1e3, 0)),
        "ms" => span(number),
        "pct" => format!("{number} %"),
        _ => number.to_string(),
    }
}

fn trimmed(value: f64, decimals: usize) -> String {
    let text = format!("{value:.decimals$}");
    if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.').to_owned() } else { text }
}

/// Returns a span as "1 h 05 min", "6 min 17 s" or "40 s"; whole seconds, cut toward zero.
pub fn span(ms: i64) -> String {
    let seconds = ms.abs() / 1000;
    let (hours, minutes, rest) = (seconds / 3600, seconds / 60 % 60, seconds % 60);
    let sign = if ms < 0 { "−" } else { "" };
    match (hours, minutes, rest) {
        (0, 0, rest) => format!("{sign}{rest} s"),
        (0, minutes, rest) => format!("{sign}{minutes} min {rest:02} s"),
        (hours, minutes, _) => format!("{sign}{hours} h {minutes:02} min"),
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
    fn spans_are_cut_and_never_rounded_up() {
        assert_eq!([span(6 * 60_000 + 17_999), span(3_900_000), span(-40_000)], ["6 min 17 s", "1 h 05 min", "−40 s"]);
    }

    #[test]
    fn only_a_departure_can_be_waived() {
        assert_eq!(Rule::NoTime.waived_by(), None);
        assert_eq!(Rule::HoldShort.waived_by(), Some(Role::Foreman));
    }
}
