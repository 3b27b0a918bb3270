//! Who signed with a drawn line, and whether a PIN said who it was.

use super::Case;
use crate::certificate::content::{Kind, Known, Signature, Signed};
use crate::procedure::repair;
use crate::shelf::Role;

/// Returns technician and foreman, signed or not.
pub fn signatures(case: &Case) -> Vec<Signature> {
    [(Role::Technician, "Technician"), (Role::Foreman, "Foreman")]
        .into_iter()
        .map(|(role, word)| {
            let signed = case.repair.signatures.iter().find(|signature| signature.role == role);
            signed.map_or_else(|| unsigned(word), |signature| one(case, signature, word))
        })
        .collect()
}

/// Says whether all who signed opened a key of their own with its PIN.
pub fn by_pin(case: &Case) -> bool {
    let signatures = &case.repair.signatures;
    !signatures.is_empty() && signatures.iter().all(|signature| signature.key.is_some())
}

fn unsigned(word: &str) -> Signature {
    Signature {
        name: format!("No {}", word.to_lowercase()),
        role: word.into(),
        statement: String::new(),
        signed: Known::Absent("nobody has put a name to this record".into()),
    }
}

fn one(case: &Case, signature: &repair::Signature, word: &str) -> Signature {
    let statement = match case.kind {
        Kind::Rehearsal => "Practice signature, drawn: proves nothing about a pipe.".into(),
        Kind::Accepted | Kind::Rejected | Kind::Unrepaired => signature.statement.clone(),
    };
    let strokes: Vec<Vec<[i32; 2]>> =
        signature.strokes.iter().map(|stroke| stroke.iter().map(|(x, y)| [*x, *y]).collect()).collect();
    let tapped = case.name(signature.at.person.as_deref());
    let name = if tapped == signature.name { tapped } else { format!("{}, picked as {tapped}", signature.name) };
    Signature {
        name,
        role: word.into(),
        statement,
        signed: Known::Known(Signed {
            at_ms: signature.at.moment.at_ms,
            device: format!("device {}", signature.at.device),
            authenticated: signature.key.is_some(),
            strokes: Some(strokes).filter(|strokes| strokes.iter().any(|stroke| !stroke.is_empty())),
        }),
    }
}
