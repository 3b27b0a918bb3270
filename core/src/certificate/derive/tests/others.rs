//! The other papers: rejected, left in the pipe, closed without a patch, rehearsal; and that each can be printed.

use super::story::{left_in_pipe, mended, never_begun, practised, rejected};
use crate::certificate::build;
use crate::certificate::content::{Around, Content, Kind, Known};

fn reason<'a>(content: &'a Content, label: &str) -> &'a str {
    &content.reasons.iter().find(|note| note.label == label).unwrap().text
}

#[test]
fn a_rejected_repair_says_why_and_what_speaks_against_the_patch() {
    let content = rejected().content().unwrap();
    assert_eq!((content.kind, &*content.result.headline), (Kind::Rejected, "REJECTED"));
    assert_eq!(content.result.tail, "by the foreman, 3 findings outside the limits");
    assert_eq!(content.answers[0].label, "Why rejected");
    assert_eq!(content.answers[0].first, "Net pressure lost in the hold; fold of 14 mm; upstream edge not bonded");
    // 86 000 − 7846 = 78 154 Pa net.
    assert_eq!(
        reason(&content, "Doubtful"),
        "0.86 bar at 10:17, 0.24 bar below the window, for at most 6 min 26 s, resin 1 h 13 min old: hose burst, joined again. Net 0.78 bar fell below the sheet’s least net 0.90 bar before the hold was reached: the attempt is doubtful (page @<The hold>)."
    );
    assert_eq!(reason(&content, "F1"), "An edge is not bonded all round.");
    assert!(reason(&content, "F2").starts_with("A fold of 14 mm; the limit is 6 mm (EN ISO 11296-4"));
    assert!(reason(&content, "Rejected").starts_with("Attempt 2, Ines Varga, 14:31."));
    assert_eq!(content.departures.len(), 1);
    let mark = &content.place.value().unwrap().marks[0];
    assert_eq!((&*mark.label, &*mark.words, mark.around), ("F2", "fold", Around::At(7)));
    assert_eq!((mark.stretch.from_um.as_um(), mark.stretch.to_um.as_um()), (6_960_000, 7_220_000));
    let edges = content.findings.iter().find(|finding| finding.what == "Edges").unwrap();
    assert!(edges.outside && edges.found.starts_with("OUTSIDE: An edge is not bonded all round."), "{}", edges.found);
    let again = content.notes.iter().find(|note| note.label == "Answered again").unwrap();
    assert!(again.text.contains("upstream edge bonded all round"), "{}", again.text);
}

#[test]
fn a_record_that_nobody_signed_says_so() {
    let content = rejected().content().unwrap();
    assert!(content.signatures.iter().all(|one| matches!(&one.signed, Known::Absent(why) if !why.is_empty())));
    assert_eq!(content.answers[4].first, "No foreman has signed");
}

#[test]
fn a_patch_left_in_the_pipe_is_told_with_place_and_troubles() {
    let content = left_in_pipe().content().unwrap();
    assert_eq!((content.kind, &*content.result.headline), (Kind::Unrepaired, "UNREPAIRED"));
    assert_eq!(content.result.tail, "closed by the foreman, a patch was left in the pipe");
    assert_eq!(content.reasons[0].label, "Not mended");
    let left = reason(&content, "Left in pipe");
    assert!(left.contains("Stuck. Tomas Ekdal, 09:50.") && left.contains("to be dug up"), "{left}");
    assert_eq!(reason(&content, "Closed"), "The line is dug up. Ines Varga, 10:30.");
    assert!(reason(&content, "Doubtful").starts_with("Packer burst was reported while the resin set."));
    assert_eq!(reason(&content, "F1"), "The lateral at 7.46 m is covered and not opened.");
    let place = content.place.value().unwrap();
    assert!(place.patch.value().is_some());
    let folds = content.findings.iter().find(|finding| finding.what == "Folds").unwrap();
    assert_eq!(folds.found, "not recorded");
}

#[test]
fn a_repair_closed_before_any_attempt_gives_reasons_instead_of_values() {
    let content = never_begun().content().unwrap();
    assert_eq!(content.kind, Kind::Unrepaired);
    let place = content.place.value().unwrap();
    assert_eq!(place.patch, Known::Absent("no patch was set".into()));
    assert_eq!(content.hold, Known::Absent("no attempt was begun".into()));
    assert_eq!(content.working_time, Known::Absent("no attempt was begun".into()));
    assert_eq!(content.stages, Known::Absent("no attempt was begun".into()));
    assert!(content.answers[2].second.as_ref().unwrap().starts_with("Defect centre 7.26 m"));
    assert_eq!((content.checks.len(), content.danger), (0, None));
}

#[test]
fn a_rehearsal_is_titled_so_and_has_no_code() {
    let content = practised().content().unwrap();
    assert_eq!((content.kind, &*content.result.headline), (Kind::Rehearsal, "REHEARSAL"));
    assert_eq!((&*content.number, &content.qr), ("K3F-R009", &None));
    assert_eq!(content.reasons[0].label, "Not a repair");
    assert!(content.signatures.iter().all(|one| one.statement.starts_with("Practice signature")));
    assert!(content.answers.iter().any(|answer| answer.label == "What was practised"));
}

#[test]
fn accepted_never_stands_alone() {
    let content = mended().content().unwrap();
    for after in [&content.result.tail, &content.result.short] {
        assert!(after.starts_with("by the foreman"));
    }
}

#[test]
fn every_paper_can_be_printed_and_says_that_no_key_seals_it() {
    for story in [mended(), practised(), rejected(), left_in_pipe(), never_begun()] {
        let content = story.content().unwrap();
        let pdf = build(&content).unwrap();
        assert!(pdf.starts_with(b"%PDF-1.7"), "{:?}", content.kind);
    }
}
