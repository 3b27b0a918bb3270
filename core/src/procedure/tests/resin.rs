//! From joining to release: the resin's clock, the doubts it raises, the hold.

use super::kit::{MINUTE, World, bar, reading, span, temperatures};
use crate::procedure::command::Command;
use crate::procedure::happening::Happening;
use crate::procedure::hold;
use crate::procedure::rules::{Rule, n};
use crate::procedure::stage::Stage;
use crate::procedure::times;

fn doubts(world: &World) -> Vec<Rule> {
    world.repair().last_attempt().unwrap().doubts.iter().map(|doubt| doubt.rule).collect()
}

/// 45 min at 15 °C and 30 min at 20 °C give 31 min 58 s at 19.2 °C.
///
/// Worked by hand: ln t = ln 45 + (1/292.35 − 1/288.15)/(1/293.15 − 1/288.15) · (ln 30 − ln 45), t = 31.97 min.
#[test]
fn the_working_time_is_read_from_the_sheet_at_the_warmest() {
    let mut world = World::in_stage(Stage::WetOut);
    world.join();
    let (plan, attempt) = times::plan_and_attempt(world.repair()).unwrap();
    assert_eq!(times::working_time(plan, attempt), Some(span(31, 58)));
}

#[test]
fn a_warmer_reading_shortens_the_time_and_a_colder_one_does_not_lengthen_it() {
    let mut world = World::in_stage(Stage::WetOut);
    world.join().after(1.0);
    world.report(Happening::TemperaturesRead { temperatures: temperatures(15.0, 13.0, 12.0) });
    let working = |world: &World| {
        let (plan, attempt) = times::plan_and_attempt(world.repair()).unwrap();
        times::working_time(plan, attempt).unwrap()
    };
    assert_eq!(working(&world), span(31, 58));
    world.after(1.0).report(Happening::TemperaturesRead { temperatures: temperatures(20.0, 13.0, 12.0) });
    assert_eq!(working(&world), span(30, 0));
}

#[test]
fn no_go_when_the_resin_would_set_first() {
    let mut world = World::in_stage(Stage::WetOut);
    world.refuses(Command::SecondGo { temperatures: temperatures(25.0, 24.0, 20.0) }, Rule::NoTime);
    world.refuses(Command::SecondGo { temperatures: temperatures(31.0, 24.0, 20.0) }, Rule::OutsideSheet);
    world.refuses(Command::SecondGo { temperatures: temperatures(7.0, 7.0, 7.0) }, Rule::OutsideSheet);
}

#[test]
fn joined_without_a_go_is_recorded_and_doubted() {
    let mut world = World::in_stage(Stage::WetOut);
    world.report(Happening::Joined);
    assert!(world.repair().last_attempt().unwrap().joined.is_some());
    assert_eq!(doubts(&world), [Rule::JoinedWithoutGo]);
}

#[test]
fn joined_on_an_old_go_is_doubted() {
    let mut world = World::in_stage(Stage::WetOut);
    world.must(Command::SecondGo { temperatures: temperatures(19.2, 13.1, 12.8) }).after(10.1);
    world.report(Happening::Joined);
    assert_eq!(doubts(&world), [Rule::JoinedExpired]);
}

#[test]
fn only_two_taps_are_needed_while_resin_runs() {
    let mut world = World::in_stage(Stage::WetOut);
    world.join().after(25.0).report(Happening::TargetReached { gauge_pa: bar(1.3) });
    assert_eq!(world.repair().stage(), Stage::Hold);
    assert_eq!(doubts(&world), []);
}

#[test]
fn target_pressure_after_the_deadline_is_doubted() {
    let mut world = World::in_stage(Stage::WetOut);
    world.join().after(33.0).report(Happening::TargetReached { gauge_pa: bar(1.3) });
    assert_eq!(doubts(&world), [Rule::LateInflation]);
    let late = world.repair().last_attempt().unwrap().doubts[0].values["late_ms"].clone();
    assert_eq!(late, n(62_000));
}

#[test]
fn a_late_tap_against_oneself_is_free_and_in_ones_favour_a_departure() {
    let mut world = World::in_stage(Stage::WetOut);
    world.must(Command::SecondGo { temperatures: temperatures(19.2, 13.1, 12.8) }).after(3.0);
    world.must(Command::Report { happening: Happening::Joined, ago_ms: 3 * MINUTE });
    assert_eq!(world.repair().open_departures().len(), 0);
    let joined = world.repair().last_attempt().unwrap().joined.clone().unwrap();
    assert_eq!(joined.tapped_ms() - joined.moment.at_ms, 3 * MINUTE);
    world.after(25.0);
    world.must(Command::Report { happening: Happening::TargetReached { gauge_pa: bar(1.3) }, ago_ms: 2 * MINUTE });
    let open: Vec<Rule> = world.repair().open_departures().iter().map(|open| open.rule).collect();
    assert_eq!(open, [Rule::LateTapInFavour]);
}

#[test]
fn the_clock_of_the_resin_starts_once() {
    let mut world = World::in_stage(Stage::WetOut);
    world.join();
    let first = world.repair().last_attempt().unwrap().joined.clone();
    world.after(5.0).report(Happening::Joined);
    assert_eq!(world.repair().last_attempt().unwrap().joined, first);
}

