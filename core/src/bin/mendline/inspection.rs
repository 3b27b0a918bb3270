//! `mendline inspection FILE`: what an inspection file says, as a list to read or as JSON.

mod json;
mod listing;

use std::fs::File;
use std::io::{ErrorKind, Read, Write};
use std::path::{Path, PathBuf};
use std::process::ExitCode;

use mendline_core::inspection::{self, InspectionFile, MOST_BYTES};

/// The file could not be read.
const UNREADABLE: u8 = 2;

#[derive(clap::Args)]
pub struct Args {
    /// An inspection file in the exchange format of EN 13508-2, text or XML.
    file: PathBuf,
    /// Prints JSON, for programs.
    #[arg(long)]
    json: bool,
}

/// Prints the file; what is wrong or worth knowing goes to the error stream.
pub fn run(args: &Args) -> ExitCode {
    let file = match read(&args.file) {
        Ok(file) => file,
        Err(says) => {
            eprintln!("mendline: {}: {says}", args.file.display());
            return ExitCode::from(UNREADABLE);
        }
    };
    for notice in &file.notices {
        eprintln!("{}: line {}: {}", args.file.display(), notice.line, notice.text);
    }
    let text = if args.json { json::print(&file) } else { listing::print(&file) };
    match std::io::stdout().write_all(text.as_bytes()) {
        Err(error) if error.kind() != ErrorKind::BrokenPipe => {
            eprintln!("mendline: the list was not written: {error}");
            ExitCode::FAILURE
        }
        _ => ExitCode::SUCCESS,
    }
}

fn read(path: &Path) -> Result<InspectionFile, String> {
    let mut bytes = Vec::new();
    let file = File::open(path).map_err(|error| format!("can't be opened: {error}"))?;
    let most = MOST_BYTES as u64 + 1;
    file.take(most).read_to_end(&mut bytes).map_err(|error| format!("can't be read: {error}"))?;
    inspection::read(&bytes).map_err(|error| error.to_string())
}
