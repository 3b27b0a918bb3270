//! A defect entered by hand: as somebody saw it, from either node and looking either way, to a line and a defect.

use serde::{Deserialize, Serialize};

use super::response::{Answer, Problem};
use super::{Visit, repairs::Opening};
use crate::inspection::SameHour;
use crate::procedure::line::{Around, Defect, Lateral, Line, Node, Origin, Seen};
use crate::procedure::plan::FromNode;
use crate::units::Length;

/// A line and its defect as somebody wrote them down. What is missing is said all at once, so all may be left out.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct ByHand {
    /// The owner's key for the pipe.
    pub asset: String,
    pub upstream: String,
    pub downstream: String,
    pub street: String,
    /// Between the centres of the nodes.
    pub length_um: Option<Length>,
    /// Nominal height.
    pub height_um: Option<Length>,
    pub material: String,
    pub carries: String,
    pub laterals: Vec<LateralByHand>,
    pub words: String,
    pub from_um: Option<Length>,
    pub to_um: Option<Length>,
    /// The node from whose centre all stations here count.
    pub counted_from: FromNode,
    /// The way that somebody looked who read the clock.
    pub looking: Looking,
    pub hour_from: Option<u8>,
    /// Clockwise from the first hour, over 12 if need be.
    pub hour_to: Option<u8>,
    /// What "from an hour to the same hour" means, where it was asked.
    pub same_hour: Option<SameHour>,
}

/// A pipe that joins the line, counted and looked at as the defect was.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct LateralByHand {
    pub station_um: Option<Length>,
    pub hour: Option<u8>,
    pub diameter_um: Option<Length>,
}

/// A viewing direction along the pipe.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Looking {
    #[default]
    Downstream,
    Upstream,
}

impl Visit<'_> {
    pub(super) fn enter_by_hand(&mut self, seen: &ByHand, opening: Opening) -> Result<Answer, Problem> {
        let (line, defect) = line_and_defect(seen)?;
        self.open(line, defect, opening)
    }
}

/// Returns line and defect with stations from the upstream node and clock positions looking downstream.
///
/// Errors: `by_hand` with all that is missing or does not fit; `same_hour` if a clock position must be asked.
pub fn line_and_defect(seen: &ByHand) -> Result<(Line, Defect), Problem> {
    let missing = missing(seen);
    if !missing.is_empty() {
        return Err(Problem::error("by_hand", format!("Still missing: {}.", missing.join(", "))));
    }
    let length = seen.length_um.unwrap_or_default();
    let (one, other) = (seen.from_um.unwrap_or_default(), seen.to_um.or(seen.from_um).unwrap_or_default());
    let ends = [turned(seen, length, one), turned(seen, length, other)];
    let (from_um, to_um) = (ends[0].min(ends[1]), ends[0].max(ends[1]));
    let laterals = seen.laterals.iter().filter(|one| **one != LateralByHand::default());
    let stations = laterals.clone().filter_map(|one| one.station_um).map(|at| turned(seen, length, at));
    if let Some(outside) = stations.chain(ends).find(|at| *at < Length::default() || *at > length) {
        let says =
            format!("{:.2} m from the upstream node is not on the line of {:.2} m.", outside.as_m(), length.as_m());
        return Err(Problem::error("by_hand", says));
    }
    let observation =
        Seen { code: String::new(), words: seen.words.trim().to_owned(), from_um, to_um, around: around(seen)? };
    let line = Line {
        asset: seen.asset.trim().to_owned(),
        upstream: Node { name: seen.upstream.trim().to_owned(), place: None },
        downstream: Node { name: seen.downstream.trim().to_owned(), place: None },
        length_um: length,
        height_um: seen.height_um.unwrap_or_default(),
        material: seen.material.trim().to_owned(),
        carries: seen.carries.trim().to_owned(),
        street: seen.street.trim().to_owned(),
        laterals: laterals.map(|one| lateral(seen, length, one)).collect::<Result<_, _>>()?,
    };
    Ok((line, Defect { from_um, to_um, observations: vec![observation], origin: Origin::ByHand }))
}

fn missing(seen: &ByHand) -> Vec<&'static str> {
    let needed = [
        (seen.asset.trim().is_empty(), "the owner’s key for the pipe"),
        (seen.upstream.trim().is_empty(), "the upstream node"),
        (seen.downstream.trim().is_empty(), "the downstream node"),
        (seen.length_um.is_none(), "the length of the line"),
        (seen.height_um.is_none(), "the nominal size"),
        (seen.material.trim().is_empty(), "the material"),
        (seen.words.trim().is_empty(), "what is wrong"),
        (seen.from_um.is_none(), "where the defect begins"),
    ];
    needed.into_iter().filter(|(missing, _)| *missing).map(|(_, what)| what).collect()
}

/// Returns a station from the upstream node.
fn turned(seen: &ByHand, length: Length, at: Length) -> Length {
    match seen.counted_from {
        FromNode::Upstream => at,
        FromNode::Downstream => Length::from_um(length.as_um().saturating_sub(at.as_um())),
    }
}

/// Returns an hour as it is seen looking downstream: 12 and 6 stay, 3 and 9 change places.
///
/// Errors: `by_hand` if it is not on the clock.
fn hour(seen: &ByHand, hour: u8) -> Result<u8, Problem> {
    match (hour, seen.looking) {
        (0, _) | (13.., _) => Err(Problem::error("by_hand", format!("{hour} is not on the clock: 1 to 12."))),
        (_, Looking::Downstream) | (12, Looking::Upstream) => Ok(hour),
        (_, Looking::Upstream) => Ok(12 - hour),
    }
}

