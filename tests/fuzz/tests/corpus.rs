//! Every input that is kept, and changed ones: a short run of what `make fuzz` does for long.

use std::fs;
use std::path::{Path, PathBuf};

use mendline_fuzz::mutate::Chance;
use mendline_fuzz::{TARGETS, Target, corpus, run};

/// How many changed inputs are tried, by target.
const CHANGED: [(&str, u64); 5] = [("inspection", 4000), ("bundle", 120), ("record", 400), ("door", 120), ("pdf", 400)];

/// One test, because what a program holds is counted for all of it.
#[test]
fn what_comes_from_outside_breaks_no_promise() {
    for (name, target) in TARGETS {
        let kept = kept(name);
        assert!(!kept.is_empty(), "no inputs are kept for {name}");
        kept.iter().for_each(|(file, bytes)| try_it(target, &file.display().to_string(), bytes));
        let count = CHANGED.iter().find(|(known, _)| *known == name).map_or(0, |(_, count)| *count);
        for seed in 0..count {
            let (file, input) = &kept[seed as usize % kept.len()];
            let (_, other) = &kept[(seed as usize * 7 + 3) % kept.len()];
            let changed = Chance::new(seed + 1).changed(input, other);
            try_it(target, &format!("{} changed by {seed}", file.display()), &changed);
        }
    }
}

/// The input lies on the disk before it is tried: too much memory leaves no time to name it.
fn try_it(target: Target, name: &str, bytes: &[u8]) {
    let last = Path::new(env!("CARGO_TARGET_TMPDIR")).join("last-input");
    fs::write(&last, bytes).expect("the folder of the build can be written");
    fs::write(last.with_extension("name"), name).expect("the folder of the build can be written");
    run(target, bytes);
}

/// Returns the inputs of a target, in the order of their names.
fn kept(name: &str) -> Vec<(PathBuf, Vec<u8>)> {
    let folder = corpus().join(name);
    let mut files: Vec<PathBuf> =
        fs::read_dir(folder).into_iter().flatten().flatten().map(|file| file.path()).collect();
    files.sort();
    files.into_iter().map(|file| (file.clone(), fs::read(&file).expect("a file that was just listed"))).collect()
}
