//! `mendline demo`: a rehearsal of the whole job with a simulated clock, through the same door as the screens.
//!
//! One attempt is discarded, the hold has a gap and an excursion, two rules are waived and a value is corrected, so that
//! the certificate shows what a real one has to show. Everything that it makes is marked as a rehearsal.

mod answers;
mod crew;
mod pick;
mod pictures;
mod story;

use std::fs;
use std::path::{Path, PathBuf};

use clap::Args;
use serde_json::Value;

use crew::Crew;

/// The inspection that is rehearsed on when none is given: lines of the invented town of Quillmere.
const EXAMPLE: &[u8] = include_bytes!("../../../../../fixtures/inspections/quillmere.txt");

/// Rehearses the whole job and writes its certificate.
#[derive(Args)]
pub struct DemoArgs {
    /// The folder to write to: `certificate.pdf`, `record.json`, and `data`, which `mendline serve --data` can open.
    #[arg(long, value_name = "DIR")]
    out: PathBuf,
    /// An inspection file to rehearse on. Without it: an example that is built in.
    #[arg(long, value_name = "FILE")]
    inspection: Option<PathBuf>,
}

/// Runs the rehearsal.
///
/// Errors: the inspection can't be read or holds nothing that the example sheets can mend; the folder can't be written.
pub fn run(args: &DemoArgs) -> Result<(), String> {
    let (name, bytes) = inspection(args.inspection.as_deref())?;
    let data = args.out.join("data");
    clear(&data)?;
    fs::create_dir_all(&args.out).map_err(|problem| cannot(&args.out, &problem))?;
    let mut crew = Crew::begin(&data)?;
    let picked = pick::pick(&mut crew, &name, &bytes)?;
    println!("Rehearsing on {}", picked.says);
    let repair = story::tell(&mut crew, &picked)?;
    story::leave_work_for_today(&mut crew, &picked)?;
    let certificate = crew.file("certificate", &repair)?;
    let record = crew.file("record", &repair)?;
    save(&args.out.join("certificate.pdf"), &certificate)?;
    save(&args.out.join("record.json"), &record)?;
    println!("{}", args.out.join("certificate.pdf").display());
    println!("{}", args.out.join("record.json").display());
    Ok(())
}

fn inspection(file: Option<&Path>) -> Result<(String, Vec<u8>), String> {
    let Some(path) = file else { return Ok(("quillmere.txt".into(), EXAMPLE.to_vec())) };
    let bytes = fs::read(path).map_err(|problem| format!("{} can't be read: {problem}", path.display()))?;
    let name = path.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
    Ok((name, bytes))
}

/// Only a folder that an earlier rehearsal made is taken away.
fn clear(data: &Path) -> Result<(), String> {
    let made_by_rehearsal = data.join("rehearsal");
    if data.exists() && !made_by_rehearsal.exists() {
        return Err(format!("{} holds something else; choose another folder with --out", data.display()));
    }
    if data.exists() {
        fs::remove_dir_all(data).map_err(|problem| cannot(data, &problem))?;
    }
    fs::create_dir_all(data).map_err(|problem| cannot(data, &problem))?;
    fs::write(made_by_rehearsal, "This folder was made by a rehearsal and is made anew by the next one.\n")
        .map_err(|problem| cannot(data, &problem))
}

fn save(path: &Path, bytes: &[u8]) -> Result<(), String> {
    fs::write(path, bytes).map_err(|problem| cannot(path, &problem))
}

fn cannot(path: &Path, problem: &std::io::Error) -> String {
    format!("{} can't be written: {problem}", path.display())
}

/// Returns the text at a path of keys in an answer, empty if there is none.
fn text<'a>(value: &'a Value, pointer: &str) -> &'a str {
    value.pointer(pointer).and_then(Value::as_str).unwrap_or_default()
}
