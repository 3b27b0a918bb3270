//! A record in earnest, made of the rehearsal's: what only a real job has, without the days that it takes.

use std::path::Path;

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use mendline_core::door::{App, Trusted};
use mendline_core::facts::{Moment, Sensed};
use mendline_core::journal::{Entry, Hash, codec, link};
use mendline_core::procedure::{Record, Repair, replay};
use serde_json::{Value, json};

use crate::{copied, rehearsal};

/// Id and PIN of the two who sign.
pub const TECHNICIAN: (&str, &str) = ("ekdal", "271828");
pub const FOREMAN: (&str, &str) = ("varga", "314159");

/// A core whose clock moves a minute a request, on the evening after the rehearsal's job.
pub struct Desk {
    app: App,
    minutes: i64,
}

impl Desk {
    /// Opens a folder and takes the invented documents and people in.
    pub fn open(folder: &Path) -> Self {
        let mut desk = Self { app: App::open(folder).expect("the folder opens"), minutes: 0 };
        desk.ok(FOREMAN, json!({ "do": "take_examples" }));
        desk
    }

    /// Opens a folder in which both people have a key.
    pub fn with_keys(folder: &Path) -> Self {
        let mut desk = Self::open(folder);
        for who in [TECHNICIAN, FOREMAN] {
            desk.ok(who, json!({ "do": "make_key", "person": who.0 }));
        }
        desk
    }

    /// Opens a folder with keys, the photos of the rehearsal if wanted, and its record in earnest, not yet signed;
    /// returns the repair's id with it.
    pub fn with_record(folder: &Path, photos: bool) -> (Self, String) {
        Self::with_record_for(folder, photos, &json!({ "language": "en", "units": "si", "dates": "iso" }), "a4")
    }

    /// The same, of a contract that wants the certificate written for `reader`, on `paper`.
    pub fn with_record_for(folder: &Path, photos: bool, reader: &Value, paper: &str) -> (Self, String) {
        if photos {
            copied(&rehearsal().join("data/photos"), &folder.join("photos"));
        }
        let mut desk = Self::with_keys(folder);
        let record = in_earnest(reader, paper);
        let repair = record["repair"].as_str().expect("a repair").to_owned();
        let taken = STANDARD.encode(record.to_string());
        desk.ok(FOREMAN, json!({ "do": "import_record", "name": "record.json", "bytes": taken }));
        (desk, repair)
    }

    /// Opens a folder with keys and the record in earnest of a defect that was planned for and given up, closed by the
    /// foreman: the shortest paper; returns the repair's id with it.
    pub fn with_short_record(folder: &Path) -> (Self, String) {
        let mut desk = Self::with_keys(folder);
        let whole = in_earnest(&json!({ "language": "en", "units": "si", "dates": "iso" }), "a4");
        let entries = whole["entries"].as_array().expect("entries");
        let body = |entry: &Value| entry["body"].as_str().expect("a body").to_owned();
        let planned = entries.iter().map(body).take_while(|body| !body.contains("\"event\":\"attempt_begun\""));
        let record = linked_anew(&whole, &planned.collect::<Vec<_>>());
        let repair = record["repair"].as_str().expect("a repair").to_owned();
        let taken = STANDARD.encode(record.to_string());
        desk.ok(FOREMAN, json!({ "do": "import_record", "name": "record.json", "bytes": taken }));
        let close = json!({ "command": "close_unrepaired", "reason": "The line is given up." });
        desk.ok(FOREMAN, json!({ "do": "tell", "repair": repair, "command": close }));
        (desk, repair)
    }

    pub fn ask(&mut self, (person, pin): (&str, &str), request: Value) -> Value {
        self.minutes += 1;
        let ms = self.minutes * 60_000;
        let moment = Moment { at_ms: 1_792_000_000_000 + ms, offset_min: 120, boot_ms: ms, boot_id: "one".into() };
        let byte = self.minutes as u8;
        let sensed = Sensed { moment, device: "desk".into(), fresh: [byte; 16], seed: [byte; 32] };
        let mut envelope = json!({ "id": format!("tap-{}", self.minutes), "person": person, "request": request });
        if !pin.is_empty() {
            envelope["pin"] = pin.into();
        }
        serde_json::from_str(&self.app.handle(&envelope.to_string(), &sensed)).expect("an answer is JSON")
    }

    pub fn ok(&mut self, who: (&str, &str), request: Value) -> Value {
        let response = self.ask(who, request);
        assert!(response["ok"].is_object(), "{response}");
        response["ok"].clone()
    }

    /// Returns the code of the error.
    pub fn refused(&mut self, who: (&str, &str), request: Value) -> String {
        let response = self.ask(who, request);
        response["error"]["code"].as_str().unwrap_or_else(|| panic!("{response}")).to_owned()
    }

