//! The code on page 1, read from the drawn page by a reader of codes that did not write it (ISO/IEC 18004, by ZXing).

use super::{NAMES, content};
use mendline_core::certificate::build;
use mendline_core::certificate::content::Kind;
use mendline_tests::python;
use std::path::Path;
use std::process::Command;

const READ: &str = "import sys, zxingcpp; from PIL import Image; \
                    print('\\n'.join(code.text for code in zxingcpp.read_barcodes(Image.open(sys.argv[1]))))";

/// What the codes of page 1 say, as an office printer draws it at `dpi`; `None` where a tool is missing.
fn codes(name: &str, pdf: &[u8], dpi: &str) -> Option<String> {
    let base = Path::new(env!("CARGO_TARGET_TMPDIR")).join(format!("code-{name}"));
    std::fs::write(base.with_extension("pdf"), pdf).unwrap();
    let drawn = Command::new("pdftoppm")
        .args(["-r", dpi, "-gray", "-png", "-singlefile", "-l", "1"])
        .args([base.with_extension("pdf"), base.clone()])
        .status();
    if drawn.is_err() {
        println!("skipped: pdftoppm is not installed");
        return None;
    }
    let page = base.with_extension("png").display().to_string();
    let output = python(&["-c".to_string(), READ.to_string(), page])?;
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    Some(String::from_utf8_lossy(&output.stdout).trim().to_string())
}

#[test]
fn the_code_on_a_record_says_what_the_content_says_and_a_rehearsal_has_none() {
    for name in NAMES {
        let content = content(name);
        let wanted = content.qr.as_ref().filter(|_| content.kind != Kind::Rehearsal).map(|text| text.to_uppercase());
        for dpi in ["100", "300"] {
            let Some(found) = codes(name, &build(&content).unwrap(), dpi) else { return };
            assert_eq!(found, wanted.clone().unwrap_or_default(), "{name} at {dpi} dpi");
        }
    }
}

#[test]
fn the_code_names_the_head_that_the_page_prints() {
    let content = content("accepted");
    let Some(found) = codes("head", &build(&content).unwrap(), "150") else { return };
    assert!(found.contains(&content.head.sha256.to_uppercase()), "{found}");
}
