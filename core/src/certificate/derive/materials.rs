//! Lots, tools and instruments that were used.

use super::{Case, tasks, words};
use crate::certificate::content::Material;
use crate::procedure::answer::Answer;
use crate::procedure::plan::Plan;
use crate::shelf::method::TaskKind;
use crate::shelf::sheets::{InstrumentKind, Parts};
use crate::units::{Length, Mass, Pressure, Span, Temperature};

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
            format!("stored {}", words::celsius_range(at(least), at(most)))
        })
        .unwrap_or_else(|| "storage not recorded".into());
    [("Resin part A", "lot_a", "expires_a", "mass_a_mg"), ("Resin part B", "lot_b", "expires_b", "mass_b_mg")]
        .into_iter()
        .map(|(item, lot_key, expires, mass)| Material {
            item: item.into(),
            kind: format!("{}, {}", plan.resin.name, plan.resin.issue),
            lot: lot(case, lot_key),
            expiry: lot(case, expires),
            amount: amount(case, plan, mass),
            note: stored.clone(),
        })
        .collect()
}

fn amount(case: &Case, plan: &Plan, mass: &str) -> String {
    let used = answer(case, TaskKind::PartsUsed);
    let weighed = used.and_then(|used| used.number(mass)).map(Mass::from_mg);
    match (weighed, used.and_then(|used| used.text("how")), &plan.resin.parts) {
        (Some(mass), _, _) => format!("{} weighed", words::grams(mass)),
        (None, Some("containers"), Parts::Containers { kit, .. }) => format!("whole containers, {kit}"),
        (None, Some("containers"), Parts::Weighed { .. }) => "whole containers".into(),
        (None, Some(_), _) => "mass not recorded".into(),
        (None, None, _) => tasks::why_not(case, TaskKind::PartsUsed),
    }
}

fn patch(case: &Case, plan: &Plan) -> Material {
    let seam = answer(case, TaskKind::Seam).and_then(|seam| seam.number("hour"));
    let seam = seam.map_or_else(|| "seam not recorded".into(), |hour| format!("seam at {hour} o’clock"));
    Material {
        item: "Patch".into(),
        kind: plan.patch.name.clone(),
        lot: lot(case, "lot_patch"),
        expiry: "none stated".into(),
        amount: format!("{} × {}", words::mm_bare(plan.patch.length_um), words::mm(plan.computed.wrap_um)),
        note: format!("{}, {seam}", layers(plan.patch.plies)),
    }
}

fn layers(plies: i64) -> String {
    if plies == 1 { "1 layer".into() } else { format!("{plies} layers") }
}

fn packer(case: &Case, plan: &Plan) -> Material {
    let tested = tasks::done(case, TaskKind::PackerTest);
    let read = |key| tested.and_then(|tested| tested.answer.number(key));
    let pressure = read("gauge_pa").map(|pa| format!("{}, strapped down", words::bar(Pressure::from_pa(pa))));
    let held = read("held_ms").zip(read("drop_pa")).map(|(held, drop)| {
        let drop = if drop == 0 { "no drop".into() } else { format!("drop {}", words::bar(Pressure::from_pa(drop))) };
        format!("{drop} in {}", words::lasting(Span::from_ms(held)))
    });
    let why = || tasks::why_not(case, TaskKind::PackerTest);
    Material {
        item: "Packer".into(),
        kind: format!("{}, no. {}", plan.packer.name, plan.packer.serial),
        lot: String::new(),
        expiry: tested.map_or_else(why, |tested| format!("tested {}", case.clock.date(tested.at.moment.at_ms))),
        amount: pressure.unwrap_or_else(why),
        note: held.unwrap_or_default(),
    }
}

fn sleeve(case: &Case, plan: &Plan) -> Material {
    let membrane = match plan.computed.membrane_um {
        Some(length) => format!("membrane {}", words::mm(length)),
        None => "no membrane".into(),
    };
    let written = answer(case, TaskKind::Lots).and_then(|lots| lots.text("lot_sleeve"));
    Material {
        item: "Sleeve, membrane".into(),
        kind: format!("sleeve; {membrane}"),
        lot: written.unwrap_or("not recorded").into(),
        expiry: String::new(),
        amount: format!("sleeve {}", words::mm(plan.computed.sleeve_um)),
        note: String::new(),
    }
}

fn instruments(case: &Case, plan: &Plan) -> Vec<Material> {
    let Some(used) = answer(case, TaskKind::Instruments) else {
        let why = tasks::why_not(case, TaskKind::Instruments);
        return vec![bare("Instruments", why)];
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
        return bare("Instrument", format!("{id} (not in the plan)"));
    };
    let item = match known.kind {
        InstrumentKind::PressureGauge => "Pressure gauge",
        InstrumentKind::Thermometer => "Thermometer",
        InstrumentKind::CameraCounter => "Camera counter",
        InstrumentKind::Scale => "Scale",
        InstrumentKind::Tape => "Tape",
        InstrumentKind::GasMeter => "Gas meter",
    };
    let calibrated = match known.calibrated_to.as_str() {
        "" => "no calibration asked".into(),
        date => format!("calibrated to {date}"),
    };
    Material {
        item: item.into(),
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
