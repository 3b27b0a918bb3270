//! The resin's times for one repair: working time, budget, deadline, hold and full cure, from the plan's documents.

use serde::{Deserialize, Serialize};

use super::plan::{Budget, Plan, Temperatures, Warmest};
use super::repair::{Attempt, Repair, Stamp};
use super::rules::{Broken, Rule, n, t};
use crate::checks::budget::{self, Shares};
use crate::checks::required_hold;
use crate::checks::sheet_rows::Row;
use crate::checks::working_time::{self, Place, WorkingTimeSheet};
use crate::checks::{Refused, working_time::Temperatures as Three};
use crate::facts::Moment;
use crate::shelf::sheets::{CountsFrom, TimeRows, TimeTable};
use crate::shelf::{Contract, ResinSheet};
use crate::units::{Mass, Span, Temperature};
use crate::words;

/// Returns how long passed between two moments, in milliseconds.
///
/// Within one start of the device the boot clock tells. Across a restart the wall clock does, but never less than the
/// device has been running since: the longer of both, as suits a working time.
pub fn between(from: &Moment, to: &Moment) -> i64 {
    if from.boot_id == to.boot_id { to.boot_ms - from.boot_ms } else { (to.at_ms - from.at_ms).max(to.boot_ms) }
}

/// Returns whether the device was started anew between two moments.
pub fn restarted(from: &Moment, to: &Moment) -> bool {
    from.boot_id != to.boot_id
}

/// Returns the rows of a sheet as the checks take them.
pub fn rows(table: &TimeTable) -> Vec<Row> {
    match &table.rows {
        TimeRows::Points { points } => {
            points.iter().map(|point| Row::Point { at_millicelsius: point.at_mc, lasts_ms: point.ms }).collect()
        }
        TimeRows::Range { from_mc, to_mc, ms } => {
            vec![Row::Range {
                from_millicelsius: *from_mc,
                to_millicelsius: *to_mc,
                lasts_ms: *ms,
                source: table.source.clone(),
            }]
        }
    }
}

/// What the shares of the working time are taken from.
#[derive(Clone, Copy, Debug)]
pub struct BudgetOf<'a> {
    pub contract: &'a Contract,
    pub resin: &'a ResinSheet,
    pub batch: Mass,
    pub temperatures: &'a Temperatures,
    /// Measured in the test push; the contract's estimate before.
    pub push: Option<Span>,
}

/// Returns the time budget.
///
/// Errors: the rule that the temperatures or the batch break; a budget that is too short is an answer, not an error.
pub fn budget(of: &BudgetOf) -> Result<Budget, Broken> {
    let sheet = WorkingTimeSheet {
        rows: rows(&of.resin.working_time),
        least_resin_millicelsius: Some(of.resin.temperature_least_mc.value),
        most_resin_millicelsius: Some(of.resin.temperature_most_mc.value),
        most_batch_mg: Some(of.resin.batch_most_mg.value),
    };
    let three = Three {
        resin_millicelsius: of.temperatures.resin_mc,
        air_millicelsius: of.temperatures.air_mc,
        pipe_millicelsius: of.temperatures.pipe_mc,
    };
    let working = working_time::working_time_of_batch(&sheet, &three, of.batch).map_err(broken)?;
    let push = of.push.unwrap_or(of.contract.push_ms.value);
    let shares = Shares {
        wet_out_ms: of.contract.wet_out_ms.value,
        push_ms: push,
        loading_factor_pct: u32::try_from(of.contract.loading_factor_pct.value).unwrap_or(u32::MAX),
        connect_and_inflate_ms: of.contract.connect_ms.value,
        margin_ms: of.contract.margin_ms.value,
    };
    let parts = budget::budget(working.lasts_ms, &shares).map_err(broken)?;
    Ok(Budget {
        working_ms: parts.working_time_ms,
        warmest_mc: working.warmest_millicelsius,
        warmest: match working.warmest {
            Place::Resin => Warmest::Resin,
            Place::Air => Warmest::Air,
            Place::Pipe => Warmest::Pipe,
        },
        wet_out_ms: parts.wet_out_ms,
        push_ms: push,
        loaded_push_ms: parts.loaded_push_ms,
        connect_ms: parts.connect_and_inflate_ms,
        margin_ms: parts.margin_ms,
        spare_ms: parts.spare_ms,
        enough_at_mc: working_time::temperature_giving(&sheet.rows, parts.needed()),
    })
}

