//! `mendline verify`: is this file what it says it is?

use std::path::{Path, PathBuf};
use std::process::ExitCode;

use clap::Args;
use mendline_core::door::{
    Compared, Finding, MOST_PHOTO_BYTES, Original, Originals, Search, SignedBy, State, Trust, Trusted, Verdict, beside,
    check_file,
};

/// Checks a certificate or a record, without the folder it came from.
///
/// Exit code 0: valid and complete. 1: changed, invalid, or lacking a signature; also if an original photo was changed.
/// 2: can't be read. 3: a sound rehearsal, not a record.
#[derive(Args)]
pub struct VerifyArgs {
    /// The certificate (PDF) or the `record.json` to check.
    #[arg(value_name = "FILE")]
    file: PathBuf,
    /// Certificates (PEM) to trust: of the people who sign, or of who vouches for them. A key that is none of these, or
    /// that the file calls revoked, is wrong. May be given more than once.
    #[arg(long, value_name = "CERT")]
    trust: Vec<PathBuf>,
    /// Other certificates, such as later ones: says whether one of them supersedes this one. May be given more than once.
    #[arg(long, value_name = "FILE")]
    beside: Vec<PathBuf>,
    /// A folder with the original photos: says of each that the record names whether it is there byte for byte, changed
    /// or missing. A changed one ends with 1; a missing one says nothing about the certificate. When and where a photo
    /// says that it was taken is compared with the record.
    #[arg(long, value_name = "DIR")]
    photos: Option<PathBuf>,
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
    let others: Vec<Verdict> = args.beside.iter().map(|path| other(path)).collect();
    let verdict = match others.iter().find(|other| other.finding == Finding::Unreadable) {
        Some(other) => Verdict::unreadable(&other.name, other.says.clone()),
        None => beside(verdict, &others),
    };
    let verdict = match &args.photos {
        Some(folder) => with_originals(verdict, folder),
        None => verdict,
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

fn other(path: &Path) -> Verdict {
    let name = path.display().to_string();
    match std::fs::read(path) {
        Ok(bytes) => check_file(&name, &bytes, &Trusted::default()),
        Err(problem) => Verdict::unreadable(&name, format!("The file can't be read: {problem}.")),
    }
}

fn with_originals(verdict: Verdict, folder: &Path) -> Verdict {
    let mut files = vec![];
    if let Err(problem) = list(folder, &mut files) {
        let says = format!("The folder of the photos can't be read: {}: {problem}.", folder.display());
        return Verdict::unreadable(&verdict.name, says);
    }
    files.sort();
    let mut search = Search::of(&verdict);
    for path in files {
        let name = path.strip_prefix(folder).unwrap_or(&path).display().to_string();
        let size = std::fs::metadata(&path).map(|file| file.len());
        match size.and_then(|size| if size > MOST_PHOTO_BYTES { Ok(None) } else { std::fs::read(&path).map(Some) }) {
            Ok(Some(bytes)) => search.file(&name, &bytes),
            Ok(None) => search.unreadable(&name, "it is larger than any photo"),
            Err(problem) => search.unreadable(&name, &problem.to_string()),
        }
    }
    search.beside(verdict)
}

/// Adds all files of a folder and of those in it; links to other places are not followed.
fn list(folder: &Path, found: &mut Vec<PathBuf>) -> std::io::Result<()> {
    for entry in std::fs::read_dir(folder)? {
        let entry = entry?;
        let kind = entry.file_type()?;
        if kind.is_dir() {
            list(&entry.path(), found)?;
        } else if kind.is_file() {
            found.push(entry.path());
        }
    }
    Ok(())
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
    verdict.originals.iter().for_each(originals);
}

fn originals(found: &Originals) {
    let [there, changed, missing] = [State::Found, State::Changed, State::Missing].map(|state| found.count(state));
    let photos = match found.photos.len() {
        1 => "1 photo".to_owned(),
        all => format!("{all} photos"),
    };
    println!("{photos} in the record: {there} found, {changed} changed, {missing} missing");
    found.photos.iter().for_each(original);
    found.others.iter().for_each(|name| println!("not named in the record: {name}"));
    found.unreadable.iter().for_each(|why| println!("not read: {why}"));
}

fn original(photo: &Original) {
    let state = match photo.state {
        State::Found => "found",
        State::Missing => "MISSING",
        State::Changed => "CHANGED",
    };
    let said = |one: &Compared| format!("; {}{}", one.says, if one.agrees { "" } else { " (ask why)" });
    let exif: String = photo.taken.iter().chain(&photo.place).map(said).collect();
    let files = if photo.files.is_empty() { String::new() } else { format!(" as {}", photo.files.join(", ")) };
    println!("photo {state}: {}, SHA-256 {}{files}{exif}", photo.title, photo.sha256);
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
