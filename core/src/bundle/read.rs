//! Checking a bundle, frame by frame. What is read counts only when the signature at the end was right.

use std::io::{self, Read};

use p256::ecdsa::signature::Verifier;
use p256::ecdsa::{DerSignature, VerifyingKey};
use serde::Deserialize;

use super::frame::{Kind, MAGIC, PREFIX, Running};
use super::{EntryHead, FORM, Head, Item};
use crate::journal::{Entry, Fault, Hash};

/// Why a bundle is not taken in. Nothing of it is.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum Refused {
    #[error("This is not a bundle of Mendline. Nothing was taken in.")]
    NotABundle,
    #[error(
        "This bundle was made by a newer Mendline (form {found}; this one knows {known}). Nothing was taken in. Update this program."
    )]
    Newer { found: u32, known: u32 },
    #[error("The bundle did not arrive whole: it is sound up to byte {at}. Nothing was taken in. Send it again.")]
    Cut { at: u64 },
    #[error("At byte {at} the bundle holds what can't be read: {what}. Nothing was taken in. Ask for it again.")]
    Unreadable { at: u64, what: String },
    #[error("At byte {at} the bundle holds a part of {bytes} bytes; {most} are allowed. Nothing was taken in.")]
    TooLarge { at: u64, bytes: u64, most: u64 },
    #[error(
        "The signature of the bundle is not right: it was changed on its way. Nothing was taken in. Ask for it again."
    )]
    WrongSignature,
    #[error(
        "Device {device} is known here by another key ({known}); this bundle has {found}. Nothing was taken in. Ask whoever sent it."
    )]
    OtherKey { device: String, known: String, found: String },
    #[error("The bundle is not signed with the key that you named, but with {found}. Nothing was taken in.")]
    NotTheNamedKey { found: String },
    #[error("The bundle carries a photo that none of its entries names ({sha256}). Nothing was taken in.")]
    StrayPhoto { sha256: Hash },
    #[error("{0} Nothing was taken in.")]
    Entry(String),
    #[error("{0}")]
    Journal(#[from] Fault),
    #[error("The bundle can't be read: {what}. Nothing was taken in.")]
    Io { what: String },
}

impl From<io::Error> for Refused {
    fn from(problem: io::Error) -> Self {
        Self::Io { what: problem.to_string() }
    }
}

/// A bundle that is being read.
pub struct Reader<R> {
    input: R,
    running: Running,
    /// Where the next frame begins.
    at: u64,
    head: Head,
    key: VerifyingKey,
    ended: bool,
}

impl<R: Read> Reader<R> {
    /// Reads who made the bundle.
    ///
    /// Errors: `NotABundle`, `Newer`, `Cut`, `Unreadable`.
    pub fn begin(mut input: R) -> Result<Self, Refused> {
        let mut magic = Vec::new();
        input.by_ref().take(MAGIC.len() as u64).read_to_end(&mut magic)?;
        if magic != MAGIC {
            return Err(Refused::NotABundle);
        }
        let mut at = MAGIC.len() as u64;
        let start = at;
        let (kind, content) = frame(&mut input, &mut at)?;
        let unreadable = |what: String| Refused::Unreadable { at: start, what };
        if kind != Kind::Head {
            return Err(unreadable("its first part is not a head".into()));
        }
        let head = head(&content).map_err(|refused| refused.unwrap_or_else(unreadable))?;
        let key = public_key(&head.key).ok_or_else(|| unreadable("the key of the device".into()))?;
        let mut running = Running::start();
        running.add(kind, &content);
        Ok(Self { input, running, at, head, key, ended: false })
    }

    pub const fn head(&self) -> &Head {
        &self.head
    }

    /// Returns the hash over all frames read so far; after the end, the one that was signed.
    pub const fn hash(&self) -> Hash {
        self.running.hash()
    }

