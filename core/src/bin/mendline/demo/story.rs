//! The day of the rehearsal, tap by tap.

use mendline_core::door::{Request, Unsaid};
use mendline_core::procedure::answer;
use mendline_core::procedure::happening::{Happening, ReadBy};
use mendline_core::procedure::plan::Temperatures;
use mendline_core::procedure::repair::CorrectionOf;
use mendline_core::procedure::rules::Rule;
use mendline_core::procedure::stage::PatchPlace;
use mendline_core::procedure::{Command, Outcome};
use mendline_core::shelf::method::TaskKind;
use mendline_core::units::{Length, Pressure, Temperature};
use serde_json::Value;

use super::answers::{Site, values};
use super::crew::Crew;
use super::pick::{CONTRACT, Picked};
use super::{pictures, text};

/// Readings of the hold: time, place in the pressure window in thousandths, pipe and patch in tenths of a degree.
///
/// Nobody read between 09:47 and 10:00; at 10:17 the pressure was low.
const READINGS: [(&str, i64, i64, i64, ReadBy); 20] = [
    ("09:32:27", 700, 129, 222, ReadBy::Hand),
    ("09:36:23", 700, 129, 230, ReadBy::Sensor),
    ("09:39:45", 700, 129, 246, ReadBy::Hand),
    ("09:43:36", 700, 129, 263, ReadBy::Hand),
    ("09:47:04", 670, 129, 277, ReadBy::Hand),
    ("10:00:04", 670, 127, 320, ReadBy::Sensor),
    ("10:03:46", 600, 126, 323, ReadBy::Hand),
    ("10:06:42", 630, 126, 316, ReadBy::Hand),
    ("10:10:12", 630, 126, 306, ReadBy::Hand),
    ("10:14:43", 630, 127, 288, ReadBy::Sensor),
    ("10:17:37", LOW, 128, 272, ReadBy::Hand),
    ("10:21:09", 630, 128, 249, ReadBy::Hand),
    ("10:25:35", 630, 129, 228, ReadBy::Hand),
    ("10:28:33", 600, 129, 211, ReadBy::Sensor),
    ("10:32:32", 600, 129, 194, ReadBy::Hand),
    ("10:35:41", 530, 129, 186, ReadBy::Hand),
    ("10:39:26", 530, 129, 173, ReadBy::Hand),
    ("10:42:26", 530, 129, 168, ReadBy::Sensor),
    ("10:46:33", 570, 129, 161, ReadBy::Hand),
    ("10:49:57", 500, 129, 156, ReadBy::Hand),
];

/// How far apart the readings are that a longer hold adds, in seconds, and how many there are at most.
const EVERY_S: i64 = 200;
const MOST_READINGS: usize = 120;

/// Stands for a reading below the window.
const LOW: i64 = i64::MIN;

/// Tells the whole job. Returns the repair's id.
pub fn tell(crew: &mut Crew, picked: &Picked) -> Result<String, String> {
    let (repair, plan) = open(crew, picked, true)?;
    let site = site(crew, &plan);
    println!("  attempt 1: the working time runs out on the table");
    first_attempt(crew, &repair, &site)?;
    println!("  attempt 2: joined, placed, held");
    second_attempt(crew, &repair, &site)?;
    hold(crew, &repair, &plan)?;
    println!("  released, verified, signed");
    after_the_hold(crew, &repair, &plan, &site)?;
    Ok(repair)
}

/// Leaves an open repair behind, so that the first screen has something to begin with.
pub fn leave_work_for_today(crew: &mut Crew, picked: &Picked) -> Result<(), String> {
    crew.at("15:10:00").by("varga");
    open(crew, picked, false)?;
    Ok(())
}

