//! The one door to transcendental functions, so that desktop and phone agree to the last bit.
//!
//! The standard library hands these to the platform, whose last digit differs; `libm` is the same code everywhere.

pub use libm::{acos, asin, atan2, cbrt, cos, exp, hypot, log as ln, pow, sin, sqrt, tan};
