//! Repairs that travel: they arrive whole, twice changes nothing, and a bundle with a fault leaves nothing behind.

mod algebra;
mod hostile;
mod pieces;

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use mendline_core::door::{App, fingerprint};
use mendline_core::facts::{Moment, Sensed};
use mendline_core::journal::{Entry, Hash, Journal, Sqlite};
use mendline_core::photos;
use mendline_core::seal::{PrivateKey, Seed};
use mendline_tests::{empty_folder, mendline};
use serde_json::{Value, json};
use tempfile::TempDir;

/// A device with a folder of its own.
struct Device {
    folder: TempDir,
    app: App,
    name: &'static str,
    seconds: i64,
}

impl Device {
    fn new(name: &'static str) -> Self {
        let folder = empty_folder();
        let app = App::open(folder.path()).expect("the folder opens");
        let mut device = Self { folder, app, name, seconds: 0 };
        device.ok(json!({ "do": "take_examples" }));
        device
    }

    fn sensed(&mut self) -> Sensed {
        self.seconds += 1;
        let at_ms = 1_791_964_800_000 + self.seconds * 1000;
        let moment = Moment { at_ms, offset_min: 120, boot_ms: self.seconds * 1000, boot_id: self.name.into() };
        let mut fresh = [0; 16];
        fresh[..8].copy_from_slice(&self.seconds.to_be_bytes());
        fresh[8] = self.name.as_bytes()[0];
        Sensed { moment, device: self.name.into(), fresh, ..Sensed::default() }
    }

    fn asked(&mut self, request: Value, pin: Option<&str>) -> Value {
        let mut sensed = self.sensed();
        sensed.seed = [self.seconds as u8; 32];
        let id = format!("{}-{}", self.name, self.seconds);
        let mut envelope = json!({ "id": id, "person": "varga", "request": request });
        if let Some(pin) = pin {
            envelope["pin"] = json!(pin);
        }
        serde_json::from_str(&self.app.handle(&envelope.to_string(), &sensed)).expect("JSON")
    }

    fn broken(&mut self, request: Value) -> Vec<String> {
        let answer = self.asked(request, None);
        let broken = answer["refusal"]["broken"].as_array().unwrap_or_else(|| panic!("{answer}")).clone();
        broken.iter().map(|one| one["rule"].as_str().expect("a code").to_owned()).collect()
    }

    fn ok(&mut self, request: Value) -> Value {
        let answer = self.asked(request, None);
        assert!(answer["ok"].is_object(), "{answer}");
        answer["ok"].clone()
    }

    fn open(&mut self, asset: &str) -> String {
        let answer = self.ok(json!({
            "do": "open_by_hand", "contract": "QM-2026-31",
            "line": { "asset": asset, "upstream": { "name": "MH 1" }, "downstream": { "name": "MH 2" },
                      "length_um": 38_400_000, "height_um": 200_000, "material": "clay", "street": "Kettle Row" },
            "defect": { "from_um": 7_120_000, "to_um": 7_400_000, "observations": [], "origin": { "kind": "by_hand" } }
        }));
        answer["repair"]["id"].as_str().expect("an id").to_owned()
    }

    fn note(&mut self, repair: &str, text: &str) {
        self.ok(json!({ "do": "tell", "repair": repair, "command": { "command": "note", "text": text } }));
    }

    fn key(&self) -> PrivateKey {
        PrivateKey::fresh(&Seed::new([self.name.as_bytes()[0]; 32]).expect("random"))
    }

    fn send(&mut self, repairs: &[String]) -> Vec<u8> {
        let (mut bytes, key) = (vec![], self.key());
        self.app.send(repairs, self.name, 1_791_964_800_000, &key, &mut bytes).expect("it is sent");
        bytes
    }

    fn take(&mut self, bytes: &[u8]) -> Result<mendline_core::door::Taken, String> {
        let sensed = self.sensed();
        self.app.take_in(&mut std::io::Cursor::new(bytes), None, &sensed).map_err(|refused| refused.to_string())
    }

    fn entries(&self, repair: &str) -> Vec<Entry> {
        let kept = Sqlite::open(&self.folder.path().join("journal.sqlite")).expect("it opens");
        kept.entries(repair).expect("a whole chain")
    }

    /// Returns every file of the folder with its bytes: what a refused bundle must leave as it is.
    fn everything(&self) -> BTreeMap<PathBuf, Vec<u8>> {
        files(self.folder.path())
    }
}

