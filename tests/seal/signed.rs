//! A signed certificate, as others' tools see it: every one of them finds both signatures sound.

use mendline_core::seal::verify::verify;
use mendline_tests::{empty_folder, python};

use super::attacks::{repaint, updated};
use super::{AT_MS, put, run, said, signed_by_both, signer, unsigned};

fn roles(pdf: &[u8]) -> Vec<String> {
    let checked = verify(pdf).unwrap();
    assert_eq!(checked.flaws, Vec::<String>::new());
    checked.signatures.iter().map(|one| one.certificate.as_ref().unwrap().holder().role).collect()
}

#[test]
fn both_signatures_hold_one_after_the_other() {
    for name in crate::certificate::NAMES {
        let one = put(&unsigned(name), "technician", "Tomas Ekdal", 1);
        assert_eq!(roles(&one), ["technician"], "{name}");
        let both = put(&one, "foreman", "Ines Varga", 2);
        assert!(both.starts_with(&one), "{name}: the second is an update behind the first");
        assert_eq!(roles(&both), ["technician", "foreman"], "{name}");
        let checked = verify(&both).unwrap();
        assert!(checked.signatures.iter().all(|one| one.intact && one.at == Some((AT_MS, 120))), "{name}");
    }
}

#[test]
fn a_field_is_signed_once_and_only_if_it_is_there() {
    let both = signed_by_both("accepted");
    let (key, certificate) = signer("Ines Varga", "foreman", 2);
    let fonts = mendline_core::certificate::fonts::Fonts::bundled().unwrap();
    let chain = [certificate];
    let with = mendline_core::seal::Signer { key: &key, chain: &chain, fonts: &fonts };
    for field in ["foreman", "owner"] {
        let block = mendline_core::seal::Block { field: field.into(), at_ms: AT_MS, ..Default::default() };
        let told = mendline_core::seal::sign(&both, &with, &block).unwrap_err().to_string();
        assert!(told.contains(field), "{told}");
    }
    assert!(mendline_core::seal::sign(b"%PDF-1.7", &with, &Default::default()).is_err());
}

#[test]
fn poppler_finds_both_signatures_valid() {
    let folder = empty_folder();
    let path = folder.path().join("signed.pdf");
    std::fs::write(&path, signed_by_both("accepted")).unwrap();
    let Some(output) = run("pdfsig", &["-nocert", path.to_str().unwrap()]) else { return };
    let text = said(&output);
    assert_eq!(text.matches("Signature Validation: Signature is Valid.").count(), 2, "{text}");
    assert!(text.contains("Total document signed"), "{text}");
    assert_eq!(text.matches("ETSI.CAdES.detached").count(), 2, "{text}");
    for name in ["Tomas Ekdal", "Ines Varga"] {
        assert!(text.contains(name), "{text}");
    }
}

#[test]
fn qpdf_and_mupdf_find_the_file_sound() {
    let folder = empty_folder();
    let path = folder.path().join("signed.pdf");
    std::fs::write(&path, signed_by_both("stress")).unwrap();
    let path = path.to_str().unwrap();
    if let Some(output) = run("qpdf", &["--check", path]) {
        assert!(output.status.success(), "{}", said(&output));
    }
    let page = folder.path().join("page.png");
    if let Some(output) = run("mutool", &["draw", "-q", "-o", page.to_str().unwrap(), path, "1"]) {
        let told = said(&output).replace("warning: ICC support is not available", "");
        assert!(output.status.success() && told.trim().is_empty(), "{told}");
    }
}

