//! Backup and restore: the whole folder as one encrypted file in an open format, and back on a clean device.

use std::fs;
use std::io::Write;
use std::path::{Path, PathBuf};
use std::process::{Command, Output, Stdio};

use mendline_core::journal::{Journal, Sqlite};
use mendline_tests::{copied, empty_folder, mendline, python, rehearsal};
use rusqlite::Connection;
use serde_json::{Value, json};

const PASSPHRASE: &str = "amber rope cold gauge";

fn run(arguments: &[&str], passphrase: &str) -> Output {
    let mut child = Command::new(mendline())
        .args(arguments)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .expect("the program starts");
    // A program that has refused already reads nothing more.
    let _ = writeln!(child.stdin.take().expect("its input"), "{passphrase}");
    child.wait_with_output().expect("it ends")
}

fn text(path: &Path) -> &str {
    path.to_str().expect("text")
}

fn back_up(data: &Path, out: &Path) -> Output {
    run(&["backup", "--data", text(data), "--out", text(out)], PASSPHRASE)
}

fn restore(file: &Path, data: &Path, passphrase: &str) -> Output {
    run(&["restore", text(file), "--data", text(data)], passphrase)
}

fn says(output: &Output) -> String {
    String::from_utf8_lossy(&output.stderr).into_owned()
}

/// The folder of a whole job, with photos, certificates and the keys of two people.
fn job(to: &Path) {
    copied(&rehearsal().join("data"), to);
    let mut child = Command::new(mendline())
        .args(["ask", "--data", text(to)])
        .stdin(Stdio::piped())
        .stdout(Stdio::null())
        .spawn()
        .expect("the program starts");
    let mut input = child.stdin.take().expect("its input");
    for (id, person) in [("k1", "ekdal"), ("k2", "varga")] {
        let envelope =
            json!({ "id": id, "person": person, "pin": "246802", "request": { "do": "make_key", "person": person } });
        writeln!(input, "{envelope}").expect("it is asked");
    }
    drop(input);
    assert!(child.wait().expect("it ends").success());
}

fn heads(data: &Path) -> Vec<(String, Vec<String>)> {
    let kept = Sqlite::open(&data.join("journal.sqlite")).expect("it opens");
    assert!(kept.verify_all().expect("it can be read").is_empty(), "every chain is whole");
    let repairs = kept.repairs().expect("repairs").into_iter().chain(["shelf".to_owned()]);
    let heads = |repair: &String| kept.heads(repair).expect("heads").iter().map(ToString::to_string).collect();
    repairs.map(|repair| (repair.clone(), heads(&repair))).collect()
}

/// Returns every row of the register, as text.
fn register(data: &Path) -> Vec<String> {
    let file = Connection::open(data.join("journal.sqlite")).expect("it opens");
    // How the words of the search lie in their index depends on the order in which they came, not on what they are;
    // how far the register has come counts the note of the backup, which came after it.
    let sql = "SELECT name FROM sqlite_master WHERE type = 'table' AND name LIKE 'register%' \
               AND name NOT GLOB 'register_search_[dic]*' AND name <> 'register_upto' ORDER BY name";
    let tables: Vec<String> = file
        .prepare(sql)
        .and_then(|mut sql| sql.query_map([], |row| row.get(0))?.collect())
        .expect("the tables of the register");
    assert!(!tables.is_empty());
    let rows = |table: &String| {
        let mut all = file.prepare(&format!("SELECT * FROM {table}")).expect("a table");
        let columns = all.column_count();
        let row = |row: &rusqlite::Row| {
            (0..columns).map(|n| Ok(format!("{:?}", row.get_ref(n)?))).collect::<Result<String, rusqlite::Error>>()
        };
        let mut found: Vec<String> = all.query_map([], row).expect("rows").map(|row| row.expect("a row")).collect();
        found.sort();
        found
    };
    tables.iter().flat_map(rows).collect()
}

fn files(folder: &Path) -> Vec<(PathBuf, Vec<u8>)> {
    let mut found = vec![];
    for file in fs::read_dir(folder).into_iter().flatten().flatten() {
        let path = file.path();
        if path.is_dir() {
            found.extend(files(&path));
        } else {
            found.push((path.clone(), fs::read(path).expect("its bytes")));
        }
    }
    found.sort();
    found
}

/// The files of the folders that are copied as they are, by their place in the data folder.
fn kept(data: &Path) -> Vec<(PathBuf, Vec<u8>)> {
    let below = ["photos", "certificates", "keys"].map(|name| files(&data.join(name))).concat();
    below.into_iter().map(|(path, bytes)| (path.strip_prefix(data).expect("inside").to_owned(), bytes)).collect()
}

