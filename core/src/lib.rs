//! The repair of one defect in a buried pipe, from the inspection to the certificate.
//!
//! - [`units`]: recorded quantities, as integers whose unit is named.
//! - [`maths`]: the one door to transcendental functions.

pub mod maths;
pub mod units;
