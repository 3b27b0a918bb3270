//! What a write adds to the chains that it touches, before anything is stored.

use std::collections::BTreeMap;

use super::chain::{Chain, Tips};
use super::{Draft, Entry, Fault, Hash, Write};

/// What a write comes to.
pub(super) struct Plan {
    /// The entries that it adds, in the order in which they are to be stored.
    pub fresh: Vec<Entry>,
    /// Where the chains that it touches end afterwards.
    pub tips: BTreeMap<String, Tips>,
}

/// Returns what `write` comes to. `stored` reads a repair's entries as they are; `known` says where its chain ends, if
/// that is known without reading it.
///
/// Errors: `Damaged`, `Unsound`, `Moved`, and those of `stored`.
pub(super) fn plan(
    write: &Write,
    stored: impl Fn(&str) -> Result<Vec<Entry>, Fault>,
    known: impl Fn(&str) -> Option<Tips>,
) -> Result<Plan, Fault> {
    let whole = |repair: &str| Chain::check(stored(repair)?).map_err(Fault::Damaged);
    let mut fresh = Vec::new();
    let mut chains = BTreeMap::<String, Chain>::new();
    for entry in &write.received {
        let chain = match chains.remove(&entry.repair) {
            Some(chain) => chain,
            None => whole(&entry.repair)?,
        };
        let chain = chains.entry(entry.repair.clone()).or_insert(chain);
        if !chain.has(entry) {
            chain.take(entry.clone()).map_err(Fault::Unsound)?;
            fresh.push(entry.clone());
        }
    }
    let mut tips: BTreeMap<_, _> = chains.into_iter().map(|(repair, chain)| (repair, chain.into_tips())).collect();
    let mut drafted = BTreeMap::<&str, Hash>::new();
    for draft in &write.drafts {
        let end = match tips.remove(&draft.repair).or_else(|| known(&draft.repair)) {
            Some(end) => end,
            None => whole(&draft.repair)?.into_tips(),
        };
        let entry = next(tips.entry(draft.repair.clone()).or_insert(end), draft, drafted.get(draft.repair.as_str()))?;
        drafted.insert(&draft.repair, entry.hash);
        fresh.push(entry);
    }
    Ok(Plan { fresh, tips })
}

/// Two drafts for one repair share the heads that they were decided on, and the second follows the first.
fn next(end: &mut Tips, draft: &Draft, drafted: Option<&Hash>) -> Result<Entry, Fault> {
    let after = match drafted {
        Some(hash) => vec![*hash],
        None => end.base(draft)?,
    };
    Ok(end.write(draft, &after))
}
