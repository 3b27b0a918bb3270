//! What goes round the packer: sleeve, membrane, patch with their bands, and the resin in it.

use serde::Serialize;

use super::super::rules::{Broken, Rule, n};
use super::super::times;
use super::Case;
use super::picked::diameter_given;
use crate::checks::binding::{self, BandRule, MembraneFit, bands, sleeve_length};
use crate::checks::packer_fit::cut_for;
use crate::checks::{self};
use crate::shelf::sheets::Parts;
use crate::shelf::{PackerSheet, PatchSheet, ResinSheet};
use crate::units::{Length, Mass};

/// Sleeve, membrane, patch and resin.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Bound {
    pub sleeve_um: Length,
    /// From the sleeve's front end.
    pub sleeve_bands_um: Vec<Length>,
    /// From the patch's front end.
    pub patch_bands_um: Vec<Length>,
    pub membrane_um: Option<Length>,
    /// From the membrane's front end.
    pub membrane_bands_um: Vec<Length>,
    /// What a centred patch leaves of the packer at each end.
    pub bare_end_um: Length,
    pub wrap_um: Length,
    /// One batch: what is mixed at a time.
    pub batch_mg: Mass,
}

impl Case<'_> {
    /// Returns what goes round the packer, or `None` as long as something is not chosen.
    pub fn bound(&self) -> Option<Result<Bound, Broken>> {
        let (patch, packer, resin) = (self.picked.patch?, self.picked.packer?, self.picked.resin?);
        diameter_given(self.choice).then(|| self.wrapped(patch, packer, resin))
    }

    fn wrapped(&self, patch: &PatchSheet, packer: &PackerSheet, resin: &ResinSheet) -> Result<Bound, Broken> {
        let bare = packer.body_um.as_um().saturating_sub(patch.length_um.as_um());
        if bare < 0 {
            let values = [("patch_um", n(patch.length_um.as_um())), ("packer_um", n(packer.body_um.as_um()))];
            return Err(Broken::with(Rule::PatchLongerThanPacker, &values));
        }
        let (sleeve_um, sleeve_bands_um) = sleeve(packer).map_err(times::broken)?;
        let membrane = self.membrane(patch, packer)?;
        let plies = u16::try_from(patch.plies).unwrap_or(0);
        let wrap = cut_for(plies, self.choice.diameter_most_um, patch.seam_overlap_um.value);
        let (membrane_um, membrane_bands_um) = membrane.unzip();
        Ok(Bound {
            sleeve_um,
            sleeve_bands_um,
            patch_bands_um: bands(patch.length_um, &patch_rule(patch)).map_err(times::broken)?,
            membrane_um,
            membrane_bands_um: membrane_bands_um.unwrap_or_default(),
            bare_end_um: Length::from_um(bare.div_euclid(2)),
            wrap_um: wrap.map_err(times::broken)?,
            batch_mg: self.batch(patch, resin),
        })
    }

    /// Returns the membrane and its bands, `None` where the patch's sheet asks for none.
    ///
    /// It lies on the packer's body behind the front fitting, and ends at the back of the air fitting.
    fn membrane(&self, patch: &PatchSheet, packer: &PackerSheet) -> Result<Option<(Length, Vec<Length>)>, Broken> {
        let Some(asked) = &patch.membrane else { return Ok(None) };
        let fittings = packer.front_fitting_um.as_um().saturating_add(packer.air_fitting_um.as_um());
        let fit = MembraneFit {
            packer_to_air_fitting_um: Length::from_um(packer.body_um.as_um().saturating_add(fittings)),
            front_fitting_um: packer.front_fitting_um,
            patch_um: patch.length_um,
            least_reach_um: asked.beyond_um,
            line_has_bend: self.choice.reading_point.bends > 0,
        };
        let membrane = binding::membrane(&fit).map_err(times::broken)?;
        let bands = bands(membrane.length_um, &every(asked.pitch_um)).map_err(times::broken)?;
        Ok(Some((membrane.length_um, bands)))
    }

    /// Returns the mass of one batch: what the patch drinks, shared over the batches; whole containers are filled up.
    pub fn batch(&self, patch: &PatchSheet, resin: &ResinSheet) -> Mass {
        let batches = i64::from(self.choice.batches.max(1));
        let asked = patch.resin_mg.value.as_mg();
        match &resin.parts {
            Parts::Weighed { .. } => Mass::from_mg(up(asked, batches)),
            Parts::Containers { mass_mg, .. } => {
                let kit = mass_mg.as_mg().max(1);
                Mass::from_mg(up(up(asked, kit), batches).saturating_mul(kit))
            }
        }
    }
}

/// Returns the sleeve's length and its bands: the packer's body with the overhangs, bands where the body ends and evenly
/// between, none further apart than the pitch.
fn sleeve(packer: &PackerSheet) -> Result<(Length, Vec<Length>), checks::Refused> {
    let front = packer.sleeve_front_um.value;
    let length = sleeve_length(packer.body_um, front, packer.sleeve_rear_um.value)?;
    let on_body = bands(packer.body_um, &every(packer.sleeve_pitch_um.value))?;
    Ok((length, on_body.into_iter().map(|band| Length::from_um(band.as_um() + front.as_um())).collect()))
}

fn every(pitch_um: Length) -> BandRule {
    BandRule { at_each_end: 1, edge_um: Length::from_um(0), apart_um: Length::from_um(0), pitch_um }
}

fn patch_rule(patch: &PatchSheet) -> BandRule {
    BandRule {
        at_each_end: u16::try_from(patch.binding.end_bands).unwrap_or(0),
        edge_um: patch.binding.edge_um,
        apart_um: patch.binding.apart_um,
        pitch_um: patch.binding.pitch_um,
    }
}

/// Returns a quotient of whole numbers, rounded up.
pub fn up(dividend: i64, divisor: i64) -> i64 {
    dividend.saturating_neg().div_euclid(divisor).saturating_neg()
}
