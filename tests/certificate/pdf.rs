//! The file: the same bytes each time, sound for qpdf, MuPDF and Poppler, readable as text.
//!
//! A check by a tool that is not installed is skipped, and says so.

use super::{NAMES, content, sha256};
use mendline_core::certificate::{self, Content};
use std::path::{Path, PathBuf};
use std::process::{Command, Output};
use std::sync::atomic::{AtomicUsize, Ordering};

fn folder() -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("certificates");
    std::fs::create_dir_all(&folder).unwrap();
    folder
}

/// Writes a certificate into the folder for temporary files and returns its path.
fn file(name: &str, content: &Content) -> PathBuf {
    static WRITTEN: AtomicUsize = AtomicUsize::new(0);
    let number = WRITTEN.fetch_add(1, Ordering::Relaxed);
    let path = folder().join(format!("{name}.pdf"));
    // Tests run side by side: a file is there whole, or not at all.
    let fresh = folder().join(format!("{name}-{number}.new"));
    std::fs::write(&fresh, certificate::build(content).unwrap()).unwrap();
    std::fs::rename(fresh, &path).unwrap();
    path
}

/// Returns what a tool says about the arguments, or `None` if it is not installed.
fn run(tool: &str, arguments: &[&str]) -> Option<Output> {
    match Command::new(tool).args(arguments).output() {
        Ok(output) => Some(output),
        Err(error) if error.kind() == std::io::ErrorKind::NotFound => {
            println!("skipped: {tool} is not installed");
            None
        }
        Err(error) => panic!("{tool}: {error}"),
    }
}

fn said(output: &Output) -> String {
    format!("{}{}", String::from_utf8_lossy(&output.stdout), String::from_utf8_lossy(&output.stderr))
}

fn text(path: &Path) -> Option<String> {
    let path = path.to_str().unwrap();
    run("pdftotext", &["-raw", path, "-"]).map(|output| String::from_utf8(output.stdout).unwrap())
}

#[test]
fn the_same_content_gives_the_same_bytes() {
    for name in NAMES {
        let content = content(name);
        assert!(certificate::build(&content).unwrap() == certificate::build(&content).unwrap(), "{name}");
    }
}

#[test]
fn another_content_gives_another_identifier() {
    let first = content("unrepaired");
    let mut second = first.clone();
    second.answers[0].first.push('.');
    let id = |content| {
        let bytes = certificate::build(&content).unwrap();
        lopdf::Document::load_mem(&bytes).unwrap().trailer.get(b"ID").unwrap().clone()
    };
    assert_ne!(id(first), id(second));
}

#[test]
fn qpdf_finds_no_fault() {
    for name in NAMES {
        let path = file(name, &content(name));
        let Some(output) = run("qpdf", &["--check", path.to_str().unwrap()]) else { return };
        assert!(output.status.success(), "{name}: {}", said(&output));
        assert!(!said(&output).to_lowercase().contains("warning"), "{name}: {}", said(&output));
    }
}

#[test]
fn mupdf_draws_every_page_without_a_word() {
    for name in NAMES {
        let path = file(name, &content(name));
        let Some(output) =
            run("mutool", &["draw", "-q", "-r", "30", "-F", "png", "-o", "/dev/null", path.to_str().unwrap()])
        else {
            return;
        };
        // Debian builds MuPDF without colour management, and it says so for every file with a profile.
        let words = said(&output);
        let complaints: Vec<&str> =
            words.lines().filter(|line| !line.contains("ICC support is not available")).collect();
        assert!(output.status.success() && complaints.is_empty(), "{name}: {complaints:?}");
    }
}

#[test]
fn every_font_is_embedded_reduced_and_readable_as_text() {
    let path = file("accepted", &content("accepted"));
    let Some(output) = run("pdffonts", &[path.to_str().unwrap()]) else { return };
    let listing = said(&output);
    let fonts: Vec<&str> = listing.lines().skip(2).collect();
    assert_eq!(fonts.len(), 2, "{listing}");
    for font in fonts {
        assert!(font.contains("DejaVuSansCondensed") && font.contains("yes yes yes"), "{font}");
        assert_eq!(font.find('+'), Some(6), "{font}");
    }
}

