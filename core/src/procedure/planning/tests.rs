//! The plan against an example worked by hand, and the sizes that the example shelf is for.

use super::*;
use crate::procedure::line::{Lateral, Node, Origin};
use crate::procedure::plan::{Temperatures, WayIn};
use crate::shelf::examples;
use crate::units::{Length, Temperature};

fn mm(mm: i64) -> Length {
    Length::from_um(mm * 1000)
}

fn line(dn: i64) -> Line {
    let node = |name: &str| Node { name: name.into(), place: None };
    let lateral = |station, clock| Lateral { station_um: mm(station), clock, diameter_um: mm(100) };
    Line {
        asset: "SS-03107".into(),
        upstream: node("MH 031"),
        downstream: node("MH 032"),
        length_um: mm(38_400),
        height_um: mm(dn),
        laterals: vec![lateral(4_850, 9), lateral(7_460, 10), lateral(19_300, 2), lateral(31_700, 9)],
        ..Line::default()
    }
}

fn defect(from: i64, to: i64) -> Defect {
    Defect { from_um: mm(from), to_um: mm(to), observations: vec![], origin: Origin::ByHand }
}

/// The worked example: line of 38.40 m, defect 7.120 to 7.400 m, patch of 0.60 m resting at 7.257 m.
fn worked() -> PlanChoice {
    let shelf = examples::shelf().unwrap();
    let celsius = |tenths: i64| Temperature::from_millicelsius(tenths * 100);
    let mut choice = suggest(&line(200), &defect(7_120, 7_400), &shelf.view());
    choice.patch = "G1050-200-600".into();
    choice.packer = "P-07".into();
    choice.resin = "Q30".into();
    choice.in_series = false;
    choice.diameter_least_um = Length::from_um(196_500);
    choice.diameter_most_um = mm(199);
    choice.diameter_measured = true;
    choice.temperatures = Temperatures {
        resin_mc: celsius(192),
        air_mc: celsius(131),
        pipe_mc: celsius(128),
        water_mc: Some(celsius(134)),
    };
    choice.head_um = mm(800);
    choice.behind_um = mm(400);
    choice.centre_um = Some(mm(7_257));
    choice.reading_point.offset_um = mm(400);
    choice.way_in = WayIn::Rods;
    choice.below = "T. Ekdal".into();
    choice.rod_um = mm(1000);
    choice
}

fn computed(choice: &PlanChoice) -> crate::procedure::plan::Computed {
    let shelf = examples::shelf().unwrap();
    plan(&line(200), &defect(7_120, 7_400), choice, &shelf.view()).unwrap().computed
}

/// By hand: errors 15 (0.2 % of 7.26 m, up to the millimetre) + 10 + 4 = 29 mm. Upstream 7.120 − 6.957 = 163, less 29:
/// 134 mm. Downstream 7.557 − 7.400 = 157, less 29: 128 mm.
#[test]
fn cover_is_what_is_left_after_the_errors() {
    let cover = computed(&worked()).cover;
    let errors: i64 = cover.errors.iter().map(|error| error.um.as_um()).sum();
    assert_eq!((errors, cover.upstream_um, cover.downstream_um), (29_000, mm(134), mm(128)));
    let marked = PlanChoice { marked_on_defect: true, ..worked() };
    assert_eq!(computed(&marked).cover.upstream_um, mm(149));
}

/// By hand: 7.257 m less 0.400 m from the node's centre to the mouth is 6.857 m: six rods of a metre and 857 mm.
#[test]
fn the_mark_is_counted_in_whole_rods_from_the_mouth() {
    let mark = computed(&worked()).mark;
    assert_eq!((mark.path_um, mark.whole_rods, mark.remainder_um), (mm(6_857), 6, mm(857)));
}

#[test]
fn rods_do_not_turn_the_corner_from_the_street() {
    let shelf = examples::shelf().unwrap();
    let street = PlanChoice { below: String::new(), ..worked() };
    let refused = plan(&line(200), &defect(7_120, 7_400), &street, &shelf.view()).unwrap_err();
    assert!(refused.rule.says(&refused.values).contains("corner"));
}

/// By hand: least gauge 1.10 bar; least net 0.90 + 0.0981 bar/m × 0.80 m = 0.978 bar, so the gauge governs. Above: packer
/// 1.50, patch 1.60, host pipe 1.40, contract 1.50 bar, so the host pipe does.
#[test]
fn the_window_lies_between_the_sheet_and_the_host_pipe() {
    let window = computed(&worked()).window;
    assert_eq!((window.lower_pa.as_bar(), window.upper_pa.as_bar()), (1.10, 1.40));
    assert_eq!((window.lower_governs.as_str(), window.upper_governs.as_str()), ("least gauge", "host pipe"));
    assert_eq!(window.target_pa.as_bar(), 1.25);
    let deep = PlanChoice { head_um: mm(2_600), ..worked() };
    // By hand: 0.90 + 0.0980665 × 2.60 = 1.15497, printed 1.16.
    assert_eq!(computed(&deep).window.lower_pa.as_bar(), 1.16);
}

