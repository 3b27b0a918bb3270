//! Who may do what, asked through the door: the screens can't be gone round, and a foreman's PIN neither.

use mendline_core::door::App;
use mendline_core::facts::{Moment, Sensed};
use mendline_tests::{empty_folder, open_by_hand};
use serde_json::{Value, json};
use tempfile::TempDir;

const PIN: &str = "246802";

struct Office {
    app: App,
    _folder: TempDir,
    seconds: i64,
}

impl Office {
    fn new() -> Self {
        let folder = empty_folder();
        let mut office = Self { app: App::open(folder.path()).expect("it opens"), _folder: folder, seconds: 0 };
        office.ok(json!({ "do": "take_examples" }));
        office
    }

    fn ask(&mut self, person: Option<&str>, pin: Option<&str>, request: Value) -> Value {
        self.seconds += 1;
        let moment = Moment {
            at_ms: 1_791_964_800_000 + self.seconds * 1000,
            offset_min: 120,
            boot_ms: self.seconds * 1000,
            boot_id: "one".into(),
        };
        let seed = [self.seconds as u8; 32];
        let sensed = Sensed { moment, device: "phone".into(), fresh: [self.seconds as u8; 16], seed };
        let mut envelope = json!({ "id": format!("r-{}", self.seconds), "request": request });
        person.into_iter().for_each(|person| envelope["person"] = json!(person));
        pin.into_iter().for_each(|pin| envelope["pin"] = json!(pin));
        serde_json::from_str(&self.app.handle(&envelope.to_string(), &sensed)).expect("JSON")
    }

    fn ok(&mut self, request: Value) -> Value {
        let answer = self.ask(Some("varga"), None, request);
        assert!(answer["ok"].is_object(), "{answer}");
        answer["ok"].clone()
    }

    /// How it ends: `ok`, or the code of the rule or of the error.
    fn ends(&mut self, person: Option<&str>, pin: Option<&str>, request: Value) -> String {
        let answer = self.ask(person, pin, request);
        let code = answer["refusal"]["broken"][0]["rule"].as_str().or(answer["error"]["code"].as_str());
        code.unwrap_or(if answer["ok"].is_object() { "ok" } else { "?" }).to_owned()
    }
}

fn person(id: &str, role: &str) -> Value {
    let sheet = json!({ "id": id, "name": "Somebody", "role": role, "organisation": "" });
    json!({ "do": "keep", "document": { "kind": "person", "sheet": sheet } })
}

#[test]
fn the_owners_reader_sees_everything_and_changes_nothing() {
    let mut office = Office::new();
    let repair = office.ok(open_by_hand("SS-1"))["repair"]["id"].clone();
    let reader = Some("sorrel");
    let reads = [
        json!({ "do": "today" }),
        json!({ "do": "list" }),
        json!({ "do": "repair", "repair": repair }),
        json!({ "do": "shelf" }),
        json!({ "do": "record", "repair": repair }),
        json!({ "do": "branches", "repair": repair }),
        json!({ "do": "plan", "repair": repair }),
        json!({ "do": "rules" }),
        json!({ "do": "bundles" }),
        json!({ "do": "pack" }),
    ];
    for request in reads {
        assert_eq!(office.ends(reader, None, request.clone()), "ok", "{request}");
    }
    let before = office.ok(json!({ "do": "record", "repair": repair }))["bytes"].clone();
    let shelf = office.ok(json!({ "do": "shelf" }));
    let writes = [
        open_by_hand("SS-2"),
        json!({ "do": "tell", "repair": repair, "command": { "command": "note", "text": "x" } }),
        json!({ "do": "keep_photo", "repair": repair, "bytes": "/9j/4AAQSkZJRg==" }),
        json!({ "do": "work_out", "repair": repair, "name": "end-thrust", "input": { "gauge_bar": 1.2, "inside_diameter_mm": 200 } }),
        person("new", "technician"),
        json!({ "do": "take_off", "kind": "person", "id": "aske" }),
        json!({ "do": "take_examples" }),
        json!({ "do": "import_inspection", "name": "a", "bytes": "" }),
        json!({ "do": "import_record", "name": "a", "bytes": "" }),
        json!({ "do": "take_in", "name": "a", "of": 0 }),
        json!({ "do": "make_key", "person": "sorrel" }),
        json!({ "do": "import_key", "person": "sorrel", "bytes": "" }),
        json!({ "do": "revoke_key", "person": "varga", "from_ms": 0, "reason": "x" }),
        json!({ "do": "seal", "repair": repair }),
    ];
    for request in writes {
        assert_eq!(office.ends(reader, Some(PIN), request.clone()), "reads_only", "{request}");
    }
    assert_eq!(office.ok(json!({ "do": "record", "repair": repair }))["bytes"], before);
    assert_eq!(office.ok(json!({ "do": "shelf" })), shelf);
}

