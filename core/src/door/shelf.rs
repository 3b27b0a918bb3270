//! Requests about the shelf.

use super::response::{Answer, Problem};
use super::{Visit, with_writing};
use crate::procedure::gate::Around;
use crate::procedure::roles;
use crate::shelf::people::PersonKey;
use crate::shelf::{self, Document, DocumentKind, Person, Role, ShelfEvent};

impl Visit<'_> {
    pub(super) fn shelf(&mut self) -> Result<Answer, Problem> {
        Ok(Answer::Shelf(Box::new(self.store.shelf()?.documents.clone())))
    }

    pub(super) fn keep(&mut self, mut document: Document) -> Result<Answer, Problem> {
        sound(&document)?;
        self.leave_keys(&mut document);
        if let Document::Person(person) = &document
            && (person.role == Role::Foreman || self.is_foreman(&person.id))
        {
            self.ask_a_foreman()?;
        }
        with_writing(self, |store, writing| {
            store.record_shelf(writing, vec![ShelfEvent::Kept { document: Box::new(document) }])
        })?;
        self.shelf()
    }

    pub(super) fn take_off(&mut self, kind: DocumentKind, id: &str) -> Result<Answer, Problem> {
        let last_foreman =
            self.people.iter().filter(|person| person.role == Role::Foreman && person.id != id).count() == 0;
        if kind == DocumentKind::Person && last_foreman {
            return Err(Problem::error("last_foreman", "One foreman must stay in the list, or nobody can sign."));
        }
        if kind == DocumentKind::Person && self.is_foreman(id) {
            self.ask_a_foreman()?;
        }
        let id = id.to_owned();
        with_writing(self, |store, writing| store.record_shelf(writing, vec![ShelfEvent::TakenOff { kind, id }]))?;
        self.shelf()
    }

    pub(super) fn take_examples(&mut self) -> Result<Answer, Problem> {
        let mut events = examples().map_err(|problem| Problem::error("program_fault", problem.to_string()))?;
        for event in &mut events {
            if let ShelfEvent::Kept { document } = event {
                self.leave_keys(document);
            }
        }
        with_writing(self, |store, writing| store.record_shelf(writing, events))?;
        self.shelf()
    }

    /// Who reads for the owner changes nothing.
    ///
    /// Errors: the refusal by that rule.
    pub(super) fn crew_only(&self) -> Result<(), Problem> {
        let around = Around { facts: &self.facts, people: &self.people };
        roles::reads_only(&around).map_or(Ok(()), |broken| Err(Problem::refused(&[broken])))
    }

    fn is_foreman(&self, id: &str) -> bool {
        self.people.iter().any(|person| person.id == id && person.role == Role::Foreman)
    }

    /// Who is a foreman is changed with the PIN of one, where one has a key on this device. Else a PIN could be gone
    /// round by a foreman that somebody adds.
    fn ask_a_foreman(&mut self) -> Result<(), Problem> {
        let here = |person: &&Person| person.key().is_some_and(|key| key.device == self.facts.device);
        let foremen = self.people.iter().filter(|person| person.role == Role::Foreman);
        let keys: Vec<PersonKey> = foremen.filter(here).filter_map(|person| person.key().cloned()).collect();
        let mut outcome = Ok(());
        for key in keys {
            outcome = self.open_key(&key).map(drop);
            if outcome.is_ok() {
                self.facts.key = Some(key.fingerprint);
                break;
            }
        }
        outcome
    }

    /// Keys have requests of their own: what a form or an example says of them does not count.
    fn leave_keys(&self, document: &mut Document) {
        if let Document::Person(person) = document {
            let known = self.people.iter().find(|known| known.id == person.id);
            person.keys = known.map_or_else(Vec::new, |known| known.keys.clone());
        }
    }
}

fn examples() -> Result<Vec<ShelfEvent>, serde_json::Error> {
    let shelf = shelf::examples::shelf()?;
    let documents = (shelf.people.into_iter().map(Document::Person))
        .chain(shelf.contracts.into_iter().map(|one| Document::Contract(Box::new(one))))
        .chain(shelf.resins.into_iter().map(|one| Document::Resin(Box::new(one))))
        .chain(shelf.patches.into_iter().map(|one| Document::Patch(Box::new(one))))
        .chain(shelf.packers.into_iter().map(|one| Document::Packer(Box::new(one))))
        .chain(shelf.instruments.into_iter().map(Document::Instrument))
        .chain(shelf.methods.into_iter().map(Document::Method));
    Ok(documents.map(|document| ShelfEvent::Kept { document: Box::new(document) }).collect())
}

/// Errors: `bad_document` with what the document lacks.
pub(super) fn sound(document: &Document) -> Result<(), Problem> {
    let bad = |says: String| Err(Problem::error("bad_document", says));
    let (id, name) = match document {
        Document::Person(person) => (&person.id, &person.name),
        Document::Contract(contract) => (&contract.id, &contract.title),
        Document::Resin(sheet) => (&sheet.id, &sheet.name),
        Document::Patch(sheet) => (&sheet.id, &sheet.name),
        Document::Packer(sheet) => (&sheet.id, &sheet.name),
        Document::Instrument(one) => (&one.id, &one.name),
        Document::Method(method) => (&method.id, &method.title),
    };
    if id.trim().is_empty() || name.trim().is_empty() {
        return bad("It needs an id and a name.".into());
    }
    if let Document::Method(method) = document
        && let Some((kind, stage)) = method.lacks().first()
    {
        return bad(format!(
            "The method statement needs a task of kind {kind:?} in {}: a gate asks for it.",
            stage.word()
        ));
    }
    Ok(())
}
