//! Packer and patch against the measured pipe: range, ovality, bare ends, the seam of the wrap.

use std::f64::consts::PI;

use serde::{Deserialize, Serialize};

use super::Refused;
use super::refused::{not_negative, positive};
use crate::units::Length;

/// The inside diameter as measured at the defect.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct MeasuredDiameter {
    pub least_um: Length,
    pub most_um: Length,
}

/// The ovality with the definition that was used, to be printed with it.
pub const OVALITY_DEFINITION: &str = "100 × (mean − least) / mean, mean = (least + most) / 2";

impl MeasuredDiameter {
    /// Returns the measured diameters. Errors: `OutOfRange` if one is not above zero, or the least is above the most.
    pub fn new(least: Length, most: Length) -> Result<Self, Refused> {
        positive("least inside diameter", least)?;
        positive("most inside diameter", most)?;
        if least > most {
            return Err(Refused::out_of_range("least inside diameter", "must not be above the most"));
        }
        Ok(Self { least_um: least, most_um: most })
    }

    /// Returns the ovality in percent: `100·(mean − least)/mean`, with `mean = (least + most)/2`. 0 to below 100.
    ///
    /// Source: ASTM F1216, X1 (percentage ovality of the original pipe, by the least diameter); clause from memory.
    pub fn ovality_pct(&self) -> f64 {
        let (least, most) = (self.least_um.as_mm(), self.most_um.as_mm());
        let mean = (least + most) / 2.0;
        100.0 * (mean - least) / mean
    }
}

/// Says whether the packer takes the pipe at both measured diameters; the limits belong to its range.
///
/// Errors: `PackerDoesNotFit` with the diameter that is outside; `OutOfRange` for a range upside down.
/// Source: the packer's label.
pub fn packer_fits(measured: &MeasuredDiameter, least: Length, most: Length) -> Result<(), Refused> {
    positive("packer range", least)?;
    if least > most {
        return Err(Refused::out_of_range("packer range", "must begin below its end"));
    }
    let outside = [measured.least_um, measured.most_um].into_iter().find(|id| *id < least || *id > most);
    match outside {
        Some(measured_um) => Err(Refused::PackerDoesNotFit { measured_um, least_um: least, most_um: most }),
        None => Ok(()),
    }
}

/// Says whether the packer's bare ends are long enough and equal.
///
/// Errors: `BareEndShort`; `BareEndsUnequal`; `OutOfRange` for a length below zero.
/// Source: the patch's sheet for both limits.
pub fn bare_ends(front: Length, rear: Length, least: Length, most_difference: Length) -> Result<(), Refused> {
    let (front, rear) = (not_negative("front bare end", front)?, not_negative("rear bare end", rear)?);
    let shorter = front.min(rear);
    if shorter < least {
        return Err(Refused::BareEndShort { end_um: shorter, least_um: least });
    }
    let by_um = Length::from_um((front.as_um() - rear.as_um()).abs());
    if by_um > most_difference {
        return Err(Refused::BareEndsUnequal { by_um, most_um: most_difference });
    }
    Ok(())
}

/// Returns the bare end that a centred patch leaves at each side: `(packer − patch)/2`, rounded down to 1 µm.
///
/// Errors: `OutOfRange` for a packer or a patch without length, or a patch longer than the packer.
pub fn centred_bare_end(packer: Length, patch: Length) -> Result<Length, Refused> {
    let (packer, patch) = (positive("packer length", packer)?, positive("patch length", patch)?);
    not_negative("bare end", Length::from_um((packer.as_um() - patch.as_um()).div_euclid(2)))
}

/// Returns the seam's overlap once the patch lies on the wall: `cut − layers·π·ID`, ID the largest measured.
///
/// Below zero the wrap gapes. Rounded down to 1 µm.
///
/// Errors: `SeamTooShort` below the sheet's least overlap; `OutOfRange` for a cut or a diameter not above zero, no
/// layer, or more than 100.
/// Source: geometry; the least overlap is the sheet's.
pub fn seam_overlap(cut: Length, layers: u16, largest: Length, least: Length) -> Result<Length, Refused> {
    let around = around(layers, largest)?;
    let cut = positive("cut of the patch", cut)?;
    let overlap_um = Length::from_um(cut.as_um() - around.ceil() as i64);
    if overlap_um < least { Err(Refused::SeamTooShort { overlap_um, least_um: least }) } else { Ok(overlap_um) }
}

