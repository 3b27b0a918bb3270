//! Lists the files of `ui/`, so that `mendline serve` carries them inside the binary.

use std::path::{Path, PathBuf};
use std::{env, fs, io};

fn main() -> io::Result<()> {
    println!("cargo::rerun-if-changed=build.rs");
    if env::var_os("CARGO_FEATURE_CLI").is_none() {
        return Ok(());
    }
    let ui = variable("CARGO_MANIFEST_DIR")?.join("../ui").canonicalize()?;
    println!("cargo::rerun-if-changed={}", ui.display());
    let mut files = Vec::new();
    collect(&ui, &mut files)?;
    files.sort();
    let rows: Vec<_> = files.iter().map(|file| row(&ui, file)).collect();
    fs::write(variable("OUT_DIR")?.join("ui.rs"), format!("&[\n{}]", rows.concat()))
}

fn variable(name: &str) -> io::Result<PathBuf> {
    env::var_os(name).map(PathBuf::from).ok_or_else(|| io::Error::other(format!("cargo does not set {name}")))
}

fn collect(folder: &Path, files: &mut Vec<PathBuf>) -> io::Result<()> {
    for entry in fs::read_dir(folder)? {
        let path = entry?.path();
        if path.is_dir() { collect(&path, files)? } else { files.push(path) }
    }
    Ok(())
}

fn row(ui: &Path, file: &Path) -> String {
    let name = file.strip_prefix(ui).unwrap_or(file).to_string_lossy().replace('\\', "/");
    format!("(\"/{name}\", include_bytes!({file:?})),\n")
}
