//! The catalogue is whole, and figures are what the published conversion factors make of them.

use std::collections::{BTreeMap, BTreeSet};

use fluent_syntax::ast;

use super::catalogue::sources;
use super::*;
use crate::procedure::rules::TABLE;
use crate::units::{Length, Pressure, Span};

const US: Reader = Reader { language: Language::En, units: Units::Us, dates: Dates::Iso };
const GERMAN: Reader = Reader { language: Language::De, units: Units::Si, dates: Dates::Iso };

/// Returns every message with the names of its values, attributes apart.
fn messages(language: Language) -> BTreeMap<String, BTreeSet<String>> {
    let mut found = BTreeMap::new();
    for (file, text) in sources(language) {
        let resource =
            fluent_syntax::parser::parse(*text).unwrap_or_else(|(_, problems)| panic!("{file}: {problems:?}"));
        for entry in resource.body {
            let ast::Entry::Message(message) = entry else { continue };
            let mut one = |id: String, pattern: &ast::Pattern<&str>| {
                let mut names = BTreeSet::new();
                of_pattern(pattern, &mut names);
                assert!(found.insert(id.clone(), names).is_none(), "{file}: {id} stands twice");
            };
            if let Some(value) = &message.value {
                one(message.id.name.to_owned(), value);
            }
            for attribute in &message.attributes {
                one(format!("{}.{}", message.id.name, attribute.id.name), &attribute.value);
            }
        }
    }
    found
}

fn of_pattern(pattern: &ast::Pattern<&str>, names: &mut BTreeSet<String>) {
    for element in &pattern.elements {
        if let ast::PatternElement::Placeable { expression } = element {
            of_expression(expression, names);
        }
    }
}

fn of_expression(expression: &ast::Expression<&str>, names: &mut BTreeSet<String>) {
    match expression {
        ast::Expression::Inline(inline) => of_inline(inline, names),
        ast::Expression::Select { selector, variants } => {
            of_inline(selector, names);
            variants.iter().for_each(|variant| of_pattern(&variant.value, names));
        }
    }
}

fn of_inline(inline: &ast::InlineExpression<&str>, names: &mut BTreeSet<String>) {
    match inline {
        ast::InlineExpression::VariableReference { id } => {
            names.insert(id.name.to_owned());
        }
        ast::InlineExpression::Placeable { expression } => of_expression(expression, names),
        ast::InlineExpression::StringLiteral { .. } | ast::InlineExpression::NumberLiteral { .. } => {}
        other => panic!("the screens can't read {other:?}"),
    }
}

#[test]
fn no_language_lacks_a_message() {
    let english = messages(Language::En);
    for language in Language::ALL {
        let known = messages(language);
        let missing: Vec<_> = english.keys().filter(|id| !known.contains_key(*id)).collect();
        assert!(missing.is_empty(), "{}: {missing:?}", language.tag());
    }
}

#[test]
fn no_language_has_a_message_that_english_lacks_or_values_that_it_does_not_name() {
    let english = messages(Language::En);
    for language in Language::ALL {
        for (id, names) in messages(language) {
            let known = english.get(&id).unwrap_or_else(|| panic!("{}: {id} is unknown", language.tag()));
            assert!(names.is_subset(known), "{}: {id} names {names:?}, English {known:?}", language.tag());
        }
    }
}

#[test]
fn every_rule_has_its_sentence_and_its_name() {
    let english = messages(Language::En);
    for row in TABLE {
        let code = row.rule.code();
        for id in [format!("rule-{code}"), format!("rule-name-{code}")] {
            assert!(english.contains_key(&id), "{id} is missing");
        }
    }
    let rules =
        english.keys().filter(|id| id.starts_with("rule-") && !id.contains('.') && !id.starts_with("rule-name-"));
    assert_eq!(rules.filter(|id| id.contains('_')).count(), TABLE.len(), "a sentence without a rule");
}

