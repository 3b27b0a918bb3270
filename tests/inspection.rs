//! `mendline inspection` prints a whole file or nothing.

use std::path::{Path, PathBuf};
use std::process::{Command, Output};

use mendline_tests::{empty_folder, mendline};
use serde_json::Value;

fn inspection(file: &Path, more: &[&str]) -> Output {
    Command::new(mendline()).arg("inspection").arg(file).args(more).output().unwrap()
}

fn sample(name: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../fixtures/inspections").join(name)
}

fn json(file: &Path) -> Value {
    let output = inspection(file, &["--json"]);
    assert!(output.status.success());
    serde_json::from_slice(&output.stdout).unwrap()
}

#[test]
fn a_broken_file_ends_with_2_and_its_line_on_the_error_stream() {
    for more in [&["--json"][..], &[]] {
        let output = inspection(&sample("broken/clock-13.txt"), more);
        assert_eq!((output.status.code(), output.stdout.len()), (Some(2), 0));
        let says = String::from_utf8(output.stderr).unwrap();
        assert!(says.contains("clock-13.txt: line 11: expected a clock hour from 1 to 12, found 13"), "{says}");
    }
}

#[test]
fn a_file_that_is_not_there_ends_with_2() {
    let folder = empty_folder();
    for file in [folder.path().join("none.txt"), folder.path().to_path_buf()] {
        let output = inspection(&file, &["--json"]);
        assert_eq!((output.status.code(), output.stdout.len()), (Some(2), 0));
        assert!(!output.stderr.is_empty());
    }
}

#[test]
fn the_json_of_the_demo_file_holds_the_crack_of_kettle_row() {
    let file = json(&sample("quillmere.txt"));
    let line = &file["inspections"][0];
    assert_eq!((&line["line"], &line["length_m"]), (&"SS-03107".into(), &38.4.into()));
    let crack = &line["observations"][3];
    assert_eq!(
        (&crack["code"], &crack["station_m"], &crack["continuous"]),
        (&"BAB".into(), &7.12.into(), &"A1".into())
    );
    assert_eq!((&crack["clock_from"], &crack["clock_to"]), (&11.into(), &1.into()));
}

/// Source: example_13508_2.txt of the R package kwb.en13508.2. Skipped where it does not lie beside the checkout.
#[test]
fn the_json_of_the_real_example_is_whole() {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../shared/en13508/example_13508_2.txt");
    if !path.exists() {
        println!("skipped: no example file beside the checkout");
        return;
    }
    let file = json(&path);
    let inspections = file["inspections"].as_array().unwrap();
    let rows: usize = inspections.iter().map(|i| i["observations"].as_array().unwrap().len()).sum();
    assert_eq!((inspections.len(), rows), (19, 335));
}

#[test]
fn the_list_shows_every_line_with_both_distances() {
    let output = inspection(&sample("quillmere.txt"), &[]);
    let list = String::from_utf8(output.stdout).unwrap();
    assert!(list.starts_with("7 inspections, 61 observations\n"), "{list}");
    for expected in ["Line SS-03107, Kettle Row 8–10", "7.12          31.28  BAB B A    Crack, lengthwise"] {
        let squeezed = |text: &str| text.split_whitespace().collect::<Vec<_>>().join(" ");
        assert!(squeezed(&list).contains(&squeezed(expected)), "{expected}");
    }
}

/// Rehearses the whole job on a file; returns what `verify` answers to the certificate.
fn rehearsed(file: &Path) -> Option<i32> {
    let folder = empty_folder();
    let out = folder.path().join("out");
    let demo =
        Command::new(mendline()).arg("demo").arg("--out").arg(&out).arg("--inspection").arg(file).output().unwrap();
    assert!(demo.status.success(), "{}: {}", file.display(), String::from_utf8_lossy(&demo.stderr));
    Command::new(mendline()).arg("verify").arg(out.join("certificate.pdf")).output().unwrap().status.code()
}

#[test]
fn the_job_is_rehearsed_on_any_file_with_a_defect_that_can_be_mended() {
    for name in ["tallow-street-latin-1.txt", "gannet-steps.xml"] {
        assert_eq!(rehearsed(&sample(name)), Some(3), "{name}");
    }
}

// Its first line is DN 400 and has no material: a slower resin, a longer hold, and something to be typed.
#[test]
fn the_job_is_rehearsed_on_the_example_of_others() {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../shared/en13508/example_13508_2.txt");
    if !path.exists() {
        println!("skipped: the shared example is not beside this repository");
        return;
    }
    assert_eq!(rehearsed(&path), Some(3));
}
