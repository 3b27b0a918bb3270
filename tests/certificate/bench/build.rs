//! Builds, signs and checks certificates again and again, and prints what it took as JSON. `compare.py` beside it starts
//! it, and says how.
//!
//! - `CONTENT PHOTOS OUT TIMES`: the paper of a content: built, signed by two keys, checked.
//! - `checks TIMES`: a whole job, made by the rehearsal and signed in earnest, checked as `mendline verify` does: the
//!   file, both keys, the pages against the record inside, and its chain. Without photos and with them.

use mendline_core::certificate::content::{Content, Known, RecordCopy};
use mendline_core::certificate::{build, fonts::Fonts, layout::lay_out};
use mendline_core::door::{Finding, check_file};
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
    let found = match words[..] {
        ["checks", times] => checks(times.parse().unwrap()),
        [content, photos, out, times] => paper(content, photos, out, times.parse().unwrap()),
        _ => {
            println!("skipped: start tests/certificate/bench/compare.py instead");
            return;
        }
    };
    println!("{found}");
}

fn paper(content: &str, photos: &str, out: &str, times: u32) -> Value {
    let content = read(Path::new(content), Path::new(photos));
    let pages = lay_out(&content, &Fonts::bundled().unwrap()).unwrap().pages.len();
    let pdf = build(&content).unwrap();
    let begun = Instant::now();
    let build_ms = ms(times, || drop(build(&content).unwrap()));
    // One to warm up is among them.
    let wall_ms = begun.elapsed().as_secs_f64() * 1000.0 / f64::from(times + 1);
    let sign_ms = ms(times, || drop(signed(&pdf)));
    let both = signed(&pdf);
    assert_eq!(verify(&both).unwrap().flaws, Vec::<String>::new());
    let verify_ms = ms(times, || drop(verify(&both).unwrap()));
    std::fs::write(out, &both).unwrap();
    json!({
        "pages": pages, "ms": wall_ms, "cpu_ms": build_ms, "sign_ms": sign_ms / 2.0, "verify_ms": verify_ms,
        "bytes": both.len(),
    })
}

/// Returns the paper with the signatures of both.
fn signed(pdf: &[u8]) -> Vec<u8> {
    let fonts = Fonts::bundled().unwrap();
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
            sign(&pdf, &Signer { key: &key, chain: &chain, fonts: &fonts }, &block).unwrap()
        },
    )
}

fn checks(times: u32) -> Value {
    let one = |photos| {
        let folder = empty_folder();
        let (mut desk, repair) = Desk::with_record(folder.path(), photos);
        let pdf = desk.certified(&repair);
        let trusted = desk.handed_out("ekdal").and(desk.handed_out("varga"));
        let verdict = check_file("c.pdf", &pdf, &trusted);
        assert_eq!(verdict.finding, Finding::Valid, "{}", verdict.says);
        let file_ms = ms(times, || drop(verify(&pdf).unwrap()));
        let ms = ms(times, || drop(check_file("c.pdf", &pdf, &trusted)));
        json!({ "photos": photos, "bytes": pdf.len(), "entries": verdict.entries, "ms": ms, "file_ms": file_ms })
    };
    json!({ "all": [one(false), one(true)] })
}

/// Returns the processor time that something takes, in milliseconds: the mean after one to warm up.
fn ms(times: u32, mut what: impl FnMut()) -> f64 {
    what();
    let begun = processor_s();
    for _ in 0..times {
        what();
    }
    (processor_s() - begun) * 1000.0 / f64::from(times)
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
