//! What can't be planned, said as rules with their values and a way out.

use super::super::super::answer::Value;
use super::super::super::plan::{Closure, ReadingPointKind};
use super::super::NoteCode;
use super::*;

fn number(proposal: &Proposal, rule: Rule, key: &str) -> i64 {
    let broken = proposal.breaks.iter().find(|broken| broken.rule == rule).unwrap();
    match broken.values.get(key) {
        Some(Value::Number(number)) => *number,
        other => panic!("{rule:?} has no number {key}: {other:?}"),
    }
}

#[test]
fn too_warm_is_no_go_with_a_way_out_from_all_three_temperatures() {
    // Worked by hand, ln t against 1/T, 30 min at 20 °C, 20 min at 25 °C: 21 min 39 s at 24 °C, 27 min 37 s at 21.0 °C,
    // 27 min 24 s at 21.1 °C, 24 min 27 s at 22.5 °C. Needed 27 min 30 s, so 5 min 51 s short.
    let proposal = proposed(&PlanChoice { temperatures: temperatures(24.0, 22.5, 12.0), ..choice() });
    assert_eq!(rules(&proposal), [Rule::NoTime]);
    assert!(proposal.plan.is_some());
    assert_eq!(number(&proposal, Rule::NoTime, "short_ms"), (5 * 60 + 51) * 1000);
    let ways = ways_out(&proposal, Rule::NoTime);
    assert_eq!(ways[0], "Resin, air and pipe all at 21 °C or colder: that gives 27 min 37 s.");
    assert!(ways[1].starts_with("Cooling the resin alone gives 24 min 2"), "{ways:?}");
    assert!(ways[1].ends_with("s short.") && ways[1].contains("because the air is at 22.5 °C"));
    assert_eq!(ways[2], "On the shelf, a resin that fits: Q45.");
    // The same numbers as data, for the drawing; the sentence holds them all.
    let said = &proposal.breaks[0];
    assert_eq!(said.ways_out[0].values.get("enough_mc"), Some(&Value::Number(21_000)));
    assert_eq!(said.way_out, ways.join(" "));
    assert!(!said.waivable);
}

#[test]
fn when_only_the_resin_is_too_warm_cooling_it_is_enough() {
    let proposal = proposed(&PlanChoice { temperatures: temperatures(24.0, 12.0, 12.0), ..choice() });
    assert_eq!(ways_out(&proposal, Rule::NoTime).len(), 2);
}

#[test]
fn outside_the_sheet_is_refused_and_names_who_covers_it() {
    let cold = proposed(&PlanChoice { temperatures: temperatures(6.0, 6.0, 6.0), ..choice() });
    assert_eq!(rules(&cold), [Rule::OutsideSheet]);
    assert_eq!(number(&cold, Rule::OutsideSheet, "limit_mc"), 8_000);
    assert!(cold.plan.is_none());
    let pipe_too_cold = PlanChoice { resin: "K90".into(), temperatures: temperatures(18.0, 15.0, 12.0), ..choice() };
    let proposal = proposed(&pipe_too_cold);
    assert_eq!(number(&proposal, Rule::OutsideSheet, "limit_mc"), 15_000);
    assert_eq!(ways_out(&proposal, Rule::OutsideSheet), ["On the shelf, a resin that fits: Q30, Q45."]);
    // Place, bands and pressures don't depend on the resin's times: they are shown all the same.
    let parts = proposal.parts;
    assert!(parts.place.is_some() && parts.bound.is_some() && parts.pressed.is_some() && parts.timed.is_none());
}

#[test]
fn a_batch_above_the_sheet_is_refused_and_may_be_split() {
    let mut heavy = choice();
    (heavy.patch, heavy.packer) = ("G1050-200-1000".into(), "P-08".into());
    let proposal = proposed(&heavy);
    assert_eq!(rules(&proposal), [Rule::BatchTooLarge]);
    // 2.03 kg, up to 2 kg.
    assert_eq!(ways_out(&proposal, Rule::BatchTooLarge)[0], "Mix it in 2 batches, one after the other.");
    heavy.batches = 2;
    let split = proposed(&heavy);
    assert_eq!(rules(&split), []);
    assert!(split.notes.iter().any(|note| note.code == NoteCode::Batches));
}

