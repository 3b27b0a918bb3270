//! Checking a certificate that somebody brings: the PDF with its signatures, and the record inside it.

use serde::Serialize;

use super::agreement::{self, Compared};
use super::keys::{REVOKED, certificates, instant};
use super::sealing::REHEARSAL;
use super::verdict::{Finding, Look, Looked, Verdict, check_record};
use crate::seal::verify::{Checked, Signature, verify};
use crate::seal::{Certificate, SealError};
use crate::shelf::Person;

/// Said where the pages could not be compared letter by letter.
const PARTLY: &str = " Of the pages only the main values were compared with the record: another version of the program made them, or they say something that the record does not hold.";

/// One key's signature under a certificate.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct SignedBy {
    /// The field that it fills: `technician` or `foreman`.
    pub role: String,
    pub name: String,
    pub organisation: String,
    /// Who vouches for the key; the person alone where both names are the same.
    pub issuer: String,
    /// The SHA-256 of the key's certificate.
    pub fingerprint: String,
    /// When the signer's device says that it was made; nothing else proves it.
    pub at_ms: Option<i64>,
    pub offset_min: i32,
    pub intact: bool,
    pub trust: Trust,
    /// From when the key is revoked, as far as is known here.
    pub revoked_ms: Option<i64>,
}

/// Whether the key is one that the reader trusts.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Trust {
    /// No certificates to trust were handed over.
    NotAsked,
    Trusted,
    Unknown,
    /// Made for a practice and thrown away.
    Rehearsal,
}

/// The certificates that a reader trusts, with the instant from which one is revoked.
#[derive(Clone, Debug, Default)]
pub struct Trusted(Vec<(Certificate, Option<i64>)>);

impl Trusted {
    /// Reads a PEM file, such as one that a contractor handed out: a line `Revoked from …` before a certificate counts.
    ///
    /// Errors: it holds no certificate, or one that can't be read.
    pub fn from_pem(text: &str) -> Result<Self, SealError> {
        let end = "-----END CERTIFICATE-----";
        let mut all = vec![];
        for part in text.split_inclusive(end).filter(|part| part.contains(end)) {
            let line = part.lines().find_map(|line| line.trim().strip_prefix(REVOKED));
            let at = line.map(|at| chrono::DateTime::parse_from_rfc3339(at.trim()).map(|at| at.timestamp_millis()));
            let revoked = at.transpose().map_err(|_| SealError::Unusable {
                what: "This file says “Revoked from” without a date such as 2026-11-02T08:00:00Z.".into(),
            })?;
            all.extend(Certificate::from_pem(part)?.into_iter().map(|one| (one, revoked)));
        }
        if all.is_empty() { Certificate::from_pem(text).map(|_| Self::default()) } else { Ok(Self(all)) }
    }

    /// Returns the keys of the people in a list.
    pub fn people(people: &[Person]) -> Self {
        let keys = people.iter().flat_map(|person| &person.keys);
        Self(
            keys.flat_map(|key| {
                let revoked = key.revoked.as_ref().map(|revoked| revoked.from_ms);
                certificates(key).into_iter().map(move |one| (one, revoked))
            })
            .collect(),
        )
    }

    /// Adds others to these.
    pub fn and(mut self, others: Self) -> Self {
        self.0.extend(others.0);
        self
    }

    fn trusts(&self, own: &Certificate) -> bool {
        self.0.iter().any(|(known, _)| known == own || own.issued_by(known))
    }

    fn revoked_ms(&self, own: &Certificate) -> Option<i64> {
        self.0.iter().filter(|(known, _)| known == own).filter_map(|(_, revoked)| *revoked).min()
    }
}

/// Returns what a certificate (PDF) or a record (JSON) shows.
pub fn check_file(name: &str, bytes: &[u8], trusted: &Trusted) -> Verdict {
    if !bytes.starts_with(b"%PDF-") {
        return check_record(name, bytes);
    }
    match verify(bytes) {
        Ok(checked) => judge(name, &checked, trusted),
        Err(says) => Verdict::unreadable(name, says),
    }
}

