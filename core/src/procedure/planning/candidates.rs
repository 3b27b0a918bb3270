//! Which sheets of the shelf suit the defect, and why the others do not.

use super::compute::{Documents, errors};
use super::{Candidate, found};
use crate::checks::cover::ErrorKind;
use crate::procedure::line::Defect;
use crate::procedure::plan::PlanChoice;
use crate::procedure::rules::show;
use crate::procedure::times::{self, BudgetOf};
use crate::shelf::sheets::Parts;
use crate::shelf::{PatchSheet, ShelfView};
use crate::units::Length;

/// Returns the patches of the shelf for this pipe, those that cover the defect first.
pub fn patches(defect: &Defect, choice: &PlanChoice, shelf: &ShelfView) -> Vec<Candidate> {
    let mut all: Vec<Candidate> = shelf.patches.iter().map(|patch| candidate(defect, choice, shelf, patch)).collect();
    // What has the right size stands before what has not.
    let sized = |one: &Candidate| one.says.starts_with("for ");
    all.sort_by_key(|one| (!one.fits, sized(one)));
    all
}

fn candidate(defect: &Defect, choice: &PlanChoice, shelf: &ShelfView, patch: &PatchSheet) -> Candidate {
    let in_range =
        patch.diameter_least_um <= choice.diameter_least_um && choice.diameter_most_um <= patch.diameter_most_um;
    let cover = cover_left(defect, choice, shelf, patch.length_um);
    let (fits, says) = match cover {
        _ if !in_range => {
            let from = patch.diameter_least_um.as_mm();
            (false, format!("for {from:.0} to {:.0} mm", patch.diameter_most_um.as_mm()))
        }
        Some((left, required)) if left < required => {
            (false, format!("too short: {} each side, {} asked", show("um", left), show("um", required)))
        }
        Some((left, _)) => (true, format!("covers, {} each side", show("um", left))),
        None => (true, "size fits; the cover can't be told yet".to_owned()),
    };
    Candidate { id: patch.id.clone(), name: patch.name.clone(), fits, says }
}

/// Returns the cover that a centred patch of this length leaves on each side after the errors, and what is asked, in
/// micrometres; `None` if the contract or an instrument is not chosen yet.
pub fn cover_left(defect: &Defect, choice: &PlanChoice, shelf: &ShelfView, length: Length) -> Option<(i64, i64)> {
    let contract = found(shelf.contracts, "contract", &choice.contract, |one| &one.id).ok()?;
    let (resin, patch, packer) = (shelf.resins.first()?, shelf.patches.first()?, shelf.packers.first()?);
    let on = Documents { contract, resin, patch, packer, instruments: shelf.instruments };
    let errors: i64 = errors(defect.centre(), choice, &on)
        .ok()?
        .iter()
        .filter(|error| !(choice.marked_on_defect && error.kind == ErrorKind::Inspection))
        .map(|error| error.size_um.as_um())
        .sum();
    Some(((length.as_um() - defect.length().as_um()) / 2 - errors, contract.cover_least_um.value.as_um()))
}

/// Returns the packers of the shelf, those that take the pipe and the patch first.
pub fn packers(choice: &PlanChoice, shelf: &ShelfView) -> Vec<Candidate> {
    let patch = shelf.patches.iter().find(|patch| patch.id == choice.patch);
    let mut all: Vec<Candidate> = shelf
        .packers
        .iter()
        .map(|packer| {
            let (least, most) = (packer.diameter_least_um.value, packer.diameter_most_um.value);
            let takes_pipe = least <= choice.diameter_least_um && choice.diameter_most_um <= most;
            let bare = patch.map(|patch| {
                let end = (packer.body_um.as_um() - patch.length_um.as_um()) / 2;
                (end, patch.bare_end_least_um.value.as_um())
            });
            let pipe =
                format!("pipe {:.0} to {:.0} mm", choice.diameter_least_um.as_mm(), choice.diameter_most_um.as_mm());
            let (fits, says) = match bare {
                _ if !takes_pipe => (false, format!("for {:.0} to {:.0} mm; {pipe}", least.as_mm(), most.as_mm())),
                Some((end, asked)) if end < asked => {
                    (false, format!("too short: bare ends of {}, {} asked", show("um", end.max(0)), show("um", asked)))
                }
                _ => (true, format!("for {:.0} to {:.0} mm; {pipe}", least.as_mm(), most.as_mm())),
            };
            Candidate { id: packer.id.clone(), name: packer.name.clone(), fits, says }
        })
        .collect();
    all.sort_by_key(|one| !one.fits);
    all
}

/// Returns the resins of the shelf with the time that each leaves at these temperatures.
pub fn resins(choice: &PlanChoice, shelf: &ShelfView) -> Vec<Candidate> {
    let patch = shelf.patches.iter().find(|patch| patch.id == choice.patch);
    let contract = found(shelf.contracts, "contract", &choice.contract, |one| &one.id).ok();
    let (Some(patch), Some(contract)) = (patch, contract) else { return vec![] };
    let mut all: Vec<Candidate> = shelf
        .resins
        .iter()
        .map(|resin| {
            let batch = match &resin.parts {
                Parts::Containers { mass_mg, .. } => *mass_mg,
                Parts::Weighed { .. } => patch.resin_mg.value,
            };
            let too_little = batch < patch.resin_mg.value;
            let budget =
                times::budget(&BudgetOf { contract, resin, batch, temperatures: &choice.temperatures, push: None });
            let (fits, says) = match budget {
                _ if too_little => (false, format!("{} is too little for this patch", show("mg", batch.as_mg()))),
                Err(broken) => (false, broken.rule.says(&broken.values)),
                Ok(budget) if budget.spare_ms.as_ms() < 0 => {
                    (false, format!("{} too short", show("ms", -budget.spare_ms.as_ms())))
                }
                Ok(budget) => (true, format!("{} to spare", show("ms", budget.spare_ms.as_ms()))),
            };
            Candidate { id: resin.id.clone(), name: resin.name.clone(), fits, says }
        })
        .collect();
    all.sort_by_key(|one| !one.fits);
    all
}
