//! The file as JSON for other programs: codes as they stand in the file, numbers as numbers, what is absent as null.

use mendline_core::inspection::{Clock, Inspection, InspectionFile, Observation, Quantification};
use mendline_core::units::Length;
use serde::Serialize;
use serde_json::{Number, Value};

#[derive(Serialize)]
struct File<'a> {
    inspections: Vec<Line<'a>>,
}

#[derive(Serialize)]
struct Line<'a> {
    line: Option<&'a str>,
    start_node: Option<&'a str>,
    end_node: Option<&'a str>,
    /// `A` with the flow, `B` against it.
    direction: Option<&'static str>,
    length_m: Value,
    height_mm: Value,
    material: Option<&'a str>,
    date: Option<String>,
    observations: Vec<Row<'a>>,
}

#[derive(Serialize)]
struct Row<'a> {
    station_m: Value,
    continuous: Option<&'a str>,
    code: &'a str,
    char1: Option<&'a str>,
    char2: Option<&'a str>,
    quant1: Value,
    quant2: Value,
    clock_from: Option<u8>,
    clock_to: Option<u8>,
    at_joint: Option<bool>,
    remark: Option<&'a str>,
}

/// Returns the file as one line of JSON.
pub fn print(file: &InspectionFile) -> String {
    let file = File { inspections: file.inspections.iter().map(line).collect() };
    serde_json::to_string(&file).map_or_else(|_| String::new(), |text| text + "\n")
}

fn line(inspection: &Inspection) -> Line<'_> {
    Line {
        line: inspection.line.as_deref(),
        start_node: inspection.start_node.as_deref(),
        end_node: inspection.end_node.as_deref(),
        direction: inspection.direction.map(|direction| direction.code()),
        length_m: length(inspection.length_um, 1_000_000),
        height_mm: length(inspection.height_um, 1_000),
        material: inspection.material.as_deref(),
        date: inspection.date.map(|date| date.to_string()),
        observations: inspection.observations.iter().map(row).collect(),
    }
}

fn row(observation: &Observation) -> Row<'_> {
    Row {
        station_m: length(observation.station_um, 1_000_000),
        continuous: observation.continuous.as_deref(),
        code: &observation.code,
        char1: observation.char1.as_deref(),
        char2: observation.char2.as_deref(),
        quant1: quantification(observation.quant1.as_ref()),
        quant2: quantification(observation.quant2.as_ref()),
        clock_from: observation.clock_from.map(Clock::hour),
        clock_to: observation.clock_to.map(Clock::hour),
        at_joint: observation.at_joint,
        remark: observation.remark.as_deref(),
    }
}

fn length(length: Option<Length>, um_per_unit: i64) -> Value {
    length.map_or(Value::Null, |length| number(length.as_um(), um_per_unit))
}

fn quantification(quantification: Option<&Quantification>) -> Value {
    quantification.map_or(Value::Null, |q| match q.millionths {
        Some(millionths) => number(millionths, 1_000_000),
        None => Value::String(q.as_written.clone()),
    })
}

/// Returns a whole number without a decimal point, any other one with the fewest digits.
fn number(steps: i64, per_unit: i64) -> Value {
    if steps % per_unit == 0 {
        return Value::Number(Number::from(steps / per_unit));
    }
    Number::from_f64(steps as f64 / per_unit as f64).map_or(Value::Null, Value::Number)
}

#[cfg(test)]
mod tests {
    use super::*;

    const FILE: &str = "#A1=UTF-8\n#A3=;\n#A4=,\n#A5=\"\n#B01=AAA;AAB;AAD;AAF;AAK;ABQ;ACB;ABF\n\
        SS-1;MH 2;MH 1;MH 2;B;12,50;200;2026-09-30\n#C=I;J;A;B;C;D;E;G;H;K;F\n\
        0;;BCD;A;;MH 2\n7,12;A1;BAB;B;A;1,5;2;11;1;A;over the crown\n#Z\n";

    #[test]
    fn the_json_has_these_names_in_this_order_and_null_for_what_is_absent() {
        let file = mendline_core::inspection::read(FILE.as_bytes()).unwrap();
        let expected = concat!(
            r#"{"inspections":[{"line":"SS-1","start_node":"MH 2","end_node":"MH 1","direction":"B","length_m":12.5,"#,
            r#""height_mm":200,"material":null,"date":"2026-09-30","observations":["#,
            r#"{"station_m":0,"continuous":null,"code":"BCD","char1":"A","char2":null,"quant1":"MH 2","quant2":null,"#,
            r#""clock_from":null,"clock_to":null,"at_joint":null,"remark":null},"#,
            r#"{"station_m":7.12,"continuous":"A1","code":"BAB","char1":"B","char2":"A","quant1":1.5,"quant2":2,"#,
            r#""clock_from":11,"clock_to":1,"at_joint":true,"remark":"over the crown"}]}]}"#,
            "\n"
        );
        assert_eq!(print(&file), expected);
    }
}
