//! Everything that a plan computes, by the formulas of `checks`.

use crate::checks::binding::{BandRule, bands, sleeve_length};
use crate::checks::clock_face::{Extent, Hour, View};
use crate::checks::cover::{self, ErrorKind, Placing, PositionError};
use crate::checks::laterals::{self, PatchArea};
use crate::checks::pressure_window::{Least, Limit, LowGoverns, pressure_window};
use crate::checks::rods::{self, Bend, Mover, PushedFrom};
use crate::checks::series::{SeriesPlan, series};
use crate::checks::{Refused, end_thrust, packer_fit};
use crate::procedure::line::{Defect, Line};
use crate::procedure::plan::{
    Computed, Cover, ErrorTerm, FromNode, Mark, PlacedPatch, PlanChoice, ReadingPointKind, WayIn, Window,
};
use crate::procedure::rules::Broken;
use crate::procedure::times::{self, BudgetOf, broken};
use crate::shelf::sheets::Parts;
use crate::shelf::{Contract, Instrument, PackerSheet, PatchSheet, ResinSheet};
use crate::units::{Length, Mass, Pressure};

/// The documents that a plan rests on.
#[derive(Clone, Copy)]
pub struct Documents<'a> {
    pub contract: &'a Contract,
    pub resin: &'a ResinSheet,
    pub patch: &'a PatchSheet,
    pub packer: &'a PackerSheet,
    pub instruments: &'a [Instrument],
}

/// Returns all figures of a plan. Errors: the first that can't be computed, as a rule.
pub fn compute(line: &Line, defect: &Defect, choice: &PlanChoice, on: &Documents) -> Result<Computed, Broken> {
    let patches = place(defect, choice, on)?;
    let first = patches.first().copied().unwrap_or(PlacedPatch { from_um: defect.from_um, to_um: defect.to_um });
    let whole = PlacedPatch { from_um: first.from_um, to_um: patches.last().unwrap_or(&first).to_um };
    let window = window(choice, on)?;
    let batch_mg = batch(on);
    let budget = times::budget(&BudgetOf {
        contract: on.contract,
        resin: on.resin,
        batch: batch_mg,
        temperatures: &choice.temperatures,
        push: None,
    })?;
    let cold = times::coldest(&choice.temperatures);
    let binding = &on.patch.binding;
    let membrane = on.patch.membrane.as_ref();
    Ok(Computed {
        cover: covered_on_both_sides(defect, choice, on, &whole)?,
        mark: mark(line, choice, first.centre())?,
        sleeve_um: sleeve(on).map_err(broken)?,
        sleeve_bands_um: sleeve_bands(on).map_err(broken)?,
        patch_bands_um: bands(
            on.patch.length_um,
            &BandRule {
                at_each_end: u16::try_from(binding.end_bands).unwrap_or_default(),
                edge_um: binding.edge_um,
                apart_um: binding.apart_um,
                pitch_um: binding.pitch_um,
            },
        )
        .map_err(broken)?,
        membrane_um: membrane.map(|_| on.packer.body_um),
        covered: laterals_under(line, choice, &whole)?,
        wrap_um: wrap(choice, on.patch)?,
        batch_mg,
        budget,
        hold_ms: times::at_coldest(&on.resin.hold, cold)?,
        hold_at_mc: cold,
        full_cure_ms: times::at_coldest(&on.resin.full_cure, cold)?,
        thrust_n: end_thrust::end_thrust(window.upper_pa, choice.diameter_most_um, choice.behind_um)
            .map_err(broken)?
            .total_n,
        window,
        patches,
    })
}

/// Returns the errors between the inspection and the patch on the wall, each with its source.
///
/// `station` is the way that the camera's counter ran.
pub fn errors(station: Length, choice: &PlanChoice, on: &Documents) -> Result<Vec<PositionError>, Broken> {
    let instrument = |id: &str| on.instruments.iter().find(|one| one.id == id);
    let mut found = vec![PositionError {
        kind: ErrorKind::Placement,
        size_um: on.contract.placement_error_um.value,
        source: on.contract.placement_error_um.source.clone(),
    }];
    if let Some(counter) = instrument(&choice.counter) {
        let share = u32::try_from(counter.error_ppm).unwrap_or_default();
        let of_distance = cover::counter_error(station, share).map_err(broken)?;
        found.push(PositionError {
            kind: ErrorKind::Inspection,
            size_um: Length::from_um(of_distance.as_um() + counter.error_um.as_um()),
            source: format!("{}, {}", counter.name, counter.source),
        });
    }
    if let Some(tape) = instrument(&choice.tape) {
        found.push(PositionError {
            kind: ErrorKind::MarkReading,
            size_um: tape.error_um,
            source: format!("{}, {}", tape.name, tape.source),
        });
    }
    Ok(found)
}

