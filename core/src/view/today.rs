//! The first screen: what runs, what cures, what to start next, what waits for a signature.

use serde::Serialize;

use super::clock::{ClockView, CureView, clock, cure};
use super::handed::{HandedView, handed};
use super::hold::{HoldView, hold};
use super::summary::{Status, Summary, summary};
use super::trouble::{Trouble, trouble};
use crate::facts::Moment;
use crate::procedure::repair::Repair;
use crate::procedure::stage::Stage;
use crate::procedure::times;
use crate::shelf::{DocumentKind, Shelf};

#[derive(Clone, Debug, Default, Serialize)]
pub struct Today {
    /// Resin is mixed and not yet at pressure.
    pub mixed: Vec<Mixed>,
    pub holding: Vec<Holding>,
    pub curing: Vec<Curing>,
    pub underway: Vec<Summary>,
    /// Planned or between two attempts.
    pub next: Vec<Summary>,
    /// Without an accepted plan.
    pub taken: Vec<Summary>,
    pub review: Vec<Summary>,
    pub done: Vec<Summary>,
    /// Their chains are broken; they can be read as stored and exported.
    pub damaged: Vec<Summary>,
    pub owner: String,
    pub crew: String,
    /// The name of who asks, if somebody is picked.
    pub who: Option<String>,
    /// What no repair can be planned or tapped without, and is not on the shelf, in the order in which it is asked for.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub lacks: Vec<DocumentKind>,
    /// Why nothing can be recorded in this folder, in a sentence.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub closed: Option<String>,
}

#[derive(Clone, Debug, Serialize)]
pub struct Mixed {
    pub summary: Summary,
    pub clock: ClockView,
    pub trouble: Option<Trouble>,
}

#[derive(Clone, Debug, Serialize)]
pub struct Holding {
    pub summary: Summary,
    pub hold: HoldView,
    pub trouble: Option<Trouble>,
    /// It was handed over.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub handed: Option<HandedView>,
}

#[derive(Clone, Debug, Serialize)]
pub struct Curing {
    pub summary: Summary,
    pub cure: CureView,
}

/// Returns which kinds of document a crew needs and `shelf` does not hold. Instruments can be named when they are used.
pub fn lacks(shelf: &Shelf) -> Vec<DocumentKind> {
    let needed = [
        (DocumentKind::Person, shelf.people.is_empty()),
        (DocumentKind::Contract, shelf.contracts.is_empty()),
        (DocumentKind::Resin, shelf.resins.is_empty()),
        (DocumentKind::Patch, shelf.patches.is_empty()),
        (DocumentKind::Packer, shelf.packers.is_empty()),
        (DocumentKind::Method, shelf.methods.is_empty()),
    ];
    needed.into_iter().filter_map(|(kind, absent)| absent.then_some(kind)).collect()
}

/// Returns the first screen: live repairs in full, the others by their lines.
pub fn today(live: &[Repair], others: Vec<Summary>, now: &Moment, device: &str) -> Today {
    let mut shown = Today::default();
    for repair in live {
        place(&mut shown, repair, now, device);
    }
    shown.mixed.sort_by_key(|mixed| mixed.clock.left_ms);
    shown.holding.sort_by_key(|holding| holding.hold.reading_due_ms);
    for line in others {
        let list = match line.status {
            Status::Taken => &mut shown.taken,
            Status::Planned | Status::Between => &mut shown.next,
            Status::Underway => &mut shown.underway,
            Status::Review => &mut shown.review,
            Status::Issued | Status::Unrepaired => &mut shown.done,
            Status::Damaged => &mut shown.damaged,
        };
        list.push(line);
    }
    shown
}

fn place(shown: &mut Today, repair: &Repair, now: &Moment, device: &str) {
    let line = summary(repair);
    let Some((plan, attempt)) = times::plan_and_attempt(repair) else { return shown.underway.push(line) };
    let hold = hold(plan, attempt, now).map(|hold| hold.watched(repair, device));
    let trouble = trouble(plan, attempt, hold.as_ref(), now);
    match (attempt.stage(), hold, clock(plan, attempt, now), cure(plan, attempt, now)) {
        (Stage::Hold, Some(hold), _, _) => {
            let handed = handed(repair, device);
            shown.holding.push(Holding { summary: line, hold, trouble, handed });
        }
        (_, _, Some(clock), _) if attempt.resin_runs() => shown.mixed.push(Mixed { summary: line, clock, trouble }),
        (Stage::Verification | Stage::Deflation, _, _, Some(cure)) => {
            if line.status == Status::Review {
                shown.review.push(line.clone());
            }
            if !cure.reached {
                shown.curing.push(Curing { summary: line, cure });
            } else if line.status != Status::Review {
                shown.underway.push(line);
            }
        }
        _ => shown.underway.push(line),
    }
}
