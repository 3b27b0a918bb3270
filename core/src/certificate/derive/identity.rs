//! The identity in two columns, and the pipe in the header of later pages.

use super::{Case, place, stages, tasks, words, working_time};
use crate::certificate::content::{Kind, Pair, headings};
use crate::facts::{NoPosition, Position, PositionSource};
use crate::procedure::line::Origin;
use crate::procedure::repair::Stamp;
use crate::procedure::stage::Stage;
use crate::shelf::method::TaskKind;
use crate::units::Span;
use crate::words::tell;

/// Returns `SS-03107   MH 031 → MH 032`.
pub fn running_head(case: &Case) -> String {
    let line = &case.repair.line;
    format!(
        "{}   {} → {}",
        words::or(&line.asset, &tell!("cert-identity-no_key")),
        line.upstream.name,
        line.downstream.name
    )
}

fn pair(label: &str, value: String) -> Pair {
    Pair { label: label.into(), value }
}

/// Returns the left column: for whom, by whom, what.
pub fn left(case: &Case) -> Vec<Pair> {
    let contract = &case.repair.contract;
    vec![
        pair(&tell!("cert-identity-owner"), words::or(&contract.owner, &tell!("cert-attempts-not_recorded")).into()),
        pair(&tell!("cert-identity-contract"), words::or(&contract.title, &tell!("cert-attempts-not_recorded")).into()),
        pair(
            &tell!("cert-identity-contractor"),
            words::or(
                &words::joined([contract.contractor.clone(), contract.crew.clone()], ", "),
                &tell!("cert-attempts-not_recorded"),
            )
            .into(),
        ),
        pair(&tell!("cert-identity-repair"), repair(case)),
        pair(&tell!("cert-identity-inspection"), inspection(case)),
        pair(&tell!("cert-identity-working_time"), used(case)),
    ]
}

/// Returns the right column: where, how large, what else was going on.
pub fn right(case: &Case) -> Vec<Pair> {
    vec![
        pair(&tell!("cert-identity-position"), position(case)),
        pair(&tell!("cert-identity-measured_id"), inside(case)),
        pair(&tell!("cert-findings-flow"), flow(case)),
        pair(&tell!("cert-identity-video"), video(case)),
        pair(&tell!("cert-identity-hold"), hold(case)),
        pair(&tell!("cert-identity-full_cure"), full_cure(case)),
    ]
}

fn repair(case: &Case) -> String {
    let number = words::or(&case.repair.number, &tell!("cert-identity-without_a_number")).to_owned();
    let count = case.repair.attempts.len();
    let attempt = if count == 0 {
        tell!("cert-identity-no_attempt")
    } else {
        tell!("cert-identity-attempt_of", count, n = case.n())
    };
    // A localised lining, as the next inspection of the pipe codes it.
    let code = if case.kind == Kind::Accepted { ", EN 13508-2 BCB B" } else { "" };
    format!("{number}, {attempt}{code}")
}

fn inspection(case: &Case) -> String {
    match &case.repair.defect.origin {
        Origin::ByHand => tell!("cert-identity-none_read_in_the_defect"),
        Origin::Inspection { file, date, .. } => {
            format!("{}, {file}", words::day(words::or(date, &tell!("cert-identity-without_a_date"))))
        }
    }
}

fn used(case: &Case) -> String {
    let Some((plan, attempt)) = case.work() else { return tell!("cert-hold-no_attempt_was_begun") };
    match (working_time::used(attempt), working_time::allowed(plan, attempt)) {
        (Some(used), Some(allowed)) => {
            tell!("cert-identity-used_of", used = words::min_s(used), allowed = words::min_s(allowed))
        }
        (None, Some(allowed)) => {
            tell!("cert-identity-target_pressure_never_reached_allowed", allowed = words::min_s(allowed))
        }
        (_, None) => tell!("cert-hold-the_parts_were_never_joined"),
    }
}

