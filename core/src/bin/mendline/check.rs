//! `mendline check`: one calculation by its name, or the list of all.

use std::io::Write;
use std::process::ExitCode;

use clap::Args as ClapArgs;
use mendline_core::checks::named::{self, CheckError};
use serde_json::{Value, json};

/// Bad input and every refusal end with this code, so that a script can tell them from a crash.
const REFUSED: u8 = 2;

#[derive(ClapArgs)]
pub struct Args {
    /// The check, e.g. ovality-factor.
    #[arg(required_unless_present = "list")]
    name: Option<String>,
    /// Its fields as a JSON object, e.g. '{"ovality_pct": 2}'.
    #[arg(required_unless_present = "list", value_name = "JSON")]
    fields: Option<String>,
    /// Prints every check with its fields, units, ranges, formula and source.
    #[arg(long, conflicts_with_all = ["name", "fields"])]
    list: bool,
}

/// Prints the result, or the refusal with its field or rule, as one JSON object.
///
/// Exit codes: 0 a result, 2 bad input or a refusal, 1 the output can't be written.
pub fn run(args: &Args) -> ExitCode {
    let (shown, code) = match answer(args) {
        Ok(value) => (value, ExitCode::SUCCESS),
        Err(error) => {
            eprintln!("mendline: {}: {error}", error.check);
            (json!({ "error": error }), ExitCode::from(REFUSED))
        }
    };
    match writeln!(std::io::stdout(), "{shown:#}") {
        Ok(()) => code,
        Err(problem) => {
            eprintln!("mendline: standard output: {problem}");
            ExitCode::FAILURE
        }
    }
}

fn answer(args: &Args) -> Result<Value, CheckError> {
    if args.list {
        return Ok(named::list());
    }
    let name = args.name.as_deref().unwrap_or_default();
    let fields = serde_json::from_str(args.fields.as_deref().unwrap_or_default()).map_err(|problem| CheckError {
        check: name.into(),
        field: None,
        rule: "not_json".into(),
        message: format!("the fields are not JSON: {problem}"),
    })?;
    named::run(name, &fields)
}
