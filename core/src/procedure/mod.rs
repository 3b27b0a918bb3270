//! The rules of the repair: `decide` says what comes of a command, `apply` what a repair looks like after it.
//!
//! Both are pure. Nothing here knows a clock, a file, a page or a screen.

pub mod answer;
pub mod apply;
pub mod command;
pub mod decide;
pub mod event;
pub mod gate;
pub mod happening;
pub mod hold;
pub mod line;
pub mod paper;
pub mod plan;
pub mod planning;
pub mod practice;
pub mod repair;
pub mod roles;
pub mod rules;
pub mod spot;
pub mod stage;
pub mod storing;
pub mod times;

pub use apply::{apply, replay};
pub use command::Command;
pub use decide::{Decision, decide};
pub use event::{Event, Record};
pub use happening::Happening;
pub use repair::{Attempt, Ending, Repair, Stamp, Standing};
pub use rules::{Kind, Refusal, Rule};
pub use stage::{Outcome, Stage};

#[cfg(test)]
pub(crate) mod tests;
