//! The record as a file: it fits its published schema, lies in the certificate, and another folder takes it in whole.

use std::path::{Path, PathBuf};
use std::process::Command;

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use mendline_core::door::App;
use mendline_core::facts::{Moment, Sensed};
use mendline_core::procedure::Event;
use mendline_tests::{empty_folder, python, rehearsal};
use serde_json::{Value, json};

fn record() -> Vec<u8> {
    std::fs::read(rehearsal().join("record.json")).unwrap()
}

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("..")
}

fn schema() -> Value {
    serde_json::from_slice(&std::fs::read(root().join("docs/record.schema.json")).unwrap()).unwrap()
}

/// Asks the core of a folder.
fn ask(folder: &Path, id: &str, request: Value) -> Value {
    let mut app = App::open(folder).unwrap();
    let moment = Moment { at_ms: 1_792_100_000_000, offset_min: 120, boot_ms: 5_000, boot_id: "one".into() };
    let sensed = Sensed { moment, device: "office".into(), fresh: [7; 16], ..Sensed::default() };
    let envelope = json!({ "id": id, "person": "varga", "request": request }).to_string();
    serde_json::from_str(&app.handle(&envelope, &sensed)).unwrap()
}

fn taken_in(folder: &Path, bytes: &[u8]) -> Value {
    ask(folder, "in", json!({ "do": "import_record", "name": "record.json", "bytes": STANDARD.encode(bytes) }))
}

fn given_out(folder: &Path, repair: &str) -> Vec<u8> {
    let answer = ask(folder, "out", json!({ "do": "record", "repair": repair }));
    STANDARD.decode(answer["ok"]["bytes"].as_str().unwrap_or_else(|| panic!("{answer}"))).unwrap()
}

#[test]
fn a_record_that_was_taken_in_is_given_out_the_same_to_the_byte() {
    let (folder, bytes) = (empty_folder(), record());
    let answer = taken_in(folder.path(), &bytes);
    let repair = answer["ok"]["repair"]["id"].as_str().or(answer["ok"]["id"].as_str()).map(str::to_owned);
    let repair = repair.unwrap_or_else(|| panic!("{answer}"));
    assert_eq!(serde_json::from_slice::<Value>(&bytes).unwrap()["repair"], repair.as_str());
    assert!(given_out(folder.path(), &repair) == bytes);
    // Once more changes nothing.
    let again = json!({ "do": "import_record", "name": "record.json", "bytes": STANDARD.encode(&bytes) });
    assert!(ask(folder.path(), "again", again)["ok"].is_object());
    assert!(given_out(folder.path(), &repair) == bytes);
    let listed = ask(folder.path(), "list", json!({ "do": "list" }));
    assert_eq!(listed["ok"]["repairs"].as_array().unwrap().len(), 1, "{listed}");
}

#[test]
fn the_longer_of_two_records_of_a_repair_adds_what_is_new() {
    let (folder, bytes) = (empty_folder(), record());
    let mut short: Value = serde_json::from_slice(&bytes).unwrap();
    let entries = short["entries"].as_array_mut().unwrap();
    entries.truncate(40);
    short["heads"] = json!([short["entries"][39]["hash"]]);
    assert!(taken_in(folder.path(), short.to_string().as_bytes())["ok"].is_object());
    let whole = json!({ "do": "import_record", "name": "record.json", "bytes": STANDARD.encode(&bytes) });
    assert!(ask(folder.path(), "whole", whole)["ok"].is_object());
    assert!(given_out(folder.path(), short["repair"].as_str().unwrap()) == bytes);
}