/// Returns the rule that a budget breaks, if it is too short.
pub fn too_short(budget: &Budget) -> Option<Broken> {
    let spare = budget.spare_ms.as_ms();
    (spare < 0).then(|| {
        let enough = budget.enough_at_mc.map_or(t("none"), |at| t(words::celsius_down(at)));
        Broken::with(Rule::NoTime, &[("short_ms", n(-spare)), ("enough_mc", enough)])
    })
}

/// Returns the rule that a refused check stands for.
pub fn broken(refused: Refused) -> Broken {
    let outside = |what: &str, read: Temperature, limit: Temperature| {
        Broken::with(
            Rule::OutsideSheet,
            &[
                ("what", t(what)),
                ("temperature_mc", n(read.as_millicelsius())),
                ("limit_mc", n(limit.as_millicelsius())),
            ],
        )
    };
    match refused {
        Refused::WarmerThanSheet { read_millicelsius, last_millicelsius } => {
            outside("The warmest of resin, air and pipe", read_millicelsius, last_millicelsius)
        }
        Refused::ColderThanSheet { read_millicelsius, first_millicelsius } => {
            outside("The coldest of pipe and water", read_millicelsius, first_millicelsius)
        }
        Refused::ResinTooCold { read_millicelsius, least_millicelsius } => {
            outside("The resin", read_millicelsius, least_millicelsius)
        }
        Refused::ResinTooWarm { read_millicelsius, most_millicelsius } => {
            outside("The resin", read_millicelsius, most_millicelsius)
        }
        Refused::BatchTooHeavy { batch_mg, most_mg } => {
            Broken::with(Rule::BatchTooLarge, &[("batch_mg", n(batch_mg.as_mg())), ("most_mg", n(most_mg.as_mg()))])
        }
        Refused::WindowEmpty { low_pa, high_pa, .. } => {
            Broken::with(Rule::WindowEmpty, &[("lower_pa", n(low_pa.as_pa())), ("upper_pa", n(high_pa.as_pa()))])
        }
        Refused::RodsDoNotTurn { corner } => Broken::with(Rule::RodsDontTurn, &[("corner", t(corner))]),
        Refused::WhoIsBelow => Broken::with(Rule::ChoiceMissing, &[("what", t("Who is below"))]),
        Refused::TooShortToBind { length_um, needed_um } => Broken::with(
            Rule::TooShortToBind,
            &[("length_um", n(length_um.as_um())), ("needed_um", n(needed_um.as_um()))],
        ),
        Refused::MembraneInBend => Broken::bare(Rule::MembraneInBend),
        Refused::MembraneTooShort { reach_um, least_um } => {
            Broken::with(Rule::MembraneShort, &[("reach_um", n(reach_um.as_um())), ("least_um", n(least_um.as_um()))])
        }
        other => Broken::with(Rule::BadValue, &[("what", t(sentence(&other.to_string())))]),
    }
}

fn sentence(message: &str) -> String {
    let mut letters = message.chars();
    match letters.next() {
        Some(first) => format!("{}{}.", first.to_uppercase(), letters.as_str()),
        None => String::new(),
    }
}

/// Returns the coldest of a set: of pipe and water.
pub fn coldest(temperatures: &Temperatures) -> Temperature {
    temperatures.water_mc.map_or(temperatures.pipe_mc, |water| water.min(temperatures.pipe_mc))
}

/// Returns the time that a table of hold or cure asks at the coldest.
pub fn at_coldest(table: &TimeTable, coldest: Temperature) -> Result<Span, Broken> {
    required_hold::required_hold(&rows(table), coldest).map_err(broken)
}

