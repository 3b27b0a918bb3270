//! Folders that can't be written, are damaged, or come from another version: the program says what is safe, shows and
//! exports what can be read, and changes nothing in the file.

use std::fs::{self, Permissions};
use std::io::Write;
use std::os::unix::fs::{MetadataExt, PermissionsExt};
use std::os::unix::process::CommandExt;
use std::path::{Path, PathBuf};
use std::process::{Command, Output, Stdio};

use mendline_core::journal::{Journal, Sqlite};
use mendline_tests::{copied, empty_folder, envelope, mendline, open_by_hand};
use rusqlite::{Connection, OpenFlags};
use serde_json::{Value, json};
use tempfile::TempDir;

/// A user who owns nothing: root may write everywhere.
const NOBODY: u32 = 65_534;

/// A data folder with repairs, and the program where anybody may run it.
struct Street {
    folder: TempDir,
    program: PathBuf,
}

impl Street {
    fn data(&self) -> PathBuf {
        self.folder.path().join("data")
    }

    fn journal(&self) -> PathBuf {
        self.data().join("journal.sqlite")
    }

    /// Three repairs with twenty notes each.
    fn with_repairs() -> Self {
        let folder = empty_folder();
        let program = folder.path().join("mendline");
        fs::hard_link(mendline(), &program).or_else(|_| fs::copy(mendline(), &program).map(drop)).unwrap();
        fs::set_permissions(folder.path(), Permissions::from_mode(0o755)).unwrap();
        let street = Self { folder, program };
        let opening = ["SS-1", "SS-2", "SS-3"].map(|asset| envelope(asset, open_by_hand(asset)));
        let first = [vec![envelope("e", json!({ "do": "take_examples" }))], opening.to_vec()].concat();
        let (_, answers) = street.ask(&first);
        let repairs: Vec<&Value> = answers[1..].iter().map(|answer| &answer["ok"]["repair"]["id"]).collect();
        let notes = (0..60).map(|number| {
            let command = json!({ "command": "note", "text": format!("note {number}: {}", "rain ".repeat(40)) });
            let request = json!({ "do": "tell", "repair": repairs[number % 3], "command": command });
            envelope(&format!("n{number}"), request)
        });
        let (_, answers) = street.ask(&notes.collect::<Vec<_>>());
        assert!(answers.iter().all(|answer| answer["ok"].is_object()));
        street
    }

    /// As somebody who may only do what the rights of the files allow.
    fn command(&self, arguments: &[&str]) -> Command {
        let mut command = Command::new(&self.program);
        command.args(arguments).arg("--data").arg(self.data());
        if is_root() {
            command.uid(NOBODY).gid(NOBODY);
        }
        command
    }

    /// Asks as the owner of the files.
    fn ask(&self, questions: &[String]) -> (Output, Vec<Value>) {
        let mut command = Command::new(&self.program);
        command.args(["ask", "--data"]).arg(self.data());
        answers(command, questions)
    }

    fn ask_as_a_stranger(&self, questions: &[String]) -> (Output, Vec<Value>) {
        answers(self.command(&["ask"]), questions)
    }

    /// Exports into a new folder, and returns what was said and how many records came out.
    fn export(&self) -> (Output, Vec<PathBuf>) {
        let out = self.folder.path().join("out");
        let _ = fs::remove_dir_all(&out);
        fs::create_dir(&out).unwrap();
        fs::set_permissions(&out, Permissions::from_mode(0o777)).unwrap();
        let output = self.command(&["export", "--out", out.to_str().unwrap()]).output().unwrap();
        let mut files: Vec<_> = fs::read_dir(&out).unwrap().map(|file| file.unwrap().path()).collect();
        files.sort();
        (output, files)
    }

    fn mode(&self, folder: u32, files: u32) {
        for file in fs::read_dir(self.data()).unwrap() {
            let path = file.unwrap().path();
            fs::set_permissions(&path, Permissions::from_mode(if path.is_dir() { folder } else { files })).unwrap();
        }
        fs::set_permissions(self.data(), Permissions::from_mode(folder)).unwrap();
    }
}

fn answers(mut command: Command, questions: &[String]) -> (Output, Vec<Value>) {
    let mut child =
        command.stdin(Stdio::piped()).stdout(Stdio::piped()).stderr(Stdio::piped()).spawn().expect("the program runs");
    let mut input = child.stdin.take().unwrap();
    let lines = questions.join("\n");
    let sender = std::thread::spawn(move || input.write_all(lines.as_bytes()));
    let output = child.wait_with_output().unwrap();
    // A program that can't open the folder reads nothing.
    let _ = sender.join().unwrap();
    let answers =
        String::from_utf8_lossy(&output.stdout).lines().map(|line| serde_json::from_str(line).unwrap()).collect();
    (output, answers)
}