#[test]
fn a_spoiled_record_is_refused_and_nothing_is_written() {
    let whole: Value = serde_json::from_slice(&record()).unwrap();
    let spoil = |change: &dyn Fn(&mut Value)| {
        let mut spoiled = whole.clone();
        change(&mut spoiled);
        spoiled.to_string().into_bytes()
    };
    let spoiled = [
        ("no JSON", b"%PDF-1.7".to_vec()),
        ("another form", spoil(&|record| record["form"] = json!("mendline-record/2"))),
        ("another number", spoil(&|record| record["number"] = json!("RH-99"))),
        ("no rehearsal", spoil(&|record| record["rehearsal"] = json!(false))),
        ("another head", spoil(&|record| record["heads"] = json!([record["entries"][3]["hash"]]))),
        ("another repair", spoil(&|record| record["repair"] = json!("shelf"))),
        (
            "a letter changed",
            spoil(&|record| {
                let body = record["entries"][20]["body"].as_str().unwrap().replacen("ekdal", "ekdam", 1);
                record["entries"][20]["body"] = json!(body);
            }),
        ),
        (
            "an entry left out",
            spoil(&|record| {
                record["entries"].as_array_mut().unwrap().remove(30);
            }),
        ),
    ];
    for (what, bytes) in spoiled {
        let folder = empty_folder();
        let answer = taken_in(folder.path(), &bytes);
        assert!(answer["error"]["says"].is_string(), "{what}: {answer}");
        let listed = ask(folder.path(), "list", json!({ "do": "list" }));
        assert_eq!(listed["ok"]["repairs"], json!([]), "{what}");
    }
}

/// The record inside ends where the certificate was issued. That the keys signed it can only be written down afterwards.
#[test]
fn the_certificate_holds_the_record_up_to_its_issue() {
    let out = rehearsal().join("taken-out.json");
    let run = Command::new("pdfdetach")
        .args(["-save", "1", "-o"])
        .args([out.clone(), rehearsal().join("certificate.pdf")])
        .output();
    let Ok(run) = run else { return println!("skipped: pdfdetach is not installed") };
    assert!(run.status.success(), "{}", String::from_utf8_lossy(&run.stderr));
    let inside: Value = serde_json::from_slice(&std::fs::read(out).unwrap()).unwrap();
    let beside: Value = serde_json::from_slice(&record()).unwrap();
    let (inside, beside) = (inside["entries"].as_array().unwrap(), beside["entries"].as_array().unwrap());
    assert_eq!(inside[..], beside[..inside.len()]);
    let after = &beside[inside.len()..];
    assert_eq!(after.len(), 1);
    assert_eq!(after[0]["body"].as_str().unwrap().matches("\"event\":\"sealed\"").count(), 2, "{after:?}");
}

/// Source: ISO 19005-3 and ISO 14289-1, clause by clause in `tests/certificate/archive/`, on the file as it is handed
/// over: with every signature that the rehearsal puts to it.
#[test]
fn the_certificate_of_the_whole_job_breaks_no_clause_of_its_archive_form() {
    let script = root().join("tests/certificate/archive").display().to_string();
    let Some(output) = python(&[script, rehearsal().join("certificate.pdf").display().to_string()]) else { return };
    let said = String::from_utf8_lossy(&output.stdout);
    assert!(output.status.success() && said.contains("no clause is broken"), "{said}");
}

/// Source: JSON Schema, draft 2020-12, by the Python library jsonschema, which knows nothing of this program.
#[test]
fn the_record_fits_its_published_schema_and_a_spoiled_one_does_not() {
    let script = root().join("tests/certificate/schema.py").display().to_string();
    let files = [root().join("docs/record.schema.json"), rehearsal().join("record.json")];
    let arguments: Vec<String> = std::iter::once(script).chain(files.map(|file| file.display().to_string())).collect();
    let Some(output) = python(&arguments) else { return };
    let said = String::from_utf8_lossy(&output.stdout);
    assert!(output.status.success(), "{said}{}", String::from_utf8_lossy(&output.stderr));
    assert!(said.contains("entries fit"), "{said}");
}

#[test]
fn the_schema_knows_every_event() {
    // Serde names all it knows when it is asked for one that it doesn't.
    let asked = serde_json::from_value::<Event>(json!({ "event": "?" })).unwrap_err().to_string();
    let known: Vec<&str> = asked.split('`').skip(3).step_by(2).collect();
    let schema = schema();
    let events = schema["$defs"]["event"]["oneOf"].as_array().unwrap();
    let described: Vec<&str> =
        events.iter().map(|event| event["properties"]["event"]["const"].as_str().unwrap()).collect();
    assert!(known.len() > 15);
    let unknown: Vec<&str> = known.into_iter().filter(|event| !described.contains(event)).collect();
    assert!(unknown.is_empty(), "docs/record.schema.json doesn't describe {unknown:?}");
}
