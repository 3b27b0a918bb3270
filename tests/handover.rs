//! A live hold from one phone to another by file and code: two folders, two starts, wall clocks minutes apart.

use std::io::Cursor;

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use image::{DynamicImage, GrayImage, ImageFormat, Luma, imageops};
use mendline_core::door::App;
use mendline_core::facts::{Moment, Sensed};
use mendline_tests::{empty_folder, open_by_hand, python};
use serde_json::{Value, json};
use tempfile::TempDir;

const MINUTE: i64 = 60_000;

/// 2026-10-14 08:00 UTC. Source: GNU date.
const MORNING_MS: i64 = 1_791_964_800_000;

/// A phone with a folder of its own. Its clocks show what the story says, moved by its own amounts.
struct Phone {
    _folder: TempDir,
    app: App,
    name: &'static str,
    boot_id: String,
    wall_ahead_ms: i64,
    runs_longer_ms: i64,
    asked: u32,
}

impl Phone {
    fn new(name: &'static str, wall_ahead_ms: i64, runs_longer_ms: i64) -> Self {
        let folder = empty_folder();
        let app = App::open(folder.path()).expect("the folder opens");
        let boot_id = format!("start of {name}");
        let mut phone = Self { _folder: folder, app, name, boot_id, wall_ahead_ms, runs_longer_ms, asked: 0 };
        phone.ok(0, json!({ "do": "take_examples" }));
        phone
    }

    /// Asks at a moment of the story, in ms.
    fn ask(&mut self, at_ms: i64, request: Value) -> Value {
        self.asked += 1;
        let moment = Moment {
            at_ms: MORNING_MS + at_ms + self.wall_ahead_ms,
            offset_min: 120,
            boot_ms: 86_400_000 + at_ms + self.runs_longer_ms,
            boot_id: self.boot_id.clone(),
        };
        let byte = self.name.as_bytes()[0];
        let mut fresh = [byte; 16];
        fresh[..4].copy_from_slice(&self.asked.to_be_bytes());
        let sensed = Sensed { moment, device: self.name.into(), fresh, seed: [byte; 32] };
        let id = format!("{}-{}", self.name, self.asked);
        let envelope = json!({ "id": id, "person": "varga", "request": request }).to_string();
        serde_json::from_str(&self.app.handle(&envelope, &sensed)).expect("an answer is JSON")
    }

    fn ok(&mut self, at_ms: i64, request: Value) -> Value {
        let answer = self.ask(at_ms, request);
        assert!(answer["ok"].is_object(), "{answer}");
        answer["ok"].clone()
    }

    fn tell(&mut self, at_ms: i64, repair: &str, command: Value) -> Value {
        self.ok(at_ms, json!({ "do": "tell", "repair": repair, "command": command }))
    }

    fn report(&mut self, at_ms: i64, repair: &str, happening: Value) -> Value {
        self.tell(at_ms, repair, json!({ "command": "report", "happening": happening }))
    }

    fn reads(&mut self, at_ms: i64, repair: &str) -> Value {
        self.report(at_ms, repair, json!({ "what": "reading", "gauge_pa": 130_000, "by": "hand", "gauge": "G-04" }))
    }

    fn shows(&mut self, at_ms: i64, repair: &str) -> Value {
        self.ok(at_ms, json!({ "do": "repair", "repair": repair }))
    }

    /// Opens a repair with a plan, and brings it to a hold with a reading at 17 and one at 24 min.
    fn holds(&mut self) -> String {
        let opened = self.ok(0, open_by_hand("SS-1"));
        let repair = opened["repair"]["id"].as_str().expect("an id").to_owned();
        let mut choice = self.ok(0, json!({ "do": "plan", "repair": repair }))["proposal"]["choice"].clone();
        choice["temperatures"] = json!({ "resin_mc": 19_200, "air_mc": 13_100, "pipe_mc": 12_800, "water_mc": 13_400 });
        for (key, value) in [("diameter_least_um", 196_500), ("diameter_most_um", 199_000), ("head_um", 800_000)] {
            choice[key] = json!(value);
        }
        choice["diameter_measured"] = json!(true);
        self.ok(0, json!({ "do": "accept_plan", "repair": repair, "choice": choice }));
        self.report(0, &repair, json!({ "what": "joined" }));
        self.report(10 * MINUTE, &repair, json!({ "what": "target_reached", "gauge_pa": 130_000 }));
        self.reads(17 * MINUTE, &repair);
        self.reads(24 * MINUTE, &repair);
        repair
    }

