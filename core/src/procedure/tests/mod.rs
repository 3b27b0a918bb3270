//! The rules, told as given, when, then.

mod attempts;
pub(crate) mod kit;
mod matrix;
mod random;
mod resin;
mod street;
