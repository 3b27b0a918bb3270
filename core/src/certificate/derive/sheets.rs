//! The values that were entered from the data sheets and the contract, each with its source.

use super::{Case, words};
use crate::certificate::content::{SheetValue, Sheets};
use crate::procedure::plan::Plan;
use crate::shelf::contract::{DoubtRule, FoldLimit, GapRule};
use crate::shelf::sheets::{CountsFrom, Parts, TimeRows, TimeTable};
use crate::units::Span;

/// Returns every value that judged the repair; empty without a plan.
pub fn sheets(case: &Case) -> Sheets {
    let remark = match case.plan {
        Some(_) => "as entered; the program ships no process values of its own",
        None => "no plan was accepted",
    };
    let rows = case.plan.map(|plan| {
        let mut rows = resin(plan);
        rows.extend(pressure(plan));
        rows.extend(binding(plan));
        rows.extend(contract(plan));
        rows
    });
    Sheets { remark: remark.into(), rows: rows.unwrap_or_default() }
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
            let points = points.iter().map(|point| {
                let at = words::exact(point.at_mc.as_millicelsius(), 1_000, 0);
                format!("{} at {at} °C", time(point.ms))
            });
            words::joined(points, ", ")
        }
        TimeRows::Range { from_mc, to_mc, ms } => {
            format!("{} at {}", time(*ms), words::celsius_range(*from_mc, *to_mc))
        }
    }
}

fn pressure(plan: &Plan) -> Vec<SheetValue> {
    let patch = &plan.patch;
    let mut rows = vec![
        row("Least gauge", words::bar(patch.gauge_least_pa.value), &patch.gauge_least_pa.source),
        row("Least net", words::bar(patch.net_least_pa.value), &patch.net_least_pa.source),
        row("Most, patch", words::bar(patch.pressure_most_pa.value), &patch.pressure_most_pa.source),
    ];
    rows.extend(plan.packer.pressure_most.iter().map(|limit| {
        let most = format!("{} up to {}", words::bar(limit.most_pa), words::mm(limit.diameter_um));
        row("Most, packer", most, &limit.source)
    }));
    let limits =
        [("Most, host pipe", &plan.contract.host_pipe_most_pa), ("Most, contract", &plan.contract.pressure_most_pa)];
    rows.extend(limits.into_iter().map(|(name, limit)| match limit {
        Some(limit) => row(name, words::bar(limit.value), &limit.source),
        None => row(name, "none stated".into(), "nobody has stated one"),
    }));
    let packer = &plan.packer;
    let test = format!("{} for {}", words::bar(packer.test_pressure_pa.value), words::lasting(packer.test_ms.value));
    rows.push(row("Packer test", test, &packer.test_pressure_pa.source));
    rows
}

fn binding(plan: &Plan) -> Vec<SheetValue> {
    let (patch, packer) = (&plan.patch, &plan.packer);
    let ends = format!(
        "at least {}, equal within {}",
        words::mm(patch.bare_end_least_um.value),
        words::mm(patch.bare_end_tolerance_um.value)
    );
    let range =
        format!("{} to {}", words::mm_bare(packer.diameter_least_um.value), words::mm(packer.diameter_most_um.value));
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
    let errors = plan.computed.cover.errors.iter().map(|error| {
        row(&format!("Error, {}", error.what), format!("{} at this defect", words::mm(error.um)), &error.source)
    });
    let mut rows = vec![
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
    ];
    rows.extend(errors);
    rows
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
