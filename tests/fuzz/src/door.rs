//! Requests. The first line of an input says after how many entries of the kept rehearsal it begins; every other line is
//! a request, in which `REPAIR` stands for its repair. A line may begin with the minutes that pass before it (`+12 `),
//! and with a PIN (`!4711 `).

use std::collections::HashMap;
use std::fs;
use std::sync::{LazyLock, Mutex, PoisonError};

use serde_json::Value;
use tempfile::TempDir;

use crate::folder::Folder;
use crate::record::{file, linked, repair_of};

/// More lines are no input that is worth its time.
const MOST_LINES: usize = 24;

static REHEARSAL: LazyLock<String> = LazyLock::new(|| {
    fs::read_to_string(crate::corpus().join("record/rehearsal")).expect("the rehearsal is kept with the corpus")
});

pub fn run(bytes: &[u8]) {
    let Ok(text) = std::str::from_utf8(bytes) else { return };
    let mut lines = text.lines();
    let Some(count) = lines.next().and_then(|line| line.trim().parse().ok()) else { return };
    let mut folder = begun(count);
    let repair = repair_of(REHEARSAL.lines().next().unwrap_or_default());
    for line in lines.take(MOST_LINES) {
        tell(&mut folder, &line.replace("REPAIR", &repair));
    }
    folder.ends_sound();
}

fn tell(folder: &mut Folder, line: &str) {
    let (minutes, line) = marked(line, '+');
    folder.wait(i64::from(minutes.parse::<i32>().unwrap_or(0)));
    let (pin, request) = marked(line, '!');
    match serde_json::from_str::<Value>(request) {
        Ok(request) if request.get("request").is_none() => {
            folder.ask(&request, pin);
        }
        _ => {
            let answer = folder.ask_text(request);
            assert!(serde_json::from_str::<Value>(&answer).is_ok_and(|answer| answer.is_object()), "{answer}");
        }
    }
}

/// Parts what stands behind a mark from the rest of a line.
fn marked(line: &str, mark: char) -> (&str, &str) {
    line.strip_prefix(mark).and_then(|rest| rest.split_once(' ')).unwrap_or(("", line))
}

/// Returns a folder in which the rehearsal has come to this many entries.
fn begun(count: usize) -> Folder {
    static BEGUN: LazyLock<Mutex<HashMap<usize, TempDir>>> = LazyLock::new(Mutex::default);
    let count = count % (REHEARSAL.lines().count() + 1);
    let mut begun = BEGUN.lock().unwrap_or_else(PoisonError::into_inner);
    let place = begun.entry(count).or_insert_with(|| {
        let mut folder = Folder::with_examples();
        let record = file(&linked(REHEARSAL.lines().take(count)));
        assert!(count == 0 || folder.import(&record.to_string()).is_object(), "the rehearsal is taken in");
        folder.closed()
    });
    Folder::copy_of(place.path())
}
