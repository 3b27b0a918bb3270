//! The numbers of certificates: each accounted for, none used again, and who takes whose place said on both.

use mendline_core::door::{Finding, Trusted, beside, check_file};
use mendline_core::seal::verify::verify;
use mendline_tests::earnest::{Desk, FOREMAN, TECHNICIAN, bytes};
use mendline_tests::{empty_folder, python};
use serde_json::{Value, json};

const REASON: &str = "the owner’s order number was wrong";

fn numbers(desk: &mut Desk) -> Vec<Value> {
    desk.ok(FOREMAN, json!({ "do": "numbers" }))["numbers"].as_array().unwrap().clone()
}

#[test]
fn a_voided_number_is_explained_and_never_used_again_and_the_next_names_it() {
    let folder = empty_folder();
    let (mut desk, repair) = Desk::with_record(folder.path(), true);
    let void = |reason: &str| json!({ "do": "void", "repair": repair, "reason": reason });
    assert_eq!(desk.refused(FOREMAN, void(REASON)), "not_issued");
    let old = desk.certified(&repair);
    let first = check_file("old.pdf", &old, &Trusted::default());
    assert_eq!((first.finding, first.certificate.as_str()), (Finding::Valid, "DES-0001"), "{}", first.says);

    assert_eq!(desk.refused(("varga", ""), void(REASON)), "pin_needed");
    let by_technician = desk.ask(TECHNICIAN, void(REASON));
    assert_eq!(by_technician["refusal"]["broken"][0]["rule"], "foreman_needed", "{by_technician}");
    let without = desk.ask(FOREMAN, void("  "));
    assert_eq!(without["refusal"]["broken"][0]["rule"], "reason_missing", "{without}");
    // Nobody has looked at the numbers since one was taken.
    desk.ok(FOREMAN, void(REASON));
    let rows = numbers(&mut desk);
    assert_eq!((&rows[0]["number"], &rows[0]["state"]), (&json!("DES-0001"), &json!("voided")), "{rows:?}");
    assert_eq!((&rows[0]["voided"]["reason"], &rows[0]["voided"]["by"]), (&json!(REASON), &json!("Ines Varga")));
    let told = desk.ok(FOREMAN, json!({ "do": "check_record", "name": "old.pdf", "bytes": packed(&old) }));
    assert!(told["says"].as_str().unwrap().contains("In this folder it is voided"), "{told}");

    let new = desk.certified(&repair);
    let second = check_file("new.pdf", &new, &Trusted::default());
    assert_eq!((second.finding, second.certificate.as_str()), (Finding::Valid, "DES-0002"), "{}", second.says);
    assert!(second.says.contains(&format!("It supersedes DES-0001: {REASON}")), "{}", second.says);
    let page_one = &verify(&new).unwrap().pages[0];
    assert!(page_one.contains("ThispapertakestheplaceofDES-0001"), "{page_one}");
    assert!(page_one.contains("Theowner’sordernumberwaswrong."), "{page_one}");
    let between = beside(first, &[second]);
    assert_eq!((between.finding, between.superseded_by.as_deref()), (Finding::Valid, Some("DES-0002")));
    assert!(between.says.ends_with(&format!("Superseded by DES-0002: {REASON}")), "{}", between.says);

    let rows = numbers(&mut desk);
    let states: Vec<_> = rows.iter().map(|row| row["state"].as_str().unwrap()).collect();
    assert_eq!((states, &rows[0]["superseded_by"]), (vec!["superseded", "issued"], &json!("DES-0002")));
    let told = desk.ok(FOREMAN, json!({ "do": "check_record", "name": "old.pdf", "bytes": packed(&old) }));
    assert_eq!(told["superseded_by"], "DES-0002");
    fits_the_schema(&mut desk, &repair, folder.path());
}

/// Source: JSON Schema, draft 2020-12, by the Python library jsonschema.
fn fits_the_schema(desk: &mut Desk, repair: &str, folder: &std::path::Path) {
    let record = bytes(&desk.ok(FOREMAN, json!({ "do": "record", "repair": repair })));
    assert!(String::from_utf8_lossy(&record).contains("\\\"event\\\":\\\"voided\\\""));
    let path = folder.join("record.json");
    std::fs::write(&path, record).unwrap();
    let root = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("..");
    let at = |name: &str| root.join(name).display().to_string();
    let arguments = [at("tests/certificate/schema.py"), at("docs/record.schema.json"), path.display().to_string()];
    let Some(output) = python(&arguments) else { return };
    assert!(output.status.success(), "{}", super::said(&output));
}

fn packed(bytes: &[u8]) -> String {
    use base64::Engine as _;
    base64::engine::general_purpose::STANDARD.encode(bytes)
}
