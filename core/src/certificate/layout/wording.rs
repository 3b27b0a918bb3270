//! The fixed words that differ by the kind of paper.

use crate::certificate::content::{Content, Kind};
use crate::words::tell;

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

/// The heading above the cautions.
pub fn cautions(kind: Kind) -> String {
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
