//! Where on the map: the patch from the coordinates of its two nodes, and how far from there the phone stands.

use super::line::{Coordinates, Line};
use super::plan::{FromNode, Plan};
use super::repair::Repair;
use super::rules::{Broken, Rule, n};
use crate::facts::Position;
use crate::geodesy::{self, PatchPlace, Place, Standing};
use crate::units::Length;

/// How far from the middle of a cover somebody stands who works at it. Common practice, no source.
const BESIDE_A_NODE: Length = Length::from_um(5_000_000);

/// Returns the place of a station of the line, or `None` where a node has no coordinates or they make no line.
///
/// Source: see [`geodesy::patch_place`].
pub fn on_the_map(line: &Line, station: Length) -> Option<PatchPlace> {
    let (from, to) = (line.upstream.place?, line.downstream.place?);
    geodesy::patch_place(degrees(from), degrees(to), station, line.length_um).ok()
}

/// Returns how far a position is from the node where the packer goes in; `None` without a position or coordinates.
pub fn from_node(repair: &Repair, position: &Position) -> Option<Standing> {
    let line = &repair.line;
    let node = match repair.plan.as_ref().map(|plan| plan.choice.from_node) {
        Some(FromNode::Downstream) => &line.downstream,
        Some(FromNode::Upstream) | None => &line.upstream,
    };
    geodesy::standing(position, degrees(node.place?), BESIDE_A_NODE).ok()?
}

/// Returns how far a position is from a place on the line, plausible or not.
pub fn from_place(place: Place, position: &Position) -> Option<f64> {
    let standing = geodesy::standing(position, place, BESIDE_A_NODE).ok()??;
    Some(standing.distance_m)
}

/// Returns the question that is asked where the phone can't be at the node by its own accuracy.
pub fn far_from_node(repair: &Repair, position: &Position) -> Option<Broken> {
    let standing = from_node(repair, position).filter(|standing| standing.plausible == Some(false))?;
    Some(Broken::with(Rule::FarFromNode, &[("distance_um", n((standing.distance_m * 1e6) as i64))]))
}

/// Returns the centre of the patch that this repair places, by the plan; that of the defect before.
pub fn centre(repair: &Repair) -> Length {
    let planned = |plan: &Plan| plan.computed.patches.first().map(|patch| patch.centre());
    repair.plan.as_ref().and_then(planned).unwrap_or_else(|| repair.defect.centre())
}

fn degrees(place: Coordinates) -> Place {
    Place { lat: place.lat_e7 as f64 / 1e7, lon: place.lon_e7 as f64 / 1e7 }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::facts::PositionSource;
    use crate::procedure::tests::kit::World;

    // In the open sea on purpose; 38.4 m apart.
    const UP: Coordinates = Coordinates { lat_e7: 464_120_700, lon_e7: -248_853_000 };
    const DOWN: Coordinates = Coordinates { lat_e7: 464_123_807, lon_e7: -248_850_899 };

    fn repair() -> Repair {
        let mut repair = World::planned().repair().clone();
        repair.line.upstream.place = Some(UP);
        repair.line.downstream.place = Some(DOWN);
        repair
    }

    fn at(place: Coordinates, accuracy_mm: i64) -> Position {
        Position::Fix {
            lat_e7: place.lat_e7,
            lon_e7: place.lon_e7,
            accuracy_mm: Some(accuracy_mm),
            age_ms: 1_000,
            source: PositionSource::Receiver,
        }
    }

    #[test]
    fn the_patch_lies_between_its_nodes_at_its_share_of_the_line() {
        let repair = repair();
        let found = on_the_map(&repair.line, centre(&repair)).unwrap();
        assert!((found.place.lat - 46.41207).abs() < 1e-4 && found.place.lat > 46.41207);
        assert!(found.longer_than_map_m.abs() < 1.0);
        assert!(from_place(found.place, &at(UP, 4_000)).unwrap() < 10.0);
    }

    #[test]
    fn a_phone_at_the_other_node_is_asked_about_and_one_beside_the_cover_is_not() {
        let repair = repair();
        assert_eq!(far_from_node(&repair, &at(DOWN, 4_000)).unwrap().rule, Rule::FarFromNode);
        assert_eq!(far_from_node(&repair, &at(UP, 4_000)), None);
        // So inexact that it may well be here.
        assert_eq!(far_from_node(&repair, &at(DOWN, 30_000)), None);
    }

    #[test]
    fn without_coordinates_nothing_is_asked() {
        let mut repair = repair();
        repair.line.upstream.place = None;
        assert_eq!(far_from_node(&repair, &at(DOWN, 4_000)), None);
        assert!(on_the_map(&repair.line, centre(&repair)).is_none());
    }
}
