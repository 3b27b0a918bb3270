//! Which node is the upper one, and where a station lies from each end.
//!
//! A station is counted from the start node (AAB). Direction A (AAK) runs with the flow: the start node is the upper
//! one. Direction B runs against it: the start node is the lower one. Nodes 1 and 2 (AAD, AAF) say nothing about the
//! flow: in the example of kwb.en13508.2 node 1 is the lower one. Without a direction neither is known.

use super::{Clock, Direction, Inspection};
use crate::units::Length;

impl Inspection {
    /// Returns the upper node, or `None` if direction or node is not known.
    pub fn upstream_node(&self) -> Option<&str> {
        match self.direction? {
            Direction::WithFlow => self.start_node.as_deref(),
            Direction::AgainstFlow => self.end_node.as_deref(),
        }
    }

    /// Returns the lower node, or `None` if direction or node is not known.
    pub fn downstream_node(&self) -> Option<&str> {
        match self.direction? {
            Direction::WithFlow => self.end_node.as_deref(),
            Direction::AgainstFlow => self.start_node.as_deref(),
        }
    }

    /// Returns the distance between the nodes: where the camera arrived (BCE), else the expected length (ABQ).
    ///
    /// The arrival comes first because stations were counted by the same counter. Zero is not a length: `None`.
    pub fn run_length(&self) -> Option<Length> {
        let lengths = [self.arrival_um, self.length_um];
        lengths.into_iter().flatten().find(|length| length.as_um() > 0)
    }

    /// Returns the distance of a station from the upper node.
    ///
    /// `None` if the direction is not known; against the flow also if the length is not, or the station lies beyond it.
    pub fn station_from_upstream(&self, station: Length) -> Option<Length> {
        match self.direction? {
            Direction::WithFlow => Some(station),
            Direction::AgainstFlow => self.station_from_end(station),
        }
    }

    /// Returns the distance of a station from the lower node, by the same rules.
    pub fn station_from_downstream(&self, station: Length) -> Option<Length> {
        match self.direction? {
            Direction::WithFlow => self.station_from_end(station),
            Direction::AgainstFlow => Some(station),
        }
    }

    /// Returns the clock hour as seen looking downstream, or `None` if the direction is not known.
    ///
    /// Clock hours are recorded looking in the direction of inspection (common practice, no source).
    pub fn clock_seen_downstream(&self, clock: Clock) -> Option<Clock> {
        Some(match self.direction? {
            Direction::WithFlow => clock,
            Direction::AgainstFlow => clock.seen_from_the_other_end(),
        })
    }

    /// Returns the distance of a station from the end node; `None` if the length is not known or the station beyond it.
    pub fn station_from_end(&self, station: Length) -> Option<Length> {
        let rest = self.run_length()?.as_um() - station.as_um();
        (rest >= 0).then(|| Length::from_um(rest))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn m(metres: f64) -> Length {
        Length::from_m(metres).unwrap()
    }

    fn line(direction: Option<Direction>) -> Inspection {
        Inspection {
            start_node: Some("MH 031".into()),
            end_node: Some("MH 032".into()),
            direction,
            length_um: Some(m(38.40)),
            ..Inspection::default()
        }
    }

    #[test]
    fn with_the_flow_the_start_node_is_the_upper_one() {
        let line = line(Some(Direction::WithFlow));
        assert_eq!((line.upstream_node(), line.downstream_node()), (Some("MH 031"), Some("MH 032")));
        assert_eq!(line.station_from_upstream(m(7.12)), Some(m(7.12)));
        assert_eq!(line.station_from_downstream(m(7.12)), Some(m(31.28)));
    }

    #[test]
    fn against_the_flow_the_start_node_is_the_lower_one() {
        let line = line(Some(Direction::AgainstFlow));
        assert_eq!((line.upstream_node(), line.downstream_node()), (Some("MH 032"), Some("MH 031")));
        assert_eq!(line.station_from_upstream(m(7.12)), Some(m(31.28)));
        let nine = Clock::new(9).unwrap();
        assert_eq!(line.clock_seen_downstream(nine), Clock::new(3));
    }

    #[test]
    fn without_a_direction_nothing_is_guessed() {
        let line = line(None);
        assert_eq!((line.upstream_node(), line.station_from_upstream(m(1.0))), (None, None));
    }

    #[test]
    fn the_arrival_of_the_camera_is_the_length() {
        let mut line = line(Some(Direction::AgainstFlow));
        line.arrival_um = Some(m(38.00));
        assert_eq!(line.station_from_upstream(m(8.00)), Some(m(30.00)));
        assert_eq!(line.station_from_upstream(m(38.10)), None);
    }
}
