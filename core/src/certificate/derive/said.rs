//! An answer to a task in words, with every value and its unit.

use super::{Case, words};
use crate::procedure::answer::{Answer, Value};
use crate::shelf::method::{Field, Shape, TaskKind};
use crate::units::{Length, Span};
use crate::words::tell;

/// Returns what was answered: a phrase of its own for most kinds, else each field with its name.
pub fn said(case: &Case, kind: TaskKind, answer: &Answer) -> String {
    match answer {
        Answer::DoesNotApply { because } => tell!("cert-said-does_not_apply_because", because = words::bare(because)),
        Answer::NotRight { because } => tell!("cert-said-not_right_because", because = words::bare(because)),
        Answer::Done { .. } => phrase(case, kind, answer).unwrap_or_else(|| fields(case, kind, answer)),
    }
}

fn phrase(case: &Case, kind: TaskKind, answer: &Answer) -> Option<String> {
    let shown = |key: &str| shown(case, kind, answer, key);
    let more = |before: &str, key: &str| shown(key).map(|text| format!("{before}{text}")).unwrap_or_default();
    Some(match kind {
        TaskKind::Permit => permit(answer),
        TaskKind::Cleaned => tell!("cert-said-cleaned", at = shown("at_ms")?, how = more(", ", "how")),
        TaskKind::ViewedAgain => tell!("cert-said-viewed_again", at = shown("at_ms")?, found = more(", ", "found")),
        TaskKind::MeasuredDiameter => {
            let read = |key| answer.number(key).map(Length::from_um);
            tell!(
                "cert-said-inside",
                range = words::inside_between(read("least_um")?, read("most_um")?),
                how = more(", ", "how")
            )
        }
        TaskKind::PackerTest => {
            tell!(
                "cert-said-packer_test_held_for_drop",
                pressure = shown("gauge_pa")?,
                time = shown("held_ms")?,
                drop = shown("drop_pa")?
            )
        }
        TaskKind::BareEnds => {
            tell!("cert-said-bare_ends_front_rear", front = shown("front_um")?, rear = shown("rear_um")?)
        }
        TaskKind::PartsUsed => {
            tell!("cert-said-parts", how = shown("how")?, a = more(", A ", "mass_a_mg"), b = more(", B ", "mass_b_mg"))
        }
        TaskKind::Mixed => tell!("cert-said-mixed", time = shown("mixed_ms")?),
        TaskKind::Seam => tell!("cert-said-seam_at", hour = shown("hour")?),
        TaskKind::AllBack => tell!(
            "cert-said-pulled_by_sleeve_membrane_binding",
            by = shown("rope")?,
            sleeve = shown("sleeve")?,
            membrane = shown("membrane")?,
            binding = shown("bands")?
        ),
        TaskKind::Surface => shown("surface")?,
        TaskKind::Infiltration => shown("seen")?,
        TaskKind::Waste => {
            tell!("cert-said-to", what = shown("what")?, mass = shown("mass_g")?, where = shown("where_to")?, ticket = more(&tell!("cert-said-ticket"), "ticket"))
        }
        TaskKind::FlowRestored => words::many("cert-count-plugs_out", plugs(answer)?),
        _ => return None,
    })
}

fn plugs(answer: &Answer) -> Option<usize> {
    usize::try_from(answer.number("plugs")?).ok()
}

fn permit(answer: &Answer) -> String {
    let number = answer.text("number").map_or_else(|| tell!("cert-identity-without_a_number"), str::to_owned);
    let who = match (answer.text("entry"), answer.text("who")) {
        (Some("entry"), Some(who)) => tell!("cert-said-below", who),
        (Some("entry"), None) => tell!("cert-said-somebody_below_nobody_says_who"),
        _ => tell!("cert-said-nobody_below"),
    };
    tell!("cert-said-permit", number, who)
}

fn shown(case: &Case, kind: TaskKind, answer: &Answer, key: &str) -> Option<String> {
    let Answer::Done { values } = answer else { return None };
    let field = kind.told_fields().into_iter().find(|field| field.key == key)?;
    Some(value(case, &field, values.get(key)?)).filter(|text| !text.is_empty())
}

/// Returns the values with the names of their fields, in the order of the fields.
fn fields(case: &Case, kind: TaskKind, answer: &Answer) -> String {
    let named = kind.told_fields().into_iter().filter_map(|field| {
        let text = shown(case, kind, answer, field.key)?;
        let named = words::small(field.label.split(" (").next().unwrap_or(&field.label));
        Some(if matches!(field.shape, Shape::Instrument { .. }) { text } else { format!("{named} {text}") })
    });
    words::joined(named, ", ")
}

/// Returns one value with its unit, to its last digit.
fn value(case: &Case, field: &Field, value: &Value) -> String {
    match (&field.shape, value) {
        (Shape::Number { unit, per, decimals, .. }, Value::Number(steps)) => number(*steps, *per, *decimals, unit),
        (Shape::Time, Value::Number(at_ms)) => case.clock.minute(*at_ms),
        (Shape::Choice { options }, Value::Text(key)) => {
            let known = options.iter().find(|(option, _)| option == key);
            known.map_or_else(|| key.clone(), |(_, label)| words::small(label))
        }
        (Shape::Instrument { .. }, Value::Text(id)) => instrument(case, id),
        (_, Value::Text(text)) => text.trim().to_owned(),
        (_, Value::Number(number)) => number.to_string(),
    }
}

fn number(steps: i64, per: i64, decimals: u8, unit: &str) -> String {
    if matches!((unit, per), ("min", 60_000) | ("s", 1_000)) {
        return words::lasting(Span::from_ms(steps));
    }
    words::measured(steps, per, usize::from(decimals), unit)
}

fn instrument(case: &Case, id: &str) -> String {
    let known = case.plan.and_then(|plan| plan.instruments.iter().find(|instrument| instrument.id == id));
    known.map_or_else(|| tell!("cert-materials-not_in_the_plan", id), |instrument| instrument.name.clone())
}
