//! A disk that refuses: the fault says which way, nothing of the request is written, and what was there is there when
//! the disk works again.

#![allow(clippy::expect_used, clippy::panic)]

use mendline_core::journal::{Appended, Draft, Entry, Fault, Hash, Journal, Sqlite, Write};
use mendline_faulty_disk::{Disk, Refusal};

const REPAIR: &str = "QM-26-014";

fn append(kept: &mut Sqlite, request: &str) -> Result<Entry, Fault> {
    let heads = kept.heads(REPAIR)?;
    let body = [request.as_bytes(), &[7; 6_000]].concat();
    let draft = Draft { repair: REPAIR.into(), device: "phone".into(), heads, branch: None, body };
    let write = Write {
        request,
        request_hash: Hash::of(request.as_bytes()),
        received: vec![],
        drafts: vec![draft],
        rows: vec![],
        answer: vec![],
    };
    match kept.append(&write)? {
        Appended::Written(mut entries) => Ok(entries.remove(0)),
        Appended::Repeated(_) => panic!("{request} was written before"),
    }
}

/// Returns a disk with a journal of three entries.
fn written() -> (Disk, Vec<Entry>) {
    let disk = Disk::new();
    let mut kept = Sqlite::open(&disk.path("journal.sqlite")).expect("a new journal");
    let entries = ["r1", "r2", "r3"].map(|request| append(&mut kept, request).expect("written")).to_vec();
    (disk, entries)
}

fn refuse(disk: &Disk, refusal: Refusal) {
    disk.medium().refusal = refusal;
}

/// The codes that a write may be refused with.
const REFUSED: [(Refusal, &str); 4] = [
    (Refusal::Full, "disk_full"),
    (Refusal::ReadOnly, "read_only"),
    (Refusal::Locked, "locked"),
    (Refusal::Broken, "io"),
];

#[test]
fn a_refusal_in_the_middle_of_the_work_is_named_and_writes_nothing() {
    for (refusal, code) in REFUSED {
        let (disk, entries) = written();
        let mut kept = Sqlite::open(&disk.path("journal.sqlite")).expect("it opens");
        refuse(&disk, refusal);
        let fault = append(&mut kept, "r4").expect_err("refused");
        assert_eq!(fault.code(), code, "{refusal:?}: {fault}");
        assert!(fault.to_string().contains("Nothing of this was written"), "{fault}");
        refuse(&disk, Refusal::None);
        drop(kept);
        let mut again = Sqlite::open(&disk.path("journal.sqlite")).expect("it opens again");
        assert_eq!(again.entries(REPAIR).as_deref(), Ok(&entries[..]), "{refusal:?}");
        assert_eq!(again.answered("r4"), Ok(None), "{refusal:?}");
        append(&mut again, "r4").expect("the same request goes through");
        assert_eq!(again.verify_all(), Ok(vec![]), "{refusal:?}");
    }
}

#[test]
fn a_full_disk_and_a_lock_leave_the_journal_readable() {
    for refusal in [Refusal::Full, Refusal::Locked] {
        let (disk, entries) = written();
        let mut kept = Sqlite::open(&disk.path("journal.sqlite")).expect("it opens");
        refuse(&disk, refusal);
        append(&mut kept, "r4").expect_err("refused");
        assert_eq!(kept.entries(REPAIR).as_deref(), Ok(&entries[..]), "{refusal:?}");
        refuse(&disk, Refusal::None);
    }
}

#[test]
fn a_disk_that_refuses_from_the_start_is_named_and_nothing_changes_on_it() {
    for refusal in [Refusal::NoPermission, Refusal::Broken, Refusal::Locked] {
        let (disk, entries) = written();
        let path = disk.path("journal.sqlite");
        let name = path.display().to_string();
        let before = disk.medium().bytes(&name).to_vec();
        refuse(&disk, refusal);
        let fault = Sqlite::open(&path).and_then(|kept| kept.entries(REPAIR)).expect_err("refused");
        assert!(["io", "locked", "no_permission"].contains(&fault.code()), "{refusal:?}: {fault}");
        refuse(&disk, Refusal::None);
        assert_eq!(disk.medium().bytes(&name), before, "{refusal:?}");
        assert_eq!(Sqlite::open(&path).and_then(|kept| kept.entries(REPAIR)), Ok(entries), "{refusal:?}");
    }
}
