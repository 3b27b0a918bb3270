//! Somebody changes the stored file behind the program's back: it is found, and the first bad entry is named. What a
//! chain can't see of itself is found by what lies outside the folder: records and printed heads.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

use mendline_core::door::App;
use mendline_core::facts::{Moment, Sensed};
use mendline_core::journal::{Hash, Journal, Sqlite, link};
use mendline_tests::{copied, empty_folder, envelope, mendline, open_by_hand, rehearsal};
use rusqlite::{Connection, params};
use serde_json::{Value, json};
use tempfile::TempDir;

const DEVICE: &str = "phone";

/// A folder with two repairs of five entries each, in turn, and their records outside it.
struct Office {
    folder: TempDir,
    repairs: [String; 2],
    records: Vec<PathBuf>,
}

impl Office {
    fn new() -> Self {
        let folder = empty_folder();
        let mut app = App::open(&folder.path().join("data")).expect("a new folder");
        let mut asked = 0;
        let mut ask = |request: Value| {
            asked += 1;
            let moment =
                Moment { at_ms: 1_791_964_800_000 + asked, offset_min: 120, boot_ms: asked, boot_id: "one".into() };
            let mut fresh = [0; 16];
            fresh[..8].copy_from_slice(&asked.to_be_bytes());
            let sensed = Sensed { moment, device: DEVICE.into(), fresh, ..Sensed::default() };
            let answer = app.handle(&envelope(&format!("q{asked}"), request), &sensed);
            serde_json::from_str::<Value>(&answer).expect("a response")["ok"].clone()
        };
        ask(json!({ "do": "take_examples" }));
        let repairs =
            ["SS-1", "SS-2"].map(|asset| ask(open_by_hand(asset))["repair"]["id"].as_str().expect("an id").to_owned());
        for number in 2..=5 {
            for repair in &repairs {
                let command = json!({ "command": "note", "text": format!("note {number}") });
                ask(json!({ "do": "tell", "repair": repair, "command": command }));
            }
        }
        drop(app);
        let mut office = Self { folder, repairs, records: vec![] };
        office.records = office.export();
        office
    }

    fn data(&self) -> PathBuf {
        self.folder.path().join("data")
    }

    /// Keeps the records of both repairs outside the folder, as they are now.
    fn export(&self) -> Vec<PathBuf> {
        let out = self.folder.path().join(format!("out-{}", self.records.len()));
        let mut command = Command::new(mendline());
        let output =
            command.args(["export", "--data"]).arg(self.data()).arg("--out").arg(&out).output().expect("it runs");
        assert!(output.status.success(), "{output:?}");
        self.repairs.iter().map(|repair| out.join(format!("{repair}-record.json"))).collect()
    }

    /// Changes the file with its own guards taken off. `rest` are statements with no value.
    fn tamper(&self, with: impl FnOnce(&Connection)) {
        let raw = Connection::open(self.data().join("journal.sqlite")).expect("the file opens");
        let guards = "DROP TRIGGER journal_no_update; DROP TRIGGER journal_no_delete; DROP TRIGGER journal_no_replace;";
        raw.execute_batch(guards).expect("anybody may drop them");
        with(&raw);
    }

    fn audit(&self, heads: &[Hash], with_records: bool) -> Output {
        let mut command = Command::new(mendline());
        command.args(["audit", "--data"]).arg(self.data());
        for head in heads {
            command.args(["--head", &head.to_string()]);
        }
        command.args(self.records.iter().filter(|_| with_records)).output().expect("it runs")
    }

    /// Asserts that the audit names this entry of a repair, counted from 0, before any other.
    fn names(&self, repair: usize, seq: u64, with_records: bool) {
        let output = self.audit(&[], with_records);
        let said = String::from_utf8_lossy(&output.stdout).into_owned();
        let wanted = format!("Repair {}, entry {seq} of device {DEVICE}", self.repairs[repair]);
        assert_eq!(output.status.code(), Some(1), "{said}");
        assert!(said.lines().any(|line| line.starts_with(&wanted)), "{wanted} is not in:\n{said}");
    }

    /// Asserts that the chains alone show nothing.
    fn looks_whole(&self) {
        let output = self.audit(&[], false);
        assert_eq!(output.status.code(), Some(0), "{output:?}");
    }

    fn heads(&self, repair: usize) -> Vec<Hash> {
        let kept = Sqlite::open(&self.data().join("journal.sqlite")).expect("it opens");
        kept.heads(&self.repairs[repair]).expect("a chain")
    }
}

fn run(raw: &Connection, sql: &str, repair: &str) {
    assert_ne!(raw.execute(sql, [repair]).expect("it runs"), 0, "{sql} changed nothing");
}

#[test]
fn an_untouched_folder_is_right_by_chains_records_and_heads() {
    let office = Office::new();
    let heads = [office.heads(0), office.heads(1)].concat();
    assert_eq!(office.audit(&heads, true).status.code(), Some(0));
}

