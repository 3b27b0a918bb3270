//! Whatever is typed or imported: an answer, never a crash.

use proptest::prelude::*;

use super::super::suggest;
use super::*;

fn small_or_any() -> impl Strategy<Value = i64> {
    prop_oneof![any::<i64>(), -100_000_000i64..100_000_000]
}

proptest! {
    #[test]
    fn no_line_and_no_choice_crash(values in prop::collection::vec(small_or_any(), 16), bytes in any::<[u8; 6]>()) {
        let um = |k: usize| Length::from_um(values[k]);
        let mut line = line();
        (line.length_um, line.height_um) = (um(0), um(1));
        line.laterals[0] = Lateral { station_um: um(2), clock: bytes[0], diameter_um: um(3) };
        let mut defect = defect(7120.0, 7400.0);
        (defect.from_um, defect.to_um) = (um(4), um(5));
        defect.observations[0].around = Around::Between { from: bytes[1], to: bytes[2] };
        let mut choice = choice();
        (choice.diameter_least_um, choice.diameter_most_um, choice.head_um, choice.behind_um) = (um(6), um(7), um(8), um(9));
        choice.temperatures.resin_mc = Temperature::from_millicelsius(values[10]);
        choice.temperatures.water_mc = Some(Temperature::from_millicelsius(values[11]));
        choice.reading_point.offset_um = um(12);
        (choice.rod_um, choice.reading_point.bends) = (um(13), values[14]);
        choice.centre_um = (bytes[3] > 128).then(|| um(15));
        (choice.series_done, choice.batches) = (bytes[4], bytes[5]);
        let shelf = shelf();
        let proposal = propose(&line, &defect, &choice, &shelf.view(), values[15]);
        prop_assert!(proposal.plan.is_some() || !proposal.breaks.is_empty());
        let _ = suggest(&line, &defect, &shelf.view());
    }

    #[test]
    fn no_sheet_crashes(values in prop::collection::vec(small_or_any(), 12)) {
        let um = |k: usize| Length::from_um(values[k]);
        let mut shelf = shelf();
        let patch = shelf.patches.iter_mut().find(|patch| patch.id == "G1050-200-600").unwrap();
        (patch.length_um, patch.plies, patch.binding.end_bands, patch.binding.pitch_um) = (um(0), values[1], values[2], um(3));
        patch.resin_mg.value = crate::units::Mass::from_mg(values[4]);
        let packer = shelf.packers.iter_mut().find(|packer| packer.id == "P-07").unwrap();
        (packer.body_um, packer.sleeve_front_um.value, packer.air_fitting_um) = (um(5), um(6), um(7));
        shelf.contracts[0].cover_least_um.value = um(8);
        shelf.contracts[0].placement_error_um.value = um(9);
        (shelf.instruments[2].error_ppm, shelf.instruments[3].error_um) = (values[10], um(11));
        let _ = propose(&line(), &defect(7120.0, 7400.0), &choice(), &shelf.view(), NOW_MS);
        let _ = suggest(&line(), &defect(7120.0, 7400.0), &shelf.view());
    }

    #[test]
    fn the_cover_of_a_plan_is_the_patch_less_defect_and_errors(shift in -200_000i64..200_000) {
        let moved = PlanChoice { centre_um: Some(Length::from_um(7_260_000 + shift)), ..choice() };
        let cover = proposed(&moved).plan.unwrap().computed.cover;
        let errors: i64 = cover.errors.iter().map(|error| error.um.as_um()).sum();
        prop_assert_eq!(cover.upstream_um.as_um() + cover.downstream_um.as_um(), 600_000 - 280_000 - 2 * errors);
    }
}
