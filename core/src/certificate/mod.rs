//! The certificate: [`content`] (what it says) → [`layout`] (pages, as a [`display`] list) → [`pdf`] (the file).
//!
//! - [`fonts`]: the bundled faces: what they cover, how wide a text is, subsets.
//! - [`jpeg`]: the few header fields of a JPEG file that a page needs.
//! - [`photo_copy`]: the reduced copy of a photo.
//!
//! The same content gives the same bytes: no clock, no random number, no setting of the machine takes part.

pub mod content;
pub mod derive;
pub mod display;
pub mod fonts;
pub mod jpeg;
pub mod layout;
pub mod pdf;
pub mod photo_copy;

pub use content::Content;
pub use derive::{ChainFacts, derive};
pub use display::SIGNATURE_FIELDS;

/// Why no PDF could be made.
#[derive(Debug, thiserror::Error)]
pub enum CertificateError {
    /// A bundled font file is not what it should be.
    #[error("the bundled font {face} can't be read: {why}. Reinstall the program.")]
    Font { face: &'static str, why: String },
    /// The content contradicts itself in a way that no page can show.
    #[error("the content of the certificate can't be printed: {what}")]
    Content { what: String },
    /// The pages could not be written as a PDF file.
    #[error("the PDF could not be written: {what}. Nothing was saved; report this with the repair's bundle.")]
    Pdf { what: String },
}

/// Returns the bytes of the PDF that says `content`: PDF 1.7, tagged, with embedded fonts, not yet signed.
///
/// Errors: `Font` if a bundled font is damaged; `Content` if the offset from UTC is out of range; `Pdf` if the writer
/// warns of anything. A photo that can't be shown is no error: its frame says why.
pub fn build(content: &Content) -> Result<Vec<u8>, CertificateError> {
    let fonts = fonts::Fonts::shared()?;
    let document = layout::lay_out(content, fonts)?;
    pdf::write(content, &document, fonts)
}
