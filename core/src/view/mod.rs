//! What each screen shows, computed from state, facts and now. Screens only draw it.

mod broken;
mod clock;
mod debrief;
mod handed;
mod hold;
mod known;
mod leak;
mod next;
mod pace;
mod paper;
mod retold;
mod review;
mod spot;
mod summary;
mod tasks;
mod today;
mod trouble;
mod worked;

pub use broken::BrokenView;
pub use clock::{ClockView, CureView};
pub use debrief::{Debrief, Met, PracticeView, Wrong};
pub use handed::{Code, HandedView};
pub use hold::{HoldView, ReadingView, StretchView};
pub use known::known;
pub use leak::{LeakVerdict, LeakView};
pub use next::{GateView, Next};
pub use pace::{PaceView, pace};
pub use paper::{Paper, PaperTask, paper};
pub use retold::label;
pub use review::{Off, Review, What};
pub use spot::SpotView;
pub use summary::{Status, Summary, damaged_row, row, summary};
pub use tasks::{PhotoTask, TaskView};
pub use today::{Today, lacks, today};
pub use trouble::Trouble;
pub use worked::worked;

use std::collections::BTreeMap;

use serde::Serialize;

use crate::checks::flow_control::Storing;
use crate::facts::Moment;
use crate::procedure::gate::{self, Around};
use crate::procedure::repair::{Attempt, Ending, Go, Repair, Standing};
use crate::procedure::rules::Rule;
use crate::procedure::stage::Stage;
use crate::procedure::{storing, times};
use crate::shelf::Person;
use crate::units::Length;

/// One repair as its screens show it.
#[derive(Clone, Debug, Serialize)]
pub struct RepairView {
    /// All that is recorded.
    pub repair: Repair,
    pub standing: Standing,
    /// What there is to sign, if anything.
    pub ending: Option<Ending>,
    pub stage: Stage,
    pub attempt: u32,
    pub stages: Vec<StageView>,
    /// The tasks of the stage, and of earlier stages what may still be filled in.
    pub tasks: Vec<TaskView>,
    pub photos: Vec<PhotoTask>,
    pub next: Next,
    /// The go of the test push, or what it would be now.
    pub go: Option<GoView>,
    pub clock: Option<ClockView>,
    pub hold: Option<HoldView>,
    pub cure: Option<CureView>,
    /// The hold went to another phone, or comes from one.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub handed: Option<HandedView>,
    /// The highest fold that the contract accepts in this line.
    pub fold_limit_um: Length,
    pub trouble: Option<Trouble>,
    pub review: Review,
    /// What there is to see and what went wrong, in a rehearsal that is played.
    pub practice: Option<PracticeView>,
    pub people: Vec<Person>,
    /// Where the patch lies on the map, where both nodes have coordinates.
    pub spot: Option<SpotView>,
    /// By a check's name: what counts of the last that was worked out, in words.
    pub worked: BTreeMap<String, String>,
    /// How long the crew takes; filled in from the lists.
    pub pace: Option<PaceView>,
    /// Other repairs in which a clock runs.
    pub others: Vec<Other>,
}

/// Another repair in which a clock runs, and when it wants somebody.
#[derive(Clone, Debug, Serialize)]
pub struct Other {
    pub repair: String,
    pub node: String,
    /// When its next reading is due, or its working time is over.
    pub due_ms: i64,
    pub holding: bool,
    /// It is another phone's, followed by its code.
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    pub followed: bool,
}

/// Returns when a repair wants somebody next, or `None` if no clock of it does.
///
/// A hold that another phone has is that phone's to watch.
pub fn other(repair: &Repair, now: &Moment, device: &str) -> Option<Other> {
    if repair.is_away(device) {
        return None;
    }
    let (plan, attempt) = times::plan_and_attempt(repair)?;
    let shown = hold::hold(plan, attempt, now).filter(|hold| hold.released_ms.is_none());
    let holding = shown.is_some();
    let due_ms = match shown {
        Some(hold) => hold.reading_due_ms?,
        None if attempt.resin_runs() => clock::clock(plan, attempt, now)?.deadline_ms,
        None => return None,
    };
    Some(Other { repair: repair.id.clone(), node: summary::summary(repair).node, due_ms, holding, followed: false })
}

