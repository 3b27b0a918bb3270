//! What came of a calculation, and what went in, in the reader's words and units.

use serde_json::{Map, Value};

use super::catalogue::{known, say};
use super::{Units, number, point, reader};
use crate::checks::field::Field;
use crate::checks::named::{self, Check, Worked};
use crate::entry;

/// The unit that each reader has for a calculated value; where there is none, the unit of the calculation stays.
const PAIRS: [(&str, &str); 17] = [
    ("mm", "in"),
    ("m", "ft"),
    ("bar", "psi"),
    ("mbar", "psi"),
    ("kPa", "psi"),
    ("MPa", "psi"),
    ("kg", "lb"),
    ("g", "oz"),
    ("N", "lbf"),
    ("°C", "°F"),
    ("l", "gal"),
    ("l/s", "gal/min"),
    ("m/s", "ft/s"),
    ("bar/h", "psi/h"),
    ("kg/l", "lb/gal"),
    ("kN/m³", "lbf/ft³"),
    ("g/m²", "oz/yd²"),
];

/// Returns the unit in which the reader has a value of a calculation.
pub fn unit_beside(unit: &str) -> &str {
    let pair = match reader().units {
        Units::Us => PAIRS.iter().find(|(si, _)| *si == unit).map(|(_, us)| *us),
        Units::Si => [("psi", "bar"), ("ft", "m")].into_iter().find(|(us, _)| *us == unit).map(|(_, si)| si),
    };
    pair.unwrap_or(unit)
}

/// A value with its name.
#[derive(Clone, Debug, PartialEq, Eq, serde::Serialize)]
pub struct Named {
    pub name: String,
    pub value: String,
}

impl Named {
    /// Returns both in one line: `Wall required: 4.5 mm`.
    pub fn line(&self) -> String {
        say("worked-line", &[("name", (&self.name).into()), ("value", (&self.value).into())])
    }
}

/// Returns the fields that went in, and beside a value what was typed where that was something else.
pub fn given(worked: &Worked) -> Vec<Named> {
    let all = worked.fields.as_object().into_iter().flatten().filter(|(_, value)| !value.is_null());
    let fields = check(&worked.name).map_or(&[] as &[Field], |check| check.fields);
    all.map(|(key, value)| {
        let unit = fields.iter().find(|field| field.name == key).map_or("", |field| field.unit);
        let value = said(value, unit);
        let typed = worked.typed.get(key).and_then(Value::as_str).filter(|typed| *typed != value);
        let typed = typed.map_or_else(String::new, |typed| say("worked-entered", &[("typed", typed.into())]));
        Named { name: field(key), value: format!("{value}{typed}") }
    })
    .collect()
}

/// Returns all values that came out, in the order of the check's list; what there is no value for is left out.
pub fn came_out(name: &str, result: &Value) -> Vec<Named> {
    let out = check(name).map_or(&[] as &[_], |check| check.out);
    out.iter().filter(|(key, ..)| *key != "caution").filter_map(|(key, unit, _)| one(result, key, unit)).collect()
}

/// Returns the value that counts; of a place both its numbers.
pub fn that_counts(name: &str, result: &Value) -> Option<Named> {
    let check = check(name)?;
    let of = |key: &str| {
        let (key, unit, _) = check.out.iter().find(|(out, ..)| *out == key)?;
        one(result, key, unit)
    };
    let main = of(check.main)?;
    let also = (check.main == "lat").then(|| of("lon")).flatten();
    Some(match also {
        Some(lon) => Named { value: format!("{}, {}", main.value, lon.value), ..main },
        None => main,
    })
}

/// Returns a figure that was recorded as text with its unit, `412 g`, as the reader has it; any other text as it stands.
pub fn recorded(text: &str) -> String {
    let read = || {
        let (digits, unit) = text.rsplit_once([' ', '\u{a0}'])?;
        let value: f64 = digits.replace('−', "-").parse().ok()?;
        let beside = PAIRS.iter().any(|(si, _)| *si == unit).then(|| unit_beside(unit))?;
        let kept = digits.split_once('.').map_or(0, |(_, decimals)| decimals.len());
        Some(if beside == unit { format!("{} {unit}", number(value, kept)) } else { figure(value, unit) })
    };
    read().unwrap_or_else(|| text.to_owned())
}

