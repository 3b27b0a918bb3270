//! The empty signature fields: what an update needs so that it touches no page (ISO 32000-1, 12.7; ISO 14289-1, 7.18.4).

use super::{NAMES, content};
use lopdf::{Dictionary, Document, Object, ObjectId};
use mendline_core::certificate::content::Seal;
use mendline_core::certificate::{SIGNATURE_FIELDS, build};

fn file(name: &str) -> Document {
    Document::load_mem(&build(&content(name)).unwrap()).unwrap()
}

fn dictionary<'a>(file: &'a Document, object: &'a Object) -> &'a Dictionary {
    file.dereference(object).unwrap().1.as_dict().unwrap()
}

fn fields(file: &Document) -> Vec<ObjectId> {
    let form = dictionary(file, file.catalog().unwrap().get(b"AcroForm").unwrap());
    form.get(b"Fields").unwrap().as_array().unwrap().iter().map(|field| field.as_reference().unwrap()).collect()
}

fn words(object: &Object) -> String {
    lopdf::decode_text_string(object).unwrap()
}

#[test]
fn page_one_offers_an_empty_field_to_each_of_the_two_who_sign() {
    for name in NAMES {
        let file = file(name);
        let form = dictionary(&file, file.catalog().unwrap().get(b"AcroForm").unwrap());
        assert_eq!(form.get(b"SigFlags").unwrap().as_i64().unwrap(), 3, "{name}");
        let first = *file.get_pages().values().next().unwrap();
        let shown = file.get_dictionary(first).unwrap().get(b"Annots").unwrap().as_array().unwrap();
        for (id, field) in fields(&file).into_iter().zip(SIGNATURE_FIELDS) {
            let widget = file.get_dictionary(id).unwrap();
            assert_eq!(words(widget.get(b"T").unwrap()), field, "{name}");
            assert!(words(widget.get(b"TU").unwrap()).contains(field), "{name}: a name for the screen reader");
            assert_eq!(widget.get(b"FT").unwrap().as_name().unwrap(), b"Sig");
            assert!(widget.get(b"V").is_err(), "{name}: nobody has signed");
            // ISO 19005-3, 6.3.2: Print set; Hidden, Invisible, NoView and ToggleNoView clear.
            assert_eq!(widget.get(b"F").unwrap().as_i64().unwrap() & 0b1_0010_0111, 0b100, "{name}");
            assert_eq!(widget.get(b"P").unwrap().as_reference().unwrap(), first);
            assert!(shown.contains(&Object::Reference(id)), "{name}: {field} is not on page 1");
        }
        assert_eq!(fields(&file).len(), 2, "{name}");
    }
}

#[test]
fn every_field_has_its_own_empty_appearance_as_large_as_itself() {
    let file = file("accepted");
    let mut seen = Vec::new();
    for id in fields(&file) {
        let widget = file.get_dictionary(id).unwrap();
        let numbers = |object: &Object| -> Vec<f32> {
            object.as_array().unwrap().iter().map(|number| number.as_float().unwrap()).collect()
        };
        let rect = numbers(widget.get(b"Rect").unwrap());
        let normal = dictionary(&file, widget.get(b"AP").unwrap()).get(b"N").unwrap().as_reference().unwrap();
        let stream = file.get_object(normal).unwrap().as_stream().unwrap();
        let frame = numbers(stream.dict.get(b"BBox").unwrap());
        assert!(stream.content.is_empty() && !seen.contains(&normal));
        assert!((frame[2] - (rect[2] - rect[0])).abs() < 0.01 && (frame[3] - (rect[3] - rect[1])).abs() < 0.01);
        assert!(rect[2] - rect[0] > 200.0 && rect[3] - rect[1] > 20.0, "no room for a signature: {rect:?}");
        seen.push(normal);
    }
}

#[test]
fn the_structure_holds_every_field_and_leads_back_to_it() {
    for name in NAMES {
        let file = file(name);
        let root = dictionary(&file, file.catalog().unwrap().get(b"StructTreeRoot").unwrap());
        let numbers = dictionary(&file, root.get(b"ParentTree").unwrap()).get(b"Nums").unwrap().as_array().unwrap();
        for id in fields(&file) {
            let key = file.get_dictionary(id).unwrap().get(b"StructParent").unwrap();
            let pair = numbers.chunks(2).find(|pair| pair[0] == *key).unwrap();
            let element = dictionary(&file, &pair[1]);
            assert_eq!(element.get(b"S").unwrap().as_name().unwrap(), b"Form", "{name}");
            // The one child, bare: an array of it would be one more object that an update of the field touches.
            let held = dictionary(&file, element.get(b"K").unwrap());
            assert_eq!(held.get(b"Type").unwrap().as_name().unwrap(), b"OBJR");
            assert_eq!(held.get(b"Obj").unwrap().as_reference().unwrap(), id, "{name}");
        }
    }
}

#[test]
fn a_line_appears_with_the_signature_of_a_key_and_not_before() {
    let drawn = |seal: Seal| {
        let mut content = content("accepted");
        content.seal = seal;
        let file = Document::load_mem(&build(&content).unwrap()).unwrap();
        let alternatives = file.objects.values().filter_map(|object| object.as_dict().ok()?.get(b"Alt").ok());
        alternatives.filter(|alt| words(alt).starts_with("Line drawn by")).count()
    };
    assert_eq!(drawn(Seal::None), 2);
    assert_eq!(drawn(Seal::Key { at_ms: 0, fingerprint: "de78958901 32dd92".into() }), 0);
}
