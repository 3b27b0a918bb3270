//! From bytes to text: by the byte-order mark, else by what the file says of itself, else by what the bytes are.

use super::{Notice, NoticeCode, ReadCode, ReadError};
use encoding_rs::{Encoding, UTF_8, UTF_16BE, UTF_16LE, WINDOWS_1252};

/// The whole file as text, and what had to be said about it.
pub(super) struct Decoded {
    pub text: String,
    pub notices: Vec<Notice>,
}

/// Returns the text of the file.
///
/// A byte-order mark wins. Then the named set, unless the bytes contradict it: bytes that are not valid in the named
/// set, or that are valid UTF-8 beyond ASCII where another set is named, are read as what they are, at last as
/// Windows-1252. ISO-8859-1 is read as its superset Windows-1252. Every departure from the named set is a notice.
/// Errors: `ControlCharacter` for what no text file holds.
pub(super) fn decode(bytes: &[u8]) -> Result<Decoded, ReadError> {
    let (marked, start) = Encoding::for_bom(bytes).map_or((None, 0), |(set, len)| (Some(set), len));
    let body = bytes.get(start..).unwrap_or_default();
    let label = declared_label(body);
    let declared = label.as_deref().and_then(by_label);
    let chosen = match marked.or_else(|| without_mark(body)) {
        Some(set) if set != UTF_8 || std::str::from_utf8(body).is_ok() => set,
        _ => by_content(body, declared),
    };
    let (text, lossy) = chosen.decode_without_bom_handling(body);
    let mut notices = Vec::new();
    notices.extend(departure(label.as_deref(), declared, chosen));
    let text = clean(text.into_owned(), lossy, &mut notices)?;
    Ok(Decoded { text, notices })
}

/// Returns the label that the file gives itself: `#A1=` in the text form, `encoding="…"` in the XML form.
fn declared_label(body: &[u8]) -> Option<String> {
    let ascii = body.iter().take(400).filter(|byte| **byte != 0);
    let head: String = ascii.map(|byte| char::from(*byte)).collect();
    let head = head.trim_start();
    if let Some(rest) = head.strip_prefix("#A1=") {
        return rest.split(['\n', '\r']).next().map(|label| label.trim().to_owned());
    }
    let declaration = head.strip_prefix("<?xml")?.split("?>").next()?;
    let value = declaration.split_once("encoding")?.1.trim_start();
    let value = value.strip_prefix('=')?.trim_start();
    let quote = value.chars().next().filter(|c| matches!(c, '"' | '\''))?;
    value.split(quote).nth(1).map(|label| label.trim().to_owned())
}

/// Returns the set of a label such as `ISO-8859-1:1998`; the year is not part of the name.
fn by_label(label: &str) -> Option<&'static Encoding> {
    let name = label.split(':').next().unwrap_or_default().trim();
    Encoding::for_label(name.replace(' ', "-").as_bytes())
}

/// Returns the two-byte set of a file without a mark: both forms begin with an ASCII character.
fn without_mark(body: &[u8]) -> Option<&'static Encoding> {
    match body {
        [0, b'#' | b'<', ..] => Some(UTF_16BE),
        [b'#' | b'<', 0, ..] => Some(UTF_16LE),
        _ => None,
    }
}

fn by_content(body: &[u8], declared: Option<&'static Encoding>) -> &'static Encoding {
    if body.is_ascii() {
        return declared.filter(|set| set.is_ascii_compatible()).unwrap_or(UTF_8);
    }
    if std::str::from_utf8(body).is_ok() {
        return UTF_8;
    }
    let fits = |set: &&'static Encoding| {
        !is_wide(set) && set.decode_without_bom_handling_and_without_replacement(body).is_some()
    };
    declared.filter(fits).unwrap_or(WINDOWS_1252)
}

fn is_wide(set: &'static Encoding) -> bool {
    set == UTF_16LE || set == UTF_16BE
}

fn departure(label: Option<&str>, declared: Option<&'static Encoding>, chosen: &'static Encoding) -> Option<Notice> {
    let read_as = chosen.name();
    let text = match (label, declared) {
        (Some(_), Some(named)) if named == chosen || is_wide(named) && is_wide(chosen) => {
            return None;
        }
        (None, _) if chosen == UTF_8 => return None,
        (Some(label), Some(_)) => {
            format!("the file says {label}, its bytes say {read_as}: read as {read_as}")
        }
        (Some(label), None) => format!("the character set {label} is not known: read as {read_as}"),
        (None, _) => format!("the file names no character set: read as {read_as}"),
    };
    Some(Notice { code: NoticeCode::CharacterSet, line: 1, text: super::error::shown(&text) })
}

