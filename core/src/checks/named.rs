//! Every check by its name: plain data in, plain data out, for the command line and the door.

mod catalogue;
mod ground;
mod input;
mod lining;
mod pressing;
mod tightness;
mod typed;
mod worked;

use serde::{Deserialize, Serialize};
use serde_json::{Value, json};
use thiserror::Error;

use super::Refused;
use super::field::{Allowed, Field};
use crate::geodesy::OffTheMap;
use input::Input;

pub use typed::{Understood, understood};
pub use worked::{Worked, worked};

/// A check as it stands in the list.
pub struct Check {
    pub name: &'static str,
    pub fields: &'static [Field],
    /// Name and unit of each value that comes out, and what is to be said of it; every result also names its `source`.
    pub out: &'static [(&'static str, &'static str, &'static str)],
    /// Of these the one that counts.
    pub main: &'static str,
    pub formula: &'static str,
    pub source: &'static str,
    run: fn(&Input) -> Result<Value, CheckError>,
}

/// Why a check gave no result.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, Error)]
#[error("{message}")]
pub struct CheckError {
    pub check: String,
    /// The field that is missing, of the wrong kind or outside its range; none for what is not in one field.
    pub field: Option<String>,
    /// A stable code: `unknown_check`, `not_an_object`, `missing`, `unknown_field`, `wrong_kind`, or that of the refusal.
    pub rule: String,
    pub message: String,
}

impl CheckError {
    fn new(field: Option<&str>, rule: &str, message: String) -> Self {
        Self { check: String::new(), field: field.map(Into::into), rule: rule.into(), message }
    }
}

impl From<Refused> for CheckError {
    fn from(refused: Refused) -> Self {
        let field = match &refused {
            Refused::OutOfRange { field, .. } | Refused::SourceMissing { field } => Some(field.clone()),
            Refused::WarmerThanSheet { .. } | Refused::ColderThanSheet { .. } => Some("temperature_c".into()),
            Refused::RowsMissing
            | Refused::RowNotPositive { .. }
            | Refused::RowsOutOfOrder { .. }
            | Refused::RowLongerWhenWarmer { .. } => Some("sheet".into()),
            Refused::ReadingsOutOfOrder { .. } => Some("readings".into()),
            _ => None,
        };
        Self::new(field.as_deref(), &rule_of(&refused), refused.to_string())
    }
}

impl From<OffTheMap> for CheckError {
    fn from(off: OffTheMap) -> Self {
        let field = match &off {
            OffTheMap::OutOfRange { field, .. } => field.clone(),
            OffTheMap::OutsideLine { .. } => "station_m".into(),
        };
        Self::new(Some(&field), &rule_of(&off), off.to_string())
    }
}

fn rule_of(refusal: &impl Serialize) -> String {
    let data = serde_json::to_value(refusal).unwrap_or_default();
    data.get("rule").and_then(Value::as_str).unwrap_or("refused").into()
}

/// Returns every check, in the order of the table in docs/checks.md.
pub fn all() -> Vec<&'static Check> {
    catalogue::ALL.iter().collect()
}

/// Runs one check on an object of its fields.
///
/// The result is an object with the values that [`Check::out`] names, and `source`. Numbers are not rounded.
/// Errors: [`CheckError`] with the field or the rule; nothing is guessed, no field has a silent default.
pub fn run(name: &str, fields: &Value) -> Result<Value, CheckError> {
    let named = |error: CheckError| CheckError { check: name.into(), ..error };
    let check = catalogue::ALL.iter().find(|check| check.name == name).ok_or_else(|| {
        named(CheckError::new(None, "unknown_check", format!("no check is called {name}: see check --list")))
    })?;
    let input = Input::of(fields, check.fields).map_err(named)?;
    let mut result = (check.run)(&input).map_err(named)?;
    if let Some(object) = result.as_object_mut() {
        object.entry("source").or_insert_with(|| check.source.into());
    }
    Ok(result)
}

/// Returns every check with its fields, their units and ranges, what comes out, and the source, as data.
pub fn list() -> Value {
    let field = |field: &Field| {
        let needed = if field.needed.is_empty() { "always" } else { field.needed };
        let mut one = json!({
            "name": field.name, "kind": field.kind(), "unit": field.unit, "allowed": field.range(), "needed": needed,
        });
        if let Allowed::OneOf(words) = field.allowed {
            one["words"] = json!(words);
        }
        one
    };
    let one = |check: &&Check| {
        let out: Vec<_> =
            check.out.iter().map(|(name, unit, note)| json!({ "name": name, "unit": unit, "note": note })).collect();
        let fields: Vec<_> = check.fields.iter().map(field).collect();
        json!({ "name": check.name, "fields": fields, "out": out, "main": check.main, "formula": check.formula, "source": check.source })
    };
    all().iter().map(one).collect()
}

#[cfg(test)]
mod tests;
