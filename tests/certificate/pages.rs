//! The pages by their display list: nothing overlaps, nothing leaves the margins, nothing stands alone.

use super::{NAMES, content};
use mendline_core::certificate::content::{
    Around, Content, Departure, Kind, Known, Lateral, Note, Observation, Paper, Stretch, headings,
};
use mendline_core::certificate::display::{Document, Ink, Item, Mark, Role, Text};
use mendline_core::certificate::fonts::{Fonts, MM_PER_PT};
use mendline_core::certificate::layout::{lay_out, lay_out_again};
use mendline_core::units::Length;
use mendline_core::words::Language;
use std::collections::BTreeMap;
use std::sync::OnceLock;

fn pages(content: &Content) -> Document {
    lay_out(content, &Fonts::bundled().unwrap()).unwrap()
}

/// Every fixture on both papers, and one with too much of everything.
fn all() -> &'static [(String, Document)] {
    static ALL: OnceLock<Vec<(String, Document)>> = OnceLock::new();
    ALL.get_or_init(lay_out_all)
}

fn lay_out_all() -> Vec<(String, Document)> {
    let mut all = Vec::new();
    for (paper, word) in [(Paper::A4, "A4"), (Paper::Letter, "Letter")] {
        for name in NAMES {
            let mut content = content(name);
            content.paper = paper;
            all.push((format!("{name} on {word}"), pages(&content)));
        }
        let mut content = too_much();
        content.paper = paper;
        all.push((format!("too much on {word}"), pages(&content)));
    }
    all
}

/// A certificate with more than anybody would put into one.
fn too_much() -> Content {
    let mut content = content("edge");
    let long = |text: &str, times: usize| [text].repeat(times).join(" ");
    for answer in &mut content.answers {
        answer.first = long(&answer.first, 5);
        answer.second = answer.second.as_ref().map(|second| long(second, 6));
    }
    for pair in content.identity_left.iter_mut().chain(&mut content.identity_right) {
        pair.value = long(&pair.value, 7);
    }
    content.result.tail = long(&content.result.tail, 3);
    content.running_head = "Unbroken".repeat(40);
    let Known::Known(place) = &mut content.place else { panic!("edge has a place") };
    place.upstream = "A-node-with-a-very-long-name-that-nobody-would-choose-in-earnest-0001".to_string();
    let lateral = |index: i64| Lateral {
        station_um: Length::from_um(1_700_000 * index),
        hour: 1 + (index % 12) as u8,
        dn_mm: [100, 150, 225][index as usize % 3],
        covered: (13..15).contains(&index),
        opened_percent: None,
    };
    place.laterals = (1..42).map(lateral).collect();
    let observation = |index: i64| Observation {
        code: format!("BAB B {index}"),
        words: "Crack".to_string(),
        stretch: Stretch {
            from_um: Length::from_um(22_300_000 + 90_000 * index),
            to_um: Length::from_um(22_380_000 + 90_000 * index),
        },
        around: [Around::All, Around::At(1 + index as u8), Around::Arc { from_hour: 11, to_hour: 4 }]
            [index as usize % 3],
    };
    place.observations.extend((0..11).map(observation));
    let departure = |index: usize| Departure {
        label: format!("D{}", index + 1),
        rule: long("A rule of the contract with its values (C.1.2).", 1 + index % 4),
        reason: long("A reason that explains the matter.", 1 + index % 7),
        short: "a rule waived".to_string(),
    };
    content.departures = (0..30).map(departure).collect();
    let note = |index: usize| Note { label: format!("Note {index}"), text: long("Something happened.", 1 + index * 3) };
    content.notes = (0..120).map(note).collect();
    content.signatures = [content.signatures.clone(), content.signatures.clone()].concat();
    content.signatures[1].name = long("Maximiliana Oyelaran-Featherstonehaugh", 4);
    let Known::Known(hold) = &mut content.hold else { panic!("edge has a hold") };
    hold.readings = [hold.readings.clone(), hold.readings.clone(), hold.readings.clone()].concat();
    hold.readings.sort_by_key(|one| one.at_ms);
    content.findings[0].found = long("a cell that no page can hold", 2500);
    content.qr = Some("X".repeat(5000));
    content.photos = [content.photos.clone(), content.photos.clone(), content.photos].concat();
    content.photos[3].title = long("a title", 40);
    content.photos[4].copy = Known::Absent(long("the card could not be read", 9));
    content
}

#[derive(Clone, Copy, Debug)]
struct Extent {
    left: f64,
    top: f64,
    right: f64,
    bottom: f64,
}

