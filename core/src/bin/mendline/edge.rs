//! The core with its ports: text in, text out, whatever goes wrong.
//!
//! The window takes this file by `#[path]` too.

use std::io::ErrorKind;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::{Path, PathBuf};
use std::sync::{Mutex, PoisonError};

use mendline_core::door::App;

use crate::ports::{Ports, free_bytes};

/// One open data folder, asked by any number of threads, one at a time.
pub struct Edge {
    folder: PathBuf,
    app: Mutex<App>,
    ports: Ports,
}

impl Edge {
    /// Opens the data folder, creating it when it is not there.
    ///
    /// Errors: a sentence that names the folder and what is wrong with it.
    pub fn open(folder: &Path) -> Result<Self, String> {
        let app = App::open(folder).map_err(|fault| sentence(folder, "can't be opened", &fault))?;
        if let Some(fault) = app.closed() {
            eprintln!("mendline: {}", sentence(folder, "is only read", &fault));
        }
        let ports = match (Ports::open(folder), app.closed()) {
            // Where nothing is recorded, no entry asks for the device.
            (Err(problem), Some(_)) if problem.kind() != ErrorKind::InvalidData => Ports::of_a_reader(),
            (ports, _) => ports,
        };
        let ports = ports.map_err(|problem| sentence(folder, "can't be opened", &problem))?;
        Ok(Self { folder: folder.to_owned(), app: Mutex::new(app), ports })
    }

    /// Answers one envelope (JSON text) with one response (JSON text on one line).
    ///
    /// A panic in the core is a bug. It is answered as an error; the journal holds what was there before, because an
    /// answer writes in one transaction or not at all. What the core remembers may be half made: it is opened anew.
    ///
    /// Errors: the core could not be asked, and the same envelope may be sent again; a sentence that says why.
    pub fn ask(&self, envelope: &str) -> Result<String, String> {
        let sensed = self.ports.sense().map_err(|problem| format!("The request was not passed on: {problem}."))?;
        let mut app = self.app.lock().unwrap_or_else(PoisonError::into_inner);
        app.set_free_bytes(free_bytes(&self.folder));
        if let Some(response) = caught(|| app.handle(envelope, &sensed)) {
            return Ok(response);
        }
        if let Ok(fresh) = App::open(&self.folder) {
            *app = fresh;
        }
        Ok(error("program_fault", "A fault in the program. Nothing was written. Start again, and report it."))
    }
}

/// Returns nothing after a panic, which has been printed by then.
fn caught(answer: impl FnOnce() -> String) -> Option<String> {
    catch_unwind(AssertUnwindSafe(answer)).ok()
}

/// Returns an error response.
pub fn error(code: &str, says: &str) -> String {
    serde_json::json!({ "error": { "code": code, "says": says } }).to_string()
}

fn sentence(folder: &Path, what: &str, problem: &dyn std::fmt::Display) -> String {
    format!("The data folder {} {what}: {problem}", folder.display())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_panic_ends_the_question_and_nothing_else() {
        assert_eq!(caught(|| "an answer".to_owned()).as_deref(), Some("an answer"));
        assert_eq!(caught(|| panic!("for the test")), None);
    }
}