fn covered_on_both_sides(
    defect: &Defect,
    choice: &PlanChoice,
    on: &Documents,
    patch: &PlacedPatch,
) -> Result<Cover, Broken> {
    let placing = Placing {
        defect_from_um: defect.from_um,
        defect_to_um: defect.to_um,
        patch_length_um: Length::from_um(patch.to_um.as_um() - patch.from_um.as_um()),
        patch_centre_um: patch.centre(),
    };
    let errors = errors(defect.centre(), choice, on)?;
    let shown = cover::cover(&placing, &errors, choice.marked_on_defect).map_err(broken)?;
    let term = |error: PositionError| ErrorTerm {
        what: match error.kind {
            ErrorKind::Inspection => "inspection",
            ErrorKind::Placement => "placement",
            ErrorKind::MarkReading => "mark reading",
        }
        .to_owned(),
        um: error.size_um,
        source: error.source,
    };
    Ok(Cover {
        upstream_um: shown.upstream_um,
        downstream_um: shown.downstream_um,
        errors: shown.counted.into_iter().map(term).collect(),
        required_um: on.contract.cover_least_um.value,
    })
}

/// Returns where the patch goes; several in series only where even the longest single one would be too short.
fn place(defect: &Defect, choice: &PlanChoice, on: &Documents) -> Result<Vec<PlacedPatch>, Broken> {
    let centre = choice.centre_um.unwrap_or_else(|| defect.centre());
    let long = on.patch.length_um;
    let single = vec![around(centre, long)];
    if choice.centre_um.is_some() || !choice.in_series {
        return Ok(single);
    }
    let errors: i64 = errors(defect.centre(), choice, on)?
        .iter()
        .filter(|error| !(choice.marked_on_defect && error.kind == ErrorKind::Inspection))
        .map(|error| error.size_um.as_um())
        .sum();
    let plan = SeriesPlan {
        defect_from_um: defect.from_um,
        defect_to_um: defect.to_um,
        patch_length_um: long,
        cover_and_errors_um: Length::from_um(on.contract.cover_least_um.value.as_um() + errors),
        least_overlap_um: on.contract.series_overlap_um.value,
        placement_error_um: on.contract.placement_error_um.value,
    };
    let found = series(&plan).map_err(broken)?;
    Ok(found.centres_um.into_iter().map(|centre| around(centre, long)).collect())
}

fn around(centre: Length, long: Length) -> PlacedPatch {
    let from = centre.as_um() - long.as_um() / 2;
    PlacedPatch { from_um: Length::from_um(from), to_um: Length::from_um(from + long.as_um()) }
}

/// Returns the path from the reading point, with whole rods where rods are used.
fn mark(line: &Line, choice: &PlanChoice, centre: Length) -> Result<Mark, Broken> {
    let station = match choice.from_node {
        FromNode::Upstream => centre,
        FromNode::Downstream => Length::from_um(line.length_um.as_um() - centre.as_um()),
    };
    let point = &choice.reading_point;
    let name = match point.kind {
        ReadingPointKind::PipeMouth => "pipe mouth",
        ReadingPointKind::CleanoutCap => "cleanout cap",
    };
    let bends = usize::try_from(point.bends).unwrap_or_default();
    let share = if bends > 0 { point.bends_um.as_um() / point.bends } else { 0 };
    let from = rods::ReadingPoint {
        name: name.to_owned(),
        offset_um: point.offset_um,
        riser_um: point.riser_um,
        bends: vec![Bend { angle_deg: 90, adds_um: Length::from_um(share) }; bends],
    };
    match choice.way_in {
        WayIn::Rope | WayIn::Hose => {
            let path_um = rods::path(station, line.length_um, &from).map_err(broken)?;
            Ok(Mark { path_um, whole_rods: 0, remainder_um: path_um })
        }
        WayIn::Rods => {
            let straight = point.kind == ReadingPointKind::CleanoutCap && bends == 0 && point.riser_um.as_um() == 0;
            let pushed_from = match choice.below.trim() {
                "" if straight => PushedFrom::Below { who: "at the straight cleanout".into() },
                "" => PushedFrom::Street,
                who => PushedFrom::Below { who: who.to_owned() },
            };
            let push = rods::push(station, line.length_um, &from, &Mover::RigidRods { pushed_from }, choice.rod_um)
                .map_err(broken)?;
            Ok(Mark { path_um: push.path_um, whole_rods: push.whole_rods, remainder_um: push.mark_um })
        }
    }
}

