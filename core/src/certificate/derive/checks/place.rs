//! The place: errors, cover on both sides, rods, bare ends, packer and patch in the pipe.

use super::super::{Case, place, tasks, words};
use super::{Margin, limited, row, sourced};
use crate::certificate::content::Check;
use crate::geodesy;
use crate::procedure::plan::{Plan, ReadingPointKind, WayIn};
use crate::procedure::spot;
use crate::shelf::method::TaskKind;
use crate::units::Length;
use crate::words::tell;

/// Returns the rows about where the patch lies and what it lies on.
pub fn rows(case: &Case) -> Vec<Check> {
    let Some((plan, _)) = case.work() else { return vec![] };
    let mut found = vec![errors(plan)];
    found.extend(covers(case, plan));
    found.push(mark(case, plan));
    found.push(bare_ends(case, plan));
    found.extend(fits(case, plan));
    found.push(viewed(case, plan));
    found.extend(on_the_map(case, plan));
    found
}

fn errors(plan: &Plan) -> Check {
    let errors = &plan.computed.cover.clone().told().errors;
    let formula = words::joined(errors.iter().map(|error| format!("{} ({})", error.what, error.source)), " + ");
    let inputs = words::joined(errors.iter().map(|error| words::mm_bare(error.um)), " + ");
    let sum = words::mm(place::errors(plan));
    row(
        &tell!("cert-place-errors_at_the_defect"),
        words::or(&formula, &tell!("cert-place-none_counted")).into(),
        format!("{inputs} {}", words::mm_unit()),
        sum,
    )
}

fn covers(case: &Case, plan: &Plan) -> Vec<Check> {
    let required = plan.computed.cover.required_um;
    let limit = format!("≥ {}", words::mm(required));
    let source = &plan.contract.cover_least_um.source;
    let formula = |sign: &str| sourced(&tell!("cert-place-patch_defect_2_offset_errors", sign), source);
    let both = [(tell!("cert-place-cover_upstream"), "−", true), (tell!("cert-place-cover_downstream"), "+", false)];
    let shift = case.attempt.and_then(|attempt| place::shift(plan, attempt)).filter(|_| case.patch_was_set());
    let Some(shift) = shift else {
        let why = tell!("cert-place-no_patch_was_set_or");
        let none = |name: &str, sign: &str| row(name, formula(sign), why.clone(), tell!("cert-stages-not_known"));
        return both
            .map(|(name, sign, _)| limited(none(&name, sign), limit.clone(), Margin::Unknown(String::new())))
            .into();
    };
    let (upstream, downstream) = place::sides(plan, shift);
    both.map(|(name, sign, up)| {
        let cover = if up { upstream } else { downstream };
        let result = words::mm_down(cover);
        let left = Length::from_um(cover.as_um() - required.as_um());
        limited(
            row(&name, formula(sign), inputs(case, plan, shift, up), result),
            limit.clone(),
            Margin::of_length(left),
        )
    })
    .into()
}

/// Returns `(600 − 280) / 2 + 3 − 29`, in millimetres; of a series, the planned cover and how far this patch lies off.
fn inputs(case: &Case, plan: &Plan, shift: i64, up: bool) -> String {
    let mm = |um: i64| words::mm_bare(Length::from_um(um));
    let sign = |um: i64| if um < 0 { "−" } else { "+" };
    if let Some((this, all)) = place::series(plan) {
        let cover = &plan.computed.cover;
        let (planned, off) = if up { (cover.upstream_um, -shift) } else { (cover.downstream_um, shift) };
        return tell!(
            "cert-place-patch_of_planned",
            this,
            all,
            planned = words::mm_bare(planned),
            sign = sign(off),
            off = mm(off.abs())
        );
    }
    let Some(patch) = plan.computed.patches.first() else { return tell!("cert-place-no_patch_planned") };
    let defect = &case.repair.defect;
    let offset = patch.centre().as_um() + shift - defect.centre().as_um();
    let offset = if up { -offset } else { offset };
    let (long, errors) = (patch.to_um.as_um() - patch.from_um.as_um(), mm(place::errors(plan).as_um()));
    let (defect, off) = (words::mm_bare(defect.length()), mm(offset.abs()));
    format!("({} − {defect}) / 2 {} {off} − {errors}", mm(long), sign(offset))
}

