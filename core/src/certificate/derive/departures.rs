//! The rules that the foreman waived, each with its values, its clause, the reason, who and when.

use super::{Case, missing, words};
use crate::certificate::content::Departure;
use crate::procedure::plan::Plan;
use crate::procedure::repair::Waiver;
use crate::procedure::rules::{Broken, Rule, RuleValues};
use crate::words::tell;

/// Returns the departures of the attempt and of its plan, in the order in which they were waived.
pub fn departures(case: &Case) -> Vec<Departure> {
    let numbered = waivers(case).into_iter().enumerate();
    numbered.map(|(index, waiver)| departure(case, waiver, index + 1)).collect()
}

/// Returns the waivers that count: the last of each rule and subject in this attempt; of the plan, from any attempt.
pub fn waivers<'a>(case: &Case<'a>) -> Vec<&'a Waiver> {
    let n = case.n().max(1);
    let all = &case.repair.waivers;
    let of_plan = case.plan.map(crate::procedure::gate::plan_breaks).unwrap_or_default();
    let about_plan = |waiver: &Waiver| of_plan.iter().any(|broken| same(waiver, broken.rule, &broken.subject));
    let counts = |waiver: &Waiver| waiver.attempt == n || about_plan(waiver);
    let replaced = |at: usize, waiver: &Waiver| {
        all.iter().skip(at + 1).any(|later| same(later, waiver.rule, &waiver.subject) && counts(later))
    };
    let kept = all.iter().enumerate().filter(|(at, waiver)| counts(waiver) && !replaced(*at, waiver));
    kept.map(|(_, waiver)| waiver).collect()
}

fn same(waiver: &Waiver, rule: Rule, subject: &str) -> bool {
    waiver.rule == rule && waiver.subject == subject
}

/// Returns the label of the departure that a rule was waived by.
pub fn label(case: &Case, rule: Rule, subject: &str) -> Option<String> {
    let at = waivers(case).iter().position(|waiver| same(waiver, rule, subject))?;
    Some(format!("D{}", at + 1))
}

fn departure(case: &Case, waiver: &Waiver, number: usize) -> Departure {
    let rule = says(waiver.rule, &values(case, waiver));
    Departure {
        label: format!("D{number}"),
        short: short(&rule),
        rule: with_clause(case, &rule, waiver.rule),
        reason: format!("{} {}", words::stopped(&words::capital(&waiver.reason)), waived_by(case, waiver)),
    }
}

fn waived_by(case: &Case, waiver: &Waiver) -> String {
    let foreman = case.name(Some(&waiver.foreman));
    let typed = waiver.at.person.as_deref().filter(|person| *person != waiver.foreman);
    let by =
        typed.map_or_else(String::new, |person| tell!("cert-departures-entered_by", name = case.name(Some(person))));
    tell!("cert-departures-waived_by_foreman", foreman, by, at = case.clock.minute(waiver.at.moment.at_ms))
}

/// Returns the values that were waived; where none were kept, those that the record shows.
fn values(case: &Case, waiver: &Waiver) -> RuleValues {
    if !waiver.values.is_empty() {
        return waiver.values.clone();
    }
    let Some((plan, attempt)) = case.work() else { return RuleValues::new() };
    let found = missing::stands(case.repair, plan, attempt);
    let same = found.into_iter().find(|broken| same(waiver, broken.rule, &broken.subject));
    same.map(|broken| broken.values).unwrap_or_default()
}

/// Returns the sentence of a rule; a value that nobody kept is said to be missing.
pub fn says(rule: Rule, values: &RuleValues) -> String {
    let mut text = rule.says(values);
    while let Some((before, rest)) = text.split_once('{') {
        let after = rest.split_once('}').map_or("", |(_, after)| after);
        text = format!("{before}{}{after}", tell!("cert-departures-value_not_kept"));
    }
    text
}

/// Returns the sentence of a broken rule with its clause.
pub fn sentence(case: &Case, broken: &Broken) -> String {
    with_clause(case, &words::capital(&says(broken.rule, &broken.values)), broken.rule)
}

/// Returns a sentence with the clause of its limit; of the repair's own contract, without its number.
fn with_clause(case: &Case, sentence: &str, rule: Rule) -> String {
    let Some((plan, clause)) = case.plan.and_then(|plan| Some((plan, clause(plan, rule)?))) else {
        return words::stopped(sentence);
    };
    let own = clause.strip_prefix(&format!("Contract {}, ", plan.contract.id));
    let clause = own.map_or(clause.to_owned(), |clause| tell!("cert-departures-contract", clause));
    format!("{} ({clause}).", words::bare(sentence))
}

/// Returns the first clause of a sentence, as it can stand among others.
pub fn short(sentence: &str) -> String {
    let first = sentence.split([';', ':']).next().unwrap_or(sentence);
    let whole = if first.split_whitespace().count() < 5 && sentence.contains(':') { sentence } else { first };
    let text = words::small(words::bare(whole)).replace(" h 00 min", " h");
    let articles = tell!("cert-departures-articles");
    let bare = articles.split_whitespace().find_map(|article| text.strip_prefix(article)?.strip_prefix(' '));
    bare.map_or(text.clone(), str::to_owned)
}

/// Returns where the limit of a rule stands: the source of its value in the contract or on a sheet.
fn clause(plan: &Plan, rule: Rule) -> Option<&str> {
    let (contract, patch, packer, resin) = (&plan.contract, &plan.patch, &plan.packer, &plan.resin);
    Some(match rule {
        Rule::CoverShort | Rule::CentreShifted => &contract.cover_least_um.source,
        Rule::DiameterOutsidePacker => &packer.diameter_most_um.source,
        Rule::TemperaturesOld => &contract.temperatures_age_ms.source,
        Rule::StorageOutside => &resin.storage_most_mc.source,
        Rule::PackerTestShort => &packer.test_pressure_pa.source,
        Rule::CleaningOld => &contract.cleaning_age_ms.source,
        Rule::BareEndShort => &patch.bare_end_least_um.source,
        Rule::BareEndsUnequal => &patch.bare_end_tolerance_um.source,
        Rule::MixingShort => &resin.mixing_least_ms.source,
        Rule::LateInflation => &resin.working_time.source,
        Rule::PressureLost => &patch.net_least_pa.source,
        Rule::HoldShort | Rule::ReleasedEarly | Rule::HoldNotCovered => &resin.hold.source,
        Rule::FoldHigh => &contract.fold_limit.source,
        Rule::LateralOpening => &contract.lateral_open_least_pct.source,
        Rule::LateralCutEarly | Rule::TestedEarly => &resin.full_cure.source,
        Rule::TightnessMissing => &contract.tightness_test.source,
        Rule::RatioOutside => match &resin.parts {
            crate::shelf::sheets::Parts::Weighed { source, .. } => source,
            crate::shelf::sheets::Parts::Containers { .. } => return None,
        },
        _ => return None,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::procedure::rules::n;

    #[test]
    fn a_departure_is_named_in_a_few_words() {
        assert_eq!(
            short("Viewed again 26 h 00 min after cleaning; 24 h 00 min is allowed."),
            "viewed again 26 h after cleaning"
        );
        assert_eq!(short("A photo is missing: Soaked, no dry area."), "photo is missing: Soaked, no dry area");
    }

    #[test]
    fn a_value_that_was_not_kept_is_said_to_be_missing() {
        let values: RuleValues = [("cover_um".to_owned(), n(93_000))].into();
        let says = says(Rule::CoverShort, &values);
        assert_eq!(says, "Cover is 93 mm after all errors; (value not kept) is asked.");
    }
}
