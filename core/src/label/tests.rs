//! Codes drawn by another encoder, plain and as a phone sees them. Origin: `fixtures/README.md`.

use super::*;

fn label(file: &str) -> Result<Label, Fault> {
    let path = format!("{}/../fixtures/labels/{file}", env!("CARGO_MANIFEST_DIR"));
    read(&std::fs::read(path).unwrap(), 2026)
}

fn whole() -> Label {
    Label { product: Some("09506000134352".into()), lot: Some("26-0811-A".into()), expires: Some("2027-02-28".into()) }
}

#[test]
fn each_kind_of_code_says_product_lot_and_last_day() {
    for file in ["data-matrix.png", "qr.png", "code-128.png"] {
        assert_eq!(label(file).unwrap(), whole(), "{file}");
    }
}

#[test]
fn a_code_is_read_askew_in_uneven_light() {
    for file in ["data-matrix-askew.jpg", "qr-askew.jpg", "code-128-askew.jpg", "code-128-upright.jpg"] {
        assert_eq!(label(file).unwrap(), whole(), "{file}");
    }
}

#[test]
fn a_day_left_open_is_the_last_of_its_month() {
    let read = label("day-left-open.png").unwrap();
    assert_eq!((read.lot.as_deref(), read.expires.as_deref()), (Some("26/0809-B"), Some("2028-02-29")));
}

#[test]
fn a_label_may_say_the_lot_alone() {
    assert_eq!(label("lot-only.png").unwrap(), Label { lot: Some("GM-5512".into()), ..Label::default() });
}

#[test]
fn what_is_wrong_is_said_with_the_way_out() {
    for (file, start) in [
        ("wrong-check-digit.png", "The product number 09506000134350 has a wrong check digit"),
        ("not-gs1.png", "The code is no GS1 code: it says “https://example.com/box”."),
        ("nothing.jpg", "No code was found in the picture."),
        ("too-blurred.jpg", "No code was found in the picture."),
        ("two-lots.png", "The picture shows two labels"),
    ] {
        let says = label(file).unwrap_err().to_string();
        assert!(says.starts_with(start), "{file}: {says}");
    }
    assert!(read(b"no picture", 2026).unwrap_err().to_string().starts_with("The picture can't be read"));
}
