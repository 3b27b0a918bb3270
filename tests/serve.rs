//! `mendline serve` shows data to the page that it opened, and to nobody else who can reach the port.
//!
//! Raw sockets, because a well-behaved client can't send what an attacker sends.

use std::io::{BufRead, BufReader, Read, Write};
use std::net::{Shutdown, TcpStream};
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

use mendline_tests::{empty_folder, mendline};
use tempfile::TempDir;

const TODAY: &str = "{\"id\":\"a\",\"request\":{\"do\":\"today\"}}";

struct Served {
    child: Child,
    _folder: TempDir,
    host: String,
    token: String,
}

impl Served {
    fn start() -> Self {
        let folder = empty_folder();
        let mut child = Command::new(mendline())
            .args(["serve", "--port", "0", "--data"])
            .arg(folder.path())
            .stdout(Stdio::piped())
            .spawn()
            .unwrap();
        let mut line = String::new();
        BufReader::new(child.stdout.take().unwrap()).read_line(&mut line).unwrap();
        let (host, token) = line.trim().strip_prefix("Open http://").unwrap().split_once("/#token=").unwrap();
        Self { child, _folder: folder, host: host.to_owned(), token: token.to_owned() }
    }

    fn connect(&self) -> TcpStream {
        let stream = TcpStream::connect(&self.host).unwrap();
        stream.set_read_timeout(Some(Duration::from_secs(10))).unwrap();
        stream
    }

    fn send(&self, bytes: &[u8]) -> Answer {
        let mut stream = self.connect();
        stream.write_all(bytes).unwrap();
        Answer::read(stream)
    }

    fn fetch(&self, line: &str, fields: &[String]) -> Answer {
        self.send(format!("{line} HTTP/1.1\r\n{}\r\n\r\n", fields.join("\r\n")).as_bytes())
    }

    /// A request as the own page sends it, for a test to spoil.
    fn own(&self, body: &str) -> Own {
        Own {
            host: self.host.clone(),
            origin: Some(format!("http://{}", self.host)),
            token: Some(self.token.clone()),
            body: body.to_owned(),
        }
    }

    fn ask(&self, own: &Own) -> Answer {
        self.send(own.text().as_bytes())
    }
}

