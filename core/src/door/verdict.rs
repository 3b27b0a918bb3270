//! Checking a record that somebody brings: what was looked at, what was found, and what the record says.

use serde::Serialize;

use super::agreement::Compared;
use super::history::History;
use super::numbers::{Superseded, superseded};
use super::originals::Originals;
use super::paper::SignedBy;
use super::record::{RecordFile, entries_of};
use super::told::{Flag, Told, flags, told};
use crate::journal::{self, Damage, Entry, Fault};
use crate::procedure::{Ending, Repair};
use crate::shelf::Role;
use crate::words;

/// What came of checking a record.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Verdict {
    pub name: String,
    pub finding: Finding,
    pub says: String,
    pub number: String,
    pub entries: usize,
    pub head: String,
    /// The certificate's number, once issued.
    pub certificate: String,
    /// What was looked at, in this order; after the first thing that is wrong nothing more can be looked at.
    pub looked: Vec<Looked>,
    /// Where the stages begin in the chain, in its order.
    pub flags: Vec<Flag>,
    /// The first entry that does not fit, from 1.
    pub breaks_at: Option<usize>,
    /// What the record says of the repair; `None` if it can't be followed.
    pub told: Option<Told>,
    /// The keys that signed the file, in their order; none for a record.
    pub signatures: Vec<SignedBy>,
    /// The number of the certificate that replaced this one, as far as this folder knows.
    pub superseded_by: Option<String>,
    /// The earlier certificates of this repair, which no longer count.
    pub supersedes: Vec<Superseded>,
    /// What became of the photos of the record, where somebody brought originals.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub originals: Option<Originals>,
    /// How far the pages were compared with the record inside; absent where there is none.
    pub compared: Option<Compared>,
    /// The repair as its record tells it.
    #[serde(skip)]
    pub repair: Option<Box<Repair>>,
}

/// One thing that was looked at.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Looked {
    pub at: Look,
    pub right: bool,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Look {
    /// The file was not changed since the keys signed it.
    File,
    /// Both keys have signed, none is revoked, and all are trusted where the reader said whom to trust.
    Keys,
    /// The pages say what the record inside says, and name the head of its chain.
    Pages,
    /// Every entry follows from the one before, and its bytes give its hash.
    Chain,
    /// The head that the file names belongs to the last entry.
    Head,
    /// Number and rehearsal at the top of the file are those of the entries.
    Top,
    /// The repair has come to an end, and its record has a number.
    Complete,
    /// Technician and foreman have drawn their line. A line alone proves nothing about who drew it.
    Signatures,
    /// None of the original photos that somebody brought was changed. Missing ones say nothing.
    Originals,
}

/// The finding of a check, and the exit code that stands for it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Finding {
    /// Valid and complete.
    Valid = 0,
    /// Changed, invalid, or lacking a signature; also if only an original photo was changed.
    Changed = 1,
    /// Not a record that can be read.
    Unreadable = 2,
    /// A sound rehearsal, not a record.
    Rehearsal = 3,
}

impl Verdict {
    /// Returns the verdict on something that is not a record.
    pub fn unreadable(name: &str, says: String) -> Self {
        Self {
            name: name.to_owned(),
            finding: Finding::Unreadable,
            says,
            number: String::new(),
            entries: 0,
            head: String::new(),
            certificate: String::new(),
            looked: vec![],
            flags: vec![],
            breaks_at: None,
            told: None,
            signatures: vec![],
            superseded_by: None,
            supersedes: vec![],
            originals: None,
            compared: None,
            repair: None,
        }
    }

    /// Returns the verdict in the language of who reads. Findings are made in English, as the command line prints them.
    pub fn told(mut self) -> Self {
        self.says = words::retold_sentences(&self.says);
        if let Some(found) = &mut self.originals {
            found.told();
        }
        self
    }

    fn look(&mut self, at: Look, right: bool) {
        self.looked.push(Looked { at, right });
    }

    fn changed(mut self, at: Look, says: String) -> Self {
        self.look(at, false);
        Self { finding: Finding::Changed, says, ..self }
    }
}

