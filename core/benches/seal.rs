//! Signatures a second on one core: signing a certificate, and verifying it with both signatures.

#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::disallowed_methods)]

use divan::Bencher;
use mendline_core::certificate::{self, Content, fonts::Fonts};
use mendline_core::seal::verify::verify;
use mendline_core::seal::x509::Holder;
use mendline_core::seal::{Block, Certificate, PrivateKey, Seed, Signer, sign};

const AT_MS: i64 = 1_791_982_959_000;

fn main() {
    divan::main();
}

/// A record of the fixtures without photos, as a PDF.
fn unsigned() -> Vec<u8> {
    let content: Content = serde_json::from_str(include_str!("../../fixtures/certificates/unrepaired.json")).unwrap();
    certificate::build(&content).unwrap()
}

fn put(pdf: &[u8], role: &str, byte: u8, fonts: &Fonts) -> Vec<u8> {
    let seed = Seed::new([byte; 32]).unwrap();
    let key = PrivateKey::fresh(&seed);
    let holder = Holder { name: "Ines Varga".into(), organisation: "Wendholt Pipe Repair".into(), role: role.into() };
    let chain = [Certificate::self_signed(&key, &holder, AT_MS, &seed).unwrap()];
    let block = Block {
        field: role.into(),
        name: holder.name,
        at_ms: AT_MS,
        lines: vec!["2026-10-14 15:02:39 +02:00".into()],
        ..Block::default()
    };
    sign(pdf, &Signer { key: &key, chain: &chain, fonts }, &block).unwrap()
}

#[divan::bench]
fn sign_a_record(bencher: Bencher) {
    let (pdf, fonts) = (unsigned(), Fonts::bundled().unwrap());
    bencher.bench(|| put(&pdf, "technician", 1, &fonts));
}

#[divan::bench]
fn verify_two_signatures(bencher: Bencher) {
    let fonts = Fonts::bundled().unwrap();
    let pdf = put(&put(&unsigned(), "technician", 1, &fonts), "foreman", 2, &fonts);
    bencher.bench(|| verify(&pdf).unwrap().flaws);
}