fn is_root() -> bool {
    fs::metadata("/proc/self").is_ok_and(|me| me.uid() == 0)
}

fn errors(output: &Output) -> String {
    String::from_utf8_lossy(&output.stderr).into_owned()
}

fn listed() -> String {
    envelope("l", json!({ "do": "list" }))
}

fn today() -> String {
    envelope("t", json!({ "do": "today" }))
}

fn opening() -> String {
    envelope("new", open_by_hand("SS-9"))
}

/// Asserts that the folder is shown and exported, that recording is refused with this code, and that no byte changes.
fn is_only_read(street: &Street, code: &str) {
    let before = fs::read(street.journal()).unwrap();
    let (output, answers) = street.ask_as_a_stranger(&[today(), listed(), opening()]);
    assert_eq!(answers.len(), 3, "{}", errors(&output));
    assert!(errors(&output).contains("is only read"), "{}", errors(&output));
    let closed = answers[0]["ok"]["closed"].as_str().expect("the first screen says so");
    assert_eq!(answers[1]["ok"]["repairs"].as_array().map(Vec::len), Some(3), "{}", answers[1]);
    assert_eq!(answers[2]["error"]["code"], code, "{}", answers[2]);
    assert_eq!(answers[2]["error"]["says"], closed);
    let (output, files) = street.export();
    assert_eq!((output.status.code(), files.len()), (Some(0), 4), "{}", errors(&output));
    assert_eq!(fs::read(street.journal()).unwrap(), before);
}

#[test]
fn a_folder_that_cannot_be_written_is_shown_and_exported() {
    let street = Street::with_repairs();
    street.mode(0o555, 0o444);
    assert!(!street.data().join("journal.sqlite-wal").exists());
    is_only_read(&street, "read_only");
    street.mode(0o755, 0o644);
}

#[test]
fn a_folder_without_a_device_that_cannot_be_written_is_shown_too() {
    let street = Street::with_repairs();
    fs::remove_file(street.data().join("device")).unwrap();
    street.mode(0o555, 0o444);
    is_only_read(&street, "read_only");
    street.mode(0o755, 0o644);
}

/// Returns a street whose last entries stand in the log only, as a killed program leaves it.
fn with_a_log(keep_index: bool) -> Street {
    let street = Street::with_repairs();
    let kept = Sqlite::open(&street.journal()).unwrap();
    let (_, answers) = street.ask(&[envelope("last", json!({ "do": "take_examples" })), opening()]);
    assert!(answers[1]["ok"].is_object(), "{}", answers[1]);
    let copy = street.folder.path().join("copy");
    copied(&street.data(), &copy);
    drop(kept);
    fs::remove_dir_all(street.data()).unwrap();
    fs::rename(copy, street.data()).unwrap();
    if !keep_index {
        fs::remove_file(street.data().join("journal.sqlite-shm")).unwrap();
    }
    assert!(fs::metadata(street.data().join("journal.sqlite-wal")).unwrap().len() > 0);
    street.mode(0o555, 0o444);
    street
}

#[test]
fn a_log_beside_its_index_is_read_where_nothing_can_be_written() {
    let street = with_a_log(true);
    let (output, answers) = street.ask_as_a_stranger(&[listed()]);
    assert_eq!(answers[0]["ok"]["repairs"].as_array().map(Vec::len), Some(4), "{}", errors(&output));
    street.mode(0o755, 0o644);
}

/// Read without the log, the file would look whole and lack its last entries.
#[test]
fn a_log_that_cannot_be_read_is_named_and_not_passed_over() {
    let street = with_a_log(false);
    let (output, answers) = street.ask_as_a_stranger(&[listed()]);
    assert!(answers.is_empty() && errors(&output).contains("last entries stand in"), "{}", errors(&output));
    let (output, files) = street.export();
    assert_eq!((output.status.code(), files.len()), (Some(2), 0));
    assert!(errors(&output).contains("Copy the whole folder"), "{}", errors(&output));
    // What the message says to do helps.
    let copy = street.folder.path().join("copy");
    street.mode(0o755, 0o644);
    copied(&street.data(), &copy);
    assert_eq!(Sqlite::open(&copy.join("journal.sqlite")).unwrap().repairs().unwrap().len(), 4);
}

#[test]
fn permission_that_is_gone_is_named() {
    let street = Street::with_repairs();
    fs::set_permissions(street.journal(), Permissions::from_mode(0o600)).unwrap();
    if !is_root() {
        fs::set_permissions(street.journal(), Permissions::from_mode(0o000)).unwrap();
    }
    let (output, answers) = street.ask_as_a_stranger(&[listed()]);
    assert!(answers.is_empty() && !output.status.success());
    assert!(errors(&output).contains("may not read") && errors(&output).contains("is safe"), "{}", errors(&output));
    fs::set_permissions(street.journal(), Permissions::from_mode(0o600)).unwrap();
    assert_eq!(Sqlite::open(&street.journal()).unwrap().verify_all(), Ok(vec![]));
}

