//! A record in earnest: both keys sign it in turn, through the door, and who trusts them finds it valid.

use std::path::Path;

use mendline_core::certificate::content::{Content, Known, Seal};
use mendline_core::certificate::{ChainFacts, derive};
use mendline_core::door::{Finding, PagesCompared, Trust, Trusted, Verdict, check_file};
use mendline_core::facts::Moment;
use mendline_core::shelf::Person;
use mendline_core::units::Pressure;
use mendline_tests::earnest::{Desk, FOREMAN, TECHNICIAN, bytes, line, state};
use mendline_tests::empty_folder;
use serde_json::json;

use super::{AT_MS, put, signer};

/// Returns whether any file below a folder holds these bytes.
fn holds(folder: &Path, wanted: &[u8]) -> bool {
    std::fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path()).any(|path| {
        if path.is_dir() {
            return holds(&path, wanted);
        }
        std::fs::read(&path).unwrap().windows(wanted.len()).any(|part| part == wanted)
    })
}

#[test]
fn neither_a_form_nor_the_examples_change_the_keys_of_a_person() {
    let folder = empty_folder();
    let mut desk = Desk::with_keys(folder.path());
    let before = desk.keys_of("varga");
    assert_eq!(before.as_array().unwrap().len(), 1);
    let person =
        json!({ "kind": "person", "sheet": { "id": "varga", "name": "Ines Varga", "role": "foreman", "keys": [] } });
    desk.ok(FOREMAN, json!({ "do": "keep", "document": person }));
    assert_eq!(desk.keys_of("varga"), before);
    desk.ok(FOREMAN, json!({ "do": "take_examples" }));
    assert_eq!(desk.keys_of("varga"), before);
}

#[test]
fn a_record_is_signed_by_both_keys_in_turn_and_found_valid_by_who_trusts_them() {
    let folder = empty_folder();
    let (mut desk, repair) = Desk::with_record(folder.path(), true);
    let sign = |name: &str| line(&repair, name);
    assert_eq!(desk.refused(("ekdal", ""), sign("Tomas Ekdal")), "pin_needed");
    assert_eq!(desk.refused(("ekdal", "000001"), sign("Tomas Ekdal")), "pin_wrong");
    let seal = || json!({ "do": "seal", "repair": repair });
    assert_eq!(desk.refused(TECHNICIAN, seal()), "not_issued");
    desk.ok(TECHNICIAN, sign("Tomas Ekdal"));
    desk.ok(FOREMAN, sign("Ines Varga"));
    desk.ok(("varga", ""), json!({ "do": "issue", "repair": repair }));

    assert_eq!(desk.refused(FOREMAN, seal()), "not_your_turn");
    desk.ok(TECHNICIAN, seal());
    let half = bytes(&desk.ok(FOREMAN, json!({ "do": "certificate", "repair": repair })));
    let lacking = check_file("half.pdf", &half, &Trusted::default());
    assert_eq!((lacking.finding, lacking.says.contains("foreman")), (Finding::Changed, true), "{}", lacking.says);
    desk.ok(FOREMAN, seal());
    assert_eq!(desk.refused(FOREMAN, seal()), "sealed");
    let pdf = bytes(&desk.ok(FOREMAN, json!({ "do": "certificate", "repair": repair })));
    assert!(pdf.starts_with(&half));
    let (technician, foreman) = (desk.handed_out("ekdal"), desk.handed_out("varga"));
    judged(&pdf, &technician, &foreman);

    desk.ok(
        FOREMAN,
        json!({ "do": "revoke_key", "person": "varga", "from_ms": 1_792_000_000_000_i64, "reason": "lost" }),
    );
    let both = technician.and(desk.handed_out("varga"));
    let revoked = check_file("c.pdf", &pdf, &both);
    assert_eq!(
        (revoked.finding, revoked.says.contains("is revoked from 2026-10-14T17:46:40Z")),
        (Finding::Changed, true),
        "{}",
        revoked.says
    );
    assert!(!holds(folder.path(), FOREMAN.1.as_bytes()) && !holds(folder.path(), b"\"pin\""), "a PIN stands in a file");
}

