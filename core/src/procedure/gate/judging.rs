//! May the foreman accept what the camera shows?

use super::super::plan::Plan;
use super::super::repair::{Attempt, Repair};
use super::super::rules::{Broken, Rule, n, t};
use super::super::stage::Stage;
use super::super::times;
use super::open_tasks::{photos_there, tasks_closed};
use super::release::hold_short;
use super::{Around, standing};
use crate::shelf::contract::DoubtRule;
use crate::shelf::method::TaskKind;
use crate::shelf::sheets::Parts;

/// Returns what stands in the way of judging the attempt. A rejection needs a foreman and nothing else.
pub fn judge(repair: &Repair, accept: bool, around: &Around) -> Vec<Broken> {
    let mut found = around.needs_foreman();
    let Some((plan, attempt)) = times::plan_and_attempt(repair).filter(|(_, attempt)| attempt.ended.is_none()) else {
        found.push(standing(repair));
        return found;
    };
    if attempt.stage() != Stage::Verification {
        found.push(Broken::with(Rule::OutOfOrder, &[("stage", t(attempt.stage().word()))]));
        return found;
    }
    if accept {
        found.extend(tasks_closed(plan, attempt, &Stage::ALL));
        found.extend(not_said(attempt));
        found.extend(findings(repair, plan, attempt));
        found.extend(repair.open_departures().into_iter().map(|open| Broken {
            rule: open.rule,
            subject: open.subject.clone(),
            values: open.values.clone(),
        }));
    }
    found
}

/// Returns what the certificate can't do without and nobody has said yet.
fn not_said(attempt: &Attempt) -> Vec<Broken> {
    let rests = attempt.rest().is_some();
    let read = !attempt.readings.is_empty();
    [
        (attempt.joined.is_some(), "When the parts were joined"),
        (attempt.target.is_some(), "When target pressure was reached"),
        (attempt.released.is_some(), "When the packer was let down"),
        (rests, "Where the patch came to rest"),
        (read, "A reading of the hold"),
    ]
    .into_iter()
    .filter(|(said, _)| !said)
    .map(|(_, what)| Broken::with(Rule::NotCertain, &[("what", t(what))]).about(what))
    .collect()
}

/// Returns every departure and every never that the record of an attempt shows, waived or not, in the order of the
/// stages: what the foreman reviews.
pub fn findings(repair: &Repair, plan: &Plan, attempt: &Attempt) -> Vec<Broken> {
    let mut found = doubts(plan, attempt);
    found.extend(parts(plan, attempt));
    found.extend(mixing(plan, attempt));
    found.extend(actual_cover(plan, attempt));
    if attempt.released.is_some() {
        found.extend(hold_short(plan, attempt));
    }
    found.extend(pulled(attempt));
    found.extend(seen(repair, plan, attempt));
    found.extend(laterals(repair, plan, attempt));
    found.extend(tightness(plan, attempt));
    found.extend(photos_there(repair, plan, attempt, &Stage::ALL));
    found
}

fn doubts(plan: &Plan, attempt: &Attempt) -> Vec<Broken> {
    let as_broken = attempt.doubts.iter().map(|doubt| Broken {
        rule: doubt.rule,
        subject: "doubt".into(),
        values: doubt.values.clone(),
    });
    let new_asked = (!attempt.doubts.is_empty() && plan.contract.doubtful.value == DoubtRule::NewAttempt)
        .then(|| Broken::bare(Rule::NewAttemptAsked));
    as_broken.chain(new_asked).collect()
}

fn parts(plan: &Plan, attempt: &Attempt) -> Option<Broken> {
    let Parts::Weighed { ratio_permille, tolerance_permille, .. } = &plan.resin.parts else { return None };
    let answer = &attempt.answer(TaskKind::PartsUsed)?.answer;
    let (a, b) = (answer.number("mass_a_mg")?, answer.number("mass_b_mg")?);
    let ratio = if b > 0 { a.saturating_mul(1000) / b } else { 0 };
    // Cross-multiplied, so that no rounding decides at the edge of the tolerance.
    let off = (i128::from(a) * 1000 - i128::from(b) * i128::from(*ratio_permille)).abs() * 1000;
    let allowed = i128::from(b) * i128::from(*ratio_permille) * i128::from(*tolerance_permille);
    let values = [
        ("ratio_permille", n(ratio)),
        ("asked_permille", n(*ratio_permille)),
        ("tolerance_permille", n(*tolerance_permille)),
    ];
    (off > allowed).then(|| Broken::with(Rule::RatioOutside, &values))
}

fn mixing(plan: &Plan, attempt: &Attempt) -> Option<Broken> {
    let mixed = attempt.answer(TaskKind::Mixed)?.answer.number("mixed_ms")?;
    let least = plan.resin.mixing_least_ms.value.as_ms();
    (mixed < least).then(|| Broken::with(Rule::MixingShort, &[("mixed_ms", n(mixed)), ("least_ms", n(least))]))
}

