//! A boot clock that really runs apart from the wall clock: the jump is recorded and shown.

use std::process::{Command, Stdio};

use mendline_tests::{empty_folder, envelope, mendline, open_by_hand};
use serde_json::{Value, json};

const AHEAD_S: i64 = 7_200;

/// Starts the program by `command` and asks one question.
fn ask(mut command: Command, question: &str) -> Value {
    use std::io::Write;
    let mut child = command.stdin(Stdio::piped()).stdout(Stdio::piped()).spawn().expect("it starts");
    child.stdin.take().expect("a pipe").write_all(question.as_bytes()).expect("it listens");
    let output = child.wait_with_output().expect("it ends");
    serde_json::from_slice(&output.stdout).expect("an answer")
}

/// Source: time_namespaces(7): a process in it sees CLOCK_BOOTTIME moved by the offset, and the wall clock as it is.
#[test]
fn a_boot_clock_that_runs_ahead_of_the_wall_clock_is_recorded_as_a_jump() {
    let folder = empty_folder();
    let ask_in = |mut command: Command, question: &str| {
        command.args(["ask", "--data"]).arg(folder.path());
        ask(command, question)
    };
    let elsewhere = |program: &std::path::Path| {
        let mut command = Command::new("unshare");
        command.args(["--user", "--map-root-user", "--time", "--boottime", &AHEAD_S.to_string()]).arg(program);
        command
    };
    if !elsewhere("true".as_ref()).output().is_ok_and(|output| output.status.success()) {
        println!("not tried: this system gives a user no name space for time");
        return;
    }
    ask_in(Command::new(mendline()), &envelope("e", json!({ "do": "take_examples" })));
    let opened = ask_in(Command::new(mendline()), &envelope("o", open_by_hand("SS-1")));
    let repair = opened["ok"]["repair"]["id"].clone();
    let note = json!({ "do": "tell", "repair": repair, "command": { "command": "note", "text": "rain" } });
    let shown = ask_in(elsewhere(&mendline()), &envelope("n", note));
    let jumps = shown["ok"]["repair"]["clock_jumps"].as_array().expect("jumps").clone();
    assert_eq!(jumps.len(), 1, "{shown}");
    let by_ms = jumps[0]["by_ms"].as_i64().expect("a number");
    assert!((by_ms + AHEAD_S * 1000).abs() < 5_000, "{by_ms} ms");
    assert_eq!(jumps[0]["restarted"], false);
}