    /// Returns the next item; `None` after the last, when the signature was right and nothing follows it.
    ///
    /// Errors: `Cut`, `Unreadable`, `TooLarge`, `WrongSignature`.
    pub fn item(&mut self) -> Result<Option<Item>, Refused> {
        if self.ended {
            return Ok(None);
        }
        let start = self.at;
        let (kind, content) = frame(&mut self.input, &mut self.at)?;
        let unreadable = |what: &str| Refused::Unreadable { at: start, what: what.to_owned() };
        if kind == Kind::Signature {
            return self.end(&content).map(|()| None);
        }
        self.running.add(kind, &content);
        match kind {
            Kind::Photo => Ok(Some(Item::Photo(content))),
            Kind::Entry => entry(&content).map(Item::Entry).map(Some).ok_or_else(|| unreadable("an entry")),
            Kind::Head | Kind::Signature => Err(unreadable("a second head")),
        }
    }

    fn end(&mut self, signature: &[u8]) -> Result<(), Refused> {
        let signature = DerSignature::try_from(signature).map_err(|_| Refused::WrongSignature)?;
        self.key.verify(&self.running.message(), &signature).map_err(|_| Refused::WrongSignature)?;
        if self.input.read(&mut [0])? != 0 {
            return Err(Refused::Unreadable { at: self.at, what: "something behind the signature".into() });
        }
        self.ended = true;
        Ok(())
    }
}

/// Never asks for more memory than has arrived.
fn frame(input: &mut impl Read, at: &mut u64) -> Result<(Kind, Vec<u8>), Refused> {
    let start = *at;
    let prefix: [u8; PREFIX] = part(input, PREFIX as u64)?.try_into().map_err(|_| Refused::Cut { at: start })?;
    let [letter, length @ ..] = prefix;
    let (kind, bytes) = (Kind::of(letter), u64::from_le_bytes(length));
    let kind = kind.ok_or_else(|| Refused::Unreadable { at: start, what: "a part of an unknown kind".into() })?;
    if bytes > kind.most() {
        return Err(Refused::TooLarge { at: start, bytes, most: kind.most() });
    }
    let content = part(input, bytes)?;
    if content.len() as u64 != bytes {
        return Err(Refused::Cut { at: start });
    }
    *at += PREFIX as u64 + bytes;
    Ok((kind, content))
}

fn part(input: &mut impl Read, bytes: u64) -> io::Result<Vec<u8>> {
    let mut content = Vec::new();
    input.by_ref().take(bytes).read_to_end(&mut content)?;
    Ok(content)
}

/// Errors: `Newer` as such, anything else as words.
fn head(content: &[u8]) -> Result<Head, Result<Refused, String>> {
    #[derive(Deserialize)]
    struct Form {
        v: u32,
    }
    let words = |problem: serde_json::Error| Err(problem.to_string());
    let Form { v } = serde_json::from_slice(content).map_err(words)?;
    if v > FORM {
        return Err(Ok(Refused::Newer { found: v, known: FORM }));
    }
    serde_json::from_slice(content).map_err(words)
}

/// Returns the key that stands in a bundle as 66 hexadecimal digits.
pub fn public_key(hex: &str) -> Option<VerifyingKey> {
    if hex.len() != 66 || !hex.is_ascii() {
        return None;
    }
    let byte = |at: usize| u8::from_str_radix(hex.get(at..at + 2)?, 16).ok();
    let bytes: Vec<u8> = (0..66).step_by(2).map(byte).collect::<Option<_>>()?;
    VerifyingKey::from_sec1_bytes(&bytes).ok()
}

fn entry(content: &[u8]) -> Option<Entry> {
    let end = content.iter().position(|byte| *byte == b'\n')?;
    let head: EntryHead = serde_json::from_slice(&content[..end]).ok()?;
    let EntryHead { repair, device, seq, prev, hash } = head;
    Some(Entry { repair, device, seq, prev, hash, body: content[end + 1..].to_vec() })
}
