//! A check that was worked out, as it is recorded: what went in, what came out, by which formula.

use serde::{Deserialize, Serialize};
use serde_json::{Number, Value, json};

use super::{CheckError, catalogue, run};

/// A check with its inputs and its result. Replay computes nothing: the result is recorded.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Worked {
    /// The check's name in the list.
    pub name: String,
    /// The fields as they went in, in the units of the list.
    pub fields: Value,
    /// What somebody typed into a field, where it carried a unit of its own: `8 in`.
    #[serde(default, skip_serializing_if = "serde_json::Map::is_empty")]
    pub typed: serde_json::Map<String, Value>,
    /// What came out, to nine significant digits.
    pub result: Value,
    pub formula: String,
    pub source: String,
}

/// Returns a check worked out for the record; numbers of the result are rounded to nine significant digits.
///
/// Errors: those of [`run`].
pub fn worked(name: &str, fields: &Value) -> Result<Worked, CheckError> {
    let mut result = run(name, fields)?;
    let check = catalogue::ALL.iter().find(|check| check.name == name);
    let source = result.as_object_mut().and_then(|object| object.remove("source")).unwrap_or_default();
    Ok(Worked {
        name: name.into(),
        fields: fields.clone(),
        typed: serde_json::Map::new(),
        result: rounded(result),
        formula: check.map_or_else(String::new, |check| check.formula.into()),
        source: source.as_str().unwrap_or_default().into(),
    })
}

impl Worked {
    /// Returns a number of the result.
    pub fn out(&self, name: &str) -> Option<f64> {
        self.result.get(name)?.as_f64()
    }

    /// Returns a number that went in.
    pub fn given(&self, name: &str) -> Option<f64> {
        self.fields.get(name)?.as_f64()
    }
}

fn rounded(value: Value) -> Value {
    match value {
        Value::Number(number) => nine_digits(&number),
        Value::Array(all) => all.into_iter().map(rounded).collect(),
        Value::Object(object) => object.into_iter().map(|(name, inner)| (name, rounded(inner))).collect(),
        other => other,
    }
}

fn nine_digits(number: &Number) -> Value {
    let short = number.as_f64().and_then(|value| format!("{value:.8e}").parse::<f64>().ok());
    short.map_or_else(|| Value::Number(number.clone()), |short| json!(short))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_record_holds_fields_result_formula_and_source() {
        let found = worked("end-thrust", &json!({ "gauge_bar": 1.5, "inside_diameter_mm": 200 })).unwrap();
        // π/4 · 0.2² m² · 150 000 Pa.
        assert_eq!(found.out("force_n"), Some(4_712.388_98));
        assert_eq!(found.given("gauge_bar"), Some(1.5));
        assert!(found.formula.contains("π/4") && !found.source.is_empty());
        assert_eq!(found.result.get("source"), None);
    }

    #[test]
    fn what_is_refused_is_not_recorded() {
        assert_eq!(worked("end-thrust", &json!({ "gauge_bar": 1.5 })).unwrap_err().rule, "missing");
    }
}
