//! What stands before the departures: doubt, why it was rejected or closed, and what the paper is not.

use super::{Case, attempts, departures, hold, missing, words};
use crate::certificate::content::{Kind, Note, headings};
use crate::checks::hold::{Excursion, Side};
use crate::procedure::repair::{Attempt, Doubt};
use crate::procedure::rules::{self, Broken, Rule};
use crate::procedure::stage::{Outcome, Stage};
use crate::units::Span;

/// Returns the reasons in the order in which they are read: what page 1 cuts first stands last.
pub fn reasons(case: &Case) -> Vec<Note> {
    let mut found = what_it_is_not(case);
    found.extend(supersedes(case));
    if case.kind == Kind::Unrepaired {
        found.extend(ended(case));
    }
    found.extend(doubts(case));
    if matches!(case.kind, Kind::Rejected | Kind::Unrepaired) {
        let numbered = findings(case).into_iter().enumerate();
        found.extend(numbered.map(|(at, broken)| note(&format!("F{}", at + 1), departures::sentence(case, &broken))));
    }
    if case.kind == Kind::Rejected {
        found.extend(ended(case));
    }
    found
}

fn note(label: &str, text: String) -> Note {
    Note { label: label.into(), text }
}

fn what_it_is_not(case: &Case) -> Vec<Note> {
    match case.kind {
        Kind::Accepted | Kind::Rejected => vec![],
        Kind::Rehearsal => vec![
            note("Not a repair", "No sewer was repaired and no owner is concerned. Times, readings and photos on these pages were made in practice.".into()),
            note("Not final", "A rehearsal can’t be turned into a certificate. For a repair, a new record is begun.".into()),
        ],
        Kind::Unrepaired => {
            vec![note("Not mended", "The defect is not mended. Nobody may take this record for a certificate.".into())]
        }
    }
}

/// Names the certificate that this one replaces. Those before that one, it names itself.
fn supersedes(case: &Case) -> Option<Note> {
    let before = case.repair.issued_before.last()?;
    let (number, day) = (&before.number, case.clock.date(before.at.moment.at_ms));
    let why = words::stopped(&words::capital(case.repair.why_superseded(number)));
    let voided = case.repair.voided.iter().rev().find(|voided| voided.number == *number);
    let by = voided.map_or_else(String::new, |voided| {
        format!(" Voided by {}, {}.", case.name(Some(&voided.foreman)), case.clock.minute(voided.at.moment.at_ms))
    });
    Some(note(
        "Supersedes",
        format!("This paper takes the place of {number} of {day}, which no longer counts. {why}{by}"),
    ))
}

fn doubts(case: &Case) -> Vec<Note> {
    let Some(attempt) = case.attempt else { return vec![] };
    attempt.doubts.iter().map(|doubt| note("Doubtful", doubtful(case, doubt))).collect()
}

fn doubtful(case: &Case, doubt: &Doubt) -> String {
    let lost = hold::excursions(case).into_iter().find(|(one, ..)| doubt.rule == Rule::PressureLost && one.doubtful);
    let least = case.plan.map(|plan| words::bar(plan.computed.window.net_least_pa)).unwrap_or_default();
    let what = match lost {
        Some((one, at_ms, why)) => format!(
            "{} Net {} fell below the sheet’s least net {least} before the hold was reached: the attempt is doubtful (page @<{}>).",
            excursion(case, &one, at_ms, why.as_deref()),
            words::bar_down(one.net_pa),
            headings::HOLD,
        ),
        None => {
            let says = departures::says(doubt.rule, &doubt.values);
            let says = words::stopped(&words::capital(&says));
            format!("{says} Recorded by {}: the attempt is doubtful.", case.by(&doubt.at))
        }
    };
    let decided = departures::label(case, doubt.rule, "doubt");
    decided.map_or(what.clone(), |label| format!("{what} The foreman’s decision: {label}."))
}

