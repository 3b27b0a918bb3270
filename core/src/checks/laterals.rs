//! Laterals: which openings a patch covers.

use serde::{Deserialize, Serialize};

use super::Refused;
use super::clock_face::{Extent, Hour, View};
use super::refused::{on_earth, positive};
use crate::maths;
use crate::units::Length;

/// A connection to the line.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Lateral {
    /// The middle of its opening, from the same node as the patch.
    pub station_um: Length,
    pub at: Hour,
    pub view: View,
    /// Its bore.
    pub dn_um: Length,
}

/// Where a patch lies.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PatchArea {
    pub from_um: Length,
    pub to_um: Length,
    pub extent: Extent,
    pub inside_diameter_um: Length,
}

/// Returns the indices of the laterals whose opening the patch touches, in the order given.
///
/// An opening reaches from `station − DN/2` to `station + DN/2` and around by `asin(DN/ID)` to each side of its hour; one
/// that only touches the patch's edge counts. Errors: `OutOfRange` for a bore or a diameter that is not above zero, or
/// a patch that ends before it begins.
/// Source: geometry (a round opening at a right angle); design rule of this project.
pub fn covered(patch: &PatchArea, laterals: &[Lateral]) -> Result<Vec<usize>, Refused> {
    positive("inside diameter", patch.inside_diameter_um)?;
    on_earth("patch", patch.from_um)?;
    if on_earth("patch", patch.to_um)? < patch.from_um {
        return Err(Refused::out_of_range("patch", "must not end before it begins"));
    }
    for lateral in laterals {
        positive("bore of a lateral", lateral.dn_um)?;
        on_earth("station of a lateral", lateral.station_um)?;
    }
    let touched = |lateral: &Lateral| along(patch, lateral) && around(patch, lateral);
    Ok(laterals.iter().enumerate().filter(|(_, lateral)| touched(lateral)).map(|(index, _)| index).collect())
}

fn along(patch: &PatchArea, lateral: &Lateral) -> bool {
    let (station, dn) = (lateral.station_um.as_um(), lateral.dn_um.as_um());
    2 * station + dn >= 2 * patch.from_um.as_um() && 2 * station - dn <= 2 * patch.to_um.as_um()
}

fn around(patch: &PatchArea, lateral: &Lateral) -> bool {
    let (from, sweep) = patch.extent.seen(lateral.view).sector();
    let share = (lateral.dn_um.as_mm() / patch.inside_diameter_um.as_mm()).min(1.0);
    let half = maths::asin(share).to_degrees();
    // Degrees clockwise from the sector's begin to the opening's middle.
    let beyond = f64::from((lateral.at.degrees() + 360 - from) % 360);
    beyond <= f64::from(sweep) + half || beyond >= 360.0 - half
}

#[cfg(test)]
mod tests {
    use super::super::cover::tests::mm;
    use super::*;

    fn lateral(station: f64, at: u8, dn: f64) -> Lateral {
        Lateral { station_um: mm(station), at: Hour::new(at).unwrap(), view: View::Downstream, dn_um: mm(dn) }
    }

    fn patch(extent: Extent) -> PatchArea {
        PatchArea { from_um: mm(6957.0), to_um: mm(7557.0), extent, inside_diameter_um: mm(199.0) }
    }

    fn all_round() -> PatchArea {
        patch(Extent::AllRound { view: View::Downstream })
    }

    #[test]
    fn the_worked_example_covers_the_lateral_at_7_46_m_only() {
        let laterals = [
            lateral(4850.0, 9, 100.0),
            lateral(7460.0, 10, 100.0),
            lateral(19_300.0, 2, 100.0),
            lateral(31_700.0, 9, 100.0),
        ];
        assert_eq!(covered(&all_round(), &laterals), Ok(vec![1]));
    }

    #[test]
    fn an_opening_that_only_reaches_the_edge_counts() {
        assert_eq!(covered(&all_round(), &[lateral(7607.0, 3, 100.0)]), Ok(vec![0]));
        assert_eq!(covered(&all_round(), &[lateral(7607.001, 3, 100.0)]), Ok(vec![]));
        assert_eq!(covered(&all_round(), &[lateral(6907.0, 3, 100.0)]), Ok(vec![0]));
    }

    #[test]
    fn a_patch_on_the_crown_leaves_a_lateral_at_the_springline_open() {
        let crown = Extent::between(Hour::new(11).unwrap(), Hour::new(1).unwrap(), View::Downstream).unwrap();
        let laterals = [lateral(7200.0, 12, 100.0), lateral(7200.0, 3, 100.0), lateral(7200.0, 2, 100.0)];
        assert_eq!(covered(&patch(crown), &laterals), Ok(vec![0, 2]));
        let left = Extent::between(Hour::new(8).unwrap(), Hour::new(10).unwrap(), View::Upstream).unwrap();
        assert_eq!(covered(&patch(left), &laterals), Ok(vec![1, 2]));
    }

    #[test]
    fn a_bore_of_nothing_is_refused() {
        assert!(covered(&all_round(), &[lateral(7200.0, 3, 0.0)]).is_err());
    }
}
