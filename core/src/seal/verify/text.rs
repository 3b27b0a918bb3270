//! What the pages say: the letters that each shows, in the order of the writing.
//!
//! A letter is what its face says it is (`ToUnicode`). Faces without it, and forms within a page, say nothing here: a
//! page that uses them does not say what the record says.
//!
//! Source: ISO 32000-1, 7.8.2, 9.4.3, 9.10.3.

use std::collections::BTreeMap;

use lopdf::{Dictionary, Document, Object, ObjectId, Stream};
use memchr::memmem;

use super::{MOST_PAGES, MOST_UNFOLDED, squeezed};

/// What the codes of a face mean, spaces and breaks left out: two bytes each. A face of a certificate numbers its letters
/// from 1 without a gap.
#[derive(Default)]
struct Face(Vec<Option<String>>);

impl Face {
    fn put(&mut self, code: u16, letters: String) {
        let place = usize::from(code);
        if self.0.len() <= place {
            self.0.resize(place + 1, None);
        }
        self.0[place] = Some(squeezed(&letters));
    }

    fn letters(&self, code: u16) -> Option<&str> {
        self.0.get(usize::from(code))?.as_deref()
    }
}

/// Returns what each page says, without spaces and breaks, so that a line that was broken is found all the same.
pub fn pages(file: &Document) -> Vec<String> {
    let mut faces: BTreeMap<ObjectId, Face> = BTreeMap::new();
    file.get_pages()
        .into_values()
        .take(MOST_PAGES)
        .map(|page| said(file, page, &mut faces).unwrap_or_default())
        .collect()
}

fn said(file: &Document, page: ObjectId, faces: &mut BTreeMap<ObjectId, Face>) -> Option<String> {
    let page = file.get_dictionary(page).ok()?;
    let named = fonts(file, page).unwrap_or_default();
    for id in named.values() {
        if !faces.contains_key(id) {
            faces.insert(*id, face(file, *id).unwrap_or_default());
        }
    }
    let mut text = String::new();
    let mut shown = Scan { named: &named, faces, face: None, text: &mut text };
    shown.scan(&contents(file, page));
    Some(text)
}

/// Returns the pictures of the photos: JPEG files, by the number in their name.
pub fn pictures(file: &Document) -> BTreeMap<usize, Vec<u8>> {
    let pages = file.get_pages().into_values().take(MOST_PAGES).filter_map(|page| file.get_dictionary(page).ok());
    let named = pages.filter_map(|page| resources(file, page, b"XObject")).flatten();
    let picture = |(name, id): (Vec<u8>, ObjectId)| {
        let number = std::str::from_utf8(&name).ok()?.strip_prefix("Photo")?.parse().ok()?;
        Some((number, file.get_object(id).ok()?.as_stream().ok()?.content.clone()))
    };
    named.filter_map(picture).collect()
}

fn fonts(file: &Document, page: &Dictionary) -> Option<BTreeMap<Vec<u8>, ObjectId>> {
    Some(resources(file, page, b"Font")?.into_iter().collect())
}

/// Returns the resources of one kind by their names. A page of a certificate has resources of its own.
fn resources(file: &Document, page: &Dictionary, kind: &[u8]) -> Option<Vec<(Vec<u8>, ObjectId)>> {
    let resources = file.dereference(page.get(b"Resources").ok()?).ok()?.1.as_dict().ok()?;
    let named = file.dereference(resources.get(kind).ok()?).ok()?.1.as_dict().ok()?;
    Some(named.iter().filter_map(|(name, one)| Some((name.clone(), one.as_reference().ok()?))).collect())
}

fn contents(file: &Document, page: &Dictionary) -> Vec<u8> {
    let Ok(contents) = page.get(b"Contents") else { return vec![] };
    let streams = match file.dereference(contents) {
        Ok((_, Object::Array(all))) => all.iter().filter_map(|one| file.dereference(one).ok()).collect(),
        Ok(one) => vec![one],
        Err(_) => vec![],
    };
    let streams =
        streams.into_iter().filter_map(|(_, stream)| plain(stream.as_stream().ok()?, MOST_UNFOLDED / MOST_PAGES));
    streams.fold(vec![], |mut all, stream| {
        all.extend(stream);
        all.push(b'\n');
        all
    })
}

