//! A field of a check: its name, its unit and what it may be. Said once, so that the check, its refusal and its listing
//! agree.

use super::Refused;

/// What a field may hold.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Allowed {
    /// A finite number from `least` (which belongs to it unless `open`) to `most`, which belongs to it.
    Number {
        least: f64,
        open: bool,
        most: f64,
    },
    /// One of these words.
    OneOf(&'static [&'static str]),
    YesNo,
    /// Rows of numbers, each column with its own field.
    Rows(&'static [Field]),
    /// An object with these fields.
    Object(&'static [Field]),
    Text,
}

/// A named value that goes into a check.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Field {
    pub name: &'static str,
    /// Empty where there is none.
    pub unit: &'static str,
    pub allowed: Allowed,
    /// When it must be given; empty for always.
    pub needed: &'static str,
}

impl Field {
    /// Returns a number from `least` to `most`, both belonging to it.
    pub const fn from(name: &'static str, unit: &'static str, least: f64, most: f64) -> Self {
        Self { name, unit, allowed: Allowed::Number { least, open: false, most }, needed: "" }
    }

    /// Returns a number above `least` and at most `most`.
    pub const fn above(name: &'static str, unit: &'static str, least: f64, most: f64) -> Self {
        Self { name, unit, allowed: Allowed::Number { least, open: true, most }, needed: "" }
    }

    /// Returns a field that is not a number.
    pub const fn other(name: &'static str, unit: &'static str, allowed: Allowed) -> Self {
        Self { name, unit, allowed, needed: "" }
    }

    /// Returns the same field, needed only in the case that `when` names.
    pub const fn needed(self, when: &'static str) -> Self {
        Self { needed: when, ..self }
    }

    /// Returns the value if the field may hold it, else the refusal that names the field. NaN and infinities never pass.
    pub fn check(&self, value: f64) -> Result<f64, Refused> {
        let Allowed::Number { least, open, most } = self.allowed else {
            return Err(Refused::out_of_range(self.name, "must not be a number"));
        };
        let enough = if open { value > least } else { value >= least };
        if value.is_finite() && enough && value <= most {
            Ok(value)
        } else {
            Err(Refused::out_of_range(self.name, &format!("must be {} {}", self.range(), self.unit)))
        }
    }

    /// Returns what kind of field it is: `number`, `words`, `yes_no`, `rows`, `object` or `text`.
    pub fn kind(&self) -> &'static str {
        match self.allowed {
            Allowed::Number { .. } => "number",
            Allowed::OneOf(_) => "words",
            Allowed::YesNo => "yes_no",
            Allowed::Rows(_) => "rows",
            Allowed::Object(_) => "object",
            Allowed::Text => "text",
        }
    }

    /// Returns what the field may hold, in words.
    pub fn range(&self) -> String {
        match self.allowed {
            Allowed::Number { least, open: true, most } => format!("above {least}, at most {most}"),
            Allowed::Number { least, open: false, most } => format!("from {least} to {most}"),
            Allowed::OneOf(words) => words.join(", "),
            Allowed::YesNo => "true, false".into(),
            Allowed::Rows(columns) => format!("rows of [{}]", described(columns)),
            Allowed::Object(fields) => format!("{{{}}}", described(fields)),
            Allowed::Text => "text".into(),
        }
    }
}

fn described(fields: &[Field]) -> String {
    let one = |field: &Field| format!("{} {} {}", field.name, field.unit, field.range()).replace("  ", " ");
    fields.iter().map(one).collect::<Vec<_>>().join("; ")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_ends_belong_to_it_unless_it_says_above() {
        assert!(Field::from("a", "m", 0.0, 1.0).check(0.0).is_ok());
        assert!(Field::above("a", "m", 0.0, 1.0).check(0.0).is_err());
        assert!(Field::above("a", "m", 0.0, 1.0).check(1.0).is_ok());
        assert!(Field::from("a", "m", 0.0, 1.0).check(1.000_001).is_err());
    }

    #[test]
    fn what_is_not_finite_never_passes() {
        for value in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
            assert!(Field::from("a", "m", f64::MIN, f64::MAX).check(value).is_err());
        }
    }

    #[test]
    fn the_refusal_names_the_field_its_range_and_its_unit() {
        let refusal = Field::from("depth_mm", "mm", 0.0, 200.0).check(-1.0).unwrap_err();
        assert_eq!(refusal.to_string(), "depth_mm must be from 0 to 200 mm");
    }
}
