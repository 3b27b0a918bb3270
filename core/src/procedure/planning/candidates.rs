//! What of the shelf fits, and of the rest why it does not: nothing is hidden, so that nobody wonders where it went.

use serde::Serialize;

use super::super::plan::{Budget, Warmest};
use super::super::rules::{Broken, Rule, n};
use super::super::times;
use super::Case;
use super::picked::{diameter_given, measured};
use crate::checks::cover::PositionError;
use crate::shelf::{Contract, PackerSheet, PatchSheet, ResinSheet};
use crate::units::Length;
use crate::words::{self, Cut, Decimals, Of, say, show, span};

/// One sheet of the shelf, judged for this repair.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Candidate {
    pub id: String,
    pub name: String,
    pub fits: bool,
    /// Why it does or does not, with the numbers; empty where nothing can be said yet.
    pub says: String,
    /// The rule that taking it would break.
    pub rule: Option<Rule>,
    /// The foreman may waive that rule.
    pub waivable: bool,
}

/// Every sheet of the shelf, judged.
#[derive(Clone, Debug, Default)]
pub struct OnShelf {
    pub patches: Vec<Candidate>,
    pub packers: Vec<Candidate>,
    pub resins: Vec<Candidate>,
}

/// The verdict on one sheet: what speaks for it, or the rule against it with its words.
type Verdict = Result<String, (Rule, String)>;

impl Case<'_> {
    /// Returns everything on the shelf, judged.
    pub fn on_shelf(&self) -> OnShelf {
        OnShelf { patches: self.patches(), packers: self.packers(), resins: self.resins() }
    }

    /// Returns the patches, judged by the pipe and by the cover that each alone would give.
    fn patches(&self) -> Vec<Candidate> {
        let errors = self.picked.contract.and_then(|contract| Some((contract, self.errors(contract)?.ok()?)));
        let mut judged: Vec<_> = self
            .shelf
            .patches
            .iter()
            .map(|patch| (patch.length_um, candidate(&patch.id, &patch.name, self.judge_patch(patch, errors.as_ref()))))
            .collect();
        judged.sort_by_key(|(length, candidate)| (!candidate.fits, candidate.rule != Some(Rule::CoverShort), *length));
        judged.into_iter().map(|(_, candidate)| candidate).collect()
    }

    fn judge_patch(&self, patch: &PatchSheet, errors: Option<&(&Contract, Vec<PositionError>)>) -> Verdict {
        if !diameter_given(self.choice) {
            return Ok(String::new());
        }
        if !self.patch_fits_pipe(patch) {
            let says = self.for_pipe(patch.diameter_least_um, patch.diameter_most_um);
            return Err((Rule::DiameterOutsidePatch, says));
        }
        let Some((contract, errors)) = errors else { return Ok(String::new()) };
        let cover = self.cover_with(patch.length_um, errors).map_err(|broken| (broken.rule, says(&broken)))?;
        let asked = contract.cover_least_um.value;
        let each = if cover.upstream_um == cover.downstream_um {
            format!("{} each side; {} asked", length(cover.upstream_um), length(asked))
        } else {
            let (up, down) = (length(cover.upstream_um), length(cover.downstream_um));
            format!("{up} upstream, {down} downstream; {} asked", length(asked))
        };
        match cover.short_by(asked) {
            None => Ok(format!("covers {each}")),
            Some(_) => Err((Rule::CoverShort, format!("too short: {each}"))),
        }
    }

    /// Returns the packers, judged by the pipe, by the chosen patch and by the pressures.
    fn packers(&self) -> Vec<Candidate> {
        let mut judged: Vec<_> = self
            .shelf
            .packers
            .iter()
            .map(|packer| (packer.body_um, candidate(&packer.id, &packer.name, self.judge_packer(packer))))
            .collect();
        judged.sort_by_key(|(body, candidate)| (!candidate.fits, *body));
        judged.into_iter().map(|(_, candidate)| candidate).collect()
    }

    fn judge_packer(&self, packer: &PackerSheet) -> Verdict {
        if !diameter_given(self.choice) {
            return Ok(String::new());
        }
        let (least, most) = (packer.diameter_least_um.value, packer.diameter_most_um.value);
        let fits = self.for_pipe(least, most);
        if self.choice.diameter_least_um < least || self.choice.diameter_most_um > most {
            return Err((Rule::DiameterOutsidePacker, fits));
        }
        let Some(patch) = self.picked.patch else { return Ok(fits) };
        let bare = Length::from_um(packer.body_um.as_um().saturating_sub(patch.length_um.as_um()).div_euclid(2));
        if bare < Length::from_um(0) {
            return Err((Rule::PatchLongerThanPacker, say("fits-shorter", &[("by", (&length(twice(bare))).into())])));
        }
        let asked = patch.bare_end_least_um.value;
        let ends = say("fits-ends", &[("bare", (&length(bare)).into()), ("asked", (&length(asked)).into())]);
        if bare < asked {
            return Err((Rule::BareEndShort, ends));
        }
        let Some(contract) = self.picked.contract else { return Ok(format!("{fits}; {ends}")) };
        match self.window(contract, patch, packer) {
            Ok(_) => Ok(format!("{fits}; {ends}")),
            Err(broken) => Err((broken.rule, says(&broken))),
        }
    }

    /// Returns the resins, judged by batch and temperatures for the chosen patch.
    fn resins(&self) -> Vec<Candidate> {
        let mut judged: Vec<_> =
            self.shelf.resins.iter().map(|resin| candidate(&resin.id, &resin.name, self.judge_resin(resin))).collect();
        judged.sort_by_key(|candidate| !candidate.fits);
        judged
    }

    fn judge_resin(&self, resin: &ResinSheet) -> Verdict {
        let (Some(contract), Some(patch)) = (self.picked.contract, self.picked.patch) else { return Ok(String::new()) };
        let (batch, most) = (self.batch(patch, resin), resin.batch_most_mg.value);
        if batch > most {
            let values = [("batch_mg", n(batch.as_mg())), ("most_mg", n(most.as_mg()))];
            return Err((Rule::BatchTooLarge, says(&Broken::with(Rule::BatchTooLarge, &values))));
        }
        if !measured(&self.choice.temperatures) {
            return Ok(say(
                "fits-batch",
                &[("batch", (&show("mg", batch.as_mg())).into()), ("most", (&show("mg", most.as_mg())).into())],
            ));
        }
        let timed = self.times_of(contract, patch, resin).map_err(|broken| (broken.rule, says(&broken)))?;
        let budget = &timed.budget;
        let spare = budget.spare_ms.as_ms();
        let works = say(
            "fits-works",
            &[("working", (&span(budget.working_ms.as_ms())).into()), ("warmest", (&warmest(budget)).into())],
        );
        match times::too_short(budget) {
            None => Ok(say("fits-spare", &[("works", (&works).into()), ("spare", (&span(spare)).into())])),
            Some(broken) => {
                Err((broken.rule, say("fits-short", &[("works", (&works).into()), ("short", (&span(-spare)).into())])))
            }
        }
    }

    fn for_pipe(&self, least: Length, most: Length) -> String {
        let (from, to) = (self.choice.diameter_least_um, self.choice.diameter_most_um);
        let range = |least, most| say("fits-range", &[("least", (&mm(least)).into()), ("most", (&mm(most)).into())]);
        let pipe = if from == to { mm(from) } else { range(from, to) };
        let unit = words::unit(Of::Millimetres);
        let (least, most) = (mm(least), mm(most));
        let values =
            [("least", (&least).into()), ("most", (&most).into()), ("pipe", (&pipe).into()), ("unit", unit.into())];
        say("fits-pipe", &values)
    }
}

