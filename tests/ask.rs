//! `mendline ask` answers every line, and only with lines.

use std::io::{BufRead, BufReader, Write};
use std::process::{Command, Stdio};

use mendline_tests::{empty_folder, mendline};
use serde_json::Value;

fn ask(input: &[u8]) -> Vec<Value> {
    let folder = empty_folder();
    let mut child = Command::new(mendline())
        .args(["ask", "--data"])
        .arg(folder.path())
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    child.stdin.take().unwrap().write_all(input).unwrap();
    let output = child.wait_with_output().unwrap();
    assert!(output.status.success());
    String::from_utf8(output.stdout).unwrap().lines().map(|line| serde_json::from_str(line).unwrap()).collect()
}

const TODAY: &[u8] = b"{\"id\":\"a\",\"request\":{\"do\":\"today\"}}\n";

#[test]
fn a_bad_line_is_answered_with_its_number_and_the_next_goes_on() {
    let input =
        [TODAY, b"\n", b"{oops\n", b"\xff\xfe\n", b"{\"id\":\"b\",\"request\":{\"do\":\"fly\"}}\n", TODAY].concat();
    let answers = ask(&input);
    let lines: Vec<_> = answers.iter().map(|answer| answer["line"].as_u64()).collect();
    assert_eq!(lines, [None, Some(3), Some(4), Some(5), None]);
    assert!(answers[0].get("error").is_none() && answers[4].get("error").is_none());
    for bad in &answers[1..4] {
        assert!(bad["error"]["code"].is_string() && bad["error"]["says"].is_string(), "{bad}");
    }
}

#[test]
fn the_last_line_needs_no_end() {
    assert_eq!(ask(TODAY.trim_ascii_end()).len(), 1);
    assert!(ask(b"").is_empty());
}

#[test]
fn every_answer_comes_before_the_next_question() {
    let folder = empty_folder();
    let mut child = Command::new(mendline())
        .args(["ask", "--data"])
        .arg(folder.path())
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    let (mut questions, mut answers) = (child.stdin.take().unwrap(), BufReader::new(child.stdout.take().unwrap()));
    for _ in 0..3 {
        questions.write_all(TODAY).unwrap();
        let mut answer = String::new();
        answers.read_line(&mut answer).unwrap();
        assert!(answer.ends_with("}\n"), "{answer}");
    }
    drop(questions);
    assert!(child.wait().unwrap().success());
}
