//! The values that were entered from the data sheets and the contract, each with its source.

use super::{Case, identity, words};
use crate::certificate::content::{SheetValue, Sheets};
use crate::procedure::line::Origin;
use crate::procedure::plan::Plan;
use crate::shelf::Sourced;
use crate::shelf::contract::{DoubtRule, FoldLimit, GapRule};
use crate::shelf::sheets::{CountsFrom, Parts, TimeRows, TimeTable};
use crate::units::{Pressure, Span};

/// Returns every value that judged the repair, and where the defect was read.
pub fn sheets(case: &Case) -> Sheets {
    let remark = match case.plan {
        Some(_) => "as entered; the program ships no process values of its own",
        None => "no plan was accepted",
    };
    let planned = case.plan.map(|plan| [resin(plan), pressure(plan), binding(plan), contract(plan)].concat());
    let mut rows = planned.unwrap_or_default();
    rows.extend(inspection(case));
    Sheets { remark: remark.into(), rows }
}

/// Returns what was taken from the inspection and the owner's list of nodes.
fn inspection(case: &Case) -> Vec<SheetValue> {
    let line = &case.repair.line;
    let nodes = [&line.upstream, &line.downstream].into_iter().filter_map(|node| {
        let place = node.place.filter(|place| (place.lat_e7, place.lon_e7) != (0, 0))?;
        Some(row(&node.name, identity::degrees(place.lat_e7, place.lon_e7), "coordinates of the node, as read in"))
    });
    let read = match &case.repair.defect.origin {
        Origin::ByHand => row("Defect", "entered by hand".into(), "no inspection was read in"),
        Origin::Inspection { file, sha256, date, lines, .. } => {
            let lines = words::joined(lines.iter().map(u64::to_string), ", ");
            let what = format!("{}, lines {}", words::or(date, "without a date"), words::or(&lines, "not kept"));
            row("Defect", what, &format!("{file}, SHA-256 {sha256}"))
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
    let hold_from = format!("{} from {}", table(&resin.hold), from(resin.counts_from.value));
    let cure_from = format!("{} from {}", table(&resin.full_cure), from(resin.cure_counts_from()));
    let (ratio, ratio_source) = match &resin.parts {
        Parts::Weighed { ratio_permille, tolerance_permille, source } => (
            format!(
                "{} : 1 by mass, ± {} %",
                words::exact(*ratio_permille, 1_000, 2),
                words::exact(*tolerance_permille, 10, 0)
            ),
            source,
        ),
        Parts::Containers { kit, mass_mg, source } => {
            (format!("whole containers: {kit}, {}", words::grams(*mass_mg)), source)
        }
    };
    let temperatures = words::celsius_range(resin.temperature_least_mc.value, resin.temperature_most_mc.value);
    let stored = words::celsius_range(resin.storage_least_mc.value, resin.storage_most_mc.value);
    vec![
        row("Working time", format!("{}, for up to {batch}", table(&resin.working_time)), &resin.working_time.source),
        row("Hold", hold_from, &resin.hold.source),
        row("Full cure", cure_from, &resin.full_cure.source),
        row("Parts A and B", ratio, ratio_source),
        row(
            "Mixing",
            format!("at least {}", words::lasting(resin.mixing_least_ms.value)),
            &resin.mixing_least_ms.source,
        ),
        row("Resin temperature", temperatures, &resin.temperature_least_mc.source),
        row("Storage", stored, &resin.storage_least_mc.source),
    ]
}

fn from(moment: CountsFrom) -> &'static str {
    match moment {
        CountsFrom::Joined => "joining",
        CountsFrom::TargetPressure => "target pressure",
    }
}

/// Returns `45 min at 15 °C, 30 min at 20 °C`.
fn table(table: &TimeTable) -> String {
    let time = |span: Span| words::lasting(span);
    match &table.rows {
        TimeRows::Points { points } => {
            let points =
                points.iter().map(|point| format!("{} at {}", time(point.ms), words::celsius_short(point.at_mc)));
            words::joined(points, ", ")
        }
        TimeRows::Range { from_mc, to_mc, ms } => {
            format!("{} at {}", time(*ms), words::celsius_range(*from_mc, *to_mc))
        }
    }
}

fn pressure(plan: &Plan) -> Vec<SheetValue> {
    let patch = &plan.patch;
    let least = format!(
        "least gauge {}, least net {}",
        words::bar(patch.gauge_least_pa.value),
        words::bar(patch.net_least_pa.value)
    );
    let packer = &plan.packer;
    let by_size = packer
        .pressure_most
        .iter()
        .map(|limit| format!("{} up to {}", words::bar(limit.most_pa), words::mm(limit.diameter_um)));
    let label = packer.pressure_most.first().map_or("not stated", |limit| limit.source.as_str());
    let test = format!("{} for {}", words::bar(packer.test_pressure_pa.value), words::lasting(packer.test_ms.value));
    vec![
        row("Pressure", least, &both(&patch.gauge_least_pa.source, &patch.net_least_pa.source)),
        row("Most, packer", words::joined(by_size, ", "), label),
        row("Most, patch", words::bar(patch.pressure_most_pa.value), &patch.pressure_most_pa.source),
        stated("Most, host pipe", plan.contract.host_pipe_most_pa.as_ref()),
        stated("Most, contract", plan.contract.pressure_most_pa.as_ref()),
        row("Packer test", test, &both(&packer.test_pressure_pa.source, &packer.test_ms.source)),
    ]
}

fn stated(name: &str, limit: Option<&Sourced<Pressure>>) -> SheetValue {
    match limit {
        Some(limit) => row(name, words::bar(limit.value), &limit.source),
        None => row(name, "none stated".into(), "nobody has stated one"),
    }
}

/// Returns two sources, or the one where they are the same.
fn both(a: &str, b: &str) -> String {
    if a == b { a.to_owned() } else { format!("{a}; {b}") }
}

fn binding(plan: &Plan) -> Vec<SheetValue> {
    let (patch, packer) = (&plan.patch, &plan.packer);
    let ends = format!(
        "at least {}, equal within {}",
        words::mm(patch.bare_end_least_um.value),
        words::mm(patch.bare_end_tolerance_um.value)
    );
    let range = words::mm_between(packer.diameter_least_um.value, packer.diameter_most_um.value);
    vec![
        row("Bare ends", ends, &patch.bare_end_least_um.source),
        row("Packer range", range, &packer.diameter_most_um.source),
        row("Soaked patch", format!("{} of resin", words::grams(patch.resin_mg.value)), &patch.resin_mg.source),
    ]
}

fn contract(plan: &Plan) -> Vec<SheetValue> {
    let contract = &plan.contract;
    let readings = format!(
        "every {}, grace {}",
        words::lasting(contract.reading_interval_ms.value),
        words::lasting(contract.reading_grace_ms.value)
    );
    let gap = match contract.gap_rule.value {
        GapRule::Whole => "a longer gap is lost whole",
        GapRule::Excess => "of a longer gap the excess is lost",
    };
    let lateral =
        format!("open {} to {} %", contract.lateral_open_least_pct.value, contract.lateral_open_most_pct.value);
    let doubt = match contract.doubtful.value {
        DoubtRule::ForemanDecides => "the foreman decides after the camera",
        DoubtRule::NewAttempt => "a new attempt",
    };
    let test = if contract.tightness_test.value { "asked after full cure" } else { "not asked" };
    vec![
        row(
            "Cover each side",
            format!("at least {}", words::mm(contract.cover_least_um.value)),
            &contract.cover_least_um.source,
        ),
        row("Readings", readings, &contract.reading_interval_ms.source),
        row("Gap rule", gap.into(), &contract.gap_rule.source),
        row("Fold", fold(contract.fold_limit.value), &contract.fold_limit.source),
        row("Lateral", lateral, &contract.lateral_open_least_pct.source),
        row("Doubtful hold", doubt.into(), &contract.doubtful.source),
        row("Air or water test", test.into(), &contract.tightness_test.source),
        row("Second go", aged(contract.temperatures_age_ms.value), &contract.temperatures_age_ms.source),
        row("Margin", words::lasting(contract.margin_ms.value), &contract.margin_ms.source),
        row(
            "Cleaning",
            format!("viewed again within {}", words::lasting(contract.cleaning_age_ms.value)),
            &contract.cleaning_age_ms.source,
        ),
    ]
}

fn aged(span: Span) -> String {
    format!("temperatures no older than {}", words::lasting(span))
}

/// Returns the fold limit in words.
pub fn fold(limit: FoldLimit) -> String {
    match limit {
        FoldLimit::ShareOrHeight { share_permille, height_um } => {
            format!("the greater of {} % of DN and {}", words::exact(share_permille, 10, 0), words::mm(height_um))
        }
        FoldLimit::Share { share_permille } => format!("{} % of DN", words::exact(share_permille, 10, 0)),
    }
}
