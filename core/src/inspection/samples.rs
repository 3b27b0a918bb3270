//! The sample files of `fixtures/inspections`: what the sound ones say, and how each broken one is refused.

use super::*;
use crate::units::Length;
use std::path::{Path, PathBuf};

fn folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../fixtures/inspections")
}

fn sample(name: &str) -> Result<InspectionFile, ReadError> {
    read(&std::fs::read(folder().join(name)).unwrap())
}

/// One fault a file: kind, line, and a word of what was found.
const BROKEN: &[(&str, ReadCode, u64, &str)] = &[
    ("bell.xml", ReadCode::Entity, 6, "&#7;"),
    ("clock-13.txt", ReadCode::ClockHour, 11, "13"),
    ("clock-half.txt", ReadCode::ClockHour, 11, "11.5"),
    ("clock.xml", ReadCode::ClockHour, 6, "0"),
    ("column-twice.txt", ReadCode::Column, 9, "G twice"),
    ("column-twice.xml", ReadCode::Column, 6, "<A> twice"),
    ("control-character.txt", ReadCode::ControlCharacter, 11, "U+0007"),
    ("crossed-tags.xml", ReadCode::Xml, 6, "ZC"),
    ("cut-between-rows.txt", ReadCode::CutShort, 11, "the end of the file"),
    ("cut-in-a-row.txt", ReadCode::CutShort, 12, "the end of the file"),
    ("cut.xml", ReadCode::CutShort, 6, "the end of the file"),
    ("date.txt", ReadCode::Date, 8, "2026-09-31"),
    ("direction.txt", ReadCode::Direction, 8, "downhill"),
    ("doctype.xml", ReadCode::Doctype, 2, "<!DOCTYPE"),
    ("end-missing.txt", ReadCode::OutOfOrder, 13, "#B01="),
    ("entity.xml", ReadCode::Entity, 6, "&row;"),
    ("field-twice.txt", ReadCode::Column, 7, "AAD twice"),
    ("field-two-values.txt", ReadCode::Column, 10, "SS-03108"),
    ("length.txt", ReadCode::Number, 8, "38,40"),
    ("long-separator.txt", ReadCode::FileHeader, 3, ";;"),
    ("nested.xml", ReadCode::Xml, 6, "<b>"),
    ("no-code-column.txt", ReadCode::Column, 9, "I O B"),
    ("no-code.txt", ReadCode::NoCode, 11, "nothing"),
    ("no-code.xml", ReadCode::NoCode, 6, "nothing"),
    ("no-inspection.txt", ReadCode::CutShort, 6, "the end of the file"),
    ("no-inspection.xml", ReadCode::CutShort, 4, "the end of the file"),
    ("no-separator.txt", ReadCode::FileHeader, 5, "no such line"),
    ("not-an-inspection.txt", ReadCode::NotAnInspectionFile, 1, "Stock list"),
    ("nothing.txt", ReadCode::NotAnInspectionFile, 1, "nothing"),
    ("observation-outside.xml", ReadCode::Xml, 4, "<ZC>"),
    ("outside.xml", ReadCode::Xml, 5, "stray text"),
    ("quote-goes-on.txt", ReadCode::Quote, 11, "!"),
    ("quote-open.txt", ReadCode::Quote, 11, "over the crown"),
    ("root.xml", ReadCode::NotAnInspectionFile, 2, "<INSPECTIONS>"),
    ("row-before-block.txt", ReadCode::OutOfOrder, 7, "0.00;BCD"),
    ("same-separator.txt", ReadCode::FileHeader, 5, "';'"),
    ("station-below-zero.txt", ReadCode::Number, 11, "-7.12"),
    ("station.txt", ReadCode::Number, 11, "7,12"),
    ("time.txt", ReadCode::Time, 8, "10:72"),
    ("too-many-cells.txt", ReadCode::TooManyCells, 11, "10 cells"),
    ("too-many-values.txt", ReadCode::TooManyCells, 8, "9 cells"),
    ("two-roots.xml", ReadCode::Xml, 9, "<DATA>"),
    ("values-missing.txt", ReadCode::OutOfOrder, 8, "#C="),
];

#[test]
fn every_broken_file_is_refused_with_its_line() {
    for (name, code, line, found) in BROKEN {
        let error = sample(&format!("broken/{name}")).unwrap_err();
        assert_eq!((error.code, error.line), (*code, *line), "{name}: {error}");
        assert!(error.found.contains(found), "{name}: {error}");
        assert!(!error.expected.is_empty(), "{name}");
    }
}

#[test]
fn no_broken_file_is_left_out_of_the_table() {
    let files = std::fs::read_dir(folder().join("broken")).unwrap();
    let mut names: Vec<String> = files.map(|f| f.unwrap().file_name().into_string().unwrap()).collect();
    names.sort();
    assert_eq!(names, BROKEN.iter().map(|(name, ..)| *name).collect::<Vec<_>>());
}

