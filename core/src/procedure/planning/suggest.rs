//! A first choice from the shelf: what fits, with the least left over.

use super::candidates::cover_left;
use crate::procedure::line::{Defect, Line};
use crate::procedure::plan::PlanChoice;
use crate::shelf::sheets::{InstrumentKind, Parts};
use crate::shelf::{PackerSheet, PatchSheet, ShelfView};
use crate::units::{Length, Temperature};

/// Returns a first choice for a defect. Where nothing fits, the nearest stands in, and the plan says what it breaks.
///
/// What only the street can tell (offset of the reading point, rods, closures) stays empty for the crew to enter.
pub fn suggest(line: &Line, defect: &Defect, shelf: &ShelfView) -> PlanChoice {
    let instrument = |kind| {
        let found = shelf.instruments.iter().find(|one| one.kind == kind);
        found.map_or_else(String::new, |one| one.id.clone())
    };
    let mut choice = PlanChoice {
        contract: shelf.contracts.first().map_or_else(String::new, |one| one.id.clone()),
        method: shelf.methods.first().map_or_else(String::new, |one| one.id.clone()),
        counter: instrument(InstrumentKind::CameraCounter),
        tape: instrument(InstrumentKind::Tape),
        diameter_least_um: line.height_um,
        diameter_most_um: line.height_um,
        temperatures: estimate(),
        ..PlanChoice::default()
    };
    let patch = patch(line, defect, &choice, shelf);
    choice.patch = patch.map_or_else(String::new, |one| one.id.clone());
    choice.in_series = patch.is_some_and(|patch| too_short(defect, &choice, shelf, patch.length_um));
    choice.packer = patch.and_then(|patch| packer(line, patch, shelf)).map_or_else(String::new, |one| one.id.clone());
    choice.resin = patch.and_then(|patch| resin(patch, shelf)).unwrap_or_default();
    choice
}

/// A mild day, until somebody measures: the plan is an estimate, and both goes ask for measured temperatures.
fn estimate() -> crate::procedure::plan::Temperatures {
    let mild = Temperature::from_millicelsius(15_000);
    crate::procedure::plan::Temperatures { resin_mc: mild, air_mc: mild, pipe_mc: mild, water_mc: None }
}

fn too_short(defect: &Defect, choice: &PlanChoice, shelf: &ShelfView, length: Length) -> bool {
    cover_left(defect, choice, shelf, length).is_some_and(|(left, asked)| left < asked)
}

/// The shortest that covers, else the longest that fits the pipe.
fn patch<'a>(line: &Line, defect: &Defect, choice: &PlanChoice, shelf: &ShelfView<'a>) -> Option<&'a PatchSheet> {
    let fits =
        |patch: &&PatchSheet| patch.diameter_least_um <= line.height_um && line.height_um <= patch.diameter_most_um;
    let mut sized: Vec<&PatchSheet> = shelf.patches.iter().filter(fits).collect();
    sized.sort_by_key(|patch| patch.length_um);
    let covers = |patch: &&&PatchSheet| !too_short(defect, choice, shelf, patch.length_um);
    sized.iter().find(covers).or(sized.last()).copied().or(shelf.patches.first())
}

fn packer<'a>(line: &Line, patch: &PatchSheet, shelf: &ShelfView<'a>) -> Option<&'a PackerSheet> {
    let fits = |packer: &&PackerSheet| {
        let end = (packer.body_um.as_um() - patch.length_um.as_um()) / 2;
        packer.diameter_least_um.value <= line.height_um
            && line.height_um <= packer.diameter_most_um.value
            && end >= patch.bare_end_least_um.value.as_um()
    };
    shelf.packers.iter().filter(fits).min_by_key(|packer| packer.body_um).or(shelf.packers.first())
}

/// The first whose times hold for what the patch takes.
fn resin(patch: &PatchSheet, shelf: &ShelfView) -> Option<String> {
    let holds = |resin: &&crate::shelf::ResinSheet| match &resin.parts {
        Parts::Containers { mass_mg, .. } => *mass_mg >= patch.resin_mg.value && *mass_mg <= resin.batch_most_mg.value,
        Parts::Weighed { .. } => patch.resin_mg.value <= resin.batch_most_mg.value,
    };
    shelf.resins.iter().find(holds).or(shelf.resins.first()).map(|resin| resin.id.clone())
}
