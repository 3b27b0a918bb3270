//! A first choice, for the crew to change.

use super::super::line::{Around, Defect, Line, Origin};
use super::super::plan::{FromNode, PlanChoice};
use super::Case;
use super::picked::{self, Picked};
use crate::checks::cover::PositionError;
use crate::shelf::sheets::InstrumentKind;
use crate::shelf::{Contract, PackerSheet, PatchSheet, ResinSheet, ShelfView};
use crate::units::Length;

/// Returns a first choice: the shortest patch that covers the defect, or the fewest in series; the shortest packer that
/// takes it; the resin that holds the batch with the least left over; the first contract, method statement, counter and
/// tape; a seam away from the defect.
///
/// Diameter and way in are the nominal size and the rope from the other node, to be measured and changed. What nobody can
/// guess stays empty: temperatures, water, offsets, closures. What the shelf does not have stays empty too.
pub fn suggest(line: &Line, defect: &Defect, shelf: &ShelfView) -> PlanChoice {
    let instrument = |kind| {
        let first = shelf.instruments.iter().find(|instrument| instrument.kind == kind);
        first.map(|instrument| instrument.id.clone()).unwrap_or_default()
    };
    let choice = PlanChoice {
        contract: shelf.contracts.first().map(|contract| contract.id.clone()).unwrap_or_default(),
        method: shelf.methods.first().map(|method| method.id.clone()).unwrap_or_default(),
        counter: instrument(InstrumentKind::CameraCounter),
        tape: instrument(InstrumentKind::Tape),
        diameter_least_um: line.height_um,
        diameter_most_um: line.height_um,
        inspected_from: counted_from(defect),
        seam_hour: seam(defect),
        ..PlanChoice::default()
    };
    if picked::wild(line, defect, &choice).is_some() {
        return choice;
    }
    let case = Case { line, defect, choice: &choice, shelf, picked: Picked::from(&choice, shelf), now_ms: 0 };
    let Some((patch, packer)) = case.patch_and_packer() else { return choice };
    PlanChoice {
        patch: patch.id.clone(),
        packer: packer.map(|packer| packer.id.clone()).unwrap_or_default(),
        resin: case.resin(patch).map(|resin| resin.id.clone()).unwrap_or_default(),
        in_series: case.too_short(patch),
        ..choice.clone()
    }
}

fn counted_from(defect: &Defect) -> FromNode {
    match &defect.origin {
        Origin::Inspection { counted_from, .. } => *counted_from,
        Origin::ByHand => FromNode::default(),
    }
}

impl<'a> Case<'a> {
    fn too_short(&self, patch: &PatchSheet) -> bool {
        let errors = self.picked.contract.and_then(|contract| Some((contract, self.errors(contract)?.ok()?)));
        errors.is_some_and(|(contract, errors)| patch.length_um < self.least_length(contract, &errors))
    }

    /// Returns the first patch in the order of waste that a packer takes; without any packer, the first patch alone.
    fn patch_and_packer(&self) -> Option<(&'a PatchSheet, Option<&'a PackerSheet>)> {
        let contract = self.picked.contract?;
        let errors = self.errors(contract)?.ok()?;
        let mut patches: Vec<_> = self.shelf.patches.iter().filter(|patch| self.patch_fits_pipe(patch)).collect();
        patches.sort_by_key(|patch| self.waste(contract, patch, &errors));
        let taken = patches.iter().find_map(|patch| Some((*patch, Some(self.packer(contract, patch)?))));
        taken.or(patches.first().map(|patch| (*patch, None)))
    }

    /// Returns the number of patches, their whole length and their resin: the less the better, in this order.
    fn waste(&self, contract: &Contract, patch: &PatchSheet, errors: &[PositionError]) -> (i64, i64, i64) {
        let alone = patch.length_um >= self.least_length(contract, errors);
        let series =
            || self.series_of(contract, patch, errors).map_or(i64::MAX, |series| series.centres_um.len() as i64);
        let count = if alone { 1 } else { series() };
        (count, patch.length_um.as_um().saturating_mul(count), patch.resin_mg.value.as_mg())
    }

    fn packer(&self, contract: &Contract, patch: &PatchSheet) -> Option<&'a PackerSheet> {
        let least = self.choice.diameter_least_um;
        let most = self.choice.diameter_most_um;
        let takes = |packer: &&PackerSheet| {
            packer.diameter_least_um.value <= least
                && packer.diameter_most_um.value >= most
                && bare_end(packer, patch) >= patch.bare_end_least_um.value
                && self.window(contract, patch, packer).is_ok()
        };
        self.shelf.packers.iter().filter(takes).min_by_key(|packer| packer.body_um)
    }

    fn resin(&self, patch: &PatchSheet) -> Option<&'a ResinSheet> {
        let holds = |resin: &&ResinSheet| self.batch(patch, resin) <= resin.batch_most_mg.value;
        let over = |resin: &&ResinSheet| (self.batch(patch, resin), resin.batch_most_mg.value);
        self.shelf.resins.iter().filter(holds).min_by_key(over)
    }
}

fn bare_end(packer: &PackerSheet, patch: &PatchSheet) -> Length {
    Length::from_um(packer.body_um.as_um().saturating_sub(patch.length_um.as_um()).div_euclid(2))
}

/// Returns the hour that is farthest from all that was seen, high up rather than low, and never at the invert.
fn seam(defect: &Defect) -> u8 {
    const FROM_ABOVE: [u8; 11] = [12, 1, 11, 2, 10, 3, 9, 4, 8, 5, 7];
    let seen: Vec<u8> = defect.observations.iter().flat_map(|seen| hours(seen.around)).collect();
    let away = |hour: u8| seen.iter().map(|at| apart(hour, *at)).min().unwrap_or(0);
    let best = FROM_ABOVE.iter().map(|hour| away(*hour)).max().unwrap_or(0);
    FROM_ABOVE.into_iter().find(|hour| away(*hour) == best).unwrap_or(12)
}

fn hours(around: Around) -> Vec<u8> {
    match around {
        Around::Unknown | Around::AllRound => vec![],
        Around::At { hour } => vec![hour],
        Around::Between { from, to } => {
            let long = (i16::from(to) - i16::from(from)).rem_euclid(12) as u8;
            (0..=long).map(|k| (from % 12 + k + 11) % 12 + 1).collect()
        }
    }
}

fn apart(a: u8, b: u8) -> u8 {
    let between = (i16::from(a) - i16::from(b)).rem_euclid(12) as u8;
    between.min(12 - between)
}
