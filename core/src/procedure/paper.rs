//! What was written on paper and keyed in later: each entry with its name and both times.

use super::decide::words;
use super::happening::Happening;
use super::repair::{Attempt, Stamp};

/// Returns everything of an attempt that was keyed in from paper, in the order in which it happened.
///
/// What was carried over from an earlier attempt belongs to that one.
pub fn keyed(attempt: &Attempt) -> Vec<(String, &Stamp)> {
    let mut all: Vec<(String, &Stamp)> = named(attempt).into_iter().filter(|(_, at)| at.paper).collect();
    all.sort_by_key(|(_, at)| at.moment.at_ms);
    all
}

fn named(attempt: &Attempt) -> Vec<(String, &Stamp)> {
    let push = Some(&attempt.test_push).filter(|push| push.carried_from.is_none());
    let taps = [
        ("test push begun", push.and_then(|push| push.begun.as_ref())),
        ("packer at the mark in the test push", push.and_then(|push| push.reached.as_ref().map(|(at, _)| at))),
        ("packer back from the test push", push.and_then(|push| push.back.as_ref().map(|(at, _)| at))),
        ("go", attempt.go.as_ref().map(|go| &go.at)),
        ("second go", attempt.second_go.as_ref().map(|go| &go.at)),
        (words(&Happening::Joined), attempt.joined.as_ref()),
        (words(&Happening::InsertionBegun), attempt.insertion.as_ref()),
        ("packer at the mark", attempt.at_mark.as_ref().map(|mark| &mark.at)),
        (words(&Happening::AirJoined), attempt.air_joined.as_ref()),
        ("target pressure reached", attempt.target.as_ref().map(|target| &target.at)),
        ("released", attempt.released.as_ref().map(|(at, _)| at)),
        ("place of the patch", attempt.place.as_ref().map(|(at, _)| at)),
        ("attempt ended", attempt.ended.as_ref().map(|ended| &ended.at)),
    ];
    let taps = taps.into_iter().filter_map(|(what, at)| Some((what.to_owned(), at?)));
    let own = attempt.answers.values().filter(|answered| answered.carried_from.is_none());
    let again = own.clone().flat_map(|one| one.before.iter().map(|(at, _)| (one.label.clone(), at)));
    let answers = own.map(|answered| (answered.label.clone(), &answered.at)).chain(again);
    let stages = attempt.spans.iter().map(|span| (format!("stage {}", span.stage.word()), &span.begun));
    let temperatures = attempt.temperatures.iter().map(|(at, _)| ("temperatures read".to_owned(), at));
    let readings = attempt.readings.iter().map(|reading| ("reading".to_owned(), &reading.at));
    let sample = attempt.sample.iter().map(|(at, _)| ("sample felt".to_owned(), at));
    let troubles = attempt.troubles.iter().map(|(at, what)| (words(what).to_owned(), at));
    let laterals = attempt.laterals.iter().map(|opened| ("lateral opened".to_owned(), &opened.at));
    let test = attempt.tightness.iter().map(|(at, ..)| ("tightness test".to_owned(), at));
    taps.chain(answers)
        .chain(stages)
        .chain(temperatures)
        .chain(readings)
        .chain(sample)
        .chain(troubles)
        .chain(laterals)
        .chain(test)
        .collect()
}
