//! A record in earnest: both keys sign it in turn, through the door, and who trusts them finds it valid.

use std::path::Path;

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use mendline_core::door::{App, Finding, Trust, Trusted, Verdict, check_file};
use mendline_core::facts::{Moment, Sensed};
use mendline_core::journal::{Hash, link};
use mendline_tests::{empty_folder, rehearsal};
use serde_json::{Value, json};

const TECHNICIAN: (&str, &str) = ("ekdal", "271828");
const FOREMAN: (&str, &str) = ("varga", "314159");

/// A core whose clock moves a minute a request, on the evening after the rehearsal's job.
struct Desk {
    app: App,
    minutes: i64,
}

impl Desk {
    fn open(folder: &Path) -> Self {
        let mut desk = Self { app: App::open(folder).unwrap(), minutes: 0 };
        desk.ok(FOREMAN, json!({ "do": "take_examples" }));
        desk
    }

    fn ask(&mut self, (person, pin): (&str, &str), request: Value) -> Value {
        self.minutes += 1;
        let ms = self.minutes * 60_000;
        let moment = Moment { at_ms: 1_792_000_000_000 + ms, offset_min: 120, boot_ms: ms, boot_id: "one".into() };
        let byte = self.minutes as u8;
        let sensed = Sensed { moment, device: "desk".into(), fresh: [byte; 16], seed: [byte; 32] };
        let mut envelope = json!({ "id": format!("tap-{}", self.minutes), "person": person, "request": request });
        if !pin.is_empty() {
            envelope["pin"] = pin.into();
        }
        serde_json::from_str(&self.app.handle(&envelope.to_string(), &sensed)).unwrap()
    }

    fn ok(&mut self, who: (&str, &str), request: Value) -> Value {
        let response = self.ask(who, request);
        assert!(response["ok"].is_object(), "{response}");
        response["ok"].clone()
    }

    fn refused(&mut self, who: (&str, &str), request: Value) -> String {
        let response = self.ask(who, request);
        response["error"]["code"].as_str().unwrap_or_else(|| panic!("{response}")).to_owned()
    }

    fn with_keys(folder: &Path) -> Self {
        let mut desk = Self::open(folder);
        for who in [TECHNICIAN, FOREMAN] {
            desk.ok(who, json!({ "do": "make_key", "person": who.0 }));
        }
        desk
    }

    fn handed_out(&mut self, person: &str) -> Trusted {
        let file = self.ok((person, ""), json!({ "do": "person_certificate", "person": person }));
        Trusted::from_pem(std::str::from_utf8(&bytes(&file)).unwrap()).unwrap()
    }

    fn keys_of(&mut self, person: &str) -> Value {
        let shelf = self.ok((person, ""), json!({ "do": "shelf" }));
        let people = shelf["people"].as_array().unwrap();
        people.iter().find(|one| one["id"] == person).unwrap()["keys"].clone()
    }
}

fn bytes(file: &Value) -> Vec<u8> {
    STANDARD.decode(file["bytes"].as_str().unwrap()).unwrap()
}

/// Returns whether any file below a folder holds these bytes.
fn holds(folder: &Path, wanted: &[u8]) -> bool {
    std::fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path()).any(|path| {
        if path.is_dir() {
            return holds(&path, wanted);
        }
        std::fs::read(&path).unwrap().windows(wanted.len()).any(|part| part == wanted)
    })
}

/// Returns the rehearsal's record up to its signatures, as a record in earnest: each entry linked anew.
fn in_earnest() -> Value {
    let mut record: Value = serde_json::from_slice(&std::fs::read(rehearsal().join("record.json")).unwrap()).unwrap();
    let repair = record["repair"].as_str().unwrap().to_owned();
    let mut entries = record["entries"].as_array().unwrap().clone();
    let end = entries.iter().position(|entry| entry["body"].as_str().unwrap().contains("\"event\":\"signed\""));
    entries.truncate(end.unwrap());
    let mut anew: Vec<(String, Hash)> = vec![];
    for entry in &mut entries {
        let body = entry["body"].as_str().unwrap().replace("\"rehearsal\":true", "\"rehearsal\":false");
        let old = entry["prev"].as_array().unwrap();
        let prev: Vec<Hash> = old
            .iter()
            .map(|hash| anew.iter().find(|(known, _)| Some(known.as_str()) == hash.as_str()).unwrap().1)
            .collect();
        let hash =
            link(&repair, entry["device"].as_str().unwrap(), entry["seq"].as_u64().unwrap(), &prev, body.as_bytes());
        anew.push((entry["hash"].as_str().unwrap().to_owned(), hash));
        *entry = json!({ "device": entry["device"], "seq": entry["seq"], "prev": prev, "hash": hash, "body": body });
    }
    record["heads"] = json!([anew.last().unwrap().1]);
    record["rehearsal"] = false.into();
    record["entries"] = entries.into();
    record
}

fn copy(from: &Path, to: &Path) {
    std::fs::create_dir_all(to).unwrap();
    for entry in std::fs::read_dir(from).unwrap().map(Result::unwrap) {
        let target = to.join(entry.file_name());
        if entry.path().is_dir() {
            copy(&entry.path(), &target)
        } else {
            let _ = std::fs::copy(entry.path(), target).unwrap();
        }
    }
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
    copy(&rehearsal().join("data/photos"), &folder.path().join("photos"));
    let mut desk = Desk::with_keys(folder.path());
    let record = in_earnest();
    let repair = record["repair"].as_str().unwrap().to_owned();
    let taken = STANDARD.encode(record.to_string());
    desk.ok(FOREMAN, json!({ "do": "import_record", "name": "record.json", "bytes": taken }));

    let sign = |name: &str| {
        json!({ "do": "tell", "repair": repair, "command": {
        "command": "sign", "name": name, "statement": "I say so.", "strokes": [[[0, 0], [500, 500]]] } })
    };
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
