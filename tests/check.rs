//! `mendline check`: published values come out, and what can't be answered ends with 2 and the field or rule.

use std::process::{Command, Output};

use mendline_tests::mendline;
use serde_json::Value;

fn check(arguments: &[&str]) -> Output {
    Command::new(mendline()).arg("check").args(arguments).output().unwrap()
}

fn json(output: &Output) -> Value {
    serde_json::from_slice(&output.stdout).unwrap()
}

#[test]
fn a_result_is_json_with_its_source() {
    let output = check(&["end-thrust", r#"{"gauge_bar": 1.5, "inside_diameter_mm": 200}"#]);
    assert!(output.status.success());
    // 1.5 bar on 200 mm: 4712 N.
    assert_eq!(json(&output)["force_n"].as_f64().unwrap().round(), 4712.0);
    assert!(json(&output)["source"].is_string());
}

#[test]
fn bad_input_and_refusals_end_with_2_and_name_the_field_or_the_rule() {
    let cases = [
        (r#"{"gauge_bar": 1.5}"#, Some("inside_diameter_mm"), "missing"),
        (r#"{"gauge_bar": "1.5 bar", "inside_diameter_mm": 200}"#, Some("gauge_bar"), "wrong_kind"),
        (r#"{"gauge_bar": -1, "inside_diameter_mm": 200}"#, Some("gauge_bar"), "out_of_range"),
        (r#"{"gauge_bar": 1, "inside_diameter_mm": 200, "bar": 1}"#, Some("bar"), "unknown_field"),
        (r#"{"gauge_bar": NaN, "inside_diameter_mm": 200}"#, None, "not_json"),
        (r#"{"gauge_bar": 1e999, "inside_diameter_mm": 200}"#, None, "not_json"),
        ("[]", None, "not_an_object"),
    ];
    for (fields, field, rule) in cases {
        let output = check(&["end-thrust", fields]);
        assert_eq!(output.status.code(), Some(2), "{fields}");
        let error = &json(&output)["error"];
        assert_eq!((error["field"].as_str(), error["rule"].as_str()), (field, Some(rule)), "{fields}");
        assert!(!output.stderr.is_empty());
    }
    assert_eq!(check(&["no-such-check", "{}"]).status.code(), Some(2));
    assert_eq!(check(&[]).status.code(), Some(2));
}

#[test]
fn the_list_names_every_check() {
    let list = json(&check(&["--list"]));
    let names: Vec<_> = list.as_array().unwrap().iter().map(|check| check["name"].as_str().unwrap()).collect();
    assert_eq!(
        names,
        [
            "ovality-factor",
            "wall-thickness",
            "air-test-f1417",
            "air-test-en1610",
            "water-test-en1610",
            "resin-wall",
            "resin-laminate",
            "working-time",
            "equivalent-age",
            "packer-pressure",
            "net-pressure",
            "end-thrust",
            "geodesic",
            "station-position",
            "atmosphere",
            "partial-flow",
            "time-to-surcharge",
            "pressure-decay",
        ]
    );
}
