//! Where the patch lies on the map, and where the phone stands.

use serde::Serialize;

use crate::facts::Position;
use crate::procedure::repair::Repair;
use crate::procedure::spot;

/// The place of the patch by the coordinates of the two nodes. Degrees in units of 1e-7.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct SpotView {
    pub lat_e7: i64,
    pub lon_e7: i64,
    /// The measured length of the line less the distance on the map.
    pub longer_than_map_mm: i64,
    /// From the phone to the patch, as the crow flies; `None` without a position.
    pub phone_to_patch_mm: Option<i64>,
    /// From the phone to the node where the packer goes in.
    pub phone_to_node_mm: Option<i64>,
    /// Whether the phone can be at that node, by its own accuracy; `None` where nobody knows.
    pub plausible: Option<bool>,
}

/// Returns the spot, or `None` where a node has no coordinates.
pub fn spot(repair: &Repair, position: &Position) -> Option<SpotView> {
    let found = spot::on_the_map(&repair.line, spot::centre(repair))?;
    let standing = spot::from_node(repair, position);
    let mm = |metres: f64| (metres * 1e3).round() as i64;
    let e7 = |degrees: f64| (degrees * 1e7).round() as i64;
    Some(SpotView {
        lat_e7: e7(found.place.lat),
        lon_e7: e7(found.place.lon),
        longer_than_map_mm: mm(found.longer_than_map_m),
        phone_to_patch_mm: spot::from_place(found.place, position).map(mm),
        phone_to_node_mm: standing.map(|standing| mm(standing.distance_m)),
        plausible: standing.and_then(|standing| standing.plausible),
    })
}