fn open(crew: &mut Crew, picked: &Picked, rehearsal: bool) -> Result<(String, Value), String> {
    if rehearsal {
        crew.at("06:42:00");
    }
    let opened = crew.ask(Request::OpenFromInspection {
        file: picked.file.clone(),
        index: picked.index,
        observations: vec![picked.observation],
        same_hour: Some(mendline_core::inspection::SameHour::AllRound),
        unsaid: Unsaid {
            asset: "practice line".into(),
            material: "material that the inspection does not name".into(),
            street: String::new(),
        },
        contract: CONTRACT.into(),
        number: String::new(),
        rehearsal,
        video_before: "V-031-A (2026-09-30)".into(),
    })?;
    let repair = text(&opened, "/repair/id").to_owned();
    let planned = crew.ask(Request::AcceptPlan { repair: repair.clone(), choice: Box::new(picked.choice.clone()) })?;
    Ok((repair, planned.pointer("/repair/plan").cloned().unwrap_or_default()))
}

fn site(crew: &Crew, plan: &Value) -> Site {
    let number = |pointer: &str| plan.pointer(pointer).and_then(Value::as_i64).unwrap_or_default();
    let (from, to) = (number("/computed/patches/0/from_um"), number("/computed/patches/0/to_um"));
    Site {
        least_um: number("/choice/diameter_least_um"),
        most_um: number("/choice/diameter_most_um"),
        cleaned_ms: crew.ms("06:49:00") - 86_400_000,
        viewed_ms: crew.ms("08:49:00"),
        flow_until_ms: crew.ms("15:00:00"),
        test_pa: number("/packer/test_pressure_pa/value"),
        test_ms: number("/packer/test_ms/value"),
        bare_um: (number("/packer/body_um") - (to - from)) / 2,
        part_b_mg: number("/computed/batch_mg") / 3 / 1000 * 1000,
        containers: text(plan, "/resin/parts/kind") == "containers",
        centre_um: (from + to) / 2,
        coupons: plan.pointer("/computed/covered").and_then(Value::as_array).map_or(0, |all| all.len() as i64),
    }
}

/// Answers every open task of the stage that runs, and takes the photos that are asked for.
fn answer_all(crew: &mut Crew, repair: &str, stage: &str, site: &Site) -> Result<(), String> {
    let view = crew.ask(Request::Repair { repair: repair.to_owned() })?;
    let open = |one: &&Value| text(one, "/stage") == stage && one["answer"].is_null() && one["mandatory"] == true;
    for task in view["tasks"].as_array().into_iter().flatten().filter(open) {
        let kind: TaskKind = serde_json::from_value(task["kind"].clone()).map_err(|problem| problem.to_string())?;
        crew.done(repair, text(task, "/key"), values(kind, site))?;
    }
    let missing = |one: &&Value| text(one, "/stage") == stage && one["taken"] == false;
    for (place, photo) in view["photos"].as_array().into_iter().flatten().filter(missing).enumerate() {
        let key = text(photo, "/key");
        let jpeg = pictures::picture(key, place as u32).map_err(|problem| problem.to_string())?;
        crew.photo(repair, key, &jpeg)?;
    }
    Ok(())
}

fn go_on(crew: &mut Crew, repair: &str) -> Result<Value, String> {
    crew.tell(repair, Command::GoOn)
}

fn temperatures() -> Temperatures {
    let celsius = |tenths: i64| Temperature::from_millicelsius(tenths * 100);
    Temperatures { resin_mc: celsius(192), air_mc: celsius(131), pipe_mc: celsius(128), water_mc: Some(celsius(134)) }
}

fn first_attempt(crew: &mut Crew, repair: &str, site: &Site) -> Result<(), String> {
    crew.at("06:58:00").by("ekdal");
    go_on(crew, repair)?;
    crew.at("07:04:00");
    answer_all(crew, repair, "staging", site)?;
    crew.at("07:29:00");
    crew.waive(repair, Rule::CleaningOld, "", "Road closure moved; no new deposits.")?;
    go_on(crew, repair)?;
    crew.at("07:31:00").report(repair, Happening::PushBegun)?;
    crew.at("07:38:00").report(repair, Happening::MarkReached { counter_um: Some(Length::from_um(site.centre_um)) })?;
    crew.at("07:44:00").report(repair, Happening::PackerBack { sound: true })?;
    answer_all(crew, repair, "test_push", site)?;
    crew.at("07:46:00");
    go_on(crew, repair)?;
    crew.at("07:49:00");
    answer_all(crew, repair, "sleeve_change", site)?;
    go_on(crew, repair)?;
    crew.at("08:04:00").tell(repair, Command::SecondGo { temperatures: temperatures() })?;
    crew.at("08:05:42").report(repair, Happening::Joined)?;
    crew.at("08:41:00").report(repair, Happening::PatchIs { place: PatchPlace::OnTable })?;
    crew.tell(
        repair,
        Command::EndAttempt {
            outcome: Outcome::Discarded,
            reasons: vec!["Binding wire tore twice while the patch was bound on the table.".into()],
            in_pipe: "Nothing of it is in the pipe.".into(),
        },
    )?;
    Ok(())
}