/// The sources of the core: what they say by id stands in the catalogue, and nothing of the certificate stands there unsaid.
#[test]
fn the_certificate_says_all_that_is_written_for_it_and_nothing_else() {
    let mut said = BTreeSet::new();
    let mut folders = vec![std::path::PathBuf::from(concat!(env!("CARGO_MANIFEST_DIR"), "/src"))];
    while let Some(folder) = folders.pop() {
        for entry in std::fs::read_dir(folder).unwrap() {
            let path = entry.unwrap().path();
            if path.is_dir() {
                folders.push(path);
            } else if path.extension().is_some_and(|end| end == "rs") {
                let text = std::fs::read_to_string(path).unwrap();
                let quoted = text.split('"').filter(|part| part.starts_with("cert-") && !part.contains(' '));
                said.extend(quoted.map(str::to_owned));
            }
        }
    }
    let begun: Vec<String> = said.iter().filter_map(|id| Some(id.strip_suffix("{name}")?.to_owned())).collect();
    let written: BTreeSet<String> = messages(Language::En).into_keys().filter(|id| id.starts_with("cert-")).collect();
    let unsaid: Vec<_> = written
        .iter()
        .filter(|id| !said.contains(*id) && !begun.iter().any(|begun| id.starts_with(begun.as_str())))
        .collect();
    let unwritten: Vec<_> = said.iter().filter(|id| !written.contains(*id) && !id.ends_with(['-', '}'])).collect();
    assert!(unsaid.is_empty() && unwritten.is_empty(), "never said: {unsaid:?}; not written: {unwritten:?}");
}

#[test]
fn who_reads_is_forgotten_afterwards_also_after_a_panic() {
    let inside = for_reader(US, reader);
    assert_eq!((inside, reader()), (US, Reader::default()));
    let broken = std::panic::catch_unwind(|| for_reader(US, || panic!("on purpose")));
    assert!(broken.is_err());
    assert_eq!(reader(), Reader::default());
}

/// NIST SP 811 (2008), B.8: 1 in = 2.54 E-02 m, 1 ft = 3.048 E-01 m, 1 psi = 6.894 757 E+03 Pa, 1 oz = 2.834 952 E-02 kg,
/// 1 lb = 4.535 924 E-01 kg; B.9: t(°C) = (t(°F) − 32) / 1.8.
#[test]
fn customary_figures_follow_the_published_factors() {
    for_reader(US, || {
        assert_eq!(mm(Length::from_um(203_200)), "8 in");
        assert_eq!(metres(Length::from_um(30_480_000)), "100.00 ft");
        assert_eq!(quantity(Of::Bar, 103_421, Decimals::Just(2), Cut::Nearest), "15.0 psi");
        assert_eq!(quantity(Of::Celsius, 10_000, Decimals::Just(1), Cut::Nearest), "50.0 °F");
        assert_eq!(quantity(Of::Celsius, -40_000, Decimals::Just(1), Cut::Nearest), "−40.0 °F");
        assert_eq!(quantity(Of::Grams, 453_592, Decimals::Just(1), Cut::Nearest), "16.0 oz");
        assert_eq!(quantity(Of::Kilograms, 453_592, Decimals::Just(3), Cut::Nearest), "1.000 lb");
        assert!((value(Of::Celsius, 100_000.0) - 212.0).abs() < 1e-9);
    });
}

#[test]
fn what_is_cut_is_cut_the_named_way() {
    assert_eq!((mm_down(Length::from_um(134_999)), mm_down(Length::from_um(-1))), ("134 mm".into(), "−1 mm".into()));
    assert_eq!((mm_up(Length::from_um(29_001)), mm_up(Length::from_um(29_000))), ("30 mm".into(), "29 mm".into()));
    assert_eq!(
        (bar_down(Pressure::from_pa(96_154)), bar_up(Pressure::from_pa(5_001))),
        ("0.96 bar".into(), "0.06 bar".into())
    );
    for_reader(US, || {
        // 0.96154 bar is 13.946 psi.
        assert_eq!(bar_down(Pressure::from_pa(96_154)), "13.9 psi");
        assert_eq!(bar_up(Pressure::from_pa(96_154)), "14.0 psi");
    });
}

#[test]
fn a_recorded_value_keeps_every_digit() {
    assert_eq!(mm_bare(Length::from_um(149_600)), "149.6");
    assert_eq!(mm_bare(Length::from_um(150_000)), "150");
    assert_eq!(
        (bar_bare(Pressure::from_pa(130_000)), bar_bare(Pressure::from_pa(109_960))),
        ("1.30".into(), "1.0996".into())
    );
    assert_eq!(quantity(Of::Celsius, -40, Decimals::Recorded(1), Cut::Nearest), "−0.04 °C");
    for_reader(GERMAN, || assert_eq!(bar(Pressure::from_pa(109_960)), "1,0996 bar"));
}

#[test]
fn a_place_is_rounded_to_the_nearest() {
    assert_eq!(metres(Length::from_um(7_257_000)), "7.26 m");
    assert_eq!(metres_mm(Length::from_um(7_256_600)), "7.257 m");
}