#[test]
fn what_happened_is_recorded_whoever_taps() {
    let mut office = Office::new();
    let repair = office.ok(open_by_hand("SS-1"))["repair"]["id"].clone();
    let alarm = json!({ "command": "report", "happening": { "what": "gas_alarm" } });
    for who in [Some("sorrel"), Some("ekdal"), Some("mallory"), None] {
        assert_eq!(
            office.ends(who, None, json!({ "do": "tell", "repair": repair, "command": alarm })),
            "ok",
            "{who:?}"
        );
    }
}

#[test]
fn a_foreman_is_made_changed_or_taken_off_with_the_pin_of_one_who_has_a_key() {
    let mut office = Office::new();
    let technician = Some("ekdal");
    assert_eq!(office.ends(technician, None, person("first", "foreman")), "ok", "nobody has a key yet");
    assert_eq!(office.ends(Some("varga"), Some(PIN), json!({ "do": "make_key", "person": "varga" })), "ok");
    let changes = [
        person("mallory", "foreman"),
        person("ekdal", "foreman"),
        person("varga", "technician"),
        json!({ "do": "take_off", "kind": "person", "id": "first" }),
    ];
    for request in &changes {
        assert_eq!(office.ends(technician, None, request.clone()), "pin_needed", "{request}");
    }
    assert_eq!(office.ends(technician, Some("111112"), changes[0].clone()), "pin_wrong");
    assert_eq!(office.ends(technician, Some(PIN), changes[3].clone()), "ok");
    // A technician is nobody's business but the crew's.
    assert_eq!(office.ends(technician, None, person("another", "technician")), "ok");
}

#[test]
fn a_revoked_key_does_not_open_the_way_to_a_waiver_without_a_pin() {
    let mut office = Office::new();
    let repair = office.ok(open_by_hand("SS-1"))["repair"]["id"].clone();
    let waive = json!({ "do": "tell", "repair": repair, "command":
        { "command": "waive", "rule": "cover_short", "reason": "Short, but on the safe side.", "foreman": "varga" } });
    assert_eq!(office.ends(Some("ekdal"), None, waive.clone()), "ok", "nobody has a key yet");
    assert_eq!(office.ends(Some("varga"), Some(PIN), json!({ "do": "make_key", "person": "varga" })), "ok");
    assert_eq!(office.ends(Some("ekdal"), None, waive.clone()), "pin_needed");
    assert_eq!(office.ends(Some("ekdal"), Some("111112"), waive.clone()), "pin_wrong");
    assert_eq!(office.ends(Some("ekdal"), Some(PIN), waive.clone()), "ok");
    let revoke = json!({ "do": "revoke_key", "person": "varga", "from_ms": 0, "reason": "lost" });
    assert_eq!(office.ends(Some("ekdal"), None, revoke), "ok", "a lost key is revoked by anybody of the crew");
    for pin in [None, Some(PIN)] {
        assert_eq!(office.ends(Some("ekdal"), pin, waive.clone()), "pin_missing");
    }
}
