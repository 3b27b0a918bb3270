//! From an inspection file to an open repair.

use serde::{Deserialize, Serialize};

use super::repairs::Opening;
use super::response::{Answer, Problem};
use super::{Request, Visit, with_writing};
use crate::inspection::{self, ClockExtent, DefectExtent, Inspection, Observation, SameHour};
use crate::journal::Hash;
use crate::procedure::line::{Around, Defect, Lateral, Line, Node, Origin, Seen};
use crate::procedure::plan::FromNode;
use crate::shelf::ShelfEvent;
use crate::shelf::state::Imported;
use crate::units::Length;
use crate::words;

/// An inspection file in the list.
#[derive(Debug, Serialize)]
pub struct ListedFile {
    pub file: String,
    pub name: String,
    pub imported_ms: i64,
    pub notices: Vec<inspection::Notice>,
    pub inspections: Vec<ListedInspection>,
}

/// One line of an inspection file in the list.
#[derive(Debug, Serialize)]
pub struct ListedInspection {
    pub index: usize,
    pub line: String,
    pub upstream: String,
    pub downstream: String,
    pub street: String,
    pub length_um: Option<Length>,
    pub height_um: Option<Length>,
    pub material: String,
    pub date: String,
    pub observations: usize,
    /// How many of them a patch can mend.
    pub patchable: usize,
}

/// One line of an inspection file, seen from the upstream node.
#[derive(Debug, Serialize)]
pub struct InspectionView {
    pub file: String,
    pub name: String,
    pub listed: ListedInspection,
    /// The camera ran against the flow.
    pub against_flow: Option<bool>,
    pub reference_point: String,
    pub observations: Vec<ObservationView>,
    /// The contracts that a repair can be opened under.
    pub contracts: Vec<ListedContract>,
}

/// A contract to choose from.
#[derive(Debug, Serialize)]
pub struct ListedContract {
    pub id: String,
    pub title: String,
}

/// One observation, in plain words.
#[derive(Debug, Serialize)]
pub struct ObservationView {
    pub index: usize,
    pub words: String,
    pub code: String,
    pub upstream_um: Option<Length>,
    pub downstream_um: Option<Length>,
    /// As the camera counted, from its start node.
    pub counted_um: Option<Length>,
    /// The other row of a continuous defect, by its place in this list.
    pub other_end: Option<usize>,
    pub clock_from: Option<u8>,
    pub clock_to: Option<u8>,
    pub quantity: String,
    pub at_joint: bool,
    pub remark: String,
    pub photo: String,
    pub video: String,
    pub advice: inspection::Patchable,
    /// Why it needs care or does not suit, in words; empty if a patch is the usual repair.
    pub advice_words: String,
    pub lateral: bool,
}

impl Visit<'_> {
    pub(super) fn inspections(&mut self) -> Result<Answer, Problem> {
        let files = self.store.shelf()?.inspections.values().map(listed_file).collect();
        Ok(Answer::Inspections { files })
    }

    pub(super) fn import_inspection(&mut self, name: &str, bytes: &[u8]) -> Result<Answer, Problem> {
        let file = inspection::read(bytes)
            .map_err(|problem| Problem::error("inspection_file", format!("{name} was not taken in. {problem}")))?;
        let sha256 = Hash::of(bytes).to_string();
        let event = ShelfEvent::InspectionImported { name: name.to_owned(), sha256, file: Box::new(file) };
        with_writing(self, |store, writing| store.record_shelf(writing, vec![event]))?;
        self.inspections()
    }

    pub(super) fn inspection(&mut self, file: &str, index: usize) -> Result<Answer, Problem> {
        let (imported, inspection) = self.found(file, index)?;
        let observations =
            inspection.observations.iter().enumerate().map(|(at, one)| observation(&inspection, at, one)).collect();
        let contracts = &self.store.shelf()?.documents.contracts;
        let contracts =
            contracts.iter().map(|one| ListedContract { id: one.id.clone(), title: one.title.clone() }).collect();
        Ok(Answer::Inspection(Box::new(InspectionView {
            file: imported.sha256,
            name: imported.name,
            listed: listed(index, &inspection),
            against_flow: inspection.direction.map(|direction| direction == inspection::Direction::AgainstFlow),
            reference_point: inspection.reference_point.clone().unwrap_or_default(),
            observations,
            contracts,
        })))
    }

    fn found(&mut self, file: &str, index: usize) -> Result<(Imported, Inspection), Problem> {
        let imported = self.store.shelf()?.inspections.get(file).cloned();
        let imported =
            imported.ok_or_else(|| Problem::error("unknown_file", "There is no such inspection file here."))?;
        let inspection = imported.file.inspections.get(index).cloned();
        let inspection =
            inspection.ok_or_else(|| Problem::error("unknown_line", "The inspection file has no such line."))?;
        Ok((imported, inspection))
    }

    pub(super) fn open_from_inspection(&mut self, request: Request) -> Result<Answer, Problem> {
        let Request::OpenFromInspection {
            file,
            index,
            observations,
            same_hour,
            unsaid,
            contract,
            number,
            rehearsal,
            video_before,
        } = request
        else {
            return Err(Problem::error("bad_request", "This request does not open a repair."));
        };
        let (imported, inspection) = self.found(&file, index)?;
        let (line, defect) = line_and_defect(&imported, &inspection, &observations, same_hour)?;
        let line = unsaid.fill(line);
        self.open(line, defect, Opening { contract, number, rehearsal, video_before })
    }
}

