//! What comes of a command: events, or a refusal. It knows of the world only what it is given.

mod handing;

pub use handing::OLDEST_MS;

use super::answer::{self, Answer, FieldProblem, Value, Values};
use super::apply::apply;
use super::command::Command;
use super::event::{Event, Record};
use super::gate::{self, Around, Ask};
use super::happening::Happening;
use super::hold;
use super::plan::{Plan, Temperatures};
use super::practice::{MOST_PACE, Mishap};
use super::repair::{Attempt, CorrectionOf, ReadingField, Repair, Stamp, Standing};
use super::roles;
use super::rules::{Broken, Kind, Refusal, Rule, RuleValues, n, t};
use super::spot;
use super::stage::{Outcome, Stage};
use super::times;
use crate::facts::{Facts, Moment};
use crate::shelf::Person;
use crate::shelf::method::{Task, TaskKind};
use crate::units::Temperature;
use crate::words;

/// How far wall clock and boot clock may drift apart before it counts as set, in milliseconds.
const CLOCK_SLACK_MS: i64 = 5_000;

/// A tap that gets through this much later than it happened is a late tap; less is the way to the core.
const LATE_TAP_MS: i64 = 30_000;

/// What the foreman answers for when readings of the hold were keyed in from paper.
const KEYED_READINGS: &str = "readings from paper";

/// The events that come of a command, or the rules that refuse it.
pub type Decision = Result<Vec<Event>, Refusal>;

/// Decides on a command to a repair; `None` before it is opened.
///
/// Returns the events in the order to record them. Errors: a `Refusal` with every rule that stands in the way.
pub fn decide(repair: Option<&Repair>, command: &Command, facts: &Facts, people: &[Person]) -> Decision {
    let around = Around { facts, people };
    if let Some(broken) = roles::refused(command, &around) {
        return refuse(broken);
    }
    let Some(repair) = repair else { return open(command) };
    let mut events = clock_jump(&repair.last_moment, facts.tapped(), &facts.device, repair);
    let mut step = Step { repair: repair.clone(), facts, events: vec![] };
    // What is recorded reads the same, whoever taps; what is refused is said later, for who asks.
    words::plainly(|| step.command(command, &around))?;
    events.extend(step.events);
    Ok(events)
}

fn open(command: &Command) -> Decision {
    let Command::Open { id, number, rehearsal, line, defect, contract, video_before } = command else {
        return refuse(Broken::with(Rule::StageOrder, &[("standing", t("not opened"))]));
    };
    let wrong = [
        (line.length_um.as_um() <= 0, "The line has no length."),
        (line.height_um.as_um() <= 0, "The line has no nominal size."),
        (line.upstream.name.trim().is_empty(), "The upstream node has no name."),
        (line.downstream.name.trim().is_empty(), "The downstream node has no name."),
        (defect.from_um.as_um() < 0, "The defect begins before the line."),
        (defect.to_um > line.length_um, "The defect ends past the line."),
        (defect.from_um > defect.to_um, "The defect ends before it begins."),
    ];
    if let Some((_, what)) = wrong.into_iter().find(|(wrong, _)| *wrong) {
        return refuse(Broken::with(Rule::BadValue, &[("what", t(what))]));
    }
    Ok(vec![Event::Opened {
        id: id.clone(),
        number: number.clone(),
        rehearsal: *rehearsal,
        line: line.clone(),
        defect: defect.clone(),
        contract: contract.clone(),
        video_before: video_before.clone(),
    }])
}

fn refuse<T>(broken: Broken) -> Result<T, Refusal> {
    Err(Refusal::one(broken))
}

fn clock_jump(before: &Moment, now: &Moment, device: &str, repair: &Repair) -> Vec<Event> {
    let same_device = repair.last_device == device;
    let restarted = times::restarted(before, now);
    let by_ms = (now.at_ms - before.at_ms) - if restarted { 0 } else { now.boot_ms - before.boot_ms };
    let noted = if restarted { by_ms < -CLOCK_SLACK_MS } else { by_ms.abs() > CLOCK_SLACK_MS };
    if same_device && noted { vec![Event::ClockSet { by_ms, restarted }] } else { vec![] }
}

