//! The repair of one defect in a buried pipe, from the inspection to the certificate.
//!
//! - [`checks`]: what the tool computes: the plan and the hold.
//! - [`geodesy`]: distance, direction, and the place of a station.
//! - [`entry`]: what somebody typed, kept as typed and as the recorded quantity.
//! - [`units`]: recorded quantities, as integers whose unit is named.
//! - [`certificate`]: content of a certificate → pages → PDF bytes.
//! - [`inspection`]: inspection files in the exchange format of EN 13508-2.
//! - [`maths`]: the one door to transcendental functions.
//! - [`facts`]: the outside world as plain data.
//! - [`door`]: request in, response out: the only way in.
//! - [`journal`]: what happened, in entries that are only ever added; bytes and links.
//! - [`shelf`]: contract, data sheets, method statements, people: where every process number comes from.
//! - [`procedure`]: the rules of the repair: decide, apply, gate.
//! - [`view`]: what each screen shows.
//! - [`picture`]: pictures decoded within bounds, the right way up.
//! - [`exif`]: when and where a photo says that it was taken.
//! - [`label`]: what the GS1 code on the label of a container says.
//! - [`photos`]: original photos in files named by their hash.
//! - [`bundle`]: repairs on their way to another device, signed.
//! - [`register`]: lists and search beside the journal, rebuilt from it.
//! - [`words`]: sentences and figures in the language and units of who reads.
//! - [`seal`]: keys, their certificates, and the signatures of a PDF: made and checked.

pub mod bundle;
pub mod certificate;
pub mod checks;
pub mod door;
pub mod entry;
pub mod exif;
pub mod facts;
pub mod geodesy;
pub mod inspection;
pub mod journal;
pub mod label;
pub mod maths;
pub mod photos;
pub mod picture;
pub mod procedure;
pub mod register;
pub mod seal;
pub mod shelf;
pub mod units;
pub mod view;
pub mod words;
