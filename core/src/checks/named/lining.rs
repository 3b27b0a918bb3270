//! Wall thickness and resin by name.

use serde_json::{Value, json};

use super::CheckError;
use super::input::Input;
use crate::checks::resin::{self, Plies};
use crate::checks::wall::{self, Edition, Ground, Lining};

pub fn ovality_factor(input: &Input) -> Result<Value, CheckError> {
    Ok(json!({ "factor": wall::ovality_factor(input.number(&wall::OVALITY_PCT)?)? }))
}

pub fn wall_thickness(input: &Input) -> Result<Value, CheckError> {
    let fully = input.word(&wall::CONDITION, |word| match word {
        "partially_deteriorated" => Some(false),
        "fully_deteriorated" => Some(true),
        _ => None,
    })?;
    let ground = if fully { Some(ground(input)?) } else { None };
    let found = wall::wall(&lining(input)?, ground.as_ref())?;
    let mut out = json!({
        "groundwater_kpa": found.groundwater_kpa,
        "buckling_mm": found.buckling_mm,
        "bending_mm": found.bending_mm,
        "stiffness_mm": found.stiffness_mm,
        "required_mm": found.required_mm,
        "governs": found.governs,
        "strength": "flexural_strength_mpa as given; the one who gives it says whether short or long term",
        "caution": "a check for a licensed engineer, not a design",
    });
    if let (Some(full), Some(object)) = (found.full, out.as_object_mut()) {
        object.insert("total_load_kpa".into(), full.total_load_kpa.into());
        object.insert("buoyancy_factor".into(), full.buoyancy_factor.into());
        object.insert("elastic_support".into(), full.elastic_support.into());
        object.insert("full_mm".into(), full.full_mm.into());
        object.insert("edition".into(), json!(full.edition));
    }
    Ok(out)
}

fn lining(input: &Input) -> Result<Lining, CheckError> {
    Ok(Lining {
        inside_diameter_mm: input.number(&wall::INSIDE_DIAMETER_MM)?,
        ovality_pct: input.number(&wall::OVALITY_PCT)?,
        modulus_long_term_mpa: input.number(&wall::MODULUS_LONG_TERM_MPA)?,
        modulus_initial_mpa: input.number(&wall::MODULUS_INITIAL_MPA)?,
        flexural_strength_mpa: input.number(&wall::FLEXURAL_STRENGTH_MPA)?,
        safety_factor: input.number(&wall::SAFETY_FACTOR)?,
        enhancement_factor: input.number(&wall::ENHANCEMENT_FACTOR)?,
        poisson_ratio: input.number(&wall::POISSON_RATIO)?,
        groundwater_above_invert_m: input.number(&wall::GROUNDWATER_ABOVE_INVERT_M)?,
    })
}

fn ground(input: &Input) -> Result<Ground, CheckError> {
    Ok(Ground {
        cover_above_crown_m: input.number(&wall::COVER_ABOVE_CROWN_M)?,
        groundwater_above_crown_m: input.number(&wall::GROUNDWATER_ABOVE_CROWN_M)?,
        soil_unit_weight_kn_m3: input.number(&wall::SOIL_UNIT_WEIGHT_KN_M3)?,
        live_load_kpa: input.number(&wall::LIVE_LOAD_KPA)?,
        soil_modulus_mpa: input.number(&wall::SOIL_MODULUS_MPA)?,
        edition: input.word(&wall::EDITION, |word| match word {
            "f1216-07b" => Some(Edition::F1216_07b),
            "f1216-07a" => Some(Edition::F1216_07a),
            _ => None,
        })?,
    })
}

pub fn resin_wall(input: &Input) -> Result<Value, CheckError> {
    let found = resin::in_wall(&resin::Wall {
        inside_diameter_mm: input.number(&wall::INSIDE_DIAMETER_MM)?,
        thickness_mm: input.number(&resin::THICKNESS_MM)?,
        length_m: input.number(&resin::PATCH_LENGTH_M)?,
        void_fraction: input.number(&resin::VOID_FRACTION)?,
        excess_fraction: input.number(&resin::EXCESS_FRACTION)?,
        density_kg_l: input.number(&resin::DENSITY_KG_L)?,
    })?;
    Ok(json!({ "volume_l": found.volume_l, "mass_kg": found.mass_kg }))
}

pub fn resin_laminate(input: &Input) -> Result<Value, CheckError> {
    let found = resin::in_laminate(&Plies {
        plies: input.number(&resin::PLIES)?,
        areal_weight_g_m2: input.number(&resin::AREAL_WEIGHT_G_M2)?,
        fibre_volume_fraction: input.number(&resin::FIBRE_VOLUME_FRACTION)?,
        fibre_density_kg_l: input.number(&resin::FIBRE_DENSITY_KG_L)?,
        resin_density_kg_l: input.number(&resin::RESIN_DENSITY_KG_L)?,
        width_m: input.number(&resin::WIDTH_M)?,
        length_m: input.number(&resin::PATCH_LENGTH_M)?,
    })?;
    Ok(json!({ "thickness_mm": found.thickness_mm, "mass_kg": found.mass_kg }))
}