/// One command at work: the events so far, and the repair as it stands after them.
struct Step<'a> {
    repair: Repair,
    facts: &'a Facts,
    events: Vec<Event>,
}

impl Step<'_> {
    fn record(&mut self, event: Event) {
        if let Some(next) = apply(Some(self.repair.clone()), &event, self.facts) {
            self.repair = next;
        }
        self.events.push(event);
    }

    fn ask(&self, ask: Ask, around: &Around) -> Result<(), Refusal> {
        Refusal::unless_empty(gate::gate(&self.repair, ask, around))
    }

    fn command(&mut self, command: &Command, around: &Around) -> Result<(), Refusal> {
        match command {
            Command::Open { .. } => refuse(Broken::with(Rule::StageOrder, &[("standing", t("open already"))])),
            Command::AcceptPlan { plan } => {
                self.ask(Ask::AcceptPlan(plan), around)?;
                self.record(Event::PlanAccepted { plan: plan.clone() });
                Ok(())
            }
            Command::Practise { mishaps, surprise, pace, real } => {
                self.practise(mishaps, *pace)?;
                let (mishaps, surprise, pace, real) = (mishaps.clone(), *surprise, *pace, real.clone());
                self.record(Event::PractiseBegun { mishaps, surprise, pace, real });
                Ok(())
            }
            Command::SetPace { pace, real } => {
                runs(*pace)?;
                if self.repair.practice.is_none() {
                    return refuse(Broken::with(Rule::BadValue, &[("what", t("Only a rehearsal has such a clock."))]));
                }
                self.record(Event::PaceSet { pace: *pace, real: real.clone() });
                Ok(())
            }
            Command::GoOn => self.go_on(around),
            Command::SecondGo { temperatures } => self.second_go(temperatures, around),
            Command::Release => {
                self.ask(Ask::Release, around)?;
                self.report(&Happening::Released { emergency: false }, 0);
                Ok(())
            }
            Command::Judge { accept, reasons } => self.judge(*accept, reasons, around),
            Command::Waive { rule, subject, reason, foreman } => self.waive(*rule, subject, reason, foreman, around),
            Command::ChooseBranch { head, reason, foreman } => self.choose(head, reason, foreman, around),
            Command::HandOver { to } => self.hand_over(to),
            Command::TakeOver { theirs, ours, typed } => self.take_over(theirs.as_ref(), ours, *typed),
            Command::NewAttempt { pipe_unharmed, packer_unharmed } => {
                self.ask(Ask::NewAttempt, around)?;
                self.begin_attempt(*pipe_unharmed && *packer_unharmed);
                Ok(())
            }
            Command::CloseUnrepaired { reason } => {
                self.ask(Ask::CloseUnrepaired, around)?;
                given(reason)?;
                self.record(Event::Unrepaired { reason: reason.clone() });
                Ok(())
            }
            Command::Sign { name, statement, strokes } => self.sign(name, statement, strokes, around),
            Command::Issue { number } => {
                self.ask(Ask::Issue { number }, around)?;
                self.record(Event::Issued { number: number.clone() });
                Ok(())
            }
            Command::Void { reason, foreman } => self.void(reason, foreman, around),
            Command::Answer { task, answer } => self.answer(task, answer),
            Command::Report { happening, ago_ms } => {
                self.report(happening, (*ago_ms).max(0));
                Ok(())
            }
            Command::EndAttempt { outcome, reasons, in_pipe } => self.end_attempt(*outcome, reasons, in_pipe),
            Command::Correct { of, value, reason } => self.correct(of, value, reason),
            Command::WorkOut { worked } => {
                if self.repair.issued.is_some() {
                    let what = "The certificate is issued; nothing more can be worked out for it.";
                    return refuse(Broken::with(Rule::BadValue, &[("what", t(what))]));
                }
                self.record(Event::WorkedOut { stage: self.repair.stage(), worked: worked.clone() });
                Ok(())
            }
            Command::Note { text } => {
                given(text)?;
                self.record(Event::Noted { text: text.clone() });
                Ok(())
            }
            Command::Photo { key, label, sha256, bytes, media_type, copy_of } => {
                self.record(Event::PhotoKept {
                    stage: photo_stage(&self.repair, key),
                    key: key.clone(),
                    label: label.clone(),
                    sha256: sha256.clone(),
                    bytes: *bytes,
                    media_type: media_type.clone(),
                    copy_of: copy_of.clone(),
                });
                Ok(())
            }
        }
    }

    /// A clock of its own is for a rehearsal, and from its beginning on: nothing is recorded by two clocks.
    fn practise(&self, mishaps: &[Mishap], pace: u32) -> Result<(), Refusal> {
        runs(pace)?;
        let fresh = self.repair.practice.is_none() && self.repair.attempts.is_empty();
        let wrong = match (self.repair.rehearsal, fresh, mishaps.len() > Mishap::ALL.len()) {
            (false, _, _) => Some("Only a rehearsal has such a clock. A repair keeps the clocks of the device."),
            (_, false, _) => Some("This rehearsal has begun. Begin another one."),
            (_, _, true) => Some("More goes wrong than there is."),
            _ => None,
        };
        wrong.map_or(Ok(()), |what| refuse(Broken::with(Rule::BadValue, &[("what", t(what))])))
    }

    fn go_on(&mut self, around: &Around) -> Result<(), Refusal> {
        self.ask(Ask::GoOn, around)?;
        if self.repair.standing() == Standing::Planned {
            self.begin_attempt(false);
            return Ok(());
        }
        let stage = self.repair.stage();
        let carried = self.repair.last_attempt().is_some_and(|attempt| attempt.test_push.carried_from.is_some());
        let past_push = stage == Stage::TestPush || (stage == Stage::Staging && carried);
        if past_push {
            self.record_go();
        }
        let next = if past_push { Some(Stage::SleeveChange) } else { stage.next() };
        if let Some(stage) = next {
            self.record(Event::StageBegun { stage, ago_ms: 0 });
        }
        Ok(())
    }

    fn record_go(&mut self) {
        let Some((plan, attempt)) = times::plan_and_attempt(&self.repair) else { return };
        let Some((_, temperatures)) = attempt.last_temperatures() else { return };
        if let Ok(budget) = gate::budget_for_go(plan, attempt) {
            let temperatures = *temperatures;
            self.record(Event::Go { second: false, budget: Box::new(budget), temperatures });
        }
    }

    /// A new attempt takes over what is about the site, and the test push if pipe and packer are unharmed.
    fn begin_attempt(&mut self, unharmed: bool) {
        let before = self.repair.last_attempt();
        let pushed = before.is_some_and(|attempt| {
            attempt.test_push.reached.is_some() && attempt.test_push.back.as_ref().is_some_and(|(_, sound)| *sound)
        });
        let test_push = unharmed && pushed;
        let number = before.map_or(1, |attempt| attempt.n + 1);
        let carried = before
            .into_iter()
            .flat_map(|attempt| &attempt.answers)
            .filter(|(_, answered)| answered.answer.done())
            .filter(|(_, answered)| answered.kind.stays_valid() || test_push && answered.stage == Stage::TestPush)
            .map(|(key, _)| key.clone())
            .collect();
        self.record(Event::AttemptBegun { n: number, carried, test_push });
        if let Some(far) = spot::far_from_node(&self.repair, &self.facts.position) {
            let text = format!("{} {}", far.rule.says(&far.values), far.rule.way_out(&far.values));
            self.record(Event::Noted { text });
        }
        self.record(Event::StageBegun { stage: Stage::Staging, ago_ms: 0 });
    }

    fn second_go(&mut self, temperatures: &Temperatures, around: &Around) -> Result<(), Refusal> {
        self.ask(Ask::SecondGo(temperatures), around)?;
        let Some((plan, attempt)) = times::plan_and_attempt(&self.repair) else { return Ok(()) };
        let budget = times::budget_now(plan, Some(attempt), temperatures).map_err(Refusal::one)?;
        let temperatures = *temperatures;
        self.record(Event::Happened { happening: Happening::TemperaturesRead { temperatures }, ago_ms: 0 });
        self.record(Event::Go { second: true, budget: Box::new(budget), temperatures });
        Ok(())
    }

    fn judge(&mut self, accept: bool, reasons: &[String], around: &Around) -> Result<(), Refusal> {
        self.ask(Ask::Judge { accept }, around)?;
        if !accept && reasons.iter().all(|reason| reason.trim().is_empty()) {
            return refuse(Broken::bare(Rule::ReasonMissing));
        }
        let outcome = if accept { Outcome::Accepted } else { Outcome::Rejected };
        self.record(Event::AttemptEnded { outcome, reasons: reasons.to_vec(), in_pipe: String::new() });
        Ok(())
    }

    fn waive(
        &mut self,
        rule: Rule,
        subject: &str,
        reason: &str,
        foreman: &str,
        around: &Around,
    ) -> Result<(), Refusal> {
        if rule.row().kind != Kind::Departure {
            return refuse(Broken::with(Rule::BadValue, &[("what", t("This rule can't be waived."))]));
        }
        self.by_foreman(foreman, around)?;
        given(reason)?;
        let Some(values) = self.values_of(rule, subject, around) else {
            let what = "This rule does not stand in the way, so there is nothing to waive.";
            return refuse(Broken::with(Rule::BadValue, &[("what", t(what))]));
        };
        self.record(Event::Waived {
            rule,
            subject: subject.to_owned(),
            values,
            reason: reason.to_owned(),
            foreman: foreman.to_owned(),
        });
        Ok(())
    }

    fn by_foreman(&self, id: &str, around: &Around) -> Result<(), Refusal> {
        roles::not_by_foreman(id, self.repair.rehearsal, around).map_or(Ok(()), refuse)
    }

    fn choose(&mut self, head: &str, reason: &str, foreman: &str, around: &Around) -> Result<(), Refusal> {
        self.by_foreman(foreman, around)?;
        given(reason)?;
        let (chosen, over): (Vec<_>, Vec<_>) = self.repair.branches.iter().partition(|branch| branch.head == head);
        if chosen.is_empty() {
            let what = "There is no such branch to choose. Look at the branches again.";
            return refuse(Broken::with(Rule::BadValue, &[("what", t(what))]));
        }
        self.record(Event::BranchChosen {
            head: head.to_owned(),
            over: over.into_iter().map(|branch| branch.head.clone()).collect(),
            reason: reason.to_owned(),
            foreman: foreman.to_owned(),
        });
        Ok(())
    }

    fn void(&mut self, reason: &str, foreman: &str, around: &Around) -> Result<(), Refusal> {
        self.by_foreman(foreman, around)?;
        given(reason)?;
        let Some(number) = self.repair.issued.as_ref().map(|issued| issued.number.clone()) else {
            let what = "No certificate is issued for this repair, so none can be voided.";
            return refuse(Broken::with(Rule::BadValue, &[("what", t(what))]));
        };
        self.record(Event::Voided { number, reason: reason.to_owned(), foreman: foreman.to_owned() });
        Ok(())
    }

    /// Returns the values of a rule as it stands in the way now, so that the waiver says what was waived.
    ///
    /// What a plan or temperatures would break that are not recorded yet is waived on the foreman's word.
    fn values_of(&self, rule: Rule, subject: &str, around: &Around) -> Option<RuleValues> {
        let repair = &self.repair;
        let mut found: Vec<Broken> = [Ask::GoOn, Ask::Release, Ask::Judge { accept: true }]
            .into_iter()
            .flat_map(|ask| gate::gate(repair, ask, around))
            .collect();
        if let Some((plan, attempt)) = times::plan_and_attempt(repair) {
            found.extend(gate::findings(repair, plan, attempt));
            found.extend(repair.open_departures().into_iter().map(|open| Broken {
                rule: open.rule,
                subject: open.subject.clone(),
                values: open.values.clone(),
            }));
            if let Some((_, temperatures)) = attempt.last_temperatures() {
                found.extend(gate::gate(repair, Ask::SecondGo(temperatures), around));
            }
        }
        let same = |broken: &&Broken| broken.rule == rule && broken.subject == subject;
        let unseen =
            rule.row().stage == Some(Stage::Planned) || matches!(rule, Rule::ClosureBeforeHoldEnd | Rule::StorageShort);
        let values = found.iter().find(same).map(|broken| broken.values.clone());
        values.or_else(|| unseen.then(RuleValues::new))
    }

    fn sign(
        &mut self,
        name: &str,
        statement: &str,
        strokes: &[Vec<(i32, i32)>],
        around: &Around,
    ) -> Result<(), Refusal> {
        self.ask(Ask::Sign, around)?;
        if strokes.iter().map(Vec::len).sum::<usize>() < 2 {
            return refuse(Broken::bare(Rule::SignatureEmpty));
        }
        let Some(person) = around.person() else { return refuse(Broken::bare(Rule::PersonMissing)) };
        self.record(Event::Signed {
            role: person.role,
            name: if name.trim().is_empty() { person.name.clone() } else { name.to_owned() },
            statement: statement.to_owned(),
            strokes: strokes.to_vec(),
        });
        Ok(())
    }

    fn answer(&mut self, key: &str, answer: &Answer) -> Result<(), Refusal> {
        let Some(task) = self.task(key).cloned() else {
            return refuse(Broken::with(Rule::BadValue, &[("what", t("The method statement has no such task."))]));
        };
        if self.repair.standing() != Standing::Underway {
            return refuse(gate::standing(&self.repair));
        }
        // While resin runs, what comes next may be answered at any moment; otherwise it has not happened yet.
        let ahead = task.stage > self.repair.stage() && !self.repair.attempt().is_some_and(Attempt::resin_runs);
        if ahead {
            return refuse(Broken::with(Rule::OutOfOrder, &[("stage", t(self.repair.stage().word()))]));
        }
        sound(&task, answer)?;
        let late = self.repair.stage() > task.stage;
        let (kind, stage, label) = (task.kind, task.stage, task.label.clone());
        self.record(Event::Answered { task: key.to_owned(), kind, stage, label, answer: answer.clone(), late });
        if kind == TaskKind::Temperatures
            && let Some(temperatures) = temperatures(answer)
        {
            self.record(Event::Happened { happening: Happening::TemperaturesRead { temperatures }, ago_ms: 0 });
        }
        if kind == TaskKind::Tightness
            && let (Some(method), Some(result)) = (answer.text("method"), answer.text("result"))
        {
            let happening = Happening::TightnessTested { tight: result == "tight", method: method.to_owned() };
            self.record(Event::Happened { happening, ago_ms: 0 });
        }
        Ok(())
    }

    fn task(&self, key: &str) -> Option<&Task> {
        self.repair.plan.as_ref()?.method.tasks.iter().find(|task| task.key == key)
    }

    fn end_attempt(&mut self, outcome: Outcome, reasons: &[String], in_pipe: &str) -> Result<(), Refusal> {
        let Some(attempt) = self.repair.attempt() else { return refuse(gate::standing(&self.repair)) };
        let mixed = attempt.joined.is_some();
        let wrong = match outcome {
            Outcome::Accepted | Outcome::Rejected => Some("The foreman accepts or rejects after the camera."),
            Outcome::Abandoned if mixed => Some("The parts were joined: say discarded, or left in the pipe."),
            Outcome::Abandoned | Outcome::Discarded | Outcome::LeftInPipe => None,
        };
        if let Some(what) = wrong {
            return refuse(Broken::with(Rule::BadValue, &[("what", t(what))]));
        }
        self.record(Event::AttemptEnded { outcome, reasons: reasons.to_vec(), in_pipe: in_pipe.to_owned() });
        Ok(())
    }

    fn correct(&mut self, of: &CorrectionOf, value: &Value, reason: &str) -> Result<(), Refusal> {
        given(reason)?;
        if self.repair.issued.is_some() {
            let values = [("what", t("The certificate is issued; what it says can't be corrected any more."))];
            return refuse(Broken::with(Rule::BadValue, &values));
        }
        let Some((label, old)) = self.recorded(of) else {
            return refuse(Broken::with(Rule::BadValue, &[("what", t("There is no such value to correct."))]));
        };
        let key = match of {
            CorrectionOf::Task { field, .. } => field.clone(),
            CorrectionOf::Reading { field, .. } => reading_key(*field).to_owned(),
        };
        if let CorrectionOf::Task { task, field } = of {
            self.corrected_is_sound(task, field, value)?;
        }
        let new = shown(&key, value);
        self.record(Event::Corrected { of: of.clone(), label, old, new, value: value.clone(), reason: reason.into() });
        Ok(())
    }

    fn corrected_is_sound(&self, task: &str, field: &str, value: &Value) -> Result<(), Refusal> {
        let Some(task) = self.task(task) else { return Ok(()) };
        let fields: Vec<_> = task.kind.fields().into_iter().filter(|known| known.key == field).collect();
        let values: Values = [(field.to_owned(), value.clone())].into();
        without_problems(answer::problems(&fields, &values))
    }

    fn recorded(&self, of: &CorrectionOf) -> Option<(String, String)> {
        let attempt = self.repair.last_attempt()?;
        match of {
            CorrectionOf::Task { task, field } => {
                let answered = attempt.answers.get(task)?;
                let Answer::Done { values } = &answered.answer else { return None };
                let name = answered.kind.fields().into_iter().find(|known| known.key == field)?.label;
                Some((format!("{}: {name}", answered.label), shown(field, values.get(field)?)))
            }
            CorrectionOf::Reading { index, field } => {
                let reading = attempt.readings.get(*index)?;
                let old = match field {
                    ReadingField::GaugePa => Some(reading.gauge_pa.as_pa()),
                    ReadingField::PipeMc => reading.pipe_mc.map(Temperature::as_millicelsius),
                    ReadingField::WaterMc => reading.water_mc.map(Temperature::as_millicelsius),
                };
                let old = old.map_or_else(|| "none".into(), |old| words::show(reading_key(*field), old));
                Some((format!("Reading {}", index + 1), old))
            }
        }
    }

    /// A report is always recorded, whatever rule it breaks. What it breaks is recorded with it.
    fn report(&mut self, happening: &Happening, ago_ms: i64) {
        if matches!(self.repair.standing(), Standing::Planned | Standing::Between) && self.repair.plan.is_some() {
            self.begin_attempt(false);
        }
        if self.repair.attempts.is_empty() {
            let text = format!("Reported before the plan: {}", words(happening));
            self.record(Event::Noted { text });
            return;
        }
        let in_doubt_before = self.pressure_in_doubt();
        self.doubt_before(happening);
        self.record(Event::Happened { happening: happening.clone(), ago_ms });
        self.move_stage(happening, ago_ms);
        self.doubt_after(happening, ago_ms, in_doubt_before);
    }

    fn move_stage(&mut self, happening: &Happening, ago_ms: i64) {
        let stage = self.repair.stage();
        let to = match happening {
            Happening::PushBegun if stage == Stage::Staging => Stage::TestPush,
            Happening::Joined if stage < Stage::WetOut => Stage::WetOut,
            Happening::InsertionBegun if stage < Stage::Placement => Stage::Placement,
            Happening::AtTheMark { .. } | Happening::AirJoined if stage < Stage::Inflation => Stage::Inflation,
            Happening::TargetReached { .. } if stage < Stage::Hold => Stage::Hold,
            Happening::Released { .. } if stage == Stage::Hold => Stage::Deflation,
            _ => return,
        };
        self.record(Event::StageBegun { stage: to, ago_ms });
    }

    /// Raises the doubts that are known before the report counts: what stood against joining, and an early release.
    fn doubt_before(&mut self, happening: &Happening) {
        let Some((plan, attempt)) = times::plan_and_attempt(&self.repair) else { return };
        let doubt = match happening {
            Happening::Joined if attempt.joined.is_none() => joined_against(plan, attempt, self.facts),
            Happening::Released { .. } if attempt.stage() == Stage::Hold => released_early(&self.repair, plan, attempt),
            _ => None,
        };
        if let Some(Broken { rule, values, .. }) = doubt {
            self.record(Event::Doubted { rule, values });
        }
    }

    fn doubt_after(&mut self, happening: &Happening, ago_ms: i64, in_doubt_before: bool) {
        let Some((plan, attempt)) = times::plan_and_attempt(&self.repair) else { return };
        let hold_open = attempt.joined.is_some() && attempt.released.is_none() && hold_missing(plan, attempt);
        let mut doubts = vec![];
        let mut broke = None;
        match happening {
            Happening::TargetReached { .. } => {
                let at = Stamp::of(self.facts, ago_ms);
                if let Some(late_ms) = times::late_by(plan, attempt, &at).filter(|late| *late > 0) {
                    doubts.push(Broken::with(Rule::LateInflation, &[("late_ms", n(late_ms))]));
                }
                let ago_ms = at.ago_ms;
                if ago_ms >= LATE_TAP_MS {
                    let values = [("what", t("Target pressure")), ("ago_ms", n(ago_ms))];
                    broke = Some(Broken::with(Rule::LateTapInFavour, &values).about("target pressure"));
                }
            }
            // Minutes that nobody tapped in time count in the crew's favour; the foreman answers for them once.
            Happening::Reading { .. } if self.facts.keyed.is_some() && !self.readings_keyed() => {
                let ago_ms = self.facts.keyed_after_ms() + ago_ms;
                let values = [("what", t("The readings of the hold, from paper,")), ("ago_ms", n(ago_ms))];
                broke = Some(Broken::with(Rule::LateTapInFavour, &values).about(KEYED_READINGS));
            }
            Happening::Burst | Happening::PressureLost | Happening::Stuck | Happening::WaterComing if hold_open => {
                doubts.push(Broken::with(Rule::TroubleReported, &[("what", t(words(happening)))]));
            }
            _ => {}
        }
        if !in_doubt_before && let Some(lost) = pressure_lost(plan, attempt) {
            doubts.push(lost);
        }
        for Broken { rule, values, .. } in doubts {
            self.record(Event::Doubted { rule, values });
        }
        if let Some(Broken { rule, subject, values }) = broke {
            self.record(Event::Broke { rule, subject, values });
        }
    }

    fn readings_keyed(&self) -> bool {
        let n = self.repair.last_attempt().map_or(1, |attempt| attempt.n);
        self.repair.broken.iter().any(|broken| broken.attempt == n && broken.subject == KEYED_READINGS)
    }

    fn pressure_in_doubt(&self) -> bool {
        self.repair
            .last_attempt()
            .is_some_and(|attempt| attempt.doubts.iter().any(|doubt| doubt.rule == Rule::PressureLost))
    }
}

