//! What keeps a certificate from being made: each piece of evidence, dropped in turn.

use super::kit::Story;
use super::story::{discarded, mended, planned, pressed};
use crate::procedure::repair::{Attempt, Repair};
use crate::procedure::rules::Rule;
use crate::units::Length;

fn refused(story: &Story) -> Vec<Rule> {
    story.content().unwrap_err().into_iter().map(|broken| broken.rule).collect()
}

fn without(drop: impl FnOnce(&mut Repair)) -> Vec<Rule> {
    refused(&mended().changed(drop))
}

fn last(repair: &mut Repair) -> &mut Attempt {
    repair.attempts.last_mut().unwrap()
}

#[test]
fn a_repair_that_is_still_going_on_has_no_paper() {
    assert_eq!(refused(&planned(false)), [Rule::StageOrder]);
    assert_eq!(refused(&discarded(planned(false))), [Rule::StageOrder]);
    assert_eq!(refused(&pressed(discarded(planned(false)))), [Rule::StageOrder]);
}

#[test]
fn each_piece_of_identity_must_be_there() {
    let drops: [fn(&mut Repair); 7] = [
        |repair| repair.line.asset.clear(),
        |repair| repair.line.upstream.name.clear(),
        |repair| repair.line.downstream.name.clear(),
        |repair| repair.line.material.clear(),
        |repair| repair.contract.title.clear(),
        |repair| repair.contract.owner.clear(),
        |repair| repair.contract.contractor.clear(),
    ];
    for drop in drops {
        assert_eq!(without(drop), [Rule::NotCertain]);
    }
}

#[test]
fn each_piece_of_the_course_must_be_there() {
    assert!(without(|repair| last(repair).joined = None).contains(&Rule::NotCertain));
    assert!(without(|repair| last(repair).target = None).contains(&Rule::NotCertain));
    assert!(without(|repair| last(repair).released = None).contains(&Rule::NotCertain));
    assert!(without(|repair| last(repair).readings.clear()).contains(&Rule::NotCertain));
    assert_eq!(without(|repair| last(repair).at_mark = None), [Rule::NotCertain]);
}

#[test]
fn the_plan_the_number_and_both_signatures_must_be_there() {
    assert_eq!(without(|repair| repair.plan = None), [Rule::PlanMissing]);
    assert_eq!(without(|repair| repair.issued = None), [Rule::NotCertain]);
    assert_eq!(without(|repair| repair.signatures.clear()), [Rule::SignatureMissing, Rule::SignatureMissing]);
}

#[test]
fn every_mandatory_task_must_be_answered() {
    let story = mended();
    let tasks = &story.repair().plan.as_ref().unwrap().method.tasks;
    for task in tasks.iter().filter(|task| task.mandatory) {
        let rules = refused(&story.clone().changed(|repair| drop(last(repair).answers.remove(&task.key))));
        assert!(rules.contains(&Rule::TaskOpen), "{}: {rules:?}", task.key);
    }
}

#[test]
fn a_departure_without_a_decision_stops_the_certificate() {
    assert_eq!(
        without(|repair| repair.waivers.retain(|waiver| waiver.rule != Rule::LateralOpening)),
        [Rule::LateralOpening]
    );
    let photo_gone = without(|repair| repair.photos.retain(|photo| photo.key != "mat"));
    assert_eq!(photo_gone, [Rule::PhotoMissing]);
}

#[test]
fn times_that_contradict_each_other_stop_the_certificate() {
    let rules = without(|repair| {
        let attempt = last(repair);
        let joined = attempt.joined.as_mut().unwrap();
        joined.moment.boot_ms += 3_600_000;
        joined.moment.at_ms += 3_600_000;
    });
    assert!(rules.contains(&Rule::BadValue), "{rules:?}");
}

/// 4.85 m − 7.26 m: a patch 2.41 m short of its mark lies over the lateral at 4.85 m, and a house is shut off.
#[test]
fn a_lateral_that_the_patch_covers_only_where_it_came_to_rest_stops_the_certificate() {
    let rules = without(|repair| {
        last(repair).at_mark.as_mut().unwrap().beyond_um = Some(Length::from_um(-2_410_000));
    });
    assert!(rules.contains(&Rule::LateralCovered) && rules.contains(&Rule::CentreShifted), "{rules:?}");
}

#[test]
fn a_head_that_is_no_hash_is_refused() {
    let story = mended();
    for head in ["", "7C41", &"g".repeat(64), &"A".repeat(64)] {
        let chain = crate::certificate::ChainFacts {
            head_hex: head.into(),
            entries: 3,
            device: "K3F".into(),
            record: b"{}".to_vec(),
        };
        let made = crate::certificate::derive(story.repair(), &chain, story.people(), &|_| None, story.moment());
        assert_eq!(made.unwrap_err()[0].rule, Rule::BadValue);
    }
}
