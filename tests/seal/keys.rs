//! Keys, certificates, key files and bare signatures, as OpenSSL sees and makes them.

use mendline_core::seal::{Certificate, PrivateKey, SealError, Secret, Seed, cms, p12};
use mendline_tests::empty_folder;
use sha2::{Digest, Sha256};

use super::{AT_MS, run, said, signer};

const PIN: &str = "271828";

#[test]
fn openssl_opens_a_locked_key_with_the_pin_and_with_no_other() {
    let folder = empty_folder();
    let path = folder.path().join("key.pem");
    let (key, certificate) = signer("Tomas Ekdal", "technician", 1);
    std::fs::write(&path, key.lock(&Secret::new(PIN), &Seed::new([9; 32]).unwrap()).unwrap()).unwrap();
    let path = path.to_str().unwrap();
    let ask = |pin: &str| run("openssl", &["pkey", "-in", path, "-passin", &format!("pass:{pin}"), "-text", "-noout"]);
    let Some(opened) = ask(PIN) else { return };
    assert!(opened.status.success() && said(&opened).contains("prime256v1"), "{}", said(&opened));
    let point = certificate.public_key().unwrap().to_sec1_point(false);
    let first: Vec<String> = point.as_bytes()[..8].iter().map(|byte| format!("{byte:02x}")).collect();
    assert!(said(&opened).contains(&first.join(":")), "another public key");
    assert!(!ask("271829").unwrap().status.success());
}

#[test]
fn openssl_reads_the_certificate_and_finds_it_sound() {
    let folder = empty_folder();
    let path = folder.path().join("certificate.pem");
    let (_, certificate) = signer("Tomas Ekdal", "technician", 1);
    std::fs::write(&path, certificate.to_pem()).unwrap();
    let path = path.to_str().unwrap();
    let arguments = ["x509", "-in", path, "-noout", "-text", "-fingerprint", "-sha256", "-nameopt", "RFC2253,utf8"];
    let Some(output) = run("openssl", &arguments) else { return };
    let text = said(&output);
    for part in [
        "Subject: CN=Tomas Ekdal,title=technician,O=Wendholt Pipe Repair",
        "Signature Algorithm: ecdsa-with-SHA256",
        "ASN1 OID: prime256v1",
        "CA:FALSE",
        "Digital Signature, Non Repudiation",
        "X509v3 Subject Key Identifier",
        "Not Before: Oct 14 12:52:39 2026 GMT",
    ] {
        assert!(text.contains(part), "{part} is missing in:\n{text}");
    }
    let print = text.lines().find_map(|line| line.to_lowercase().split_once("fingerprint=").map(|at| at.1.to_owned()));
    assert_eq!(print.unwrap().replace(':', ""), certificate.fingerprint());
    let checked = run("openssl", &["verify", "-CAfile", path, "-attime", &(AT_MS / 1000).to_string(), path]).unwrap();
    assert!(checked.status.success(), "{}", said(&checked));
}

#[test]
fn openssl_accepts_a_signature_as_cades_and_refuses_it_for_other_content() {
    let folder = empty_folder();
    let at = |name: &str| folder.path().join(name).to_str().unwrap().to_owned();
    let (key, certificate) = signer("Ines Varga", "foreman", 2);
    let content = b"The record of one repair in Quillmere.";
    let der = cms::sign(&Sha256::digest(content).into(), &key, std::slice::from_ref(&certificate)).unwrap();
    std::fs::write(at("cms"), der).unwrap();
    std::fs::write(at("content"), content).unwrap();
    std::fs::write(at("other"), b"The record of another repair.").unwrap();
    std::fs::write(at("pem"), certificate.to_pem()).unwrap();
    let ask = |content: &str| {
        let (cms, content, pem, time) = (at("cms"), at(content), at("pem"), (AT_MS / 1000).to_string());
        run(
            "openssl",
            &[
                "cms",
                "-verify",
                "-cades",
                "-inform",
                "DER",
                "-in",
                &cms,
                "-content",
                &content,
                "-binary",
                "-CAfile",
                &pem,
                "-purpose",
                "any",
                "-attime",
                &time,
                "-out",
                "/dev/null",
            ],
        )
    };
    let Some(output) = ask("content") else { return };
    assert!(output.status.success(), "{}", said(&output));
    assert!(!ask("other").unwrap().status.success());
}

/// Makes a company's key with OpenSSL and returns the file that `arguments` export it to.
fn exported(curve: &str, arguments: &[&str]) -> Option<Vec<u8>> {
    let folder = empty_folder();
    let at = |name: &str| folder.path().join(name).to_str().unwrap().to_owned();
    let (key, pem, file) = (at("key"), at("pem"), at("file.p12"));
    let curve = format!("ec_paramgen_curve:{curve}");
    let make = [
        "req",
        "-x509",
        "-newkey",
        "ec",
        "-pkeyopt",
        &curve,
        "-nodes",
        "-keyout",
        &key,
        "-out",
        &pem,
        "-subj",
        "/O=Wendholt Pipe Repair/CN=Ines Varga",
        "-days",
        "3650",
    ];
    let made = run("openssl", &make)?;
    assert!(made.status.success(), "{}", said(&made));
    let start = ["pkcs12", "-export", "-inkey", &key, "-in", &pem, "-out", &file, "-passout", "pass:company secret"];
    let output = run("openssl", &[&start, arguments].concat())?;
    assert!(output.status.success(), "{}", said(&output));
    Some(std::fs::read(file).unwrap())
}

#[test]
fn a_key_file_of_a_company_is_read() {
    let Some(file) = exported("P-256", &[]) else { return };
    let (key, chain) = p12::open(&file, &Secret::new("company secret")).unwrap();
    assert_eq!(chain[0].holder().name, "Ines Varga");
    assert_eq!(chain[0].public_key().unwrap(), key.public());
    assert!(cms::sign(&[1; 32], &key, &chain).is_ok());
    assert_eq!(p12::open(&file, &Secret::new("company Secret")).err(), Some(SealError::WrongSecret));
}

#[test]
fn a_key_file_that_is_not_read_says_why_and_what_to_do() {
    for (curve, arguments, says) in [
        ("P-256", &["-legacy"][..], "Write it anew"),
        ("P-256", &["-macalg", "sha1"], "check sum"),
        ("P-256", &["-iter", "6000000", "-maciter"], "rounds"),
        ("P-384", &[], "P-256"),
    ] {
        let Some(file) = exported(curve, arguments) else { return };
        let told = p12::open(&file, &Secret::new("company secret")).err().unwrap().to_string();
        assert!(told.contains(says), "{arguments:?}: {told}");
    }
}

#[test]
fn a_cut_or_changed_key_file_is_refused() {
    let Some(file) = exported("P-256", &["-iter", "1"]) else { return };
    let password = Secret::new("company secret");
    for length in (0..file.len()).step_by(7) {
        assert!(p12::open(&file[..length], &password).is_err());
    }
    for at in (0..file.len()).step_by(11) {
        let mut changed = file.clone();
        changed[at] ^= 0x40;
        let same = |chain: &[Certificate]| chain[0].holder().name == "Ines Varga";
        assert!(!p12::open(&changed, &password).is_ok_and(|(_, chain)| same(&chain)), "byte {at}");
    }
}

#[test]
fn an_empty_password_opens_a_file_that_has_one() {
    let Some(file) = exported("P-256", &["-passout", "pass:"]) else { return };
    let opened = p12::open(&file, &Secret::new(""));
    assert!(opened.is_ok(), "{:?}", opened.err());
    let _: (PrivateKey, Vec<Certificate>) = opened.unwrap();
}
