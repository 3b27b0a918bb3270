//! Builds, signs and checks certificates again and again, and prints what it took as JSON. `compare.py` beside it starts
//! it, and says how. Each of these is a process of its own, so that the memory of one is not that of another:
//!
//! - `build CONTENT PHOTOS OUT TIMES`: the paper of a content.
//! - `sign FILE OUT TIMES`: that paper signed by two keys, one after the other.
//! - `verify FILE TIMES`: the file with both signatures, without the record inside, which a content does not have.
//! - `jobs FOLDER`: three whole jobs, made by the rehearsal and signed in earnest, each as a file.
//! - `check FILE TIMES`: such a file as `mendline verify` checks it: the file, both keys, the pages against the record
//!   inside, and its chain.

use mendline_core::certificate::content::{Content, Known, RecordCopy};
use mendline_core::certificate::{build, fonts::Fonts, layout::lay_out};
use mendline_core::door::{Finding, PagesCompared, Trusted, check_file};
use mendline_core::seal::verify::verify;
use mendline_core::seal::x509::Holder;
use mendline_core::seal::{Block, Certificate, PrivateKey, Seed, Signer, sign};
use mendline_tests::earnest::Desk;
use mendline_tests::empty_folder;
use serde_json::{Value, json};
use sha2::{Digest, Sha256};
use std::path::Path;
use std::time::Instant;

/// 2026-10-14 15:02:39 in Quillmere, in UTC milliseconds.
const AT_MS: i64 = 1_791_982_959_000;

fn main() {
    // `cargo bench` adds `--bench`.
    let arguments: Vec<String> = std::env::args().skip(1).filter(|word| word != "--bench").collect();
    let words: Vec<&str> = arguments.iter().map(String::as_str).collect();
    let often = |times: &str| times.parse().unwrap();
    let found = match words[..] {
        ["build", content, photos, out, times] => paper(content, photos, out, often(times)),
        ["sign", file, out, times] => sealed(file, out, often(times)),
        ["verify", file, times] => verified(file, often(times)),
        ["jobs", folder] => jobs(Path::new(folder)),
        ["check", file, times] => checked(file, often(times)),
        _ => {
            println!("skipped: start tests/certificate/bench/compare.py instead");
            return;
        }
    };
    println!("{found}");
}

fn paper(content: &str, photos: &str, out: &str, times: u32) -> Value {
    let content = read(Path::new(content), Path::new(photos));
    let pages = lay_out(&content, Fonts::shared().unwrap()).unwrap().pages.len();
    let took = measured(times, || build(&content).unwrap());
    let pdf = build(&content).unwrap();
    std::fs::write(out, &pdf).unwrap();
    with(took, json!({ "pages": pages, "bytes": pdf.len() }))
}

fn sealed(file: &str, out: &str, times: u32) -> Value {
    let pdf = std::fs::read(file).unwrap();
    let took = measured(times, || signed(&pdf));
    let both = signed(&pdf);
    std::fs::write(out, &both).unwrap();
    with(took, json!({ "bytes": both.len() }))
}

fn verified(file: &str, times: u32) -> Value {
    let pdf = std::fs::read(file).unwrap();
    assert_eq!(verify(&pdf).unwrap().flaws, Vec::<String>::new());
    with(measured(times, || verify(&pdf).unwrap()), json!({ "bytes": pdf.len() }))
}

fn jobs(folder: &Path) -> Value {
    let one = |name: &str| {
        let data = empty_folder();
        let (mut desk, repair) = match name {
            "short" => Desk::with_short_record(data.path()),
            name => Desk::with_record(data.path(), name == "photos"),
        };
        let file = folder.join(format!("{name}.pdf"));
        std::fs::write(&file, desk.certified(&repair)).unwrap();
        file
    };
    let files = ["short", "whole", "photos"].map(one);
    json!({ "files": files })
}

fn checked(file: &str, times: u32) -> Value {
    let pdf = std::fs::read(file).unwrap();
    let trusted = Trusted::default();
    let verdict = check_file(file, &pdf, &trusted);
    assert_eq!((verdict.finding, verdict.compared), (Finding::Valid, Some(PagesCompared::Whole)), "{}", verdict.says);
    let pages = verify(&pdf).unwrap().pages.len();
    let file_alone = measured(times, || verify(&pdf).unwrap());
    let found =
        json!({ "pages": pages, "bytes": pdf.len(), "entries": verdict.entries, "file_ms": file_alone["cpu_ms"] });
    with(measured(times, || check_file(file, &pdf, &trusted)), found)
}

fn with(mut took: Value, found: Value) -> Value {
    if let (Value::Object(took), Value::Object(found)) = (&mut took, found) {
        took.extend(found);
    }
    took
}

/// Returns the paper with the signatures of both.
fn signed(pdf: &[u8]) -> Vec<u8> {
    let fonts = Fonts::shared().unwrap();
    [("technician", "Tomas Ekdal", 1), ("foreman", "Ines Varga", 2)].iter().fold(
        pdf.to_vec(),
        |pdf, (role, name, byte)| {
            let seed = Seed::new([*byte; 32]).unwrap();
            let key = PrivateKey::fresh(&seed);
            let holder =
                Holder { name: (*name).into(), organisation: "Wendholt Pipe Repair".into(), role: (*role).into() };
            let chain = [Certificate::self_signed(&key, &holder, AT_MS, &seed).unwrap()];
            let block = Block {
                field: (*role).into(),
                name: (*name).into(),
                statement: "I did this repair and recorded it as it happened.".into(),
                at_ms: AT_MS,
                offset_min: 120,
                strokes: vec![vec![(0, 0), (40, 30), (90, 10), (130, 60)]],
                lines: vec![format!("{name}, {role}")],
            };
            sign(&pdf, &Signer { key: &key, chain: &chain, fonts }, &block).unwrap()
        },
    )
}

/// Returns the milliseconds that something takes, by the clock on the wall and of processor time: the means after one to
/// warm up.
fn measured<T>(times: u32, mut what: impl FnMut() -> T) -> Value {
    drop(what());
    let (begun, spent) = (Instant::now(), processor_s());
    for _ in 0..times {
        drop(what());
    }
    let mean = |seconds: f64| seconds * 1000.0 / f64::from(times);
    json!({ "cpu_ms": mean(processor_s() - spent), "ms": mean(begun.elapsed().as_secs_f64()) })
}

/// Seconds that this thread has been on a processor.
fn processor_s() -> f64 {
    let spent = rustix::time::clock_gettime(rustix::time::ClockId::ThreadCPUTime);
    spent.tv_sec as f64 + spent.tv_nsec as f64 / 1e9
}

fn read(content: &Path, photos: &Path) -> Content {
    let bytes = std::fs::read(content).unwrap();
    let mut content: Content = serde_json::from_slice(&bytes).unwrap();
    for photo in &mut content.photos {
        if let Known::Known(copy) = &mut photo.copy {
            copy.jpeg = std::fs::read(photos.join(format!("{}.jpg", copy.sha256))).unwrap();
        }
    }
    let sha256 = Sha256::digest(&bytes).iter().map(|byte| format!("{byte:02x}")).collect();
    content.record = Known::Known(RecordCopy { name: "record.json".into(), sha256, json: bytes });
    content
}
