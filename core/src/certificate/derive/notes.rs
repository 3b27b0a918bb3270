//! What is kept and printed, and waived by nobody.

use std::collections::BTreeSet;

use super::{Case, departures, hold, place, reasons, said, tasks, when, words};
use crate::certificate::content::{Note, headings};
use crate::checks::hold::{Excursion, Side};
use crate::procedure::decide;
use crate::procedure::paper::keyed;
use crate::procedure::repair::{Attempt, Choice, Stamp};
use crate::shelf::contract::GapRule;
use crate::units::Span;

/// Returns the notes: a series and the hold first, then attempts, choices, the clock, corrections, late entries, troubles and
/// free notes.
pub fn notes(case: &Case) -> Vec<Note> {
    let mut found = series(case);
    found.extend(excursions(case));
    found.extend(gaps(case));
    found.extend(attempts(case));
    found.extend(choices(case));
    found.extend(clock(case));
    found.extend(corrections(case));
    found.extend(late(case));
    found.extend(answered_again(case));
    found.extend(troubles(case));
    found.extend(clock_position(case));
    found.extend(
        case.repair
            .notes
            .iter()
            .map(|written| note("Written", format!("{} {}.", words::stopped(&written.text), case.by(&written.at)))),
    );
    found
}

fn note(label: impl Into<String>, text: String) -> Note {
    Note { label: label.into(), text }
}

fn choices(case: &Case) -> Vec<Note> {
    let words = |choice: &Choice| {
        let (by, at) = (case.name(Some(&choice.foreman)), case.clock.minute(choice.at.moment.at_ms));
        let of = choice.over.len() + 1;
        let reason = words::stopped(&words::capital(&choice.reason));
        format!("{of} devices had gone on apart. {by} chose at {at} which counts: {reason} The record keeps both.")
    };
    case.repair.choices.iter().map(|choice| note("Chosen", words(choice))).collect()
}

fn series(case: &Case) -> Vec<Note> {
    let Some((this, all)) = case.plan.and_then(place::series) else { return vec![] };
    let text = format!(
        "This is patch {this} of a series of {all}: the defect is covered only by all of them, each a repair of its own."
    );
    vec![note("Series", text)]
}

fn excursions(case: &Case) -> Vec<Note> {
    let harmless = hold::excursions(case).into_iter().filter(|(one, ..)| !one.doubtful);
    harmless
        .map(|(one, at_ms, why)| {
            let net = still_pressed(case, &one);
            let what = reasons::excursion(case, &one, at_ms, why.as_deref());
            let page = headings::HOLD;
            note(
                "Excursion",
                format!("{what} {net}: a note, the attempt is not doubtful by it. Not counted (page @<{page}>)."),
            )
        })
        .collect()
}

fn still_pressed(case: &Case, one: &Excursion) -> String {
    let least = case.plan.map_or(one.net_pa, |plan| plan.computed.window.net_least_pa);
    let (net, least_words) = (words::bar_down(one.net_pa), words::bar(least));
    match one.side {
        Side::Above => "Still pressed to the wall".into(),
        Side::Below if one.net_pa >= least => {
            format!("Net {net} stayed at or above the sheet’s least net {least_words}")
        }
        Side::Below => {
            format!("Net {net} fell below the sheet’s least net {least_words}, but after the required hold was reached")
        }
    }
}

fn gaps(case: &Case) -> Vec<Note> {
    let Some(rule) = case.plan.map(|plan| &plan.contract.gap_rule) else { return vec![] };
    let lost = match rule.value {
        GapRule::Whole => "the whole gap is lost",
        GapRule::Excess => "what is beyond interval and grace is lost",
    };
    hold::gaps(case)
        .into_iter()
        .map(|(run, why)| {
            let why = why.unwrap_or_else(|| "nobody wrote why".into());
            let text = format!(
                "{} of the hold, {} to {}: {}. Gap rule: {lost} ({}; page @<{}>).",
                words::min_s(run.length_ms),
                case.clock.minute(run.from_ms),
                case.clock.minute(run.to_ms),
                words::bare(&why),
                rule.source,
                headings::HOLD,
            );
            note("Not witnessed", text)
        })
        .collect()
}

fn attempts(case: &Case) -> Vec<Note> {
    let others = case.repair.attempts.iter().filter(|attempt| attempt.n != case.n());
    others
        .filter_map(|attempt| {
            let ended = attempt.ended.as_ref()?;
            let why = words::joined(ended.reasons.iter().map(|reason| words::bare(reason).to_owned()), "; ");
            let pipe = match ended.in_pipe.trim() {
                "" => "Nobody said whether anything of it is in the pipe.".into(),
                said => format!("In the pipe: “{}”, {}.", words::bare(said), case.by(&ended.at)),
            };
            let text = format!(
                "{} {}: {}. {pipe} (Page @<{}>.)",
                reasons::outcome(ended.outcome),
                case.clock.minute(ended.at.moment.at_ms),
                words::or(&why, "no reason was written"),
                headings::ATTEMPTS,
            );
            Some(note(format!("Attempt {}", attempt.n), text))
        })
        .collect()
}

fn clock(case: &Case) -> Vec<Note> {
    let jumps = case.repair.clock_jumps.iter();
    jumps
        .map(|jump| {
            let way = if jump.by_ms < 0 { "back" } else { "forward" };
            let by = words::lasting(words::down_s(Span::from_ms(jump.by_ms.abs())));
            let at = case.clock.second(jump.at.moment.at_ms);
            let then = if jump.restarted {
                "The device was started anew in between, so only its wall clock tells how long; nothing of the hold across the restart is counted."
            } else {
                "The clock since the start of the device ran on: it times the stages and the hold, and no minute was gained or lost."
            };
            note("Clock", format!("The clock of device {} was set {way} by {by}, seen at {at}. {then}", jump.at.device))
        })
        .collect()
}

