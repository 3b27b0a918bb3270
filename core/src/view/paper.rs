//! The job on paper: every task of the method statement with its fields, for when there is no device.

use serde::Serialize;

use crate::procedure::plan::Plan;
use crate::procedure::stage::Stage;
use crate::shelf::contract::PhotoRule;
use crate::shelf::method::Field;
use crate::words::retold;

/// A task as it is printed, to be filled in by hand.
#[derive(Clone, Debug, Serialize)]
pub struct PaperTask {
    pub stage: Stage,
    pub label: String,
    pub detail: String,
    pub caution: String,
    pub mandatory: bool,
    pub may_not_apply: bool,
    pub fields: Vec<Field>,
}

/// What a repair's sheet of paper asks for: the same tasks, fields and photos as the screens.
#[derive(Clone, Debug, Serialize)]
pub struct Paper {
    pub tasks: Vec<PaperTask>,
    pub photos: Vec<PhotoRule>,
}

/// Returns every task of the method statement, of all stages and in its order, and every photo of the contract.
pub fn paper(plan: &Plan) -> Paper {
    let tasks = plan.method.tasks.iter().map(|task| PaperTask {
        stage: task.stage,
        label: retold(&task.label),
        detail: retold(&task.detail),
        caution: retold(&task.caution),
        mandatory: task.mandatory,
        may_not_apply: task.may_not_apply,
        fields: task.kind.told_fields(),
    });
    let photos = plan.contract.photos.iter().map(|one| PhotoRule { label: retold(&one.label), ..one.clone() });
    Paper { tasks: tasks.collect(), photos: photos.collect() }
}
