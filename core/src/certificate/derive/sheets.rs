//! The values that were entered from the data sheets and the contract, each with its source.

use super::{Case, identity, words};
use crate::certificate::content::{SheetValue, Sheets};
use crate::procedure::line::Origin;
use crate::procedure::plan::Plan;
use crate::shelf::Sourced;
use crate::shelf::contract::{DoubtRule, FoldLimit, GapRule};
use crate::shelf::sheets::{CountsFrom, Parts, TimeRows, TimeTable};
use crate::units::{Pressure, Span};
use crate::words::tell;

/// Returns every value that judged the repair, and where the defect was read.
pub fn sheets(case: &Case) -> Sheets {
    let remark = match case.plan {
        Some(_) => tell!("cert-sheets-as_entered_the_program_ships"),
        None => tell!("cert-sheets-no_plan_was_accepted"),
    };
    let planned = case.plan.map(|plan| [resin(plan), pressure(plan), binding(plan), contract(plan)].concat());
    let mut rows = planned.unwrap_or_default();
    rows.extend(inspection(case));
    Sheets { remark, rows }
}

/// Returns what was taken from the inspection and the owner's list of nodes.
fn inspection(case: &Case) -> Vec<SheetValue> {
    let line = &case.repair.line;
    let nodes = [&line.upstream, &line.downstream].into_iter().filter_map(|node| {
        let place = node.place.filter(|place| (place.lat_e7, place.lon_e7) != (0, 0))?;
        Some(row(
            &node.name,
            identity::degrees(place.lat_e7, place.lon_e7),
            &tell!("cert-sheets-coordinates_of_the_node_as"),
        ))
    });
    let read = match &case.repair.defect.origin {
        Origin::ByHand => row(
            &tell!("cert-place-defect"),
            tell!("cert-place-entered_by_hand"),
            &tell!("cert-sheets-no_inspection_was_read_in"),
        ),
        Origin::Inspection { file, sha256, date, lines, .. } => {
            let lines = words::joined(lines.iter().map(u64::to_string), ", ");
            let what = tell!(
                "cert-sheets-lines",
                date = words::or(date, &tell!("cert-identity-without_a_date")),
                lines = words::or(&lines, &tell!("cert-sheets-not_kept"))
            );
            row(&tell!("cert-place-defect"), what, &format!("{file}, SHA-256 {sha256}"))
        }
    };
    std::iter::once(read).chain(nodes).collect()
}

fn row(name: &str, as_entered: String, source: &str) -> SheetValue {
    SheetValue { name: name.into(), as_entered, source: source.into() }
}

fn resin(plan: &Plan) -> Vec<SheetValue> {
    let resin = &plan.resin;
    let batch = words::grams(resin.batch_most_mg.value);
    let hold_from = tell!("cert-sheets-from", table = table(&resin.hold), from = from(resin.counts_from.value));
    let cure_from = tell!("cert-sheets-from", table = table(&resin.full_cure), from = from(resin.cure_counts_from()));
    let (ratio, ratio_source) = match &resin.parts {
        Parts::Weighed { ratio_permille, tolerance_permille, source } => (
            tell!(
                "cert-sheets-1_by_mass",
                ratio = words::exact(*ratio_permille, 1_000, 2),
                tolerance = words::exact(*tolerance_permille, 10, 0)
            ),
            source,
        ),
        Parts::Containers { kit, mass_mg, source } => {
            (tell!("cert-sheets-whole_containers", kit, mass = words::grams(*mass_mg)), source)
        }
    };
    let temperatures = words::celsius_range(resin.temperature_least_mc.value, resin.temperature_most_mc.value);
    let stored = words::celsius_range(resin.storage_least_mc.value, resin.storage_most_mc.value);
    vec![
        row(
            &tell!("cert-heading-working_time"),
            tell!("cert-sheets-for_up_to", batch, table = table(&resin.working_time)),
            &resin.working_time.source,
        ),
        row(&tell!("cert-identity-hold"), hold_from, &resin.hold.source),
        row(&tell!("cert-sheets-full_cure"), cure_from, &resin.full_cure.source),
        row(&tell!("cert-sheets-parts_a_and_b"), ratio, ratio_source),
        row(
            &tell!("cert-sheets-mixing"),
            tell!("cert-sheets-at_least", value = words::lasting(resin.mixing_least_ms.value)),
            &resin.mixing_least_ms.source,
        ),
        row(&tell!("cert-sheets-resin_temperature"), temperatures, &resin.temperature_least_mc.source),
        row(&tell!("cert-sheets-storage"), stored, &resin.storage_least_mc.source),
    ]
}

fn from(moment: CountsFrom) -> String {
    match moment {
        CountsFrom::Joined => tell!("cert-sheets-joining"),
        CountsFrom::TargetPressure => tell!("cert-sheets-target_pressure"),
    }
}

/// Returns `45 min at 15 °C, 30 min at 20 °C`.
fn table(table: &TimeTable) -> String {
    let time = |span: Span| words::lasting(span);
    match &table.rows {
        TimeRows::Points { points } => {
            let points = points.iter().map(|point| {
                tell!("cert-sheets-at", time = time(point.ms), temperature = words::celsius_short(point.at_mc))
            });
            words::joined(points, ", ")
        }
        TimeRows::Range { from_mc, to_mc, ms } => {
            tell!("cert-sheets-at", time = time(*ms), temperature = words::celsius_range(*from_mc, *to_mc))
        }
    }
}

