//! The driver: libFuzzer looks for inputs that take new paths through one target, named by `MENDLINE_FUZZ`.
#![no_main]

use std::sync::LazyLock;

use libfuzzer_sys::fuzz_target;
use mendline_fuzz::{Target, target};

static TARGET: LazyLock<Target> = LazyLock::new(|| {
    // The driver's own hook ends the program at every panic, also where one of a library is caught and answered.
    let _ = std::panic::take_hook();
    let name = std::env::var("MENDLINE_FUZZ").unwrap_or_default();
    target(&name).unwrap_or_else(|| {
        eprintln!("MENDLINE_FUZZ names no target: {name:?}");
        std::process::exit(2)
    })
});

fuzz_target!(|bytes: &[u8]| mendline_fuzz::run(*TARGET, bytes));
