//! What was worked out for the repair by name: the last of each check, with its formula, its source and its inputs.

use crate::words::{say, tell};
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

/// The name, the value that counts with its unit, and the message of what to mind.
const PRINTED: [(&str, &str, &str, &str); 18] = [
    ("ovality-factor", "factor", "", ""),
    ("wall-thickness", "required_mm", "mm", "cert-worked-no_design"),
    ("air-test-f1417", "time_s", "s", "cert-worked-local_codes"),
    ("air-test-en1610", "time_rounded_min", "min", "cert-worked-local_codes"),
    ("water-test-en1610", "allowed_l", "l", "cert-worked-local_codes"),
    ("resin-wall", "mass_kg", "kg", ""),
    ("resin-laminate", "mass_kg", "kg", ""),
    ("working-time", "minutes", "min", ""),
    ("equivalent-age", "minutes", "min", "cert-worked-never_shorten"),
    ("packer-pressure", "gauge_bar", "bar", ""),
    ("net-pressure", "net_kpa", "kPa", ""),
    ("end-thrust", "force_n", "N", ""),
    ("geodesic", "distance_m", "m", ""),
    ("station-position", "lat", "°", ""),
    ("atmosphere", "acceptable", "", ""),
    ("partial-flow", "flow_l_s", "l/s", ""),
    ("time-to-surcharge", "minutes", "min", ""),
    ("pressure-decay", "verdict", "", ""),
];

fn printed(worked: &Worked) -> Check {
    let known = PRINTED.iter().find(|(name, ..)| *name == worked.name);
    let (_, main, unit, mind) = known.copied().unwrap_or(("", "", "", ""));
    let title = known.map_or(worked.name.clone(), |(name, ..)| say(&format!("cert-worked-name-{name}"), &[]));
    let formula = sourced(&worked.formula, &worked.source);
    let formula = if mind.is_empty() { formula } else { format!("{formula}. {}", say(mind, &[])) };
    let result = worked.result.get(main).map_or_else(|| tell!("cert-worked-see_the_inputs"), |found| said(found, unit));
    row(&title, formula, inputs(worked, main), result)
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
            let typed = typed.map_or_else(String::new, |typed| tell!("cert-worked-entered", typed));
            format!("{} {}{typed}", words(name), said(value, unit(name)))
        })
        .collect();
    let others = worked.result.as_object().into_iter().flatten();
    let told =
        others.filter(|(name, value)| *name != main && *name != "caution" && *name != "strength" && !value.is_null());
    parts.extend(told.map(|(name, value)| tell!("cert-worked-gives", name = words(name), value = said(value, ""))));
    parts.join("; ")
}

/// Returns `inside diameter mm` of `inside_diameter_mm`.
fn words(name: &str) -> String {
    name.replace('_', " ")
}

fn said(value: &Value, unit: &str) -> String {
    let bare = match value {
        Value::Number(number) => number.as_f64().map_or_else(String::new, short),
        Value::Bool(yes) => {
            if *yes {
                tell!("cert-worked-yes")
            } else {
                tell!("cert-worked-no")
            }
        }
        Value::String(word) => word.replace('_', " "),
        Value::Array(rows) if rows.iter().all(Value::is_array) && !rows.is_empty() => {
            tell!("cert-worked-rows", count = rows.len())
        }
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
    let text = crate::words::number(value, decimals);
    let point = crate::words::point();
    if text.contains(point) { text.trim_end_matches('0').trim_end_matches(point).to_owned() } else { text }
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
