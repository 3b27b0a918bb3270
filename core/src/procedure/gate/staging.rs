//! What must hold before the packer goes into the pipe.

use chrono::{DateTime, NaiveDate};

use super::super::answer::Answer;
use super::super::plan::Plan;
use super::super::repair::{Answered, Attempt, Repair};
use super::super::rules::{Broken, Rule, n, t};
use super::super::stage::Stage;
use super::super::times;
use super::Around;
use super::open_tasks::{photos_there, tasks_closed};
use super::test_push::go;
use crate::facts::Moment;
use crate::shelf::method::TaskKind;
use crate::units::Length;

/// Returns what stands between staging and the test push.
pub fn staging(repair: &Repair, plan: &Plan, attempt: &Attempt, around: &Around) -> Vec<Broken> {
    let now = &around.facts.moment;
    let mut found = tasks_closed(plan, attempt, &[Stage::Staging]);
    found.extend(photos_there(repair, plan, attempt, &[Stage::Staging]));
    found.extend(attempt.answer(TaskKind::Suitability).and_then(suitable));
    found.extend(lots(plan, attempt, now));
    found.extend(air(plan, attempt, now));
    found.extend(diameter(plan, attempt));
    found.extend(packer_test(plan, attempt));
    found.extend(instruments(plan, attempt, now));
    found.extend(cleaning(plan, attempt));
    if attempt.test_push.carried_from.is_some() {
        found.extend(go(plan, attempt));
    }
    found
}

fn suitable(answered: &Answered) -> Option<Broken> {
    match &answered.answer {
        Answer::NotRight { because } => Some(Broken::with(Rule::NotSuitable, &[("because", t(because.clone()))])),
        Answer::Done { .. } | Answer::DoesNotApply { .. } => None,
    }
}

/// Returns the day of a moment where the device is.
pub fn day(moment: &Moment) -> Option<NaiveDate> {
    let local_ms = moment.at_ms + i64::from(moment.offset_min) * 60_000;
    DateTime::from_timestamp_millis(local_ms).map(|at| at.date_naive())
}

/// Returns what is wrong with the lots: out of date, or stored outside the sheet's range.
///
/// A lot is good through the whole of its last day.
pub fn lots(plan: &Plan, attempt: &Attempt, now: &Moment) -> Vec<Broken> {
    let Some(answer) = attempt.answer(TaskKind::Lots).map(|answered| &answered.answer) else { return vec![] };
    let expired = [("lot_a", "expires_a"), ("lot_b", "expires_b")].into_iter().filter_map(|(lot, expires)| {
        let lot = answer.text(lot)?;
        let date = answer.text(expires)?;
        let last = NaiveDate::parse_from_str(date, "%Y-%m-%d").ok()?;
        (day(now)? > last).then(|| Broken::with(Rule::ResinExpired, &[("lot", t(lot)), ("date", t(date))]).about(lot))
    });
    expired.chain(storage(plan, answer)).collect()
}

fn storage(plan: &Plan, answer: &Answer) -> Option<Broken> {
    let (coldest, warmest) = (answer.number("stored_least_mc")?, answer.number("stored_most_mc")?);
    let (least, most) =
        (plan.resin.storage_least_mc.value.as_millicelsius(), plan.resin.storage_most_mc.value.as_millicelsius());
    let values =
        [("stored_least_mc", n(coldest)), ("stored_most_mc", n(warmest)), ("least_mc", n(least)), ("most_mc", n(most))];
    (coldest < least || warmest > most).then(|| Broken::with(Rule::StorageOutside, &values))
}

/// Returns what is wrong with the air: outside the contract's limits, or not read lately while somebody is below.
pub fn air(plan: &Plan, attempt: &Attempt, now: &Moment) -> Vec<Broken> {
    let below = attempt.answer(TaskKind::Permit).and_then(|permit| permit.answer.text("entry")) == Some("entry");
    let Some(read) = attempt.answer(TaskKind::Air).filter(|_| below) else { return vec![] };
    let (age, most) = (times::between(&read.at.moment, now), plan.contract.air_interval_ms.value.as_ms());
    let old = (age > most).then(|| Broken::with(Rule::AirOld, &[("age_ms", n(age)), ("most_ms", n(most))]));
    air_alarm(plan, &read.answer).into_iter().chain(old).collect()
}

/// Returns the alarm that a reading of the air gives by the contract's limits.
pub fn air_alarm(plan: &Plan, answer: &Answer) -> Option<Broken> {
    let limits = &plan.contract.air_limits;
    let high = |key: &str, alarm: i64| answer.number(key).is_some_and(|read| read >= alarm);
    let oxygen = answer.number("oxygen_permille");
    let mut outside = vec![];
    if oxygen.is_some_and(|read| read < limits.oxygen_least_permille) {
        outside.push("oxygen too low");
    }
    if oxygen.is_some_and(|read| read > limits.oxygen_most_permille) {
        outside.push("oxygen too high");
    }
    for (key, alarm, words) in [
        ("flammable_pct", limits.flammable_alarm_pct, "flammable gas"),
        ("hydrogen_sulfide_ppm", limits.hydrogen_sulfide_alarm_ppm, "hydrogen sulfide"),
        ("carbon_monoxide_ppm", limits.carbon_monoxide_alarm_ppm, "carbon monoxide"),
    ] {
        if high(key, alarm) {
            outside.push(words);
        }
    }
    (!outside.is_empty()).then(|| Broken::with(Rule::AirAlarm, &[("what", t(outside.join(", ")))]))
}

