//! The answers of the first ten seconds: result, off the rules, which pipe, where, what was mended, who signs.

use super::{Case, hold, place, reasons, signatures, words};
use crate::certificate::content::{Answer, Departure, Kind, Known, Observation, ResultLine};
use crate::procedure::rules::Rule;
use crate::procedure::stage::Outcome;
use crate::shelf::Role;

/// Returns the one word of the result.
pub fn headline(case: &Case) -> &'static str {
    match case.kind {
        Kind::Accepted => "ACCEPTED",
        Kind::Rejected => "REJECTED",
        Kind::Rehearsal => "REHEARSAL",
        Kind::Unrepaired => "UNREPAIRED",
    }
}

/// Returns the result in one line: "ACCEPTED by the foreman", never the word alone.
pub fn result(case: &Case, departures: usize) -> ResultLine {
    let with = if departures == 0 { String::new() } else { format!("with {}", words::many(departures, "departure")) };
    let (tail, short) = match case.kind {
        Kind::Accepted => (
            words::joined(["by the foreman".into(), with.clone()], ", "),
            words::joined(["by the foreman".into(), with], ", "),
        ),
        Kind::Rejected => {
            let outside = reasons::findings(case).iter().filter(|broken| outside_a_limit(broken.rule)).count();
            let found = format!("by the foreman, {} outside the limits", words::many(outside, "finding"));
            (if outside == 0 { "by the foreman".into() } else { found }, "by the foreman".into())
        }
        Kind::Rehearsal => (practised(case), String::new()),
        Kind::Unrepaired => (unrepaired(case).into(), String::new()),
    };
    ResultLine { headline: headline(case).into(), tail, short }
}

/// Says whether a broken rule is about the work, not about a paper that is missing.
fn outside_a_limit(rule: Rule) -> bool {
    !matches!(rule, Rule::PhotoMissing | Rule::TightnessMissing | Rule::LateTapInFavour)
}

fn practised(case: &Case) -> String {
    let how = match case.attempt.and_then(|attempt| attempt.outcome()) {
        Some(Outcome::Accepted) => "practice patch accepted",
        Some(Outcome::Rejected) => "practice patch rejected",
        Some(Outcome::LeftInPipe) => "practice patch left in the pipe",
        Some(Outcome::Discarded | Outcome::Abandoned) | None => "closed without a practice patch",
    };
    format!("no sewer was repaired; {how}")
}

fn unrepaired(case: &Case) -> &'static str {
    let left = case.repair.attempts.iter().any(|attempt| attempt.outcome() == Some(Outcome::LeftInPipe));
    match (left, case.repair.closed.is_some()) {
        (true, true) => "closed by the foreman, a patch was left in the pipe",
        (true, false) => "a patch was left in the pipe, not closed",
        (false, _) => "closed by the foreman without a patch",
    }
}

/// Returns the answers below the result.
pub fn answers(case: &Case, departures: &[Departure]) -> Vec<Answer> {
    vec![off_the_rules(case, departures), which_pipe(case), site(case), mended(case), who_signs(case)]
}

fn answer(label: &str, first: String, second: String) -> Answer {
    Answer { label: label.into(), first, second: Some(second).filter(|text| !text.is_empty()) }
}

fn off_the_rules(case: &Case, departures: &[Departure]) -> Answer {
    let count = words::many(departures.len(), "departure");
    let also = also(case, departures.len());
    match case.kind {
        Kind::Accepted => {
            let names = words::joined(departures.iter().map(|one| one.short.clone()), "; ");
            let first = if departures.is_empty() { "Nothing waived".into() } else { format!("{count}: {names}") };
            answer("Off the rules", first, also)
        }
        Kind::Rejected => answer("Why rejected", because(case), also),
        Kind::Unrepaired => answer("Why unrepaired", because(case), also),
        Kind::Rehearsal => answer(
            "What this is",
            "Practice. It can never become a certificate.".into(),
            format!("The record is marked as a rehearsal from its first entry and is numbered apart. {also}"),
        ),
    }
}

/// Returns why it was rejected or closed, in the words of who did it.
fn because(case: &Case) -> String {
    let ended = case.attempt.and_then(|attempt| attempt.ended.as_ref());
    let written = ended.map(|ended| ended.reasons.iter().map(|reason| words::bare(reason).to_owned()));
    let written = words::joined(written.into_iter().flatten(), "; ");
    let closed = case.repair.closed.as_ref().map(|closed| words::bare(&closed.reason).to_owned());
    let all = match case.kind {
        Kind::Unrepaired => words::joined(closed.into_iter().chain([written]), "; "),
        _ => written,
    };
    words::capital(words::or(&all, "no reason was written"))
}