/// Returns the warmest temperature with its place, as "19.2 °C, the resin".
pub fn warmest(budget: &Budget) -> String {
    let at = show("mc", budget.warmest_mc.as_millicelsius());
    say(&format!("warmest-{}", place(budget.warmest)), &[("at", (&at).into())])
}

/// Returns the code of a place of measurement.
pub fn place(warmest: Warmest) -> &'static str {
    match warmest {
        Warmest::Resin => "resin",
        Warmest::Air => "air",
        Warmest::Pipe => "pipe",
    }
}

/// Returns a length without its unit, in millimetres to a tenth, or in inches.
pub fn mm(length: Length) -> String {
    words::figure(Of::Millimetres, length.as_um(), Decimals::Most(1), Cut::Nearest)
}

/// Returns a length with its unit.
pub fn length(length: Length) -> String {
    show("um", length.as_um())
}

fn twice(bare: Length) -> Length {
    Length::from_um(bare.as_um().saturating_mul(-2))
}

fn says(broken: &Broken) -> String {
    broken.rule.says(&broken.values)
}

fn candidate(id: &str, name: &str, verdict: Verdict) -> Candidate {
    let (fits, says, rule) = match verdict {
        Ok(says) => (true, says, None),
        Err((rule, says)) => (false, says, Some(rule)),
    };
    let waivable = rule.is_some_and(|rule| rule.waived_by().is_some());
    Candidate { id: id.into(), name: name.into(), fits, says, rule, waivable }
}
