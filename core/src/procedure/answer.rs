//! Answers to the tasks of the method statement.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use crate::shelf::method::{Field, Shape};
use crate::words;

/// What somebody answered to a task.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "kind", rename_all = "snake_case", deny_unknown_fields)]
pub enum Answer {
    /// Done, with the values of the task's fields.
    Done {
        #[serde(default)]
        values: Values,
    },
    /// Looked at and found not right; kept, and it closes the gate.
    NotRight { because: String },
    /// Does not apply here, and why.
    DoesNotApply { because: String },
}

/// Values by the key of their field, in the smallest step that the key's unit names.
pub type Values = BTreeMap<String, Value>;

/// One entered value.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(untagged)]
pub enum Value {
    Number(i64),
    Text(String),
}

impl Answer {
    /// Returns the number in a field, if the task is done and the field holds one.
    pub fn number(&self, key: &str) -> Option<i64> {
        match self {
            Self::Done { values } => match values.get(key) {
                Some(Value::Number(number)) => Some(*number),
                _ => None,
            },
            _ => None,
        }
    }

    /// Returns the text in a field, if the task is done and the field holds one that is not empty.
    pub fn text(&self, key: &str) -> Option<&str> {
        match self {
            Self::Done { values } => match values.get(key) {
                Some(Value::Text(text)) if !text.trim().is_empty() => Some(text),
                _ => None,
            },
            _ => None,
        }
    }

    /// Returns whether the task was done, rather than found wrong or not to apply.
    pub fn done(&self) -> bool {
        matches!(self, Self::Done { .. })
    }
}

/// What is wrong with an entered value.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct FieldProblem {
    pub field: String,
    pub says: String,
}

/// Returns what is wrong with values for these fields; empty if nothing is.
///
/// A field that is not optional must be there; a number must lie in its range, a choice among its options, a date
/// must be an ISO 8601 date. A value without a field is refused, so that a slip of the pen is not lost unseen.
pub fn problems(fields: &[Field], values: &Values) -> Vec<FieldProblem> {
    let unknown = values
        .keys()
        .filter(|key| !fields.iter().any(|field| field.key == **key))
        .map(|key| FieldProblem { field: key.clone(), says: "There is no such field here.".into() });
    let wrong = fields.iter().filter_map(|field| {
        let says = match values.get(field.key) {
            None if field.optional => return None,
            None => format!("{} is missing.", field.label),
            Some(value) => wrong_value(field, value)?,
        };
        Some(FieldProblem { field: field.key.into(), says })
    });
    unknown.chain(wrong).collect()
}

fn wrong_value(field: &Field, value: &Value) -> Option<String> {
    match (&field.shape, value) {
        (Shape::Number { unit, per, decimals, least, most, .. }, Value::Number(number)) => {
            let shown = |steps: i64| words::measured(steps, *per, usize::from(*decimals), unit);
            (!(*least..=*most).contains(number)).then(|| {
                format!("{}: {} is not between {} and {}.", field.label, shown(*number), shown(*least), shown(*most))
            })
        }
        (Shape::Time, Value::Number(at_ms)) => (*at_ms < 0).then(|| format!("{}: there is no such time.", field.label)),
        (Shape::Text | Shape::Instrument { .. }, Value::Text(text)) => {
            (text.trim().is_empty() && !field.optional).then(|| format!("{} is missing.", field.label))
        }
        (Shape::Choice { options }, Value::Text(text)) => (!options.iter().any(|(key, _)| key == text))
            .then(|| format!("{}: choose one of the answers.", field.label)),
        (Shape::Date, Value::Text(text)) => chrono::NaiveDate::parse_from_str(text, "%Y-%m-%d")
            .is_err()
            .then(|| format!("{}: write the date as year-month-day, like 2027-02-11.", field.label)),
        _ => Some(format!("{}: a number and a text were mixed up.", field.label)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::shelf::method::TaskKind;

    fn values(pairs: &[(&str, i64)]) -> Values {
        pairs.iter().map(|(key, number)| (key.to_string(), Value::Number(*number))).collect()
    }

    #[test]
    fn a_missing_a_wrong_and_an_unknown_value_are_each_named() {
        let fields = TaskKind::MeasuredDiameter.fields();
        let found = problems(&fields, &values(&[("least_um", 1), ("width_um", 5)]));
        let named: Vec<_> = found.iter().map(|problem| problem.field.as_str()).collect();
        assert_eq!(named, ["width_um", "least_um", "most_um"]);
    }

    #[test]
    fn values_in_range_pass() {
        let fields = TaskKind::BareEnds.fields();
        assert_eq!(problems(&fields, &values(&[("front_um", 198_000), ("rear_um", 202_000)])), []);
    }
}
