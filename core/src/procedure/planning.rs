//! From a choice to a plan: what fits, what would do, what stands in the way and how to get out of it.
//!
//! A proposal is a question to the crew, never a decision: it computes what was chosen, and says the rest in words. Every
//! number comes from the choice, the contract or a sheet; a formula that has none of them gives no answer.
//!
//! - `picked`: the documents that the choice names.
//! - `place`: where patch and mark go, what they cover.
//! - `bound`: sleeve, membrane, bands, wrap and resin.
//! - `pressed`: the pressure window and the thrust.
//! - `timed`: working time, budget, hold and full cure.
//! - `candidates`: what of the shelf fits, and why not.
//! - `way_out`: how each broken rule is opened again.
//! - `notes`: what a reader of the plan should know.
//! - `suggest`: a first choice.

mod bound;
mod candidates;
mod notes;
mod picked;
mod place;
mod pressed;
mod suggest;
#[cfg(test)]
mod tests;
mod timed;
mod way_out;

use serde::Serialize;

use super::gate;
use super::line::{Defect, Line};
use super::plan::{Computed, Plan, PlanChoice};
use super::rules::{Broken, Rule, RuleValues};
use crate::shelf::ShelfView;
use candidates::OnShelf;
use picked::Picked;

pub use bound::Bound;
pub use candidates::Candidate;
pub use notes::{Note, NoteCode};
pub use place::Place;
pub use pressed::Pressed;
pub use suggest::suggest;
pub use timed::Timed;
pub use way_out::WayOut;

/// What would come of a choice. Nothing is written.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Proposal {
    pub choice: PlanChoice,
    /// The plan, also where departures or the time budget stand against it; `None` where it can't be computed.
    pub plan: Option<Plan>,
    /// What could be computed, part by part, also where the plan could not.
    pub parts: Parts,
    /// Every rule that stands against accepting the plan, or for which it can't be computed.
    pub breaks: Vec<Said>,
    /// Fitting ones first, by length.
    pub patches: Vec<Candidate>,
    /// Fitting ones first, by length.
    pub packers: Vec<Candidate>,
    /// Fitting ones first, in the order of the shelf.
    pub resins: Vec<Candidate>,
    pub notes: Vec<Note>,
}

impl Proposal {
    /// Returns the proposal with the names in it in the language of who reads.
    pub fn told(mut self) -> Self {
        self.parts.place = self.parts.place.map(|place| Place { cover: place.cover.told(), ..place });
        self.parts.pressed = self.parts.pressed.map(|one| Pressed { window: one.window.told(), ..one });
        self
    }
}

/// A rule in the way of a plan, with its sentence.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Said {
    pub rule: Rule,
    pub values: RuleValues,
    pub says: String,
    /// All ways out in one text.
    pub way_out: String,
    /// The same one by one, the computed ones first.
    pub ways_out: Vec<WayOut>,
    /// The foreman may waive it.
    pub waivable: bool,
}

/// The parts of a plan; `None` where something is missing or refused.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct Parts {
    pub place: Option<Place>,
    pub bound: Option<Bound>,
    pub pressed: Option<Pressed>,
    pub timed: Option<Timed>,
}

/// What a proposal is made from.
#[derive(Clone, Copy)]
struct Case<'a> {
    line: &'a Line,
    defect: &'a Defect,
    choice: &'a PlanChoice,
    shelf: &'a ShelfView<'a>,
    picked: Picked<'a>,
    now_ms: i64,
}

/// Returns what comes of a choice at a moment, `now_ms` since 1970 in UTC.
///
/// Formulas: those of [`crate::checks`], in the order of the design: cover, mark, laterals, bands, batch, pressure window,
/// budget, hold. Nothing is chosen for the crew; see [`suggest`] for a first choice.
pub fn propose(line: &Line, defect: &Defect, choice: &PlanChoice, shelf: &ShelfView, now_ms: i64) -> Proposal {
    let case = Case { line, defect, choice, shelf, picked: Picked::from(choice, shelf), now_ms };
    let (plan, parts, broken) = match case.plan() {
        (Ok(plan), parts) => {
            let broken = gate::plan_breaks(&plan);
            (Some(plan), parts, broken)
        }
        (Err(refused), parts) => (None, parts, refused),
    };
    let on_shelf = if picked::wild(line, defect, choice).is_some() { OnShelf::default() } else { case.on_shelf() };
    Proposal {
        choice: choice.clone(),
        breaks: broken.iter().map(|broken| case.said(broken, &parts, &on_shelf)).collect(),
        notes: case.notes(&parts),
        plan,
        parts,
        patches: on_shelf.patches,
        packers: on_shelf.packers,
        resins: on_shelf.resins,
    }
}

/// Returns the plan of a choice, also where departures or the time budget stand against it.
///
/// Errors: every rule for which it can't be computed: what is missing, what no sheet covers.
pub fn plan(line: &Line, defect: &Defect, choice: &PlanChoice, shelf: &ShelfView) -> Result<Plan, Vec<Broken>> {
    Case { line, defect, choice, shelf, picked: Picked::from(choice, shelf), now_ms: 0 }.plan().0
}

impl Case<'_> {
    fn plan(&self) -> (Result<Plan, Vec<Broken>>, Parts) {
        if let Some(wild) = picked::wild(self.line, self.defect, self.choice) {
            return (Err(vec![wild]), Parts::default());
        }
        let mut refused = self.picked.missing(self.choice);
        let parts = self.parts(&mut refused);
        (self.of_parts(&parts).ok_or(refused), parts)
    }

    fn parts(&self, refused: &mut Vec<Broken>) -> Parts {
        let bound = keep(self.bound(), refused);
        Parts {
            place: keep(self.place(), refused),
            pressed: keep(self.pressed(), refused),
            timed: keep(self.timed(), refused),
            bound,
        }
    }

    fn of_parts(&self, parts: &Parts) -> Option<Plan> {
        let (place, bound) = (parts.place.clone()?, parts.bound.clone()?);
        let (pressed, timed) = (parts.pressed.clone()?, parts.timed.clone()?);
        Some(Plan {
            choice: self.choice.clone(),
            contract: self.picked.contract?.clone(),
            resin: self.picked.resin?.clone(),
            patch: self.picked.patch?.clone(),
            packer: self.picked.packer?.clone(),
            method: self.picked.method?.clone(),
            instruments: self.shelf.instruments.to_vec(),
            computed: Computed {
                patches: place.patches,
                cover: place.cover,
                mark: place.mark,
                covered: place.covered,
                sleeve_um: bound.sleeve_um,
                sleeve_bands_um: bound.sleeve_bands_um,
                patch_bands_um: bound.patch_bands_um,
                membrane_um: bound.membrane_um,
                membrane_bands_um: bound.membrane_bands_um,
                wrap_um: bound.wrap_um,
                batch_mg: bound.batch_mg,
                window: pressed.window,
                thrust_n: pressed.thrust_n,
                budget: timed.budget,
                hold_ms: timed.hold_ms,
                hold_at_mc: timed.hold_at_mc,
                full_cure_ms: timed.full_cure_ms,
            },
        })
    }
}

/// Returns the part, or puts down why there is none; a part that lacks a choice is missing without a word of its own.
fn keep<T>(part: Option<Result<T, Broken>>, refused: &mut Vec<Broken>) -> Option<T> {
    match part? {
        Ok(part) => Some(part),
        Err(broken) => {
            if !refused.contains(&broken) {
                refused.push(broken);
            }
            None
        }
    }
}
