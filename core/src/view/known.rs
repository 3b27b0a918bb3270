//! What a repair knows already of the fields of each check, so that nobody types it again.

use serde_json::{Map, Value, json};

use super::leak;
use crate::checks::packer_fit::MeasuredDiameter;
use crate::procedure::line::{Coordinates, Node};
use crate::procedure::plan::{FromNode, Plan};
use crate::procedure::repair::{Attempt, Repair};
use crate::procedure::{spot, times};
use crate::shelf::method::TaskKind;
use crate::shelf::sheets::TimeRows;
use crate::units::{Length, Pressure, Temperature};

/// Returns the known fields of a check by their names, in the units of the list; empty for what nobody has entered.
pub fn known(repair: &Repair, check: &str) -> Map<String, Value> {
    let found = match check {
        "ovality-factor" => json!({ "ovality_pct": ovality(repair) }),
        "wall-thickness" => json!({
            "inside_diameter_mm": inside_mm(repair), "ovality_pct": ovality(repair),
            "groundwater_above_invert_m": plan(repair).map(|plan| plan.choice.head_um.as_m()),
        }),
        "air-test-f1417" => {
            json!({ "inside_diameter_mm": inside_mm(repair), "length_m": repair.line.length_um.as_m() })
        }
        "air-test-en1610" => json!({ "dn_mm": repair.line.height_um.as_mm() }),
        "water-test-en1610" => {
            json!({ "dn_mm": repair.line.height_um.as_mm(), "length_m": repair.line.length_um.as_m() })
        }
        "resin-wall" => json!({ "inside_diameter_mm": inside_mm(repair), "length_m": patch_m(repair) }),
        "resin-laminate" => json!({
            "width_m": plan(repair).map(|plan| plan.computed.wrap_um.as_m()), "length_m": patch_m(repair),
        }),
        "working-time" => json!({
            "sheet": plan(repair).map(sheet), "temperature_c": plan(repair).map(|plan| warmest(repair, plan).as_celsius()),
        }),
        "equivalent-age" => json!({ "segments": segments(repair) }),
        "packer-pressure" => json!({
            "gauge_bar": repair.last_attempt().and_then(gauge_bar), "temperature_before_c": first_pipe(repair),
        }),
        "net-pressure" => json!({
            "gauge_bar": target_bar(repair), "groundwater_head_m": plan(repair).map(|plan| plan.choice.head_um.as_m()),
        }),
        "end-thrust" => json!({
            "gauge_bar": plan(repair).map(|plan| plan.computed.window.upper_pa.as_bar()),
            "inside_diameter_mm": inside_mm(repair),
        }),
        "geodesic" => json!({ "from": place(&repair.line.upstream), "to": place(&repair.line.downstream) }),
        "station-position" => json!({
            "from": place(&repair.line.upstream), "to": place(&repair.line.downstream),
            "station_m": spot::centre(repair).as_m(),
        }),
        "atmosphere" => air(repair),
        "partial-flow" => json!({ "inside_diameter_mm": repair.line.height_um.as_mm() }),
        "time-to-surcharge" => upstream(repair),
        "pressure-decay" => decay(repair),
        _ => Value::Null,
    };
    let Value::Object(object) = found else { return Map::new() };
    object.into_iter().filter(|(_, value)| !value.is_null()).collect()
}

fn plan(repair: &Repair) -> Option<&Plan> {
    repair.plan.as_ref()
}

/// Returns least and most inside diameter, as measured in the attempt or else as planned.
fn diameters(repair: &Repair) -> Option<(Length, Length)> {
    let answered = repair.last_attempt().and_then(|attempt| attempt.answer(TaskKind::MeasuredDiameter));
    let read = |key| answered.and_then(|answered| answered.answer.number(key)).map(Length::from_um);
    let planned = || plan(repair).map(|plan| (plan.choice.diameter_least_um, plan.choice.diameter_most_um));
    read("least_um").zip(read("most_um")).or_else(planned)
}

fn inside_mm(repair: &Repair) -> f64 {
    diameters(repair).map_or(repair.line.height_um, |(_, most)| most).as_mm()
}

fn ovality(repair: &Repair) -> Option<f64> {
    let (least, most) = diameters(repair)?;
    Some(MeasuredDiameter::new(least, most).ok()?.ovality_pct())
}

fn patch_m(repair: &Repair) -> Option<f64> {
    let patch = plan(repair)?.computed.patches.first()?;
    Some(Length::from_um(patch.to_um.as_um() - patch.from_um.as_um()).as_m())
}

fn sheet(plan: &Plan) -> Vec<[f64; 2]> {
    match &plan.resin.working_time.rows {
        TimeRows::Points { points } => points.iter().map(|row| [row.at_mc.as_celsius(), row.ms.as_min()]).collect(),
        TimeRows::Range { from_mc, to_mc, ms } => {
            vec![[from_mc.as_celsius(), ms.as_min()], [to_mc.as_celsius(), ms.as_min()]]
        }
    }
}

fn warmest(repair: &Repair, plan: &Plan) -> Temperature {
    let read =
        repair.last_attempt().and_then(Attempt::last_temperatures).map_or(plan.choice.temperatures, |(_, read)| *read);
    read.resin_mc.max(read.air_mc).max(read.pipe_mc)
}