fn runs(pace: u32) -> Result<(), Refusal> {
    if (1..=MOST_PACE).contains(&pace) {
        return Ok(());
    }
    let what = format!("The clock of a rehearsal runs 1 to {MOST_PACE} times as fast.");
    refuse(Broken::with(Rule::BadValue, &[("what", t(what))]))
}

fn given(reason: &str) -> Result<(), Refusal> {
    if reason.trim().is_empty() { refuse(Broken::bare(Rule::ReasonMissing)) } else { Ok(()) }
}

fn sound(task: &Task, given_answer: &Answer) -> Result<(), Refusal> {
    match given_answer {
        Answer::Done { values } => without_problems(answer::problems(&task.kind.fields(), values)),
        Answer::NotRight { because } => given(because),
        Answer::DoesNotApply { .. } if !task.may_not_apply => {
            refuse(Broken::with(Rule::BadValue, &[("what", t("This task always applies."))]))
        }
        Answer::DoesNotApply { because } => given(because),
    }
}

fn without_problems(problems: Vec<FieldProblem>) -> Result<(), Refusal> {
    let broken =
        |problem: FieldProblem| Broken::with(Rule::BadValue, &[("what", t(problem.says))]).about(problem.field);
    Refusal::unless_empty(problems.into_iter().map(broken).collect())
}

