//! The certificate: what it says ([`content`]), how it looks, and the PDF file.

pub mod content;
