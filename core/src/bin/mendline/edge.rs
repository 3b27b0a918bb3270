//! The core with its ports: text in, text out, whatever goes wrong.
//!
//! The window takes this file by `#[path]` too.

use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::Path;
use std::sync::{Mutex, PoisonError};

use mendline_core::door::App;

use crate::ports::Ports;

/// One open data folder, asked by any number of threads, one at a time.
pub struct Edge {
    app: Mutex<App>,
    ports: Ports,
}

impl Edge {
    /// Opens the data folder, creating it when it is not there.
    ///
    /// Errors: a sentence that names the folder and what is wrong with it.
    pub fn open(folder: &Path) -> Result<Self, String> {
        let app = App::open(folder).map_err(|fault| sentence(folder, &fault))?;
        let ports = Ports::open(folder).map_err(|problem| sentence(folder, &problem))?;
        Ok(Self { app: Mutex::new(app), ports })
    }

    /// Answers one envelope (JSON text) with one response (JSON text on one line).
    ///
    /// A panic in the core is a bug. It is answered as an error; the journal holds what was there before, because an
    /// answer writes in one transaction or not at all.
    pub fn ask(&self, envelope: &str) -> String {
        let sensed = match self.ports.sense() {
            Ok(sensed) => sensed,
            Err(problem) => return error("no_random", &problem.to_string()),
        };
        let mut app = self.app.lock().unwrap_or_else(PoisonError::into_inner);
        caught(|| app.handle(envelope, &sensed))
    }
}

/// The panic itself has been printed by then.
fn caught(answer: impl FnOnce() -> String) -> String {
    catch_unwind(AssertUnwindSafe(answer)).unwrap_or_else(|_| {
        error("program_fault", "A fault in the program. Nothing was written. Start again, and report it.")
    })
}

/// Returns an error response.
pub fn error(code: &str, says: &str) -> String {
    serde_json::json!({ "error": { "code": code, "says": says } }).to_string()
}

fn sentence(folder: &Path, problem: &dyn std::fmt::Display) -> String {
    format!("The data folder {} can't be opened: {problem}", folder.display())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_panic_is_answered_as_an_error() {
        assert_eq!(caught(|| "an answer".to_owned()), "an answer");
        assert!(caught(|| panic!("for the test")).contains("program_fault"));
    }
}