fn hold(case: &Case) -> String {
    let Some(state) = &case.hold else { return tell!("cert-identity-none_target_pressure_never_reached") };
    let required = words::minutes(words::up_s(state.terms.required_ms));
    tell!("cert-identity-required_page", required, counted = super::hold::counted(state), page = headings::HOLD)
}

fn inside(case: &Case) -> String {
    let Some((least, most)) = place::inside(case) else {
        let why = tasks::why_not(case, TaskKind::MeasuredDiameter);
        return tell!("cert-identity-nominal_dn", why, dn = place::dn(case.repair.line.height_um));
    };
    let how = tasks::done(case, TaskKind::MeasuredDiameter).and_then(|answered| answered.answer.text("how"));
    let how = how.map(|how| format!(", {how}")).unwrap_or_default();
    format!("{}{how}", words::inside_between(least, most))
}

fn flow(case: &Case) -> String {
    let Some(flow) = tasks::done(case, TaskKind::Flow) else { return tasks::why_not(case, TaskKind::Flow) };
    let until = flow.answer.number("until_ms").map(|at| tell!("cert-identity-to", at = case.clock.minute(at)));
    format!("{}{}", flow.answer.text("how").unwrap_or(&tell!("cert-identity-not_said_how")), until.unwrap_or_default())
}

/// Returns the videos. The record keeps no number of the one after, only that it was confirmed.
fn video(case: &Case) -> String {
    let answers = case.attempt.map(|attempt| attempt.answers.values()).into_iter().flatten();
    let mut of_video = answers.filter(|answered| {
        let named = answered.label.to_lowercase().contains("video");
        answered.stage == Stage::Verification && answered.answer.done() && named
    });
    let after = of_video.next().map_or_else(
        || tell!("cert-identity-after_not_recorded"),
        |video| tell!("cert-identity-after_confirmed", at = case.clock.minute(video.at.moment.at_ms)),
    );
    tell!(
        "cert-identity-before",
        after,
        before = words::or(&case.repair.video_before, &tell!("cert-attempts-not_recorded"))
    )
}

fn full_cure(case: &Case) -> String {
    let Some((plan, attempt)) = case.work() else { return tell!("cert-hold-no_attempt_was_begun") };
    let Some(cure) = stages::full_cure(case, plan, attempt) else { return tell!("cert-identity-its_clock_never_ran") };
    let cut = attempt
        .laterals
        .first()
        .map(|opened| tell!("cert-identity-lateral_cut", at = case.clock.minute(opened.at.moment.at_ms)));
    let test = attempt
        .tightness
        .as_ref()
        .map(|(at, ..)| tell!("cert-identity-tested", at = case.clock.minute(at.moment.at_ms)));
    let flow = tasks::done(case, TaskKind::FlowRestored)
        .map(|answered| tell!("cert-identity-flow_restored", at = case.clock.minute(answered.at.moment.at_ms)));
    words::joined([Some(case.clock.second(cure)), cut, test, flow].into_iter().flatten(), ", ")
}

/// Returns the best position that the device had during the attempt, or why it had none; never a place of 0, 0.
fn position(case: &Case) -> String {
    let best = stamps(case).into_iter().filter(|stamp| accuracy(stamp).is_some()).min_by_key(|stamp| accuracy(stamp));
    match best {
        Some(stamp) => format!("{}\n{}", shown(&stamp.position), fix(case, stamp)),
        None => {
            let why = stamps(case)
                .into_iter()
                .map(|stamp| absent(&stamp.position))
                .next()
                .unwrap_or_else(|| tell!("cert-identity-no_entry"));
            tell!("cert-identity-no_position", why)
        }
    }
}