fn check(name: &str) -> Option<&'static Check> {
    named::all().into_iter().find(|check| check.name == name)
}

fn one(result: &Value, key: &str, unit: &str) -> Option<Named> {
    let value = result.get(key).filter(|value| !value.is_null())?;
    Some(Named { name: say(&format!("worked-out-{key}"), &[]), value: said(value, unit) })
}

fn field(key: &str) -> String {
    word("worked-field-", key)
}

/// Returns the message of a word, or the word itself, parted at its underscores, where there is none.
fn word(kind: &str, key: &str) -> String {
    let id = format!("{kind}{key}");
    if known(&id) { say(&id, &[]) } else { key.replace('_', " ") }
}

fn said(value: &Value, unit: &str) -> String {
    match value {
        Value::Number(found) => found.as_f64().map_or_else(String::new, |found| figure(found, unit)),
        Value::Bool(yes) => say(if *yes { "worked-word-true" } else { "worked-word-false" }, &[]),
        Value::String(text) if known(&format!("worked-word-{text}")) => word("worked-word-", text),
        Value::String(text) => word("worked-field-", text),
        Value::Array(all) if all.is_empty() => "–".into(),
        Value::Array(rows) if rows.iter().all(Value::is_array) => {
            say("worked-so_many_rows", &[("count", rows.len().into())])
        }
        Value::Array(all) => all.iter().map(|one| said(one, unit)).collect::<Vec<_>>().join(", "),
        Value::Object(object) => parts(object),
        Value::Null => "–".into(),
    }
}

fn parts(object: &Map<String, Value>) -> String {
    let unit = |key: &str| if matches!(key, "lat" | "lon") { "°" } else { "" };
    let one = |(key, value): (&String, &Value)| format!("{} {}", field(key), said(value, unit(key)));
    object.iter().map(one).collect::<Vec<_>>().join(", ")
}

fn figure(value: f64, unit: &str) -> String {
    let beside = unit_beside(unit);
    let value = entry::turned(value, unit, beside).unwrap_or(value);
    let figure = short(value, unit);
    if beside.is_empty() { figure } else { format!("{figure}\u{a0}{beside}") }
}

/// Returns a number to five significant digits, without zeros at its end; of a degree seven decimals, which are a centimetre
/// on the ground.
fn short(value: f64, unit: &str) -> String {
    let whole = if value == 0.0 { 0 } else { crate::maths::ln(value.abs()).div_euclid(std::f64::consts::LN_10) as i32 };
    let decimals = if unit == "°" { 7 } else { usize::try_from((4 - whole).clamp(0, 8)).unwrap_or(0) };
    let text = number(value, decimals);
    let point = point();
    if text.contains(point) { text.trim_end_matches('0').trim_end_matches(point).to_owned() } else { text }
}

#[cfg(test)]
mod tests {
    use serde_json::json;

    use super::*;
    use crate::words::{Language, Reader, for_reader};

    const US: Reader = Reader { language: Language::En, units: Units::Us, dates: crate::words::Dates::Iso };

    fn thrust() -> Worked {
        let mut worked =
            named::worked("end-thrust", &json!({ "gauge_bar": 1.5, "inside_diameter_mm": 203.2 })).unwrap();
        worked.typed.insert("inside_diameter_mm".into(), json!("8 in"));
        worked
    }

    fn lines(all: &[Named]) -> Vec<String> {
        all.iter().map(|one| one.line().replace('\u{a0}', " ")).collect()
    }

