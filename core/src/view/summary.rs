//! What a list shows of a repair, and its row in the register.

use serde::{Deserialize, Serialize};

use super::review::{asks, review};
use crate::procedure::repair::{Repair, Standing};
use crate::procedure::rules::Rule;
use crate::procedure::stage::Stage;
use crate::procedure::times::{self, Pace};
use crate::register::Row;
use crate::shelf::method::TaskKind;
use crate::units::Length;
use crate::words;

/// In which list a repair stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Status {
    /// No accepted plan.
    Taken,
    /// Planned, not begun.
    Planned,
    Underway,
    /// Between two attempts.
    Between,
    /// Waiting for the foreman's verdict or signatures.
    Review,
    Issued,
    Unrepaired,
    /// Its chain is broken: it can be read as stored and exported.
    Damaged,
}

/// The line of a list.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Summary {
    pub repair: String,
    pub number: String,
    pub rehearsal: bool,
    pub status: Status,
    pub stage: Stage,
    pub attempt: u32,
    pub asset: String,
    pub upstream: String,
    pub downstream: String,
    /// The node where the crew works.
    pub node: String,
    pub street: String,
    pub dn_um: Length,
    pub defect: String,
    pub station_um: Length,
    /// How many departures wait for the foreman.
    pub open_departures: usize,
    /// Everything off the plan.
    pub off_plan: usize,
    /// The rules that wait for the foreman, in the order of the review.
    #[serde(default)]
    pub asks: Vec<Rule>,
    pub certificate: Option<String>,
    pub changed_ms: i64,
    /// By the contract; whose times the paces are.
    #[serde(default)]
    pub crew: String,
    /// How long the crew took, attempt by attempt.
    #[serde(default)]
    pub paces: Vec<Pace>,
}

impl Summary {
    /// Returns the line as it stands in the register, for who reads.
    pub fn told(self) -> Self {
        Self { defect: words::retold_parts(&self.defect), ..self }
    }
}

/// Returns the line that lists show of a repair.
pub fn summary(repair: &Repair) -> Summary {
    let reviewed = (repair.stage() == Stage::Verification).then(|| review(repair));
    Summary {
        repair: repair.id.clone(),
        number: repair.number.clone(),
        rehearsal: repair.rehearsal,
        status: status(repair),
        stage: repair.stage(),
        attempt: repair.last_attempt().map_or(0, |attempt| attempt.n),
        asset: repair.line.asset.clone(),
        upstream: repair.line.upstream.name.clone(),
        downstream: repair.line.downstream.name.clone(),
        node: work_node(repair).to_owned(),
        street: repair.line.street.clone(),
        dn_um: repair.line.height_um,
        defect: repair.defect.observations.first().map_or_else(String::new, |seen| words::retold_parts(&seen.words)),
        station_um: repair.defect.centre(),
        open_departures: reviewed.as_ref().map_or(0, |review| review.open),
        off_plan: reviewed.as_ref().map_or(0, |review| review.off.len()),
        asks: reviewed.as_ref().map_or_else(Vec::new, asks),
        certificate: repair.issued.as_ref().map(|issued| issued.number.clone()),
        changed_ms: repair.last_moment.at_ms,
        crew: repair.contract.crew.clone(),
        paces: times::paces(repair),
    }
}

fn status(repair: &Repair) -> Status {
    match repair.standing() {
        Standing::Planned if repair.plan.is_none() => Status::Taken,
        Standing::Planned => Status::Planned,
        Standing::Underway => match repair.stage() {
            Stage::Verification => Status::Review,
            _ => Status::Underway,
        },
        Standing::Between => Status::Between,
        Standing::Complete if repair.issued.is_some() => Status::Issued,
        Standing::Complete => Status::Review,
        Standing::Unrepaired => Status::Unrepaired,
    }
}

/// Returns the node that the packer goes in by.
fn work_node(repair: &Repair) -> &str {
    use crate::procedure::plan::FromNode;
    match repair.plan.as_ref().map(|plan| plan.choice.from_node) {
        Some(FromNode::Downstream) => &repair.line.downstream.name,
        Some(FromNode::Upstream) | None => &repair.line.upstream.name,
    }
}

/// Returns the row of a repair in the register.
///
/// The register is the same for every reader.
pub fn row(repair: &Repair) -> Row {
    let shown = words::plainly(|| summary(repair));
    let lots = repair.attempts.iter().filter_map(|attempt| attempt.answer(TaskKind::Lots)).flat_map(|answered| {
        ["lot_a", "lot_b", "lot_patch", "lot_sleeve"].into_iter().filter_map(|field| answered.answer.text(field))
    });
    Row {
        repair: repair.id.clone(),
        number: repair.number.clone(),
        line: repair.line.asset.clone(),
        nodes: format!("{} {}", repair.line.upstream.name, repair.line.downstream.name),
        street: repair.line.street.clone(),
        // What is only played runs by a clock of its own: it never rings in the lists.
        live: repair.practice.is_none() && repair.attempt().is_some_and(|attempt| attempt.joined.is_some()),
        changed_ms: shown.changed_ms,
        certificate: shown.certificate.clone(),
        lots: lots.map(str::to_owned).collect(),
        summary: serde_json::to_vec(&shown).unwrap_or_default(),
    }
}

/// Returns the row of a repair whose chain can't be read: it is listed by its id.
pub fn damaged_row(id: &str) -> Row {
    let shown = Summary {
        repair: id.to_owned(),
        number: id.chars().take(8).collect(),
        rehearsal: false,
        status: Status::Damaged,
        stage: Stage::Planned,
        attempt: 0,
        asset: String::new(),
        upstream: String::new(),
        downstream: String::new(),
        node: String::new(),
        street: String::new(),
        dn_um: Length::default(),
        defect: String::new(),
        station_um: Length::default(),
        open_departures: 0,
        off_plan: 0,
        asks: vec![],
        certificate: None,
        changed_ms: 0,
        crew: String::new(),
        paces: vec![],
    };
    Row {
        repair: shown.repair.clone(),
        number: shown.number.clone(),
        summary: serde_json::to_vec(&shown).unwrap_or_default(),
        ..Row::default()
    }
}
