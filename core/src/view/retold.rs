//! A repair whose recorded English is said in the language of who reads; nothing is decided by it.

use crate::procedure::repair::{Attempt, Repair};
use crate::shelf::contract::PhotoRule;
use crate::shelf::method::Task;
use crate::words::{Language, reader, retold, retold_parts};

/// Returns the repair as its screens show it.
pub fn repair(recorded: &Repair) -> Repair {
    let mut shown = recorded.clone();
    if reader().language == Language::En {
        return shown;
    }
    shown.line.material = retold(&shown.line.material);
    shown.line.carries = retold(&shown.line.carries);
    shown.defect.observations.iter_mut().for_each(|seen| seen.words = retold_parts(&seen.words));
    shown.photos.iter_mut().for_each(|photo| photo.label = retold(&photo.label));
    photos(&mut shown.contract.photos);
    if let Some(plan) = &mut shown.plan {
        plan.computed.cover = plan.computed.cover.clone().told();
        plan.computed.window = plan.computed.window.clone().told();
        photos(&mut plan.contract.photos);
        plan.method.tasks.iter_mut().for_each(task);
    }
    shown.attempts.iter_mut().for_each(attempt);
    shown.corrections.iter_mut().for_each(|one| one.label = label(&one.label));
    shown
}

fn photos(rules: &mut [PhotoRule]) {
    rules.iter_mut().for_each(|rule| rule.label = retold(&rule.label));
}

fn task(task: &mut Task) {
    task.label = retold(&task.label);
    task.detail = retold(&task.detail);
    task.caution = retold(&task.caution);
}

fn attempt(attempt: &mut Attempt) {
    attempt.answers.values_mut().for_each(|answered| answered.label = retold(&answered.label));
    if let Some(ended) = &mut attempt.ended {
        ended.reasons.iter_mut().for_each(|reason| *reason = retold(reason));
        ended.in_pipe = retold(&ended.in_pipe);
    }
}

/// Returns what was corrected: a task and its field, each by its own words.
pub fn label(recorded: &str) -> String {
    match recorded.rsplit_once(": ") {
        Some((task, field)) => format!("{}: {}", retold(task), retold(field)),
        None => retold(recorded),
    }
}
