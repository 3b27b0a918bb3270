//! A live hold from one phone to another, by file and code or by the code alone: two folders, two starts, wall clocks minutes
//! apart.

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
    folder: TempDir,
    app: App,
    name: &'static str,
    seed: u8,
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
        let mut phone =
            Self { folder, app, name, seed: name.as_bytes()[0], boot_id, wall_ahead_ms, runs_longer_ms, asked: 0 };
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
        let sensed = Sensed { moment, device: self.name.into(), fresh, seed: [self.seed; 32] };
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

    fn follows(&mut self, at_ms: i64, photo: &[u8], age_ms: i64) -> Value {
        self.ask(at_ms, json!({ "do": "follow", "photo": STANDARD.encode(photo), "age_ms": age_ms }))
    }

    /// The holds on the first screen that are followed by their codes.
    fn followed(&mut self, at_ms: i64) -> Vec<Value> {
        self.ok(at_ms, json!({ "do": "today" }))["followed"].as_array().expect("a list").clone()
    }

    /// The program is killed and started again.
    fn reopens(&mut self) {
        self.app = App::open(self.folder.path()).expect("the folder opens");
    }

    /// The phone is started anew and runs for a minute by `at_ms`.
    fn starts_anew(&mut self, at_ms: i64) {
        self.boot_id.push_str(", the next");
        self.runs_longer_ms = -86_400_000 - at_ms + MINUTE;
        self.reopens();
    }

    fn now(&self, at_ms: i64) -> i64 {
        MORNING_MS + at_ms + self.wall_ahead_ms
    }

    /// What is counted, what is not witnessed, and how long until release is possible: none of it by a clock on a wall.
    fn stands(&mut self, at_ms: i64, repair: &str) -> [i64; 3] {
        let shown = self.shows(at_ms, repair);
        let ms = |key: &str| shown["hold"][key].as_i64().unwrap_or_else(|| panic!("{key} of {}", shown["hold"]));
        let now = self.now(at_ms);
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

/// How the hold stands at 33 min where one phone kept it all the time.
fn stands_with_one_phone() -> [i64; 3] {
    let mut alone = Phone::new("alone", 0, 0);
    let repair = alone.holds();
    alone.reads(31 * MINUTE, &repair);
    alone.stands(33 * MINUTE, &repair)
}

#[test]
fn the_second_phone_goes_on_by_file_and_code_as_if_there_had_been_one_phone() {
    let wanted = stands_with_one_phone();
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

/// The clock of a hold that is followed: what is counted and pending, how long until the next reading and until release.
fn clock(view: &Value, now: i64) -> [i64; 4] {
    let ms = |key: &str| view["hold"][key].as_i64().unwrap_or_else(|| panic!("{key} of {view}"));
    [ms("counted_ms"), ms("pending_ms"), ms("reading_due_ms") - now, ms("earliest_release_ms") - now]
}

#[test]
fn by_the_code_alone_the_second_phone_shows_the_same_clock_and_records_nothing() {
    let mut alone = Phone::new("alone", 0, 0);
    let repair = alone.holds();
    let at = 30 * MINUTE;
    let wanted = clock(&alone.shows(at, &repair), alone.now(at));
    assert_eq!(wanted[..3], [14 * MINUTE, 6 * MINUTE, 4 * MINUTE]);
    for (ahead, longer) in SECONDS {
        let (mut first, mut second) = (Phone::new("first", 0, 0), Phone::new("second", ahead, longer));
        let (repair, _, code) = handed(&mut first, 27 * MINUTE);
        let answer = second.follows(27 * MINUTE + 30_000, &photographed(&code), 30_000);
        assert_eq!(
            (&answer["ok"]["kind"], &answer["ok"]["repair"]["id"]),
            (&json!("followed"), &json!(repair)),
            "{answer}"
        );
        let today = second.ok(at, json!({ "do": "today" }));
        let shown = &today["followed"][0];
        assert_eq!(clock(shown, second.now(at)), wanted, "{ahead} ms ahead");
        assert_eq!(
            (&shown["hold"]["last_ms"], &shown["hold"]["last_pa"]),
            (&json!(second.now(24 * MINUTE)), &json!(130_000))
        );
        assert_eq!((&shown["key"], &shown["restarted"]), (&json!("unknown"), &json!(false)));
        let (number, line) = (&shown["repair"]["number"], &first.shows(at, &repair)["repair"]["line"]);
        assert_eq!((number, &shown["repair"]["street"]), (&json!("R-01"), &line["street"]));
        assert_eq!(
            (&shown["repair"]["upstream"], &shown["repair"]["node"]),
            (&line["upstream"]["name"], &line["upstream"]["name"])
        );
        // Its record is on the other phone: here is no repair.
        assert_eq!(
            (&today["holding"], second.ok(at, json!({ "do": "list" }))["repairs"].clone()),
            (&json!([]), json!([]))
        );
        assert_eq!(second.ask(at, json!({ "do": "repair", "repair": repair }))["error"]["code"], "unknown_repair");
        // Past the next reading the one after it is shown, whoever took it. That somebody set the clock changes nothing.
        second.wall_ahead_ms += 20 * MINUTE;
        let later = second.followed(36 * MINUTE);
        assert_eq!(clock(&later[0], second.now(36 * MINUTE))[..3], [14 * MINUTE, 12 * MINUTE, 8 * MINUTE]);
    }
}

#[test]
fn a_followed_clock_is_there_after_the_program_was_killed_and_goes_by_the_wall_after_a_restart() {
    let (mut first, mut second) = (Phone::new("first", 0, 0), Phone::new("second", 4 * MINUTE, 99));
    let (repair, _, code) = handed(&mut first, 27 * MINUTE);
    second.follows(27 * MINUTE, &photographed(&code), 0);
    second.reopens();
    let before = second.followed(30 * MINUTE);
    assert_eq!(clock(&before[0], second.now(30 * MINUTE))[..2], [14 * MINUTE, 6 * MINUTE]);
    second.starts_anew(29 * MINUTE);
    let after = second.followed(30 * MINUTE);
    assert_eq!((after[0]["restarted"].clone(), after[0]["hold"].clone()), (json!(true), before[0]["hold"].clone()));
    // A picture from before the start goes by the wall clock, too.
    let (mut first, mut third) = (Phone::new("first", 0, 0), Phone::new("third", 0, 0));
    let (_, _, code) = handed(&mut first, 27 * MINUTE);
    third.starts_anew(29 * MINUTE);
    third.follows(30 * MINUTE, &photographed(&code), 3 * MINUTE);
    let shown = third.followed(30 * MINUTE);
    assert_eq!((&shown[0]["restarted"], shown[0]["hold"]["pending_ms"].as_i64()), (&json!(true), Some(6 * MINUTE)));
    // Taken off the list, or long over, it is gone.
    second.ok(31 * MINUTE, json!({ "do": "unfollow", "repair": repair }));
    assert_eq!(second.followed(31 * MINUTE), Vec::<Value>::new());
    assert_eq!(second.ask(31 * MINUTE, json!({ "do": "followed", "repair": repair }))["ok"]["kind"], "today");
    assert_eq!((third.followed(12 * 60 * MINUTE).len(), third.followed(24 * 60 * MINUTE).len()), (1, 0));
}

#[test]
fn what_can_not_be_followed_is_refused_and_nothing_is_kept() {
    let (mut first, mut second) = (Phone::new("first", 0, 0), Phone::new("second", 0, 7));
    // The second phone knows the first one by an earlier file.
    let met = first.ok(0, open_by_hand("SS-2"))["repair"]["id"].as_str().expect("an id").to_owned();
    let file = first.file(0, &met);
    second.takes_in(0, &file);
    let mut impostor = Phone::new("first", 0, 0);
    impostor.seed = 9;
    let (_, _, forged) = handed(&mut impostor, 27 * MINUTE);
    let blank = photographed(&GrayImage::from_pixel(400, 400, Luma([200])));
    for (picture, age_ms, says) in [
        (blank, 0, "no code of a hold"),
        (b"not a picture".to_vec(), 0, "can't be read"),
        (photographed(&forged), 0, "not made by the phone that it names"),
        (photographed(&handed(&mut Phone::new("stranger", 0, 0), 27 * MINUTE).2), 13 * 60 * MINUTE, "too old"),
    ] {
        let answer = second.follows(28 * MINUTE, &picture, age_ms);
        let said = answer["error"]["says"].as_str().unwrap_or_else(|| panic!("{answer}")).to_owned();
        assert!(said.contains(says), "{said}");
        assert_eq!(second.followed(28 * MINUTE), Vec::<Value>::new());
    }
    let (repair, _, code) = handed(&mut first, 27 * MINUTE);
    let own = first.follows(28 * MINUTE, &photographed(&code), 0);
    assert!(own["error"]["says"].as_str().is_some_and(|says| says.contains("shows that code itself")), "{own}");
    second.follows(28 * MINUTE, &photographed(&code), 0);
    let shown = second.followed(28 * MINUTE);
    assert_eq!((&shown[0]["repair"]["id"], &shown[0]["key"]), (&json!(repair), &json!("known")));
}

#[test]
fn when_the_file_comes_the_code_of_before_ties_the_clocks_and_the_first_phone_is_not_needed() {
    let wanted = stands_with_one_phone();
    for (ahead, longer) in &SECONDS[1..3] {
        let (mut first, mut second) = (Phone::new("first", 0, 0), Phone::new("second", *ahead, *longer));
        let (repair, file, code) = handed(&mut first, 26 * MINUTE);
        second.follows(26 * MINUTE, &photographed(&code), 0);
        second.takes_in(29 * MINUTE, &file);
        assert_eq!(second.followed(29 * MINUTE), Vec::<Value>::new(), "its record is here, and offered");
        let again = second.follows(29 * MINUTE, &photographed(&code), 0);
        assert!(again["error"]["says"].as_str().is_some_and(|says| says.contains("is here already")), "{again}");
        assert_eq!(second.shows(29 * MINUTE, &repair)["handed"]["tied_ms"], second.now(26 * MINUTE));
        second.ok(30 * MINUTE, json!({ "do": "take_over", "repair": repair, "followed": true }));
        second.reads(31 * MINUTE, &repair);
        assert_eq!(second.stands(33 * MINUTE, &repair), wanted, "{ahead} ms ahead");
    }
}

#[test]
fn a_code_that_tells_nothing_of_now_ties_no_clocks() {
    let second_with = |age_ms: i64, restarted: bool, older_file: bool| {
        let (mut first, mut second) = (Phone::new("first", 0, 0), Phone::new("second", 0, 7));
        let (repair, file, mut code) = handed(&mut first, 26 * MINUTE);
        if older_file {
            first.reads(26 * MINUTE, &repair);
            code = drawn(&first.shows(26 * MINUTE, &repair)["handed"]["code"]);
        }
        second.follows(26 * MINUTE + age_ms, &photographed(&code), age_ms);
        second.takes_in(29 * MINUTE, &file);
        if restarted {
            second.starts_anew(29 * MINUTE);
        }
        let tied = second.shows(30 * MINUTE, &repair)["handed"]["tied_ms"].is_i64();
        let answer = second.ask(30 * MINUTE, json!({ "do": "take_over", "repair": repair, "followed": true }));
        assert_eq!(answer["ok"].is_object(), tied, "{answer}");
        (tied, second.followed(30 * MINUTE).len())
    };
    assert_eq!(second_with(2 * MINUTE, false, false), (true, 0));
    assert_eq!(second_with(2 * MINUTE + 1, false, false), (false, 0));
    assert_eq!(second_with(0, true, false), (false, 0));
    assert_eq!(second_with(0, false, true), (false, 1), "the file lacks what the code tells of: it is followed still");
}

/// Source: ISO/IEC 18004, read by ZXing (zxing-cpp), which did not write it.
#[test]
fn another_reader_of_codes_finds_the_clock_the_starts_the_window_and_the_last_reading() {
    let mut first = Phone::new("first", 0, 0);
    let (repair, _, code) = handed(&mut first, 27 * MINUTE);
    let path = first.folder.path().join("code.jpg");
    std::fs::write(&path, photographed(&code)).expect("a file");
    let read = "import sys, zxingcpp; from PIL import Image; \
                print('\\n'.join(code.text for code in zxingcpp.read_barcodes(Image.open(sys.argv[1]))))";
    let Some(output) = python(&["-c".to_owned(), read.to_owned(), path.display().to_string()]) else { return };
    let said = String::from_utf8(output.stdout).expect("text");
    let (signature, said) =
        said.trim().strip_prefix("MENDLINE-HOLD-2:").and_then(|said| said.split_once('.')).expect("a code");
    assert!(!signature.is_empty());
    let told: Value = serde_json::from_str(said).expect("JSON");
    let boot = |minutes: i64| 86_400_000 + minutes * MINUTE;
    assert_eq!(told[1], json!([MORNING_MS + 27 * MINUTE, 120, boot(27), "start of first"]));
    let hold = &told[2];
    assert_eq!((&hold["r"], &hold["j"], &hold["t"]), (&json!(repair), &json!(boot(0)), &json!(boot(10))));
    assert_eq!((&hold["l"], &hold["c"]), (&json!([boot(24), 130_000]), &json!(14 * MINUTE)));
    assert!(hold["w"][0].as_i64() < hold["w"][1].as_i64());
    assert_eq!(hold["e"].as_i64(), Some(boot(24) + hold["q"].as_i64().expect("ms") - 14 * MINUTE));
    assert_eq!((&hold["i"], &hold["a"][0]), (&json!(10 * MINUTE), &json!("R-01")));
}
