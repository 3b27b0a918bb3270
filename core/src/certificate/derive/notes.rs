//! What is kept and printed, and waived by nobody.

use crate::words::tell;
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
    found.extend(case.repair.notes.iter().map(|written| {
        note(tell!("cert-notes-written"), format!("{} {}.", words::stopped(&written.text), case.by(&written.at)))
    }));
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
        tell!("cert-notes-devices_had_gone_on_apart", of, by, at, reason)
    };
    case.repair.choices.iter().map(|choice| note(tell!("cert-notes-chosen"), words(choice))).collect()
}

fn series(case: &Case) -> Vec<Note> {
    let Some((this, all)) = case.plan.and_then(place::series) else { return vec![] };
    let text = tell!("cert-notes-this_is_patch_of_a", this, all);
    vec![note(tell!("cert-notes-series"), text)]
}

fn excursions(case: &Case) -> Vec<Note> {
    let harmless = hold::excursions(case).into_iter().filter(|(one, ..)| !one.doubtful);
    harmless
        .map(|(one, at_ms, why)| {
            let net = still_pressed(case, &one);
            let what = reasons::excursion(case, &one, at_ms, why.as_deref());
            let page = headings::HOLD;
            note(tell!("cert-notes-excursion"), tell!("cert-notes-a_note_the_attempt_is", what, net, page))
        })
        .collect()
}

fn still_pressed(case: &Case, one: &Excursion) -> String {
    let least = case.plan.map_or(one.net_pa, |plan| plan.computed.window.net_least_pa);
    let (net, least_words) = (words::bar_down(one.net_pa), words::bar(least));
    match one.side {
        Side::Above => tell!("cert-notes-still_pressed_to_the_wall"),
        Side::Below if one.net_pa >= least => {
            tell!("cert-notes-net_stayed_at_or_above", net, least_words)
        }
        Side::Below => {
            tell!("cert-notes-net_fell_below_the_sheets", net, least_words)
        }
    }
}

fn gaps(case: &Case) -> Vec<Note> {
    let Some(rule) = case.plan.map(|plan| &plan.contract.gap_rule) else { return vec![] };
    let lost = match rule.value {
        GapRule::Whole => tell!("cert-notes-the_whole_gap_is_lost"),
        GapRule::Excess => tell!("cert-notes-what_is_beyond_interval_and"),
    };
    hold::gaps(case)
        .into_iter()
        .map(|(run, why)| {
            let why = why.unwrap_or_else(|| tell!("cert-notes-nobody_wrote_why"));
            let text = tell!(
                "cert-notes-of_the_hold_to_gap",
                lost,
                time = words::min_s(run.length_ms),
                from = case.clock.minute(run.from_ms),
                to = case.clock.minute(run.to_ms),
                why = words::bare(&why),
                source = rule.source,
                page = headings::HOLD
            );
            note(tell!("cert-notes-not_witnessed"), text)
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
                "" => tell!("cert-notes-nobody_said_whether_anything_of"),
                said => tell!("cert-notes-in_the_pipe", what = words::bare(said), by = case.by(&ended.at)),
            };
            let text = tell!(
                "cert-notes-page",
                pipe,
                outcome = reasons::outcome(ended.outcome),
                at = case.clock.minute(ended.at.moment.at_ms),
                why = words::or(&why, &tell!("cert-answers-no_reason_was_written")),
                page = headings::ATTEMPTS
            );
            Some(note(tell!("cert-notes-attempt", n = attempt.n), text))
        })
        .collect()
}

fn clock(case: &Case) -> Vec<Note> {
    let jumps = case.repair.clock_jumps.iter();
    jumps
        .map(|jump| {
            let way = if jump.by_ms < 0 { tell!("cert-notes-back") } else { tell!("cert-notes-forward") };
            let by = words::lasting(words::down_s(Span::from_ms(jump.by_ms.abs())));
            let at = case.clock.second(jump.at.moment.at_ms);
            let then = if jump.restarted {
                tell!("cert-notes-the_device_was_started_anew")
            } else {
                tell!("cert-notes-the_clock_since_the_start")
            };
            note(
                tell!("cert-notes-clock"),
                tell!("cert-notes-the_clock_of_device_was", way, by, at, then, device = jump.at.device),
            )
        })
        .collect()
}

fn corrections(case: &Case) -> Vec<Note> {
    case.repair
        .corrections
        .iter()
        .map(|one| {
            let page = headings::CORRECTIONS;
            note(
                tell!("cert-notes-correction"),
                tell!(
                    "cert-notes-corrected_to_page",
                    page,
                    label = crate::view::label(&one.label),
                    old = words::recorded(&one.old),
                    new = words::recorded(&one.new)
                ),
            )
        })
        .collect()
}

