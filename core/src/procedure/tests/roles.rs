//! Every command by every role, against a table written by hand. Each is tapped where the repair stands ready for it, so
//! that a "no" comes from the role and not from the place.
//!
//! Source of the table: the design of this project (who decides, who works, who reads); common practice, no standard.

use super::kit::World;
use super::matrix::{command, place};
use crate::checks::named;
use crate::procedure::command::Command;
use crate::procedure::happening::Happening;
use crate::procedure::repair::Branch;
use crate::procedure::roles::{self, Needs};
use crate::procedure::rules::Rule;
use crate::procedure::stage::Outcome;
use crate::shelf::people::{PersonKey, Revoked};

/// Who taps: a technician, the foreman, the owner's reader, nobody, somebody who is not in the list.
const ROLES: [(&str, &str); 5] =
    [("technician", "ekdal"), ("foreman", "varga"), ("reader", "sorrel"), ("nobody", ""), ("stranger", "mallory")];

/// The command, where it is tapped, and whether each role may: `+` carried out, `.` refused.
const TABLE: &[(&str, &str, &str)] = &[
    //                                       te fo re no st
    ("open", "", "+  +  .  +  +"),
    ("practise", "rehearsed", "+  +  .  +  +"),
    ("set pace", "practised", "+  +  .  +  +"),
    ("accept plan", "opened", "+  +  .  +  +"),
    ("go on", "planned", "+  +  .  +  +"),
    ("second go", "wet-out", "+  +  .  +  +"),
    ("release", "released", "+  +  .  +  +"),
    ("accept", "judged", ".  +  .  .  ."),
    ("reject", "verification", ".  +  .  .  ."),
    // The foreman is named with it; who holds the phone does not matter, but the reader changes nothing.
    ("waive hold short", "hold", "+  +  .  +  +"),
    ("choose branch", "apart", "+  +  .  +  +"),
    ("hand over", "hold", "+  +  .  +  +"),
    ("take over", "handed", "+  +  .  +  +"),
    ("new attempt", "between", "+  +  .  +  +"),
    ("close unrepaired", "between", ".  +  .  .  ."),
    ("sign", "complete", "+  +  .  .  ."),
    ("issue", "signed", "+  +  .  +  +"),
    ("answer staging", "staging", "+  +  .  +  +"),
    ("correct reading", "complete", "+  +  .  +  +"),
    ("work out", "planned", "+  +  .  +  +"),
    ("note", "staging", "+  +  .  +  +"),
    ("photo", "staging", "+  +  .  +  +"),
    // What happened is recorded whoever taps.
    ("report", "hold", "+  +  +  +  +"),
    ("discard", "staging", "+  +  +  +  +"),
];

fn at(name: &str) -> World {
    match name {
        "apart" => {
            let mut world = place("staging");
            let head = |letter: &str, own| Branch {
                head: letter.repeat(64),
                device: "phone".into(),
                person: None,
                at_ms: 0,
                own,
            };
            world.repair.as_mut().unwrap().branches = vec![head("a", true), head("b", false)];
            world
        }
        "judged" => {
            let mut world = place("complete");
            // As it stood before the verdict.
            let records: Vec<_> = world.records[..world.records.len() - 1].to_vec();
            world.repair = crate::procedure::replay(&records);
            world.records = records;
            world
        }
        "released" => {
            let mut world = place("hold");
            world.hold_for(8).report(Happening::SampleFelt { hard: true });
            world
        }
        "handed" => {
            let mut world = place("hold");
            world.must(Command::HandOver { to: String::new() });
            // As another phone sees it.
            world.repair.as_mut().unwrap().attempts.last_mut().unwrap().handed.as_mut().unwrap().at.device =
                "first".into();
            world
        }
        "rehearsed" => {
            let mut world = place("planned");
            world.repair.as_mut().unwrap().rehearsal = true;
            world
        }
        "practised" => {
            let mut world = at("rehearsed");
            let told = asked("practise", &world);
            world.must(told);
            world
        }
        "signed" => {
            let mut world = place("complete");
            for person in ["ekdal", "varga"] {
                world.by(person).must(command("sign", &place("complete")));
            }
            world
        }
        name => place(name),
    }
}

