//! `mendline verify`: is this file what it says it is?

use std::path::{Path, PathBuf};
use std::process::ExitCode;

use clap::Args;
use mendline_core::door::{Finding, SignedBy, Trust, Trusted, Verdict, check_file};

/// Checks a certificate or a record, without the folder it came from.
///
/// Exit code 0: valid and complete. 1: changed, invalid, or lacking a signature. 2: can't be read. 3: a sound
/// rehearsal, not a record.
#[derive(Args)]
pub struct VerifyArgs {
    /// The certificate (PDF) or the `record.json` to check.
    #[arg(value_name = "FILE")]
    file: PathBuf,
    /// Certificates (PEM) to trust: of the people who sign, or of who vouches for them. A key that is none of these, or
    /// that the file calls revoked, is wrong. May be given more than once.
    #[arg(long, value_name = "CERT")]
    trust: Vec<PathBuf>,
    /// Prints the finding as JSON.
    #[arg(long)]
    json: bool,
}

/// Prints what was found, and returns its exit code.
pub fn run(args: &VerifyArgs) -> ExitCode {
    let name = args.file.display().to_string();
    let verdict = match (trusted(&args.trust), std::fs::read(&args.file)) {
        (Ok(trusted), Ok(bytes)) => check_file(&name, &bytes, &trusted),
        (Err(says), _) => Verdict::unreadable(&name, says),
        (_, Err(problem)) => Verdict::unreadable(&name, format!("The file can't be read: {problem}.")),
    };
    print(&verdict, args.json);
    ExitCode::from(verdict.finding as u8)
}

fn trusted(files: &[PathBuf]) -> Result<Trusted, String> {
    let read = |path: &PathBuf| read(path).map_err(|why| format!("{} can't be trusted: {why}", path.display()));
    files.iter().map(read).try_fold(Trusted::default(), |all, one| Ok(all.and(one?)))
}

fn read(path: &Path) -> Result<Trusted, String> {
    let text = std::fs::read_to_string(path).map_err(|why| why.to_string())?;
    Trusted::from_pem(&text).map_err(|why| why.to_string())
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
    verdict.signatures.iter().for_each(signature);
    if !verdict.head.is_empty() {
        println!("repair {}, {} entries, head {}", verdict.number, verdict.entries, verdict.head);
    }
}

fn signature(one: &SignedBy) {
    let holds = if one.intact { "holds" } else { "does not hold" };
    let trust = match one.trust {
        Trust::NotAsked => "trust not asked",
        Trust::Trusted => "trusted",
        Trust::Unknown => "not trusted",
        Trust::Rehearsal => "a rehearsal key",
    };
    let whose = [one.name.as_str(), &one.organisation].join(", ");
    println!("{}: {whose}; signature {holds}, key {trust}, SHA-256 {}", one.role, one.fingerprint);
}
