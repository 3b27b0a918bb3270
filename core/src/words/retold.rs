//! Texts that this program puts into a record or a refusal, said again in the language of who reads.
//!
//! A record is in English, whoever taps, and an old one has to read the same. So its English is the key: where it is
//! shown, it is looked up, and what stands nowhere in the catalogue, as all that people type, stays as it is.

use std::collections::HashMap;
use std::sync::OnceLock;

use fluent_syntax::ast;

use super::catalogue::sources;
use super::{Filling, Language, reader, say, say_in};

/// Sentences of the screens that are recorded as they stand there.
const ALSO: [&str; 2] = ["ended-says_", "trouble-reason_"];

/// One part of an English message: text, or the name of a value.
enum Piece {
    Text(&'static str),
    Value(&'static str),
}

struct Known {
    /// The ids of messages without values, by their text.
    whole: HashMap<String, &'static str>,
    /// Those with values, the most telling first.
    formed: Vec<(Vec<Piece>, &'static str)>,
}

fn known() -> &'static Known {
    static KNOWN: OnceLock<Known> = OnceLock::new();
    KNOWN.get_or_init(|| {
        let (mut whole, mut formed) = (HashMap::new(), vec![]);
        for (id, pieces) in messages() {
            match &pieces[..] {
                [Piece::Text(text)] => drop(whole.insert((*text).to_owned(), id)),
                _ => formed.push((pieces, id)),
            }
        }
        formed.sort_by_key(|(pieces, _)| std::cmp::Reverse(telling(pieces)));
        Known { whole, formed }
    })
}

/// Returns the English messages that are recorded, each with its parts. One with forms is none.
fn messages() -> Vec<(&'static str, Vec<Piece>)> {
    let resources = sources(Language::En).iter().flat_map(|(file, text)| {
        let (Ok(resource) | Err((resource, _))) = fluent_syntax::parser::parse(*text);
        resource.body.into_iter().map(|entry| (file.starts_with("recorded/"), entry))
    });
    resources
        .filter_map(|(own, entry)| {
            let ast::Entry::Message(message) = entry else { return None };
            let id = message.id.name;
            let asked = own || ALSO.iter().any(|begins| id.starts_with(begins));
            let pieces = message.value?.elements.into_iter().map(piece).collect::<Option<Vec<_>>>();
            Some((id, pieces.filter(|_| asked)?))
        })
        .collect()
}

fn piece(element: ast::PatternElement<&'static str>) -> Option<Piece> {
    match element {
        ast::PatternElement::TextElement { value } => Some(Piece::Text(value)),
        ast::PatternElement::Placeable {
            expression: ast::Expression::Inline(ast::InlineExpression::VariableReference { id }),
        } => Some(Piece::Value(id.name)),
        ast::PatternElement::Placeable { .. } => None,
    }
}

/// Returns how many letters of a message stand fast.
fn telling(pieces: &[Piece]) -> usize {
    pieces.iter().map(|piece| if let Piece::Text(text) = piece { text.len() } else { 0 }).sum()
}

/// Returns a recorded text in the language of who reads: whole, with its values, or each part of a list of them.
pub fn retold(text: &str) -> String {
    if reader().language == Language::En {
        return text.to_owned();
    }
    found(text).or_else(|| all_of(text)).unwrap_or_else(|| text.to_owned())
}

/// Returns a list with commas in the language of who reads; a part that nobody knows stays as it is.
pub fn retold_parts(text: &str) -> String {
    if reader().language == Language::En {
        return text.to_owned();
    }
    list(text).into_iter().map(|(part, said)| said.unwrap_or_else(|| part.to_owned())).collect::<Vec<_>>().join(", ")
}

/// Returns sentences one after the other in the language of who reads; one that nobody knows stays as it is.
pub fn retold_sentences(text: &str) -> String {
    if reader().language == Language::En {
        return text.to_owned();
    }
    let said = parts(text, " ", |part| part.ends_with(['.', '!', '?']), |_| true);
    said.into_iter().map(|(part, said)| said.unwrap_or_else(|| part.to_owned())).collect::<Vec<_>>().join(" ")
}

/// Returns the English of a text that a screen said in the language of who reads; any other as it stands.
pub fn as_recorded(text: &str) -> String {
    let language = reader().language;
    let of = |id: &&str| language != Language::En && say_in(language, id).as_deref() == Some(text);
    let id = known().whole.values().filter(|id| ALSO.iter().any(|begins| id.starts_with(begins))).find(|id| of(id));
    id.and_then(|id| say_in(Language::En, id)).unwrap_or_else(|| text.to_owned())
}

fn found(text: &str) -> Option<String> {
    found_with(text, &|_| true)
}

/// Returns a text said again, if it is a message whose values are all `plain`.
fn found_with(text: &str, plain: &impl Fn(&str) -> bool) -> Option<String> {
    let known = known();
    if let Some(id) = known.whole.get(text) {
        return Some(say(id, &[]));
    }
    known.formed.iter().find_map(|(pieces, id)| {
        let values = read(pieces, text)?;
        if !values.iter().all(|(_, value)| plain(value)) {
            return None;
        }
        let values: Vec<_> = values.into_iter().map(|(name, value)| (name, retold(value))).collect();
        let fillings: Vec<(&str, Filling)> = values.iter().map(|(name, value)| (*name, value.into())).collect();
        Some(say(id, &fillings))
    })
}

fn all_of(text: &str) -> Option<String> {
    let parts: Option<Vec<String>> = list(text).into_iter().map(|(_, said)| said).collect();
    parts.filter(|parts| parts.len() > 1).map(|parts| parts.join(", "))
}

fn list(text: &str) -> Vec<(&str, Option<String>)> {
    parts(text, ", ", |_| true, |value| !value.contains(", "))
}

/// Returns the parts of a text, each as long as one that is known: a known text may itself hold what stands between two.
fn parts<'t>(
    text: &'t str,
    between: &str,
    ends: impl Fn(&str) -> bool,
    plain: impl Fn(&str) -> bool,
) -> Vec<(&'t str, Option<String>)> {
    let mut found_parts = vec![];
    let mut rest = text;
    while !rest.is_empty() {
        let all = rest.match_indices(between).map(|(at, _)| at).filter(|at| *at > 0 && ends(&rest[..*at]));
        let all: Vec<usize> = all.chain([rest.len()]).collect();
        let known = all.iter().rev().find_map(|end| Some((*end, Some(found_with(&rest[..*end], &plain)?))));
        let (end, said) = known.unwrap_or((all.first().copied().unwrap_or(rest.len()), None));
        found_parts.push((&rest[..end], said));
        rest = rest[end..].strip_prefix(between).unwrap_or_default();
    }
    found_parts
}

/// Returns the values of a message in a text, if the text is that message.
fn read<'t>(pieces: &[Piece], text: &'t str) -> Option<Vec<(&'static str, &'t str)>> {
    let (mut values, mut rest) = (vec![], text);
    for (place, piece) in pieces.iter().enumerate() {
        match (piece, pieces.get(place + 1)) {
            (Piece::Text(text), _) => rest = rest.strip_prefix(text)?,
            (Piece::Value(name), Some(Piece::Text(next))) => {
                let end = rest.find(next).filter(|end| *end > 0)?;
                values.push((*name, &rest[..end]));
                rest = &rest[end..];
            }
            (Piece::Value(name), _) => {
                values.push((*name, Some(rest).filter(|rest| !rest.is_empty())?));
                rest = "";
            }
        }
    }
    rest.is_empty().then_some(values)
}

/// Says whether a text is known.
#[cfg(test)]
pub(super) fn known_text(text: &str) -> bool {
    found(text).is_some()
}
