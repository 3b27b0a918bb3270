//! `mendline diagnostics`: the file for support.

use std::path::PathBuf;

use clap::Args;
use mendline_core::door::{App, Diagnostics};

use crate::ports::{Ports, free_bytes};

/// Prints what support asks for: version, platform, counts, faults, sizes. No name and no position is in it.
///
/// Also of a folder that can't be opened: then it says why by a code.
#[derive(Args)]
pub struct DiagnosticsArgs {
    /// The folder that holds the repairs.
    #[arg(long, value_name = "DIR")]
    data: PathBuf,
}

/// Prints the file.
///
/// Errors: there is no such folder, or no clock.
pub fn run(args: &DiagnosticsArgs) -> Result<(), String> {
    if !args.data.is_dir() {
        return Err(format!("{} is not a folder. Name the one that holds the repairs.", args.data.display()));
    }
    let at_ms =
        Ports::of_a_reader().and_then(|ports| ports.sense()).map_err(|problem| problem.to_string())?.moment.at_ms;
    // A folder without a journal is told of, not filled.
    let told = if args.data.join("journal.sqlite").exists() {
        match App::open(&args.data) {
            Ok(mut app) => {
                app.set_free_bytes(free_bytes(&args.data));
                app.diagnostics(at_ms)
            }
            Err(fault) => Diagnostics::from_outside(&args.data, Some(&fault), at_ms),
        }
    } else {
        Diagnostics::from_outside(&args.data, None, at_ms)
    };
    print!("{}", told.text());
    Ok(())
}
