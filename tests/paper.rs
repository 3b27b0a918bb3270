//! A job that was done on paper is keyed in: every entry is marked and keeps both times, on screens, pages and in the record.

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use mendline_core::door::App;
use mendline_core::facts::{Moment, Sensed};
use mendline_tests::{empty_folder, open_by_hand};
use serde_json::{Value, json};

/// 2026-10-14 16:00 local time: somebody sits down with the sheet.
const EVENING_MS: i64 = 1_791_986_400_000;
const MINUTE: i64 = 60_000;

struct Office {
    app: App,
    taps: u64,
    id: String,
    /// Minutes after nine in the morning that stand on the sheet; `None` for what is tapped now.
    sheet: Option<i64>,
    _folder: tempfile::TempDir,
}

impl Office {
    fn new() -> Self {
        let folder = empty_folder();
        let app = App::open(folder.path()).unwrap();
        Self { app, taps: 0, id: String::new(), sheet: None, _folder: folder }
    }

    fn send(&mut self, request: Value) -> Value {
        self.taps += 1;
        let mut fresh = [3; 16];
        fresh[8..].copy_from_slice(&self.taps.to_be_bytes());
        let ms = i64::try_from(self.taps).unwrap() * 1000;
        // The repair was opened and planned in the morning, before the phone fell into the water.
        let at_ms = if self.id.is_empty() { EVENING_MS - 8 * 60 * MINUTE + ms } else { EVENING_MS + ms };
        let boot_ms = at_ms - EVENING_MS + 20 * 60 * MINUTE;
        let moment = Moment { at_ms, offset_min: 120, boot_ms, boot_id: "office".into() };
        let sensed = Sensed { moment, device: "b2laptop".into(), fresh, seed: [5; 32] };
        let mut envelope = json!({ "id": format!("tap-{}", self.taps), "person": "varga", "request": request,
            "position": { "kind": "fix", "lat_e7": 1, "lon_e7": 2, "age_ms": 0, "source": "browser" } });
        if let Some(minutes) = self.sheet {
            envelope["on_paper_ms"] = json!(EVENING_MS - 7 * 60 * MINUTE + minutes * MINUTE);
        }
        serde_json::from_str(&self.app.handle(&envelope.to_string(), &sensed)).unwrap()
    }

    fn ask(&mut self, request: Value) -> Value {
        let answer = self.send(request);
        assert!(answer["ok"].is_object(), "{answer}");
        answer["ok"].clone()
    }

    fn tell(&mut self, command: Value) -> Value {
        let repair = self.id.clone();
        self.ask(json!({ "do": "tell", "repair": repair, "command": command }))
    }

    fn at(&mut self, minutes: i64) -> &mut Self {
        self.sheet = Some(minutes);
        self
    }

    fn report(&mut self, happening: Value) -> Value {
        self.tell(json!({ "command": "report", "happening": happening }))
    }
}

/// A planned repair, and on its sheet a job from joining at 9:20 to the release at 10:40.
fn keyed_in() -> (Office, Value) {
    let mut office = Office::new();
    office.ask(json!({ "do": "take_examples" }));
    let opened = office.ask(open_by_hand("SS-7"));
    let id = opened["repair"]["id"].as_str().unwrap().to_owned();
    let planned = office.ask(json!({ "do": "plan", "repair": id }));
    let mut choice = planned["proposal"]["choice"].clone();
    choice["temperatures"] = json!({ "resin_mc": 19_200, "air_mc": 13_100, "pipe_mc": 12_800, "water_mc": 13_400 });
    for (key, value) in [("diameter_least_um", 196_500), ("diameter_most_um", 199_000), ("head_um", 800_000)] {
        choice[key] = json!(value);
    }
    choice["diameter_measured"] = json!(true);
    office.ask(json!({ "do": "accept_plan", "repair": id, "choice": choice }));
    office.id = id;
    office.at(1).tell(json!({ "command": "go_on" }));
    let temperatures = json!({ "resin_mc": 19_200, "air_mc": 13_100, "pipe_mc": 12_800, "water_mc": 13_400 });
    office
        .at(15)
        .tell(json!({ "command": "answer", "task": "battery", "answer": { "kind": "done", "values": { "pct": 60 } } }));
    office.at(18).report(json!({ "what": "temperatures_read", "temperatures": temperatures }));
    office.at(20).report(json!({ "what": "joined" }));
    office.at(33).report(json!({ "what": "insertion_begun" }));
    office.at(39).report(json!({ "what": "at_the_mark", "beyond_um": 0 }));
    office.at(40).report(json!({ "what": "air_joined" }));
    let mut last = office.at(43).report(json!({ "what": "target_reached", "gauge_pa": 125_000 }));
    for minutes in [52, 61, 70] {
        last =
            office.at(minutes).report(json!({ "what": "reading", "gauge_pa": 125_000 + minutes, "pipe_mc": 12_800 }));
    }
    (office, last)
}