#[test]
fn the_demo_file_holds_the_lines_of_quillmere() {
    let file = sample("quillmere.txt").unwrap();
    assert_eq!(file.notices, []);
    let lines: Vec<_> = file.inspections.iter().map(|i| i.line.clone().unwrap()).collect();
    assert_eq!(lines, ["SS-03107", "SS-03214", "SS-03118", "SS-03122", "SS-03177", "HD-0412", "SS-03301"]);
    let kettle_row = &file.inspections[0];
    assert_eq!(kettle_row.street.as_deref(), Some("Kettle Row 8–10"));
    assert_eq!(kettle_row.length_um, Length::from_m(38.40));
    let sides: Vec<_> = kettle_row.observations.iter().filter(|o| o.code == "BCA").collect();
    let sides: Vec<_> = sides.iter().map(|o| (o.station_um.unwrap().as_m(), o.clock_from.unwrap().hour())).collect();
    assert_eq!(sides, [(4.85, 9), (7.46, 10), (19.30, 2), (31.70, 9)]);
    assert!(file.inspections.iter().all(|i| i.stretches().broken.is_empty()));
}

#[test]
fn the_crack_of_kettle_row_becomes_one_defect() {
    let file = sample("quillmere.txt").unwrap();
    let line = &file.inspections[0];
    let stretch = line.stretches().whole[0];
    let extent = combine(&[&line.observations[stretch.start], &line.observations[stretch.end]]).unwrap();
    assert_eq!((extent.from_um.as_m(), extent.to_um.as_m()), (7.12, 7.40));
    assert_eq!(extent.clock, ClockExtent::Range { from: Clock::new(11).unwrap(), to: Clock::new(1).unwrap() });
    assert_eq!(line.extent_from_upstream(&extent), Some(extent));
}

#[test]
fn a_gap_all_round_is_asked() {
    let file = sample("quillmere.txt").unwrap();
    let gannet_steps = &file.inspections[4];
    let picked: Vec<&Observation> = gannet_steps.observations[7..=10].iter().collect();
    assert_eq!(combine(&picked).unwrap().clock, ClockExtent::Ask { hour: Clock::new(12).unwrap() });
    assert_eq!(combine_answered(&picked, SameHour::AllRound).unwrap().clock, ClockExtent::AllRound);
}

#[test]
fn latin_1_with_decimal_commas_is_read() {
    let file = sample("tallow-street-latin-1.txt").unwrap();
    assert_eq!((file.language.as_deref(), file.notices.len()), (Some("de"), 0));
    let line = &file.inspections[0];
    assert_eq!(line.inspector.as_deref(), Some("Jörn Lüth"));
    assert_eq!(line.street.as_deref(), Some("Tallow Street; Nordseite"));
    assert_eq!(line.length_um, Length::from_m(46.80));
    let crack = &line.observations[2];
    assert_eq!(crack.remark.as_deref(), Some("über dem Scheitel; \"klaffend\" ab 18,60"));
    assert_eq!(crack.quant1.as_ref().and_then(Quantification::number), Some(1.5));
    assert_eq!((crack.source_line, crack.photo.as_deref()), (14, Some("7")));
    assert_eq!(line.observations[4].at_joint, Some(true));
}

#[test]
fn a_file_with_a_mark_and_its_own_order_of_columns_is_read() {
    let file = sample("lantern-lane-bom.txt").unwrap();
    assert_eq!((file.version.as_deref(), file.inspections.len()), (Some("Quillmere survey van 2"), 2));
    let line = &file.inspections[0];
    assert_eq!(line.street.as_deref(), Some("Lantern Lane, by the baker's"));
    assert_eq!(line.observations[3].remark.as_deref(), Some("silt, the owner's word: 'porridge'"));
    assert_eq!(line.observations.len(), 6);
    let against = &file.inspections[1];
    assert_eq!((against.upstream_node(), against.downstream_node()), (Some("MH 122"), Some("MH 123")));
    let broken = against.observations[0].station_um.unwrap();
    assert_eq!(against.station_from_upstream(broken), Length::from_m(13.13));
}

#[test]
fn the_xml_form_says_the_same_as_the_text_form() {
    let xml = sample("gannet-steps.xml").unwrap();
    assert_eq!((xml.form, xml.version.as_deref(), xml.notices.len()), (Form::Xml, Some("2010"), 0));
    let text = sample("quillmere.txt").unwrap();
    let (xml_line, text_line) = (&xml.inspections[0], &text.inspections[4]);
    assert_eq!(xml_line.street.as_deref(), Some("Gannet Steps 3 & 5"));
    let crack = Observation { source_line: 0, remark: None, ..xml_line.observations[1].clone() };
    assert_eq!(crack, Observation { source_line: 0, ..text_line.observations[7].clone() });
    assert_eq!(xml_line.observations[1].remark.as_deref(), Some("wider than 2 & less than 4 mm"));
    assert_eq!(xml_line.observations[2].remark.as_deref(), Some("seal “gone”, 12 < 3"));
    assert_eq!((xml_line.observations[2].source_line, xml_line.end_node.as_deref()), (29, Some("MH 078")));
    assert_eq!(xml.inspections[1].end_node.as_deref(), Some("MH 078"));
}

#[test]
fn a_file_survives_being_kept_as_json() {
    let file = sample("quillmere.txt").unwrap();
    let kept = serde_json::to_string(&file).unwrap();
    assert_eq!(serde_json::from_str::<InspectionFile>(&kept).unwrap(), file);
}
