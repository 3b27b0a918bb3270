//! May I? What stands in the way of each ask. The screens show it, and `decide` refuses by it: one answer for both.

mod joining;
mod judging;
mod open_tasks;
mod release;
mod signing;
mod sleeve;
mod staging;
mod test_push;
mod whole;

pub use joining::{closures_before, closures_that_end_first, planned_hold};
pub use judging::findings;
pub use open_tasks::{missing_photos, open_tasks};
pub use test_push::budget_for_go;
pub use whole::{MAY_BE_ABSENT, gaps, gaps_of_documents, may_be_absent};

use super::plan::{Plan, Temperatures};
use super::repair::{Repair, Standing};
use super::roles;
use super::rules::{Broken, Kind, Rule, n, t};
use super::stage::Stage;
use crate::facts::Facts;
use crate::shelf::{Person, Role};

/// What can be asked of a repair.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Ask<'a> {
    AcceptPlan(&'a Plan),
    GoOn,
    SecondGo(&'a Temperatures),
    Release,
    /// Accept what the camera shows, or reject it.
    Judge {
        accept: bool,
    },
    NewAttempt,
    CloseUnrepaired,
    Sign,
    Issue {
        number: &'a str,
    },
}

/// What an ask is judged by, beside the repair.
#[derive(Clone, Copy, Debug)]
pub struct Around<'a> {
    pub facts: &'a Facts,
    pub people: &'a [Person],
}

impl<'a> Around<'a> {
    /// Returns who taps, if the list of people knows the id.
    pub fn person(&self) -> Option<&'a Person> {
        let id = self.facts.person.as_deref()?;
        self.people.iter().find(|person| person.id == id)
    }

    fn needs_foreman(&self) -> Vec<Broken> {
        match self.person() {
            None => vec![Broken::bare(Rule::PersonMissing)],
            Some(person) if person.role != Role::Foreman => vec![Broken::bare(Rule::ForemanNeeded)],
            Some(_) => vec![],
        }
    }
}

/// Returns every rule that stands in the way of an ask, waived departures left out; empty if it may be.
pub fn gate(repair: &Repair, ask: Ask, around: &Around) -> Vec<Broken> {
    let found = match ask {
        Ask::AcceptPlan(plan) => accept_plan(repair, plan),
        Ask::GoOn => go_on(repair, around),
        Ask::SecondGo(temperatures) => joining::second_go(repair, temperatures, around),
        Ask::Release => release::release(repair),
        Ask::Judge { accept } => judging::judge(repair, accept, around),
        Ask::NewAttempt => match repair.standing() {
            Standing::Between => vec![],
            _ => vec![standing(repair)],
        },
        Ask::CloseUnrepaired => close_unrepaired(repair, around),
        Ask::Sign => signing::sign(repair, around),
        Ask::Issue { number } => signing::issue(repair, number),
    };
    let ends = matches!(ask, Ask::Judge { .. } | Ask::CloseUnrepaired | Ask::Sign | Ask::Issue { .. });
    let apart = branch_open(repair).filter(|_| ends);
    let found = roles::reads_only(around).into_iter().chain(found);
    found.chain(apart).filter(|broken| stands(repair, broken)).collect()
}

fn stands(repair: &Repair, broken: &Broken) -> bool {
    match broken.rule.row().kind {
        Kind::Never => true,
        Kind::Departure => !repair.waived(broken.rule, &broken.subject),
        Kind::Question | Kind::Note => false,
    }
}

/// Nothing is judged or signed while it is open which entries count.
fn branch_open(repair: &Repair) -> Option<Broken> {
    let count = i64::try_from(repair.branches.len()).unwrap_or(i64::MAX);
    (count > 1).then(|| Broken::with(Rule::BranchOpen, &[("count", n(count))]))
}

fn accept_plan(repair: &Repair, plan: &Plan) -> Vec<Broken> {
    match repair.standing() {
        // A source that is missing can't be put into the copy later: better asked now than at the certificate.
        Standing::Planned | Standing::Between => {
            plan_breaks(plan).into_iter().chain(whole::gaps_of_documents(plan)).collect()
        }
        Standing::Underway | Standing::Complete | Standing::Unrepaired => vec![standing(repair)],
    }
}

/// Returns the rules that a plan breaks; departures among them may be waived.
pub fn plan_breaks(plan: &Plan) -> Vec<Broken> {
    let computed = &plan.computed;
    let mut found = staging::fit(plan, plan.choice.diameter_least_um, plan.choice.diameter_most_um);
    if computed.cover.least() < computed.cover.required_um {
        found.push(staging::cover_short(computed.cover.least(), computed.cover.required_um));
    }
    found.extend(sleeve::bare_end_planned(plan));
    found.extend(super::times::too_short(&computed.budget));
    found
}

fn go_on(repair: &Repair, around: &Around) -> Vec<Broken> {
    if repair.standing() == Standing::Planned {
        return match &repair.plan {
            None => vec![Broken::bare(Rule::PlanMissing)],
            Some(plan) => plan_breaks(plan),
        };
    }
    let Some((plan, attempt)) =
        super::times::plan_and_attempt(repair).filter(|_| repair.standing() == Standing::Underway)
    else {
        return vec![standing(repair)];
    };
    match attempt.stage() {
        Stage::Staging => staging::staging(repair, plan, attempt, around),
        Stage::TestPush => test_push::test_push(repair, plan, attempt),
        Stage::SleeveChange => sleeve::sleeve_change(repair, plan, attempt),
        Stage::Deflation => release::deflation(plan, attempt),
        stage => vec![Broken::with(Rule::OutOfOrder, &[("stage", t(stage.word()))])],
    }
}

fn close_unrepaired(repair: &Repair, around: &Around) -> Vec<Broken> {
    let mut found = around.needs_foreman();
    if !matches!(repair.standing(), Standing::Planned | Standing::Between) {
        found.push(standing(repair));
    }
    found
}

/// Returns the refusal that names where the repair stands.
pub fn standing(repair: &Repair) -> Broken {
    let words = match repair.standing() {
        Standing::Planned => "not begun",
        Standing::Underway => "under way",
        Standing::Between => "between two attempts",
        Standing::Complete => "complete",
        Standing::Unrepaired => "closed without a patch",
    };
    Broken::with(Rule::StageOrder, &[("standing", t(words))])
}
