//! The door: what it answers, what it never does twice, and what it leaves alone.

use std::path::Path;

use mendline_core::door::App;
use mendline_core::facts::{Moment, Sensed};
use mendline_tests::{empty_folder, envelope, open_by_hand};
use serde_json::{Value, json};

/// A core with a clock that moves a second a request.
struct Desk {
    app: App,
    seconds: i64,
}

impl Desk {
    fn open(folder: &Path) -> Self {
        Self { app: App::open(folder).expect("the folder opens"), seconds: 0 }
    }

    fn with_examples(folder: &Path) -> Self {
        let mut desk = Self::open(folder);
        desk.ok("examples", json!({ "do": "take_examples" }));
        desk
    }

    fn text(&mut self, envelope: &str) -> Value {
        self.seconds += 1;
        let moment = Moment {
            at_ms: 1_791_964_800_000 + self.seconds * 1000,
            offset_min: 120,
            boot_ms: self.seconds * 1000,
            boot_id: "one".into(),
        };
        let mut fresh = [0; 16];
        fresh[..8].copy_from_slice(&self.seconds.to_be_bytes());
        let sensed = Sensed { moment, device: "desk".into(), fresh, seed: [fresh[0] | 1; 32] };
        serde_json::from_str(&self.app.handle(envelope, &sensed)).expect("a response is JSON")
    }

    fn ask(&mut self, id: &str, request: Value) -> Value {
        self.text(&envelope(id, request))
    }

    fn ok(&mut self, id: &str, request: Value) -> Value {
        let response = self.ask(id, request);
        assert!(response["ok"].is_object(), "{response}");
        response["ok"].clone()
    }

    fn opened(&mut self, id: &str, asset: &str) -> String {
        let answer = self.ok(id, open_by_hand(asset));
        answer["repair"]["id"].as_str().expect("an id").to_owned()
    }

    fn listed(&mut self, id: &str) -> Value {
        self.ok(id, json!({ "do": "list" }))["repairs"].clone()
    }
}

#[test]
fn the_same_request_twice_writes_once() {
    let folder = empty_folder();
    let mut desk = Desk::with_examples(folder.path());
    let first = desk.ok("open-1", open_by_hand("SS-1"));
    let again = desk.ok("open-1", open_by_hand("SS-1"));
    assert_eq!(first["repair"]["id"], again["repair"]["id"]);
    assert_eq!(desk.listed("l").as_array().map(Vec::len), Some(1));
    let other = desk.ask("open-1", open_by_hand("SS-2"));
    assert_eq!(other["error"]["code"], "request_reused");
}

#[test]
fn a_refusal_names_the_rule_and_writes_nothing() {
    let folder = empty_folder();
    let mut desk = Desk::with_examples(folder.path());
    let repair = desk.opened("o", "SS-1");
    let before = desk.ok("r1", json!({ "do": "record", "repair": repair }));
    let refused = desk.ask("g", json!({ "do": "tell", "repair": repair, "command": { "command": "go_on" } }));
    let broken = &refused["refusal"]["broken"][0];
    assert_eq!(
        (broken["rule"].as_str(), broken["says"].as_str()),
        (Some("plan_missing"), Some("There is no accepted plan."))
    );
    assert_eq!(desk.ok("r2", json!({ "do": "record", "repair": repair })), before);
}

