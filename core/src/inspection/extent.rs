//! One defect from the observations that somebody picks: from where to where, and round which part of the pipe.

use super::stretch::Part;
use super::{Clock, Direction, Inspection, Observation};
use crate::units::Length;
use serde::{Deserialize, Serialize};
use std::cmp::Reverse;
use std::collections::BTreeSet;
use thiserror::Error;

/// Where a defect lies, in the frame that its name says: of the inspection, or from the upper node looking downstream.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct DefectExtent {
    /// The nearer edge.
    pub from_um: Length,
    /// The farther edge; the same as the nearer one for a defect at one place.
    pub to_um: Length,
    /// Round the pipe.
    pub clock: ClockExtent,
}

/// Which part of the wall a defect takes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum ClockExtent {
    /// None of the observations says.
    NotSaid,
    /// One spot.
    Spot {
        /// The hour.
        at: Clock,
    },
    /// Clockwise from one hour to another; the two differ.
    Range {
        /// Where it begins.
        from: Clock,
        /// Where it ends.
        to: Clock,
    },
    /// All round: the observations leave no hour free.
    AllRound,
    /// To be asked: an observation runs from an hour to the same hour. All round, or one spot?
    Ask {
        /// That hour.
        hour: Clock,
    },
}

/// Why no defect could be made of the picked observations.
#[derive(Clone, Debug, PartialEq, Eq, Error, Serialize, Deserialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum ExtentError {
    /// Nothing was picked.
    #[error("pick at least one observation")]
    NothingPicked,
    /// An observation has no station.
    #[error("the observation of line {source_line} has no station")]
    NoStation {
        /// Its line of the file.
        source_line: u64,
    },
    /// A row of a continuous defect was picked without the row at its other end.
    #[error("the observation of line {source_line} is one end of stretch {number}: pick both ends")]
    HalfAStretch {
        /// Its line of the file.
        source_line: u64,
        /// The number of the stretch.
        number: u32,
    },
}

/// What somebody answered for observations that run from an hour to the same hour.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum SameHour {
    /// All round the pipe.
    AllRound,
    /// One spot.
    OneSpot,
}

/// Returns the extent that covers all picked observations, in the frame of the inspection.
///
/// Stations: from the least to the greatest. Clock: the shortest arc, clockwise, that covers every arc and spot; of two
/// arcs equally short the one over the crown, else the one that begins first, counted from 12. Observations without a
/// clock hour add nothing to it. An observation from an hour to the same hour makes it [`ClockExtent::Ask`], unless the
/// others go all round anyway.
/// Errors: [`ExtentError`].
pub fn combine(picked: &[&Observation]) -> Result<DefectExtent, ExtentError> {
    extent_of(picked, None)
}

/// Returns the same as [`combine`] where somebody has answered what the same hour twice means.
///
/// Errors: [`ExtentError`].
pub fn combine_answered(picked: &[&Observation], answer: SameHour) -> Result<DefectExtent, ExtentError> {
    extent_of(picked, Some(answer))
}

fn extent_of(picked: &[&Observation], answer: Option<SameHour>) -> Result<DefectExtent, ExtentError> {
    let stations: Vec<Length> = picked.iter().map(|o| station(o)).collect::<Result<_, _>>()?;
    both_ends(picked)?;
    match (stations.iter().min(), stations.iter().max()) {
        (Some(from), Some(to)) => Ok(DefectExtent { from_um: *from, to_um: *to, clock: clock_extent(picked, answer) }),
        _ => Err(ExtentError::NothingPicked),
    }
}

fn station(observation: &Observation) -> Result<Length, ExtentError> {
    let source_line = observation.source_line;
    observation.station_um.ok_or(ExtentError::NoStation { source_line })
}

/// Refuses a start without an end and the other way round.
fn both_ends(picked: &[&Observation]) -> Result<(), ExtentError> {
    let parts = || picked.iter().filter_map(|o| o.stretch_part().map(|(part, number)| (o, part, number)));
    let ends: BTreeSet<(&str, u32, Part)> = parts().map(|(o, part, n)| (o.code.as_str(), n, part)).collect();
    let half = parts().find(|(o, part, number)| !ends.contains(&(o.code.as_str(), *number, part.other())));
    half.map_or(Ok(()), |(o, _, number)| Err(ExtentError::HalfAStretch { source_line: o.source_line, number }))
}

