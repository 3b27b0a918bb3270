//! Positions on the ground: distance and direction between two points, and the position of a station along a line.
//!
//! WGS 84, Karney's geodesics. The library takes its sines from `libm`, as [`crate::maths`] does.

use geographiclib_rs::{DirectGeodesic, Geodesic, InverseGeodesic};
use serde::{Deserialize, Serialize};
use thiserror::Error;

use crate::facts::Position;
use crate::units::Length;

/// Where the formulas come from.
pub const SOURCE: &str =
    "C. F. F. Karney, Algorithms for geodesics, J. Geodesy 87 (2013), WGS 84, by the geographiclib-rs library";

/// A station this far past the end is the end: recorded lengths are whole micrometres.
const RECORDED_STEP_M: f64 = 1e-6;

/// How many times its stated accuracy (68 %) a position may be off and still be believed.
const BELIEVED: f64 = 3.0;

/// A position in WGS 84, decimal degrees: latitude −90 to 90, longitude −360 to 360, east positive.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Place {
    pub lat: f64,
    pub lon: f64,
}

/// Why there is no answer.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, Error)]
#[serde(tag = "rule", rename_all = "snake_case")]
pub enum OffTheMap {
    #[error("{field} must be {must}")]
    OutOfRange { field: String, must: String },
    #[error("station {station_m:.3} m is outside the line, which is {line_m:.3} m long between its two nodes")]
    OutsideLine { station_m: f64, line_m: f64 },
}

/// The shortest way between two places.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Way {
    pub distance_m: f64,
    /// Directions in degrees clockwise from north, above −180 and up to 180: at the start, and onwards at the end. None
    /// where both places are the same.
    pub azimuths_deg: Option<(f64, f64)>,
}

impl Place {
    fn checked(self, field: &str) -> Result<Self, OffTheMap> {
        let off = |must: &str| Err(OffTheMap::OutOfRange { field: field.into(), must: must.into() });
        if !(self.lat.is_finite() && self.lat.abs() <= 90.0) {
            return off("a place with lat from -90 to 90 degrees");
        }
        if !(self.lon.is_finite() && self.lon.abs() <= 360.0) {
            return off("a place with lon from -360 to 360 degrees");
        }
        Ok(self)
    }
}

/// Returns the geodesic between two places. No rounding.
///
/// Where several ways are equally short (opposite points of the ellipsoid), one of them, with its own two directions.
/// Errors: `OutOfRange` (`from`, `to`). Source: [`SOURCE`]. Vectors: `fixtures/checks/geodesic.json`.
pub fn way(from: Place, to: Place) -> Result<Way, OffTheMap> {
    let (from, to) = (from.checked("from")?, to.checked("to")?);
    let (distance_m, at_from, at_to, _): (f64, f64, f64, f64) =
        Geodesic::wgs84().inverse(from.lat, from.lon, to.lat, to.lon);
    let azimuths = || (folded(at_from), folded(at_to));
    Ok(Way { distance_m, azimuths_deg: (distance_m > 0.0).then(azimuths) })
}

fn folded(degrees: f64) -> f64 {
    let turned = degrees.rem_euclid(360.0);
    if turned > 180.0 { turned - 360.0 } else { turned }
}

/// Returns the place of a station along the geodesic from one node to the other, longitude above −180 and up to 180.
///
/// Errors: `OutOfRange` (`from`, `to`, `station_m`); `OutsideLine` before the start and more than 1 µm past the end.
/// Source: [`SOURCE`]. Vectors: `fixtures/checks/station-position.json`.
pub fn at_station(from: Place, to: Place, station_m: f64) -> Result<Place, OffTheMap> {
    let found = way(from, to)?;
    if !station_m.is_finite() {
        return Err(OffTheMap::OutOfRange { field: "station_m".into(), must: "a finite number of metres".into() });
    }
    if station_m < 0.0 || station_m > found.distance_m + RECORDED_STEP_M {
        return Err(OffTheMap::OutsideLine { station_m, line_m: found.distance_m });
    }
    let Some((azimuth, _)) = found.azimuths_deg else { return Ok(from) };
    let (lat, lon): (f64, f64) = Geodesic::wgs84().direct(from.lat, from.lon, azimuth, station_m);
    Ok(Place { lat, lon: folded(lon) })
}

/// Where a patch lies on the map.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PatchPlace {
    pub place: Place,
    /// The measured length of the line less the distance of its nodes on the map. Far from 0, one of the two is wrong, or
    /// the line is not straight.
    pub longer_than_map_m: f64,
}

/// Returns the place of a patch from the two nodes' coordinates, its station and the measured length of the line.
///
/// The station is taken as a share of the measured length, so that an error of either spreads evenly:
/// `place = station/length` of the way. Errors: `OutOfRange` for places, or a length not above 0; `OutsideLine`.
/// Source: design rule of this project; [`SOURCE`] for the way.
pub fn patch_place(from: Place, to: Place, station: Length, line: Length) -> Result<PatchPlace, OffTheMap> {
    let (station_m, line_m) = (station.as_m(), line.as_m());
    if line_m <= 0.0 {
        return Err(OffTheMap::OutOfRange { field: "line".into(), must: "longer than 0".into() });
    }
    if !(0.0..=line_m).contains(&station_m) {
        return Err(OffTheMap::OutsideLine { station_m, line_m });
    }
    let map_m = way(from, to)?.distance_m;
    let place = at_station(from, to, (station_m / line_m * map_m).min(map_m))?;
    Ok(PatchPlace { place, longer_than_map_m: line_m - map_m })
}

