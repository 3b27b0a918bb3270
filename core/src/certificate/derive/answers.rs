//! The answers of the first ten seconds: result, off the rules, which pipe, where, what was mended, who signs.

use super::{Case, hold, place, reasons, signatures, words};
use crate::certificate::content::{Answer, Departure, Kind, Known, Observation, ResultLine};
use crate::procedure::rules::Rule;
use crate::procedure::stage::Outcome;
use crate::shelf::Role;
use crate::words::tell;

/// Returns the one word of the result.
pub fn headline(case: &Case) -> String {
    match case.kind {
        Kind::Accepted => tell!("cert-answers-accepted"),
        Kind::Rejected => tell!("cert-answers-rejected"),
        Kind::Rehearsal => tell!("cert-answers-rehearsal"),
        Kind::Unrepaired => tell!("cert-answers-unrepaired"),
    }
}

/// Returns the result in one line: "ACCEPTED by the foreman", never the word alone.
pub fn result(case: &Case, departures: usize) -> ResultLine {
    let with = if departures == 0 { String::new() } else { tell!("cert-answers-with_departures", count = departures) };
    let (tail, short) = match case.kind {
        Kind::Accepted => (
            words::joined([tell!("cert-answers-by_the_foreman"), with.clone()], ", "),
            words::joined([tell!("cert-answers-by_the_foreman"), with], ", "),
        ),
        Kind::Rejected => {
            let outside = reasons::findings(case).iter().filter(|broken| outside_a_limit(broken.rule)).count();
            let found = tell!("cert-answers-outside", count = outside);
            (
                if outside == 0 { tell!("cert-answers-by_the_foreman") } else { found },
                tell!("cert-answers-by_the_foreman"),
            )
        }
        Kind::Rehearsal => (practised(case), String::new()),
        Kind::Unrepaired => (unrepaired(case), String::new()),
    };
    ResultLine { headline: headline(case), tail, short }
}

/// Says whether a broken rule is about the work, not about a paper that is missing.
fn outside_a_limit(rule: Rule) -> bool {
    !matches!(rule, Rule::PhotoMissing | Rule::TightnessMissing | Rule::LateTapInFavour)
}

fn practised(case: &Case) -> String {
    let how = match case.attempt.and_then(|attempt| attempt.outcome()) {
        Some(Outcome::Accepted) => tell!("cert-answers-practice_patch_accepted"),
        Some(Outcome::Rejected) => tell!("cert-answers-practice_patch_rejected"),
        Some(Outcome::LeftInPipe) => tell!("cert-answers-practice_patch_left_in_the"),
        Some(Outcome::Discarded | Outcome::Abandoned) | None => tell!("cert-answers-closed_without_a_practice_patch"),
    };
    tell!("cert-answers-no_sewer_was_repaired", how)
}

