//! One HTTP/1.1 request a connection, with a limit on every size and every wait.
//!
//! A client that sends too much or too slowly loses its connection and nothing else. Source: RFC 9112.

use std::borrow::Cow;
use std::io::{self, ErrorKind, Read, Write};
use std::net::{Shutdown, TcpStream};
use std::time::{Duration, Instant};

const HEAD_BYTES: usize = 16 * 1024;
const FIELDS: usize = 64;
const HEAD_WAIT: Duration = Duration::from_secs(5);
const BODY_WAIT: Duration = Duration::from_secs(60);
const WRITE_WAIT: Duration = Duration::from_secs(20);
const CLOSE_WAIT: Duration = Duration::from_secs(1);

/// A request whose head has been read; its body waits in the connection.
pub struct Call {
    stream: TcpStream,
    pub head: Head,
    /// What came of the body together with the head.
    early: Vec<u8>,
}

/// The request line and the header fields.
pub struct Head {
    pub method: String,
    /// The target of the request line, as it was sent.
    pub target: String,
    /// Names in lower case.
    fields: Vec<(String, String)>,
}

/// What goes back. `Connection: close` and the length are added.
pub struct Reply {
    pub status: u16,
    pub fields: Vec<(&'static str, &'static str)>,
    pub body: Cow<'static, [u8]>,
}

/// Why a request can't be used: the status that says so.
#[derive(Debug, PartialEq, Eq)]
pub struct Refused(pub u16);

/// A request that ends before it can be handed on.
pub enum Unread {
    /// Nothing came, or the connection broke: nobody waits for an answer.
    Gone,
    Refused(TcpStream, Refused),
}

impl Call {
    /// Reads the head of the only request of this connection, within 5 s and 16 KiB.
    pub fn read(stream: TcpStream) -> Result<Self, Unread> {
        let mut timed = Timed::new(&stream, HEAD_WAIT);
        let mut bytes = Vec::new();
        loop {
            match Head::parse(&bytes) {
                Ok(Some((head, length))) => return Ok(Self { stream, head, early: bytes.split_off(length) }),
                Ok(None) => {}
                Err(refused) => return Err(Unread::Refused(stream, refused)),
            }
            let mut chunk = [0; 4096];
            match timed.read(&mut chunk) {
                Ok(0) => return Err(Unread::Gone),
                Ok(length) => bytes.extend_from_slice(&chunk[..length]),
                Err(problem) if late(&problem) && !bytes.is_empty() => {
                    return Err(Unread::Refused(stream, Refused(408)));
                }
                Err(_) => return Err(Unread::Gone),
            }
        }
    }

    /// Reads the body within 60 s.
    ///
    /// Errors: 411 if its length is not stated, 413 if it is longer than `most` bytes (nothing is read then), 408 if it
    /// comes too slowly, 400 if it ends early.
    pub fn body(&mut self, most: usize) -> Result<Vec<u8>, Refused> {
        let length = self.head.length()?;
        if length > most {
            return Err(Refused(413));
        }
        if self.head.field("expect")?.is_some() {
            let go_on = self.stream.write_all(b"HTTP/1.1 100 Continue\r\n\r\n");
            go_on.map_err(|_| Refused(400))?;
        }
        let mut body = std::mem::take(&mut self.early);
        body.truncate(length);
        let missing = (length - body.len()) as u64;
        match Timed::new(&self.stream, BODY_WAIT).take(missing).read_to_end(&mut body) {
            Ok(_) if body.len() == length => Ok(body),
            Err(problem) if late(&problem) => Err(Refused(408)),
            _ => Err(Refused(400)),
        }
    }

    /// Sends the reply and closes the connection.
    pub fn reply(self, reply: &Reply) -> io::Result<()> {
        send(&self.stream, reply, self.head.method != "HEAD")
    }
}

