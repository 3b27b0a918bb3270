//! Which defect to rehearse on: the first observation that a patch of the example sheets can mend.

use mendline_core::door::{Request, line_and_defect};
use mendline_core::inspection::{self, Inspection, InspectionFile, Patchable, SameHour};
use mendline_core::procedure::line::{Defect, Line};
use mendline_core::procedure::plan::{PlanChoice, Temperatures};
use mendline_core::procedure::planning;
use mendline_core::shelf::state::Imported;
use mendline_core::shelf::{Shelf, examples};
use mendline_core::units::{Length, Temperature};
use serde_json::Value;

use super::crew::Crew;
use super::text;

/// The contract of the example shelf.
pub const CONTRACT: &str = "QM-2026-31";

/// What is rehearsed on.
pub struct Picked {
    pub file: String,
    pub index: usize,
    pub observation: usize,
    pub choice: PlanChoice,
    /// The pipe and the defect in plain words.
    pub says: String,
}

/// Imports the file and picks the defect.
///
/// Errors: the file can't be read, or nothing in it suits the example sheets.
pub fn pick(crew: &mut Crew, name: &str, bytes: &[u8]) -> Result<Picked, String> {
    let read = inspection::read(bytes).map_err(|problem| format!("{name}: {problem}"))?;
    let answer = crew.ask(Request::ImportInspection {
        name: name.to_owned(),
        bytes: base64::Engine::encode(&base64::engine::general_purpose::STANDARD, bytes),
    })?;
    let file = file_of(&answer, name)?;
    let shelf = examples::shelf().map_err(|problem| problem.to_string())?;
    let imported = Imported { name: name.to_owned(), sha256: file.clone(), at_ms: 0, file: read };
    candidates(&imported.file)
        .find_map(|(index, observation)| suits(&imported, index, observation, &shelf))
        .map(|(index, observation, choice, says)| Picked { file, index, observation, choice, says })
        .ok_or_else(|| format!("{name}: no observation that a patch of the example sheets (DN 100 to DN 600) can mend"))
}

fn file_of(answer: &Value, name: &str) -> Result<String, String> {
    let files = answer["files"].as_array().ok_or("the list of files is missing")?;
    let found = files.iter().find(|file| text(file, "/name") == name).ok_or("the file is not in the list")?;
    Ok(text(found, "/file").to_owned())
}

/// What a patch can mend comes first, then what it can mend with care.
fn candidates(file: &InspectionFile) -> impl Iterator<Item = (usize, usize)> + '_ {
    [false, true].into_iter().flat_map(move |with_care| {
        file.inspections.iter().enumerate().flat_map(move |(index, inspection)| {
            inspection.observations.iter().enumerate().filter_map(move |(row, one)| {
                let wanted = match inspection::patchable(one) {
                    Patchable::Yes => !with_care,
                    Patchable::WithCare { .. } => with_care,
                    Patchable::No { .. } => false,
                };
                wanted.then_some((index, row))
            })
        })
    })
}

fn suits(
    imported: &Imported,
    index: usize,
    observation: usize,
    shelf: &Shelf,
) -> Option<(usize, usize, PlanChoice, String)> {
    let inspection = imported.file.inspections.get(index)?;
    let (line, defect) = line_and_defect(imported, inspection, &[observation], Some(SameHour::AllRound)).ok()?;
    let choice = choose(&line, &defect, shelf);
    let proposal = planning::propose(&line, &defect, &choice, &shelf.view(), 0);
    let plan = proposal.plan?;
    let clean = proposal.breaks.is_empty() && plan.computed.patches.len() == 1;
    clean.then(|| (index, observation, choice, says(inspection, &line, &defect)))
}

fn choose(line: &Line, defect: &Defect, shelf: &Shelf) -> PlanChoice {
    let mm = |mm: i64| Length::from_um(mm * 1000);
    let celsius = |tenths: i64| Temperature::from_millicelsius(tenths * 100);
    let mut choice = planning::suggest(line, defect, &shelf.view());
    choice.temperatures = Temperatures {
        resin_mc: celsius(192),
        air_mc: celsius(131),
        pipe_mc: celsius(128),
        water_mc: Some(celsius(134)),
    };
    choice.diameter_least_um = Length::from_um(line.height_um.as_um() * 9825 / 10_000);
    choice.diameter_most_um = Length::from_um(line.height_um.as_um() * 995 / 1000);
    choice.diameter_measured = true;
    choice.head_um = mm(800);
    choice.behind_um = mm(400);
    choice.reading_point.offset_um = mm(400);
    choice.rod_um = mm(1000);
    choice.seam_hour = 5;
    choice
}

fn says(inspection: &Inspection, line: &Line, defect: &Defect) -> String {
    let words = defect.observations.first().map_or("", |seen| seen.words.as_str());
    format!(
        "line {}, {} to {}, DN {:.0}: {words}, {:.2} to {:.2} m from {}",
        inspection.line.as_deref().unwrap_or("without a name"),
        line.upstream.name,
        line.downstream.name,
        line.height_um.as_mm(),
        defect.from_um.as_m(),
        defect.to_um.as_m(),
        line.upstream.name,
    )
}