#[test]
fn an_empty_window_is_refused_and_says_how_high_the_water_may_stand() {
    // Worked by hand: 0.90 + 6 m × 0.0980665 = 1.4884, up to 1.49 bar, above 1.40. 0.50 bar / 0.0980665 = 5.098, down to 5.09 m.
    let proposal = proposed(&PlanChoice { head_um: mm(6000.0), ..choice() });
    assert_eq!(rules(&proposal), [Rule::WindowEmpty]);
    assert_eq!(number(&proposal, Rule::WindowEmpty, "lower_pa"), 149_000);
    assert_eq!(ways_out(&proposal, Rule::WindowEmpty), ["Groundwater lowered to 5.09 m above the invert or less."]);
    assert_eq!(rules(&proposed(&PlanChoice { head_um: mm(5090.0), ..choice() })), []);
}

#[test]
fn packer_and_patch_that_do_not_fit_the_pipe_are_departures() {
    let proposal = proposed(&PlanChoice { packer: "P-11".into(), patch: "G1050-225-600".into(), ..choice() });
    assert_eq!(rules(&proposal), [Rule::DiameterOutsidePacker, Rule::DiameterOutsidePatch]);
    assert!(proposal.plan.is_some());
    assert_eq!(ways_out(&proposal, Rule::DiameterOutsidePacker), ["On the shelf, a packer that fits: P-07, P-08."]);
}

#[test]
fn too_little_bare_end_and_a_patch_longer_than_the_packer() {
    // (1000 − 800) / 2 = 100 mm, 150 asked.
    let bare = PlanChoice { patch: "G1050-200-800".into(), ..choice() };
    let proposal = proposed(&bare);
    assert_eq!(rules(&proposal), [Rule::BareEndShort]);
    assert_eq!(number(&proposal, Rule::BareEndShort, "least_um"), 100_000);
    assert_eq!(ways_out(&proposal, Rule::BareEndShort), ["On the shelf, a packer that fits: P-08."]);
    let mut shelf = shelf();
    shelf.packers.iter_mut().for_each(|packer| packer.body_um = mm(700.0));
    let long = propose(&line(), &defect(7120.0, 7400.0), &bare, &shelf.view(), NOW_MS);
    assert_eq!(rules(&long), [Rule::PatchLongerThanPacker]);
}

#[test]
fn rigid_rods_from_the_street_need_somebody_below_or_a_straight_cleanout() {
    let street = PlanChoice { below: " ".into(), ..choice() };
    assert_eq!(rules(&proposed(&street)), [Rule::RodsDontTurn]);
    let mut cleanout = street.clone();
    cleanout.reading_point.kind = ReadingPointKind::CleanoutCap;
    assert_eq!(rules(&proposed(&cleanout)), []);
    cleanout.reading_point.riser_um = mm(1200.0);
    assert_eq!(rules(&proposed(&cleanout)), [Rule::RodsDontTurn]);
    let mut bend = choice();
    (bend.reading_point.bends, bend.reading_point.bends_um) = (1, mm(200.0));
    assert_eq!(rules(&proposed(&bend)), [Rule::RodsDontTurn]);
    assert_eq!(rules(&proposed(&PlanChoice { way_in: WayIn::Hose, ..bend })), []);
    assert_eq!(rules(&proposed(&PlanChoice { way_in: WayIn::Rope, ..street })), []);
}

#[test]
fn a_cleanout_with_riser_and_bends_lengthens_the_path() {
    // 7.257 − (−0.250) + 1.800 + 0.120 m.
    let mut cap = PlanChoice { way_in: WayIn::Hose, ..choice() };
    cap.reading_point = ReadingPoint {
        kind: ReadingPointKind::CleanoutCap,
        offset_um: mm(-250.0),
        riser_um: mm(1800.0),
        bends_um: mm(120.0),
        bends: 2,
    };
    assert_eq!(proposed(&cap).plan.unwrap().computed.mark.path_um, mm(9427.0));
}

#[test]
fn rods_without_a_length_are_refused() {
    assert_eq!(rules(&proposed(&PlanChoice { rod_um: mm(0.0), ..choice() })), [Rule::BadValue]);
}

#[test]
fn a_membrane_stays_out_of_bends_and_a_patch_too_short_to_bind_is_told_the_length() {
    let mut felt = PlanChoice { patch: "F900-200-600".into(), way_in: WayIn::Hose, ..choice() };
    felt.reading_point.bends = 1;
    assert_eq!(rules(&proposed(&felt)), [Rule::MembraneInBend]);
    let mut shelf = shelf();
    let patch = shelf.patches.iter_mut().find(|patch| patch.id == "G1050-200-600").unwrap();
    // 2 × 12.7 + 7 × 40 = 305.4 mm, and with 100 mm apart 725.4 mm.
    patch.binding.apart_um = mm(100.0);
    let proposal = propose(&line(), &defect(7120.0, 7400.0), &choice(), &shelf.view(), NOW_MS);
    assert_eq!(rules(&proposal), [Rule::TooShortToBind]);
    assert_eq!(number(&proposal, Rule::TooShortToBind, "needed_um"), 725_400);
}

