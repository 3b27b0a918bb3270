//! The folder tree is the architecture: who may import whom, and what must not stand anywhere.

use std::fs;
use std::path::{Path, PathBuf};

/// What each module of the core may take from `crate::`; what it holds itself is always allowed.
const ARROWS: &[(&str, &[&str])] = &[
    ("units", &[]),
    ("maths", &[]),
    ("words", &["units"]),
    ("facts", &["units"]),
    ("geodesy", &["units", "maths", "facts"]),
    ("checks", &["units", "maths", "facts", "geodesy", "entry"]),
    ("entry", &["units"]),
    ("inspection", &["units"]),
    // The contract names the stage of a photo and the shelf holds inspections; the rules read the shelf.
    ("shelf", &["units", "facts", "procedure", "inspection", "words"]),
    ("procedure", &["units", "facts", "checks", "geodesy", "shelf", "maths", "words"]),
    ("bundle", &["journal", "seal"]),
    ("photos", &["journal"]),
    ("picture", &[]),
    ("exif", &[]),
    ("label", &["picture"]),
    ("journal", &["register"]),
    ("register", &["journal"]),
    ("view", &["units", "facts", "checks", "geodesy", "procedure", "shelf", "register", "words"]),
    ("certificate", &["units", "facts", "checks", "procedure", "shelf", "maths", "geodesy", "words"]),
    // The visible block of a signature is set in the certificate's faces.
    ("seal", &["facts", "certificate"]),
];

/// What the pure parts must not know.
const PURE: &[&str] = &["checks", "procedure", "view"];
const IMPURE: &[&str] = &["rusqlite", "printpdf", "lopdf", "std::fs", "SystemTime::now", "Instant::now"];

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("..")
}

fn files(folder: &Path, endings: &[&str], found: &mut Vec<PathBuf>) {
    for entry in fs::read_dir(folder).into_iter().flatten().flatten() {
        let path = entry.path();
        let name = entry.file_name().to_string_lossy().into_owned();
        if path.is_dir() && !["target", "node_modules", ".venv", ".git", "out", "gen"].contains(&name.as_str()) {
            files(&path, endings, found);
        } else if endings.iter().any(|ending| name.ends_with(ending)) {
            found.push(path);
        }
    }
}

fn rust_of(module: &str) -> Vec<(PathBuf, String)> {
    let src = root().join("core/src");
    let mut paths = vec![];
    files(&src.join(module), &[".rs"], &mut paths);
    paths.push(src.join(format!("{module}.rs")));
    paths.into_iter().filter_map(|path| Some((path.clone(), fs::read_to_string(&path).ok()?))).collect()
}

/// Returns the code before the tests of a file, or nothing of a file that is only tests.
fn without_tests<'a>(path: &Path, text: &'a str) -> &'a str {
    let only_tests = path.components().any(|part| part.as_os_str() == "tests" || part.as_os_str() == "tests.rs")
        || path.file_stem().is_some_and(|stem| stem.to_string_lossy().ends_with("_tests"));
    if only_tests { "" } else { text.split("#[cfg(test)]\nmod tests {").next().unwrap_or(text) }
}

fn imported(line: &str) -> Vec<String> {
    let Some((_, after)) = line.split_once("crate::") else { return vec![] };
    let names = after.strip_prefix('{').map_or(after, |inner| inner.split('}').next().unwrap_or(inner));
    let first =
        |name: &str| name.trim().split([':', ';', ',', ' ', '(', ')', '>', '.']).next().unwrap_or_default().to_owned();
    if after.starts_with('{') { names.split(',').map(first).collect() } else { vec![first(names)] }
}

#[test]
fn every_module_imports_only_what_it_may() {
    let mut wrong = vec![];
    for (module, may) in ARROWS {
        for (path, text) in rust_of(module) {
            let text = without_tests(&path, &text);
            let lines = text.lines().filter(|line| !line.trim_start().starts_with("//"));
            for name in lines.flat_map(imported).filter(|name| !name.is_empty()) {
                if name != *module && !may.contains(&name.as_str()) {
                    wrong.push(format!("{}: {module} takes from {name}", path.display()));
                }
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn the_rules_know_no_clock_no_disk_and_no_page() {
    for module in PURE {
        for (path, text) in rust_of(module) {
            let text = without_tests(&path, &text);
            let found: Vec<_> = IMPURE.iter().filter(|word| text.contains(*word)).collect();
            assert!(found.is_empty(), "{}: {found:?}", path.display());
        }
    }
}

#[test]
fn only_the_bridge_knows_the_window() {
    let mut paths = vec![];
    files(&root().join("ui"), &[".js"], &mut paths);
    for path in paths {
        let text = fs::read_to_string(&path).expect("a file that was just listed");
        let knows = text.contains("__TAURI__");
        assert!(!knows || path.ends_with("bridge.js"), "{} speaks to the window", path.display());
    }
}

#[test]
fn nothing_names_the_machine_it_was_written_on() {
    let mut paths = vec![];
    files(&root(), &[".rs", ".js", ".mjs", ".md", ".toml", ".json", ".sh", ".css", ".html", "Makefile"], &mut paths);
    // Put together here, so that this file does not find itself.
    let homes = [["/wo", "rk/"].concat(), ["/ro", "ot/"].concat(), ["/ho", "me/"].concat()];
    for path in paths {
        let text = fs::read_to_string(&path).unwrap_or_default();
        let found: Vec<_> = homes.iter().filter(|home| text.contains(home.as_str())).collect();
        assert!(found.is_empty(), "{} holds {found:?}", path.display());
    }
}
