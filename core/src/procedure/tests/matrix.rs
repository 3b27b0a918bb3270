//! Every command in every place that a repair can stand, against a table written by hand.
//!
//! Each place is fresh: its stage has just begun and nothing in it is answered. The person is the foreman, so that a
//! "no" comes from the place and not from the role.

use super::kit::{World, bar, reading, temperatures};
use crate::procedure::answer::{Answer, Value};
use crate::procedure::command::Command;
use crate::procedure::happening::Happening;
use crate::procedure::repair::{CorrectionOf, ReadingField};
use crate::procedure::rules::Rule;
use crate::procedure::stage::{Outcome, PatchPlace, Stage};

const PLACES: [&str; 14] = [
    "opened",
    "planned",
    "staging",
    "test push",
    "sleeve",
    "wet-out",
    "joined",
    "placement",
    "inflation",
    "hold",
    "deflation",
    "verification",
    "between",
    "complete",
];

/// `+` is carried out, `.` is refused.
const TABLE: &[(&str, &str)] = &[
    //                    op pl st tp sl wo jo pl in ho de ve be co
    ("accept plan", "+  +  .  .  .  .  .  .  .  .  .  .  +  ."),
    ("go on", ".  +  .  .  .  .  .  .  .  .  .  .  .  ."),
    ("second go", ".  .  .  .  .  +  .  .  .  .  .  .  .  ."),
    ("release", ".  .  .  .  .  .  .  .  .  .  .  .  .  ."),
    ("accept", ".  .  .  .  .  .  .  .  .  .  .  .  .  ."),
    ("reject", ".  .  .  .  .  .  .  .  .  .  .  +  .  ."),
    ("waive hold short", ".  .  .  .  .  .  .  .  .  +  .  .  .  ."),
    ("new attempt", ".  .  .  .  .  .  .  .  .  .  .  .  +  ."),
    ("close unrepaired", "+  +  .  .  .  .  .  .  .  .  .  .  +  ."),
    ("sign", ".  .  .  .  .  .  .  .  .  .  .  .  .  +"),
    ("issue", ".  .  .  .  .  .  .  .  .  .  .  .  .  ."),
    ("answer staging", ".  .  +  +  +  +  +  +  +  +  +  +  .  ."),
    ("answer deflation", ".  .  .  .  .  .  +  +  +  .  +  +  .  ."),
    ("discard", ".  .  +  +  +  +  +  +  +  +  +  +  .  ."),
    ("abandon", ".  .  +  +  +  +  .  .  .  .  .  .  .  ."),
    ("end as accepted", ".  .  .  .  .  .  .  .  .  .  .  .  .  ."),
    ("correct reading", ".  .  .  .  .  .  .  .  .  .  +  +  +  +"),
    ("note", "+  +  +  +  +  +  +  +  +  +  +  +  +  +"),
    ("photo", "+  +  +  +  +  +  +  +  +  +  +  +  +  +"),
    ("open again", ".  .  .  .  .  .  .  .  .  .  .  .  .  ."),
];

pub(super) fn place(name: &str) -> World {
    let mut world = match name {
        "opened" => World::opened(),
        "planned" => World::planned(),
        "staging" => World::in_stage(Stage::Staging),
        "test push" => World::in_stage(Stage::TestPush),
        "sleeve" => World::in_stage(Stage::SleeveChange),
        "wet-out" => World::in_stage(Stage::WetOut),
        "joined" => {
            let mut world = World::in_stage(Stage::WetOut);
            world.join();
            world
        }
        "placement" => World::in_stage(Stage::Placement),
        "inflation" => World::in_stage(Stage::Inflation),
        "hold" => World::in_stage(Stage::Hold),
        "deflation" => World::in_stage(Stage::Deflation),
        "verification" => World::in_stage(Stage::Verification),
        "between" => {
            let mut world = World::in_stage(Stage::Deflation);
            let reasons = vec!["slipped".into()];
            world.must(Command::EndAttempt { outcome: Outcome::Discarded, reasons, in_pipe: "nothing".into() });
            world
        }
        _ => World::accepted(),
    };
    world.by("varga");
    world
}

