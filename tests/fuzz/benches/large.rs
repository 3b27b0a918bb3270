//! What large files cost: time for a tenth and for the whole, and the most memory beside the file.
//!
//! `cargo bench -p mendline-fuzz --bench large`, or some rows: `-- PDF bundle`. Every row is a program of its own, so that its memory is its own. Time
//! that grows with the size has a ratio of about ten.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::disallowed_methods)]

use std::fs;
use std::io::Cursor;
use std::process::Command;
use std::time::Instant;

use mendline_core::bundle::{FORM, Head, Writer};
use mendline_core::door::{App, Trusted, check_file, fingerprint};
use mendline_core::facts::{Moment, Sensed};
use mendline_core::journal::{Entry, Hash, link};
use mendline_core::seal::{PrivateKey, Seed};
use mendline_core::{inspection, seal::verify};
use serde_json::json;
use sha2::{Digest, Sha256};

const MB: usize = 1 << 20;
const REHEARSAL: &str = include_str!("../../../fixtures/corpus/record/rehearsal");
const PLAIN_PDF: &[u8] = include_bytes!("../../../fixtures/corpus/pdf/plain");
const DEVICE: &str = "phone";

/// What is read, and how large the whole is; what is larger than its reader takes is refused by its size.
const ROWS: [(&str, usize); 9] = [
    ("inspection, text", inspection::MOST_BYTES - MB),
    ("inspection, XML", 10 * MB),
    ("inspection, refused", 100 * MB),
    ("record", 15 * MB),
    ("record, refused", 100 * MB),
    ("PDF", verify::MOST_BYTES - 3 * MB),
    ("PDF, refused", 100 * MB),
    ("bundle of photos", 100 * MB),
    ("bundle of entries", 100 * MB),
];

fn main() {
    let words: Vec<String> = std::env::args().collect();
    match &words[..] {
        [_, verb, row, path] if verb == "read" => return read(ROWS[row.parse::<usize>().unwrap()].0, path),
        [_, verb, row, path, size] if verb == "make" => {
            return fs::write(path, made(ROWS[row.parse::<usize>().unwrap()].0, size.parse().unwrap())).unwrap();
        }
        _ => {}
    }
    println!("| file | MB | a tenth, ms | whole, ms | ratio | memory beside the file, MB | what came of it |");
    println!("|---|---|---|---|---|---|---|");
    let wanted: Vec<&String> = words.iter().skip(1).filter(|word| !word.starts_with('-')).collect();
    let is_wanted = |name: &str| wanted.is_empty() || wanted.iter().any(|word| name.contains(word.as_str()));
    for (row, (name, size)) in ROWS.iter().enumerate().filter(|(_, (name, _))| is_wanted(name)) {
        let [(small, ..), (whole, memory, says)] = [size / 10, *size].map(|size| apart(row, size));
        println!("| {name} | {} | {small:.1} | {whole:.1} | {:.1} | {memory:.0} | {says} |", size / MB, whole / small);
    }
}

/// Makes a file in one program and reads it in another. Returns milliseconds, megabytes and what came of it.
fn apart(row: usize, size: usize) -> (f64, f64, String) {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("large");
    let run = |words: [&str; 4]| {
        let words = words.into_iter().filter(|word| !word.is_empty());
        Command::new(std::env::current_exe().unwrap()).args(words).output().unwrap()
    };
    let (row, file) = (row.to_string(), path.to_str().unwrap());
    assert!(run(["make", &row, file, &size.to_string()]).status.success());
    let output = run(["read", &row, file, ""]);
    let said = String::from_utf8_lossy(&output.stdout).into_owned();
    let parts: Vec<&str> = said.trim().splitn(3, '\t').collect();
    match parts[..] {
        [took, memory, says] => (took.parse().unwrap(), memory.parse().unwrap(), says.to_owned()),
        _ => (f64::NAN, f64::NAN, format!("ended early: {}", output.status)),
    }
}

fn read(name: &str, path: &str) {
    let bytes = fs::read(path).unwrap();
    let start = Instant::now();
    let says = match name.split([' ', ',']).next().unwrap() {
        "inspection" => inspection::read(&bytes).map_or_else(
            |why| why.to_string(),
            |file| format!("{} observations", file.inspections.iter().map(|one| one.observations.len()).sum::<usize>()),
        ),
        "bundle" => taken(&bytes),
        _ => check_file("a", &bytes, &Trusted::default()).says,
    };
    let took = start.elapsed().as_secs_f64() * 1e3;
    let beside = mendline_fuzz::most_held().saturating_sub(bytes.len()) as f64 / 1e6;
    println!("{took}\t{beside}\t{}", says.chars().take(90).collect::<String>());
}

fn taken(bytes: &[u8]) -> String {
    let folder = tempfile::tempdir().unwrap();
    let mut app = App::open(folder.path()).unwrap();
    let moment = Moment { at_ms: 1_791_990_000_000, offset_min: 120, boot_ms: 1, boot_id: "one".into() };
    let sensed = Sensed { moment, device: "office".into(), ..Sensed::default() };
    match app.take_in(&mut Cursor::new(bytes), None, &sensed) {
        Ok(taken) => format!("{} repairs, {} photos", taken.repairs.len(), taken.photos),
        Err(why) => why.to_string(),
    }
}

fn made(name: &str, size: usize) -> Vec<u8> {
    match name {
        "inspection, XML" => xml(size),
        "bundle of photos" => photos(size),
        "bundle of entries" => entries(size),
        _ if name.starts_with("inspection") => text(size),
        _ if name.starts_with("record") => record(size),
        _ => pdf(size),
    }
}

