//! Two devices on one repair, side by side: what both have, and what each has that the other has not.

use std::collections::BTreeSet;

use serde::Serialize;

use super::Visit;
use super::history::History;
use super::response::{Answer, Problem};
use crate::facts::Moment;
use crate::journal::Journal;
use crate::procedure::decide::words as word_of;
use crate::procedure::gate::Around;
use crate::procedure::{Event, Happening};
use crate::view::{self, RepairView};
use crate::words;

/// All ways in which a repair goes on.
#[derive(Clone, Debug, Serialize)]
pub struct BranchesView {
    pub repair: Box<RepairView>,
    /// How many entries all branches share, and when the last of them was written.
    pub shared: usize,
    pub shared_at: Option<Moment>,
    /// One where nothing is open.
    pub branches: Vec<BranchView>,
}

/// One way in which a repair goes on.
#[derive(Clone, Debug, Serialize)]
pub struct BranchView {
    pub head: String,
    /// The devices that wrote what only this branch has.
    pub devices: Vec<String>,
    pub own: bool,
    /// What no other branch has, oldest first.
    pub steps: Vec<Step>,
}

/// One thing that was recorded.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Step {
    pub device: String,
    pub person: Option<String>,
    pub at_ms: i64,
    pub offset_min: i32,
    /// The code of the event.
    pub what: &'static str,
    /// What it was about, in the words of the record.
    pub detail: String,
}

impl Visit<'_> {
    pub(super) fn branches(&mut self, id: &str) -> Result<Answer, Problem> {
        let repair = self.store.repair(id)?;
        let history = History::read(self.store.journal.entries(id)?)?;
        let lines: Vec<BTreeSet<usize>> = history.heads().iter().map(|head| history.line(*head)).collect();
        let shared = lines.iter().skip(1).fold(lines.first().cloned().unwrap_or_default(), |all, line| &all & line);
        let own = history.own(&self.facts.device);
        let around = Around { facts: &self.facts, people: &self.people };
        let branches = history.heads().iter().zip(&lines).map(|(head, line)| {
            let only: Vec<usize> = line.difference(&shared).copied().collect();
            let devices: BTreeSet<&String> = only.iter().map(|place| &history.entries[*place].device).collect();
            BranchView {
                head: head.to_string(),
                devices: devices.into_iter().cloned().collect(),
                own: own == Some(*head),
                steps: only.iter().flat_map(|place| steps(&history, *place)).collect(),
            }
        });
        Ok(Answer::Branches(Box::new(BranchesView {
            repair: Box::new(view::repair_view(&repair, &around)),
            shared: shared.len(),
            shared_at: shared.last().map(|place| history.records[*place].facts.moment.clone()),
            branches: branches.collect(),
        })))
    }
}

fn steps(history: &History, place: usize) -> Vec<Step> {
    let (entry, record) = (&history.entries[place], &history.records[place]);
    let step = |event: &Event| {
        let (what, detail, ago_ms) = told(event);
        Step {
            device: entry.device.clone(),
            person: record.facts.person.clone(),
            at_ms: record.facts.moment.at_ms - ago_ms,
            offset_min: record.facts.moment.offset_min,
            what,
            detail,
        }
    };
    record.events.iter().map(step).collect()
}

/// Returns the code of an event, what it is about, and how long before its entry it happened.
fn told(event: &Event) -> (&'static str, String, i64) {
    let at_once = |what, detail: &str| (what, detail.to_owned(), 0);
    match event {
        Event::Opened { number, .. } => at_once("opened", number),
        Event::PlanAccepted { .. } => at_once("plan_accepted", ""),
        Event::AttemptBegun { n, .. } => at_once("attempt_begun", &n.to_string()),
        Event::StageBegun { stage, ago_ms } => ("stage_begun", stage.word().to_owned(), *ago_ms),
        Event::Answered { label, .. } => at_once("answered", label),
        Event::Go { .. } => at_once("go", ""),
        Event::Happened { happening, ago_ms } => ("happened", happened(happening), *ago_ms),
        Event::Doubted { rule, values } => at_once("doubted", &rule.says(values)),
        Event::Broke { rule, values, .. } => at_once("broke", &rule.says(values)),
        Event::Waived { reason, .. } => at_once("waived", reason),
        Event::Corrected { label, new, .. } => at_once("corrected", &format!("{label}: {new}")),
        Event::WorkedOut { .. } => at_once("worked_out", ""),
        Event::Noted { text } => at_once("noted", text),
        Event::PhotoKept { label, .. } => at_once("photo_kept", label),
        Event::ClockSet { by_ms, .. } => at_once("clock_set", &format!("{} s", by_ms / 1000)),
        Event::AttemptEnded { reasons, .. } => at_once("attempt_ended", &reasons.join(" ")),
        Event::Unrepaired { reason } => at_once("unrepaired", reason),
        Event::Signed { name, .. } => at_once("signed", name),
        Event::Issued { number } => at_once("issued", number),
        Event::Voided { number, reason, .. } => at_once("voided", &format!("{number}: {reason}")),
        Event::Sealed { name, .. } => at_once("sealed", name),
        Event::PractiseBegun { .. } => at_once("practise_begun", ""),
        Event::PaceSet { pace, .. } => at_once("pace_set", &pace.to_string()),
        Event::HandedOver { to } => at_once("handed_over", to),
        Event::TakenOver { .. } => at_once("taken_over", ""),
        Event::BranchChosen { reason, .. } => at_once("branch_chosen", reason),
    }
}

fn happened(happening: &Happening) -> String {
    let pressure = match happening {
        Happening::TargetReached { gauge_pa } | Happening::Reading { gauge_pa, .. } => Some(gauge_pa.as_pa()),
        _ => None,
    };
    let value = pressure.map(|pa| words::show("gauge_pa", pa)).into_iter();
    std::iter::once(crate::words::retold(word_of(happening))).chain(value).collect::<Vec<_>>().join(", ")
}
