//! How cost grows with the number of repairs, each with 150 entries: the table of `docs/scale.md`.
//!
//! `cargo bench -p mendline-core --bench scale -- 100 2000` prints it for these numbers; without any, for those. 100,000
//! repairs take about 16 GB and some minutes; `MENDLINE_SCALE_DIR` names a folder with room for them. A folder is filled
//! by a process of its own, so that what is measured is not the memory of the filling.
#![allow(clippy::disallowed_methods, clippy::unwrap_used, clippy::panic)]

use std::fs;
use std::path::Path;
use std::process::Command;
use std::time::{Duration, Instant};

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use mendline_core::door::{App, export};
use mendline_core::facts::{Moment, Sensed};
use mendline_core::journal::{Draft, Entry, Fault, Hash, Journal, Sqlite, Write, heads_of, link};
use mendline_core::register::{Register, Row};
use rusqlite::config::DbConfig;
use rusqlite::{Connection, params};
use serde_json::{Value, json};
use sha2::{Digest, Sha256};

/// A whole job, an entry a line; origin in `fixtures/README.md`.
const REHEARSAL: &str = include_str!("../../fixtures/corpus/record/rehearsal");
const ENTRIES: usize = 150;
const DEVICE: &str = "k3f0rehearsal";
const STREETS: [&str; 8] = [
    "Kettle Row",
    "Mill Lane",
    "Tallow Street",
    "Gannet Steps",
    "Lantern Lane",
    "Quay Street",
    "Cooper Yard",
    "Ropewalk",
];
/// Writes that are timed; the hundredth part of them is above the 99th percentile.
const TURNS: usize = 2_000;

/// Asks this program to fill a folder.
const FILL: &str = "fill";

fn main() {
    let words: Vec<String> = std::env::args().collect();
    if let [_, word, data, size] = &words[..]
        && word == FILL
    {
        return println!("{}", fill(Path::new(data), size.parse().unwrap()));
    }
    let mut sizes: Vec<usize> = words.iter().filter_map(|word| word.parse().ok()).collect();
    if sizes.is_empty() {
        sizes = vec![100, 2_000];
    }
    let place = std::env::var_os("MENDLINE_SCALE_DIR").map_or_else(std::env::temp_dir, Into::into);
    println!(
        "| repairs | file, MB | start to first screen, ms | first screen, ms | line, ms | street, ms | lot, ms | certificate, ms | append p50, ms | append p99, ms | bare insert p99, ms | ratio p99 | verify, MB/s | SHA-256, MB/s | ratio | check of the file, s | export, repairs/s | each file synced, repairs/s | memory: screens, MB | append, MB | verify, MB | export, MB |"
    );
    println!("|{}", "---|".repeat(23));
    for size in sizes {
        let folder = tempfile::tempdir_in(&place).unwrap();
        let cells = measure(folder.path(), size);
        println!("| {} |", cells.join(" | "));
    }
}

fn measure(folder: &Path, size: usize) -> Vec<String> {
    let data = folder.join("data");
    let bytes = filled(&data, size);
    let journal = data.join("journal.sqlite");
    let mut cells = vec![size.to_string(), format!("{:.0}", mb(fs::metadata(&journal).unwrap().len()))];
    forget_memory();
    let mut app = None;
    let start = time(|| {
        let mut fresh = App::open(&data).unwrap();
        asked(&mut fresh, 0, json!({ "do": "today" }));
        app = Some(fresh);
    });
    cells.push(ms(start));
    let mut app = app.unwrap();
    let mut seen = |request: Value| {
        let found = asked(&mut app, 0, request.clone());
        assert!(
            request["do"] == "today" || !found["repairs"].as_array().unwrap().is_empty(),
            "{request} finds nothing"
        );
        ms(median((0..9).map(|_| time(|| drop(asked(&mut app, 0, request.clone())))).collect()))
    };
    cells.push(seen(json!({ "do": "today" })));
    let some = size / 2;
    for text in [asset(some), street(some), lot(some), certificate(some)] {
        cells.push(seen(json!({ "do": "list", "text": text })));
    }
    drop(app);
    let mut memory = vec![held()];
    cells.extend(appends(folder, &journal, some));
    memory.push(held());
    cells.extend(verified(&journal, bytes));
    memory.push(held());
    cells.push(format!("{:.0}", exported(&data, &folder.join("out"), size, false)));
    cells.push(format!("{:.0}", exported(&data, &folder.join("each"), size, true)));
    memory.push(held());
    cells.extend(memory);
    cells
}

