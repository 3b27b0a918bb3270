//! The file for an archive and for a screen reader: PDF/A-3a with the record inside, PDF/A-2a without, PDF/UA-1 both.
//!
//! Source: ISO 19005-3, ISO 19005-2, ISO 14289-1, clause by clause in `tests/certificate/archive/`, read by pikepdf
//! and fontTools. Skipped, and said so, where `make deps-test` was not run.

use super::{NAMES, content};
use mendline_core::certificate::build;
use mendline_core::certificate::content::{Known, Paper};
use mendline_tests::earnest::Desk;
use mendline_tests::{empty_folder, python};
use serde_json::json;
use std::path::{Path, PathBuf};

fn folder() -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("archive");
    std::fs::create_dir_all(&folder).unwrap();
    folder
}

fn written(name: &str, bytes: &[u8]) -> String {
    let path = folder().join(format!("{name}.pdf"));
    std::fs::write(&path, bytes).unwrap();
    path.display().to_string()
}

/// The script for a file of `tests/certificate/archive`.
fn script(name: &str) -> String {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("certificate/archive").join(name).display().to_string()
}

#[test]
fn no_certificate_breaks_a_clause_of_pdf_a_3a_or_pdf_ua_1() {
    let mut files = vec![script("__main__.py")];
    for name in NAMES {
        files.push(written(name, &build(&content(name)).unwrap()));
    }
    let mut letter = content("stress");
    letter.paper = Paper::Letter;
    files.push(written("letter", &build(&letter).unwrap()));
    let mut odd = content("unrepaired");
    odd.signatures[0].name = "ﬁ ǆ ☠ ẞ \u{e000} \u{f6c5} 𝔸 \u{10348} \u{0} \u{7} \u{feff} ¼ 中".to_string();
    odd.number = "K3F\u{1}-\u{202e}<&>".to_string();
    files.push(written("odd", &build(&odd).unwrap()));
    let Some(output) = python(&files) else { return };
    let said = String::from_utf8_lossy(&output.stdout);
    assert!(output.status.success(), "{said}{}", String::from_utf8_lossy(&output.stderr));
    assert_eq!(said.matches("no clause is broken").count(), NAMES.len() + 2, "{said}");
}

/// A whole job, derived from its record and signed by both keys, as the contract's reader wants it.
#[test]
fn a_signed_certificate_in_any_language_on_any_paper_breaks_no_clause() {
    let wanted = [
        ("de", "si", "local", "a4"),
        ("fr", "si", "local", "a4"),
        ("es", "si", "local", "a4"),
        ("en", "us", "local", "letter"),
        ("es", "us", "iso", "letter"),
    ];
    let mut files = vec![script("__main__.py")];
    for (language, units, dates, paper) in wanted {
        let folder = empty_folder();
        let reader = json!({ "language": language, "units": units, "dates": dates });
        // Photos are the same in every language.
        let (mut desk, repair) = Desk::with_record_for(folder.path(), paper == "letter", &reader, paper);
        let pdf = desk.certified(&repair);
        let file = lopdf::Document::load_mem(&pdf).unwrap();
        let spoken = file.catalog().unwrap().get(b"Lang").unwrap().as_str().unwrap();
        assert!(spoken.starts_with(language.as_bytes()), "{language}: {}", String::from_utf8_lossy(spoken));
        assert_eq!(size_pt(&file), if paper == "letter" { (612, 792) } else { (595, 842) });
        files.push(written(&format!("{language}-{units}-{paper}"), &pdf));
    }
    let Some(output) = python(&files) else { return };
    let said = String::from_utf8_lossy(&output.stdout);
    assert!(output.status.success(), "{said}{}", String::from_utf8_lossy(&output.stderr));
    assert_eq!(said.matches("no clause is broken").count(), wanted.len(), "{said}");
}

/// The size of the first page to the nearest point: ISO 216 has 210 × 297 mm, ANSI/ASME Y14.1 8.5 × 11 in.
fn size_pt(file: &lopdf::Document) -> (i64, i64) {
    let page = file.get_dictionary(file.get_pages()[&1]).unwrap();
    let edges: Vec<f32> =
        page.get(b"MediaBox").unwrap().as_array().unwrap().iter().map(|edge| edge.as_float().unwrap()).collect();
    ((edges[2] - edges[0]).round() as i64, (edges[3] - edges[1]).round() as i64)
}

#[test]
fn a_contract_that_refuses_attachments_gets_pdf_a_2a_without_the_record() {
    let mut content = content("unrepaired");
    content.record = Known::Absent("contract QM-2026-31 refuses attachments".into());
    let bytes = build(&content).unwrap();
    let file = lopdf::Document::load_mem(&bytes).unwrap();
    assert!(file.catalog().unwrap().get(b"AF").is_err() && file.catalog().unwrap().get(b"Names").is_err());
    let said = String::from_utf8_lossy(&bytes).into_owned();
    assert!(said.contains("<pdfaid:part>2</pdfaid:part>"));
    let Some(output) = python(&[script("__main__.py"), written("refused", &bytes)]) else { return };
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stdout));
}

#[test]
fn every_check_sees_the_clause_that_is_broken() {
    let mut small = content("rejected");
    small.photos.truncate(1);
    small.checks.truncate(2);
    let file = written("sound", &build(&small).unwrap());
    let Some(output) = python(&[script("spoiled.py"), file]) else { return };
    let said = String::from_utf8_lossy(&output.stdout);
    assert!(output.status.success(), "{said}{}", String::from_utf8_lossy(&output.stderr));
    assert!(said.contains(" 0 unseen"), "{said}");
}