/// By hand: two layers of π × 199 mm and 75 mm of overlap are 1325.4 mm, cut at 1326 mm.
#[test]
fn the_mat_goes_round_and_the_lateral_is_found() {
    let computed = computed(&worked());
    assert_eq!(computed.wrap_um, mm(1_326));
    assert_eq!(computed.covered, [1]);
}

/// Common practice, no source: the sleeve reaches about 1 in past the front of the packer and 6 in past its back, bound
/// every 12 in; the patch is bound four times at each end half an inch apart and every 4 in between.
#[test]
fn sleeve_and_binding_follow_the_sheets() {
    let computed = computed(&worked());
    let inch = 25_400;
    assert!((computed.sleeve_um.as_um() - (1_000_000 + 7 * inch)).abs() <= 3_000, "{:?}", computed.sleeve_um);
    let apart =
        |bands: &[Length]| -> Vec<i64> { bands.windows(2).map(|two| two[1].as_um() - two[0].as_um()).collect() };
    assert!(apart(&computed.sleeve_bands_um).iter().all(|gap| *gap <= 12 * inch + 3_000));
    let patch = apart(&computed.patch_bands_um);
    let ends = [&patch[..3], &patch[patch.len() - 3..]].concat();
    assert!(ends.iter().all(|gap| (gap - inch / 2).abs() <= 1_000), "{ends:?}");
    assert!(patch.iter().all(|gap| *gap <= 4 * inch + 2_000), "{patch:?}");
}

/// By hand: 31:58 at 19.2 °C, less 12:00, 5:00 × 1.3 = 6:30, 4:00 and 5:00 leaves 4:28.
#[test]
fn the_estimate_says_what_is_to_spare() {
    let budget = computed(&worked()).budget;
    assert_eq!((budget.working_ms.as_ms(), budget.spare_ms.as_ms()), (1_918_000, 268_000));
    let shelf = examples::shelf().unwrap();
    let hot = Temperature::from_millicelsius(27_000);
    let warm = PlanChoice { temperatures: Temperatures { resin_mc: hot, ..worked().temperatures }, ..worked() };
    let proposal = propose(&line(200), &defect(7_120, 7_400), &warm, &shelf.view(), 0);
    assert_eq!(proposal.breaks[0].rule, Rule::NoTime);
    assert!(!proposal.breaks[0].waivable && proposal.breaks[0].way_out.contains("°C or colder"));
}

#[test]
fn every_size_of_the_shelf_gets_a_plan_that_breaks_nothing() {
    let shelf = examples::shelf().unwrap();
    for dn in [100, 125, 150, 200, 225, 250, 300, 350, 400, 450, 500, 600] {
        let (line, defect) = (line(dn), defect(12_000, 12_100));
        let choice = suggest(&line, &defect, &shelf.view());
        let proposal = propose(&line, &defect, &choice, &shelf.view(), 0);
        assert_eq!(proposal.breaks, [], "DN {dn}");
        assert!(proposal.patches[0].fits && proposal.packers[0].fits, "DN {dn}");
    }
}

#[test]
fn a_defect_longer_than_any_patch_gets_several_in_series() {
    let shelf = examples::shelf().unwrap();
    let (line, defect) = (line(200), defect(12_000, 13_500));
    let choice = suggest(&line, &defect, &shelf.view());
    let proposal = propose(&line, &defect, &choice, &shelf.view(), 0);
    let plan = proposal.plan.unwrap();
    // By hand: needed 1.50 m + 2 × (100 + 40) mm = 1.78 m; ⌈(1780 − 120) / (1000 − 120)⌉ = 2.
    assert_eq!(plan.computed.patches.len(), 2);
    assert!(plan.computed.cover.least() >= plan.computed.cover.required_um);
    assert!(proposal.notes[0].starts_with("2 patches in series"));
}

#[test]
fn what_does_not_fit_says_why() {
    let shelf = examples::shelf().unwrap();
    let proposal = propose(&line(200), &defect(7_120, 7_400), &worked(), &shelf.view(), 0);
    let says =
        |list: &[Candidate], id: &str| list.iter().find(|one| one.id == id).map(|one| (one.fits, one.says.clone()));
    assert_eq!(
        says(&proposal.patches, "G1050-200-400"),
        Some((false, "too short: 31 mm each side, 100 mm asked".into()))
    );
    assert_eq!(says(&proposal.packers, "P-11"), Some((false, "for 200 to 400 mm; pipe 196 to 199 mm".into())));
}
