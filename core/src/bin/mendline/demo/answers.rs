//! What the crew of the rehearsal answers to each kind of task.

use mendline_core::procedure::answer::{Value, Values};
use mendline_core::shelf::method::TaskKind;

/// What the answers depend on.
pub struct Site {
    pub least_um: i64,
    pub most_um: i64,
    pub cleaned_ms: i64,
    pub viewed_ms: i64,
    pub flow_until_ms: i64,
    pub test_pa: i64,
    pub test_ms: i64,
    pub bare_um: i64,
    /// Mass of part B: of part A it is twice as much.
    pub part_b_mg: i64,
    pub containers: bool,
    pub centre_um: i64,
    pub coupons: i64,
}

/// Returns the values of a task.
pub fn values(kind: TaskKind, site: &Site) -> Values {
    let pairs: Vec<(&str, Value)> = match kind {
        TaskKind::Confirm | TaskKind::Suitability | TaskKind::Soaked => vec![],
        TaskKind::Permit => vec![("number", text("CS-1014-1")), ("entry", text("none"))],
        TaskKind::Air => vec![
            ("oxygen_permille", number(209)),
            ("flammable_pct", number(0)),
            ("hydrogen_sulfide_ppm", number(0)),
            ("carbon_monoxide_ppm", number(2)),
            ("meter", text("A-03")),
        ],
        TaskKind::Flow => vec![
            ("how", text("plug upstream, pumped round")),
            ("until_ms", number(site.flow_until_ms)),
            ("plugs", number(2)),
        ],
        TaskKind::Cleaned => vec![("at_ms", number(site.cleaned_ms)), ("how", text("jetted twice"))],
        TaskKind::ViewedAgain => vec![("at_ms", number(site.viewed_ms)), ("found", text("no new deposits"))],
        TaskKind::MeasuredDiameter => vec![
            ("least_um", number(site.least_um)),
            ("most_um", number(site.most_um)),
            ("how", text("two sections, telescopic gauge")),
        ],
        TaskKind::PackerTest => {
            vec![("gauge_pa", number(site.test_pa)), ("held_ms", number(site.test_ms)), ("drop_pa", number(0))]
        }
        TaskKind::Lots => vec![
            ("lot_a", text("26-0811-A")),
            ("expires_a", text("2027-02-11")),
            ("lot_b", text("26-0809-B")),
            ("expires_b", text("2027-02-09")),
            ("stored_least_mc", number(8_000)),
            ("stored_most_mc", number(24_000)),
            ("lot_patch", text("GM-5512")),
            ("lot_sleeve", text("SL-231")),
        ],
        TaskKind::Instruments => vec![
            ("gauge", text("G-04")),
            ("thermometer", text("T-09")),
            ("counter", text("C-02")),
            ("tape", text("T-02")),
            ("scale", text("S-05")),
        ],
        TaskKind::Temperatures => vec![
            ("resin_mc", number(19_200)),
            ("air_mc", number(13_100)),
            ("pipe_mc", number(12_800)),
            ("water_mc", number(13_400)),
        ],
        TaskKind::Battery => vec![("pct", number(88))],
        TaskKind::BareEnds => {
            vec![("front_um", number(site.bare_um - 2_000)), ("rear_um", number(site.bare_um + 2_000))]
        }
        TaskKind::PartsUsed if site.containers => vec![("how", text("containers"))],
        TaskKind::PartsUsed => vec![
            ("how", text("weighed")),
            ("mass_a_mg", number(site.part_b_mg * 2)),
            // Read with the lid on; corrected later.
            ("mass_b_mg", number(site.part_b_mg + 6_000)),
        ],
        TaskKind::Mixed => vec![("mixed_ms", number(190_000))],
        TaskKind::Seam => vec![("hour", number(5))],
        TaskKind::AtTheMark => vec![("counter_um", number(site.centre_um))],
        TaskKind::AllBack => {
            vec![("rope", text("rope")), ("sleeve", text("back")), ("membrane", text("none")), ("bands", text("back"))]
        }
        TaskKind::PackerCondition => vec![("packer", text("sound"))],
        TaskKind::Edges => vec![("upstream", text("bonded")), ("downstream", text("bonded"))],
        TaskKind::Folds => vec![("height_um", number(2_000)), ("hour", number(7))],
        TaskKind::Infiltration => vec![("seen", text("none"))],
        TaskKind::Surface => vec![("surface", text("sound"))],
        TaskKind::Laterals => vec![("coupons", number(site.coupons))],
        TaskKind::Tightness => vec![("method", text("none asked")), ("result", text("tight"))],
        TaskKind::Waste => vec![
            ("what", text("discarded patch, sample, wipes, sleeves, gloves; set and cold")),
            ("mass_g", number(6_100)),
            ("where_to", text("Quillmere yard")),
            ("ticket", text("W-118")),
        ],
        TaskKind::FlowRestored => vec![("plugs", number(2))],
    };
    pairs.into_iter().map(|(key, value)| (key.to_owned(), value)).collect()
}

fn number(number: i64) -> Value {
    Value::Number(number)
}

fn text(text: &str) -> Value {
    Value::Text(text.to_owned())
}