fn around(seen: &ByHand) -> Result<Around, Problem> {
    let Some(first) = seen.hour_from.or(seen.hour_to) else { return Ok(Around::Unknown) };
    let from = hour(seen, first)?;
    let to = match (seen.hour_from, seen.hour_to) {
        (Some(_), Some(to)) => hour(seen, to)?,
        _ => return Ok(Around::At { hour: from }),
    };
    match (from == to, seen.same_hour) {
        (true, None) => {
            let says = format!("The clock runs from {first} to {first}: is it all round, or one spot?");
            Err(Problem::error("same_hour", says))
        }
        (true, Some(SameHour::AllRound)) => Ok(Around::AllRound),
        (true, Some(SameHour::OneSpot)) => Ok(Around::At { hour: from }),
        // Looking the other way, clockwise turns round: what began a range now ends it.
        (false, _) if seen.looking == Looking::Upstream => Ok(Around::Between { from: to, to: from }),
        (false, _) => Ok(Around::Between { from, to }),
    }
}

fn lateral(seen: &ByHand, length: Length, one: &LateralByHand) -> Result<Lateral, Problem> {
    let lacks = || Problem::error("by_hand", "A lateral needs its station and its clock position.");
    Ok(Lateral {
        station_um: turned(seen, length, one.station_um.ok_or_else(lacks)?),
        clock: hour(seen, one.hour.ok_or_else(lacks)?)?,
        diameter_um: one.diameter_um.unwrap_or_default(),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn mm(mm: i64) -> Length {
        Length::from_um(mm * 1000)
    }

    fn seen() -> ByHand {
        ByHand {
            asset: "SS-1".into(),
            upstream: "MH 1".into(),
            downstream: "MH 2".into(),
            length_um: Some(mm(38_400)),
            height_um: Some(mm(200)),
            material: "clay".into(),
            words: "Crack".into(),
            from_um: Some(mm(7_120)),
            to_um: Some(mm(7_400)),
            ..ByHand::default()
        }
    }

    fn says(seen: &ByHand) -> (String, String) {
        match line_and_defect(seen) {
            Err(Problem::Error { code, says }) => (code, says),
            other => panic!("{other:?}"),
        }
    }

    #[test]
    fn all_that_is_missing_is_said_at_once() {
        let (code, words) = says(&ByHand { asset: "SS-1".into(), ..ByHand::default() });
        assert_eq!(code, "by_hand");
        for what in ["upstream node", "length of the line", "nominal size", "what is wrong", "where the defect begins"]
        {
            assert!(words.contains(what), "{words}");
        }
        assert!(!words.contains("owner"), "{words}");
    }

    /// Worked by hand: 38.40 − 7.40 = 31.00 m and 38.40 − 7.12 = 31.28 m from the downstream node.
    #[test]
    fn stations_from_the_downstream_node_are_turned_round() {
        let from_below = ByHand {
            counted_from: FromNode::Downstream,
            from_um: Some(mm(31_000)),
            to_um: Some(mm(31_280)),
            laterals: vec![LateralByHand { station_um: Some(mm(30_940)), hour: Some(10), diameter_um: None }],
            ..seen()
        };
        let (line, defect) = line_and_defect(&from_below).unwrap();
        assert_eq!((defect.from_um, defect.to_um), (mm(7_120), mm(7_400)));
        assert_eq!(line.laterals[0].station_um, mm(7_460));
    }

    /// On a clock face seen from behind, 2 stands where 10 stood, and clockwise runs the other way.
    #[test]
    fn hours_read_looking_upstream_are_mirrored() {
        let range = ByHand { looking: Looking::Upstream, hour_from: Some(1), hour_to: Some(4), ..seen() };
        let (_, defect) = line_and_defect(&range).unwrap();
        assert_eq!(defect.observations[0].around, Around::Between { from: 8, to: 11 });
        let spot = ByHand { looking: Looking::Upstream, hour_from: Some(12), ..seen() };
        assert_eq!(line_and_defect(&spot).unwrap().1.observations[0].around, Around::At { hour: 12 });
    }

    #[test]
    fn from_an_hour_to_the_same_hour_is_asked() {
        let same = ByHand { hour_from: Some(12), hour_to: Some(12), ..seen() };
        assert_eq!(says(&same).0, "same_hour");
        let all = ByHand { same_hour: Some(SameHour::AllRound), ..same };
        assert_eq!(line_and_defect(&all).unwrap().1.observations[0].around, Around::AllRound);
    }

    #[test]
    fn what_is_not_on_the_line_or_not_on_the_clock_is_refused() {
        assert!(says(&ByHand { to_um: Some(mm(38_500)), ..seen() }).1.contains("38.50 m"));
        assert!(says(&ByHand { hour_from: Some(13), ..seen() }).1.contains("1 to 12"));
        let half = LateralByHand { station_um: Some(mm(5_000)), ..LateralByHand::default() };
        assert!(says(&ByHand { laterals: vec![half], ..seen() }).1.contains("lateral"));
    }

    #[test]
    fn an_empty_lateral_row_and_a_missing_end_are_no_fault() {
        let spot = ByHand { to_um: None, laterals: vec![LateralByHand::default()], ..seen() };
        let (line, defect) = line_and_defect(&spot).unwrap();
        assert_eq!((line.laterals.len(), defect.from_um, defect.to_um), (0, mm(7_120), mm(7_120)));
    }
}
