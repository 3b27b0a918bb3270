//! The documents of the shelf as one file, so that nobody types a contract twice: made in the office, taken in by a crew.
//!
//! People stay out of it: who taps on a device is said there.

use serde::{Deserialize, Serialize};

use super::response::{Answer, Problem};
use super::shelf::sound;
use super::{Visit, packed, with_writing};
use crate::shelf::{Document, Shelf, ShelfEvent};

/// The name and edition of the form.
const FORM: &str = "mendline-sheets/1";

/// More documents than this are no shelf of a crew.
const MOST: usize = 1000;

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Sheets {
    form: String,
    documents: Vec<Document>,
}

impl Visit<'_> {
    /// Makes the file of every document, people left out.
    pub(super) fn hand_out_sheets(&mut self) -> Result<Answer, Problem> {
        let documents = documents(self.store.shelf()?.documents.clone());
        let text = serde_json::to_vec_pretty(&Sheets { form: FORM.into(), documents })
            .map_err(|problem| Problem::error("program_fault", problem.to_string()))?;
        Ok(Answer::File {
            name: "mendline-sheets.json".into(),
            media_type: "application/json".into(),
            bytes: packed(&text),
        })
    }

    /// Takes all documents of such a file in, or none. One of the same id takes the place of the one that is here.
    ///
    /// Errors: `bad_sheets` with a sentence; nothing was written.
    pub(super) fn take_sheets(&mut self, bytes: &[u8]) -> Result<Answer, Problem> {
        let bad = |why: String| Problem::error("bad_sheets", format!("Nothing was taken in. {why}"));
        let sheets: Sheets = serde_json::from_slice(bytes).map_err(|problem| {
            bad(format!(
                "This is not a file of sheets, or it did not arrive whole: {problem}. Ask the office for it again."
            ))
        })?;
        if sheets.form != FORM {
            return Err(bad("Its form is not known here. Use the same version of the program on both devices.".into()));
        }
        let documents: Vec<Document> =
            sheets.documents.into_iter().filter(|one| !matches!(one, Document::Person(_))).collect();
        if documents.is_empty() || documents.len() > MOST {
            return Err(bad(format!("It holds {} documents. Ask the office for it again.", documents.len())));
        }
        documents.iter().try_for_each(sound)?;
        let events = documents.into_iter().map(|document| ShelfEvent::Kept { document: Box::new(document) }).collect();
        with_writing(self, |store, writing| store.record_shelf(writing, events))?;
        self.shelf()
    }
}

/// Returns the documents of a shelf in the order in which it shows them.
fn documents(shelf: Shelf) -> Vec<Document> {
    (shelf.contracts.into_iter().map(|one| Document::Contract(Box::new(one))))
        .chain(shelf.resins.into_iter().map(|one| Document::Resin(Box::new(one))))
        .chain(shelf.patches.into_iter().map(|one| Document::Patch(Box::new(one))))
        .chain(shelf.packers.into_iter().map(|one| Document::Packer(Box::new(one))))
        .chain(shelf.instruments.into_iter().map(Document::Instrument))
        .chain(shelf.methods.into_iter().map(Document::Method))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::super::App;
    use crate::facts::{Moment, Sensed};
    use serde_json::{Value, json};

    fn asked(app: &mut App, id: &str, request: &Value) -> Value {
        let moment = Moment { at_ms: 1_792_000_000_000, ..Moment::default() };
        let sensed = Sensed { moment, device: "d".into(), fresh: [1; 16], seed: [7; 32] };
        serde_json::from_str(&app.handle(&json!({ "id": id, "request": request }).to_string(), &sensed)).unwrap()
    }

    #[test]
    fn what_one_folder_hands_out_another_takes_in_and_people_stay() {
        let (office, crew) = (tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap());
        let mut office = App::open(office.path()).unwrap();
        let mut crew = App::open(crew.path()).unwrap();
        let there = asked(&mut office, "1", &json!({ "do": "take_examples" }))["ok"].clone();
        let file = asked(&mut office, "2", &json!({ "do": "hand_out_sheets" }))["ok"]["bytes"].clone();
        let here = asked(&mut crew, "3", &json!({ "do": "take_sheets", "bytes": file }))["ok"].clone();
        for list in ["contracts", "resins", "patches", "packers", "instruments", "methods"] {
            assert_eq!(here[list], there[list]);
            assert_ne!(here[list], json!([]), "{list}");
        }
        assert_eq!(here["people"], json!([]));
        let today = asked(&mut crew, "4", &json!({ "do": "today" }))["ok"].clone();
        assert_eq!(today["lacks"], json!(["person"]));
    }

    #[test]
    fn a_file_of_anything_else_changes_nothing() {
        let folder = tempfile::tempdir().unwrap();
        let mut app = App::open(folder.path()).unwrap();
        let whole = json!({ "form": "mendline-sheets/1", "documents": [] }).to_string();
        for (i, text) in ["", "{}", &whole, &whole.replace("/1", "/9"), &whole[..20]].into_iter().enumerate() {
            let request = json!({ "do": "take_sheets", "bytes": super::packed(text.as_bytes()) });
            let answer = asked(&mut app, &format!("bad-{i}"), &request);
            assert_eq!(answer["error"]["code"], "bad_sheets", "{answer}");
        }
        assert_eq!(asked(&mut app, "s", &json!({ "do": "shelf" }))["ok"]["contracts"], json!([]));
    }
}
