//! An answer to a task in words, with every value and its unit.

use super::{Case, words};
use crate::procedure::answer::{Answer, Value};
use crate::shelf::method::{Field, Shape, TaskKind};
use crate::units::{Length, Span};

/// Returns what was answered: a phrase of its own for most kinds, else each field with its name.
pub fn said(case: &Case, kind: TaskKind, answer: &Answer) -> String {
    match answer {
        Answer::DoesNotApply { because } => format!("does not apply, because {}", words::bare(because)),
        Answer::NotRight { because } => format!("not right, because {}", words::bare(because)),
        Answer::Done { .. } => phrase(case, kind, answer).unwrap_or_else(|| fields(case, kind, answer)),
    }
}

fn phrase(case: &Case, kind: TaskKind, answer: &Answer) -> Option<String> {
    let shown = |key: &str| shown(case, kind, answer, key);
    let more = |before: &str, key: &str| shown(key).map(|text| format!("{before}{text}")).unwrap_or_default();
    Some(match kind {
        TaskKind::Permit => permit(answer),
        TaskKind::Cleaned => format!("cleaned {}{}", shown("at_ms")?, more(", ", "how")),
        TaskKind::ViewedAgain => format!("viewed again {}{}", shown("at_ms")?, more(", ", "found")),
        TaskKind::MeasuredDiameter => {
            let read = |key| answer.number(key).map(Length::from_um);
            format!("inside {}{}", words::inside_between(read("least_um")?, read("most_um")?), more(", ", "how"))
        }
        TaskKind::PackerTest => {
            format!("packer test {}, held for {}, drop {}", shown("gauge_pa")?, shown("held_ms")?, shown("drop_pa")?)
        }
        TaskKind::BareEnds => format!("bare ends {} front, {} rear", shown("front_um")?, shown("rear_um")?),
        TaskKind::PartsUsed => {
            format!("parts: {}{}{}", shown("how")?, more(", A ", "mass_a_mg"), more(", B ", "mass_b_mg"))
        }
        TaskKind::Mixed => format!("mixed {}", shown("mixed_ms")?),
        TaskKind::Seam => format!("seam at {}", shown("hour")?),
        TaskKind::AllBack => format!(
            "pulled by {}; sleeve: {}; membrane: {}; binding: {}",
            shown("rope")?,
            shown("sleeve")?,
            shown("membrane")?,
            shown("bands")?
        ),
        TaskKind::Surface => shown("surface")?,
        TaskKind::Infiltration => shown("seen")?,
        TaskKind::Waste => {
            format!(
                "{}: {}, to {}{}",
                shown("what")?,
                shown("mass_g")?,
                shown("where_to")?,
                more(", ticket ", "ticket")
            )
        }
        TaskKind::FlowRestored => format!("{} taken out", words::many(plugs(answer)?, "plug")),
        _ => return None,
    })
}

fn plugs(answer: &Answer) -> Option<usize> {
    usize::try_from(answer.number("plugs")?).ok()
}

fn permit(answer: &Answer) -> String {
    let number = answer.text("number").unwrap_or("without a number");
    let who = match (answer.text("entry"), answer.text("who")) {
        (Some("entry"), Some(who)) => format!("below: {who}"),
        (Some("entry"), None) => "somebody below, nobody says who".into(),
        _ => "nobody below".into(),
    };
    format!("permit {number}, {who}")
}

fn shown(case: &Case, kind: TaskKind, answer: &Answer, key: &str) -> Option<String> {
    let Answer::Done { values } = answer else { return None };
    let field = kind.fields().into_iter().find(|field| field.key == key)?;
    Some(value(case, &field, values.get(key)?)).filter(|text| !text.is_empty())
}

/// Returns the values with the names of their fields, in the order of the fields.
fn fields(case: &Case, kind: TaskKind, answer: &Answer) -> String {
    let named = kind.fields().into_iter().filter_map(|field| {
        let text = shown(case, kind, answer, field.key)?;
        let named = words::small(field.label.split(" (").next().unwrap_or(field.label));
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
    known.map_or_else(|| format!("{id} (not in the plan)"), |instrument| instrument.name.clone())
}
