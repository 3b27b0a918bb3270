//! Clocks that are set, zones that change, phones that sleep or are started anew: elapsed time stays right, and every
//! jump is recorded.

use super::kit::{MINUTE, MORNING_MS, World, bar, reading, span, temperatures};
use crate::procedure::command::Command;
use crate::procedure::happening::Happening;
use crate::procedure::hold;
use crate::procedure::rules::{Rule, n, t};
use crate::procedure::stage::Stage;
use crate::procedure::times;
use crate::units::Span;

const HOUR: i64 = 60 * MINUTE;

/// 2026-10-25 01:00 UTC. Source: Directive 2000/84/EC, article 3: summer time ends at 1.00 a.m. UTC on the last Sunday
/// in October.
const SUMMER_TIME_ENDS_MS: i64 = 1_792_890_000_000;

/// 2026-03-29 01:00 UTC. Source: the same directive, article 2: it begins on the last Sunday in March.
const SUMMER_TIME_BEGINS_MS: i64 = 1_774_746_000_000;

/// 2024-02-29 00:00 UTC. Source: `date -u -d 2024-02-29 +%s`.
const LEAP_DAY_MS: i64 = 1_709_164_800_000;

const DAY: i64 = 24 * HOUR;

/// How long `World` takes from the opening to target pressure, so that a story can be laid around a moment.
fn until_the_hold() -> i64 {
    World::in_stage(Stage::Hold).facts().moment.at_ms - MORNING_MS
}

/// A hold that began `before_ms` before a moment.
fn holding_across(at_ms: i64, before_ms: i64) -> World {
    World::in_stage_on(at_ms - before_ms - until_the_hold(), Stage::Hold)
}

fn counted(world: &World) -> (Span, Span) {
    let (plan, attempt) = times::plan_and_attempt(world.repair()).unwrap();
    let shown = hold::state(plan, attempt).unwrap().shown;
    (shown.counted_ms, shown.not_witnessed_ms)
}

fn jumps(world: &World) -> Vec<i64> {
    world.repair().clock_jumps.iter().map(|jump| jump.by_ms).collect()
}

fn late_ms(world: &World) -> i64 {
    let doubt = &world.repair().last_attempt().unwrap().doubts[0];
    assert_eq!(doubt.rule, Rule::LateInflation);
    let wanted = (0..200 * MINUTE).step_by(1000).find(|ms| doubt.values["late_ms"] == n(*ms));
    wanted.expect("whole seconds late")
}

fn on_time(world: &World) -> bool {
    world.repair().last_attempt().unwrap().doubts.is_empty()
}

#[test]
fn a_clock_set_in_mid_hold_bends_nothing_and_is_recorded_each_time() {
    for ahead in [-3 * HOUR, -4 * MINUTE, 4 * MINUTE, 3 * HOUR, 365 * DAY, -365 * DAY] {
        let mut world = World::in_stage(Stage::Hold);
        world.hold_for(3);
        world.wall_ahead_ms = ahead;
        world.hold_for(1);
        world.wall_ahead_ms = 0;
        world.hold_for(4).report(Happening::SampleFelt { hard: true });
        assert_eq!(counted(&world), (span(80, 0), span(0, 0)), "set by {ahead} ms");
        assert_eq!(jumps(&world), [ahead, -ahead], "set by {ahead} ms");
        world.must(Command::Release);
    }
}

#[test]
fn a_clock_set_forward_does_not_end_the_hold_early() {
    let mut world = World::in_stage(Stage::Hold);
    world.hold_for(2).report(Happening::SampleFelt { hard: true });
    world.wall_ahead_ms = 2 * HOUR;
    world.refuses(Command::Release, Rule::HoldShort);
}

#[test]
fn a_slow_drift_within_five_seconds_is_no_jump() {
    let mut world = World::in_stage(Stage::Hold);
    for _ in 0..4 {
        world.wall_ahead_ms += 4_000;
        world.hold_for(1);
    }
    assert_eq!(jumps(&world), Vec::<i64>::new());
}

/// The working time at 19.2 °C is 31 min 58 s.
#[test]
fn a_clock_set_while_resin_runs_makes_nothing_late_and_hides_nothing() {
    for ahead in [-20 * MINUTE, 20 * MINUTE] {
        let mut world = World::in_stage(Stage::WetOut);
        world.join().after(10.0);
        world.wall_ahead_ms = ahead;
        let mut late = world.clone();
        world.after(15.0).report(Happening::TargetReached { gauge_pa: bar(1.3) });
        assert!(on_time(&world), "set by {ahead} ms");
        late.after(23.0).report(Happening::TargetReached { gauge_pa: bar(1.3) });
        assert_eq!(late_ms(&late), 62_000, "set by {ahead} ms");
        assert_eq!(jumps(&late), [ahead]);
    }
}

#[test]
fn another_time_zone_is_no_jump_and_changes_no_elapsed_time() {
    let mut world = World::in_stage(Stage::Hold);
    for offset_min in [120, 60, -300, 345, 840] {
        world.offset_min = offset_min;
        world.hold_for(1);
    }
    assert_eq!((counted(&world), jumps(&world)), ((span(50, 0), span(0, 0)), vec![]));
    let offsets: Vec<i32> =
        world.repair().last_attempt().unwrap().readings.iter().map(|reading| reading.at.moment.offset_min).collect();
    assert_eq!(offsets, [120, 60, -300, 345, 840], "each reading keeps the offset it was read at");
}

