//! A rehearsal that is played: what there is to see, and the debrief.

use serde::Serialize;

use super::broken::BrokenView;
use super::review::{self, What};
use crate::facts::Moment;
use crate::procedure::happening::Happening;
use crate::procedure::hold;
use crate::procedure::practice::{self, Mishap, Sight};
use crate::procedure::repair::{Attempt, Repair};
use crate::procedure::rules::{self, Rule, n};
use crate::procedure::stage::Outcome;

/// A rehearsal as it is played.
#[derive(Clone, Debug, Serialize)]
pub struct PracticeView {
    pub pace: u32,
    pub surprise: bool,
    /// What the instruments, the camera and the hands would say now.
    pub sights: Vec<Sight>,
    pub debrief: Debrief,
}

/// What was practised and what went wrong.
#[derive(Clone, Debug, Serialize)]
pub struct Debrief {
    /// Nothing is under way any more, or nothing was begun.
    pub over: bool,
    /// What went wrong on purpose. Of a surprise, only what has shown itself.
    pub met: Vec<Met>,
    /// Every rule that the record breaks, attempt by attempt.
    pub wrong: Vec<Wrong>,
}

/// A mishap and how it was met.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Met {
    pub mishap: Mishap,
    /// It has shown itself.
    pub struck: bool,
    /// It was met as the rules ask; `None` while it has not shown itself or the attempt goes on.
    pub handled: Option<bool>,
    /// The rule that it is about, or the one that was broken over it.
    pub rule: Rule,
}

/// A rule that was broken, in words.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Wrong {
    pub attempt: u32,
    pub rule: Rule,
    pub kind: rules::Kind,
    pub says: String,
    pub way_out: String,
    pub at_ms: Option<i64>,
    /// The foreman has waived it, with this reason.
    pub waived: Option<String>,
}

/// Returns what a rehearsal that is played shows; `None` for any other repair.
pub fn practice(repair: &Repair, now: &Moment) -> Option<PracticeView> {
    let practice = repair.practice.as_ref()?;
    let wrong = wrong(repair);
    let met = practice.mishaps.iter().map(|mishap| met(repair, &wrong, *mishap, now));
    let met = met.filter(|met| met.struck || !practice.surprise).collect();
    Some(PracticeView {
        pace: practice.pace,
        surprise: practice.surprise,
        sights: practice::sights(repair, now),
        debrief: Debrief { over: repair.attempt().is_none(), met, wrong },
    })
}

fn met(repair: &Repair, wrong: &[Wrong], mishap: Mishap, now: &Moment) -> Met {
    let struck = practice::struck(repair, mishap, now);
    let first = repair.attempts.first().filter(|_| struck);
    // A lateral is judged when the attempt is: until then it can still be opened.
    let judged = first.filter(|attempt| attempt.ended.is_some());
    let broken = first.and_then(|attempt| broken_over(wrong, attempt, mishap));
    let handled = judged.map(|attempt| broken.is_none() && done(repair, attempt, mishap));
    Met { mishap, struck, handled, rule: broken.unwrap_or_else(|| about(mishap)) }
}

/// The rule that a mishap is about.
fn about(mishap: Mishap) -> Rule {
    match mishap {
        Mishap::LeakingPacker => Rule::WindowMissed,
        Mishap::LateCrew => Rule::LateInflation,
        Mishap::HotDay => Rule::NoTime,
        Mishap::PackerStuck => Rule::TroubleReported,
        Mishap::WrongClock => Rule::ClockSet,
        Mishap::LateralUnderPatch => Rule::LateralCovered,
    }
}

/// Rules that are broken when a mishap is not met as it should be.
fn spoils(mishap: Mishap) -> &'static [Rule] {
    match mishap {
        Mishap::LeakingPacker => &[Rule::PressureLost, Rule::ReleasedEarly, Rule::HoldShort],
        Mishap::LateCrew => &[Rule::LateInflation, Rule::LateTapInFavour],
        Mishap::HotDay => &[Rule::JoinedWithoutGo, Rule::JoinedExpired, Rule::LateInflation],
        Mishap::PackerStuck => &[Rule::PulledByRods, Rule::LateInflation],
        Mishap::WrongClock => &[Rule::ReleasedEarly, Rule::HoldShort],
        Mishap::LateralUnderPatch => {
            &[Rule::LateralCovered, Rule::LateralOpening, Rule::LateralCutEarly, Rule::CouponMissing]
        }
    }
}

fn broken_over(wrong: &[Wrong], attempt: &Attempt, mishap: Mishap) -> Option<Rule> {
    spoils(mishap).iter().copied().find(|rule| wrong.iter().any(|one| (one.attempt, one.rule) == (attempt.n, *rule)))
}

