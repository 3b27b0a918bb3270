//! `mendline verify` on a certificate: sound, changed, unreadable, and what a script reads from it.

use std::path::Path;
use std::process::{Command, Output};

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use mendline_core::door::App;
use mendline_core::facts::Sensed;
use mendline_tests::{copied, empty_folder, envelope, mendline, rehearsal};
use serde_json::{Value, json};

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

#[test]
fn the_original_photos_are_found_missing_changed_or_not_named() {
    let pdf = rehearsal().join("certificate.pdf");
    let folder = empty_folder();
    let photos = folder.path().join("photos");
    copied(&rehearsal().join("data/photos"), &photos);
    let ask = || {
        let output = verify(&pdf, &["--json", "--photos", photos.to_str().unwrap()]);
        let found: Value = serde_json::from_slice(&output.stdout).unwrap();
        let states: Vec<String> = found["originals"]["photos"]
            .as_array()
            .unwrap()
            .iter()
            .map(|one| one["state"].as_str().unwrap().into())
            .collect();
        (output.status.code(), states, found)
    };
    let (code, states, found) = ask();
    assert_eq!((code, states.iter().all(|state| state == "found")), (Some(3), true), "{found}");
    assert!(!states.is_empty() && found["originals"]["others"].as_array().unwrap().is_empty(), "{found}");

    let mut files = files_of(&photos);
    files.sort();
    std::fs::remove_file(&files[1]).unwrap();
    let (code, states, found) = ask();
    assert_eq!(code, Some(3), "a photo that is missing says nothing about the certificate: {found}");
    assert_eq!(states.iter().filter(|state| *state == "missing").count(), 1, "{found}");

    let spoiled = &files[0];
    let mut bytes = std::fs::read(spoiled).unwrap();
    *bytes.last_mut().unwrap() ^= 1;
    std::fs::write(spoiled, bytes).unwrap();
    // Broken, and of nobody.
    std::fs::write(photos.join("holiday.jpg"), b"\xff\xd8\xff\xe1\xff\xffExif\0\0").unwrap();
    let (code, states, found) = ask();
    assert_eq!(code, Some(1), "{found}");
    let count = |wanted: &str| states.iter().filter(|state| *state == wanted).count();
    assert_eq!((count("changed"), count("missing"), count("found")), (1, 1, states.len() - 2), "{found}");
    assert_eq!(found["originals"]["others"], serde_json::json!(["holiday.jpg"]));
    assert_eq!(code_of_photos(&pdf, &folder.path().join("nowhere")), Some(2));
}

/// The screen brings the photos after the certificate, one by one; the same search looks at them.
#[test]
fn the_screen_compares_the_photos_that_are_brought_to_it() {
    let folder = empty_folder();
    let mut app = App::open(folder.path()).unwrap();
    let pdf = std::fs::read(rehearsal().join("certificate.pdf")).unwrap();
    let mut asked = 0;
    let mut ask = |request: Value| -> Value {
        asked += 1;
        let said = app.handle(&envelope(&asked.to_string(), request), &Sensed::default());
        serde_json::from_str(&said).unwrap()
    };
    let checked = ask(json!({ "do": "check_record", "name": "c.pdf", "bytes": STANDARD.encode(pdf) }));
    let head = checked["ok"]["head"].as_str().unwrap().to_owned();
    assert_eq!(checked["ok"]["originals"], Value::Null);
    let mut bring = |head: &str, name: &str, bytes: &[u8]| {
        let piece =
            json!({ "do": "bring", "name": name, "of": bytes.len(), "from": 0, "bytes": STANDARD.encode(bytes) });
        assert_eq!(ask(piece)["ok"]["here"], bytes.len());
        ask(json!({ "do": "check_original", "head": head, "name": name, "of": bytes.len() }))
    };
    assert_eq!(bring("00", "a.jpg", b"a")["error"]["code"], "check_first");
    let mut last = bring(&head, "holiday.jpg", b"nobody's");
    assert_eq!(last["ok"]["finding"], "rehearsal", "photos that are still to come say nothing about the certificate");
    let photos = files_of(&rehearsal().join("data/photos"));
    let named = photos[0].file_name().unwrap().to_string_lossy().into_owned();
    last = bring(&head, &named, b"painted over");
    assert_eq!(last["ok"]["finding"], "changed", "{last}");
    let looked = last["ok"]["looked"].as_array().unwrap();
    let wrong: Vec<_> = looked.iter().filter(|look| look["right"] == false).map(|look| &look["at"]).collect();
    assert_eq!(wrong, ["originals"], "the file itself stands");
    for path in photos {
        let name = path.file_name().unwrap().to_string_lossy().into_owned();
        last = bring(&head, &name, &std::fs::read(&path).unwrap());
    }
    let originals = &last["ok"]["originals"];
    let photos = originals["photos"].as_array().unwrap();
    assert!(!photos.is_empty() && photos.iter().all(|photo| photo["state"] == "found"), "{originals}");
    assert_eq!((&originals["others"], &last["ok"]["finding"]), (&json!(["holiday.jpg"]), &json!("rehearsal")));
    assert!(!folder.path().join("arriving").exists(), "nothing that was brought stays");
}

/// A photo of fifty million pixels is hashed and read as it is, never unfolded.
#[test]
fn a_photo_of_fifty_megapixels_that_nobody_named_is_told_apart() {
    let folder = empty_folder();
    // A JPEG head that promises 8660 × 5774 points, and nothing behind it (ITU-T T.81, B.2.2).
    let (high, wide) = (5_774_u16.to_be_bytes(), 8_660_u16.to_be_bytes());
    let frame = [&b"\xff\xd8\xff\xc0\0\x0b\x08"[..], &high, &wide, b"\x01\x01\x11\0"].concat();
    std::fs::write(folder.path().join("vast.jpg"), frame).unwrap();
    let said = verify(&rehearsal().join("certificate.pdf"), &["--photos", folder.path().to_str().unwrap()]);
    let text = String::from_utf8_lossy(&said.stdout);
    assert_eq!(said.status.code(), Some(3), "{text}");
    assert!(text.contains("not named in the record: vast.jpg") && text.contains("photo MISSING"), "{text}");
    assert!(text.contains(" photos in the record: 0 found, 0 changed, "), "{text}");
}

fn code_of_photos(file: &Path, folder: &Path) -> Option<i32> {
    verify(file, &["--photos", folder.to_str().unwrap()]).status.code()
}

fn files_of(folder: &Path) -> Vec<std::path::PathBuf> {
    let entries = std::fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path());
    entries.flat_map(|path| if path.is_dir() { files_of(&path) } else { vec![path] }).collect()
}