#[test]
fn nonsense_is_answered_and_changes_nothing() {
    let folder = empty_folder();
    let mut desk = Desk::with_examples(folder.path());
    for nonsense in
        ["", "{}", "[1]", "\u{0}", r#"{"id":"x","request":{"do":"fly"}}"#, r#"{"id":"","request":{"do":"today"}}"#]
    {
        assert_eq!(desk.text(nonsense)["error"]["code"], "bad_request", "{nonsense}");
    }
    let unknown = desk.ask("u", json!({ "do": "repair", "repair": "shelf" }));
    assert_eq!(unknown["error"]["code"], "unknown_repair");
}

#[test]
fn everything_is_there_after_a_restart() {
    let folder = empty_folder();
    let repair = {
        let mut desk = Desk::with_examples(folder.path());
        let repair = desk.opened("o", "SS-1");
        desk.ok("n", json!({ "do": "tell", "repair": repair, "command": { "command": "note", "text": "rain" } }));
        repair
    };
    let mut desk = Desk::open(folder.path());
    let view = desk.ok("v", json!({ "do": "repair", "repair": repair }));
    assert_eq!(view["repair"]["notes"][0]["text"], "rain");
}

#[test]
fn the_register_made_anew_is_the_one_that_was_kept() {
    let folder = empty_folder();
    let mut desk = Desk::with_examples(folder.path());
    for number in 0..5 {
        let repair = desk.opened(&format!("o{number}"), &format!("SS-{number}"));
        desk.ok(
            &format!("n{number}"),
            json!({ "do": "tell", "repair": repair, "command": { "command": "note", "text": "x" } }),
        );
    }
    let live = desk.listed("l1");
    assert_eq!(desk.ok("b", json!({ "do": "rebuild" }))["repairs"], 5);
    assert_eq!(desk.listed("l2"), live);
    let found = desk.ok("s", json!({ "do": "list", "text": "SS-3" }));
    assert_eq!(found["repairs"].as_array().map(Vec::len), Some(1));
}

#[test]
fn a_name_is_just_a_name() {
    let folder = empty_folder();
    let mut desk = Desk::with_examples(folder.path());
    let name = "<img src=x onerror=alert(1)>";
    desk.opened("o", name);
    assert_eq!(desk.listed("l")[0]["asset"], name);
}

#[test]
fn a_broken_inspection_file_leaves_the_shelf_as_it_was() {
    let folder = empty_folder();
    let mut desk = Desk::with_examples(folder.path());
    let broken = "I0ExPVVURi04CiNBMj1lbgo="; // the head of a file, and no more
    let response = desk.ask("i", json!({ "do": "import_inspection", "name": "cut.txt", "bytes": broken }));
    assert_eq!(response["error"]["code"], "inspection_file");
    assert_eq!(desk.ok("f", json!({ "do": "inspections" }))["files"], json!([]));
}

#[test]
fn the_last_foreman_stays_in_the_list() {
    let folder = empty_folder();
    let mut desk = Desk::with_examples(folder.path());
    let response = desk.ask("t", json!({ "do": "take_off", "kind": "person", "id": "varga" }));
    assert_eq!(response["error"]["code"], "last_foreman");
}

#[test]
fn a_record_is_checked_without_its_folder_and_one_letter_is_noticed() {
    use base64::Engine as _;
    let folder = empty_folder();
    let mut desk = Desk::with_examples(folder.path());
    let repair = desk.opened("o", "SS-1");
    let file = desk.ok("r", json!({ "do": "record", "repair": repair }));
    let bytes =
        base64::engine::general_purpose::STANDARD.decode(file["bytes"].as_str().expect("bytes")).expect("base64");
    let check = |bytes: &[u8]| mendline_core::door::check_record("record.json", bytes);
    assert!(check(&bytes).says.contains("nothing was changed"), "{}", check(&bytes).says);
    let text = String::from_utf8(bytes).expect("text").replace("Kettle Row", "Kettle Roe");
    assert!(check(text.as_bytes()).says.contains("something in it was changed"));
    assert_eq!(check(b"not json").finding as u8, 2);
}

/// Returns the record of a repair with three entries as JSON, and what is checked of it after a change.
fn record_of_three(desk: &mut Desk) -> Value {
    use base64::Engine as _;
    let repair = desk.opened("o", "SS-1");
    for (id, text) in [("n1", "rain"), ("n2", "sun")] {
        desk.ok(id, json!({ "do": "tell", "repair": repair, "command": { "command": "note", "text": text } }));
    }
    let file = desk.ok("r", json!({ "do": "record", "repair": repair }));
    let bytes = base64::engine::general_purpose::STANDARD.decode(file["bytes"].as_str().expect("bytes"));
    serde_json::from_slice(&bytes.expect("base64")).expect("a record is JSON")
}

#[test]
fn a_check_names_the_entry_that_does_not_fit_and_what_was_looked_at() {
    use mendline_core::door::{Look, check_record};
    let folder = empty_folder();
    let record = record_of_three(&mut Desk::with_examples(folder.path()));
    let check = |change: fn(&mut Value)| {
        let mut changed = record.clone();
        change(&mut changed);
        check_record("record.json", changed.to_string().as_bytes())
    };
    let last =
        |verdict: &mendline_core::door::Verdict| verdict.looked.last().copied().map(|look| (look.at, look.right));
    let whole = check(|_| ());
    assert_eq!((whole.breaks_at, whole.looked[0].right), (None, true));
    assert_eq!(whole.told.as_ref().map(|told| told.asset.as_str()), Some("SS-1"));
    assert_eq!(last(&whole), Some((Look::Signatures, false)));

    let letter = check(|record| {
        let body = record["entries"][1]["body"].as_str().expect("a body").replace("rain", "rein");
        record["entries"][1]["body"] = body.into();
    });
    assert_eq!((letter.breaks_at, last(&letter)), (Some(2), Some((Look::Chain, false))));
    assert_eq!(letter.told, None);

    let cut = check(|record| drop(record["entries"].as_array_mut().expect("entries").pop()));
    assert_eq!((cut.breaks_at, last(&cut)), (Some(2), Some((Look::Head, false))));

    let top = check(|record| record["number"] = "R-99".into());
    assert_eq!((top.breaks_at, last(&top)), (None, Some((Look::Top, false))));
}

#[test]
fn a_photo_is_kept_with_its_bytes_and_a_text_is_not_a_photo() {
    use base64::Engine as _;
    let folder = empty_folder();
    let mut desk = Desk::with_examples(folder.path());
    let repair = desk.opened("o", "SS-1");
    let photo = base64::engine::general_purpose::STANDARD.encode([0xff, 0xd8, 0xff, 0xe0, 0, 16, 74, 70, 73, 70]);
    let keep = |bytes: &str| json!({ "do": "keep_photo", "repair": repair, "label": "cover", "bytes": bytes });
    let view = desk.ok("p", keep(&photo));
    let sha256 = view["repair"]["photos"][0]["sha256"].as_str().expect("a hash").to_owned();
    let back = desk.ok("q", json!({ "do": "photo", "sha256": sha256 }));
    assert_eq!((back["bytes"].as_str(), back["media_type"].as_str()), (Some(photo.as_str()), Some("image/jpeg")));
    assert_eq!(desk.ask("t", keep("aGVsbG8="))["error"]["code"], "photo");
}

/// What one language taps, another reads in its own, and the record holds neither.
#[test]
fn a_photo_and_an_inspection_are_recorded_in_english_whoever_taps_and_shown_to_each_in_their_own() {
    use base64::Engine as _;
    let folder = empty_folder();
    let mut desk = Desk::with_examples(folder.path());
    let german = |desk: &mut Desk, id: &str, request: Value| {
        let asked = json!({ "id": id, "person": "varga", "reader": { "language": "de" }, "request": request });
        desk.text(&asked.to_string())["ok"].clone()
    };
    let bytes = base64::engine::general_purpose::STANDARD
        .encode(std::fs::read("../fixtures/inspections/quillmere.txt").expect("the fixture is there"));
    let files = desk.ok("in", json!({ "do": "import_inspection", "name": "q.txt", "bytes": bytes }));
    let file = &files["files"][0]["file"];
    let seen = german(&mut desk, "see", json!({ "do": "inspection", "file": file, "index": 0 }));
    let rows = seen["observations"].as_array().expect("rows");
    let crack = rows.iter().find(|one| one["code"] == "BAB B A").expect("a crack");
    assert!(crack["words"].as_str().is_some_and(|words| words.starts_with("Riss, längs")), "{crack}");
    let opening = json!({ "do": "open_from_inspection", "file": file, "index": 0, "observations": [crack["index"]], "contract": "QM-2026-31" });
    let repair = german(&mut desk, "open", opening)["repair"]["id"].clone();
    let jpeg = base64::engine::general_purpose::STANDARD.encode([0xff, 0xd8, 0xff, 0xe0, 0, 16, 74, 70, 73, 70]);
    let keep =
        json!({ "do": "keep_photo", "repair": repair, "key": "before", "label": "Schaden vorher", "bytes": jpeg });
    let shown = german(&mut desk, "photo", keep);
    assert_eq!(shown["repair"]["photos"][0]["label"], "Schaden vorher");
    let recorded = desk.ok("look", json!({ "do": "repair", "repair": repair }));
    assert_eq!(recorded["repair"]["photos"][0]["label"], "Defect before");
    let words = &recorded["repair"]["defect"]["observations"][0]["words"];
    assert!(words.as_str().is_some_and(|words| words.starts_with("Crack, lengthwise")), "{words}");
    assert_eq!(
        (&shown["repair"]["line"]["material"], &recorded["repair"]["line"]["material"]),
        (&json!("Steinzeug"), &json!("vitrified clay"))
    );
}

#[test]
fn what_the_inspection_does_not_say_is_typed_and_what_it_says_stands() {
    use base64::Engine;
    let folder = empty_folder();
    let mut desk = Desk::with_examples(folder.path());
    let whole = std::fs::read_to_string("../fixtures/inspections/quillmere.txt").unwrap();
    let without = whole.replacen("ACB;ACC;ACD;ACK", "ACB;ACC;ACK", 1).replacen("200;200;AE;A", "200;200;A", 1);
    assert_ne!(whole, without);
    let bytes = base64::engine::general_purpose::STANDARD.encode(without);
    let files = desk.ok("in", json!({ "do": "import_inspection", "name": "q.txt", "bytes": bytes }));
    let (file, line) = (&files["files"][0]["file"], &files["files"][0]["inspections"][0]);
    assert_eq!((line["line"].as_str(), line["material"].as_str()), (Some("SS-03107"), Some("")));
    let seen = desk.ok("see", json!({ "do": "inspection", "file": file, "index": 0 }));
    let rows = seen["observations"].as_array().unwrap();
    let crack = rows.iter().find(|one| one["code"].as_str().is_some_and(|code| code.starts_with("BAB"))).unwrap();
    let opened = desk.ok(
        "open",
        json!({
            "do": "open_from_inspection", "file": file, "index": 0, "observations": [crack["index"]],
            "contract": "QM-2026-31", "unsaid": { "asset": "another", "material": "vitrified clay" }
        }),
    );
    assert_eq!(opened["repair"]["line"]["material"], "vitrified clay");
    assert_eq!(opened["repair"]["line"]["asset"], "SS-03107");
}