/// The pages are laid out anew for the reader of the contract, whoever checks them.
#[test]
fn a_certificate_for_any_reader_says_what_its_record_says() {
    for (reader, paper) in [
        (json!({ "language": "en", "units": "us", "dates": "local" }), "letter"),
        (json!({ "language": "de", "units": "si", "dates": "local" }), "a4"),
    ] {
        let folder = empty_folder();
        let (mut desk, repair) = Desk::with_record_for(folder.path(), true, &reader, paper);
        let pdf = desk.certified(&repair);
        let verdict = check_file("c.pdf", &pdf, &Trusted::default());
        assert_eq!(
            (verdict.finding, verdict.compared),
            (Finding::Valid, Some(PagesCompared::Whole)),
            "{}",
            verdict.says
        );
    }
}

fn judged(pdf: &[u8], technician: &Trusted, foreman: &Trusted) {
    let check = |trusted: &Trusted| check_file("c.pdf", pdf, trusted);
    let trust = |verdict: &Verdict| verdict.signatures.iter().map(|one| one.trust).collect::<Vec<_>>();
    let all = check(&technician.clone().and(foreman.clone()));
    assert_eq!((all.finding, trust(&all)), (Finding::Valid, vec![Trust::Trusted; 2]), "{}", all.says);
    assert!(all.looked.iter().all(|look| look.right), "{:?}", all.looked);
    let nobody = check(&Trusted::default());
    assert_eq!((nobody.finding, trust(&nobody)), (Finding::Valid, vec![Trust::NotAsked; 2]), "{}", nobody.says);
    let one = check(technician);
    assert_eq!((one.finding, trust(&one)), (Finding::Changed, vec![Trust::Trusted, Trust::Unknown]), "{}", one.says);
}

/// What is changed, in words and in deed.
type Change<'a> = (&'a str, &'a dyn Fn(&mut Content));

/// The pages are made of a content in which one thing was changed; the record inside is the true one, and both keys sign.
#[test]
fn pages_that_say_another_value_than_the_record_inside_are_found() {
    let folder = empty_folder();
    let (mut desk, repair) = Desk::with_record(folder.path(), true);
    for (who, name) in [(TECHNICIAN, "Tomas Ekdal"), (FOREMAN, "Ines Varga")] {
        desk.ok(who, line(&repair, name));
    }
    desk.ok(FOREMAN, json!({ "do": "issue", "repair": repair }));
    let record = bytes(&desk.ok(FOREMAN, json!({ "do": "record", "repair": repair })));
    let people = desk.ok(FOREMAN, json!({ "do": "shelf" }))["people"].clone();
    let people: Vec<Person> = serde_json::from_value(people).unwrap();
    let photo = |sha256: &str| mendline_core::photos::read(folder.path(), sha256.parse().ok()?).ok();
    let (state, head, entries) = state(&record);
    let chain = ChainFacts { head_hex: head, entries, device: "desk".into(), record };
    let content = derive(&state, &chain, &people, &photo, Moment::default()).unwrap();
    let checked = |change: &dyn Fn(&mut Content)| {
        let mut content = content.clone();
        content.seal = Seal::Key { at_ms: AT_MS, fingerprint: signer("Tomas Ekdal", "technician", 1).1.fingerprint() };
        change(&mut content);
        let one = put(&mendline_core::certificate::build(&content).unwrap(), "technician", "Tomas Ekdal", 1);
        check_file("c.pdf", &put(&one, "foreman", "Ines Varga", 2), &Trusted::default())
    };
    let sound = checked(&|_| {});
    assert_eq!((sound.finding, sound.compared), (Finding::Valid, Some(PagesCompared::Whole)), "{}", sound.says);
    let changes: [Change; 6] = [
        ("a reading", &|content| {
            let Known::Known(hold) = &mut content.hold else { panic!("no hold") };
            hold.readings[1].pressure_pa = Pressure::from_pa(149_000);
        }),
        ("a note less", &|content| drop(content.notes.pop())),
        ("a caution", &|content| content.cautions[0].value.push('!')),
        ("a finding", &|content| content.findings[0].found = "nothing".into()),
        ("a check", &|content| content.checks[0].result.push('9')),
        ("a photo's hash", &|content| content.photos[0].original_sha256 = "0".repeat(64)),
    ];
    for (what, change) in changes {
        let Verdict { finding, says, .. } = checked(change);
        assert_eq!(finding, Finding::Changed, "{what}: {says}");
        assert!(says.contains("by the record inside it"), "{what}: {says}");
    }
}
