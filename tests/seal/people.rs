//! Keys of people, through the door: made, asked for, waited for, handed out, revoked; the PIN is kept nowhere.

use std::path::Path;

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use mendline_core::door::{App, Trusted};
use mendline_core::facts::{Moment, Sensed};
use mendline_core::seal::Certificate;
use mendline_tests::empty_folder;
use serde_json::{Value, json};

const PIN: &str = "271828";

struct Desk {
    app: App,
    seconds: i64,
}

impl Desk {
    fn open(folder: &Path) -> Self {
        let mut desk = Self { app: App::open(folder).unwrap(), seconds: 0 };
        desk.ok(json!({ "do": "take_examples" }), json!({}));
        desk
    }

    /// Asks as the foreman, ten seconds after the last time; `beside` stands beside the request.
    fn ask(&mut self, request: Value, beside: Value) -> Value {
        self.seconds += 10;
        let moment = Moment {
            at_ms: 1_791_964_800_000 + self.seconds * 1000,
            offset_min: 120,
            boot_ms: self.seconds * 1000,
            boot_id: "one".into(),
        };
        let mut fresh = [0; 16];
        fresh[..8].copy_from_slice(&self.seconds.to_be_bytes());
        let seed = [fresh[7] | 1; 32];
        let mut envelope = json!({ "id": format!("ask-{}", self.seconds), "person": "varga", "request": request });
        envelope.as_object_mut().unwrap().extend(beside.as_object().unwrap().clone());
        let sensed = Sensed { moment, device: "desk".into(), fresh, seed };
        serde_json::from_str(&self.app.handle(&envelope.to_string(), &sensed)).unwrap()
    }

    fn ok(&mut self, request: Value, beside: Value) -> Value {
        let response = self.ask(request, beside);
        assert!(response["ok"].is_object(), "{response}");
        response["ok"].clone()
    }

    fn code(&mut self, request: Value, beside: Value) -> String {
        self.ask(request, beside)["error"]["code"].as_str().unwrap_or("none").to_owned()
    }

    fn certificate(&mut self) -> String {
        let file = self.ok(json!({ "do": "person_certificate", "person": "varga" }), json!({}));
        String::from_utf8(STANDARD.decode(file["bytes"].as_str().unwrap()).unwrap()).unwrap()
    }
}

fn make() -> Value {
    json!({ "do": "make_key", "person": "varga" })
}

fn foreman(shelf: &Value) -> &Value {
    shelf["people"].as_array().unwrap().iter().find(|person| person["id"] == "varga").unwrap()
}

#[test]
fn a_key_is_made_once_and_its_certificate_handed_out() {
    let folder = empty_folder();
    let mut desk = Desk::open(folder.path());
    assert_eq!(desk.code(make(), json!({ "pin": "123" })), "pin_weak");
    assert_eq!(desk.code(json!({ "do": "person_certificate", "person": "varga" }), json!({})), "no_key");
    let shelf = desk.ok(make(), json!({ "pin": PIN }));
    assert_eq!(foreman(&shelf)["keys"].as_array().unwrap().len(), 1);
    assert_eq!(desk.code(make(), json!({ "pin": PIN })), "has_key");
    let [certificate] = &Certificate::from_pem(&desk.certificate()).unwrap()[..] else { panic!("one certificate") };
    let holder = certificate.holder();
    assert_eq!((holder.name.as_str(), holder.role.as_str()), ("Ines Varga", "foreman"));
    assert_eq!(foreman(&shelf)["keys"][0]["fingerprint"], certificate.fingerprint());
}

#[test]
fn a_pin_is_changed_with_the_old_one_and_the_key_stays() {
    let folder = empty_folder();
    let mut desk = Desk::open(folder.path());
    let change = || json!({ "do": "change_pin", "person": "varga" });
    assert_eq!(desk.code(change(), json!({ "password": PIN, "pin": "602214" })), "no_key");
    let made = desk.ok(make(), json!({ "pin": PIN }));
    assert_eq!(desk.code(change(), json!({ "password": "000001", "pin": "602214" })), "pin_wrong");
    assert_eq!(desk.code(change(), json!({ "password": PIN, "pin": "1" })), "pin_weak");
    let changed = desk.ok(change(), json!({ "password": PIN, "pin": "602214" }));
    assert_eq!(foreman(&changed), foreman(&made));
    assert_eq!(desk.code(change(), json!({ "password": PIN, "pin": "662607" })), "pin_wrong");
    desk.ok(change(), json!({ "password": "602214", "pin": PIN }));
}