    /// The file that carries a repair, as it is fetched.
    fn file(&mut self, at_ms: i64, repair: &str) -> (String, Vec<u8>) {
        let made = self.ok(at_ms, json!({ "do": "pack", "repairs": [repair] }));
        let piece = self.ok(at_ms, json!({ "do": "piece", "name": made["name"], "from": 0 }));
        assert_eq!(piece["of"], made["bytes"]);
        let bytes = STANDARD.decode(piece["bytes"].as_str().expect("bytes")).expect("base64");
        (made["name"].as_str().expect("a name").to_owned(), bytes)
    }

    fn takes_in(&mut self, at_ms: i64, (name, bytes): &(String, Vec<u8>)) {
        let of = bytes.len();
        self.ok(at_ms, json!({ "do": "bring", "name": name, "of": of, "from": 0, "bytes": STANDARD.encode(bytes) }));
        self.ok(at_ms, json!({ "do": "take_in", "name": name, "of": of }));
    }

    fn takes_over(&mut self, at_ms: i64, repair: &str, photo: &[u8], age_ms: i64) -> Value {
        let photo = STANDARD.encode(photo);
        self.ask(at_ms, json!({ "do": "take_over", "repair": repair, "photo": photo, "age_ms": age_ms }))
    }

    /// What is counted, what is not witnessed, and how long until release is possible: none of it by a clock on a wall.
    fn stands(&mut self, at_ms: i64, repair: &str) -> [i64; 3] {
        let shown = self.shows(at_ms, repair);
        let ms = |key: &str| shown["hold"][key].as_i64().unwrap_or_else(|| panic!("{key} of {}", shown["hold"]));
        let now = MORNING_MS + at_ms + self.wall_ahead_ms;
        [ms("counted_ms"), ms("not_witnessed_ms"), ms("earliest_release_ms") - now]
    }
}

/// The first phone hands over at 25 min; its file and the code that it shows at `at_ms`.
fn handed(first: &mut Phone, at_ms: i64) -> (String, (String, Vec<u8>), GrayImage) {
    let repair = first.holds();
    first.tell(25 * MINUTE, &repair, json!({ "command": "hand_over", "to": "Mika" }));
    let file = first.file(25 * MINUTE, &repair);
    let code = drawn(&first.shows(at_ms, &repair)["handed"]["code"]);
    (repair, file, code)
}

/// The code as the screen shows it, six pixels a module.
fn drawn(code: &Value) -> GrayImage {
    const PIXELS: u32 = 6;
    let modules = u32::try_from(code["modules"].as_u64().unwrap_or_else(|| panic!("no code: {code}"))).expect("few");
    let mut picture = GrayImage::from_pixel(modules * PIXELS, modules * PIXELS, Luma([245]));
    for module in code["path"].as_str().expect("a path").split('M').skip(1) {
        let (place, _) = module.split_once('h').expect("a module");
        let (x, y) = place.split_once(',').expect("two numbers");
        let (x, y): (u32, u32) = (x.parse().expect("x"), y.parse().expect("y"));
        let dark = GrayImage::from_pixel(PIXELS, PIXELS, Luma([18]));
        imageops::replace(&mut picture, &dark, i64::from(x * PIXELS), i64::from(y * PIXELS));
    }
    picture
}

/// A picture taken of a screen by hand: smaller than the screen in a grey room, out of focus, on its side, as JPEG.
fn photographed(screen: &GrayImage) -> Vec<u8> {
    let mut room =
        GrayImage::from_fn(screen.width() * 2, screen.height() * 2, |x, y| Luma([90 + ((x * 7 + y * 3) % 40) as u8]));
    imageops::replace(&mut room, screen, i64::from(screen.width() / 3), i64::from(screen.height() / 2));
    let blurred = imageops::blur(&imageops::rotate90(&room), 1.2);
    let mut bytes = vec![];
    DynamicImage::ImageLuma8(blurred).write_to(&mut Cursor::new(&mut bytes), ImageFormat::Jpeg).expect("a picture");
    bytes
}

