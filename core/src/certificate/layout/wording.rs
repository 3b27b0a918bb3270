//! The fixed words that differ by the kind of paper.

use crate::certificate::content::{Content, Kind, headings};
use crate::words::tell;

/// The stages of an attempt that went through them all.
const STAGES: usize = 9;

/// The title of page 1.
pub fn title(kind: Kind) -> String {
    match kind {
        Kind::Accepted => tell!("cert-wording-sectional_repair_certificate"),
        Kind::Rejected => tell!("cert-wording-repair_record_rejected"),
        Kind::Rehearsal => tell!("cert-wording-rehearsal_record_not_a_certificate"),
        Kind::Unrepaired => tell!("cert-wording-repair_record_closed_unrepaired"),
    }
}

/// The title of the file.
pub fn document_title(content: &Content) -> String {
    format!("{} {}", title(content.kind), content.number)
}

/// The heading above the departures.
pub fn off_the_rules(kind: Kind) -> String {
    match kind {
        Kind::Accepted => tell!("cert-wording-departures_and_what_else_went"),
        Kind::Rejected => tell!("cert-wording-why_rejected_and_what_went"),
        Kind::Rehearsal => tell!("cert-wording-what_was_practised_and_what"),
        Kind::Unrepaired => tell!("cert-wording-why_closed_unrepaired_and_what"),
    }
}

/// The heading above the signatures.
pub fn signatures(kind: Kind) -> String {
    match kind {
        Kind::Rehearsal => tell!("cert-wording-practice_signatures"),
        Kind::Accepted | Kind::Rejected | Kind::Unrepaired => tell!("cert-wording-signatures"),
    }
}

/// The words of a heading that a page reference may name.
pub fn heading(key: &str, content: &Content) -> String {
    let stages = content.stages.value().map_or(STAGES, |stages| stages.rows.len());
    let readings = content.hold.value().map_or(0, |hold| hold.readings.len());
    match key {
        headings::STAGES if stages == STAGES => tell!("cert-heading-stages"),
        headings::STAGES => tell!("cert-stages-the_stages"),
        headings::WORKING_TIME => tell!("cert-heading-working_time"),
        headings::HOLD => tell!("cert-heading-hold"),
        headings::READINGS if readings == 1 => tell!("cert-readings-the_only_reading"),
        headings::READINGS => tell!("cert-readings-all_readings", count = readings),
        headings::MATERIALS => tell!("cert-heading-materials"),
        headings::SHEETS => tell!("cert-heading-sheets"),
        headings::CHECKS => tell!("cert-heading-checks"),
        headings::FINDINGS => tell!("cert-heading-findings"),
        headings::DEPARTURES => tell!("cert-heading-departures"),
        headings::NOTES => tell!("cert-heading-notes"),
        headings::ATTEMPTS => tell!("cert-heading-attempts"),
        headings::CORRECTIONS => tell!("cert-heading-corrections"),
        headings::PHOTOS => tell!("cert-heading-photos"),
        headings::CAUTIONS => cautions(content.kind),
        other => other.to_owned(),
    }
}

fn cautions(kind: Kind) -> String {
    match kind {
        Kind::Accepted => tell!("cert-wording-cautions_and_what_this_certificate"),
        Kind::Rejected | Kind::Rehearsal | Kind::Unrepaired => tell!("cert-wording-cautions_and_what_this_record"),
    }
}

/// The last words.
pub fn end(kind: Kind) -> String {
    match kind {
        Kind::Accepted => tell!("cert-wording-end_of_the_certificate"),
        Kind::Rejected | Kind::Rehearsal | Kind::Unrepaired => tell!("cert-wording-end_of_the_record"),
    }
}

/// The left of the footer.
pub fn footer(kind: Kind, sealed: bool) -> String {
    match (kind, sealed) {
        (Kind::Rehearsal, _) => tell!("cert-wording-rehearsal_practice_not_a_certificate"),
        (_, true) => tell!("cert-wording-the_sealed_pdf_is_the"),
        (_, false) => tell!("cert-wording-not_sealed_by_a_key"),
    }
}

/// Whether the result stands white on a black bar, so that no accepted sheet looks like it.
pub fn reversed(kind: Kind) -> bool {
    matches!(kind, Kind::Rejected | Kind::Unrepaired)
}
