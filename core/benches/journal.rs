//! What the journal costs beside a bare insert into SQLite, and what the register costs at 100,000 repairs.
//!
//! Run with `cargo bench -p mendline-core --bench journal`. The disk's own pace is different on every machine and at
//! every moment, so both kinds of write take turns in one run and their ratio is what to look at.
#![allow(clippy::disallowed_methods, clippy::unwrap_used)]

use std::hint::black_box;
use std::path::Path;
use std::time::{Duration, Instant};

use mendline_core::journal::{Appended, Draft, Hash, Journal, Sqlite, Write};
use mendline_core::register::{Register, Row};
use rusqlite::Connection;

const TURNS: usize = 300;
const ROWS: usize = 100_000;
/// About the size of an entry with a reading, its time and its position.
const BODY: [u8; 400] = [b'x'; 400];

fn main() {
    println!("one write, median of {TURNS} (ms): bare insert, append, ratio");
    for before in [0, 200, 1000] {
        let (bare, append) = writes(before);
        println!("after {before:4} entries: {:.3} {:.3} {:.2}", ms(bare), ms(append), ms(append) / ms(bare));
    }
    register();
}

/// Returns the median of a bare insert and of an append to a repair that already has `before` entries.
fn writes(before: usize) -> (Duration, Duration) {
    let folder = tempfile::tempdir().unwrap();
    let mut bare = bare(&folder.path().join("bare.sqlite"));
    let mut kept = Sqlite::open(&folder.path().join("journal.sqlite")).unwrap();
    let mut heads = fill(&mut kept, before);
    let (mut bare_times, mut append_times) = (Vec::new(), Vec::new());
    for turn in 0..TURNS {
        bare_times.push(time(|| insert(&mut bare)));
        append_times.push(time(|| heads = append(&mut kept, &format!("turn-{turn}"), std::mem::take(&mut heads), 1)));
    }
    (median(bare_times), median(append_times))
}

fn bare(path: &Path) -> Connection {
    let bare = Connection::open(path).unwrap();
    bare.execute_batch(
        "PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA fullfsync = ON; PRAGMA temp_store = MEMORY;
         PRAGMA foreign_keys = ON; CREATE TABLE bare (id INTEGER PRIMARY KEY, body BLOB NOT NULL) STRICT",
    )
    .unwrap();
    bare
}

fn insert(bare: &mut Connection) {
    let transaction = bare.transaction().unwrap();
    transaction.prepare_cached("INSERT INTO bare (body) VALUES (?1)").unwrap().execute([&BODY[..]]).unwrap();
    transaction.commit().unwrap();
}

fn fill(kept: &mut Sqlite, count: usize) -> Vec<Hash> {
    if count == 0 { Vec::new() } else { append(kept, "fill", Vec::new(), count) }
}

/// Appends `count` entries with a register row and returns the new head.
fn append(kept: &mut Sqlite, request: &str, heads: Vec<Hash>, count: usize) -> Vec<Hash> {
    let (repair, device) = ("QM-26-014".to_owned(), "phone".to_owned());
    let draft = Draft { repair, device, heads, branch: None, body: BODY.to_vec() };
    let (request_hash, answer) = (Hash::of(request.as_bytes()), BODY.to_vec());
    let (drafts, rows) = (vec![draft; count], vec![row(14)]);
    let write = Write { request, request_hash, received: Vec::new(), drafts, rows, answer };
    let Ok(Appended::Written(entries)) = kept.append(&write) else { unreachable!("a new request is written") };
    vec![entries[entries.len() - 1].hash]
}

fn register() {
    let folder = tempfile::tempdir().unwrap();
    let mut kept = Sqlite::open(&folder.path().join("journal.sqlite")).unwrap();
    let rows: Vec<Row> = (0..ROWS).map(row).collect();
    println!("register of {ROWS} repairs (ms, median of 9; the rebuild once)");
    println!("rebuild: {:.0}", ms(time(|| kept.replace_all(&rows).unwrap())));
    for text in ["QM-26-04711", "4711", "färber 4711", "qm-26", "färberweg", "mh 12", "71", "none at all"] {
        let took = median((0..9).map(|_| time(|| drop(black_box(kept.search(text, 50).unwrap())))).collect());
        println!("search {text:?}: {:.2}, {} found", ms(took), kept.search(text, 50).unwrap().len());
    }
    println!("list: {:.2}", ms(median((0..9).map(|_| time(|| drop(black_box(kept.list(50).unwrap())))).collect())));
    println!("live: {:.2}", ms(median((0..9).map(|_| time(|| drop(kept.live().unwrap()))).collect())));
    let mut heads = Vec::new();
    let mut turn = |turn| time(|| heads = append(&mut kept, &format!("r{turn}"), std::mem::take(&mut heads), 1));
    println!("append among them: {:.2}", ms(median((0..9).map(&mut turn).collect())));
}

fn row(number: usize) -> Row {
    Row {
        repair: format!("{number:032x}"),
        number: format!("QM-26-{number:05}"),
        line: format!("L-{}", number / 40),
        nodes: format!("MH {} – MH {}", number / 30, number / 30 + 1),
        street: ["Färberweg", "Mill Lane", "Alte Gasse", "Quay Street"][number % 4].to_owned(),
        live: number.is_multiple_of(10_000),
        changed_ms: 1_780_000_000_000 + (number as i64 * 7919) % 1_000_003,
        certificate: Some(format!("C-{number:06}")),
        lots: vec![format!("R-{}", number / 50), format!("P-{}", number / 20)],
        summary: BODY.to_vec(),
    }
}

fn time(act: impl FnOnce()) -> Duration {
    let start = Instant::now();
    act();
    start.elapsed()
}

fn median(mut times: Vec<Duration>) -> Duration {
    times.sort();
    times[times.len() / 2]
}

fn ms(time: Duration) -> f64 {
    time.as_secs_f64() * 1e3
}
