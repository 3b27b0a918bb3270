//! Who may sign, and when the certificate may be issued.

use super::super::repair::Repair;
use super::super::rules::{Broken, Rule, t};
use super::{Around, standing};
use crate::shelf::Role;

/// Returns what stands in the way of a signature by the person who taps.
pub fn sign(repair: &Repair, around: &Around) -> Vec<Broken> {
    let mut found = missing(repair);
    if repair.ending().is_none() {
        found.push(Broken::bare(Rule::NotComplete));
    }
    if around.person().is_none() {
        found.push(Broken::bare(Rule::PersonMissing));
    }
    found
}

/// Returns what stands in the way of the certificate.
pub fn issue(repair: &Repair, number: &str) -> Vec<Broken> {
    let mut found = missing(repair);
    if repair.ending().is_none() {
        found.push(standing(repair));
    }
    if repair.rehearsal != number.starts_with("REHEARSAL") {
        found.push(Broken::bare(Rule::RehearsalOnly));
    }
    for (role, who) in [(Role::Technician, "The technician"), (Role::Foreman, "The foreman")] {
        if !repair.signatures.iter().any(|signature| signature.role == role) {
            found.push(Broken::with(Rule::SignatureMissing, &[("what", t(who))]).about(who));
        }
    }
    found
}

/// Returns what identifies the pipe and is not there.
fn missing(repair: &Repair) -> Vec<Broken> {
    let line = &repair.line;
    let needed = [
        ("The owner's key for the pipe", line.asset.as_str()),
        ("The upstream node", line.upstream.name.as_str()),
        ("The downstream node", line.downstream.name.as_str()),
        ("The material of the pipe", line.material.as_str()),
        ("The contract", repair.contract.title.as_str()),
        ("The owner", repair.contract.owner.as_str()),
        ("The contractor", repair.contract.contractor.as_str()),
    ];
    needed
        .into_iter()
        .filter(|(_, text)| text.trim().is_empty())
        .map(|(what, _)| Broken::with(Rule::NotCertain, &[("what", t(what))]).about(what))
        .collect()
}