fn unrepaired(case: &Case) -> String {
    let left = case.repair.attempts.iter().any(|attempt| attempt.outcome() == Some(Outcome::LeftInPipe));
    match (left, case.repair.closed.is_some()) {
        (true, true) => tell!("cert-answers-closed_by_the_foreman_a"),
        (true, false) => tell!("cert-answers-a_patch_was_left_in"),
        (false, _) => tell!("cert-answers-closed_by_the_foreman_without"),
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
    let count = words::many("cert-count-departures", departures.len());
    let also = also(case, departures.len());
    match case.kind {
        Kind::Accepted => {
            let names = words::joined(departures.iter().map(|one| one.short.clone()), "; ");
            let first =
                if departures.is_empty() { tell!("cert-answers-nothing_waived") } else { format!("{count}: {names}") };
            answer(&tell!("cert-answers-off_the_rules"), first, also)
        }
        Kind::Rejected => answer(&tell!("cert-answers-why_rejected"), because(case), also),
        Kind::Unrepaired => answer(&tell!("cert-answers-why_unrepaired"), because(case), also),
        Kind::Rehearsal => answer(
            &tell!("cert-answers-what_this_is"),
            tell!("cert-answers-practice_it_can_never_become"),
            tell!("cert-answers-the_record_is_marked_as", also),
        ),
    }
}

/// Returns why it was rejected or closed, in the words of who did it.
fn because(case: &Case) -> String {
    let ended = case.attempt.and_then(|attempt| attempt.ended.as_ref());
    let written = ended.map(|ended| ended.reasons.iter().map(|reason| words::bare(&words::retold(reason)).to_owned()));
    let written = words::joined(written.into_iter().flatten(), "; ");
    let closed = case.repair.closed.as_ref().map(|closed| words::bare(&closed.reason).to_owned());
    let all = match case.kind {
        Kind::Unrepaired => words::joined(closed.into_iter().chain([written]), "; "),
        _ => written,
    };
    words::capital(words::or(&all, &tell!("cert-answers-no_reason_was_written")))
}

/// Returns what else the record holds; of departures, where the answer has not named them.
fn also(case: &Case, departures: usize) -> String {
    let state = case.hold.as_ref();
    let lost = state.map(|state| words::up_s(state.shown.not_witnessed_ms)).filter(|lost| lost.as_ms() > 0);
    let doubts = case.attempt.map_or(0, |attempt| attempt.doubts.len());
    let counted = |count: usize, id: &str| if count == 0 { String::new() } else { words::many(id, count) };
    let parts = [
        counted(if case.kind == Kind::Accepted { 0 } else { departures }, "cert-count-departures"),
        counted(doubts, "cert-count-doubts"),
        counted(case.repair.attempts.len().saturating_sub(1), "cert-count-attempts"),
        counted(case.repair.corrections.len(), "cert-count-corrections"),
        counted(hold::excursions(case).len(), "cert-count-excursions"),
        lost.map(|lost| tell!("cert-answers-of_the_hold_not_witnessed", time = words::min_s(lost))).unwrap_or_default(),
        counted(case.repair.clock_jumps.len(), "cert-count-clock_changes"),
    ];
    let list = words::joined(parts, ", ");
    if list.is_empty() {
        tell!("cert-answers-nothing_else_on_the_record")
    } else {
        tell!("cert-answers-also_on_the_record", list)
    }
}

fn which_pipe(case: &Case) -> Answer {
    let line = &case.repair.line;
    let asset = words::or(&line.asset, &tell!("cert-answers-pipe_without_a_key_of")).to_owned();
    let first = format!("{asset}   {} → {}", line.upstream.name, line.downstream.name);
    let pipe = format!(
        "DN {} {}",
        place::dn(line.height_um),
        words::or(&words::retold(&line.material), &tell!("cert-answers-of_unknown_material"))
    );
    let carries = words::or(&words::retold(&line.carries), &tell!("cert-answers-what_it_carries_is_not")).to_owned();
    let length = words::metres(line.length_um);
    let to = &line.downstream.name;
    answer(
        &tell!("cert-answers-which_pipe"),
        first,
        tell!("cert-answers-between_node_centres_flows_to", pipe, carries, length, to),
    )
}

fn site(case: &Case) -> Answer {
    let line = &case.repair.line;
    let street = words::or(&line.street, &tell!("cert-answers-street_not_recorded")).to_owned();
    let (what, middle) = match place::patch(case) {
        Known::Known(patch) => (tell!("cert-answers-patch_centre"), place::middle(&patch)),
        Known::Absent(_) => (tell!("cert-answers-defect_centre"), case.repair.defect.centre()),
    };
    let rest = crate::units::Length::from_um(line.length_um.as_um() - middle.as_um());
    let second = tell!(
        "cert-answers-from_upstream_from_downstream",
        what,
        at = words::metres(middle),
        upstream = line.upstream.name,
        rest = words::metres(rest),
        downstream = line.downstream.name
    );
    answer(&tell!("cert-answers-where"), street, second)
}

fn mended(case: &Case) -> Answer {
    let label = match case.kind {
        Kind::Accepted => tell!("cert-answers-what_was_mended"),
        Kind::Rejected => tell!("cert-answers-what_was_tried"),
        Kind::Rehearsal => tell!("cert-answers-what_was_practised"),
        Kind::Unrepaired => tell!("cert-answers-what_is_not_mended"),
    };
    let seen = place::observations(case);
    let first = seen.first().map(|first| format!("{}, {}", named(first), round(case, first))).unwrap_or_default();
    let defect = &case.repair.defect;
    let upstream = &case.repair.line.upstream.name;
    let extent = tell!("cert-answers-defect", extent = words::metres_between(defect.from_um, defect.to_um));
    let patch = match place::patch(case) {
        Known::Known(patch) => {
            let long = crate::units::Length::from_um(patch.to_um.as_um() - patch.from_um.as_um());
            let lies = words::metres_between(patch.from_um, patch.to_um);
            tell!("cert-answers-patch_long_all_round_both", lies, upstream, length = words::metres(long))
        }
        Known::Absent(why) => tell!("cert-answers-from", upstream, why),
    };
    let also = seen.iter().skip(1).map(|one| {
        let at = words::metres(one.stretch.from_um);
        tell!("cert-answers-also", at, what = words::small(&named(one)), around = words::hours(one.around))
    });
    answer(&label, first, words::joined([format!("{extent}; {patch}")].into_iter().chain(also), "; "))
}

fn named(seen: &Observation) -> String {
    if seen.code == tell!("cert-place-defect_2") {
        seen.words.clone()
    } else {
        format!("{} ({})", seen.words, seen.code)
    }
}

fn round(case: &Case, seen: &Observation) -> String {
    if place::clock_is_known(case) {
        tell!("cert-answers-looking_downstream", around = words::hours(seen.around))
    } else {
        tell!("cert-answers-clock_position_not_recorded")
    }
}

fn who_signs(case: &Case) -> Answer {
    let by = |role: Role| case.repair.signatures.iter().find(|signature| signature.role == role);
    let said = |role: Role| match by(role) {
        Some(signature) => {
            let (word, date) = (signatures::signer(role), case.clock.date(signature.at.moment.at_ms));
            format!("{}, {word}, {date}", signature.name)
        }
        None => signatures::nobody(role),
    };
    let contract = &case.repair.contract;
    let firm = words::joined([contract.contractor.clone(), contract.crew.clone()], ", ");
    let known = if signatures::by_pin(case) {
        tell!("cert-answers-each_by_pin")
    } else {
        tell!("cert-answers-not_authenticated")
    };
    match case.kind {
        Kind::Rehearsal => {
            let who = format!("{}; {}.", said(Role::Technician), said(Role::Foreman));
            answer(
                &tell!("cert-answers-who_signs"),
                tell!("cert-answers-practice_signatures_only"),
                format!("{} {known}", words::capital(&who)),
            )
        }
        _ => {
            let technician = match by(Role::Technician) {
                Some(signature) => tell!("cert-answers-with_technician_for", firm, name = signature.name),
                None => tell!("cert-answers-no_technician_has_signed_for", firm),
            };
            let second = tell!("cert-answers-the_owner_accepts_separately", technician, known);
            answer(&tell!("cert-answers-who_signs"), words::capital(&said(Role::Foreman)), second)
        }
    }
}
