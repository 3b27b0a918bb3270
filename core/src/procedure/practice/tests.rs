//! The clock of a rehearsal.

use super::*;
use crate::procedure::command::Command;
use crate::procedure::rules::Rule;
use crate::procedure::stage::Stage;
use crate::procedure::tests::kit::World;

fn real(at_ms: i64, boot_ms: i64, boot_id: &str) -> Moment {
    Moment { at_ms, offset_min: 60, boot_ms, boot_id: boot_id.into() }
}

fn practice(pace: u32) -> Practice {
    Practice {
        mishaps: vec![],
        surprise: false,
        pace,
        real: real(1_000_000, 5_000, "phone"),
        shown: Moment { at_ms: 0, offset_min: 120, boot_ms: 7_200_000, boot_id: "rehearsal".into() },
    }
}

#[test]
fn a_minute_of_the_device_is_ten_of_the_rehearsal_on_both_clocks() {
    let shown = practice(10).plain(&real(1_060_000, 65_000, "phone"));
    assert_eq!((shown.at_ms, shown.boot_ms), (600_000, 7_800_000));
    assert_eq!((shown.offset_min, shown.boot_id.as_str()), (120, "rehearsal"));
}

#[test]
fn the_devices_wall_clock_moves_it_only_across_a_restart() {
    let set_ahead = real(9_000_000, 65_000, "phone");
    assert_eq!(practice(10).plain(&set_ahead).at_ms, 600_000);
    let started_anew = real(1_060_000, 1_000, "another start");
    assert_eq!(practice(10).plain(&started_anew).at_ms, 600_000);
    let set_back = real(0, 1_000, "another start");
    assert_eq!(practice(10).plain(&set_back).at_ms, 0, "it never runs backwards");
}

#[test]
fn another_pace_goes_on_from_where_the_clock_stands() {
    let slower = practice(10).paced(1, &real(1_060_000, 65_000, "phone"));
    assert_eq!(slower.plain(&real(1_061_000, 66_000, "phone")).at_ms, 601_000);
}

#[test]
fn a_repair_in_earnest_gets_no_such_clock() {
    let mut world = World::planned();
    let real = world.facts().moment;
    let practise = Command::Practise { mishaps: vec![], surprise: false, pace: 10, real: real.clone() };
    world.refuses(practise, Rule::BadValue);
    assert_eq!(moment(world.repair(), &real), None);
    World::in_stage(Stage::WetOut).refuses(Command::SetPace { pace: 5, real }, Rule::BadValue);
}
