//! What a repair looks like after an event. Total, without rules, without a wildcard: old journals replay for ever.

mod clocks;

use super::answer::{Answer, Value};
use super::event::{Event, Record};
use super::happening::Happening;
use super::practice::Practice;
use super::repair::{
    Answered, AtMark, Attempt, AttemptEnded, Broken, Choice, ClockJump, Closed, Correction, CorrectionOf, Doubt, Go,
    HandedOver, Issued, LateralOpened, Note, Photo, Reading, ReadingField, Repair, Sealed, Signature, StageSpan, Stamp,
    TakenOver, Target, TestPush, Voided, Waiver, WorkedOut,
};
use super::stage::Stage;
use crate::facts::Facts;
use crate::units::{Pressure, Temperature};

/// Returns the repair that a list of records tells of, oldest first; `None` if the first does not open one.
pub fn replay<'a>(records: impl IntoIterator<Item = &'a Record>) -> Option<Repair> {
    records.into_iter().fold(None, apply_record)
}

/// Returns the repair after one more record.
pub fn apply_record(repair: Option<Repair>, record: &Record) -> Option<Repair> {
    let mut repair = record.events.iter().fold(repair, |repair, event| apply(repair, event, &record.facts))?;
    repair.last_moment = record.facts.tapped().clone();
    repair.last_device.clone_from(&record.facts.device);
    repair.entries += 1;
    Some(repair)
}

/// Returns the repair after one event. Before it is opened, there is nothing for an event to change.
pub fn apply(repair: Option<Repair>, event: &Event, facts: &Facts) -> Option<Repair> {
    match (repair, event) {
        (None, Event::Opened { id, number, rehearsal, line, defect, contract, video_before }) => Some(Repair {
            id: id.clone(),
            number: number.clone(),
            rehearsal: *rehearsal,
            opened: Stamp::of(facts, 0),
            line: (**line).clone(),
            defect: (**defect).clone(),
            contract: (**contract).clone(),
            video_before: video_before.clone(),
            plan: None,
            attempts: vec![],
            broken: vec![],
            waivers: vec![],
            corrections: vec![],
            notes: vec![],
            worked: vec![],
            photos: vec![],
            clock_jumps: vec![],
            signatures: vec![],
            seals: vec![],
            issued: None,
            issued_before: vec![],
            closed: None,
            branches: vec![],
            voided: vec![],
            choices: vec![],
            practice: None,
            last_moment: facts.moment.clone(),
            last_device: facts.device.clone(),
            entries: 0,
        }),
        (None, _) => None,
        (Some(mut repair), event) => {
            change(&mut repair, event, facts);
            Some(repair)
        }
    }
}

fn change(repair: &mut Repair, event: &Event, facts: &Facts) {
    let at = Stamp::of(facts, 0);
    let n = repair.attempts.last().map_or(1, |attempt| attempt.n);
    match event {
        Event::Opened { .. } => {}
        Event::PlanAccepted { plan } => {
            repair.contract = plan.contract.clone();
            repair.plan = Some((**plan).clone());
        }
        Event::AttemptBegun { n, carried, test_push } => {
            reopen(repair);
            begin(repair, *n, carried, *test_push);
        }
        Event::Waived { rule, subject, values, reason, foreman } => repair.waivers.push(Waiver {
            at,
            attempt: n,
            rule: *rule,
            subject: subject.clone(),
            values: values.clone(),
            reason: reason.clone(),
            foreman: foreman.clone(),
        }),
        Event::Broke { rule, subject, values } => {
            repair.broken.push(Broken { at, attempt: n, rule: *rule, subject: subject.clone(), values: values.clone() })
        }
        Event::Corrected { of, label, old, new, value, reason } => {
            correct(repair, of, value);
            repair.signatures.clear();
            repair.corrections.push(Correction {
                at,
                attempt: n,
                of: of.clone(),
                label: label.clone(),
                old: old.clone(),
                new: new.clone(),
                reason: reason.clone(),
            });
        }
        Event::WorkedOut { stage, worked } => {
            repair.signatures.clear();
            repair.worked.push(WorkedOut { at, attempt: n, stage: *stage, worked: (**worked).clone() });
        }
        Event::Noted { text } => repair.notes.push(Note { at, text: text.clone() }),
        Event::PhotoKept { stage, key, label, sha256, bytes, media_type, copy_of } => repair.photos.push(Photo {
            at,
            attempt: n,
            stage: *stage,
            key: key.clone(),
            label: label.clone(),
            sha256: sha256.clone(),
            bytes: *bytes,
            media_type: media_type.clone(),
            copy_of: copy_of.clone(),
        }),
        Event::ClockSet { by_ms, restarted } => {
            repair.clock_jumps.push(ClockJump { at, by_ms: *by_ms, restarted: *restarted });
        }
        Event::Unrepaired { reason } => {
            reopen(repair);
            repair.closed = Some(Closed { at, reason: reason.clone() });
        }
        Event::Signed { role, name, statement, strokes } => {
            repair.signatures.retain(|signature| signature.role != *role);
            repair.signatures.push(Signature {
                at,
                role: *role,
                name: name.clone(),
                statement: statement.clone(),
                strokes: strokes.clone(),
                key: facts.key.clone(),
            });
        }
        Event::Issued { number } => repair.issued = Some(Issued { at, number: number.clone() }),
        Event::Voided { number, reason, foreman } => {
            reopen(repair);
            repair.voided.push(Voided { at, number: number.clone(), reason: reason.clone(), foreman: foreman.clone() });
        }
        Event::BranchChosen { head, over, reason, foreman } => {
            repair.branches.clear();
            repair.choices.push(Choice {
                at,
                head: head.clone(),
                over: over.clone(),
                reason: reason.clone(),
                foreman: foreman.clone(),
            });
        }
        Event::PractiseBegun { mishaps, surprise, pace, real } => {
            repair.practice = Some(Practice {
                mishaps: mishaps.clone(),
                surprise: *surprise,
                pace: *pace,
                real: real.clone(),
                shown: facts.moment.clone(),
            });
        }
        Event::PaceSet { pace, real } => {
            repair.practice = repair.practice.as_ref().map(|practice| practice.paced(*pace, real));
        }
        Event::Sealed { role, name, certificate, file } => repair.seals.push(Sealed {
            at,
            role: *role,
            name: name.clone(),
            certificate: certificate.clone(),
            file: file.clone(),
        }),
        Event::StageBegun { .. }
        | Event::Answered { .. }
        | Event::Go { .. }
        | Event::Happened { .. }
        | Event::Doubted { .. }
        | Event::HandedOver { .. }
        | Event::TakenOver { .. }
        | Event::AttemptEnded { .. } => {
            if let Some(attempt) = repair.attempts.last_mut() {
                change_attempt(attempt, event, facts);
            }
        }
    }
}

