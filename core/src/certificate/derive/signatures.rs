//! Who signed with a drawn line, and whether a PIN said who it was.

use super::{Case, words};
use crate::certificate::content::{Kind, Known, Signature, Signed};
use crate::procedure::repair;
use crate::shelf::Role;
use crate::words::tell;

/// Returns technician and foreman, signed or not.
pub fn signatures(case: &Case) -> Vec<Signature> {
    [Role::Technician, Role::Foreman]
        .into_iter()
        .map(|role| {
            let signed = case.repair.signatures.iter().find(|signature| signature.role == role);
            signed.map_or_else(|| unsigned(role), |signature| one(case, signature, role))
        })
        .collect()
}

/// Returns the word for who signs.
pub fn word(role: Role) -> String {
    if role == Role::Technician { tell!("cert-signatures-technician") } else { tell!("cert-signatures-foreman") }
}

/// Returns the word for who signs, as it stands in a sentence.
pub fn signer(role: Role) -> String {
    words::small(&word(role))
}

/// Says that nobody of a role has signed.
pub fn nobody(role: Role) -> String {
    match role {
        Role::Technician => tell!("cert-signatures-no_technician_signed"),
        _ => tell!("cert-signatures-no_foreman_signed"),
    }
}

/// Says whether all who signed opened a key of their own with its PIN.
pub fn by_pin(case: &Case) -> bool {
    let signatures = &case.repair.signatures;
    !signatures.is_empty() && signatures.iter().all(|signature| signature.key.is_some())
}

fn unsigned(role: Role) -> Signature {
    Signature {
        name: match role {
            Role::Technician => tell!("cert-signatures-no_technician"),
            _ => tell!("cert-signatures-no_foreman"),
        },
        role: word(role),
        statement: String::new(),
        signed: Known::Absent(tell!("cert-signatures-nobody_has_put_a_name")),
    }
}

fn one(case: &Case, signature: &repair::Signature, role: Role) -> Signature {
    let statement = match case.kind {
        Kind::Rehearsal => tell!("cert-signatures-practice_signature_drawn_proves_nothing"),
        Kind::Accepted | Kind::Rejected | Kind::Unrepaired => signature.statement.clone(),
    };
    let strokes: Vec<Vec<[i32; 2]>> =
        signature.strokes.iter().map(|stroke| stroke.iter().map(|(x, y)| [*x, *y]).collect()).collect();
    let tapped = case.name(signature.at.person.as_deref());
    let name = if tapped == signature.name {
        tapped
    } else {
        tell!("cert-signatures-picked_as", tapped, name = signature.name)
    };
    Signature {
        name,
        role: word(role),
        statement,
        signed: Known::Known(Signed {
            at_ms: signature.at.moment.at_ms,
            device: tell!("cert-signatures-device", device = signature.at.device),
            authenticated: signature.key.is_some(),
            strokes: Some(strokes).filter(|strokes| strokes.iter().any(|stroke| !stroke.is_empty())),
        }),
    }
}
