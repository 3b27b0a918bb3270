//! A hold that goes from one phone to another: elapsed time stays right, whatever both clocks show.

use super::kit::{MINUTE, World, reading, span};
use crate::facts::{Facts, Moment};
use crate::procedure::command::Command;
use crate::procedure::gate::Around;
use crate::procedure::happening::Happening;
use crate::procedure::hold;
use crate::procedure::rules::{Refusal, Rule};
use crate::procedure::stage::Stage;
use crate::procedure::times;
use crate::procedure::{Event, Record, apply, decide, replay};
use crate::units::Span;
use crate::view;

/// A second phone: how far its wall clock is ahead of the first one's, and how long it has run longer.
struct Second {
    ahead_ms: i64,
    runs_longer_ms: i64,
}

const PHONES: [Second; 5] = [
    Second { ahead_ms: 0, runs_longer_ms: 9 * 86_400_000 },
    Second { ahead_ms: 7 * MINUTE, runs_longer_ms: -30 * MINUTE },
    Second { ahead_ms: -7 * MINUTE, runs_longer_ms: 0 },
    Second { ahead_ms: 3 * 60 * MINUTE, runs_longer_ms: 86_400_000 },
    Second { ahead_ms: -400 * 86_400_000, runs_longer_ms: 86_400_000 },
];

impl Second {
    /// What its clocks show at the moment of the story.
    fn moment(&self, world: &World) -> Moment {
        let first = world.facts().moment;
        Moment {
            at_ms: first.at_ms + self.ahead_ms,
            boot_ms: first.boot_ms + self.runs_longer_ms,
            boot_id: "second".into(),
            ..first
        }
    }

    fn when(&self, world: &mut World, command: Command) -> Result<Vec<Event>, Refusal> {
        let mut facts = world.facts();
        facts.moment = self.moment(world);
        facts.device = "other".into();
        let events = decide(world.repair.as_ref(), &command, &facts, &world.shelf.people)?;
        let record = Record { facts, events: events.clone() };
        world.repair = apply::apply_record(world.repair.take(), &record);
        world.records.push(record);
        Ok(events)
    }

    fn must(&self, world: &mut World, command: Command) {
        self.when(world, command).expect("recorded");
    }

    fn takes_over(&self, world: &mut World, typed: bool) -> Result<Vec<Event>, Refusal> {
        let (theirs, ours) = (Some(world.facts().moment), self.moment(world));
        self.when(world, Command::TakeOver { theirs, ours, typed })
    }

    fn without_it(&self, world: &mut World) -> Result<Vec<Event>, Refusal> {
        let ours = self.moment(world);
        self.when(world, Command::TakeOver { theirs: None, ours, typed: false })
    }

    fn hold_for(&self, world: &mut World, readings: u32) {
        for _ in 0..readings {
            world.after(10.0);
            self.must(world, Command::Report { happening: reading(1.30, 12.8), ago_ms: 0 });
        }
    }
}

fn hand_over() -> Command {
    Command::HandOver { to: "Mika".into() }
}

/// Three readings, then it is handed over four minutes later and taken over two more minutes later.
fn handed() -> World {
    let mut world = World::in_stage(Stage::Hold);
    world.hold_for(3).after(4.0).must(hand_over()).after(2.0);
    world
}

fn counted(world: &World) -> (Span, Span) {
    let (plan, attempt) = times::plan_and_attempt(world.repair()).unwrap();
    let shown = hold::state(plan, attempt).unwrap().shown;
    (shown.counted_ms, shown.not_witnessed_ms)
}

#[test]
fn the_second_phone_goes_on_counting_whatever_its_clocks_show() {
    let mut alone = World::in_stage(Stage::Hold);
    alone.hold_for(3).after(10.0).report(reading(1.30, 12.8)).hold_for(4);
    for phone in PHONES {
        let mut world = handed();
        phone.takes_over(&mut world, false).unwrap();
        world.after(4.0);
        phone.must(&mut world, Command::Report { happening: reading(1.30, 12.8), ago_ms: 0 });
        phone.hold_for(&mut world, 4);
        assert_eq!(counted(&world), counted(&alone), "{} ms ahead", phone.ahead_ms);
        assert_eq!(counted(&world), (span(80, 0), span(0, 0)));
        assert_eq!(world.repair().clock_jumps, [], "two phones are no clock that was set");
        phone.must(&mut world, Command::Report { happening: Happening::SampleFelt { hard: true }, ago_ms: 0 });
        phone.must(&mut world, Command::Release);
        assert_eq!(replay(&world.records).as_ref(), world.repair.as_ref());
    }
}

#[test]
fn what_is_due_is_due_by_the_same_minutes_on_the_second_phone() {
    for phone in PHONES {
        let mut world = handed();
        let due = |world: &World, now: &Moment| {
            let facts = Facts { moment: now.clone(), device: "other".into(), ..Facts::default() };
            let around = Around { facts: &facts, people: &world.shelf.people };
            let shown = view::repair_view(world.repair(), &around).hold.unwrap();
            (shown.reading_due_ms.unwrap() - now.at_ms, shown.earliest_release_ms - now.at_ms)
        };
        let before = due(&world, &world.facts().moment);
        phone.takes_over(&mut world, false).unwrap();
        assert_eq!(due(&world, &phone.moment(&world)), before);
    }
}

