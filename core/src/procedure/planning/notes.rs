//! What the crew should know of a plan beside its figures.

use crate::procedure::line::Line;
use crate::procedure::plan::Plan;
use crate::procedure::rules::show;

/// Returns the notes, the weightiest first.
pub fn notes(line: &Line, plan: &Plan, now_ms: i64) -> Vec<String> {
    let mut notes = vec![];
    let count = plan.computed.patches.len();
    if count > 1 {
        let centres: Vec<String> =
            plan.computed.patches.iter().map(|patch| format!("{:.3} m", patch.centre().as_m())).collect();
        notes.push(format!(
            "{count} patches in series, centres at {} from {}. Each is a repair of its own; this one is the first.",
            centres.join(", "),
            line.upstream.name
        ));
    }
    for lateral in plan.computed.covered.iter().filter_map(|index| line.laterals.get(*index)) {
        let station = lateral.station_um.as_m();
        notes.push(format!(
            "The patch covers the lateral at {station:.2} m, {} o’clock. It must be opened after full cure.",
            lateral.clock
        ));
    }
    if !plan.choice.diameter_measured {
        notes.push("The inside diameter is the nominal one. Measure it before the packer goes in.".to_owned());
    }
    if plan.choice.reading_point.offset_um.as_um() == 0 {
        notes.push("The reading point has no distance from the node’s centre yet. Measure and enter it.".to_owned());
    }
    notes.extend(closures(plan, now_ms));
    notes
}

/// Says which closures would end before the hold, if the parts were joined now.
fn closures(plan: &Plan, now_ms: i64) -> Vec<String> {
    let budget = &plan.computed.budget;
    let work = budget.wet_out_ms.as_ms() + budget.loaded_push_ms.as_ms() + budget.connect_ms.as_ms();
    let ends = now_ms + work + plan.computed.hold_ms.as_ms();
    plan.choice
        .closures
        .iter()
        .filter(|closure| closure.until_ms < ends)
        .map(|closure| {
            let short = show("ms", ends - closure.until_ms);
            format!("{} ends {short} before the hold would, if the parts were joined now.", closure.what)
        })
        .collect()
}
