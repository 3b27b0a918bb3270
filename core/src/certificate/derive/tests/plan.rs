//! The plan of the worked example, and the pipe that it is for.

use crate::checks::end_thrust::end_thrust;
use crate::procedure::line::{Around, Coordinates, Defect, Lateral, Line, Node, Origin, Seen};
use crate::procedure::plan::{
    Computed, Cover, ErrorTerm, Mark, PlacedPatch, Plan, PlanChoice, ReadingPoint, Temperatures, WayIn, Window,
};
use crate::procedure::times::{self, BudgetOf};
use crate::shelf::Shelf;
use crate::units::{Length, Pressure, Temperature};

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

/// Returns the plan: cover 131 mm on both sides, mark at 6 rods + 860 mm, window 1.10 to 1.40 bar.
pub fn plan(shelf: &Shelf) -> Plan {
    let choice = choice();
    let contract = shelf.contracts[0].clone();
    let resin = shelf.resins.iter().find(|resin| resin.id == choice.resin).unwrap().clone();
    let patch = shelf.patches.iter().find(|patch| patch.id == choice.patch).unwrap().clone();
    let packer = shelf.packers.iter().find(|packer| packer.id == choice.packer).unwrap().clone();
    let batch = patch.resin_mg.value;
    let of = BudgetOf { contract: &contract, resin: &resin, batch, temperatures: &choice.temperatures, push: None };
    let budget = times::budget(&of).unwrap();
    let coldest = times::coldest(&choice.temperatures);
    let error = |what: &str, mm, source: &str| ErrorTerm { what: what.into(), um: um(mm), source: source.into() };
    let upper_pa = Pressure::from_pa(140_000);
    let computed = Computed {
        patches: vec![PlacedPatch { from_um: um(6_960), to_um: um(7_560) }],
        cover: Cover {
            upstream_um: um(131),
            downstream_um: um(131),
            errors: vec![
                error("inspection", 15, "Sheet of camera counter C-02 (invented)"),
                error("placement", 10, "Method statement MS-07, item 5 (invented)"),
                error("mark reading", 4, "Sheet of steel tape T-02 (invented)"),
            ],
            required_um: um(100),
        },
        mark: Mark { path_um: um(6_860), whole_rods: 6, remainder_um: um(860) },
        sleeve_um: um(1_178),
        sleeve_bands_um: vec![],
        patch_bands_um: vec![],
        membrane_um: None,
        membrane_bands_um: vec![],
        covered: vec![1],
        wrap_um: um(1_330),
        batch_mg: batch,
        budget,
        hold_ms: times::at_coldest(&resin.hold, coldest).unwrap(),
        hold_at_mc: coldest,
        full_cure_ms: times::at_coldest(&resin.full_cure, coldest).unwrap(),
        window: Window {
            lower_pa: Pressure::from_pa(110_000),
            upper_pa,
            lower_governs: "least gauge".into(),
            upper_governs: "host pipe".into(),
            // 0.8 m × 9806.65 Pa/m = 7845.32 Pa.
            water_pa: Pressure::from_pa(7_846),
            net_least_pa: Pressure::from_pa(90_000),
            target_pa: Pressure::from_pa(125_000),
        },
        thrust_n: end_thrust(upper_pa, um(199), um(400)).unwrap().total_n,
    };
    let (method, instruments) = (shelf.methods[0].clone(), shelf.instruments.clone());
    Plan { choice, contract, resin, patch, packer, method, instruments, computed }
}
