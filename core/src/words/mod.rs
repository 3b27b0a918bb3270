//! Sentences and quantities as the reader wants them: one catalogue, four languages, two systems of units.
//!
//! Who reads is named once, at the door, by [`for_reader`], and holds until the answer is made. So a gate or a formula
//! says its sentence without carrying a language through everything that lies between. What is recorded is said plainly
//! ([`plainly`]): in English and in SI units, whoever taps.
//!
//! - `catalogue`: the messages, by their ids, in the syntax of Project Fluent 1.0.
//! - `computed`: what went into a calculation and came out of it.
//! - `patterns`: the messages of the screens, taken apart for them.
//! - `quantity`: figures with their units.
//! - `retold`: what a record says in English, in the language of who reads.

/// Says a message with its values, each by its name: `tell!("cert-photos-no_picture", why, at = clock.minute(at_ms))`.
macro_rules! tell {
    ($id:expr) => { $crate::words::say($id, &[]) };
    ($id:expr, $($name:ident $(= $value:expr)?),+ $(,)?) => {
        $crate::words::say($id, &[$((stringify!($name), $crate::words::Fill::filling(&tell!(@value $name $($value)?)))),+])
    };
    (@value $name:ident) => { $name };
    (@value $name:ident $value:expr) => { $value };
}
pub(crate) use tell;

mod catalogue;
mod computed;
mod patterns;
mod quantity;
mod retold;
#[cfg(test)]
mod tests;

use std::cell::Cell;

use serde::{Deserialize, Serialize};

#[cfg(test)]
pub use catalogue::certificate;
use catalogue::say_in;
pub use catalogue::{Fill, Filling, raw, say, say_of};
pub use computed::{Named, came_out, given, recorded, that_counts, unit_beside};
pub use patterns::{Pattern, screens};
pub use quantity::*;
#[cfg(test)]
use retold::known_text;
pub use retold::{as_recorded, retold, retold_parts, retold_sentences};

/// A language of the catalogue (ISO 639-1).
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Language {
    #[default]
    En,
    De,
    Es,
    Fr,
}

impl Language {
    /// Every language, the one first that stands in where another lacks a message.
    pub const ALL: [Self; 4] = [Self::En, Self::De, Self::Es, Self::Fr];

    /// Returns its tag (BCP 47).
    pub const fn tag(self) -> &'static str {
        match self {
            Self::En => "en",
            Self::De => "de",
            Self::Es => "es",
            Self::Fr => "fr",
        }
    }
}

/// A system of units.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Units {
    /// m, mm, bar, °C, g.
    #[default]
    Si,
    /// ft, in, psi, °F, oz: US customary.
    Us,
}

/// How a date is written.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Dates {
    /// 2026-10-14 (ISO 8601).
    #[default]
    Iso,
    /// As the language has it.
    Local,
}

/// Who reads: language, units and dates.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct Reader {
    pub language: Language,
    pub units: Units,
    pub dates: Dates,
}

thread_local! {
    static READER: Cell<Reader> = const { Cell::new(Reader { language: Language::En, units: Units::Si, dates: Dates::Iso }) };
}

/// Returns who reads now: English, SI and ISO 8601 where nobody was named.
pub fn reader() -> Reader {
    READER.get()
}

/// Says everything within `make` for `reader`.
pub fn for_reader<T>(reader: Reader, make: impl FnOnce() -> T) -> T {
    struct Before(Reader);
    impl Drop for Before {
        fn drop(&mut self) {
            READER.set(self.0);
        }
    }
    let _before = Before(READER.replace(reader));
    make()
}

/// Says everything within `make` in English and in SI units: what is recorded is the same, whoever taps.
pub fn plainly<T>(make: impl FnOnce() -> T) -> T {
    for_reader(Reader::default(), make)
}
