//! A file as it grew: what it was at first, and each update behind it, read once.
//!
//! Every update says where its table stands and where that of the file before it stood, so the file is followed from
//! its last byte back to its first. Only tables in the plain form are followed, with a trailer that can be read in one
//! way: other programs write others, but no program writes others behind a certificate without changing it.
//!
//! Source: ISO 32000-1, 7.5.4 to 7.5.6.

use lopdf::xref::XrefEntry;
use lopdf::{Document, Object, ObjectId};
use memchr::memmem;

use super::{elements, load, updates};

/// More updates than two people and those who tamper with their file would make.
const MOST_UPDATES: usize = 64;

/// A file read to its end.
pub struct Parts {
    /// The file with all its updates, elements of the structure left out where they can be.
    pub file: Document,
    /// In their order.
    pub updates: Vec<Update>,
}

/// An update: where it ends, and what it did beyond filling one field.
pub struct Update {
    pub end: usize,
    pub flaws: Vec<String>,
}

/// Where the table of a part stands, and where that part ends.
#[derive(Clone, Copy)]
struct Section {
    table: usize,
    end: usize,
    /// The place in the trailer that names the table before, brackets not needed: it is passed over.
    previous: Option<(usize, usize)>,
}

/// Reads a file whose every update can be told from what was there before; `None` if that can't be done.
pub fn read(pdf: &[u8]) -> Option<Parts> {
    let sections = sections(pdf)?;
    let (first, later) = sections.split_first()?;
    let mut start = pdf[..first.end].to_vec();
    let mut left_out = elements::leave_out(&mut start, first.table);
    let mut file = load(&start).ok()?;
    file.objects.append(&mut left_out);
    let mut updates = vec![];
    for (section, before) in later.iter().zip(&sections) {
        let update = alone(pdf, before.end, section)?;
        updates.push(Update { end: section.end, flaws: updates::changed(&file, &update) });
        file.objects.extend(update.objects);
        file.trailer = update.trailer;
    }
    Some(Parts { file, updates })
}

/// Follows the tables from the end, and returns the parts in their order.
fn sections(pdf: &[u8]) -> Option<Vec<Section>> {
    let mut found: Vec<Section> = vec![];
    let mut end = pdf.len();
    loop {
        let table = last_table(&pdf[..end])?;
        let previous = previous(pdf, table, end)?;
        found.push(Section { table, end, previous });
        let Some(place) = previous else { break };
        let wanted = format!("startxref\n{}\n%%EOF", std::str::from_utf8(&pdf[place.0..place.1]).ok()?);
        end = memmem::rfind(&pdf[..table], wanted.as_bytes())? + wanted.len();
        if found.len() > MOST_UPDATES {
            return None;
        }
    }
    found.reverse();
    Some(found)
}

/// Returns where the table stands that the last lines name.
fn last_table(pdf: &[u8]) -> Option<usize> {
    let text = pdf.strip_suffix(b"\n%%EOF")?;
    let digits = text.iter().rev().take_while(|byte| byte.is_ascii_digit()).count();
    let (text, digits) = text.split_at(text.len() - digits);
    let table = std::str::from_utf8(digits).ok()?.parse().ok()?;
    (text.ends_with(b"\nstartxref\n") && pdf.get(table..)?.starts_with(b"xref\n")).then_some(table)
}

/// Returns where the digits stand that name the table before; `Some(None)` where there is none.
fn previous(pdf: &[u8], table: usize, end: usize) -> Option<Option<(usize, usize)>> {
    let part = &pdf[table..end];
    let trailer = table + memmem::find(part, b"\ntrailer\n")?;
    let text = &pdf[trailer..end];
    // Escapes, strings, comments and a second table would let others read another place than we do.
    let plain = text.strip_suffix(b"%%EOF")?;
    if plain.iter().any(|byte| b"#()%".contains(byte)) || memmem::find(text, b"XRefStm").is_some() {
        return None;
    }
    let mut places = memmem::find_iter(text, b"/Prev");
    let Some(place) = places.next() else { return Some(None) };
    let digits = trailer + place + b"/Prev ".len();
    let count = pdf[digits..end].iter().take_while(|byte| byte.is_ascii_digit()).count();
    let plain = places.next().is_none() && pdf[digits - 1] == b' ' && count > 0;
    plain.then_some(Some((digits, digits + count)))
}