/// Returns what was filled in after its stage, and what was tapped later than it happened.
fn late(case: &Case) -> Vec<Note> {
    let Some(attempt) = case.attempt else { return vec![] };
    let mut filled: Vec<_> =
        attempt.answers.values().filter(|answered| answered.late && answered.carried_from.is_none()).collect();
    filled.sort_by_key(|answered| answered.at.moment.at_ms);
    let filled = filled.iter().map(|answered| {
        format!("{} ({})", words::small(&words::retold(&answered.label)), case.clock.minute(answered.at.moment.at_ms))
    });
    let filled = words::joined(filled, "; ");
    let filled = (!filled.is_empty())
        .then(|| note(tell!("cert-notes-filled_in_late"), tell!("cert-notes-after_their_stage", filled)));
    filled.into_iter().chain(from_paper(case, attempt)).chain(tapped_late(case, attempt)).collect()
}

/// Returns every entry that was keyed in from paper, with both times.
fn from_paper(case: &Case, attempt: &Attempt) -> Option<Note> {
    let keyed = keyed(attempt);
    let each = keyed.iter().map(|(what, at)| {
        let (happened, tapped) = (case.clock.minute(at.moment.at_ms), case.clock.minute(at.tapped_ms()));
        tell!("cert-notes-keyed_in", happened, tapped, what = words::small(&words::retold(what)))
    });
    let text = words::joined(each, "; ");
    let by: BTreeSet<String> = keyed.iter().map(|(_, at)| case.name(at.person.as_deref())).collect();
    let by = words::joined(by, ", ");
    (!keyed.is_empty())
        .then(|| note(tell!("cert-notes-from_paper"), tell!("cert-notes-written_on_paper_and_keyed", by, text)))
}

fn tapped_late(case: &Case, attempt: &Attempt) -> Vec<Note> {
    let readings = attempt.readings.iter().map(|reading| (tell!("cert-notes-a_reading"), &reading.at));
    let taps = taps(attempt).into_iter().chain(readings).filter(|(_, at)| at.ago_ms > 0 && !at.paper);
    taps.map(|(what, at)| {
        let (happened, late) =
            (case.clock.second(at.moment.at_ms), words::lasting(words::up_s(Span::from_ms(at.ago_ms))));
        let by = case.name(at.person.as_deref());
        let text = tell!("cert-notes-tapped_later_by_both_times", happened, late, by, what = words::capital(&what));
        note(tell!("cert-notes-tapped_late"), text)
    })
    .collect()
}

/// Returns the taps of an attempt's course, each with its name.
fn taps(attempt: &Attempt) -> Vec<(String, &Stamp)> {
    let course = [
        (tell!("cert-notes-test_push_begun"), attempt.test_push.begun.as_ref()),
        (tell!("cert-notes-packer_at_the_mark_in"), attempt.test_push.reached.as_ref().map(|(at, _)| at)),
        (tell!("cert-notes-packer_back_from_the_test"), attempt.test_push.back.as_ref().map(|(at, _)| at)),
        (tell!("cert-notes-parts_joined"), attempt.joined.as_ref()),
        (tell!("cert-notes-insertion_begun"), attempt.insertion.as_ref()),
        (tell!("cert-notes-packer_at_the_mark"), attempt.at_mark.as_ref().map(|mark| &mark.at)),
        (tell!("cert-notes-air_line_joined"), attempt.air_joined.as_ref()),
        (tell!("cert-notes-target_pressure_reached"), attempt.target.as_ref().map(|target| &target.at)),
        (tell!("cert-course-released"), attempt.released.as_ref().map(|(at, _)| at)),
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
                tell!(
                    "cert-notes-at",
                    what = words::or(&said, &tell!("cert-findings-done")),
                    at = case.clock.minute(at.moment.at_ms)
                )
            });
            let (label, now) = (words::retold(&answered.label), case.by(&answered.at));
            note(
                tell!("cert-notes-answered_again"),
                tell!("cert-notes-before_last_by", label, now, earlier = words::joined(earlier, "; ")),
            )
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
            let see = waived.map_or_else(String::new, |label| tell!("cert-notes-the_foremans_decision", label));
            let who = when::by(case.people, &case.clock, at);
            note(
                tell!("cert-notes-reported"),
                format!("{}{why}. {who}.{see}", words::capital(&words::retold(decide::words(happening)))),
            )
        })
        .collect()
}

fn clock_position(case: &Case) -> Option<Note> {
    let text = tell!("cert-notes-nobody_recorded_where_round_the");
    (!place::clock_is_known(case)).then(|| note(tell!("cert-notes-clock_position"), text))
}
