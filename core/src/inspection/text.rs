//! The text form: `#A…` file header, then `#B…`, `#C`, `#Z` for each inspection.

use super::decode::Decoded;
use super::fields::{Header, observation};
use super::lines::{Line, Lines, Mark, mark};
use super::row::{Dialect, cells};
use super::{Form, Inspection, InspectionFile, Notice, NoticeCode, Observation};
use super::{MOST_INSPECTIONS, MOST_OBSERVATIONS, ReadCode, ReadError};
use std::collections::{BTreeMap, BTreeSet};
use std::iter::Peekable;

/// Returns the file that the text form says.
pub(super) fn read(decoded: Decoded) -> Result<InspectionFile, ReadError> {
    let mut reader = Reader::new(&decoded.text, decoded.notices);
    let header = reader.file_header()?;
    let dialect = header.dialect(reader.last_line)?;
    let mut inspections = Vec::new();
    while reader.skip_blank_lines() {
        if inspections.len() == MOST_INSPECTIONS {
            return Err(reader.too_many(MOST_INSPECTIONS, "inspections"));
        }
        inspections.push(reader.inspection(&dialect)?);
    }
    if inspections.is_empty() {
        return Err(ReadError::new(
            ReadCode::CutShort,
            reader.last_line,
            "an inspection (#B01=)",
            "the end of the file",
        ));
    }
    Ok(InspectionFile {
        form: Form::Text,
        language: header.value("A2"),
        version: header.value("A6"),
        notices: reader.notices,
        inspections,
    })
}

/// The `#A…` lines: name to value and line.
struct FileHeader(BTreeMap<String, (String, u64)>);

impl FileHeader {
    fn value(&self, name: &str) -> Option<String> {
        let text = self.0.get(name)?.0.trim();
        (!text.is_empty()).then(|| text.to_owned())
    }

    /// Returns separator, decimal mark and quote mark.
    ///
    /// Errors: `FileHeader` if one is missing, longer than one character, or the same as another.
    fn dialect(&self, last_line: u64) -> Result<Dialect, ReadError> {
        let separator = self.character("A3", "the field separator", last_line)?;
        let decimal = self.character("A4", "the decimal mark", last_line)?;
        let quote = match self.0.get("A5") {
            Some((text, _)) if text.trim().is_empty() => None,
            _ => Some(self.character("A5", "the character around text", last_line)?),
        };
        if separator == decimal || quote == Some(separator) || quote == Some(decimal) {
            let line = self.0.get("A5").map_or(last_line, |(_, line)| *line);
            let found = format!("{separator:?}, {decimal:?}, {}", quote.map_or_else(String::new, |q| format!("{q:?}")));
            let expected = "three different characters in #A3, #A4 and #A5";
            return Err(ReadError::new(ReadCode::FileHeader, line, expected, found));
        }
        Ok(Dialect { separator, decimal, quote })
    }

    fn character(&self, name: &str, meaning: &str, last_line: u64) -> Result<char, ReadError> {
        let expected = || format!("#{name}= with {meaning}, one character");
        let Some((text, line)) = self.0.get(name) else {
            return Err(ReadError::new(ReadCode::FileHeader, last_line, expected(), "no such line"));
        };
        let only = |text: &str| {
            let mut chars = text.chars();
            chars.next().filter(|c| chars.next().is_none() && !c.is_alphanumeric() && *c != '#')
        };
        only(text.trim())
            .or_else(|| only(text))
            .ok_or_else(|| ReadError::new(ReadCode::FileHeader, *line, expected(), text))
    }
}

struct Reader<'a> {
    lines: Peekable<Lines<'a>>,
    last_line: u64,
    ends_with_line_end: bool,
    notices: Vec<Notice>,
    observations: usize,
}

impl<'a> Reader<'a> {
    fn new(text: &'a str, notices: Vec<Notice>) -> Self {
        let lines = Lines::new(text).peekable();
        Self { lines, last_line: 1, ends_with_line_end: text.ends_with(['\n', '\r']), notices, observations: 0 }
    }

