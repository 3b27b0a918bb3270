//! Whether the line above stores the inflow until the hold is over: asked before the parts are joined.

use super::plan::Budget;
use super::repair::{Attempt, Repair, WorkedOut};
use super::rules::{Broken, Rule, n};
use super::times;
use crate::checks::flow_control::{self, PlannedStop, Storing, Upstream};
use crate::checks::named::Worked;
use crate::facts::Moment;
use crate::shelf::method::TaskKind;
use crate::units::{Length, Span};

/// The check that says how much the line above stores.
pub const CHECK: &str = "time-to-surcharge";

/// Returns how long the line above stores the measured inflow, against what is planned; `None` where nobody worked it out.
///
/// The water counts from when the flow was answered for in this attempt, or else from now. Needed are what has passed,
/// wet-out, loaded push, connect and inflate, the hold and the margin. Source: see [`flow_control::storing`].
pub fn storing(repair: &Repair, attempt: &Attempt, budget: &Budget, hold: Span, now: &Moment) -> Option<Storing> {
    let WorkedOut { worked, .. } = repair.last_worked(CHECK)?;
    let work = [budget.wet_out_ms, budget.loaded_push_ms, budget.connect_ms].map(Span::as_ms).iter().sum::<i64>();
    let planned = PlannedStop {
        until_target_ms: Span::from_ms(passed(attempt, now).saturating_add(work)),
        hold_ms: hold,
        margin_ms: budget.margin_ms,
    };
    flow_control::storing(&upstream(worked)?, &planned).ok()
}

/// Returns since when the flow is kept away, if that was answered and applies.
fn passed(attempt: &Attempt, now: &Moment) -> i64 {
    let answered = attempt.answer(TaskKind::Flow).filter(|answered| answered.answer.done());
    answered.map_or(0, |answered| times::between(&answered.at.moment, now).max(0))
}

/// Returns the rule that stands against joining where the line would be full before the hold is over.
pub fn short(storing: &Storing) -> Option<Broken> {
    let lasts = storing.lasts_ms.filter(|_| !storing.is_enough)?;
    let values = [("lasts_ms", n(lasts.as_ms())), ("needed_ms", n(storing.needed_ms.as_ms()))];
    Some(Broken::with(Rule::StorageShort, &values))
}

/// Rounded against oneself: the pipe smaller and steeper, the inflow greater.
fn upstream(worked: &Worked) -> Option<Upstream> {
    let um = |name: &str, per: f64| Some(Length::from_um((worked.given(name)? * per).floor() as i64));
    let up =
        |name: &str, per: f64| Some((worked.given(name)? * per - 1e-6).ceil().clamp(0.0, f64::from(u32::MAX)) as u32);
    Some(Upstream {
        inside_diameter_um: um("inside_diameter_mm", 1e3)?,
        length_um: um("length_m", 1e6)?,
        slope_ppm: up("slope", 1e6)?,
        inflow_ml_s: up("inflow_l_s", 1e3)?,
        allowed_depth_um: um("allowed_depth_m", 1e6)?,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::checks::named;
    use crate::procedure::command::Command;
    use crate::procedure::stage::Stage;
    use crate::procedure::tests::kit::{World, temperatures};
    use serde_json::json;

    fn work_out(world: &mut World, inflow_l_s: f64) {
        let fields = json!({
            "inside_diameter_mm": 200, "length_m": 40, "slope": 0.01, "inflow_l_s": inflow_l_s, "allowed_depth_m": 0.3,
        });
        let worked = Box::new(named::worked(CHECK, &fields).unwrap());
        world.must(Command::WorkOut { worked });
    }

    fn ask() -> Command {
        Command::SecondGo { temperatures: temperatures(19.2, 13.1, 12.8) }
    }

    // 497 l by the closed form: 0.5 l/s fill it in 16 min, 0.05 l/s in 165 min; wet-out, push and hold take about 100 min.
    #[test]
    fn no_go_where_the_line_is_full_before_the_hold_is_over() {
        let mut world = World::in_stage(Stage::WetOut);
        work_out(&mut world, 0.5);
        world.refuses(ask(), Rule::StorageShort);
    }

    #[test]
    fn what_lasts_long_enough_is_a_go_and_so_is_what_nobody_plugs() {
        let mut world = World::in_stage(Stage::WetOut);
        work_out(&mut world, 0.05);
        world.must(ask());
        World::in_stage(Stage::WetOut).must(ask());
    }

    #[test]
    fn the_check_that_was_worked_out_last_counts() {
        let mut world = World::in_stage(Stage::WetOut);
        work_out(&mut world, 0.5);
        work_out(&mut world, 0.05);
        world.must(ask());
    }
}