fn judge(name: &str, checked: &Checked, trusted: &Trusted) -> Verdict {
    let record = checked.attachments.iter().find(|(name, _)| name.ends_with(".json"));
    let mut verdict = match record {
        Some((_, json)) => check_record(name, json),
        None => Verdict { finding: Finding::Valid, ..Verdict::unreadable(name, "The record is not inside.".into()) },
    };
    if verdict.finding == Finding::Unreadable {
        verdict.finding = Finding::Changed;
        verdict.says = format!("The record inside can't be read. {}", verdict.says);
    }
    let by: Vec<SignedBy> = checked.signatures.iter().filter_map(|one| signed_by(one, trusted)).collect();
    if record.is_none() && by.iter().any(|one| one.trust == Trust::Rehearsal) {
        verdict.finding = Finding::Rehearsal;
    }
    let agreed = agreement::pages(checked, &verdict);
    verdict.compared = agreed.clone().ok().flatten();
    let flaws =
        [(Look::File, file(checked)), (Look::Keys, keys(&by, &verdict, trusted)), (Look::Pages, agreed.clone().err())];
    let mut looked: Vec<Looked> = flaws.iter().map(|(at, flaw)| Looked { at: *at, right: flaw.is_none() }).collect();
    looked.append(&mut verdict.looked);
    let wrong: Vec<String> = flaws.into_iter().filter_map(|(_, flaw)| flaw).collect();
    if wrong.is_empty() {
        verdict.says = format!("{} {}", told(&by, trusted), verdict.says);
        if verdict.compared == Some(Compared::Values) {
            verdict.says.push_str(PARTLY);
        }
    } else {
        verdict.finding = Finding::Changed;
        verdict.says = wrong.join(" ");
    }
    Verdict { looked, signatures: by, ..verdict }
}

fn signed_by(one: &Signature, trusted: &Trusted) -> Option<SignedBy> {
    let own = one.certificate.as_ref()?;
    let holder = own.holder();
    let trust = if holder.organisation == REHEARSAL {
        Trust::Rehearsal
    } else if trusted.0.is_empty() {
        Trust::NotAsked
    } else if trusted.trusts(own) {
        Trust::Trusted
    } else {
        Trust::Unknown
    };
    Some(SignedBy {
        role: one.field.clone(),
        name: holder.name,
        organisation: holder.organisation,
        issuer: own.issuer_name(),
        fingerprint: own.fingerprint(),
        at_ms: one.at.map(|(at, _)| at),
        offset_min: one.at.map_or(0, |(_, offset)| offset),
        intact: one.intact,
        trust,
        revoked_ms: trusted.revoked_ms(own),
    })
}

/// Returns what was changed in the file, or that nothing would show it.
fn file(checked: &Checked) -> Option<String> {
    if !checked.flaws.is_empty() {
        return Some(checked.flaws.join(" "));
    }
    checked.signatures.is_empty().then(|| "No key has signed this file: it could be changed without a trace.".into())
}

/// Returns what is wrong with the keys: one that is missing, not trusted, revoked, or made for practice.
fn keys(by: &[SignedBy], verdict: &Verdict, trusted: &Trusted) -> Option<String> {
    let missing = ["technician", "foreman"].into_iter().find(|role| !by.iter().any(|one| one.role == *role));
    if let Some(role) = missing {
        return Some(format!("The key of the {role} has not signed."));
    }
    let practice = verdict.finding == Finding::Rehearsal;
    if !practice && by.iter().any(|one| one.trust == Trust::Rehearsal) {
        return Some("It is signed with the keys of a rehearsal.".into());
    }
    if let Some(one) = by.iter().find(|one| one.trust == Trust::Unknown && !trusted.0.is_empty() && !practice) {
        return Some(format!("The key of {} is none that you trust (SHA-256 {}).", one.name, one.fingerprint));
    }
    let revoked = by.iter().find(|one| one.revoked_ms.zip(one.at_ms).is_some_and(|(from, at)| at >= from));
    revoked
        .and_then(|one| one.revoked_ms.map(|from| (one, from)))
        .map(|(one, from)| format!("The key of {} is revoked from {}, before it signed.", one.name, instant(from)))
}

/// Returns what a sound file shows about its keys.
fn told(by: &[SignedBy], trusted: &Trusted) -> String {
    let names = by.iter().map(|one| one.name.as_str()).collect::<Vec<_>>().join(" and ");
    let whose = match (by.iter().any(|one| one.trust == Trust::Rehearsal), trusted.0.is_empty()) {
        (true, _) => "with keys made for practice",
        (false, true) => {
            "with keys that say so themselves: compare their SHA-256 with the contractor, or name a certificate to trust"
        }
        (false, false) => "with keys that you trust",
    };
    let later = by.iter().filter_map(|one| Some((one, one.revoked_ms?))).map(|(one, from)| {
        format!(
            " The key of {} is revoked from {}; only the signer’s clock says that it signed before.",
            one.name,
            instant(from)
        )
    });
    format!("Unchanged since {names} signed it, {whose}.{}", later.collect::<String>())
}
