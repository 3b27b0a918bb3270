//! The foreman's review, by exception: everything off the plan, in the order in which it asks for a look.

use serde::Serialize;

use super::broken::{self, BrokenView};
use super::retold::label;
use crate::checks::hold::StretchKind;
use crate::procedure::gate;
use crate::procedure::paper::keyed;
use crate::procedure::plan::Plan;
use crate::procedure::repair::{Attempt, Repair, Stamp};
use crate::procedure::rules::{Broken, Rule};
use crate::procedure::stage::Outcome;
use crate::procedure::{hold, times};
use crate::shelf::Role;
use crate::shelf::method::TaskKind;
use crate::words::{self, retold};

/// What the foreman reviews: everything off the plan, waived or not.
#[derive(Clone, Debug, Serialize)]
pub struct Review {
    pub broken: Vec<BrokenView>,
    /// How many still wait for the foreman.
    pub open: usize,
    pub doubtful: bool,
    pub signed: Vec<Role>,
    /// The same, with all that is kept and printed without asking: doubts first, then what is open, then by time.
    pub off: Vec<Off>,
}

/// One thing off the plan.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Off {
    /// Its number in the order of time, from 1.
    pub n: usize,
    /// When it happened, by the wall clock of the record; `None` for something that is not there.
    pub at_ms: Option<i64>,
    /// The id of who recorded it; `None` where the rules found it.
    pub person: Option<String>,
    pub attempt: u32,
    /// It makes the attempt doubtful.
    pub doubt: bool,
    /// It waits for the foreman.
    pub open: bool,
    pub what: What,
}

/// What it is.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum What {
    /// A rule that the record breaks, and what the foreman said to it.
    Rule {
        broken: Box<BrokenView>,
    },
    /// An earlier attempt that ended without an accepted patch.
    Attempt {
        outcome: Outcome,
        reasons: Vec<String>,
        in_pipe: String,
    },
    Correction {
        label: String,
        old: String,
        new: String,
        reason: String,
    },
    /// Part of the hold that nobody witnessed.
    Gap {
        from_ms: i64,
        to_ms: i64,
    },
    /// Part of the hold out of the pressure window.
    Outside {
        from_ms: i64,
        to_ms: i64,
    },
    /// Answers that were filled in after their stage.
    Late {
        labels: Vec<String>,
    },
    /// What was keyed in from paper: each with when it happened and when it was keyed in, by the wall clock.
    Paper {
        entries: Vec<Keyed>,
    },
    /// The wall clock was set.
    Clock {
        by_ms: i64,
        restarted: bool,
    },
}

/// An entry from paper.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Keyed {
    pub what: String,
    pub at_ms: i64,
    pub keyed_ms: i64,
    pub person: Option<String>,
}

/// Returns the review of the attempt that was begun last.
pub fn review(repair: &Repair) -> Review {
    let views = rules(repair);
    Review {
        open: views.iter().filter(|view| open(view)).count(),
        doubtful: repair.last_attempt().is_some_and(|attempt| !attempt.doubts.is_empty()),
        signed: repair.signatures.iter().map(|signature| signature.role).collect(),
        off: off(repair, &views),
        broken: views,
    }
}

/// Returns every rule that the record of the last attempt breaks, once each, with what the foreman said to it.
fn rules(repair: &Repair) -> Vec<BrokenView> {
    let mut found: Vec<Broken> = vec![];
    let mut once = |broken: Broken| {
        if !found.iter().any(|one| one.rule == broken.rule && one.subject == broken.subject) {
            found.push(broken);
        }
    };
    if let Some((plan, attempt)) = times::plan_and_attempt(repair) {
        gate::findings(repair, plan, attempt).into_iter().for_each(&mut once);
        let recorded = repair.broken.iter().filter(|broken| broken.attempt == attempt.n);
        recorded.map(broken::from_recorded).for_each(&mut once);
    }
    let mut views: Vec<BrokenView> = found.iter().map(|one| BrokenView::of(repair, one)).collect();
    views.extend(broken::waived_otherwise(repair, &found));
    views
}

fn open(view: &BrokenView) -> bool {
    view.waived.is_none() && view.waivable
}