#[test]
fn spans_keep_minutes_and_seconds_and_are_never_rounded_up() {
    assert_eq!([span(6 * 60_000 + 17_999), span(3_900_000), span(-40_000)], ["6 min 17 s", "1 h 05 min", "−40 s"]);
    assert_eq!(min_s(Span::from_ms(3_682_000)), "61 min 22 s");
    assert_eq!(minutes(Span::from_ms(3_600_000)), "60 min");
    assert_eq!(lasting(Span::from_ms(15_230_000)), "4 h 13 min 50 s");
    assert_eq!(lasting(Span::from_ms(26 * 3_600_000)), "26 h");
    assert_eq!(min_s(Span::from_ms(-80_000)), "−1 min 20 s");
    assert_eq!(down_s(Span::from_ms(3_682_999)).as_ms(), 3_682_000);
    assert_eq!(up_s(Span::from_ms(1_490_001)).as_ms(), 1_491_000);
}

#[test]
fn a_message_without_its_values_names_them() {
    assert_eq!(raw("rule-cover_short", ""), "Cover is {cover_um} after all errors; {required_um} is asked.");
    assert_eq!(say("no-such-message", &[]), "no-such-message");
}

#[test]
fn a_day_stands_as_the_reader_writes_it_and_what_is_no_day_as_it_was() {
    let days = ["2026-10-14", "2024-02-29", "none stated", "2026-02-30"];
    assert_eq!(days.map(day), days.map(str::to_owned));
    let local = |language, units| Reader { language, units, dates: Dates::Local };
    let german = for_reader(local(Language::De, Units::Si), || days.map(day));
    assert_eq!(german, ["14.10.2026", "29.02.2024", "none stated", "2026-02-30"]);
    assert_eq!(for_reader(local(Language::En, Units::Us), || day("2026-10-14")), "Oct 14, 2026");
}

const FRENCH: Reader = Reader { language: Language::Fr, units: Units::Si, dates: Dates::Iso };

#[test]
fn a_recorded_text_is_said_again_and_what_somebody_typed_stays() {
    for_reader(GERMAN, || {
        assert_eq!(retold("Rope made fast to the packer"), "Seil am Packer befestigt");
        assert_eq!(retold("oxygen too low, flammable gas"), "zu wenig Sauerstoff, brennbares Gas");
        assert_eq!(retold("Lot of part A is missing."), "Charge Komponente A fehlt.");
        assert_eq!(
            retold("This is not a PDF. In this folder it is voided: the wrong street"),
            "Das ist kein PDF. In diesem Ordner ist es zurückgezogen: the wrong street"
        );
        assert_eq!(
            retold("This is not a PDF. In this folder it is superseded by DES-0002: the wrong street"),
            "Das ist kein PDF. In diesem Ordner ist es ersetzt durch DES-0002: the wrong street"
        );
        assert_eq!(retold("The dog of Kettle Row"), "The dog of Kettle Row");
        assert_eq!(retold_parts("Broken pipe, pieces missing, 40 mm long"), "Rohrbruch, Scherben fehlen, 40 mm lang");
        assert_eq!(retold_parts("Crack, Q, 4 mm wide"), "Riss, Q, 4 mm breit");
        assert_eq!(
            retold_sentences("This is not a PDF. Who knows. This is not a PDF."),
            "Das ist kein PDF. Who knows. Das ist kein PDF."
        );
    });
    assert_eq!(retold("Rope made fast to the packer"), "Rope made fast to the packer");
}

#[test]
fn what_a_screen_offered_is_recorded_in_english() {
    let nothing = |reader| for_reader(reader, || say("ended-says_nothing", &[]));
    for reader in [GERMAN, FRENCH] {
        assert_eq!(for_reader(reader, || as_recorded(&nothing(reader))), "Nothing of it is in the pipe.");
        assert_eq!(for_reader(reader, || as_recorded("Nobody was there.")), "Nobody was there.");
    }
}

/// Every text of the invented method statement and of the photos that the contract asks for, and every word of a field.
#[test]
fn the_words_of_the_crew_are_known_in_every_language() {
    let examples = crate::shelf::examples::shelf().unwrap();
    let tasks = examples.methods.iter().flat_map(|method| &method.tasks);
    let mut texts: Vec<String> =
        tasks.clone().flat_map(|task| [&task.label, &task.detail, &task.caution]).cloned().collect();
    texts.extend(examples.contracts.iter().flat_map(|contract| &contract.photos).map(|photo| photo.label.clone()));
    for field in tasks.flat_map(|task| task.kind.fields()) {
        texts.push(field.label);
        if let crate::shelf::method::Shape::Choice { options } = field.shape {
            texts.extend(options.into_iter().map(|(_, words)| words));
        }
    }
    let unknown: Vec<&String> = texts.iter().filter(|text| !text.is_empty() && !known_text(text)).collect();
    assert!(unknown.is_empty(), "{unknown:?}");
}

