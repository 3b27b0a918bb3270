//! One line of the text form: separators, quotes, numbers.

use super::{MOST_COLUMNS, ReadCode, ReadError};
use std::borrow::Cow;

/// How a file writes its rows: #A3, #A4, #A5.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Dialect {
    pub separator: char,
    pub decimal: char,
    /// `None` if the file names no character around text.
    pub quote: Option<char>,
}

/// Returns the cells of a line, as written: spaces stay, quotes go.
///
/// A quoted cell begins with the quote mark (spaces before it are allowed); inside, a doubled mark is one mark and a
/// separator is text. A quote mark inside a cell that does not begin with it is text.
/// Errors: `Quote` if a quoted cell does not end on its line or goes on behind its end; `TooLarge`.
pub(super) fn cells<'a>(line: &'a str, number: u64, dialect: &Dialect) -> Result<Vec<Cow<'a, str>>, ReadError> {
    let mut cells = Vec::new();
    let mut rest = line;
    loop {
        let (cell, after) = match quoted_start(rest, dialect) {
            Some(inside) => quoted(inside, number, dialect)?,
            None => plain(rest, dialect),
        };
        cells.push(cell);
        if cells.len() > MOST_COLUMNS {
            let expected = format!("at most {MOST_COLUMNS} cells");
            return Err(ReadError::new(ReadCode::TooLarge, number, expected, "more"));
        }
        match after {
            Some(next) => rest = next,
            None => return Ok(cells),
        }
    }
}

/// Returns what stands behind the opening quote mark, if the cell begins with one.
fn quoted_start<'a>(rest: &'a str, dialect: &Dialect) -> Option<&'a str> {
    let trimmed = if dialect.separator == ' ' { rest } else { rest.trim_start_matches(' ') };
    trimmed.strip_prefix(dialect.quote?)
}

fn plain<'a>(rest: &'a str, dialect: &Dialect) -> (Cow<'a, str>, Option<&'a str>) {
    match rest.split_once(dialect.separator) {
        Some((cell, after)) => (Cow::Borrowed(cell), Some(after)),
        None => (Cow::Borrowed(rest), None),
    }
}

/// Returns the text of a quoted cell whose opening mark has been taken, and what follows its separator.
fn quoted<'a>(inside: &'a str, number: u64, dialect: &Dialect) -> Result<(Cow<'a, str>, Option<&'a str>), ReadError> {
    let Some(quote) = dialect.quote else {
        return Ok(plain(inside, dialect));
    };
    let mut text = String::new();
    let mut rest = inside;
    loop {
        let Some((before, after)) = rest.split_once(quote) else {
            let expected = format!("the closing {quote} on the same line");
            return Err(ReadError::new(ReadCode::Quote, number, expected, inside));
        };
        text.push_str(before);
        match after.strip_prefix(quote) {
            Some(on) => {
                text.push(quote);
                rest = on;
            }
            None => return Ok((Cow::Owned(text), behind_quote(after, number, dialect)?)),
        }
    }
}

fn behind_quote<'a>(after: &'a str, number: u64, dialect: &Dialect) -> Result<Option<&'a str>, ReadError> {
    let trimmed = if dialect.separator == ' ' { after } else { after.trim_start_matches(' ') };
    if trimmed.is_empty() {
        return Ok(None);
    }
    trimmed.strip_prefix(dialect.separator).map(Some).ok_or_else(|| {
        let expected = format!("a separator {:?} behind the closing quote", dialect.separator);
        ReadError::new(ReadCode::Quote, number, expected, after)
    })
}

/// Returns a number in millionths, or `None` if the text is no plain number with this decimal mark.
///
/// Digits with at most one mark and a sign; no exponent, no grouping, at most 9 digits before the mark. Rounds half
/// away from zero beyond the sixth place.
pub(super) fn millionths(text: &str, decimal: char) -> Option<i64> {
    let unsigned = text.strip_prefix(['-', '+']).unwrap_or(text);
    let (whole, part) = unsigned.split_once(decimal).unwrap_or((unsigned, ""));
    let digits = |s: &str| s.bytes().all(|b| b.is_ascii_digit());
    let fits = whole.len() <= 9 && part.len() <= 12 && whole.len() + part.len() > 0;
    if !fits || !digits(whole) || !digits(part) {
        return None;
    }
    let places = |from: usize| part.bytes().chain(std::iter::repeat(b'0')).skip(from);
    let digit = |b: u8| i64::from(b - b'0');
    let all = whole.bytes().chain(places(0).take(6));
    let count = all.fold(0i64, |sum, b| sum * 10 + digit(b));
    let rounded = count + i64::from(places(6).next().is_some_and(|b| b >= b'5'));
    Some(if text.starts_with('-') { -rounded } else { rounded })
}

#[cfg(test)]
mod tests {
    use super::*;

    const COMMA: Dialect = Dialect { separator: ',', decimal: '.', quote: Some('"') };

    fn split(line: &str) -> Vec<String> {
        cells(line, 1, &COMMA).unwrap().into_iter().map(Cow::into_owned).collect()
    }

    #[test]
    fn a_separator_inside_quotes_is_text() {
        assert_eq!(split(r#"1,"a, b",,"#), ["1", "a, b", "", ""]);
    }

    #[test]
    fn a_doubled_quote_is_one_quote() {
        assert_eq!(split(r#""the ""old"" tap","""",x"#), [r#"the "old" tap"#, "\"", "x"]);
    }

    #[test]
    fn a_quote_inside_a_plain_cell_is_text() {
        assert_eq!(split(r#"4" tap,x"#), ["4\" tap", "x"]);
    }

    #[test]
    fn an_empty_line_is_one_empty_cell() {
        assert_eq!(split(""), [""]);
    }

    #[test]
    fn a_quote_that_does_not_close_is_refused() {
        assert_eq!(cells(r#"1,"abc"#, 7, &COMMA).unwrap_err().line, 7);
        assert_eq!(cells(r#"1,"ab"c,"#, 7, &COMMA).unwrap_err().code, ReadCode::Quote);
    }

    #[test]
    fn numbers_are_exact_in_millionths() {
        for (text, value) in [("0", 0), ("23.5", 23_500_000), ("-.5", -500_000), ("7.", 7_000_000), ("+1", 1_000_000)] {
            assert_eq!(millionths(text, '.'), Some(value), "{text}");
        }
        assert_eq!(millionths("1,0000005", ','), Some(1_000_001));
    }

    #[test]
    fn what_is_no_plain_number_is_none() {
        for text in ["", ".", "-", "1e3", "NaN", "1.2.3", "1 000", "1,5", "MH 031", "٣", "12345678901"] {
            assert_eq!(millionths(text, '.'), None, "{text}");
        }
    }
}