/// Returns what a record file shows: whether its chain is whole and what it stands for.
pub fn check_record(name: &str, bytes: &[u8]) -> Verdict {
    match RecordFile::read(bytes) {
        Ok(file) => judge(name, &file),
        Err(says) => Verdict::unreadable(name, says),
    }
}

fn judge(name: &str, file: &RecordFile) -> Verdict {
    let mut verdict = Verdict {
        number: file.number.clone(),
        entries: file.count(),
        head: file.heads.iter().map(ToString::to_string).collect::<Vec<_>>().join(" "),
        ..Verdict::unreadable(name, String::new())
    };
    let entries = match journal::checked(entries_of(file)) {
        Ok(entries) => entries,
        Err(fault) => {
            verdict.breaks_at = broken_at(&entries_of(file), &fault);
            let says = match (&fault, verdict.breaks_at) {
                (Fault::Unsound(damage), Some(place)) => format!("Entry {place} does not fit: {}.", damage.flaw),
                _ => fault.to_string(),
            };
            return verdict.changed(Look::Chain, says);
        }
    };
    let history = match History::read(entries) {
        Ok(history) => history,
        Err(fault) => return verdict.changed(Look::Chain, fault.to_string()),
    };
    let head = history.own("");
    let Some((head, repair)) = head.and_then(|head| Some((head, history.repair(head)?))) else {
        return verdict.changed(Look::Chain, "The first entry does not open a repair.".into());
    };
    verdict.look(Look::Chain, true);
    verdict.flags = flags(history.line(head).into_iter().map(|place| (place, &history.records[place])));
    verdict.told = Some(told(&repair));
    verdict.supersedes = superseded(&repair);
    if history.heads() != file.heads {
        verdict.breaks_at = Some(history.entries.len());
        let says = "The head does not belong to the last entry: entries are missing at the end.";
        return verdict.changed(Look::Head, says.into());
    }
    verdict.look(Look::Head, true);
    if (repair.rehearsal, &repair.id, &repair.number) != (file.rehearsal, &file.repair, &file.number) {
        let says = "What stands at the top of the file differs from what its entries say.";
        return verdict.changed(Look::Top, says.into());
    }
    verdict.look(Look::Top, true);
    let mut verdict = stands_for(verdict, &repair);
    verdict.repair = Some(Box::new(repair));
    verdict
}

fn broken_at(entries: &[Entry], fault: &Fault) -> Option<usize> {
    let Fault::Unsound(Damage { device, seq, .. }) = fault else { return None };
    entries.iter().position(|entry| &entry.device == device && entry.seq == *seq).map(|place| place + 1)
}

fn stands_for(mut verdict: Verdict, repair: &Repair) -> Verdict {
    let issued = repair.issued.as_ref().map(|issued| issued.number.clone());
    let ending = repair.ending().filter(|_| issued.is_some());
    let complete = ending.is_some();
    let signed = |role| repair.signatures.iter().any(|signature| signature.role == role);
    verdict.look(Look::Complete, complete);
    verdict.look(Look::Signatures, signed(Role::Technician) && signed(Role::Foreman));
    let whole = "Every entry follows from the one before; nothing was changed since it was written.";
    let ending = ending.filter(|_| repair.branches.is_empty());
    let (finding, says) = match (repair.rehearsal, ending) {
        (true, _) => (Finding::Rehearsal, format!("A rehearsal, not a record. {whole}")),
        (_, Some(Ending::Accepted)) => (Finding::Valid, format!("{whole} The record is complete.")),
        (_, Some(Ending::Rejected)) => (Finding::Valid, format!("{whole} The record is of a patch that was rejected.")),
        (_, Some(Ending::Unrepaired)) => (Finding::Valid, format!("{whole} The record is of a defect not mended.")),
        (_, None) if !repair.branches.is_empty() => {
            (Finding::Changed, format!("{whole} But several devices went on apart, and nobody has chosen what counts."))
        }
        (_, None) => (Finding::Changed, format!("{whole} But the repair is not complete, or not signed.")),
    };
    let before: String =
        verdict.supersedes.iter().map(|one| format!(" It supersedes {}: {}", one.number, one.reason)).collect();
    let says = format!("{says}{before}");
    Verdict { finding, says, certificate: issued.unwrap_or_default(), ..verdict }
}
