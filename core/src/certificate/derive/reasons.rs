//! What stands before the departures: doubt, why it was rejected or closed, and what the paper is not.

use super::{Case, departures, hold, missing, words};
use crate::certificate::content::{Kind, Note, headings};
use crate::checks::hold::{Excursion, Side};
use crate::procedure::repair::{Attempt, Doubt};
use crate::procedure::rules::{self, Broken, Rule};
use crate::procedure::stage::Outcome;
use crate::units::Span;

/// Returns the reasons in the order in which they are read.
pub fn reasons(case: &Case) -> Vec<Note> {
    let mut found = what_it_is_not(case);
    found.extend(doubts(case));
    if matches!(case.kind, Kind::Rejected | Kind::Unrepaired) {
        found.extend(
            findings(case)
                .into_iter()
                .enumerate()
                .map(|(index, broken)| note(&format!("F{}", index + 1), departures::sentence(case, &broken))),
        );
        found.extend(ended(case));
        found.extend(next(case));
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
            format!("{} Recorded {}: the attempt is doubtful.", words::stopped(&says), case.by(&doubt.at))
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
pub fn findings(case: &Case) -> Vec<Broken> {
    let Some((plan, attempt)) = case.work() else { return vec![] };
    let doubt = |broken: &Broken| broken.subject == "doubt" || broken.rule == Rule::NewAttemptAsked;
    let serious = |broken: &Broken| matches!(broken.rule.row().kind, rules::Kind::Never | rules::Kind::Departure);
    let open = |broken: &Broken| !missing::decided(case.repair, plan, attempt, broken);
    let found = missing::stands(case.repair, plan, attempt);
    found.into_iter().filter(|broken| serious(broken) && open(broken) && !doubt(broken)).collect()
}

/// Returns how the attempt ended, in the words of who ended it.
fn ended(case: &Case) -> Vec<Note> {
    let Some((attempt, ended)) = case.attempt.and_then(|attempt| Some((attempt, attempt.ended.as_ref()?))) else {
        return vec![];
    };
    let reasons = words::joined(ended.reasons.iter().map(|reason| words::bare(reason).to_owned()), "; ");
    let because =
        if reasons.is_empty() { "No reason was written.".into() } else { words::stopped(&words::capital(&reasons)) };
    let in_pipe = in_pipe(attempt);
    let text = [because, in_pipe, format!("{}.", case.by(&ended.at))];
    vec![note(outcome(ended.outcome), words::joined(text, " "))]
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
