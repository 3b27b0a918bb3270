//! Data folders for one input each, made by copying: in memory, where the system has a place for that.

use std::fs;
use std::path::Path;
use std::sync::LazyLock;
use std::sync::atomic::{AtomicU64, Ordering};

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use mendline_core::door::App;
use mendline_core::facts::{Moment, Sensed};
use mendline_core::journal::{Journal, Sqlite};
use serde_json::{Value, json};
use tempfile::TempDir;

/// Every input begins at this moment.
const START_MS: i64 = 1_791_990_000_000;

/// A data folder, and the program that has it open.
pub struct Folder {
    place: TempDir,
    app: App,
    asked: u64,
    minutes: i64,
}

impl Folder {
    /// Returns a folder with the example shelf.
    pub fn with_examples() -> Self {
        static EXAMPLES: LazyLock<TempDir> = LazyLock::new(|| {
            let mut folder = Folder::open(empty());
            folder.ask(&json!({ "do": "take_examples" }), "");
            folder.place
        });
        Self::copy_of(EXAMPLES.path())
    }

    /// Returns a folder with what another holds.
    pub fn copy_of(folder: &Path) -> Self {
        let place = empty();
        for file in fs::read_dir(folder).expect("the folder can be read").flatten() {
            if file.path().is_file() {
                fs::copy(file.path(), place.path().join(file.file_name())).expect("it can be copied");
            }
        }
        Self::open(place)
    }

    fn open(place: TempDir) -> Self {
        let app = App::open(place.path()).expect("it opens");
        Self { place, app, asked: 0, minutes: 0 }
    }

    /// Ends the program, and returns where its folder is.
    pub fn closed(self) -> TempDir {
        self.place
    }

    pub const fn app(&mut self) -> &mut App {
        &mut self.app
    }

    /// Lets time pass.
    pub fn wait(&mut self, minutes: i64) {
        self.minutes += minutes;
    }

    /// Asks by the text of an envelope.
    pub fn ask_text(&mut self, envelope: &str) -> String {
        let sensed = self.sensed();
        self.app.handle(envelope, &sensed)
    }

    /// Asks as the foreman of the example shelf. Returns the answer, whatever it is.
    pub fn ask(&mut self, request: &Value, pin: &str) -> Value {
        let pin = if pin.is_empty() { Value::Null } else { pin.into() };
        // A copied folder knows the ids that were used before.
        static ASKED: AtomicU64 = AtomicU64::new(0);
        let id = format!("q{}", ASKED.fetch_add(1, Ordering::Relaxed));
        let answer = self.ask_text(&json!({ "id": id, "person": "varga", "pin": pin, "request": request }).to_string());
        serde_json::from_str(&answer).expect("the door answers with JSON")
    }

    /// Takes a record in. Returns the repair as it is shown, or nothing.
    pub fn import(&mut self, record: &str) -> Value {
        let request = json!({ "do": "import_record", "name": "a.json", "bytes": STANDARD.encode(record) });
        self.ask(&request, "")["ok"]["repair"].take()
    }

    pub fn sensed(&mut self) -> Sensed {
        self.asked += 1;
        let (since, mut fresh) = (self.minutes * 60_000 + self.asked as i64 * 1000, [0; 16]);
        fresh[..8].copy_from_slice(&self.asked.to_be_bytes());
        let moment = Moment {
            at_ms: START_MS + since,
            offset_min: 120,
            boot_ms: 69_000_000 + since,
            boot_id: "rehearsal".into(),
        };
        Sensed { moment, device: "k3f0rehearsal".into(), fresh, seed: [7; 32] }
    }

    /// Asserts that every chain is whole, and that the program says the same of every repair when it starts anew.
    pub fn ends_sound(mut self) {
        let kept = Sqlite::open(&self.place.path().join("journal.sqlite")).expect("the journal opens");
        assert_eq!(kept.verify_all(), Ok(vec![]));
        let repairs = kept.repairs().expect("the repairs are listed");
        drop(kept);
        let sensed = self.sensed();
        let mut anew = App::open(self.place.path()).expect("it opens again");
        for repair in repairs {
            let asked = json!({ "id": "look", "request": { "do": "repair", "repair": repair } }).to_string();
            assert_eq!(self.app.handle(&asked, &sensed), anew.handle(&asked, &sensed));
        }
    }
}

fn empty() -> TempDir {
    tempfile::tempdir_in("/dev/shm").or_else(|_| tempfile::tempdir()).expect("the temporary folder can be written")
}