/// Returns the departure for a patch that lies so far off that the cover is too short on one side.
///
/// Past the mark counts away from the node that the plan counts from.
pub fn actual_cover(plan: &Plan, attempt: &Attempt) -> Option<Broken> {
    let beyond = attempt.rest()?.as_um();
    let shift = match plan.choice.from_node {
        super::super::plan::FromNode::Upstream => beyond,
        super::super::plan::FromNode::Downstream => -beyond,
    };
    let cover = &plan.computed.cover;
    let least = (cover.upstream_um.as_um() - shift).min(cover.downstream_um.as_um() + shift);
    let required = cover.required_um.as_um();
    (least < required)
        .then(|| Broken::with(Rule::CentreShifted, &[("cover_um", n(least)), ("required_um", n(required))]))
}

fn pulled(attempt: &Attempt) -> Option<Broken> {
    let rods = attempt.answer(TaskKind::AllBack)?.answer.text("rope") == Some("rods");
    rods.then(|| Broken::bare(Rule::PulledByRods))
}

fn seen(repair: &Repair, plan: &Plan, attempt: &Attempt) -> Vec<Broken> {
    let answer = |kind| attempt.answer(kind).map(|answered| &answered.answer);
    let mut found = vec![];
    if let Some(edges) = answer(TaskKind::Edges)
        && (edges.text("upstream") != Some("bonded") || edges.text("downstream") != Some("bonded"))
        && edges.done()
    {
        found.push(Broken::bare(Rule::EdgeLifted));
    }
    if let Some(height) = answer(TaskKind::Folds).and_then(|folds| folds.number("height_um")) {
        let limit = plan.contract.fold_limit.value.height(repair.line.height_um).as_um();
        if height > limit {
            found.push(Broken::with(Rule::FoldHigh, &[("height_um", n(height)), ("limit_um", n(limit))]));
        }
    }
    if let Some(water) =
        answer(TaskKind::Infiltration).and_then(|seen| seen.text("seen")).filter(|seen| *seen != "none")
    {
        found.push(Broken::with(Rule::WaterComes, &[("what", t(water))]));
    }
    if let Some(surface) =
        answer(TaskKind::Surface).and_then(|seen| seen.text("surface")).filter(|seen| *seen != "sound")
    {
        found.push(Broken::with(Rule::SurfaceNotSound, &[("what", t(surface))]));
    }
    found
}

fn laterals(repair: &Repair, plan: &Plan, attempt: &Attempt) -> Vec<Broken> {
    let covered = plan.computed.covered.iter().filter_map(|index| Some((*index, repair.line.laterals.get(*index)?)));
    covered.flat_map(|(index, lateral)| lateral_rules(plan, attempt, index, lateral.station_um.as_um())).collect()
}

fn lateral_rules(plan: &Plan, attempt: &Attempt, index: usize, station_um: i64) -> Vec<Broken> {
    let subject = format!("lateral {index}");
    let broken = |rule, values: &[(&str, _)]| {
        let mut all = vec![("station_um", n(station_um))];
        all.extend_from_slice(values);
        Broken::with(rule, &all).about(subject.clone())
    };
    let Some(opened) = attempt.laterals.iter().rev().find(|opened| opened.lateral == index) else {
        return vec![broken(Rule::LateralCovered, &[])];
    };
    let (least, most) = (plan.contract.lateral_open_least_pct.value, plan.contract.lateral_open_most_pct.value);
    let mut found = vec![];
    if !(least..=most).contains(&opened.open_pct) {
        let values = [("open_pct", n(opened.open_pct)), ("least_pct", n(least)), ("most_pct", n(most))];
        found.push(broken(Rule::LateralOpening, &values));
    }
    if let Some(early) = times::before_cure(plan, attempt, &opened.at) {
        found.push(broken(Rule::LateralCutEarly, &[("early_ms", n(early))]));
    }
    if !opened.coupon {
        found.push(broken(Rule::CouponMissing, &[]));
    }
    found
}

fn tightness(plan: &Plan, attempt: &Attempt) -> Vec<Broken> {
    let asked = plan.contract.tightness_test.value;
    match &attempt.tightness {
        None if asked => vec![Broken::bare(Rule::TightnessMissing)],
        None => vec![],
        Some((at, tight, _)) => {
            let early = times::before_cure(plan, attempt, at)
                .map(|early| Broken::with(Rule::TestedEarly, &[("early_ms", n(early))]));
            let failed = (!tight).then(|| Broken::bare(Rule::NotTight));
            early.into_iter().chain(failed).collect()
        }
    }
}
