//! Requests about one repair.

use chrono::Datelike as _;

use super::response::{Answer, Problem};
use super::store::Writing;
use super::{Visit, export, hex, packed, record, with_writing};
use crate::certificate;
use crate::facts::Moment;
use crate::journal::{Hash, Journal};
use crate::label;
use crate::photos;
use crate::picture;
use crate::procedure::gate::Around;
use crate::procedure::line::{Defect, Line};
use crate::procedure::plan::PlanChoice;
use crate::procedure::planning;
use crate::procedure::{Command, Repair, decide};
use crate::register::Register;
use crate::shelf::ShelfEvent;
use crate::view::{self, Summary};

/// How many rows a list shows at most.
const MOST: usize = 200;

/// What a repair is opened with, beside its line and defect.
pub struct Opening {
    pub contract: String,
    pub number: String,
    pub rehearsal: bool,
    pub video_before: String,
}

/// What is said of a photo that is kept.
pub struct Taken {
    pub key: String,
    pub label: String,
    pub copy_of: Option<String>,
}

impl Visit<'_> {
    pub(super) fn today(&mut self) -> Result<Answer, Problem> {
        let mut live = vec![];
        let mut broken = vec![];
        for row in self.store.journal.live()? {
            match self.store.repair(&row.repair) {
                Err(Problem::Error { code, .. }) if code == "damaged" => broken.push(view::damaged_row(&row.repair)),
                repair => live.push(repair?),
            }
        }
        let mut rows = self.store.journal.list(MOST)?;
        rows.extend(broken);
        let others = rows.iter().filter(|row| !row.live).filter_map(|row| summary_of(&row.summary)).collect();
        let mut today = view::today(&live, others, &self.facts.moment, &self.facts.device);
        if let Ok(shelf) = self.store.shelf() {
            today.lacks = view::lacks(&shelf.documents);
            if let Some(contract) = shelf.documents.contracts.first() {
                today.owner.clone_from(&contract.owner);
                today.crew.clone_from(&contract.crew);
            }
        }
        let me = self.people.iter().find(|person| Some(&person.id) == self.facts.person.as_ref());
        today.who = me.map(|person| person.name.clone());
        let (storage, followed) = (self.storage()?, self.all_followed());
        today.closed = self.store.journal.writable().err().map(|fault| fault.to_string());
        Ok(Answer::Today { today: Box::new(today), followed, storage })
    }

    pub(super) fn list(&mut self, text: &str) -> Result<Answer, Problem> {
        let rows = if text.trim().is_empty() {
            self.store.journal.list(MOST)?
        } else {
            self.store.journal.search(text, MOST)?
        };
        Ok(Answer::List { repairs: rows.iter().filter_map(|row| summary_of(&row.summary)).collect() })
    }

    pub(super) fn repair(&mut self, id: &str) -> Result<Answer, Problem> {
        let repair = self.store.repair(id)?;
        self.shown(&repair)
    }

    pub(super) fn shown(&mut self, repair: &Repair) -> Result<Answer, Problem> {
        let around = Around { facts: &self.facts, people: &self.people };
        let mut shown = view::repair_view(repair, &around);
        for row in self.store.journal.live()?.into_iter().filter(|row| row.repair != repair.id) {
            // A broken one has no clock that could be trusted; the first screen names it.
            if let Ok(other) = self.store.repair(&row.repair) {
                let other = view::other(&other, &self.real, &self.facts.device);
                let by_this_clock = |other: view::Other| self.due_by_this_clock(other);
                shown.others.extend(other.map(by_this_clock));
            }
        }
        let followed = self.all_followed();
        shown.others.extend(followed.into_iter().map(|one| self.due_by_this_clock(one.other())));
        let (code, tied_ms) = (self.handing_code(repair), self.tied_ms(repair));
        if let Some(handed) = &mut shown.handed {
            handed.code = code;
            handed.tied_ms = tied_ms.filter(|_| handed.offered);
        }
        let budget = shown.go.as_ref().and_then(|go| go.budget.as_ref());
        shown.pace = view::pace(&repair.contract, &self.summaries()?, budget);
        Ok(Answer::Repair(Box::new(shown)))
    }

    fn summaries(&self) -> Result<Vec<Summary>, Problem> {
        let rows = self.store.journal.list(MOST)?;
        Ok(rows.iter().filter_map(|row| summary_of(&row.summary)).collect())
    }

    pub(super) fn open(&mut self, line: Line, defect: Defect, opening: Opening) -> Result<Answer, Problem> {
        let contracts = &self.store.shelf()?.documents.contracts;
        let contract = contracts.iter().find(|contract| contract.id == opening.contract).cloned();
        let contract =
            contract.ok_or_else(|| Problem::error("unknown_contract", "Choose a contract from the shelf first."))?;
        let id = hex(&self.fresh);
        let number =
            if opening.number.trim().is_empty() { self.next_number(opening.rehearsal)? } else { opening.number };
        let command = Command::Open {
            id: id.clone(),
            number,
            rehearsal: opening.rehearsal,
            line: Box::new(line),
            defect: Box::new(defect),
            contract: Box::new(contract),
            video_before: opening.video_before,
        };
        let events = decide(None, &command, &self.facts, &self.people)?;
        let repair = with_writing(self, |store, writing| store.record(writing, None, &id, events, None))?;
        self.shown(&repair)
    }

    pub(super) fn next_number(&self, rehearsal: bool) -> Result<String, Problem> {
        let prefix = if rehearsal { "RH" } else { "R" };
        Ok(format!("{prefix}-{:02}", self.store.journal.count()? + 1))
    }

    pub(super) fn plan(&mut self, id: &str, choice: Option<PlanChoice>) -> Result<Answer, Problem> {
        let repair = self.store.repair(id)?;
        let mut shelf = self.store.shelf()?.documents.clone();
        // The repair was opened under a contract: that one is suggested first.
        shelf.contracts.sort_by_key(|contract| contract.id != repair.contract.id);
        let documents = shelf.view();
        let chosen = choice.or_else(|| repair.plan.as_ref().map(|plan| plan.choice.clone()));
        let chosen = chosen.unwrap_or_else(|| planning::suggest(&repair.line, &repair.defect, &documents));
        let proposal =
            planning::propose(&repair.line, &repair.defect, &chosen, &documents, self.facts.moment.at_ms).told();
        let around = Around { facts: &self.facts, people: &self.people };
        let mut shown = Box::new(view::repair_view(&repair, &around));
        let budget = proposal.parts.timed.as_ref().map(|timed| &timed.budget);
        shown.pace = view::pace(&repair.contract, &self.summaries()?, budget);
        Ok(Answer::Plan { repair: shown, proposal: Box::new(proposal), shelf: Box::new(shelf) })
    }

    pub(super) fn accept_plan(&mut self, id: &str, choice: &PlanChoice) -> Result<Answer, Problem> {
        let repair = self.store.repair(id)?;
        let shelf = self.store.shelf()?.documents.clone();
        let plan = planning::plan(&repair.line, &repair.defect, choice, &shelf.view())
            .map_err(|broken| Problem::refused(&broken))?;
        self.tell_any(id, &Command::AcceptPlan { plan: Box::new(plan) })
    }

    pub(super) fn tell(&mut self, id: &str, command: &Command) -> Result<Answer, Problem> {
        match command {
            Command::Open { .. }
            | Command::AcceptPlan { .. }
            | Command::Practise { .. }
            | Command::SetPace { .. }
            | Command::Issue { .. }
            | Command::Void { .. }
            | Command::Photo { .. }
            | Command::TakeOver { .. }
            | Command::WorkOut { .. } => Err(Problem::error("bad_request", "This command has a request of its own.")),
            Command::Report { happening, ago_ms } => {
                let pace = self.played.as_ref().map_or(1, |practice| i64::from(practice.pace));
                let ago_ms = ago_ms.max(&0) + self.waited_ms * pace;
                self.tell_any(id, &Command::Report { happening: happening.clone(), ago_ms })
            }
            _ => {
                self.ask_pin_for(id, command)?;
                self.tell_any(id, command)
            }
        }
    }

    /// A line that is drawn, a rule that is waived and a branch that is chosen ask the PIN of who has a key; practice asks none.
    fn ask_pin_for(&mut self, id: &str, command: &Command) -> Result<(), Problem> {
        let person = match command {
            Command::Sign { .. } => self.facts.person.clone(),
            Command::Waive { foreman, .. } | Command::ChooseBranch { foreman, .. } => Some(foreman.clone()),
            _ => return Ok(()),
        };
        if self.store.repair(id)?.rehearsal { Ok(()) } else { self.ask_pin(person.as_deref()) }
    }

    pub(super) fn tell_any(&mut self, id: &str, command: &Command) -> Result<Answer, Problem> {
        self.tell_with(id, command, None)
    }

    pub(super) fn tell_with(
        &mut self,
        id: &str,
        command: &Command,
        number: Option<ShelfEvent>,
    ) -> Result<Answer, Problem> {
        let repair = self.store.repair(id)?;
        let events = match decide(Some(&repair), command, &self.facts, &self.people) {
            Ok(events) => events,
            Err(refusal) => {
                let views = refusal.broken.iter().map(|one| view::BrokenView::of(&repair, one)).collect();
                return Err(Problem::Refused(views));
            }
        };
        let after =
            with_writing(self, |store, writing: &Writing| store.record(writing, Some(repair), id, events, number))?;
        self.shown(&after)
    }

    pub(super) fn keep_photo(&mut self, id: &str, taken: Taken, bytes: &[u8]) -> Result<Answer, Problem> {
        let repair = self.store.repair(id)?;
        if let Some(original) = &taken.copy_of
            && !repair.photos.iter().any(|photo| photo.sha256 == *original)
        {
            return Err(Problem::error(
                "photo",
                "This repair has no such photo. Open its photos and mark one of them.",
            ));
        }
        let kept = photos::keep(&self.store.folder, bytes)?;
        // The screen sends the contract's words as it showed them; recorded are the contract's own.
        let rule = repair.contract.photos.iter().find(|rule| rule.key == taken.key);
        let shown = rule.filter(|rule| crate::words::retold(&rule.label) == taken.label);
        let command = Command::Photo {
            key: taken.key,
            label: shown.map_or(taken.label, |rule| rule.label.clone()),
            copy_of: taken.copy_of,
            sha256: kept.sha256.to_string(),
            bytes: kept.bytes,
            media_type: kept.media_type.to_owned(),
        };
        self.tell_any(id, &command)
    }

    pub(super) fn photo(&mut self, sha256: &str, longest_px: Option<u32>) -> Result<Answer, Problem> {
        let hash: Hash =
            sha256.parse().map_err(|_| Problem::error("bad_request", "A photo is asked for by its SHA-256."))?;
        let bytes = photos::read(&self.store.folder, hash)?;
        // A format that this core can't reduce is shown as it is.
        if let Some(copy) = longest_px.and_then(|longest| picture::small(&bytes, longest).ok()) {
            return Ok(Answer::Photo { media_type: "image/jpeg".into(), bytes: packed(&copy) });
        }
        let media_type = photos::media_type(&bytes).unwrap_or("application/octet-stream").to_owned();
        Ok(Answer::Photo { media_type, bytes: packed(&bytes) })
    }

    pub(super) fn paper(&mut self, id: &str) -> Result<Answer, Problem> {
        let repair = self.store.repair(id)?;
        let plan = repair.plan.as_ref();
        let plan = plan.ok_or_else(|| Problem::error("no_plan", "Accept a plan first: the paper is made from it."))?;
        let around = Around { facts: &self.facts, people: &self.people };
        let shown = view::repair_view(&repair, &around);
        Ok(Answer::Paper { repair: Box::new(shown), paper: Box::new(view::paper(plan)) })
    }

    pub(super) fn read_label(&self, bytes: &[u8]) -> Result<Answer, Problem> {
        let Moment { at_ms, offset_min, .. } = self.facts.moment;
        let local = chrono::DateTime::from_timestamp_millis(at_ms + i64::from(offset_min) * 60_000);
        let year = local
            .map(|local| local.year())
            .ok_or_else(|| Problem::error("label", "The clock of this device shows no date. Set it first."))?;
        Ok(Answer::Label(label::read(bytes, year)?))
    }

    pub(super) fn issue(&mut self, id: &str) -> Result<Answer, Problem> {
        let repair = self.store.repair(id)?;
        if repair.issued.is_some() {
            return self.shown(&repair);
        }
        // A number is not given to a certificate that can't be printed.
        let missing = certificate::derive::refusals(&repair, &self.people);
        if !missing.is_empty() {
            return Err(Problem::refused(&missing));
        }
        let number = self.next_certificate(repair.rehearsal)?;
        let taken = ShelfEvent::NumberTaken { number: number.clone(), repair: id.to_owned() };
        self.tell_with(id, &Command::Issue { number }, Some(taken))
    }

    pub(super) fn certificate(&mut self, id: &str) -> Result<Answer, Problem> {
        let repair = self.store.repair(id)?;
        let (number, pdf) = self.certificate_file(&repair)?;
        let name = format!("{}.pdf", file_name(&number));
        Ok(Answer::File { name, media_type: "application/pdf".into(), bytes: packed(&pdf) })
    }

    pub(super) fn record_file(&mut self, id: &str) -> Result<Answer, Problem> {
        let repair = match self.store.repair(id) {
            Err(Problem::Error { code, .. }) if code == "damaged" => return self.broken_record(id),
            repair => repair?,
        };
        let bytes = record::write(&repair, &self.store.journal.entries(id)?)?;
        let name = format!("{}-record.json", file_name(&repair.number));
        Ok(Answer::File { name, media_type: "application/json".into(), bytes: packed(&bytes) })
    }

    fn broken_record(&self, id: &str) -> Result<Answer, Problem> {
        let file = export::file(id, &self.store.journal.stored(id)?)?;
        Ok(Answer::File { name: file.name, media_type: "application/json".into(), bytes: packed(&file.bytes) })
    }
}

fn summary_of(bytes: &[u8]) -> Option<Summary> {
    serde_json::from_slice(bytes).ok().map(Summary::told)
}

/// Returns three characters that name a device on certificates.
pub fn device_prefix(device: &str) -> String {
    device.chars().filter(char::is_ascii_alphanumeric).take(3).collect::<String>().to_uppercase()
}

/// Returns `text` as part of a file's name.
pub fn file_name(text: &str) -> String {
    text.chars().map(|letter| if letter.is_alphanumeric() || letter == '-' { letter } else { '-' }).collect()
}
