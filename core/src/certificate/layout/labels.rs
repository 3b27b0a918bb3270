//! Labels that must not meet: pushed apart on one axis, or put where nothing is yet.

/// A rectangle by its edges, in mm.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Area {
    pub left: f64,
    pub top: f64,
    pub right: f64,
    pub bottom: f64,
}

impl Area {
    pub const fn new(left: f64, top: f64, right: f64, bottom: f64) -> Self {
        Self { left, top, right, bottom }
    }

    pub fn width(self) -> f64 {
        self.right - self.left
    }

    pub fn height(self) -> f64 {
        self.bottom - self.top
    }

    pub fn centre(self) -> (f64, f64) {
        ((self.left + self.right) / 2.0, (self.top + self.bottom) / 2.0)
    }

    /// Returns this area, larger by `by` on every side.
    pub fn grown(self, by: f64) -> Self {
        Self::new(self.left - by, self.top - by, self.right + by, self.bottom + by)
    }

    pub fn meets(self, other: Self) -> bool {
        self.left < other.right && other.left < self.right && self.top < other.bottom && other.top < self.bottom
    }

    pub fn holds(self, other: Self) -> bool {
        other.left >= self.left && other.top >= self.top && other.right <= self.right && other.bottom <= self.bottom
    }
}

/// Returns where the centres of labels go, in the order of `wanted`: pairs of the wanted centre and the size, sorted
/// by the wanted centre. They are pushed apart as little as possible and kept between `low` and `high`; where they
/// don't fit, they run over `high`.
pub fn spread(wanted: &[(f64, f64)], low: f64, high: f64) -> Vec<f64> {
    let mut groups: Vec<Group> = Vec::new();
    for &(centre, size) in wanted {
        let mut group = Group { members: vec![(centre, size)], size, centre };
        loop {
            group.centre = group.centre.min(high - group.size / 2.0).max(low + group.size / 2.0);
            match groups.pop() {
                Some(before) if before.end() > group.start() + 1e-9 => group = before.joined(group),
                Some(before) => {
                    groups.push(before);
                    break;
                }
                None => break,
            }
        }
        groups.push(group);
    }
    groups.iter().flat_map(Group::centres).collect()
}

/// Labels that touch.
struct Group {
    members: Vec<(f64, f64)>,
    size: f64,
    centre: f64,
}

impl Group {
    fn start(&self) -> f64 {
        self.centre - self.size / 2.0
    }

    fn end(&self) -> f64 {
        self.centre + self.size / 2.0
    }

    fn joined(mut self, next: Group) -> Group {
        self.members.extend(next.members);
        self.size += next.size;
        self.centre = self.members.iter().map(|(centre, _)| centre).sum::<f64>() / self.members.len() as f64;
        self
    }

    fn centres(&self) -> impl Iterator<Item = f64> + '_ {
        let mut edge = self.start();
        self.members.iter().map(move |(_, size)| {
            edge += size;
            edge - size / 2.0
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn labels_that_have_room_stay() {
        assert_eq!(spread(&[(10.0, 4.0), (20.0, 4.0)], 0.0, 100.0), [10.0, 20.0]);
    }

    #[test]
    fn labels_that_touch_are_pushed_apart_evenly() {
        assert_eq!(spread(&[(10.0, 4.0), (11.0, 4.0)], 0.0, 100.0), [8.5, 12.5]);
    }

    proptest! {
        #[test]
        fn no_two_labels_meet_and_all_stay_inside(mut wanted in prop::collection::vec((0.0..100.0f64, 1.0..5.0f64), 1..20)) {
            wanted.sort_by(|a, b| a.0.total_cmp(&b.0));
            let centres = spread(&wanted, 0.0, 120.0);
            for (i, centre) in centres.iter().enumerate() {
                prop_assert!(centre - wanted[i].1 / 2.0 > -1e-6 && centre + wanted[i].1 / 2.0 < 120.0 + 1e-6);
                if i > 0 {
                    prop_assert!(centres[i - 1] + wanted[i - 1].1 / 2.0 <= centre - wanted[i].1 / 2.0 + 1e-6);
                }
            }
        }
    }
}
