//! What happened in each stage, as clauses: from the taps, not from the tasks.

use super::{Case, hold, stages, words};
use crate::procedure::plan::Mark;
use crate::procedure::repair::{Attempt, Go, Stamp, TestPush};
use crate::procedure::stage::Stage;
use crate::units::Length;

/// Returns the clauses of a stage, in the order of the work.
pub fn happened(case: &Case, attempt: &Attempt, stage: Stage) -> Vec<String> {
    let second = |at: &Stamp| case.clock.second(case.at(at));
    match stage {
        Stage::TestPush => {
            let mut found = pushed(case, &attempt.test_push);
            found.extend(attempt.go.as_ref().map(|go| go_clause(case, "go", go)));
            found
        }
        Stage::SleeveChange if attempt.test_push.carried_from.is_some() => {
            attempt.go.as_ref().map(|go| go_clause(case, "go", go)).into_iter().collect()
        }
        Stage::WetOut => {
            let go = attempt.second_go.as_ref().map(|go| go_clause(case, "second go", go));
            let joined = attempt.joined.as_ref().map(|at| format!("parts joined {}", second(at)));
            go.into_iter().chain(joined).collect()
        }
        Stage::Placement => placed(case, attempt),
        Stage::Inflation => {
            let air =
                attempt.air_joined.as_ref().map(|at| format!("air line joined {}", case.clock.minute(case.at(at))));
            let target = attempt
                .target
                .as_ref()
                .map(|target| format!("{} reached {}", words::bar(target.gauge_pa), second(&target.at)));
            air.into_iter().chain(target).collect()
        }
        Stage::Hold => held(case),
        Stage::Deflation => let_down(case, attempt),
        Stage::Verification => verified(case, attempt),
        Stage::Planned | Stage::Staging | Stage::SleeveChange => vec![],
    }
}

fn go_clause(case: &Case, name: &str, go: &Go) -> String {
    let (at, budget) = (case.clock.minute(go.at.moment.at_ms), &go.budget);
    let spare = words::lasting(words::down_s(budget.spare_ms));
    format!("{name} {at} at {}, {spare} to spare", words::celsius(budget.warmest_mc))
}

fn placed(case: &Case, attempt: &Attempt) -> Vec<String> {
    let begun = attempt.insertion.as_ref().map(|at| format!("insertion begun {}", case.clock.minute(case.at(at))));
    let mark = attempt.at_mark.as_ref().map(|mark| {
        let late = attempt.target.as_ref().is_some_and(|target| case.at(&mark.at) > case.at(&target.at));
        let late = if late { " (reported after target pressure)" } else { "" };
        let counter = mark.counter_um.map(|um| format!(", {} by counter", words::metres(um))).unwrap_or_default();
        format!("at the mark {}{late}{counter}", case.clock.minute(case.at(&mark.at)))
    });
    let by_mark =
        case.plan.zip(attempt.rest()).map(|(plan, beyond)| format!("{}, {}", rods(&plan.computed.mark), past(beyond)));
    begun.into_iter().chain(mark).chain(by_mark).collect()
}

fn rods(mark: &Mark) -> String {
    match mark.whole_rods {
        0 => format!("mark {} from the reading point", words::metres_mm(mark.path_um)),
        rods => {
            format!("{} + {}", words::many(usize::try_from(rods).unwrap_or(0), "rod"), words::mm(mark.remainder_um))
        }
    }
}

fn past(beyond: Length) -> String {
    match beyond.as_um() {
        0 => "on the mark".into(),
        um if um > 0 => format!("{} past the mark", words::mm(beyond)),
        um => format!("{} short of the mark", words::mm(Length::from_um(-um))),
    }
}

fn held(case: &Case) -> Vec<String> {
    let Some(state) = &case.hold else { return vec![] };
    let required = words::minutes(words::up_s(state.terms.required_ms));
    let lost = words::min_s(words::up_s(state.shown.not_witnessed_ms));
    let lost = (state.shown.not_witnessed_ms.as_ms() > 0).then(|| format!("{lost} not witnessed (hatched)"));
    let counted = format!("{}, {required} required", hold::counted(state));
    [Some(counted), Some(words::many(state.readings.len(), "reading")), lost].into_iter().flatten().collect()
}

fn let_down(case: &Case, attempt: &Attempt) -> Vec<String> {
    let released = attempt.released.as_ref().map(|(at, emergency)| {
        let how = if *emergency { "EMERGENCY RELEASE" } else { "released" };
        format!("{how} {}", case.clock.second(case.at(at)))
    });
    let sample = attempt.sample.last().map(|(at, hard)| {
        let felt = if *hard { "hard" } else { "SOFT" };
        format!("sample from the manhole {felt} {}", case.clock.minute(at.moment.at_ms))
    });
    sample.into_iter().chain(released).collect()
}

fn verified(case: &Case, attempt: &Attempt) -> Vec<String> {
    let minute = |at_ms: i64| case.clock.minute(at_ms);
    let cure = case.plan.and_then(|plan| stages::full_cure(case, plan, attempt));
    let cure = cure.map(|at_ms| format!("full cure {}", case.clock.second(at_ms)));
    let opened = attempt.laterals.iter().map(|opened| {
        let coupon = if opened.coupon { "coupon out" } else { "COUPON NOT OUT" };
        format!("lateral cut {}, {coupon}", minute(opened.at.moment.at_ms))
    });
    let test = attempt.tightness.as_ref().map(|(at, ..)| format!("tightness test {}", minute(at.moment.at_ms)));
    cure.into_iter().chain(opened).chain(test).collect()
}

/// Returns how the test push went.
pub fn pushed(case: &Case, push: &TestPush) -> Vec<String> {
    let reached = push.reached.as_ref().map(|(at, counter)| {
        let counted = counter.map(|counter| format!(" ({} by counter)", words::metres(counter))).unwrap_or_default();
        format!("at the mark {}{counted}, not inflated", case.clock.minute(at.moment.at_ms))
    });
    let back = push.back.as_ref().map(|(at, sound)| {
        let how = if *sound { "sound" } else { "NOT SOUND" };
        format!("back {}, {how}", case.clock.minute(at.moment.at_ms))
    });
    reached.into_iter().chain(back).collect()
}
