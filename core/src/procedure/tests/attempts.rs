//! Attempts that fail, the next one, and the way to the certificate.

use super::kit::World;
use crate::procedure::answer::Value;
use crate::procedure::apply::replay;
use crate::procedure::command::Command;
use crate::procedure::happening::Happening;
use crate::procedure::hold;
use crate::procedure::repair::{Ending, Standing};
use crate::procedure::rules::Rule;
use crate::procedure::stage::{Outcome, PatchPlace, Stage};

fn end(outcome: Outcome) -> Command {
    Command::EndAttempt { outcome, reasons: vec!["too slow".into()], in_pipe: "nothing".into() }
}

fn sign() -> Command {
    Command::Sign { name: String::new(), statement: "I sign.".into(), strokes: vec![vec![(1, 1), (5, 5)]] }
}

#[test]
fn a_discarded_patch_leads_to_a_second_attempt_that_keeps_what_is_about_the_site() {
    let mut world = World::in_stage(Stage::WetOut);
    world.join().after(35.0).report(Happening::PatchIs { place: PatchPlace::OnTable });
    world.must(end(Outcome::Discarded));
    assert_eq!(world.repair().standing(), Standing::Between);
    world.must(Command::NewAttempt { pipe_unharmed: true, packer_unharmed: true });
    let attempt = world.repair().attempt().unwrap();
    assert_eq!((attempt.n, attempt.stage(), attempt.test_push.carried_from), (2, Stage::Staging, Some(1)));
    let of = |stage| {
        let answers = attempt.answers.iter().filter(move |(_, answered)| answered.stage == stage);
        answers.map(|(key, _)| key.as_str()).collect::<Vec<_>>()
    };
    assert_eq!(of(Stage::Staging), ["diameter", "flow", "instruments", "permit", "suitability"]);
    assert_eq!(of(Stage::TestPush), ["back", "dry_push", "mark_agrees", "obstacles"]);
    assert_eq!(attempt.answers.len(), 9);
    world.answer_all().must(Command::GoOn);
    assert_eq!(world.repair().stage(), Stage::SleeveChange);
}

#[test]
fn a_harmed_packer_is_pushed_dry_again() {
    let mut world = World::in_stage(Stage::Hold);
    world.report(Happening::Burst).must(end(Outcome::LeftInPipe));
    world.must(Command::NewAttempt { pipe_unharmed: true, packer_unharmed: false });
    world.answer_all().must(Command::GoOn);
    assert_eq!(world.repair().stage(), Stage::TestPush);
}

#[test]
fn a_report_before_the_first_stage_begins_an_attempt_rather_than_getting_lost() {
    let mut world = World::planned();
    world.report(Happening::Joined);
    let attempt = world.repair().attempt().unwrap();
    assert_eq!((attempt.n, attempt.stage()), (1, Stage::WetOut));
    assert_eq!(attempt.doubts[0].rule, Rule::JoinedWithoutGo);
}

#[test]
fn a_doubtful_attempt_is_accepted_only_when_the_foreman_has_decided_the_doubt() {
    let mut world = World::in_stage(Stage::WetOut);
    world.join().after(33.0).report(Happening::TargetReached { gauge_pa: super::kit::bar(1.3) });
    world.report(Happening::AtTheMark { counter_um: None, beyond_um: None });
    world.hold_for(8).report(Happening::SampleFelt { hard: true }).must(Command::Release);
    world.answer_all().must(Command::GoOn);
    for stage in Stage::ALL {
        world.answer_stage(stage);
    }
    let accept = || Command::Judge { accept: true, reasons: vec![] };
    world.by("ekdal").refuses(accept(), Rule::ForemanNeeded);
    world.by("varga").refuses(accept(), Rule::LateInflation);
    world.must(Command::Waive {
        rule: Rule::LateInflation,
        subject: "doubt".into(),
        reason: "full turn shows no lift".into(),
        foreman: "varga".into(),
    });
    world.must(accept());
    assert_eq!(world.repair().standing(), Standing::Complete);
}

#[test]
fn the_certificate_needs_both_signatures() {
    let mut world = World::accepted();
    let issue = || Command::Issue { number: "K3F-0001".into() };
    world.refuses(issue(), Rule::SignatureMissing);
    world.by("ekdal").must(sign());
    world.refuses(issue(), Rule::SignatureMissing);
    world.by("varga").must(sign()).must(issue());
    assert_eq!(world.repair().issued.as_ref().unwrap().number, "K3F-0001");
    world.refuses(Command::NewAttempt { pipe_unharmed: true, packer_unharmed: true }, Rule::StageOrder);
}