/// How far a phone stood from a place, and whether that can be.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Standing {
    pub distance_m: f64,
    /// The distance is at most three times the position's accuracy plus what the place itself is worth. None if the
    /// position states no accuracy.
    pub plausible: Option<bool>,
}

/// Returns how far a position is from a place; `None` without a position.
///
/// `place_accuracy` is how well the place itself is known, and how far from it one may rightly stand. A question ("is this
/// the right manhole?"), never a gate. Errors: `OutOfRange` for a place that is none.
/// Source: design rule of this project (three times the radius of 68 %).
pub fn standing(position: &Position, place: Place, place_accuracy: Length) -> Result<Option<Standing>, OffTheMap> {
    let Position::Fix { lat_e7, lon_e7, accuracy_mm, .. } = position else { return Ok(None) };
    let here = Place { lat: *lat_e7 as f64 / 1e7, lon: *lon_e7 as f64 / 1e7 };
    let distance_m = way(here, place)?.distance_m;
    let within = |accuracy_mm: i64| distance_m <= BELIEVED * accuracy_mm as f64 / 1e3 + place_accuracy.as_m();
    Ok(Some(Standing { distance_m, plausible: accuracy_mm.map(within) }))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::facts::{NoPosition, PositionSource};
    use proptest::prelude::*;

    // In the open sea on purpose.
    const FROM: Place = Place { lat: 46.41207, lon: -24.88530 };
    const TO: Place = Place { lat: 46.41238, lon: -24.88509 };

    fn metres(value: f64) -> Length {
        Length::from_m(value).unwrap()
    }

    fn fix(place: Place, accuracy_mm: Option<i64>) -> Position {
        let e7 = |degrees: f64| (degrees * 1e7).round() as i64;
        Position::Fix {
            lat_e7: e7(place.lat),
            lon_e7: e7(place.lon),
            accuracy_mm,
            age_ms: 3000,
            source: PositionSource::Receiver,
        }
    }

    #[test]
    fn the_ends_of_the_line_are_its_nodes() {
        let long = way(FROM, TO).unwrap().distance_m;
        let (start, end) = (at_station(FROM, TO, 0.0).unwrap(), at_station(FROM, TO, long).unwrap());
        assert!((start.lat - FROM.lat).abs() < 1e-10 && (end.lat - TO.lat).abs() < 1e-10);
        assert!(matches!(at_station(FROM, TO, long + 0.001), Err(OffTheMap::OutsideLine { .. })));
        assert!(matches!(at_station(FROM, TO, -0.001), Err(OffTheMap::OutsideLine { .. })));
    }

    #[test]
    fn the_same_place_has_no_direction() {
        let none = way(FROM, FROM).unwrap();
        assert_eq!((none.distance_m, none.azimuths_deg), (0.0, None));
        assert_eq!(at_station(FROM, FROM, 0.0), Ok(FROM));
    }

    #[test]
    fn a_patch_lies_at_its_share_of_the_measured_line() {
        let found = patch_place(FROM, TO, metres(19.2), metres(38.4)).unwrap();
        let middle = at_station(FROM, TO, way(FROM, TO).unwrap().distance_m / 2.0).unwrap();
        assert!((found.place.lat - middle.lat).abs() < 1e-12);
        assert!(found.longer_than_map_m.abs() < 1.0);
        assert!(patch_place(FROM, TO, metres(38.5), metres(38.4)).is_err());
    }

    #[test]
    fn a_phone_far_from_the_manhole_is_asked_about() {
        let near = standing(&fix(FROM, Some(4_000)), FROM, metres(2.0)).unwrap().unwrap();
        assert_eq!(near.plausible, Some(true));
        let far = standing(&fix(TO, Some(4_000)), FROM, metres(2.0)).unwrap().unwrap();
        assert!(far.distance_m > 30.0);
        assert_eq!(far.plausible, Some(false));
        assert_eq!(standing(&fix(TO, None), FROM, metres(2.0)).unwrap().unwrap().plausible, None);
        let absent = Position::Absent { why: NoPosition::NotYet };
        assert_eq!(standing(&absent, FROM, metres(2.0)), Ok(None));
    }

    proptest! {
        #[test]
        fn there_and_back_is_the_same_distance(a in -90.0..90.0f64, b in -180.0..180.0f64, c in -90.0..90.0f64, d in -180.0..180.0f64) {
            let (from, to) = (Place { lat: a, lon: b }, Place { lat: c, lon: d });
            let (there, back) = (way(from, to).unwrap().distance_m, way(to, from).unwrap().distance_m);
            prop_assert!((there - back).abs() < 1e-6);
        }

        #[test]
        fn no_place_panics(a in any::<f64>(), b in any::<f64>(), c in any::<f64>(), d in any::<f64>(), station in any::<f64>()) {
            let _ = at_station(Place { lat: a, lon: b }, Place { lat: c, lon: d }, station);
        }
    }
}