    #[test]
    fn values_stand_in_the_readers_units() {
        let worked = thrust();
        // π/4 · 0.2032² m² · 150 000 Pa = 4864.39 N; NIST SP 811 (2008), B.8: 1 lbf is 4.448 222 N, 1 psi 6894.757 Pa.
        let counts = || that_counts("end-thrust", &worked.result).map(|one| one.line().replace('\u{a0}', " "));
        assert_eq!(lines(&given(&worked)), ["Gauge pressure: 1.5 bar", "Inside diameter: 203.2 mm (entered 8 in)"]);
        assert_eq!(counts(), Some("Force: 4864.4 N".into()));
        for_reader(US, || {
            assert_eq!(lines(&given(&worked))[0], "Gauge pressure: 21.756 psi");
            assert_eq!(counts(), Some("Force: 1093.6 lbf".into()));
        });
    }

    #[test]
    fn a_test_in_inches_and_pounds_is_told_in_bar_too() {
        let fields = json!({ "inside_diameter_mm": 203.2, "length_m": 60, "drop_psi": 1.0, "groundwater_above_pipe_ft": 0, "start_psi": 3.5, "most_psi": 5 });
        let worked = named::worked("air-test-f1417", &fields).unwrap();
        let out = lines(&came_out("air-test-f1417", &worked.result));
        assert!(
            out.iter().any(|line| line.ends_with(" bar")) && !out.iter().any(|line| line.ends_with(" psi")),
            "{out:?}"
        );
    }

    #[test]
    fn a_place_has_both_its_numbers_to_the_centimetre() {
        let fields =
            json!({ "from": { "lat": 51.5, "lon": -3.2 }, "to": { "lat": 51.501, "lon": -3.2 }, "station_m": 20 });
        let worked = named::worked("station-position", &fields).unwrap();
        let counts = that_counts("station-position", &worked.result).unwrap();
        assert!(counts.value.starts_with("51.500179") && counts.value.contains(", −3.2\u{a0}°"), "{}", counts.value);
    }

    #[test]
    fn a_recorded_figure_stands_in_the_readers_unit_and_any_other_text_as_it_was() {
        let texts = ["412 g", "1.04 bar", "−2.5 °C", "13:05", "K3F 7", "6 bands"];
        assert_eq!(texts.map(recorded), texts.map(str::to_owned));
        let german = Reader { language: Language::De, ..Reader::default() };
        assert_eq!(for_reader(german, || recorded("1.04 bar")), "1,04 bar");
        // NIST SP 811 (2008), B.8: 412 g / 28.349 52 g = 14.533; 27.5 °F is −2.5 · 1.8 + 32.
        let told = for_reader(US, || texts.map(|text| recorded(text).replace('\u{a0}', " ")));
        assert_eq!(told, ["14.533 oz", "15.084 psi", "27.5 °F", "13:05", "K3F 7", "6 bands"]);
    }

    #[test]
    fn every_check_has_a_value_that_counts_and_words_for_all() {
        for check in named::all() {
            assert!(check.out.iter().any(|(key, ..)| *key == check.main), "{}", check.name);
            for (key, ..) in check.out.iter().filter(|(key, ..)| *key != "caution") {
                assert!(known(&format!("worked-out-{key}")), "{}: {key}", check.name);
            }
            for field in check.fields {
                assert!(known(&format!("worked-field-{}", field.name)), "{}: {}", check.name, field.name);
            }
        }
    }

    #[test]
    fn nothing_is_written_that_no_check_gives() {
        let file = include_str!("../../words/en/computed.ftl");
        let names = file.lines().filter_map(|line| line.strip_prefix("worked-out-")?.split(' ').next());
        let given = |name: &str| named::all().iter().any(|check| check.out.iter().any(|(key, ..)| *key == name));
        assert_eq!(names.filter(|name| !given(name)).collect::<Vec<_>>(), [""; 0]);
    }

    #[test]
    fn every_unit_of_a_pair_is_kin() {
        assert!(PAIRS.iter().all(|(si, us)| entry::turned(1.0, si, us).is_some()));
    }

    #[test]
    fn numbers_are_cut_to_what_somebody_reads() {
        let all = [0.0, 1234.5678, 0.000_123_456_7, -2.5].map(|value| short(value, ""));
        assert_eq!(all, ["0", "1234.6", "0.00012346", "−2.5"]);
    }
}
