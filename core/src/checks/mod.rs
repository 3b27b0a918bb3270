//! What the tool computes: pure formulas, one family a file, each with its units, valid range, rounding and source.
//!
//! Typed quantities go in and come out; no clock, no storage, no text of a screen. A formula that can't give a sound
//! answer says so with a [`Refused`], which names the rule and carries the values that broke it.
//!
//! The plan:
//! - [`sheet_rows`]: a data sheet's times against temperature, and the interpolation between them.
//! - [`working_time`]: how long the mixed resin stays workable, at the warmest of three temperatures.
//! - [`required_hold`], [`equivalent_age`]: how long the pressure has to stay, at the coldest reading.
//! - [`budget`]: what is left of the working time, and the latest times of each step.
//! - [`crew_times`]: this crew's own times, and the chance to be in time.
//! - [`flow_control`]: how long the line above can store the inflow.
//! - [`pressure_window`], [`end_thrust`]: between which pressures, and how hard an end pushes if it lets go.
//! - [`cover`], [`series`], [`laterals`], [`clock_face`]: where the patch lies and what it covers.
//! - [`rods`]: how far to push, from a named reading point.
//! - [`binding`], [`packer_fit`]: sleeve, membrane, patch and packer against the measured pipe.
//!
//! The hold:
//! - [`hold`]: counted time, gaps, excursions, and the earliest release.
//! - [`packer_air`]: cooling told from a leak.
//!
//! Beside them:
//! - [`wall`], [`resin`]: what the lining must be, and what it takes up.
//! - [`air_test`], [`water_test`]: tightness tests, each by the standard that it names.
//! - [`atmosphere`], [`flow`]: the air that somebody enters, the water that must wait.
//! - [`field`]: a value's name, unit and range, said once; [`named`]: every check by name, for the command line and the
//!   door.

pub mod air_test;
pub mod atmosphere;
pub mod binding;
pub mod budget;
pub mod clock_face;
pub mod cover;
pub mod crew_times;
pub mod end_thrust;
pub mod equivalent_age;
pub mod field;
pub mod flow;
pub mod flow_control;
pub mod hold;
pub mod laterals;
pub mod named;
pub mod packer_air;
pub mod packer_fit;
pub mod pressure_window;
mod refused;
pub mod required_hold;
pub mod resin;
pub mod rods;
pub mod series;
pub mod sheet_rows;
mod student;
pub mod wall;
pub mod water_test;
pub mod working_time;

pub use refused::Refused;
