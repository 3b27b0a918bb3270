//! The bundled faces: which characters they have, how wide a text is, and subsets for embedding.

use super::CertificateError;
use super::display::Weight;
use printpdf::ParsedFont;
use std::collections::{BTreeMap, BTreeSet};
use std::sync::OnceLock;
use unicode_normalization::{IsNormalized, UnicodeNormalization, is_nfc_quick};

/// Millimetres in a point.
pub const MM_PER_PT: f64 = 25.4 / 72.0;

/// DejaVu Sans Condensed, Book and Bold: figures of one width, wide cover of names and signs.
pub struct Fonts {
    book: Face,
    bold: Face,
}

struct Face {
    name: &'static str,
    bytes: &'static [u8],
    parsed: ParsedFont,
    /// The advance of each character of the basic plane, in font units.
    advances: Vec<u16>,
    /// Which characters of the basic plane it has.
    covers: Vec<bool>,
}

impl Fonts {
    /// Returns the faces that come with the program.
    ///
    /// Errors: `Font` if a file is damaged.
    pub fn bundled() -> Result<Self, CertificateError> {
        Ok(Self {
            book: Face::read("DejaVuSansCondensed", include_bytes!("../../fonts/DejaVuSansCondensed.ttf"))?,
            bold: Face::read("DejaVuSansCondensed-Bold", include_bytes!("../../fonts/DejaVuSansCondensed-Bold.ttf"))?,
        })
    }

    /// Returns the same, read once for as long as the program runs.
    ///
    /// Errors: as [`Fonts::bundled`].
    pub fn shared() -> Result<&'static Self, CertificateError> {
        static FONTS: OnceLock<Fonts> = OnceLock::new();
        match FONTS.get() {
            Some(fonts) => Ok(fonts),
            None => Self::bundled().map(|fonts| FONTS.get_or_init(|| fonts)),
        }
    }

    /// Returns the width of `text` in mm: the sum of the advances, without kerning or shaping.
    pub fn width_mm(&self, text: &str, size_pt: f64, weight: Weight) -> f64 {
        let face = self.face(weight);
        let units: u64 = text.chars().map(|character| face.advance(character)).sum();
        units as f64 / f64::from(face.parsed.units_per_em) * size_pt * MM_PER_PT
    }

    /// Returns `text` as it can be printed: composed (NFC), without control characters, and with the code point in
    /// square brackets, such as `[U+4E2D]`, for what the faces lack, what would be invisible or turn the direction, and what
    /// has no meaning that every reader shares.
    pub fn printable(&self, text: &str) -> String {
        // Most texts need nothing done, and every word on a page goes this way.
        if text.bytes().all(|byte| matches!(byte, b'\n' | b' '..=b'~')) {
            return text.to_owned();
        }
        match is_nfc_quick(text.chars()) {
            IsNormalized::Yes => self.replaced(text.chars(), text.len()),
            IsNormalized::No | IsNormalized::Maybe => self.replaced(text.nfc(), text.len()),
        }
    }

    fn replaced(&self, composed: impl Iterator<Item = char>, length: usize) -> String {
        let mut out = String::with_capacity(length);
        for character in composed {
            match character {
                '\n' | ' '..='~' => out.push(character),
                '\u{ad}' => {}
                _ if character.is_control() => out.push(' '),
                _ if unfit(character) || !self.covers(character) => {
                    out.push_str(&format!("[U+{:04X}]", character as u32));
                }
                _ => out.push(character),
            }
        }
        out
    }

    /// Returns the face reduced to `used`, ready to embed: its name carries a tag made from its bytes.
    ///
    /// Errors: `Font` if the face can't be reduced.
    pub fn subset(&self, weight: Weight, used: &BTreeSet<char>) -> Result<ParsedFont, CertificateError> {
        self.face(weight).subset(used)
    }

    fn covers(&self, character: char) -> bool {
        [&self.book, &self.bold].iter().all(|face| face.covers.get(character as usize).is_some_and(|covers| *covers))
    }

    fn face(&self, weight: Weight) -> &Face {
        match weight {
            Weight::Book => &self.book,
            Weight::Bold => &self.bold,
        }
    }
}

impl Face {
    fn read(name: &'static str, bytes: &'static [u8]) -> Result<Self, CertificateError> {
        let fault = |why: String| CertificateError::Font { face: name, why };
        let mut warnings = Vec::new();
        let parsed = ParsedFont::from_bytes(bytes, 0, &mut warnings)
            .ok_or_else(|| fault("it is not a TrueType file".to_string()))?;
        match warnings.first() {
            Some(warning) => Err(fault(warning.message.clone())),
            None => Ok(Self { name, bytes, advances: advances(&parsed), covers: covers(&parsed), parsed }),
        }
    }

    fn advance(&self, character: char) -> u64 {
        let known = self.advances.get(character as usize);
        u64::from(known.copied().unwrap_or_else(|| advance(&self.parsed, character as u32)))
    }

