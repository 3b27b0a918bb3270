//! The fixed words that differ by the kind of paper.

use crate::certificate::content::{Content, Kind};

/// The title of page 1.
pub fn title(kind: Kind) -> &'static str {
    match kind {
        Kind::Accepted => "Sectional repair certificate",
        Kind::Rejected => "Repair record – rejected",
        Kind::Rehearsal => "Rehearsal record – not a certificate",
        Kind::Unrepaired => "Repair record – closed unrepaired",
    }
}

/// The title of the file.
pub fn document_title(content: &Content) -> String {
    format!("{} {}", title(content.kind), content.number)
}

/// The heading above the departures.
pub fn off_the_rules(kind: Kind) -> &'static str {
    match kind {
        Kind::Accepted => "Departures and what else went off the rules",
        Kind::Rejected => "Why rejected, and what went off the rules",
        Kind::Rehearsal => "What was practised and what it does not show",
        Kind::Unrepaired => "Why closed unrepaired, and what went off the rules",
    }
}

/// The heading above the signatures.
pub fn signatures(kind: Kind) -> &'static str {
    match kind {
        Kind::Rehearsal => "Practice signatures",
        Kind::Accepted | Kind::Rejected | Kind::Unrepaired => "Signatures",
    }
}

/// The heading above the cautions.
pub fn cautions(kind: Kind) -> &'static str {
    match kind {
        Kind::Accepted => "Cautions, and what this certificate is not",
        Kind::Rejected | Kind::Rehearsal | Kind::Unrepaired => "Cautions, and what this record is not",
    }
}

/// The last words.
pub fn end(kind: Kind) -> &'static str {
    match kind {
        Kind::Accepted => "End of the certificate",
        Kind::Rejected | Kind::Rehearsal | Kind::Unrepaired => "End of the record",
    }
}

/// The left of the footer.
pub fn footer(kind: Kind, sealed: bool) -> &'static str {
    match (kind, sealed) {
        (Kind::Rehearsal, _) => "REHEARSAL. Practice, not a certificate.",
        (_, true) => "The sealed PDF is the original; a print is a copy.",
        (_, false) => "Not sealed by a key: see page 1.",
    }
}

/// Whether the result stands white on a black bar, so that no accepted sheet looks like it.
pub fn reversed(kind: Kind) -> bool {
    matches!(kind, Kind::Rejected | Kind::Unrepaired)
}