#[test]
fn a_changed_entry_is_named() {
    let office = Office::new();
    office.tamper(|raw| {
        let sql = "UPDATE journal SET body = CAST(replace(CAST(body AS TEXT), 'note', 'nota') AS BLOB)
            WHERE repair = ?1 AND seq = 3";
        run(raw, sql, &office.repairs[0]);
    });
    office.names(0, 3, false);
}

#[test]
fn an_entry_taken_out_is_named_by_the_one_after_it() {
    let office = Office::new();
    office.tamper(|raw| run(raw, "DELETE FROM journal WHERE repair = ?1 AND seq = 3", &office.repairs[1]));
    office.names(1, 4, false);
    // The record says which one it was.
    office.names(1, 3, true);
}

#[test]
fn entries_in_another_order_are_named() {
    let office = Office::new();
    office.tamper(|raw| {
        let places: Vec<i64> = raw
            .prepare("SELECT id FROM journal WHERE repair = ?1 AND seq IN (3, 4) ORDER BY id")
            .and_then(|mut found| found.query_map([&office.repairs[0]], |row| row.get(0))?.collect())
            .expect("two rows");
        for (from, to) in [(places[0], -1), (places[1], places[0]), (-1, places[1])] {
            raw.execute("UPDATE journal SET id = ?2 WHERE id = ?1", [from, to]).expect("it runs");
        }
    });
    office.names(0, 4, false);
}

#[test]
fn numbers_given_anew_in_another_order_are_named() {
    let office = Office::new();
    office.tamper(|raw| {
        for (from, to) in [(3, 33), (4, 3), (33, 4)] {
            let sql = "UPDATE journal SET seq = ?3 WHERE repair = ?1 AND seq = ?2";
            raw.execute(sql, params![office.repairs[0], from, to]).expect("it runs");
        }
    });
    office.names(0, 4, false);
}

/// Its own hash is right; the entries that were there before it follow another one.
#[test]
fn an_entry_put_in_between_is_named() {
    let office = Office::new();
    let repair = &office.repairs[0];
    let kept = Sqlite::open(&office.data().join("journal.sqlite")).expect("it opens");
    let entries = kept.entries(repair).expect("a chain");
    drop(kept);
    let (prev, body) = (entries[1].hash, entries[2].body.clone());
    let forged = link(repair, DEVICE, 3, &[prev], &[&body[..], b" "].concat());
    office.tamper(|raw| {
        raw.execute("UPDATE journal SET seq = seq + 100 WHERE repair = ?1 AND seq >= 3", [repair]).expect("it runs");
        raw.execute("UPDATE journal SET seq = seq - 99 WHERE repair = ?1 AND seq > 100", [repair]).expect("it runs");
        let sql = "INSERT INTO journal (id, repair, device, seq, prev, body, hash) VALUES (-1, ?1, ?2, 3, ?3, ?4, ?5)";
        let body = [&body[..], b" "].concat();
        raw.execute(sql, params![repair, DEVICE, prev.as_bytes(), body, forged.as_bytes()]).expect("it runs");
        let place = "SELECT id FROM journal WHERE repair = ?1 AND seq = 4";
        let place: i64 = raw.query_row(place, [repair], |row| row.get(0)).expect("a row");
        raw.execute("UPDATE journal SET id = id + 1000 WHERE id >= ?1", [place]).expect("it runs");
        raw.execute("UPDATE journal SET id = ?1 WHERE id = -1", [place]).expect("it runs");
    });
    office.names(0, 4, false);
}

#[test]
fn the_entries_of_two_repairs_swapped_are_named_in_both() {
    let office = Office::new();
    let [one, other] = &office.repairs;
    office.tamper(|raw| {
        for (from, to) in [(one.as_str(), "aside"), (other, one), ("aside", other)] {
            raw.execute("UPDATE journal SET repair = ?2 WHERE repair = ?1", [from, to]).expect("it runs");
        }
    });
    office.names(0, 1, false);
    office.names(1, 1, false);
}

#[test]
fn two_single_entries_swapped_between_repairs_are_named() {
    let office = Office::new();
    let [one, other] = &office.repairs;
    office.tamper(|raw| {
        for (from, to) in [(one.as_str(), "aside"), (other, one), ("aside", other)] {
            let sql = "UPDATE journal SET repair = ?2 WHERE repair = ?1 AND seq = 3";
            raw.execute(sql, [from, to]).expect("it runs");
        }
    });
    office.names(0, 3, false);
    office.names(1, 3, false);
}

#[test]
fn a_tail_cut_off_is_found_by_the_record_and_by_the_head() {
    let office = Office::new();
    let head = office.heads(0);
    office.tamper(|raw| run(raw, "DELETE FROM journal WHERE repair = ?1 AND seq >= 4", &office.repairs[0]));
    office.looks_whole();
    office.names(0, 4, true);
    let by_head = office.audit(&head, false);
    let said = String::from_utf8_lossy(&by_head.stdout).into_owned();
    assert!(by_head.status.code() == Some(1) && said.contains(&head[0].to_string()), "{said}");
}

