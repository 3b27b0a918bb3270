//! Somebody who plays a rehearsal through the door: reads what there is to see, taps, waits.

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use mendline_core::door::App;
use mendline_core::facts::{Moment, Sensed};
use mendline_core::shelf::method::TaskKind;
use mendline_tests::empty_folder;
use serde_json::{Value, json};
use tempfile::TempDir;

use super::answers::{Site, values};

/// How many times as fast the rehearsal's clock runs.
pub const PACE: i64 = 10;

/// 2027-03-01 in the forenoon, UTC: another day than the rehearsal's.
pub const TODAY_MS: i64 = 1_803_895_200_000;

pub struct Crew {
    pub app: App,
    pub folder: TempDir,
    pub id: String,
    /// Since the beginning, by the clocks of the device.
    pub real_ms: i64,
    pub person: &'static str,
    taps: u64,
}

impl Crew {
    /// An empty folder, and a rehearsal with these mishaps.
    pub fn practising(mishaps: &[&str]) -> Self {
        let folder = empty_folder();
        let app = App::open(folder.path()).unwrap();
        let mut crew = Self { app, folder, id: String::new(), real_ms: 0, person: "ekdal", taps: 0 };
        let opened = crew.ask(json!({ "do": "practise", "mishaps": mishaps, "pace": PACE }));
        crew.id = opened["repair"]["id"].as_str().unwrap().to_owned();
        crew
    }

    pub fn moment(&self) -> Moment {
        Moment {
            at_ms: TODAY_MS + self.real_ms,
            offset_min: 60,
            boot_ms: 50_000 + self.real_ms,
            boot_id: "this phone".into(),
        }
    }

    /// Returns the whole response.
    pub fn send(&mut self, request: Value) -> Value {
        self.taps += 1;
        self.real_ms += 20;
        let mut fresh = [7; 16];
        fresh[8..].copy_from_slice(&self.taps.to_be_bytes());
        let sensed = Sensed { moment: self.moment(), device: "a1b2c3phone".into(), fresh, seed: [9; 32] };
        let envelope = json!({ "id": format!("tap-{}", self.taps), "person": self.person, "request": request });
        serde_json::from_str(&self.app.handle(&envelope.to_string(), &sensed)).unwrap()
    }

    pub fn ask(&mut self, request: Value) -> Value {
        let answer = self.send(request);
        assert!(answer["ok"].is_object(), "{answer}");
        answer["ok"].clone()
    }

    pub fn tell(&mut self, command: Value) -> Value {
        let repair = self.id.clone();
        self.ask(json!({ "do": "tell", "repair": repair, "command": command }))
    }

    /// Returns the rules that refuse a command.
    pub fn refused(&mut self, command: Value) -> Vec<String> {
        let repair = self.id.clone();
        let answer = self.send(json!({ "do": "tell", "repair": repair, "command": command }));
        let broken = answer["refusal"]["broken"].as_array().cloned().unwrap_or_else(|| panic!("not refused: {answer}"));
        broken.iter().map(|one| one["rule"].as_str().unwrap().to_owned()).collect()
    }

    pub fn report(&mut self, happening: Value) -> Value {
        self.tell(json!({ "command": "report", "happening": happening }))
    }

    pub fn go_on(&mut self) -> Value {
        self.tell(json!({ "command": "go_on" }))
    }

    /// Lets minutes of the rehearsal pass.
    pub fn wait(&mut self, minutes: i64) -> &mut Self {
        self.real_ms += minutes * 60_000 / PACE;
        self
    }

    pub fn view(&mut self) -> Value {
        let repair = self.id.clone();
        self.ask(json!({ "do": "repair", "repair": repair }))
    }

    /// Returns what is seen now under this name: a value, `true` for words, null for nothing.
    pub fn sees(&mut self, name: &str) -> Value {
        let view = self.view();
        let sights = view["practice"]["sights"].as_array().unwrap();
        let found = sights.iter().find(|sight| sight["seen"] == name);
        found.map_or(Value::Null, |sight| if sight["value"].is_null() { json!(true) } else { sight["value"].clone() })
    }