/// Returns the entries of the attempt in the order of the work; without an attempt, the opening of the repair.
fn stamps<'a>(case: &Case<'a>) -> Vec<&'a Stamp> {
    let Some(attempt) = case.attempt else { return vec![&case.repair.opened] };
    let spans = attempt.spans.iter().map(|span| &span.begun);
    let photos = case.repair.photos.iter().filter(|photo| photo.attempt == attempt.n).map(|photo| &photo.at);
    spans.chain(attempt.joined.as_ref()).chain(photos).collect()
}

/// Returns a measure of how good a position is: its radius in millimetres, the largest where none is stated.
fn accuracy(stamp: &Stamp) -> Option<i64> {
    match &stamp.position {
        Position::Fix { lat_e7: 0, lon_e7: 0, .. } | Position::Absent { .. } => None,
        Position::Fix { accuracy_mm, .. } => Some(accuracy_mm.unwrap_or(i64::MAX)),
    }
}

/// Returns a position in degrees, or why there is none.
pub fn shown(position: &Position) -> String {
    match position {
        Position::Fix { lat_e7: 0, lon_e7: 0, .. } => tell!("cert-identity-no_position_the_source_gave"),
        Position::Fix { lat_e7, lon_e7, .. } => degrees(*lat_e7, *lon_e7),
        Position::Absent { .. } => tell!("cert-identity-no_position", why = absent(position)),
    }
}

fn absent(position: &Position) -> String {
    match position {
        Position::Fix { .. } => tell!("cert-identity-the_source_gave_0_0"),
        Position::Absent { why } => match why {
            NoPosition::NotAsked => tell!("cert-identity-the_device_was_not_asked"),
            NoPosition::Refused => tell!("cert-identity-the_device_may_not_tell"),
            NoPosition::Unavailable => tell!("cert-identity-the_device_could_not_find"),
            NoPosition::NotYet => tell!("cert-identity-the_device_had_not_found"),
        },
    }
}

/// Returns radius, age and source of a fix, and when it was.
fn fix(case: &Case, stamp: &Stamp) -> String {
    let Position::Fix { accuracy_mm, age_ms, source, .. } = &stamp.position else { return String::new() };
    // 68 of 100 lie inside; rounded up to the metre.
    let radius = accuracy_mm.map_or_else(
        || tell!("cert-identity-accuracy_not_stated"),
        |mm| format!("± {} (68 %)", words::metres_whole_up(mm)),
    );
    let source = match source {
        PositionSource::Receiver => tell!("cert-identity-receiver"),
        PositionSource::Browser => tell!("cert-identity-browser"),
        PositionSource::Typed => tell!("cert-identity-typed"),
    };
    let age = words::lasting(words::up_s(Span::from_ms((*age_ms).max(0))));
    tell!(
        "cert-identity-old_device_at",
        radius,
        age,
        source,
        device = stamp.device,
        at = case.clock.minute(stamp.moment.at_ms)
    )
}

/// Returns degrees with five decimals, to the nearest: a metre or so.
pub fn degrees(lat_e7: i64, lon_e7: i64) -> String {
    let one = |e7: i64, plus: String, minus: String| {
        let hundred_thousandths = (e7.abs() + 50) / 100;
        format!("{}° {}", words::exact(hundred_thousandths, 100_000, 5), if e7 < 0 { minus } else { plus })
    };
    format!(
        "{}, {}",
        one(lat_e7, tell!("cert-identity-north"), tell!("cert-identity-south")),
        one(lon_e7, tell!("cert-identity-east"), tell!("cert-identity-west"))
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_position_is_shown_in_degrees_and_nought_is_none() {
        let fix = |lat_e7, lon_e7| Position::Fix {
            lat_e7,
            lon_e7,
            accuracy_mm: None,
            age_ms: 0,
            source: PositionSource::Receiver,
        };
        assert_eq!(shown(&fix(464_120_700, -248_853_000)), "46.41207° N, 24.88530° W");
        assert_eq!(shown(&fix(0, 0)), "no position: the source gave 0, 0, which is none");
    }
}