fn temperatures(answer: &Answer) -> Option<Temperatures> {
    let read = |key| answer.number(key).map(Temperature::from_millicelsius);
    Some(Temperatures {
        resin_mc: read("resin_mc")?,
        air_mc: read("air_mc")?,
        pipe_mc: read("pipe_mc")?,
        water_mc: read("water_mc"),
    })
}

/// A photo belongs to the stage of the rule that it answers; others to the stage in which they were taken.
fn photo_stage(repair: &Repair, key: &str) -> Stage {
    let asked = repair.contract.photos.iter().find(|rule| rule.key == key && !key.is_empty());
    asked.map_or_else(|| repair.stage(), |rule| rule.stage)
}

fn joined_against(plan: &Plan, attempt: &Attempt, facts: &Facts) -> Option<Broken> {
    let Some(go) = &attempt.second_go else { return Some(Broken::bare(Rule::JoinedWithoutGo)) };
    let (age, most) = (times::between(&go.at.moment, &facts.moment), plan.contract.temperatures_age_ms.value.as_ms());
    let old = (age > most).then(|| Broken::with(Rule::TemperaturesOld, &[("age_ms", n(age)), ("most_ms", n(most))]));
    let says = |broken: Broken| Broken::with(Rule::JoinedExpired, &[("what", t(broken.rule.says(&broken.values)))]);
    old.map(says)
}