/// The letters of a text without the deepest descenders: capitals 0.73 em, a little below the baseline.
fn area(fonts: &Fonts, text: &Text) -> Extent {
    let (width, em) = (fonts.width_mm(&text.text, text.size_pt, text.weight), text.size_pt * MM_PER_PT);
    let (up, down) = (em * 0.72, em * 0.16);
    if text.turn_deg == 0.0 {
        Extent { left: text.x, top: text.y - up, right: text.x + width, bottom: text.y + down }
    } else {
        Extent { left: text.x - up, top: text.y - width, right: text.x + down, bottom: text.y }
    }
}

fn texts(items: &[Item]) -> impl Iterator<Item = (&Item, &Text)> {
    items.iter().filter_map(|item| match &item.mark {
        Mark::Text(text) if !matches!(text.ink, Ink::Outline(_)) => Some((item, text)),
        _ => None,
    })
}

/// The word of a rehearsal, which also stands on the frame.
const FRAME: [&str; 4] = ["REHEARSAL", "ÜBUNG", "PRÁCTICA", "EXERCICE"];

/// Fails where two texts overlap or a text leaves the margins.
pub fn assert_neat(fonts: &Fonts, name: &str, document: &Document) {
    for (number, page) in document.pages.iter().enumerate() {
        let boxes: Vec<(Extent, &str)> =
            texts(&page.items).map(|(_, text)| (area(fonts, text), text.text.as_str())).collect();
        for (index, (a, first)) in boxes.iter().enumerate() {
            let inside = a.left >= 19.4 && a.right <= 196.6 && a.top >= 7.0 && a.bottom <= document.height_mm - 6.0;
            assert!(inside || FRAME.contains(first), "{name}, page {}: {first:?} at {a:?}", number + 1);
            for (b, second) in &boxes[index + 1..] {
                let apart = a.left + 0.15 >= b.right
                    || b.left + 0.15 >= a.right
                    || a.top + 0.15 >= b.bottom
                    || b.top + 0.15 >= a.bottom;
                assert!(apart, "{name}, page {}: {first:?} and {second:?}", number + 1);
            }
        }
    }
}

#[test]
fn no_two_texts_overlap_and_none_leaves_the_margins() {
    let fonts = Fonts::bundled().unwrap();
    for (name, document) in all() {
        assert_neat(&fonts, name, document);
    }
}

/// Labels are longer in other languages; what the fixtures say themselves stays English.
#[test]
fn no_two_texts_overlap_in_any_language() {
    let fonts = Fonts::bundled().unwrap();
    for language in [Language::De, Language::Es, Language::Fr] {
        for name in NAMES {
            let mut content = content(name);
            content.reader.language = language;
            assert_neat(&fonts, &format!("{name} in {language:?}"), &pages(&content));
        }
    }
}

#[test]
fn content_ends_above_the_footer() {
    for (name, document) in all() {
        for (number, page) in document.pages.iter().enumerate() {
            for (_, text) in texts(&page.items).filter(|(item, _)| item.element.is_some()) {
                assert!(text.y <= document.height_mm - 15.3, "{name}, page {}: {:?}", number + 1, text.text);
            }
        }
    }
}

#[test]
fn a_heading_is_never_the_last_thing_on_a_page() {
    for (name, document) in all() {
        for (number, page) in document.pages.iter().enumerate() {
            let lowest = |heading: bool| {
                let of_kind = texts(&page.items).filter(|(item, _)| {
                    item.element.is_some_and(|at| (document.elements[at].role == Role::H2) == heading)
                });
                of_kind.map(|(_, text)| text.y).fold(0.0, f64::max)
            };
            assert!(lowest(true) + 4.0 < lowest(false), "{name}, page {}", number + 1);
        }
    }
}

#[test]
fn no_row_of_a_table_stands_alone() {
    for (name, document) in all() {
        // Rows of each table on each page.
        let mut rows: BTreeMap<usize, BTreeMap<usize, std::collections::BTreeSet<usize>>> = BTreeMap::new();
        for (number, page) in document.pages.iter().enumerate() {
            for item in &page.items {
                let row = item.element.and_then(|at| document.elements[at].parent);
                let Some(row) = row.filter(|row| document.elements[*row].role == Role::Tr) else { continue };
                let Some(table) = document.elements[row].parent else { continue };
                rows.entry(table).or_default().entry(number).or_default().insert(row);
            }
        }
        for pages in rows.values().filter(|pages| pages.len() > 1) {
            // A row that fills a page by itself has no room for company.
            for (page, rows) in pages.iter().filter(|(_, rows)| rows.len() == 1) {
                let height = texts(&document.pages[*page].items).filter(|(item, _)| {
                    item.element.and_then(|at| document.elements[at].parent).is_some_and(|row| rows.contains(&row))
                });
                let count = height.count();
                assert!(count > 30, "{name}, page {}: {count}", page + 1);
            }
        }
    }
}

