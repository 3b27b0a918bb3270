//! What stands before the departures: doubt, why it was rejected or closed, and what the paper is not.

use super::{Case, attempts, departures, hold, missing, words};
use crate::certificate::content::{Kind, Note, headings};
use crate::checks::hold::{Excursion, Side};
use crate::procedure::repair::{Attempt, Doubt};
use crate::procedure::rules::{self, Broken, Rule};
use crate::procedure::stage::{Outcome, Stage};
use crate::units::Span;
use crate::words::tell;

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
            note(&tell!("cert-cautions-not_a_repair"), tell!("cert-reasons-no_sewer_was_repaired_and")),
            note(&tell!("cert-reasons-not_final"), tell!("cert-reasons-a_rehearsal_cant_be_turned")),
        ],
        Kind::Unrepaired => {
            vec![note(&tell!("cert-reasons-not_mended"), tell!("cert-reasons-the_defect_is_not_mended"))]
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
        tell!(
            "cert-reasons-voided_by",
            name = case.name(Some(&voided.foreman)),
            at = case.clock.minute(voided.at.moment.at_ms)
        )
    });
    Some(note(
        &tell!("cert-reasons-supersedes"),
        tell!("cert-reasons-this_paper_takes_the_place", number, day, why, by),
    ))
}

fn doubts(case: &Case) -> Vec<Note> {
    let Some(attempt) = case.attempt else { return vec![] };
    attempt.doubts.iter().map(|doubt| note(&tell!("cert-reasons-doubtful"), doubtful(case, doubt))).collect()
}

fn doubtful(case: &Case, doubt: &Doubt) -> String {
    let lost = hold::excursions(case).into_iter().find(|(one, ..)| doubt.rule == Rule::PressureLost && one.doubtful);
    let least = case.plan.map(|plan| words::bar(plan.computed.window.net_least_pa)).unwrap_or_default();
    let what = match lost {
        Some((one, at_ms, why)) => tell!(
            "cert-reasons-net_fell_below_the_sheets",
            least,
            what = excursion(case, &one, at_ms, why.as_deref()),
            net = words::bar_down(one.net_pa),
            page = headings::HOLD
        ),
        None => {
            let says = departures::says(doubt.rule, &doubt.values);
            let says = words::stopped(&words::capital(&says));
            tell!("cert-reasons-recorded_by_the_attempt_is", says, by = case.by(&doubt.at))
        }
    };
    let decided = departures::label(case, doubt.rule, "doubt");
    decided.map_or(what.clone(), |label| tell!("cert-reasons-the_foremans_decision", what, label))
}

/// Returns `1.04 bar at 10:17, 0.06 bar below the window, for at most 6 min 26 s, resin 1 h 13 min old: why.`
pub fn excursion(case: &Case, one: &Excursion, at_ms: i64, why: Option<&str>) -> String {
    let side = match one.side {
        Side::Below => tell!("cert-reasons-below"),
        Side::Above => tell!("cert-reasons-above"),
    };
    let lasted = words::min_s(words::up_s(one.longest_ms));
    let lasted = if one.open {
        tell!("cert-reasons-for_and_perhaps_longer", lasted)
    } else {
        tell!("cert-reasons-for_at_most", lasted)
    };
    let whole_minutes = Span::from_ms(one.resin_age_ms.as_ms().div_euclid(60_000) * 60_000);
    let why = why.map_or_else(|| tell!("cert-notes-nobody_wrote_why"), str::to_owned);
    tell!(
        "cert-reasons-at_the_window_resin_old",
        side,
        lasted,
        pressure = words::bar(one.worst_pa),
        at = case.clock.minute(at_ms),
        depth = words::bar_up(one.depth_pa),
        age = words::lasting(whole_minutes),
        why = words::stopped(&why)
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
            tell!("cert-reasons-attempt", n = attempt.n, by = case.by(&ended.at)),
            words::stopped(&words::capital(words::or(&reasons, &tell!("cert-answers-no_reason_was_written")))),
            attempt.place.as_ref().map(|_| format!("{}.", attempts::patch_where(case, attempt))).unwrap_or_default(),
            in_pipe(attempt),
        ];
        note(&outcome(ended.outcome), words::joined(text, " "))
    });
    let (ended, next) = (ended.into_iter(), next(case).into_iter());
    if case.repair.closed.is_some() { next.chain(ended).collect() } else { ended.chain(next).collect() }
}

fn in_pipe(attempt: &Attempt) -> String {
    let said = attempt.ended.as_ref().map(|ended| ended.in_pipe.trim()).unwrap_or_default();
    if said.is_empty() { String::new() } else { tell!("cert-reasons-in_the_pipe", what = words::bare(said)) }
}

/// Returns the word for how an attempt ended.
pub fn outcome(outcome: Outcome) -> String {
    match outcome {
        Outcome::Accepted => tell!("cert-reasons-accepted"),
        Outcome::Rejected => tell!("cert-reasons-rejected"),
        Outcome::Discarded => tell!("cert-reasons-discarded"),
        Outcome::LeftInPipe => tell!("cert-reasons-left_in_pipe"),
        Outcome::Abandoned => tell!("cert-reasons-abandoned"),
    }
}

fn next(case: &Case) -> Option<Note> {
    match &case.repair.closed {
        Some(closed) => {
            let text = format!("{} {}.", words::stopped(&words::capital(&closed.reason)), case.by(&closed.at));
            Some(note(&tell!("cert-reasons-closed"), text))
        }
        None => {
            let n = case.n() + 1;
            Some(note(&tell!("cert-reasons-next"), tell!("cert-reasons-the_repair_is_not_closed", n)))
        }
    }
}
