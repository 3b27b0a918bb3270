//! Check values that crews know, each common practice, no source: the example shelf and the formulas agree with them.

use super::*;
use crate::shelf::contract::GapRule;
use crate::units::Span;

const INCH_MM: f64 = 25.4;

fn inches(values: &[f64]) -> Vec<Length> {
    values.iter().map(|value| mm(value * INCH_MM)).collect()
}

#[test]
fn a_resin_in_whole_containers_sets_in_an_hour_and_a_half_and_cures_in_four() {
    // Common practice, no source: set 1 h 30 min, full cure 4 h, mixed at least a minute, all at reference temperature.
    let warm = PlanChoice { resin: "K90".into(), temperatures: temperatures(16.0, 16.0, 15.0), ..choice() };
    let proposal = propose(&line(), &defect(7120.0, 7400.0), &warm, &shelf().view(), NOW_MS);
    let plan = proposal.plan.unwrap();
    assert_eq!(
        (plan.computed.hold_ms, plan.computed.full_cure_ms),
        (Span::from_ms(5_400_000), Span::from_ms(14_400_000))
    );
    assert!(plan.resin.mixing_least_ms.value >= Span::from_ms(60_000));
    // Whole containers: two kits of 900 g for 1218 g.
    assert_eq!(plan.computed.batch_mg.as_mg(), 1_800_000);
    assert!(proposal.notes.iter().any(|note| note.says.starts_with("2 × K90 twin pack")));
}

#[test]
fn every_resin_of_the_shelf_is_mixed_for_a_minute_at_least() {
    assert!(shelf().resins.iter().all(|resin| resin.mixing_least_ms.value >= Span::from_ms(60_000)));
}

#[test]
fn a_sleeve_reaches_an_inch_past_the_front_and_six_past_the_back_and_is_bound_every_foot() {
    // Common practice, no source. A packer of 36 in: a sleeve of 43 in, bands a foot apart.
    let mut shelf = shelf();
    let packer = shelf.packers.iter_mut().find(|packer| packer.id == "P-07").unwrap();
    packer.body_um = mm(36.0 * INCH_MM);
    let proposal = propose(&line(), &defect(7120.0, 7400.0), &choice(), &shelf.view(), NOW_MS);
    let bound = proposal.parts.bound.unwrap();
    assert_eq!(bound.sleeve_um, mm(43.0 * INCH_MM));
    assert_eq!(bound.sleeve_bands_um, inches(&[1.0, 13.0, 25.0, 37.0]));
}

#[test]
fn a_two_foot_patch_is_bound_four_times_at_each_end_and_every_four_inches_between() {
    // Common practice, no source: half an inch apart at the ends. 24 in: from 2 to 22 in are 20, so five spaces of 4.
    let mut shelf = shelf();
    let patch = shelf.patches.iter_mut().find(|patch| patch.id == "G1050-200-600").unwrap();
    patch.length_um = mm(24.0 * INCH_MM);
    let proposal = propose(&line(), &defect(7120.0, 7400.0), &choice(), &shelf.view(), NOW_MS);
    let bands = inches(&[0.5, 1.0, 1.5, 2.0, 6.0, 10.0, 14.0, 18.0, 22.0, 22.5, 23.0, 23.5]);
    assert_eq!(proposal.parts.bound.unwrap().patch_bands_um, bands);
}

#[test]
fn the_tables_of_the_example_resins_can_be_read() {
    use crate::checks::sheet_rows::knots;
    use crate::procedure::times::rows;
    for resin in shelf().resins {
        for table in [&resin.working_time, &resin.hold, &resin.full_cure] {
            assert!(knots(&rows(table)).is_ok(), "{}", resin.id);
        }
    }
    assert_eq!(shelf().contracts[0].gap_rule.value, GapRule::Whole);
}
