//! The resin: working time, budget, hold, full cure, parts, mixing.

use super::super::{Case, hold, stages, tasks, words, working_time};
use super::{Margin, limited, row, sourced};
use crate::certificate::content::Check;
use crate::procedure::plan::Plan;
use crate::procedure::repair::{Attempt, Stamp};
use crate::procedure::times;
use crate::shelf::method::TaskKind;
use crate::shelf::sheets::{CountsFrom, Parts};
use crate::units::{Mass, Span};
use crate::words::tell;

/// Returns the rows about the resin.
pub fn rows(case: &Case) -> Vec<Check> {
    let Some((plan, attempt)) = case.work() else { return vec![] };
    let rows = [
        second_go(case, plan, attempt),
        age_at_joining(plan, attempt),
        used(plan, attempt),
        held(case, plan),
        cured(case, plan, attempt),
        parts(case, plan),
        mixing(case, plan),
    ];
    rows.into_iter().flatten().collect()
}

fn second_go(case: &Case, plan: &Plan, attempt: &Attempt) -> Option<Check> {
    let go = attempt.second_go.as_ref()?;
    let budget = &go.budget;
    let minutes = |span: Span| words::lasting(words::up_s(span));
    let inputs = format!(
        "{} − {} − {} × {} % − {} − {}",
        words::lasting(words::down_s(budget.working_ms)),
        minutes(budget.wet_out_ms),
        minutes(budget.push_ms),
        plan.contract.loading_factor_pct.value,
        minutes(budget.connect_ms),
        minutes(budget.margin_ms),
    );
    let formula = sourced(&tell!("cert-resin-w_wet_out_push_loading"), &plan.contract.margin_ms.source);
    let name = tell!("cert-resin-time_budget_at", at = case.clock.minute(go.at.moment.at_ms));
    let result = row(&name, formula, inputs, words::lasting(words::down_s(budget.spare_ms)));
    Some(limited(result, "≥ 0 s".into(), Margin::of_span(budget.spare_ms)))
}

fn age_at_joining(plan: &Plan, attempt: &Attempt) -> Option<Check> {
    let joined = attempt.joined.as_ref()?;
    let most = plan.contract.temperatures_age_ms.value;
    let formula = sourced(&tell!("cert-resin-joined_second_go"), &plan.contract.temperatures_age_ms.source);
    let name = tell!("cert-resin-age_of_temperatures");
    let limit = format!("≤ {}", words::lasting(most));
    let Some(go) = &attempt.second_go else {
        let none = row(&name, formula, tell!("cert-resin-no_second_go"), tell!("cert-stages-not_known"));
        return Some(limited(none, limit, Margin::Unknown(tell!("cert-resin-no_second_go"))));
    };
    let age = Span::from_ms(times::between(&go.at.moment, &joined.moment));
    let age_row = row(&name, formula, String::new(), words::lasting(words::up_s(age)));
    Some(limited(age_row, limit, Margin::of_span(Span::from_ms(most.as_ms() - age.as_ms()))))
}

fn used(plan: &Plan, attempt: &Attempt) -> Option<Check> {
    let allowed = working_time::allowed(plan, attempt)?;
    let formula = sourced(&tell!("cert-resin-ln_t_against_1_t"), &plan.resin.working_time.source);
    let inputs = working_time::governed_by(plan, attempt);
    let used =
        working_time::used(attempt).map_or_else(|| tell!("cert-resin-target_pressure_never_reached"), words::min_s);
    let margin = match working_time::margin(plan, attempt) {
        Some(left) => Margin::of_span(left),
        None => Margin::Unknown(tell!("cert-resin-target_pressure_never_reached")),
    };
    Some(limited(
        row(&tell!("cert-heading-working_time"), formula, inputs, used),
        format!("≤ {}", words::min_s(allowed)),
        margin,
    ))
}

fn held(case: &Case, plan: &Plan) -> Option<Check> {
    let state = case.hold.as_ref()?;
    let formula = sourced(&tell!("cert-resin-ln_t_against_1_t_2"), &plan.resin.hold.source);
    let at = state
        .coldest_at
        .as_ref()
        .map(|stamp| tell!("cert-resin-at", at = case.clock.second(case.at(stamp))))
        .unwrap_or_default();
    let cold = words::celsius(state.coldest);
    let inputs = if state.outside_sheet.is_some() {
        tell!("cert-resin-colder_than_the_table_its", cold, at)
    } else {
        format!("{cold}{at}")
    };
    let required = state.terms.required_ms;
    let left = Span::from_ms(state.shown.counted_ms.as_ms() - required.as_ms());
    let counted = hold::counted_bare(state);
    let limit = format!("≥ {}", words::minutes(words::up_s(required)));
    Some(limited(row(&tell!("cert-resin-hold_counted"), formula, inputs, counted), limit, Margin::of_span(left)))
}

/// Returns the first act that full cure must come before: a lateral cut, or an air or water test.
fn first_act(attempt: &Attempt) -> Option<(String, &Stamp)> {
    let cuts = attempt.laterals.iter().map(|opened| (tell!("cert-resin-first_cut"), &opened.at));
    let tests = attempt.tightness.iter().map(|(at, ..)| (tell!("cert-resin-test"), at));
    cuts.chain(tests).min_by_key(|(_, at)| at.moment.at_ms)
}

