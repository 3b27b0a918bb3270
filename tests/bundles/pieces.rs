//! Bundles through the door, piece by piece, as the screens send them.

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use mendline_core::door::App;
use mendline_core::journal::Hash;
use mendline_core::photos;
use serde_json::{Value, json};

use super::{Device, PHOTO, with_photo};

impl Device {
    /// Fetches a file that was made, piece by piece.
    fn fetched(&mut self, made: &Value) -> Vec<u8> {
        let mut bytes = vec![];
        while (bytes.len() as u64) < made["bytes"].as_u64().expect("a length") {
            let piece = self.ok(json!({ "do": "piece", "name": made["name"], "from": bytes.len() }));
            bytes.extend(STANDARD.decode(piece["bytes"].as_str().expect("text")).expect("base64"));
        }
        bytes
    }

    /// Brings a file in pieces of 1000 bytes, from where it stopped.
    pub fn bring(&mut self, name: &str, bytes: &[u8]) {
        let mut here = 0;
        loop {
            let piece = &bytes[here..bytes.len().min(here + 1000)];
            here = self.piece(name, bytes.len(), here, piece);
            if here == bytes.len() {
                return;
            }
        }
    }

    fn piece(&mut self, name: &str, of: usize, from: usize, bytes: &[u8]) -> usize {
        let request = json!({ "do": "bring", "name": name, "of": of, "from": from, "bytes": STANDARD.encode(bytes) });
        self.ok(request)["here"].as_u64().expect("a number") as usize
    }

    pub fn take_brought(&mut self, name: &str, of: usize) -> Value {
        self.asked(json!({ "do": "take_in", "name": name, "of": of }), None)
    }

    /// The program is closed and opened again.
    fn restarted(mut self) -> Self {
        self.app = App::open(self.folder.path()).expect("it opens again");
        self
    }
}

fn packed(device: &mut Device, request: Value) -> Vec<u8> {
    let made = device.ok(request);
    assert_eq!(made["kind"], "made", "{made}");
    device.fetched(&made)
}

#[test]
fn a_repair_goes_through_the_door_with_its_photos() {
    let (mut phone, mut laptop) = (Device::new("phone"), Device::new("laptop"));
    let repair = with_photo(&mut phone);
    let made = phone.ok(json!({ "do": "pack", "repairs": [repair] }));
    assert_eq!((&made["repairs"], &made["entries"], &made["photos"]), (&json!(1), &json!(2), &json!(1)));
    let bytes = phone.fetched(&made);
    laptop.bring("one.mendline", &bytes);
    let key = phone.ok(json!({ "do": "bundles" }))["key"].as_str().expect("a key").to_owned();
    // As it is read out: in groups, in capitals.
    let told =
        key.as_bytes().chunks(4).map(|four| String::from_utf8_lossy(four).to_uppercase()).collect::<Vec<_>>().join(" ");
    let taken = laptop.ok(json!({ "do": "take_in", "name": "one.mendline", "of": bytes.len(), "key": told }));
    assert_eq!((&taken["kind"], &taken["first_met"], &taken["photos"]), (&json!("taken"), &json!(true), &json!(1)));
    assert_eq!((&taken["repairs"][0]["fresh"], &taken["repairs"][0]["heads"]), (&json!(2), &json!(1)));
    assert_eq!(laptop.entries(&repair), phone.entries(&repair));
    assert_eq!(photos::read(laptop.folder.path(), Hash::of(PHOTO)).as_deref(), Ok(PHOTO));
    assert_eq!(laptop.ok(json!({ "do": "bundles" }))["known"], json!([["phone", key]]));
    // Once more: all of it is here.
    laptop.bring("one.mendline", &bytes);
    let again = laptop.ok(json!({ "do": "take_in", "name": "one.mendline", "of": bytes.len() }));
    assert_eq!((&again["first_met"], &again["repairs"][0]["fresh"]), (&json!(false), &json!(0)));
}

