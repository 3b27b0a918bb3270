//! The XML form of 2010: `DATA`, in it one `ZA` and a `ZB` for each inspection, in that its header fields and a `ZC`
//! for each observation.
//!
//! Element names are taken without their prefix; attributes, comments and processing instructions say nothing here.
//! A document type is refused; entities are the five predefined ones and the numeric ones.

use super::decode::{Decoded, line_ends};
use super::fields::{Header, observation};
use super::{Form, Inspection, InspectionFile, Notice, NoticeCode, Observation};
use super::{MOST_INSPECTIONS, MOST_OBSERVATIONS, ReadCode, ReadError};
use quick_xml::Reader;
use quick_xml::escape::resolve_predefined_entity;
use quick_xml::events::{BytesRef, Event};

/// The decimal mark of the XML form.
const DECIMAL: char = '.';

/// Returns the file that the XML form says.
pub(super) fn read(decoded: Decoded) -> Result<InspectionFile, ReadError> {
    let mut source = Source::new(decoded.text.trim_end());
    let mut document = Document::new(decoded.notices);
    loop {
        let (event, line) = source.next_event()?;
        match event {
            Event::Start(tag) => document.open(tag.local_name().as_ref(), line)?,
            Event::End(_) => document.close(line)?,
            Event::Text(text) => document.text(&text.xml10_content(), line)?,
            Event::CData(text) => document.text(&text.xml10_content(), line)?,
            Event::GeneralRef(entity) => document.text(&resolved(&entity, line)?, line)?,
            Event::DocType(_) => {
                let expected = "a file without a document type";
                return Err(ReadError::new(ReadCode::Doctype, line, expected, "<!DOCTYPE"));
            }
            Event::Eof => return document.finish(line),
            Event::Empty(_) | Event::Decl(_) | Event::PI(_) | Event::Comment(_) => {}
        }
    }
}

/// Events with the line on which they begin.
struct Source<'a> {
    reader: Reader<&'a [u8]>,
    text: &'a [u8],
    counted: usize,
    line: u64,
}

impl<'a> Source<'a> {
    fn new(text: &'a str) -> Self {
        let mut reader = Reader::from_str(text);
        reader.config_mut().expand_empty_elements = true;
        Self { reader, text: text.as_bytes(), counted: 0, line: 1 }
    }

    fn next_event(&mut self) -> Result<(Event<'a>, u64), ReadError> {
        let line = self.line_at(self.reader.buffer_position());
        match self.reader.read_event() {
            Ok(event) => Ok((event, line)),
            Err(error) => {
                let line = self.line_at(self.reader.error_position());
                Err(ReadError::new(ReadCode::Xml, line, "well-formed XML", error.to_string()))
            }
        }
    }

    /// Returns the line of a place; places only move on, so that every byte is looked at once.
    fn line_at(&mut self, place: u64) -> u64 {
        let place = usize::try_from(place).unwrap_or(usize::MAX).min(self.text.len());
        if let Some(fresh) = self.text.get(self.counted..place) {
            self.line += line_ends(fresh);
            self.counted = place;
        }
        self.line
    }
}

/// Returns the text of an entity.
fn resolved(entity: &BytesRef<'_>, line: u64) -> Result<String, ReadError> {
    let name = entity.xml10_content();
    let refused = || {
        let expected = "a predefined entity (&amp; &lt; &gt; &quot; &apos;) or a number of a character";
        ReadError::new(ReadCode::Entity, line, expected, format!("&{name};"))
    };
    if entity.is_char_ref() {
        let allowed = |c: &char| !c.is_control() || matches!(c, '\t' | '\n' | '\r');
        let character = entity.resolve_char_ref().ok().flatten().filter(allowed);
        return character.map(String::from).ok_or_else(refused);
    }
    resolve_predefined_entity(&name).map(str::to_owned).ok_or_else(refused)
}

/// Where in the document we stand.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Place {
    /// Before the root.
    Start,
    /// After the root.
    End,
    Data,
    FileHeader,
    Inspection,
    /// A wrapper `B` round the header fields of an inspection.
    Header,
    Observation,
}

/// An element that holds text.
struct Field {
    name: String,
    text: String,
    line: u64,
}

struct Document {
    place: Place,
    field: Option<Field>,
    /// How deep we are in an element that the format does not have.
    unknown: usize,
    language: Option<String>,
    version: Option<String>,
    header: Header,
    header_line: u64,
    cells: Vec<(char, String)>,
    cells_line: u64,
    observations: Vec<Observation>,
    observations_in_file: usize,
    inspections: Vec<Inspection>,
    notices: Vec<Notice>,
}

impl Document {
    fn new(notices: Vec<Notice>) -> Self {
        Self {
            place: Place::Start,
            field: None,
            unknown: 0,
            language: None,
            version: None,
            header: Header::default(),
            header_line: 1,
            cells: Vec::new(),
            cells_line: 1,
            observations: Vec::new(),
            observations_in_file: 0,
            inspections: Vec::new(),
            notices,
        }
    }

    fn open(&mut self, name: &str, line: u64) -> Result<(), ReadError> {
        if self.unknown > 0 {
            self.unknown += 1;
            return Ok(());
        }
        if let Some(field) = &self.field {
            return Err(wrong(line, format!("text and </{}>", field.name), format!("<{name}>")));
        }
        self.place = match (self.place, name) {
            (Place::Start, "DATA") => Place::Data,
            (Place::Start, _) => return Err(not_data(line, name)),
            (Place::End, _) => return Err(wrong(line, "the end of the file", format!("<{name}>"))),
            (Place::Data, "ZA") => Place::FileHeader,
            (Place::Data, "ZB") => self.begin_inspection(line)?,
            (Place::Inspection, "ZC") => self.begin_observation(line)?,
            (Place::Inspection, "B") => Place::Header,
            (Place::Data, name) if belongs_inside(name) => {
                return Err(wrong(line, "an inspection <ZB> round it", format!("<{name}>")));
            }
            (Place::Data, _) => return self.leave_out(name, line),
            (_, "DATA" | "ZA" | "ZB" | "ZC") => {
                return Err(wrong(line, "a field", format!("<{name}>")));
            }
            (place, _) => {
                self.field = Some(Field { name: name.to_owned(), text: String::new(), line });
                place
            }
        };
        Ok(())
    }

