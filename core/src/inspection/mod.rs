//! Inspection files in the exchange format of EN 13508-2 (Annex B), text form and XML form.
//!
//! - [`record`]: what a file says, as plain data. [`clock`]: positions round the pipe.
//! - [`read`]: bytes to [`InspectionFile`], or a [`ReadError`] that names line, expected and found. All or nothing.
//! - `nodes`: upstream, downstream, stations from either. [`stretch`]: continuous defects. [`extent`]: one defect from
//!   the observations that somebody picks.
//! - [`words`]: a code in plain words. [`patchable`]: does a patch suit it? Advice, never a gate.
//! - `decode` bytes to text · `lines`, `row` lines and their cells · `fields` cells to a record, for both forms · `text`, `xml` the readers.
//!
//! What an inspection file leaves open is a [`Notice`], never a guess in silence.

pub mod clock;
mod decode;
mod error;
#[cfg(test)]
mod example;
pub mod extent;
mod fields;
mod lines;
mod nodes;
pub mod patchable;
#[cfg(test)]
mod random;
pub mod record;
mod row;
#[cfg(test)]
mod samples;
pub mod stretch;
mod text;
pub mod words;
mod xml;

pub use clock::Clock;
pub use error::{ReadCode, ReadError};
pub use extent::{ClockExtent, DefectExtent, ExtentError, SameHour, combine, combine_answered};
pub use patchable::{Patchable, Why, patchable};
pub use record::{Direction, Form, Inspection, InspectionFile, Notice, NoticeCode, Observation, Quantification};
pub use stretch::{Stretch, Stretches};

/// The largest file that is read, in bytes.
pub const MOST_BYTES: usize = 16 << 20;
/// The most inspections in one file.
pub const MOST_INSPECTIONS: usize = 20_000;
/// The most observations in one file.
pub const MOST_OBSERVATIONS: usize = 200_000;
/// The most columns in one row, and header fields in one inspection.
pub const MOST_COLUMNS: usize = 256;

/// The most notices that are listed.
pub const MOST_NOTICES: usize = 100;

/// Returns what the file says, with notices about what had to be read around.
///
/// Errors: [`ReadError`] with the line (1-based), what was expected and what was found; nothing is returned half read.
/// Time and memory grow with the size of the file, up to [`MOST_BYTES`].
/// Source: EN 13508-2:2003+A1:2011, Annex B, as the open data of the R package kwb.en13508.2 shows it.
pub fn read(bytes: &[u8]) -> Result<InspectionFile, ReadError> {
    if bytes.len() > MOST_BYTES {
        let expected = format!("a file of at most {} MB: export it in parts", MOST_BYTES >> 20);
        return Err(ReadError::new(ReadCode::TooLarge, 1, expected, "a larger one"));
    }
    let decoded = decode::decode(bytes)?;
    let mut file = match decoded.text.trim_start().starts_with('<') {
        true => xml::read(decoded)?,
        false => text::read(decoded)?,
    };
    shorten(&mut file.notices);
    Ok(file)
}

/// Keeps the first notices and says how many more there are.
fn shorten(notices: &mut Vec<Notice>) {
    let more = notices.len().saturating_sub(MOST_NOTICES);
    if more > 0 {
        notices.truncate(MOST_NOTICES);
        let text = format!("{more} more notices are not listed");
        notices.push(Notice { code: NoticeCode::MoreNotices, line: 1, text });
    }
}