/// What was signed and issued is about what was known then: what comes after needs a record of its own.
fn reopen(repair: &mut Repair) {
    repair.signatures.clear();
    repair.seals.clear();
    repair.issued_before.extend(repair.issued.take());
}

fn begin(repair: &mut Repair, n: u32, carried: &[String], test_push: bool) {
    let before = repair.attempts.last();
    let origin = |answered: &Answered| Some(answered.carried_from.unwrap_or(before.map_or(1, |attempt| attempt.n)));
    let answers = before
        .into_iter()
        .flat_map(|attempt| &attempt.answers)
        .filter(|(key, _)| carried.contains(key))
        .map(|(key, answered)| (key.clone(), Answered { carried_from: origin(answered), ..answered.clone() }))
        .collect();
    let test_push = before.filter(|_| test_push).map_or_else(TestPush::default, |attempt| TestPush {
        carried_from: Some(attempt.test_push.carried_from.unwrap_or(attempt.n)),
        ..attempt.test_push.clone()
    });
    repair.attempts.push(Attempt { n, answers, test_push, ..Attempt::default() });
}

fn change_attempt(attempt: &mut Attempt, event: &Event, facts: &Facts) {
    match event {
        Event::StageBegun { stage, ago_ms } => begin_stage(attempt, *stage, Stamp::of(facts, *ago_ms)),
        Event::Answered { task, kind, stage, label, answer, late } => {
            let at = Stamp::of(facts, 0);
            let before = attempt.answers.remove(task).map_or_else(Vec::new, |old| {
                let mut before = old.before;
                before.push((old.at, old.answer));
                before
            });
            let answered = Answered {
                kind: *kind,
                stage: *stage,
                label: label.clone(),
                answer: answer.clone(),
                at,
                late: *late,
                before,
                carried_from: None,
            };
            attempt.answers.insert(task.clone(), answered);
        }
        Event::Go { second, budget, temperatures } => {
            let go = Go { at: Stamp::of(facts, 0), budget: (**budget).clone(), temperatures: *temperatures };
            *if *second { &mut attempt.second_go } else { &mut attempt.go } = Some(go);
        }
        Event::Happened { happening, ago_ms } => happen(attempt, happening, Stamp::of(facts, *ago_ms)),
        Event::Doubted { rule, values } => {
            attempt.doubts.push(Doubt { at: Stamp::of(facts, 0), rule: *rule, values: values.clone() });
        }
        Event::HandedOver { to } => {
            attempt.handed = Some(HandedOver { at: Stamp::of(facts, 0), to: to.clone(), taken: None });
        }
        Event::TakenOver { theirs, ours, typed: _ } => {
            if let Some(theirs) = theirs {
                clocks::move_to(attempt, theirs, ours);
            }
            if let Some(handed) = &mut attempt.handed {
                handed.taken = Some(TakenOver { at: Stamp::of(facts, 0), theirs: theirs.clone(), ours: ours.clone() });
            }
        }
        Event::AttemptEnded { outcome, reasons, in_pipe } => {
            let at = Stamp::of(facts, 0);
            if let Some(span) = attempt.spans.last_mut() {
                span.ended.get_or_insert_with(|| at.clone());
            }
            attempt.ended =
                Some(AttemptEnded { at, outcome: *outcome, reasons: reasons.clone(), in_pipe: in_pipe.clone() });
        }
        Event::Opened { .. }
        | Event::PlanAccepted { .. }
        | Event::AttemptBegun { .. }
        | Event::Waived { .. }
        | Event::Broke { .. }
        | Event::Corrected { .. }
        | Event::WorkedOut { .. }
        | Event::Noted { .. }
        | Event::PhotoKept { .. }
        | Event::ClockSet { .. }
        | Event::Unrepaired { .. }
        | Event::Signed { .. }
        | Event::Issued { .. }
        | Event::Voided { .. }
        | Event::BranchChosen { .. }
        | Event::PractiseBegun { .. }
        | Event::PaceSet { .. }
        | Event::Sealed { .. } => {}
    }
}

