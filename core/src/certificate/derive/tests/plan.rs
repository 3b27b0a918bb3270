//! The plan of the worked example, and the pipe that it is for.

use crate::procedure::line::{Around, Coordinates, Defect, Lateral, Line, Node, Origin, Seen};
use crate::procedure::plan::{FromNode, Plan, PlanChoice, ReadingPoint, Temperatures, WayIn};
use crate::procedure::planning;
use crate::shelf::Shelf;
use crate::units::{Length, Temperature};

pub fn um(mm: i64) -> Length {
    Length::from_um(mm * 1_000)
}

pub fn mc(tenths: i64) -> Temperature {
    Temperature::from_millicelsius(tenths * 100)
}

pub fn line() -> Line {
    let lateral = |mm, clock| Lateral { station_um: um(mm), clock, diameter_um: um(100) };
    Line {
        asset: "SS-03107".into(),
        upstream: Node {
            name: "MH 031".into(),
            place: Some(Coordinates { lat_e7: 464_120_500, lon_e7: -248_853_300 }),
        },
        downstream: Node { name: "MH 032".into(), place: None },
        length_um: um(38_400),
        height_um: um(200),
        material: "vitrified clay".into(),
        carries: "foul sewer".into(),
        street: "Kettle Row 8–10, Quillmere".into(),
        laterals: vec![lateral(4_850, 9), lateral(7_460, 10), lateral(19_300, 2), lateral(31_700, 9)],
    }
}

pub fn defect() -> Defect {
    Defect {
        from_um: um(7_120),
        to_um: um(7_400),
        observations: vec![Seen {
            code: "BAB B A".into(),
            words: "Crack, lengthwise".into(),
            from_um: um(7_120),
            to_um: um(7_400),
            around: Around::Between { from: 11, to: 1 },
        }],
        origin: Origin::Inspection {
            file: "quillmere-east.txt".into(),
            sha256: "2de85419".repeat(8),
            date: "2026-09-30".into(),
            lines: vec![41, 42],
            counted_from: FromNode::Upstream,
        },
    }
}

fn choice() -> PlanChoice {
    PlanChoice {
        contract: "QM-2026-31".into(),
        resin: "Q30".into(),
        patch: "G1050-200-600".into(),
        packer: "P-07".into(),
        method: "MS-07".into(),
        counter: "C-02".into(),
        tape: "T-02".into(),
        diameter_least_um: Length::from_um(196_500),
        diameter_most_um: um(199),
        diameter_measured: true,
        temperatures: Temperatures { resin_mc: mc(192), air_mc: mc(131), pipe_mc: mc(128), water_mc: Some(mc(134)) },
        head_um: um(800),
        behind_um: um(400),
        way_in: WayIn::Rods,
        reading_point: ReadingPoint { offset_um: um(400), ..ReadingPoint::default() },
        rod_um: um(1_000),
        below: "T. Ekdal".into(),
        seam_hour: 5,
        ..PlanChoice::default()
    }
}

/// Returns the plan for the middle of the defect.
pub fn plan(shelf: &Shelf) -> Plan {
    planning::plan(&line(), &defect(), &choice(), &shelf.view()).unwrap()
}
