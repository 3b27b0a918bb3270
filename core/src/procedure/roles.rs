//! Who may do what. What happened is recorded whoever taps; everything else asks for a role.
//!
//! A name is picked from a list and proves nothing. Where a foreman has a key, what needs a foreman needs its PIN.
//! Nobody picked counts as the crew: a tap beside the manhole never waits for a name.

use super::command::Command;
use super::gate::Around;
use super::rules::{Broken, Rule, t};
use crate::shelf::Role;

/// The least that somebody must be.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Needs {
    /// Anybody: it happened.
    Anybody,
    /// Technician, foreman, or nobody picked.
    Crew,
    /// A foreman taps.
    Foreman,
    /// A foreman is named, and his PIN entered where he has a key.
    NamedForeman,
}

/// Returns what a command needs. No wildcard: the compiler asks about each new one.
pub const fn needs(command: &Command) -> Needs {
    match command {
        Command::Report { .. } | Command::EndAttempt { .. } => Needs::Anybody,
        Command::Open { .. }
        | Command::Practise { .. }
        | Command::SetPace { .. }
        | Command::AcceptPlan { .. }
        | Command::GoOn
        | Command::SecondGo { .. }
        | Command::Release
        | Command::NewAttempt { .. }
        | Command::HandOver { .. }
        | Command::TakeOver { .. }
        | Command::Sign { .. }
        | Command::Issue { .. }
        | Command::Answer { .. }
        | Command::Correct { .. }
        | Command::WorkOut { .. }
        | Command::Note { .. }
        | Command::Photo { .. } => Needs::Crew,
        Command::Judge { .. } | Command::CloseUnrepaired { .. } => Needs::Foreman,
        Command::Waive { .. } | Command::ChooseBranch { .. } | Command::Void { .. } => Needs::NamedForeman,
    }
}

/// Returns why who taps may not do this; the foreman's part is the gate's.
pub fn refused(command: &Command, around: &Around) -> Option<Broken> {
    (needs(command) != Needs::Anybody).then(|| reads_only(around)).flatten()
}

/// Returns the refusal of somebody who reads for the owner.
pub fn reads_only(around: &Around) -> Option<Broken> {
    let reader = around.person().filter(|person| person.role == Role::Reader)?;
    Some(Broken::with(Rule::ReadsOnly, &[("who", t(reader.name.clone()))]))
}

/// Returns why the named foreman does not stand behind this: no foreman, or a key that was not opened with its PIN.
/// Practice asks no PIN.
pub fn not_by_foreman(id: &str, rehearsal: bool, around: &Around) -> Option<Broken> {
    let known = around.people.iter().find(|person| person.id == id);
    let Some(foreman) = known.filter(|person| person.role == Role::Foreman) else {
        return Some(Broken::bare(Rule::ForemanNeeded));
    };
    // A key that was revoked does not set its owner free of it.
    let asked = !rehearsal && !foreman.keys.is_empty();
    let opened = foreman.key().is_some_and(|key| around.facts.key.as_deref() == Some(key.fingerprint.as_str()));
    (asked && !opened).then(|| Broken::with(Rule::PinMissing, &[("who", t(foreman.name.clone()))]))
}
