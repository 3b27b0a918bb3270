//! Which tasks were answered, and what of it belongs into the note of a stage.

use super::{Case, said, words};
use crate::procedure::answer::Answer;
use crate::procedure::repair::{Answered, Attempt};
use crate::procedure::stage::Stage;
use crate::shelf::method::TaskKind;
use crate::words::tell;

/// Says whether a task is answered again and again in the ordinary course, so that a later answer replaces nothing.
pub fn repeats(kind: TaskKind) -> bool {
    matches!(kind, TaskKind::Air | TaskKind::Temperatures | TaskKind::Battery)
}

/// Returns the answer to a kind of task in the paper's attempt, if the task was done.
pub fn done<'a>(case: &Case<'a>, kind: TaskKind) -> Option<&'a Answered> {
    case.attempt?.answer(kind).filter(|answered| answered.answer.done())
}

/// Returns why there is no value of a kind of task: nobody answered, it doesn't apply, or it was not right.
pub fn why_not(case: &Case, kind: TaskKind) -> String {
    match case.attempt.and_then(|attempt| attempt.answer(kind)).map(|answered| &answered.answer) {
        None | Some(Answer::Done { .. }) => tell!("cert-attempts-not_recorded"),
        Some(Answer::DoesNotApply { because }) => {
            tell!("cert-said-does_not_apply_because", because = words::bare(because))
        }
        Some(Answer::NotRight { because }) => tell!("cert-said-not_right_because", because = words::bare(because)),
    }
}

/// Returns the answers of a stage in the order of the method statement, each a clause.
///
/// What was only confirmed is counted, not listed; carried answers are said elsewhere.
pub fn clauses(case: &Case, attempt: &Attempt, stage: Stage) -> Vec<String> {
    let mut found: Vec<String> = vec![];
    let mut confirmed: usize = 0;
    for answered in in_order(case, attempt, stage) {
        let paper = if answered.at.paper { tell!("cert-tasks-from_paper") } else { String::new() };
        match (&answered.answer, clause(case, answered).map(|clause| format!("{clause}{paper}"))) {
            (Answer::Done { .. }, None) if answered.kind == TaskKind::Confirm => confirmed += 1,
            (Answer::Done { .. }, None) => {}
            (Answer::Done { .. }, Some(clause)) => found.push(clause),
            (Answer::DoesNotApply { because }, _) => {
                found.push(tell!(
                    "cert-tasks-does_not_apply_because",
                    label = words::small(&words::retold(&answered.label)),
                    because = words::bare(because)
                ));
            }
            (Answer::NotRight { because }, _) => {
                found.push(tell!(
                    "cert-tasks-not_right_because",
                    label = words::small(&words::retold(&answered.label)),
                    because = words::bare(because)
                ));
            }
        }
    }
    if confirmed > 0 {
        let method = case.plan.map_or_else(|| tell!("cert-tasks-the_method_statement"), |plan| plan.method.id.clone());
        found.push(tell!("cert-tasks-confirmed", count = confirmed, method));
    }
    found
}

fn in_order<'a>(case: &Case<'a>, attempt: &'a Attempt, stage: Stage) -> Vec<&'a Answered> {
    let place = |key: &str| case.plan.and_then(|plan| plan.method.tasks.iter().position(|task| task.key == key));
    let mut answers: Vec<(&String, &Answered)> = attempt
        .answers
        .iter()
        .filter(|(_, answered)| answered.stage == stage && answered.carried_from.is_none())
        .collect();
    answers.sort_by_key(|(key, _)| place(key).unwrap_or(usize::MAX));
    answers.into_iter().map(|(_, answered)| answered).collect()
}

/// Returns the clause for a task that was done; `None` for what other parts of the page say.
fn clause(case: &Case, answered: &Answered) -> Option<String> {
    let words = said::said(case, answered.kind, &answered.answer);
    let at = || case.clock.minute(answered.at.moment.at_ms);
    Some(match answered.kind {
        TaskKind::Air => tell!("cert-tasks-air_read", words, times = times(case, answered)),
        TaskKind::Temperatures => tell!("cert-tasks-temperatures", words, times = times(case, answered)),
        TaskKind::Suitability | TaskKind::Soaked => words::small(&words::retold(&answered.label)),
        TaskKind::Permit | TaskKind::Cleaned | TaskKind::ViewedAgain | TaskKind::MeasuredDiameter => words,
        TaskKind::PackerTest | TaskKind::BareEnds | TaskKind::PartsUsed | TaskKind::Mixed | TaskKind::Seam => words,
        TaskKind::AtTheMark | TaskKind::AllBack | TaskKind::PackerCondition | TaskKind::Battery => words,
        TaskKind::Edges => tell!("cert-tasks-full_turn_at_both_edges", at = at()),
        TaskKind::Waste => tell!("cert-tasks-waste", at = at()),
        TaskKind::FlowRestored => tell!("cert-identity-flow_restored", at = at()),
        TaskKind::Confirm | TaskKind::Flow | TaskKind::Lots | TaskKind::Instruments => return None,
        TaskKind::Folds | TaskKind::Infiltration | TaskKind::Surface => return None,
        TaskKind::Laterals | TaskKind::Tightness => return None,
    })
}

/// Returns every time at which a repeated task was answered.
fn times(case: &Case, answered: &Answered) -> String {
    let earlier = answered.before.iter().map(|(at, _)| at);
    let all = earlier.chain([&answered.at]).map(|at| case.clock.minute(at.moment.at_ms));
    words::joined(all, ", ")
}