/// Reads what an update brings, and nothing before it. Its table must list what stands there, and nothing else.
fn alone(pdf: &[u8], begin: usize, section: &Section) -> Option<Document> {
    let mut part = pdf[..section.end].to_vec();
    let (from, to) = section.previous?;
    part[from - b"/Prev ".len()..to].fill(b' ');
    let emptied = empty_room(&mut part, begin);
    let update = load_part(&part)?;
    let listed = |id: &ObjectId| update.reference_table.get(id.0).is_some();
    let there = |(number, place): (u32, u32)| {
        let entry = update.reference_table.get(number);
        matches!(entry, Some(XrefEntry::Normal { offset, generation: 0 }) if *offset == place)
    };
    let same = update.objects.keys().all(listed) && update.xref_start == section.table;
    (same && emptied.is_none_or(there)).then_some(update)
}

/// Between the head of a signature's object and the digits of the signature, as the program writes them.
const SIGNED: &[u8] = b"<</Type/Sig/Filter/Adobe.PPKLite/SubFilter/ETSI.CAdES.detached/ByteRange[";
const HELD: &[u8] = b"]/Contents<";
const OBJECT: &[u8] = b" 0 obj\n";

/// Puts spaces in the place of the noughts that fill the room of the last signature behind `begin`: the library looks at each digit for
/// itself, which would take longer than all the rest. What the signature is does not change; whoever compares it leaves
/// out the noughts at its end.
///
/// Returns the number of the object that holds it, and where it stands.
fn empty_room(part: &mut [u8], begin: usize) -> Option<(u32, u32)> {
    let held = begin + memmem::rfind(&part[begin..], HELD)?;
    let signed = held - part[..held].iter().rev().take_while(|byte| byte.is_ascii_digit() || **byte == b' ').count();
    let before = part[..signed].strip_suffix(SIGNED)?.strip_suffix(OBJECT)?;
    let digits = before.iter().rev().take_while(|byte| byte.is_ascii_digit()).count();
    let start = before.len() - digits;
    let number = std::str::from_utf8(&before[start..]).ok()?.parse().ok()?;
    let from = held + HELD.len();
    let to = from + memchr::memchr(b'>', &part[from..])?;
    let noughts = part[from..to].iter().rev().take_while(|byte| **byte == b'0').count();
    part[to - noughts..to].fill(b' ');
    Some((number, u32::try_from(start).ok()?))
}

/// As [`load`], but without a catalog, which most updates don't have.
fn load_part(part: &[u8]) -> Option<Document> {
    std::panic::catch_unwind(|| Document::load_mem(part)).ok()?.ok()
}

/// The tables of where objects stand are written anew by every update.
pub fn is_table(object: &Object) -> bool {
    object.as_stream().is_ok_and(|stream| stream.dict.has_type(b"XRef"))
}

#[cfg(test)]
mod tests {
    use super::*;
    use lopdf::xref::XrefType;
    use lopdf::{IncrementalDocument, dictionary};

    /// A file of one page with an update behind it that changes nothing.
    fn grown() -> Vec<u8> {
        let mut file = Document::with_version("1.7");
        file.reference_table.cross_reference_type = XrefType::CrossReferenceTable;
        let pages = file.new_object_id();
        let page = file.add_object(dictionary! { "Type" => "Page", "Parent" => pages });
        file.set_object(pages, dictionary! { "Type" => "Pages", "Kids" => vec![page.into()], "Count" => 1 });
        let catalog = file.add_object(dictionary! { "Type" => "Catalog", "Pages" => pages });
        file.trailer.set("Root", catalog);
        let mut first = vec![];
        file.save_to(&mut first).unwrap();
        let mut update = IncrementalDocument::create_from(first.clone(), Document::load_mem(&first).unwrap());
        update.opt_clone_object_to_new_document(page).unwrap();
        update.new_document.reference_table.cross_reference_type = XrefType::CrossReferenceTable;
        let mut whole = vec![];
        update.save_to(&mut whole).unwrap();
        whole
    }

    #[test]
    fn a_file_is_told_from_its_update() {
        let pdf = grown();
        let parts = read(&pdf).unwrap();
        assert_eq!((parts.updates.len(), parts.updates[0].end), (1, pdf.len()));
        assert_eq!(parts.file.objects, Document::load_mem(&pdf).unwrap().objects);
    }

    /// A second `/Prev`, an escaped one, one in a comment or a string, a second table: readers differ in which they take.
    #[test]
    fn a_trailer_that_can_be_read_in_two_ways_is_not_followed() {
        let pdf = grown();
        let at = memmem::rfind(&pdf, b"/Prev ").unwrap();
        for trick in
            ["/Prev 12/Prev ", "/#50rev 12/Prev ", "%/Prev 12\n/Prev ", "/A(/Prev 12)/Prev ", "/XRefStm 12/Prev "]
        {
            let changed = [&pdf[..at], trick.as_bytes(), &pdf[at + 6..]].concat();
            assert!(read(&changed).is_none(), "{trick}");
        }
        assert!(read(&pdf[..pdf.len() - 1]).is_none() && read(&[&pdf[..], b"\n"].concat()).is_none());
    }
}
