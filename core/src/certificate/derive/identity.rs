//! The identity in two columns, and the pipe in the header of later pages.

use super::{Case, place, stages, tasks, words, working_time};
use crate::certificate::content::{Kind, Pair, headings};
use crate::facts::{NoPosition, Position, PositionSource};
use crate::procedure::line::Origin;
use crate::procedure::repair::Stamp;
use crate::procedure::stage::Stage;
use crate::shelf::method::TaskKind;
use crate::units::Span;

/// Returns `SS-03107   MH 031 → MH 032`.
pub fn running_head(case: &Case) -> String {
    let line = &case.repair.line;
    format!("{}   {} → {}", words::or(&line.asset, "no key"), line.upstream.name, line.downstream.name)
}

fn pair(label: &str, value: String) -> Pair {
    Pair { label: label.into(), value }
}

/// Returns the left column: for whom, by whom, what.
pub fn left(case: &Case) -> Vec<Pair> {
    let contract = &case.repair.contract;
    vec![
        pair("Owner", words::or(&contract.owner, "not recorded").into()),
        pair("Contract", words::or(&contract.title, "not recorded").into()),
        pair(
            "Contractor",
            words::or(&words::joined([contract.contractor.clone(), contract.crew.clone()], ", "), "not recorded")
                .into(),
        ),
        pair("Repair", repair(case)),
        pair("Inspection", inspection(case)),
        pair("Working time", used(case)),
    ]
}

/// Returns the right column: where, how large, what else was going on.
pub fn right(case: &Case) -> Vec<Pair> {
    vec![
        pair("Position", position(case)),
        pair("Measured ID", inside(case)),
        pair("Flow", flow(case)),
        pair("Video", video(case)),
        pair("Hold", hold(case)),
        pair("Full cure", full_cure(case)),
    ]
}

fn repair(case: &Case) -> String {
    let number = words::or(&case.repair.number, "without a number");
    let count = case.repair.attempts.len();
    let attempt = if count == 0 { "no attempt".into() } else { format!("attempt {} of {count}", case.n()) };
    // A localised lining, as the next inspection of the pipe codes it.
    let code = if case.kind == Kind::Accepted { ", EN 13508-2 BCB B" } else { "" };
    format!("{number}, {attempt}{code}")
}

fn inspection(case: &Case) -> String {
    match &case.repair.defect.origin {
        Origin::ByHand => "none read in: the defect was entered by hand".into(),
        Origin::Inspection { file, date, .. } => format!("{}, {file}", words::or(date, "without a date")),
    }
}

fn used(case: &Case) -> String {
    let Some((plan, attempt)) = case.work() else { return "no attempt was begun".into() };
    match (working_time::used(attempt), working_time::allowed(plan, attempt)) {
        (Some(used), Some(allowed)) => format!("{} used of {}", words::min_s(used), words::min_s(allowed)),
        (None, Some(allowed)) => format!("target pressure never reached; {} allowed", words::min_s(allowed)),
        (_, None) => "the parts were never joined".into(),
    }
}

fn hold(case: &Case) -> String {
    let Some(state) = &case.hold else { return "none: target pressure never reached".into() };
    let required = words::minutes(words::up_s(state.terms.required_ms));
    format!("{}, {required} required (page @<{}>)", super::hold::counted(state), headings::HOLD)
}

fn inside(case: &Case) -> String {
    let Some((least, most)) = place::inside(case) else {
        let why = tasks::why_not(case, TaskKind::MeasuredDiameter);
        return format!("{why}; nominal DN {}", place::dn(case.repair.line.height_um));
    };
    let how = tasks::done(case, TaskKind::MeasuredDiameter).and_then(|answered| answered.answer.text("how"));
    let how = how.map(|how| format!(", {how}")).unwrap_or_default();
    format!("{}{how}", words::inside_between(least, most))
}

fn flow(case: &Case) -> String {
    let Some(flow) = tasks::done(case, TaskKind::Flow) else { return tasks::why_not(case, TaskKind::Flow) };
    let until = flow.answer.number("until_ms").map(|at| format!(", to {}", case.clock.minute(at)));
    format!("{}{}", flow.answer.text("how").unwrap_or("not said how"), until.unwrap_or_default())
}