    fn next_line(&mut self) -> Option<Line<'a>> {
        let line = self.lines.next()?;
        self.last_line = line.number;
        Some(line)
    }

    /// Returns whether a line that is not blank follows.
    fn skip_blank_lines(&mut self) -> bool {
        while self.lines.next_if(|line| line.text.trim().is_empty()).is_some() {}
        self.lines.peek().is_some()
    }

    fn file_header(&mut self) -> Result<FileHeader, ReadError> {
        let mut fields = BTreeMap::new();
        while self.skip_blank_lines() {
            let Some(line) = self.lines.peek().copied() else {
                break;
            };
            let Some(Mark::File(name, value)) = mark(line.text) else {
                break;
            };
            let earlier = fields.insert(name.to_owned(), (value.to_owned(), line.number));
            if earlier.is_some() {
                let expected = format!("one line #{name}=");
                return Err(ReadError::new(ReadCode::FileHeader, line.number, expected, line.text));
            }
            self.next_line();
        }
        if fields.is_empty() {
            let found = self.lines.peek().map_or("nothing", |line| line.text);
            let expected = "#A1= of the text form or <DATA> of the XML form";
            return Err(ReadError::new(ReadCode::NotAnInspectionFile, 1, expected, found));
        }
        Ok(FileHeader(fields))
    }

    fn inspection(&mut self, dialect: &Dialect) -> Result<Inspection, ReadError> {
        let mut header = Header::default();
        let mut observations = Vec::new();
        let mut source_line = None;
        loop {
            let Some(line) = self.line_of_inspection(&observations)? else {
                let start = source_line.unwrap_or(self.last_line);
                return header.into_inspection(observations, dialect.decimal, start, &mut self.notices);
            };
            match mark(line.text) {
                Some(Mark::Fields(names)) if observations.is_empty() => {
                    source_line.get_or_insert(line.number);
                    self.header_block(names, line.number, dialect, &mut header)?;
                }
                Some(Mark::Columns(names)) if source_line.is_some() => {
                    self.observation_block(names, line.number, dialect, &mut observations)?;
                }
                Some(Mark::End) if source_line.is_some() => {
                    let start = source_line.unwrap_or(line.number);
                    return header.into_inspection(observations, dialect.decimal, start, &mut self.notices);
                }
                _ => return Err(out_of_order(line, source_line.is_some())),
            }
        }
    }

    /// Returns the next line, or `None` where the file ends and its last inspection is whole without `#Z`.
    fn line_of_inspection(&mut self, observations: &[Observation]) -> Result<Option<Line<'a>>, ReadError> {
        self.skip_blank_lines();
        let last = self.last_line;
        let line = self.next_line();
        if line.is_some() || !(self.ends_with_line_end && arrived(observations)) {
            let cut = || ReadError::new(ReadCode::CutShort, last, "#Z", "the end of the file");
            return line.ok_or_else(cut).map(Some);
        }
        let text = "the last inspection ends without #Z, but it reaches its end".to_owned();
        self.notices.push(Notice { code: NoticeCode::NoEndMark, line: last, text });
        Ok(None)
    }

    /// Reads the row of values that follows `#B…=`.
    fn header_block(&mut self, names: &str, at: u64, dialect: &Dialect, header: &mut Header) -> Result<(), ReadError> {
        let names = columns(names, at, dialect)?;
        let expected = || format!("a row with the values of {}", names.join(", "));
        let Some(row) = self.next_line() else {
            return Err(ReadError::new(ReadCode::CutShort, at, expected(), "the end of the file"));
        };
        if mark(row.text).is_some() {
            return Err(ReadError::new(ReadCode::OutOfOrder, row.number, expected(), row.text));
        }
        let values = cells(row.text, row.number, dialect)?;
        fits(&values, names.len(), row.number)?;
        for (name, value) in names.iter().zip(&values) {
            header.put(name, value, row.number)?;
        }
        Ok(())
    }

    /// Reads the rows that follow `#C=`.
    fn observation_block(
        &mut self,
        names: &str,
        at: u64,
        dialect: &Dialect,
        observations: &mut Vec<Observation>,
    ) -> Result<(), ReadError> {
        let letters = self.letters(columns(names, at, dialect)?, at)?;
        while let Some(row) = self.lines.next_if(|line| mark(line.text).is_none()) {
            self.last_line = row.number;
            let values = cells(row.text, row.number, dialect)?;
            fits(&values, letters.len(), row.number)?;
            if values.iter().all(|value| value.trim().is_empty()) {
                continue;
            }
            self.observations += 1;
            if self.observations > MOST_OBSERVATIONS {
                return Err(self.too_many(MOST_OBSERVATIONS, "observations"));
            }
            let row_cells = letters.iter().zip(&values).map(|(letter, value)| (*letter, value.as_ref()));
            observations.push(observation(row_cells, row.number, dialect.decimal, &mut self.notices)?);
        }
        Ok(())
    }

    /// Returns the columns as letters; a column that the format does not have becomes a blank with a notice.
    fn letters(&mut self, names: Vec<String>, at: u64) -> Result<Vec<char>, ReadError> {
        if !names.iter().any(|name| name == "A") {
            let expected = "a column A (main code)";
            return Err(ReadError::new(ReadCode::Column, at, expected, names.join(" ")));
        }
        let letter = |name: String| match name.as_bytes() {
            [letter @ b'A'..=b'N'] => char::from(*letter),
            _ => {
                let text = format!("column {name} is not in EN 13508-2: left out");
                self.notices.push(Notice { code: NoticeCode::UnknownColumn, line: at, text });
                ' '
            }
        };
        Ok(names.into_iter().map(letter).collect())
    }

    fn too_many(&self, most: usize, what: &str) -> ReadError {
        ReadError::new(ReadCode::TooLarge, self.last_line, format!("at most {most} {what}"), "more")
    }
}

