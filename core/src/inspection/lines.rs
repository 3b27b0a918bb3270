//! Lines of the text form, and what they are by their first characters.

/// A line of the file without its end.
#[derive(Clone, Copy)]
pub(super) struct Line<'a> {
    /// Counted from 1.
    pub number: u64,
    pub text: &'a str,
}

/// Lines ended by CRLF, LF or CR.
pub(super) struct Lines<'a> {
    rest: Option<&'a str>,
    number: u64,
}

impl<'a> Lines<'a> {
    pub fn new(text: &'a str) -> Self {
        Self { rest: Some(text), number: 0 }
    }
}

impl<'a> Iterator for Lines<'a> {
    type Item = Line<'a>;

    fn next(&mut self) -> Option<Line<'a>> {
        let rest = self.rest.take()?;
        self.number += 1;
        let end = rest.find(['\n', '\r']);
        let (text, after) = end.map_or((rest, ""), |end| rest.split_at(end));
        let after = after.strip_prefix("\r\n").or_else(|| after.strip_prefix(['\n', '\r']));
        self.rest = after.filter(|after| !after.is_empty());
        Some(Line { number: self.number, text })
    }
}

/// What a line is by its first characters; anything else is a row.
#[derive(Debug, PartialEq, Eq)]
pub(super) enum Mark<'a> {
    /// `#A…=`: a field of the file header.
    File(&'a str, &'a str),
    /// `#B01=`: the names of header fields.
    Fields(&'a str),
    /// `#C=`: the names of observation columns.
    Columns(&'a str),
    /// `#Z`: the end of an inspection.
    End,
}

/// Returns what the line is, or `None` for a row. Separators behind `#Z`, as spreadsheets leave them, say nothing.
pub(super) fn mark(line: &str) -> Option<Mark<'_>> {
    let body = line.strip_prefix('#')?;
    let (name, value) = body.split_once('=').unwrap_or((body.trim_end(), ""));
    let digits = |s: &str| s.len() <= 4 && s.bytes().all(|b| b.is_ascii_digit());
    match name.split_at_checked(1)? {
        ("A", number) if digits(number) => Some(Mark::File(name, value)),
        ("B", number) if digits(number) && body.contains('=') => Some(Mark::Fields(value)),
        ("C", "") if body.contains('=') => Some(Mark::Columns(value)),
        ("Z", rest) if !rest.contains(char::is_alphanumeric) && value.is_empty() => Some(Mark::End),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lines_end_with_crlf_lf_or_cr() {
        let lines: Vec<(u64, &str)> = Lines::new("a\r\nb\n\rc\n").map(|line| (line.number, line.text)).collect();
        assert_eq!(lines, [(1, "a"), (2, "b"), (3, ""), (4, "c")]);
    }

    #[test]
    fn a_line_is_known_by_its_first_characters() {
        assert_eq!(mark("#A3=;"), Some(Mark::File("A3", ";")));
        assert_eq!(mark("#B01=AAA;AAB"), Some(Mark::Fields("AAA;AAB")));
        assert_eq!(mark("#C=I;A"), Some(Mark::Columns("I;A")));
        assert_eq!(mark("#Z"), Some(Mark::End));
        assert_eq!(mark("#Z ;;;"), Some(Mark::End));
        for row in ["", "7.12;BAB", "#", "#5 Kettle Row;x", "#Zinc", "#Bxx=AAA", "#ä=1"] {
            assert_eq!(mark(row), None, "{row}");
        }
    }
}
