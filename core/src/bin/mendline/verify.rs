//! `mendline verify`: is this file what it says it is?

use std::path::PathBuf;
use std::process::ExitCode;

use clap::Args;
use mendline_core::door::{Finding, Verdict, check_record};

/// Checks a record, without the folder it came from.
///
/// Exit code 0: valid and complete. 1: changed, invalid, or lacking a signature. 2: can't be read. 3: a sound
/// rehearsal, not a record.
#[derive(Args)]
pub struct VerifyArgs {
    /// The `record.json` to check.
    #[arg(value_name = "FILE")]
    file: PathBuf,
    /// Prints the finding as JSON.
    #[arg(long)]
    json: bool,
}

/// Prints what was found, and returns its exit code.
pub fn run(args: &VerifyArgs) -> ExitCode {
    let name = args.file.display().to_string();
    let verdict = match std::fs::read(&args.file) {
        Ok(bytes) => check_record(&name, &bytes),
        Err(problem) => Verdict::unreadable(&name, format!("The file can't be read: {problem}.")),
    };
    print(&verdict, args.json);
    ExitCode::from(verdict.finding as u8)
}

fn print(verdict: &Verdict, json: bool) {
    if json {
        println!("{}", serde_json::json!(verdict));
        return;
    }
    let line = format!("{}: {}", verdict.name, verdict.says);
    match verdict.finding {
        Finding::Unreadable => eprintln!("{line}"),
        Finding::Valid | Finding::Changed | Finding::Rehearsal => println!("{line}"),
    }
    if !verdict.head.is_empty() {
        println!("repair {}, {} entries, head {}", verdict.number, verdict.entries, verdict.head);
    }
}
