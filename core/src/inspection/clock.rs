//! Positions round the pipe, by the hours of a clock with 12 at the crown.

use serde::{Deserialize, Serialize};
use std::fmt;

/// A whole clock hour, 1 to 12, as seen looking in the direction of inspection.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(try_from = "u8", into = "u8")]
pub struct Clock(u8);

impl Clock {
    /// Returns the hour, or `None` outside 1 to 12.
    pub const fn new(hour: u8) -> Option<Self> {
        if hour >= 1 && hour <= 12 { Some(Self(hour)) } else { None }
    }

    /// Returns the hour, 1 to 12.
    pub const fn hour(self) -> u8 {
        self.0
    }

    /// Returns the same place seen looking the other way: 3 and 9 change places, 12 and 6 stay.
    pub const fn seen_from_the_other_end(self) -> Self {
        Self(if self.0 == 12 { 12 } else { 12 - self.0 })
    }

    /// Returns how many hours clockwise it is from here to `other`, 0 to 11.
    pub const fn clockwise_to(self, other: Self) -> u8 {
        (other.0 + 12 - self.0) % 12
    }
}

impl TryFrom<u8> for Clock {
    type Error = String;

    fn try_from(hour: u8) -> Result<Self, String> {
        Self::new(hour).ok_or_else(|| format!("expected a clock hour from 1 to 12, found {hour}"))
    }
}

impl From<Clock> for u8 {
    fn from(clock: Clock) -> Self {
        clock.0
    }
}

impl fmt::Display for Clock {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}", self.0)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn hour(h: u8) -> Clock {
        Clock::new(h).unwrap()
    }

    /// Common practice, no source: the set-up reversed.
    #[test]
    fn the_clock_mirrors_when_the_view_turns_round() {
        for (here, there) in [(3, 9), (9, 3), (2, 10), (10, 2), (1, 11), (12, 12), (6, 6)] {
            assert_eq!(hour(here).seen_from_the_other_end(), hour(there));
        }
    }

    #[test]
    fn hours_are_counted_clockwise_across_twelve() {
        assert_eq!(hour(11).clockwise_to(hour(1)), 2);
        assert_eq!(hour(1).clockwise_to(hour(11)), 10);
        assert_eq!(hour(12).clockwise_to(hour(12)), 0);
    }

    #[test]
    fn there_is_no_hour_zero_and_no_thirteen() {
        assert_eq!(Clock::new(0), None);
        assert_eq!(Clock::new(13), None);
    }
}