/// (how far ahead on the wall, how much longer started)
const SECONDS: [(i64, i64); 4] =
    [(0, 5_000_000), (4 * MINUTE, -3_600_000), (-11 * MINUTE, 7 * 86_400_000), (150 * MINUTE, 0)];

#[test]
fn the_second_phone_goes_on_by_file_and_code_as_if_there_had_been_one_phone() {
    let mut alone = Phone::new("alone", 0, 0);
    let repair = alone.holds();
    alone.reads(31 * MINUTE, &repair);
    let wanted = alone.stands(33 * MINUTE, &repair);
    assert_eq!(wanted[..2], [21 * MINUTE, 0]);
    for (ahead, longer) in SECONDS {
        let (mut first, mut second) = (Phone::new("first", 0, 0), Phone::new("second", ahead, longer));
        let (repair, file, code) = handed(&mut first, 27 * MINUTE);
        second.takes_in(26 * MINUTE, &file);
        assert_eq!(second.shows(26 * MINUTE, &repair)["handed"]["offered"], true);
        // The picture lay half a minute in the phone.
        let answer = second.takes_over(27 * MINUTE + 30_000, &repair, &photographed(&code), 30_000);
        assert!(answer["ok"].is_object(), "{answer}");
        second.reads(31 * MINUTE, &repair);
        assert_eq!(second.stands(33 * MINUTE, &repair), wanted, "{ahead} ms ahead");
        // The first one hears of it by the second one's file, and asks for nothing more.
        let told = first.shows(28 * MINUTE, &repair);
        assert_eq!((&told["handed"]["given"], &told["hold"]["reading_due_ms"]), (&json!(true), &Value::Null));
        let back = second.file(33 * MINUTE, &repair);
        first.takes_in(34 * MINUTE, &back);
        let told = first.shows(34 * MINUTE, &repair);
        assert_eq!((&told["handed"]["away"], &told["handed"]["taken_by"]), (&json!(true), &json!("second")));
        assert_eq!(told["hold"]["counted_ms"], 21 * MINUTE);
    }
}

#[test]
fn a_typed_clock_does_the_same_to_the_second_and_neither_counts_unseen_minutes() {
    let (mut first, mut second) = (Phone::new("first", 0, 0), Phone::new("second", 4 * MINUTE, 99));
    let (repair, file, _) = handed(&mut first, 26 * MINUTE);
    second.takes_in(26 * MINUTE, &file);
    // 10:27:00 by the zone of the first phone, at 27 min of the story.
    second.ok(27 * MINUTE, json!({ "do": "take_over", "repair": repair, "clock": "10:27:00" }));
    second.reads(31 * MINUTE, &repair);
    assert_eq!(second.stands(33 * MINUTE, &repair)[..2], [21 * MINUTE, 0]);

    let (mut first, mut second) = (Phone::new("first", 0, 0), Phone::new("second", 4 * MINUTE, 99));
    let (repair, file, _) = handed(&mut first, 26 * MINUTE);
    second.takes_in(26 * MINUTE, &file);
    second.ok(27 * MINUTE, json!({ "do": "take_over", "repair": repair }));
    second.reads(31 * MINUTE, &repair);
    second.reads(38 * MINUTE, &repair);
    assert_eq!(second.stands(38 * MINUTE, &repair)[0], 21 * MINUTE, "14 of the first phone, 7 of its own");
}

