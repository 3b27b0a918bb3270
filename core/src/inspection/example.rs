//! The real example file of the R package kwb.en13508.2 (MIT), checked row by row against the csv crate.
//!
//! Source: <https://github.com/KWB-R/kwb.en13508.2>, example_13508_2.txt: 335 observations
//! in 19 inspections, of which 18 end with `#Z` and the last ends with the file.
//! The file is not part of this project: without it beside the checkout, these tests say so and pass.

use super::*;
use std::path::Path;

fn example() -> Option<Vec<u8>> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../shared/en13508/example_13508_2.txt");
    let bytes = std::fs::read(&path).ok();
    if bytes.is_none() {
        println!("skipped: no example file beside the checkout");
    }
    bytes
}

#[test]
fn all_inspections_and_observations_arrive() {
    let Some(bytes) = example() else { return };
    let file = read(&bytes).unwrap();
    assert_eq!(file.inspections.len(), 19);
    assert_eq!(file.inspections.iter().map(|i| i.observations.len()).sum::<usize>(), 335);
    let codes: Vec<NoticeCode> = file.notices.iter().map(|n| n.code).collect();
    assert_eq!(codes, [NoticeCode::NoEndMark]);
}

#[test]
fn every_cell_is_what_another_reader_reads() {
    let Some(bytes) = example() else { return };
    let file = read(&bytes).unwrap();
    let lines: Vec<&str> = std::str::from_utf8(&bytes).unwrap().lines().collect();
    for o in file.inspections.iter().flat_map(|i| &i.observations) {
        let line = lines[o.source_line as usize - 1];
        let record = csv::ReaderBuilder::new().has_headers(false).from_reader(line.as_bytes()).records().next();
        let record = record.unwrap().unwrap();
        let said = |text: &Option<String>| text.clone().unwrap_or_default();
        let written = |q: &Option<Quantification>| q.as_ref().map_or_else(String::new, |q| q.as_written.clone());
        let hour = |c: Option<Clock>| c.map_or_else(String::new, |c| c.to_string());
        let joint = if o.at_joint == Some(true) { "A" } else { "" };
        // The file's own order of columns: I, N, A, B, C, D, G, H, K, F, M, J.
        let read = [
            o.station_um.unwrap().as_m().to_string(),
            said(&o.video),
            o.code.clone(),
            said(&o.char1),
            said(&o.char2),
            written(&o.quant1),
            hour(o.clock_from),
            hour(o.clock_to),
            joint.to_owned(),
            said(&o.remark),
            said(&o.photo),
            said(&o.continuous),
        ];
        assert_eq!(read.iter().map(String::as_str).collect::<Vec<_>>(), record.iter().collect::<Vec<_>>());
    }
}

#[test]
fn the_other_end_is_where_the_camera_arrives() {
    let Some(bytes) = example() else { return };
    for inspection in read(&bytes).unwrap().inspections {
        let node = |code| inspection.observations.iter().find(|o| o.code == code).and_then(|o| o.quant1.clone());
        assert_eq!(inspection.start_node, node("BCD").map(|q| q.as_written));
        assert_eq!(inspection.end_node, node("BCE").map(|q| q.as_written));
    }
}
