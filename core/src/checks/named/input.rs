//! The fields of one check, taken out one by one: missing, unknown and wrong ones are named.

use serde_json::{Map, Value};

use super::CheckError;
use crate::checks::field::{Allowed, Field};

/// An object whose fields are all known. A field that is `null` counts as not given.
pub struct Input<'a> {
    given: &'a Map<String, Value>,
    known: &'static [Field],
}

impl<'a> Input<'a> {
    /// Returns the input, or the error that names a field which the check does not have.
    pub fn of(data: &'a Value, known: &'static [Field]) -> Result<Self, CheckError> {
        let given = data.as_object().ok_or_else(|| {
            CheckError::new(None, "not_an_object", "expected an object of fields, e.g. {\"ovality_pct\": 2}".into())
        })?;
        match given.keys().find(|key| known.iter().all(|field| field.name != key.as_str())) {
            Some(key) => Err(unknown(key, known)),
            None => Ok(Self { given, known }),
        }
    }

    /// Returns a number, its range unchecked.
    pub fn number(&self, field: &Field) -> Result<f64, CheckError> {
        number(self.needed(field)?, field.name)
    }

    /// Returns true or false.
    pub fn yes(&self, field: &Field) -> Result<bool, CheckError> {
        self.needed(field)?.as_bool().ok_or_else(|| wrong(field.name, "true or false"))
    }

    /// Returns a word, and what `named` makes of it; a word that it doesn't know is refused with those that it may be.
    pub fn word<T>(&self, field: &Field, named: impl Fn(&str) -> Option<T>) -> Result<T, CheckError> {
        let word = self.needed(field)?.as_str().ok_or_else(|| wrong(field.name, "a word"))?;
        named(word).ok_or_else(|| {
            let message = format!("{} must be one of {}, not {word}", field.name, field.range());
            CheckError::new(Some(field.name), "out_of_range", message)
        })
    }

    /// Returns a number, its range unchecked; `None` if it is not given.
    pub fn optional_number(&self, field: &Field) -> Result<Option<f64>, CheckError> {
        self.optional(field).map(|value| number(value, field.name)).transpose()
    }

    /// Returns text; `None` if it is not given.
    pub fn optional_text(&self, field: &Field) -> Result<Option<String>, CheckError> {
        let text = |value: &Value| value.as_str().map(Into::into).ok_or_else(|| wrong(field.name, "text"));
        self.optional(field).map(text).transpose()
    }

    /// Returns an object's own fields; `None` if it is not given.
    pub fn object(&self, field: &Field) -> Result<Option<Input<'a>>, CheckError> {
        let Allowed::Object(known) = field.allowed else { return Err(wrong(field.name, "an object")) };
        match self.optional(field) {
            None => Ok(None),
            Some(value) if value.is_object() => Input::of(value, known).map(Some),
            Some(_) => Err(wrong(field.name, "an object")),
        }
    }

    /// Returns an object's own fields, or the error that it is missing.
    pub fn needed_object(&self, field: &Field) -> Result<Input<'a>, CheckError> {
        self.object(field)?.ok_or_else(|| missing(field, self.known))
    }

    /// Returns rows of `N` numbers each, their ranges unchecked.
    pub fn rows<const N: usize>(&self, field: &Field) -> Result<Vec<[f64; N]>, CheckError> {
        let expected = || wrong(field.name, &field.range());
        let rows = self.needed(field)?.as_array().ok_or_else(expected)?;
        let row = |value: &Value| {
            let cells = value.as_array().filter(|cells| cells.len() == N).ok_or_else(expected)?;
            let mut row = [0.0; N];
            for (cell, into) in cells.iter().zip(row.iter_mut()) {
                *into = number(cell, field.name)?;
            }
            Ok(row)
        };
        rows.iter().map(row).collect()
    }

    fn optional(&self, field: &Field) -> Option<&'a Value> {
        self.given.get(field.name).filter(|value| !value.is_null())
    }

    fn needed(&self, field: &Field) -> Result<&'a Value, CheckError> {
        self.optional(field).ok_or_else(|| missing(field, self.known))
    }
}

fn number(value: &Value, name: &str) -> Result<f64, CheckError> {
    value.as_f64().filter(|number| number.is_finite()).ok_or_else(|| wrong(name, "a finite number"))
}

fn missing(field: &Field, known: &[Field]) -> CheckError {
    let message = format!("{} is missing; this takes {}", field.name, names(known));
    CheckError::new(Some(field.name), "missing", message)
}

fn unknown(key: &str, known: &[Field]) -> CheckError {
    CheckError::new(Some(key), "unknown_field", format!("{key} is no field of this; it takes {}", names(known)))
}

fn wrong(name: &str, kind: &str) -> CheckError {
    CheckError::new(Some(name), "wrong_kind", format!("{name} must be {kind}"))
}

fn names(known: &[Field]) -> String {
    known.iter().map(|field| field.name).collect::<Vec<_>>().join(", ")
}