fn diameter(plan: &Plan, attempt: &Attempt) -> Vec<Broken> {
    let Some(answer) = attempt.answer(TaskKind::MeasuredDiameter).map(|answered| &answered.answer) else {
        return vec![];
    };
    let (Some(least), Some(most)) = (answer.number("least_um"), answer.number("most_um")) else { return vec![] };
    let (least, most) = (Length::from_um(least), Length::from_um(most));
    let choice = &plan.choice;
    let differs = (least, most) != (choice.diameter_least_um, choice.diameter_most_um) && choice.diameter_measured;
    let mut found = fit(plan, least, most);
    if differs {
        let values = [
            ("least_um", n(least.as_um())),
            ("most_um", n(most.as_um())),
            ("plan_least_um", n(choice.diameter_least_um.as_um())),
            ("plan_most_um", n(choice.diameter_most_um.as_um())),
        ];
        found.push(Broken::with(Rule::DiameterDiffers, &values));
    }
    found
}

/// Returns what does not fit a pipe of these inside diameters: packer or patch.
pub fn fit(plan: &Plan, least: Length, most: Length) -> Vec<Broken> {
    let sizes = |low: &'static str, from: Length, high: &'static str, to: Length| {
        [("least_um", n(least.as_um())), ("most_um", n(most.as_um())), (low, n(from.as_um())), (high, n(to.as_um()))]
    };
    let (packer_least, packer_most) = (plan.packer.diameter_least_um.value, plan.packer.diameter_most_um.value);
    let (patch_least, patch_most) = (plan.patch.diameter_least_um, plan.patch.diameter_most_um);
    let mut found = vec![];
    if least < packer_least || most > packer_most {
        let values = sizes("packer_least_um", packer_least, "packer_most_um", packer_most);
        found.push(Broken::with(Rule::DiameterOutsidePacker, &values));
    }
    if least < patch_least || most > patch_most {
        let values = sizes("patch_least_um", patch_least, "patch_most_um", patch_most);
        found.push(Broken::with(Rule::DiameterOutsidePatch, &values));
    }
    found
}

/// Returns the departure for a cover that is too short.
pub fn cover_short(cover: Length, required: Length) -> Broken {
    Broken::with(Rule::CoverShort, &[("cover_um", n(cover.as_um())), ("required_um", n(required.as_um()))])
}

fn packer_test(plan: &Plan, attempt: &Attempt) -> Vec<Broken> {
    let Some(answer) = attempt.answer(TaskKind::PackerTest).map(|answered| &answered.answer) else { return vec![] };
    let read = (answer.number("gauge_pa"), answer.number("held_ms"), answer.number("drop_pa"));
    let (Some(gauge), Some(held), Some(drop)) = read else { return vec![] };
    let (asked, asked_ms) = (plan.packer.test_pressure_pa.value.as_pa(), plan.packer.test_ms.value.as_ms());
    let mut found = vec![];
    if gauge < asked || held < asked_ms {
        let values = [("gauge_pa", n(gauge)), ("held_ms", n(held)), ("test_pa", n(asked)), ("test_ms", n(asked_ms))];
        found.push(Broken::with(Rule::PackerTestShort, &values));
    }
    if drop > 0 {
        found.push(Broken::with(Rule::PackerLeaks, &[("drop_pa", n(drop))]));
    }
    found
}

/// Returns the instruments in use whose calibration has ended.
pub fn instruments(plan: &Plan, attempt: &Attempt, now: &Moment) -> Vec<Broken> {
    let Some(answer) = attempt.answer(TaskKind::Instruments).map(|answered| &answered.answer) else { return vec![] };
    ["gauge", "thermometer", "counter", "tape", "scale"]
        .into_iter()
        .filter_map(|field| answer.text(field))
        .filter_map(|id| plan.instruments.iter().find(|instrument| instrument.id == id))
        .filter_map(|instrument| {
            let last = NaiveDate::parse_from_str(&instrument.calibrated_to, "%Y-%m-%d").ok()?;
            let values = [("instrument", t(instrument.name.clone())), ("date", t(instrument.calibrated_to.clone()))];
            (day(now)? > last).then(|| Broken::with(Rule::InstrumentOverdue, &values).about(instrument.id.clone()))
        })
        .collect()
}

fn cleaning(plan: &Plan, attempt: &Attempt) -> Option<Broken> {
    let cleaned = attempt.answer(TaskKind::Cleaned)?.answer.number("at_ms")?;
    let viewed = attempt.answer(TaskKind::ViewedAgain)?.answer.number("at_ms")?;
    let (age, most) = (viewed - cleaned, plan.contract.cleaning_age_ms.value.as_ms());
    (age > most).then(|| Broken::with(Rule::CleaningOld, &[("age_ms", n(age)), ("most_ms", n(most))]))
}
