//! The one next step, and why it is closed if it is.

use serde::Serialize;

use super::broken::BrokenView;
use crate::procedure::gate::{self, Around, Ask, missing_photos, open_tasks};
use crate::procedure::plan::Plan;
use crate::procedure::repair::{Attempt, Repair, Standing};
use crate::procedure::stage::Stage;
use crate::procedure::times;
use crate::shelf::Role;

/// The next step of a repair.
#[derive(Clone, Debug, Serialize)]
pub struct Next {
    pub act: Act,
    /// The task or photo that it is about.
    pub key: Option<String>,
    /// The gate that the step leads to.
    pub gate: Option<GateView>,
}

/// What the large button does.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Act {
    Plan,
    Answer,
    Photo,
    GoOn,
    PushBegun,
    MarkReached,
    PackerBack,
    SecondGo,
    Join,
    Target,
    Reading,
    Sample,
    Release,
    AtTheMark,
    OpenLateral,
    Judge,
    NewAttempt,
    Sign,
    Issue,
    Certificate,
    Nothing,
}

/// A gate, open or with all that stands in its way.
#[derive(Clone, Debug, Serialize)]
pub struct GateView {
    pub ask: &'static str,
    pub open: bool,
    pub broken: Vec<BrokenView>,
}

/// Returns the next step.
pub fn next(repair: &Repair, around: &Around) -> Next {
    match (repair.standing(), times::plan_and_attempt(repair)) {
        (Standing::Planned, _) if repair.plan.is_none() => step(Act::Plan),
        (Standing::Planned, _) => gated(repair, Act::GoOn, "go_on", Ask::GoOn, around),
        (Standing::Between, _) => step(Act::NewAttempt),
        (Standing::Unrepaired | Standing::Complete, _) => to_paper(repair, around),
        (Standing::Underway, Some((plan, attempt))) => underway(repair, plan, attempt, around),
        (Standing::Underway, None) => step(Act::Plan),
    }
}

fn step(act: Act) -> Next {
    Next { act, key: None, gate: None }
}

fn gated(repair: &Repair, act: Act, ask_name: &'static str, ask: Ask, around: &Around) -> Next {
    let broken = gate::gate(repair, ask, around);
    let views = broken.iter().map(|one| BrokenView::of(repair, one)).collect();
    Next { act, key: None, gate: Some(GateView { ask: ask_name, open: broken.is_empty(), broken: views }) }
}

fn to_paper(repair: &Repair, around: &Around) -> Next {
    if repair.issued.is_some() {
        return step(Act::Certificate);
    }
    let signed = |role| repair.signatures.iter().any(|signature| signature.role == role);
    if signed(Role::Technician) && signed(Role::Foreman) {
        let number = if repair.rehearsal { "REHEARSAL" } else { "" };
        return gated(repair, Act::Issue, "issue", Ask::Issue { number }, around);
    }
    gated(repair, Act::Sign, "sign", Ask::Sign, around)
}

fn underway(repair: &Repair, plan: &Plan, attempt: &Attempt, around: &Around) -> Next {
    match attempt.stage() {
        Stage::Planned => step(Act::Plan),
        Stage::TestPush => {
            let push = &attempt.test_push;
            let act = match (&push.begun, &push.reached, &push.back) {
                (None, _, _) => Act::PushBegun,
                (_, None, _) => Act::MarkReached,
                (_, _, Some((_, true))) => return tasks_then_go_on(repair, plan, attempt, around),
                _ => Act::PackerBack,
            };
            gated(repair, act, "go_on", Ask::GoOn, around)
        }
        Stage::Staging | Stage::SleeveChange | Stage::Deflation => tasks_then_go_on(repair, plan, attempt, around),
        Stage::WetOut if attempt.joined.is_none() => before_joining(repair, plan, attempt, around),
        Stage::WetOut | Stage::Placement | Stage::Inflation => step(Act::Target),
        Stage::Hold => holding(repair, plan, attempt, around),
        Stage::Verification => verifying(repair, plan, attempt, around),
    }
}

fn tasks_then_go_on(repair: &Repair, plan: &Plan, attempt: &Attempt, around: &Around) -> Next {
    let stage = attempt.stage();
    let open = gated(repair, Act::GoOn, "go_on", Ask::GoOn, around);
    if let Some(task) = open_tasks(plan, attempt, stage).first() {
        return Next { act: Act::Answer, key: Some(task.key.clone()), ..open };
    }
    match missing_photos(repair, plan, attempt, stage).first() {
        Some(photo) => Next { act: Act::Photo, key: Some(photo.key.clone()), ..open },
        None => open,
    }
}

fn before_joining(repair: &Repair, plan: &Plan, attempt: &Attempt, around: &Around) -> Next {
    let Some(go) = &attempt.second_go else { return step(Act::SecondGo) };
    let old = times::between(&go.at.moment, &around.facts.moment) > plan.contract.temperatures_age_ms.value.as_ms();
    if old {
        step(Act::SecondGo)
    } else {
        gated(repair, Act::Join, "second_go", Ask::SecondGo(&go.temperatures), around)
    }
}

fn holding(repair: &Repair, plan: &Plan, attempt: &Attempt, around: &Around) -> Next {
    let release = gated(repair, Act::Release, "release", Ask::Release, around);
    let short = crate::procedure::hold::state(plan, attempt).is_none_or(|state| state.shown.missing_ms.as_ms() > 0);
    let act = match (&release.gate, attempt.sample.last()) {
        (Some(gate), _) if gate.open => Act::Release,
        (_, None | Some((_, false))) if !short => Act::Sample,
        _ => Act::Reading,
    };
    Next { act, ..release }
}

fn verifying(repair: &Repair, plan: &Plan, attempt: &Attempt, around: &Around) -> Next {
    let judge = gated(repair, Act::Judge, "judge", Ask::Judge { accept: true }, around);
    let overdue = Stage::ALL.into_iter().flat_map(|stage| open_tasks(plan, attempt, stage)).next();
    if let Some(task) = overdue {
        return Next { act: Act::Answer, key: Some(task.key.clone()), ..judge };
    }
    if attempt.rest().is_none() {
        return Next { act: Act::AtTheMark, ..judge };
    }
    let opened = |index: &&usize| attempt.laterals.iter().any(|opened| opened.lateral == **index);
    if let Some(index) = plan.computed.covered.iter().find(|index| !opened(index)) {
        return Next { act: Act::OpenLateral, key: Some(index.to_string()), ..judge };
    }
    let photo = Stage::ALL.into_iter().flat_map(|stage| missing_photos(repair, plan, attempt, stage)).next();
    match photo {
        Some(photo) => Next { act: Act::Photo, key: Some(photo.key.clone()), ..judge },
        None => judge,
    }
}
