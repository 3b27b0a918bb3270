//! `mendline ask`: the door on standard input and output, for scripts and tests.

use std::io::{BufRead, Write, stdin, stdout};
use std::path::Path;

use serde_json::{Value, json};

use crate::edge::{Edge, error};

/// Answers every line of standard input until it ends; a blank line has no answer.
///
/// Errors: the data folder can't be opened, or the input or output breaks.
pub fn run(folder: &Path) -> Result<(), String> {
    let edge = Edge::open(folder)?;
    for (line, number) in stdin().lock().split(b'\n').zip(1_u64..) {
        let line = line.map_err(|problem| format!("standard input, line {number}: {problem}"))?;
        if !line.trim_ascii().is_empty() {
            write(&answer(&edge, &line, number)).map_err(|problem| format!("standard output: {problem}"))?;
        }
    }
    Ok(())
}

/// An error says which line it answers.
fn answer(edge: &Edge, line: &[u8], number: u64) -> String {
    let response = match std::str::from_utf8(line) {
        Ok(envelope) => edge.ask(envelope).unwrap_or_else(|says| error("not_asked", &says)),
        Err(_) => error("bad_request", "the line is not UTF-8"),
    };
    match serde_json::from_str(&response) {
        Ok(Value::Object(mut fields)) if fields.contains_key("error") => {
            fields.insert("line".to_owned(), json!(number));
            Value::Object(fields).to_string()
        }
        _ => response,
    }
}

fn write(response: &str) -> std::io::Result<()> {
    let mut out = stdout().lock();
    writeln!(out, "{response}")?;
    out.flush()
}
