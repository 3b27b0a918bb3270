//! A rehearsal that is played: opened from the built-in example, told by a clock of its own.
//!
//! The other clock is set here, once a request, for the repair that is asked about and no other. The shelf, the lists and
//! every repair in earnest keep the clocks of the device.

use serde_json::json;

use super::response::{Answer, Problem};
use super::{Visit, hex, with_writing};
use crate::facts::Facts;
use crate::procedure::practice::{self, Mishap};
use crate::procedure::{Command, Event, Record, Repair, apply, decide, planning};
use crate::shelf::practice::practice_line;
use crate::shelf::{Person, Role, examples};
use crate::view::Other;

impl Visit<'_> {
    /// Opens a rehearsal on the practice line, with an accepted plan. Nothing is taken from the shelf or put on it.
    pub(super) fn practise(&mut self, mut mishaps: Vec<Mishap>, surprise: bool, pace: u32) -> Result<Answer, Problem> {
        if surprise {
            mishaps = vec![Mishap::ALL[usize::from(self.fresh[0]) % Mishap::ALL.len()]];
        }
        mishaps.sort();
        mishaps.dedup();
        let built_in = |problem: serde_json::Error| Problem::error("program_fault", problem.to_string());
        let example = practice_line().map_err(built_in)?;
        let shelf = examples::shelf().map_err(built_in)?;
        let mut line = example.line;
        if mishaps.contains(&Mishap::LateralUnderPatch) {
            line.laterals.push(example.under_patch);
            line.laterals.sort_by_key(|lateral| lateral.station_um);
        }
        let plan = planning::plan(&line, &example.defect, &example.choice, &shelf.view())
            .map_err(|broken| Problem::refused(&broken))?;
        let id = hex(&self.fresh);
        let open = Command::Open {
            id: id.clone(),
            number: self.next_number(true)?,
            rehearsal: true,
            line: Box::new(line),
            defect: Box::new(example.defect),
            contract: Box::new(plan.contract.clone()),
            video_before: "rehearsal".into(),
        };
        self.facts.moment = example.begins;
        self.with_practice_people();
        let practise = Command::Practise { mishaps, surprise, pace, real: self.real.clone() };
        let events = self.all_of(&[open, Command::AcceptPlan { plan: Box::new(plan) }, practise])?;
        let repair = with_writing(self, |store, writing| store.record(writing, None, &id, events, None))?;
        self.played = repair.practice.clone();
        self.shown(&repair)
    }

    /// Returns the events of several commands to a repair that they open, or the first refusal.
    fn all_of(&self, commands: &[Command]) -> Result<Vec<Event>, Problem> {
        let mut repair: Option<Repair> = None;
        let mut all = vec![];
        for command in commands {
            let events = decide(repair.as_ref(), command, &self.facts, &self.people)?;
            let record = Record { facts: self.facts.clone(), events };
            repair = apply::apply_record(repair, &record);
            all.extend(record.events);
        }
        Ok(all)
    }

    pub(super) fn set_pace(&mut self, id: &str, pace: u32) -> Result<Answer, Problem> {
        let answer = self.tell_any(id, &Command::SetPace { pace, real: self.real.clone() });
        self.by_the_clock_of(id);
        answer
    }

    /// Takes the clock of a rehearsal that is played for the facts of this request; of any other repair the facts stay.
    pub(super) fn by_the_clock_of(&mut self, id: &str) {
        let Ok(repair) = self.store.repair(id) else { return };
        if let Some(shown) = practice::moment(&repair, &self.real) {
            self.facts.moment = shown;
            self.played = repair.practice;
            self.with_practice_people();
        }
    }

    /// Takes the time that stands on paper for the facts of this request.
    ///
    /// Errors: `paper` if that time lies ahead, or before the repair was opened, or if the rehearsal has a clock of its own.
    pub(super) fn by_the_paper(&mut self, id: &str, at_ms: i64) -> Result<(), Problem> {
        let opened = self.store.repair(id)?.opened.moment.at_ms;
        let wrong = match at_ms {
            _ if self.played.is_some() => Some("A rehearsal with a clock of its own has no paper. Go on without."),
            _ if at_ms > self.real.at_ms => Some("The time on the paper lies ahead. Mend day and time at the top."),
            _ if at_ms < opened => {
                Some("The time on the paper lies before the repair was opened. Mend day and time at the top.")
            }
            _ => None,
        };
        if let Some(says) = wrong {
            return Err(Problem::error("paper", says));
        }
        self.facts = self.facts.from_paper(at_ms);
        Ok(())
    }

    /// A rehearsal needs somebody in each role, also where the list of people is empty.
    fn with_practice_people(&mut self) {
        let Ok(examples) = examples::shelf() else { return };
        for role in [Role::Technician, Role::Foreman] {
            if !self.people.iter().any(|person| person.role == role) {
                let fresh = |person: &&Person| person.role == role;
                self.people.extend(examples.people.iter().find(fresh).cloned());
            }
        }
    }

    /// Says what the clock of the answer shows, and how fast it runs, where it is not the device's.
    pub(super) fn tell_now(&self, now: &mut serde_json::Value) {
        let Facts { moment, .. } = &self.facts;
        if self.facts.keyed.is_some() {
            // On paper the time stands still.
            *now = json!({ "at_ms": moment.at_ms, "offset_min": moment.offset_min, "pace": 0 });
        }
        let Some(practice) = &self.played else { return };
        *now = json!({ "at_ms": moment.at_ms, "offset_min": moment.offset_min, "pace": practice.pace });
    }

    /// Returns a repair in earnest as the rehearsal that is played shows it: due as soon, by the clock on the screen.
    pub(super) fn due_by_this_clock(&self, other: Other) -> Other {
        let Some(practice) = &self.played else { return other };
        let left = other.due_ms.saturating_sub(self.real.at_ms).saturating_mul(i64::from(practice.pace));
        Other { due_ms: self.facts.moment.at_ms.saturating_add(left), ..other }
    }
}