#[test]
fn a_half_copied_file_goes_on_where_it_stopped() {
    let (mut phone, mut laptop) = (Device::new("phone"), Device::new("laptop"));
    let repair = with_photo(&mut phone);
    let bytes = packed(&mut phone, json!({ "do": "pack" }));
    let half = bytes.len() / 2;
    assert_eq!(laptop.piece("a", bytes.len(), 0, &bytes[..half]), half);
    let early = laptop.take_brought("a", bytes.len());
    assert_eq!(early["error"]["code"], "not_whole", "{early}");
    let mut laptop = laptop.restarted();
    // It begins at the beginning and hears where to go on.
    assert_eq!(laptop.piece("a", bytes.len(), 0, &bytes[..10]), half);
    assert_eq!(laptop.piece("a", bytes.len(), half, &bytes[half..]), bytes.len());
    assert!(laptop.take_brought("a", bytes.len())["ok"].is_object());
    assert_eq!(laptop.entries(&repair), phone.entries(&repair));
    assert!(!laptop.folder.path().join("arriving").exists(), "what was taken in does not lie about");
}

#[test]
fn a_fetched_file_goes_on_where_it_stopped_too() {
    let mut phone = Device::new("phone");
    with_photo(&mut phone);
    let made = phone.ok(json!({ "do": "pack" }));
    let whole = phone.fetched(&made);
    let mut phone = phone.restarted();
    let rest = phone.ok(json!({ "do": "piece", "name": made["name"], "from": 100 }));
    assert_eq!(STANDARD.decode(rest["bytes"].as_str().expect("text")).expect("base64"), whole[100..]);
}

#[test]
fn half_of_one_file_is_never_taken_for_half_of_another() {
    let (mut phone, mut laptop) = (Device::new("phone"), Device::new("laptop"));
    with_photo(&mut phone);
    let bytes = packed(&mut phone, json!({ "do": "pack" }));
    let mut other = bytes.clone();
    other[20] ^= 1;
    laptop.piece("a", bytes.len(), 0, &other[..bytes.len() / 2]);
    laptop.bring("a", &bytes);
    assert!(laptop.take_brought("a", bytes.len())["ok"].is_object());
}

#[test]
fn a_selection_and_all_since_a_moment_go_along_and_nothing_else() {
    let mut phone = Device::new("phone");
    let first = phone.open("SS-1");
    let second = phone.open("SS-2");
    let third = phone.open("SS-3");
    let sent = |phone: &mut Device, request: Value| {
        let mut office = Device::new("office");
        let bytes = packed(phone, request);
        office.bring("a", &bytes);
        let taken = office.take_brought("a", bytes.len());
        let repairs = taken["ok"]["repairs"].as_array().unwrap_or_else(|| panic!("{taken}")).clone();
        repairs.iter().map(|one| one["repair"].as_str().expect("an id").to_owned()).collect::<Vec<_>>()
    };
    let sorted = |ids: &[&String]| {
        let mut ids: Vec<String> = ids.iter().map(|id| (*id).clone()).collect();
        ids.sort();
        ids
    };
    assert_eq!(sent(&mut phone, json!({ "do": "pack", "repairs": [first, third] })), sorted(&[&first, &third]));
    assert_eq!(sent(&mut phone, json!({ "do": "pack" })), sorted(&[&first, &second, &third]));
    let since = 1_791_964_800_000_i64 + (phone.seconds + 1) * 1000;
    phone.note(&second, "later");
    assert_eq!(sent(&mut phone, json!({ "do": "pack", "since_ms": since })), vec![second.clone()]);
    let none = phone.asked(json!({ "do": "pack", "repairs": [first], "since_ms": since }), None);
    assert_eq!(none["error"]["code"], "nothing_to_send");
    let unknown = phone.asked(json!({ "do": "pack", "repairs": ["no such"] }), None);
    assert!(unknown["error"].is_object(), "{unknown}");
}

#[test]
fn branches_are_told_when_they_arrive() {
    let (mut phone, mut laptop) = (Device::new("phone"), Device::new("laptop"));
    let repair = phone.open("SS-1");
    let bytes = packed(&mut phone, json!({ "do": "pack" }));
    laptop.bring("a", &bytes);
    laptop.take_brought("a", bytes.len());
    phone.note(&repair, "on the phone");
    laptop.note(&repair, "on the laptop");
    let bytes = packed(&mut phone, json!({ "do": "pack" }));
    laptop.bring("b", &bytes);
    let taken = laptop.take_brought("b", bytes.len());
    assert_eq!(taken["ok"]["repairs"][0]["heads"], 2, "{taken}");
}
