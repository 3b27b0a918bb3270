//! Rods: how far to push, from a named reading point to the middle of the patch; and the station from either node.

use serde::{Deserialize, Serialize};

use super::Refused;
use super::refused::{not_negative, on_earth, positive};
use crate::units::Length;

/// Where the push is read: the mouth of the pipe, the cap of a cleanout.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ReadingPoint {
    /// E.g. "mouth of the pipe in MH 031", "cap of cleanout CO 4".
    pub name: String,
    /// From the node's centre along the line towards the patch; below zero on the far side of the centre.
    pub offset_um: Length,
    /// Length of the riser from the reading point down to the line; 0 at the mouth of a pipe.
    pub riser_um: Length,
    /// Bends on the way, with the length that each adds to the path.
    pub bends: Vec<Bend>,
}

/// A bend between the reading point and the patch.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Bend {
    pub angle_deg: u16,
    /// What the bend adds to the path beyond the straight stations.
    pub adds_um: Length,
}

/// What moves the packer.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "by", rename_all = "snake_case")]
pub enum Mover {
    RigidRods { pushed_from: PushedFrom },
    Hose,
    RopeFromTheOtherNode,
}

/// Where the person stands who pushes.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "place", rename_all = "snake_case")]
pub enum PushedFrom {
    Street,
    /// A cleanout in the line of the pipe: nothing has to turn.
    StraightCleanout,
    Below {
        who: String,
    },
}

/// How far to push.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Push {
    /// From the reading point to the middle of the patch.
    pub path_um: Length,
    pub whole_rods: i64,
    /// The mark on the next rod, from its rear end.
    pub mark_um: Length,
}

/// Returns the path from the reading point to the middle of the patch: `station − offset + riser + what the bends add`.
///
/// Stations run from the node at which one pushes. No rounding.
///
/// Errors: `OutsideLine` for a station beyond the line; `BehindReadingPoint`; `OutOfRange` for a riser or a bend below
/// zero, or a bend above 90°.
/// Source: design rule of this project.
pub fn path(station: Length, line: Length, from: &ReadingPoint) -> Result<Length, Refused> {
    on_the_line(station, line)?;
    let riser = not_negative("riser", from.riser_um)?.as_um();
    let mut bends = 0_i64;
    for bend in &from.bends {
        if bend.angle_deg > 90 {
            return Err(Refused::out_of_range("bend", "must be at most 90°"));
        }
        bends = not_negative("bend", bend.adds_um)?.as_um().saturating_add(bends);
    }
    let offset = on_earth("offset of the reading point", from.offset_um)?.as_um();
    let path_um = Length::from_um((station.as_um() - offset + riser).saturating_add(bends));
    if path_um > Length::from_um(0) {
        Ok(path_um)
    } else {
        Err(Refused::BehindReadingPoint { point: from.name.clone(), path_um })
    }
}

/// Returns whole rods and mark: `rods = ⌊path / rod⌋`, the mark at the remainder. No rounding.
///
/// Errors: those of [`path`]; `OutOfRange` for a rod without length; `RodsDoNotTurn` for rigid rods from the street or
/// through a riser or a bend; `WhoIsBelow` if nobody is named.
/// Source: design rule of this project; that rigid rods don't turn a corner is common practice, no source.
pub fn push(station: Length, line: Length, from: &ReadingPoint, mover: &Mover, rod: Length) -> Result<Push, Refused> {
    let path_um = path(station, line, from)?;
    let rod = positive("rod length", rod)?.as_um();
    may_turn(from, mover)?;
    Ok(Push { path_um, whole_rods: path_um.as_um() / rod, mark_um: Length::from_um(path_um.as_um() % rod) })
}

fn may_turn(from: &ReadingPoint, mover: &Mover) -> Result<(), Refused> {
    let Mover::RigidRods { pushed_from } = mover else {
        return Ok(());
    };
    let corner = |corner: String| Err(Refused::RodsDoNotTurn { corner });
    if let Some(bend) = from.bends.iter().find(|bend| bend.angle_deg > 0) {
        return corner(format!("bend of {}°", bend.angle_deg));
    }
    if from.riser_um > Length::from_um(0) {
        return corner("riser into the line".into());
    }
    match pushed_from {
        PushedFrom::Street => corner("from the street into the line".into()),
        PushedFrom::Below { who } if who.trim().is_empty() => Err(Refused::WhoIsBelow),
        PushedFrom::StraightCleanout | PushedFrom::Below { .. } => Ok(()),
    }
}

/// Returns the mark on a hose, a rope or a camera cable: the path less what already lies between its zero and the middle
/// of the patch (for a camera: how far the lens looks ahead).
///
/// Errors: `OutOfRange` if the zero lies before the reading point, or `ahead` is below zero.
/// Source: design rule of this project.
pub fn mark_on_hose(path: Length, ahead: Length) -> Result<Length, Refused> {
    let ahead = not_negative("length between the zero and the middle of the patch", ahead)?;
    not_negative("mark", Length::from_um(on_earth("path", path)?.as_um() - ahead.as_um()))
}