/// The hour from 2 to 3 comes twice, or not at all: the hold across it is as long as any other.
#[test]
fn summer_time_that_ends_or_begins_in_the_hold_changes_nothing() {
    for (at_ms, before, after) in [(SUMMER_TIME_ENDS_MS, 120, 60), (SUMMER_TIME_BEGINS_MS, 60, 120)] {
        let mut world = holding_across(at_ms, 35 * MINUTE);
        world.offset_min = before;
        world.hold_for(3);
        assert!(world.facts().moment.at_ms < at_ms);
        world.offset_min = after;
        world.hold_for(5).report(Happening::SampleFelt { hard: true });
        assert!(world.facts().moment.at_ms > at_ms);
        assert_eq!((counted(&world), jumps(&world)), ((span(80, 0), span(0, 0)), vec![]));
        world.must(Command::Release);
    }
}

#[test]
fn a_hold_runs_through_the_midnights_of_a_leap_day() {
    for midnight in [LEAP_DAY_MS, LEAP_DAY_MS + DAY] {
        let mut world = holding_across(midnight, 35 * MINUTE);
        world.hold_for(8);
        assert_eq!((counted(&world), jumps(&world)), ((span(80, 0), span(0, 0)), vec![]));
    }
}

/// At UTC+2 the leap day ends at 22:00 UTC.
#[test]
fn a_lot_that_expires_on_a_leap_day_is_good_through_it() {
    for (at_ms, good) in [(LEAP_DAY_MS + 21 * HOUR, true), (LEAP_DAY_MS + 22 * HOUR + MINUTE, false)] {
        let mut world = World::in_stage_on(at_ms - 5 * MINUTE, Stage::Staging);
        world.after(4.0).answer_all();
        let lots = world.repair().last_attempt().unwrap().answers.iter().find_map(|(task, answered)| {
            let crate::procedure::answer::Answer::Done { values } = &answered.answer else { return None };
            values.contains_key("expires_a").then(|| (task.clone(), values.clone()))
        });
        let (task, mut values) = lots.unwrap();
        values.insert("expires_a".into(), t("2024-02-29"));
        world.must(Command::Answer { task, answer: crate::procedure::answer::Answer::Done { values } });
        let outcome = world.when(Command::GoOn);
        let expired = outcome.is_err_and(|refusal| refusal.broken.iter().any(|one| one.rule == Rule::ResinExpired));
        assert_eq!(expired, !good, "at {at_ms}");
    }
}

/// A sleeping phone asks nothing and both clocks run on: no jump, but nobody watched the pressure.
#[test]
fn a_phone_asleep_in_the_hold_witnesses_nothing_and_keeps_the_time() {
    let mut world = World::in_stage(Stage::Hold);
    world.hold_for(2).after(40.0).report(reading(1.30, 12.8));
    world.hold_for(1);
    assert_eq!((counted(&world), jumps(&world)), ((span(30, 0), span(40, 0)), vec![]));
}

#[test]
fn a_phone_asleep_while_resin_runs_does_not_stop_its_clock() {
    let mut world = World::in_stage(Stage::WetOut);
    world.join().after(33.0).report(Happening::TargetReached { gauge_pa: bar(1.3) });
    assert_eq!((late_ms(&world), jumps(&world)), (62_000, vec![]));
}

#[test]
fn a_restart_while_resin_runs_keeps_the_working_time() {
    let mut world = World::in_stage(Stage::WetOut);
    world.join().after(20.0).restart().after(13.0);
    world.report(Happening::TargetReached { gauge_pa: bar(1.3) });
    assert_eq!((late_ms(&world), jumps(&world)), (62_000, vec![]));
}

/// A wall clock set back over a restart gives no time: the boot clock had shown 20 min before it, 13 min since.
#[test]
fn a_clock_set_back_over_a_restart_gives_no_working_time() {
    let mut world = World::in_stage(Stage::WetOut);
    world.join().after(20.0);
    world.report(Happening::TemperaturesRead { temperatures: temperatures(19.2, 13.1, 12.8) });
    world.restart();
    world.wall_ahead_ms = -2 * HOUR;
    world.after(13.0).report(Happening::TargetReached { gauge_pa: bar(1.3) });
    assert_eq!(late_ms(&world), 62_000);
    let jump = &world.repair().clock_jumps[0];
    assert!(jump.restarted && jump.by_ms < -HOUR, "{jump:?}");
}

/// Set forward it may only cost time: 20 min, then an hour by the wall clock.
#[test]
fn a_clock_set_forward_over_a_restart_counts_against_the_crew() {
    let mut world = World::in_stage(Stage::WetOut);
    world.join().after(5.0).restart();
    world.wall_ahead_ms = HOUR;
    world.after(5.0).report(Happening::TargetReached { gauge_pa: bar(1.3) });
    assert_eq!(late_ms(&world), 70 * MINUTE - (31 * MINUTE + 58_000));
}

#[test]
fn every_restart_of_the_hold_is_not_witnessed() {
    let mut world = World::in_stage(Stage::Hold);
    world.hold_for(2).after(2.0).restart().after(8.0).report(reading(1.30, 12.8)).hold_for(3);
    assert_eq!(counted(&world), (span(50, 0), span(10, 0)));
    world.report(Happening::SampleFelt { hard: true });
    world.refuses(Command::Release, Rule::HoldShort);
    world.hold_for(4).must(Command::Release);
}
