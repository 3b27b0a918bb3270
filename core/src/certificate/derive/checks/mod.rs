//! The computed checks: formula, values, result, limit, margin, source. And the number for keeping away.

mod place;
mod pressure;
mod resin;
mod verification;
mod worked;

use super::{Case, hold, place as lies, words};
use crate::certificate::content::Check;
use crate::checks::end_thrust;
use crate::units::{Length, Span};
use crate::words::tell;

/// Returns the checks in the order of the work; empty without a plan and an attempt.
pub fn checks(case: &Case) -> Vec<Check> {
    let mut found = resin::rows(case);
    found.extend(place::rows(case));
    found.extend(pressure::rows(case));
    found.extend(verification::rows(case));
    found.extend(worked::rows(case));
    found
}

/// One row without limit or margin.
fn row(name: &str, formula: String, inputs: String, result: String) -> Check {
    let none = String::new;
    Check { name: name.into(), formula, inputs, result, limit: none(), margin: none(), fails: false }
}

/// Returns a row whose margin is `left`: what was left, or by how much it fails.
fn limited(row: Check, limit: String, left: Margin) -> Check {
    let (margin, fails) = match left {
        Margin::Left(text) => (text, false),
        Margin::Fails(text) => (tell!("cert-mod-fails_by", text), true),
        Margin::Unknown(why) => (why, false),
    };
    Check { limit, margin, fails, ..row }
}

/// What a result leaves of its limit.
enum Margin {
    Left(String),
    Fails(String),
    /// There is no result to compare.
    Unknown(String),
}

impl Margin {
    /// Returns the margin of a span: what is left is cut to seconds, what is missing rounded up.
    fn of_span(left: Span) -> Self {
        if left.as_ms() >= 0 {
            Self::Left(words::lasting(words::down_s(left)))
        } else {
            Self::Fails(words::lasting(words::up_s(Span::from_ms(-left.as_ms()))))
        }
    }

    /// Returns the margin of a length, to the last digit.
    fn of_length(left: Length) -> Self {
        let size = words::mm(Length::from_um(left.as_um().abs()));
        if left.as_um() >= 0 { Self::Left(size) } else { Self::Fails(size) }
    }
}

/// Returns the formula in words with its source behind it.
fn sourced(formula: &str, source: &str) -> String {
    format!("{}. {source}", words::bare(formula))
}

/// Returns the end thrust at the highest pressure, and what the number is not; `None` where nothing was inflated.
pub fn danger(case: &Case) -> Option<String> {
    let (plan, _) = case.work()?;
    let (_, _, highest) = hold::extremes(case.hold.as_ref()?)?;
    let inside = lies::inside(case).map_or(plan.choice.diameter_most_um, |(_, most)| most);
    let behind = plan.choice.behind_um;
    let thrust = end_thrust::end_thrust(highest, inside, behind).ok()?;
    let air = tell!(
        "cert-mod-kn",
        force = words::force_up(thrust.from_air_n),
        inside = words::inside_unit(inside),
        pressure = words::bar(highest)
    );
    let water = match behind.as_um() {
        0 => String::new(),
        _ => tell!("cert-mod-and_g_h_a_kn", force = words::force_up(thrust.from_water_n), head = words::metres(behind)),
    };
    Some(tell!("cert-mod-end_thrust_if_an_end", air, water))
}
