//! Keys and signatures, judged by other people's tools: OpenSSL, Poppler, pyHanko, qpdf.
//!
//! A check by a tool that is not installed is skipped, and says so.

mod keys;

use std::process::{Command, Output};

use mendline_core::seal::x509::Holder;
use mendline_core::seal::{Certificate, PrivateKey, Seed};

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
