//! Whatever order the commands come in: replay is the live state, the gate that is shown is the one that decides, and
//! nothing is complete without its evidence.

use proptest::prelude::*;

use super::kit::{World, bar, reading, temperatures};
use crate::procedure::apply::replay;
use crate::procedure::command::Command;
use crate::procedure::gate::{self, Around, Ask};
use crate::procedure::happening::Happening;
use crate::procedure::repair::Standing;
use crate::procedure::rules::{Kind, Rule, TABLE};
use crate::procedure::stage::{Outcome, Stage};

#[derive(Clone, Debug)]
enum Step {
    AnswerAll,
    Tell(Box<Command>),
}

fn step() -> impl Strategy<Value = Step> {
    let tell = |command: Command| Just(Step::Tell(Box::new(command)));
    let report = |happening| Step::Tell(Box::new(Command::Report { happening, ago_ms: 0 }));
    let happenings = prop::sample::select(vec![
        Happening::PushBegun,
        Happening::MarkReached { counter_um: None },
        Happening::PackerBack { sound: true },
        Happening::Joined,
        Happening::InsertionBegun,
        Happening::AtTheMark { counter_um: None, beyond_um: None },
        Happening::TargetReached { gauge_pa: bar(1.3) },
        reading(1.3, 12.8),
        reading(0.9, 9.0),
        Happening::SampleFelt { hard: true },
        Happening::Released { emergency: true },
        Happening::Burst,
    ]);
    let departures: Vec<Rule> = TABLE.iter().filter(|row| row.kind == Kind::Departure).map(|row| row.rule).collect();
    prop_oneof![
        3 => Just(Step::AnswerAll),
        4 => tell(Command::GoOn),
        2 => tell(Command::SecondGo { temperatures: temperatures(19.2, 13.1, 12.8) }),
        2 => tell(Command::Release),
        2 => any::<bool>().prop_map(|accept| Step::Tell(Box::new(Command::Judge { accept, reasons: vec!["seen".into()] }))),
        1 => tell(Command::Sign { name: "Ines Varga".into(), statement: "Seen.".into(), strokes: vec![vec![(0, 0), (9, 9)]] }),
        1 => tell(Command::CloseUnrepaired { reason: "The pipe is lined instead.".into() }),
        1 => tell(Command::NewAttempt { pipe_unharmed: true, packer_unharmed: true }),
        1 => tell(Command::HandOver { to: String::new() }),
        1 => tell(Command::EndAttempt { outcome: Outcome::Discarded, reasons: vec![], in_pipe: String::new() }),
        2 => prop::sample::select(departures).prop_map(|rule| Step::Tell(Box::new(Command::Waive {
            rule, subject: "doubt".into(), reason: "seen".into(), foreman: "varga".into(),
        }))),
        8 => happenings.prop_map(report),
    ]
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 60, ..ProptestConfig::default() })]

    #[test]
    fn any_order_of_commands_keeps_the_promises(steps in prop::collection::vec((step(), 0.0..12.0_f64), 1..60)) {
        let mut world = World::planned();
        world.by("varga");
        for (step, minutes) in steps {
            world.after(minutes);
            match step {
                Step::AnswerAll if world.repair().standing() == Standing::Underway => {
                    world.answer_all();
                }
                Step::AnswerAll => {}
                Step::Tell(command) => {
                    let shown = shown_open(&world, &command);
                    let outcome = world.when(*command);
                    if let Some(open) = shown {
                        prop_assert_eq!(open, outcome.is_ok());
                    }
                }
            }
        }
        let replayed = replay(&world.records);
        prop_assert_eq!(replayed.as_ref(), Some(world.repair()));
        if world.repair().standing() == Standing::Complete {
            let accepted = world.repair().accepted().unwrap();
            prop_assert!(accepted.joined.is_some() && accepted.target.is_some() && accepted.released.is_some());
            let plan = world.repair().plan.as_ref().unwrap();
            for stage in Stage::ALL {
                prop_assert!(gate::open_tasks(plan, accepted, stage).is_empty());
            }
        }
    }
}

/// Returns whether the gate shows an ask as open; `None` for a report.
fn shown_open(world: &World, command: &Command) -> Option<bool> {
    let ask = match command {
        Command::GoOn => Ask::GoOn,
        Command::Release => Ask::Release,
        Command::Judge { accept, .. } => Ask::Judge { accept: *accept },
        Command::NewAttempt { .. } => Ask::NewAttempt,
        Command::SecondGo { temperatures } => Ask::SecondGo(temperatures),
        Command::Sign { .. } => Ask::Sign,
        Command::CloseUnrepaired { .. } => Ask::CloseUnrepaired,
        _ => return None,
    };
    let facts = world.facts();
    let around = Around { facts: &facts, people: &world.shelf.people };
    Some(gate::gate(world.repair(), ask, &around).is_empty())
}