fn cured(case: &Case, plan: &Plan, attempt: &Attempt) -> Option<Check> {
    let from = times::cure_counts_from(plan, attempt)?;
    let cure = Span::from_ms(stages::full_cure(case, plan, attempt)? - case.at(from));
    let begins = match plan.resin.cure_counts_from() {
        CountsFrom::Joined => tell!("cert-resin-joined"),
        CountsFrom::TargetPressure => tell!("cert-sheets-target_pressure"),
    };
    let formula = sourced(&tell!("cert-resin-first_cut_or_test_by", begins), &plan.resin.full_cure.source);
    let begun = format!("{begins} {}", case.clock.second(case.at(from)));
    let limit = format!("≥ {}", words::lasting(words::up_s(cure)));
    let Some((what, at)) = first_act(attempt) else {
        let none = row(&tell!("cert-sheets-full_cure"), formula, begun, tell!("cert-resin-nothing_cut_or_tested"));
        return Some(limited(none, limit, Margin::Unknown(String::new())));
    };
    let lasted = Span::from_ms(times::between(&from.moment, &at.moment));
    let inputs = format!("{begun}, {what} {}", case.clock.second(case.at(at)));
    let left = Span::from_ms(lasted.as_ms() - cure.as_ms());
    Some(limited(
        row(&tell!("cert-sheets-full_cure"), formula, inputs, words::lasting(words::down_s(lasted))),
        limit,
        Margin::of_span(left),
    ))
}

fn parts(case: &Case, plan: &Plan) -> Option<Check> {
    let used = tasks::done(case, TaskKind::PartsUsed).map(|answered| &answered.answer);
    match &plan.resin.parts {
        Parts::Containers { kit, source, .. } => {
            let how = used.and_then(|used| used.text("how"));
            let result = if how == Some("containers") {
                tell!("cert-resin-both_emptied")
            } else {
                tell!("cert-resin-not_recorded_as_emptied")
            };
            Some(row(
                &tell!("cert-sheets-parts_a_and_b"),
                sourced(&tell!("cert-resin-whole_containers_a_into_b"), source),
                kit.clone(),
                result,
            ))
        }
        Parts::Weighed { ratio_permille, tolerance_permille, source } => {
            let formula = sourced(&tell!("cert-resin-mass_a_mass_b"), source);
            let limit =
                format!("{} ± {} %", words::exact(*ratio_permille, 1_000, 2), words::exact(*tolerance_permille, 10, 0));
            let masses = used.and_then(|used| used.number("mass_a_mg").zip(used.number("mass_b_mg")));
            let Some((a, b)) = masses.filter(|(_, b)| *b > 0) else {
                let why = tell!("cert-resin-masses_not_recorded");
                let none = row(&tell!("cert-resin-ratio_a_b"), formula, why.clone(), tell!("cert-stages-not_known"));
                return Some(limited(none, limit, Margin::Unknown(why)));
            };
            let inputs = format!("{}, {}", words::grams(Mass::from_mg(a)), words::grams(Mass::from_mg(b)));
            let result = format!("{} : 1", words::exact(thousandths(a, b), 1_000, 3));
            let off = off_permille(a, b, *ratio_permille);
            let left = i128::from(*tolerance_permille) - off;
            let percent = |permille: i128| format!("{} %", words::exact(permille as i64, 10, 1));
            let margin = if left >= 0 { Margin::Left(percent(left)) } else { Margin::Fails(percent(-left)) };
            Some(limited(row(&tell!("cert-resin-ratio_a_b"), formula, inputs, result), limit, margin))
        }
    }
}

/// Returns a ratio in thousandths, to the nearest.
fn thousandths(a: i64, b: i64) -> i64 {
    let (a, b) = (i128::from(a), i128::from(b));
    ((a * 1_000 + b / 2) / b) as i64
}

/// Returns how far a ratio is off the asked one, in thousandths of it, rounded up.
fn off_permille(a: i64, b: i64, asked_permille: i64) -> i128 {
    let (a, b, asked) = (i128::from(a), i128::from(b), i128::from(asked_permille).max(1));
    let off = (a * 1_000 - b * asked).abs() * 1_000;
    let of = b * asked;
    (off + of - 1) / of
}

fn mixing(case: &Case, plan: &Plan) -> Option<Check> {
    let least = &plan.resin.mixing_least_ms;
    let formula = sourced(&tell!("cert-resin-stopwatch"), &least.source);
    let limit = format!("≥ {}", words::lasting(least.value));
    let mixed = tasks::done(case, TaskKind::Mixed).and_then(|answered| answered.answer.number("mixed_ms"));
    let Some(mixed) = mixed else {
        let why = tasks::why_not(case, TaskKind::Mixed);
        return Some(limited(
            row(&tell!("cert-resin-mixing_time"), formula, String::new(), why),
            limit,
            Margin::Unknown(String::new()),
        ));
    };
    let result = row(&tell!("cert-resin-mixing_time"), formula, String::new(), words::lasting(Span::from_ms(mixed)));
    Some(limited(result, limit, Margin::of_span(Span::from_ms(mixed - least.value.as_ms()))))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_ratio_is_off_by_no_less_than_it_is() {
        // 812 : 406 is exact; 830 : 406 is 2.2 % too much A (830/812 = 1.02217), shown as 2.3 %.
        assert_eq!(off_permille(812_000, 406_000, 2_000), 0);
        assert_eq!(off_permille(830_000, 406_000, 2_000), 23);
        assert_eq!(thousandths(830_000, 406_000), 2_044);
    }
}
