//! The contract says how the certificate is written, whoever makes it.

use super::story::{left_in_pipe, mended, never_begun, practised, rejected};
use crate::certificate::content::Content;
use crate::certificate::display::Mark;
use crate::certificate::fonts::Fonts;
use crate::certificate::layout::lay_out;
use crate::words::{Dates, Language, Reader, Units};

const AMERICAN: Reader = Reader { language: Language::En, units: Units::Us, dates: Dates::Local };

fn content() -> Content {
    mended().changed(|repair| repair.contract.reader = AMERICAN).content().unwrap()
}

/// 7.257 m / 0.3048 = 23.81 ft, 31.143 m / 0.3048 = 102.18 ft (NIST SP 811, B.8).
#[test]
fn lengths_pressures_and_dates_follow_the_contract() {
    let content = content();
    let told: Vec<&str> = content.answers.iter().filter_map(|one| one.second.as_deref()).collect();
    assert_eq!(told[2], "Patch centre 23.81 ft from MH 031 (upstream) = 102.18 ft from MH 032 (downstream)");
    assert_eq!(content.answers[4].first, "Ines Varga, foreman, Oct 14, 2026");
}

/// Of what the program writes, nothing is left in another unit. What was entered, such as a sheet's name, stays as it is.
#[test]
fn no_figure_is_left_in_other_units() {
    let content = content();
    let mut words: Vec<String> =
        content.answers.iter().flat_map(|one| [Some(one.first.clone()), one.second.clone()]).flatten().collect();
    words.extend(
        content
            .checks
            .iter()
            .flat_map(|one| [one.inputs.clone(), one.result.clone(), one.limit.clone(), one.margin.clone()]),
    );
    // Where the fold is was typed.
    words.extend(content.findings.iter().filter(|one| one.what != "Folds").map(|one| one.found.clone()));
    words.extend(content.departures.iter().map(|one| one.short.clone()));
    words.extend(content.sheets.rows.iter().map(|one| one.as_entered.clone()));
    for text in words {
        let parts: Vec<&str> = text.split([' ', ',', ';', ')']).filter(|part| !part.is_empty()).collect();
        let left = parts.windows(2).find(|pair| {
            ["mm", "m", "bar", "°C", "g"].contains(&pair[1]) && pair[0].chars().any(|letter| letter.is_ascii_digit())
        });
        assert_eq!(left, None, "{text}");
    }
}

/// What the story's people and sheets call things, with units of their own.
const TYPED: [&str; 11] = [
    "G1050, DN 200, 600 mm",
    "P-07, 150 to 230 mm",
    "1000 mm (invented)",
    "DN 200, 600 mm (invented)",
    "to 2.5 bar",
    "T-09, −10 to 110 °C",
    "S-05, to 10 kg",
    "inspection (0.2 % of 7.260 m",
    "at 7 o’clock, 7.1 m",
    "fold of 14 mm",
    "gap 3 mm",
];

/// The same of all that is drawn and of what is read aloud of a drawing.
#[test]
fn no_page_has_a_figure_in_other_units() {
    let fonts = Fonts::bundled().unwrap();
    let mut left = vec![];
    for story in [mended, rejected, practised, left_in_pipe, never_begun] {
        let mut content = story().changed(|repair| repair.contract.reader = AMERICAN).content().unwrap();
        content.paper = crate::certificate::content::Paper::Letter;
        let document = lay_out(&content, &fonts).unwrap();
        let drawn = document.pages.iter().flat_map(|page| &page.items).filter_map(|item| match &item.mark {
            Mark::Text(text) => Some(text.text.clone()),
            _ => None,
        });
        for text in drawn.chain(document.elements.iter().filter_map(|element| element.alt.clone())) {
            let text = text.replace('\u{a0}', " ");
            let own = TYPED.iter().fold(text.clone(), |text, typed| text.replace(typed, ""));
            let parts: Vec<&str> = own.split([' ', ',', ';', ')', '(', '.']).filter(|part| !part.is_empty()).collect();
            if parts.windows(2).any(|pair| {
                ["mm", "m", "bar", "°C", "g", "kg", "l", "N", "kN"].contains(&pair[1])
                    && pair[0].ends_with(|letter: char| letter.is_ascii_digit())
            }) {
                left.push(text);
            }
        }
    }
    assert_eq!(left, Vec::<String>::new());
}

#[test]
fn the_code_on_the_page_is_the_same_for_every_reader() {
    assert_eq!(content().qr, mended().content().unwrap().qr);
}

#[test]
fn the_pages_can_be_laid_out_for_every_reader() {
    let fonts = Fonts::bundled().unwrap();
    for language in Language::ALL {
        for units in [Units::Si, Units::Us] {
            let reader = Reader { language, units, dates: Dates::Local };
            let content = mended().changed(|repair| repair.contract.reader = reader).content().unwrap();
            assert!(!lay_out(&content, &fonts).unwrap().pages.is_empty(), "{reader:?}");
        }
    }
}

/// The words of a message between its values, where they are enough to be told from a name.
fn sentences(language: Language) -> std::collections::BTreeMap<String, Vec<String>> {
    let files = crate::words::certificate(language);
    files
        .into_iter()
        .map(|(id, text)| {
            let parts = text.split(['{', '}']).map(str::trim).filter(|part| part.split(' ').count() > 4);
            (id, parts.filter(|part| !part.starts_with('$')).map(str::to_owned).collect())
        })
        .collect()
}

/// What the pages say in another language, they say in no other. What was recorded stays as it was recorded.
#[test]
fn no_sentence_of_the_program_is_left_in_english() {
    let fonts = Fonts::bundled().unwrap();
    let english = sentences(Language::En);
    for language in [Language::De, Language::Es, Language::Fr] {
        let own = sentences(language);
        for story in [mended, rejected, practised, left_in_pipe, never_begun] {
            let reader = Reader { language, units: Units::Si, dates: Dates::Local };
            let content = story().changed(|repair| repair.contract.reader = reader).content().unwrap();
            let document = lay_out(&content, &fonts).unwrap();
            let items = document.pages.iter().flat_map(|page| &page.items);
            let mut told: Vec<String> = items
                .filter_map(|item| match &item.mark {
                    Mark::Text(text) => Some(text.text.replace('\u{a0}', " ")),
                    _ => None,
                })
                .collect();
            told.extend(document.elements.iter().filter_map(|element| element.alt.clone()));
            let told = told.join(" ");
            for (id, parts) in &english {
                let left = parts.iter().find(|part| !own[id].contains(part) && told.contains(part.as_str()));
                assert_eq!(left, None, "{id} in {language:?}");
            }
            assert!(own.values().flatten().filter(|part| told.contains(part.as_str())).count() > 20);
        }
    }
}