#[test]
fn a_patch_that_reaches_out_of_the_pipe_is_refused() {
    // 0.650 − 0.300 m lies 50 mm before the mouth at 0.400 m; the packer reaches 250 mm out.
    let proposal = proposed(&PlanChoice { centre_um: Some(mm(650.0)), ..choice() });
    assert_eq!(number(&proposal, Rule::PatchOutsideLine, "out_um"), 50_000);
    let near = propose(
        &line(),
        &defect(700.0, 740.0),
        &PlanChoice { centre_um: Some(mm(720.0)), ..choice() },
        &shelf().view(),
        NOW_MS,
    );
    let note = near.notes.iter().find(|note| note.code == NoteCode::PackerOut).unwrap();
    // 0.720 − 0.500 = 0.220 m, 180 mm before the mouth.
    assert!(note.says.contains("180 mm out of the pipe at MH 031"), "{}", note.says);
}

#[test]
fn what_is_not_chosen_is_asked_for_and_nothing_is_made_up() {
    let proposal = proposed(&PlanChoice::default());
    let mut expected = vec![Rule::ChoiceMissing; 8];
    expected.push(Rule::TemperaturesMissing);
    assert_eq!(rules(&proposal), expected);
    assert!(proposal.plan.is_none());
    assert_eq!(proposal.parts, super::super::Parts::default());
}

#[test]
fn every_broken_rule_has_a_way_out() {
    let asked = [
        PlanChoice::default(),
        PlanChoice { temperatures: temperatures(24.0, 22.5, 12.0), ..choice() },
        PlanChoice { below: String::new(), ..choice() },
        PlanChoice { head_um: mm(6000.0), ..choice() },
        PlanChoice { centre_um: Some(mm(650.0)), ..choice() },
    ];
    for choice in asked {
        let proposal = proposed(&choice);
        for rule in rules(&proposal) {
            assert!(ways_out(&proposal, rule).iter().all(|says| !says.is_empty()), "{rule:?}");
            assert!(!ways_out(&proposal, rule).is_empty(), "{rule:?}");
        }
    }
}

#[test]
fn a_closure_that_ends_before_the_hold_would_is_a_note() {
    // Wet-out 12:00 + loaded push 6:30 + connect 4:00 + hold 59:00 = 81:30 after now.
    let closing = |after_ms: i64| {
        let closures = vec![Closure { what: "Lane closure".into(), until_ms: NOW_MS + after_ms }];
        proposed(&PlanChoice { closures, ..choice() })
    };
    let minutes_81_30 = (81 * 60 + 30) * 1000;
    assert!(closing(minutes_81_30).notes.iter().all(|note| note.code != NoteCode::ClosureEnds));
    let early = closing(minutes_81_30 - 60_000);
    let note = early.notes.iter().find(|note| note.code == NoteCode::ClosureEnds).unwrap();
    assert!(note.says.starts_with("Lane closure ends 1 min 00 s before the hold would."), "{}", note.says);
    assert_eq!(early.breaks, []);
}

#[test]
fn a_clock_from_and_to_the_same_hour_is_asked() {
    let mut defect = defect(7120.0, 7400.0);
    defect.observations[0].around = Around::Between { from: 12, to: 12 };
    let proposal = propose(&line(), &defect, &choice(), &shelf().view(), NOW_MS);
    let note = proposal.notes.iter().find(|note| note.code == NoteCode::ClockSameHour).unwrap();
    assert_eq!(note.says, "BAB B A runs from 12 to 12 o’clock: all round, or one spot?");
}

#[test]
fn a_lateral_of_unknown_bore_counts_as_wide_as_the_pipe() {
    let mut line = line();
    // 7.650 − 0.0995 = 7.5505 m lies within the patch's end at 7.557 m.
    line.laterals = vec![Lateral { station_um: mm(7650.0), clock: 0, diameter_um: mm(0.0) }];
    let proposal = propose(&line, &defect(7120.0, 7400.0), &choice(), &shelf().view(), NOW_MS);
    assert!(proposal.notes.iter().any(|note| note.code == NoteCode::LateralBoreUnknown));
    assert_eq!(proposal.plan.unwrap().computed.covered, [0]);
}
