//! What the paper is not, what to mind, and how to check and keep it.

use super::{Case, place, signatures, words};
use crate::certificate::content::{Kind, Known, Pair};
use crate::shelf::contract::Attachments;
use crate::units::Length;
use crate::words::tell;

/// Returns the cautions in the order to read them.
pub fn cautions(case: &Case) -> Vec<Pair> {
    let mut found = vec![
        (tell!("cert-cautions-not_a_design"), tell!("cert-cautions-wall_thickness_and_pressure_figures")),
        (tell!("cert-cautions-not_a_product_test"), tell!("cert-cautions-it_does_not_say_that")),
    ];
    if case.kind != Kind::Rehearsal {
        found.push((tell!("cert-cautions-not_an_acceptance"), tell!("cert-cautions-the_owner_accepts_by_a")));
    }
    found.push(extent(case));
    found.extend([
        (tell!("cert-cautions-hand_readings"), tell!("cert-cautions-are_statements_of_the_person")),
        who(case),
        (tell!("cert-cautions-before_going_near"), tell!("cert-cautions-confined_space_traffic_compressed_air")),
        (tell!("cert-cautions-to_check_this_file"), check(case.kind)),
        (tell!("cert-cautions-the_record"), record(case)),
        (tell!("cert-cautions-to_keep_it"), keep(case.kind)),
    ]);
    found.into_iter().map(|(label, value)| Pair { label, value }).collect()
}

fn who(case: &Case) -> (String, String) {
    if signatures::by_pin(case) {
        let says = tell!("cert-cautions-each_who_signed_opened_a");
        return (tell!("cert-cautions-whose_key"), says);
    }
    let says = tell!("cert-cautions-names_were_picked_from_a");
    (tell!("cert-cautions-not_authenticated"), says)
}

fn extent(case: &Case) -> (String, String) {
    let kind = case.kind;
    match (kind, place::patch(case)) {
        (Kind::Rehearsal, _) => {
            (tell!("cert-cautions-not_a_repair"), tell!("cert-cautions-nothing_was_mended_the_pipe"))
        }
        (Kind::Accepted, Known::Known(patch)) => {
            let mended = words::metres(Length::from_um(patch.to_um.as_um() - patch.from_um.as_um()));
            let all = words::metres(case.repair.line.length_um);
            (tell!("cert-cautions-not_a_length"), tell!("cert-cautions-of_was_mended_the_rest", mended, all))
        }
        (_, Known::Known(_)) => (tell!("cert-cautions-not_a_repair"), tell!("cert-cautions-a_patch_lies_in_the")),
        (_, Known::Absent(why)) => {
            (tell!("cert-cautions-not_a_repair"), tell!("cert-cautions-the_defect_is_not_mended", why))
        }
    }
}

fn check(kind: Kind) -> String {
    match kind {
        Kind::Rehearsal => tell!("cert-cautions-mendline_verify_file_answers_3"),
        Kind::Accepted | Kind::Rejected | Kind::Unrepaired => {
            tell!("cert-cautions-mendline_verify_file_tells_whether")
        }
    }
}

fn keep(kind: Kind) -> String {
    match kind {
        Kind::Rehearsal => tell!("cert-cautions-it_may_be_kept_for"),
        Kind::Accepted | Kind::Rejected | Kind::Unrepaired => {
            tell!("cert-cautions-keep_the_pdf_whole_and")
        }
    }
}

/// Says where the record is that the head names.
fn record(case: &Case) -> String {
    match case.repair.contract.attachments {
        Attachments::Allowed => {
            tell!("cert-cautions-lies_whole_inside_this_file")
        }
        Attachments::Refused => {
            tell!("cert-cautions-is_not_inside_this_file", contract = case.repair.contract.id)
        }
    }
}