/// Returns the most memory that was held at once since the last time, in MB.
fn held() -> String {
    let most = most_memory();
    forget_memory();
    format!("{:.0}", mb(most))
}

/// Fills the folder in a process of its own. Returns the bytes that its chains hash.
fn filled(data: &Path, size: usize) -> u64 {
    let program = std::env::current_exe().unwrap();
    let output = Command::new(program).arg(FILL).arg(data).arg(size.to_string()).output().unwrap();
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    String::from_utf8_lossy(&output.stdout).trim().parse().unwrap()
}

/// Returns how many appends a second are like one bare insert: medians and 99th percentiles, both kinds in turns.
fn appends(folder: &Path, journal: &Path, number: usize) -> Vec<String> {
    let mut bare = bare(&folder.join("bare.sqlite"));
    let mut kept = Sqlite::open(journal).unwrap();
    let (repair, template) = (id(number), kept.row(&id(number)).unwrap().unwrap());
    let body = REHEARSAL.lines().nth(60).unwrap().as_bytes();
    let mut heads = kept.heads(&repair).unwrap();
    let (mut bare_times, mut append_times) = (vec![], vec![]);
    for turn in 0..TURNS {
        bare_times.push(time(|| {
            let transaction = bare.transaction().unwrap();
            transaction.prepare_cached("INSERT INTO bare (body) VALUES (?1)").unwrap().execute([body]).unwrap();
            transaction.commit().unwrap();
        }));
        let (request, device) = (format!("turn-{turn}"), DEVICE.to_owned());
        let draft = Draft { repair: repair.clone(), device, heads: heads.clone(), branch: None, body: body.to_vec() };
        let row = Row { changed_ms: template.changed_ms + turn as i64, ..template.clone() };
        append_times.push(time(|| {
            let request_hash = Hash::of(request.as_bytes());
            let answer = repair.clone().into_bytes();
            let write = Write {
                request: &request,
                request_hash,
                received: vec![],
                drafts: vec![draft],
                rows: vec![row],
                answer,
            };
            kept.append(&write).unwrap();
        }));
        heads = kept.heads(&repair).unwrap();
    }
    let p99 = |times: &mut Vec<Duration>| {
        times.sort();
        times[times.len() * 99 / 100]
    };
    let (bare, append) = (p99(&mut bare_times), p99(&mut append_times));
    let ratio = format!("{:.2}", append.as_secs_f64() / bare.as_secs_f64());
    vec![ms(append_times[TURNS / 2]), ms(append), ms(bare), ratio]
}

/// Checks all chains, and hashes as many bytes in one stream.
fn verified(journal: &Path, bytes: u64) -> Vec<String> {
    let kept = Sqlite::open(journal).unwrap();
    let chains = time(|| assert_eq!(kept.verify_chains(), Ok(vec![])));
    let buffer = vec![0x5a_u8; 1 << 20];
    let stream = time(|| {
        let mut hasher = Sha256::new();
        (0..bytes >> 20).for_each(|_| hasher.update(&buffer));
        hasher.update(&buffer[..(bytes & 0xf_ffff) as usize]);
        assert_ne!(hasher.finalize()[..], [0; 32]);
    });
    let whole = time(|| assert_eq!(kept.verify_all(), Ok(vec![])));
    let pace = |time: Duration| format!("{:.0}", mb(bytes) / time.as_secs_f64());
    let ratio = format!("{:.2}", stream.as_secs_f64() / chains.as_secs_f64());
    vec![pace(chains), pace(stream), ratio, format!("{:.1}", whole.saturating_sub(chains).as_secs_f64())]
}

