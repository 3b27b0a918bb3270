//! What a write adds to the chains that it touches, before anything is stored.

use std::collections::BTreeMap;

use super::chain::Chain;
use super::{Draft, Entry, Fault, Hash, Write};

/// Returns the entries that `write` adds, in the order in which they are to be stored. `stored` reads a repair's
/// entries as they are.
///
/// Errors: `Damaged`, `Unsound`, `Moved`, and those of `stored`.
pub(super) fn plan(write: &Write, stored: impl Fn(&str) -> Result<Vec<Entry>, Fault>) -> Result<Vec<Entry>, Fault> {
    let mut chains = Chains { stored, open: BTreeMap::new() };
    let mut fresh = Vec::new();
    for entry in &write.received {
        let chain = &mut chains.of(&entry.repair)?.chain;
        if !chain.has(entry) {
            chain.take(entry.clone()).map_err(Fault::Unsound)?;
            fresh.push(entry.clone());
        }
    }
    for draft in &write.drafts {
        fresh.push(chains.of(&draft.repair)?.write(draft)?);
    }
    Ok(fresh)
}

/// The chains that a write touches, each read and checked once.
struct Chains<Stored> {
    stored: Stored,
    open: BTreeMap<String, Open>,
}

/// A chain, and the last entry that this write has drafted for it.
struct Open {
    chain: Chain,
    drafted: Option<Hash>,
}

impl<Stored: Fn(&str) -> Result<Vec<Entry>, Fault>> Chains<Stored> {
    fn of(&mut self, repair: &str) -> Result<&mut Open, Fault> {
        let open = match self.open.remove(repair) {
            Some(open) => open,
            None => Open { chain: Chain::check((self.stored)(repair)?).map_err(Fault::Damaged)?, drafted: None },
        };
        Ok(self.open.entry(repair.to_owned()).or_insert(open))
    }
}

impl Open {
    fn write(&mut self, draft: &Draft) -> Result<Entry, Fault> {
        let after = match self.drafted {
            Some(hash) => vec![hash],
            None => self.chain.base(draft)?,
        };
        let entry = self.chain.write(draft, &after);
        self.drafted = Some(entry.hash);
        Ok(entry)
    }
}
