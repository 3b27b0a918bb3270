//! What comes from outside, one target each: bytes in, and a panic if a promise is broken.
//!
//! Too much memory ends the program, as it would on a phone.

mod bundle;
mod door;
mod folder;
mod inspection;
pub mod mutate;
mod pdf;
mod record;

use std::alloc::System;
use std::path::PathBuf;

use cap::Cap;

/// Counts what the program holds, and refuses more than is allowed.
#[global_allocator]
static MEMORY: Cap<System> = Cap::new(System, usize::MAX);

/// The most bytes that one input may take, beside what was held before.
pub const MOST_MEMORY: usize = 256 << 20;

/// Panics if a promise is broken.
pub type Target = fn(&[u8]);

pub const TARGETS: [(&str, Target); 5] = [
    ("inspection", inspection::run),
    ("bundle", bundle::run),
    ("record", record::run),
    ("door", door::run),
    ("pdf", pdf::run),
];

/// Returns the target of this name.
pub fn target(name: &str) -> Option<Target> {
    TARGETS.iter().find(|(known, _)| *known == name).map(|(_, target)| *target)
}

/// Tries one input within its memory.
pub fn run(target: Target, bytes: &[u8]) {
    let _ = MEMORY.set_limit(MEMORY.allocated() + MOST_MEMORY);
    target(bytes);
}

/// Returns the most bytes that were held at once since the program began.
pub fn most_held() -> usize {
    MEMORY.max_allocated()
}

/// Returns the folder of the inputs that are kept.
pub fn corpus() -> PathBuf {
    [env!("CARGO_MANIFEST_DIR"), "..", "..", "fixtures", "corpus"].iter().collect()
}