    fn begin_inspection(&mut self, line: u64) -> Result<Place, ReadError> {
        if self.inspections.len() == MOST_INSPECTIONS {
            return Err(too_many(line, MOST_INSPECTIONS, "inspections"));
        }
        self.header_line = line;
        Ok(Place::Inspection)
    }

    fn begin_observation(&mut self, line: u64) -> Result<Place, ReadError> {
        self.observations_in_file += 1;
        if self.observations_in_file > MOST_OBSERVATIONS {
            return Err(too_many(line, MOST_OBSERVATIONS, "observations"));
        }
        self.cells_line = line;
        Ok(Place::Observation)
    }

    fn leave_out(&mut self, name: &str, line: u64) -> Result<(), ReadError> {
        self.unknown = 1;
        self.notice(name, line);
        Ok(())
    }

    fn notice(&mut self, name: &str, line: u64) {
        let text = super::error::shown(&format!("<{name}> is not in EN 13508-2: left out"));
        self.notices.push(Notice { code: NoticeCode::UnknownColumn, line, text });
    }

    fn close(&mut self, line: u64) -> Result<(), ReadError> {
        if self.unknown > 0 {
            self.unknown -= 1;
            return Ok(());
        }
        if let Some(field) = self.field.take() {
            return self.take(field);
        }
        self.place = match self.place {
            Place::FileHeader => Place::Data,
            Place::Header => Place::Inspection,
            Place::Observation => self.end_observation()?,
            Place::Inspection => self.end_inspection()?,
            Place::Data => Place::End,
            Place::Start | Place::End => return Err(wrong(line, "<DATA>", "a closing tag")),
        };
        Ok(())
    }

    /// Takes a field into what it belongs to.
    fn take(&mut self, field: Field) -> Result<(), ReadError> {
        match self.place {
            Place::FileHeader => {
                let text = Some(field.text.trim().to_owned()).filter(|text| !text.is_empty());
                match field.name.as_str() {
                    "A2" => self.language = text,
                    "A6" => self.version = text,
                    _ => {}
                }
                Ok(())
            }
            Place::Observation => self.take_cell(field),
            _ => self.header.put(&field.name, &field.text, field.line),
        }
    }

    fn take_cell(&mut self, field: Field) -> Result<(), ReadError> {
        let [letter @ b'A'..=b'N'] = field.name.as_bytes() else {
            self.notice(&field.name, field.line);
            return Ok(());
        };
        let letter = char::from(*letter);
        if self.cells.iter().any(|(other, _)| *other == letter) {
            let expected = format!("<{letter}> once in an observation");
            return Err(ReadError::new(ReadCode::Column, field.line, expected, format!("<{letter}> twice")));
        }
        self.cells.push((letter, field.text));
        Ok(())
    }

    fn end_observation(&mut self) -> Result<Place, ReadError> {
        let cells = std::mem::take(&mut self.cells);
        let cells = cells.iter().map(|(letter, text)| (*letter, text.as_str()));
        self.observations.push(observation(cells, self.cells_line, DECIMAL, &mut self.notices)?);
        Ok(Place::Inspection)
    }

    fn end_inspection(&mut self) -> Result<Place, ReadError> {
        let header = std::mem::take(&mut self.header);
        let observations = std::mem::take(&mut self.observations);
        let inspection = header.into_inspection(observations, DECIMAL, self.header_line, &mut self.notices)?;
        self.inspections.push(inspection);
        Ok(Place::Data)
    }

    fn text(&mut self, text: &str, line: u64) -> Result<(), ReadError> {
        match &mut self.field {
            Some(field) => field.text.push_str(text),
            None if self.unknown > 0 || text.trim().is_empty() => {}
            None => return Err(wrong(line, "an element", text.trim())),
        }
        Ok(())
    }

    fn finish(self, line: u64) -> Result<InspectionFile, ReadError> {
        let expected = match self.place {
            Place::End if self.inspections.is_empty() => "an inspection <ZB>",
            Place::End => {
                return Ok(InspectionFile {
                    form: Form::Xml,
                    language: self.language,
                    version: self.version,
                    notices: self.notices,
                    inspections: self.inspections,
                });
            }
            Place::Start => "<DATA>",
            _ => "</DATA>",
        };
        Err(ReadError::new(ReadCode::CutShort, line, expected, "the end of the file"))
    }
}

/// Returns whether an element of this name belongs into an inspection: `ZC`, or a field such as `AAA`.
fn belongs_inside(name: &str) -> bool {
    name == "ZC" || name.len() == 3 && name.bytes().all(|byte| byte.is_ascii_uppercase())
}

fn wrong(line: u64, expected: impl Into<String>, found: impl AsRef<str>) -> ReadError {
    ReadError::new(ReadCode::Xml, line, expected, found)
}

fn not_data(line: u64, name: &str) -> ReadError {
    let expected = "the root element <DATA>";
    ReadError::new(ReadCode::NotAnInspectionFile, line, expected, format!("<{name}>"))
}

fn too_many(line: u64, most: usize, what: &str) -> ReadError {
    ReadError::new(ReadCode::TooLarge, line, format!("at most {most} {what}"), "more")
}
