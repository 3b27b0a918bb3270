//! The hold: readings, what each interval is worth, the window, and the sums.

use super::{Case, words};
use crate::certificate::content::{Hold, Interval, Known, LeastNet, Reading, Run, Side, Source, Window};
use crate::checks::hold::{self as checks, Excursion, HoldStretch, StretchKind};
use crate::procedure::happening::ReadBy;
use crate::procedure::hold::{self as procedure, HoldState};
use crate::procedure::plan::Plan;
use crate::procedure::repair::Attempt;
use crate::procedure::rules::{Broken, Rule, n};
use crate::units::{Pressure, Span};
use crate::words::tell;

/// Returns the departure for a hold that was too short.
pub fn short(plan: &Plan, attempt: &Attempt) -> Option<Broken> {
    let state = procedure::state(plan, attempt)?;
    let (counted, required) = (state.shown.counted_ms.as_ms(), state.terms.required_ms.as_ms());
    let values = [("counted_ms", n(counted)), ("required_ms", n(required))];
    (counted < required).then(|| Broken::with(Rule::HoldShort, &values))
}

/// Returns the chart and the table of the hold.
pub fn hold(case: &Case) -> Known<Hold> {
    let (Some((plan, attempt)), Some(state)) = (case.work(), &case.hold) else { return Known::Absent(why_none(case)) };
    let Some(joined) = &attempt.joined else { return Known::Absent(why_none(case)) };
    let zero_ms = case.at(joined);
    let readings = shown_readings(attempt, state, zero_ms);
    let runs = runs(state, zero_ms);
    let counted = runs.iter().filter(|run| run.kind == Interval::Counted).map(|run| run.to_ms - run.from_ms).sum();
    Known::Known(Hold {
        remark: remark(state),
        begun_at_ms: readings.first().map_or(zero_ms, |reading| reading.at_ms),
        readings,
        runs,
        window: window(plan),
        required_ms: Known::Known(words::up_s(state.terms.required_ms)),
        counted_ms: words::down_s(Span::from_ms(counted)),
    })
}

fn why_none(case: &Case) -> String {
    match case.attempt {
        None => tell!("cert-hold-no_attempt_was_begun"),
        Some(attempt) if attempt.joined.is_none() => tell!("cert-hold-the_parts_were_never_joined"),
        Some(attempt) if attempt.target.is_none() => tell!("cert-hold-target_pressure_was_never_reached"),
        Some(_) => tell!("cert-hold-the_readings_cant_be_put"),
    }
}

fn remark(state: &HoldState) -> String {
    let required = words::minutes(words::up_s(state.terms.required_ms));
    let at = words::celsius(state.coldest);
    let asked = if state.outside_sheet.is_some() {
        tell!("cert-hold-required_the_longest_of_the", required, at)
    } else {
        tell!("cert-hold-required_at_the_coldest", required, at)
    };
    let parts = [
        format!("{}, {asked}", counted(state)),
        tell!(
            "cert-hold-out_of_window_not_witnessed",
            outside = up(state.shown.outside_ms),
            lost = up(state.shown.not_witnessed_ms)
        ),
    ];
    parts.join("; ")
}

fn up(span: Span) -> String {
    words::min_s(words::up_s(span))
}

/// Returns `61 min 22 s counted`, with the time from joining where the sheet counts it.
pub fn counted(state: &HoldState) -> String {
    match sums(state) {
        (all, Some(before)) => tell!("cert-hold-counted_of_it_from_joining", all, before),
        (all, None) => tell!("cert-hold-counted", all),
    }
}

/// Returns the same without its verb.
pub fn counted_bare(state: &HoldState) -> String {
    match sums(state) {
        (all, Some(before)) => tell!("cert-hold-counted_bare", all, before),
        (all, None) => all,
    }
}

/// Returns what is counted, and what of it lies before target pressure.
fn sums(state: &HoldState) -> (String, Option<String>) {
    let first = state.shown.stretches.first().filter(|first| first.kind == StretchKind::BeforePressure);
    let before = first.map(|first| words::min_s(words::down_s(Span::from_ms(first.to_ms - first.from_ms))));
    (words::min_s(words::down_s(state.shown.counted_ms)), before)
}

fn shown_readings(attempt: &Attempt, state: &HoldState, zero_ms: i64) -> Vec<Reading> {
    let target = state.readings.first().map(|first| Reading {
        at_ms: zero_ms + first.at_ms,
        pressure_pa: first.gauge_pa,
        pipe_millicelsius: None,
        patch_millicelsius: None,
        source: if attempt.target.as_ref().is_some_and(|target| target.at.paper) {
            Source::Paper
        } else {
            Source::Hand
        },
        side: side(state, first.gauge_pa),
        before: None,
        why: None,
    });
    let read = procedure::held(attempt).iter().zip(state.readings.iter().skip(1)).zip(intervals(state)).map(
        |((read, timed), before)| Reading {
            at_ms: zero_ms + timed.at_ms,
            pressure_pa: read.gauge_pa,
            pipe_millicelsius: read.pipe_mc,
            patch_millicelsius: read.patch_mc,
            source: match read.by {
                _ if read.at.paper => Source::Paper,
                ReadBy::Hand => Source::Hand,
                ReadBy::Sensor => Source::Sensor,
            },
            side: side(state, read.gauge_pa),
            before: Some(before),
            why: Some(read.why.trim().to_owned()).filter(|why| !why.is_empty()),
        },
    );
    target.into_iter().chain(read).collect()
}

