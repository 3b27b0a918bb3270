//! The only way in: one request, one answer. The window, the browser and the command line all speak it.

mod agreement;
mod audit;
mod backup;
mod backups;
mod branches;
mod brought;
mod bundles;
mod by_hand;
mod checks;
mod device_key;
mod diagnostics;
mod export;
mod following;
mod handover;
mod history;
mod import;
mod intake;
mod keyring;
mod keys;
mod numbers;
mod originals;
mod paper;
mod pass;
mod pieces;
mod practise;
mod record;
mod repairs;
mod request;
mod response;
mod sealing;
mod sheets;
mod shelf;
mod store;
mod told;
mod travel;
mod verdict;

pub use agreement::Compared as PagesCompared;
pub use audit::audit;
pub use backups::{Restored, Storage};
pub use branches::{BranchView, BranchesView, Step};
pub use brought::MOST_BYTES as MOST_PHOTO_BYTES;
pub use bundles::{BundlesView, MadeFile};
pub use by_hand::{ByHand, LateralByHand, Looking};
pub use checks::{ChecksView, Tried};
pub use diagnostics::{Diagnostics, Weight};
pub use export::{Exported, export};
pub use following::{CodeKey, FollowedHold, FollowedRepair, FollowedView};
pub use intake::{Unsaid, line_and_defect};
pub use numbers::{NumberRow, NumberState, Superseded, VoidedRow, beside};
pub use originals::{Compared, Original, Originals, Search, State};
pub use paper::{SignedBy, Trust, Trusted, check_file};
pub use request::{Envelope, Request};
pub use response::{Answer, Problem};
pub use told::{Flag, Told, ToldHold, ToldSignature};
pub use travel::{Sent, Taken, TakenRepair, Unsent, fingerprint, look_at_bundle};
pub use verdict::{Finding, Look, Looked, Verdict, check_record};

use std::collections::BTreeMap;
use std::path::Path;

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use serde_json::json;

use crate::entry;
use crate::facts::{Facts, Moment, Sensed};
use crate::journal::{Fault, Hash, Journal};
use crate::procedure::practice::Practice;
use crate::procedure::rules;
use crate::seal::{PrivateKey, Secret};
use crate::shelf::Person;
use crate::words;
use store::{Store, Writing};

/// The core with its data folder open.
pub struct App {
    store: Store,
}

/// Returns the key of the device whose folder this is, made from `fresh` random bytes at the first time.
///
/// Errors: a sentence that says why there is none.
pub fn device_key(folder: &Path, fresh: &[u8; 32]) -> Result<PrivateKey, String> {
    device_key::open(folder, fresh).map_err(|problem| match problem {
        Problem::Error { says, .. } => says,
        Problem::Refused(_) => String::new(),
    })
}

/// One request at work: the folder, the facts, and under which name it writes.
struct Visit<'a> {
    store: &'a mut Store,
    facts: Facts,
    /// What the clocks of the device show; in a rehearsal that is played, the facts hold another moment.
    real: Moment,
    /// The rehearsal whose clock the facts are by.
    played: Option<Practice>,
    people: Vec<Person>,
    fresh: [u8; 16],
    id: String,
    hash: Hash,
    waited_ms: i64,
    seed: [u8; 32],
    pin: Option<Secret>,
    password: Option<Secret>,
}

impl App {
    /// Opens the data folder, creating it when it is not there.
    ///
    /// Errors: the faults of opening the journal; the file stays as it is.
    pub fn open(folder: &Path) -> Result<Self, Fault> {
        Ok(Self { store: Store::open(folder)? })
    }

    /// Says why nothing can be recorded in this folder; `None` where it can.
    pub fn closed(&self) -> Option<Fault> {
        self.store.journal.writable().err()
    }

    /// Makes the register anew from the journal, as `device` sees the repairs. Returns how many it lists.
    ///
    /// Errors: the journal's faults.
    pub fn rebuild(&mut self, device: &str) -> Result<usize, Fault> {
        self.store.asked_by(device);
        self.store.rebuild()
    }

    /// Answers one envelope (JSON text) with one response (JSON text on one line). Never panics on any text.
    ///
    /// The response is `{"id", "now", "ok": …}`, `{"id", "now", "refusal": {"broken": […]}}` or
    /// `{"id"?, "now", "error": {"code", "says"}}`.
    pub fn handle(&mut self, envelope: &str, sensed: &Sensed) -> String {
        let now = now(&sensed.moment);
        let envelope: Envelope = match serde_json::from_str(envelope) {
            Ok(envelope) => envelope,
            Err(problem) => {
                let says = format!("The request can't be understood: {problem}.");
                return json!({ "now": now, "error": { "code": "bad_request", "says": says } }).to_string();
            }
        };
        let id = envelope.id.clone();
        let mut now = now;
        let reader = envelope.reader;
        let outcome = words::for_reader(reader, || self.answer(envelope, sensed, &mut now));
        if matches!(&outcome, Err(Problem::Error { code, .. }) if code == "corrupt") {
            self.store.journal.close_to_writing(Fault::Corrupt { what: "found while it was read".into() });
        }
        match outcome {
            Ok(answer) => json!({ "id": id, "now": now, "ok": answer }).to_string(),
            Err(Problem::Refused(broken)) => {
                json!({ "id": id, "now": now, "refusal": { "broken": broken } }).to_string()
            }
            Err(Problem::Error { code, says }) => {
                let says = words::for_reader(reader, || words::retold_sentences(&says));
                json!({ "id": id, "now": now, "error": { "code": code, "says": says } }).to_string()
            }
        }
    }

