//! Binding: where the bands go on patch, sleeve and membrane, and how long sleeve and membrane must be.

use serde::{Deserialize, Serialize};

use super::Refused;
use super::refused::{not_negative, positive};
use crate::units::Length;

/// How a piece is bound, from its sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct BandRule {
    /// Bands at each end, 1 to 100.
    pub at_each_end: u16,
    /// From the piece's end to its first band.
    pub edge_um: Length,
    /// Between the bands of one end.
    pub apart_um: Length,
    /// The farthest between neighbouring bands.
    pub pitch_um: Length,
}

/// Returns the positions of the bands from the front end, in order.
///
/// At each end n bands, the first at the edge distance, then `apart` each; between the inner ones `⌈gap/pitch⌉ − 1` bands
/// evenly, none further apart than the pitch. Positions are rounded down to 1 µm.
///
/// Errors: `TooShortToBind` with the length that would do, `2·edge + (2n − 1)·apart`; `OutOfRange` for a length or a
/// pitch that is not above zero, an edge or a spacing below zero, a spacing above the pitch, n outside 1 to 100, or
/// more than 10 000 bands.
/// Source: design rule of this project; the distances are the sheet's.
pub fn bands(length: Length, rule: &BandRule) -> Result<Vec<Length>, Refused> {
    rule_is_sound(rule)?;
    let length_um = positive("length to bind", length)?.as_um();
    let (edge, apart) = (rule.edge_um.as_um(), rule.apart_um.as_um());
    let needed = 2 * edge + (2 * i64::from(rule.at_each_end) - 1) * apart;
    if length_um < needed {
        return Err(Refused::TooShortToBind { length_um: length, needed_um: Length::from_um(needed) });
    }
    let front: Vec<i64> = (0..i64::from(rule.at_each_end)).map(|i| edge + i * apart).collect();
    let inner = front.last().copied().unwrap_or(edge);
    let between = evenly_between(inner, length_um - inner, rule.pitch_um.as_um())?;
    let rear = front.iter().rev().map(|position| length_um - position);
    Ok(front.iter().copied().chain(between).chain(rear).map(Length::from_um).collect())
}

fn rule_is_sound(rule: &BandRule) -> Result<(), Refused> {
    if !(1..=100).contains(&rule.at_each_end) {
        return Err(Refused::out_of_range("bands at each end", "must be 1 to 100"));
    }
    at_most_1_km("edge distance", not_negative("edge distance", rule.edge_um)?)?;
    at_most_1_km("band spacing", not_negative("band spacing", rule.apart_um)?)?;
    positive("pitch", rule.pitch_um)?;
    if rule.apart_um > rule.pitch_um {
        return Err(Refused::out_of_range("band spacing", "must not be above the pitch"));
    }
    Ok(())
}

fn at_most_1_km(field: &str, length: Length) -> Result<Length, Refused> {
    let kilometre = Length::from_um(1_000_000_000);
    if length <= kilometre { Ok(length) } else { Err(Refused::out_of_range(field, "must be at most 1 km")) }
}

fn evenly_between(from: i64, to: i64, pitch: i64) -> Result<Vec<i64>, Refused> {
    let gap = to - from;
    let spaces = (gap - 1).div_euclid(pitch) + 1;
    if spaces > 10_000 {
        return Err(Refused::out_of_range("pitch", "asks for more than 10 000 bands"));
    }
    Ok((1..spaces).map(|k| from + (i128::from(gap) * i128::from(k) / i128::from(spaces)) as i64).collect())
}

/// Returns the length of the sleeve: packer + front overhang + rear overhang. No rounding.
///
/// Errors: `OutOfRange` for a packer without length or an overhang below zero.
/// Source: the sheet's overhangs. As a check value: about 1 in past the front and 6 in past the back, bound every 12 in
/// (common practice, no source).
pub fn sleeve_length(packer: Length, front: Length, rear: Length) -> Result<Length, Refused> {
    let packer = at_most_1_km("packer length", positive("packer length", packer)?)?.as_um();
    let front = at_most_1_km("front overhang", not_negative("front overhang", front)?)?.as_um();
    let rear = at_most_1_km("rear overhang", not_negative("rear overhang", rear)?)?.as_um();
    Ok(Length::from_um(packer + front + rear))
}

