//! The line, the patch and what lies around it.

use super::{Case, departures, missing, reasons, words};
use crate::certificate::content::{Around, Cover, Known, Lateral, Mark, Observation, Place, Stretch};
use crate::checks::clock_face::{Extent, Hour, View};
use crate::checks::laterals::{self, PatchArea};
use crate::procedure::line::{self, Seen};
use crate::procedure::plan::{FromNode, Plan};
use crate::procedure::repair::{Attempt, Repair};
use crate::procedure::rules::Rule;
use crate::shelf::method::TaskKind;
use crate::units::Length;
use crate::words::tell;

/// Returns the data of the three drawings.
pub fn place(case: &Case) -> Known<Place> {
    let line = &case.repair.line;
    let patch = patch(case);
    Known::Known(Place {
        upstream: line.upstream.name.clone(),
        downstream: line.downstream.name.clone(),
        length_um: line.length_um,
        dn_mm: dn(line.height_um),
        inside_um: inside(case)
            .map_or_else(|| Known::Absent(tell!("cert-place-not_measured")), |(_, most)| Known::Known(most)),
        laterals: connections(case),
        observations: observations(case),
        marks: high_fold(case).into_iter().collect(),
        cover: cover(case),
        patch,
    })
}

/// Returns a nominal size in whole millimetres, to the nearest.
pub fn dn(nominal: Length) -> u32 {
    u32::try_from((nominal.as_um() + 500).div_euclid(1_000)).unwrap_or(0)
}

/// Returns the measured inside diameters, least and most.
pub fn inside(case: &Case) -> Option<(Length, Length)> {
    let (plan, attempt) = (case.plan, case.attempt);
    let answered = attempt.and_then(|attempt| attempt.answer(TaskKind::MeasuredDiameter));
    let read = |key| answered.and_then(|answered| answered.answer.number(key)).map(Length::from_um);
    read("least_um").zip(read("most_um")).or_else(|| {
        let choice = &plan.filter(|plan| plan.choice.diameter_measured)?.choice;
        Some((choice.diameter_least_um, choice.diameter_most_um))
    })
}

/// Returns how far downstream of its planned place the patch lies.
pub fn shift(plan: &Plan, attempt: &Attempt) -> Option<i64> {
    let beyond = attempt.rest()?.as_um();
    Some(match plan.choice.from_node {
        FromNode::Upstream => beyond,
        FromNode::Downstream => -beyond,
    })
}

/// Returns where the patch lies, or why nobody knows.
pub fn patch(case: &Case) -> Known<Stretch> {
    let Some((plan, attempt)) = case.work() else { return Known::Absent(tell!("cert-place-no_patch_was_set")) };
    if !case.patch_was_set() {
        return Known::Absent(tell!("cert-place-no_patch_was_set"));
    }
    let lies = lies(plan, attempt);
    lies.map_or_else(|| Known::Absent(tell!("cert-place-nobody_recorded_where_the_patch")), Known::Known)
}

fn lies(plan: &Plan, attempt: &Attempt) -> Option<Stretch> {
    let (planned, shift) = (plan.computed.patches.first()?, shift(plan, attempt)?);
    let moved = |end: Length| Length::from_um(end.as_um() + shift);
    Some(Stretch { from_um: moved(planned.from_um), to_um: moved(planned.to_um) })
}

/// Returns the laterals that the patch covers where it came to rest, and those that the plan covers, by their place in
/// the line's list.
pub fn covered(repair: &Repair, plan: &Plan, attempt: &Attempt) -> Vec<usize> {
    let touched = lies(plan, attempt).map(|patch| touched(&repair.line, &patch, plan)).unwrap_or_default();
    let count = repair.line.laterals.len();
    (0..count).filter(|index| touched.contains(index) || plan.computed.covered.contains(index)).collect()
}

fn touched(line: &line::Line, patch: &Stretch, plan: &Plan) -> Vec<usize> {
    let view = View::Downstream;
    let openings: Option<Vec<laterals::Lateral>> = line
        .laterals
        .iter()
        .map(|lateral| {
            let at = Hour::new(hour(lateral.clock)).ok()?;
            Some(laterals::Lateral { station_um: lateral.station_um, at, view, dn_um: lateral.diameter_um })
        })
        .collect();
    let area = PatchArea {
        from_um: patch.from_um,
        to_um: patch.to_um,
        extent: Extent::AllRound { view },
        inside_diameter_um: plan.choice.diameter_most_um,
    };
    openings.and_then(|openings| laterals::covered(&area, &openings).ok()).unwrap_or_default()
}

/// Returns the middle of a stretch, rounded down to the micrometre.
pub fn middle(stretch: &Stretch) -> Length {
    Length::from_um((stretch.from_um.as_um() + stretch.to_um.as_um()).div_euclid(2))
}

fn connections(case: &Case) -> Vec<Lateral> {
    let covered = case.work().map(|(plan, attempt)| covered(case.repair, plan, attempt)).unwrap_or_default();
    let opened = |index: usize| {
        let last = case.attempt?.laterals.iter().rev().find(|opened| opened.lateral == index)?;
        u8::try_from(last.open_pct).ok()
    };
    let laterals = case.repair.line.laterals.iter().enumerate();
    laterals
        .map(|(index, lateral)| Lateral {
            station_um: lateral.station_um,
            hour: hour(lateral.clock),
            dn_mm: dn(lateral.diameter_um),
            covered: case.patch_was_set() && covered.contains(&index),
            opened_percent: opened(index),
        })
        .collect()
}

fn hour(clock: u8) -> u8 {
    if (1..=12).contains(&clock) { clock } else { 12 }
}