#[test]
fn the_screens_show_the_job_as_it_was_with_every_entry_marked() {
    let (mut office, view) = keyed_in();
    // By the paper all went in time: nothing says that the working time was over this morning.
    assert_eq!(view["trouble"], Value::Null);
    assert_eq!(view["hold"]["counted_ms"], 27 * MINUTE);
    let readings = view["hold"]["readings"].as_array().unwrap();
    assert!(readings.len() == 4 && readings.iter().all(|one| one["paper"] == true), "{readings:?}");
    let battery = view["tasks"].as_array().unwrap().iter().find(|task| task["key"] == "battery").unwrap().clone();
    assert_eq!(
        (battery["paper"].clone(), battery["answered_ms"].clone()),
        (json!(true), json!(EVENING_MS - 405 * MINUTE))
    );
    let off = view["review"]["off"].as_array().unwrap();
    let paper = off.iter().find(|one| one["what"]["kind"] == "paper").unwrap();
    let entries = paper["what"]["entries"].as_array().unwrap();
    for what in ["parts joined", "insertion begun", "target pressure reached", "reading", "temperatures read"] {
        let entry = entries.iter().find(|one| one["what"] == what).unwrap_or_else(|| panic!("{what}: {entries:?}"));
        assert!(entry["keyed_ms"].as_i64().unwrap() - entry["at_ms"].as_i64().unwrap() > 5 * 60 * MINUTE, "{entry}");
    }
    // What is tapped afterwards is not from paper.
    office.sheet = None;
    let noted = office.tell(json!({ "command": "note", "text": "The sheet lies in the folder." }));
    assert_eq!(noted["repair"]["notes"][0]["at"].get("paper"), None);
}

#[test]
fn what_counts_in_the_crews_favour_waits_for_the_foreman() {
    let (_, view) = keyed_in();
    let open: Vec<_> =
        view["review"]["broken"].as_array().unwrap().iter().filter(|one| one["rule"] == "late_tap_in_favour").collect();
    let subjects: Vec<_> = open.iter().map(|one| one["subject"].as_str().unwrap()).collect();
    assert_eq!(subjects, ["target pressure", "readings from paper"], "{open:?}");
    assert!(open.iter().all(|one| one["waivable"] == true && one["waived"].is_null()));
}

#[test]
fn the_record_keeps_both_times_and_no_position() {
    let (mut office, _) = keyed_in();
    office.sheet = None;
    let repair = office.id.clone();
    let file = office.ask(json!({ "do": "record", "repair": repair }));
    let record: Value = serde_json::from_slice(&STANDARD.decode(file["bytes"].as_str().unwrap()).unwrap()).unwrap();
    let bodies: Vec<Value> = record["entries"]
        .as_array()
        .unwrap()
        .iter()
        .map(|entry| serde_json::from_str(entry["body"].as_str().unwrap()).unwrap())
        .collect();
    let joined = bodies.iter().find(|body| body.to_string().contains("\"what\":\"joined\"")).unwrap();
    assert_eq!(joined["facts"]["moment"]["at_ms"], EVENING_MS - 400 * MINUTE);
    assert!(joined["facts"]["keyed"]["at_ms"].as_i64().unwrap() >= EVENING_MS);
    assert_eq!(joined["facts"]["position"], json!({ "kind": "absent", "why": "not_asked" }));
    assert!(bodies[0]["facts"].get("keyed").is_none());
}

#[test]
fn the_certificate_says_from_paper_with_both_times() {
    let (mut office, _) = keyed_in();
    let why = ["It sits past the mark."];
    office
        .at(80)
        .tell(json!({ "command": "end_attempt", "outcome": "left_in_pipe", "reasons": why, "in_pipe": "All of it." }));
    office.sheet = None;
    let repair = office.id.clone();
    let file = office.ask(json!({ "do": "certificate", "repair": repair }));
    let pdf = lopdf::Document::load_mem(&STANDARD.decode(file["bytes"].as_str().unwrap()).unwrap()).unwrap();
    let pages: Vec<u32> = pdf.get_pages().keys().copied().collect();
    let text = pdf.extract_text(&pages).unwrap().replace(['\n', '\u{a0}'], " ");
    for words in ["From paper", "keyed in by Ines Varga", "parts joined 09:20 (keyed in 16:00)", "P from paper"] {
        let found = text.split_whitespace().collect::<Vec<_>>().join(" ").contains(words);
        assert!(found, "{words} is missing: {text}");
    }
}

#[test]
fn a_time_that_can_not_be_is_refused_and_nothing_is_written() {
    let (mut office, view) = keyed_in();
    let entries = view["repair"]["entries"].clone();
    for minutes in [8 * 60, -24 * 60] {
        let repair = office.id.clone();
        office.at(minutes);
        let answer =
            office.send(json!({ "do": "tell", "repair": repair, "command": { "command": "note", "text": "x" } }));
        assert_eq!(answer["error"]["code"], "paper", "{answer}");
    }
    office.sheet = None;
    let repair = office.id.clone();
    assert_eq!(office.ask(json!({ "do": "repair", "repair": repair }))["repair"]["entries"], entries);
}
