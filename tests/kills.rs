//! `mendline ask` killed at any instant while commands come at full speed: what was acknowledged is there, nothing is
//! there twice, every chain is whole, and the next start is quick.
//!
//! `make kills` kills thousands of times; `MENDLINE_KILLS` says how often. A kill loses no page that the system has
//! taken over: power cuts are tried in `tests/faulty-disk`.

use std::collections::{BTreeMap, BTreeSet};
use std::fmt;
use std::io::{BufRead, BufReader, Write};
use std::path::Path;
use std::process::{Child, Command, Stdio};
use std::thread;
use std::time::{Duration, Instant};

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use mendline_core::journal::{Hash, Journal, Sqlite, codec};
use mendline_core::photos;
use mendline_core::procedure::{Event, Record};
use mendline_core::register::Register;
use mendline_tests::{empty_folder, mendline};
use serde_json::{Value, json};
use tempfile::TempDir;

const KILLS: u32 = 60;
/// A folder outlives this many kills, so that kills also fall into the making of the file and its first entries.
const KILLS_A_FOLDER: u32 = 20;
/// Commands that are sent without waiting for an answer.
const AHEAD: u64 = 40;
/// How long a start may take to its first answer.
const QUICK: Duration = Duration::from_secs(1);

#[test]
fn what_was_acknowledged_outlives_a_kill_and_nothing_is_there_twice() {
    let kills = std::env::var("MENDLINE_KILLS").ok().and_then(|kills| kills.parse().ok()).unwrap_or(KILLS);
    let (mut chance, mut tally) = (Chance(0x9e37_79b9_7f4a_7c15), Tally::default());
    while tally.kills < kills {
        let folder = folder();
        let mut street = Street::default();
        for _ in 0..KILLS_A_FOLDER.min(kills - tally.kills) {
            street.run_and_kill(folder.path(), &mut chance, &mut tally);
            tally.starts.push(first_answer(folder.path()));
            street.check(folder.path(), &mut tally);
        }
    }
    tally.starts.sort();
    println!("{tally}");
    assert!(tally.acknowledged > kills as usize, "hardly a command came through: {tally}");
    // Other work on the same machine may hold up a few of them.
    assert!(tally.starts[tally.starts.len() * 95 / 100] < QUICK, "{tally}");
}

/// What a whole run came to.
#[derive(Default)]
struct Tally {
    kills: u32,
    acknowledged: usize,
    /// Sent again after a kill because no answer had come.
    sent_again: usize,
    /// Of those: already written when they came again.
    written_unseen: usize,
    starts: Vec<Duration>,
}

impl fmt::Display for Tally {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self { kills, acknowledged, sent_again, written_unseen, starts } = self;
        let (middle, slowest) = (starts.get(starts.len() / 2), starts.last());
        write!(out, "{kills} kills, {acknowledged} commands acknowledged, {sent_again} sent again, ")?;
        write!(out, "{written_unseen} of them written before; next start {middle:?} (median), {slowest:?} (slowest)")
    }
}

/// What the asking side knows of a folder: what it sent, what was answered, which repairs there are.
#[derive(Default)]
struct Street {
    sent: BTreeMap<u64, String>,
    acknowledged: BTreeSet<u64>,
    repairs: Vec<String>,
}

impl Street {
    /// Starts the program, sends all that is unanswered and more without waiting, and kills it at a random moment:
    /// either while it starts, or after some of its answers.
    fn run_and_kill(&mut self, folder: &Path, chance: &mut Chance, tally: &mut Tally) {
        let lines = self.batch(tally);
        let mut child = start(folder);
        let mut questions = child.stdin.take().expect("a pipe");
        let mut answers = BufReader::new(child.stdout.take().expect("a pipe")).lines().map_while(Result::ok);
        let sender = thread::spawn(move || {
            // The pipe breaks with the kill; it stays open until then.
            let _ = lines.iter().try_for_each(|line| writeln!(questions, "{line}"));
            questions
        });
        let while_it_starts = chance.below(4) == 0;
        let seen_before = if while_it_starts { 0 } else { chance.below(AHEAD) as usize };
        let mut seen: Vec<String> = answers.by_ref().take(seen_before).collect();
        thread::sleep(Duration::from_micros(chance.below(if while_it_starts { 60_000 } else { 8_000 })));
        child.kill().expect("the child is ours");
        seen.extend(answers);
        child.wait().expect("the child ends");
        drop(sender.join().expect("the sender ends"));
        let before = self.acknowledged.len();
        self.acknowledged.extend(seen.iter().filter_map(|line| acknowledged(line)));
        tally.acknowledged += self.acknowledged.len() - before;
        tally.kills += 1;
    }

    /// Returns what is unanswered, with the ids it had, and new commands.
    fn batch(&mut self, tally: &mut Tally) -> Vec<String> {
        let again: Vec<u64> = self.sent.keys().filter(|id| !self.acknowledged.contains(id)).copied().collect();
        tally.sent_again += again.len();
        let next = self.sent.len() as u64;
        let end = next + AHEAD.saturating_sub(again.len() as u64);
        for id in next..end {
            self.sent.insert(id, envelope(id, &self.repairs));
        }
        again.into_iter().chain(next..end).map(|id| self.sent[&id].clone()).collect()
    }