/// Returns the text without a closing end-of-file mark, with characters that have no meaning replaced and counted.
fn clean(text: String, lossy: bool, notices: &mut Vec<Notice>) -> Result<String, ReadError> {
    let body = text.trim_end_matches(['\u{1A}', '\0']);
    let meaningless = |c: char| matches!(c, '\u{80}'..='\u{9F}');
    if let Some(at) = body.find(|c: char| c.is_control() && !matches!(c, '\t' | '\r' | '\n') && !meaningless(c)) {
        return Err(control_character(body, at));
    }
    let lost = body.chars().filter(|c| meaningless(*c) || lossy && *c == '\u{FFFD}').count();
    if lost > 0 {
        let text = format!("{lost} characters have no meaning in the character set and are shown as \u{FFFD}");
        notices.push(Notice { code: NoticeCode::LostCharacters, line: 1, text });
    }
    Ok(body.replace(meaningless, "\u{FFFD}"))
}

fn control_character(text: &str, at: usize) -> ReadError {
    let (before, from) = text.split_at(at);
    let line = 1 + line_ends(before.as_bytes());
    let number = from.chars().next().map_or(0, u32::from);
    ReadError::new(ReadCode::ControlCharacter, line, "text", format!("the control character U+{number:04X}"))
}

/// Returns how many lines end in the text: by CRLF, LF or CR.
pub(super) fn line_ends(text: &[u8]) -> u64 {
    let next = text.iter().skip(1).map(Some).chain([None]);
    let ends = text.iter().zip(next).filter(|(byte, next)| match byte {
        b'\n' => true,
        b'\r' => *next != Some(&b'\n'),
        _ => false,
    });
    ends.count() as u64
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(bytes: &[u8]) -> (String, Vec<NoticeCode>) {
        let decoded = decode(bytes).unwrap();
        (decoded.text, decoded.notices.iter().map(|n| n.code).collect())
    }

    #[test]
    fn latin_1_is_read_as_it_says() {
        assert_eq!(read(b"#A1=ISO-8859-1:1998\r\n\xE4"), ("#A1=ISO-8859-1:1998\r\n\u{E4}".into(), vec![]));
    }

    #[test]
    fn plain_ascii_needs_no_notice_whatever_it_says() {
        assert_eq!(read(b"#A1=ISO-8859-1\n").1, []);
    }

    #[test]
    fn utf_8_that_calls_itself_latin_1_is_read_as_utf_8() {
        let (text, notices) = read("#A1=ISO-8859-1\nä".as_bytes());
        assert!(text.ends_with('ä'));
        assert_eq!(notices, [NoticeCode::CharacterSet]);
    }

    #[test]
    fn latin_1_that_calls_itself_utf_8_is_read_as_latin_1() {
        let (text, notices) = read(b"#A1=UTF-8\n\xFC");
        assert!(text.ends_with('ü'));
        assert_eq!(notices, [NoticeCode::CharacterSet]);
    }

    #[test]
    fn a_mark_wins_over_the_name() {
        let mut bytes = vec![0xFE, 0xFF];
        bytes.extend("#A1=ISO-8859-1\nä".encode_utf16().flat_map(u16::to_be_bytes));
        let (text, notices) = read(&bytes);
        assert!(text.starts_with("#A1=") && text.ends_with('ä'));
        assert_eq!(notices, [NoticeCode::CharacterSet]);
    }

    #[test]
    fn a_false_mark_does_not_spoil_the_text() {
        let (text, _) = read(b"\xEF\xBB\xBF#A1=ISO-8859-1\n\xFC");
        assert!(text.ends_with('ü'));
    }

    #[test]
    fn a_set_that_nobody_knows_is_named() {
        assert_eq!(read(b"#A1=EBCDIC-9\n\xFC").1, [NoticeCode::CharacterSet]);
    }

    #[test]
    fn a_zero_byte_is_refused_with_its_line() {
        let error = decode(b"#A1=UTF-8\nab\0c").err().unwrap();
        assert_eq!((error.code, error.line), (ReadCode::ControlCharacter, 2));
    }
}
