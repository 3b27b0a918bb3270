//! A defect that is too long for one patch.

use super::super::{NoteCode, suggest};
use super::*;

/// DN 100, where the longest patch of the shelf has 600 mm.
fn small() -> Line {
    Line { height_um: mm(100.0), laterals: vec![], ..line() }
}

fn long() -> (Line, Defect, PlanChoice) {
    let (line, defect) = (small(), defect(10_000.0, 11_000.0));
    let choice =
        PlanChoice { temperatures: temperatures(15.0, 12.0, 12.0), ..suggest(&line, &defect, &shelf().view()) };
    (line, defect, choice)
}

#[test]
fn three_patches_overlap_over_a_metre() {
    // Worked by hand: errors 0.2 % × 10.5 m = 21, + 10 + 4 = 35 mm; asked 1000 + 2 × (100 + 35) = 1270 mm. Overlap 100 + 2 × 10 =
    // 120 mm, so each further patch adds 480: (1270 − 120) / 480 = 2.4, so 3, with their centres at 10.020, 10.500, 10.980 m.
    let (line, defect, choice) = long();
    let proposal = propose(&line, &defect, &choice, &shelf().view(), NOW_MS);
    assert_eq!(proposal.breaks, []);
    assert!(proposal.notes.iter().any(|note| note.code == NoteCode::Series && note.says.contains("repair of its own")));
    let place = proposal.parts.place.unwrap();
    let centres: Vec<_> = place.patches.iter().map(|patch| patch.centre()).collect();
    assert_eq!(centres, [10_020.0, 10_500.0, 10_980.0].map(mm));
    // 10.000 − 9.720 − 0.035 m.
    assert_eq!((place.cover.upstream_um, place.cover.downstream_um), (mm(245.0), mm(245.0)));
    assert_eq!(place.mark.path_um, mm(10_020.0));
}

#[test]
fn the_next_repair_places_the_next_patch() {
    let (line, defect, choice) = long();
    let next =
        |series_done| propose(&line, &defect, &PlanChoice { series_done, ..choice.clone() }, &shelf().view(), NOW_MS);
    let second = next(1).parts.place.unwrap();
    assert_eq!((second.patches.len(), second.in_series, second.from_upstream_um), (2, 3, mm(10_500.0)));
    assert_eq!(rules(&next(3)), [Rule::BadValue]);
}

#[test]
fn a_patch_that_is_too_short_alone_names_the_longer_one_and_the_series() {
    let short = PlanChoice { in_series: false, patch: "G1050-200-400".into(), centre_um: None, ..choice() };
    let proposal = proposed(&short);
    assert_eq!(rules(&proposal), [Rule::CoverShort]);
    // 280 + 2 × (100 + 29) = 538 mm; two of 400 mm with 120 mm overlap reach 680.
    let ways = ways_out(&proposal, Rule::CoverShort);
    assert_eq!(ways[0], "A patch of 538 mm or more, centred on the defect.");
    assert!(ways.contains(&"2 patches of 400 mm in series, each a repair of its own."), "{ways:?}");
    assert!(ways.last().unwrap().contains("G1050-200-600"));
}

#[test]
fn a_centre_set_by_hand_stands_alone() {
    let (line, defect, choice) = long();
    let alone = PlanChoice { centre_um: Some(mm(10_500.0)), ..choice };
    let proposal = propose(&line, &defect, &alone, &shelf().view(), NOW_MS);
    assert_eq!(rules(&proposal), [Rule::CoverShort]);
    assert_eq!(proposal.plan.unwrap().computed.patches.len(), 1);
}