fn asked(name: &str, world: &World) -> Command {
    match name {
        "choose branch" => Command::ChooseBranch {
            head: "a".repeat(64),
            reason: "it has the readings".into(),
            foreman: "varga".into(),
        },
        "open" => Command::Open {
            id: "r".into(),
            number: "R".into(),
            rehearsal: false,
            line: Box::new(world.repair().line.clone()),
            defect: Box::new(world.repair().defect.clone()),
            contract: Box::new(world.repair().contract.clone()),
            video_before: String::new(),
        },
        "hand over" => Command::HandOver { to: String::new() },
        "take over" => Command::TakeOver { theirs: None, ours: world.facts().moment, typed: false },
        "practise" => Command::Practise { mishaps: vec![], surprise: false, pace: 60, real: world.facts().moment },
        "set pace" => Command::SetPace { pace: 10, real: world.facts().moment },
        "report" => Command::Report { happening: Happening::GasAlarm, ago_ms: 0 },
        "work out" => {
            let input = serde_json::json!({ "gauge_bar": 1.2, "inside_diameter_mm": 200 });
            let worked = named::worked("end-thrust", &input).unwrap();
            Command::WorkOut { worked: Box::new(worked) }
        }
        name => command(name, world),
    }
}

#[test]
fn each_command_is_for_its_roles() {
    for (name, where_, row) in TABLE {
        let cells: Vec<&str> = row.split_whitespace().collect();
        assert_eq!(cells.len(), ROLES.len(), "row {name}");
        for ((role, person), expected) in ROLES.into_iter().zip(cells) {
            let mut world = if where_.is_empty() { place("opened") } else { at(where_) };
            let told = asked(name, &world);
            if where_.is_empty() {
                world.repair = None;
            }
            let before = world.repair.clone();
            let outcome = world.by(person).when(told);
            assert_eq!(outcome.is_ok(), expected == "+", "{name} by {role}: {outcome:?}");
            if let Err(refusal) = outcome {
                let why = [Rule::ReadsOnly, Rule::ForemanNeeded, Rule::PersonMissing];
                assert!(refusal.broken.iter().any(|one| why.contains(&one.rule)), "{name} by {role}: {refusal:?}");
                assert_eq!(world.repair, before, "{name} by {role} changed something");
            }
        }
    }
}

#[test]
fn no_command_is_left_out_of_the_table() {
    // One of each: the compiler asks in `roles::needs` about a new one, and this asks for its row.
    let count = TABLE.iter().map(|(name, where_, _)| {
        let world = if where_.is_empty() { place("opened") } else { at(where_) };
        std::mem::discriminant(&asked(name, &world))
    });
    assert_eq!(count.collect::<std::collections::HashSet<_>>().len(), 23);
}

fn with_key(world: &mut World, revoked: bool) {
    let foreman = world.shelf.people.iter_mut().find(|person| person.id == "varga").unwrap();
    let revoked = revoked.then(|| Revoked { from_ms: 0, reason: "lost".into() });
    let key =
        PersonKey { fingerprint: "f".repeat(64), certificates: vec![], made_ms: 0, device: "phone".into(), revoked };
    foreman.keys.push(key);
}

fn waive(world: &mut World, key: Option<&str>) -> bool {
    let told = command("waive hold short", world);
    let facts = crate::facts::Facts { key: key.map(|letter| letter.repeat(64)), ..world.facts() };
    assert_eq!(roles::needs(&told), Needs::NamedForeman);
    let outcome = crate::procedure::decide(world.repair.as_ref(), &told, &facts, &world.shelf.people);
    if let Err(refusal) = &outcome {
        assert_eq!(refusal.broken[0].rule, Rule::PinMissing);
    }
    outcome.is_ok()
}

#[test]
fn a_waiver_needs_the_pin_of_the_foreman_who_has_a_key() {
    let mut world = place("hold");
    assert!(waive(&mut world, None), "without a key there is no PIN");
    with_key(&mut world, false);
    assert!(!waive(&mut world, None));
    assert!(!waive(&mut world, Some("e")), "the PIN of somebody else");
    assert!(waive(&mut world, Some("f")));
}

#[test]
fn a_revoked_key_sets_nobody_free_of_it() {
    let mut world = place("hold");
    with_key(&mut world, true);
    assert!(!waive(&mut world, None) && !waive(&mut world, Some("f")));
}

#[test]
fn an_outcome_is_a_report() {
    let told = Command::EndAttempt { outcome: Outcome::Discarded, reasons: vec![], in_pipe: String::new() };
    assert_eq!(roles::needs(&told), Needs::Anybody);
}
