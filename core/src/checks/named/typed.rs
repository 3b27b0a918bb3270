//! Fields as somebody typed them, each with its unit: `8 in` into a field that counts in millimetres.

use serde_json::{Map, Value, json};

use super::{CheckError, catalogue};
use crate::checks::field::{Allowed, Field};
use crate::entry;

/// The fields of a check in the units of the list, and what was typed where it carried a unit of its own.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Understood {
    pub fields: Value,
    pub typed: Map<String, Value>,
}

/// Returns the fields of a check with every typed number read in its own unit; what is no text stays as it is.
///
/// Errors: `unreadable` with the field for a text that is no number of that field's kind.
/// Source: [`entry::plain`] for the factors.
pub fn understood(name: &str, given: &Value) -> Result<Understood, CheckError> {
    let fields = catalogue::ALL.iter().find(|check| check.name == name).map_or(&[] as &[Field], |check| check.fields);
    let Some(object) = given.as_object() else {
        return Ok(Understood { fields: given.clone(), typed: Map::new() });
    };
    let mut typed = Map::new();
    let mut read = |(key, value): (&String, &Value)| -> Result<(String, Value), CheckError> {
        let field = fields.iter().find(|field| field.name == key);
        let plain = match (field, value) {
            (Some(field), Value::String(text)) if matches!(field.allowed, Allowed::Number { .. }) => {
                let number = number(field, text).map_err(|error| CheckError { check: name.into(), ..error })?;
                if text.trim().parse::<f64>().is_err() {
                    typed.insert(key.clone(), json!(text.trim()));
                }
                json!(number)
            }
            _ => value.clone(),
        };
        Ok((key.clone(), plain))
    };
    let fields = object.iter().map(&mut read).collect::<Result<Map<_, _>, _>>()?;
    Ok(Understood { fields: Value::Object(fields), typed })
}

fn number(field: &Field, text: &str) -> Result<f64, CheckError> {
    entry::plain(text, field.unit).map_err(|why| CheckError::new(Some(field.name), "unreadable", why.to_string()))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_typed_unit_is_read_and_kept() {
        let given = json!({ "gauge_bar": "20 psi", "inside_diameter_mm": "8 in" });
        let found = understood("end-thrust", &given).unwrap();
        assert_eq!(found.fields["inside_diameter_mm"], json!(203.2));
        // NIST SP 811 (2008), B.8: 1 psi is 6894.757 Pa.
        assert!((found.fields["gauge_bar"].as_f64().unwrap() - 1.378_951_4).abs() < 1e-6);
        assert_eq!(found.typed.get("gauge_bar"), Some(&json!("20 psi")));
    }

    #[test]
    fn a_plain_number_is_in_the_fields_unit_and_a_word_stays() {
        let given = json!({ "dn_mm": "200", "method": "LC", "dry_concrete": false });
        let found = understood("air-test-en1610", &given).unwrap();
        assert_eq!(found.fields, json!({ "dn_mm": 200.0, "method": "LC", "dry_concrete": false }));
        assert!(found.typed.is_empty());
    }

    #[test]
    fn a_unit_of_another_kind_is_refused_with_the_field() {
        let error = understood("end-thrust", &json!({ "gauge_bar": "8 in" })).unwrap_err();
        assert_eq!((error.field.as_deref(), &*error.rule), (Some("gauge_bar"), "unreadable"));
    }
}
