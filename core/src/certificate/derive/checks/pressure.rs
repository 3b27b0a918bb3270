//! The pressure: both limits of the window, and the net pressure on the wall.

use super::super::{Case, hold, words};
use super::{Margin, limited, row};
use crate::certificate::content::Check;
use crate::checks::pressure_window::WATER_BAR_PER_M;
use crate::procedure::plan::Plan;
use crate::units::Pressure;
use crate::words::tell;

/// Returns the rows about the pressure of the hold; empty where there was none.
pub fn rows(case: &Case) -> Vec<Check> {
    let (Some((plan, _)), Some(state)) = (case.work(), case.hold.as_ref()) else { return vec![] };
    let Some((lowest, counted, highest)) = hold::extremes(state) else { return vec![] };
    vec![lower(plan, lowest, counted), upper(plan, highest), net(plan, lowest)]
}

fn less(a: Pressure, b: Pressure) -> Pressure {
    Pressure::from_pa(a.as_pa() - b.as_pa())
}

/// Returns the pressure of a metre of water, with the decimal sign of the language.
fn water_per_metre() -> String {
    crate::words::number(WATER_BAR_PER_M, 7)
}

fn lower(plan: &Plan, lowest: Pressure, counted: Option<Pressure>) -> Check {
    let (window, patch) = (&plan.computed.window, &plan.patch);
    let formula =
        tell!("cert-pressure-lower", water = water_per_metre(), source = patch.gauge_least_pa.source.as_str());
    let inputs = format!(
        "{}; {} + {}",
        words::bar_bare(patch.gauge_least_pa.value),
        words::bar_bare(window.net_least_pa),
        // Up to the millibar: the water is never made lighter.
        words::bar_fine_up(window.water_pa),
    );
    let inside = counted.map_or_else(
        || tell!("cert-place-none_counted"),
        |gauge| tell!("cert-pressure-counted", pressure = words::bar_bare(gauge)),
    );
    let result = tell!("cert-pressure-min", inside, pressure = words::bar(lowest));
    let margin = match counted {
        Some(gauge) => {
            Margin::Left(tell!("cert-pressure-counted_2", pressure = words::bar(less(gauge, window.lower_pa))))
        }
        None => Margin::Unknown(tell!("cert-pressure-nothing_counted")),
    };
    limited(
        row(&tell!("cert-pressure-window_lower_limit"), formula, inputs, result),
        format!("≥ {}", words::bar(window.lower_pa)),
        margin,
    )
}

fn upper(plan: &Plan, highest: Pressure) -> Check {
    let window = &plan.computed.window;
    let limits = limits(plan);
    let names = words::joined(limits.iter().map(|limit| limit.name.clone()), ", ");
    let mut sources: Vec<String> = limits.iter().map(|limit| limit.source.clone()).collect();
    sources.dedup();
    let inputs = words::joined(limits.iter().map(|limit| words::bar_bare(limit.most)), ", ");
    let margin = if highest <= window.upper_pa {
        Margin::Left(words::bar(less(window.upper_pa, highest)))
    } else {
        // Such a reading fails nothing: its minutes don't count.
        Margin::Unknown(tell!("cert-pressure-over", pressure = words::bar(less(highest, window.upper_pa))))
    };
    let formula = format!("min({names}). {}", sources.join("; "));
    let result = row(
        &tell!("cert-pressure-window_upper_limit"),
        formula,
        format!("{inputs} {}", words::bar_unit()),
        tell!("cert-pressure-max", pressure = words::bar(highest)),
    );
    limited(result, format!("≤ {}", words::bar(window.upper_pa)), margin)
}

struct Limit {
    name: String,
    most: Pressure,
    source: String,
}

fn limits(plan: &Plan) -> Vec<Limit> {
    let (wide, rows) = (plan.choice.diameter_most_um, &plan.packer.pressure_most);
    let packer = rows.iter().find(|row| row.diameter_um >= wide).map(|row| Limit {
        name: tell!("cert-pressure-packer_up_to", size = words::mm(row.diameter_um)),
        most: row.most_pa,
        source: row.source.clone(),
    });
    let sourced = |name: String, limit: &crate::shelf::Sourced<Pressure>| Limit {
        name,
        most: limit.value,
        source: limit.source.clone(),
    };
    let contract = &plan.contract;
    packer
        .into_iter()
        .chain([sourced(tell!("cert-place-patch"), &plan.patch.pressure_most_pa)])
        .chain(contract.host_pipe_most_pa.as_ref().map(|limit| sourced(tell!("cert-pressure-host_pipe"), limit)))
        .chain(contract.pressure_most_pa.as_ref().map(|limit| sourced(tell!("cert-pressure-contract"), limit)))
        .collect()
}

fn net(plan: &Plan, lowest: Pressure) -> Check {
    let window = &plan.computed.window;
    let net = less(lowest, window.water_pa);
    let formula =
        tell!("cert-pressure-net", water = water_per_metre(), source = plan.patch.net_least_pa.source.as_str());
    let left = less(net, window.net_least_pa);
    let margin = if left.as_pa() >= 0 {
        Margin::Left(words::bar_down(left))
    } else {
        Margin::Fails(words::bar_up(Pressure::from_pa(-left.as_pa())))
    };
    let inputs = format!("{}, {}", words::bar(lowest), words::metres(plan.choice.head_um));
    let result = row(&tell!("cert-pressure-net_pressure"), formula, inputs, words::bar_down(net));
    limited(result, format!("≥ {}", words::bar(window.net_least_pa)), margin)
}
