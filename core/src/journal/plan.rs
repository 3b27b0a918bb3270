//! What a write adds to the chains that it touches, before anything is stored.

use std::collections::BTreeMap;

use super::chain::{Chain, Tips};
use super::{Draft, Entry, Fault, Hash, Write};

/// What a write comes to.
pub(super) struct Plan {
    /// The entries that it adds, in the order in which they are to be stored: those received repair by repair.
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
    // Each chain with how long it was before: a bundle may be large, so that its entries are copied once.
    let mut chains = BTreeMap::<&str, (Chain, usize)>::new();
    for entry in &write.received {
        if !chains.contains_key(entry.repair.as_str()) {
            let chain = whole(&entry.repair)?;
            let before = chain.len();
            chains.insert(&entry.repair, (chain, before));
        }
        if let Some((chain, _)) = chains.get_mut(entry.repair.as_str())
            && !chain.has(entry)
        {
            chain.take(entry.clone()).map_err(Fault::Unsound)?;
        }
    }
    let (mut fresh, mut tips) = (Vec::new(), BTreeMap::new());
    for (repair, (chain, before)) in chains {
        let (received, end) = chain.into_rest(before);
        fresh.extend(received);
        tips.insert(repair.to_owned(), end);
    }
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