/// One inspection after the other, each with its observations.
fn text(size: usize) -> Vec<u8> {
    let mut file = "#A1=UTF-8\n#A2=en\n#A3=;\n#A4=.\n#A5=\"\n".to_owned();
    for line in 0.. {
        file += &format!("#B01=AAA;AAD;AAF\nSS-{line};MH {line};MH {}\n#C=I;A;B;D;G;H;F\n", line + 1);
        let remark = "seen in passing ".repeat(5);
        (0..50).for_each(|place| file += &format!("{place}.5;BAB;B;1;11;1;{remark}\n"));
        file += "#Z\n";
        if file.len() >= size {
            return file.into_bytes();
        }
    }
    unreachable!("the loop ends when it is large enough")
}

/// One inspection of the example, again and again.
fn xml(size: usize) -> Vec<u8> {
    let example = include_str!("../../../fixtures/inspections/gannet-steps.xml");
    let start = example.find("<ZB>").unwrap();
    let end = example.rfind("</ZB>").unwrap() + 5;
    let one = &example[start..end];
    [&example[..start], &one.repeat(size / one.len()), &example[end..]].concat().into_bytes()
}

/// One device's chain: the rehearsal, then readings.
fn chain(repair: usize, size: usize) -> Vec<Entry> {
    let original = serde_json::from_str::<serde_json::Value>(REHEARSAL.lines().next().unwrap()).unwrap();
    let original = original["events"][0]["id"].as_str().unwrap().to_owned();
    let name = format!("{repair:032x}");
    let (mut entries, mut bytes) = (Vec::<Entry>::new(), 0);
    let lines = REHEARSAL.lines().chain(std::iter::repeat(REHEARSAL.lines().nth(60).unwrap()));
    for (place, line) in lines.enumerate().take_while(|(place, _)| *place < 149 || size > 0) {
        let body = line.replace(&original, &name).into_bytes();
        let prev: Vec<Hash> = entries.last().map(|entry| entry.hash).into_iter().collect();
        let seq = place as u64 + 1;
        let hash = link(&name, DEVICE, seq, &prev, &body);
        bytes += body.len() + 350;
        entries.push(Entry { repair: name.clone(), device: DEVICE.into(), seq, prev, body, hash });
        if size > 0 && bytes >= size {
            break;
        }
    }
    entries
}

fn record(size: usize) -> Vec<u8> {
    let entries = chain(1, size);
    let shown = |entry: &Entry| {
        let body = String::from_utf8_lossy(&entry.body);
        json!({ "device": entry.device, "seq": entry.seq, "prev": entry.prev, "hash": entry.hash, "body": body })
    };
    let listed: Vec<_> = entries.iter().map(shown).collect();
    let heads = [entries[entries.len() - 1].hash];
    let file = json!({ "form": "mendline-record/1", "rehearsal": true, "repair": entries[0].repair, "number": "RH-01",
                       "heads": heads, "entries": listed });
    file.to_string().into_bytes()
}

/// The small file, with one picture after the other added behind it as a writer of PDF would.
fn pdf(size: usize) -> Vec<u8> {
    let mut file = lopdf::Document::load_mem(PLAIN_PDF).unwrap();
    for number in 0..=size / MB {
        let picture: Vec<u8> = noise(number).collect();
        file.add_object(lopdf::Stream::new(lopdf::dictionary! { "Type" => "XObject", "Subtype" => "Image" }, picture));
    }
    let mut bytes = vec![];
    file.save_to(&mut bytes).unwrap();
    bytes
}

/// A megabyte that can't be packed.
fn noise(seed: usize) -> impl Iterator<Item = u8> {
    (0..MB / 32).flat_map(move |block| Sha256::digest([seed.to_le_bytes(), block.to_le_bytes()].concat()))
}

fn photos(size: usize) -> Vec<u8> {
    let photos: Vec<Vec<u8>> = (0..size / (4 * MB))
        .map(|number| {
            [0xff, 0xd8, 0xff, 0xe0].into_iter().chain((0..4).flat_map(|part| noise(number * 4 + part))).collect()
        })
        .collect();
    let mut entries = chain(1, 0);
    let template = REHEARSAL.lines().find(|line| line.contains("photo_kept")).unwrap();
    let named = serde_json::from_str::<serde_json::Value>(template).unwrap();
    let named =
        named["events"].as_array().unwrap().iter().find_map(|event| event["sha256"].as_str()).unwrap().to_owned();
    for photo in &photos {
        let last = &entries[entries.len() - 1];
        let body = template.replace(&named, &Hash::of(photo).to_string()).into_bytes();
        let (prev, seq) = (vec![last.hash], last.seq + 1);
        let (repair, device) = (last.repair.clone(), DEVICE.to_owned());
        let hash = link(&repair, &device, seq, &prev, &body);
        entries.push(Entry { repair, device, seq, prev, body, hash });
    }
    bundled(&entries, &photos)
}

/// As many whole repairs as there is room for.
fn entries(size: usize) -> Vec<u8> {
    let one = chain(0, 0);
    let weight: usize = one.iter().map(|entry| entry.body.len() + 300).sum();
    bundled(&(0..size / weight).flat_map(|repair| chain(repair, 0)).collect::<Vec<_>>(), &[])
}

fn bundled(entries: &[Entry], photos: &[Vec<u8>]) -> Vec<u8> {
    let key = PrivateKey::fresh(&Seed::new([7; 32]).unwrap());
    let head = Head { v: FORM, device: DEVICE.into(), key: fingerprint(&key), at_ms: 1_791_990_000_000 };
    let mut writer = Writer::begin(Vec::new(), &head).unwrap();
    entries.iter().for_each(|entry| writer.entry(entry).unwrap());
    photos.iter().for_each(|photo| writer.photo(photo).unwrap());
    writer.finish(&key).unwrap()
}
