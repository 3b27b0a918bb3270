//! Continuous defects: the row that begins a stretch (`A1`) and the row that ends it (`B1`).

use super::{Inspection, Observation};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// Which part of a stretch a row is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Part {
    /// `A`.
    Start,
    /// `B`.
    End,
}

impl Part {
    /// Returns the part at the other end.
    pub const fn other(self) -> Self {
        match self {
            Self::Start => Self::End,
            Self::End => Self::Start,
        }
    }
}

/// One stretch, by the places of its rows in the list of observations.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Stretch {
    /// The number behind A and B.
    pub number: u32,
    /// The row that begins it.
    pub start: usize,
    /// The row that ends it.
    pub end: usize,
}

/// What the file says of continuous defects.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Stretches {
    /// By the row that begins them.
    pub whole: Vec<Stretch>,
    /// Rows that begin a stretch that never ends, end one that never began, or whose other end has another code.
    pub broken: Vec<usize>,
}

impl Observation {
    /// Returns which part of which stretch this row is, or `None` if it is a defect at one place.
    pub fn stretch_part(&self) -> Option<(Part, u32)> {
        let text = self.continuous.as_deref()?;
        let (letter, number) = text.split_at_checked(1)?;
        let part = match letter {
            "A" => Part::Start,
            "B" => Part::End,
            _ => return None,
        };
        Some((part, number.trim().parse().ok()?))
    }
}

impl Inspection {
    /// Returns the stretches of this inspection.
    ///
    /// Rows are taken by station, at one station in the order of the file with starts before ends; a number may be
    /// used again once its stretch has ended. Both ends carry the same main code.
    pub fn stretches(&self) -> Stretches {
        let mut rows: Vec<(usize, Part, u32)> = Vec::new();
        for (row, observation) in self.observations.iter().enumerate() {
            if let Some((part, number)) = observation.stretch_part() {
                rows.push((row, part, number));
            }
        }
        rows.sort_by_key(|(row, part, _)| (self.station_um(*row), *part == Part::End));
        let mut open: BTreeMap<u32, usize> = BTreeMap::new();
        let mut found = Stretches::default();
        for (row, part, number) in rows {
            match part {
                Part::Start => found.broken.extend(open.insert(number, row)),
                Part::End => self.close(open.remove(&number), row, number, &mut found),
            }
        }
        found.broken.extend(open.into_values());
        found.broken.sort_unstable();
        found.whole.sort_unstable_by_key(|stretch| stretch.start);
        found
    }

    fn close(&self, start: Option<usize>, end: usize, number: u32, found: &mut Stretches) {
        match start {
            Some(start) if self.main_code(start) == self.main_code(end) => {
                found.whole.push(Stretch { number, start, end });
            }
            _ => found.broken.extend(start.into_iter().chain([end])),
        }
    }

    fn station_um(&self, row: usize) -> Option<i64> {
        self.observations.get(row)?.station_um.map(crate::units::Length::as_um)
    }

    fn main_code(&self, row: usize) -> Option<&str> {
        self.observations.get(row).map(|o| o.code.as_str())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::Length;

    fn inspection(rows: &[(f64, &str, &str)]) -> Inspection {
        let observations = rows.iter().map(|(station, code, part)| Observation {
            station_um: Length::from_m(*station),
            code: (*code).to_owned(),
            continuous: Some((*part).to_owned()),
            ..Observation::default()
        });
        Inspection { observations: observations.collect(), ..Inspection::default() }
    }

    fn whole(inspection: &Inspection) -> Vec<(usize, usize)> {
        inspection.stretches().whole.iter().map(|s| (s.start, s.end)).collect()
    }

    /// Rows of the example of kwb.en13508.2: the ends do not come in the order of the starts.
    #[test]
    fn stretches_that_cross_are_told_apart_by_number() {
        let rows = [(4.4, "BAB", "A2"), (4.4, "BAB", "A1"), (5.1, "BAB", "B2"), (5.4, "BAB", "B1")];
        assert_eq!(whole(&inspection(&rows)), [(0, 2), (1, 3)]);
    }

    #[test]
    fn a_number_may_be_used_again() {
        let rows = [(1.0, "BAB", "A1"), (2.0, "BAB", "B1"), (3.0, "BBA", "A1"), (4.0, "BBA", "B1")];
        assert_eq!(whole(&inspection(&rows)), [(0, 1), (2, 3)]);
    }

    #[test]
    fn the_end_may_stand_above_the_start() {
        let rows = [(2.0, "BAB", "B01"), (1.0, "BAB", "A01")];
        assert_eq!(whole(&inspection(&rows)), [(1, 0)]);
    }

    #[test]
    fn what_does_not_pair_is_named() {
        let rows = [(1.0, "BAB", "A1"), (2.0, "BBF", "B1"), (3.0, "BAB", "A2"), (4.0, "BAB", "B3"), (5.0, "BAB", "")];
        let found = inspection(&rows).stretches();
        assert_eq!((found.whole, found.broken), (vec![], vec![0, 1, 2, 3]));
    }
}