fn released_early(repair: &Repair, plan: &Plan, attempt: &Attempt) -> Option<Broken> {
    if repair.waived(Rule::HoldShort, "") {
        return None;
    }
    let state = hold::state(plan, attempt)?;
    let (counted, required) = (state.shown.counted_ms.as_ms(), state.terms.required_ms.as_ms());
    let values = [("counted_ms", n(counted)), ("required_ms", n(required))];
    (counted < required).then(|| Broken::with(Rule::ReleasedEarly, &values))
}

fn hold_missing(plan: &Plan, attempt: &Attempt) -> bool {
    hold::state(plan, attempt).is_none_or(|state| state.shown.missing_ms.as_ms() > 0)
}

fn pressure_lost(plan: &Plan, attempt: &Attempt) -> Option<Broken> {
    let state = hold::state(plan, attempt)?;
    let worst = state.shown.excursions.iter().find(|excursion| excursion.doubtful)?;
    let least = plan.computed.window.net_least_pa.as_pa();
    Some(Broken::with(Rule::PressureLost, &[("net_pa", n(worst.net_pa.as_pa())), ("least_pa", n(least))]))
}

fn reading_key(field: ReadingField) -> &'static str {
    match field {
        ReadingField::GaugePa => "gauge_pa",
        ReadingField::PipeMc => "pipe_mc",
        ReadingField::WaterMc => "water_mc",
    }
}

