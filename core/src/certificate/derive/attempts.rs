//! The other attempts, and the corrections: nothing of them is overwritten.

use super::{Case, reasons, when, words};
use crate::certificate::content::{Attempt as Row, Correction};
use crate::procedure::decide;
use crate::procedure::repair::Attempt;
use crate::procedure::stage::{Outcome, PatchPlace};
use crate::procedure::times;
use crate::shelf::method::TaskKind;
use crate::units::Mass;
use crate::words::tell;

/// Returns every attempt but the paper's, in order.
pub fn attempts(case: &Case) -> Vec<Row> {
    let others = case.repair.attempts.iter().filter(|attempt| attempt.n != case.n());
    others
        .map(|attempt| Row {
            number: attempt.n,
            span: span(case, attempt),
            what: what(case, attempt),
            patch_where: patch_where(case, attempt),
            in_pipe: in_pipe(case, attempt),
            outcome: outcome(case, attempt),
        })
        .collect()
}

fn span(case: &Case, attempt: &Attempt) -> String {
    let begun = attempt.spans.first().map(|span| case.clock.minute(span.begun.moment.at_ms));
    let ended = attempt.ended.as_ref().map(|ended| case.clock.minute(ended.at.moment.at_ms));
    format!(
        "{}–{}",
        begun.unwrap_or_else(|| tell!("cert-attempts-not_begun")),
        ended.unwrap_or_else(|| tell!("cert-attempts-not_ended"))
    )
}

fn what(case: &Case, attempt: &Attempt) -> String {
    let reasons = attempt.ended.iter().flat_map(|ended| &ended.reasons);
    let why = words::joined(reasons.map(|reason| words::bare(&words::retold(reason)).to_owned()), "; ");
    let why = words::stopped(&words::capital(words::or(&why, &tell!("cert-answers-no_reason_was_written"))));
    words::joined(
        [why, resin_time(case, attempt), troubles(case, attempt), doubts(attempt), material(case, attempt)],
        " ",
    )
}

fn resin_time(case: &Case, attempt: &Attempt) -> String {
    let Some(joined) = &attempt.joined else { return tell!("cert-attempts-the_parts_were_never_joined") };
    let at = joined.moment.at_ms;
    let over = case.plan.and_then(|plan| times::working_time(plan, attempt));
    let over =
        over.map(|working| tell!("cert-attempts-working_time_over", at = case.clock.second(at + working.as_ms())));
    let target = attempt
        .target
        .as_ref()
        .map(|target| tell!("cert-attempts-target_pressure", at = case.clock.second(target.at.moment.at_ms)));
    tell!(
        "cert-attempts-parts_joined",
        at = case.clock.second(at),
        over = over.unwrap_or_default(),
        target = target.unwrap_or_default()
    )
}

fn troubles(case: &Case, attempt: &Attempt) -> String {
    let each = attempt.troubles.iter().map(|(at, happening)| {
        let who = when::by(case.people, &case.clock, at);
        format!("{} ({who})", words::capital(&words::retold(decide::words(happening))))
    });
    words::stopped(&words::joined(each, "; "))
}

fn doubts(attempt: &Attempt) -> String {
    let each = attempt.doubts.iter().map(|doubt| words::capital(&super::departures::says(doubt.rule, &doubt.values)));
    words::joined(each, " ")
}

/// Returns what became of patch and resin, by the lots of that attempt.
fn material(case: &Case, attempt: &Attempt) -> String {
    if attempt.joined.is_none() || attempt.outcome() != Some(Outcome::Discarded) {
        return String::new();
    }
    let lots = attempt.answer(TaskKind::Lots).map(|lots| &lots.answer);
    let lot = |key| {
        let lot = lots.and_then(|lots| lots.text(key));
        lot.map_or_else(|| tell!("cert-attempts-not_recorded"), str::to_owned)
    };
    let used = attempt.answer(TaskKind::PartsUsed).map(|used| &used.answer);
    let weighed = used.and_then(|used| Some(used.number("mass_a_mg")? + used.number("mass_b_mg")?)).map(Mass::from_mg);
    let planned =
        case.plan.map(|plan| tell!("cert-attempts-of_resin_as_planned", mass = words::grams(plan.computed.batch_mg)));
    let mass = weighed.map(|mass| tell!("cert-attempts-of_resin", mass = words::grams(mass))).or(planned);
    tell!(
        "cert-attempts-patch_lot_and_lots_thrown",
        patch = lot("lot_patch"),
        resin = mass.unwrap_or_else(|| tell!("cert-attempts-the_resin")),
        a = lot("lot_a"),
        b = lot("lot_b")
    )
}

/// Returns where the patch was when the working time was over, who said so and when.
pub fn patch_where(case: &Case, attempt: &Attempt) -> String {
    match &attempt.place {
        Some((at, place)) => {
            let place = match place {
                PatchPlace::OnTable => tell!("cert-attempts-on_the_table_not_yet"),
                PatchPlace::InPipe => tell!("cert-attempts-in_the_pipe_not_expanded"),
                PatchPlace::TouchingWall => tell!("cert-attempts-touching_the_wall"),
                PatchPlace::Stuck => tell!("cert-attempts-stuck"),
            };
            format!("{place}. {}", case.by(at))
        }
        None if attempt.joined.is_none() => tell!("cert-attempts-not_asked_the_parts_were"),
        None => tell!("cert-attempts-nobody_said"),
    }
}

fn in_pipe(case: &Case, attempt: &Attempt) -> String {
    match attempt.ended.as_ref().map(|ended| (ended, ended.in_pipe.trim())) {
        None => tell!("cert-attempts-not_ended_2"),
        Some((_, "")) => tell!("cert-attempts-nobody_said"),
        Some((ended, said)) => {
            format!("{} {}", words::stopped(&words::capital(&words::retold(said))), case.by(&ended.at))
        }
    }
}

fn outcome(case: &Case, attempt: &Attempt) -> String {
    attempt.ended.as_ref().map_or_else(
        || tell!("cert-attempts-not_ended_2"),
        |ended| format!("{}. {}", reasons::outcome(ended.outcome), case.by(&ended.at)),
    )
}

/// Returns the corrections of every attempt, in the order in which they were made.
pub fn corrections(case: &Case) -> Vec<Correction> {
    let attempt = |n: u32| if n == case.n() { String::new() } else { tell!("cert-attempts-attempt", n) };
    case.repair
        .corrections
        .iter()
        .map(|one| Correction {
            value: format!("{}{}", one.label, attempt(one.attempt)),
            old: words::recorded(&one.old),
            new: words::recorded(&one.new),
            reason: one.reason.clone(),
            by: case.by(&one.at),
        })
        .collect()
}