    /// Writes to `now` what the clock of the answer shows, if it is another one than the device's.
    fn answer(&mut self, envelope: Envelope, sensed: &Sensed, now: &mut serde_json::Value) -> Result<Answer, Problem> {
        if envelope.id.trim().is_empty() || envelope.id.len() > 200 {
            return Err(Problem::error("bad_request", "The request has no id, or one that is too long."));
        }
        let bytes = serde_json::to_vec(&envelope.request)
            .map_err(|problem| Problem::error("bad_request", problem.to_string()))?;
        self.store.asked_by(&sensed.device);
        let people = self.store.people()?;
        let facts = Facts {
            moment: sensed.moment.clone(),
            position: envelope.position,
            person: envelope.person,
            device: sensed.device.clone(),
            keyed: None,
            battery_pct: envelope.battery_pct,
            typed: short(envelope.typed),
            key: None,
        };
        let hash = Hash::of(&bytes);
        let mut visit = Visit {
            store: &mut self.store,
            facts,
            real: sensed.moment.clone(),
            played: None,
            people,
            fresh: sensed.fresh,
            id: envelope.id,
            hash,
            waited_ms: envelope.waited_ms.into(),
            seed: sensed.seed,
            pin: envelope.pin,
            password: envelope.password,
        };
        let before = visit.answered_before()?;
        if let Some(repair) = before.as_deref().or(envelope.request.about()) {
            visit.by_the_clock_of(repair);
            if let Some(at_ms) = envelope.on_paper_ms.filter(|_| envelope.request.on_paper()) {
                visit.by_the_paper(repair, at_ms)?;
            }
        }
        let outcome = match before {
            Some(repair) => visit.again(&envelope.request, &repair),
            None => visit.carry_out(envelope.request),
        };
        visit.tell_now(now);
        outcome
    }
}

/// Returns what was typed, as far as a person types.
fn short(typed: BTreeMap<String, String>) -> BTreeMap<String, String> {
    typed.into_iter().filter(|(name, text)| name.len() <= 100 && text.len() <= 40).take(40).collect()
}

fn now(moment: &Moment) -> serde_json::Value {
    json!({ "at_ms": moment.at_ms, "offset_min": moment.offset_min })
}

