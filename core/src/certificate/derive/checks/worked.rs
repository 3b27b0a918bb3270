//! What was worked out for the repair by name: the last of each check, with its formula, its source and its inputs.

use serde_json::Value;

use super::super::Case;
use super::{row, sourced};
use crate::certificate::content::Check;
use crate::checks::field::Field;
use crate::checks::named::{self, Worked};

/// Returns a row for the last of each check that was worked out.
pub fn rows(case: &Case) -> Vec<Check> {
    case.repair.worked_last().into_iter().map(|one| printed(&one.worked)).collect()
}

/// The name, the value that counts with its unit, and what to mind.
const PRINTED: [(&str, &str, &str, &str, &str); 18] = [
    ("ovality-factor", "Ovality factor", "factor", "", ""),
    ("wall-thickness", "Wall thickness", "required_mm", "mm", "A check for a licensed engineer, not a design."),
    ("air-test-f1417", "Air test, time", "time_s", "s", "Local codes win."),
    ("air-test-en1610", "Air test, time", "time_rounded_min", "min", "Local codes win."),
    ("water-test-en1610", "Water test, may be added", "allowed_l", "l", "Local codes win."),
    ("resin-wall", "Resin for the wall", "mass_kg", "kg", ""),
    ("resin-laminate", "Resin for the laminate", "mass_kg", "kg", ""),
    ("working-time", "Working time by the sheet", "minutes", "min", ""),
    ("equivalent-age", "Equivalent age", "minutes", "min", "May lengthen the hold, never shorten it."),
    ("packer-pressure", "Packer after cooling", "gauge_bar", "bar", ""),
    ("net-pressure", "Net pressure", "net_kpa", "kPa", ""),
    ("end-thrust", "End thrust", "force_n", "N", ""),
    ("geodesic", "Distance on the map", "distance_m", "m", ""),
    ("station-position", "Place of the station", "lat", "°", ""),
    ("atmosphere", "Air readings", "acceptable", "", ""),
    ("partial-flow", "Flow in the pipe", "flow_l_s", "l/s", ""),
    ("time-to-surcharge", "Storage of the line above", "minutes", "min", ""),
    ("pressure-decay", "Leak or cooling", "verdict", "", ""),
];

fn printed(worked: &Worked) -> Check {
    let known = PRINTED.iter().find(|(name, ..)| *name == worked.name);
    let (_, title, main, unit, mind) = known.copied().unwrap_or(("", &worked.name, "", "", ""));
    let formula = sourced(&worked.formula, &worked.source);
    let formula = if mind.is_empty() { formula } else { format!("{formula}. {mind}") };
    let result = worked.result.get(main).map_or_else(|| "see the inputs".into(), |found| said(found, unit));
    row(title, formula, inputs(worked, main), result)
}

/// Returns the fields with their units, what was typed beside them, then the other values that came out.
fn inputs(worked: &Worked, main: &str) -> String {
    let check = named::all().into_iter().find(|check| check.name == worked.name);
    let fields = check.map_or(&[] as &[Field], |check| check.fields);
    let unit = |name: &str| fields.iter().find(|field| field.name == name).map_or("", |field| field.unit);
    let given = worked.fields.as_object().into_iter().flatten().filter(|(_, value)| !value.is_null());
    let mut parts: Vec<String> = given
        .map(|(name, value)| {
            let typed = worked.typed.get(name).and_then(Value::as_str);
            let typed = typed.map_or_else(String::new, |typed| format!(" (entered {typed})"));
            format!("{} {}{typed}", words(name), said(value, unit(name)))
        })
        .collect();
    let others = worked.result.as_object().into_iter().flatten();
    let told =
        others.filter(|(name, value)| *name != main && *name != "caution" && *name != "strength" && !value.is_null());
    parts.extend(told.map(|(name, value)| format!("gives {} {}", words(name), said(value, ""))));
    parts.join("; ")
}

/// Returns `inside diameter mm` of `inside_diameter_mm`.
fn words(name: &str) -> String {
    name.replace('_', " ")
}

fn said(value: &Value, unit: &str) -> String {
    let bare = match value {
        Value::Number(number) => number.as_f64().map_or_else(String::new, short),
        Value::Bool(yes) => if *yes { "yes" } else { "no" }.into(),
        Value::String(word) => word.replace('_', " "),
        Value::Array(rows) if rows.iter().all(Value::is_array) && !rows.is_empty() => format!("{} rows", rows.len()),
        Value::Array(all) => all.iter().map(|one| said(one, "")).collect::<Vec<_>>().join(", "),
        Value::Object(object) => {
            object.iter().map(|(name, one)| format!("{} {}", words(name), said(one, ""))).collect::<Vec<_>>().join(", ")
        }
        Value::Null => "–".into(),
    };
    if unit.is_empty() { bare } else { format!("{bare} {unit}") }
}

/// Returns a number to six significant digits at most, without zeros at its end.
fn short(value: f64) -> String {
    let whole = if value == 0.0 { 0 } else { crate::maths::ln(value.abs()).div_euclid(std::f64::consts::LN_10) as i32 };
    let decimals = usize::try_from((5 - whole).clamp(0, 8)).unwrap_or(0);
    let text = format!("{value:.decimals$}").replace('-', "−");
    if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.').to_owned() } else { text }
}

#[cfg(test)]
mod tests {
    use super::*;
    use serde_json::json;

    #[test]
    fn every_named_check_has_its_printed_name() {
        let names: Vec<_> = named::all().into_iter().map(|check| check.name).collect();
        assert_eq!(PRINTED.map(|(name, ..)| name).to_vec(), names);
    }

    #[test]
    fn a_row_names_formula_source_inputs_and_what_was_typed() {
        let mut worked =
            named::worked("end-thrust", &json!({ "gauge_bar": 1.5, "inside_diameter_mm": 203.2 })).unwrap();
        worked.typed.insert("inside_diameter_mm".into(), json!("8 in"));
        let found = printed(&worked);
        // π/4 · 0.2032² m² · 150 000 Pa.
        assert_eq!((found.name.as_str(), found.result.as_str()), ("End thrust", "4864.39 N"));
        assert_eq!(found.inputs, "gauge bar 1.5 bar; inside diameter mm 203.2 mm (entered 8 in)");
        assert!(found.formula.starts_with("F = π/4·ID²·p. statics"));
    }

    #[test]
    fn numbers_are_cut_to_what_somebody_reads() {
        assert_eq!(
            [short(0.0), short(1234.5678), short(0.000_123_456_7), short(-2.5)],
            ["0", "1234.57", "0.00012346", "−2.5"]
        );
    }
}