/// Returns how long the push of the test took, from begun to the mark.
pub fn measured_push(attempt: &Attempt) -> Option<Span> {
    let begun = attempt.test_push.begun.as_ref()?;
    let (reached, _) = attempt.test_push.reached.as_ref()?;
    Some(Span::from_ms(between(&begun.moment, &reached.moment).max(0)))
}

/// How long one attempt took its crew: from joined to insertion, and the test push.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Pace {
    pub wet_out_ms: Option<Span>,
    pub push_ms: Option<Span>,
}

/// Returns what a crew's own records say of a repair, attempt by attempt; nothing of a rehearsal.
///
/// A time across a restart of the phone is left out, and a test push that was taken over from an earlier attempt.
pub fn paces(repair: &Repair) -> Vec<Pace> {
    let pace = |attempt: &Attempt| {
        let span = |from: &Option<Stamp>, to: &Option<Stamp>| {
            let (from, to) = (&from.as_ref()?.moment, &to.as_ref()?.moment);
            (!restarted(from, to)).then(|| Span::from_ms(between(from, to).max(0)))
        };
        let own = attempt.test_push.carried_from.is_none();
        Pace { wet_out_ms: span(&attempt.joined, &attempt.insertion), push_ms: measured_push(attempt).filter(|_| own) }
    };
    let known = |pace: &Pace| pace.wet_out_ms.is_some() || pace.push_ms.is_some();
    repair.attempts.iter().filter(|_| !repair.rehearsal).map(pace).filter(known).collect()
}

/// Returns the budget at these temperatures, with the measured push if there is one.
pub fn budget_now(plan: &Plan, attempt: Option<&Attempt>, temperatures: &Temperatures) -> Result<Budget, Broken> {
    budget(&BudgetOf {
        contract: &plan.contract,
        resin: &plan.resin,
        batch: plan.computed.batch_mg,
        temperatures,
        push: attempt.and_then(measured_push),
    })
}

/// Returns the working time that runs: of the second go and every later set of temperatures the shortest.
///
/// A warmer reading may only shorten it. Joined without a go, the temperatures read last count; warmer than the sheet,
/// its last row does, because some time must be shown.
pub fn working_time(plan: &Plan, attempt: &Attempt) -> Option<Span> {
    attempt.joined.as_ref()?;
    let from_go = attempt.second_go.as_ref().map(|go| go.budget.working_ms);
    let since = attempt.second_go.as_ref().map_or(i64::MIN, |go| go.at.tapped_ms());
    let sets = attempt.temperatures.iter().filter(|(at, _)| from_go.is_none() || at.tapped_ms() > since);
    let read = sets
        .map(|(_, set)| budget_now(plan, Some(attempt), set).map_or(shortest(plan), |budget| budget.working_ms))
        .min();
    [from_go, read].into_iter().flatten().min().or_else(|| Some(shortest(plan)))
}

fn shortest(plan: &Plan) -> Span {
    lasting(&plan.resin.working_time).min().unwrap_or_default()
}

/// Returns the longest time of a table, for what is colder than its first row.
pub fn longest(table: &TimeTable) -> Span {
    lasting(table).max().unwrap_or_default()
}

fn lasting(table: &TimeTable) -> impl Iterator<Item = Span> {
    rows(table).into_iter().map(|row| match row {
        Row::Point { lasts_ms, .. } | Row::Range { lasts_ms, .. } => lasts_ms,
    })
}

/// Returns how long after the deadline something happened; zero or less if in time, `None` before joining.
pub fn late_by(plan: &Plan, attempt: &Attempt, at: &Stamp) -> Option<i64> {
    let joined = attempt.joined.as_ref()?;
    let working = working_time(plan, attempt)?;
    Some(since_joining(attempt, joined, &at.moment) - working.as_ms())
}

