//! The keys' signatures under an issued certificate.
//!
//! The paper is made once, when the first key signs it, and kept as a file named by its SHA-256; every further key signs
//! that file. So each person signs what can be read by then to the last byte, and nobody needs to be there at the same
//! time. The technician's key comes first.

use std::fs;
use std::path::{Path, PathBuf};

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use chrono::{DateTime, FixedOffset};

use super::brought::Begun;
use super::paper::{Trusted, check_file};
use super::response::{Answer, Problem};
use super::{Visit, keyring, keys, record, with_writing};
use crate::certificate::content::{Content, Seal};
use crate::certificate::fonts::Fonts;
use crate::certificate::{self, SIGNATURE_FIELDS};
use crate::journal::{Hash, Journal};
use crate::photos;
use crate::procedure::{Event, Repair};
use crate::seal::x509::Holder;
use crate::seal::{Block, Certificate, PrivateKey, Seed, Signer, sign};
use crate::shelf::Role;
use crate::words::{self, tell};

/// What a rehearsal's keys call their organisation, so that nobody takes one for a real key.
pub const REHEARSAL: &str = "REHEARSAL, not a record";

const ROLES: [Role; 2] = [Role::Technician, Role::Foreman];

/// A key about to sign, with its certificates.
struct Hand {
    role: Role,
    key: PrivateKey,
    chain: Vec<Certificate>,
}

impl Visit<'_> {
    /// Signs the issued certificate with the key of who taps; a rehearsal with keys made on the spot and thrown away.
    pub(super) fn seal(&mut self, id: &str) -> Result<Answer, Problem> {
        let repair = self.store.repair(id)?;
        if repair.issued.is_none() {
            return Err(Problem::error("not_issued", "The certificate is not issued yet. Sign it and issue it first."));
        }
        let hands = if repair.rehearsal { self.rehearsal_hands(&repair)? } else { vec![self.hand(&repair)?] };
        let Some(first) = hands.first() else {
            return Err(Problem::error("sealed", "Both keys have signed this certificate."));
        };
        let mut pdf = match repair.seals.last() {
            Some(before) => kept(&self.store.folder, &before.file)?,
            None => self.built(&repair, Some(first))?.1,
        };
        let mut events = vec![];
        for hand in &hands {
            pdf = self.signed(&pdf, &repair, hand)?;
            events.push(Event::Sealed {
                role: hand.role,
                name: drawn(&repair, hand.role).map_or_else(String::new, |drawn| drawn.name.clone()),
                certificate: hand.chain.first().map_or_else(String::new, |own| STANDARD.encode(own.der())),
                file: keep(&self.store.folder, &pdf)?,
            });
        }
        let after = with_writing(self, |store, writing| store.record(writing, Some(repair), id, events, None))?;
        self.shown(&after)
    }

    /// Checks a certificate or a record that somebody brings, by the keys of the people in this folder.
    pub(super) fn check_file(&mut self, name: &str, bytes: &[u8]) -> Result<Answer, Problem> {
        let mut verdict = check_file(name, bytes, &Trusted::people(&self.people));
        let (later, why) = self.replaced(&verdict)?;
        if let Some(why) = why {
            verdict.says = match &later {
                Some(later) => format!("{} In this folder it is superseded by {later}: {why}", verdict.says),
                None => format!("{} In this folder it is voided: {why}", verdict.says),
            };
        }
        verdict.superseded_by = later;
        self.store.begun = Some(Box::new(Begun::with(&verdict)));
        Ok(Answer::Checked(Box::new(verdict.told())))
    }

    /// Returns the paper with what it says: to be signed by `first`, or as a draft without a key.
    fn built(&mut self, repair: &Repair, first: Option<&Hand>) -> Result<(Content, Vec<u8>), Problem> {
        let chain = record::chain(repair, &self.store.journal.entries(&repair.id)?, &self.facts.device)?;
        let folder = self.store.folder.clone();
        let photo = |sha256: &str| photos::read(&folder, sha256.parse().ok()?).ok();
        let mut content = certificate::derive(repair, &chain, &self.people, &photo, self.facts.moment.clone())
            .map_err(|broken| Problem::refused(&broken))?;
        if let Some(own) = first.and_then(|hand| hand.chain.first()) {
            content.seal = Seal::Key { at_ms: self.facts.moment.at_ms, fingerprint: own.fingerprint() };
        }
        let pdf = certificate::build(&content).map_err(|problem| {
            Problem::error("certificate", format!("The certificate could not be made. {problem}"))
        })?;
        Ok((content, pdf))
    }

    /// Returns the name and the bytes of the certificate: as the keys signed it, or without a key.
    pub(super) fn certificate_file(&mut self, repair: &Repair) -> Result<(String, Vec<u8>), Problem> {
        if let (Some(last), Some(issued)) = (repair.seals.last(), &repair.issued) {
            let number = issued.number.strip_prefix("REHEARSAL").map_or(issued.number.as_str(), str::trim_start);
            return Ok((number.to_owned(), kept(&self.store.folder, &last.file)?));
        }
        self.built(repair, None).map(|(content, pdf)| (content.number, pdf))
    }

    /// Opens the key of who taps, if it is that person's turn.
    fn hand(&mut self, repair: &Repair) -> Result<Hand, Problem> {
        let me = self.people.iter().find(|person| Some(&person.id) == self.facts.person.as_ref()).cloned();
        let me = me.ok_or_else(|| Problem::error("person_missing", "Say who you are first."))?;
        let turn = ROLES.into_iter().find(|role| !repair.seals.iter().any(|one| one.role == *role));
        let turn = turn.ok_or_else(|| Problem::error("sealed", "Both keys have signed this certificate."))?;
        let whose = drawn(repair, turn).and_then(|drawn| drawn.at.person.as_deref());
        if me.role != turn || whose != Some(me.id.as_str()) {
            let name = drawn(repair, turn).map_or("", |drawn| drawn.name.as_str());
            let says = format!("Next comes the key of the {}: {name}, who drew the line.", keys::word(turn));
            return Err(Problem::error("not_your_turn", says));
        }
        let key = me.key().ok_or_else(|| {
            Problem::error("no_key", format!("{} has no key. Make one in the list of people.", me.name))
        })?;
        let opened = self.open_key(key)?;
        self.facts.key = Some(key.fingerprint.clone());
        Ok(Hand { role: turn, key: opened, chain: keys::certificates(key) })
    }

    /// Makes the keys that have not signed a rehearsal yet.
    fn rehearsal_hands(&mut self, repair: &Repair) -> Result<Vec<Hand>, Problem> {
        let seed = self.seed()?;
        let open = ROLES.into_iter().filter(|role| !repair.seals.iter().any(|one| one.role == *role));
        open.map(|role| {
            let own = Seed::new(*seed.derive(keys::word(role))).map_err(keyring::problem)?;
            let key = PrivateKey::fresh(&own);
            let holder = Holder {
                name: drawn(repair, role).map_or_else(String::new, |drawn| drawn.name.clone()),
                organisation: REHEARSAL.into(),
                role: keys::word(role).into(),
            };
            let certificate = Certificate::self_signed(&key, &holder, self.facts.moment.at_ms, &own);
            Ok(Hand { role, key, chain: vec![certificate.map_err(keyring::problem)?] })
        })
        .collect()
    }

    fn signed(&self, pdf: &[u8], repair: &Repair, hand: &Hand) -> Result<Vec<u8>, Problem> {
        let fonts = Fonts::shared().map_err(|why| Problem::error("certificate", why.to_string()))?;
        let place = ROLES.iter().position(|role| *role == hand.role).unwrap_or(0);
        let line = drawn(repair, hand.role);
        let moment = &self.facts.moment;
        let print = hand.chain.first().map(Certificate::fingerprint).unwrap_or_default();
        let name = line.map_or_else(String::new, |line| line.name.clone());
        let block = Block {
            field: SIGNATURE_FIELDS.get(place).copied().unwrap_or_default().to_owned(),
            statement: line.map_or_else(String::new, |line| line.statement.clone()),
            at_ms: moment.at_ms,
            offset_min: moment.offset_min,
            strokes: line.map_or_else(Vec::new, |line| line.strokes.clone()),
            lines: words::for_reader(repair.contract.reader, || {
                let who = format!("{name}, {}", certificate::derive::signer(hand.role));
                vec![
                    if repair.rehearsal { format!("{} {who}", tell!("cert-answers-rehearsal")) } else { who },
                    local(moment.at_ms, moment.offset_min),
                    tell!("cert-sealing-key", key = grouped(&print)),
                ]
            }),
            name,
        };
        let signer = Signer { key: &hand.key, chain: &hand.chain, fonts };
        sign(pdf, &signer, &block).map_err(keyring::problem)
    }
}