fn off(repair: &Repair, views: &[BrokenView]) -> Vec<Off> {
    let mut all: Vec<Off> = views.iter().map(|view| rule(repair, view)).collect();
    all.extend(repair.attempts.iter().filter_map(ended));
    all.extend(repair.corrections.iter().map(|one| {
        let what = What::Correction {
            label: label(&one.label),
            old: words::recorded(&one.old),
            new: words::recorded(&one.new),
            reason: one.reason.clone(),
        };
        plain(Some(&one.at), one.attempt, what)
    }));
    if let Some((plan, attempt)) = times::plan_and_attempt(repair) {
        all.extend(stretches(plan, attempt));
        all.extend(late(attempt));
        all.extend(from_paper(attempt));
    }
    let n = repair.last_attempt().map_or(1, |attempt| attempt.n);
    all.extend(
        repair
            .clock_jumps
            .iter()
            .map(|jump| plain(Some(&jump.at), n, What::Clock { by_ms: jump.by_ms, restarted: jump.restarted })),
    );
    // What has no time of its own is found at the end.
    all.sort_by_key(|one| one.at_ms.unwrap_or(i64::MAX));
    for (place, one) in all.iter_mut().enumerate() {
        one.n = place + 1;
    }
    all.sort_by_key(|one| (!(one.doubt && one.open), !one.open));
    all
}

fn plain(at: Option<&Stamp>, attempt: u32, what: What) -> Off {
    Off {
        n: 0,
        at_ms: at.map(|at| at.moment.at_ms),
        person: at.and_then(|at| at.person.clone()),
        attempt,
        doubt: false,
        open: false,
        what,
    }
}

fn rule(repair: &Repair, view: &BrokenView) -> Off {
    let attempt = repair.last_attempt();
    let at = attempt.and_then(|attempt| happened(repair, attempt, view));
    let n = attempt.map_or(1, |attempt| attempt.n);
    Off {
        doubt: view.subject == "doubt",
        open: open(view),
        ..plain(at, n, What::Rule { broken: Box::new(view.clone()) })
    }
}

/// Returns when that happened which broke the rule, and by whom it was recorded.
fn happened<'a>(repair: &'a Repair, attempt: &'a Attempt, view: &'a BrokenView) -> Option<&'a Stamp> {
    let recorded = |one: &&crate::procedure::repair::Broken| {
        (one.attempt, one.rule, &one.subject) == (attempt.n, view.rule, &view.subject)
    };
    let answer = |kind| attempt.answer(kind).map(|answered| &answered.at);
    let doubt = attempt.doubts.iter().find(|doubt| doubt.rule == view.rule).map(|doubt| &doubt.at);
    let breach = repair.broken.iter().find(recorded).map(|broken| &broken.at);
    let own = match view.rule {
        Rule::LateralOpening | Rule::LateralCutEarly | Rule::CouponMissing => {
            let opened =
                |one: &&crate::procedure::repair::LateralOpened| view.subject == format!("lateral {}", one.lateral);
            attempt.laterals.iter().rev().find(opened).map(|opened| &opened.at)
        }
        Rule::HoldShort | Rule::ReleasedEarly => attempt.released.as_ref().map(|(at, _)| at),
        Rule::RatioOutside => answer(TaskKind::PartsUsed),
        Rule::MixingShort => answer(TaskKind::Mixed),
        Rule::CentreShifted => attempt.at_mark.as_ref().map(|mark| &mark.at),
        Rule::PulledByRods | Rule::LeftBehind => answer(TaskKind::AllBack),
        Rule::EdgeLifted => answer(TaskKind::Edges),
        Rule::FoldHigh => answer(TaskKind::Folds),
        Rule::WaterComes => answer(TaskKind::Infiltration),
        Rule::SurfaceNotSound => answer(TaskKind::Surface),
        Rule::TestedEarly | Rule::NotTight => attempt.tightness.as_ref().map(|(at, _, _)| at),
        _ => None,
    };
    own.or(doubt).or(breach).or(view.waived.as_ref().map(|waiver| &waiver.at))
}

fn ended(attempt: &Attempt) -> Option<Off> {
    let ended = attempt.ended.as_ref().filter(|ended| ended.outcome != Outcome::Accepted)?;
    let what = What::Attempt {
        outcome: ended.outcome,
        reasons: ended.reasons.iter().map(|reason| retold(reason)).collect(),
        in_pipe: retold(&ended.in_pipe),
    };
    Some(plain(Some(&ended.at), attempt.n, what))
}

/// Returns the parts of the hold that did not count, by the wall clock of the joining.
fn stretches(plan: &Plan, attempt: &Attempt) -> Vec<Off> {
    let (Some(state), Some(joined)) = (hold::state(plan, attempt), &attempt.joined) else { return vec![] };
    let wall = |ms: i64| joined.moment.at_ms + ms;
    let stretches = state.shown.stretches.iter().filter_map(|one| {
        let (from_ms, to_ms) = (wall(one.from_ms), wall(one.to_ms));
        let what = match one.kind {
            StretchKind::NotWitnessed => What::Gap { from_ms, to_ms },
            StretchKind::OutsideWindow => What::Outside { from_ms, to_ms },
            StretchKind::BeforePressure | StretchKind::Counted => return None,
        };
        Some(Off { at_ms: Some(from_ms), ..plain(None, attempt.n, what) })
    });
    stretches.collect()
}

