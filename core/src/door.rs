//! The only way in: one request, one answer. The window, the browser and the command line all speak it.

use std::path::Path;

use serde::{Deserialize, Serialize};

use crate::facts::{Position, Sensed};

/// A request with what the asking side knows of the world.
#[derive(Clone, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Envelope {
    /// Made by the asking side; the same id twice changes nothing and gets the first answer.
    pub id: String,
    #[serde(default)]
    pub person: Option<String>,
    #[serde(default)]
    pub position: Position,
    #[serde(default)]
    pub battery_pct: Option<u8>,
    pub request: Request,
}

/// What can be asked.
#[derive(Clone, Debug, Serialize, Deserialize)]
#[serde(tag = "do", rename_all = "snake_case", deny_unknown_fields)]
pub enum Request {
    /// The first screen: live holds, curing, next to start, waiting for a signature.
    Today,
}

/// The core with its data folder open.
pub struct App {}

impl App {
    /// Opens the data folder, creating it when it is not there.
    pub fn open(_folder: &Path) -> Result<Self, String> {
        Ok(Self {})
    }

    /// Answers one envelope (JSON text) with one response (JSON text). Never panics on any text.
    pub fn handle(&mut self, envelope: &str, sensed: &Sensed) -> String {
        match serde_json::from_str::<Envelope>(envelope) {
            Ok(envelope) => {
                serde_json::json!({ "id": envelope.id, "ok": { "today": { "at_ms": sensed.moment.at_ms } } })
                    .to_string()
            }
            Err(problem) => {
                serde_json::json!({ "error": { "code": "bad_request", "says": problem.to_string() } }).to_string()
            }
        }
    }
}