    /// Answers every open task of a stage and takes its photos.
    pub fn answer_all(&mut self, stage: &str) {
        let view = self.view();
        let now = view["repair"]["last_moment"]["at_ms"].as_i64().unwrap();
        let site = site(&view["repair"]["plan"], now);
        let temps = ["resin_mc", "air_mc", "pipe_mc", "water_mc"].map(|name| (name, self.sees(name)));
        for task in view["tasks"].as_array().unwrap() {
            if task["stage"] != stage || !task["answer"].is_null() || task["mandatory"] != true {
                continue;
            }
            let kind: TaskKind = serde_json::from_value(task["kind"].clone()).unwrap();
            let mut answer = serde_json::to_value(values(kind, &site)).unwrap();
            if kind == TaskKind::Temperatures {
                answer = temps.iter().cloned().map(|(name, value)| (name.to_owned(), value)).collect();
            }
            let done = json!({ "kind": "done", "values": answer });
            self.tell(json!({ "command": "answer", "task": task["key"], "answer": done }));
        }
        for photo in view["photos"].as_array().unwrap() {
            if photo["stage"] == stage && photo["taken"] == false {
                let (repair, bytes) = (self.id.clone(), picture());
                self.ask(json!({ "do": "keep_photo", "repair": repair, "key": photo["key"], "bytes": bytes }));
            }
        }
    }

    pub fn temperatures(&mut self) -> Value {
        json!({ "resin_mc": self.sees("resin_mc"), "air_mc": self.sees("air_mc"), "pipe_mc": self.sees("pipe_mc"),
                "water_mc": self.sees("water_mc") })
    }

    pub fn debrief(&mut self) -> Value {
        self.view()["practice"]["debrief"].clone()
    }

    /// Returns how a mishap was met, and the rule it is about.
    pub fn met(&mut self, mishap: &str) -> (Value, String) {
        let debrief = self.debrief();
        let all = debrief["met"].as_array().unwrap().clone();
        let one = all.iter().find(|one| one["mishap"] == mishap).unwrap_or_else(|| panic!("{debrief}"));
        (one["handled"].clone(), one["rule"].as_str().unwrap().to_owned())
    }

    /// Returns the rules that the debrief names.
    pub fn wrong(&mut self) -> Vec<String> {
        let debrief = self.debrief();
        debrief["wrong"].as_array().unwrap().iter().map(|one| one["rule"].as_str().unwrap().to_owned()).collect()
    }
}

fn site(plan: &Value, now_ms: i64) -> Site {
    let number = |pointer: &str| plan.pointer(pointer).and_then(Value::as_i64).unwrap_or_default();
    let (from, to) = (number("/computed/patches/0/from_um"), number("/computed/patches/0/to_um"));
    Site {
        least_um: number("/choice/diameter_least_um"),
        most_um: number("/choice/diameter_most_um"),
        cleaned_ms: now_ms - 7_200_000,
        viewed_ms: now_ms - 3_600_000,
        flow_until_ms: now_ms + 36_000_000,
        test_pa: number("/packer/test_pressure_pa/value"),
        test_ms: number("/packer/test_ms/value"),
        bare_um: (number("/packer/body_um") - (to - from)) / 2,
        part_b_mg: number("/computed/batch_mg") / 3 / 1000 * 1000,
        containers: plan["resin"]["parts"]["kind"] == "containers",
        centre_um: (from + to) / 2,
        coupons: plan["computed"]["covered"].as_array().map_or(0, |all| all.len() as i64),
    }
}

fn picture() -> String {
    let mut bytes = std::io::Cursor::new(vec![]);
    image::RgbImage::from_pixel(32, 24, image::Rgb([90, 110, 120]))
        .write_to(&mut bytes, image::ImageFormat::Jpeg)
        .unwrap();
    STANDARD.encode(bytes.into_inner())
}