/// Returns every file below a folder with its bytes, and every folder as an empty one. Left out is the index of the
/// write-ahead log (`-shm`): it is memory that readers share, and holds nothing of the record.
fn files(folder: &Path) -> BTreeMap<PathBuf, Vec<u8>> {
    let mut found = BTreeMap::new();
    for file in fs::read_dir(folder).expect("a folder") {
        let path = file.expect("a file").path();
        if path.is_dir() {
            found.extend(files(&path));
            found.insert(path, vec![]);
        } else if !path.ends_with("journal.sqlite-shm") {
            let bytes = fs::read(&path).expect("its bytes");
            found.insert(path, bytes);
        }
    }
    found
}

fn photos_below(folder: &Path) -> Vec<PathBuf> {
    let list = |folder: &Path| fs::read_dir(folder).into_iter().flatten().flatten().map(|file| file.path());
    let mut found: Vec<PathBuf> =
        list(&folder.join("photos")).flat_map(|folder| list(&folder).collect::<Vec<_>>()).collect();
    found.sort();
    found
}

const PHOTO: &[u8] = &[0xff, 0xd8, 0xff, 0xe0, 0, 16, b'J', b'F', b'I', b'F'];

fn with_photo(device: &mut Device) -> String {
    let repair = device.open("SS-1");
    device.ok(json!({ "do": "keep_photo", "repair": repair, "label": "cover", "bytes": STANDARD.encode(PHOTO) }));
    repair
}

#[test]
fn a_repair_arrives_with_its_photos_and_twice_changes_nothing() {
    let (mut phone, mut laptop) = (Device::new("phone"), Device::new("laptop"));
    let repair = with_photo(&mut phone);
    let bytes = phone.send(&[]);
    let taken = laptop.take(&bytes).expect("it is taken in");
    assert!(taken.first_met && taken.photos == 1 && taken.repairs[0].fresh == 2, "{taken:?}");
    assert_eq!(laptop.entries(&repair), phone.entries(&repair));
    assert_eq!(photos::read(laptop.folder.path(), Hash::of(PHOTO)).as_deref(), Ok(PHOTO));
    assert_eq!(laptop.ok(json!({ "do": "list" }))["repairs"].as_array().map(Vec::len), Some(1));
    let before = laptop.everything();
    let again = laptop.take(&bytes).expect("it is taken in again");
    assert_eq!((again.first_met, again.repairs[0].fresh), (false, 0));
    assert_eq!(laptop.everything(), before);
}

#[test]
fn two_devices_on_one_repair_keep_both_branches_in_any_order() {
    let (mut phone, mut laptop) = (Device::new("phone"), Device::new("laptop"));
    let repair = phone.open("SS-1");
    laptop.take(&phone.send(&[])).expect("the opening");
    phone.note(&repair, "on the phone");
    laptop.note(&repair, "on the laptop");
    let (from_phone, from_laptop) = (phone.send(&[]), laptop.send(&[]));
    assert_eq!(laptop.take(&from_phone).expect("taken").repairs[0].heads, 2);
    assert_eq!(phone.take(&from_laptop).expect("taken").repairs[0].heads, 2);
    let mut office = Device::new("office");
    office.take(&from_laptop).expect("taken");
    office.take(&from_phone).expect("taken");
    assert_eq!(phone.entries(&repair), laptop.entries(&repair));
    assert_eq!(office.entries(&repair), laptop.entries(&repair));
    assert_eq!(laptop.entries(&repair).len(), 3, "nothing of either is lost");
}

/// A repair with which phone and laptop went on apart, both knowing of each other.
fn apart() -> (Device, Device, String) {
    let (mut phone, mut laptop) = (Device::new("phone"), Device::new("laptop"));
    let repair = phone.open("SS-1");
    laptop.take(&phone.send(&[])).expect("the opening");
    phone.note(&repair, "on the phone");
    laptop.note(&repair, "on the laptop");
    let (from_phone, from_laptop) = (phone.send(&[]), laptop.send(&[]));
    laptop.take(&from_phone).expect("taken");
    phone.take(&from_laptop).expect("taken");
    (phone, laptop, repair)
}

fn notes(device: &mut Device, repair: &str) -> Vec<String> {
    let shown = device.ok(json!({ "do": "repair", "repair": repair }));
    let notes = shown["repair"]["notes"].as_array().expect("notes").clone();
    notes.iter().map(|note| note["text"].as_str().expect("text").to_owned()).collect()
}