#[test]
fn a_clean_device_gets_everything_back() {
    let (from, to, out) = (empty_folder(), empty_folder(), empty_folder());
    job(from.path());
    let file = out.path().join("one.tar.age");
    // Made while somebody else has the journal open and has written to it: SQLite's own backup copies one moment.
    let open = Sqlite::open(&from.path().join("journal.sqlite")).expect("it opens");
    let made = back_up(from.path(), &file);
    assert!(made.status.success(), "{}", says(&made));
    drop(open);
    let clean = to.path().join("new");
    let back = restore(&file, &clean, PASSPHRASE);
    assert!(back.status.success(), "{}", says(&back));
    let repairs_of = |data: &Path| heads(data).into_iter().filter(|(repair, _)| repair != "shelf").collect::<Vec<_>>();
    assert_eq!(repairs_of(&clean), repairs_of(from.path()), "the same heads");
    assert_eq!(kept(&clean), kept(from.path()), "photos, certificates and keys, byte for byte");
    assert!(kept(&clean).iter().any(|(path, _)| path.starts_with("photos")));
    assert!(kept(&clean).iter().any(|(path, _)| path.starts_with("certificates")));
    assert_eq!(kept(&clean).iter().filter(|(path, _)| path.extension().is_some_and(|end| end == "pem")).count(), 2);
    // The register, made anew, is the one that was live.
    assert_eq!(register(&clean), register(from.path()));
    // Every certificate verifies as it did.
    let verify = |data: &Path| {
        let certificates = files(&data.join("certificates"));
        certificates
            .iter()
            .map(|(path, _)| {
                let run = Command::new(mendline()).args(["verify", text(path)]).output().expect("it runs");
                (run.status.code(), String::from_utf8_lossy(&run.stdout).replace(text(data), ""))
            })
            .collect::<Vec<_>>()
    };
    assert_eq!(verify(&clean), verify(from.path()));
    let codes: Vec<_> = verify(&clean).into_iter().map(|(code, _)| code).collect();
    assert!(codes.contains(&Some(3)), "a sound rehearsal among {codes:?}");
    let audited = Command::new(mendline()).args(["audit", "--data", text(&clean)]).output().expect("it runs");
    assert!(audited.status.success(), "{}", String::from_utf8_lossy(&audited.stdout));
    // It is another device: two folders never write as one.
    assert_ne!(fs::read(clean.join("device")).expect("an id"), fs::read(from.path().join("device")).expect("an id"));
    assert_eq!(fs::metadata(clean.join("keys")).map(|about| about.is_dir()).ok(), Some(true));
}

/// Outside check: pyrage, the Python binding of rage, opens the file, and Python's tarfile lists it. It shows that the
/// form is the open one; the format itself is age-encryption.org/v1.
#[test]
fn another_age_program_opens_it() {
    let (from, out) = (empty_folder(), empty_folder());
    job(from.path());
    let file = out.path().join("one.tar.age");
    assert!(back_up(from.path(), &file).status.success());
    let head = fs::read(&file).expect("a file");
    assert!(head.starts_with(b"age-encryption.org/v1\n-> scrypt "), "the header of the format");
    let script = "
import io, sys, tarfile, pyrage
plain = pyrage.passphrase.decrypt(open(sys.argv[1], 'rb').read(), sys.argv[2])
archive = tarfile.open(fileobj=io.BytesIO(plain))
archive.extractall(sys.argv[3], filter='data')
print(len(archive.getnames()))
try:
    pyrage.passphrase.decrypt(open(sys.argv[1], 'rb').read(), 'another')
    print('opened by another passphrase')
except pyrage.DecryptError:
    pass
";
    let unpacked = out.path().join("unpacked");
    let Some(run) =
        python(&["-c".into(), script.into(), text(&file).into(), PASSPHRASE.into(), text(&unpacked).into()])
    else {
        return;
    };
    assert!(run.status.success(), "{}", String::from_utf8_lossy(&run.stderr));
    assert_eq!(String::from_utf8_lossy(&run.stdout).trim(), (kept(from.path()).len() + 1).to_string());
    assert_eq!(kept(&unpacked), kept(from.path()));
    let repairs = |data: &Path| heads(data).into_iter().filter(|(repair, _)| repair != "shelf").collect::<Vec<_>>();
    assert_eq!(repairs(&unpacked), repairs(from.path()));
}

