//! `mendline verify` on a certificate: sound, changed, unreadable, and what a script reads from it.

use std::path::Path;
use std::process::{Command, Output};

use mendline_tests::{empty_folder, mendline, rehearsal};
use serde_json::Value;

fn verify(file: &Path, more: &[&str]) -> Output {
    Command::new(mendline()).arg("verify").arg(file).args(more).output().unwrap()
}

fn code(file: &Path) -> Option<i32> {
    verify(file, &[]).status.code()
}

#[test]
fn the_rehearsal_shows_two_sound_signatures_and_is_no_record() {
    let output = verify(&rehearsal().join("certificate.pdf"), &["--json"]);
    let found: Value = serde_json::from_slice(&output.stdout).unwrap();
    assert_eq!(output.status.code(), Some(3), "{found}");
    let signatures = found["signatures"].as_array().unwrap();
    let roles: Vec<_> = signatures.iter().map(|one| (one["role"].as_str(), one["name"].as_str())).collect();
    assert_eq!(roles, [(Some("technician"), Some("Tomas Ekdal")), (Some("foreman"), Some("Ines Varga"))]);
    assert!(signatures.iter().all(|one| one["intact"] == true && one["trust"] == "rehearsal"), "{found}");
    let looked = found["looked"].as_array().unwrap();
    assert_eq!(looked.len(), 8, "{found}");
    assert!(looked.iter().all(|look| look["right"] == true), "{found}");
}

#[test]
fn each_change_of_the_file_ends_with_one_and_what_is_no_certificate_with_two() {
    let folder = empty_folder();
    let pdf = std::fs::read(rehearsal().join("certificate.pdf")).unwrap();
    let changed = folder.path().join("changed.pdf");
    let middle = pdf.len() / 2;
    for spoil in [|pdf: &mut Vec<u8>, middle: usize| pdf[middle] ^= 1, |pdf: &mut Vec<u8>, _| pdf.push(b'\n')] {
        let mut bytes = pdf.clone();
        spoil(&mut bytes, middle);
        std::fs::write(&changed, bytes).unwrap();
        assert_eq!(code(&changed), Some(1), "{}", String::from_utf8_lossy(&verify(&changed, &[]).stdout));
    }
    // Without its end a PDF can't be read at all.
    std::fs::write(&changed, &pdf[..pdf.len() - 1]).unwrap();
    assert_eq!(code(&changed), Some(2));
    std::fs::write(&changed, "a letter").unwrap();
    assert_eq!(code(&changed), Some(2));
    assert_eq!(code(&folder.path().join("absent.pdf")), Some(2));
    let text = folder.path().join("trust.pem");
    std::fs::write(&text, "nobody").unwrap();
    let said = verify(&rehearsal().join("certificate.pdf"), &["--trust", text.to_str().unwrap()]);
    assert_eq!(said.status.code(), Some(2));
}