#[test]
fn a_page_reference_names_the_page_of_its_heading() {
    for name in ["accepted", "edge", "stress"] {
        let document = pages(&content(name));
        let hold = document.bookmarks.iter().find(|mark| mark.title == headings::HOLD).unwrap().page + 1;
        let attempts = document.bookmarks.iter().find(|mark| mark.title == headings::ATTEMPTS).unwrap().page + 1;
        let all: Vec<&str> =
            document.pages.iter().flat_map(|page| texts(&page.items)).map(|(_, text)| text.text.as_str()).collect();
        let says = |words: &str| all.iter().any(|text| text.replace('\u{a0}', " ").contains(words));
        assert!(says(&format!("required (page {hold})")), "{name}");
        assert!(says(&format!("(page {attempts})")), "{name}");
        assert!(!all.iter().any(|text| text.contains("@<")), "{name}");
    }
}

#[test]
fn what_page_one_cannot_hold_stands_in_full_later() {
    let content = too_much();
    let document = pages(&content);
    let later: String = document.pages[1..]
        .iter()
        .flat_map(|page| texts(&page.items))
        .map(|(_, text)| text.text.replace('\u{a0}', " ") + " ")
        .collect();
    for departure in &content.departures {
        assert!(later.contains(&format!("{} ", departure.label)), "{}", departure.label);
    }
    for note in &content.notes {
        assert!(later.contains(&format!("{} ", note.label)), "{}", note.label);
    }
    assert!(later.contains("Laterals") && later.contains("68.00 m (DN"), "laterals without figures");
    assert!(later.contains("Who signs"));
}

#[test]
fn page_one_is_one_page() {
    for (name, document) in all() {
        let stages = document.bookmarks.iter().find(|mark| mark.title.contains("stages")).unwrap();
        assert_eq!(stages.page, 1, "{name}");
    }
}

#[test]
fn every_figure_says_what_it_shows() {
    for (name, document) in all() {
        for element in document.elements.iter().filter(|element| element.role == Role::Figure) {
            assert!(element.alt.as_ref().is_some_and(|alt| alt.len() > 8), "{name}: {element:?}");
        }
    }
}

#[test]
fn a_rehearsal_has_no_code_and_every_other_record_has_one() {
    for name in NAMES {
        let content = content(name);
        let document = pages(&content);
        let coded =
            document.elements.iter().any(|element| element.alt.as_ref().is_some_and(|alt| alt.starts_with("QR")));
        assert_eq!(coded, content.kind != Kind::Rehearsal, "{name}");
    }
}

#[test]
fn a_content_without_drawings_stages_readings_and_photos_still_makes_pages() {
    let mut content = content("unrepaired");
    content.place = Known::Absent("the line was never measured".to_string());
    content.stages = Known::Absent("nothing was begun".to_string());
    content.photos.clear();
    content.signatures.clear();
    content.answers.clear();
    content.cautions.clear();
    let document = pages(&content);
    assert_eq!(document.pages.len(), 2);
}

#[test]
fn the_content_survives_its_own_json() {
    for name in NAMES {
        let content = content(name);
        let text = serde_json::to_string(&content).unwrap();
        let mut back: Content = serde_json::from_str(&text).unwrap();
        // The bytes of pictures are no part of the snapshot: their hash is.
        for (photo, original) in back.photos.iter_mut().zip(&content.photos) {
            if let (Known::Known(copy), Known::Known(known)) = (&mut photo.copy, &original.copy) {
                copy.jpeg = known.jpeg.clone();
            }
        }
        back.record = content.record.clone();
        assert!(back == content, "{name}");
    }
}

/// What a checker lays out again says the same, whatever the file says of where its headings stand.
#[test]
fn pages_laid_out_again_say_the_same_whatever_is_said_of_their_headings() {
    let said = |document: &Document| -> Vec<String> {
        let text = |item: &Item| if let Mark::Text(text) = &item.mark { text.text.clone() } else { String::new() };
        document.pages.iter().map(|page| page.items.iter().map(text).collect()).collect()
    };
    let fonts = Fonts::bundled().unwrap();
    for name in NAMES {
        let content = content(name);
        let first = lay_out(&content, &fonts).unwrap();
        let right: BTreeMap<String, usize> =
            first.bookmarks.iter().map(|one| (one.title.clone(), one.page + 1)).collect();
        let wrong = right.keys().map(|title| (title.clone(), 99)).collect();
        let fewer = right.clone().into_iter().skip(1).collect();
        for headings in [right, wrong, fewer, BTreeMap::new()] {
            let again = lay_out_again(&content, &fonts, &headings).unwrap();
            assert_eq!(said(&again), said(&first), "{name}: {headings:?}");
        }
    }
}