fn second_attempt(crew: &mut Crew, repair: &str, site: &Site) -> Result<(), String> {
    crew.at("08:42:00").tell(repair, Command::NewAttempt { pipe_unharmed: true, packer_unharmed: true })?;
    crew.at("08:50:00");
    answer_all(crew, repair, "staging", site)?;
    crew.at("08:52:00");
    crew.waive(repair, Rule::CleaningOld, "", "Road closure moved; no new deposits.")?;
    crew.at("08:55:00");
    go_on(crew, repair)?;
    crew.at("08:58:00");
    answer_all(crew, repair, "sleeve_change", site)?;
    crew.at("09:01:30");
    go_on(crew, repair)?;
    crew.at("09:03:30").tell(repair, Command::SecondGo { temperatures: temperatures() })?;
    crew.at("09:04:19").report(repair, Happening::Joined)?;
    crew.at("09:13:00");
    answer_all(crew, repair, "wet_out", site)?;
    crew.at("09:17:09").report(repair, Happening::InsertionBegun)?;
    let centre = Length::from_um(site.centre_um);
    let at_mark = Happening::AtTheMark { counter_um: Some(centre), beyond_um: Some(Length::from_um(-3_000)) };
    crew.at("09:22:59").report(repair, at_mark)?;
    crew.at("09:25:19").report(repair, Happening::AirJoined)?;
    Ok(())
}

fn hold(crew: &mut Crew, repair: &str, plan: &Value) -> Result<(), String> {
    let number = |pointer: &str| plan.pointer(pointer).and_then(Value::as_i64).unwrap_or_default();
    let (lower, upper) = (number("/computed/window/lower_pa"), number("/computed/window/upper_pa"));
    let net = number("/computed/window/net_least_pa") + number("/computed/window/water_pa");
    // Between the least net pressure and the window, or above it where there is no such place.
    let outside = if lower - net > 2_000 { (lower + net) / 2 } else { upper + 2_000 };
    let gauge = |permille: i64| {
        let pascal = if permille == LOW { outside } else { lower + (upper - lower) * permille / 1000 };
        Pressure::from_pa(pascal / 1000 * 1000)
    };
    crew.at("09:29:09").report(repair, Happening::TargetReached { gauge_pa: gauge(730) })?;
    let reading = |(_, permille, pipe, patch, by): (&str, i64, i64, i64, ReadBy)| Happening::Reading {
        gauge_pa: gauge(permille),
        pipe_mc: Some(Temperature::from_millicelsius(pipe * 100)),
        water_mc: None,
        patch_mc: Some(Temperature::from_millicelsius(patch * 100)),
        upstream_um: Some(Length::from_um(350_000)),
        by,
        gauge: "G-04".into(),
        why: if permille == LOW { "hose coupling tightened".into() } else { String::new() },
        outside_pa: None,
    };
    let mut short = true;
    for read in READINGS {
        short = is_short(&crew.at(read.0).report(repair, reading(read))?);
        if read.1 == LOW {
            correct_the_mass(crew, repair, plan)?;
        }
    }
    // A larger patch takes a slower resin, which is held longer than the day is written for.
    let last = READINGS[READINGS.len() - 1];
    for _ in 0..MOST_READINGS {
        if !short {
            return Ok(());
        }
        crew.wait(EVERY_S);
        short = is_short(&crew.at(last.0).report(repair, reading(last))?);
    }
    Err("the hold of this resin is longer than the rehearsal can show".into())
}

