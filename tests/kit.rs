//! What the tests share: worlds, fixtures, small builders.

use std::path::{Path, PathBuf};
use std::process::{Command, Output};
use std::sync::OnceLock;

use tempfile::TempDir;

/// Returns the path of the program, built from the sources as they are now.
pub fn mendline() -> PathBuf {
    static BUILT: OnceLock<PathBuf> = OnceLock::new();
    BUILT.get_or_init(build).clone()
}

fn build() -> PathBuf {
    let cargo = std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into());
    let mut command = Command::new(cargo);
    command.args(["build", "--quiet", "--package", "mendline-core", "--bin", "mendline"]);
    if !cfg!(debug_assertions) {
        command.arg("--release");
    }
    assert!(command.status().expect("cargo starts").success(), "the program does not build");
    let here = std::env::current_exe().expect("a test has a path");
    here.ancestors().nth(2).expect("tests run in target/PROFILE/deps").join("mendline")
}

/// Returns an empty folder, which goes when the value does.
pub fn empty_folder() -> TempDir {
    tempfile::tempdir().expect("the temporary folder can be written")
}

/// Runs the Python of `tests/.venv`, which `make deps-test` sets up; `None`, with a printed notice, where it is not there.
pub fn python(arguments: &[String]) -> Option<Output> {
    let program = Path::new(env!("CARGO_MANIFEST_DIR")).join(".venv/bin/python");
    if !program.exists() {
        println!("skipped: tests/.venv is not there; make deps-test sets it up");
        return None;
    }
    Some(Command::new(program).args(arguments).output().expect("python starts"))
}