#[test]
fn another_process_that_holds_the_file_is_named_and_reading_goes_on() {
    let street = Street::with_repairs();
    let other = Connection::open(street.journal()).unwrap();
    other.execute_batch("BEGIN IMMEDIATE").unwrap();
    let (_, answers) = street.ask(&[opening(), listed()]);
    assert_eq!(answers[0]["error"]["code"], "locked", "{}", answers[0]);
    assert_eq!(answers[1]["ok"]["repairs"].as_array().map(Vec::len), Some(3));
    other.execute_batch("ROLLBACK").unwrap();
    let (_, answers) = street.ask(&[opening()]);
    assert!(answers[0]["ok"].is_object(), "the same request goes through: {}", answers[0]);
}

#[test]
fn a_journal_of_a_newer_version_is_left_alone_and_exported() {
    let street = Street::with_repairs();
    Connection::open(street.journal()).unwrap().pragma_update(None, "user_version", 99).unwrap();
    street.mode(0o755, 0o644);
    let before = fs::read(street.journal()).unwrap();
    let (output, answers) = street.ask(&[listed()]);
    assert!(answers.is_empty() && errors(&output).contains("newer"), "{}", errors(&output));
    let (output, files) = street.export();
    assert_eq!((output.status.code(), files.len()), (Some(0), 4), "{}", errors(&output));
    assert_eq!(fs::read(street.journal()).unwrap(), before);
}

/// Overwrites the pages of the file that hold entries, all from the first to the last share of them.
fn spoil(street: &Street, from: f64, to: f64) {
    let flags = OpenFlags::SQLITE_OPEN_READ_ONLY;
    let raw = Connection::open_with_flags(street.journal(), flags).unwrap();
    let sql = "SELECT pageno FROM dbstat WHERE name = 'journal' AND pagetype = 'leaf' ORDER BY pageno";
    let mut found = raw.prepare(sql).unwrap();
    let pages: Vec<i64> = found.query_map([], |row| row.get(0)).unwrap().map(Result::unwrap).collect();
    drop(found);
    drop(raw);
    let mut bytes = fs::read(street.journal()).unwrap();
    let (first, last) = ((pages.len() as f64 * from) as usize, (pages.len() as f64 * to) as usize);
    assert!(first < last, "{} pages", pages.len());
    for page in &pages[first..last] {
        let end = *page as usize * 4096;
        bytes[end - 4096..end].fill(0x5a);
    }
    fs::write(street.journal(), bytes).unwrap();
    street.mode(0o755, 0o644);
}

/// Nobody reads a whole journal at every start: damage is found where it is read, and from then on nothing is written.
#[test]
fn damaged_pages_are_named_and_what_is_left_is_exported() {
    let street = Street::with_repairs();
    let repairs = Sqlite::open(&street.journal()).unwrap().repairs().unwrap();
    spoil(&street, 0.4, 0.6);
    let before = fs::read(street.journal()).unwrap();
    let records = repairs.iter().map(|repair| envelope(repair, json!({ "do": "record", "repair": repair })));
    let questions: Vec<_> = records.chain([opening(), today()]).collect();
    let (_, answers) = street.ask(&questions);
    assert!(answers[..3].iter().any(|answer| answer["error"]["code"] == "corrupt"), "{:?}", &answers[..3]);
    assert_eq!(answers[3]["error"]["code"], "corrupt", "nothing more is written: {}", answers[3]);
    let closed = answers[4]["ok"]["closed"].as_str().unwrap();
    assert!(closed.contains("damaged") && closed.contains("Copy the whole data folder"), "{closed}");
    let (output, files) = street.export();
    assert_eq!(output.status.code(), Some(1), "{}", errors(&output));
    assert!(!files.is_empty(), "something can still be read");
    let said = String::from_utf8_lossy(&output.stdout).into_owned();
    assert!(said.contains("Not everything could be read"), "{said}");
    assert_eq!(fs::read(street.journal()).unwrap(), before, "nothing was repaired");
}

#[test]
fn a_file_with_its_tail_cut_off_is_named_and_left_as_it_is() {
    let street = Street::with_repairs();
    let whole = fs::read(street.journal()).unwrap();
    for share in [3, 5, 7] {
        fs::write(street.journal(), &whole[..whole.len() * share / 8]).unwrap();
        street.mode(0o755, 0o644);
        let before = fs::read(street.journal()).unwrap();
        let (output, answers) = street.ask(&[today(), listed(), opening()]);
        let says = errors(&output) + &answers.iter().map(Value::to_string).collect::<String>();
        assert!(says.contains("damaged"), "{share}/8: {says}");
        let (output, _) = street.export();
        assert_ne!(output.status.code(), Some(0), "{share}/8");
        assert_eq!(fs::read(street.journal()).unwrap(), before, "{share}/8");
    }
}

