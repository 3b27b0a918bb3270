//! Tasks that nobody has answered, and photos that nobody has taken.

use super::super::answer::Answer;
use super::super::plan::Plan;
use super::super::repair::{Attempt, Repair};
use super::super::rules::{Broken, Rule, n, t};
use super::super::stage::Stage;
use crate::shelf::contract::PhotoRule;
use crate::shelf::method::Task;

/// Returns the mandatory tasks of a stage without an answer, in the order of the method statement.
pub fn open_tasks<'a>(plan: &'a Plan, attempt: &Attempt, stage: Stage) -> Vec<&'a Task> {
    plan.method.of(stage).filter(|task| task.mandatory && !attempt.answers.contains_key(&task.key)).collect()
}

/// Returns the photos of a stage that the contract asks for and that are not there.
pub fn missing_photos<'a>(repair: &Repair, plan: &'a Plan, attempt: &Attempt, stage: Stage) -> Vec<&'a PhotoRule> {
    let there =
        |rule: &PhotoRule| repair.photos.iter().any(|photo| photo.attempt == attempt.n && photo.key == rule.key);
    plan.contract.photos.iter().filter(|rule| rule.stage == stage && !there(rule)).collect()
}

/// Returns what keeps the tasks of these stages from being closed.
pub fn tasks_closed(plan: &Plan, attempt: &Attempt, stages: &[Stage]) -> Vec<Broken> {
    let open: Vec<&Task> = stages.iter().flat_map(|stage| open_tasks(plan, attempt, *stage)).collect();
    let not_right =
        attempt.answers.values().filter(|answered| stages.contains(&answered.stage)).filter_map(|answered| {
            let Answer::NotRight { because } = &answered.answer else { return None };
            let values = [("label", t(answered.label.clone())), ("because", t(because.clone()))];
            Some(Broken::with(Rule::TaskNotRight, &values).about(answered.label.clone()))
        });
    let unanswered = open.first().map(|first| {
        Broken::with(Rule::TaskOpen, &[("count", n(open.len() as i64)), ("first", t(first.label.clone()))])
    });
    unanswered.into_iter().chain(not_right).collect()
}

/// Returns the missing photos of these stages as departures, one each.
pub fn photos_there(repair: &Repair, plan: &Plan, attempt: &Attempt, stages: &[Stage]) -> Vec<Broken> {
    stages
        .iter()
        .flat_map(|stage| missing_photos(repair, plan, attempt, *stage))
        .map(|rule| Broken::with(Rule::PhotoMissing, &[("what", t(rule.label.clone()))]).about(rule.key.clone()))
        .collect()
}