/// Returns the videos. The record keeps no number of the one after, only that it was confirmed.
fn video(case: &Case) -> String {
    let answers = case.attempt.map(|attempt| attempt.answers.values()).into_iter().flatten();
    let mut of_video = answers.filter(|answered| {
        let named = answered.label.to_lowercase().contains("video");
        answered.stage == Stage::Verification && answered.answer.done() && named
    });
    let after = of_video.next().map_or_else(
        || "after: not recorded".into(),
        |video| format!("after: confirmed {}", case.clock.minute(video.at.moment.at_ms)),
    );
    format!("before {}; {after}", words::or(&case.repair.video_before, "not recorded"))
}

fn full_cure(case: &Case) -> String {
    let Some((plan, attempt)) = case.work() else { return "no attempt was begun".into() };
    let Some(cure) = stages::full_cure(case, plan, attempt) else { return "its clock never ran".into() };
    let cut =
        attempt.laterals.first().map(|opened| format!("lateral cut {}", case.clock.minute(opened.at.moment.at_ms)));
    let test = attempt.tightness.as_ref().map(|(at, ..)| format!("tested {}", case.clock.minute(at.moment.at_ms)));
    let flow = tasks::done(case, TaskKind::FlowRestored)
        .map(|answered| format!("flow restored {}", case.clock.minute(answered.at.moment.at_ms)));
    words::joined([Some(case.clock.second(cure)), cut, test, flow].into_iter().flatten(), ", ")
}

/// Returns the best position that the device had during the attempt, or why it had none; never a place of 0, 0.
fn position(case: &Case) -> String {
    let best = stamps(case).into_iter().filter(|stamp| accuracy(stamp).is_some()).min_by_key(|stamp| accuracy(stamp));
    match best {
        Some(stamp) => format!("{}\n{}", shown(&stamp.position), fix(case, stamp)),
        None => {
            let why = stamps(case).into_iter().map(|stamp| absent(&stamp.position)).next().unwrap_or("no entry");
            format!("no position: {why}")
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
        Position::Fix { lat_e7: 0, lon_e7: 0, .. } => "no position: the source gave 0, 0, which is none".into(),
        Position::Fix { lat_e7, lon_e7, .. } => degrees(*lat_e7, *lon_e7),
        Position::Absent { .. } => format!("no position: {}", absent(position)),
    }
}

fn absent(position: &Position) -> &'static str {
    match position {
        Position::Fix { .. } => "the source gave 0, 0, which is none",
        Position::Absent { why } => match why {
            NoPosition::NotAsked => "the device was not asked",
            NoPosition::Refused => "the device may not tell it",
            NoPosition::Unavailable => "the device could not find it",
            NoPosition::NotYet => "the device had not found it yet",
        },
    }
}

/// Returns radius, age and source of a fix, and when it was.
fn fix(case: &Case, stamp: &Stamp) -> String {
    let Position::Fix { accuracy_mm, age_ms, source, .. } = &stamp.position else { return String::new() };
    // 68 of 100 lie inside; rounded up to the metre.
    let radius = accuracy_mm
        .map_or_else(|| "accuracy not stated".into(), |mm| format!("± {} (68 %)", words::metres_whole_up(mm)));
    let source = match source {
        PositionSource::Receiver => "receiver",
        PositionSource::Browser => "browser",
        PositionSource::Typed => "typed",
    };
    let age = words::lasting(words::up_s(Span::from_ms((*age_ms).max(0))));
    format!("{radius}, {age} old, {source}, device {} at {}", stamp.device, case.clock.minute(stamp.moment.at_ms))
}

/// Returns degrees with five decimals, to the nearest: a metre or so.
pub fn degrees(lat_e7: i64, lon_e7: i64) -> String {
    let one = |e7: i64, plus: &str, minus: &str| {
        let hundred_thousandths = (e7.abs() + 50) / 100;
        format!("{}° {}", words::exact(hundred_thousandths, 100_000, 5), if e7 < 0 { minus } else { plus })
    };
    format!("{}, {}", one(lat_e7, "N", "S"), one(lon_e7, "E", "W"))
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
