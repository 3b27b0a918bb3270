//! The command line of Mendline.
#![allow(clippy::disallowed_methods)]

mod ask;
mod assets;
mod audit;
mod backup;
mod bundle;
mod check;
mod demo;
mod diagnostics;
mod edge;
mod export;
mod http;
mod inspection;
mod ports;
mod serve;
mod verify;

use std::path::{Path, PathBuf};
use std::process::ExitCode;

use clap::{Parser, Subcommand};
use mendline_core::door::App;

/// Mends one defect in a buried pipe, from the inspection to the signed certificate.
#[derive(Parser)]
#[command(name = "mendline", version)]
struct Line {
    #[command(subcommand)]
    verb: Verb,
}

#[derive(Subcommand)]
enum Verb {
    /// Opens the screens in a browser on this computer.
    Serve {
        /// The folder that holds the repairs. Without it: the usual place for this person's data.
        #[arg(long, value_name = "DIR")]
        data: Option<PathBuf>,
        /// The port. Without it: 8417, or a free one when that is taken.
        #[arg(long, value_name = "N")]
        port: Option<u16>,
    },
    Demo(demo::DemoArgs),
    Diagnostics(diagnostics::DiagnosticsArgs),
    /// Answers requests: one envelope of JSON a line in, one response a line out.
    Ask {
        /// The folder that holds the repairs.
        #[arg(long, value_name = "DIR")]
        data: PathBuf,
    },
    /// Computes one check by its name, or lists all of them.
    Check(check::Args),
    Verify(verify::VerifyArgs),
    Audit(audit::AuditArgs),
    Export(export::ExportArgs),
    Bundle(bundle::BundleArgs),
    Backup(backup::BackupArgs),
    Restore(backup::RestoreArgs),
    /// Makes the lists anew from the journal.
    ///
    /// Lists and search stand beside the journal and can be dropped; the journal itself is only read.
    Rebuild {
        /// The folder that holds the repairs.
        #[arg(long, value_name = "DIR")]
        data: PathBuf,
    },
    /// Reads an inspection file and prints its lines and observations.
    Inspection(inspection::Args),
}

fn main() -> ExitCode {
    let outcome = match Line::parse().verb {
        Verb::Serve { data, port } => serve::run(data, port),
        Verb::Demo(args) => demo::run(&args),
        Verb::Diagnostics(args) => diagnostics::run(&args),
        Verb::Ask { data } => ask::run(&data),
        Verb::Check(args) => return check::run(&args),
        Verb::Verify(args) => return verify::run(&args),
        Verb::Audit(args) => return audit::run(&args),
        Verb::Export(args) => return export::run(&args),
        Verb::Bundle(args) => bundle::run(args),
        Verb::Backup(args) => backup::back_up(&args),
        Verb::Restore(args) => backup::restore(&args),
        Verb::Rebuild { data } => rebuild(&data),
        Verb::Inspection(args) => return inspection::run(&args),
    };
    outcome.map_or_else(
        |says| {
            eprintln!("mendline: {says}");
            ExitCode::FAILURE
        },
        |()| ExitCode::SUCCESS,
    )
}

fn rebuild(data: &Path) -> Result<(), String> {
    let mut app = App::open(data).map_err(|fault| fault.to_string())?;
    let sensed = ports::Ports::open(data).and_then(|ports| ports.sense());
    let device = sensed.map_err(|problem| format!("{}: {problem}", data.display()))?.device;
    let repairs = app.rebuild(&device).map_err(|fault| fault.to_string())?;
    println!("{repairs} repairs listed anew");
    Ok(())
}
