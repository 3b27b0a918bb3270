//! Lots, tools and instruments that were used.

use super::{Case, tasks, words};
use crate::certificate::content::Material;
use crate::procedure::answer::Answer;
use crate::procedure::plan::Plan;
use crate::shelf::method::TaskKind;
use crate::shelf::sheets::{InstrumentKind, Parts};
use crate::units::{Length, Mass, Pressure, Span, Temperature};
use crate::words::tell;

/// Returns resin, patch, packer, sleeve and instruments; empty without a plan.
pub fn materials(case: &Case) -> Vec<Material> {
    let Some(plan) = case.plan else { return vec![] };
    let mut found = resin(case, plan);
    found.extend([patch(case, plan), packer(case, plan), sleeve(case, plan)]);
    found.extend(instruments(case, plan));
    found
}

fn answer<'a>(case: &Case<'a>, kind: TaskKind) -> Option<&'a Answer> {
    tasks::done(case, kind).map(|answered| &answered.answer)
}

/// Returns a text of the lots, or why there is none.
fn lot(case: &Case, key: &str) -> String {
    let text = answer(case, TaskKind::Lots).and_then(|lots| lots.text(key)).map(str::to_owned);
    text.unwrap_or_else(|| tasks::why_not(case, TaskKind::Lots))
}

fn resin(case: &Case, plan: &Plan) -> Vec<Material> {
    let stored = answer(case, TaskKind::Lots)
        .and_then(|lots| lots.number("stored_least_mc").zip(lots.number("stored_most_mc")))
        .map(|(least, most)| {
            let at = Temperature::from_millicelsius;
            tell!("cert-materials-stored", range = words::celsius_range(at(least), at(most)))
        })
        .unwrap_or_else(|| tell!("cert-materials-storage_not_recorded"));
    [
        (tell!("cert-materials-resin_part_a"), "lot_a", "expires_a", "mass_a_mg"),
        (tell!("cert-materials-resin_part_b"), "lot_b", "expires_b", "mass_b_mg"),
    ]
    .into_iter()
    .map(|(item, lot_key, expires, mass)| Material {
        item,
        kind: format!("{}, {}", plan.resin.name, plan.resin.issue),
        lot: lot(case, lot_key),
        expiry: words::day(&lot(case, expires)),
        amount: amount(case, plan, mass),
        note: stored.clone(),
    })
    .collect()
}

fn amount(case: &Case, plan: &Plan, mass: &str) -> String {
    let used = answer(case, TaskKind::PartsUsed);
    let weighed = used.and_then(|used| used.number(mass)).map(Mass::from_mg);
    match (weighed, used.and_then(|used| used.text("how")), &plan.resin.parts) {
        (Some(mass), _, _) => tell!("cert-materials-weighed", mass = words::grams(mass)),
        (None, Some("containers"), Parts::Containers { kit, .. }) => tell!("cert-materials-whole_containers", kit),
        (None, Some("containers"), Parts::Weighed { .. }) => tell!("cert-materials-whole_containers_2"),
        (None, Some(_), _) => tell!("cert-materials-mass_not_recorded"),
        (None, None, _) => tasks::why_not(case, TaskKind::PartsUsed),
    }
}

fn patch(case: &Case, plan: &Plan) -> Material {
    let seam = answer(case, TaskKind::Seam).and_then(|seam| seam.number("hour"));
    let seam = seam
        .map_or_else(|| tell!("cert-materials-seam_not_recorded"), |hour| tell!("cert-materials-seam_at_oclock", hour));
    Material {
        item: tell!("cert-materials-patch"),
        kind: plan.patch.name.clone(),
        lot: lot(case, "lot_patch"),
        expiry: tell!("cert-materials-none_stated"),
        amount: format!("{} × {}", words::mm_bare(plan.patch.length_um), words::mm(plan.computed.wrap_um)),
        note: format!("{}, {seam}", layers(plan.patch.plies)),
    }
}

fn layers(plies: i64) -> String {
    words::many("cert-count-layers", usize::try_from(plies).unwrap_or(0))
}

