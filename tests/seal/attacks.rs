//! What somebody might do to a signed certificate: every change is found, and named.
//!
//! The later updates are the published attacks on signed PDF: incremental saving, wrapping of the signature, and shadow
//! documents (hide, replace, hide and replace). Source: the papers "1 Trillion Dollar Refund" (CCS 2019) and "Shadow
//! Attacks" (NDSS 2021), by their names for the attacks.

use lopdf::{Document, IncrementalDocument, Object, Stream, dictionary};
use mendline_core::seal::verify::{Checked, verify};

use super::{put, signed_by_both, unsigned};

fn flaws(pdf: &[u8]) -> Vec<String> {
    match verify(pdf) {
        Ok(Checked { flaws, .. }) => flaws,
        Err(says) => vec![says],
    }
}

/// Returns the PDF with an update behind it.
pub fn updated(pdf: &[u8], change: impl FnOnce(&mut IncrementalDocument)) -> Vec<u8> {
    let before = Document::load_mem(pdf).unwrap();
    let mut update = IncrementalDocument::create_from(pdf.to_vec(), before);
    update.new_document.version = "1.7".into();
    change(&mut update);
    let mut bytes = vec![];
    update.save_to(&mut bytes).unwrap();
    bytes
}

/// Paints over page 1.
pub fn repaint(update: &mut IncrementalDocument) {
    let page = *update.get_prev_documents().get_pages().values().next().unwrap();
    let paint = update.new_document.add_object(Stream::new(dictionary! {}, b"1 g 0 0 600 800 re f".to_vec()));
    update.opt_clone_object_to_new_document(page).unwrap();
    let page = update.new_document.get_object_mut(page).unwrap().as_dict_mut().unwrap();
    let mut contents = match page.get(b"Contents").unwrap() {
        Object::Array(all) => all.clone(),
        one => vec![one.clone()],
    };
    contents.push(paint.into());
    page.set("Contents", contents);
}

#[test]
fn any_changed_byte_is_found() {
    let pdf = signed_by_both("unrepaired");
    assert_eq!(flaws(&pdf), Vec::<String>::new());
    // A prime step, so that no part of the file is always missed.
    let step = (pdf.len() / 48) | 1;
    for (at, flip) in (0..pdf.len()).step_by(step).zip([0x01, 0x20, 0x80].into_iter().cycle()) {
        let mut changed = pdf.clone();
        changed[at] ^= flip;
        assert!(!flaws(&changed).is_empty(), "byte {at} changed by {flip:#x}");
    }
}

#[test]
fn any_changed_byte_of_the_last_signature_and_its_room_is_found() {
    let pdf = signed_by_both("unrepaired");
    let tail = pdf.len() - 18_000;
    for at in (tail..pdf.len()).step_by(509) {
        let mut changed = pdf.clone();
        changed[at] ^= 0x20;
        assert!(!flaws(&changed).is_empty(), "byte {at}");
    }
}

#[test]
fn a_page_painted_over_after_signing_is_found() {
    let told = flaws(&updated(&signed_by_both("accepted"), repaint));
    assert!(told.iter().any(|flaw| flaw.contains("bytes were added after the last signature")), "{told:?}");
}

#[test]
fn a_page_painted_over_between_the_signatures_is_found() {
    let one = put(&unsigned("accepted"), "technician", "Tomas Ekdal", 1);
    let both = put(&updated(&one, repaint), "foreman", "Ines Varga", 2);
    let told = flaws(&both);
    assert!(told.iter().any(|flaw| flaw.contains("An update changed a page")), "{told:?}");
    assert!(told.iter().any(|flaw| flaw.contains("that no signature shows")), "{told:?}");
}

#[test]
fn another_record_inside_is_found() {
    let one = put(&unsigned("accepted"), "technician", "Tomas Ekdal", 1);
    let swap = |update: &mut IncrementalDocument| {
        let catalog = update.get_prev_documents().trailer.get(b"Root").unwrap().as_reference().unwrap();
        let file = Stream::new(dictionary! { "Type" => "EmbeddedFile" }, b"{}".to_vec());
        let file = update.new_document.add_object(file);
        let named = dictionary! { "Type" => "Filespec", "UF" => Object::string_literal("record.json"), "EF" => dictionary! { "F" => file } };
        let named = update.new_document.add_object(named);
        update.opt_clone_object_to_new_document(catalog).unwrap();
        let catalog = update.new_document.get_object_mut(catalog).unwrap().as_dict_mut().unwrap();
        catalog.set("AF", vec![Object::Reference(named)]);
    };
    let told = flaws(&put(&updated(&one, swap), "foreman", "Ines Varga", 2));
    assert!(told.iter().any(|flaw| flaw.contains("An update changed the catalog")), "{told:?}");
}