/// A disk of 900 kB, in a name space of its own: the machine's disk is left alone.
#[test]
fn a_full_disk_refuses_the_request_and_keeps_what_was_there() {
    let folder = empty_folder();
    let script = "mount -t tmpfs -o size=900k none \"$1\" && exec \"$2\" ask --data \"$1\"";
    let mut command = Command::new("unshare");
    command.args(["--user", "--map-root-user", "--mount", "sh", "-c", script, "sh"]).arg(folder.path()).arg(mendline());
    let allowed = Command::new("unshare")
        .args(["--user", "--map-root-user", "--mount", "sh", "-c", "mount -t tmpfs none \"$1\"", "sh"])
        .arg(folder.path())
        .output();
    if !allowed.is_ok_and(|output| output.status.success()) {
        println!("not tried: this system mounts no disk for a user");
        return;
    }
    let long = "rain ".repeat(2_000);
    let note = |number: usize| {
        let request = open_by_hand(&format!("SS-{number} {long}"));
        envelope(&format!("o{number}"), request)
    };
    let questions: Vec<_> = std::iter::once(envelope("e", json!({ "do": "take_examples" })))
        .chain((0..80).map(note))
        .chain([listed()])
        .collect();
    let (output, answers) = answers(command, &questions);
    assert_eq!(answers.len(), questions.len(), "{}", errors(&output));
    let full = answers.iter().filter(|answer| answer["error"]["code"] == "disk_full").count();
    let written = answers.iter().filter(|answer| answer["ok"]["kind"] == "repair").count();
    assert!(full > 0 && written > 0, "{full} refused, {written} written: {}", answers[answers.len() - 2]);
    assert_eq!(full + written, 80, "{answers:?}");
    let listed = answers.last().unwrap()["ok"]["repairs"].as_array().map(Vec::len);
    assert_eq!(listed, Some(written), "what was acknowledged is listed, and nothing else");
}

#[test]
fn a_broken_chain_is_exported_by_the_screen_and_takes_no_more() {
    let street = Street::with_repairs();
    let raw = Connection::open(street.journal()).unwrap();
    raw.execute_batch("DROP TRIGGER journal_no_update").unwrap();
    let repair: String =
        raw.query_row("SELECT repair FROM journal WHERE repair <> 'shelf' LIMIT 1", [], |row| row.get(0)).unwrap();
    let sql = "UPDATE journal SET body = CAST(replace(CAST(body AS TEXT), 'rain', 'sun') AS BLOB)
        WHERE repair = ?1 AND seq = 4";
    raw.execute(sql, [&repair]).unwrap();
    drop(raw);
    let record = envelope("r", json!({ "do": "record", "repair": repair }));
    let told = json!({ "do": "tell", "repair": repair, "command": { "command": "note", "text": "more" } });
    let (_, answers) = street.ask(&[record, envelope("n", told), opening(), today()]);
    assert_eq!(answers[0]["ok"]["kind"], "file", "{}", answers[0]);
    assert_eq!(answers[1]["error"]["code"], "damaged", "{}", answers[1]);
    assert!(answers[1]["error"]["says"].as_str().unwrap().contains("entry 4 of device"), "{}", answers[1]);
    assert!(answers[2]["ok"].is_object() && answers[3]["ok"].is_object(), "other repairs go on: {}", answers[2]);
    let (output, files) = street.export();
    assert_eq!((output.status.code(), files.len()), (Some(1), 5));
    let said = String::from_utf8_lossy(&output.stdout).into_owned();
    assert!(said.contains(&format!("Repair {repair}, entry 4 of device")), "{said}");
}

#[test]
fn an_export_replaces_no_file() {
    let street = Street::with_repairs();
    let out = street.folder.path().join("twice");
    let export = || {
        let mut command = Command::new(&street.program);
        command.args(["export", "--data"]).arg(street.data()).arg("--out").arg(&out).output().unwrap()
    };
    assert_eq!(export().status.code(), Some(0));
    let before: Vec<_> = names(&out);
    let again = export();
    assert_eq!(again.status.code(), Some(2));
    assert!(errors(&again).contains("there already"), "{}", errors(&again));
    assert_eq!(names(&out), before);
}

fn names(folder: &Path) -> Vec<PathBuf> {
    let mut names: Vec<_> = fs::read_dir(folder).unwrap().map(|file| file.unwrap().path()).collect();
    names.sort();
    names
}
