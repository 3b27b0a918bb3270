//! The worked example, told by the rules of the procedure and derived into content.
//!
//! Its figures are those of the invented sheets on the example shelf; the expected ones were computed by hand, as each
//! test says.

mod accepted;
mod clocks;
mod evidence;
mod kit;
mod mutation;
mod others;
mod plan;
mod reader;
mod refused;
mod story;