/// A formula of signs alone reads the same everywhere; one with a word of four letters or more does not.
#[test]
fn every_formula_and_source_of_a_check_is_said_in_every_language() {
    let has_words = |text: &&str| {
        let mut words = text.split(|letter: char| !letter.is_ascii_lowercase());
        words.any(|word| word.len() >= 4 && word != "gauge")
    };
    let all = crate::checks::named::all();
    let said: Vec<&str> = all.iter().flat_map(|check| [check.formula, check.source]).filter(has_words).collect();
    assert!(said.len() > 25, "{said:?}");
    for language in Language::ALL.into_iter().filter(|language| *language != Language::En) {
        let english = |text: &&&str| for_reader(Reader { language, ..GERMAN }, || retold(text)) == **text;
        assert_eq!(said.iter().filter(english).collect::<Vec<_>>(), Vec::<&&str>::new(), "{language:?}");
    }
}

/// What a disk, a file or a code that was refused says, as it stands in the source: each sentence is known, whatever its values.
#[test]
fn every_fault_is_said_in_every_language() {
    const SOURCES: [&str; 7] = [
        include_str!("../journal/fault.rs"),
        include_str!("../bundle/read.rs"),
        include_str!("../photos.rs"),
        include_str!("../label/gs1.rs"),
        include_str!("../label/mod.rs"),
        include_str!("../entry.rs"),
        include_str!("../door/travel.rs"),
    ];
    let said = SOURCES.iter().flat_map(|source| source.split("#[error(").skip(1)).filter_map(quoted);
    let said: Vec<String> = said.filter(|text| text.contains(' ')).collect();
    assert!(said.len() > 50, "{said:?}");
    let english = |text: &&String| for_reader(GERMAN, || retold_sentences(text)) == **text;
    assert_eq!(said.iter().filter(english).collect::<Vec<_>>(), Vec::<&String>::new());
}

/// Returns the first text in quotes of a source, with a number for each of its values.
fn quoted(source: &str) -> Option<String> {
    let (text, _) = source.split_once('"')?.1.split_once('"')?;
    let (mut filled, mut inside) = (String::new(), false);
    for letter in text.chars() {
        match letter {
            '{' => filled.push('7'),
            '}' => {}
            _ if !inside => filled.push(letter),
            _ => {}
        }
        inside = letter == '{' || (inside && letter != '}');
    }
    Some(filled)
}

/// What is said again must be said somewhere: a message whose English stands in no source would never be looked up.
#[test]
fn no_text_is_said_again_that_nothing_says() {
    let sources = sources_without_words();
    let sources = sources
        .split("\\\n")
        .enumerate()
        .map(|(n, part)| if n == 0 { part } else { part.trim_start() })
        .collect::<String>();
    let written = |text: &str| sources.contains(text) || sources.contains(&text.replace('’', "'"));
    let english = super::catalogue::sources(Language::En);
    let files = english.iter().filter(|(name, _)| name.starts_with("recorded/"));
    let mut never = vec![];
    for (id, text) in files.flat_map(|(_, text)| text.lines()).filter_map(|line| line.split_once(" = ")) {
        let mut pieces = text.split(['{', '}']).step_by(2).map(str::trim).filter(|piece| piece.len() > 3);
        if !pieces.all(written) {
            never.push(id);
        }
    }
    assert!(never.is_empty(), "{never:?}");
}

fn sources_without_words() -> String {
    let mut all = String::new();
    let mut folders = vec![std::path::PathBuf::from(concat!(env!("CARGO_MANIFEST_DIR"), "/src"))];
    while let Some(folder) = folders.pop() {
        for entry in std::fs::read_dir(folder).unwrap() {
            let path = entry.unwrap().path();
            if path.is_dir() && !path.ends_with("words") {
                folders.push(path);
            } else if path.is_dir() {
                // The inspection's words stand in a folder of the same name.
                folders.extend(path.ends_with("inspection/words").then_some(path));
            } else {
                all.push_str(&std::fs::read_to_string(path).unwrap_or_default());
            }
        }
    }
    all
}