fn mark(case: &Case, plan: &Plan) -> Check {
    let (choice, mark) = (&plan.choice, &plan.computed.mark);
    let point = match choice.reading_point.kind {
        ReadingPointKind::PipeMouth => tell!("cert-place-the_mouth_of_the_pipe"),
        ReadingPointKind::CleanoutCap => tell!("cert-place-the_cap_of_the_cleanout"),
    };
    let node = match choice.from_node {
        crate::procedure::plan::FromNode::Upstream => &case.repair.line.upstream.name,
        crate::procedure::plan::FromNode::Downstream => &case.repair.line.downstream.name,
    };
    let path = tell!("cert-place-path", length = words::metres_mm(mark.path_um));
    match choice.way_in {
        WayIn::Rods => row(
            &tell!("cert-place-rods_and_mark"),
            tell!("cert-place-whole_rods_path_rod_mark", point, node),
            tell!("cert-place-rod", path, length = words::metres(choice.rod_um)),
            format!("{} + {}", mark.whole_rods, words::mm(mark.remainder_um)),
        ),
        WayIn::Rope | WayIn::Hose => {
            let on = if choice.way_in == WayIn::Rope { tell!("cert-place-rope") } else { tell!("cert-place-hose") };
            let formula = tell!("cert-place-mark_on_the_path_from", on, point, node);
            row(&tell!("cert-place-mark"), formula, path, words::metres_mm(mark.path_um))
        }
    }
}

fn bare_ends(case: &Case, plan: &Plan) -> Check {
    let (least, tolerance) = (&plan.patch.bare_end_least_um, &plan.patch.bare_end_tolerance_um);
    let formula = sourced(&tell!("cert-place-shorter_end_difference_of_both"), &least.source);
    let limit = format!("≥ {}; ≤ {}", words::mm(least.value), words::mm(tolerance.value));
    let ends = tasks::done(case, TaskKind::BareEnds).map(|answered| &answered.answer);
    let Some((front, rear)) = ends.and_then(|ends| ends.number("front_um").zip(ends.number("rear_um"))) else {
        let none =
            row(&tell!("cert-sheets-bare_ends"), formula, String::new(), tasks::why_not(case, TaskKind::BareEnds));
        return limited(none, limit, Margin::Unknown(String::new()));
    };
    let mm = |um: i64| words::mm(Length::from_um(um));
    let (shorter, difference) = (front.min(rear), (front - rear).abs());
    let (spare, even) = (shorter - least.value.as_um(), tolerance.value.as_um() - difference);
    let margin = match (spare < 0, even < 0) {
        (false, false) => Margin::Left(format!("{}; {}", mm(spare), mm(even))),
        (true, false) => Margin::Fails(mm(-spare)),
        (false, true) => Margin::Fails(mm(-even)),
        (true, true) => Margin::Fails(format!("{}; {}", mm(-spare), mm(-even))),
    };
    let result = format!("{}; {}", mm(shorter), mm(difference));
    limited(
        row(&tell!("cert-sheets-bare_ends"), formula, format!("{}, {}", mm(front), mm(rear)), result),
        limit,
        margin,
    )
}

fn fits(case: &Case, plan: &Plan) -> [Check; 2] {
    let packer = (plan.packer.diameter_least_um.value, plan.packer.diameter_most_um.value);
    let patch = (plan.patch.diameter_least_um, plan.patch.diameter_most_um);
    [
        fit(
            case,
            &tell!("cert-place-packer_fits"),
            &tell!("cert-place-packer"),
            packer,
            &plan.packer.diameter_most_um.source,
        ),
        fit(case, &tell!("cert-place-patch_fits"), &tell!("cert-place-patch"), patch, &plan.patch.name),
    ]
}

