//! `mendline audit`: is a data folder whole, and does it still hold what was handed out?

use std::path::PathBuf;
use std::process::ExitCode;

use clap::Args;
use mendline_core::door::audit;
use mendline_core::journal::Hash;

/// Checks every chain of a data folder, and that it still holds what lies outside it: records, certificates, bundles.
///
/// Exit code 0: nothing is wrong. 1: something is, and is named. 2: the folder or a file can't be read.
#[derive(Args)]
pub struct AuditArgs {
    /// The folder that holds the repairs.
    #[arg(long, value_name = "DIR")]
    data: PathBuf,
    /// A head of a chain, as a certificate prints it.
    #[arg(long, value_name = "HASH")]
    head: Vec<Hash>,
    /// What was handed out before: records, certificates (PDF) and bundles.
    #[arg(value_name = "FILE")]
    witnesses: Vec<PathBuf>,
}

/// Prints what is wrong, a line each.
pub fn run(args: &AuditArgs) -> ExitCode {
    match look(args) {
        Ok(found) if found.is_empty() => {
            println!("Nothing is wrong with {}.", args.data.display());
            ExitCode::SUCCESS
        }
        Ok(found) => {
            found.iter().for_each(|line| println!("{line}"));
            ExitCode::FAILURE
        }
        Err(says) => {
            eprintln!("mendline: {says}");
            ExitCode::from(2)
        }
    }
}

fn look(args: &AuditArgs) -> Result<Vec<String>, String> {
    let read = |path: &PathBuf| {
        let bytes = std::fs::read(path).map_err(|problem| format!("{}: {problem}", path.display()))?;
        Ok((path.display().to_string(), bytes))
    };
    let witnesses = args.witnesses.iter().map(read).collect::<Result<Vec<_>, String>>()?;
    audit(&args.data, &witnesses, &args.head).map_err(|fault| fault.to_string())
}