#[test]
fn release_before_the_hold_is_refused_waived_or_an_emergency() {
    let mut world = World::in_stage(Stage::Hold);
    world.hold_for(3).report(Happening::SampleFelt { hard: true });
    world.refuses(Command::Release, Rule::HoldShort);
    let mut waived = world.clone();
    waived.must(Command::Waive {
        rule: Rule::HoldShort,
        subject: String::new(),
        reason: "flood".into(),
        foreman: "varga".into(),
    });
    waived.must(Command::Release);
    assert_eq!((waived.repair().stage(), doubts(&waived)), (Stage::Deflation, vec![]));
    world.report(Happening::Released { emergency: true });
    assert_eq!((world.repair().stage(), doubts(&world)), (Stage::Deflation, vec![Rule::ReleasedEarly]));
}

#[test]
fn soft_forbids_release_and_hard_alone_proves_nothing() {
    let mut world = World::in_stage(Stage::Hold);
    world.hold_for(8);
    world.refuses(Command::Release, Rule::SampleMissing);
    world.report(Happening::SampleFelt { hard: false });
    world.refuses(Command::Release, Rule::SampleSoft);
    world.report(Happening::SampleFelt { hard: true }).must(Command::Release);
    let mut early = World::in_stage(Stage::Hold);
    early.report(Happening::SampleFelt { hard: true });
    early.refuses(Command::Release, Rule::HoldShort);
}

#[test]
fn a_colder_pipe_makes_the_hold_longer_and_a_warmer_one_does_not_shorten_it() {
    let required = |world: &World| {
        let (plan, attempt) = times::plan_and_attempt(world.repair()).unwrap();
        hold::state(plan, attempt).unwrap().terms.required_ms
    };
    let mut world = World::in_stage(Stage::Hold);
    let at_first = required(&world);
    world.after(5.0).report(reading(1.3, 20.0));
    assert_eq!(required(&world), at_first);
    // The sheet's own row: 75 min at 10 °C.
    world.after(5.0).report(reading(1.3, 10.0));
    assert_eq!(required(&world), span(75, 0));
    world.after(5.0).report(reading(1.3, 20.0));
    assert_eq!(required(&world), span(75, 0));
}

#[test]
fn pressure_lost_while_it_gels_makes_the_attempt_doubtful_once() {
    let mut world = World::in_stage(Stage::Hold);
    world.after(5.0).report(reading(1.3, 12.8));
    // 0.95 bar less 0.8 m of water is 0.87 bar net; the patch sheet asks for 0.90.
    world.after(5.0).report(reading(0.95, 12.8)).after(5.0).report(reading(0.95, 12.8));
    assert_eq!(doubts(&world), [Rule::PressureLost]);
}

#[test]
fn an_excursion_above_the_least_net_pressure_is_a_note() {
    let mut world = World::in_stage(Stage::Hold);
    // 1.04 bar less 0.078 bar of water is 0.96 bar net.
    world.after(5.0).report(reading(1.3, 12.8)).after(5.0).report(reading(1.04, 12.8));
    assert_eq!(doubts(&world), []);
    let (plan, attempt) = times::plan_and_attempt(world.repair()).unwrap();
    let state = hold::state(plan, attempt).unwrap();
    assert_eq!(state.shown.excursions.len(), 1);
    assert_eq!(state.shown.counted_ms, span(5, 0));
}

#[test]
fn a_restart_in_the_hold_is_not_witnessed() {
    let mut world = World::in_stage(Stage::Hold);
    world.after(5.0).report(reading(1.3, 12.8));
    world.after(1.0).restart();
    world.after(4.0).report(reading(1.3, 12.8)).after(5.0).report(reading(1.3, 12.8));
    let (plan, attempt) = times::plan_and_attempt(world.repair()).unwrap();
    let shown = hold::state(plan, attempt).unwrap().shown;
    assert_eq!((shown.counted_ms, shown.not_witnessed_ms), (span(10, 0), span(5, 0)));
}

#[test]
fn a_clock_that_was_set_changes_no_elapsed_time_and_is_recorded() {
    let mut world = World::in_stage(Stage::Hold);
    world.after(5.0).report(reading(1.3, 12.8));
    world.wall_ahead_ms = -4 * MINUTE;
    world.after(5.0).report(reading(1.3, 12.8));
    let (plan, attempt) = times::plan_and_attempt(world.repair()).unwrap();
    assert_eq!(hold::state(plan, attempt).unwrap().shown.counted_ms, span(10, 0));
    let jumps: Vec<i64> = world.repair().clock_jumps.iter().map(|jump| jump.by_ms).collect();
    assert_eq!(jumps, [-4 * MINUTE]);
}

#[test]
fn trouble_while_the_resin_sets_is_doubted_and_after_the_hold_it_is_not() {
    let mut world = World::in_stage(Stage::Hold);
    world.after(5.0).report(Happening::Burst);
    assert_eq!(doubts(&world), [Rule::TroubleReported]);
    let mut late = World::in_stage(Stage::Hold);
    late.hold_for(8).report(Happening::PressureLost);
    assert_eq!(doubts(&late), []);
}
