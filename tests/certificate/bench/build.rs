//! Builds one certificate again and again, and prints what it took as JSON. Started by `compare.py` beside it.

use mendline_core::certificate::content::{Content, Known, RecordCopy};
use mendline_core::certificate::{build, fonts::Fonts, layout::lay_out};
use sha2::{Digest, Sha256};
use std::path::Path;
use std::time::Instant;

fn main() {
    // `cargo bench` adds `--bench`.
    let arguments: Vec<String> = std::env::args().skip(1).filter(|word| word != "--bench").collect();
    let [content, photos, out, times] = arguments.as_slice() else {
        println!("skipped: start tests/certificate/bench/compare.py instead");
        return;
    };
    let content = read(Path::new(content), Path::new(photos));
    let pages = lay_out(&content, &Fonts::bundled().unwrap()).unwrap().pages.len();
    let mut pdf = build(&content).unwrap();
    let times: u32 = times.parse().unwrap();
    let begun = Instant::now();
    for _ in 0..times {
        pdf = build(&content).unwrap();
    }
    let ms = begun.elapsed().as_secs_f64() * 1000.0 / f64::from(times);
    std::fs::write(out, &pdf).unwrap();
    println!(r#"{{"pages": {pages}, "ms": {ms:.2}, "bytes": {}}}"#, pdf.len());
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
