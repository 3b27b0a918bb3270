//! Cover: how far the patch reaches past the defect on each side, once every error has had its share.

use serde::{Deserialize, Serialize};

use super::Refused;
use super::refused::{not_negative, on_earth, positive};
use crate::units::Length;

/// Where an error of the position comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum ErrorKind {
    /// Of the inspection's distance; drops out where the mark was made with the camera on the defect in the same run.
    Inspection,
    Placement,
    MarkReading,
}

/// One error of the position, always counted against the cover.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PositionError {
    pub kind: ErrorKind,
    pub size_um: Length,
    /// The instrument, contract or sheet.
    pub source: String,
}

/// Where patch and defect lie: stations from the upstream node.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Placing {
    pub defect_from_um: Length,
    pub defect_to_um: Length,
    pub patch_length_um: Length,
    pub patch_centre_um: Length,
}

/// The cover on each side; below zero the defect's end may lie outside the patch.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Cover {
    pub upstream_um: Length,
    pub downstream_um: Length,
    /// Patch centre less defect centre; above zero is downstream.
    pub offset_um: Length,
    /// The sum of the errors that were counted.
    pub errors_um: Length,
    /// What was counted, in the order given.
    pub counted: Vec<PositionError>,
}

impl Cover {
    /// Returns the worse side.
    pub fn least(&self) -> Length {
        self.upstream_um.min(self.downstream_um)
    }

    /// Returns by how much the worse side is short of what the contract asks; `None` if it is enough.
    pub fn short_by(&self, needed: Length) -> Option<Length> {
        let missing = Length::from_um(needed.as_um().saturating_sub(self.least().as_um()));
        (missing > Length::from_um(0)).then_some(missing)
    }
}

/// Returns the cover on each side: `(patch − defect)/2 ∓ offset − (inspection + placement + mark reading)`.
///
/// `marked_on_defect` says that the mark was made with the camera on the defect in the same run: then errors of kind
/// `Inspection` drop out. Rounded down to 1 µm on each side.
///
/// Errors: `OutOfRange` for a patch without length, a defect that ends before it begins, an error below zero, or no
/// placement or mark reading error at all (and no inspection error, where it counts); `SourceMissing`.
/// Source: design rule of this project. The errors' sizes are the instruments', the contract's and the sheet's.
pub fn cover(placing: &Placing, errors: &[PositionError], marked_on_defect: bool) -> Result<Cover, Refused> {
    let patch = positive("patch length", placing.patch_length_um)?.as_um();
    let from = on_earth("defect", placing.defect_from_um)?.as_um();
    let to = on_earth("defect", placing.defect_to_um)?.as_um();
    if to < from {
        return Err(Refused::out_of_range("defect", "must not end before it begins"));
    }
    errors_are_sound(errors, marked_on_defect)?;
    let counts = |error: &&PositionError| !(marked_on_defect && error.kind == ErrorKind::Inspection);
    let counted: Vec<PositionError> = errors.iter().filter(counts).cloned().collect();
    let sum = counted.iter().fold(0_i64, |sum, error| sum.saturating_add(error.size_um.as_um()));
    // Twice the patch's ends, so that half a micrometre is not lost before the last step.
    let centre = on_earth("patch centre", placing.patch_centre_um)?.as_um() * 2;
    let upstream = (2 * from - (centre - patch)).div_euclid(2).saturating_sub(sum);
    let downstream = (centre + patch - 2 * to).div_euclid(2).saturating_sub(sum);
    Ok(Cover {
        upstream_um: Length::from_um(upstream),
        downstream_um: Length::from_um(downstream),
        offset_um: Length::from_um((centre - from - to) / 2),
        errors_um: Length::from_um(sum),
        counted,
    })
}

fn errors_are_sound(errors: &[PositionError], marked_on_defect: bool) -> Result<(), Refused> {
    for error in errors {
        not_negative("position error", error.size_um)?;
        if error.source.trim().is_empty() {
            return Err(Refused::SourceMissing { field: format!("position error ({:?})", error.kind) });
        }
    }
    let missing = |kind| !errors.iter().any(|error| error.kind == kind);
    let needed = [
        (ErrorKind::Inspection, "inspection error", !marked_on_defect),
        (ErrorKind::Placement, "placement error", true),
        (ErrorKind::MarkReading, "mark reading", true),
    ];
    match needed.iter().find(|(kind, _, needed)| *needed && missing(*kind)) {
        Some((_, field, _)) => Err(Refused::out_of_range(field, "must be given, 0 is allowed")),
        None => Ok(()),
    }
}