/// And the other way round: what pyrage packs is restored, and what it packs with harm is not.
#[test]
fn a_backup_with_harm_in_it_is_refused_and_leaves_nothing() {
    let (from, out) = (empty_folder(), empty_folder());
    job(from.path());
    let script = "
import io, sys, tarfile, pyrage
def pack(out, members):
    raw = io.BytesIO()
    with tarfile.open(fileobj=raw, mode='w') as archive:
        for name, kind, data in members:
            member = tarfile.TarInfo(name)
            member.size, member.type = (len(data), kind)
            if kind in (tarfile.SYMTYPE, tarfile.LNKTYPE): member.linkname, member.size = data.decode(), 0
            archive.addfile(member, io.BytesIO(data) if member.size else None)
    open(f'{sys.argv[2]}/{out}.tar.age', 'wb').write(pyrage.passphrase.encrypt(raw.getvalue(), sys.argv[3]))
journal = ('journal.sqlite', tarfile.REGTYPE, open(sys.argv[1], 'rb').read())
F, S, L, D = tarfile.REGTYPE, tarfile.SYMTYPE, tarfile.LNKTYPE, tarfile.DIRTYPE
pack('sound', [journal])
pack('up', [journal, ('../evil', F, b'x')])
pack('root', [journal, ('/tmp/evil', F, b'x')])
pack('inside', [journal, ('photos/../../evil', F, b'x')])
pack('link', [journal, ('photos/ab/link', S, b'/etc/passwd')])
pack('hard', [journal, ('keys/link', L, b'journal.sqlite')])
pack('device', [journal, ('device', F, b'0' * 32)])
pack('other', [journal, ('photos/ab/cd/ef/gh.jpg', F, b'x')])
pack('twice', [journal, journal])
pack('none', [('photos/ab/abcd.jpg', F, b'x')])
pack('garbage', [('journal.sqlite', F, b'no database at all' * 100)])
";
    let journal = out.path().join("copy.sqlite");
    let copy = Connection::open(from.path().join("journal.sqlite")).expect("it opens");
    copy.execute("VACUUM INTO ?1", [text(&journal)]).expect("a copy");
    let Some(run) =
        python(&["-c".into(), script.into(), text(&journal).into(), text(out.path()).into(), PASSPHRASE.into()])
    else {
        return;
    };
    assert!(run.status.success(), "{}", String::from_utf8_lossy(&run.stderr));
    let outcome = |name: &str| {
        let place = empty_folder();
        let data = place.path().join("data");
        let run = restore(&out.path().join(format!("{name}.tar.age")), &data, PASSPHRASE);
        assert!(!place.path().join("evil").exists() && !Path::new("/tmp/evil").exists(), "{name}");
        (run.status.success(), data.exists(), says(&run))
    };
    let (restored, there, why) = outcome("sound");
    assert!(restored && there, "{why}");
    for name in ["up", "root", "inside", "link", "hard", "device", "other", "twice", "none", "garbage"] {
        let (restored, there, why) = outcome(name);
        assert!(!restored && !there, "{name}: {why}");
    }
}

#[test]
fn a_wrong_passphrase_a_cut_or_a_changed_file_restores_nothing() {
    let (from, out) = (empty_folder(), empty_folder());
    job(from.path());
    let file = out.path().join("one.tar.age");
    assert!(back_up(from.path(), &file).status.success());
    let whole = fs::read(&file).expect("a file");
    let spoiled = |bytes: &[u8], passphrase: &str| {
        let place = empty_folder();
        fs::write(out.path().join("spoiled"), bytes).expect("a file");
        let data = place.path().join("data");
        let run = restore(&out.path().join("spoiled"), &data, passphrase);
        assert!(!run.status.success() && !data.exists(), "{}", says(&run));
        says(&run)
    };
    assert!(spoiled(&whole, "another passphrase").contains("passphrase is not right"));
    // A chunk of the format is 64 KiB: cut at its border, within one, and just before the end.
    for cut in [10, 200, 300 + 65_552, whole.len() / 2, whole.len() - 1] {
        spoiled(&whole[..cut.min(whole.len() - 1)], PASSPHRASE);
    }
    let mut changed = whole.clone();
    let middle = whole.len() / 2;
    changed[middle] ^= 1;
    spoiled(&changed, PASSPHRASE);
    spoiled(b"a letter", PASSPHRASE);
    // One that asks for gigabytes of memory before it says whether it can be opened.
    let head = String::from_utf8_lossy(&whole[..200]).into_owned();
    assert!(head.contains(" 17\n"), "the work is as stated: {head}");
    spoiled(&String::from_utf8_lossy(&whole).replacen(" 17\n", " 30\n", 1).into_bytes(), PASSPHRASE);
}

