//! `mendline export`: the record of every repair of a folder, sound or broken, as files.

use std::fs::{self, File};
use std::io::{ErrorKind, Write};
use std::path::{Path, PathBuf};
use std::process::ExitCode;

use clap::Args;
use mendline_core::door::{Export, export};

/// Copies the record of every repair out of a folder, as it is stored, whole or broken.
///
/// Nothing in the data folder is written, so that it also serves for a damaged one, one that can't be written, or one
/// that a newer version wrote. No file of that name is replaced. Photos lie in the data folder as files: copy them.
///
/// Exit code 0: all of them, all sound. 1: something is broken or could not be read. 2: nothing came out.
#[derive(Args)]
pub struct ExportArgs {
    /// The folder that holds the repairs.
    #[arg(long, value_name = "DIR")]
    data: PathBuf,
    /// The folder for the files. Without it: this one.
    #[arg(long, value_name = "DIR", default_value = ".")]
    out: PathBuf,
}

/// Writes the files and prints what is wrong with them.
pub fn run(args: &ExportArgs) -> ExitCode {
    let outcome = export(&args.data).map_err(|fault| fault.to_string());
    match outcome.and_then(|found| write(&args.out, &found).map(|()| found)) {
        Ok(found) => tell(&found, &args.out),
        Err(says) => {
            eprintln!("mendline: {says}");
            ExitCode::from(2)
        }
    }
}

fn write(out: &Path, found: &Export) -> Result<(), String> {
    let problem = |path: &Path, problem: std::io::Error| match problem.kind() {
        ErrorKind::AlreadyExists => {
            format!("{} is there already. It was left as it is. Choose another folder.", path.display())
        }
        _ => format!("{}: {problem}", path.display()),
    };
    fs::create_dir_all(out).map_err(|kind| problem(out, kind))?;
    for file in &found.files {
        let path = out.join(&file.name);
        let written = File::create_new(&path).and_then(|mut fresh| {
            fresh.write_all(&file.bytes)?;
            fresh.sync_all()
        });
        written.map_err(|kind| problem(&path, kind))?;
    }
    Ok(())
}

fn tell(found: &Export, out: &Path) -> ExitCode {
    println!("{} records in {}", found.files.len(), out.display());
    let broken: Vec<_> = found.files.iter().filter_map(|file| file.damage.as_ref()).collect();
    for damage in &broken {
        println!("{damage}");
    }
    if let Some(fault) = &found.unread {
        println!("Not everything could be read. {fault}");
    }
    if broken.is_empty() && found.unread.is_none() { ExitCode::SUCCESS } else { ExitCode::FAILURE }
}
