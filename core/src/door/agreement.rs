//! Do the pages say what the record inside says? They are made again from the record and compared, page by page.
//!
//! Only the version that made the pages words every sentence as they do. Of another version's pages, and of those that
//! name people or photos that the record alone can't tell, the main values are looked for instead, and that is said.

use serde::Serialize;

use super::verdict::Verdict;
use crate::certificate::content::{Content, Known, PhotoCopy, Seal};
use crate::certificate::display::{Document, Mark, Page};
use crate::certificate::fonts::Fonts;
use crate::certificate::layout::lay_out_again;
use crate::certificate::pdf::plain;
use crate::certificate::{ChainFacts, derive};
use crate::procedure::Repair;
use crate::seal::verify::{Checked, squeezed};
use crate::shelf::Person;
use crate::words::{self, tell};

/// So many letters are shown of what differs.
const SHOWN: usize = 60;

/// How far the pages were compared.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Compared {
    /// Letter by letter.
    Whole,
    /// The main values were looked for.
    Values,
}

/// Returns how far the pages were compared with the record.
///
/// Errors: a sentence with what the record says and the pages don't.
pub fn pages(checked: &Checked, verdict: &Verdict) -> Result<Option<Compared>, String> {
    let Some(repair) = &verdict.repair else { return Ok(None) };
    // Without the faces of the program nothing can be laid out, and nothing was.
    let Ok(fonts) = Fonts::shared() else { return Ok(None) };
    values(checked, verdict, fonts)?;
    let same_version = made_by(checked).is_some();
    let Some(document) = same_version.then(|| again(checked, verdict, repair, fonts)).flatten() else {
        return Ok(Some(Compared::Values));
    };
    match difference(&checked.pages, &document) {
        None => Ok(Some(Compared::Whole)),
        // What the record does not hold: names of people who did not sign, and why a photo could not be shown.
        Some(_) if untold(checked, repair) => Ok(Some(Compared::Values)),
        Some(says) => Err(says),
    }
}

/// Returns what the record says and the pages don't.
fn values(checked: &Checked, verdict: &Verdict, fonts: &Fonts) -> Result<(), String> {
    let Some(told) = &verdict.told else { return Ok(()) };
    let number = verdict.certificate.strip_prefix("REHEARSAL").map_or(verdict.certificate.as_str(), str::trim_start);
    let count = || tell!("cert-head-entries", entries = verdict.entries);
    let reader = verdict.repair.as_ref().map(|repair| repair.contract.reader).unwrap_or_default();
    let entries = words::for_reader(reader, count);
    let wanted = [
        ("the head of the chain", verdict.head.as_str()),
        ("the count of entries", &entries),
        ("the number of the certificate", number),
        ("the number of the repair", &verdict.number),
        ("the owner’s key for the pipe", &told.asset),
        ("the upstream node", &told.upstream),
        ("the downstream node", &told.downstream),
    ];
    let names = told.signed.iter().map(|one| ("who signed", one.name.as_str()));
    let shown = |text: &str| {
        let text = squeezed(&fonts.printable(text));
        checked.pages.iter().any(|page| page.contains(&text))
    };
    let absent: Vec<&str> =
        wanted.into_iter().chain(names).filter(|(_, text)| !shown(text)).map(|(what, _)| what).collect();
    if absent.is_empty() {
        return Ok(());
    }
    Err(format!("The pages don’t say what the record inside says: {}.", absent.join(", ")))
}

/// Returns the device that made the pages, if this version of the program did.
fn made_by(checked: &Checked) -> Option<&str> {
    checked.made_by.strip_prefix(derive::PROGRAM)?.strip_prefix(derive::ON_DEVICE)
}

/// Lays the certificate out again, from the record inside, the pictures of the file and what the first key signed.
fn again(checked: &Checked, verdict: &Verdict, repair: &Repair, fonts: &Fonts) -> Option<Document> {
    let (_, record) = checked.attachments.iter().find(|(name, _)| name.ends_with(".json"))?;
    let chain = ChainFacts {
        head_hex: verdict.head.clone(),
        entries: verdict.entries as u64,
        device: made_by(checked)?.to_owned(),
        record: record.clone(),
    };
    let mut content = derive::again(repair, &chain, &people(repair))?;
    content.seal = match checked.signatures.first() {
        Some(first) => Seal::Key { at_ms: first.at?.0, fingerprint: first.certificate.as_ref()?.fingerprint() },
        None => Seal::None,
    };
    show(&mut content, checked);
    lay_out_again(&content, fonts, &checked.headings).ok()
}

/// The people whose names the record holds: those who drew a line.
fn people(repair: &Repair) -> Vec<Person> {
    let person = |one: &crate::procedure::repair::Signature| {
        let id = one.at.person.clone()?;
        Some(Person { id, name: one.name.clone(), role: one.role, organisation: String::new(), keys: vec![] })
    };
    repair.signatures.iter().filter_map(person).collect()
}

/// Puts the pictures of the file where the content has none.
fn show(content: &mut Content, checked: &Checked) {
    for (index, photo) in content.photos.iter_mut().enumerate() {
        if let Some(jpeg) = checked.pictures.get(&index) {
            let sha256 = super::hex(&<sha2::Sha256 as sha2::Digest>::digest(jpeg));
            photo.copy = Known::Known(PhotoCopy { sha256, orientation: 1, jpeg: jpeg.clone() });
        }
    }
}

/// Says whether the pages may hold something that the record can't tell.
fn untold(checked: &Checked, repair: &Repair) -> bool {
    let without = (0..repair.photos.len()).any(|index| !checked.pictures.contains_key(&index));
    let known = people(repair);
    let stranger = |id: &str| !id.is_empty() && !known.iter().any(|person| person.id == id);
    without || repair.people().iter().any(|id| stranger(id))
}

/// Returns the first place where the pages differ from what they should say.
fn difference(pages: &[String], document: &Document) -> Option<String> {
    let wanted: Vec<String> = document.pages.iter().map(said).collect();
    if wanted.len() != pages.len() {
        let (is, should) = (pages.len(), wanted.len());
        return Some(format!("The file has {is} pages; by the record inside it has {should}."));
    }
    let (number, (is, should)) = (1..).zip(pages.iter().zip(&wanted)).find(|(_, (is, should))| is != should)?;
    let same = is.chars().zip(should.chars()).take_while(|(is, should)| is == should).count();
    let from = same.saturating_sub(SHOWN / 3);
    let part = |text: &str| text.chars().skip(from).take(SHOWN).collect::<String>();
    Some(format!("Page {number} says “{}”; by the record inside it says “{}”.", part(is), part(should)))
}

fn said(page: &Page) -> String {
    let texts = page.items.iter().filter_map(|item| match &item.mark {
        Mark::Text(text) => Some(&text.text),
        _ => None,
    });
    texts.flat_map(|text| text.chars()).map(plain).filter(|letter| !letter.is_whitespace()).collect()
}
