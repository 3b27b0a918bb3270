//! What was worked out for a repair, in a line each.

use std::collections::BTreeMap;

use crate::procedure::repair::Repair;
use crate::words;

/// Returns by a check's name what counts of the last one that was worked out, in the reader's words and units.
pub fn worked(repair: &Repair) -> BTreeMap<String, String> {
    let last = repair.worked_last().into_iter().map(|one| &one.worked);
    last.filter_map(|one| Some((one.name.clone(), words::that_counts(&one.name, &one.result)?.line()))).collect()
}
