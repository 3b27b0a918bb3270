//! The numbers of certificates: three characters that name the device, and a counter that never goes back.
//!
//! No server gives them out, so every number of a device must be accounted for by the device itself: each was issued
//! for a repair, and is voided by the foreman with a reason if it is not to count. A voided number is never used again;
//! the next certificate of its repair names it and says why.

use serde::Serialize;

use super::response::{Answer, Problem};
use super::verdict::Verdict;
use super::{Visit, repairs};
use crate::procedure::{Command, Repair};
use crate::register::Register;
use crate::shelf::{ShelfEvent, TakenNumber};

/// A number of this device, and what became of it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct NumberRow {
    pub number: String,
    /// The id of the repair that took it.
    pub repair: String,
    pub taken_ms: i64,
    pub state: NumberState,
    /// Why it does not count, who said so and when.
    pub voided: Option<VoidedRow>,
    /// The next number of the same repair.
    pub superseded_by: Option<String>,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum NumberState {
    Issued,
    /// The repair went on after it, or it was voided and issued anew.
    Superseded,
    /// Voided, and nothing was issued in its place.
    Voided,
}

#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct VoidedRow {
    pub reason: String,
    pub by: String,
    pub at_ms: i64,
}

/// An earlier certificate of the same repair, which no longer counts.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Superseded {
    pub number: String,
    pub reason: String,
}

/// Returns the certificates of a repair that a later one supersedes, oldest first, each with why.
pub fn superseded(repair: &Repair) -> Vec<Superseded> {
    let one = |number: &str| Superseded { number: number.to_owned(), reason: repair.why_superseded(number).to_owned() };
    repair.issued_before.iter().map(|issued| one(&issued.number)).collect()
}

/// Says of a certificate which of others supersedes it, where one does.
pub fn beside(mut verdict: Verdict, others: &[Verdict]) -> Verdict {
    let later = others.iter().find(|other| {
        let names = other.supersedes.iter().any(|before| before.number == verdict.certificate);
        names && !verdict.certificate.is_empty() && other.told.is_some() && other.number == verdict.number
    });
    if let Some(later) = later {
        let reason = later.supersedes.iter().find(|before| before.number == verdict.certificate);
        let reason = reason.map_or("", |before| before.reason.as_str());
        verdict.says = format!("{} Superseded by {}: {reason}", verdict.says, later.certificate);
        verdict.superseded_by = Some(later.certificate.clone());
    }
    verdict
}

impl Visit<'_> {
    /// Returns every number that this device gave out, oldest first.
    pub(super) fn numbers(&mut self) -> Result<Answer, Problem> {
        let taken = self.store.numbers()?;
        let later = |place: usize, one: &TakenNumber| {
            taken[place + 1..].iter().find(|other| other.repair == one.repair).map(|other| other.number.clone())
        };
        let name = |id: Option<&str>| {
            let known = self.people.iter().find(|person| Some(person.id.as_str()) == id);
            known.map_or_else(|| id.unwrap_or_default().to_owned(), |person| person.name.clone())
        };
        let row = |(place, one): (usize, &TakenNumber)| {
            let superseded_by = later(place, one);
            let voided = one.voided.as_ref().map(|voided| VoidedRow {
                reason: voided.reason.clone(),
                by: name(voided.person.as_deref()),
                at_ms: voided.at_ms,
            });
            let state = match (&superseded_by, &voided) {
                (Some(_), _) => NumberState::Superseded,
                (None, Some(_)) => NumberState::Voided,
                (None, None) => NumberState::Issued,
            };
            let (number, repair) = (one.number.clone(), one.repair.clone());
            NumberRow { number, repair, taken_ms: one.at_ms, state, voided, superseded_by }
        };
        Ok(Answer::Numbers { numbers: taken.iter().enumerate().map(row).collect() })
    }

    /// Lets the certificate of a repair no longer count, by the foreman, with a reason. What it says can then be
    /// corrected, signed and issued again, under the next number.
    pub(super) fn void(&mut self, id: &str, reason: &str) -> Result<Answer, Problem> {
        let repair = self.store.repair(id)?;
        let Some(issued) = &repair.issued else {
            return Err(Problem::error(
                "not_issued",
                "No certificate is issued for this repair, so none can be voided.",
            ));
        };
        let foreman = self.facts.person.clone().unwrap_or_default();
        if !repair.rehearsal {
            self.ask_pin(Some(&foreman))?;
        }
        let (number, reason) = (issued.number.clone(), reason.trim().to_owned());
        // The entry follows the numbers as they stand now.
        self.store.numbers()?;
        let voided = ShelfEvent::NumberVoided { number, repair: id.to_owned(), reason: reason.clone() };
        self.tell_with(id, &Command::Void { reason, foreman }, Some(voided))
    }

    /// Returns the next number. Numbers that came back with a repair from elsewhere are not given again either.
    pub(super) fn next_certificate(&mut self, rehearsal: bool) -> Result<String, Problem> {
        let prefix = repairs::device_prefix(&self.facts.device);
        let start = if rehearsal { format!("REHEARSAL {prefix}-R") } else { format!("{prefix}-") };
        let own = self.store.numbers()?.into_iter().map(|taken| taken.number);
        let others = self.store.journal.search(&start, 100_000)?.into_iter().filter_map(|row| row.certificate);
        let counted = |number: &String| number.strip_prefix(&start)?.parse::<u64>().ok();
        let last = own.chain(others).filter_map(|number| counted(&number)).max().unwrap_or(0);
        Ok(if rehearsal { format!("{start}{:03}", last + 1) } else { format!("{start}{:04}", last + 1) })
    }

    /// Returns what this folder knows of a certificate that no longer counts: the number in its place, or why.
    pub(super) fn replaced(&mut self, verdict: &Verdict) -> Result<(Option<String>, Option<String>), Problem> {
        let row = self.store.journal.search(&verdict.number, 50)?.into_iter().find(|row| row.number == verdict.number);
        let Some(row) = row.filter(|_| !verdict.certificate.is_empty()) else { return Ok((None, None)) };
        let repair = self.store.repair(&row.repair)?;
        let Some(place) = repair.issued_before.iter().position(|one| one.number == verdict.certificate) else {
            return Ok((None, None));
        };
        let later = repair.issued_before.get(place + 1).or(repair.issued.as_ref()).map(|one| one.number.clone());
        Ok((later, Some(repair.why_superseded(&verdict.certificate).to_owned())))
    }
}