impl Drop for Served {
    fn drop(&mut self) {
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

struct Own {
    host: String,
    origin: Option<String>,
    token: Option<String>,
    body: String,
}

impl Own {
    fn text(&self) -> String {
        let origin = self.origin.as_ref().map_or(String::new(), |origin| format!("Origin: {origin}\r\n"));
        let token = self.token.as_ref().map_or(String::new(), |token| format!("X-Mendline-Token: {token}\r\n"));
        let (host, length) = (&self.host, self.body.len());
        format!("POST /ask HTTP/1.1\r\nHost: {host}\r\n{origin}{token}Content-Length: {length}\r\n\r\n{}", self.body)
    }
}

#[derive(Debug)]
struct Answer {
    status: u16,
    head: String,
    body: Vec<u8>,
}

impl Answer {
    fn read(mut stream: TcpStream) -> Self {
        let mut bytes = Vec::new();
        stream.read_to_end(&mut bytes).unwrap();
        let end = bytes.windows(4).position(|four| four == b"\r\n\r\n").unwrap_or_else(|| panic!("no head: {bytes:?}"));
        let head = String::from_utf8(bytes[..end].to_vec()).unwrap();
        Self { status: head[9..12].parse().unwrap(), head, body: bytes[end + 4..].to_vec() }
    }

    fn has(&self, field: &str) -> bool {
        self.head.lines().any(|line| line == field)
    }
}

#[test]
fn the_page_and_its_question_are_answered() {
    let served = Served::start();
    let host = [format!("Host: {}", served.host)];
    let page = served.fetch("GET /", &host);
    assert_eq!(page.status, 200);
    assert!(page.body.starts_with(b"<!doctype html>"));
    assert!(page.has("Content-Type: text/html; charset=utf-8"));
    assert_eq!(served.fetch("GET /main.js?again=1", &host).status, 200);
    let answer = served.ask(&served.own(TODAY));
    assert_eq!(answer.status, 200);
    assert!(answer.has("Content-Type: application/json"));
    let answer: serde_json::Value = serde_json::from_slice(&answer.body).unwrap();
    assert!(answer.get("error").is_none(), "{answer}");
}

#[test]
fn every_reply_carries_the_guards_and_nothing_invites_another_site() {
    let served = Served::start();
    let host = [format!("Host: {}", served.host)];
    for reply in [served.fetch("GET /", &host), served.fetch("GET /none", &host), served.ask(&served.own(TODAY))] {
        for field in ["X-Content-Type-Options: nosniff", "Cache-Control: no-store", "Referrer-Policy: no-referrer"] {
            assert!(reply.has(field), "{field} is not in {}", reply.head);
        }
        let policy = reply.head.lines().find(|line| line.starts_with("Content-Security-Policy: ")).unwrap();
        assert!(policy.contains("default-src 'none'") && policy.contains("connect-src 'self'"));
        assert!(!policy.contains("unsafe") && !policy.contains("http"), "{policy}");
        assert!(!reply.head.to_lowercase().contains("access-control"));
    }
}

#[test]
fn a_name_pointed_at_this_computer_gets_nothing() {
    let served = Served::start();
    let port = served.host.split(':').nth(1).unwrap();
    let hosts = [
        format!("evil.example:{port}"),
        format!("localhost:{port}"),
        format!("127.0.0.1.evil.example:{port}"),
        "127.0.0.1".to_owned(),
        "127.0.0.1:1".to_owned(),
        format!("user@{}", served.host),
        String::new(),
    ];
    for host in hosts {
        assert_eq!(served.fetch("GET /", &[format!("Host: {host}")]).status, 403, "{host}");
        assert_eq!(served.ask(&Own { host: host.clone(), ..served.own(TODAY) }).status, 403, "{host}");
    }
    assert_eq!(served.fetch("GET /", &["Accept: */*".to_owned()]).status, 403);
    let both = [format!("Host: {}", served.host), "Host: evil.example".to_owned()];
    assert_eq!(served.fetch("GET /", &both).status, 400);
}

#[test]
fn a_page_of_another_origin_gets_nothing() {
    let served = Served::start();
    let host = &served.host;
    let origins = [
        Some("http://evil.example".to_owned()),
        Some("null".to_owned()),
        Some(format!("https://{host}")),
        Some(format!("http://{host}.evil.example")),
        Some(host.clone()),
        Some("http://127.0.0.1:1".to_owned()),
        None,
    ];
    for origin in origins {
        let answer = served.ask(&Own { origin: origin.clone(), ..served.own(TODAY) });
        assert_eq!(answer.status, 403, "{origin:?}");
    }
    let fields = [format!("Host: {host}"), "Origin: http://evil.example".to_owned()];
    assert_eq!(served.fetch("GET /main.js", &fields).status, 403);
    let preflight = ["Access-Control-Request-Method: POST".to_owned(), fields[0].clone(), fields[1].clone()];
    assert_eq!(served.fetch("OPTIONS /ask", &preflight).status, 405);
}

#[test]
fn a_question_without_the_token_is_refused() {
    let served = Served::start();
    let mut almost = served.token.clone();
    almost.replace_range(63.., if almost.ends_with('0') { "1" } else { "0" });
    let wrong = [None, Some(String::new()), Some(almost), Some(served.token[..63].to_owned())];
    for token in wrong {
        assert_eq!(served.ask(&Own { token: token.clone(), ..served.own(TODAY) }).status, 403, "{token:?}");
    }
    assert_eq!(served.token.len(), 64);
    assert_ne!(served.token, Served::start().token);
}

#[test]
fn no_path_leads_to_a_file_of_the_disk() {
    let served = Served::start();
    let paths = [
        "/../Cargo.toml",
        "/..%2f..%2fetc/passwd",
        "/%2e%2e/Cargo.toml",
        "//etc/passwd",
        "/etc/passwd",
        "/device",
        "/./main.js",
        "/..\\Cargo.toml",
        "http://127.0.0.1/main.js",
        "*",
    ];
    for path in paths {
        assert_eq!(served.fetch(&format!("GET {path}"), &[format!("Host: {}", served.host)]).status, 404, "{path}");
    }
}

#[test]
fn head_is_get_without_the_body_and_no_other_method_is_known() {
    let served = Served::start();
    let host = [format!("Host: {}", served.host), "Content-Length: 0".to_owned()];
    let (page, head) = (served.fetch("GET /", &host), served.fetch("HEAD /", &host));
    assert_eq!(head.status, 200);
    assert!(head.body.is_empty() && head.has(&format!("Content-Length: {}", page.body.len())));
    for line in ["PUT /", "DELETE /main.js", "POST /", "TRACE /", "CONNECT 127.0.0.1:1"] {
        let answer = served.fetch(line, &host);
        assert!(answer.status == 405 && answer.has("Allow: GET, HEAD"), "{line}: {answer:?}");
    }
    for line in ["GET /ask", "PUT /ask", "HEAD /ask"] {
        let answer = served.fetch(line, &host);
        assert!(answer.status == 405 && answer.has("Allow: POST"), "{line}: {answer:?}");
    }
}

#[test]
fn too_much_is_refused_before_it_is_read() {
    let served = Served::start();
    let lengths =
        [("33554433", 413), ("99999999999999999999999", 413), ("-1", 400), ("+5", 400), ("5,5", 400), ("", 400)];
    for (length, status) in lengths {
        let text = served.own("").text().replace("Content-Length: 0", &format!("Content-Length: {length}"));
        assert_eq!(served.send(text.as_bytes()).status, status, "{length}");
    }
    let text = served.own(TODAY).text();
    let (head, _) = text.split_once("Content-Length").unwrap();
    assert_eq!(served.send(format!("{head}Transfer-Encoding: chunked\r\n\r\n0\r\n\r\n").as_bytes()).status, 411);
    assert_eq!(served.send(format!("{head}Accept: */*\r\n\r\n").as_bytes()).status, 411);
    assert_eq!(served.send(format!("{head}X: {}\r\n\r\n", "x".repeat(20_000)).as_bytes()).status, 431);
    assert_eq!(served.send(format!("{head}{}\r\n", "X: y\r\n".repeat(200)).as_bytes()).status, 431);
    assert_eq!(served.send(b"nonsense\r\n\r\n").status, 400);
}

#[test]
fn the_largest_request_is_read_whole() {
    let served = Served::start();
    let mut body = TODAY.replace('}', &" ".repeat(16 * 1024 * 1024 - 64));
    body.push_str("}}");
    let answer = served.ask(&served.own(&body));
    assert_eq!(answer.status, 200);
    assert!(!String::from_utf8_lossy(&answer.body).contains("error"));
}

#[test]
fn a_body_that_ends_early_or_is_no_text_is_refused() {
    let served = Served::start();
    let text = served.own(TODAY).text();
    let mut stream = served.connect();
    stream.write_all(&text.as_bytes()[..text.len() - 3]).unwrap();
    stream.shutdown(Shutdown::Write).unwrap();
    assert_eq!(Answer::read(stream).status, 400);
    let mut bytes = text.into_bytes();
    let last = bytes.len() - 1;
    bytes[last] = 0xff;
    assert_eq!(served.send(&bytes).status, 400);
}

#[test]
fn slow_clients_hold_up_nobody_and_are_let_go() {
    let served = Served::start();
    let mut slow: Vec<_> = (0..24).map(|_| served.connect()).collect();
    for stream in &mut slow {
        stream.write_all(b"GET / HTTP/1.1\r\nHo").unwrap();
    }
    let begun = Instant::now();
    assert_eq!(served.ask(&served.own(TODAY)).status, 200);
    assert!(begun.elapsed() < Duration::from_secs(2), "waited {:?}", begun.elapsed());
    assert_eq!(Answer::read(slow.remove(0)).status, 408);
    assert!(begun.elapsed() < Duration::from_secs(9), "let go after {:?}", begun.elapsed());
}

#[test]
fn only_this_computer_can_connect() {
    let served = Served::start();
    let port = served.host.split(':').nth(1).unwrap();
    let table = std::fs::read_to_string("/proc/net/tcp").unwrap();
    let hex_port = format!(":{:04X}", port.parse::<u16>().unwrap());
    let listening: Vec<_> = table
        .lines()
        .filter_map(|line| line.split_whitespace().nth(1))
        .filter(|local| local.ends_with(&hex_port))
        .collect();
    assert!(!listening.is_empty());
    assert!(listening.iter().all(|local| local.starts_with("0100007F")), "{listening:?}");
}

#[test]
fn a_taken_port_is_said_with_the_way_out() {
    let served = Served::start();
    let port = served.host.split(':').nth(1).unwrap();
    let output =
        Command::new(mendline()).args(["serve", "--port", port, "--data"]).arg(empty_folder().path()).output().unwrap();
    let says = String::from_utf8(output.stderr).unwrap();
    assert!(!output.status.success() && says.contains(port) && says.contains("--port"), "{says}");
}