fn shown(key: &str, value: &Value) -> String {
    match value {
        Value::Number(number) => words::show(key, *number),
        Value::Text(text) => text.clone(),
    }
}

/// Returns the words for something that happened.
pub fn words(happening: &Happening) -> &'static str {
    match happening {
        Happening::TemperaturesRead { .. } => "temperatures read",
        Happening::PushBegun => "test push begun",
        Happening::MarkReached { .. } => "packer at the mark",
        Happening::PackerBack { .. } => "packer back",
        Happening::Joined => "parts joined",
        Happening::InsertionBegun => "insertion begun",
        Happening::AtTheMark { .. } => "at the mark",
        Happening::AirJoined => "air line joined",
        Happening::TargetReached { .. } => "target pressure reached",
        Happening::Reading { .. } => "reading",
        Happening::SampleFelt { .. } => "sample felt",
        Happening::Released { emergency: true } => "emergency release",
        Happening::Released { emergency: false } => "released",
        Happening::PressureLost => "pressure lost",
        Happening::Burst => "packer burst",
        Happening::Stuck => "packer stuck",
        Happening::WaterComing => "water coming",
        Happening::GasAlarm => "gas alarm",
        Happening::Stopped { .. } => "stopped",
        Happening::PatchIs { .. } => "place of the patch",
        Happening::LateralOpened { .. } => "lateral opened",
        Happening::TightnessTested { .. } => "tightness test",
    }
}

/// Returns the record that a decision makes, for the journal.
pub fn record(facts: &Facts, events: Vec<Event>) -> Record {
    Record { facts: facts.clone(), events }
}