/// Says whether what has to be done was done, where no rule tells.
fn done(repair: &Repair, attempt: &Attempt, mishap: Mishap) -> bool {
    let stopped = matches!(attempt.outcome(), Some(Outcome::Discarded | Outcome::LeftInPipe));
    match mishap {
        // A reading below the window says what was done about it.
        Mishap::LeakingPacker => {
            attempt.readings.iter().any(|one| !one.why.trim().is_empty())
                || attempt.troubles.iter().any(|(_, one)| *one == Happening::PressureLost)
        }
        Mishap::LateCrew => attempt.target.is_some() || stopped,
        Mishap::HotDay => attempt.second_go.is_some() || attempt.joined.is_none(),
        Mishap::PackerStuck => stopped && attempt.troubles.iter().any(|(_, one)| *one == Happening::Stuck),
        Mishap::WrongClock => true,
        Mishap::LateralUnderPatch => {
            let covered = repair.plan.as_ref().map_or(&[][..], |plan| &plan.computed.covered);
            covered.iter().all(|index| attempt.laterals.iter().any(|one| one.lateral == *index))
        }
    }
}

/// Returns every rule that the record breaks, attempt by attempt, each once.
fn wrong(repair: &Repair) -> Vec<Wrong> {
    let last = repair.last_attempt().map_or(1, |attempt| attempt.n);
    let mut found: Vec<Wrong> = repair.attempts.iter().flat_map(|attempt| recorded(repair, attempt)).collect();
    for off in review::review(repair).off {
        match off.what {
            // What the camera and the answers show is asked where there was a verdict; before, it is only unfinished.
            What::Rule { broken } if finished(repair) || broken.waived.is_some() => {
                found.push(of_view(last, off.at_ms, &broken))
            }
            What::Late { labels } => {
                let values = [("count".to_owned(), n(labels.len() as i64))].into();
                found.push(said(last, Rule::LateFillIn, &values, off.at_ms));
            }
            What::Clock { by_ms, .. } => {
                let values = [("by_ms".to_owned(), n(by_ms))].into();
                found.push(said(off.attempt, Rule::ClockSet, &values, off.at_ms));
            }
            What::Outside { .. }
            | What::Paper { .. }
            | What::Rule { .. }
            | What::Attempt { .. }
            | What::Correction { .. }
            | What::Gap { .. } => {}
        }
    }
    let mut once: Vec<Wrong> = vec![];
    for one in found {
        match once
            .iter_mut()
            .find(|other| (other.attempt, other.rule, &other.says) == (one.attempt, one.rule, &one.says))
        {
            Some(other) => other.waived = other.waived.take().or(one.waived),
            None => once.push(one),
        }
    }
    once.sort_by_key(|one| (one.attempt, one.at_ms.unwrap_or(i64::MAX)));
    once
}

fn finished(repair: &Repair) -> bool {
    let outcome = repair.last_attempt().and_then(Attempt::outcome);
    matches!(outcome, Some(Outcome::Accepted | Outcome::Rejected))
}

/// What a report broke, and what made the attempt doubtful.
fn recorded<'a>(repair: &'a Repair, attempt: &'a Attempt) -> impl Iterator<Item = Wrong> + 'a {
    let doubts = attempt.doubts.iter().map(|doubt| {
        let at = Some(doubt.at.moment.at_ms);
        let waiver = repair.waivers.iter().find(|one| (one.attempt, one.rule) == (attempt.n, doubt.rule));
        Wrong { waived: waiver.map(|one| one.reason.clone()), ..said(attempt.n, doubt.rule, &doubt.values, at) }
    });
    let broken = repair.broken.iter().filter(|broken| broken.attempt == attempt.n);
    let outside = outside(repair, attempt);
    doubts.chain(outside).chain(broken.map(|one| said(one.attempt, one.rule, &one.values, Some(one.at.moment.at_ms))))
}

/// The first reading outside the window, whether or not anybody witnessed how long.
fn outside(repair: &Repair, attempt: &Attempt) -> Option<Wrong> {
    let window = &repair.plan.as_ref()?.computed.window;
    let off =
        hold::held(attempt).iter().find(|one| one.gauge_pa < window.lower_pa || one.gauge_pa > window.upper_pa)?;
    let values = [
        ("gauge_pa".to_owned(), n(off.gauge_pa.as_pa())),
        ("lower_pa".to_owned(), n(window.lower_pa.as_pa())),
        ("upper_pa".to_owned(), n(window.upper_pa.as_pa())),
    ];
    Some(said(attempt.n, Rule::WindowMissed, &values.into(), Some(off.at.moment.at_ms)))
}

fn said(attempt: u32, rule: Rule, values: &rules::RuleValues, at_ms: Option<i64>) -> Wrong {
    Wrong {
        attempt,
        rule,
        kind: rule.row().kind,
        says: rule.says(values),
        way_out: rule.way_out(values),
        at_ms,
        waived: None,
    }
}

fn of_view(attempt: u32, at_ms: Option<i64>, view: &BrokenView) -> Wrong {
    Wrong {
        waived: view.waived.as_ref().map(|waiver| waiver.reason.clone()),
        ..said(attempt, view.rule, &view.values, at_ms)
    }
}