impl Visit<'_> {
    /// Returns what the same request wrote before, if it was here already.
    ///
    /// Errors: `request_reused` if the id was used for something else.
    fn answered_before(&self) -> Result<Option<String>, Problem> {
        match self.store.journal.answered(&self.id)? {
            None => Ok(None),
            Some((hash, _)) if hash != self.hash => Err(Fault::RequestReused { request: self.id.clone() }.into()),
            Some((_, answer)) => Ok(Some(String::from_utf8_lossy(&answer).into_owned())),
        }
    }

    /// Shows what a repeated request left behind; nothing is done twice.
    fn again(&mut self, request: &Request, repair: &str) -> Result<Answer, Problem> {
        match request {
            Request::ImportInspection { .. } => self.inspections(),
            Request::Keep { .. } | Request::TakeOff { .. } | Request::TakeExamples | Request::TakeSheets { .. } => {
                self.shelf()
            }
            Request::MakeKey { .. } | Request::ImportKey { .. } | Request::RevokeKey { .. } => self.shelf(),
            Request::NoteBackup { .. } | Request::Unfollow { .. } => self.today(),
            Request::Follow { photo, .. } => self.followed_again(&unpacked(photo)?),
            _ => self.repair(repair),
        }
    }

    fn carry_out(&mut self, request: Request) -> Result<Answer, Problem> {
        if request.is_for_crew() {
            self.crew_only()?;
        }
        match request {
            Request::Today => self.today(),
            Request::List { text } => self.list(&text),
            Request::Repair { repair } => self.repair(&repair),
            Request::Shelf => self.shelf(),
            Request::Keep { document } => self.keep(*document),
            Request::TakeOff { kind, id } => self.take_off(kind, &id),
            Request::TakeExamples => self.take_examples(),
            Request::HandOutSheets => self.hand_out_sheets(),
            Request::TakeSheets { bytes, .. } => self.take_sheets(&unpacked(&bytes)?),
            Request::Inspections => self.inspections(),
            Request::ImportInspection { name, bytes } => self.import_inspection(&name, &unpacked(&bytes)?),
            Request::Inspection { file, index } => self.inspection(&file, index),
            Request::OpenFromInspection { .. } => self.open_from_inspection(request),
            Request::OpenByHand { line, defect, contract, number, rehearsal, video_before } => {
                self.open(*line, *defect, repairs::Opening { contract, number, rehearsal, video_before })
            }
            Request::EnterByHand { seen, contract, number, rehearsal, video_before } => {
                self.enter_by_hand(&seen, repairs::Opening { contract, number, rehearsal, video_before })
            }
            Request::Practise { mishaps, surprise, pace } => self.practise(mishaps, surprise, pace),
            Request::Pace { repair, pace } => self.set_pace(&repair, pace),
            Request::Branches { repair } => self.branches(&repair),
            Request::TakeOver { repair, photo, age_ms, clock, followed } => {
                let photo = unpacked(&photo)?;
                self.take_over(&repair, &handover::Tie { photo: &photo, age_ms, clock: &clock, followed })
            }
            Request::Follow { photo, age_ms } => self.follow(&unpacked(&photo)?, age_ms),
            Request::Followed { repair } => self.followed(&repair),
            Request::Unfollow { repair } => self.unfollow(&repair),
            Request::Bundles => self.bundles(),
            Request::Pack { repairs, since_ms } => self.pack(&repairs, since_ms),
            Request::BackUp => self.back_up(),
            Request::NoteBackup { name, bytes } => self.note_backup(&name, bytes),
            Request::Restore { name, of } => self.restore(&name, of),
            Request::Piece { name, from } => self.piece(&name, from),
            Request::Bring { name, of, from, bytes } => self.bring(&name, of, from, &unpacked(&bytes)?),
            Request::TakeIn { name, of, key } => self.take_in(&name, of, &key),
            Request::Plan { repair, choice } => self.plan(&repair, choice.map(|choice| *choice)),
            Request::AcceptPlan { repair, choice } => self.accept_plan(&repair, &choice),
            Request::Tell { repair, command } => self.tell(&repair, &command.as_recorded()),
            Request::KeepPhoto { repair, key, label, bytes, copy_of } => {
                self.keep_photo(&repair, repairs::Taken { key, label, copy_of }, &unpacked(&bytes)?)
            }
            Request::Photo { sha256, longest_px } => self.photo(&sha256, longest_px),
            Request::Paper { repair } => self.paper(&repair),
            Request::ReadLabel { bytes } => self.read_label(&unpacked(&bytes)?),
            Request::Issue { repair } => self.issue(&repair),
            Request::Void { repair, reason } => self.void(&repair, &reason),
            Request::Numbers => self.numbers(),
            Request::Seal { repair } => self.seal(&repair),
            Request::MakeKey { person } => self.make_key(&person),
            Request::ImportKey { person, bytes } => self.import_key(&person, &unpacked(&bytes)?),
            Request::ChangePin { person } => self.change_pin(&person),
            Request::RevokeKey { person, from_ms, reason } => self.revoke_key(&person, from_ms, &reason),
            Request::PersonCertificate { person } => self.person_certificate(&person),
            Request::Certificate { repair } => self.certificate(&repair),
            Request::Record { repair } => self.record_file(&repair),
            Request::ImportRecord { bytes, .. } => self.import_record(&unpacked(&bytes)?),
            Request::CheckRecord { name, bytes } => self.check_file(&name, &unpacked(&bytes)?),
            Request::CheckOriginal { head, name, of } => self.check_original(&head, &name, of),
            Request::Rules => Ok(Answer::Rules { rules: rules::shown() }),
            Request::Words => Ok(spoken()),
            Request::Check { name, input } => self.check(&name, &input),
            Request::Read { entries } => Ok(Answer::Read { entries: entries.iter().map(entry::heard).collect() }),
            Request::Checks { repair, name, input } => self.checks(&repair, &name, input.as_ref()),
            Request::WorkOut { repair, name, input } => self.work_out(&repair, &name, &input),
            Request::Diagnostics => self.diagnostics(),
            Request::Rebuild => Ok(Answer::Rebuilt { repairs: self.store.rebuild()? }),
        }
    }

    fn writing(&self) -> (String, Hash, Facts, Facts) {
        let real = Facts { moment: self.real.clone(), keyed: None, ..self.facts.clone() };
        (self.id.clone(), self.hash, self.facts.clone(), real)
    }
}

/// Runs `write` with the request's name and facts.
fn with_writing<T>(visit: &mut Visit, write: impl FnOnce(&mut Store, &Writing) -> T) -> T {
    let (request, request_hash, facts, real) = visit.writing();
    write(visit.store, &Writing { request: &request, request_hash, facts: &facts, real: &real })
}

fn spoken() -> Answer {
    let language = words::reader().language;
    Answer::Words { language, messages: words::screens(language) }
}

fn unpacked(base64: &str) -> Result<Vec<u8>, Problem> {
    STANDARD
        .decode(base64)
        .map_err(|problem| Problem::error("bad_request", format!("The file did not arrive whole: {problem}.")))
}

fn hex(bytes: &[u8]) -> String {
    bytes.iter().map(|byte| format!("{byte:02x}")).collect()
}

fn packed(bytes: &[u8]) -> String {
    STANDARD.encode(bytes)
}