/// What identifies the pipe and was typed because the inspection does not say it. What the inspection says stands.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Unsaid {
    pub asset: String,
    pub material: String,
    pub street: String,
}

impl Unsaid {
    fn fill(self, line: Line) -> Line {
        let or = |said: String, typed: String| if said.trim().is_empty() { typed.trim().to_owned() } else { said };
        Line {
            asset: or(line.asset, self.asset),
            material: or(line.material, self.material),
            street: or(line.street, self.street),
            ..line
        }
    }
}

/// Returns the line of an inspection and the defect of its picked observations, seen from the upstream node.
///
/// Errors: what an inspection lacks to say where the defect is; `same_hour` if a clock position must be asked.
pub fn line_and_defect(
    imported: &Imported,
    inspection: &Inspection,
    picked: &[usize],
    same_hour: Option<SameHour>,
) -> Result<(Line, Defect), Problem> {
    let rows = with_other_ends(inspection, picked);
    let chosen: Vec<&Observation> = rows.iter().filter_map(|row| inspection.observations.get(*row)).collect();
    let extent = extent(inspection, &chosen, same_hour)?;
    let mut observations = vec![];
    for (row, observation) in rows.iter().zip(&chosen) {
        observations.extend(seen(inspection, *row, observation, same_hour)?);
    }
    let defect = Defect {
        from_um: extent.from_um,
        to_um: extent.to_um,
        observations,
        origin: Origin::Inspection {
            file: imported.name.clone(),
            sha256: imported.sha256.clone(),
            date: inspection.date.map(|date| date.to_string()).unwrap_or_default(),
            lines: chosen.iter().map(|one| one.source_line).collect(),
            counted_from: match inspection.direction {
                Some(inspection::Direction::AgainstFlow) => FromNode::Downstream,
                Some(inspection::Direction::WithFlow) | None => FromNode::Upstream,
            },
        },
    };
    Ok((line(inspection)?, defect))
}

/// A continuous defect is picked with both its rows.
fn with_other_ends(inspection: &Inspection, picked: &[usize]) -> Vec<usize> {
    let mut rows = picked.to_vec();
    for stretch in inspection.stretches().whole {
        if picked.contains(&stretch.start) || picked.contains(&stretch.end) {
            rows.extend([stretch.start, stretch.end]);
        }
    }
    rows.sort_unstable();
    rows.dedup();
    rows
}

fn extent(
    inspection: &Inspection,
    chosen: &[&Observation],
    same_hour: Option<SameHour>,
) -> Result<DefectExtent, Problem> {
    let extent = match same_hour {
        Some(answer) => inspection::combine_answered(chosen, answer),
        None => inspection::combine(chosen),
    };
    let extent = extent.map_err(|problem| Problem::error("defect", format!("{problem}.")))?;
    if let ClockExtent::Ask { hour } = extent.clock {
        let says = format!("The clock runs from {hour} to {hour}: is it all round, or one spot?", hour = hour.hour());
        return Err(Problem::error("same_hour", says));
    }
    inspection.extent_from_upstream(&extent).ok_or_else(|| {
        Problem::error("direction", "The inspection does not say its direction or length; enter the defect by hand.")
    })
}

/// Returns how one picked row is seen from the upstream node; the second row of a stretch is told with the first.
fn seen(
    inspection: &Inspection,
    row: usize,
    observation: &Observation,
    same_hour: Option<SameHour>,
) -> Result<Option<Seen>, Problem> {
    let stretches = inspection.stretches().whole;
    if stretches.iter().any(|stretch| stretch.end == row) {
        return Ok(None);
    }
    let other = stretches
        .iter()
        .find(|stretch| stretch.start == row)
        .and_then(|stretch| inspection.observations.get(stretch.end));
    let rows: Vec<&Observation> = std::iter::once(observation).chain(other).collect();
    let extent = extent(inspection, &rows, same_hour)?;
    Ok(Some(Seen {
        code: full_code(observation),
        words: words::plainly(|| inspection::words::plain(observation)),
        from_um: extent.from_um,
        to_um: extent.to_um,
        around: match extent.clock {
            ClockExtent::NotSaid | ClockExtent::Ask { .. } => Around::Unknown,
            ClockExtent::AllRound => Around::AllRound,
            ClockExtent::Spot { at } => Around::At { hour: at.hour() },
            ClockExtent::Range { from, to } => Around::Between { from: from.hour(), to: to.hour() },
        },
    }))
}

