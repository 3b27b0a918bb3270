//! Patches in series: several, one after the other, over a defect that is too long for one.

use serde::{Deserialize, Serialize};

use super::Refused;
use super::refused::{not_negative, on_earth, positive};
use crate::units::Length;

/// What has to be covered, and with what.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SeriesPlan {
    pub defect_from_um: Length,
    pub defect_to_um: Length,
    pub patch_length_um: Length,
    /// The cover past each end of the defect, with the errors of the position in it.
    pub cover_and_errors_um: Length,
    /// The least overlap of two neighbours, from sheet or contract.
    pub least_overlap_um: Length,
    /// The placement error of one patch: two neighbours may both be off.
    pub placement_error_um: Length,
}

/// The patches, in order of their stations.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Series {
    pub centres_um: Vec<Length>,
    /// The planned overlap of two neighbours: least overlap and twice the placement error.
    pub overlap_um: Length,
    /// What the series reaches past the asked cover, at each end.
    pub spare_um: Length,
}

/// Returns the fewest patches that cover the defect, centred on it.
///
/// `n = ⌈(needed − overlap)/(patch − overlap)⌉`, at least 1; `needed = defect + 2·(cover + errors)`,
/// `overlap = least overlap + 2·placement error`; neighbouring centres are `patch − overlap` apart. Centres and spare are
/// rounded down to 1 µm.
///
/// Errors: `OverlapTooLong`; `OutOfRange` for a patch without length, a defect that ends before it begins, a length
/// below zero, or more than 1000 patches.
/// Source: design rule of this project (geometry).
pub fn series(plan: &SeriesPlan) -> Result<Series, Refused> {
    let patch = positive("patch length", plan.patch_length_um)?.as_um();
    let from = on_earth("defect", plan.defect_from_um)?.as_um();
    let to = on_earth("defect", plan.defect_to_um)?.as_um();
    if to < from {
        return Err(Refused::out_of_range("defect", "must not end before it begins"));
    }
    let cover = not_negative("cover and errors", plan.cover_and_errors_um)?.as_um();
    let least = not_negative("least overlap", plan.least_overlap_um)?.as_um();
    let overlap = least + 2 * not_negative("placement error", plan.placement_error_um)?.as_um();
    let step = patch - overlap;
    if step <= 0 {
        let overlap_um = Length::from_um(overlap);
        return Err(Refused::OverlapTooLong { overlap_um, patch_um: plan.patch_length_um });
    }
    let needed = to - from + 2 * cover;
    let count = ((needed - overlap - 1).div_euclid(step) + 1).max(1);
    if count > 1000 {
        return Err(Refused::out_of_range("defect", "asks for more than 1000 patches"));
    }
    let reach = count * step + overlap;
    let first = (from + to - (count - 1) * step).div_euclid(2);
    Ok(Series {
        centres_um: (0..count).map(|i| Length::from_um(first + i * step)).collect(),
        overlap_um: Length::from_um(overlap),
        spare_um: Length::from_um((reach - needed).div_euclid(2)),
    })
}

#[cfg(test)]
mod tests {
    use super::super::cover::tests::mm;
    use super::*;
    use proptest::prelude::*;

    fn plan(from: f64, to: f64) -> SeriesPlan {
        SeriesPlan {
            defect_from_um: mm(from),
            defect_to_um: mm(to),
            patch_length_um: mm(600.0),
            cover_and_errors_um: mm(130.0),
            least_overlap_um: mm(100.0),
            placement_error_um: mm(10.0),
        }
    }

    #[test]
    fn a_short_defect_takes_one_patch_on_its_middle() {
        let found = series(&plan(7120.0, 7400.0)).unwrap();
        assert_eq!((found.centres_um, found.spare_um), (vec![mm(7260.0)], mm(30.0)));
    }

    #[test]
    fn a_long_defect_takes_three_that_overlap() {
        // 1260 mm asked; three patches of 600 mm with 120 mm overlap reach 1560 mm.
        let found = series(&plan(10_000.0, 11_000.0)).unwrap();
        assert_eq!(found.centres_um, [mm(10_020.0), mm(10_500.0), mm(10_980.0)]);
        assert_eq!((found.overlap_um, found.spare_um), (mm(120.0), mm(150.0)));
    }

    #[test]
    fn exactly_enough_is_enough() {
        assert_eq!(series(&plan(10_000.0, 10_820.0)).unwrap().centres_um.len(), 2);
        assert_eq!(series(&plan(10_000.0, 10_820.001)).unwrap().centres_um.len(), 3);
    }

    #[test]
    fn an_overlap_as_long_as_the_patch_is_refused() {
        let long = SeriesPlan { least_overlap_um: mm(580.0), ..plan(10_000.0, 11_000.0) };
        assert!(matches!(series(&long), Err(Refused::OverlapTooLong { .. })));
        assert!(series(&plan(11_000.0, 10_000.0)).is_err());
    }

    proptest! {
        #[test]
        fn every_series_covers_the_defect_and_one_patch_less_would_not(from in 0i64..50_000_000, long in 0i64..20_000_000) {
            let um = Length::from_um;
            let plan = SeriesPlan { defect_from_um: um(from), defect_to_um: um(from + long), ..plan(0.0, 0.0) };
            let found = series(&plan).unwrap();
            let (count, step, needed) = (found.centres_um.len() as i64, 480_000, long + 260_000);
            prop_assert!(count * step + 120_000 >= needed);
            prop_assert!(count == 1 || (count - 1) * step + 120_000 < needed);
            // Half a micrometre may be lost where the middle of the defect lies between two.
            prop_assert!(found.centres_um[0].as_um() - 300_000 <= from - 130_000);
            prop_assert!(found.centres_um[count as usize - 1].as_um() + 300_000 >= from + long + 130_000 - 1);
        }
    }

    proptest! {
        #[test]
        fn no_lengths_panic(a in prop::array::uniform6(any::<i64>())) {
            let [from, to, patch, cover, overlap, error] = a.map(Length::from_um);
            let _ = series(&SeriesPlan {
                defect_from_um: from, defect_to_um: to, patch_length_um: patch, cover_and_errors_um: cover,
                least_overlap_um: overlap, placement_error_um: error,
            });
        }
    }
}
