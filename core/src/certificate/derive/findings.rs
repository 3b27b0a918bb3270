//! What the verification found, with the evidence for each.

use super::{Case, departures, missing, said, tasks, words};
use crate::certificate::content::Finding;
use crate::procedure::answer::Answer;
use crate::procedure::repair::{Answered, Photo};
use crate::procedure::rules::Rule;
use crate::procedure::stage::Stage;
use crate::shelf::method::TaskKind;
use crate::units::Length;
use crate::words::tell;

/// Returns the findings in the order of the verification; empty without an attempt.
pub fn findings(case: &Case) -> Vec<Finding> {
    if case.work().is_none() {
        return vec![];
    }
    let mut found = vec![
        of_task(case, &tell!("cert-findings-folds"), TaskKind::Folds, &[Rule::FoldHigh], folds),
        of_task(case, &tell!("cert-findings-edges"), TaskKind::Edges, &[Rule::EdgeLifted], edges),
        of_task(case, &tell!("cert-findings-surface"), TaskKind::Surface, &[Rule::SurfaceNotSound], as_said),
        of_task(case, &tell!("cert-findings-infiltration"), TaskKind::Infiltration, &[Rule::WaterComes], infiltration),
    ];
    found.extend([sample(case), laterals(case), tightness(case)]);
    found.push(of_task(
        case,
        &tell!("cert-findings-all_back"),
        TaskKind::AllBack,
        &[Rule::PulledByRods, Rule::LeftBehind],
        as_said,
    ));
    found.push(of_task(case, &tell!("cert-findings-waste"), TaskKind::Waste, &[], as_said));
    found.push(of_task(case, &tell!("cert-findings-flow"), TaskKind::FlowRestored, &[], as_said));
    found
}

type Words = fn(&Case, &Answered) -> String;

fn of_task(case: &Case, what: &str, kind: TaskKind, rules: &[Rule], in_words: Words) -> Finding {
    let Some(answered) = tasks::done(case, kind) else {
        return finding(what, tasks::why_not(case, kind), String::new(), None);
    };
    let seen = matches!(kind, TaskKind::Folds | TaskKind::Edges | TaskKind::Surface | TaskKind::Infiltration);
    let photos = if seen { photo_numbers(case) } else { String::new() };
    let evidence = words::joined([photos, case.by(&answered.at)], "; ");
    finding(what, in_words(case, answered), evidence, broken(case, rules))
}

fn finding(what: &str, found: String, evidence: String, broken: Option<String>) -> Finding {
    let outside = broken.is_some();
    let found = broken.map_or(found.clone(), |broken| tell!("cert-findings-outside", broken, found));
    Finding { what: what.into(), found, evidence, outside }
}

/// Returns the sentence of each of these rules that the record breaks, with the departure that waived it.
fn broken(case: &Case, rules: &[Rule]) -> Option<String> {
    let (plan, attempt) = case.work()?;
    let stands = missing::stands(case.repair, plan, attempt).into_iter().filter(|broken| rules.contains(&broken.rule));
    let sentences = stands.map(|broken| {
        let waived = departures::label(case, broken.rule, &broken.subject);
        let waived = waived.map(|label| format!(" ({label})")).unwrap_or_default();
        format!("{}{waived}.", words::bare(&departures::says(broken.rule, &broken.values)))
    });
    Some(words::joined(sentences, " ")).filter(|text| !text.is_empty())
}

fn as_said(case: &Case, answered: &Answered) -> String {
    let said = said::said(case, answered.kind, &answered.answer);
    words::or(&said, &tell!("cert-findings-done")).to_owned()
}

fn folds(case: &Case, answered: &Answered) -> String {
    let limit = case.plan.map(|plan| plan.contract.fold_limit.value.height(case.repair.line.height_um));
    let limit = limit.map(|limit| tell!("cert-findings-limit", limit = words::mm(limit))).unwrap_or_default();
    match answered.answer.number("height_um") {
        Some(0) => tell!("cert-findings-none", limit),
        Some(height) => {
            let hour =
                answered.answer.number("hour").map(|hour| tell!("cert-findings-at_oclock", hour)).unwrap_or_default();
            let place = place_of_fold(answered).map(|place| format!(", {place}")).unwrap_or_default();
            tell!("cert-findings-highest", hour, place, limit, height = words::mm(Length::from_um(height)))
        }
        None => tell!("cert-findings-height_not_recorded"),
    }
}

fn place_of_fold(answered: &Answered) -> Option<String> {
    let read = |key| answered.answer.number(key).map(Length::from_um);
    let stations = || match (read("from_um"), read("to_um")) {
        (Some(from), Some(to)) => Some(words::metres_between(from, to)),
        (Some(from), None) => Some(words::metres(from)),
        (None, _) => None,
    };
    answered.answer.text("where").map(str::to_owned).or_else(stations)
}

fn edges(case: &Case, answered: &Answered) -> String {
    let bonded = |key| answered.answer.text(key) == Some("bonded");
    if bonded("upstream") && bonded("downstream") {
        tell!("cert-findings-both_bonded_all_round")
    } else {
        as_said(case, answered)
    }
}

fn infiltration(case: &Case, answered: &Answered) -> String {
    let head = case
        .plan
        .map(|plan| tell!("cert-findings-head_above_the_invert_as", head = words::metres(plan.choice.head_um)));
    format!("{}{}", as_said(case, answered), head.unwrap_or_default())
}