/// What a membrane has to reach, from packer and sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct MembraneFit {
    /// From the packer's front to the back of its air fitting.
    pub packer_to_air_fitting_um: Length,
    pub front_fitting_um: Length,
    pub patch_um: Length,
    /// The least reach past each patch end; below zero where the sheet lets the membrane end under the patch.
    pub least_reach_um: Length,
    pub line_has_bend: bool,
}

/// A membrane with its reach past each patch end; below zero it ends under the patch.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Membrane {
    pub length_um: Length,
    pub reach_um: Length,
}

/// Returns the membrane: the packer's body without its front fitting, to the back of the air fitting.
///
/// The reach is that of a centred patch, `(membrane − patch)/2`, rounded down to 1 µm.
///
/// Errors: `MembraneInBend`; `MembraneTooShort`; `OutOfRange` for a length that is not above zero, or a fitting that
/// leaves nothing.
/// Source: design rule of this project; the reach is the sheet's. As a check value: bound every 9 to 12 in (common
/// practice, no source).
pub fn membrane(fit: &MembraneFit) -> Result<Membrane, Refused> {
    if fit.line_has_bend {
        return Err(Refused::MembraneInBend);
    }
    let packer = positive("packer length", fit.packer_to_air_fitting_um)?.as_um();
    let fitting = not_negative("front fitting", fit.front_fitting_um)?.as_um();
    let patch = positive("patch length", fit.patch_um)?.as_um();
    let length_um = positive("membrane", Length::from_um(packer - fitting))?;
    let reach_um = Length::from_um((length_um.as_um() - patch).div_euclid(2));
    if reach_um < fit.least_reach_um {
        return Err(Refused::MembraneTooShort { reach_um, least_um: fit.least_reach_um });
    }
    Ok(Membrane { length_um, reach_um })
}

#[cfg(test)]
mod tests {
    use super::super::cover::tests::mm;
    use super::*;
    use proptest::prelude::*;

    const INCH_MM: f64 = 25.4;

    fn inches(value: f64) -> Length {
        mm(value * INCH_MM)
    }

    /// Four times at each end half an inch apart, every 4 in between: common practice, no source. Edge invented.
    fn patch_rule() -> BandRule {
        BandRule { at_each_end: 4, edge_um: inches(0.5), apart_um: inches(0.5), pitch_um: inches(4.0) }
    }

    fn in_inches(bands: &[Length]) -> Vec<f64> {
        bands.iter().map(|band| (band.as_mm() / INCH_MM * 1000.0).round() / 1000.0).collect()
    }

    #[test]
    fn a_24_inch_patch_has_four_bands_at_each_end_and_four_between() {
        let found = bands(inches(24.0), &patch_rule()).unwrap();
        assert_eq!(in_inches(&found), [0.5, 1.0, 1.5, 2.0, 6.0, 10.0, 14.0, 18.0, 22.0, 22.5, 23.0, 23.5]);
    }

    #[test]
    fn a_patch_too_short_for_both_groups_is_told_the_length_that_would_do() {
        let refusal = bands(inches(4.0), &patch_rule()).unwrap_err();
        assert_eq!(refusal, Refused::TooShortToBind { length_um: inches(4.0), needed_um: inches(4.5) });
        let found = bands(inches(4.5), &patch_rule()).unwrap();
        assert_eq!(in_inches(&found), [0.5, 1.0, 1.5, 2.0, 2.5, 3.0, 3.5, 4.0]);
    }