/// Returns the bytes of a stream as they are meant.
pub fn plain(stream: &Stream, most: usize) -> Option<Vec<u8>> {
    if stream.dict.has(b"Filter") {
        stream.decompressed_content_with_limit(most).ok()
    } else {
        Some(stream.content.clone())
    }
}

/// Reads the map of a face from its codes to letters: single codes and ranges of them.
fn face(file: &Document, font: ObjectId) -> Option<Face> {
    let map = file.get_dictionary(font).ok()?.get(b"ToUnicode").ok()?;
    let map = plain(file.dereference(map).ok()?.1.as_stream().ok()?, MOST_UNFOLDED / MOST_PAGES)?;
    let mut face = Face::default();
    for (begin, end, width) in [(&b"beginbfchar"[..], &b"endbfchar"[..], 2), (b"beginbfrange", b"endbfrange", 3)] {
        for start in memmem::find_iter(&map, begin) {
            let block = &map[start..start + memmem::find(&map[start..], end)?];
            let codes: Vec<Vec<u8>> = hexadecimals(block).collect();
            for entry in codes.chunks_exact(width) {
                let (first, last) = (code(&entry[0])?, code(&entry[width - 2])?);
                let letters = &entry[width - 1];
                for (step, code) in (first..=last).enumerate() {
                    face.put(code, letter(letters, step)?);
                }
            }
        }
    }
    Some(face)
}

fn code(bytes: &[u8]) -> Option<u16> {
    bytes.try_into().ok().map(u16::from_be_bytes)
}

/// Returns the letters that UTF-16 stands for, the last unit moved on by `step`.
fn letter(utf16: &[u8], step: usize) -> Option<String> {
    let (pairs, _) = utf16.as_chunks::<2>();
    let mut units: Vec<u16> = pairs.iter().map(|pair| u16::from_be_bytes(*pair)).collect();
    let last = units.last_mut()?;
    *last = last.checked_add(u16::try_from(step).ok()?)?;
    String::from_utf16(&units).ok()
}

/// Returns what stands between `<` and `>`, each as bytes.
fn hexadecimals(text: &[u8]) -> impl Iterator<Item = Vec<u8>> {
    text.split(|byte| *byte == b'<').skip(1).map(|part| hexadecimal(part.split(|byte| *byte == b'>').next()))
}

/// Digits in pairs; what is no digit is passed over, and a last one alone stands for itself and a nought.
fn hexadecimal(digits: Option<&[u8]>) -> Vec<u8> {
    let digits = digits.unwrap_or_default();
    let mut bytes = Vec::with_capacity(digits.len() / 2 + 1);
    let mut high = None;
    for digit in digits.iter().filter_map(|byte| digit(*byte)) {
        match high.take() {
            Some(high) => bytes.push(high << 4 | digit),
            None => high = Some(digit),
        }
    }
    bytes.extend(high.map(|high| high << 4));
    bytes
}

fn digit(byte: u8) -> Option<u8> {
    match byte {
        b'0'..=b'9' => Some(byte - b'0'),
        b'a'..=b'f' => Some(byte - b'a' + 10),
        b'A'..=b'F' => Some(byte - b'A' + 10),
        _ => None,
    }
}

/// A string on a page: digits that stand for its bytes, or the bytes.
enum Shown<'a> {
    Digits(&'a [u8]),
    Bytes(Vec<u8>),
}

/// Goes through the operators of a page and notes what is shown.
struct Scan<'a> {
    named: &'a BTreeMap<Vec<u8>, ObjectId>,
    faces: &'a BTreeMap<ObjectId, Face>,
    face: Option<&'a Face>,
    text: &'a mut String,
}

