//! `mendline export`: the record of every repair of a folder, sound or broken, as files.

use std::fs::{self, File};
use std::io::{ErrorKind, Write};
use std::path::{Path, PathBuf};
use std::process::ExitCode;

use clap::Args;
use mendline_core::door::export;
use mendline_core::journal::{Damage, Fault};

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
    match write(args) {
        Ok(told) => told.tell(&args.out),
        Err(Stop(says)) => {
            eprintln!("mendline: {says}");
            ExitCode::from(2)
        }
    }
}

/// Why nothing more comes out, as a sentence.
struct Stop(String);

impl From<Fault> for Stop {
    fn from(fault: Fault) -> Self {
        Self(fault.to_string())
    }
}

/// What came out.
#[derive(Default)]
struct Told {
    files: usize,
    broken: Vec<Damage>,
    unread: Option<Fault>,
}

fn write(args: &ExportArgs) -> Result<Told, Stop> {
    let mut told = Told::default();
    let unread = export(&args.data, |file| {
        // Made when there is something to put into it.
        fs::create_dir_all(&args.out).map_err(|why| problem(&args.out, &why))?;
        let path = args.out.join(&file.name);
        let written = File::create_new(&path).and_then(|mut fresh| {
            fresh.write_all(&file.bytes)?;
            safe_by_itself(&fresh)
        });
        written.map_err(|why| problem(&path, &why))?;
        told.files += 1;
        told.broken.extend(file.damage);
        Ok::<(), Stop>(())
    })?;
    if told.files > 0 {
        all_safe(&args.out).map_err(|why| problem(&args.out, &why))?;
    }
    Ok(Told { unread, ..told })
}

/// One wait for the disk at the end instead of one a file: with many files the waiting is most of the work. Source:
/// syncfs(2), which tells of failed writes since Linux 5.8.
#[cfg(target_os = "linux")]
fn all_safe(folder: &Path) -> std::io::Result<()> {
    Ok(rustix::fs::syncfs(File::open(folder)?)?)
}

#[cfg(target_os = "linux")]
fn safe_by_itself(_: &File) -> std::io::Result<()> {
    Ok(())
}

#[cfg(not(target_os = "linux"))]
fn all_safe(_: &Path) -> std::io::Result<()> {
    Ok(())
}

#[cfg(not(target_os = "linux"))]
fn safe_by_itself(file: &File) -> std::io::Result<()> {
    file.sync_all()
}

fn problem(path: &Path, problem: &std::io::Error) -> Stop {
    Stop(match problem.kind() {
        ErrorKind::AlreadyExists => {
            format!("{} is there already. It was left as it is. Choose another folder.", path.display())
        }
        _ => format!("{}: {problem}", path.display()),
    })
}

impl Told {
    fn tell(&self, out: &Path) -> ExitCode {
        println!("{} records in {}", self.files, out.display());
        self.broken.iter().for_each(|damage| println!("{damage}"));
        if let Some(fault) = &self.unread {
            println!("Not everything could be read. {fault}");
        }
        if self.broken.is_empty() && self.unread.is_none() { ExitCode::SUCCESS } else { ExitCode::FAILURE }
    }
}