/// Returns what else the record holds; of departures, where the answer has not named them.
fn also(case: &Case, departures: usize) -> String {
    let state = case.hold.as_ref();
    let lost = state.map(|state| words::up_s(state.shown.not_witnessed_ms)).filter(|lost| lost.as_ms() > 0);
    let doubts = case.attempt.map_or(0, |attempt| attempt.doubts.len());
    let counted = |count: usize, word: &str| if count == 0 { String::new() } else { words::many(count, word) };
    let parts = [
        counted(if case.kind == Kind::Accepted { 0 } else { departures }, "departure"),
        counted(doubts, "doubt"),
        counted(case.repair.attempts.len().saturating_sub(1), "other attempt"),
        counted(case.repair.corrections.len(), "correction"),
        counted(hold::excursions(case).len(), "pressure excursion"),
        lost.map(|lost| format!("{} of the hold not witnessed", words::min_s(lost))).unwrap_or_default(),
        counted(case.repair.clock_jumps.len(), "clock change"),
    ];
    let list = words::joined(parts, ", ");
    if list.is_empty() { "Nothing else on the record".into() } else { format!("Also on the record: {list}") }
}

fn which_pipe(case: &Case) -> Answer {
    let line = &case.repair.line;
    let asset = words::or(&line.asset, "pipe without a key of the owner");
    let first = format!("{asset}   {} → {}", line.upstream.name, line.downstream.name);
    let pipe = format!("DN {} {}", place::dn(line.height_um), words::or(&line.material, "of unknown material"));
    let carries = words::or(&line.carries, "what it carries is not recorded");
    let length = words::metres(line.length_um);
    let to = &line.downstream.name;
    answer("Which pipe", first, format!("{pipe}, {carries}, {length} between node centres, flows to {to}"))
}

fn site(case: &Case) -> Answer {
    let line = &case.repair.line;
    let street = words::or(&line.street, "Street not recorded").to_owned();
    let (what, middle) = match place::patch(case) {
        Known::Known(patch) => ("Patch centre", place::middle(&patch)),
        Known::Absent(_) => ("Defect centre", case.repair.defect.centre()),
    };
    let rest = crate::units::Length::from_um(line.length_um.as_um() - middle.as_um());
    let second = format!(
        "{what} {} from {} (upstream) = {} from {} (downstream)",
        words::metres(middle),
        line.upstream.name,
        words::metres(rest),
        line.downstream.name,
    );
    answer("Where", street, second)
}

fn mended(case: &Case) -> Answer {
    let label = match case.kind {
        Kind::Accepted => "What was mended",
        Kind::Rejected => "What was tried",
        Kind::Rehearsal => "What was practised",
        Kind::Unrepaired => "What is not mended",
    };
    let seen = place::observations(case);
    let first = seen.first().map(|first| format!("{}, {}", named(first), round(case, first))).unwrap_or_default();
    let defect = &case.repair.defect;
    let upstream = &case.repair.line.upstream.name;
    let extent = format!("Defect {}", words::metres_between(defect.from_um, defect.to_um));
    let patch = match place::patch(case) {
        Known::Known(patch) => {
            let long = crate::units::Length::from_um(patch.to_um.as_um() - patch.from_um.as_um());
            let lies = words::metres_between(patch.from_um, patch.to_um);
            format!("patch {} long, all round, {lies}, both from {upstream}", words::metres(long))
        }
        Known::Absent(why) => format!("from {upstream}; {why}"),
    };
    let also = seen.iter().skip(1).map(|one| {
        let at = words::metres(one.stretch.from_um);
        format!("also {}, {}, {at}", words::small(&named(one)), words::hours(one.around))
    });
    answer(label, first, words::joined([format!("{extent}; {patch}")].into_iter().chain(also), "; "))
}

fn named(seen: &Observation) -> String {
    if seen.code == "defect" { seen.words.clone() } else { format!("{} ({})", seen.words, seen.code) }
}

fn round(case: &Case, seen: &Observation) -> String {
    if place::clock_is_known(case) {
        format!("{} looking downstream", words::hours(seen.around))
    } else {
        "clock position not recorded".into()
    }
}

fn who_signs(case: &Case) -> Answer {
    let by = |role: Role| case.repair.signatures.iter().find(|signature| signature.role == role);
    let said = |role: Role, word: &str| match by(role) {
        Some(signature) => format!("{}, {word}, {}", signature.name, case.clock.date(signature.at.moment.at_ms)),
        None => format!("no {word} has signed"),
    };
    let contract = &case.repair.contract;
    let firm = words::joined([contract.contractor.clone(), contract.crew.clone()], ", ");
    let known = if signatures::by_pin(case) { "Each by PIN." } else { "Not authenticated." };
    match case.kind {
        Kind::Rehearsal => {
            let who = format!("{}; {}.", said(Role::Technician, "technician"), said(Role::Foreman, "foreman"));
            answer("Who signs", "Practice signatures only".into(), format!("{} {known}", words::capital(&who)))
        }
        _ => {
            let technician = match by(Role::Technician) {
                Some(signature) => format!("With {}, technician, for {firm}", signature.name),
                None => format!("No technician has signed, for {firm}"),
            };
            let second = format!("{technician}. {known} The owner accepts separately.");
            answer("Who signs", words::capital(&said(Role::Foreman, "foreman")), second)
        }
    }
}