/// Returns how many repairs a second come out as files, made safe one by one or all at the end as `mendline export` does;
/// at most 2,000 are written.
fn exported(data: &Path, out: &Path, size: usize, each: bool) -> f64 {
    /// With the fault that ended it, or without, when there was enough.
    struct Stop(Option<Fault>);
    impl From<Fault> for Stop {
        fn from(fault: Fault) -> Self {
            Self(Some(fault))
        }
    }
    fs::create_dir_all(out).unwrap();
    let (most, mut count) = (size.min(2_000), 0);
    let took = time(|| {
        let outcome = export(data, |file| {
            let path = out.join(&file.name);
            fs::write(&path, &file.bytes).unwrap();
            if each {
                fs::File::open(&path).unwrap().sync_all().unwrap();
            }
            count += 1;
            if count < most { Ok(()) } else { Err(Stop(None)) }
        });
        if let Err(Stop(Some(fault))) = outcome {
            panic!("the export ended early: {fault}");
        }
        rustix::fs::syncfs(fs::File::open(out).unwrap()).unwrap();
    });
    count as f64 / took.as_secs_f64()
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

/// Writes the folder: shelf and one repair through the door, all repairs in bulk. Returns the bytes that its chains hash.
fn fill(data: &Path, size: usize) -> u64 {
    let mut app = App::open(data).unwrap();
    asked(&mut app, 1, json!({ "do": "take_examples" }));
    let entries = repair(0);
    let record = record(&entries);
    asked(&mut app, 2, json!({ "do": "import_record", "name": "a", "bytes": STANDARD.encode(record.to_string()) }));
    drop(app);
    let path = data.join("journal.sqlite");
    let template = Sqlite::open(&path).unwrap().row(&id(0)).unwrap().unwrap();
    let raw = Connection::open(&path).unwrap();
    // The guards look three times for what bulk can't hold; the entries are new.
    raw.set_db_config(DbConfig::SQLITE_DBCONFIG_ENABLE_TRIGGER, false).unwrap();
    raw.execute_batch("PRAGMA synchronous = OFF; PRAGMA cache_size = -3000000; BEGIN").unwrap();
    let mut bytes = weigh(&entries);
    for number in 1..size {
        let entries = repair(number);
        bytes += weigh(&entries);
        insert(&raw, &entries, &row(&template, number));
        if number % 5_000 == 0 {
            raw.execute_batch("COMMIT; BEGIN").unwrap();
        }
    }
    raw.execute_batch(
        "UPDATE register_upto SET entry = (SELECT max(id) FROM journal); COMMIT; PRAGMA wal_checkpoint(TRUNCATE)",
    )
    .unwrap();
    bytes
}

fn insert(raw: &Connection, entries: &[Entry], row: &Row) {
    let sql = "INSERT INTO journal (repair, device, seq, prev, body, hash) VALUES (?1, ?2, ?3, ?4, ?5, ?6)";
    let mut journal = raw.prepare_cached(sql).unwrap();
    let mut request = raw.prepare_cached("INSERT INTO request (request, hash, answer) VALUES (?1, ?2, ?3)").unwrap();
    for entry in entries {
        let prev: Vec<u8> = entry.prev.iter().flat_map(|hash| *hash.as_bytes()).collect();
        let seq = entry.seq as i64;
        journal.execute(params![entry.repair, entry.device, seq, prev, entry.body, entry.hash.as_bytes()]).unwrap();
        let name = format!("{}-{seq}", entry.hash);
        request.execute(params![&name[..36], entry.hash.as_bytes(), entry.repair.as_bytes()]).unwrap();
    }
    let sql = "INSERT INTO register_repair
        (repair, number, line, nodes, street, live, changed_ms, certificate, summary)
        VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9)";
    let values = params![
        row.repair,
        row.number,
        row.line,
        row.nodes,
        row.street,
        row.live,
        row.changed_ms,
        row.certificate,
        row.summary
    ];
    raw.prepare_cached(sql).unwrap().execute(values).unwrap();
    let place = raw.last_insert_rowid();
    for lot in &row.lots {
        let sql = "INSERT OR IGNORE INTO register_lot (lot, repair) VALUES (?1, ?2)";
        raw.prepare_cached(sql).unwrap().execute(params![lot, row.repair]).unwrap();
    }
    let fixed = [&row.number, &row.line, &row.nodes, &row.street].map(String::as_str);
    let words: Vec<&str> =
        fixed.into_iter().chain(row.certificate.as_deref()).chain(row.lots.iter().map(String::as_str)).collect();
    let sql = "INSERT INTO register_search (rowid, words) VALUES (?1, ?2)";
    raw.prepare_cached(sql).unwrap().execute(params![place, words.join("\n").to_lowercase()]).unwrap();
}

/// Returns the entries of one repair: the rehearsal with names of its own, and a note.
fn repair(number: usize) -> Vec<Entry> {
    let (repair, mut entries) = (id(number), Vec::<Entry>::with_capacity(ENTRIES));
    let note = r#"{"event":"noted","text":"handed over"}"#;
    let last = REHEARSAL.lines().nth(40).unwrap();
    let end = last.find("\"events\":[").unwrap();
    let noted = format!("{}\"events\":[{note}]}}", &last[..end]);
    for (place, line) in REHEARSAL.lines().chain([noted.as_str()]).take(ENTRIES).enumerate() {
        let body = renamed(line, number).into_bytes();
        let prev: Vec<Hash> = entries.last().map(|entry| entry.hash).into_iter().collect();
        let seq = place as u64 + 1;
        let hash = link(&repair, DEVICE, seq, &prev, &body);
        entries.push(Entry { repair: repair.clone(), device: DEVICE.into(), seq, prev, body, hash });
    }
    entries
}

