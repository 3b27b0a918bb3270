//! The elements of the structure, looked through in the bytes of a file and left out of what is kept of it.
//!
//! They are nine in ten objects of a certificate, and only an update that touches one makes anybody ask for them. One is
//! left out where its bytes are of the form that the program writes, made of words that can't act, name no field and
//! show nothing; whatever is of another form is read as all the rest.
//!
//! Source: ISO 32000-1, 7.5.4 (the table), 14.7.2 and 14.7.4 (elements and the tree of their parents).

use std::collections::BTreeMap;

use lopdf::{Object, ObjectId};
use memchr::memmem;

/// Stands for an element that was left out. It equals nothing, itself included, so whatever an update puts in its place
/// is a change.
const LEFT_OUT: Object = Object::Real(f32::NAN);

/// A line of the table: offset, generation, kind.
const LINE: usize = b"0000000015 00000 n \n".len();

/// Says whether an object stands for an element that was left out.
pub fn is_left_out(object: &Object) -> bool {
    matches!(object, Object::Real(number) if number.is_nan())
}

/// Takes the elements out of the table at `table`, so that nobody reads them; returns what stands for each.
pub fn leave_out(pdf: &mut [u8], table: usize) -> BTreeMap<ObjectId, Object> {
    let Some(first) = first_line(pdf, table) else { return BTreeMap::new() };
    let mut found = vec![];
    for number in 0.. {
        let at = first + number as usize * LINE;
        let Some(offset) = pdf.get(at..at + LINE).and_then(offset) else { break };
        if offset.is_some_and(|offset| is_element(pdf, number, offset)) {
            pdf[at + LINE - 3] = b'f';
            found.push(((number, 0), LEFT_OUT));
        }
    }
    found.into_iter().collect()
}

/// Returns where the lines of a table begin that lists all objects from 0 on.
fn first_line(pdf: &[u8], table: usize) -> Option<usize> {
    let head = b"xref\n0 ";
    let count = pdf.get(table..)?.strip_prefix(head)?;
    let digits = count.iter().take_while(|byte| byte.is_ascii_digit()).count();
    (count.get(digits) == Some(&b'\n')).then_some(table + head.len() + digits + 1)
}

/// Reads a line of the table: `Some(None)` for a place that is free or of a later generation; `None` behind the last.
fn offset(line: &[u8]) -> Option<Option<usize>> {
    let (digits, rest) = line.split_at(10);
    let offset =
        digits.iter().try_fold(0, |sum, digit| Some(sum * 10 + u64::from(char::from(*digit).to_digit(10)?)))?;
    // Ten digits hold more than an address of a phone does.
    let offset = usize::try_from(offset).unwrap_or(usize::MAX);
    match rest {
        b" 00000 n \n" => Some(Some(offset)),
        [b' ', .., b' ', b'n' | b'f', b' ', b'\n'] => Some(None),
        _ => None,
    }
}

fn is_element(pdf: &[u8], number: u32, offset: usize) -> bool {
    let found = || {
        let object = pdf.get(offset..)?.strip_prefix(format!("{number} 0 obj\n").as_bytes())?;
        let begun = object.starts_with(b"<</Type/StructElem/") || object.starts_with(b"<</Nums[");
        let end = memmem::find(object.get(..object.len().min(MOST_BYTES))?, b">>\nendobj\n").filter(|_| begun)?;
        plain(&object[..end + 2])
    };
    found() == Some(true)
}

/// A longer element is read as all the rest.
const MOST_BYTES: usize = 1 << 20;

/// Says whether an object is made of brackets, numbers, references, digits in angle brackets and the words of elements.
fn plain(object: &[u8]) -> Option<bool> {
    let (mut at, mut open) = (0, 0_u32);
    while let Some(byte) = object.get(at) {
        let rest = &object[at + 1..];
        at += 1 + match byte {
            b'/' => {
                let length = rest.iter().take_while(|byte| byte.is_ascii_alphanumeric()).count();
                if !is_word(&rest[..length]) {
                    return Some(false);
                }
                length
            }
            b'<' if rest.first() == Some(&b'<') => {
                open += 1;
                1
            }
            b'>' if rest.first() == Some(&b'>') => {
                open = open.checked_sub(1)?;
                1
            }
            b'<' => rest.iter().position(|byte| !byte.is_ascii_hexdigit()).filter(|end| rest[*end] == b'>')? + 1,
            b'[' | b']' | b' ' | b'-' | b'.' | b'R' | b'0'..=b'9' => 0,
            _ => return Some(false),
        };
    }
    Some(open == 0)
}

