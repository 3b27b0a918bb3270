//! The clock face: where around the pipe something lies, and from which side one looks.

use serde::{Deserialize, Serialize};

use super::Refused;

/// Which way the viewer looks along the line.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum View {
    Downstream,
    Upstream,
}

impl View {
    /// Returns the other direction.
    pub fn turned(self) -> Self {
        match self {
            Self::Downstream => Self::Upstream,
            Self::Upstream => Self::Downstream,
        }
    }
}

/// An hour on the clock face, 1 to 12; 12 is the crown, 6 the invert.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(try_from = "u8", into = "u8")]
pub struct Hour(u8);

impl Hour {
    /// Returns the hour, or `OutOfRange` outside 1 to 12.
    pub fn new(hour: u8) -> Result<Self, Refused> {
        match hour {
            1..=12 => Ok(Self(hour)),
            _ => Err(Refused::out_of_range("clock position", "must be an hour from 1 to 12")),
        }
    }

    /// Returns the hour as a number, 1 to 12.
    pub fn number(self) -> u8 {
        self.0
    }

    /// Returns the same spot seen from the other side: 3 becomes 9, 12 and 6 stay. Twice gives the hour again.
    ///
    /// Source: geometry; EN 13508-2 states the clock in the direction of the inspection.
    pub fn flipped(self) -> Self {
        if self.0 == 12 { self } else { Self(12 - self.0) }
    }

    /// Returns the angle from the crown in degrees, clockwise, 0 to 330.
    pub fn degrees(self) -> u16 {
        u16::from(self.0 % 12) * 30
    }
}

impl TryFrom<u8> for Hour {
    type Error = Refused;

    fn try_from(hour: u8) -> Result<Self, Refused> {
        Self::new(hour)
    }
}

impl From<Hour> for u8 {
    fn from(hour: Hour) -> Self {
        hour.0
    }
}

/// The part of the wall that something takes up, with the direction in which it was seen.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "extent", rename_all = "snake_case")]
pub enum Extent {
    AllRound {
        view: View,
    },
    OneSpot {
        at: Hour,
        view: View,
    },
    /// Clockwise from one hour to another one, across 12 where that is the way.
    FromTo {
        from: Hour,
        to: Hour,
        view: View,
    },
}

impl Extent {
    /// Returns the extent between two hours, clockwise.
    ///
    /// Errors: `AllRoundOrSpot` if both are the same: an observation writes both cases alike, so somebody must say.
    pub fn between(from: Hour, to: Hour, view: View) -> Result<Self, Refused> {
        if from == to { Err(Refused::AllRoundOrSpot { hour: from.0 }) } else { Ok(Self::FromTo { from, to, view }) }
    }

    /// Returns the direction in which it was seen.
    pub fn view(&self) -> View {
        match *self {
            Self::AllRound { view } | Self::OneSpot { view, .. } | Self::FromTo { view, .. } => view,
        }
    }

    /// Returns the same part of the wall seen from the other side; twice gives it again.
    pub fn flipped(&self) -> Self {
        let view = self.view().turned();
        match *self {
            Self::AllRound { .. } => Self::AllRound { view },
            Self::OneSpot { at, .. } => Self::OneSpot { at: at.flipped(), view },
            Self::FromTo { from, to, .. } => Self::FromTo { from: to.flipped(), to: from.flipped(), view },
        }
    }

    /// Returns it as seen in the given direction.
    pub fn seen(&self, view: View) -> Self {
        if self.view() == view { *self } else { self.flipped() }
    }

    /// Returns the sector in degrees clockwise from the crown: where it begins, and how far it goes (0 for a spot, 360 all
    /// round).
    pub fn sector(&self) -> (u16, u16) {
        match *self {
            Self::AllRound { .. } => (0, 360),
            Self::OneSpot { at, .. } => (at.degrees(), 0),
            Self::FromTo { from, to, .. } => (from.degrees(), (to.degrees() + 360 - from.degrees()) % 360),
        }
    }

    /// Says whether an hour, seen in the same direction, lies on it; both ends belong to it.
    pub fn contains(&self, hour: Hour) -> bool {
        let (from, sweep) = self.sector();
        (hour.degrees() + 360 - from) % 360 <= sweep
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn hour(number: u8) -> Hour {
        Hour::new(number).unwrap()
    }

    #[test]
    fn from_the_other_side_3_is_9_and_12_and_6_stay() {
        let flipped: Vec<u8> = (1..=12).map(|number| hour(number).flipped().number()).collect();
        assert_eq!(flipped, [11, 10, 9, 8, 7, 6, 5, 4, 3, 2, 1, 12]);
    }

    #[test]
    fn a_range_runs_clockwise_across_12() {
        let crown = Extent::between(hour(11), hour(1), View::Downstream).unwrap();
        assert_eq!(crown.sector(), (330, 60));
        let inside: Vec<u8> = (1..=12).filter(|number| crown.contains(hour(*number))).collect();
        assert_eq!(inside, [1, 11, 12]);
    }

    #[test]
    fn from_and_to_the_same_hour_is_asked() {
        let asked = Extent::between(hour(12), hour(12), View::Downstream);
        assert_eq!(asked, Err(Refused::AllRoundOrSpot { hour: 12 }));
    }

    #[test]
    fn no_hour_beyond_the_face() {
        assert!(Hour::new(0).is_err() && Hour::new(13).is_err());
    }

    fn extents() -> impl Strategy<Value = Extent> {
        let view = prop_oneof![Just(View::Downstream), Just(View::Upstream)];
        (1u8..=12, 1u8..=12, view).prop_map(|(from, to, view)| {
            Extent::between(hour(from), hour(to), view).unwrap_or(Extent::OneSpot { at: hour(from), view })
        })
    }

    proptest! {
        #[test]
        fn flipped_twice_is_the_same(extent in extents()) {
            prop_assert_eq!(extent.flipped().flipped(), extent);
        }

        #[test]
        fn a_spot_stays_inside_when_both_are_flipped(extent in extents(), number in 1u8..=12) {
            prop_assert_eq!(extent.contains(hour(number)), extent.flipped().contains(hour(number).flipped()));
        }
    }
}
