//! What a record says of its repair, in the few values that a reader compares with the certificate.

use std::collections::BTreeSet;

use serde::Serialize;

use crate::procedure::event::Event;
use crate::procedure::line::Defect;
use crate::procedure::plan::{PlacedPatch, Window};
use crate::procedure::repair::Repair;
use crate::procedure::rules::Rule;
use crate::procedure::stage::{Outcome, Stage};
use crate::procedure::{Record, hold, times};
use crate::shelf::Role;
use crate::units::Length;

#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Told {
    pub asset: String,
    pub upstream: String,
    pub downstream: String,
    pub street: String,
    pub defect: Defect,
    pub patch: Option<PlacedPatch>,
    pub patch_um: Option<Length>,
    /// The attempt that was begun last, and how it ended.
    pub attempt: u32,
    pub outcome: Option<Outcome>,
    /// The rules waived in it.
    pub departures: Vec<Rule>,
    pub hold: Option<ToldHold>,
    pub photos: usize,
    /// The different files among them: one that was named twice is brought once.
    pub originals: usize,
    pub signed: Vec<ToldSignature>,
}

#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct ToldHold {
    pub counted_ms: i64,
    pub required_ms: i64,
    pub window: Window,
}

/// A drawn line and when it was drawn, with the offset that the device had.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct ToldSignature {
    pub role: Role,
    pub name: String,
    pub at_ms: i64,
    pub offset_min: i32,
}

/// Where a stage begins in the chain: the place of its entry, from 1.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Flag {
    pub entry: usize,
    pub stage: Stage,
    pub attempt: u32,
}

/// Returns what the entries say of the repair.
pub fn told(repair: &Repair) -> Told {
    let attempt = repair.last_attempt();
    let n = attempt.map_or(0, |attempt| attempt.n);
    let computed = repair.plan.as_ref().map(|plan| &plan.computed);
    Told {
        asset: repair.line.asset.clone(),
        upstream: repair.line.upstream.name.clone(),
        downstream: repair.line.downstream.name.clone(),
        street: repair.line.street.clone(),
        defect: repair.defect.clone(),
        patch: computed.and_then(|computed| computed.patches.first().copied()),
        patch_um: repair.plan.as_ref().map(|plan| plan.patch.length_um),
        attempt: n,
        outcome: attempt.and_then(|attempt| attempt.outcome()),
        departures: repair.waivers.iter().filter(|waiver| waiver.attempt == n).map(|waiver| waiver.rule).collect(),
        hold: held(repair),
        photos: repair.photos.len(),
        originals: repair.photos.iter().map(|photo| &photo.sha256).collect::<BTreeSet<_>>().len(),
        signed: repair
            .signatures
            .iter()
            .map(|one| ToldSignature {
                role: one.role,
                name: one.name.clone(),
                at_ms: one.at.moment.at_ms,
                offset_min: one.at.moment.offset_min,
            })
            .collect(),
    }
}

fn held(repair: &Repair) -> Option<ToldHold> {
    let (plan, attempt) = times::plan_and_attempt(repair)?;
    let state = hold::state(plan, attempt)?;
    Some(ToldHold {
        counted_ms: state.shown.counted_ms.as_ms(),
        required_ms: state.terms.required_ms.as_ms(),
        window: plan.computed.window.clone(),
    })
}

/// Returns where each stage of each attempt begins, in the order of the chain. Each record comes with its place in it.
pub fn flags<'a>(records: impl Iterator<Item = (usize, &'a Record)>) -> Vec<Flag> {
    let mut attempt = 0;
    let mut found = vec![];
    for (place, record) in records {
        for event in &record.events {
            match event {
                Event::AttemptBegun { n, .. } => attempt = *n,
                Event::StageBegun { stage, .. } => found.push(Flag { entry: place + 1, stage: *stage, attempt }),
                _ => {}
            }
        }
    }
    found
}
