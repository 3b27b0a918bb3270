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
    let back: T = match as_written(&bytes) {
        Some(back) => back,
        None => read(&bytes).map_err(lost)?,
    };
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
    if let Some(record) = as_written(&entry.body) {
        return Ok(record);
    }
    let Form { v } = serde_json::from_slice(&entry.body).map_err(|problem| unreadable(problem.to_string()))?;
    if v > FORM {
        return Err(Fault::Newer { found: i64::from(v), known: i64::from(FORM) });
    }
    read(&entry.body).map_err(unreadable)
}

/// How a body begins, as [`encode`] writes it.
const BEGUN: &[u8] = br#"{"v":1,"#;

/// Reads a body that begins as it is written, in one pass; `None` leaves it to the slower way, which says what is wrong.
fn as_written<T: DeserializeOwned>(body: &[u8]) -> Option<T> {
    let rest = body.strip_prefix(BEGUN)?;
    let record = [b"{", rest].concat();
    serde_json::from_slice(&record).ok()
}

fn read<T: DeserializeOwned>(bytes: &[u8]) -> Result<T, String> {
    let mut body: serde_json::Map<String, serde_json::Value> =
        serde_json::from_slice(bytes).map_err(|problem| problem.to_string())?;
    body.remove("v");
    serde_json::from_value(body.into()).map_err(|problem| problem.to_string())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::journal::Hash;

    #[derive(Debug, PartialEq, Serialize, Deserialize)]
    #[serde(deny_unknown_fields)]
    struct Note {
        text: String,
        at_ms: i64,
    }

    fn entry(body: &[u8]) -> Entry {
        let hash = Hash::of(body);
        Entry { repair: "r".into(), device: "d".into(), seq: 1, prev: vec![], body: body.to_vec(), hash }
    }

    #[test]
    fn a_body_is_written_in_the_form_that_is_read_in_one_pass() {
        let note = Note { text: "Edge “v”".into(), at_ms: -7 };
        let body = encode(&note).unwrap();
        assert_eq!(BEGUN, format!("{{\"v\":{FORM},").as_bytes());
        assert_eq!(as_written::<Note>(&body), Some(note));
    }

    #[test]
    fn a_body_in_another_order_is_read_all_the_same_and_a_newer_or_strange_one_is_not() {
        let read = |body: &[u8]| decode::<Note>(&entry(body));
        assert_eq!(read(br#"{ "text": "a", "at_ms": 1, "v": 1 }"#).unwrap(), Note { text: "a".into(), at_ms: 1 });
        assert!(matches!(read(br#"{"v":2,"text":"a","at_ms":1}"#), Err(Fault::Newer { found: 2, known: 1 })));
        for strange in [&br#"{"v":1,"text":"a","at_ms":1,"v":2}"#[..], br#"{"v":1,"text":"a"}"#, br#"{"v":1,}"#, b"{}"]
        {
            assert!(matches!(read(strange), Err(Fault::Damaged(_))), "{}", String::from_utf8_lossy(strange));
        }
    }
}