fn clock_extent(picked: &[&Observation], answer: Option<SameHour>) -> ClockExtent {
    let same_hour = picked.iter().find_map(|o| o.clock_from.filter(|hour| o.clock_to == Some(*hour)));
    let mut taken = Dial::default();
    for o in picked {
        match (o.clock_from, o.clock_to) {
            (Some(from), Some(to)) => taken.arc(from, to),
            (Some(spot), None) | (None, Some(spot)) => taken.arc(spot, spot),
            (None, None) => {}
        }
    }
    match (same_hour, answer, taken.extent()) {
        (None, _, extent) | (_, Some(SameHour::OneSpot), extent) | (_, None, extent @ ClockExtent::AllRound) => extent,
        (Some(_), Some(SameHour::AllRound), _) => ClockExtent::AllRound,
        (Some(hour), None, _) => ClockExtent::Ask { hour },
    }
}

/// The circle in half hours: even places are the hours, odd places the wall between two hours.
#[derive(Default)]
struct Dial([bool; Dial::PLACES]);

impl Dial {
    const PLACES: usize = 24;

    /// Takes the wall clockwise from one hour to another, both included.
    fn arc(&mut self, from: Clock, to: Clock) {
        let start = usize::from(from.hour()) * 2;
        for step in 0..=usize::from(from.clockwise_to(to)) * 2 {
            if let Some(place) = self.0.get_mut((start + step) % Self::PLACES) {
                *place = true;
            }
        }
    }

    fn taken(&self, place: usize) -> bool {
        self.0.get(place % Self::PLACES).copied().unwrap_or(false)
    }

    /// Returns all that lies outside the widest free gap.
    fn extent(&self) -> ClockExtent {
        if self.0.iter().all(|taken| *taken) {
            return ClockExtent::AllRound;
        }
        let ends = (0..Self::PLACES).filter(|end| self.taken(*end) && !self.taken(end + 1));
        let widest = ends.max_by_key(|end| {
            let gap = self.gap_behind(*end);
            (gap, !self.holds_crown(*end), Reverse(self.start_of(*end)))
        });
        widest.map_or(ClockExtent::NotSaid, |end| extent(self.start_of(end), end))
    }

    /// Returns where the extent begins that ends here: behind the gap.
    fn start_of(&self, end: usize) -> usize {
        (end + self.gap_behind(end) + 1) % Self::PLACES
    }

    /// Returns how many free places follow this one.
    fn gap_behind(&self, place: usize) -> usize {
        (1..Self::PLACES).take_while(|step| !self.taken(place + step)).count()
    }

    /// Returns whether the gap behind this place holds the crown.
    fn holds_crown(&self, place: usize) -> bool {
        (place + 1..=place + self.gap_behind(place)).any(|free| free % Self::PLACES == 0)
    }
}

fn extent(from: usize, to: usize) -> ClockExtent {
    match (hour(from), hour(to)) {
        (Some(from), Some(to)) if from == to => ClockExtent::Spot { at: from },
        (Some(from), Some(to)) => ClockExtent::Range { from, to },
        _ => ClockExtent::NotSaid,
    }
}

fn hour(place: usize) -> Option<Clock> {
    let hour = place / 2 % 12;
    u8::try_from(if hour == 0 { 12 } else { hour }).ok().and_then(Clock::new)
}

impl Inspection {
    /// Returns the same extent from the upper node, seen looking downstream.
    ///
    /// `None` if the direction is not known, or if the camera ran against the flow and the length is not known.
    pub fn extent_from_upstream(&self, extent: &DefectExtent) -> Option<DefectExtent> {
        let one = self.station_from_upstream(extent.from_um)?;
        let other = self.station_from_upstream(extent.to_um)?;
        let clock = match self.direction? {
            Direction::WithFlow => extent.clock,
            Direction::AgainstFlow => extent.clock.seen_from_the_other_end(),
        };
        Some(DefectExtent { from_um: one.min(other), to_um: one.max(other), clock })
    }
}