    fn subset(&self, used: &BTreeSet<char>) -> Result<ParsedFont, CertificateError> {
        let mut remapper = subsetter::GlyphRemapper::new();
        let mut glyphs = BTreeMap::new();
        let mut widths = BTreeMap::from([(0, self.parsed.get_glyph_width(0).unwrap_or(0))]);
        for &character in used {
            let old = self.parsed.lookup_glyph_index(character as u32).ok_or_else(|| CertificateError::Font {
                face: self.name,
                why: format!("it has no glyph for U+{:04X}", character as u32),
            })?;
            let new = remapper.remap(old);
            glyphs.insert(character as u32, new);
            widths.insert(new, self.parsed.get_glyph_width(old).unwrap_or(0));
        }
        let bytes = subsetter::subset(self.bytes, 0, &remapper)
            .map_err(|why| CertificateError::Font { face: self.name, why: why.to_string() })?;
        let mut reduced = self.parsed.clone();
        reduced.font_name = Some(format!("{}+{}", tag(&bytes), self.name));
        reduced.original_bytes = bytes;
        reduced.codepoint_to_glyph = glyphs;
        reduced.glyph_widths = widths;
        Ok(reduced)
    }
}

fn advances(parsed: &ParsedFont) -> Vec<u16> {
    let mut advances = vec![advance(parsed, u32::MAX); 0x1_0000];
    for (code, glyph) in &parsed.codepoint_to_glyph {
        if let Some(place) = advances.get_mut(*code as usize) {
            *place = parsed.get_glyph_width(*glyph).unwrap_or(0);
        }
    }
    advances
}

fn covers(parsed: &ParsedFont) -> Vec<bool> {
    (0..0x1_0000).map(|code| parsed.lookup_glyph_index(code).is_some()).collect()
}

fn advance(parsed: &ParsedFont, code: u32) -> u16 {
    parsed.get_glyph_width(parsed.lookup_glyph_index(code).unwrap_or(0)).unwrap_or(0)
}

/// Characters that show nothing, change the direction of what stands beside them, mean what somebody agreed on alone
/// (ISO 19005-3, 6.2.11.7.3), or lie outside the basic plane.
fn unfit(character: char) -> bool {
    matches!(character, '\u{200b}'..='\u{200f}' | '\u{2028}'..='\u{202e}' | '\u{2060}'..='\u{206f}' | '\u{feff}'
        | '\u{e000}'..='\u{f8ff}' | '\u{fff9}'..)
}

/// Six capitals that mark a reduced font, from its bytes (ISO 32000-1, 9.6.4).
fn tag(bytes: &[u8]) -> String {
    use sha2::{Digest, Sha256};
    Sha256::digest(bytes).iter().take(6).map(|byte| char::from(b'A' + byte % 26)).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Names with letters of Polish, Turkish, Icelandic, Hungarian, Czech, Romanian, Maltese, Greek and Cyrillic.
    const NAMES: &str = "Łukasz Żółć, Çelik, Şahin, Þórðarson, Őrsi Gyűrű, Dvořák Ťažký, Ștefănescu, Ħal Għaxaq, Ålesund, Ærø, Straße, Ωμέγα, Щербаков";

    #[test]
    fn western_and_central_european_names_are_printed_as_they_are() {
        let fonts = Fonts::bundled().unwrap();
        assert_eq!(fonts.printable(NAMES), NAMES);
    }

    #[test]
    fn a_decomposed_name_is_composed() {
        let decomposed: String = NAMES.nfd().collect();
        assert_ne!(decomposed, NAMES);
        assert_eq!(Fonts::bundled().unwrap().printable(&decomposed), NAMES);
    }

    #[test]
    fn what_no_face_has_or_nobody_sees_is_printed_by_its_code_point() {
        let fonts = Fonts::bundled().unwrap();
        assert_eq!(fonts.printable("a中b\u{202e}c\td\u{ad}e"), "a[U+4E2D]b[U+202E]c de");
        assert_eq!(fonts.printable("\u{f6c5}𝔸"), "[U+F6C5][U+1D538]");
    }

    #[test]
    fn every_sign_of_the_layout_is_in_both_faces() {
        let signs = "→≤≥−×±°’“”–…⌊⌋●◆○▼□✓πρ²·\u{a0}";
        assert_eq!(Fonts::bundled().unwrap().printable(signs), signs);
    }

    #[test]
    fn figures_have_one_width() {
        let fonts = Fonts::bundled().unwrap();
        for weight in [Weight::Book, Weight::Bold] {
            let one = fonts.width_mm("1", 10.0, weight);
            assert!("023456789".chars().all(|figure| fonts.width_mm(&figure.to_string(), 10.0, weight) == one));
        }
    }

    #[test]
    fn a_subset_is_smaller_and_always_the_same() {
        let fonts = Fonts::bundled().unwrap();
        let used = "Mendline".chars().collect();
        let (a, b) = (fonts.subset(Weight::Book, &used).unwrap(), fonts.subset(Weight::Book, &used).unwrap());
        assert_eq!(a.original_bytes, b.original_bytes);
        assert_eq!(a.font_name, b.font_name);
        assert!(a.original_bytes.len() < 20_000);
    }
}
