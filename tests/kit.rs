//! What the tests share: worlds, fixtures, small builders.

pub mod earnest;

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};
use std::sync::OnceLock;

use serde_json::{Value, json};
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

/// Returns the folder of a rehearsal of the whole job, made once for all tests: `certificate.pdf`, `record.json`, `data`.
pub fn rehearsal() -> &'static Path {
    static DONE: OnceLock<TempDir> = OnceLock::new();
    let done = DONE.get_or_init(|| {
        let folder = empty_folder();
        let run = Command::new(mendline()).args(["demo", "--out"]).arg(folder.path()).output().expect("it starts");
        assert!(run.status.success(), "{}", String::from_utf8_lossy(&run.stderr));
        folder
    });
    done.path()
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

/// Copies a folder with all that is in it.
pub fn copied(from: &Path, to: &Path) {
    fs::create_dir_all(to).expect("the folder can be made");
    for file in fs::read_dir(from).expect("the folder can be read") {
        let path = file.expect("its files can be listed").path();
        let target = to.join(path.file_name().expect("a name"));
        if path.is_dir() {
            copied(&path, &target);
        } else {
            fs::copy(&path, &target).expect("the file can be copied");
        }
    }
}

/// Returns a request as the door takes it.
pub fn envelope(id: &str, request: Value) -> String {
    json!({ "id": id, "person": "varga", "request": request }).to_string()
}

/// Returns the request that opens a repair in the example contract.
pub fn open_by_hand(asset: &str) -> Value {
    json!({
        "do": "open_by_hand",
        "contract": "QM-2026-31",
        "line": {
            "asset": asset, "upstream": { "name": "MH 1" }, "downstream": { "name": "MH 2" },
            "length_um": 38_400_000, "height_um": 200_000, "material": "clay", "street": "Kettle Row"
        },
        "defect": {
            "from_um": 7_120_000, "to_um": 7_400_000, "observations": [], "origin": { "kind": "by_hand" }
        }
    })
}
