//! `mendline backup` and `mendline restore`: the whole data folder as one encrypted file, and back.

use std::fs::{self, File};
use std::io::{IsTerminal, Write, stderr, stdin};
use std::path::{Path, PathBuf};

use clap::Args;
use mendline_core::door::App;
use mendline_core::seal::Secret;

use crate::ports::Ports;

/// Writes an encrypted backup of a data folder.
///
/// The file is a tar archive in the age format (age-encryption.org/v1), locked by a passphrase; any age program opens
/// it. The passphrase is read from the first line of standard input. Nobody can recover it.
#[derive(Args)]
pub struct BackupArgs {
    /// The folder that holds the repairs.
    #[arg(long, value_name = "DIR")]
    data: PathBuf,
    /// The file to write. One that is there is left as it is.
    #[arg(long, value_name = "FILE")]
    out: PathBuf,
}

/// Restores a backup into a new data folder.
///
/// The passphrase is read from the first line of standard input. The folder counts as another device: its entries go on
/// beside those of the old one, should that still live.
#[derive(Args)]
pub struct RestoreArgs {
    /// The backup.
    #[arg(value_name = "FILE")]
    file: PathBuf,
    /// The folder to restore into. It must not exist yet, or be empty.
    #[arg(long, value_name = "NEWDIR")]
    data: PathBuf,
}

/// Errors: what went wrong, in a sentence.
pub fn back_up(args: &BackupArgs) -> Result<(), String> {
    if !args.data.join("journal.sqlite").is_file() {
        return Err(format!("{} holds no journal; nothing was backed up", args.data.display()));
    }
    let passphrase = passphrase()?;
    let mut app = App::open(&args.data).map_err(|fault| fault.to_string())?;
    let sensed = Ports::open(&args.data).and_then(|ports| ports.sense()).map_err(|problem| at(&args.data, &problem))?;
    let files = app.back_up(&passphrase, &args.out, &sensed)?;
    println!("{files} files in {}", args.out.display());
    Ok(())
}

/// Errors: what went wrong, in a sentence; the folder is as it was.
pub fn restore(args: &RestoreArgs) -> Result<(), String> {
    let there = args.data.exists();
    if there && fs::read_dir(&args.data).map_err(|problem| at(&args.data, &problem))?.next().is_some() {
        return Err(format!("{} is not empty; nothing was restored. Name a new folder.", args.data.display()));
    }
    let file = File::open(&args.file).map_err(|problem| at(&args.file, &problem))?;
    let passphrase = passphrase()?;
    let restored = restored(&args.data, file, &passphrase);
    if restored.is_err() {
        // It was made or empty when this began.
        let _ = fs::remove_dir_all(&args.data);
        if there {
            let _ = fs::create_dir(&args.data);
        }
    }
    let restored = restored?;
    println!("{} repairs, {} files in {}", restored.repairs, restored.files, args.data.display());
    if restored.damaged > 0 {
        println!("{} chains were broken when the backup was made; they are as they were", restored.damaged);
    }
    Ok(())
}

fn restored(data: &Path, file: File, passphrase: &Secret) -> Result<mendline_core::door::Restored, String> {
    let mut app = App::open(data).map_err(|fault| fault.to_string())?;
    let device = Ports::open(data).and_then(|ports| ports.sense()).map_err(|problem| at(data, &problem))?.device;
    app.restore(file, passphrase, &device)
}

/// Reads a line, unseen where somebody types it.
fn passphrase() -> Result<Secret, String> {
    let typed = stdin().is_terminal();
    if typed {
        let _ = write!(stderr(), "Passphrase: ").and_then(|()| stderr().flush());
    }
    let mut line = String::new();
    let hidden = Hidden::begin(typed);
    let read = stdin().read_line(&mut line);
    drop(hidden);
    read.map_err(|problem| format!("standard input: {problem}"))?;
    Ok(Secret::new(line.trim_end_matches(['\r', '\n'])))
}

/// A terminal that does not show what is typed, until this goes.
struct Hidden(#[cfg(unix)] Option<rustix::termios::Termios>);

#[cfg(unix)]
impl Hidden {
    fn begin(typed: bool) -> Self {
        use rustix::termios::{LocalModes, OptionalActions, tcgetattr, tcsetattr};
        let before = typed.then(|| tcgetattr(stdin()).ok()).flatten();
        if let Some(mut silent) = before.clone() {
            silent.local_modes.remove(LocalModes::ECHO);
            let _ = tcsetattr(stdin(), OptionalActions::Now, &silent);
        }
        Self(before)
    }
}

#[cfg(unix)]
impl Drop for Hidden {
    fn drop(&mut self) {
        if let Some(before) = &self.0 {
            let _ = rustix::termios::tcsetattr(stdin(), rustix::termios::OptionalActions::Now, before);
            let _ = writeln!(stderr());
        }
    }
}

#[cfg(not(unix))]
impl Hidden {
    fn begin(_typed: bool) -> Self {
        Self()
    }
}

fn at(path: &Path, problem: &dyn std::fmt::Display) -> String {
    format!("{}: {problem}", path.display())
}