/// Hide: what was covered in front of the signer is uncovered by a later update. Replace: a font or a field changes.
#[test]
fn shadow_documents_are_found() {
    let one = put(&unsigned("accepted"), "technician", "Tomas Ekdal", 1);
    let font = |update: &mut IncrementalDocument| {
        let objects = &update.get_prev_documents().objects;
        let is_font = |object: &Object| object.as_dict().is_ok_and(|one| one.has_type(b"Font"));
        let id = *objects.iter().find(|(_, object)| is_font(object)).unwrap().0;
        update.opt_clone_object_to_new_document(id).unwrap();
        update.new_document.get_object_mut(id).unwrap().as_dict_mut().unwrap().set("BaseFont", "Another");
    };
    let moved = |update: &mut IncrementalDocument| {
        let objects = &update.get_prev_documents().objects;
        let is_field = |object: &Object| object.as_dict().is_ok_and(|one| one.has(b"FT") && !one.has(b"V"));
        let id = *objects.iter().find(|(_, object)| is_field(object)).unwrap().0;
        update.opt_clone_object_to_new_document(id).unwrap();
        let field = update.new_document.get_object_mut(id).unwrap().as_dict_mut().unwrap();
        field.set("Rect", vec![0.into(), 0.into(), 600.into(), 800.into()]);
    };
    let note = |update: &mut IncrementalDocument| {
        let page = *update.get_prev_documents().get_pages().values().next().unwrap();
        let note = update.new_document.add_object(dictionary! {
            "Type" => "Annot", "Subtype" => "FreeText", "Rect" => vec![0.into(), 0.into(), 600.into(), 800.into()],
        });
        update.opt_clone_object_to_new_document(page).unwrap();
        update
            .new_document
            .get_object_mut(page)
            .unwrap()
            .as_dict_mut()
            .unwrap()
            .set("Annots", vec![Object::Reference(note)]);
    };
    let told = [
        flaws(&put(&updated(&one, font), "foreman", "Ines Varga", 2)),
        flaws(&put(&updated(&one, moved), "foreman", "Ines Varga", 2)),
        flaws(&put(&updated(&one, note), "foreman", "Ines Varga", 2)),
        flaws(&updated(&one, font)),
    ];
    let says = |told: &[String], wanted: &str| told.iter().any(|flaw| flaw.contains(wanted));
    assert!(says(&told[0], "changed a font"), "{told:?}");
    assert!(says(&told[1], "changed a field"), "{told:?}");
    assert!(says(&told[2], "changed a page"), "{told:?}");
    assert!(says(&told[3], "after the last signature"), "{told:?}");
}

/// Signature wrapping: the covered bytes are said to be others than those around the signature.
#[test]
fn a_signature_that_covers_something_else_is_found() {
    let one = put(&unsigned("accepted"), "technician", "Tomas Ekdal", 1);
    let at = one.windows(13).rposition(|part| part == b"/ByteRange[0 ").unwrap() + 13;
    for (from, to) in [(0, b'9'), (1, b'0')] {
        let mut changed = one.clone();
        changed[at + from] = to;
        assert!(!flaws(&changed).is_empty());
    }
    let cut = &one[..one.len() - 1];
    assert!(!flaws(cut).is_empty());
    let longer = [&one[..], b"\n"].concat();
    assert!(flaws(&longer).iter().any(|flaw| flaw.starts_with("1 bytes were added")), "{:?}", flaws(&longer));
}

#[test]
fn what_acts_by_itself_is_found() {
    let acting = updated(&unsigned("accepted"), |update| {
        let catalog = update.get_prev_documents().trailer.get(b"Root").unwrap().as_reference().unwrap();
        update.opt_clone_object_to_new_document(catalog).unwrap();
        let catalog = update.new_document.get_object_mut(catalog).unwrap().as_dict_mut().unwrap();
        catalog.set("OpenAction", dictionary! { "S" => "JavaScript", "JS" => Object::string_literal("app.alert(1)") });
    });
    let told = flaws(&put(&acting, "technician", "Tomas Ekdal", 1));
    assert!(told.iter().any(|flaw| flaw.contains("acts by itself")), "{told:?}");
    assert!(told.iter().any(|flaw| flaw.contains("several updates")), "{told:?}");
}

/// Marsaglia's xorshift64 with its usual shifts: the same places in every run.
fn dice() -> impl FnMut(usize) -> usize {
    let mut state = 0x2545_f491_4f6c_dd1d_u64;
    move |below| {
        state ^= state << 13;
        state ^= state >> 7;
        state ^= state << 17;
        (state % below as u64) as usize
    }
}

#[test]
fn any_byte_that_is_set_to_another_is_found_wherever_it_is() {
    let pdf = signed_by_both("rejected");
    let mut random = dice();
    for _ in 0..60 {
        let (at, more) = (random(pdf.len()), 1 + random(255) as u8);
        let mut changed = pdf.clone();
        changed[at] = changed[at].wrapping_add(more);
        assert!(!flaws(&changed).is_empty(), "byte {at} plus {more}");
    }
}

#[test]
fn no_garbage_makes_it_panic() {
    let pdf = signed_by_both("unrepaired");
    let mut random = dice();
    for _ in 0..60 {
        let mut garbage = pdf.clone();
        for _ in 0..1 + random(40) {
            let at = random(garbage.len());
            garbage[at] = random(256) as u8;
        }
        garbage.truncate(1 + random(pdf.len()));
        let _ = verify(&garbage);
    }
    for text in [&b""[..], b"%PDF-", b"%PDF-1.7\nstartxref\n0\n%%EOF", b"{}"] {
        assert!(verify(text).is_err());
    }
}