impl ClockExtent {
    /// Returns the same wall seen looking the other way: what ran clockwise begins where it ended.
    pub fn seen_from_the_other_end(self) -> Self {
        match self {
            Self::Range { from, to } => {
                Self::Range { from: to.seen_from_the_other_end(), to: from.seen_from_the_other_end() }
            }
            Self::Spot { at } => Self::Spot { at: at.seen_from_the_other_end() },
            Self::Ask { hour } => Self::Ask { hour: hour.seen_from_the_other_end() },
            Self::NotSaid | Self::AllRound => self,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn hour(h: u8) -> Clock {
        Clock::new(h).unwrap()
    }

    fn at(station: f64, from: u8, to: u8) -> Observation {
        Observation {
            code: "BAB".into(),
            station_um: Length::from_m(station),
            clock_from: Clock::new(from),
            clock_to: Clock::new(to),
            ..Observation::default()
        }
    }

    fn clock(observations: &[Observation]) -> ClockExtent {
        combine(&observations.iter().collect::<Vec<_>>()).unwrap().clock
    }

    fn range(from: u8, to: u8) -> ClockExtent {
        ClockExtent::Range { from: hour(from), to: hour(to) }
    }

    #[test]
    fn a_defect_reaches_from_the_first_to_the_last_station() {
        let (crack, damp) = (at(18.68, 10, 2), at(18.46, 1, 0));
        let extent = combine(&[&crack, &damp]).unwrap();
        assert_eq!((extent.from_um.as_m(), extent.to_um.as_m(), extent.clock), (18.46, 18.68, range(10, 2)));
    }

    #[test]
    fn arcs_are_joined_across_twelve() {
        assert_eq!(clock(&[at(1.0, 11, 12), at(1.0, 1, 2)]), range(11, 2));
        assert_eq!(clock(&[at(1.0, 11, 0), at(1.0, 1, 0)]), range(11, 1));
        assert_eq!(clock(&[at(1.0, 10, 2), at(1.0, 6, 0)]), range(6, 2));
        assert_eq!(clock(&[at(1.0, 4, 8)]), range(4, 8));
        assert_eq!(clock(&[at(1.0, 1, 12)]), range(1, 12));
    }

    #[test]
    fn of_two_equal_arcs_the_one_over_the_crown_is_taken() {
        assert_eq!(clock(&[at(1.0, 9, 0), at(1.0, 3, 0)]), range(9, 3));
        assert_eq!(clock(&[at(1.0, 6, 0), at(1.0, 12, 0)]), range(12, 6));
    }

    #[test]
    fn arcs_that_close_the_circle_go_all_round() {
        assert_eq!(clock(&[at(1.0, 12, 6), at(1.0, 6, 12)]), ClockExtent::AllRound);
        assert_eq!(clock(&[at(1.0, 12, 6), at(1.0, 6, 12), at(1.0, 3, 3)]), ClockExtent::AllRound);
    }

    #[test]
    fn one_hour_is_one_spot_and_no_hour_is_not_said() {
        assert_eq!(clock(&[at(1.0, 9, 0)]), ClockExtent::Spot { at: hour(9) });
        assert_eq!(clock(&[at(1.0, 0, 0)]), ClockExtent::NotSaid);
    }

    #[test]
    fn from_an_hour_to_the_same_hour_is_asked() {
        let twice = [at(1.0, 12, 12), at(1.0, 2, 3)];
        assert_eq!(clock(&twice), ClockExtent::Ask { hour: hour(12) });
        let answered = |answer| combine_answered(&[&twice[0], &twice[1]], answer).unwrap().clock;
        assert_eq!(answered(SameHour::AllRound), ClockExtent::AllRound);
        assert_eq!(answered(SameHour::OneSpot), range(12, 3));
    }

    #[test]
    fn half_a_stretch_is_refused() {
        let mut start = at(7.12, 11, 1);
        start.continuous = Some("A1".into());
        let mut end = at(7.40, 11, 1);
        end.continuous = Some("B1".into());
        let half = ExtentError::HalfAStretch { source_line: 0, number: 1 };
        assert_eq!(combine(&[&start]), Err(half.clone()));
        assert_eq!(combine(&[&end]), Err(half));
        assert_eq!(combine(&[&start, &end]).map(|e| e.to_um.as_m()), Ok(7.40));
    }

    #[test]
    fn nothing_picked_and_no_station_are_refused() {
        assert_eq!(combine(&[]), Err(ExtentError::NothingPicked));
        let nowhere = Observation::default();
        assert_eq!(combine(&[&nowhere]), Err(ExtentError::NoStation { source_line: 0 }));
    }

    #[test]
    fn against_the_flow_stations_and_hours_turn_round() {
        let line = Inspection {
            direction: Some(Direction::AgainstFlow),
            length_um: Length::from_m(50.0),
            ..Inspection::default()
        };
        let extent = combine(&[&at(10.0, 2, 6)]).unwrap();
        let turned = line.extent_from_upstream(&DefectExtent { to_um: Length::from_m(11.0).unwrap(), ..extent });
        let turned = turned.unwrap();
        assert_eq!((turned.from_um.as_m(), turned.to_um.as_m(), turned.clock), (39.0, 40.0, range(6, 10)));
        assert_eq!(range(12, 6).seen_from_the_other_end(), range(6, 12));
    }
}
