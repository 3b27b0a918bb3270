//! Keys and signatures, judged by other people's tools: OpenSSL, Poppler, pyHanko, qpdf.
//!
//! A check by a tool that is not installed is skipped, and says so.

mod attacks;
mod in_earnest;
mod keys;
mod numbers;
mod people;
mod signed;
mod updates;

use std::process::{Command, Output};
use std::sync::OnceLock;

use mendline_core::certificate::{self, fonts::Fonts};
use mendline_core::seal::x509::Holder;
use mendline_core::seal::{Block, Certificate, PrivateKey, Seed, Signer, sign};

/// 2026-10-14 15:02:39 in Quillmere, in UTC milliseconds.
pub const AT_MS: i64 = 1_791_982_959_000;

/// Returns what a tool says, or `None` if it is not installed.
pub fn run(tool: &str, arguments: &[&str]) -> Option<Output> {
    match Command::new(tool).args(arguments).output() {
        Ok(output) => Some(output),
        Err(error) if error.kind() == std::io::ErrorKind::NotFound => {
            println!("skipped: {tool} is not installed");
            None
        }
        Err(error) => panic!("{tool}: {error}"),
    }
}

pub fn said(output: &Output) -> String {
    format!("{}{}", String::from_utf8_lossy(&output.stdout), String::from_utf8_lossy(&output.stderr))
}

/// Returns the key and certificate of one of the invented people.
pub fn signer(name: &str, role: &str, byte: u8) -> (PrivateKey, Certificate) {
    let seed = Seed::new([byte; 32]).unwrap();
    let key = PrivateKey::fresh(&seed);
    let holder = Holder { name: name.into(), organisation: "Wendholt Pipe Repair".into(), role: role.into() };
    let certificate = Certificate::self_signed(&key, &holder, AT_MS, &seed).unwrap();
    (key, certificate)
}

/// Returns an invented certificate of the fixtures as a PDF with two empty fields.
pub fn unsigned(name: &str) -> Vec<u8> {
    certificate::build(&crate::certificate::content(name)).unwrap()
}

/// Returns it with the signatures of technician and foreman, in one of many offsets from UTC.
pub fn signed_by_both(name: &str) -> Vec<u8> {
    let one = put(&unsigned(name), "technician", "Tomas Ekdal", 1);
    put(&one, "foreman", "Ines Varga", 2)
}

/// Returns the PDF with one more signature.
pub fn put(pdf: &[u8], role: &str, name: &str, byte: u8) -> Vec<u8> {
    static FONTS: OnceLock<Fonts> = OnceLock::new();
    let fonts = FONTS.get_or_init(|| Fonts::bundled().unwrap());
    let (key, certificate) = signer(name, role, byte);
    let block = Block {
        field: role.into(),
        name: name.into(),
        statement: "I did this repair and recorded it as it happened.".into(),
        at_ms: AT_MS,
        offset_min: 120,
        strokes: vec![vec![(0, 0), (40, 30), (90, 10), (130, 60)]],
        lines: vec![format!("{name}, {role}"), "2026-10-14 15:02:39 +02:00".into(), "key 2522 7773 de78 9589".into()],
    };
    sign(pdf, &Signer { key: &key, chain: &[certificate], fonts }, &block).unwrap()
}