/// Returns how wide to cut the patch around: `layers·π·ID + overlap`, rounded up to the millimetre.
///
/// Errors: those of [`seam_overlap`].
/// Source: geometry.
pub fn cut_for(layers: u16, largest: Length, overlap: Length) -> Result<Length, Refused> {
    let whole = around(layers, largest)? + not_negative("overlap", overlap)?.as_um() as f64;
    Ok(Length::from_um((whole / 1000.0).ceil() as i64 * 1000))
}

fn around(layers: u16, largest: Length) -> Result<f64, Refused> {
    if !(1..=100).contains(&layers) {
        return Err(Refused::out_of_range("layers", "must be 1 to 100"));
    }
    let diameter = positive("inside diameter", largest)?;
    if diameter.as_m() > 100.0 {
        return Err(Refused::out_of_range("inside diameter", "must be at most 100 m"));
    }
    Ok(f64::from(layers) * PI * diameter.as_um() as f64)
}

#[cfg(test)]
mod tests {
    use super::super::cover::tests::mm;
    use super::*;
    use proptest::prelude::*;

    fn measured(least: f64, most: f64) -> MeasuredDiameter {
        MeasuredDiameter::new(mm(least), mm(most)).unwrap()
    }

    #[test]
    fn a_round_pipe_has_no_ovality_and_196_to_204_has_two_percent() {
        assert_eq!(measured(200.0, 200.0).ovality_pct(), 0.0);
        assert!((measured(196.0, 204.0).ovality_pct() - 2.0).abs() < 1e-12);
        assert!(MeasuredDiameter::new(mm(204.0), mm(196.0)).is_err());
    }

    #[test]
    fn the_packer_must_take_both_diameters() {
        assert_eq!(packer_fits(&measured(196.5, 199.0), mm(150.0), mm(230.0)), Ok(()));
        let refusal = packer_fits(&measured(196.5, 199.0), mm(150.0), mm(198.0)).unwrap_err();
        assert!(matches!(refusal, Refused::PackerDoesNotFit { measured_um, .. } if measured_um == mm(199.0)));
        assert!(packer_fits(&measured(149.0, 199.0), mm(150.0), mm(230.0)).is_err());
    }

    #[test]
    fn bare_ends_are_long_enough_and_equal() {
        assert_eq!(bare_ends(mm(198.0), mm(202.0), mm(150.0), mm(10.0)), Ok(()));
        assert!(matches!(bare_ends(mm(149.0), mm(155.0), mm(150.0), mm(10.0)), Err(Refused::BareEndShort { .. })));
        assert!(matches!(bare_ends(mm(190.0), mm(201.0), mm(150.0), mm(10.0)), Err(Refused::BareEndsUnequal { .. })));
        assert_eq!(centred_bare_end(mm(1000.0), mm(600.0)), Ok(mm(200.0)));
        assert!(centred_bare_end(mm(600.0), mm(1000.0)).is_err());
    }

    #[test]
    fn the_worked_wrap_overlaps_by_79_mm_at_199_mm() {
        let overlap = seam_overlap(mm(1330.0), 2, mm(199.0), mm(50.0)).unwrap();
        assert_eq!(overlap, Length::from_um(79_646));
        assert!(matches!(seam_overlap(mm(1330.0), 2, mm(206.0), mm(50.0)), Err(Refused::SeamTooShort { .. })));
        assert_eq!(cut_for(2, mm(199.0), mm(79.0)), Ok(mm(1330.0)));
        assert!(cut_for(0, mm(199.0), mm(50.0)).is_err());
    }

    proptest! {
        #[test]
        fn no_lengths_panic(a in prop::array::uniform4(any::<i64>()), layers in any::<u16>()) {
            let [first, second, third, fourth] = a.map(Length::from_um);
            if let Ok(measured) = MeasuredDiameter::new(first, second) {
                prop_assert!((0.0..100.0).contains(&measured.ovality_pct()));
                let _ = packer_fits(&measured, third, fourth);
            }
            let _ = bare_ends(first, second, third, fourth);
            let _ = centred_bare_end(first, second);
            let _ = seam_overlap(first, layers, second, third);
            let _ = cut_for(layers, first, second);
        }
    }
}