#[test]
fn after_a_foreign_head_came_the_next_entry_joins_nothing() {
    let (mut phone, _, repair) = apart();
    phone.note(&repair, "still on the phone");
    assert_eq!(notes(&mut phone, &repair), ["on the phone", "still on the phone"]);
    let kept = Sqlite::open(&phone.folder.path().join("journal.sqlite")).expect("it opens");
    assert_eq!(kept.heads(&repair).expect("heads").len(), 2);
    // The lists made anew say the same as before.
    let before = phone.ok(json!({ "do": "list" }));
    phone.ok(json!({ "do": "rebuild" }));
    assert_eq!(phone.ok(json!({ "do": "list" })), before);
}

#[test]
fn both_branches_stand_side_by_side_until_the_foreman_chooses_and_the_choice_is_an_entry() {
    let (mut phone, mut laptop, repair) = apart();
    let shown = laptop.ok(json!({ "do": "branches", "repair": repair }));
    assert_eq!(shown["shared"], 1);
    let branches = shown["branches"].as_array().expect("branches");
    let about = |branch: &Value| (branch["devices"][0].clone(), branch["steps"][0]["detail"].clone());
    let found: Vec<_> = branches.iter().map(about).collect();
    assert!(found.contains(&(json!("phone"), json!("on the phone"))), "{shown}");
    assert!(found.contains(&(json!("laptop"), json!("on the laptop"))), "{shown}");
    assert!(branches.iter().all(|branch| branch["steps"][0]["person"] == "varga"));
    let head = branches.iter().find(|branch| branch["own"] == false).expect("the other")["head"].clone();
    let choose = |head: &Value, reason: &str, foreman: &str| {
        json!({ "do": "tell", "repair": repair, "command":
            { "command": "choose_branch", "head": head, "reason": reason, "foreman": foreman } })
    };
    assert_eq!(laptop.broken(choose(&head, "The phone was at the manhole.", "ekdal")), ["foreman_needed"]);
    assert_eq!(laptop.broken(choose(&head, " ", "varga")), ["reason_missing"]);
    assert_eq!(laptop.broken(choose(&json!("00".repeat(32)), "Why not.", "varga")), ["bad_value"]);
    laptop.ok(choose(&head, "The phone was at the manhole.", "varga"));
    assert_eq!(notes(&mut laptop, &repair), ["on the phone"]);
    assert_eq!(laptop.entries(&repair).len(), 4, "what is set aside stays");
    phone.take(&laptop.send(&[])).expect("the choice arrives");
    assert_eq!(notes(&mut phone, &repair), ["on the phone"]);
    let shown = phone.ok(json!({ "do": "branches", "repair": repair }));
    assert_eq!(shown["branches"].as_array().map(Vec::len), Some(1));
    assert_eq!(shown["repair"]["repair"]["choices"][0]["foreman"], "varga");
}

#[test]
fn nothing_is_closed_while_it_is_open_which_branch_counts() {
    let (mut phone, _, repair) = apart();
    let close = json!({ "command": "close_unrepaired", "reason": "The line is given up." });
    let found = phone.broken(json!({ "do": "tell", "repair": repair, "command": close }));
    assert_eq!(found, ["branch_open"]);
}

#[test]
fn the_foreman_chooses_with_his_pin_where_he_has_a_key() {
    let (mut phone, _, repair) = apart();
    let made = phone.asked(json!({ "do": "make_key", "person": "varga" }), Some("246802"));
    assert!(made["ok"].is_object(), "{made}");
    let head = phone.ok(json!({ "do": "branches", "repair": repair }))["branches"][0]["head"].clone();
    let command =
        json!({ "command": "choose_branch", "head": head, "reason": "It has the readings.", "foreman": "varga" });
    let choose = json!({ "do": "tell", "repair": repair, "command": command });
    assert_eq!(phone.asked(choose.clone(), None)["error"]["code"], "pin_needed");
    assert!(phone.asked(choose.clone(), Some("111111"))["error"].is_object());
    assert!(phone.asked(choose, Some("246802"))["ok"].is_object());
}

#[test]
fn only_the_named_key_is_believed_where_one_is_named() {
    let (mut phone, mut laptop) = (Device::new("phone"), Device::new("laptop"));
    phone.open("SS-1");
    let (bytes, sensed) = (phone.send(&[]), laptop.sensed());
    let mut input = std::io::Cursor::new(&bytes);
    let other = fingerprint(&laptop.key());
    let refused = laptop.app.take_in(&mut input, Some(&other), &sensed).expect_err("another key");
    assert!(refused.to_string().contains("the key that you named"), "{refused}");
    input.set_position(0);
    let named = fingerprint(&phone.key());
    assert!(laptop.app.take_in(&mut input, Some(&named), &sensed).is_ok());
}

