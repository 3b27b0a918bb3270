//! A worked example by hand: the crack in Kettle Row, DN 200, a patch of 600 mm, every sum written out.

use super::super::super::plan::{FromNode, Warmest};
use super::*;
use crate::procedure::plan::Computed;
use crate::units::{Mass, Pressure, Span};

fn computed() -> Computed {
    let proposal = proposed(&choice());
    assert_eq!(proposal.breaks, []);
    proposal.plan.unwrap().computed
}

fn minutes(minutes: i64, seconds: i64) -> Span {
    Span::from_ms((minutes * 60 + seconds) * 1000)
}

#[test]
fn the_cover_is_163_and_157_less_29_mm() {
    // Worked by hand. Patch 7.257 ∓ 0.300 m: 6.957 to 7.557 m. Upstream 7.120 − 6.957 = 0.163, downstream 7.557 − 7.400 =
    // 0.157. Errors: inspection 0.2 % × 7.260 m = 14.52, up to 15 mm; placement 10 mm; tape 4 mm; together 29 mm.
    let found = computed();
    assert_eq!((found.patches[0].from_um, found.patches[0].to_um), (mm(6957.0), mm(7557.0)));
    let errors: Vec<_> = found.cover.errors.iter().map(|error| (error.what.as_str(), error.um)).collect();
    assert_eq!(errors, [("inspection", mm(15.0)), ("placement", mm(10.0)), ("mark reading", mm(4.0))]);
    assert_eq!((found.cover.upstream_um, found.cover.downstream_um), (mm(134.0), mm(128.0)));
    assert_eq!(found.cover.required_um, mm(100.0));
    assert!(found.cover.errors[0].source.starts_with("0.2 % of 7.260 m from MH 031"));
}

#[test]
fn on_its_middle_the_patch_covers_131_mm_each_side() {
    // (600 − 280) / 2 − 29.
    let centred = PlanChoice { centre_um: None, ..choice() };
    let found = proposed(&centred).plan.unwrap().computed;
    assert_eq!((found.cover.upstream_um, found.cover.downstream_um), (mm(131.0), mm(131.0)));
}

#[test]
fn the_mark_is_6_rods_and_857_mm_and_the_station_counts_from_both_nodes() {
    // Worked by hand: 7.257 − 0.400 = 6.857 m; 38.400 − 7.257 = 31.143 m.
    let proposal = proposed(&choice());
    let place = proposal.parts.place.unwrap();
    assert_eq!((place.from_upstream_um, place.from_downstream_um), (mm(7257.0), mm(31_143.0)));
    assert_eq!((place.mark.path_um, place.mark.whole_rods, place.mark.remainder_um), (mm(6857.0), 6, mm(857.0)));
    assert_eq!(place.offset_um, mm(-3.0));
}

#[test]
fn by_rope_or_hose_the_mark_is_the_whole_path() {
    let rope = PlanChoice { way_in: WayIn::Rope, below: String::new(), ..choice() };
    let mark = proposed(&rope).plan.unwrap().computed.mark;
    assert_eq!((mark.path_um, mark.whole_rods, mark.remainder_um), (mm(6857.0), 0, mm(6857.0)));
    let from_below = PlanChoice { from_node: FromNode::Downstream, ..rope };
    // 31.143 − 0.400 m.
    assert_eq!(proposed(&from_below).plan.unwrap().computed.mark.path_um, mm(30_743.0));
}

#[test]
fn a_counter_that_ran_from_the_other_node_is_off_by_63_mm() {
    // Worked by hand: 38.400 − 7.260 = 31.140 m; 0.2 % of it is 62.28, up to 63 mm. 131 − (63 − 15) = 83 mm.
    let other = PlanChoice { inspected_from: FromNode::Downstream, centre_um: None, ..choice() };
    let proposal = proposed(&other);
    assert_eq!(rules(&proposal), [Rule::CoverShort]);
    assert_eq!(proposal.plan.unwrap().computed.cover.upstream_um, mm(83.0));
}