fn drawn(repair: &Repair, role: Role) -> Option<&crate::procedure::repair::Signature> {
    repair.signatures.iter().find(|signature| signature.role == role)
}

/// Returns the first sixteen digits in groups of four.
fn grouped(print: &str) -> String {
    let digits: Vec<char> = print.chars().take(16).collect();
    digits.chunks(4).map(|part| part.iter().collect::<String>()).collect::<Vec<_>>().join(" ")
}

fn local(at_ms: i64, offset_min: i32) -> String {
    let zone = FixedOffset::east_opt(offset_min * 60);
    let at = DateTime::from_timestamp_millis(at_ms).zip(zone).map(|(at, zone)| at.with_timezone(&zone));
    at.map_or_else(String::new, |at| at.format(&format!("{} %H:%M:%S %:z", words::date_pattern())).to_string())
}

fn path(folder: &Path, sha256: Hash) -> PathBuf {
    folder.join("certificates").join(format!("{sha256}.pdf"))
}

/// Keeps a certificate as a file named by its SHA-256, on the disk before the journal names it.
fn keep(folder: &Path, pdf: &[u8]) -> Result<String, Problem> {
    let sha256 = Hash::of(pdf);
    let path = path(folder, sha256);
    let half = path.with_extension("new");
    let written = || {
        fs::create_dir_all(folder.join("certificates"))?;
        fs::write(&half, pdf)?;
        fs::File::open(&half)?.sync_all()?;
        fs::rename(&half, &path)
    };
    written().map_err(|why: std::io::Error| {
        Problem::error("io", format!("The certificate could not be kept: {why}. It is not signed. Check the disk."))
    })?;
    Ok(sha256.to_string())
}

/// Returns a kept certificate, checked against its name.
fn kept(folder: &Path, sha256: &str) -> Result<Vec<u8>, Problem> {
    let lost = || {
        let says =
            "The signed certificate is not in this folder, or was changed. The journal is safe. Restore a backup.";
        Problem::error("certificate_missing", says)
    };
    let hash: Hash = sha256.parse().map_err(|_| lost())?;
    let bytes = fs::read(path(folder, hash)).map_err(|_| lost())?;
    if Hash::of(&bytes) == hash { Ok(bytes) } else { Err(lost()) }
}