#[test]
fn a_rejected_patch_has_a_record_of_its_own_and_the_next_attempt_another() {
    let mut world = World::in_stage(Stage::Verification);
    world.refuses(sign(), Rule::NotComplete);
    world.by("varga").must(Command::Judge { accept: false, reasons: vec!["an edge is loose".into()] });
    assert_eq!(world.repair().ending(), Some(Ending::Rejected));
    world.by("ekdal").must(sign()).by("varga").must(sign()).must(Command::Issue { number: "K3F-0001".into() });
    world.must(Command::NewAttempt { pipe_unharmed: true, packer_unharmed: true });
    let repair = world.repair();
    assert_eq!((repair.ending(), repair.signatures.len(), repair.issued.as_ref()), (None, 0, None));
    assert_eq!(repair.issued_before[0].number, "K3F-0001");
}

#[test]
fn a_repair_closed_without_a_patch_is_signed_like_any_other() {
    let mut world = World::planned();
    world.by("varga").must(Command::CloseUnrepaired { reason: "the line is dug up".into() });
    assert_eq!(world.repair().ending(), Some(Ending::Unrepaired));
    world.by("ekdal").must(sign()).by("varga").must(sign()).must(Command::Issue { number: "K3F-0002".into() });
    assert_eq!(world.repair().standing(), Standing::Unrepaired);
}

#[test]
fn a_discarded_patch_is_nothing_to_sign() {
    let mut world = World::in_stage(Stage::WetOut);
    world.join().after(35.0).report(Happening::PatchIs { place: PatchPlace::OnTable });
    world.must(end(Outcome::Discarded));
    world.refuses(sign(), Rule::NotComplete);
}

#[test]
fn what_is_read_after_the_release_is_no_hold() {
    let mut world = World::in_stage(Stage::Hold);
    world.hold_for(8).report(Happening::SampleFelt { hard: true }).must(Command::Release);
    let state = |world: &World| {
        let attempt = world.repair().last_attempt().unwrap();
        hold::state(&world.plan(), attempt).unwrap()
    };
    let before = state(&world);
    world.after(5.0).report(super::kit::reading(0.0, 4.0));
    assert_eq!(state(&world), before, "neither its pressure nor its cold counts");
}

#[test]
fn an_empty_drawing_is_no_signature() {
    let mut world = World::accepted();
    let empty = Command::Sign { name: String::new(), statement: "I sign.".into(), strokes: vec![vec![(1, 1)]] };
    world.refuses(empty, Rule::SignatureEmpty);
}

#[test]
fn a_rehearsal_never_gets_the_number_of_a_record() {
    let mut world = World::accepted();
    world.by("ekdal").must(sign()).by("varga").must(sign());
    world.repair.as_mut().unwrap().rehearsal = true;
    world.refuses(Command::Issue { number: "K3F-0001".into() }, Rule::RehearsalOnly);
    world.must(Command::Issue { number: "REHEARSAL K3F-R001".into() });
}

#[test]
fn a_missing_owner_key_of_the_pipe_stops_the_signature() {
    let mut world = World::accepted();
    world.repair.as_mut().unwrap().line.asset.clear();
    world.refuses(sign(), Rule::NotCertain);
}

#[test]
fn replay_gives_the_repair_as_it_stood() {
    let world = World::accepted();
    assert_eq!(replay(&world.records).as_ref(), Some(world.repair()));
}

#[test]
fn nobody_accepts_a_patch_that_nobody_has_placed() {
    let mut world = World::in_stage(Stage::WetOut);
    world.join().after(20.0).report(Happening::TargetReached { gauge_pa: super::kit::bar(1.3) });
    world.hold_for(8).report(Happening::SampleFelt { hard: true }).must(Command::Release);
    world.answer_all().must(Command::GoOn);
    for stage in Stage::ALL {
        world.answer_stage(stage);
    }
    let accept = || Command::Judge { accept: true, reasons: vec![] };
    world.by("varga").refuses(accept(), Rule::NotCertain);
    world.report(Happening::AtTheMark { counter_um: None, beyond_um: None }).must(accept());
}

#[test]
fn a_test_that_is_answered_as_a_task_is_the_test_that_the_contract_asks_for() {
    let mut world = World::in_stage(Stage::Verification);
    let answer =
        |result: &str| [("method", Value::Text("EN 1610, air".into())), ("result", Value::Text(result.into()))];
    world.answer("tightness", &answer("not_tight"));
    let tested = |world: &World| world.repair().attempt().unwrap().tightness.as_ref().map(|(_, tight, _)| *tight);
    assert_eq!(tested(&world), Some(false));
    world.answer("tightness", &answer("tight"));
    assert_eq!(tested(&world), Some(true));
}
