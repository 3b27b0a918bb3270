//! The nine stages: when, how long, what was done, and the bars on the time axis.

use super::{Case, course, hold, tasks, words};
use crate::certificate::content::{Bar, BarKind, Interval, Known, Stage as Row, Stages, headings};
use crate::procedure::repair::{Answered, Attempt, Stamp, TestPush};
use crate::procedure::stage::Stage;
use crate::procedure::times;
use crate::shelf::method::TaskKind;
use crate::units::Span;
use crate::words::{say, tell};

/// Returns the stages of the paper's attempt.
pub fn stages(case: &Case) -> Known<Stages> {
    let Some(attempt) = case.attempt else { return Known::Absent(tell!("cert-hold-no_attempt_was_begun")) };
    let rows = Stage::ALL.into_iter().filter(|stage| *stage != Stage::Planned).map(|stage| row(case, attempt, stage));
    Known::Known(Stages { remark: remark(case, attempt), rows: rows.collect(), carried: carried(case, attempt) })
}

fn remark(case: &Case, attempt: &Attempt) -> String {
    let day = attempt.spans.first().map_or(&case.repair.opened, |span| &span.begun);
    let count = case.repair.attempts.len();
    let other = match count {
        0 | 1 => String::new(),
        2 => tell!("cert-stages-the_other_attempt_on_page", page = headings::ATTEMPTS),
        _ => tell!("cert-stages-other_attempts_on_page", page = headings::ATTEMPTS),
    };
    let date = case.clock.date(day.moment.at_ms);
    tell!("cert-stages-times_attempt_of", date, count, other, offset = case.clock.offset(), n = attempt.n)
}

fn row(case: &Case, attempt: &Attempt, stage: Stage) -> Row {
    let carried = attempt.test_push.carried_from.filter(|_| stage == Stage::TestPush);
    if let Some(from) = carried {
        return carried_push(case, &attempt.test_push, from);
    }
    let Some(span) = attempt.spans.iter().find(|span| span.stage == stage) else {
        return not_begun(case, attempt, stage);
    };
    let last = attempt.spans.iter().rev().find(|span| span.stage == stage).unwrap_or(span);
    let (from_ms, to_ms) = (case.at(&span.begun), last.ended.as_ref().map(|ended| case.at(ended)));
    Row {
        name: word(stage),
        begun_at_ms: Known::Known(from_ms),
        lasted_ms: to_ms.map_or_else(
            || Known::Absent(tell!("cert-attempts-not_ended")),
            |to| Known::Known(words::down_s(Span::from_ms((to - from_ms).max(0)))),
        ),
        note: words::joined(clauses(case, attempt, stage).into_iter().chain(begun_on_paper(&span.begun)), "; "),
        bars: to_ms.map(|to_ms| bars(case, attempt, stage, (from_ms, to_ms))).unwrap_or_default(),
    }
}

/// Returns the name of a stage, by the message of the screens.
pub fn word(stage: Stage) -> String {
    let key = stage.word().to_lowercase().replace([' ', '-'], "_");
    say(&format!("stage-{key}"), &[])
}

fn begun_on_paper(begun: &Stamp) -> Option<String> {
    begun.paper.then(|| tell!("cert-stages-begun_by_the_time_on"))
}

fn not_begun(case: &Case, attempt: &Attempt, stage: Stage) -> Row {
    let passed = attempt.spans.iter().any(|span| span.stage > stage);
    let why = if passed { tell!("cert-stages-no_tap_a_later_stage") } else { tell!("cert-stages-not_reached") };
    Row {
        name: word(stage),
        begun_at_ms: Known::Absent(why),
        lasted_ms: Known::Absent(tell!("cert-stages-not_known")),
        note: words::joined(clauses(case, attempt, stage), "; "),
        bars: vec![],
    }
}

fn carried_push(case: &Case, push: &TestPush, from: u32) -> Row {
    let begun = push.begun.as_ref().map(|at| case.at(at));
    let ended = push.back.as_ref().map(|(at, _)| case.at(at));
    let bar = begun.zip(ended).map(|(from_ms, to_ms)| {
        let label = Some(tell!("cert-stages-in_attempt_still_valid", from));
        Bar { from_ms, to_ms, kind: BarKind::Old, label }
    });
    let lasted = begun.zip(ended).map(|(from, to)| words::down_s(Span::from_ms((to - from).max(0))));
    Row {
        name: word(Stage::TestPush),
        begun_at_ms: begun.map_or_else(|| Known::Absent(tell!("cert-stages-no_tap_when_it_began")), Known::Known),
        lasted_ms: lasted.map_or_else(|| Known::Absent(tell!("cert-stages-not_known")), Known::Known),
        note: tell!("cert-stages-in_attempt", from, what = words::joined(course::pushed(case, push), ", ")),
        bars: bar.into_iter().collect(),
    }
}

/// Returns the clauses of a stage: what happened in it, then what was answered.
fn clauses(case: &Case, attempt: &Attempt, stage: Stage) -> Vec<String> {
    let (happened, answered) = (course::happened(case, attempt, stage), tasks::clauses(case, attempt, stage));
    // The camera comes before full cure and the cutting.
    if stage == Stage::Verification { [answered, happened].concat() } else { [happened, answered].concat() }
}

