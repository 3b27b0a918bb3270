//! The messages of the screens, taken apart: a screen puts values in and picks the form, and reads no syntax.

use std::collections::BTreeMap;

use fluent_syntax::ast;
use serde::Serialize;

use super::Language;
use super::catalogue::sources;

/// A message: text, or parts one after the other.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(untagged)]
pub enum Pattern {
    Text(String),
    /// The value of this name.
    Value {
        value: String,
    },
    /// The form for a number: by the number itself, else by its plural category (CLDR), else `other`.
    Forms {
        by: String,
        forms: BTreeMap<String, Pattern>,
        other: Box<Pattern>,
    },
    Parts(Vec<Pattern>),
}

/// Returns the messages of the screens in a language by their ids, in English where it lacks one.
pub fn screens(language: Language) -> BTreeMap<String, Pattern> {
    let mut all = messages(Language::En);
    if language != Language::En {
        all.extend(messages(language));
    }
    all
}

/// Returns the messages of the screens that a language has itself.
pub(super) fn messages(language: Language) -> BTreeMap<String, Pattern> {
    let files = sources(language).iter().filter(|(name, _)| name.starts_with("screens/"));
    let resources = files.map(|(_, text)| match fluent_syntax::parser::parse(*text) {
        Ok(resource) | Err((resource, _)) => resource,
    });
    resources
        .flat_map(|resource| resource.body)
        .filter_map(|entry| match entry {
            ast::Entry::Message(message) => Some((message.id.name.to_owned(), pattern(&message.value?))),
            _ => None,
        })
        .collect()
}

fn pattern(of: &ast::Pattern<&str>) -> Pattern {
    let mut parts: Vec<Pattern> = vec![];
    for element in &of.elements {
        let part = match element {
            ast::PatternElement::TextElement { value } => Pattern::Text((*value).to_owned()),
            ast::PatternElement::Placeable { expression } => placed(expression),
        };
        match (parts.last_mut(), part) {
            (Some(Pattern::Text(before)), Pattern::Text(more)) => before.push_str(&more),
            (_, part) => parts.push(part),
        }
    }
    if parts.len() == 1 { parts.remove(0) } else { Pattern::Parts(parts) }
}

fn placed(expression: &ast::Expression<&str>) -> Pattern {
    match expression {
        ast::Expression::Inline(inline) => inlined(inline),
        ast::Expression::Select { selector, variants } => {
            let name = |key: &ast::VariantKey<&str>| match key {
                ast::VariantKey::Identifier { name } => (*name).to_owned(),
                ast::VariantKey::NumberLiteral { value } => (*value).to_owned(),
            };
            let other = variants.iter().find(|variant| variant.default);
            Pattern::Forms {
                by: match selector {
                    ast::InlineExpression::VariableReference { id } => id.name.to_owned(),
                    _ => String::new(),
                },
                forms: variants
                    .iter()
                    .filter(|one| !one.default)
                    .map(|one| (name(&one.key), pattern(&one.value)))
                    .collect(),
                other: Box::new(other.map_or(Pattern::Text(String::new()), |one| pattern(&one.value))),
            }
        }
    }
}

/// A string in quotes is text, a variable is a value; the screens use nothing else, which a test holds to.
fn inlined(inline: &ast::InlineExpression<&str>) -> Pattern {
    match inline {
        ast::InlineExpression::StringLiteral { value } | ast::InlineExpression::NumberLiteral { value } => {
            Pattern::Text(fluent_syntax::unicode::unescape_unicode_to_string(value).into_owned())
        }
        ast::InlineExpression::VariableReference { id } => Pattern::Value { value: id.name.to_owned() },
        ast::InlineExpression::Placeable { expression } => placed(expression),
        _ => Pattern::Value { value: "?".into() },
    }
}