#[test]
fn the_window_is_1_10_to_1_40_bar_and_its_middle_1_25() {
    // Worked by hand: 0.90 + 0.80 m × 0.0980665 = 0.978 bar, less than 1.10 gauge; the least of 1.50, 1.60, 1.40, 1.50.
    // 9806.65 Pa/m × 0.8 m = 7845.32, up to 7846 Pa.
    let window = computed().window;
    assert_eq!((window.lower_pa, window.upper_pa), (Pressure::from_pa(110_000), Pressure::from_pa(140_000)));
    assert_eq!((window.target_pa, window.water_pa), (Pressure::from_pa(125_000), Pressure::from_pa(7_846)));
    assert_eq!((window.lower_governs.as_str(), window.upper_governs.as_str()), ("least gauge", "host pipe"));
}

#[test]
fn deep_groundwater_lifts_the_lower_limit() {
    // Worked by hand: 0.90 + 3.00 m × 0.0980665 = 1.1942, up to 1.20 bar; middle of 1.20 and 1.40 is 1.30.
    let deep = PlanChoice { head_um: mm(3000.0), ..choice() };
    let window = proposed(&deep).plan.unwrap().computed.window;
    assert_eq!((window.lower_pa, window.target_pa), (Pressure::from_pa(120_000), Pressure::from_pa(130_000)));
    assert_eq!(window.lower_governs, "least net and water");
}

#[test]
fn an_end_pushes_with_4478_n() {
    // Worked by hand: π/4 × 0.199² m² = 0.0311026 m²; × 140 000 Pa = 4354.4, up to 4355 N; × 0.40 m × 9806.65 Pa/m = 122.005,
    // up to 123 N.
    assert_eq!(computed().thrust_n, 4355 + 123);
}

#[test]
fn the_resin_leaves_4_min_28_s() {
    // Worked by hand, ln t against 1/T: 45 min at 15 °C, 30 min at 20 °C give 31 min 58 s at 19.2 °C. Wet-out 12:00, push 5:00
    // × 1.3 = 6:30, connect 4:00, margin 5:00: 27:30.
    let budget = computed().budget;
    assert_eq!((budget.working_ms, budget.warmest), (minutes(31, 58), Warmest::Resin));
    assert_eq!((budget.loaded_push_ms, budget.spare_ms), (minutes(6, 30), minutes(4, 28)));
}

#[test]
fn the_hold_is_59_min_and_full_cure_4_h() {
    // Worked by hand, ln t against 1/T: 75 min at 10 °C, 48 min at 15 °C give 58.3, up to 59 min at 12.8 °C, the pipe. Full cure
    // stays 4 h between 10 and 15 °C.
    let found = computed();
    assert_eq!((found.hold_ms, found.hold_at_mc), (minutes(59, 0), celsius(12.8)));
    assert_eq!(found.full_cure_ms, minutes(240, 0));
}

#[test]
fn the_patch_is_cut_1326_mm_wide_and_drinks_1218_g() {
    // Worked by hand: 2 layers × π × 199 = 1250.35; + 75 mm overlap = 1325.35, up to 1326 mm. 812 g of A and 406 g of B.
    let found = computed();
    assert_eq!((found.wrap_um, found.batch_mg), (mm(1326.0), Mass::from_mg(1_218_000)));
}

#[test]
fn the_patch_covers_the_lateral_at_7_46_m_only() {
    // 7.460 ∓ 0.050 m lies within 6.957 to 7.557 m.
    assert_eq!(computed().covered, [1]);
}

