//! The messages, by their ids.

use std::sync::OnceLock;

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use unic_langid::LanguageIdentifier;

use super::{Language, reader};

/// What goes into a message: a text, or a number that may decide its form.
#[derive(Clone, Debug, PartialEq)]
pub enum Filling<'a> {
    Text(&'a str),
    Number(i64),
}

impl<'a> From<&'a str> for Filling<'a> {
    fn from(text: &'a str) -> Self {
        Self::Text(text)
    }
}

impl<'a> From<&'a String> for Filling<'a> {
    fn from(text: &'a String) -> Self {
        Self::Text(text)
    }
}

impl From<i64> for Filling<'_> {
    fn from(number: i64) -> Self {
        Self::Number(number)
    }
}

impl From<usize> for Filling<'_> {
    fn from(number: usize) -> Self {
        Self::Number(number as i64)
    }
}

/// What can stand in a message.
pub trait Fill {
    /// Returns it as a text, or as a number that may decide the form.
    fn filling(&self) -> Filling<'_>;
}

impl Fill for str {
    fn filling(&self) -> Filling<'_> {
        Filling::Text(self)
    }
}

impl Fill for String {
    fn filling(&self) -> Filling<'_> {
        Filling::Text(self)
    }
}

impl<T: Fill + ?Sized> Fill for &T {
    fn filling(&self) -> Filling<'_> {
        (**self).filling()
    }
}

macro_rules! numbers {
    ($($kind:ty),+) => {
        $(impl Fill for $kind {
            fn filling(&self) -> Filling<'_> {
                Filling::Number(i64::try_from(*self).unwrap_or(i64::MAX))
            }
        })+
    };
}

numbers!(u8, u32, i64, usize);

macro_rules! files {
    ($name:ident, $tag:literal) => {
        const $name: &[(&str, &str)] = files!(@all $tag; "rules", "planning", "quantities", "computed", "recorded/fields",
            "recorded/codes", "recorded/crew", "recorded/refusals", "recorded/checking", "recorded/faults", "recorded/worked",
            "screens/base",
            "screens/checks", "screens/office", "screens/paper", "screens/pictures", "screens/plan", "screens/record",
            "screens/repair", "screens/rules", "screens/shelf", "screens/stages", "screens/travel", "screens/roads",
            "screens/practice", "screens/proof", "screens/looks", "screens/keyed", "screens/backup", "screens/setup", "certificate/first",
            "certificate/course", "certificate/drawings", "certificate/evidence", "certificate/checks");
    };
    (@all $tag:literal; $($file:literal),+) => {
        &[$(($file, include_str!(concat!("../../words/", $tag, "/", $file, ".ftl")))),+]
    };
}

files!(ENGLISH, "en");
files!(GERMAN, "de");
files!(SPANISH, "es");
files!(FRENCH, "fr");

/// Returns the text of every file of a language, with its name.
pub(super) fn sources(language: Language) -> &'static [(&'static str, &'static str)] {
    match language {
        Language::En => ENGLISH,
        Language::De => GERMAN,
        Language::Es => SPANISH,
        Language::Fr => FRENCH,
    }
}

/// Returns the messages of the certificate as they stand in the files of a language; of those in several lines, the first.
#[cfg(test)]
pub fn certificate(language: Language) -> std::collections::BTreeMap<String, String> {
    let files = sources(language).iter().filter(|(name, _)| name.starts_with("certificate/"));
    let lines = files.flat_map(|(_, text)| text.lines()).filter_map(|line| line.split_once(" = "));
    lines.filter(|(id, _)| id.starts_with("cert-")).map(|(id, text)| (id.to_owned(), text.to_owned())).collect()
}

type Bundle = FluentBundle<FluentResource>;

/// Makes the bundle of a language. What can't be read in a file is left out; a test sees to it that there is nothing.
fn bundle(language: Language) -> Bundle {
    let tag: LanguageIdentifier = language.tag().parse().unwrap_or_default();
    let mut bundle = FluentBundle::new_concurrent(vec![tag]);
    bundle.set_use_isolating(false);
    for (_, text) in sources(language) {
        let (Ok(resource) | Err((resource, _))) = FluentResource::try_new((*text).to_owned());
        bundle.add_resource_overriding(resource);
    }
    bundle
}

fn spoken(language: Language) -> &'static Bundle {
    static ALL: [OnceLock<Bundle>; 4] = [const { OnceLock::new() }; 4];
    ALL[language as usize].get_or_init(|| bundle(language))
}

/// Returns the message of `id` for who reads, in English where their language lacks it.
///
/// A value that is missing shows as its name in braces, and an id without a message as itself, so that nothing is hidden.
pub fn say(id: &str, values: &[(&str, Filling)]) -> String {
    say_of(id, "", values)
}

/// Returns an attribute of a message, as `way-out`; the message itself where `attribute` is empty.
pub fn say_of(id: &str, attribute: &str, values: &[(&str, Filling)]) -> String {
    [reader().language, Language::En]
        .into_iter()
        .find_map(|language| said(language, id, attribute, values))
        .unwrap_or_else(|| if attribute.is_empty() { id.to_owned() } else { String::new() })
}

/// Says whether the catalogue has a message of this id.
pub(super) fn known(id: &str) -> bool {
    spoken(Language::En).get_message(id).is_some()
}

/// Returns the message of `id` in a language, without values.
pub(super) fn say_in(language: Language, id: &str) -> Option<String> {
    said(language, id, "", &[])
}

fn said(language: Language, id: &str, attribute: &str, values: &[(&str, Filling)]) -> Option<String> {
    let bundle = spoken(language);
    let message = bundle.get_message(id)?;
    let pattern = if attribute.is_empty() { message.value()? } else { message.get_attribute(attribute)?.value() };
    let args: FluentArgs = values.iter().map(|(name, filling)| (*name, value(filling))).collect();
    let text = bundle.format_pattern(pattern, Some(&args), &mut vec![]).into_owned();
    Some(if text.contains("{$") { text.replace("{$", "{") } else { text })
}

fn value<'a>(filling: &Filling<'a>) -> FluentValue<'a> {
    match filling {
        Filling::Text(text) => FluentValue::from(*text),
        Filling::Number(number) => FluentValue::from(*number),
    }
}

/// Returns a message with its values left as names in braces: `Cover is {cover_um} after all errors.`
pub fn raw(id: &str, attribute: &str) -> String {
    say_of(id, attribute, &[])
}