/// The minutes from the last reading on the first phone to the first one on the second: nobody can say how many.
#[test]
fn without_the_first_phone_nothing_between_its_last_reading_and_the_next_counts() {
    for phone in PHONES {
        let mut world = handed();
        phone.without_it(&mut world).unwrap();
        world.after(4.0);
        phone.must(&mut world, Command::Report { happening: reading(1.30, 12.8), ago_ms: 0 });
        phone.hold_for(&mut world, 2);
        let (counted, _) = counted(&world);
        assert_eq!(counted, span(50, 0), "{} ms ahead", phone.ahead_ms);
    }
}

#[test]
fn a_typed_clock_that_adds_minutes_is_the_foremans_to_answer_for() {
    for phone in PHONES {
        let mut world = handed();
        phone.takes_over(&mut world, true).unwrap();
        // By the wall clocks a phone that is behind would have counted less: so the typed one gave something.
        let asks = phone.ahead_ms < 0;
        let open = world.repair().open_departures().iter().any(|one| one.rule == Rule::LateTapInFavour);
        assert_eq!(open, asks, "{} ms ahead", phone.ahead_ms);
    }
}

#[test]
fn the_first_phone_is_told_and_reminds_no_more_until_it_takes_the_hold_back() {
    let mut world = handed();
    assert!(world.repair().is_away("phone") && !world.repair().is_away("other"));
    let shown = |world: &World| {
        let facts = world.facts();
        let around = Around { facts: &facts, people: &world.shelf.people };
        view::repair_view(world.repair(), &around)
    };
    let view = shown(&world);
    let told = view.handed.as_ref().unwrap();
    assert!(told.given && told.away && told.to == "Mika");
    assert_eq!(view.hold.unwrap().reading_due_ms, None);
    assert!(view::other(world.repair(), &world.facts().moment, "phone").is_none());
    assert!(view::other(world.repair(), &world.facts().moment, "other").is_some());
    let ours = world.facts().moment;
    world.must(Command::TakeOver { theirs: None, ours, typed: false });
    assert!(!world.repair().is_away("phone"));
    world.after(4.0).report(reading(1.30, 12.8)).hold_for(4);
    assert_eq!(counted(&world), (span(80, 0), span(0, 0)), "as if it had never been handed over");
}

#[test]
fn both_sides_are_in_the_record_with_a_note_that_names_the_clocks() {
    let mut world = handed();
    PHONES[1].takes_over(&mut world, false).unwrap();
    let notes: Vec<&str> = world.repair().notes.iter().map(|note| note.text.as_str()).collect();
    let wanted = [
        "The hold was handed over to Mika.",
        "The hold was taken over from phone phone. Its clock was 7 min 0 s behind this one.",
    ];
    assert!(wanted.iter().all(|note| notes.contains(note)), "{notes:?}");
    let events: Vec<&Event> = world.records.iter().flat_map(|record| &record.events).collect();
    assert!(events.iter().any(|event| matches!(event, Event::HandedOver { .. })));
    assert!(events.iter().any(|event| matches!(event, Event::TakenOver { theirs: Some(_), .. })));
}

#[test]
fn only_a_hold_that_runs_is_handed_over_and_only_once_taken() {
    for stage in [Stage::Staging, Stage::WetOut, Stage::Inflation, Stage::Deflation] {
        World::in_stage(stage).refuses(hand_over(), Rule::BadValue);
    }
    let phone = &PHONES[1];
    assert!(phone.without_it(&mut World::in_stage(Stage::Hold)).is_err(), "nobody handed it over");
    let mut world = handed();
    phone.takes_over(&mut world, false).unwrap();
    assert!(phone.takes_over(&mut world, false).is_err(), "it was taken over already");
    world.refuses(hand_over(), Rule::BadValue);
    phone.must(&mut world, Command::HandOver { to: String::new() });
    assert!(world.repair().is_away("other"));
}

#[test]
fn a_time_before_the_hand_over_an_old_picture_and_a_restarted_phone_are_refused() {
    let phone = &PHONES[1];
    let with = |change: fn(&mut Moment, &mut Moment)| {
        let mut world = handed();
        let (mut theirs, mut ours) = (world.facts().moment, phone.moment(&world));
        change(&mut theirs, &mut ours);
        let before = world.repair.clone();
        let outcome = phone.when(&mut world, Command::TakeOver { theirs: Some(theirs), ours, typed: false });
        assert!(outcome.is_err());
        assert_eq!(world.repair, before);
    };
    with(|theirs, _| theirs.boot_ms -= 3 * MINUTE);
    with(|theirs, _| theirs.boot_id = "started anew".into());
    with(|_, ours| ours.boot_ms -= 5 * MINUTE);
    with(|_, ours| ours.boot_ms += MINUTE);
    with(|_, ours| ours.boot_id = "before".into());
}