fn is_short(view: &Value) -> bool {
    let minutes = |key: &str| view.pointer(key).and_then(Value::as_i64);
    minutes("/hold/counted_ms") < minutes("/hold/required_ms")
}

/// The mass of part B was read with the lid on.
fn correct_the_mass(crew: &mut Crew, repair: &str, plan: &Value) -> Result<(), String> {
    if text(plan, "/resin/parts/kind") == "containers" {
        return Ok(());
    }
    let batch = plan.pointer("/computed/batch_mg").and_then(Value::as_i64).unwrap_or_default();
    let of = CorrectionOf::Task { task: "parts_used".into(), field: "mass_b_mg".into() };
    let value = answer::Value::Number(batch / 3 / 1000 * 1000);
    crew.tell(
        repair,
        Command::Correct { of, value, reason: "Read with the lid on; the photo shows the scale.".into() },
    )?;
    Ok(())
}

fn after_the_hold(crew: &mut Crew, repair: &str, plan: &Value, site: &Site) -> Result<(), String> {
    for stage in ["placement", "inflation", "hold"] {
        answer_all(crew, repair, stage, site)?;
    }
    crew.at("10:50:20").report(repair, Happening::SampleFelt { hard: true })?;
    crew.tell(repair, Command::Release)?;
    crew.at("10:58:00");
    answer_all(crew, repair, "deflation", site)?;
    crew.at("10:59:20");
    let view = go_on(crew, repair)?;
    let cured = view.pointer("/cure/until_ms").and_then(Value::as_i64).unwrap_or_default();
    crew.not_before("13:18:09", cured);
    crew.at("13:18:09");
    open_laterals(crew, repair, plan)?;
    crew.at("13:31:00");
    answer_all(crew, repair, "verification", site)?;
    crew.at("14:31:00");
    for index in covered(plan) {
        let subject = format!("lateral {index}");
        crew.waive(repair, Rule::LateralOpening, &subject, "The rest is old clay lip; the flow is not held back.")?;
    }
    crew.at("14:44:00").by("varga").tell(repair, Command::Judge { accept: true, reasons: vec![] })?;
    let did = "I did this repair, recorded it as it happened, and read the values marked H.";
    crew.at("14:49:04").by("ekdal").tell(repair, signature("Tomas Ekdal", did, 1))?;
    let reviewed = "I have reviewed this record, I answer for the departures named, and I issue this certificate for the contractor.";
    crew.at("15:02:39").by("varga").tell(repair, signature("Ines Varga", reviewed, 2))?;
    crew.ask(Request::Issue { repair: repair.to_owned() })?;
    crew.ask(Request::Seal { repair: repair.to_owned() })?;
    Ok(())
}

fn covered(plan: &Value) -> Vec<usize> {
    let list = plan.pointer("/computed/covered").and_then(Value::as_array);
    list.into_iter().flatten().filter_map(|one| usize::try_from(one.as_u64()?).ok()).collect()
}

fn open_laterals(crew: &mut Crew, repair: &str, plan: &Value) -> Result<(), String> {
    for lateral in covered(plan) {
        crew.report(repair, Happening::LateralOpened { lateral, open_pct: 94, coupon: true })?;
    }
    Ok(())
}

/// A written line: loops that run to the right and grow flatter.
fn signature(name: &str, statement: &str, seed: i32) -> Command {
    let stroke = (0..120)
        .map(|step| {
            let turn = f64::from(step) * (0.42 + 0.05 * f64::from(seed));
            let flatter = 1.0 - f64::from(step) / 160.0;
            let across = 80.0 + f64::from(step) * 6.2 + 38.0 * (turn * 0.9).cos();
            let down = 520.0 - flatter * (210.0 * turn.sin() + 90.0 * (turn * 0.37 + f64::from(seed)).sin());
            (across as i32, down as i32)
        })
        .collect();
    Command::Sign { name: name.to_owned(), statement: statement.to_owned(), strokes: vec![stroke] }
}