/// The keys and the names in elements, in the tree of their parents, and in what they say of their place and layout.
fn is_word(word: &[u8]) -> bool {
    let word = std::str::from_utf8(word).unwrap_or_default();
    matches!(
        word,
        "Type" | "S" | "P" | "Pg" | "K" | "Alt" | "A" | "O" | "Placement" | "BBox" | "Scope" | "MCID" | "Obj" | "Nums"
    ) || matches!(word, "StructElem" | "MCR" | "OBJR" | "Layout" | "Block" | "Table" | "Column" | "Row" | "Document")
        || matches!(word, "H1" | "H2" | "L" | "LI" | "Lbl" | "LBody" | "TR" | "TH" | "TD" | "Figure" | "Form" | "Sect")
}

#[cfg(test)]
mod tests {
    use super::*;

    fn file(object: &str) -> (Vec<u8>, usize) {
        let mut pdf = format!("%PDF-1.7\n1 0 obj\n{object}\nendobj\n");
        let table = pdf.len();
        pdf.push_str("xref\n0 2\n0000000000 65535 f \n0000000009 00000 n \ntrailer\n");
        (pdf.into_bytes(), table)
    }

    fn is_left(object: &str) -> bool {
        let (mut pdf, table) = file(object);
        let found = leave_out(&mut pdf, table);
        assert_eq!(found.contains_key(&(1, 0)), pdf.windows(3).filter(|part| part == b" f ").count() == 2);
        !found.is_empty()
    }

    #[test]
    fn an_element_is_left_out_and_nothing_that_acts_or_shows() {
        for element in [
            "<</Type/StructElem/S/H1/P 69 0 R/Pg 25 0 R/K[0]>>",
            "<</Type/StructElem/S/Figure/P 69 0 R/Alt<FEFF0041>/A<</O/Layout/Placement/Block/BBox[1 -2 3 4.5]>>/K[7]>>",
            "<</Type/StructElem/S/Form/P 1 0 R/K<</Type/OBJR/Pg 2 0 R/Obj 65 0 R>>>>",
            "<</Nums[0[70 0 R 71 0 R]1 72 0 R]>>",
        ] {
            assert!(is_left(element), "{element}");
        }
        for other in [
            "<</Type/StructElem/S/JavaScript/P 69 0 R>>",
            "<</Type/StructElem/S/P/JS(app.alert)>>",
            "<</Type/StructElem/S/P/#4aS 5 0 R>>",
            "<</Type/StructElem/S/P/FT/Sig/T<0041>/V 9 0 R>>",
            "<</Type/StructElem/S/P/AA 5 0 R>>",
            "<</Type/StructElem/S/P>>\nstream\nx\nendstream",
            "<</Type/StructElem/S/P/P 69 0 R>",
            "<</Type/StructElem/S/P%>>\n/JS 5 0 R>>",
            "<</Type/StructElem/S/P/Alt<00>>>>>",
            "<</Type/Page/Parent 1 0 R>>",
            "<</K[0]>>",
        ] {
            assert!(!is_left(other), "{other}");
        }
    }

    #[test]
    fn what_stands_for_an_element_equals_nothing_that_can_be_read() {
        let (one, same) = (LEFT_OUT, LEFT_OUT);
        assert!(is_left_out(&one) && one != same);
        assert!(!is_left_out(&Object::Null) && !is_left_out(&Object::Real(0.0)));
    }

    /// The number in front of the object is not the one in the table, or the object is of a later generation.
    #[test]
    fn an_object_that_is_not_where_the_table_says_is_read_as_all_the_rest() {
        let (pdf, table) = file("<</Type/StructElem/S/P/P 69 0 R>>");
        for (from, to) in [("1 0 obj", "2 0 obj"), ("9 00000 n", "9 00001 n"), ("0 2\n", "1 2\n"), ("xref\n", "xref ")]
        {
            let text = String::from_utf8(pdf.clone()).unwrap().replacen(from, to, 1);
            let mut changed = text.clone().into_bytes();
            assert!(leave_out(&mut changed, table).is_empty(), "{from}");
            assert_eq!(changed, text.into_bytes());
        }
    }
}