pub(super) fn command(name: &str, world: &World) -> Command {
    let end = |outcome| Command::EndAttempt { outcome, reasons: vec![], in_pipe: String::new() };
    let done = |task: &str| Command::Answer { task: task.into(), answer: Answer::Done { values: [].into() } };
    match name {
        "accept plan" => Command::AcceptPlan { plan: Box::new(world.plan()) },
        "go on" => Command::GoOn,
        "second go" => Command::SecondGo { temperatures: temperatures(19.2, 13.1, 12.8) },
        "release" => Command::Release,
        "accept" => Command::Judge { accept: true, reasons: vec![] },
        "reject" => Command::Judge { accept: false, reasons: vec!["fold".into()] },
        "waive hold short" => Command::Waive {
            rule: Rule::HoldShort,
            subject: String::new(),
            reason: "tested".into(),
            foreman: "varga".into(),
        },
        "new attempt" => Command::NewAttempt { pipe_unharmed: true, packer_unharmed: true },
        "close unrepaired" => Command::CloseUnrepaired { reason: "to be dug up".into() },
        "sign" => {
            Command::Sign { name: String::new(), statement: "I sign.".into(), strokes: vec![vec![(1, 1), (9, 9)]] }
        }
        "issue" => Command::Issue { number: "K3F-0001".into() },
        "answer staging" => done("weather"),
        "answer deflation" => done("let_down"),
        "discard" => end(Outcome::Discarded),
        "abandon" => end(Outcome::Abandoned),
        "end as accepted" => end(Outcome::Accepted),
        "correct reading" => Command::Correct {
            of: CorrectionOf::Reading { index: 0, field: ReadingField::GaugePa },
            value: Value::Number(131_000),
            reason: "slip".into(),
        },
        "note" => Command::Note { text: "rain".into() },
        "photo" => Command::Photo {
            key: String::new(),
            label: "more".into(),
            sha256: "11".repeat(32),
            bytes: 9,
            media_type: "image/jpeg".into(),
            copy_of: None,
        },
        _ => Command::Open {
            id: "r".into(),
            number: "R".into(),
            rehearsal: false,
            line: Box::default(),
            defect: Box::new(world.repair().defect.clone()),
            contract: Box::new(world.repair().contract.clone()),
            video_before: String::new(),
        },
    }
}

#[test]
fn asks_are_gated_by_where_the_repair_stands() {
    let worlds: Vec<World> = PLACES.iter().map(|name| place(name)).collect();
    for (name, row) in TABLE {
        let cells: Vec<&str> = row.split_whitespace().collect();
        assert_eq!(cells.len(), PLACES.len(), "row {name}");
        for ((world, at), expected) in worlds.iter().zip(PLACES).zip(cells) {
            let outcome = world.clone().when(command(name, world));
            assert_eq!(outcome.is_ok(), expected == "+", "{name} when {at}: {outcome:?}");
        }
    }
}

fn happenings() -> Vec<Happening> {
    vec![
        Happening::TemperaturesRead { temperatures: temperatures(18.0, 13.0, 12.0) },
        Happening::PushBegun,
        Happening::MarkReached { counter_um: None },
        Happening::PackerBack { sound: false },
        Happening::Joined,
        Happening::InsertionBegun,
        Happening::AtTheMark { counter_um: None, beyond_um: None },
        Happening::AirJoined,
        Happening::TargetReached { gauge_pa: bar(1.3) },
        reading(1.2, 11.0),
        Happening::SampleFelt { hard: false },
        Happening::Released { emergency: true },
        Happening::PressureLost,
        Happening::Burst,
        Happening::Stuck,
        Happening::WaterComing,
        Happening::GasAlarm,
        Happening::Stopped { why: "rain".into() },
        Happening::PatchIs { place: PatchPlace::InPipe },
        Happening::LateralOpened { lateral: 0, open_pct: 97, coupon: true },
        Happening::TightnessTested { tight: true, method: "air".into() },
    ]
}

#[test]
fn a_report_is_recorded_wherever_the_repair_stands() {
    for at in PLACES {
        let world = place(at);
        for happening in happenings() {
            let mut world = world.clone();
            let events = world.when(Command::Report { happening: happening.clone(), ago_ms: 0 });
            assert!(events.is_ok_and(|events| !events.is_empty()), "{happening:?} when {at}");
        }
    }
}
