//! The rules, told as given, when, then.

mod attempts;
mod clocks;
mod handing;
pub(crate) mod kit;
mod matrix;
mod nearly;
mod random;
mod resin;
mod roles;
mod street;