#[test]
fn a_changed_photo_does_not_go_along_and_is_named() {
    let mut phone = Device::new("phone");
    with_photo(&mut phone);
    let file = photos_below(phone.folder.path()).remove(0);
    fs::write(&file, b"\xff\xd8\xffother").expect("it is changed");
    let key = phone.key();
    let sent = phone.app.send(&[], "phone", 0, &key, &mut vec![]).expect("the rest is sent");
    assert_eq!((sent.photos, sent.missing), (0, vec![Hash::of(PHOTO)]));
}

fn run(arguments: &[&str]) -> Output {
    Command::new(mendline()).arg("bundle").args(arguments).output().expect("the program runs")
}

#[test]
fn the_command_line_sends_carries_on_looks_and_takes_in() {
    let (mut phone, laptop) = (Device::new("phone"), empty_folder());
    with_photo(&mut phone);
    let text = |path: &Path| path.to_str().expect("text").to_owned();
    let (from, to) = (text(phone.folder.path()), text(laptop.path()));
    let file = text(&phone.folder.path().join("one.bundle"));
    let sent = run(&["send", "--data", &from, "--out", &file]);
    assert!(sent.status.success(), "{}", String::from_utf8_lossy(&sent.stderr));
    let whole = fs::read(&file).expect("a file");
    // The transfer broke off: the same bytes come again.
    fs::write(&file, &whole[..whole.len() / 2]).expect("a part");
    assert!(!run(&["take", "--data", &to, &file]).status.success());
    assert!(run(&["send", "--data", &from, "--out", &file]).status.success());
    assert_eq!(fs::read(&file).expect("a file"), whole);
    let key = String::from_utf8(run(&["key", "--data", &from]).stdout).expect("text");
    let looked = String::from_utf8(run(&["look", &file]).stdout).expect("text");
    assert!(looked.contains("2 entries, 1 photos") && looked.contains(key.trim()), "{looked}");
    let taken = run(&["take", "--data", &to, "--key", key.trim(), &file]);
    assert!(taken.status.success(), "{}", String::from_utf8_lossy(&taken.stderr));
    assert_eq!(photos_below(laptop.path()).len(), 1);
    // What is not a bundle is never written over.
    fs::write(&file, "a letter").expect("a file");
    assert!(!run(&["send", "--data", &from, "--out", &file]).status.success());
    assert_eq!(fs::read(&file).expect("a file"), b"a letter");
}

/// What can't be sent says so in its own words, and no part of a file is left that a later transfer would trip over.
#[test]
fn a_repair_that_is_not_there_leaves_no_file() {
    let mut phone = Device::new("phone");
    with_photo(&mut phone);
    let path = phone.folder.path().join("none.bundle");
    let (from, file) = (phone.folder.path().to_str().expect("text"), path.to_str().expect("text"));
    let sent = run(&["send", "--data", from, "--out", file, "nowhere"]);
    assert!(!sent.status.success());
    let said = String::from_utf8_lossy(&sent.stderr).into_owned();
    assert!(said.contains("There is no repair nowhere in this folder. Nothing was made."), "{said}");
    assert!(!path.exists());
}

/// What the disk cuts off stays, and is carried on.
#[test]
fn a_bundle_that_the_disk_cuts_off_says_what_to_do() {
    let mut phone = Device::new("phone");
    let repair = with_photo(&mut phone);
    let photo = [PHOTO, &[0; 40_000]].concat();
    phone.ok(json!({ "do": "keep_photo", "repair": repair, "label": "clean", "bytes": STANDARD.encode(photo) }));
    let path = phone.folder.path().join("cut.bundle");
    let (from, file) = (phone.folder.path().to_str().expect("text"), path.to_str().expect("text"));
    // The shell lets no file grow beyond 64 blocks of 512 bytes; the signal is passed over, so that the write fails.
    let program = mendline();
    let script =
        format!("trap '' XFSZ; ulimit -f 64; exec {} bundle send --data {from} --out {file}", program.display());
    let sent = Command::new("sh").args(["-c", &script]).output().expect("a shell");
    let said = String::from_utf8_lossy(&sent.stderr).into_owned();
    assert!(
        !sent.status.success() && said.contains("Make room or choose another place, then send it again."),
        "{said}"
    );
    let part = fs::metadata(&path).expect("a part").len();
    assert!(part <= 64 * 512, "{part}");
    assert!(run(&["send", "--data", from, "--out", file]).status.success());
    assert!(run(&["look", file]).status.success());
}