#[test]
fn a_form_about_a_person_does_not_touch_the_keys() {
    let folder = empty_folder();
    let mut desk = Desk::open(folder.path());
    let shelf = desk.ok(make(), json!({ "pin": PIN }));
    let mut changed = foreman(&shelf).clone();
    changed["organisation"] = "Wendholt".into();
    changed["keys"] = json!([]);
    let kept =
        desk.ok(json!({ "do": "keep", "document": { "kind": "person", "sheet": changed } }), json!({ "pin": PIN }));
    assert_eq!(foreman(&kept)["keys"], foreman(&shelf)["keys"]);
    assert_eq!(foreman(&kept)["organisation"], "Wendholt");
}

#[test]
fn a_revoked_key_is_handed_out_as_revoked_and_makes_room_for_another() {
    let folder = empty_folder();
    let mut desk = Desk::open(folder.path());
    desk.ok(make(), json!({ "pin": PIN }));
    let revoke = |reason: &str| json!({ "do": "revoke_key", "person": "varga", "from_ms": 1_791_970_000_000_i64, "reason": reason });
    assert_eq!(desk.code(revoke(" "), json!({})), "reason");
    desk.ok(revoke("phone lost"), json!({}));
    assert_eq!(desk.code(revoke("again"), json!({})), "no_key");
    desk.ok(make(), json!({ "pin": "314159" }));
    let text = desk.certificate();
    assert_eq!(Certificate::from_pem(&text).unwrap().len(), 2);
    assert!(text.contains("Revoked from 2026-10-14T"), "{text}");
    assert!(Trusted::from_pem(&text).is_ok());
    assert!(Trusted::from_pem(&text.replace("2026-10-14T", "someday ")).is_err());
}

/// The journal keeps a hash of every request: a PIN in it could be found by trying all of them.
#[test]
fn the_pin_is_in_no_file_of_the_folder() {
    let folder = empty_folder();
    let mut desk = Desk::open(folder.path());
    desk.ok(make(), json!({ "pin": "tessellate-271828" }));
    drop(desk);
    let mut open = vec![folder.path().to_owned()];
    let mut files = 0;
    while let Some(path) = open.pop() {
        if path.is_dir() {
            open.extend(std::fs::read_dir(path).unwrap().map(|entry| entry.unwrap().path()));
        } else {
            let bytes = std::fs::read(&path).unwrap();
            assert!(!bytes.windows(10).any(|part| part == b"tessellate"), "{}", path.display());
            files += 1;
        }
    }
    assert!(files >= 2, "journal and key");
}

#[test]
fn a_line_and_a_waiver_ask_the_pin_of_who_has_a_key() {
    let folder = empty_folder();
    let mut desk = Desk::open(folder.path());
    desk.ok(make(), json!({ "pin": PIN }));
    let open = |rehearsal: bool| {
        json!({
            "do": "open_by_hand", "contract": "QM-2026-31", "rehearsal": rehearsal,
            "line": {
                "asset": "SS-1", "upstream": { "name": "MH 1" }, "downstream": { "name": "MH 2" },
                "length_um": 38_400_000, "height_um": 200_000, "material": "clay", "street": "Kettle Row"
            },
            "defect": { "from_um": 7_120_000, "to_um": 7_400_000, "observations": [], "origin": { "kind": "by_hand" } }
        })
    };
    let id = |answer: Value| answer["repair"]["id"].as_str().unwrap().to_owned();
    let (real, practice) = (id(desk.ok(open(false), json!({}))), id(desk.ok(open(true), json!({}))));
    let sign = |repair: &str| {
        json!({
            "do": "tell", "repair": repair,
            "command": { "command": "sign", "name": "Ines Varga", "statement": "s", "strokes": [[[0, 0], [9, 9]]] }
        })
    };
    let waive = |repair: &str| {
        json!({
            "do": "tell", "repair": repair,
            "command": { "command": "waive", "rule": "cleaning_old", "reason": "r", "foreman": "varga" }
        })
    };
    for request in [sign(&real), waive(&real)] {
        assert_eq!(desk.code(request.clone(), json!({})), "pin_needed");
        assert_eq!(desk.code(request.clone(), json!({ "pin": "000001" })), "pin_wrong");
        // The right one goes on to the rules, which have their own objections.
        assert!(desk.ask(request, json!({ "pin": PIN }))["refusal"].is_object());
    }
    for request in [sign(&practice), waive(&practice)] {
        assert!(desk.ask(request, json!({}))["refusal"].is_object());
    }
    assert_eq!(desk.code(json!({ "do": "seal", "repair": real }), json!({ "pin": PIN })), "not_issued");
}