impl Scan<'_> {
    fn scan(&mut self, page: &[u8]) {
        let (mut at, mut name) = (0, &b""[..]);
        let mut strings: Vec<Shown> = vec![];
        while let Some(byte) = page.get(at) {
            let rest = &page[at + 1..];
            let taken = match byte {
                b'/' => {
                    let length = word(rest);
                    name = &rest[..length];
                    length
                }
                b'<' if rest.first() != Some(&b'<') => {
                    let length = memchr::memchr(b'>', rest).unwrap_or(rest.len());
                    strings.push(Shown::Digits(&rest[..length]));
                    length
                }
                b'<' => 1,
                b'(' => {
                    let (string, length) = literal(rest);
                    strings.push(Shown::Bytes(string));
                    length
                }
                b'%' => memchr::memchr2(b'\n', b'\r', rest).unwrap_or(rest.len()),
                byte if byte.is_ascii_alphabetic() || b"'\"*".contains(byte) => {
                    let length = word(rest);
                    self.operator(&page[at..=at + length], name, &strings);
                    strings.clear();
                    length
                }
                _ => 0,
            };
            at += 1 + taken;
        }
    }

    fn operator(&mut self, operator: &[u8], name: &[u8], strings: &[Shown]) {
        match operator {
            b"Tf" => self.face = self.named.get(name).and_then(|id| self.faces.get(id)),
            b"Tj" | b"TJ" | b"'" | b"\"" => strings.iter().for_each(|string| self.show(string)),
            _ => {}
        }
    }

    fn show(&mut self, string: &Shown) {
        let Some(face) = self.face else { return };
        let bytes = match string {
            Shown::Digits(digits) => &hexadecimal(Some(digits)),
            Shown::Bytes(bytes) => bytes,
        };
        let (codes, _) = bytes.as_chunks::<2>();
        for letters in codes.iter().filter_map(|code| face.letters(u16::from_be_bytes(*code))) {
            self.text.push_str(letters);
        }
    }
}

/// How many bytes go on with a name or an operator.
fn word(text: &[u8]) -> usize {
    text.iter().take_while(|byte| !byte.is_ascii_whitespace() && !b"/<>()[]{}%".contains(byte)).count()
}

/// Reads a string in round brackets, behind the first; returns how many bytes it took. Escapes keep what they escape:
/// no code of a certificate is written so.
fn literal(text: &[u8]) -> (Vec<u8>, usize) {
    let (mut open, mut escaped, mut string) = (1, false, vec![]);
    for (at, byte) in text.iter().enumerate() {
        match byte {
            _ if escaped => escaped = false,
            b'\\' => {
                escaped = true;
                continue;
            }
            b'(' => open += 1,
            b')' => open -= 1,
            _ => {}
        }
        if open == 0 {
            return (string, at + 1);
        }
        string.push(*byte);
    }
    (string, text.len())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_shown_is_read_by_the_map_of_its_face() {
        let mut face = Face::default();
        face.put(1, "fi".to_owned());
        face.put(0x0102, "é".to_owned());
        let id = (7, 0);
        let (named, faces) = (BTreeMap::from([(b"Book".to_vec(), id)]), BTreeMap::from([(id, face)]));
        let mut text = String::new();
        let mut scan = Scan { named: &named, faces: &faces, face: None, text: &mut text };
        scan.scan(
            b"/P <</MCID 0>> BDC BT <0001> Tj /Book 9 Tf 1 0 0 1 2 3 Tm [<0001> -20 (\x01\x02)] TJ % <0001> Tj\nET EMC",
        );
        assert_eq!(text, "fié");
    }

    /// The example of ISO 32000-1, 9.10.3: a range, its last unit moved on, and a single code with two letters.
    #[test]
    fn a_map_has_ranges_and_single_codes() {
        let map = b"2 beginbfrange <0000> <005E> <0020> <005F> <0061> <00660066> endbfrange 1 beginbfchar <3A51> <D840DC3E> endbfchar";
        let mut file = Document::new();
        let map = file.add_object(Stream::new(Dictionary::new(), map.to_vec()));
        let font = file.add_object(lopdf::dictionary! { "Type" => "Font", "ToUnicode" => map });
        let face = face(&file, font).unwrap();
        assert_eq!((face.letters(0), face.letters(0x5E)), (Some(""), Some("~")));
        assert_eq!((face.letters(0x5F), face.letters(0x60)), (Some("ff"), Some("fg")));
        assert_eq!((face.letters(0x3A51), face.letters(0x3A50)), (Some("\u{2003E}"), None));
    }
}
