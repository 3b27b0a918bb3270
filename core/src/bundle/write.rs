//! Making a bundle, frame by frame, without holding more than one.

use std::io::{Error, Result, Write};

use super::frame::{Kind, MAGIC, Running};
use super::{EntryHead, Head};
use crate::journal::Entry;
use crate::seal::PrivateKey;

/// A bundle that is being written. The same head, items and key give the same bytes.
pub struct Writer<W> {
    out: W,
    running: Running,
}

impl<W: Write> Writer<W> {
    /// Begins a bundle. Errors: those of `out`.
    pub fn begin(mut out: W, head: &Head) -> Result<Self> {
        out.write_all(MAGIC)?;
        let mut writer = Self { out, running: Running::start() };
        writer.frame(Kind::Head, &serde_json::to_vec(head).map_err(Error::other)?)?;
        Ok(writer)
    }

    /// Adds an entry, after those that it follows.
    pub fn entry(&mut self, entry: &Entry) -> Result<()> {
        let head = EntryHead {
            repair: entry.repair.clone(),
            device: entry.device.clone(),
            seq: entry.seq,
            prev: entry.prev.clone(),
            hash: entry.hash,
        };
        let mut content = serde_json::to_vec(&head).map_err(Error::other)?;
        content.push(b'\n');
        content.extend(&entry.body);
        self.frame(Kind::Entry, &content)
    }

    /// Adds the original bytes of a photo.
    pub fn photo(&mut self, bytes: &[u8]) -> Result<()> {
        self.frame(Kind::Photo, bytes)
    }

    /// Signs all that was written.
    pub fn finish(mut self, key: &PrivateKey) -> Result<W> {
        let signature = key.sign(&self.running.message());
        self.frame(Kind::Signature, &signature)?;
        self.out.flush()?;
        Ok(self.out)
    }

    fn frame(&mut self, kind: Kind, content: &[u8]) -> Result<()> {
        if content.len() as u64 > kind.most() {
            return Err(Error::other(format!("a frame of {} bytes is too large to travel", content.len())));
        }
        self.out.write_all(&[kind.letter()])?;
        self.out.write_all(&(content.len() as u64).to_le_bytes())?;
        self.out.write_all(content)?;
        self.running.add(kind, content);
        Ok(())
    }
}