fn side(state: &HoldState, gauge: Pressure) -> Side {
    if gauge < state.terms.low_pa {
        Side::Low
    } else if gauge > state.terms.high_pa {
        Side::High
    } else {
        Side::Inside
    }
}

/// Returns the stretches from target pressure on.
fn pressed(state: &HoldState) -> impl Iterator<Item = &HoldStretch> {
    state.shown.stretches.iter().filter(|part| part.kind != StretchKind::BeforePressure)
}

/// Returns what each interval between two readings is worth; one of which only the excess is lost is a gap.
fn intervals(state: &HoldState) -> Vec<Interval> {
    let mut parts = pressed(state).peekable();
    state
        .readings
        .iter()
        .skip(1)
        .filter_map(|end| {
            let first = parts.next()?;
            let split = first.to_ms < end.at_ms;
            let last = if split { parts.next()? } else { first };
            Some(interval(last.kind))
        })
        .collect()
}

fn interval(kind: StretchKind) -> Interval {
    match kind {
        StretchKind::BeforePressure | StretchKind::Counted => Interval::Counted,
        StretchKind::OutsideWindow => Interval::Out,
        StretchKind::NotWitnessed => Interval::Gap,
    }
}

/// Returns neighbouring stretches of one kind joined into runs. A counted run is cut to whole seconds, others rounded up.
fn runs(state: &HoldState, zero_ms: i64) -> Vec<Run> {
    let parts: Vec<&HoldStretch> = pressed(state).filter(|part| part.to_ms > part.from_ms).collect();
    parts
        .chunk_by(|a, b| a.kind == b.kind)
        .filter_map(|chunk| {
            let (first, last) = (chunk.first()?, chunk.last()?);
            let kind = interval(first.kind);
            let length = Span::from_ms(last.to_ms - first.from_ms);
            let whole = if kind == Interval::Counted { words::down_s(length) } else { words::up_s(length) };
            Some(Run { from_ms: zero_ms + first.from_ms, to_ms: zero_ms + last.to_ms, kind, length_ms: whole })
        })
        .collect()
}

/// Returns the runs that nobody witnessed, with what was said about each.
pub fn gaps(case: &Case) -> Vec<(Run, Option<String>)> {
    let (Some((_, attempt)), Some(state)) = (case.work(), &case.hold) else { return vec![] };
    let zero_ms = attempt.joined.as_ref().map_or(0, |joined| case.at(joined));
    let why = |run: &Run| {
        let reading =
            state.readings.iter().skip(1).zip(procedure::held(attempt)).find(|(at, _)| zero_ms + at.at_ms == run.to_ms);
        let (timed, read) = reading?;
        let written = Some(read.why.trim().to_owned()).filter(|why| !why.is_empty());
        written.or_else(|| timed.after_restart.then(|| tell!("cert-hold-the_device_was_started_anew")))
    };
    let gaps = runs(state, zero_ms).into_iter().filter(|run| run.kind == Interval::Gap);
    gaps.map(|run| (run, why(&run))).collect()
}

/// Returns the excursions, with the instant of the worst reading and what was done about it.
pub fn excursions(case: &Case) -> Vec<(Excursion, i64, Option<String>)> {
    let (Some((_, attempt)), Some(state)) = (case.work(), &case.hold) else { return vec![] };
    let zero_ms = attempt.joined.as_ref().map_or(0, |joined| case.at(joined));
    let why = |excursion: &Excursion| {
        let read = state.readings.iter().skip(1).zip(procedure::held(attempt));
        let worst = read.into_iter().find(|(timed, _)| timed.at_ms == excursion.worst_at_ms)?.1;
        Some(worst.why.trim().to_owned()).filter(|why| !why.is_empty())
    };
    state.shown.excursions.iter().map(|one| (*one, zero_ms + one.worst_at_ms, why(one))).collect()
}

fn window(plan: &Plan) -> Window {
    let window = plan.computed.window.clone().told();
    let (net, water) = (window.net_least_pa.as_pa(), window.water_pa.as_pa());
    let hundredth = |pa: i64| Pressure::from_pa(pa * 1_000);
    Window {
        lower_pa: hundredth(-(-window.lower_pa.as_pa()).div_euclid(1_000)),
        lower_name: window.lower_governs,
        upper_pa: hundredth(window.upper_pa.as_pa().div_euclid(1_000)),
        upper_name: window.upper_governs,
        least_net: (net > 0)
            .then(|| LeastNet { net_pa: window.net_least_pa, gauge_pa: Pressure::from_pa(net + water) }),
    }
}

/// Returns the lowest, the lowest counted and the highest pressure of the hold.
pub fn extremes(state: &HoldState) -> Option<(Pressure, Option<Pressure>, Pressure)> {
    let read = || state.readings.iter().map(|reading: &checks::Reading| reading.gauge_pa);
    let inside = read().filter(|gauge| (state.terms.low_pa..=state.terms.high_pa).contains(gauge)).min();
    Some((read().min()?, inside, read().max()?))
}
