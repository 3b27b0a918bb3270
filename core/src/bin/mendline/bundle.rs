//! `mendline bundle`: repairs to another device and from one.

use std::fs::File;
use std::io::{self, BufReader, Read, Seek, SeekFrom, Write};
use std::path::{Path, PathBuf};

use clap::{Args, Subcommand};
use mendline_core::bundle::{Reader, Refused};
use mendline_core::door::{App, fingerprint, look_at_bundle};
use mendline_core::seal::PrivateKey;

use crate::ports::{Ports, random};

/// Sends repairs to another device as one signed file, or takes such a file in.
#[derive(Args)]
pub struct BundleArgs {
    #[command(subcommand)]
    way: Way,
}

#[derive(Subcommand)]
enum Way {
    /// Writes a bundle of repairs with their photos. A bundle that was cut off is carried on where it stopped.
    Send {
        /// The folder that holds the repairs.
        #[arg(long, value_name = "DIR")]
        data: PathBuf,
        /// The file to write.
        #[arg(long, value_name = "FILE")]
        out: PathBuf,
        /// The ids of the repairs. Without them: all.
        #[arg(value_name = "REPAIR")]
        repairs: Vec<String>,
    },
    /// Takes a bundle in, all of it or nothing.
    Take {
        /// The folder that holds the repairs.
        #[arg(long, value_name = "DIR")]
        data: PathBuf,
        /// The key of the sending device, as `mendline bundle key` prints it there. No other is believed.
        #[arg(long, value_name = "KEY")]
        key: Option<String>,
        /// The bundle.
        #[arg(value_name = "FILE")]
        file: PathBuf,
    },
    /// Checks a bundle without taking it in.
    Look {
        /// The bundle.
        #[arg(value_name = "FILE")]
        file: PathBuf,
    },
    /// Prints the key of this device, for whoever takes its bundles in.
    Key {
        /// The folder that holds the repairs.
        #[arg(long, value_name = "DIR")]
        data: PathBuf,
    },
}

/// Errors: what went wrong, in a sentence.
pub fn run(args: BundleArgs) -> Result<(), String> {
    match args.way {
        Way::Send { data, out, repairs } => send(&data, &out, &repairs),
        Way::Take { data, key, file } => take(&data, key.as_deref(), &file),
        Way::Look { file } => look(&file),
        Way::Key { data } => {
            println!("{}", fingerprint(&device_key(&data)?));
            Ok(())
        }
    }
}

fn send(data: &Path, out: &Path, repairs: &[String]) -> Result<(), String> {
    let mut app = App::open(data).map_err(|fault| fault.to_string())?;
    let key = device_key(data)?;
    let sensed = Ports::open(data).and_then(|ports| ports.sense()).map_err(|problem| at(data, &problem))?;
    let mut file = File::options()
        .read(true)
        .write(true)
        .create(true)
        .truncate(false)
        .open(out)
        .map_err(|problem| at(out, &problem))?;
    // A part that is there keeps its moment, so that the same bytes come again.
    let begun = Reader::begin(&mut file).ok().map(|reader| reader.head().at_ms);
    let length = file.seek(SeekFrom::End(0)).map_err(|problem| at(out, &problem))?;
    if length > 0 && begun.is_none() {
        return Err(format!("{} is there already and is no part of a bundle. It was left as it is.", out.display()));
    }
    file.rewind().map_err(|problem| at(out, &problem))?;
    let mut rest = CarryingOn { file, there: length };
    let at_ms = begun.unwrap_or(sensed.moment.at_ms);
    let sent = app.send(repairs, &sensed.device, at_ms, &key, &mut rest).map_err(|why| {
        // Only what the disk cut off can be carried on.
        if length == 0 && !why.is_of_the_file() {
            let _ = std::fs::remove_file(out);
        }
        why.to_string()
    })?;
    rest.file.sync_all().map_err(|problem| at(out, &problem))?;
    println!("{} repairs, {} entries, {} photos in {}", sent.repairs, sent.entries, sent.photos, out.display());
    for missing in &sent.missing {
        println!("photo {missing} is not in this folder, or was changed; it did not go along");
    }
    Ok(())
}

/// Writes what is not there yet, and compares what is.
struct CarryingOn {
    file: File,
    there: u64,
}

impl Write for CarryingOn {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        if self.there == 0 {
            return self.file.write(bytes);
        }
        let count = bytes.len().min(usize::try_from(self.there).unwrap_or(usize::MAX));
        let mut before = vec![0; count];
        self.file.read_exact(&mut before)?;
        if before != bytes[..count] {
            return Err(io::Error::other("the part that is there belongs to another bundle; it was left as it is"));
        }
        self.there -= count as u64;
        Ok(count)
    }

    fn flush(&mut self) -> io::Result<()> {
        self.file.flush()
    }
}

fn take(data: &Path, key: Option<&str>, path: &Path) -> Result<(), String> {
    let mut app = App::open(data).map_err(|fault| fault.to_string())?;
    let sensed = Ports::open(data).and_then(|ports| ports.sense()).map_err(|problem| at(data, &problem))?;
    let mut file = BufReader::new(File::open(path).map_err(|problem| at(path, &problem))?);
    let taken = app.take_in(&mut file, key, &sensed).map_err(|refused: Refused| refused.to_string())?;
    let met = if taken.first_met { ", met for the first time: compare its key" } else { "" };
    println!("from device {} with key {}{met}", taken.device, taken.key);
    for one in &taken.repairs {
        let branched = if one.heads > 1 { "; it went on on several devices, and all of it is kept" } else { "" };
        println!("{} ({}): {} new entries{branched}", one.number, one.repair, one.fresh);
    }
    println!("{} photos", taken.photos);
    Ok(())
}

fn look(path: &Path) -> Result<(), String> {
    let file = BufReader::new(File::open(path).map_err(|problem| at(path, &problem))?);
    let (head, entries, photos) = look_at_bundle(file).map_err(|refused| refused.to_string())?;
    println!("sound; from device {} with key {}: {entries} entries, {photos} photos", head.device, head.key);
    Ok(())
}

fn device_key(data: &Path) -> Result<PrivateKey, String> {
    let fresh = random::<32>().map_err(|problem| problem.to_string())?;
    mendline_core::door::device_key(data, &fresh)
}

fn at(path: &Path, problem: &dyn std::fmt::Display) -> String {
    format!("{}: {problem}", path.display())
}
