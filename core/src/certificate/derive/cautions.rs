//! What the paper is not, what to mind, and how to check and keep it.

use super::{Case, place, signatures, words};
use crate::certificate::content::{Kind, Known, Pair};
use crate::shelf::contract::Attachments;
use crate::units::Length;

/// Returns the cautions in the order to read them.
pub fn cautions(case: &Case) -> Vec<Pair> {
    let mut found = vec![
        ("Not a design", "Wall thickness and pressure figures are checks for a licensed engineer, not a structural design.".into()),
        ("Not a product test", "It does not say that resin, patch or packer suit this pipe. That is the data sheet’s and the maker’s word.".into()),
    ];
    if case.kind != Kind::Rehearsal {
        found.push(("Not an acceptance", "The owner accepts by a separate act. A result here is the contractor’s own, against the limits printed here.".into()));
    }
    found.push(extent(case));
    found.extend([
        ("Hand readings", "are statements of the person named. Minutes nobody saw are not counted and are shown.".into()),
        who(case),
("Before going near", "Confined space, traffic, compressed air, uncured or hot resin, styrene and sewage can kill. Permit, data sheet, safety data sheet, local codes and licensed practice decide.".into()),
        ("To check this file", check(case.kind).into()),
        ("The record", record(case)),
        ("To keep it", keep(case.kind).into()),
    ]);
    found.into_iter().map(|(label, value): (&str, String)| Pair { label: label.into(), value }).collect()
}

fn who(case: &Case) -> (&'static str, String) {
    if signatures::by_pin(case) {
        let says = "Each who signed opened a key of their own with a PIN. Whose key it is, the owner learns from the contractor, not from this page.";
        return ("Whose key", says.into());
    }
    let says =
        "Names were picked from a list; no PIN and no key says who held the device. A drawn line alone proves nothing.";
    ("Not authenticated", says.into())
}

fn extent(case: &Case) -> (&'static str, String) {
    let kind = case.kind;
    match (kind, place::patch(case)) {
        (Kind::Rehearsal, _) => ("Not a repair", "Nothing was mended. The pipe is a practice pipe.".into()),
        (Kind::Accepted, Known::Known(patch)) => {
            let mended = words::metres(Length::from_um(patch.to_um.as_um() - patch.from_um.as_um()));
            let all = words::metres(case.repair.line.length_um);
            ("Not a length", format!("{mended} of {all} was mended. The rest of the line is as it was."))
        }
        (_, Known::Known(_)) => ("Not a repair", "A patch lies in the pipe; the defect is not mended.".into()),
        (_, Known::Absent(why)) => ("Not a repair", format!("The defect is not mended: {why}.")),
    }
}

fn check(kind: Kind) -> &'static str {
    match kind {
        Kind::Rehearsal => "“mendline verify FILE” answers 3 for a sound rehearsal that its keys signed: not a record.",
        Kind::Accepted | Kind::Rejected | Kind::Unrepaired => {
            "“mendline verify FILE” tells whether a key signed it and whether it was changed, no network needed."
        }
    }
}

fn keep(kind: Kind) -> &'static str {
    match kind {
        Kind::Rehearsal => "It may be kept for training, apart from the records of repairs.",
        Kind::Accepted | Kind::Rejected | Kind::Unrepaired => {
            "Keep the PDF whole, and beside it the original photos, which the contractor hands over. A print is a copy; its head still names the record."
        }
    }
}

/// Says where the record is that the head names.
fn record(case: &Case) -> String {
    match case.repair.contract.attachments {
        Attachments::Allowed => {
            "lies whole inside this file as record.json: every entry as it was hashed. Any PDF reader saves it.".into()
        }
        Attachments::Refused => {
            format!(
                "is not inside this file: contract {} refuses attachments. The contractor hands it over beside it.",
                case.repair.contract.id
            )
        }
    }
}
