//! The structure tree: what each marked sequence is, in reading order (ISO 32000-1, 14.7 and 14.8).

use super::archive::{catalog, text_string};
use super::form::Widget;
use super::ink::{Marked, role_name};
use crate::certificate::display::{Document, Element, Role};
use lopdf::{Dictionary, Object, ObjectId, dictionary};

/// What is known of the marks on the pages.
pub struct Marks {
    /// For each page, the elements of its marked sequences.
    pub tagged: Vec<Marked>,
    /// For each element, how far it reaches if it is a figure.
    pub extents: Vec<Option<[i64; 4]>>,
}

/// Adds the tree over the marks and the fields.
///
/// Errors: if the file is not built as expected.
pub fn add(
    file: &mut lopdf::Document,
    document: &Document,
    marks: &Marks,
    widgets: &[Widget],
) -> Result<(), lopdf::Error> {
    let tagged = &marks.tagged;
    let pages: Vec<ObjectId> = file.get_pages().into_values().collect();
    let root = file.new_object_id();
    let whole = file.new_object_id();
    let ids: Vec<ObjectId> = document.elements.iter().map(|_| file.new_object_id()).collect();
    let mut tree = Tree { children: vec![Vec::new(); ids.len()], top: Vec::new(), ids, pages };
    tree.gather(document, tagged);
    tree.hold(widgets);
    for (index, element) in document.elements.iter().enumerate() {
        let parent = element.parent.map_or(whole, |parent| tree.ids[parent]);
        let mut dictionary = tree.element(index, element, parent);
        if let Some(extent) = marks.extents.get(index).copied().flatten() {
            dictionary.set("A", layout_of(extent));
        }
        file.set_object(tree.ids[index], dictionary);
    }
    let mut numbers = Vec::new();
    for (page, marked) in tagged.iter().enumerate() {
        let owners: Vec<Object> = marked.iter().map(|element| tree.ids[*element].into()).collect();
        numbers.extend([Object::Integer(page as i64), Object::Array(owners)]);
        let dictionary = file.get_object_mut(tree.pages[page])?.as_dict_mut()?;
        dictionary.set("StructParents", page as i64);
        dictionary.set("Tabs", "S");
    }
    for (key, widget) in (tagged.len() as i64..).zip(widgets) {
        numbers.extend([Object::Integer(key), tree.ids[widget.element].into()]);
        file.get_object_mut(widget.id)?.as_dict_mut()?.set("StructParent", key);
    }
    let parents = file.add_object(dictionary! { "Nums" => numbers });
    file.set_object(whole, dictionary! { "Type" => "StructElem", "S" => "Document", "P" => root, "K" => tree.top });
    file.set_object(
        root,
        dictionary! {
            "Type" => "StructTreeRoot", "K" => vec![Object::Reference(whole)],
            "ParentTree" => parents, "ParentTreeNextKey" => (tagged.len() + widgets.len()) as i64,
        },
    );
    let catalog = catalog(file)?;
    catalog.set("StructTreeRoot", root);
    catalog.set("MarkInfo", dictionary! { "Marked" => true });
    Ok(())
}

/// A figure's place on its page.
fn layout_of(extent: [i64; 4]) -> Dictionary {
    dictionary! { "O" => "Layout", "Placement" => "Block", "BBox" => extent.map(Object::Integer).to_vec() }
}

/// What an element holds, in order.
#[derive(Clone, Copy)]
enum Child {
    Element(usize),
    Sequence { page: usize, number: usize },
    Widget { page: usize, id: ObjectId },
}

struct Tree {
    ids: Vec<ObjectId>,
    pages: Vec<ObjectId>,
    children: Vec<Vec<Child>>,
    top: Vec<Object>,
}

impl Tree {
    /// Hangs every element and every sequence below its parent. Elements come in the order in which they were begun;
    /// a sequence comes after the children that were begun before it.
    fn gather(&mut self, document: &Document, tagged: &[Marked]) {
        let mut hung = vec![false; document.elements.len()];
        for (page, marked) in tagged.iter().enumerate() {
            for (number, element) in marked.iter().enumerate() {
                self.hang(document, *element, &mut hung);
                self.children[*element].push(Child::Sequence { page, number });
            }
        }
        for element in 0..document.elements.len() {
            self.hang(document, element, &mut hung);
        }
        self.sort(document);
    }

    /// Gives every field to its element.
    fn hold(&mut self, widgets: &[Widget]) {
        for widget in widgets {
            self.children[widget.element].push(Child::Widget { page: widget.page, id: widget.id });
        }
    }

    fn hang(&mut self, document: &Document, element: usize, hung: &mut [bool]) {
        if std::mem::replace(&mut hung[element], true) {
            return;
        }
        if let Some(parent) = document.elements[element].parent {
            self.hang(document, parent, hung);
            self.children[parent].push(Child::Element(element));
        }
    }

    /// Cells that hold nothing were hung last: they go back to their place in the row.
    fn sort(&mut self, document: &Document) {
        for children in &mut self.children {
            if children.iter().all(|child| matches!(child, Child::Element(_))) {
                children.sort_by_key(|child| match child {
                    Child::Element(index) => *index,
                    Child::Sequence { .. } | Child::Widget { .. } => 0,
                });
            }
        }
        let top = (0..document.elements.len()).filter(|index| document.elements[*index].parent.is_none());
        self.top = top.map(|index| Object::Reference(self.ids[index])).collect();
    }

    fn element(&self, index: usize, element: &Element, parent: ObjectId) -> Dictionary {
        let home = self.children[index].iter().find_map(|child| match child {
            Child::Sequence { page, .. } | Child::Widget { page, .. } => Some(*page),
            Child::Element(_) => None,
        });
        let mut dictionary = dictionary! { "Type" => "StructElem", "S" => role_name(element.role), "P" => parent };
        if let Some(page) = home {
            dictionary.set("Pg", self.pages[page]);
        }
        let kids: Vec<Object> = self.children[index].iter().map(|child| self.kid(*child, home)).collect();
        match (&self.children[index][..], kids) {
            // Not in an array: readers that compare updates know a field's element by its one bare child.
            ([Child::Widget { .. }], mut alone) => dictionary.set("K", alone.remove(0)),
            (_, kids) if !kids.is_empty() => dictionary.set("K", kids),
            _ => {}
        }
        if let Some(alt) = &element.alt {
            dictionary.set("Alt", text_string(alt));
        }
        let scope = match element.role {
            Role::Th => Some("Column"),
            Role::ThRow => Some("Row"),
            _ => None,
        };
        if let Some(scope) = scope {
            dictionary.set("A", dictionary! { "O" => "Table", "Scope" => scope });
        }
        dictionary
    }

    fn kid(&self, child: Child, home: Option<usize>) -> Object {
        match child {
            Child::Element(index) => self.ids[index].into(),
            Child::Sequence { page, number } if Some(page) == home => Object::Integer(number as i64),
            Child::Sequence { page, number } => {
                dictionary! { "Type" => "MCR", "Pg" => self.pages[page], "MCID" => number as i64 }.into()
            }
            Child::Widget { page, id } => {
                dictionary! { "Type" => "OBJR", "Pg" => self.pages[page], "Obj" => id }.into()
            }
        }
    }
}