impl Head {
    fn parse(bytes: &[u8]) -> Result<Option<(Head, usize)>, Refused> {
        let mut fields = [httparse::EMPTY_HEADER; FIELDS];
        let mut request = httparse::Request::new(&mut fields);
        match request.parse(bytes) {
            Ok(httparse::Status::Complete(length)) if length <= HEAD_BYTES => {
                let (method, target) = request.method.zip(request.path).ok_or(Refused(400))?;
                let fields = request.headers.iter().map(field).collect();
                Ok(Some((Head { method: method.to_owned(), target: target.to_owned(), fields }, length)))
            }
            Ok(httparse::Status::Partial) if bytes.len() <= HEAD_BYTES => Ok(None),
            Ok(_) | Err(httparse::Error::TooManyHeaders) => Err(Refused(431)),
            Err(_) => Err(Refused(400)),
        }
    }

    /// Returns the value of a header field, `None` if it was not sent. `name` is in lower case.
    ///
    /// Errors: 400 if the field was sent twice.
    pub fn field(&self, name: &str) -> Result<Option<&str>, Refused> {
        let mut values = self.fields.iter().filter(|(known, _)| known == name).map(|(_, value)| value.as_str());
        let first = values.next();
        if values.next().is_some() { Err(Refused(400)) } else { Ok(first) }
    }

    fn length(&self) -> Result<usize, Refused> {
        if self.field("transfer-encoding")?.is_some() {
            return Err(Refused(411));
        }
        let stated = self.field("content-length")?.ok_or(Refused(411))?;
        if stated.is_empty() || !stated.bytes().all(|digit| digit.is_ascii_digit()) {
            return Err(Refused(400));
        }
        stated.parse().map_err(|_| Refused(413))
    }
}

/// Sends a reply on a connection whose request could not be read, and closes it.
pub fn send(mut stream: &TcpStream, reply: &Reply, with_body: bool) -> io::Result<()> {
    stream.set_write_timeout(Some(WRITE_WAIT))?;
    let mut head = format!("HTTP/1.1 {} {}\r\n", reply.status, phrase(reply.status));
    for (name, value) in &reply.fields {
        head += &format!("{name}: {value}\r\n");
    }
    head += &format!("Content-Length: {}\r\nConnection: close\r\n\r\n", reply.body.len());
    stream.write_all(head.as_bytes())?;
    if with_body {
        stream.write_all(&reply.body)?;
    }
    close(stream)
}

/// Closing with bytes unread would reset the connection and could take the reply with it: read on for a moment.
fn close(stream: &TcpStream) -> io::Result<()> {
    stream.shutdown(Shutdown::Write)?;
    let mut timed = Timed::new(stream, CLOSE_WAIT);
    let mut unwanted = [0; 16 * 1024];
    while timed.read(&mut unwanted)? > 0 {}
    Ok(())
}

fn field(field: &httparse::Header<'_>) -> (String, String) {
    (field.name.to_ascii_lowercase(), String::from_utf8_lossy(field.value).into_owned())
}

fn late(problem: &io::Error) -> bool {
    matches!(problem.kind(), ErrorKind::TimedOut | ErrorKind::WouldBlock)
}

fn phrase(status: u16) -> &'static str {
    match status {
        200 => "OK",
        400 => "Bad Request",
        403 => "Forbidden",
        404 => "Not Found",
        405 => "Method Not Allowed",
        408 => "Request Timeout",
        411 => "Length Required",
        413 => "Content Too Large",
        431 => "Request Header Fields Too Large",
        503 => "Service Unavailable",
        _ => "Error",
    }
}

/// A stream read until one moment, however many reads that takes.
struct Timed<'a> {
    stream: &'a TcpStream,
    until: Instant,
}

impl<'a> Timed<'a> {
    fn new(stream: &'a TcpStream, wait: Duration) -> Self {
        Self { stream, until: Instant::now() + wait }
    }
}

impl Read for Timed<'_> {
    fn read(&mut self, into: &mut [u8]) -> io::Result<usize> {
        let left = self.until.saturating_duration_since(Instant::now());
        if left.is_zero() {
            return Err(ErrorKind::TimedOut.into());
        }
        self.stream.set_read_timeout(Some(left))?;
        self.stream.read(into)
    }
}
