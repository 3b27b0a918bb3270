//! How a broken rule is opened again, with the numbers that it takes.

use serde::Serialize;

use super::super::plan::{Budget, Warmest};
use super::super::rules::{Broken, Rule, RuleValues, n};
use super::super::times::{self, BudgetOf};
use super::bound::up;
use super::candidates::{Candidate, OnShelf, length, place};
use super::{Case, Parts, Said};
use crate::checks::working_time::{self, Temperatures as Three};
use crate::units::{Length, Temperature};
use crate::words::{self, say, span};

/// One way out of a rule.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct WayOut {
    pub says: String,
    /// The numbers in the sentence, where a drawing needs them: a key ends in its unit.
    pub values: RuleValues,
}

impl Case<'_> {
    /// Returns a broken rule as it is said, with its ways out.
    pub fn said(&self, broken: &Broken, parts: &Parts, on_shelf: &OnShelf) -> Said {
        let ways_out = self.ways_out(broken, parts, on_shelf);
        let words: Vec<&str> = ways_out.iter().map(|way| way.says.as_str()).collect();
        Said {
            rule: broken.rule,
            values: broken.values.clone(),
            says: broken.rule.says(&broken.values),
            way_out: words.join(" "),
            waivable: broken.rule.waived_by().is_some(),
            ways_out,
        }
    }

    /// Returns the ways out of a rule: first what is computed, then what else is on the shelf.
    ///
    /// Where nothing can be computed, the rule's own sentence stands in.
    fn ways_out(&self, broken: &Broken, parts: &Parts, on_shelf: &OnShelf) -> Vec<WayOut> {
        let OnShelf { patches, packers, resins } = on_shelf;
        let (computed, shelf, word) = match broken.rule {
            Rule::NoTime => (self.cooler(parts), resins.as_slice(), "resin"),
            Rule::OutsideSheet => (vec![], resins.as_slice(), "resin"),
            Rule::BatchTooLarge => (self.split(), resins.as_slice(), "resin"),
            Rule::CoverShort => (self.more_cover(), patches.as_slice(), "patch"),
            Rule::DiameterOutsidePatch => (vec![], patches.as_slice(), "patch"),
            Rule::WindowEmpty => (self.less_water(), packers.as_slice(), "packer"),
            Rule::DiameterOutsidePacker
            | Rule::BareEndShort
            | Rule::PatchLongerThanPacker
            | Rule::PressureNotNamed
            | Rule::MembraneShort => (vec![], packers.as_slice(), "packer"),
            _ => (vec![], &[][..], ""),
        };
        let computed = computed.into_iter();
        let mut found: Vec<WayOut> = computed.map(|(says, values)| WayOut { says, values }).collect();
        found.extend(on_the_shelf(word, shelf).map(|says| WayOut { says, values: RuleValues::new() }));
        if found.is_empty() {
            let says = broken.rule.way_out(&broken.values);
            found.push(WayOut { says, values: broken.values.clone() });
        }
        found
    }

    /// Which of the three must be colder, and what cooling only the warmest would give.
    fn cooler(&self, parts: &Parts) -> Vec<(String, RuleValues)> {
        let Some(budget) = parts.timed.as_ref().map(|timed| &timed.budget) else { return vec![] };
        let Some(enough) = budget.enough_at_mc else {
            return vec![(say("out-no_temperature", &[]), RuleValues::new())];
        };
        let Some(gives) = self.budget_at(|_| enough) else { return vec![] };
        let (at, lasts) = (degrees(enough), span(gives.working_ms.as_ms()));
        let all = say("out-all_cooler", &[("enough", (&at).into()), ("gives", (&lasts).into())]);
        let values = values(&[("enough_mc", enough.as_millicelsius()), ("gives_ms", gives.working_ms.as_ms())]);
        std::iter::once((all, values)).chain(self.one_alone(budget, enough)).collect()
    }

    fn one_alone(&self, budget: &Budget, enough: Temperature) -> Option<(String, RuleValues)> {
        let alone = self.budget_at(|(place, at)| if place == budget.warmest { enough.min(at) } else { at })?;
        let short = -alone.spare_ms.as_ms();
        let warm: Vec<_> = working_time::too_warm(&self.three(), enough);
        if warm.len() < 2 || short <= 0 {
            return None;
        }
        let (gives, at, still) = (span(alone.working_ms.as_ms()), degrees(alone.warmest_mc), span(short));
        let says = say(
            "out-one_cooler",
            &[
                ("place", place(budget.warmest).into()),
                ("gives", (&gives).into()),
                ("warmest", place(alone.warmest).into()),
                ("at", (&at).into()),
                ("short", (&still).into()),
            ],
        );
        Some((says, values(&[("gives_ms", alone.working_ms.as_ms()), ("short_ms", short)])))
    }

    /// Returns the budget with each of the three temperatures changed; the water stays.
    fn budget_at(&self, change: impl Fn((Warmest, Temperature)) -> Temperature) -> Option<Budget> {
        let mut temperatures = self.choice.temperatures;
        temperatures.resin_mc = change((Warmest::Resin, temperatures.resin_mc));
        temperatures.air_mc = change((Warmest::Air, temperatures.air_mc));
        temperatures.pipe_mc = change((Warmest::Pipe, temperatures.pipe_mc));
        let (contract, patch, resin) = (self.picked.contract?, self.picked.patch?, self.picked.resin?);
        let batch = self.batch(patch, resin);
        times::budget(&BudgetOf { contract, resin, batch, temperatures: &temperatures, push: None }).ok()
    }

    fn three(&self) -> Three {
        let read = &self.choice.temperatures;
        Three { resin_millicelsius: read.resin_mc, air_millicelsius: read.air_mc, pipe_millicelsius: read.pipe_mc }
    }

    fn split(&self) -> Vec<(String, RuleValues)> {
        let (Some(patch), Some(resin)) = (self.picked.patch, self.picked.resin) else { return vec![] };
        let most = resin.batch_most_mg.value.as_mg();
        if most <= 0 {
            return vec![];
        }
        let one = super::super::plan::PlanChoice { batches: 1, ..self.choice.clone() };
        let whole = Case { choice: &one, ..*self }.batch(patch, resin).as_mg();
        let count = up(whole, most);
        vec![(say("out-split", &[("count", count.into())]), values(&[("batches", count)]))]
    }

    /// The length that would do, the same patch centred, the mark made on the defect, the same patch in series.
    fn more_cover(&self) -> Vec<(String, RuleValues)> {
        let (Some(contract), Some(patch)) = (self.picked.contract, self.picked.patch) else { return vec![] };
        let Some(Ok(errors)) = self.errors(contract) else { return vec![] };
        let asked = contract.cover_least_um.value;
        let least = self.least_length(contract, &errors);
        let mut found =
            vec![(say("out-longer", &[("needed", (&length(least)).into())]), values(&[("needed_um", least.as_um())]))];
        let enough = |case: &Case| {
            let errors = case.errors(contract)?.ok()?;
            let cover = case.cover_with(patch.length_um, &errors).ok()?;
            cover.short_by(asked).is_none().then(|| cover.least())
        };
        let mut other = self.choice.clone();
        other.centre_um = None;
        if let Some(cover) = enough(&Case { choice: &other, ..*self }) {
            found.push((say("out-centred", &[("cover", (&length(cover)).into())]), cover_value(cover)));
        }
        other.marked_on_defect = true;
        if let Some(cover) =
            (!self.choice.marked_on_defect).then(|| enough(&Case { choice: &other, ..*self })).flatten()
        {
            let says = say("out-marked", &[("cover", (&length(cover)).into())]);
            found.push((says, cover_value(cover)));
        }
        if let Ok(series) = self.series_of(contract, patch, &errors)
            && series.centres_um.len() > 1
        {
            let count = series.centres_um.len();
            let says = say("out-series", &[("count", count.into()), ("length", (&length(patch.length_um)).into())]);
            found.push((says, values(&[("patches", count as i64)])));
        }
        found
    }

    /// How high the groundwater may stand, where it is the water that closes the window.
    fn less_water(&self) -> Vec<(String, RuleValues)> {
        let (Some(contract), Some(patch), Some(packer)) = (self.picked.contract, self.picked.patch, self.picked.packer)
        else {
            return vec![];
        };
        let dry = super::super::plan::PlanChoice { head_um: Length::from_um(0), ..self.choice.clone() };
        let Ok(window) = (Case { choice: &dry, ..*self }).window(contract, patch, packer) else { return vec![] };
        let left = window.upper_pa.as_pa().div_euclid(1000) * 1000 - patch.net_least_pa.value.as_pa();
        // 9806.65 Pa to the metre; down to the centimetre, so that the lower limit stays in the window.
        let head = Length::from_um((left * 100_000_000 / 980_665).div_euclid(10_000) * 10_000);
        let says = say("out-less_water", &[("head", (&length(head)).into())]);
        vec![(says, values(&[("head_um", head.as_um())]))]
    }
}

fn on_the_shelf(word: &str, candidates: &[Candidate]) -> Option<String> {
    let fitting: Vec<&str> =
        candidates.iter().filter(|candidate| candidate.fits).map(|candidate| candidate.id.as_str()).collect();
    let names = fitting.join(", ");
    (!names.is_empty()).then(|| say(&format!("out-shelf-{word}"), &[("names", (&names).into())]))
}

fn values(pairs: &[(&str, i64)]) -> RuleValues {
    pairs.iter().map(|(key, number)| ((*key).to_owned(), n(*number))).collect()
}

fn cover_value(cover: Length) -> RuleValues {
    values(&[("cover_um", cover.as_um())])
}

fn degrees(at: Temperature) -> String {
    words::show("mc", at.as_millicelsius())
}