    #[test]
    fn a_gap_of_exactly_the_pitch_needs_no_band() {
        assert_eq!(bands(inches(8.0), &patch_rule()).unwrap().len(), 8);
        assert_eq!(bands(inches(8.1), &patch_rule()).unwrap().len(), 9);
    }

    #[test]
    fn a_sleeve_reaches_past_both_ends_and_is_bound_every_foot() {
        // 1 in past the front, 6 in past the back, every 12 in: common practice, no source.
        let sleeve = sleeve_length(inches(40.0), inches(1.0), inches(6.0)).unwrap();
        assert_eq!(sleeve, inches(47.0));
        let rule = BandRule { at_each_end: 1, edge_um: inches(0.5), apart_um: inches(0.0), pitch_um: inches(12.0) };
        assert_eq!(in_inches(&bands(sleeve, &rule).unwrap()), [0.5, 12.0, 23.5, 35.0, 46.5]);
    }

    #[test]
    fn a_membrane_leaves_the_front_fitting_free_and_stays_out_of_bends() {
        let fit = MembraneFit {
            packer_to_air_fitting_um: mm(1000.0),
            front_fitting_um: mm(80.0),
            patch_um: mm(600.0),
            least_reach_um: mm(100.0),
            line_has_bend: false,
        };
        assert_eq!(membrane(&fit), Ok(Membrane { length_um: mm(920.0), reach_um: mm(160.0) }));
        assert_eq!(membrane(&MembraneFit { line_has_bend: true, ..fit }), Err(Refused::MembraneInBend));
        assert!(matches!(
            membrane(&MembraneFit { least_reach_um: mm(161.0), ..fit }),
            Err(Refused::MembraneTooShort { .. })
        ));
        let under = MembraneFit { patch_um: mm(1000.0), least_reach_um: mm(-50.0), ..fit };
        assert_eq!(membrane(&under).unwrap().reach_um, mm(-40.0));
    }

    proptest! {
        #[test]
        fn bands_are_in_order_mirrored_and_never_further_apart_than_the_pitch(
            length in 1i64..5_000_000, ends in 1u16..6, edge in 0i64..50_000, apart in 1i64..50_000, pitch in 50_000i64..500_000,
        ) {
            let um = Length::from_um;
            let rule = BandRule { at_each_end: ends, edge_um: um(edge), apart_um: um(apart), pitch_um: um(pitch) };
            let Ok(found) = bands(um(length), &rule) else { return Ok(()) };
            let steps: Vec<i64> = found.windows(2).map(|pair| pair[1].as_um() - pair[0].as_um()).collect();
            prop_assert!(steps.iter().all(|step| (1..=pitch).contains(step)), "{:?}", steps);
            prop_assert_eq!(found[0].as_um(), edge);
            prop_assert_eq!(found[found.len() - 1].as_um(), length - edge);
        }

        #[test]
        fn the_length_that_would_do_does(length in 1i64..100_000, ends in 1u16..6, apart in 1i64..50_000) {
            let um = Length::from_um;
            let rule = BandRule { at_each_end: ends, edge_um: um(10_000), apart_um: um(apart), pitch_um: um(100_000) };
            if let Err(Refused::TooShortToBind { needed_um, .. }) = bands(um(length), &rule) {
                prop_assert!(bands(needed_um, &rule).is_ok());
                prop_assert!(bands(um(needed_um.as_um() - 1), &rule).is_err());
            }
        }
    }

    proptest! {
        #[test]
        fn no_lengths_panic(a in prop::array::uniform5(any::<i64>()), ends in any::<u16>()) {
            let [length, edge, apart, pitch, other] = a.map(Length::from_um);
            let _ = bands(length, &BandRule { at_each_end: ends, edge_um: edge, apart_um: apart, pitch_um: pitch });
            let _ = sleeve_length(length, edge, apart);
            let _ = membrane(&MembraneFit {
                packer_to_air_fitting_um: length, front_fitting_um: edge, patch_um: apart, least_reach_um: other, line_has_bend: false,
            });
        }
    }
}
