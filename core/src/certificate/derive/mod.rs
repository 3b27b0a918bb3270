//! From the replayed repair to what the pages say: [`derive`].
//!
//! Pure: no clock, no file. Times and names come from the repair, numbers from the plan, the checks and the hold.
//! Each file fills a part of [`Content`]; [`words`] and [`when`] write numbers, times and names; [`missing`] lists what
//! keeps a certificate from being made.

mod answers;
mod attempts;
mod cautions;
mod checks;
mod course;
mod departures;
mod findings;
mod hold;
mod identity;
mod materials;
mod missing;
mod notes;
mod photos;
mod place;
mod reasons;
mod said;
mod sheets;
mod signatures;
mod stages;
mod tasks;
#[cfg(test)]
mod tests;
mod when;
mod words;
mod working_time;

pub use missing::refusals;
pub use signatures::signer;

use super::content::{Content, Head, Kind, Known, Paper, RecordCopy, Seal};
use crate::facts::Moment;
use crate::procedure;
use crate::procedure::plan::Plan;
use crate::procedure::repair::{Attempt, Ending, Repair, Stamp};
use crate::procedure::rules::{Broken, Rule, t};
use crate::procedure::stage::Outcome;
use crate::shelf::{Person, contract};
use crate::words as words_of;
use when::Clock;

/// Where the record stands when the certificate is made.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ChainFacts {
    /// SHA-256 of the last entry: 64 hexadecimal digits, small letters.
    pub head_hex: String,
    /// The number of entries up to the head.
    pub entries: u64,
    /// The device that makes the certificate.
    pub device: String,
    /// The record as a file, up to the head.
    pub record: Vec<u8>,
}

/// Returns what the certificate or the record of a repair says.
///
/// `people` give names to ids, `photos` the bytes of an original by its SHA-256. `made_at` dates a record that was never
/// issued; an issued one is dated by its issue, so that it can be made again to the byte.
///
/// Errors: every rule that stands in the way, in the order of the work: missing or contradicting evidence, departures
/// without a decision, a signature or the number that is not there; for a repair that is still going on, where it stands.
pub fn derive(
    repair: &Repair,
    chain: &ChainFacts,
    people: &[Person],
    photos: &dyn Fn(&str) -> Option<Vec<u8>>,
    made_at: Moment,
) -> Result<Content, Vec<Broken>> {
    let kind = kind(repair).ok_or_else(|| vec![procedure::gate::standing(repair)])?;
    let mut missing = refusals(repair, people);
    missing.extend(head_is_wrong(chain));
    missing.extend(number_is_missing(repair, kind));
    if !missing.is_empty() {
        return Err(missing);
    }
    let case = Case::of(repair, people, kind);
    Ok(content(&case, chain, photos, &made_at))
}

/// Begins the line that says which program made a paper.
pub const PROGRAM: &str = concat!("Mendline ", env!("CARGO_PKG_VERSION"), ", offline");
pub use super::content::ON_DEVICE;

/// Returns what an issued certificate said when it was made, as far as the record tells it: without photos, and with
/// whatever stood in its way. `None` of a repair that has none.
pub fn again(repair: &Repair, chain: &ChainFacts, people: &[Person]) -> Option<Content> {
    let (kind, issued) = (kind(repair)?, repair.issued.as_ref()?);
    Some(content(&Case::of(repair, people, kind), chain, &|_| None, &issued.at.moment))
}

/// Returns the content for the reader that the contract names, whoever makes or checks it.
fn content(case: &Case, chain: &ChainFacts, photos: &dyn Fn(&str) -> Option<Vec<u8>>, made_at: &Moment) -> Content {
    words_of::for_reader(case.repair.contract.reader, || parts(case, chain, photos, made_at))
}

fn parts(case: &Case, chain: &ChainFacts, photos: &dyn Fn(&str) -> Option<Vec<u8>>, made_at: &Moment) -> Content {
    let at_ms = case.repair.issued.as_ref().map_or(made_at.at_ms, |issued| issued.at.moment.at_ms);
    let number = number(case.repair);
    let departures = departures::departures(case);
    let head = Head { sha256: chain.head_hex.clone(), entries: u32::try_from(chain.entries).unwrap_or(u32::MAX) };
    Content {
        kind: case.kind,
        paper: match case.repair.contract.paper {
            contract::Paper::A4 => Paper::A4,
            contract::Paper::Letter => Paper::Letter,
        },
        reader: case.repair.contract.reader,
        made_by: format!("{PROGRAM}{ON_DEVICE}{}", chain.device),
        at_ms,
        utc_offset_min: case.clock.offset_min(),
        result: answers::result(case, departures.len()),
        answers: answers::answers(case, &departures),
        running_head: identity::running_head(case),
        identity_left: identity::left(case),
        identity_right: identity::right(case),
        place: place::place(case),
        reasons: reasons::reasons(case),
        departures,
        notes: notes::notes(case),
        signatures: signatures::signatures(case),
        // A machine reads it: the same in every language.
        qr: words_of::plainly(|| code(case, &number, &head, at_ms)),
        number,
        head,
        seal: Seal::None,
        record: record(case, chain),
        stages: stages::stages(case),
        working_time: working_time::working_time(case),
        hold: hold::hold(case),
        materials: materials::materials(case),
        sheets: sheets::sheets(case),
        checks: checks::checks(case),
        danger: checks::danger(case),
        findings: findings::findings(case),
        attempts: attempts::attempts(case),
        corrections: attempts::corrections(case),
        photos: photos::photos(case, photos),
        cautions: cautions::cautions(case),
    }
}