fn packer(case: &Case, plan: &Plan) -> Material {
    let tested = tasks::done(case, TaskKind::PackerTest);
    let read = |key| tested.and_then(|tested| tested.answer.number(key));
    let pressure =
        read("gauge_pa").map(|pa| tell!("cert-materials-strapped_down", pressure = words::bar(Pressure::from_pa(pa))));
    let held = read("held_ms").zip(read("drop_pa")).map(|(held, drop)| {
        let drop = if drop == 0 {
            tell!("cert-materials-no_drop")
        } else {
            tell!("cert-materials-drop", pressure = words::bar(Pressure::from_pa(drop)))
        };
        tell!("cert-materials-in", drop, time = words::lasting(Span::from_ms(held)))
    });
    let why = || tasks::why_not(case, TaskKind::PackerTest);
    Material {
        item: tell!("cert-materials-packer"),
        kind: tell!("cert-materials-no", name = plan.packer.name, serial = plan.packer.serial),
        lot: String::new(),
        expiry: tested
            .map_or_else(why, |tested| tell!("cert-materials-tested", date = case.clock.date(tested.at.moment.at_ms))),
        amount: pressure.unwrap_or_else(why),
        note: held.unwrap_or_default(),
    }
}

fn sleeve(case: &Case, plan: &Plan) -> Material {
    let membrane = match plan.computed.membrane_um {
        Some(length) => tell!("cert-materials-membrane", length = words::mm(length)),
        None => tell!("cert-materials-no_membrane"),
    };
    let written = answer(case, TaskKind::Lots).and_then(|lots| lots.text("lot_sleeve"));
    Material {
        item: tell!("cert-materials-sleeve_membrane"),
        kind: tell!("cert-materials-sleeve", membrane),
        lot: written.unwrap_or(&tell!("cert-attempts-not_recorded")).into(),
        expiry: String::new(),
        amount: tell!("cert-materials-sleeve_2", length = words::mm(plan.computed.sleeve_um)),
        note: String::new(),
    }
}

fn instruments(case: &Case, plan: &Plan) -> Vec<Material> {
    let Some(used) = answer(case, TaskKind::Instruments) else {
        let why = tasks::why_not(case, TaskKind::Instruments);
        return vec![bare(&tell!("cert-materials-instruments"), why)];
    };
    let meter = answer(case, TaskKind::Air).and_then(|air| air.text("meter"));
    let named = ["gauge", "thermometer", "counter", "tape", "scale"].into_iter().filter_map(|key| used.text(key));
    named.chain(meter).map(|id| instrument(plan, id)).collect()
}

fn bare(item: &str, kind: String) -> Material {
    let none = String::new;
    Material { item: item.into(), kind, lot: none(), expiry: none(), amount: none(), note: none() }
}

fn instrument(plan: &Plan, id: &str) -> Material {
    let Some(known) = plan.instruments.iter().find(|instrument| instrument.id == id) else {
        return bare(&tell!("cert-materials-instrument"), tell!("cert-materials-not_in_the_plan", id));
    };
    let item = match known.kind {
        InstrumentKind::PressureGauge => tell!("cert-materials-pressure_gauge"),
        InstrumentKind::Thermometer => tell!("cert-materials-thermometer"),
        InstrumentKind::CameraCounter => tell!("cert-materials-camera_counter"),
        InstrumentKind::Scale => tell!("cert-materials-scale"),
        InstrumentKind::Tape => tell!("cert-materials-tape"),
        InstrumentKind::GasMeter => tell!("cert-materials-gas_meter"),
    };
    let calibrated = match known.calibrated_to.as_str() {
        "" => tell!("cert-materials-no_calibration_asked"),
        date => tell!("cert-materials-calibrated_to", date = words::day(date)),
    };
    Material {
        item,
        kind: known.name.clone(),
        lot: String::new(),
        expiry: calibrated,
        amount: error(known.error_ppm, known.error_um),
        note: known.source.clone(),
    }
}

fn error(ppm: i64, um: Length) -> String {
    let share = (ppm != 0).then(|| format!("± {} %", words::exact(ppm, 10_000, 0)));
    let fixed = (um.as_um() != 0).then(|| format!("± {}", words::mm(um)));
    words::joined(share.into_iter().chain(fixed), ", ")
}
