//! The tasks of a stage and the photos that are asked for, answered or open.

use serde::Serialize;

use crate::procedure::answer::Answer;
use crate::procedure::gate::missing_photos;
use crate::procedure::plan::Plan;
use crate::procedure::repair::{Attempt, Repair};
use crate::procedure::stage::Stage;
use crate::shelf::method::{Field, TaskKind};
use crate::words::retold;

/// A task as a screen shows it.
#[derive(Clone, Debug, Serialize)]
pub struct TaskView {
    pub key: String,
    pub stage: Stage,
    pub kind: TaskKind,
    pub label: String,
    pub detail: String,
    pub caution: String,
    pub mandatory: bool,
    pub may_not_apply: bool,
    pub fields: Vec<Field>,
    pub answer: Option<Answer>,
    pub answered_ms: Option<i64>,
    /// Answered after its stage.
    pub late: bool,
    /// Keyed in from paper.
    pub paper: bool,
    pub carried_from: Option<u32>,
    /// Its stage is over, and it is still open.
    pub overdue: bool,
}

/// Returns every task of the method statement up to the stage that runs, in its order.
pub fn tasks(plan: &Plan, attempt: &Attempt) -> Vec<TaskView> {
    let now = attempt.stage();
    plan.method
        .tasks
        .iter()
        .filter(|task| task.stage <= now)
        .map(|task| {
            let answered = attempt.answers.get(&task.key);
            TaskView {
                key: task.key.clone(),
                stage: task.stage,
                kind: task.kind,
                label: retold(&task.label),
                detail: retold(&task.detail),
                caution: retold(&task.caution),
                mandatory: task.mandatory,
                may_not_apply: task.may_not_apply,
                fields: task.kind.told_fields(),
                answer: answered.map(|answered| answered.answer.clone()),
                answered_ms: answered.map(|answered| answered.at.moment.at_ms),
                late: answered.is_some_and(|answered| answered.late),
                paper: answered.is_some_and(|answered| answered.at.paper),
                carried_from: answered.and_then(|answered| answered.carried_from),
                overdue: answered.is_none() && task.mandatory && task.stage < now,
            }
        })
        .collect()
}

/// A photo that the contract asks for.
#[derive(Clone, Debug, Serialize)]
pub struct PhotoTask {
    pub key: String,
    pub stage: Stage,
    pub label: String,
    pub taken: bool,
}

/// Returns the photos that the contract asks for up to the stage that runs.
pub fn photos(repair: &Repair) -> Vec<PhotoTask> {
    let (Some(plan), Some(attempt)) = (&repair.plan, repair.last_attempt()) else { return vec![] };
    let asked = plan.contract.photos.iter().filter(|rule| rule.stage <= attempt.stage());
    asked
        .map(|rule| PhotoTask {
            key: rule.key.clone(),
            stage: rule.stage,
            label: retold(&rule.label),
            taken: !missing_photos(repair, plan, attempt, rule.stage).iter().any(|missing| missing.key == rule.key),
        })
        .collect()
}