    /// Draws both lines, issues the certificate and signs it with both keys; returns the PDF.
    pub fn certified(&mut self, repair: &str) -> Vec<u8> {
        self.ok(TECHNICIAN, line(repair, "Tomas Ekdal"));
        self.ok(FOREMAN, line(repair, "Ines Varga"));
        self.ok(FOREMAN, json!({ "do": "issue", "repair": repair }));
        for who in [TECHNICIAN, FOREMAN] {
            self.ok(who, json!({ "do": "seal", "repair": repair }));
        }
        bytes(&self.ok(FOREMAN, json!({ "do": "certificate", "repair": repair })))
    }

    /// Returns the certificates that a person hands out.
    pub fn handed_out(&mut self, person: &str) -> Trusted {
        let file = self.ok((person, ""), json!({ "do": "person_certificate", "person": person }));
        Trusted::from_pem(std::str::from_utf8(&bytes(&file)).expect("text")).expect("a certificate")
    }

    pub fn keys_of(&mut self, person: &str) -> Value {
        let shelf = self.ok((person, ""), json!({ "do": "shelf" }));
        let people = shelf["people"].as_array().expect("people");
        people.iter().find(|one| one["id"] == person).expect("the person")["keys"].clone()
    }
}

/// The request that draws the line of a name.
pub fn line(repair: &str, name: &str) -> Value {
    json!({ "do": "tell", "repair": repair, "command": {
        "command": "sign", "name": name, "statement": "I say so.", "strokes": [[[0, 0], [500, 500]]] } })
}

/// The bytes of a file that the door handed out.
pub fn bytes(file: &Value) -> Vec<u8> {
    STANDARD.decode(file["bytes"].as_str().expect("bytes")).expect("base64")
}

/// Returns the repair that a record tells of, its head, and how many entries it has.
pub fn state(record: &[u8]) -> (Repair, String, u64) {
    let record: Value = serde_json::from_slice(record).expect("a record is JSON");
    let entries = record["entries"].as_array().expect("entries");
    let entry = |entry: &Value| Entry {
        repair: record["repair"].as_str().expect("a repair").into(),
        device: entry["device"].as_str().expect("a device").into(),
        seq: entry["seq"].as_u64().expect("a number"),
        prev: vec![],
        body: entry["body"].as_str().expect("a body").as_bytes().to_vec(),
        hash: entry["hash"].as_str().expect("a hash").parse().expect("a SHA-256"),
    };
    let records: Vec<Record> =
        entries.iter().map(|one| codec::decode(&entry(one)).expect("an entry is decoded")).collect();
    let head = record["heads"][0].as_str().expect("a head").to_owned();
    (replay(&records).expect("it opens a repair"), head, entries.len() as u64)
}

/// Returns the rehearsal's record up to its signatures, as a record in earnest for `reader` on `paper`: each entry linked
/// anew.
pub fn in_earnest(reader: &Value, paper: &str) -> Value {
    let bytes = std::fs::read(rehearsal().join("record.json")).expect("the rehearsal has a record");
    let mut record: Value = serde_json::from_slice(&bytes).expect("it is JSON");
    let signed = |entry: &Value| entry["body"].as_str().is_some_and(|body| body.contains("\"event\":\"signed\""));
    let entries = record["entries"].as_array().expect("entries");
    let end = entries.iter().position(signed).expect("it was signed");
    let written = r#""reader":{"language":"en","units":"si","dates":"iso"}"#;
    let wanted = format!("\"reader\":{reader}");
    let sheet = format!("\"paper\":\"{paper}\"");
    let earnest = |body: &str| {
        let body = body.replace("\"rehearsal\":true", "\"rehearsal\":false");
        body.replace(written, &wanted).replace("\"paper\":\"a4\"", &sheet)
    };
    let bodies: Vec<String> =
        entries[..end].iter().map(|entry| earnest(entry["body"].as_str().expect("a body"))).collect();
    assert!(bodies[0].contains(&wanted) && bodies[0].contains(&sheet), "the contract names its reader and its paper");
    record["rehearsal"] = false.into();
    linked_anew(&record, &bodies)
}

/// Returns a record with other bodies, each entry linked anew: sound in itself, whatever it says.
pub fn linked_anew(record: &Value, bodies: &[String]) -> Value {
    let repair = record["repair"].as_str().expect("a repair");
    let mut anew: Vec<(String, Hash)> = vec![];
    let mut entries = vec![];
    for (entry, body) in record["entries"].as_array().expect("entries").iter().zip(bodies) {
        let old = entry["prev"].as_array().expect("hashes");
        let now = |hash: &Value| anew.iter().find(|(known, _)| Some(known.as_str()) == hash.as_str()).map(|one| one.1);
        let prev: Vec<Hash> = old.iter().filter_map(now).collect();
        let device = entry["device"].as_str().expect("a device");
        let hash = link(repair, device, entry["seq"].as_u64().expect("a number"), &prev, body.as_bytes());
        anew.push((entry["hash"].as_str().expect("a hash").to_owned(), hash));
        entries.push(json!({ "device": device, "seq": entry["seq"], "prev": prev, "hash": hash, "body": body }));
    }
    let mut record = record.clone();
    record["heads"] = json!([anew.last().expect("an entry").1]);
    record["entries"] = entries.into();
    record
}