/// Returns the names of columns, without empty ones at the end.
///
/// Errors: `Column` if a name is empty or stands twice.
fn columns(names: &str, at: u64, dialect: &Dialect) -> Result<Vec<String>, ReadError> {
    let mut names: Vec<String> = cells(names, at, dialect)?.iter().map(|name| name.trim().to_owned()).collect();
    while names.last().is_some_and(String::is_empty) {
        names.pop();
    }
    let mut seen = BTreeSet::new();
    if let Some(name) = names.iter().find(|name| name.is_empty() || !seen.insert(name.as_str())) {
        let expected = "names of fields, each once";
        let found = if name.is_empty() { "an empty name".to_owned() } else { format!("{name} twice") };
        return Err(ReadError::new(ReadCode::Column, at, expected, found));
    }
    if names.is_empty() {
        return Err(ReadError::new(ReadCode::Column, at, "names of fields", ""));
    }
    Ok(names)
}

/// Refuses a row with more cells than columns, unless the cells beyond are empty.
fn fits(values: &[impl AsRef<str>], columns: usize, line: u64) -> Result<(), ReadError> {
    let beyond = values.iter().skip(columns).find(|value| !value.as_ref().trim().is_empty());
    beyond.map_or(Ok(()), |_| {
        let expected = format!("at most {columns} cells");
        Err(ReadError::new(ReadCode::TooManyCells, line, expected, format!("{} cells", values.len())))
    })
}

fn out_of_order(line: Line<'_>, begun: bool) -> ReadError {
    let expected = if begun { "#B…=, #C= or #Z" } else { "#B01= of the next inspection" };
    ReadError::new(ReadCode::OutOfOrder, line.number, expected, line.text)
}

/// Returns whether the camera arrived (BCE) or the inspection was given up (BDC): then nothing more is to come.
fn arrived(observations: &[Observation]) -> bool {
    observations.iter().any(|o| matches!(o.code.as_str(), "BCE" | "BDC"))
}