#[test]
fn a_whole_repair_taken_out_is_found_by_its_record() {
    let office = Office::new();
    office.tamper(|raw| run(raw, "DELETE FROM journal WHERE repair = ?1", &office.repairs[1]));
    office.looks_whole();
    office.names(1, 1, true);
}

#[test]
fn a_folder_put_back_to_an_older_copy_is_found_by_what_was_handed_out_since() {
    let mut office = Office::new();
    let older = office.folder.path().join("older");
    copied(&office.data(), &older);
    let mut app = App::open(&office.data()).expect("it opens");
    let moment = Moment { at_ms: 1_791_964_900_000, offset_min: 120, boot_ms: 900, boot_id: "one".into() };
    let sensed = Sensed { moment, device: DEVICE.into(), fresh: [7; 16], ..Sensed::default() };
    let command = json!({ "command": "note", "text": "the last" });
    let request = json!({ "do": "tell", "repair": office.repairs[0], "command": command });
    assert!(app.handle(&envelope("later", request), &sensed).contains("\"ok\""));
    drop(app);
    office.records = office.export();
    let head = office.heads(0);
    fs::remove_dir_all(office.data()).expect("it goes");
    fs::rename(older, office.data()).expect("it comes back");
    office.looks_whole();
    office.names(0, 6, true);
    assert_eq!(office.audit(&head, false).status.code(), Some(1));
}

/// A record that was changed itself accuses nobody.
#[test]
fn a_changed_record_shows_nothing_about_the_folder() {
    let office = Office::new();
    let text = fs::read_to_string(&office.records[0]).expect("a record").replacen("note 4", "note 9", 1);
    fs::write(&office.records[0], text).expect("it can be changed");
    let output = office.audit(&[], true);
    let said = String::from_utf8_lossy(&output.stdout).into_owned();
    assert_eq!(output.status.code(), Some(1));
    assert!(said.contains("itself broken") && said.lines().count() == 1, "{said}");
}

/// The rehearsal with its repair cut off after so many entries, and what was handed out of it before.
fn cut_rehearsal(entries: i64) -> (TempDir, PathBuf, PathBuf) {
    let folder = empty_folder();
    let data = folder.path().join("data");
    copied(&rehearsal().join("data"), &data);
    let bundle = folder.path().join("all.bundle");
    let mut send = Command::new(mendline());
    let sent = send.args(["bundle", "send", "--data"]).arg(&data).arg("--out").arg(&bundle).output().expect("it runs");
    assert!(sent.status.success(), "{sent:?}");
    let raw = Connection::open(data.join("journal.sqlite")).expect("the file opens");
    let cut = "DROP TRIGGER journal_no_delete;
        DELETE FROM journal WHERE seq > ?1 AND repair = (SELECT repair FROM journal WHERE seq = 100)";
    let (guard, cut) = cut.split_once(';').expect("two statements");
    raw.execute_batch(guard).expect("anybody may drop it");
    assert_ne!(raw.execute(cut, [entries]).expect("it runs"), 0);
    (folder, data, bundle)
}

fn audited(data: &Path, witness: &Path) -> (Option<i32>, String) {
    let mut command = Command::new(mendline());
    let output = command.args(["audit", "--data"]).arg(data).arg(witness).output().expect("it runs");
    (output.status.code(), String::from_utf8_lossy(&output.stdout).into_owned())
}

#[test]
fn certificates_and_bundles_are_witnesses_of_a_whole_folder() {
    let whole = rehearsal().join("data");
    assert_eq!(audited(&whole, &rehearsal().join("certificate.pdf")).0, Some(0));
    let (_folder, _, bundle) = cut_rehearsal(120);
    assert_eq!(audited(&whole, &bundle).0, Some(0));
}

#[test]
fn a_tail_cut_off_is_found_by_the_certificate_and_by_the_bundle() {
    let (_folder, data, bundle) = cut_rehearsal(120);
    for witness in [rehearsal().join("certificate.pdf"), bundle] {
        let (code, said) = audited(&data, &witness);
        assert_eq!(code, Some(1), "{}: {said}", witness.display());
        assert!(said.contains("entry 121 of device") && said.contains("not in this folder"), "{said}");
        assert_eq!(said.lines().count(), 1, "{said}");
    }
}

/// A witness that was changed itself accuses nobody.
#[test]
fn a_changed_certificate_or_bundle_shows_nothing_about_the_folder() {
    let (folder, data, bundle) = cut_rehearsal(120);
    for witness in [rehearsal().join("certificate.pdf"), bundle] {
        let mut bytes = fs::read(&witness).expect("it was just made");
        let place = bytes.len() / 2;
        bytes[place] ^= 1;
        let changed = folder.path().join("changed");
        fs::write(&changed, &bytes).expect("it can be changed");
        let (code, said) = audited(&data, &changed);
        assert_eq!(code, Some(1), "{said}");
        assert!(!said.contains("not in this folder"), "{said}");
    }
}
