//! Certificates that somebody brings.

use mendline_core::door::{Finding, Trusted, check_file};

pub fn run(bytes: &[u8]) {
    // Anything else is a record, and has a target of its own.
    if !bytes.starts_with(b"%PDF-") {
        return;
    }
    let verdict = check_file("a.pdf", bytes, &Trusted::default());
    let sound = matches!(verdict.finding, Finding::Valid | Finding::Rehearsal);
    assert!(!sound || verdict.signatures.iter().all(|one| one.intact), "sound, with a signature that does not hold");
}
