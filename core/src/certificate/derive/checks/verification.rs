//! The verification: fold height, and how far each covered lateral is open again.

use super::super::{Case, departures, place, sheets, tasks, words};
use super::{Margin, limited, row, sourced};
use crate::certificate::content::Check;
use crate::procedure::plan::Plan;
use crate::procedure::rules::Rule;
use crate::shelf::method::TaskKind;
use crate::units::Length;
use crate::words::tell;

/// Returns the rows about what the camera saw.
pub fn rows(case: &Case) -> Vec<Check> {
    let Some((plan, attempt)) = case.work() else { return vec![] };
    if !case.patch_was_set() {
        return vec![];
    }
    let covered = place::covered(case.repair, plan, attempt);
    let laterals = covered.into_iter().filter_map(|index| lateral(case, plan, index));
    std::iter::once(fold(case, plan)).chain(laterals).collect()
}

fn fold(case: &Case, plan: &Plan) -> Check {
    let nominal = case.repair.line.height_um;
    let limit = plan.contract.fold_limit.value.height(nominal);
    let formula = sourced(&sheets::fold(plan.contract.fold_limit.value), &plan.contract.fold_limit.source);
    let inputs = format!("DN {}", place::dn(nominal));
    let limited_to = format!("≤ {}", words::mm(limit));
    let height = tasks::done(case, TaskKind::Folds).and_then(|folds| folds.answer.number("height_um"));
    let Some(height) = height.map(Length::from_um) else {
        let none = row(&tell!("cert-verification-fold_height"), formula, inputs, tasks::why_not(case, TaskKind::Folds));
        return limited(none, limited_to, Margin::Unknown(String::new()));
    };
    let left = Length::from_um(limit.as_um() - height.as_um());
    limited(
        row(&tell!("cert-verification-fold_height"), formula, inputs, words::mm(height)),
        limited_to,
        Margin::of_length(left),
    )
}

fn lateral(case: &Case, plan: &Plan, index: usize) -> Option<Check> {
    let lateral = case.repair.line.laterals.get(index)?;
    let (least, most) = (&plan.contract.lateral_open_least_pct, plan.contract.lateral_open_most_pct.value);
    let name = tell!("cert-verification-lateral", at = words::metres(lateral.station_um));
    let formula = sourced(&tell!("cert-verification-open_area_bore_by_eye"), &least.source);
    let inputs = tell!("cert-verification-dn_oclock", dn = place::dn(lateral.diameter_um), hour = lateral.clock);
    let limit = tell!("cert-verification-to", most, least = least.value);
    let opened = case.attempt?.laterals.iter().rev().find(|opened| opened.lateral == index);
    let Some(open) = opened.map(|opened| opened.open_pct) else {
        let none = row(&name, formula, inputs, tell!("cert-verification-not_opened"));
        return Some(Check {
            fails: true,
            ..limited(none, limit, Margin::Unknown(tell!("cert-verification-fails_not_opened")))
        });
    };
    let (above, below) = (open - least.value, most - open);
    let margin = if above >= 0 && below >= 0 {
        Margin::Left(format!("{above} %; {below} %"))
    } else {
        let waived = departures::label(case, Rule::LateralOpening, &format!("lateral {index}"));
        let waived = waived.map(|label| format!(": {label}")).unwrap_or_default();
        Margin::Fails(format!("{} %{waived}", above.min(below).abs()))
    };
    Some(limited(row(&name, formula, inputs, format!("{open} %")), limit, margin))
}