fn fit(case: &Case, name: &str, what: &str, (least, most): (Length, Length), source: &str) -> Check {
    let formula = sourced(&tell!("cert-place-measured_id_inside_the_range", what), source);
    let limit = words::inside_between(least, most);
    let Some((narrow, wide)) = place::inside(case) else {
        let none = row(name, formula, tell!("cert-place-not_measured"), tell!("cert-stages-not_known"));
        return limited(none, limit, Margin::Unknown(String::new()));
    };
    let left = Length::from_um((most.as_um() - wide.as_um()).min(narrow.as_um() - least.as_um()));
    let result = if left.as_um() < 0 { tell!("cert-place-outside") } else { tell!("cert-place-inside") };
    let inputs = words::inside_between(narrow, wide);
    limited(row(name, formula, inputs, result), limit, Margin::of_length(left))
}

/// Where the patch lies by the nodes' coordinates, and how far the phone stood from the node, where both are known.
fn on_the_map(case: &Case, plan: &Plan) -> Option<Check> {
    let line = &case.repair.line;
    let found = spot::on_the_map(line, plan.computed.patches.first()?.centre())?;
    let formula = sourced(&tell!("cert-place-station_line_of_the_way"), geodesy::SOURCE);
    let station = plan.computed.patches.first()?.centre();
    let inputs = tell!("cert-place-station_of", at = words::metres(station), length = words::metres(line.length_um));
    let result = format!("{:.6}, {:.6}", found.place.lat, found.place.lon).replace('-', "−");
    let attempt = case.attempt?;
    let stamps =
        [attempt.target.as_ref().map(|target| &target.at), attempt.joined.as_ref(), attempt.insertion.as_ref()];
    let stood = stamps.into_iter().flatten().find_map(|stamp| spot::from_node(case.repair, &stamp.position));
    let left = stood.map_or_else(
        || tell!("cert-place-no_position_of_the_phone"),
        |standing| {
            let can_be = match standing.plausible {
                Some(true) => tell!("cert-place-can_be"),
                Some(false) => tell!("cert-place-too_far_for_its_accuracy"),
                None => tell!("cert-place-accuracy_not_known"),
            };
            tell!("cert-place-phone_from_the_node", can_be, distance = words::metres_whole(standing.distance_m))
        },
    );
    Some(limited(
        row(&tell!("cert-place-place_on_the_map"), formula, inputs, result),
        String::new(),
        Margin::Unknown(left),
    ))
}

fn viewed(case: &Case, plan: &Plan) -> Check {
    let age = &plan.contract.cleaning_age_ms;
    let formula = sourced(&tell!("cert-place-viewed_again_cleaned"), &age.source);
    let limit = format!("≤ {}", words::lasting(age.value));
    let at = |kind| tasks::done(case, kind).and_then(|answered| answered.answer.number("at_ms"));
    let Some((cleaned, viewed)) = at(TaskKind::Cleaned).zip(at(TaskKind::ViewedAgain)) else {
        let none = row(
            &tell!("cert-place-clean_pipe"),
            formula,
            tell!("cert-attempts-not_recorded"),
            tell!("cert-stages-not_known"),
        );
        return limited(none, limit, Margin::Unknown(String::new()));
    };
    let lasted = crate::units::Span::from_ms(viewed - cleaned);
    let left = crate::units::Span::from_ms(age.value.as_ms() - lasted.as_ms());
    let inputs = format!("{}, {}", case.clock.minute(cleaned), case.clock.minute(viewed));
    limited(
        row(&tell!("cert-place-clean_pipe"), formula, inputs, words::lasting(words::up_s(lasted))),
        limit,
        Margin::of_span(left),
    )
}