/// Returns the error of a distance counter at a distance: `parts per million × distance`, rounded up to the millimetre.
///
/// Errors: `OutOfRange` for a distance or a share below zero, or a share above 10 %.
/// Source: the counter's sheet; rounding is a design rule of this project.
pub fn counter_error(distance: Length, parts_per_million: u32) -> Result<Length, Refused> {
    let distance_um = not_negative("distance", distance)?.as_um();
    if parts_per_million > 100_000 {
        return Err(Refused::out_of_range("counter error", "must be at most 10 %"));
    }
    let scaled = i128::from(distance_um) * i128::from(parts_per_million);
    let millimetres = (scaled + 999_999_999) / 1_000_000_000;
    Ok(Length::from_um(millimetres as i64 * 1000))
}

#[cfg(test)]
pub(super) mod tests {
    use super::*;
    use proptest::prelude::*;

    pub fn mm(value: f64) -> Length {
        Length::from_mm(value).unwrap()
    }

    fn error(kind: ErrorKind, size: f64) -> PositionError {
        PositionError { kind, size_um: mm(size), source: "invented instrument sheet".into() }
    }

    fn errors() -> Vec<PositionError> {
        vec![error(ErrorKind::Inspection, 15.0), error(ErrorKind::Placement, 10.0), error(ErrorKind::MarkReading, 4.0)]
    }

    fn placing() -> Placing {
        Placing {
            defect_from_um: mm(7120.0),
            defect_to_um: mm(7400.0),
            patch_length_um: mm(600.0),
            patch_centre_um: mm(7257.0),
        }
    }

    #[test]
    fn the_worked_example_covers_134_and_128_mm() {
        let found = cover(&placing(), &errors(), false).unwrap();
        assert_eq!((found.upstream_um, found.downstream_um), (mm(134.0), mm(128.0)));
        assert_eq!((found.offset_um, found.errors_um), (mm(-3.0), mm(29.0)));
        assert_eq!(found.short_by(mm(100.0)), None);
        assert_eq!(found.short_by(mm(150.0)), Some(mm(22.0)));
    }

    #[test]
    fn marked_with_the_camera_on_the_defect_the_inspection_error_drops_out() {
        let found = cover(&placing(), &errors(), true).unwrap();
        assert_eq!((found.upstream_um, found.errors_um, found.counted.len()), (mm(149.0), mm(14.0), 2));
    }

    #[test]
    fn an_error_without_a_source_or_left_out_is_refused() {
        let mut unsourced = errors();
        unsourced[0].source = " ".into();
        assert!(matches!(cover(&placing(), &unsourced, false), Err(Refused::SourceMissing { .. })));
        assert!(cover(&placing(), &errors()[1..], false).is_err());
        assert!(cover(&placing(), &errors()[1..], true).is_ok());
        assert!(cover(&placing(), &[], true).is_err());
    }

    #[test]
    fn a_short_patch_has_less_than_no_cover() {
        let short = Placing { patch_length_um: mm(200.0), ..placing() };
        assert!(cover(&short, &errors(), false).unwrap().least() < mm(0.0));
    }

    #[test]
    fn a_counter_of_0_2_percent_is_off_by_15_mm_at_7_26_m() {
        assert_eq!(counter_error(mm(7260.0), 2000), Ok(mm(15.0)));
        assert_eq!(counter_error(mm(22_850.0), 2000), Ok(mm(46.0)));
        // 1 ft in 1000 ft, City of Santa Ana CA, CCTV RFP, p. 16: 30 mm at 30 m, 90 mm at 90 m.
        assert_eq!(counter_error(mm(30_000.0), 1000), Ok(mm(30.0)));
        assert_eq!(counter_error(mm(90_000.0), 1000), Ok(mm(90.0)));
    }

    proptest! {
        #[test]
        fn both_sides_share_what_the_patch_has_over(centre in -9_000_000i64..9_000_000) {
            let moved = Placing { patch_centre_um: Length::from_um(centre), ..placing() };
            let found = cover(&moved, &errors(), false).unwrap();
            let over = placing().patch_length_um.as_um() - 280_000 - 2 * found.errors_um.as_um();
            prop_assert_eq!(found.upstream_um.as_um() + found.downstream_um.as_um(), over);
        }
    }

    proptest! {
        #[test]
        fn no_lengths_panic(a in any::<(i64, i64, i64, i64)>(), sizes in prop::array::uniform3(any::<i64>())) {
            let um = Length::from_um;
            let placing = Placing { defect_from_um: um(a.0), defect_to_um: um(a.1), patch_length_um: um(a.2), patch_centre_um: um(a.3) };
            let errors: Vec<_> = errors().into_iter().zip(sizes).map(|(error, size)| PositionError { size_um: um(size), ..error }).collect();
            if let Ok(found) = cover(&placing, &errors, false) {
                let _ = found.short_by(um(a.0));
            }
            let _ = counter_error(um(a.0), 2000);
        }
    }
}
