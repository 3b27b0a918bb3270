//! Requests about the keys of people: make, import, hand out the certificate, revoke; and the PIN of who taps.

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use chrono::DateTime;

use super::response::{Answer, Problem};
use super::{Visit, keyring, packed, with_writing};
use crate::seal::x509::Holder;
use crate::seal::{Certificate, PrivateKey, p12};
use crate::shelf::people::{PersonKey, Revoked};
use crate::shelf::{Document, Person, Role, ShelfEvent};

impl Visit<'_> {
    /// Makes a key for somebody, locked by the PIN of the envelope.
    pub(super) fn make_key(&mut self, id: &str) -> Result<Answer, Problem> {
        let person = self.person(id)?;
        let seed = self.seed()?;
        let key = PrivateKey::fresh(&seed);
        let certificate = Certificate::self_signed(&key, &holder(&person), self.facts.moment.at_ms, &seed)
            .map_err(keyring::problem)?;
        self.take_key(person, &key, &[certificate])
    }

    /// Takes a key of a company or a trust service, from a file that the password of the envelope opens.
    pub(super) fn import_key(&mut self, id: &str, file: &[u8]) -> Result<Answer, Problem> {
        let person = self.person(id)?;
        let password = self.password.clone().unwrap_or_default();
        let (key, chain) = p12::open(file, &password).map_err(keyring::problem)?;
        let now = self.facts.moment.at_ms;
        match chain.first().map(Certificate::valid_ms) {
            Some((from, to)) if from <= now && now <= to => self.take_key(person, &key, &chain),
            _ => Err(Problem::error(
                "key",
                "The certificate in this file is not valid today. Ask who gave it out for a new one.",
            )),
        }
    }

    fn take_key(&mut self, mut person: Person, key: &PrivateKey, chain: &[Certificate]) -> Result<Answer, Problem> {
        if person.key().is_some() {
            return Err(Problem::error("has_key", "This person has a key. Revoke it first, then make a new one."));
        }
        let pin = self.pin.clone().unwrap_or_default();
        let locked = key.lock(&pin, &self.seed()?).map_err(keyring::problem)?;
        let fingerprint = chain.first().map(Certificate::fingerprint).unwrap_or_default();
        // The key is on the disk before the journal names it.
        keyring::keep(&self.store.folder, &fingerprint, &locked)?;
        person.keys.push(PersonKey {
            fingerprint,
            certificates: chain.iter().map(|one| STANDARD.encode(one.der())).collect(),
            made_ms: self.facts.moment.at_ms,
            device: self.facts.device.clone(),
            revoked: None,
        });
        self.keep_person(person)
    }

    /// Locks the key of somebody with the PIN of the envelope instead of the old one, which stands where a password would.
    /// Key and certificate stay the same, so nothing is recorded.
    ///
    /// Errors: `no_key`; `pin_weak`; those of [`keyring::open`] for the old PIN.
    pub(super) fn change_pin(&mut self, id: &str) -> Result<Answer, Problem> {
        let person = self.person(id)?;
        let Some(key) = person.key() else {
            return Err(Problem::error("no_key", "This person has no key, and so no PIN to change."));
        };
        let (old, new) = (self.password.clone().unwrap_or_default(), self.pin.clone().unwrap_or_default());
        let opened = keyring::open(&self.store.folder, &key.fingerprint, &old, &self.facts.moment)?;
        let locked = opened.lock(&new, &self.seed()?).map_err(keyring::problem)?;
        keyring::keep(&self.store.folder, &key.fingerprint, &locked)?;
        self.shelf()
    }

    /// Marks the key of somebody as no longer good from an instant on.
    pub(super) fn revoke_key(&mut self, id: &str, from_ms: i64, reason: &str) -> Result<Answer, Problem> {
        let mut person = self.person(id)?;
        if reason.trim().is_empty() {
            return Err(Problem::error("reason", "Say why the key is revoked: lost, stolen, or given up."));
        }
        let Some(key) = person.keys.last_mut().filter(|key| key.revoked.is_none()) else {
            return Err(Problem::error("no_key", "This person has no key to revoke."));
        };
        key.revoked = Some(Revoked { from_ms, reason: reason.trim().to_owned() });
        self.keep_person(person)
    }

    fn keep_person(&mut self, person: Person) -> Result<Answer, Problem> {
        let document = Box::new(Document::Person(person));
        with_writing(self, |store, writing| store.record_shelf(writing, vec![ShelfEvent::Kept { document }]))?;
        self.shelf()
    }

    /// Hands out the certificates of somebody, for the owner to trust: PEM, with whose they are and what is revoked.
    pub(super) fn person_certificate(&mut self, id: &str) -> Result<Answer, Problem> {
        let person = self.person(id)?;
        if person.keys.is_empty() {
            return Err(Problem::error("no_key", "This person has no key."));
        }
        let mut text = String::new();
        for key in &person.keys {
            let whose = [person.name.as_str(), &person.organisation, word(person.role)].join(", ");
            text.push_str(&format!("{whose}\nSHA-256 {}\n", key.fingerprint));
            if let Some(revoked) = &key.revoked {
                text.push_str(&format!("{REVOKED} {}\n", instant(revoked.from_ms)));
            }
            for certificate in certificates(key) {
                text.push_str(&certificate.to_pem());
            }
        }
        let name = format!("{}.pem", super::repairs::file_name(&person.name));
        Ok(Answer::File { name, media_type: "application/x-pem-file".into(), bytes: packed(text.as_bytes()) })
    }

    fn person(&self, id: &str) -> Result<Person, Problem> {
        let found = self.people.iter().find(|person| person.id == id).cloned();
        found.ok_or_else(|| Problem::error("unknown_person", "There is no such person in the list."))
    }

    /// Asks the PIN of somebody who has a key, and notes that it was right. Who has none is not asked.
    ///
    /// Errors: `pin_needed`, and those of [`keyring::open`].
    pub(super) fn ask_pin(&mut self, person: Option<&str>) -> Result<(), Problem> {
        let known = self.people.iter().find(|one| Some(one.id.as_str()) == person);
        let Some(key) = known.and_then(Person::key).cloned() else { return Ok(()) };
        self.open_key(&key)?;
        self.facts.key = Some(key.fingerprint);
        Ok(())
    }

    pub(super) fn open_key(&self, key: &PersonKey) -> Result<PrivateKey, Problem> {
        let needed = || Problem::error("pin_needed", "Enter the PIN of your key.");
        let pin = self.pin.as_ref().filter(|pin| !pin.as_str().is_empty()).ok_or_else(needed)?;
        keyring::open(&self.store.folder, &key.fingerprint, pin, &self.facts.moment)
    }

    pub(super) fn seed(&self) -> Result<crate::seal::Seed, Problem> {
        crate::seal::Seed::new(self.seed).map_err(keyring::problem)
    }
}

/// Stands before the certificate of a key that is no longer good, and after it the instant.
pub const REVOKED: &str = "Revoked from";

/// Returns the certificates of a key; one that can't be read is left out.
pub fn certificates(key: &PersonKey) -> Vec<Certificate> {
    let read = |text: &String| Certificate::read(&STANDARD.decode(text).ok()?).ok();
    key.certificates.iter().filter_map(read).collect()
}

/// Returns an instant as `2026-11-02T08:00:00Z`.
pub fn instant(ms: i64) -> String {
    DateTime::from_timestamp_millis(ms).map_or_else(String::new, |at| at.format("%Y-%m-%dT%H:%M:%SZ").to_string())
}

fn holder(person: &Person) -> Holder {
    Holder { name: person.name.clone(), organisation: person.organisation.clone(), role: word(person.role).to_owned() }
}

/// Returns the word for a role.
pub fn word(role: Role) -> &'static str {
    match role {
        Role::Technician => "technician",
        Role::Foreman => "foreman",
        Role::Reader => "reader",
    }
}