/// A repair that a paper can be made of, with what every part of it asks for.
struct Case<'a> {
    repair: &'a Repair,
    people: &'a [Person],
    kind: Kind,
    plan: Option<&'a Plan>,
    /// The attempt that the paper is about: the accepted one, else the last.
    attempt: Option<&'a Attempt>,
    hold: Option<procedure::hold::HoldState>,
    clock: Clock,
}

impl<'a> Case<'a> {
    fn of(repair: &'a Repair, people: &'a [Person], kind: Kind) -> Self {
        let plan = repair.plan.as_ref();
        let attempt = subject(repair);
        let hold = plan.zip(attempt).and_then(|(plan, attempt)| procedure::hold::state(plan, attempt));
        let begun = attempt.and_then(|attempt| attempt.spans.first()).map_or(&repair.opened, |span| &span.begun);
        let anchor = attempt.and_then(|attempt| attempt.joined.as_ref()).map(|joined| &joined.moment);
        let day = anchor.unwrap_or(&begun.moment);
        Self { repair, people, kind, plan, attempt, hold, clock: Clock::of(day, anchor) }
    }

    /// Returns plan and attempt, which most of the evidence needs.
    fn work(&self) -> Option<(&'a Plan, &'a Attempt)> {
        self.plan.zip(self.attempt)
    }

    /// Returns the number of the attempt that the paper is about, 0 without one.
    fn n(&self) -> u32 {
        self.attempt.map_or(0, |attempt| attempt.n)
    }

    fn name(&self, id: Option<&str>) -> String {
        when::name(self.people, id)
    }

    /// Returns `Tomas Ekdal, 09:03`.
    fn by(&self, stamp: &Stamp) -> String {
        when::by(self.people, &self.clock, stamp)
    }

    /// Returns when something in the course of the attempt happened; see [`Clock::course`].
    fn at(&self, stamp: &Stamp) -> i64 {
        self.clock.course(&stamp.moment)
    }

    /// Returns whether a patch was pressed to the wall in the attempt.
    fn patch_was_set(&self) -> bool {
        self.attempt.is_some_and(|attempt| {
            attempt.target.is_some() && !matches!(attempt.outcome(), Some(Outcome::Discarded | Outcome::Abandoned))
        })
    }
}

fn subject(repair: &Repair) -> Option<&Attempt> {
    repair.accepted().or(repair.last_attempt())
}

/// Returns what paper can be made of the repair; `None` while it is still going on.
fn kind(repair: &Repair) -> Option<Kind> {
    let kind = match repair.ending()? {
        Ending::Accepted => Kind::Accepted,
        Ending::Rejected => Kind::Rejected,
        Ending::Unrepaired => Kind::Unrepaired,
    };
    Some(if repair.rehearsal { Kind::Rehearsal } else { kind })
}

/// Returns the number of the paper: as issued, without the word that marks a rehearsal; else the repair's.
fn number(repair: &Repair) -> String {
    let issued = repair.issued.as_ref().map_or(repair.number.as_str(), |issued| issued.number.as_str());
    issued.strip_prefix("REHEARSAL").map_or(issued, str::trim_start).to_owned()
}

/// Returns the record to lie inside the file, unless the contract refuses attachments.
fn record(case: &Case, chain: &ChainFacts) -> Known<RecordCopy> {
    match case.repair.contract.attachments {
        contract::Attachments::Refused => {
            Known::Absent(format!("contract {} refuses attachments", case.repair.contract.id))
        }
        contract::Attachments::Allowed => Known::Known(RecordCopy {
            name: "record.json".into(),
            sha256: photos::sha256(&chain.record),
            json: chain.record.clone(),
        }),
    }
}

fn code(case: &Case, number: &str, head: &Head, at_ms: i64) -> Option<String> {
    let result = answers::headline(case);
    let (repair, date) = (&case.repair.number, case.clock.date(at_ms));
    (case.kind != Kind::Rehearsal)
        .then(|| format!("MENDLINE1 {number} {repair} {result} {date} {} {}", head.entries, head.sha256).to_uppercase())
}

fn head_is_wrong(chain: &ChainFacts) -> Option<Broken> {
    let hex = chain.head_hex.len() == 64 && chain.head_hex.chars().all(|c| matches!(c, '0'..='9' | 'a'..='f'));
    let what = "The head of the record is no SHA-256 of an entry. Look over the journal.";
    (!hex || chain.entries == 0).then(|| Broken::with(Rule::BadValue, &[("what", t(what))]))
}

fn number_is_missing(repair: &Repair, kind: Kind) -> Option<Broken> {
    let needed = kind == Kind::Accepted || (kind == Kind::Rehearsal && repair.accepted().is_some());
    (needed && repair.issued.is_none())
        .then(|| Broken::with(Rule::NotCertain, &[("what", t("The number of the certificate"))]).about("number"))
}
