//! From what the crew chose to a plan: what fits, what it covers, how much time there is, and what stands against it.

mod candidates;
mod compute;
mod notes;
mod suggest;
#[cfg(test)]
mod tests;

pub use suggest::suggest;

use serde::Serialize;

use super::gate::plan_breaks;
use super::line::{Defect, Line};
use super::plan::{Plan, PlanChoice};
use super::rules::{Broken, Rule, RuleValues, t};
use crate::shelf::ShelfView;

/// What would come of a choice. Nothing is written.
#[derive(Clone, Debug, Serialize)]
pub struct Proposal {
    pub choice: PlanChoice,
    /// The plan, also where it breaks rules; `None` if it can't be computed.
    pub plan: Option<Plan>,
    /// What stands against it: departures can be waived by the foreman.
    pub breaks: Vec<Said>,
    pub patches: Vec<Candidate>,
    pub packers: Vec<Candidate>,
    pub resins: Vec<Candidate>,
    pub notes: Vec<String>,
}

/// A rule in the way of a plan, with its sentence.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Said {
    pub rule: Rule,
    pub values: RuleValues,
    pub says: String,
    pub way_out: String,
    pub waivable: bool,
}

/// A sheet of the shelf, and whether it suits this defect.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Candidate {
    pub id: String,
    pub name: String,
    pub fits: bool,
    /// Why, in a few words.
    pub says: String,
}

/// Returns what would come of a choice, at a time of the wall clock.
pub fn propose(line: &Line, defect: &Defect, choice: &PlanChoice, shelf: &ShelfView, now_ms: i64) -> Proposal {
    let planned = plan(line, defect, choice, shelf);
    let (plan, broken) = match planned {
        Ok(plan) => {
            let broken = plan_breaks(&plan);
            (Some(plan), broken)
        }
        Err(broken) => (None, vec![broken]),
    };
    Proposal {
        choice: choice.clone(),
        breaks: broken.iter().map(said).collect(),
        patches: candidates::patches(defect, choice, shelf),
        packers: candidates::packers(choice, shelf),
        resins: candidates::resins(choice, shelf),
        notes: plan.as_ref().map_or_else(Vec::new, |plan| notes::notes(line, plan, now_ms)),
        plan,
    }
}

/// Returns the plan of a choice.
///
/// Errors: what can't be computed, because a document is missing or a sheet does not go that far.
pub fn plan(line: &Line, defect: &Defect, choice: &PlanChoice, shelf: &ShelfView) -> Result<Plan, Broken> {
    let contract = found(shelf.contracts, "contract", &choice.contract, |one| &one.id)?;
    let resin = found(shelf.resins, "resin sheet", &choice.resin, |one| &one.id)?;
    let patch = found(shelf.patches, "patch sheet", &choice.patch, |one| &one.id)?;
    let packer = found(shelf.packers, "packer", &choice.packer, |one| &one.id)?;
    let method = found(shelf.methods, "method statement", &choice.method, |one| &one.id)?;
    let documents = compute::Documents { contract, resin, patch, packer, instruments: shelf.instruments };
    let computed = compute::compute(line, defect, choice, &documents)?;
    Ok(Plan {
        choice: choice.clone(),
        contract: contract.clone(),
        resin: resin.clone(),
        patch: patch.clone(),
        packer: packer.clone(),
        method: method.clone(),
        instruments: shelf.instruments.to_vec(),
        computed,
    })
}

fn found<'a, T>(list: &'a [T], what: &str, id: &str, of: impl Fn(&T) -> &String) -> Result<&'a T, Broken> {
    let missing = || Broken::with(Rule::BadValue, &[("what", t(format!("Choose a {what} from the shelf.")))]);
    list.iter().find(|one| of(one) == id).ok_or_else(missing)
}

fn said(broken: &Broken) -> Said {
    Said {
        rule: broken.rule,
        values: broken.values.clone(),
        says: broken.rule.says(&broken.values),
        way_out: broken.rule.way_out(&broken.values),
        waivable: broken.rule.waived_by().is_some(),
    }
}
