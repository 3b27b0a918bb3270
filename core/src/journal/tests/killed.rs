//! A program killed at any instant: what was acknowledged is there, and nothing is there twice.
//!
//! `MENDLINE_KILLS=5000 cargo test -p mendline-core killed` kills as often. A kill loses no page that the system has
//! taken over, so this is no test of a power cut.

use std::env;
use std::io::{BufRead, BufReader, Write as _};
use std::process::{Child, Command, Stdio};
use std::thread;
use std::time::Duration;

use super::*;
use crate::photos;
use crate::register::Row;

const KILLS: u32 = 36;
const FOLDER: &str = "MENDLINE_KILLED_FOLDER";
const NEXT: &str = "MENDLINE_KILLED_NEXT";

#[test]
fn what_was_acknowledged_outlives_a_kill_and_nothing_is_there_twice() {
    let kills = env::var("MENDLINE_KILLS").ok().and_then(|kills| kills.parse().ok()).unwrap_or(KILLS);
    let (mut folder, mut acknowledged, mut chance) = (tempfile::tempdir().unwrap(), 0, 0x2545_f491_4f6c_dd1d);
    let mut most = 0;
    for kill in 0..kills {
        if kill % 12 == 0 {
            // A fresh folder, so that kills also fall into the making of the file.
            (folder, acknowledged) = (tempfile::tempdir().unwrap(), 0);
        }
        let last = run_and_kill(folder.path(), acknowledged + 1, &mut chance);
        acknowledged = last.unwrap_or(acknowledged);
        check_kept(folder.path(), acknowledged);
        most = most.max(acknowledged);
    }
    assert!(most > 0, "no writer ever came to write");
}

/// Runs a writer that goes on with request `next`, kills it some time later and returns the last request that it
/// acknowledged.
fn run_and_kill(folder: &Path, next: u64, chance: &mut u64) -> Option<u64> {
    let mut writer = start_writer(folder, next);
    let mut lines = BufReader::new(writer.stdout.take().unwrap()).lines().map_while(Result::ok);
    let mut acknowledged = lines.by_ref().take(random(chance, 12)).filter_map(|line| number(&line)).last();
    thread::sleep(Duration::from_micros(random(chance, 12_000) as u64));
    writer.kill().unwrap();
    acknowledged = lines.filter_map(|line| number(&line)).last().or(acknowledged);
    writer.wait().unwrap();
    acknowledged
}

fn start_writer(folder: &Path, next: u64) -> Child {
    let writer = "journal::tests::killed::writes_until_it_is_killed";
    Command::new(env::current_exe().unwrap())
        .args([writer, "--exact", "--ignored", "--nocapture"])
        .env(FOLDER, folder)
        .env(NEXT, next.to_string())
        .stdout(Stdio::piped())
        .spawn()
        .unwrap()
}

fn number(line: &str) -> Option<u64> {
    // The test harness may have begun the line.
    line.split_once("kept ")?.1.parse().ok()
}

/// Xorshift: the same kills in every run, as far as the system's scheduling allows.
fn random(state: &mut u64, below: u64) -> usize {
    *state ^= *state << 13;
    *state ^= *state >> 7;
    *state ^= *state << 17;
    (*state % below) as usize
}

fn check_kept(folder: &Path, acknowledged: u64) {
    let kept = Sqlite::open(&file(folder)).unwrap();
    assert_eq!(kept.verify_all(), Ok(vec![]));
    let entries = kept.entries(REPAIR).unwrap();
    let count = entries.len() as u64;
    assert!((acknowledged..=acknowledged + 1).contains(&count), "{acknowledged} acknowledged, {count} kept");
    for (number, entry) in (1..).zip(&entries) {
        assert_eq!(entry.body, photo(number), "each once, in order");
        assert_eq!(photos::read(folder, Hash::of(&entry.body)), Ok(photo(number)));
        assert!(kept.answered(&format!("r{number}")).unwrap().is_some());
    }
    let listed = kept.row(REPAIR).unwrap().map_or(0, |row| row.changed_ms as u64);
    assert_eq!(listed, count, "the register moves with the journal");
}

/// Stands for a photo: the start of a JPEG and a number.
fn photo(number: u64) -> Vec<u8> {
    [&[0xff, 0xd8, 0xff][..], number.to_string().as_bytes()].concat()
}

/// The writer: started by the test above in a process of its own.
#[test]
#[ignore = "runs until it is killed"]
fn writes_until_it_is_killed() {
    let (Ok(folder), Ok(next)) = (env::var(FOLDER), env::var(NEXT)) else { return };
    let folder = Path::new(&folder);
    let mut kept = Sqlite::open(&file(folder)).unwrap();
    for number in next.parse::<u64>().unwrap().. {
        photos::keep(folder, &photo(number)).unwrap();
        let heads = kept.heads(REPAIR).unwrap();
        let drafts = vec![Draft { body: photo(number), ..draft(heads, "") }];
        let rows = vec![Row { repair: REPAIR.into(), changed_ms: number as i64, ..Row::default() }];
        // A request that was kept but not acknowledged comes again and changes nothing.
        kept.append(&Write { rows, ..write(&format!("r{number}"), drafts) }).unwrap();
        writeln!(std::io::stdout(), "kept {number}").unwrap();
    }
}