#[test]
fn a_lateral_just_past_the_patch_is_named_as_near() {
    // Its edge at 7.620 − 0.050 = 7.570 m is 13 mm past 7.557 m; the errors are 29 mm.
    let mut line = line();
    line.laterals = vec![Lateral { station_um: mm(7620.0), clock: 3, diameter_um: mm(100.0) }];
    let proposal = propose(&line, &defect(7120.0, 7400.0), &choice(), &shelf().view(), NOW_MS);
    let place = proposal.parts.place.unwrap();
    assert_eq!((place.covered, place.near), (vec![], vec![0]));
}

#[test]
fn marked_with_the_camera_on_the_defect_no_counter_is_needed() {
    // 163 − 14 and 157 − 14 mm.
    let marked = PlanChoice { marked_on_defect: true, counter: String::new(), ..choice() };
    let cover = proposed(&marked).plan.unwrap().computed.cover;
    assert_eq!((cover.upstream_um, cover.downstream_um, cover.errors.len()), (mm(149.0), mm(143.0), 2));
}

#[test]
fn sleeve_and_patch_are_bound_as_their_sheets_say() {
    // Worked by hand. Sleeve 1000 + 25.4 + 152.4 mm; 1000 / 304.8 = 3.3, so 4 spaces of 250 mm, from 25.4 mm on.
    // Patch: 4 bands from 12.7 mm, 12.7 mm apart, to 50.8; between 50.8 and 549.2 are 498.4 mm, / 101.6 = 4.9, so 5 spaces of
    // 99.68 mm.
    let found = computed();
    assert_eq!(found.sleeve_um, mm(1177.8));
    assert_eq!(found.sleeve_bands_um, [25.4, 275.4, 525.4, 775.4, 1025.4].map(mm));
    let bands = [12.7, 25.4, 38.1, 50.8, 150.48, 250.16, 349.84, 449.52, 549.2, 561.9, 574.6, 587.3];
    assert_eq!(found.patch_bands_um, bands.map(mm));
    assert_eq!((found.membrane_um, found.membrane_bands_um.len()), (None, 0));
}

#[test]
fn a_membrane_reaches_from_behind_the_front_fitting_to_the_back_of_the_air_fitting() {
    // Worked by hand: body 1000 + air fitting 80 mm; past the patch (1080 − 600) / 2 = 240, 100 asked. 1080 / 254 = 4.3, so 5
    // spaces of 216 mm.
    let felt = PlanChoice { patch: "F900-200-600".into(), ..choice() };
    let found = proposed(&felt).plan.unwrap().computed;
    assert_eq!(found.membrane_um, Some(mm(1080.0)));
    assert_eq!(found.membrane_bands_um, [0.0, 216.0, 432.0, 648.0, 864.0, 1080.0].map(mm));
}

#[test]
fn the_shelf_says_what_fits_and_why() {
    let proposal = proposed(&choice());
    let says = |list: &[super::super::Candidate], id: &str| {
        let found = list.iter().find(|candidate| candidate.id == id).unwrap();
        (found.fits, found.says.clone())
    };
    let packers = &proposal.packers;
    assert_eq!(
        says(packers, "P-07"),
        (true, "for 150 to 230 mm; pipe 196.5 to 199 mm; bare ends 200 mm; 150 mm asked".into())
    );
    assert_eq!(says(packers, "P-11"), (false, "for 200 to 400 mm; pipe 196.5 to 199 mm".into()));
    let patches = &proposal.patches;
    assert_eq!(
        says(patches, "G1050-200-600"),
        (true, "covers 134 mm upstream, 128 mm downstream; 100 mm asked".into())
    );
    assert_eq!(
        says(patches, "G1050-200-400"),
        (false, "too short: 34 mm upstream, 28 mm downstream; 100 mm asked".into())
    );
    assert_eq!(says(&proposal.resins, "Q30"), (true, "31 min 58 s at 19.2 °C, the resin; 4 min 28 s to spare".into()));
    assert!(!says(&proposal.resins, "K90").0);
    assert!(proposal.patches[0].fits && proposal.packers[0].fits && proposal.resins[0].fits);
}
