//! The power goes at any write: what was acknowledged is there afterwards, whole and once.
//!
//! `MENDLINE_POWER_CUTS` says how often.

#![allow(clippy::expect_used, clippy::panic)]

use mendline_core::journal::{Appended, Draft, Entry, Fault, Hash, Journal, Sqlite, Write};
use mendline_core::register::{Register, Row};
use mendline_faulty_disk::{Chance, Disk};

const CUTS: u64 = 160;
const REPAIR: &str = "QM-26-014";

fn cuts() -> u64 {
    std::env::var("MENDLINE_POWER_CUTS").ok().and_then(|cuts| cuts.parse().ok()).unwrap_or(CUTS)
}

/// Writes entry `number` with its request and its row, one transaction. Its size varies, so that some writes fill
/// several pages and the log is now and then taken over into the file.
fn append(kept: &mut Sqlite, number: usize, heads: Vec<Hash>) -> Result<Entry, Fault> {
    let (request, body) = (format!("r{number}"), body(number));
    let rows = vec![Row { repair: REPAIR.into(), changed_ms: number as i64, ..Row::default() }];
    let draft = Draft { repair: REPAIR.into(), device: "phone".into(), heads, branch: None, body };
    let write = Write {
        request: &request,
        request_hash: Hash::of(request.as_bytes()),
        received: vec![],
        drafts: vec![draft],
        rows,
        answer: request.clone().into_bytes(),
    };
    match kept.append(&write)? {
        Appended::Written(mut entries) => Ok(entries.remove(0)),
        Appended::Repeated(_) => panic!("request {number} was written before"),
    }
}

fn body(number: usize) -> Vec<u8> {
    vec![number as u8; [40, 400, 3_000, 40, 20_000][number % 5]]
}

/// Opens the journal and writes on from what is there, until the power goes. What was acknowledged is added.
///
/// Now and then the journal is closed and opened again: then SQLite takes the log over into the file, so that the power
/// goes in the middle of that too.
fn work_until_dark(disk: &Disk, acknowledged: &mut Vec<Entry>, chance: &mut Chance) {
    loop {
        let opened = Sqlite::open(&disk.path("journal.sqlite"));
        if disk.medium().has_power().is_err() {
            return;
        }
        let mut kept = opened.expect("with power, the journal opens");
        while !chance.happens(20) {
            let Ok(heads) = kept.heads(REPAIR) else { break };
            let Ok(entry) = append(&mut kept, acknowledged.len(), heads) else { break };
            acknowledged.push(entry);
        }
    }
}

#[test]
fn what_was_acknowledged_outlives_a_power_cut() {
    let (mut cut, mut kept_unseen, mut lit) = (0, 0, 0);
    while cut < cuts() {
        let (disk, mut acknowledged, mut chance) = (Disk::new(), Vec::new(), Chance::new(cut + 1));
        for _ in 0..20 {
            disk.medium().changes_left = Some(chance.below(250));
            work_until_dark(&disk, &mut acknowledged, &mut chance);
            disk.medium().cut_power(&mut chance);
            cut += 1;
            let kept = Sqlite::open(&disk.path("journal.sqlite")).expect("the journal opens after a cut");
            assert_eq!(kept.verify_all(), Ok(vec![]), "cut {cut}");
            let entries = kept.entries(REPAIR).expect("a whole chain");
            assert!(entries.starts_with(&acknowledged), "cut {cut}: {} of {}", entries.len(), acknowledged.len());
            assert!(entries.len() <= acknowledged.len() + 1, "cut {cut}: more than was asked");
            kept_unseen += entries.len() - acknowledged.len();
            for (number, entry) in entries.iter().enumerate() {
                assert_eq!(entry.body, body(number));
                assert!(kept.answered(&format!("r{number}")).expect("a request").is_some());
            }
            let row = kept.row(REPAIR).expect("a row").map_or(0, |row| row.changed_ms as usize);
            assert_eq!(row, entries.len().saturating_sub(1), "the register moves with the journal");
            acknowledged = entries;
        }
        lit += acknowledged.len();
    }
    println!("{cut} power cuts, {lit} entries kept, {kept_unseen} of them written but not yet acknowledged");
    assert!(lit > cut as usize / 2, "hardly an entry was written between the cuts");
}

/// A disk that says "written" too early loses what it said. That can't be prevented here; it is found: the file is
/// called damaged, a chain is named, or a head that is known from outside is missing.
#[test]
fn what_a_lying_disk_loses_is_found() {
    let (mut whole, mut named, mut missed) = (0, 0, 0);
    for seed in 0..cuts() / 4 {
        let (disk, mut acknowledged, mut chance) = (Disk::new(), Vec::new(), Chance::new(seed + 77));
        disk.medium().changes_left = Some(60 + chance.below(400));
        // The file was made on an honest day.
        drop(Sqlite::open(&disk.path("journal.sqlite")));
        disk.medium().lies = true;
        work_until_dark(&disk, &mut acknowledged, &mut chance);
        disk.medium().cut_power(&mut chance);
        disk.medium().lies = false;
        let Some(head) = acknowledged.last().map(|entry| entry.hash) else { continue };
        let found = Sqlite::open(&disk.path("journal.sqlite")).and_then(|kept| {
            let damages = kept.verify_all()?;
            Ok((damages, kept.stored(REPAIR)?))
        });
        match found {
            Err(Fault::Corrupt { .. } | Fault::NotADatabase { .. }) => named += 1,
            Err(other) => panic!("{seed}: {other}"),
            Ok((damages, _)) if !damages.is_empty() => named += 1,
            Ok((_, stored)) if stored.iter().any(|entry| entry.hash == head) => {
                assert!(stored.starts_with(&acknowledged), "{seed}: the head is there, so all before it is");
                whole += 1;
            }
            Ok((_, stored)) => {
                assert!(
                    acknowledged.starts_with(&stored),
                    "{seed}: an older state, and nothing that was never written"
                );
                missed += 1;
            }
        }
    }
    println!("a lying disk: {whole} whole, {named} called damaged, {missed} found by the head alone");
    assert!(missed + named > 0, "the disk never lost anything");
}