/// Returns the station counted from the other node: `line − station`. Twice gives the station again.
///
/// Errors: `OutsideLine`; `OutOfRange` for a line without length.
/// Source: geometry.
pub fn from_the_other_node(station: Length, line: Length) -> Result<Length, Refused> {
    on_the_line(station, line)?;
    Ok(Length::from_um(line.as_um() - station.as_um()))
}

fn on_the_line(station: Length, line: Length) -> Result<(), Refused> {
    positive("line length", line)?;
    if station >= Length::from_um(0) && station <= line {
        Ok(())
    } else {
        Err(Refused::OutsideLine { station_um: station, line_um: line })
    }
}

#[cfg(test)]
mod tests {
    use super::super::cover::tests::mm;
    use super::*;
    use proptest::prelude::*;

    fn mouth() -> ReadingPoint {
        ReadingPoint {
            name: "mouth of the pipe in MH 031".into(),
            offset_um: mm(400.0),
            riser_um: mm(0.0),
            bends: Vec::new(),
        }
    }

    fn rods(place: PushedFrom) -> Mover {
        Mover::RigidRods { pushed_from: place }
    }

    fn below() -> Mover {
        rods(PushedFrom::Below { who: "Tomas Ekdal".into() })
    }

    #[test]
    fn the_worked_example_is_6_rods_and_857_mm() {
        let found = push(mm(7257.0), mm(38_400.0), &mouth(), &below(), mm(1000.0)).unwrap();
        assert_eq!((found.whole_rods, found.mark_um), (6, mm(857.0)));
    }

    #[test]
    fn a_cleanout_adds_its_riser_and_bends() {
        let cap = ReadingPoint {
            name: "cap of cleanout CO 4".into(),
            offset_um: mm(-250.0),
            riser_um: mm(1800.0),
            bends: vec![Bend { angle_deg: 45, adds_um: mm(120.0) }],
        };
        assert_eq!(path(mm(5000.0), mm(20_000.0), &cap), Ok(mm(7170.0)));
        let hose = push(mm(5000.0), mm(20_000.0), &cap, &Mover::Hose, mm(1000.0)).unwrap();
        assert_eq!((hose.whole_rods, hose.mark_um), (7, mm(170.0)));
        assert!(matches!(
            push(mm(5000.0), mm(20_000.0), &cap, &below(), mm(1000.0)),
            Err(Refused::RodsDoNotTurn { .. })
        ));
    }

    #[test]
    fn rigid_rods_do_not_turn_the_corner_from_the_street() {
        let by = |mover| push(mm(7257.0), mm(38_400.0), &mouth(), &mover, mm(1000.0));
        assert!(matches!(by(rods(PushedFrom::Street)), Err(Refused::RodsDoNotTurn { .. })));
        assert_eq!(by(rods(PushedFrom::Below { who: String::new() })), Err(Refused::WhoIsBelow));
        assert!(by(rods(PushedFrom::StraightCleanout)).is_ok());
        assert!(by(Mover::Hose).is_ok() && by(Mover::RopeFromTheOtherNode).is_ok());
    }

    #[test]
    fn before_the_reading_point_and_past_the_line_are_refused() {
        let to = |station| push(mm(station), mm(38_400.0), &mouth(), &below(), mm(1000.0));
        assert!(matches!(to(400.0), Err(Refused::BehindReadingPoint { .. })));
        assert!(matches!(to(38_401.0), Err(Refused::OutsideLine { .. })));
        assert!(push(mm(7257.0), mm(38_400.0), &mouth(), &below(), mm(0.0)).is_err());
    }

    #[test]
    fn the_mark_on_a_hose_leaves_out_what_hangs_ahead_of_its_zero() {
        assert_eq!(mark_on_hose(mm(6857.0), mm(620.0)), Ok(mm(6237.0)));
        assert!(mark_on_hose(mm(500.0), mm(620.0)).is_err());
    }

    proptest! {
        #[test]
        fn from_the_other_node_and_back_is_the_same(station in 0i64..38_400_000) {
            let (station, line) = (Length::from_um(station), mm(38_400.0));
            let back = from_the_other_node(station, line).and_then(|other| from_the_other_node(other, line));
            prop_assert_eq!(back, Ok(station));
        }

        #[test]
        fn rods_and_mark_make_up_the_path(station in 400_001i64..38_400_000, rod in 1i64..3_000_000) {
            let found = push(Length::from_um(station), mm(38_400.0), &mouth(), &below(), Length::from_um(rod)).unwrap();
            prop_assert_eq!(found.whole_rods * rod + found.mark_um.as_um(), found.path_um.as_um());
            prop_assert!(found.mark_um.as_um() < rod);
        }
    }

    proptest! {
        #[test]
        fn no_lengths_panic(a in prop::array::uniform6(any::<i64>())) {
            let [station, line, offset, riser, adds, rod] = a.map(Length::from_um);
            let from = ReadingPoint { offset_um: offset, riser_um: riser, bends: vec![Bend { angle_deg: 30, adds_um: adds }; 3], ..mouth() };
            let _ = push(station, line, &from, &Mover::Hose, rod);
            let _ = mark_on_hose(station, riser);
        }
    }
}
