//! Bytes of an entry's body ↔ what they record. Every body says which form it has.

use serde::de::DeserializeOwned;
use serde::{Deserialize, Serialize};

use super::{Damage, Entry, Fault, Flaw};

/// The form that is written today.
const FORM: u32 = 1;

#[derive(Serialize)]
struct Writing<'a, T> {
    v: u32,
    #[serde(flatten)]
    record: &'a T,
}

#[derive(Deserialize)]
struct Form {
    v: u32,
}

/// Returns the bytes to store, read back once before they are: what can't be read again is never written.
///
/// Errors: `Io` if the record does not survive, which would be a mistake of this program.
pub fn encode<T: Serialize + DeserializeOwned + PartialEq>(record: &T) -> Result<Vec<u8>, Fault> {
    let lost = |what: String| Fault::Io { what: format!("the record can't be written as it is: {what}") };
    let bytes = serde_json::to_vec(&Writing { v: FORM, record }).map_err(|problem| lost(problem.to_string()))?;
    let back: T = read(&bytes).map_err(lost)?;
    if back == *record { Ok(bytes) } else { Err(lost("it reads back differently".into())) }
}

/// Returns what an entry records.
///
/// Errors: `Newer` if a later version wrote it; `Damaged` if its bytes are not a record.
pub fn decode<T: DeserializeOwned>(entry: &Entry) -> Result<T, Fault> {
    let unreadable = |what: String| {
        Fault::Damaged(Damage {
            repair: entry.repair.clone(),
            device: entry.device.clone(),
            seq: entry.seq,
            flaw: Flaw::Unreadable { what },
        })
    };
    let Form { v } = serde_json::from_slice(&entry.body).map_err(|problem| unreadable(problem.to_string()))?;
    if v > FORM {
        return Err(Fault::Newer { found: i64::from(v), known: i64::from(FORM) });
    }
    read(&entry.body).map_err(unreadable)
}

fn read<T: DeserializeOwned>(bytes: &[u8]) -> Result<T, String> {
    let mut body: serde_json::Map<String, serde_json::Value> =
        serde_json::from_slice(bytes).map_err(|problem| problem.to_string())?;
    body.remove("v");
    serde_json::from_value(body.into()).map_err(|problem| problem.to_string())
}