fn pressure(plan: &Plan) -> Vec<SheetValue> {
    let patch = &plan.patch;
    let least = tell!(
        "cert-sheets-least_gauge_least_net",
        gauge = words::bar(patch.gauge_least_pa.value),
        net = words::bar(patch.net_least_pa.value)
    );
    let packer = &plan.packer;
    let by_size = packer.pressure_most.iter().map(|limit| {
        tell!("cert-sheets-up_to", pressure = words::bar(limit.most_pa), size = words::mm(limit.diameter_um))
    });
    let label =
        packer.pressure_most.first().map_or_else(|| tell!("cert-sheets-not_stated"), |limit| limit.source.clone());
    let test = tell!(
        "cert-sheets-for",
        pressure = words::bar(packer.test_pressure_pa.value),
        time = words::lasting(packer.test_ms.value)
    );
    vec![
        row(&tell!("cert-sheets-pressure"), least, &both(&patch.gauge_least_pa.source, &patch.net_least_pa.source)),
        row(&tell!("cert-sheets-most_packer"), words::joined(by_size, ", "), &label),
        row(&tell!("cert-sheets-most_patch"), words::bar(patch.pressure_most_pa.value), &patch.pressure_most_pa.source),
        stated(&tell!("cert-sheets-most_host_pipe"), plan.contract.host_pipe_most_pa.as_ref()),
        stated(&tell!("cert-sheets-most_contract"), plan.contract.pressure_most_pa.as_ref()),
        row(&tell!("cert-sheets-packer_test"), test, &both(&packer.test_pressure_pa.source, &packer.test_ms.source)),
    ]
}

fn stated(name: &str, limit: Option<&Sourced<Pressure>>) -> SheetValue {
    match limit {
        Some(limit) => row(name, words::bar(limit.value), &limit.source),
        None => row(name, tell!("cert-materials-none_stated"), &tell!("cert-sheets-nobody_has_stated_one")),
    }
}

/// Returns two sources, or the one where they are the same.
fn both(a: &str, b: &str) -> String {
    if a == b { a.to_owned() } else { format!("{a}; {b}") }
}

fn binding(plan: &Plan) -> Vec<SheetValue> {
    let (patch, packer) = (&plan.patch, &plan.packer);
    let ends = tell!(
        "cert-sheets-at_least_equal_within",
        least = words::mm(patch.bare_end_least_um.value),
        tolerance = words::mm(patch.bare_end_tolerance_um.value)
    );
    let range = words::mm_between(packer.diameter_least_um.value, packer.diameter_most_um.value);
    vec![
        row(&tell!("cert-sheets-bare_ends"), ends, &patch.bare_end_least_um.source),
        row(&tell!("cert-sheets-packer_range"), range, &packer.diameter_most_um.source),
        row(
            &tell!("cert-sheets-soaked_patch"),
            tell!("cert-attempts-of_resin", mass = words::grams(patch.resin_mg.value)),
            &patch.resin_mg.source,
        ),
    ]
}

fn contract(plan: &Plan) -> Vec<SheetValue> {
    let contract = &plan.contract;
    let readings = tell!(
        "cert-sheets-every_grace",
        interval = words::lasting(contract.reading_interval_ms.value),
        grace = words::lasting(contract.reading_grace_ms.value)
    );
    let gap = match contract.gap_rule.value {
        GapRule::Whole => tell!("cert-sheets-a_longer_gap_is_lost"),
        GapRule::Excess => tell!("cert-sheets-of_a_longer_gap_the"),
    };
    let lateral = tell!(
        "cert-sheets-open_to",
        least = contract.lateral_open_least_pct.value,
        most = contract.lateral_open_most_pct.value
    );
    let doubt = match contract.doubtful.value {
        DoubtRule::ForemanDecides => tell!("cert-sheets-the_foreman_decides_after_the"),
        DoubtRule::NewAttempt => tell!("cert-sheets-a_new_attempt"),
    };
    let test = if contract.tightness_test.value {
        tell!("cert-sheets-asked_after_full_cure")
    } else {
        tell!("cert-sheets-not_asked")
    };
    vec![
        row(
            &tell!("cert-sheets-cover_each_side"),
            tell!("cert-sheets-at_least", value = words::mm(contract.cover_least_um.value)),
            &contract.cover_least_um.source,
        ),
        row(&tell!("cert-sheets-readings"), readings, &contract.reading_interval_ms.source),
        row(&tell!("cert-sheets-gap_rule"), gap, &contract.gap_rule.source),
        row(&tell!("cert-sheets-fold"), fold(contract.fold_limit.value), &contract.fold_limit.source),
        row(&tell!("cert-sheets-lateral"), lateral, &contract.lateral_open_least_pct.source),
        row(&tell!("cert-sheets-doubtful_hold"), doubt, &contract.doubtful.source),
        row(&tell!("cert-findings-air_or_water_test"), test, &contract.tightness_test.source),
        row(
            &tell!("cert-sheets-second_go"),
            aged(contract.temperatures_age_ms.value),
            &contract.temperatures_age_ms.source,
        ),
        row(&tell!("cert-sheets-margin"), words::lasting(contract.margin_ms.value), &contract.margin_ms.source),
        row(
            &tell!("cert-sheets-cleaning"),
            tell!("cert-sheets-viewed_again_within", time = words::lasting(contract.cleaning_age_ms.value)),
            &contract.cleaning_age_ms.source,
        ),
    ]
}

fn aged(span: Span) -> String {
    tell!("cert-sheets-temperatures_no_older_than", time = words::lasting(span))
}

/// Returns the fold limit in words.
pub fn fold(limit: FoldLimit) -> String {
    match limit {
        FoldLimit::ShareOrHeight { share_permille, height_um } => {
            tell!(
                "cert-sheets-the_greater_of_of_dn",
                percent = words::exact(share_permille, 10, 0),
                height = words::mm(height_um)
            )
        }
        FoldLimit::Share { share_permille } => {
            tell!("cert-sheets-of_dn", percent = words::exact(share_permille, 10, 0))
        }
    }
}
