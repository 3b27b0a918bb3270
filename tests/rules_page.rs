//! The page of rules in the docs is the table of the code.

use std::fs;
use std::path::Path;

use mendline_core::procedure::rules::{Kind, ShownRow, shown};

const HEAD: &str = "# The rules

Made from the rule table of the code (`core/src/procedure/rules.rs`) by `UPDATE_DOCS=1 cargo test rules_page`; don't edit
it by hand. A *never* can't be waived. A *departure* can be waived by the foreman, with a reason, and is printed on the
certificate. A *question* is asked and recorded. A *note* is kept and printed. The values in braces are put in with
their units; process figures come from the contract and the data sheets, never from here.

| code | stage | kind | what it says | what opens it |
|---|---|---|---|---|
";

fn line(shown: &ShownRow) -> String {
    let row = &shown.row;
    let stage = row.stage.map_or("any", |stage| stage.word());
    let kind = match row.kind {
        Kind::Never => "never",
        Kind::Departure => "departure",
        Kind::Question => "question",
        Kind::Note => "note",
    };
    format!("| `{}` | {stage} | {kind} | {} | {} |\n", row.rule.code(), shown.says, shown.way_out)
}

#[test]
fn the_rules_page_is_current() {
    let page = format!("{HEAD}{}", shown().iter().map(line).collect::<String>());
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("../docs/rules.md");
    if std::env::var_os("UPDATE_DOCS").is_some() {
        fs::create_dir_all(path.with_file_name("")).expect("docs can be made");
        fs::write(&path, &page).expect("docs/rules.md can be written");
    }
    let written = fs::read_to_string(&path).unwrap_or_default();
    assert!(written == page, "docs/rules.md is old; make it anew with UPDATE_DOCS=1 cargo test rules_page");
}