fn sleeve(on: &Documents) -> Result<Length, Refused> {
    sleeve_length(on.packer.body_um, on.packer.sleeve_front_um.value, on.packer.sleeve_rear_um.value)
}

/// One band at each end of the sleeve, the others no further apart than the pitch.
fn sleeve_bands(on: &Documents) -> Result<Vec<Length>, Refused> {
    let pitch_um = on.packer.sleeve_pitch_um.value;
    let rule = BandRule { at_each_end: 1, edge_um: Length::default(), apart_um: Length::default(), pitch_um };
    bands(sleeve(on)?, &rule)
}

fn laterals_under(line: &Line, choice: &PlanChoice, patch: &PlacedPatch) -> Result<Vec<usize>, Broken> {
    let view = View::Downstream;
    let area = PatchArea {
        from_um: patch.from_um,
        to_um: patch.to_um,
        extent: Extent::AllRound { view },
        inside_diameter_um: choice.diameter_most_um,
    };
    let laterals: Result<Vec<_>, Refused> = line
        .laterals
        .iter()
        .map(|lateral| {
            // A lateral of unknown size may be as large as the line.
            let known = lateral.diameter_um.as_um() > 0;
            let dn_um = if known { lateral.diameter_um } else { line.height_um };
            Ok(laterals::Lateral { station_um: lateral.station_um, at: Hour::new(lateral.clock)?, view, dn_um })
        })
        .collect();
    laterals.and_then(|laterals| laterals::covered(&area, &laterals)).map_err(broken)
}

fn wrap(choice: &PlanChoice, patch: &PatchSheet) -> Result<Length, Broken> {
    let layers = u16::try_from(patch.plies).unwrap_or_default();
    packer_fit::cut_for(layers, choice.diameter_most_um, patch.seam_overlap_um.value).map_err(broken)
}

/// Whole containers are mixed whole, however little the patch takes.
fn batch(on: &Documents) -> Mass {
    match &on.resin.parts {
        Parts::Containers { mass_mg, .. } => *mass_mg,
        Parts::Weighed { .. } => on.patch.resin_mg.value,
    }
}

/// Returns the most pressure of a packer in a pipe of this size: the label's row at or above it.
pub fn packer_most(packer: &PackerSheet, diameter: Length) -> Option<Limit> {
    let row = packer.pressure_most.iter().find(|row| row.diameter_um >= diameter).or(packer.pressure_most.last())?;
    Some(Limit {
        name: format!("packer {} at {:.0} mm", packer.serial, diameter.as_mm()),
        most_pa: row.most_pa,
        source: row.source.clone(),
    })
}

fn window(choice: &PlanChoice, on: &Documents) -> Result<Window, Broken> {
    let limit = |name: &str, value: &crate::shelf::Sourced<Pressure>| Limit {
        name: name.to_owned(),
        most_pa: value.value,
        source: value.source.clone(),
    };
    let mut limits: Vec<Limit> = packer_most(on.packer, choice.diameter_most_um).into_iter().collect();
    limits.push(limit("patch", &on.patch.pressure_most_pa));
    limits.extend(on.contract.host_pipe_most_pa.as_ref().map(|value| limit("host pipe", value)));
    limits.extend(on.contract.pressure_most_pa.as_ref().map(|value| limit("contract", value)));
    let least = Least {
        gauge_pa: on.patch.gauge_least_pa.value,
        net_pa: on.patch.net_least_pa.value,
        source: on.patch.gauge_least_pa.source.clone(),
    };
    let found = pressure_window(&least, choice.head_um, &limits).map_err(broken)?;
    let middle = (found.printed_low().as_pa() + found.printed_high().as_pa()) / 2;
    Ok(Window {
        lower_pa: found.printed_low(),
        upper_pa: found.printed_high(),
        lower_governs: match found.low_governs {
            LowGoverns::LeastGauge => "least gauge".to_owned(),
            LowGoverns::LeastNetAndWater => "least net and water".to_owned(),
        },
        upper_governs: found.high_governs,
        water_pa: found.water_pa,
        net_least_pa: on.patch.net_least_pa.value,
        target_pa: Pressure::from_pa(middle / 1000 * 1000),
    })
}