/// Returns the stretches between readings, in minutes at the colder of pipe and water of the later one.
fn segments(repair: &Repair) -> Option<Vec<[f64; 2]>> {
    let attempt = repair.last_attempt()?;
    let target = attempt.target.as_ref()?;
    let mut from = &target.at.moment;
    let mut found = vec![];
    for reading in &attempt.readings {
        let Some(cold) = reading.pipe_mc.into_iter().chain(reading.water_mc).min() else { continue };
        found.push([minutes(times::between(from, &reading.at.moment)), cold.as_celsius()]);
        from = &reading.at.moment;
    }
    (!found.is_empty()).then_some(found)
}

fn minutes(ms: i64) -> f64 {
    ms.max(0) as f64 / 60e3
}

fn gauge_bar(attempt: &Attempt) -> Option<f64> {
    let last = attempt.readings.last().map(|reading| reading.gauge_pa);
    Some(last.or(attempt.target.as_ref().map(|target| target.gauge_pa))?.as_bar())
}

fn target_bar(repair: &Repair) -> Option<f64> {
    let planned = plan(repair).map(|plan| plan.computed.window.target_pa.as_bar());
    repair.last_attempt().and_then(gauge_bar).or(planned)
}

fn first_pipe(repair: &Repair) -> Option<f64> {
    repair
        .last_attempt()?
        .readings
        .iter()
        .find_map(|reading| reading.patch_mc.or(reading.pipe_mc))
        .map(Temperature::as_celsius)
}

fn place(node: &Node) -> Option<Value> {
    let Coordinates { lat_e7, lon_e7 } = node.place?;
    Some(json!({ "lat": lat_e7 as f64 / 1e7, "lon": lon_e7 as f64 / 1e7 }))
}

fn air(repair: &Repair) -> Value {
    let limits = &repair.contract.air_limits;
    let read = |key| repair.last_attempt().and_then(|attempt| attempt.answer(TaskKind::Air)?.answer.number(key));
    json!({
        "oxygen_pct": read("oxygen_permille").map(|permille| permille as f64 / 10.0),
        "flammable_pct_lfl": read("flammable_pct"),
        "hydrogen_sulfide_ppm": read("hydrogen_sulfide_ppm"),
        "carbon_monoxide_ppm": read("carbon_monoxide_ppm"),
        "limits": {
            "oxygen_min_pct": limits.oxygen_least_permille as f64 / 10.0,
            "oxygen_max_pct": limits.oxygen_most_permille as f64 / 10.0,
            "flammable_pct_lfl": limits.flammable_alarm_pct,
            "hydrogen_sulfide_ppm": limits.hydrogen_sulfide_alarm_ppm,
            "carbon_monoxide_ppm": limits.carbon_monoxide_alarm_ppm,
            "source": limits.source,
        },
    })
}

/// The line above the plug is this one where the packer goes in from below; of another line nothing is known.
fn upstream(repair: &Repair) -> Value {
    let from_below = plan(repair).is_some_and(|plan| plan.choice.from_node == FromNode::Downstream);
    json!({
        "inside_diameter_mm": repair.line.height_um.as_mm(),
        "length_m": from_below.then(|| spot::centre(repair).as_m()),
    })
}

fn decay(repair: &Repair) -> Value {
    let limit = plan(repair).map(|plan| plan.computed.window.lower_pa.as_bar());
    let before = repair.last_worked("pressure-decay").and_then(|one| one.worked.given("atmospheric_bar"));
    let outside = repair.last_attempt().and_then(leak::outside).map(Pressure::as_bar);
    json!({ "readings": repair.last_attempt().and_then(closed_packer), "lower_limit_bar": limit, "atmospheric_bar": outside.or(before) })
}

/// Returns the readings since air was last added, minutes from the first of them.
fn closed_packer(attempt: &Attempt) -> Option<Vec<[f64; 3]>> {
    let read = leak::closed_packer(attempt, &attempt.joined.as_ref()?.moment, leak::outside(attempt));
    let first = read.first()?.minutes;
    Some(read.iter().map(|one| [one.minutes - first, one.gauge_bar, one.celsius]).collect())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::checks::named;
    use crate::procedure::stage::Stage;
    use crate::procedure::tests::kit::World;

    #[test]
    fn what_is_known_are_fields_of_the_check() {
        let world = World::in_stage(Stage::Hold);
        for check in named::all() {
            for name in known(world.repair(), check.name).keys() {
                assert!(check.fields.iter().any(|field| field.name == name), "{}: {name}", check.name);
            }
        }
    }

    #[test]
    fn the_thrust_and_the_working_time_need_no_typing_once_there_is_a_plan() {
        let world = World::planned();
        for name in ["end-thrust", "net-pressure", "working-time"] {
            let fields = Value::Object(known(world.repair(), name));
            assert!(named::run(name, &fields).is_ok(), "{name}: {fields}");
        }
        let minutes = named::run("working-time", &Value::Object(known(world.repair(), "working-time"))).unwrap();
        // The worked example: 31 min 58 s at 19.2 °C, cut to the second.
        assert!((minutes["minutes"].as_f64().unwrap() * 60.0).floor() == 1_918.0);
    }

    #[test]
    fn before_the_plan_nothing_is_guessed() {
        let world = World::opened();
        assert!(known(world.repair(), "pressure-decay").is_empty());
        assert_eq!(known(world.repair(), "end-thrust").get("gauge_bar"), None);
    }
}