fn sample(case: &Case) -> Finding {
    match case.attempt.and_then(|attempt| attempt.sample.last()) {
        None => finding(&tell!("cert-findings-sample"), tell!("cert-findings-nobody_felt_one"), String::new(), None),
        Some((at, hard)) => {
            let felt = if *hard { tell!("cert-course-hard") } else { tell!("cert-course-soft") };
            let found = tell!("cert-findings-from_the_manhole_soft_would", felt);
            finding(&tell!("cert-findings-sample"), found, case.by(at), None)
        }
    }
}

fn laterals(case: &Case) -> Finding {
    let Some((plan, attempt)) = case.work() else {
        return finding(&tell!("cert-findings-laterals"), tell!("cert-findings-none_2"), String::new(), None);
    };
    let covered = super::place::covered(case.repair, plan, attempt);
    if covered.is_empty() {
        return finding(
            &tell!("cert-findings-laterals"),
            tell!("cert-findings-none_under_the_patch"),
            String::new(),
            None,
        );
    }
    let each = covered.iter().map(|index| lateral(case, *index));
    let cure = super::stages::full_cure(case, plan, attempt);
    let cure = cure.map(|at_ms| tell!("cert-findings-full_cure", at = case.clock.second(at_ms))).unwrap_or_default();
    let coupons = tasks::done(case, TaskKind::Laterals).and_then(|answered| answered.answer.number("coupons"));
    let coupons = coupons.map_or_else(
        || tell!("cert-findings-coupons", why = tasks::why_not(case, TaskKind::Laterals)),
        |count| tell!("cert-findings-coupons_recovered", count),
    );
    let found = tell!("cert-findings-covered", coupons, cure, count = covered.len(), each = words::joined(each, "; "));
    let rules = [Rule::LateralCovered, Rule::LateralOpening, Rule::LateralCutEarly, Rule::CouponMissing];
    let evidence = attempt.laterals.last().map(|opened| case.by(&opened.at));
    let evidence = words::joined([photo_numbers(case)].into_iter().chain(evidence), "; ");
    finding(&tell!("cert-findings-laterals"), found, evidence, broken(case, &rules))
}

fn lateral(case: &Case, index: usize) -> String {
    let station = case.repair.line.laterals.get(index).map(|lateral| words::metres(lateral.station_um));
    let station = station.unwrap_or_else(|| tell!("cert-findings-at_an_unknown_place"));
    let opened = case.attempt.and_then(|attempt| attempt.laterals.iter().rev().find(|opened| opened.lateral == index));
    match opened {
        None => tell!("cert-findings-not_opened", station),
        Some(opened) => {
            let coupon =
                if opened.coupon { tell!("cert-course-coupon_out") } else { tell!("cert-findings-coupon_not_out") };
            let at = case.clock.minute(opened.at.moment.at_ms);
            tell!("cert-findings-open_to_cut", station, at, coupon, percent = opened.open_pct)
        }
    }
}

fn tightness(case: &Case) -> Finding {
    let Some((plan, attempt)) = case.work() else {
        return finding(&tell!("cert-findings-air_or_water_test"), tell!("cert-findings-none_2"), String::new(), None);
    };
    let rules = [Rule::NotTight, Rule::TestedEarly, Rule::TightnessMissing];
    match &attempt.tightness {
        Some((at, tight, method)) => {
            let result = if *tight { tell!("cert-findings-tight") } else { tell!("cert-findings-not_tight") };
            let values = tasks::done(case, TaskKind::Tightness).and_then(|test| test.answer.text("values"));
            let values = values.map(|values| format!("; {values}")).unwrap_or_default();
            let found = tell!(
                "cert-findings-by",
                result,
                values,
                method = words::or(method, &tell!("cert-findings-a_method_that_nobody_named"))
            );
            finding(&tell!("cert-findings-air_or_water_test"), found, case.by(at), broken(case, &rules))
        }
        None => {
            let asked = &plan.contract.tightness_test;
            let found = match (asked.value, attempt.answer(TaskKind::Tightness).map(|answered| &answered.answer)) {
                (_, Some(Answer::DoesNotApply { because })) => {
                    tell!("cert-findings-none_because", because = words::bare(because))
                }
                (true, _) => tell!("cert-findings-none_though_the_contract_asks"),
                (false, _) => tell!("cert-findings-none_not_asked", source = asked.source),
            };
            finding(&tell!("cert-findings-air_or_water_test"), found, String::new(), broken(case, &rules))
        }
    }
}

/// Returns the numbers of the verification's photos, as the page counts them.
fn photo_numbers(case: &Case) -> String {
    let of_verification = |photo: &&Photo| photo.stage == Stage::Verification && photo.attempt == case.n();
    let all = super::photos::in_order(case);
    let numbers: Vec<String> = all
        .iter()
        .enumerate()
        .filter(|(_, photo)| of_verification(photo))
        .map(|(index, _)| (index + 1).to_string())
        .collect();
    match numbers.len() {
        0 => tell!("cert-findings-no_photo"),
        1 => tell!("cert-findings-photo", numbers = numbers.join("")),
        _ => tell!("cert-findings-photos", numbers = numbers.join(", ")),
    }
}