fn renamed(line: &str, number: usize) -> String {
    line.replace(&original(), &id(number))
        .replace("SS-03107", &asset(number))
        .replace("Kettle Row", STREETS[number % STREETS.len()])
        .replace("RH-01", &format!("R-{number:06}"))
}

/// Returns the row of a repair, from that of the first.
fn row(template: &Row, number: usize) -> Row {
    let text = |text: &str| {
        text.replace(&id(0), &id(number))
            .replace(&asset(0), &asset(number))
            .replace("R-000000", &format!("R-{number:06}"))
    };
    Row {
        repair: id(number),
        number: text(&template.number),
        line: text(&template.line),
        street: street(number),
        changed_ms: template.changed_ms + (number as i64 * 7_919_000) % 1_000_003_000,
        certificate: Some(certificate(number)),
        lots: vec![lot(number), format!("G-{}", number / 20)],
        summary: text(&String::from_utf8_lossy(&template.summary)).into_bytes(),
        ..template.clone()
    }
}

fn record(entries: &[Entry]) -> Value {
    let shown = |entry: &Entry| {
        let body = String::from_utf8_lossy(&entry.body);
        json!({ "device": entry.device, "seq": entry.seq, "prev": entry.prev, "hash": entry.hash, "body": body })
    };
    let entries_shown: Vec<Value> = entries.iter().map(shown).collect();
    json!({ "form": "mendline-record/1", "rehearsal": true, "repair": id(0), "number": "R-000000",
            "heads": heads_of(entries), "entries": entries_shown })
}

fn original() -> String {
    let body: Value = serde_json::from_str(REHEARSAL.lines().next().unwrap()).unwrap();
    body["events"][0]["id"].as_str().unwrap().to_owned()
}

/// Spread over the alphabet, as random ids are.
fn id(number: usize) -> String {
    format!("{:032x}", (number as u128 + 1).wrapping_mul(0x9e37_79b9_7f4a_7c15_f39c_c060_5ced_c835))
}

fn asset(number: usize) -> String {
    format!("SS-{:06}", number / 4)
}

fn street(number: usize) -> String {
    format!("{} {}", STREETS[number % STREETS.len()], number / 200)
}

fn lot(number: usize) -> String {
    format!("Q30-{:05}", number / 12)
}

fn certificate(number: usize) -> String {
    format!("K3F-{number:06}")
}

fn weigh(entries: &[Entry]) -> u64 {
    entries
        .iter()
        .map(|entry| (entry.body.len() + entry.repair.len() + entry.device.len() + 8 + 32 * entry.prev.len()) as u64)
        .sum()
}

fn asked(app: &mut App, number: u64, request: Value) -> Value {
    let moment = Moment { at_ms: 1_791_990_000_000, offset_min: 120, boot_ms: 69_000_000, boot_id: "rehearsal".into() };
    let sensed = Sensed { moment, device: DEVICE.into(), ..Sensed::default() };
    let envelope = json!({ "id": format!("q{number}"), "person": "varga", "request": request });
    let answer: Value = serde_json::from_str(&app.handle(&envelope.to_string(), &sensed)).unwrap();
    assert!(answer["ok"].is_object(), "{answer}");
    answer["ok"].clone()
}

/// Source: proc(5): writing 5 resets the most memory that was held at once.
fn forget_memory() {
    let _ = fs::write("/proc/self/clear_refs", "5");
}

/// Returns the most bytes that this process held since, 0 where the system does not say.
fn most_memory() -> u64 {
    let status = fs::read_to_string("/proc/self/status").unwrap_or_default();
    let line = status.lines().find_map(|line| line.strip_prefix("VmHWM:")).unwrap_or("0");
    line.trim().trim_end_matches(" kB").parse::<u64>().unwrap_or(0) * 1024
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

fn ms(time: Duration) -> String {
    format!("{:.2}", time.as_secs_f64() * 1e3)
}

fn mb(bytes: u64) -> f64 {
    bytes as f64 / 1e6
}
