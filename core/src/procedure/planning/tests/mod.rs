//! The plan against values worked by hand, and every refusal with its way out.

mod any_value;
mod common_practice;
mod every_size;
mod refusals;
mod series;
mod suggested;
mod worked_example;

use super::super::line::{Around, Defect, Lateral, Line, Node, Origin, Seen};
use super::super::plan::{PlanChoice, ReadingPoint, Temperatures, WayIn};
use super::super::rules::Rule;
use super::{Proposal, propose};
use crate::shelf::{Shelf, examples};
use crate::units::{Length, Temperature};

/// 2026-10-14T09:00:00+02:00.
pub const NOW_MS: i64 = 1_791_961_200_000;

pub fn mm(value: f64) -> Length {
    Length::from_mm(value).unwrap()
}

pub fn celsius(value: f64) -> Temperature {
    Temperature::from_celsius(value).unwrap()
}

pub fn shelf() -> Shelf {
    examples::shelf().unwrap()
}

/// MH 031 to MH 032 in Kettle Row, Quillmere: invented.
pub fn line() -> Line {
    let node = |name: &str| Node { name: name.into(), place: None };
    let lateral = |station, clock| Lateral { station_um: mm(station), clock, diameter_um: mm(100.0) };
    Line {
        asset: "SS-03107".into(),
        upstream: node("MH 031"),
        downstream: node("MH 032"),
        length_um: mm(38_400.0),
        height_um: mm(200.0),
        material: "vitrified clay".into(),
        carries: "foul sewer".into(),
        street: "Kettle Row 8–10, Quillmere".into(),
        laterals: vec![lateral(4850.0, 9), lateral(7460.0, 10), lateral(19_300.0, 2), lateral(31_700.0, 9)],
    }
}

pub fn defect(from: f64, to: f64) -> Defect {
    let seen = Seen {
        code: "BAB B A".into(),
        words: "Crack, lengthwise".into(),
        from_um: mm(from),
        to_um: mm(to),
        around: Around::Between { from: 11, to: 1 },
    };
    Defect { from_um: mm(from), to_um: mm(to), observations: vec![seen], origin: Origin::ByHand }
}

pub fn temperatures(resin: f64, air: f64, pipe: f64) -> Temperatures {
    Temperatures { resin_mc: celsius(resin), air_mc: celsius(air), pipe_mc: celsius(pipe), water_mc: None }
}

pub fn choice() -> PlanChoice {
    PlanChoice {
        contract: "QM-2026-31".into(),
        resin: "Q30".into(),
        patch: "G1050-200-600".into(),
        packer: "P-07".into(),
        method: "MS-07".into(),
        counter: "C-02".into(),
        tape: "T-02".into(),
        diameter_least_um: mm(196.5),
        diameter_most_um: mm(199.0),
        diameter_measured: true,
        temperatures: Temperatures { water_mc: Some(celsius(13.4)), ..temperatures(19.2, 13.1, 12.8) },
        head_um: mm(800.0),
        behind_um: mm(400.0),
        way_in: WayIn::Rods,
        reading_point: ReadingPoint { offset_um: mm(400.0), ..ReadingPoint::default() },
        rod_um: mm(1000.0),
        below: "Tomas Ekdal".into(),
        centre_um: Some(mm(7257.0)),
        seam_hour: 5,
        ..PlanChoice::default()
    }
}

/// Returns the proposal for the crack at 7.120 to 7.400 m.
pub fn proposed(choice: &PlanChoice) -> Proposal {
    propose(&line(), &defect(7120.0, 7400.0), choice, &shelf().view(), NOW_MS)
}

/// Returns the rules that stand against a proposal.
pub fn rules(proposal: &Proposal) -> Vec<Rule> {
    proposal.breaks.iter().map(|said| said.rule).collect()
}

/// Returns the ways out of one rule, as they are said.
pub fn ways_out(proposal: &Proposal, rule: Rule) -> Vec<&str> {
    let said = proposal.breaks.iter().filter(|said| said.rule == rule);
    said.flat_map(|said| &said.ways_out).map(|way| way.says.as_str()).collect()
}
