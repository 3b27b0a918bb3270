//! The label of a container: a photo of its GS1 code says product, lot and last good day.

mod code;
mod gs1;

pub use gs1::{Label, Wrong};

use crate::picture;

/// Why a label was not read. Nothing was written.
#[derive(Debug, thiserror::Error)]
pub enum Fault {
    #[error(transparent)]
    Unreadable(#[from] picture::Unreadable),
    #[error(
        "No code was found in the picture. Go closer until the code fills half of it, hold still, keep light off its surface; or type what is printed."
    )]
    NoCode,
    #[error("The code is no GS1 code: it says “{says}”. Look for another code on the label, or type what is printed.")]
    NotGs1 { says: String },
    #[error(transparent)]
    Wrong(#[from] Wrong),
}

/// Returns what the GS1 codes in the picture of a label say together. `year` is the year of now: a code gives two digits.
///
/// Reads DataMatrix, QR and Code 128 that say of themselves that they are GS1 codes. Codes that say nothing of product,
/// lot or last day are passed over where another one does.
/// Errors: `Unreadable`, `NoCode`, `NotGs1`; `Wrong` for what the code says.
/// Source: GS1 General Specifications, release 24, 3.2 to 3.4, 7.8 and 7.9. Vectors: `fixtures/labels/`.
pub fn read(bytes: &[u8], year: i32) -> Result<Label, Fault> {
    let codes = code::found(&picture::decoded(bytes)?);
    let (said, other): (Vec<_>, Vec<_>) = codes.into_iter().partition(|code| code.gs1);
    if let Some(first) = said.first() {
        let mut label = gs1::parsed(&first.text, year)?;
        for code in &said[1..] {
            label = label.with(gs1::parsed(&code.text, year)?)?;
        }
        return Ok(label.said_something()?);
    }
    match other.into_iter().next() {
        Some(code) => Err(Fault::NotGs1 { says: code.text.chars().take(60).collect() }),
        None => Err(Fault::NoCode),
    }
}

/// Returns what all codes in a picture say, each once, as text.
///
/// Errors: `Unreadable`, `NoCode`.
pub fn texts(bytes: &[u8]) -> Result<Vec<String>, Fault> {
    let found: Vec<String> = code::found(&picture::decoded(bytes)?).into_iter().map(|code| code.text).collect();
    if found.is_empty() { Err(Fault::NoCode) } else { Ok(found) }
}

#[cfg(test)]
mod tests;