/// Returns what the inspection saw; the first spans the whole defect.
///
/// Where no single observation does, the defect as a whole comes first.
pub fn observations(case: &Case) -> Vec<Observation> {
    let defect = &case.repair.defect;
    let whole = Stretch { from_um: defect.from_um, to_um: defect.to_um };
    let spans = |seen: &Seen| seen.from_um <= defect.from_um && seen.to_um >= defect.to_um;
    let mut seen: Vec<&Seen> = defect.observations.iter().collect();
    let lone = seen.len() == 1;
    let first = seen.iter().position(|seen| lone || spans(seen)).map(|index| seen.remove(index));
    let lead = first.map_or_else(
        || Observation {
            code: "defect".into(),
            words: tell!("cert-place-defect"),
            stretch: whole,
            around: all_of(&defect.observations),
        },
        |first| Observation { stretch: whole, ..observation(first) },
    );
    std::iter::once(lead).chain(seen.into_iter().map(observation)).collect()
}

fn observation(seen: &Seen) -> Observation {
    Observation {
        code: words::or(&seen.code, &tell!("cert-place-entered_by_hand")).to_owned(),
        words: words::capital(words::or(&words::retold_parts(&seen.words), &tell!("cert-place-defect_2"))),
        stretch: Stretch { from_um: seen.from_um, to_um: seen.to_um },
        around: around(&seen.around),
    }
}

/// Returns where round the pipe. A place that nobody named is drawn all round, the widest that it can be.
fn around(around: &line::Around) -> Around {
    match *around {
        line::Around::Unknown | line::Around::AllRound => Around::All,
        line::Around::At { hour: at } => Around::At(hour(at)),
        line::Around::Between { from, to } if hour(from) == hour(to) => Around::All,
        line::Around::Between { from, to } => Around::Arc { from_hour: hour(from), to_hour: hour(to) },
    }
}

/// Returns the one place of several observations, or all round where they differ.
fn all_of(seen: &[Seen]) -> Around {
    let mut places = seen.iter().map(|seen| around(&seen.around));
    let first = places.next().unwrap_or(Around::All);
    if places.all(|place| place == first) { first } else { Around::All }
}

/// Says whether somebody recorded where round the pipe the defect lies.
pub fn clock_is_known(case: &Case) -> bool {
    let seen = &case.repair.defect.observations;
    !seen.is_empty() && seen.iter().all(|seen| seen.around != line::Around::Unknown)
}

/// Returns the cover from where the patch came to rest: upstream, downstream.
pub fn sides(plan: &Plan, shift: i64) -> (Length, Length) {
    let cover = &plan.computed.cover;
    (Length::from_um(cover.upstream_um.as_um() - shift), Length::from_um(cover.downstream_um.as_um() + shift))
}

/// Returns the fold that is higher than the contract allows, if somebody recorded where it lies.
fn high_fold(case: &Case) -> Option<Mark> {
    let (plan, attempt) = case.work()?;
    let high = missing::stands(case.repair, plan, attempt).into_iter().find(|broken| broken.rule == Rule::FoldHigh)?;
    let answer = &attempt.answer(TaskKind::Folds)?.answer;
    let from_um = Length::from_um(answer.number("from_um")?);
    let to_um = answer.number("to_um").map_or(from_um, Length::from_um).max(from_um);
    let clock = |key| answer.number(key).and_then(|number| u8::try_from(number).ok());
    let around = match (clock("hour"), clock("hour_to")) {
        (Some(from), Some(to)) if from != to => line::Around::Between { from, to },
        (Some(hour), _) => line::Around::At { hour },
        (None, _) => line::Around::Unknown,
    };
    let finding = reasons::findings(case).iter().position(|broken| broken.rule == high.rule);
    let label = finding
        .map(|at| format!("F{}", at + 1))
        .or_else(|| departures::label(case, high.rule, &high.subject))
        .unwrap_or_default();
    Some(Mark {
        label,
        words: tell!("cert-place-fold"),
        stretch: Stretch { from_um, to_um },
        around: self::around(&around),
    })
}

/// Returns this patch's number in a series and how many the series has; `None` for a patch that stands alone.
///
/// The cover of a series is that of all its patches together.
pub fn series(plan: &Plan) -> Option<(usize, usize)> {
    let done = usize::from(plan.choice.series_done);
    let all = done + plan.computed.patches.len();
    (plan.choice.in_series && plan.choice.centre_um.is_none() && all > 1).then_some((done + 1, all))
}

/// Returns the sum of the errors that the cover has lost.
pub fn errors(plan: &Plan) -> Length {
    Length::from_um(plan.computed.cover.errors.iter().map(|error| error.um.as_um()).sum())
}

/// Returns whole millimetres, rounded down; below zero away from zero.
fn down_mm(length: Length) -> i64 {
    length.as_um().div_euclid(1_000)
}

/// Returns whole millimetres, rounded up.
fn up_mm(length: Length) -> i64 {
    -(-length.as_um()).div_euclid(1_000)
}

fn cover(case: &Case) -> Known<Cover> {
    let shift = case.work().and_then(|(plan, attempt)| Some((plan, shift(plan, attempt)?)));
    let Some((plan, shift)) = shift.filter(|_| case.patch_was_set()) else {
        let why = patch(case);
        return Known::Absent(match why {
            Known::Absent(why) => why,
            Known::Known(_) => tell!("cert-place-nobody_recorded_where_the_patch"),
        });
    };
    let (upstream, downstream) = sides(plan, shift);
    Known::Known(Cover {
        errors_mm: up_mm(errors(plan)),
        upstream_mm: down_mm(upstream),
        downstream_mm: down_mm(downstream),
        required_mm: Known::Known(up_mm(plan.computed.cover.required_um)),
    })
}