/// A stage on the rule of ten.
#[derive(Clone, Debug, Serialize)]
pub struct StageView {
    pub stage: Stage,
    pub word: &'static str,
    pub state: StageState,
    pub begun_ms: Option<i64>,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum StageState {
    Past,
    Now,
    Ahead,
    /// Taken over from an earlier attempt.
    Carried,
}

/// The go that was given, and what the budget is now.
#[derive(Clone, Debug, Serialize)]
pub struct GoView {
    pub first: Option<Go>,
    pub second: Option<Go>,
    /// Until when the second go is good, by the wall clock.
    pub good_until_ms: Option<i64>,
    /// The budget with the measured push and the temperatures read last.
    pub budget: Option<crate::procedure::plan::Budget>,
    /// How long the line above stores the inflow, where that was worked out.
    pub storing: Option<Storing>,
    pub broken: Vec<BrokenView>,
}

/// Returns the view of a repair for who asks now.
pub fn repair_view(repair: &Repair, around: &Around) -> RepairView {
    let now = &around.facts.moment;
    let context = times::plan_and_attempt(repair);
    let device = around.facts.device.as_str();
    let hold =
        context.and_then(|(plan, attempt)| hold::hold(plan, attempt, now)).map(|hold| hold.watched(repair, device));
    RepairView {
        worked: worked(repair),
        standing: repair.standing(),
        ending: repair.ending(),
        stage: repair.stage(),
        attempt: repair.last_attempt().map_or(0, |attempt| attempt.n),
        stages: stages(repair),
        tasks: context.map_or_else(Vec::new, |(plan, attempt)| tasks::tasks(plan, attempt)),
        photos: tasks::photos(repair),
        next: next::next(repair, around),
        go: context.map(|(plan, attempt)| go(repair, plan, attempt, now)),
        clock: context.and_then(|(plan, attempt)| clock::clock(plan, attempt, now)),
        fold_limit_um: repair.contract.fold_limit.value.height(repair.line.height_um),
        cure: context.and_then(|(plan, attempt)| clock::cure(plan, attempt, now)),
        trouble: context.and_then(|(plan, attempt)| trouble::trouble(plan, attempt, hold.as_ref(), now)),
        hold,
        handed: handed::handed(repair, device),
        review: review::review(repair),
        practice: debrief::practice(repair, now),
        people: around.people.to_vec(),
        spot: spot::spot(repair, &around.facts.position),
        pace: None,
        others: vec![],
        repair: retold::repair(repair),
    }
}

fn stages(repair: &Repair) -> Vec<StageView> {
    let attempt = repair.last_attempt();
    let now = repair.stage();
    let begun = |stage| {
        let span = attempt?.spans.iter().find(|span| span.stage == stage)?;
        Some(span.begun.moment.at_ms)
    };
    let carried = attempt.is_some_and(|attempt| attempt.test_push.carried_from.is_some());
    let state = |stage: Stage| match stage {
        Stage::TestPush if carried => StageState::Carried,
        _ if stage < now => StageState::Past,
        _ if stage == now => StageState::Now,
        _ => StageState::Ahead,
    };
    Stage::ALL
        .into_iter()
        .map(|stage| StageView { stage, word: stage.word(), state: state(stage), begun_ms: begun(stage) })
        .collect()
}

fn go(repair: &Repair, plan: &crate::procedure::plan::Plan, attempt: &Attempt, now: &Moment) -> GoView {
    let budget = gate::budget_for_go(plan, attempt);
    let read = attempt.last_temperatures().map_or(&plan.choice.temperatures, |(_, read)| read);
    let hold = gate::planned_hold(plan, attempt, read);
    let stored = budget.as_ref().ok().and_then(|budget| storing::storing(repair, attempt, budget, hold, now));
    let broken = match &budget {
        Ok(budget) => {
            let full = stored.as_ref().and_then(storing::short).filter(|_| !repair.waived(Rule::StorageShort, ""));
            times::too_short(budget).into_iter().chain(full.filter(|_| attempt.joined.is_none())).collect()
        }
        Err(broken) => vec![broken.clone()],
    };
    let age = plan.contract.temperatures_age_ms.value.as_ms();
    GoView {
        first: attempt.go.clone(),
        second: attempt.second_go.clone(),
        good_until_ms: attempt.second_go.as_ref().map(|go| go.at.moment.at_ms + age),
        budget: budget.ok(),
        storing: stored,
        broken: broken.iter().map(|one| BrokenView::of(repair, one)).collect(),
    }
}
