//! The first choice.

use super::super::{NoteCode, suggest};
use super::*;
use crate::procedure::line::Origin;
use crate::procedure::plan::FromNode;
use crate::shelf::ShelfView;

#[test]
fn the_crack_in_kettle_row_gets_the_shortest_patch_and_packer_that_do() {
    let found = suggest(&line(), &defect(7120.0, 7400.0), &shelf().view());
    let ids = [&found.contract, &found.method, &found.patch, &found.packer, &found.resin, &found.counter, &found.tape];
    assert_eq!(ids, ["QM-2026-31", "MS-07", "G1050-200-600", "P-07", "Q30", "C-02", "T-02"]);
    assert_eq!((found.diameter_least_um, found.diameter_measured), (mm(200.0), false));
    assert_eq!((found.way_in, found.from_node), (WayIn::Rope, FromNode::Upstream));
}

#[test]
fn the_seam_goes_away_from_the_defect_and_not_to_the_invert() {
    let seam = |around| {
        let mut defect = defect(7120.0, 7400.0);
        defect.observations[0].around = around;
        suggest(&line(), &defect, &shelf().view()).seam_hour
    };
    assert_eq!(seam(Around::Between { from: 11, to: 1 }), 5);
    assert_eq!(seam(Around::At { hour: 6 }), 12);
    assert_eq!(seam(Around::At { hour: 3 }), 9);
    assert_eq!(seam(Around::AllRound), 12);
}

#[test]
fn what_nobody_can_guess_stays_empty_and_is_named() {
    let (line, defect) = (line(), defect(7120.0, 7400.0));
    let found = suggest(&line, &defect, &shelf().view());
    assert_eq!(found.reading_point, ReadingPoint::default());
    let proposal = propose(&line, &defect, &found, &shelf().view(), NOW_MS);
    assert_eq!(rules(&proposal), [Rule::TemperaturesMissing]);
    let codes: Vec<_> = proposal.notes.iter().map(|note| note.code).collect();
    assert!(codes.contains(&NoteCode::OffsetMissing) && codes.contains(&NoteCode::DiameterNominal));
}

#[test]
fn an_empty_shelf_suggests_nothing_and_does_not_fail() {
    let found = suggest(&line(), &defect(7120.0, 7400.0), &ShelfView::default());
    assert_eq!(found.patch, "");
    assert!(propose(&line(), &defect(7120.0, 7400.0), &found, &ShelfView::default(), NOW_MS).plan.is_none());
}

#[test]
fn the_counter_s_zero_is_the_node_where_the_camera_went_in() {
    for counted_from in [FromNode::Upstream, FromNode::Downstream] {
        let origin = Origin::Inspection {
            file: "a.txt".into(),
            sha256: String::new(),
            date: String::new(),
            lines: vec![],
            counted_from,
        };
        let seen = Defect { origin, ..defect(7120.0, 7400.0) };
        assert_eq!(suggest(&line(), &seen, &shelf().view()).inspected_from, counted_from);
    }
}