#[test]
fn poppler_reads_title_pages_and_tags() {
    for (name, title, pages) in [
        ("accepted", "Sectional repair certificate K3F-0147", 5),
        ("rehearsal", "Rehearsal record – not a certificate K3F-R009", 5),
        ("stress", "Sectional repair certificate K3F-0163", 7),
    ] {
        let path = file(name, &content(name));
        let Some(output) = run("pdfinfo", &[path.to_str().unwrap()]) else { return };
        let info = said(&output);
        let value = |key: &str| info.lines().find_map(|line| line.strip_prefix(key)).unwrap_or_default().trim();
        assert_eq!(value("Title:"), title);
        assert_eq!(value("Pages:"), pages.to_string());
        assert_eq!(
            [value("Tagged:"), value("JavaScript:"), value("Encrypted:"), value("Form:")],
            ["yes", "no", "no", "AcroForm"]
        );
        assert_eq!(value("PDF version:"), "1.7");
    }
}

#[test]
fn the_text_comes_out_in_reading_order() {
    let path = file("accepted", &content("accepted"));
    let Some(text) = text(&path) else { return };
    let mut rest = text.as_str();
    for words in [
        "Sectional repair certificate",
        "ACCEPTED",
        "by the foreman, with 2 departures",
        "Which pipe",
        "SS-03107 MH 031 → MH 032",
        "Owner",
        "The line to scale",
        "Departures and what else went off the rules",
        "Signatures",
        "Tomas Ekdal",
        "Head of the record",
        "The nine stages",
        "Working time",
        "The hold",
        "All 21 readings",
        "Materials, tools and lots",
        "Computed checks",
        "Findings of the verification",
        "Other attempts",
        "Photos",
        "Cautions, and what this certificate is not",
        "End of the certificate",
    ] {
        let at = rest.find(words).unwrap_or_else(|| panic!("{words:?} is missing or out of order"));
        rest = &rest[at + words.len()..];
    }
}

#[test]
fn names_of_western_and_central_europe_survive_as_text() {
    let mut content = content("accepted");
    let names = "Łukasz Żółć, Çelik, Þórðarson, Őrsi, Dvořák, Ștefănescu";
    content.signatures[0].name = names.to_string();
    let Some(text) = text(&file("names", &content)) else { return };
    assert!(text.contains(names));
}

#[test]
fn a_photo_comes_out_of_the_file_as_it_went_in() {
    let content = content("accepted");
    let path = file("photos", &content);
    let target = folder().join("photo");
    let Some(output) = run("pdfimages", &["-j", path.to_str().unwrap(), target.to_str().unwrap()]) else { return };
    assert!(output.status.success(), "{}", said(&output));
    for (index, photo) in content.photos.iter().enumerate() {
        let bytes = std::fs::read(format!("{}-{index:03}.jpg", target.display())).unwrap();
        assert_eq!(sha256(&bytes), photo.copy.value().unwrap().sha256, "photo {}", index + 1);
    }
}

#[test]
fn the_record_comes_out_of_the_file_as_it_went_in() {
    let content = content("accepted");
    let (path, target) = (file("record", &content), folder().join("record.json"));
    let path = path.to_str().unwrap();
    let Some(listed) = run("pdfdetach", &["-list", path]) else { return };
    assert!(said(&listed).contains("1 embedded files") && said(&listed).contains("record.json"), "{}", said(&listed));
    run("pdfdetach", &["-save", "1", "-o", target.to_str().unwrap(), path]);
    let record = content.record.value().unwrap();
    assert_eq!(sha256(&std::fs::read(target).unwrap()), record.sha256);
}

#[test]
fn the_tags_say_every_part_and_every_figure() {
    let path = file("accepted", &content("accepted"));
    let Some(output) = run("pdfinfo", &["-struct-text", path.to_str().unwrap()]) else { return };
    let tree = said(&output);
    for words in ["Document", "H1 (block)", "H2 (block)", "Table", "TH", "TD", "L (block)", "LI (block)", "Form"] {
        assert!(tree.contains(words), "{words} is missing from the tree");
    }
    for words in ["Sectional repair certificate", "The hold", "Computed checks", "1.04"] {
        assert!(tree.contains(words), "{words} is missing from the tree");
    }
    assert!(!tree.contains("page 1 of"), "the footer is no content");
}

#[test]
fn only_a_rehearsal_says_so_and_says_it_on_every_page() {
    for name in NAMES {
        let Some(text) = text(&file(name, &content(name))) else { return };
        for page in text.trim_end_matches('\u{c}').split('\u{c}') {
            assert_eq!(page.contains("REHEARSAL"), name == "rehearsal", "{name}: {page}");
        }
    }
}

#[test]
fn a_page_without_a_seal_says_what_a_drawn_line_proves() {
    let mut content = content("accepted");
    content.seal = certificate::content::Seal::None;
    let Some(text) = text(&file("unsealed", &content)) else { return };
    assert!(text.contains("Not sealed by a key") && text.contains("A drawn line proves nothing"));
    assert!(!text.contains("The seal proves"));
}