fn begin_stage(attempt: &mut Attempt, stage: Stage, begun: Stamp) {
    if let Some(span) = attempt.spans.last_mut() {
        span.ended.get_or_insert_with(|| begun.clone());
    }
    attempt.spans.push(StageSpan { stage, begun, ended: None });
}

fn happen(attempt: &mut Attempt, happening: &Happening, at: Stamp) {
    match happening {
        Happening::TemperaturesRead { temperatures } => attempt.temperatures.push((at, *temperatures)),
        Happening::PushBegun => attempt.test_push = TestPush { begun: Some(at), ..TestPush::default() },
        Happening::MarkReached { counter_um } => attempt.test_push.reached = Some((at, *counter_um)),
        Happening::PackerBack { sound } => attempt.test_push.back = Some((at, *sound)),
        // The first joining counts: the resin's clock can't be started again.
        Happening::Joined => {
            attempt.joined.get_or_insert(at);
        }
        Happening::InsertionBegun => attempt.insertion = Some(at),
        Happening::AtTheMark { counter_um, beyond_um } => {
            attempt.at_mark = Some(AtMark { at, counter_um: *counter_um, beyond_um: *beyond_um });
        }
        Happening::AirJoined => attempt.air_joined = Some(at),
        Happening::TargetReached { gauge_pa } => {
            attempt.target.get_or_insert(Target { at, gauge_pa: *gauge_pa });
        }
        Happening::Reading { gauge_pa, pipe_mc, water_mc, patch_mc, upstream_um, by, gauge, why, outside_pa } => {
            attempt.readings.push(Reading {
                at,
                gauge_pa: *gauge_pa,
                pipe_mc: *pipe_mc,
                water_mc: *water_mc,
                patch_mc: *patch_mc,
                upstream_um: *upstream_um,
                by: *by,
                gauge: gauge.clone(),
                why: why.clone(),
                outside_pa: *outside_pa,
            });
        }
        Happening::SampleFelt { hard } => attempt.sample.push((at, *hard)),
        Happening::Released { emergency } => {
            attempt.released.get_or_insert((at, *emergency));
        }
        Happening::PatchIs { place } => attempt.place = Some((at, *place)),
        Happening::LateralOpened { lateral, open_pct, coupon } => {
            attempt.laterals.push(LateralOpened { at, lateral: *lateral, open_pct: *open_pct, coupon: *coupon });
        }
        Happening::TightnessTested { tight, method } => attempt.tightness = Some((at, *tight, method.clone())),
        Happening::PressureLost
        | Happening::Burst
        | Happening::Stuck
        | Happening::WaterComing
        | Happening::GasAlarm
        | Happening::Stopped { .. } => attempt.troubles.push((at, happening.clone())),
    }
}

fn correct(repair: &mut Repair, of: &CorrectionOf, value: &Value) {
    let Some(attempt) = repair.attempts.last_mut() else { return };
    match (of, value) {
        (CorrectionOf::Task { task, field }, _) => {
            if let Some(Answered { answer: Answer::Done { values }, .. }) = attempt.answers.get_mut(task) {
                values.insert(field.clone(), value.clone());
            }
        }
        (CorrectionOf::Reading { index, field }, Value::Number(number)) => {
            let Some(reading) = attempt.readings.get_mut(*index) else { return };
            match field {
                ReadingField::GaugePa => reading.gauge_pa = Pressure::from_pa(*number),
                ReadingField::PipeMc => reading.pipe_mc = Some(Temperature::from_millicelsius(*number)),
                ReadingField::WaterMc => reading.water_mc = Some(Temperature::from_millicelsius(*number)),
            }
        }
        (CorrectionOf::Reading { .. }, Value::Text(_)) => {}
    }
}