fn corrections(case: &Case) -> Vec<Note> {
    case.repair
        .corrections
        .iter()
        .map(|one| {
            let page = headings::CORRECTIONS;
            note("Correction", format!("{}: {} corrected to {} (page @<{page}>).", one.label, one.old, one.new))
        })
        .collect()
}

/// Returns what was filled in after its stage, and what was tapped later than it happened.
fn late(case: &Case) -> Vec<Note> {
    let Some(attempt) = case.attempt else { return vec![] };
    let mut filled: Vec<_> =
        attempt.answers.values().filter(|answered| answered.late && answered.carried_from.is_none()).collect();
    filled.sort_by_key(|answered| answered.at.moment.at_ms);
    let filled = filled
        .iter()
        .map(|answered| format!("{} ({})", words::small(&answered.label), case.clock.minute(answered.at.moment.at_ms)));
    let filled = words::joined(filled, "; ");
    let filled = (!filled.is_empty()).then(|| note("Filled in late", format!("After their stage: {filled}.")));
    filled.into_iter().chain(from_paper(case, attempt)).chain(tapped_late(case, attempt)).collect()
}

/// Returns every entry that was keyed in from paper, with both times.
fn from_paper(case: &Case, attempt: &Attempt) -> Option<Note> {
    let keyed = keyed(attempt);
    let each = keyed.iter().map(|(what, at)| {
        let (happened, tapped) = (case.clock.minute(at.moment.at_ms), case.clock.minute(at.tapped_ms()));
        format!("{} {happened} (keyed in {tapped})", words::small(what))
    });
    let text = words::joined(each, "; ");
    let by: BTreeSet<String> = keyed.iter().map(|(_, at)| case.name(at.person.as_deref())).collect();
    let by = words::joined(by, ", ");
    (!keyed.is_empty())
        .then(|| note("From paper", format!("Written on paper and keyed in by {by}, both times are kept: {text}.")))
}

fn tapped_late(case: &Case, attempt: &Attempt) -> Vec<Note> {
    let readings = attempt.readings.iter().map(|reading| ("a reading", &reading.at));
    let taps = taps(attempt).into_iter().chain(readings).filter(|(_, at)| at.ago_ms > 0 && !at.paper);
    taps.map(|(what, at)| {
        let (happened, late) =
            (case.clock.second(at.moment.at_ms), words::lasting(words::up_s(Span::from_ms(at.ago_ms))));
        let by = case.name(at.person.as_deref());
        let text = format!("{} {happened}, tapped {late} later by {by}: both times are kept.", words::capital(what));
        note("Tapped late", text)
    })
    .collect()
}

/// Returns the taps of an attempt's course, each with its name.
fn taps(attempt: &Attempt) -> Vec<(&'static str, &Stamp)> {
    let course = [
        ("test push begun", attempt.test_push.begun.as_ref()),
        ("packer at the mark in the test push", attempt.test_push.reached.as_ref().map(|(at, _)| at)),
        ("packer back from the test push", attempt.test_push.back.as_ref().map(|(at, _)| at)),
        ("parts joined", attempt.joined.as_ref()),
        ("insertion begun", attempt.insertion.as_ref()),
        ("packer at the mark", attempt.at_mark.as_ref().map(|mark| &mark.at)),
        ("air line joined", attempt.air_joined.as_ref()),
        ("target pressure reached", attempt.target.as_ref().map(|target| &target.at)),
        ("released", attempt.released.as_ref().map(|(at, _)| at)),
    ];
    course.into_iter().filter_map(|(what, at)| Some((what, at?))).collect()
}

/// Returns the tasks whose answer was replaced, with the earlier ones.
fn answered_again(case: &Case) -> Vec<Note> {
    let Some(attempt) = case.attempt else { return vec![] };
    let again =
        attempt.answers.values().filter(|answered| !answered.before.is_empty() && !tasks::repeats(answered.kind));
    again
        .map(|answered| {
            let earlier = answered.before.iter().map(|(at, answer)| {
                let said = said::said(case, answered.kind, answer);
                format!("{} at {}", words::or(&said, "done"), case.clock.minute(at.moment.at_ms))
            });
            let (label, now) = (&answered.label, case.by(&answered.at));
            note("Answered again", format!("{label}: before, {}; last by {now}.", words::joined(earlier, "; ")))
        })
        .collect()
}

fn troubles(case: &Case) -> Vec<Note> {
    let Some(attempt) = case.attempt else { return vec![] };
    attempt
        .troubles
        .iter()
        .map(|(at, happening)| {
            let why = match happening {
                crate::procedure::Happening::Stopped { why } => format!(": {}", words::bare(why)),
                _ => String::new(),
            };
            let waived = departures::label(case, crate::procedure::Rule::TroubleReported, "doubt");
            let see = waived.map_or_else(String::new, |label| format!(" The foreman’s decision: {label}."));
            let who = when::by(case.people, &case.clock, at);
            note("Reported", format!("{}{why}. {who}.{see}", words::capital(decide::words(happening))))
        })
        .collect()
}

fn clock_position(case: &Case) -> Option<Note> {
    let text = "Nobody recorded where round the pipe the defect lies; it is drawn all round.";
    (!place::clock_is_known(case)).then(|| note("Clock position", text.into()))
}