#[test]
fn openssl_finds_both_signatures_valid_as_cades() {
    let pdf = signed_by_both("accepted");
    let file = lopdf::Document::load_mem(&pdf).unwrap();
    let folder = empty_folder();
    let at = |name: &str| folder.path().join(name).to_str().unwrap().to_owned();
    let signatures =
        file.objects.values().filter_map(|object| object.as_dict().ok()).filter(|one| one.has_type(b"Sig"));
    let mut seen = 0;
    for signature in signatures {
        let range = signature.get(b"ByteRange").unwrap().as_array().unwrap();
        let range: Vec<usize> = range.iter().map(|one| one.as_i64().unwrap() as usize).collect();
        let der = signature.get(b"Contents").unwrap().as_str().unwrap();
        let length = 4 + usize::from(u16::from_be_bytes([der[2], der[3]]));
        std::fs::write(at("cms"), &der[..length]).unwrap();
        let content = [&pdf[..range[1]], &pdf[range[2]..range[2] + range[3]]].concat();
        std::fs::write(at("content"), content).unwrap();
        let trusted: String = [("Tomas Ekdal", "technician", 1), ("Ines Varga", "foreman", 2)]
            .map(|(name, role, byte)| signer(name, role, byte).1.to_pem())
            .concat();
        std::fs::write(at("pem"), trusted).unwrap();
        let (cms, content, pem, time) = (at("cms"), at("content"), at("pem"), (AT_MS / 1000).to_string());
        let arguments = [
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
        ];
        let Some(output) = run("openssl", &arguments) else { return };
        assert!(output.status.success(), "{}", said(&output));
        seen += 1;
    }
    assert_eq!(seen, 2);
}

/// pyHanko, by its default policy on what may come after a signature: nothing but filled fields.
#[test]
fn pyhanko_finds_every_signature_valid_and_only_filled_fields_after_it() {
    let folder = empty_folder();
    let at = |name: &str| folder.path().join(name).to_str().unwrap().to_owned();
    for (name, role, byte) in PEOPLE {
        std::fs::write(at(role), signer(name, role, byte).1.to_pem()).unwrap();
    }
    for name in crate::certificate::NAMES {
        let [_, one, both] = in_turn(name);
        for (count, pdf) in [("1", one), ("2", both)] {
            std::fs::write(at("signed.pdf"), pdf).unwrap();
            let arguments =
                [own("seal/pyhanko_check.py"), at("signed.pdf"), count.into(), at("technician"), at("foreman")];
            let Some(output) = python(&arguments) else { return };
            assert!(output.status.success(), "{name} by {count}: {}", said(&output));
        }
    }
}

/// The check above can fail: a page that is painted over between the signatures is more than a filled field.
#[test]
fn pyhanko_finds_a_page_painted_over_between_the_signatures() {
    let folder = empty_folder();
    let at = |name: &str| folder.path().join(name).to_str().unwrap().to_owned();
    let [_, one, _] = in_turn("rejected");
    let [_, (name, role, byte)] = PEOPLE;
    std::fs::write(at("painted.pdf"), put(&updated(&one, repaint), role, name, byte)).unwrap();
    for (name, role, byte) in PEOPLE {
        std::fs::write(at(role), signer(name, role, byte).1.to_pem()).unwrap();
    }
    let arguments = [own("seal/pyhanko_check.py"), at("painted.pdf"), "2".into(), at("technician"), at("foreman")];
    let Some(output) = python(&arguments) else { return };
    let said = said(&output);
    assert!(!output.status.success() && said.contains("technician INTACT:TRUSTED,EXTENDED_WITH_OTHER"), "{said}");
}

/// ISO 19005-3, ISO 14289-1: the clauses that `tests/certificate/archive/` names, by pikepdf and fontTools.
#[test]
fn no_clause_of_pdf_a_or_pdf_ua_is_broken_before_or_after_either_signature() {
    let folder = empty_folder();
    for name in ["accepted", "rejected", "rehearsal"] {
        let mut arguments = vec![own("certificate/archive/__main__.py")];
        for (count, pdf) in in_turn(name).iter().enumerate() {
            let path = folder.path().join(format!("{name}-{count}.pdf"));
            std::fs::write(&path, pdf).unwrap();
            arguments.push(path.display().to_string());
        }
        let Some(output) = python(&arguments) else { return };
        assert!(output.status.success(), "{}", said(&output));
        assert_eq!(said(&output).matches("no clause is broken").count(), 3, "{}", said(&output));
    }
}

const PEOPLE: [(&str, &str, u8); 2] = [("Tomas Ekdal", "technician", 1), ("Ines Varga", "foreman", 2)];

/// Returns a certificate unsigned, signed by one, and signed by both.
fn in_turn(name: &str) -> [Vec<u8>; 3] {
    let none = unsigned(name);
    let [one, two] = PEOPLE;
    let first = put(&none, one.1, one.0, one.2);
    let both = put(&first, two.1, two.0, two.2);
    [none, first, both]
}

/// The path of a script of the tests.
fn own(name: &str) -> String {
    std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join(name).display().to_string()
}