fn late(attempt: &Attempt) -> Option<Off> {
    let answers: Vec<_> = attempt.answers.values().filter(|answered| answered.late).collect();
    let last = answers.iter().max_by_key(|answered| answered.at.moment.at_ms)?;
    let labels = answers.iter().map(|answered| retold(&answered.label)).collect();
    Some(plain(Some(&last.at), attempt.n, What::Late { labels }))
}

fn from_paper(attempt: &Attempt) -> Option<Off> {
    let keyed = keyed(attempt);
    let (_, last) = keyed.iter().max_by_key(|(_, at)| at.tapped_ms())?;
    let entry = |(what, at): &(String, &Stamp)| Keyed {
        what: retold(what),
        at_ms: at.moment.at_ms,
        keyed_ms: at.tapped_ms(),
        person: at.person.clone(),
    };
    Some(plain(Some(last), attempt.n, What::Paper { entries: keyed.iter().map(entry).collect() }))
}

/// Returns the rules that wait for the foreman, in the order of the review.
pub fn asks(review: &Review) -> Vec<Rule> {
    let open = review.off.iter().filter(|one| one.open);
    open.filter_map(|one| match &one.what {
        What::Rule { broken } => Some(broken.rule),
        _ => None,
    })
    .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::procedure::answer::Value;
    use crate::procedure::command::Command;
    use crate::procedure::happening::Happening;
    use crate::procedure::stage::Stage;
    use crate::procedure::tests::kit::{World, reading};

    fn kinds(review: &Review) -> Vec<(usize, String, bool)> {
        let kind = |what: &What| match what {
            What::Rule { broken } => broken.rule.code(),
            other => serde_json::to_value(other).unwrap()["kind"].as_str().unwrap().to_owned(),
        };
        review.off.iter().map(|one| (one.n, kind(&one.what), one.open)).collect()
    }

    #[test]
    fn a_repair_by_the_plan_has_nothing_off_it_but_what_was_filled_in_late() {
        let mut world = World::in_stage(Stage::Verification);
        for stage in Stage::ALL {
            world.answer_stage(stage);
        }
        let found = review(world.repair());
        assert_eq!(found.open, 0);
        assert!(found.off.iter().all(|one| matches!(one.what, What::Late { .. })), "{:?}", kinds(&found));
    }

    #[test]
    fn what_waits_for_the_foreman_stands_first_and_numbers_follow_the_clock() {
        let mut world = World::in_stage(Stage::Hold);
        world.after(10.0).report(reading(1.30, 12.8));
        // Longer apart than interval and grace: not witnessed.
        world.after(30.0).report(reading(1.30, 12.8));
        world.hold_for(8).report(Happening::SampleFelt { hard: true }).must(Command::Release);
        world.after(5.0).answer_all().must(Command::GoOn);
        world.after(5.0).answer("folds", &[("height_um", Value::Number(9_000))]);
        let found = review(world.repair());
        let named = kinds(&found);
        assert_eq!(named[0].1, "fold_high", "{named:?}");
        assert!(named[0].2, "{named:?}");
        let gap = named.iter().find(|(_, kind, _)| kind == "gap").unwrap();
        assert!(gap.0 < named[0].0, "the gap came before the fold: {named:?}");
        assert_eq!(asks(&found).first(), Some(&Rule::FoldHigh));
    }

    #[test]
    fn a_doubt_stands_before_everything_else() {
        let mut world = World::in_stage(Stage::Hold);
        world.after(5.0).report(reading(0.50, 12.8)).after(1.0).report(reading(1.30, 12.8));
        world.hold_for(8).report(Happening::SampleFelt { hard: true }).must(Command::Release);
        world.after(5.0).answer_all().must(Command::GoOn);
        world.after(5.0).answer("folds", &[("height_um", Value::Number(9_000))]);
        let found = review(world.repair());
        assert!(found.doubtful);
        assert!(found.off[0].doubt && found.off[0].open, "{:?}", kinds(&found));
        assert!(kinds(&found).iter().any(|(_, kind, _)| kind == "outside"));
    }

    #[test]
    fn an_earlier_attempt_is_told_with_its_reasons() {
        let mut world = World::in_stage(Stage::WetOut);
        world.join().after(10.0).must(Command::EndAttempt {
            outcome: Outcome::Discarded,
            reasons: vec!["Snagged.".into()],
            in_pipe: "Nothing.".into(),
        });
        let found = review(world.repair());
        let what =
            What::Attempt { outcome: Outcome::Discarded, reasons: vec!["Snagged.".into()], in_pipe: "Nothing.".into() };
        assert!(found.off.iter().any(|one| one.what == what && one.person.as_deref() == Some("ekdal")));
    }
}
