//! A hold goes from one phone to another: what the first one timed by its boot clock is told by the second one's.

use crate::facts::Moment;
use crate::procedure::repair::{Attempt, Stamp};

/// Moves every stamp of the attempt that was timed by the boot clock of `theirs` to the boot clock of `ours`, the same
/// instant. What the wall clock showed stays as it was recorded.
pub fn move_to(attempt: &mut Attempt, theirs: &Moment, ours: &Moment) {
    let by_ms = ours.boot_ms - theirs.boot_ms;
    each(attempt, |moment| {
        if moment.boot_id == theirs.boot_id {
            moment.boot_ms += by_ms;
            moment.boot_id.clone_from(&ours.boot_id);
        }
    });
}

/// Visits every moment of an attempt. All fields are named: the compiler asks about each new one.
fn each(attempt: &mut Attempt, mut visit: impl FnMut(&mut Moment)) {
    let Attempt {
        n: _,
        spans,
        answers,
        temperatures,
        test_push,
        go,
        second_go,
        joined,
        insertion,
        at_mark,
        air_joined,
        target,
        readings,
        sample,
        released,
        troubles,
        place,
        laterals,
        tightness,
        doubts,
        handed,
        ended,
    } = attempt;
    let mut stamps: Vec<&mut Stamp> = vec![];
    stamps.extend(spans.iter_mut().flat_map(|span| std::iter::once(&mut span.begun).chain(&mut span.ended)));
    for answered in answers.values_mut() {
        stamps.push(&mut answered.at);
        stamps.extend(answered.before.iter_mut().map(|(at, _)| at));
    }
    stamps.extend(temperatures.iter_mut().map(|(at, _)| at));
    stamps.extend(&mut test_push.begun);
    stamps.extend(test_push.reached.iter_mut().map(|(at, _)| at));
    stamps.extend(test_push.back.iter_mut().map(|(at, _)| at));
    stamps.extend([go, second_go].into_iter().flatten().map(|go| &mut go.at));
    stamps.extend([joined, insertion, air_joined].into_iter().flatten());
    stamps.extend(at_mark.iter_mut().map(|mark| &mut mark.at));
    stamps.extend(target.iter_mut().map(|target| &mut target.at));
    stamps.extend(readings.iter_mut().map(|reading| &mut reading.at));
    stamps.extend(sample.iter_mut().map(|(at, _)| at));
    stamps.extend(released.iter_mut().map(|(at, _)| at));
    stamps.extend(troubles.iter_mut().map(|(at, _)| at));
    stamps.extend(place.iter_mut().map(|(at, _)| at));
    stamps.extend(laterals.iter_mut().map(|lateral| &mut lateral.at));
    stamps.extend(tightness.iter_mut().map(|(at, _, _)| at));
    stamps.extend(doubts.iter_mut().map(|doubt| &mut doubt.at));
    stamps.extend(handed.iter_mut().map(|handed| &mut handed.at));
    stamps.extend(ended.iter_mut().map(|ended| &mut ended.at));
    stamps.into_iter().for_each(|stamp| visit(&mut stamp.moment));
}