/// Returns `1.04 bar at 10:17, 0.06 bar below the window, for at most 6 min 26 s, resin 1 h 13 min old: why.`
pub fn excursion(case: &Case, one: &Excursion, at_ms: i64, why: Option<&str>) -> String {
    let side = match one.side {
        Side::Below => "below",
        Side::Above => "above",
    };
    let lasted = words::min_s(words::up_s(one.longest_ms));
    let lasted = if one.open { format!("for {lasted} and perhaps longer") } else { format!("for at most {lasted}") };
    let whole_minutes = Span::from_ms(one.resin_age_ms.as_ms().div_euclid(60_000) * 60_000);
    let why = why.unwrap_or("nobody wrote why");
    format!(
        "{} at {}, {} {side} the window, {lasted}, resin {} old: {}",
        words::bar(one.worst_pa),
        case.clock.minute(at_ms),
        words::bar_up(one.depth_pa),
        words::lasting(whole_minutes),
        words::stopped(why),
    )
}

/// Returns the rules that the attempt broke and nobody waived: what speaks against the patch.
///
/// What belongs to a stage that the attempt never reached was not broken, but for a lateral under the patch.
pub fn findings(case: &Case) -> Vec<Broken> {
    let Some((plan, attempt)) = case.work() else { return vec![] };
    let doubt = |broken: &Broken| broken.subject == "doubt" || broken.rule == Rule::NewAttemptAsked;
    let serious = |broken: &Broken| matches!(broken.rule.row().kind, rules::Kind::Never | rules::Kind::Departure);
    let open = |broken: &Broken| !missing::decided(case.repair, plan, attempt, broken);
    let reached = |broken: &Broken| {
        let stage = broken.rule.row().stage.unwrap_or(Stage::Verification);
        stage <= attempt.stage() || (broken.rule == Rule::LateralCovered && case.patch_was_set())
    };
    let found = missing::stands(case.repair, plan, attempt).into_iter();
    found.filter(|broken| serious(broken) && open(broken) && !doubt(broken) && reached(broken)).collect()
}

/// Returns how the attempt ended and what comes next.
fn ended(case: &Case) -> Vec<Note> {
    let ended = case.attempt.and_then(|attempt| Some((attempt, attempt.ended.as_ref()?)));
    let ended = ended.map(|(attempt, ended)| {
        let written = ended.reasons.iter().map(|reason| words::bare(reason).to_owned());
        let reasons = words::joined(written, "; ");
        let text = [
            format!("Attempt {}, {}.", attempt.n, case.by(&ended.at)),
            words::stopped(&words::capital(words::or(&reasons, "no reason was written"))),
            attempt.place.as_ref().map(|_| format!("{}.", attempts::patch_where(case, attempt))).unwrap_or_default(),
            in_pipe(attempt),
        ];
        note(outcome(ended.outcome), words::joined(text, " "))
    });
    let (ended, next) = (ended.into_iter(), next(case).into_iter());
    if case.repair.closed.is_some() { next.chain(ended).collect() } else { ended.chain(next).collect() }
}

fn in_pipe(attempt: &Attempt) -> String {
    let said = attempt.ended.as_ref().map(|ended| ended.in_pipe.trim()).unwrap_or_default();
    if said.is_empty() { String::new() } else { format!("In the pipe: “{}”.", words::bare(said)) }
}

/// Returns the word for how an attempt ended.
pub fn outcome(outcome: Outcome) -> &'static str {
    match outcome {
        Outcome::Accepted => "Accepted",
        Outcome::Rejected => "Rejected",
        Outcome::Discarded => "Discarded",
        Outcome::LeftInPipe => "Left in pipe",
        Outcome::Abandoned => "Abandoned",
    }
}

fn next(case: &Case) -> Option<Note> {
    match &case.repair.closed {
        Some(closed) => {
            let text = format!("{} {}.", words::stopped(&words::capital(&closed.reason)), case.by(&closed.at));
            Some(note("Closed", text))
        }
        None => {
            let n = case.n() + 1;
            Some(note(
                "Next",
                format!("The repair is not closed: attempt {n}, or closing it unrepaired with a reason."),
            ))
        }
    }
}
