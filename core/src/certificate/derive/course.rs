//! What happened in each stage, as clauses: from the taps, not from the tasks.

use super::{Case, hold, stages, words};
use crate::procedure::plan::Mark;
use crate::procedure::repair::{Attempt, Go, Stamp, TestPush};
use crate::procedure::stage::Stage;
use crate::units::Length;
use crate::words::tell;

/// Returns the clauses of a stage, in the order of the work.
pub fn happened(case: &Case, attempt: &Attempt, stage: Stage) -> Vec<String> {
    let second = |at: &Stamp| case.clock.second(case.at(at));
    match stage {
        Stage::TestPush => {
            let mut found = pushed(case, &attempt.test_push);
            found.extend(attempt.go.as_ref().map(|go| go_clause(case, "cert-course-go", go)));
            found
        }
        Stage::SleeveChange if attempt.test_push.carried_from.is_some() => {
            attempt.go.as_ref().map(|go| go_clause(case, "cert-course-go", go)).into_iter().collect()
        }
        Stage::WetOut => {
            let go = attempt.second_go.as_ref().map(|go| go_clause(case, "cert-course-second_go", go));
            let joined = attempt.joined.as_ref().map(|at| tell!("cert-course-parts_joined", at = second(at)));
            go.into_iter().chain(joined).collect()
        }
        Stage::Placement => placed(case, attempt),
        Stage::Inflation => {
            let air = attempt
                .air_joined
                .as_ref()
                .map(|at| tell!("cert-course-air_line_joined", at = case.clock.minute(case.at(at))));
            let target = attempt.target.as_ref().map(|target| {
                tell!("cert-course-reached", pressure = words::bar(target.gauge_pa), at = second(&target.at))
            });
            air.into_iter().chain(target).collect()
        }
        Stage::Hold => held(case),
        Stage::Deflation => let_down(case, attempt),
        Stage::Verification => verified(case, attempt),
        Stage::Planned | Stage::Staging | Stage::SleeveChange => vec![],
    }
}

fn go_clause(case: &Case, id: &str, go: &Go) -> String {
    let (at, budget) = (case.clock.minute(go.at.moment.at_ms), &go.budget);
    let spare = words::lasting(words::down_s(budget.spare_ms));
    tell!(id, at, temperature = words::celsius(budget.warmest_mc), spare)
}

fn placed(case: &Case, attempt: &Attempt) -> Vec<String> {
    let begun =
        attempt.insertion.as_ref().map(|at| tell!("cert-course-insertion_begun", at = case.clock.minute(case.at(at))));
    let mark = attempt.at_mark.as_ref().map(|mark| {
        let late = attempt.target.as_ref().is_some_and(|target| case.at(&mark.at) > case.at(&target.at));
        let late = if late { tell!("cert-course-reported_after_target_pressure") } else { String::new() };
        let counter =
            mark.counter_um.map(|um| tell!("cert-course-by_counter", counter = words::metres(um))).unwrap_or_default();
        tell!("cert-course-at_the_mark", late, counter, at = case.clock.minute(case.at(&mark.at)))
    });
    let by_mark =
        case.plan.zip(attempt.rest()).map(|(plan, beyond)| format!("{}, {}", rods(&plan.computed.mark), past(beyond)));
    begun.into_iter().chain(mark).chain(by_mark).collect()
}

fn rods(mark: &Mark) -> String {
    match mark.whole_rods {
        0 => tell!("cert-course-mark_from_the_reading_point", path = words::metres_mm(mark.path_um)),
        rods => {
            format!(
                "{} + {}",
                words::many("cert-count-rods", usize::try_from(rods).unwrap_or(0)),
                words::mm(mark.remainder_um)
            )
        }
    }
}

fn past(beyond: Length) -> String {
    match beyond.as_um() {
        0 => tell!("cert-course-on_the_mark"),
        um if um > 0 => tell!("cert-course-past_the_mark", length = words::mm(beyond)),
        um => tell!("cert-course-short_of_the_mark", length = words::mm(Length::from_um(-um))),
    }
}

fn held(case: &Case) -> Vec<String> {
    let Some(state) = &case.hold else { return vec![] };
    let required = words::minutes(words::up_s(state.terms.required_ms));
    let lost = words::min_s(words::up_s(state.shown.not_witnessed_ms));
    let lost = (state.shown.not_witnessed_ms.as_ms() > 0).then(|| tell!("cert-course-not_witnessed_hatched", lost));
    let counted = tell!("cert-course-required", required, counted = hold::counted(state));
    [Some(counted), Some(words::many("cert-count-readings", state.readings.len())), lost]
        .into_iter()
        .flatten()
        .collect()
}

fn let_down(case: &Case, attempt: &Attempt) -> Vec<String> {
    let released = attempt.released.as_ref().map(|(at, emergency)| {
        let how = if *emergency { tell!("cert-course-emergency_release") } else { tell!("cert-course-released") };
        format!("{how} {}", case.clock.second(case.at(at)))
    });
    let sample = attempt.sample.last().map(|(at, hard)| {
        let felt = if *hard { tell!("cert-course-hard") } else { tell!("cert-course-soft") };
        tell!("cert-course-sample_from_the_manhole", felt, at = case.clock.minute(at.moment.at_ms))
    });
    sample.into_iter().chain(released).collect()
}

fn verified(case: &Case, attempt: &Attempt) -> Vec<String> {
    let minute = |at_ms: i64| case.clock.minute(at_ms);
    let cure = case.plan.and_then(|plan| stages::full_cure(case, plan, attempt));
    let cure = cure.map(|at_ms| tell!("cert-course-full_cure", at = case.clock.second(at_ms)));
    let opened = attempt.laterals.iter().map(|opened| {
        let coupon = if opened.coupon { tell!("cert-course-coupon_out") } else { tell!("cert-course-coupon_not_out") };
        tell!("cert-course-lateral_cut", coupon, at = minute(opened.at.moment.at_ms))
    });
    let test =
        attempt.tightness.as_ref().map(|(at, ..)| tell!("cert-course-tightness_test", at = minute(at.moment.at_ms)));
    cure.into_iter().chain(opened).chain(test).collect()
}

/// Returns how the test push went.
pub fn pushed(case: &Case, push: &TestPush) -> Vec<String> {
    let reached = push.reached.as_ref().map(|(at, counter)| {
        let counted = counter
            .map(|counter| tell!("cert-course-by_counter_2", counter = words::metres(counter)))
            .unwrap_or_default();
        tell!("cert-course-at_the_mark_not_inflated", counted, at = case.clock.minute(at.moment.at_ms))
    });
    let back = push.back.as_ref().map(|(at, sound)| {
        let how = if *sound { tell!("cert-course-sound") } else { tell!("cert-course-not_sound") };
        tell!("cert-course-back", how, at = case.clock.minute(at.moment.at_ms))
    });
    reached.into_iter().chain(back).collect()
}