#[test]
fn nothing_that_is_there_is_written_over() {
    let (from, out) = (empty_folder(), empty_folder());
    job(from.path());
    let file = out.path().join("one.tar.age");
    fs::write(&file, "a letter").expect("a file");
    assert!(!back_up(from.path(), &file).status.success());
    assert_eq!(fs::read(&file).expect("a file"), b"a letter");
    let weak = run(&["backup", "--data", text(from.path()), "--out", text(&out.path().join("weak"))], "short");
    assert!(!weak.status.success() && !out.path().join("weak").exists(), "{}", says(&weak));
    let none = back_up(out.path(), &out.path().join("none"));
    assert!(!none.status.success() && !out.path().join("journal.sqlite").exists(), "{}", says(&none));
    fs::remove_file(&file).expect("it goes");
    assert!(back_up(from.path(), &file).status.success());
    let into = restore(&file, from.path(), PASSPHRASE);
    assert!(!into.status.success() && says(&into).contains("not empty"), "{}", says(&into));
}

mod by_the_door {
    use super::*;
    use base64::Engine as _;
    use base64::engine::general_purpose::STANDARD;
    use mendline_core::door::App;
    use mendline_core::facts::{Moment, Sensed};

    struct Device(App, i64);

    impl Device {
        fn ask(&mut self, password: &str, request: Value) -> Value {
            self.1 += 1;
            let at_ms = 1_791_964_800_000 + self.1 * 1000;
            let moment = Moment { at_ms, boot_ms: self.1 * 1000, boot_id: "one".into(), ..Moment::default() };
            let sensed = Sensed { moment, device: "phone".into(), fresh: [self.1 as u8; 16], seed: [7; 32] };
            let envelope =
                json!({ "id": format!("r{}", self.1), "person": "varga", "password": password, "request": request });
            serde_json::from_str(&self.0.handle(&envelope.to_string(), &sensed)).expect("JSON")
        }

        fn ok(&mut self, password: &str, request: Value) -> Value {
            let answer = self.ask(password, request);
            assert!(answer["ok"].is_object(), "{answer}");
            answer["ok"].clone()
        }
    }

    #[test]
    fn the_screens_make_note_and_restore_a_backup() {
        let (from, to) = (empty_folder(), empty_folder());
        job(from.path());
        let mut phone = Device(App::open(from.path()).expect("it opens"), 0);
        phone.0.set_free_bytes(Some(1_000));
        let storage = phone.ok("", json!({ "do": "today" }))["storage"].clone();
        assert_eq!(storage, json!({ "free_bytes": 1000, "low": true, "backed_up_ms": null, "backup_due": true }));
        assert_eq!(phone.ask("short", json!({ "do": "back_up" }))["error"]["code"], "passphrase_weak");
        let made = phone.ok(PASSPHRASE, json!({ "do": "back_up" }));
        let mut bytes = vec![];
        while (bytes.len() as u64) < made["bytes"].as_u64().expect("a length") {
            let piece = phone.ok("", json!({ "do": "piece", "name": made["name"], "from": bytes.len() }));
            bytes.extend(STANDARD.decode(piece["bytes"].as_str().expect("text")).expect("base64"));
        }
        phone.0.set_free_bytes(Some(900_000_000_000));
        let noted = phone.ok("", json!({ "do": "note_backup", "name": made["name"], "bytes": made["bytes"] }));
        assert_eq!((&noted["storage"]["backup_due"], &noted["storage"]["low"]), (&json!(false), &json!(false)));
        phone.1 += 7 * 24 * 3600 + 1;
        assert_eq!(
            phone.ok("", json!({ "do": "today" }))["storage"]["backup_due"],
            true,
            "after seven days it is asked for"
        );

        let mut clean = Device(App::open(to.path()).expect("it opens"), 0);
        assert_eq!(
            clean.ok("", json!({ "do": "today" }))["storage"]["backup_due"],
            false,
            "there is nothing to back up"
        );
        for (number, piece) in bytes.chunks(100_000).enumerate() {
            let request = json!({ "do": "bring", "name": "b", "of": bytes.len(), "from": number * 100_000, "bytes": STANDARD.encode(piece) });
            clean.ok("", request);
        }
        let wrong = clean.ask("another passphrase", json!({ "do": "restore", "name": "b", "of": bytes.len() }));
        assert_eq!(wrong["error"]["code"], "passphrase_wrong", "{wrong}");
        // The file is still there: only the passphrase is typed again.
        let restored = clean.ok(PASSPHRASE, json!({ "do": "restore", "name": "b", "of": bytes.len() }));
        assert_eq!(restored["damaged"], 0);
        let listed = |device: &mut Device| device.ok("", json!({ "do": "list" }))["repairs"].clone();
        assert_eq!(listed(&mut clean), listed(&mut phone));
        assert_eq!(kept(to.path()), kept(from.path()));
        let again = clean.ask(PASSPHRASE, json!({ "do": "restore", "name": "b", "of": bytes.len() }));
        assert!(again["error"].is_object(), "{again}");
    }
}