#[test]
fn what_is_no_code_of_this_hold_is_refused_and_changes_nothing() {
    let (mut first, mut second) = (Phone::new("first", 0, 0), Phone::new("second", 0, 7));
    let (repair, file, code) = handed(&mut first, 26 * MINUTE);
    let mut stranger = Phone::new("zealot", 0, 0);
    let (_, _, other) = handed(&mut stranger, 26 * MINUTE);
    second.takes_in(26 * MINUTE, &file);
    first.reads(26 * MINUTE, &repair);
    let later = drawn(&first.shows(27 * MINUTE, &repair)["handed"]["code"]);
    let before = second.shows(28 * MINUTE, &repair)["repair"].clone();
    let blank = GrayImage::from_pixel(400, 400, Luma([200]));
    for (picture, says) in [
        (photographed(&blank), "no code of a hold"),
        (b"not a picture".to_vec(), "can't be read"),
        (photographed(&other), "not known here"),
        (photographed(&later), "knows more of this hold than its file"),
    ] {
        let answer = second.takes_over(28 * MINUTE, &repair, &picture, 0);
        let said = answer["error"]["says"].as_str().unwrap_or_else(|| panic!("{answer}")).to_owned();
        assert!(said.contains(says), "{said}");
    }
    // A code that is shown when its phone has run less than at the hand-over is none of this hand-over.
    let forged = json!({ "do": "tell", "repair": repair, "command": { "command": "take_over", "theirs": null,
        "ours": { "at_ms": 0, "offset_min": 0, "boot_ms": 0, "boot_id": "x" } } });
    assert_eq!(second.ask(28 * MINUTE, forged)["error"]["code"], "bad_request");
    for clock in ["10:24:00", "ten", "25:00:00"] {
        let answer = second.ask(28 * MINUTE, json!({ "do": "take_over", "repair": repair, "clock": clock }));
        assert!(answer["ok"].is_null(), "{clock}: {answer}");
    }
    assert_eq!(second.shows(28 * MINUTE, &repair)["repair"], before);
    let answer = second.takes_over(28 * MINUTE, &repair, &photographed(&code), 0);
    assert!(answer["ok"].is_object(), "the code that goes with the file: {answer}");
}

#[test]
fn a_phone_that_was_started_anew_shows_no_code_and_takes_its_hold_back() {
    let mut first = Phone::new("first", 0, 0);
    let (repair, ..) = handed(&mut first, 26 * MINUTE);
    first.boot_id = "second start".into();
    first.runs_longer_ms = -86_400_000 - 26 * MINUTE;
    let told = first.shows(28 * MINUTE, &repair);
    assert_eq!((&told["handed"]["given"], &told["handed"]["code"]), (&json!(true), &Value::Null));
    first.ok(28 * MINUTE, json!({ "do": "take_over", "repair": repair }));
    let told = first.shows(29 * MINUTE, &repair);
    assert_eq!((&told["handed"]["away"], told["hold"]["reading_due_ms"].is_i64()), (&json!(false), true));
    first.tell(29 * MINUTE, &repair, json!({ "command": "hand_over" }));
    assert!(first.shows(29 * MINUTE, &repair)["handed"]["code"].is_object());
}

/// Source: ISO/IEC 18004, read by ZXing (zxing-cpp), which did not write it.
#[test]
fn another_reader_of_codes_finds_the_clock_the_starts_the_window_and_the_last_reading() {
    let mut first = Phone::new("first", 0, 0);
    let (repair, _, code) = handed(&mut first, 27 * MINUTE);
    let path = first._folder.path().join("code.jpg");
    std::fs::write(&path, photographed(&code)).expect("a file");
    let read = "import sys, zxingcpp; from PIL import Image; \
                print('\\n'.join(code.text for code in zxingcpp.read_barcodes(Image.open(sys.argv[1]))))";
    let Some(output) = python(&["-c".to_owned(), read.to_owned(), path.display().to_string()]) else { return };
    let said = String::from_utf8(output.stdout).expect("text");
    let (said, signature) =
        said.trim().strip_prefix("MENDLINE-HOLD-1:").and_then(|said| said.split_once('.')).expect("a code");
    assert!(!signature.is_empty());
    let said = base64::engine::general_purpose::URL_SAFE_NO_PAD.decode(said).expect("base64");
    let told: Value = serde_json::from_slice(&said).expect("JSON");
    let boot = |minutes: i64| 86_400_000 + minutes * MINUTE;
    assert_eq!(told[1], json!([MORNING_MS + 27 * MINUTE, 120, boot(27), "start of first"]));
    let hold = &told[2];
    assert_eq!((&hold["r"], &hold["j"], &hold["t"]), (&json!(repair), &json!(boot(0)), &json!(boot(10))));
    assert_eq!((&hold["l"], &hold["c"]), (&json!([boot(24), 130_000]), &json!(14 * MINUTE)));
    assert!(hold["w"][0].as_i64() < hold["w"][1].as_i64());
}
