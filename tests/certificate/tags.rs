//! The structure of the file: all that is drawn is named in the tree or marked as decoration (ISO 14289-1, 7.1).

use super::{NAMES, content};
use lopdf::content::Content as Operations;
use lopdf::{Dictionary, Document, Object, ObjectId};
use mendline_core::certificate::build;
use std::collections::{BTreeMap, BTreeSet};

fn file(name: &str) -> Document {
    Document::load_mem(&build(&content(name)).unwrap()).unwrap()
}

fn dictionary<'a>(file: &'a Document, object: &'a Object) -> &'a Dictionary {
    file.dereference(object).unwrap().1.as_dict().unwrap()
}

/// The numbers of the marked sequences of a page; fails where something is drawn outside any.
fn sequences(file: &Document, page: ObjectId, name: &str) -> Vec<i64> {
    let operations = Operations::decode(&file.get_page_content(page)).unwrap().operations;
    let (mut open, mut numbers) = (0, Vec::new());
    for operation in operations {
        match operation.operator.as_str() {
            "BMC" => open += 1,
            "BDC" => {
                open += 1;
                let properties = operation.operands[1].as_dict().unwrap();
                numbers.push(properties.get(b"MCID").unwrap().as_i64().unwrap());
            }
            "EMC" => open -= 1,
            "Tj" | "TJ" | "S" | "s" | "f" | "f*" | "B" | "b" | "Do" => {
                assert_eq!(open, 1, "{name}: {} outside a marked sequence", operation.operator);
            }
            _ => {}
        }
    }
    assert_eq!(open, 0, "{name}: a marked sequence stays open");
    numbers
}

/// Follows the tree from `element` and notes every marked sequence: page and number.
fn walk(file: &Document, element: &Object, parent: ObjectId, found: &mut Vec<(ObjectId, i64)>) {
    let own = element.as_reference().unwrap();
    let element = dictionary(file, element);
    assert_eq!(element.get(b"P").unwrap().as_reference().unwrap(), parent);
    if element.get(b"S").unwrap().as_name().unwrap() == b"Figure" {
        assert!(element.get(b"Alt").is_ok());
    }
    let Ok(kids) = element.get(b"K") else { return };
    for kid in kids.as_array().map_or_else(|_| std::slice::from_ref(kids), Vec::as_slice) {
        match kid {
            Object::Integer(number) => found.push((element.get(b"Pg").unwrap().as_reference().unwrap(), *number)),
            Object::Dictionary(reference) if reference.has_type(b"OBJR") => {}
            Object::Dictionary(reference) => found.push((
                reference.get(b"Pg").unwrap().as_reference().unwrap(),
                reference.get(b"MCID").unwrap().as_i64().unwrap(),
            )),
            kid => walk(file, kid, own, found),
        }
    }
}

#[test]
fn all_that_is_drawn_is_in_the_tree_once_or_decoration() {
    for name in NAMES {
        let file = file(name);
        let root = file.catalog().unwrap().get(b"StructTreeRoot").unwrap();
        let root_id = root.as_reference().unwrap();
        let root = dictionary(&file, root);
        let mut found = Vec::new();
        walk(&file, &root.get(b"K").unwrap().as_array().unwrap()[0], root_id, &mut found);
        let drawn: BTreeSet<(ObjectId, i64)> = file
            .get_pages()
            .into_values()
            .flat_map(|page| sequences(&file, page, name).into_iter().map(move |number| (page, number)))
            .collect();
        assert_eq!(found.len(), drawn.len(), "{name}");
        assert_eq!(found.into_iter().collect::<BTreeSet<_>>(), drawn, "{name}");
    }
}

#[test]
fn the_parent_tree_leads_back_to_the_element() {
    let file = file("accepted");
    let root = dictionary(&file, file.catalog().unwrap().get(b"StructTreeRoot").unwrap());
    let numbers = dictionary(&file, root.get(b"ParentTree").unwrap()).get(b"Nums").unwrap().as_array().unwrap();
    let parents: BTreeMap<i64, &Vec<Object>> =
        // An array belongs to a page, a single element to a field.
        numbers.chunks(2).filter_map(|pair| Some((pair[0].as_i64().unwrap(), pair[1].as_array().ok()?))).collect();
    for page in file.get_pages().into_values() {
        let key = file.get_dictionary(page).unwrap().get(b"StructParents").unwrap().as_i64().unwrap();
        let owners = parents[&key];
        for number in sequences(&file, page, "accepted") {
            let owner = dictionary(&file, &owners[number as usize]);
            let held = owner.get(b"K").unwrap().as_array().unwrap().iter().any(|kid| match kid {
                Object::Integer(held) => *held == number,
                Object::Dictionary(reference) => reference.get(b"MCID").unwrap().as_i64().unwrap() == number,
                _ => false,
            });
            assert!(held, "sequence {number} of {page:?}");
        }
    }
}

#[test]
fn every_row_of_a_table_has_as_many_cells_as_its_head() {
    for name in NAMES {
        let file = file(name);
        for object in file.objects.values() {
            let Ok(table) = object.as_dict() else { continue };
            if table.get(b"S").and_then(Object::as_name).ok() != Some(b"Table") {
                continue;
            }
            let cells = |row: &Object| dictionary(&file, row).get(b"K").unwrap().as_array().unwrap().len();
            let rows = table.get(b"K").unwrap().as_array().unwrap();
            // The readings stand in three blocks side by side, under one head in the tree.
            assert!(rows.len() > 1 && rows.iter().all(|row| cells(row) == cells(&rows[0])), "{name}");
        }
    }
}