    fn check(&mut self, folder: &Path, tally: &mut Tally) {
        let kept = Sqlite::open(&folder.join("journal.sqlite")).expect("the journal opens");
        assert_eq!(kept.verify_all(), Ok(vec![]));
        self.repairs = kept.repairs().expect("the repairs are listed");
        let entries = self.repairs.iter().flat_map(|repair| kept.entries(repair).expect("a whole chain"));
        let found: Vec<u64> =
            entries.flat_map(|entry| ids(&codec::decode(&entry).expect("a record"), folder)).collect();
        let once: BTreeSet<u64> = found.iter().copied().collect();
        assert_eq!(found.len(), once.len(), "something is there twice");
        let lost: Vec<_> = self.acknowledged.iter().filter(|id| **id > 0 && !once.contains(id)).collect();
        assert!(lost.is_empty(), "acknowledged and lost: {lost:?}");
        assert!(once.iter().all(|id| self.sent.contains_key(id)), "nobody sent this");
        tally.written_unseen += once.difference(&self.acknowledged).count();
        let rows = kept.list(usize::MAX).expect("rows");
        assert_eq!(rows.len(), self.repairs.len(), "the lists move with the journal");
    }
}

/// Returns a folder in memory where there is one: a kill loses nothing there either, and no sync has to be waited for.
fn folder() -> TempDir {
    tempfile::tempdir_in("/dev/shm").unwrap_or_else(|_| empty_folder())
}

fn start(folder: &Path) -> Child {
    let mut command = Command::new(mendline());
    command.args(["ask", "--data"]).arg(folder).stdin(Stdio::piped()).stdout(Stdio::piped());
    command.spawn().expect("the program starts")
}

/// Returns how long a start takes to its first answer.
fn first_answer(folder: &Path) -> Duration {
    let since = Instant::now();
    let mut child = start(folder);
    let mut questions = child.stdin.take().expect("a pipe");
    writeln!(questions, "{}", json!({ "id": "look", "request": { "do": "today" } })).expect("it listens");
    let mut line = String::new();
    BufReader::new(child.stdout.take().expect("a pipe")).read_line(&mut line).expect("it answers");
    let took = since.elapsed();
    assert!(line.contains("\"ok\""), "{line}");
    drop(questions);
    child.wait().expect("the child ends");
    took
}

/// Command 0 fills the shelf; every ninth opens a repair; the others are notes and photos in the repairs there are.
fn envelope(id: u64, repairs: &[String]) -> String {
    let request = match (id, repairs) {
        (0, _) => json!({ "do": "take_examples" }),
        (_, []) => open(id),
        (_, _) if id.is_multiple_of(9) => open(id),
        (_, repairs) => {
            let repair = &repairs[id as usize % repairs.len()];
            if id.is_multiple_of(5) { photo(id, repair) } else { note(id, repair) }
        }
    };
    json!({ "id": format!("k{id}"), "person": "varga", "request": request }).to_string()
}

fn open(id: u64) -> Value {
    json!({
        "do": "open_by_hand", "contract": "QM-2026-31", "number": format!("k{id}"),
        "line": { "asset": "SS-1", "upstream": { "name": "MH 1" }, "downstream": { "name": "MH 2" },
                  "length_um": 38_400_000, "height_um": 200_000, "material": "clay", "street": "Kettle Row" },
        "defect": { "from_um": 7_120_000, "to_um": 7_400_000, "observations": [], "origin": { "kind": "by_hand" } }
    })
}

fn note(id: u64, repair: &str) -> Value {
    json!({ "do": "tell", "repair": repair, "command": { "command": "note", "text": format!("k{id}") } })
}

/// Stands for a photo: the start of a JPEG and a number.
fn photo(id: u64, repair: &str) -> Value {
    let bytes = STANDARD.encode([&[0xff, 0xd8, 0xff, 0xe0][..], format!("k{id}").as_bytes()].concat());
    json!({ "do": "keep_photo", "repair": repair, "label": format!("k{id}"), "bytes": bytes })
}

fn acknowledged(line: &str) -> Option<u64> {
    // The last line may be torn.
    let answer: Value = serde_json::from_str(line).ok()?;
    assert!(answer["ok"].is_object(), "{answer}");
    number(answer["id"].as_str()?)
}

fn number(name: &str) -> Option<u64> {
    name.strip_prefix('k')?.parse().ok()
}

/// Returns the commands that a record came from. A photo that is named must be there.
fn ids(record: &Record, folder: &Path) -> Vec<u64> {
    let id = |event: &Event| match event {
        Event::Opened { number: name, .. } | Event::Noted { text: name } => number(name),
        Event::PhotoKept { label, sha256, .. } => {
            let hash: Hash = sha256.parse().expect("a hash");
            photos::read(folder, hash).expect("the photo is on the disk before the journal names it");
            number(label)
        }
        _ => None,
    };
    record.events.iter().filter_map(id).collect()
}

/// Xorshift: the same moments in every run, as far as the system's scheduling allows.
struct Chance(u64);

impl Chance {
    fn below(&mut self, bound: u64) -> u64 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        self.0 % bound
    }
}
