//! What was worked out for the repair by name: the last of each check, with its formula, its source and its inputs.

use super::super::Case;
use super::{row, sourced};
use crate::certificate::content::Check;
use crate::checks::named::Worked;
use crate::words::{came_out, given, retold, say, tell, that_counts};

/// Returns a row for the last of each check that was worked out.
pub fn rows(case: &Case) -> Vec<Check> {
    case.repair.worked_last().into_iter().map(|one| printed(&one.worked)).collect()
}

/// Returns what the owner has to mind of a check, where there is something.
fn mind(name: &str) -> Option<String> {
    match name {
        "wall-thickness" => Some(tell!("cert-worked-no_design")),
        "air-test-f1417" | "air-test-en1610" | "water-test-en1610" => Some(tell!("cert-worked-local_codes")),
        "equivalent-age" => Some(tell!("cert-worked-never_shorten")),
        _ => None,
    }
}

fn printed(worked: &Worked) -> Check {
    let title = say(&format!("worked-name-{}", worked.name), &[]);
    let formula = sourced(&retold(&worked.formula), &retold(&worked.source));
    let formula = mind(&worked.name).map_or(formula.clone(), |mind| format!("{formula}. {mind}"));
    let counts = that_counts(&worked.name, &worked.result);
    let others = came_out(&worked.name, &worked.result);
    let others = others.iter().filter(|one| counts.as_ref().is_none_or(|counts| counts.name != one.name));
    let gives = others.map(|one| tell!("cert-worked-gives", name = &one.name, value = &one.value));
    let inputs: Vec<String> =
        given(worked).iter().map(|one| format!("{} {}", one.name, one.value)).chain(gives).collect();
    let result = counts.map_or_else(|| tell!("cert-worked-see_the_inputs"), |counts| counts.value);
    row(&title, formula, inputs.join("; "), result)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::checks::named;
    use crate::words::{Language, Reader, for_reader};
    use serde_json::json;

    #[test]
    fn a_row_names_formula_source_inputs_and_what_was_typed() {
        let mut worked =
            named::worked("end-thrust", &json!({ "gauge_bar": 1.5, "inside_diameter_mm": 203.2 })).unwrap();
        worked.typed.insert("inside_diameter_mm".into(), json!("8 in"));
        let found = printed(&worked);
        let plain = |text: &str| text.replace('\u{a0}', " ");
        // π/4 · 0.2032² m² · 150 000 Pa.
        assert_eq!((found.name.as_str(), plain(&found.result).as_str()), ("End thrust", "4864.4 N"));
        assert_eq!(plain(&found.inputs), "Gauge pressure 1.5 bar; Inside diameter 203.2 mm (entered 8 in)");
        assert!(found.formula.starts_with("F = π/4·ID²·p. statics"));
        let german = Reader { language: Language::De, ..Reader::default() };
        assert!(for_reader(german, || printed(&worked)).formula.starts_with("F = π/4·ID²·p. Statik"));
    }
}