/// Returns how much of the working time had passed at a moment, in milliseconds: the longest that the clocks allow.
///
/// Across a restart, what the boot clock had shown at the last stamp before it is not lost when the wall clock was set
/// back meanwhile.
pub fn since_joining(attempt: &Attempt, joined: &Stamp, to: &Moment) -> i64 {
    let direct = between(&joined.moment, to);
    let seen = stamps(attempt).map(|stamp| &stamp.moment).filter(|moment| !restarted(&joined.moment, moment));
    match seen.max_by_key(|moment| moment.boot_ms).filter(|_| restarted(&joined.moment, to)) {
        Some(last) => direct.max(between(&joined.moment, last).max(0) + between(last, to)),
        None => direct,
    }
}

/// Returns the stamps of what may be recorded while resin runs, in no order.
fn stamps(attempt: &Attempt) -> impl Iterator<Item = &Stamp> {
    let spans = attempt.spans.iter().map(|span| &span.begun);
    let answers = attempt.answers.values().map(|answered| &answered.at);
    let temperatures = attempt.temperatures.iter().map(|(at, _)| at);
    let troubles = attempt.troubles.iter().map(|(at, _)| at);
    let taps = [&attempt.joined, &attempt.insertion, &attempt.air_joined].into_iter().flatten();
    let mark = attempt.at_mark.iter().map(|mark| &mark.at);
    spans.chain(answers).chain(temperatures).chain(troubles).chain(taps).chain(mark)
}

/// Returns the coldest of pipe and water read so far in the attempt, with the stamp of the reading.
pub fn coldest_so_far(attempt: &Attempt) -> Option<(Temperature, Stamp)> {
    colds(attempt).min_by_key(|(temperature, _)| *temperature)
}

/// Returns the coldest of pipe and water read up to the release, and when: the hold is not judged by what came after.
pub fn coldest_in_hold(attempt: &Attempt) -> Option<(Temperature, Stamp)> {
    let released = attempt.released.as_ref().map(|(at, _)| &at.moment);
    colds(attempt)
        .filter(|(_, at)| released.is_none_or(|released| between(&at.moment, released) >= 0))
        .min_by_key(|(temperature, _)| *temperature)
}

fn colds(attempt: &Attempt) -> impl Iterator<Item = (Temperature, Stamp)> {
    let sets = attempt.temperatures.iter().map(|(at, set)| (coldest(set), at.clone()));
    let readings = attempt.readings.iter().filter_map(|reading| {
        let cold = reading.pipe_mc.into_iter().chain(reading.water_mc).min()?;
        Some((cold, reading.at.clone()))
    });
    sets.chain(readings)
}

/// Returns the moment from which full cure counts, if it has come.
pub fn cure_counts_from<'a>(plan: &Plan, attempt: &'a Attempt) -> Option<&'a Stamp> {
    match plan.resin.cure_counts_from() {
        CountsFrom::Joined => attempt.joined.as_ref(),
        CountsFrom::TargetPressure => attempt.target.as_ref().map(|target| &target.at),
    }
}

/// Returns when full cure is reached, by the wall clock, as things stand; `None` before its clock runs.
pub fn full_cure_ms(plan: &Plan, attempt: &Attempt) -> Option<i64> {
    let from = cure_counts_from(plan, attempt)?;
    let cold = coldest_so_far(attempt).map_or(coldest(&plan.choice.temperatures), |(cold, _)| cold);
    let lasts = at_coldest(&plan.resin.full_cure, cold).unwrap_or_else(|_| longest(&plan.resin.full_cure));
    Some(from.moment.at_ms + lasts.as_ms())
}

/// Returns by how much an act came before full cure, in milliseconds; `None` if it did not.
pub fn before_cure(plan: &Plan, attempt: &Attempt, at: &Stamp) -> Option<i64> {
    let from = cure_counts_from(plan, attempt)?;
    let cure = full_cure_ms(plan, attempt)? - from.moment.at_ms;
    let early = cure - between(&from.moment, &at.moment);
    (early > 0).then_some(early)
}

/// Returns the plan and the attempt under way, which most rules of the street need.
pub fn plan_and_attempt(repair: &Repair) -> Option<(&Plan, &Attempt)> {
    Some((repair.plan.as_ref()?, repair.last_attempt()?))
}
