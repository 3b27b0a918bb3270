//! Resin: how much a wall or a laminate takes up.

use std::f64::consts::PI;

use super::Refused;
use super::field::Field;
use super::wall::INSIDE_DIAMETER_MM;

pub const WALL_SOURCE: &str = "geometry of a cylinder; excess for shrinkage and migration as ASTM F1216, 7.2 asks for (from \
    memory), its size is the sheet's";
pub const LAMINATE_SOURCE: &str = "fibre volume fraction by definition (rule of mixtures), common practice";

pub const THICKNESS_MM: Field = Field::above("thickness_mm", "mm", 0.0, 1000.0);
pub const PATCH_LENGTH_M: Field = Field::above("length_m", "m", 0.0, 10_000.0);
pub const VOID_FRACTION: Field = Field::above("void_fraction", "", 0.0, 1.0);
pub const EXCESS_FRACTION: Field = Field::from("excess_fraction", "", 0.0, 10.0);
pub const DENSITY_KG_L: Field = Field::above("density_kg_l", "kg/l", 0.0, 25.0);
pub const PLIES: Field = Field::from("plies", "", 1.0, 1000.0);
pub const AREAL_WEIGHT_G_M2: Field = Field::above("areal_weight_g_m2", "g/m²", 0.0, 100_000.0);
pub const FIBRE_VOLUME_FRACTION: Field = Field::above("fibre_volume_fraction", "", 0.0, 1.0);
pub const FIBRE_DENSITY_KG_L: Field = Field::above("fibre_density_kg_l", "kg/l", 0.0, 25.0);
pub const RESIN_DENSITY_KG_L: Field = Field::above("resin_density_kg_l", "kg/l", 0.0, 25.0);
pub const WIDTH_M: Field = Field::above("width_m", "m", 0.0, 1000.0);

/// A wall whose voids are filled with resin.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Wall {
    pub inside_diameter_mm: f64,
    pub thickness_mm: f64,
    pub length_m: f64,
    pub void_fraction: f64,
    pub excess_fraction: f64,
    pub density_kg_l: f64,
}

/// Resin by volume and mass.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Resin {
    pub volume_l: f64,
    pub mass_kg: f64,
}

/// Returns the resin of a wall: `V = φ·π·(D − t)·t·L·(1 + e)`, `m = ρ·V`, without rounding.
///
/// `D` the outside of the wall, which is the host pipe's inside diameter; `φ` the voids' share, `e` the excess.
/// Errors: `OutOfRange` with the field; the thickness is less than half the diameter.
/// Source: [`WALL_SOURCE`]. Vectors: `fixtures/checks/resin-wall.json`.
pub fn in_wall(wall: &Wall) -> Result<Resin, Refused> {
    let diameter_m = INSIDE_DIAMETER_MM.check(wall.inside_diameter_mm)? / 1e3;
    let thickness_m = THICKNESS_MM.check(wall.thickness_mm)? / 1e3;
    if thickness_m >= diameter_m / 2.0 {
        return Err(Refused::out_of_range(THICKNESS_MM.name, "must be less than half the inside diameter"));
    }
    let length = PATCH_LENGTH_M.check(wall.length_m)?;
    let share = VOID_FRACTION.check(wall.void_fraction)? * (1.0 + EXCESS_FRACTION.check(wall.excess_fraction)?);
    let volume_l = PI * (diameter_m - thickness_m) * thickness_m * length * 1e3 * share;
    Ok(Resin { volume_l, mass_kg: DENSITY_KG_L.check(wall.density_kg_l)? * volume_l })
}

/// A laminate of fibre plies.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Plies {
    pub plies: f64,
    pub areal_weight_g_m2: f64,
    pub fibre_volume_fraction: f64,
    pub fibre_density_kg_l: f64,
    pub resin_density_kg_l: f64,
    pub width_m: f64,
    pub length_m: f64,
}

/// A laminate's thickness and its resin.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Laminate {
    pub thickness_mm: f64,
    pub mass_kg: f64,
}

/// Returns the laminate: `t = n·m_A/(ρ_f·V_f)`, resin `m = ρ_r·(t − n·m_A/ρ_f)·width·length`, without rounding.
///
/// Errors: `OutOfRange` with the field; plies are whole.
/// Source: [`LAMINATE_SOURCE`]. Vectors: `fixtures/checks/resin-laminate.json`.
pub fn in_laminate(plies: &Plies) -> Result<Laminate, Refused> {
    let count = PLIES.check(plies.plies)?;
    if count.fract() != 0.0 {
        return Err(Refused::out_of_range(PLIES.name, "must be a whole number"));
    }
    let areal_kg_m2 = AREAL_WEIGHT_G_M2.check(plies.areal_weight_g_m2)? / 1e3;
    let fibre_m = count * areal_kg_m2 / (FIBRE_DENSITY_KG_L.check(plies.fibre_density_kg_l)? * 1e3);
    let thickness_m = fibre_m / FIBRE_VOLUME_FRACTION.check(plies.fibre_volume_fraction)?;
    let area = WIDTH_M.check(plies.width_m)? * PATCH_LENGTH_M.check(plies.length_m)?;
    let density = RESIN_DENSITY_KG_L.check(plies.resin_density_kg_l)? * 1e3;
    Ok(Laminate { thickness_mm: thickness_m * 1e3, mass_kg: density * (thickness_m - fibre_m) * area })
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn wall() -> Wall {
        Wall {
            inside_diameter_mm: 200.0,
            thickness_mm: 4.0,
            length_m: 0.6,
            void_fraction: 0.87,
            excess_fraction: 0.1,
            density_kg_l: 1.12,
        }
    }

    #[test]
    fn a_wall_thicker_than_the_pipe_is_refused() {
        assert!(in_wall(&Wall { thickness_mm: 100.0, ..wall() }).is_err());
    }

    #[test]
    fn half_a_ply_is_refused_and_all_fibre_takes_no_resin() {
        let plies = Plies {
            plies: 2.0,
            areal_weight_g_m2: 1050.0,
            fibre_volume_fraction: 1.0,
            fibre_density_kg_l: 2.55,
            resin_density_kg_l: 1.12,
            width_m: 0.45,
            length_m: 0.6,
        };
        assert_eq!(in_laminate(&plies).unwrap().mass_kg, 0.0);
        assert!(in_laminate(&Plies { plies: 1.5, ..plies }).is_err());
    }

    proptest! {
        #[test]
        fn a_thicker_wall_never_takes_less(a in 0.1..90.0f64, b in 0.1..90.0f64) {
            let mass = |thickness_mm| in_wall(&Wall { thickness_mm, ..wall() }).unwrap().mass_kg;
            prop_assert!(mass(a.max(b)) >= mass(a.min(b)));
        }
    }
}