fn line(inspection: &Inspection) -> Result<Line, Problem> {
    let missing = |what: &str| {
        Problem::error("inspection_lacks", format!("The inspection does not say {what}; enter the defect by hand."))
    };
    let node = |name: Option<&str>| Node { name: name.unwrap_or_default().to_owned(), place: None };
    words::plainly(|| {
        Ok(Line {
            asset: inspection.line.clone().unwrap_or_default(),
            upstream: node(inspection.upstream_node()),
            downstream: node(inspection.downstream_node()),
            length_um: inspection.run_length().ok_or_else(|| missing("how long the line is"))?,
            height_um: inspection.height_um.ok_or_else(|| missing("the nominal size"))?,
            material: material(inspection),
            carries: inspection.other.get("ACK").map(|code| inspection::words::used_for(code)).unwrap_or_default(),
            street: inspection.street.clone().unwrap_or_default(),
            laterals: laterals(inspection),
        })
    })
}

/// Returns the connections of a line. Quantification 1 of a connection is its height in mm (EN 13508-2, BCA).
fn laterals(inspection: &Inspection) -> Vec<Lateral> {
    inspection
        .observations
        .iter()
        .filter(|one| one.code == "BCA")
        .filter_map(|one| {
            Some(Lateral {
                station_um: inspection.station_from_upstream(one.station_um?)?,
                clock: one
                    .clock_from
                    .and_then(|hour| inspection.clock_seen_downstream(hour))
                    .map_or(12, |hour| hour.hour()),
                diameter_um: one.quant1.as_ref().and_then(|read| Length::from_mm(read.number()?)).unwrap_or_default(),
            })
        })
        .collect()
}

fn listed_file(imported: &Imported) -> ListedFile {
    ListedFile {
        file: imported.sha256.clone(),
        name: imported.name.clone(),
        imported_ms: imported.at_ms,
        notices: imported.file.notices.iter().map(in_words).collect(),
        inspections: imported.file.inspections.iter().enumerate().map(|(index, one)| listed(index, one)).collect(),
    }
}

/// Returns a notice in the language of who reads.
fn in_words(notice: &inspection::Notice) -> inspection::Notice {
    inspection::Notice { text: words::retold(&notice.text), ..notice.clone() }
}

fn listed(index: usize, inspection: &Inspection) -> ListedInspection {
    let can = |one: &&Observation| {
        matches!(inspection::patchable(one), inspection::Patchable::Yes | inspection::Patchable::WithCare { .. })
    };
    ListedInspection {
        index,
        line: inspection.line.clone().unwrap_or_default(),
        upstream: inspection.upstream_node().or(inspection.start_node.as_deref()).unwrap_or_default().to_owned(),
        downstream: inspection.downstream_node().or(inspection.end_node.as_deref()).unwrap_or_default().to_owned(),
        street: inspection.street.clone().unwrap_or_default(),
        length_um: inspection.run_length(),
        height_um: inspection.height_um,
        material: material(inspection),
        date: inspection.date.map(|date| date.to_string()).unwrap_or_default(),
        observations: inspection.observations.len(),
        patchable: inspection.observations.iter().filter(can).count(),
    }
}

fn observation(inspection: &Inspection, index: usize, one: &Observation) -> ObservationView {
    let other_end = inspection.stretches().whole.into_iter().find_map(|stretch| match index {
        at if at == stretch.start => Some(stretch.end),
        at if at == stretch.end => Some(stretch.start),
        _ => None,
    });
    let hour = |clock: Option<inspection::Clock>| {
        clock.map(|clock| inspection.clock_seen_downstream(clock).unwrap_or(clock).hour())
    };
    // Looking the other way, clockwise turns round: what began a range now ends it.
    let turned = inspection.direction == Some(inspection::Direction::AgainstFlow) && one.clock_to.is_some();
    let (from, to) = if turned { (one.clock_to, one.clock_from) } else { (one.clock_from, one.clock_to) };
    ObservationView {
        index,
        words: inspection::words::plain(one),
        code: full_code(one),
        upstream_um: one.station_um.and_then(|at| inspection.station_from_upstream(at)),
        downstream_um: one.station_um.and_then(|at| inspection.station_from_downstream(at)),
        counted_um: one.station_um,
        other_end,
        clock_from: hour(from),
        clock_to: hour(to),
        quantity: one.quant1.as_ref().map(|read| read.as_written.clone()).unwrap_or_default(),
        at_joint: one.at_joint == Some(true),
        remark: one.remark.clone().unwrap_or_default(),
        photo: one.photo.clone().unwrap_or_default(),
        video: one.video.clone().unwrap_or_default(),
        advice: inspection::patchable(one),
        advice_words: match inspection::patchable(one) {
            inspection::Patchable::Yes => String::new(),
            inspection::Patchable::WithCare { why } | inspection::Patchable::No { why } => why.words(),
        },
        lateral: one.code == "BCA",
    }
}

/// Returns the code with its characterisations, as "BAB B A".
fn full_code(one: &Observation) -> String {
    [Some(one.code.as_str()), one.char1.as_deref(), one.char2.as_deref()]
        .into_iter()
        .flatten()
        .collect::<Vec<_>>()
        .join(" ")
}

fn material(inspection: &Inspection) -> String {
    inspection.material.as_deref().map(inspection::words::material).unwrap_or_default()
}