/// Returns when full cure is reached, on the clock of the course.
pub fn full_cure(case: &Case, plan: &crate::procedure::plan::Plan, attempt: &Attempt) -> Option<i64> {
    let from = times::cure_counts_from(plan, attempt)?;
    Some(times::full_cure_ms(plan, attempt)? - from.moment.at_ms + case.at(from))
}

fn bars(case: &Case, attempt: &Attempt, stage: Stage, (from_ms, to_ms): (i64, i64)) -> Vec<Bar> {
    let whole = || vec![Bar { from_ms, to_ms, kind: BarKind::Ok, label: None }];
    match stage {
        Stage::Hold => held_bars(case, to_ms).unwrap_or_else(whole),
        Stage::Verification => waiting(case, attempt, from_ms, to_ms).unwrap_or_else(whole),
        _ => whole(),
    }
}

/// Returns the runs of the hold, and as not witnessed what lies between the last reading and the end of the stage.
fn held_bars(case: &Case, to_ms: i64) -> Option<Vec<Bar>> {
    let hold = hold::hold(case);
    let runs = &hold.value()?.runs;
    let last = runs.last()?.to_ms;
    let after = (to_ms > last).then_some(Bar { from_ms: last, to_ms, kind: BarKind::Gap, label: None });
    let bars = runs.iter().map(|run| {
        let kind = match run.kind {
            Interval::Counted => BarKind::Ok,
            Interval::Gap => BarKind::Gap,
            Interval::Out => BarKind::Out,
        };
        Bar { from_ms: run.from_ms, to_ms: run.to_ms, kind, label: None }
    });
    Some(bars.chain(after).collect())
}

/// Returns the verification with the wait for full cure in it: from the last act before, to the first one after.
fn waiting(case: &Case, attempt: &Attempt, from_ms: i64, to_ms: i64) -> Option<Vec<Bar>> {
    let cure = full_cure(case, case.plan?, attempt)?;
    let acts = acts(case, attempt);
    let inside = |at: &&i64| (from_ms..=to_ms).contains(*at);
    let before = acts.iter().filter(inside).filter(|at| **at < cure).max().copied().unwrap_or(from_ms);
    let after = acts.iter().filter(inside).filter(|at| **at >= cure).min().copied()?;
    let bar = |from_ms, to_ms, kind, label: Option<&str>| Bar { from_ms, to_ms, kind, label: label.map(str::to_owned) };
    let parts = [
        bar(from_ms, before, BarKind::Ok, None),
        bar(before, after, BarKind::Wait, Some(&tell!("cert-stages-waiting_for_full_cure"))),
        bar(after, to_ms, BarKind::Ok, None),
    ];
    Some(parts.into_iter().filter(|part| part.to_ms > part.from_ms).collect())
}

fn acts(case: &Case, attempt: &Attempt) -> Vec<i64> {
    let answers = attempt.answers.values().filter(|answered| answered.stage == Stage::Verification);
    let photos = case.repair.photos.iter().filter(|photo| photo.attempt == attempt.n);
    answers
        .map(|answered| &answered.at)
        .chain(photos.map(|photo| &photo.at))
        .chain(attempt.laterals.iter().map(|opened| &opened.at))
        .chain(attempt.tightness.iter().map(|(at, ..)| at))
        .map(|at| case.at(at))
        .collect()
}

/// Returns what stays valid from earlier attempts, in one sentence.
fn carried(case: &Case, attempt: &Attempt) -> Option<String> {
    let tasks = case.plan.map(|plan| plan.method.tasks.iter()).into_iter().flatten();
    let answers = tasks.filter_map(|task| attempt.answers.get(&task.key));
    let mut from: Vec<(u32, String)> = answers
        .filter(|answered| answered.stage != Stage::TestPush)
        .filter_map(|answered| Some((answered.carried_from?, short(answered))))
        .collect();
    from.extend(attempt.test_push.carried_from.map(|n| (n, tell!("cert-stages-test_push"))));
    from.sort_by_key(|(n, _)| *n);
    let sentences = from.chunk_by(|(a, _), (b, _)| a == b).filter_map(|same| {
        let (n, _) = same.first()?;
        let what = words::joined(same.iter().map(|(_, what)| what.clone()), ", ");
        Some(tell!("cert-stages-valid_from_attempt", n, what))
    });
    let text = words::joined(sentences, " ");
    let viewed = tasks::done(case, TaskKind::ViewedAgain).and_then(|viewed| viewed.answer.number("at_ms"));
    let viewed =
        viewed.map(|at| tell!("cert-stages-pipe_viewed_again", at = case.clock.minute(at))).unwrap_or_default();
    (!text.is_empty()).then(|| format!("{text}{viewed}"))
}

fn short(answered: &Answered) -> String {
    match answered.kind {
        TaskKind::Suitability => tell!("cert-stages-suitability"),
        TaskKind::Permit => tell!("cert-stages-permit"),
        TaskKind::Flow => tell!("cert-stages-flow_control"),
        TaskKind::MeasuredDiameter => tell!("cert-stages-measured_id"),
        TaskKind::Instruments => tell!("cert-stages-instruments"),
        _ => format!("“{}”", words::retold(&answered.label)),
    }
}
