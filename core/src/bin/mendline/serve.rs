//! `mendline serve`: the screens in a browser, for this computer and the person who started it only.
//!
//! A page of another site, a name that is pointed at this computer (DNS rebinding) and another user of the computer
//! may all reach the port. They see the program's own files and no data: a request needs the exact address in `Host`
//! and `Origin`, and the token. The token stands behind the `#` of the printed address: browsers send that part to
//! nobody, while a cookie would go to every server on 127.0.0.1, whatever its port.

use std::borrow::Cow;
use std::io::{ErrorKind, Write, stdout};
use std::net::{Ipv4Addr, TcpListener, TcpStream};
use std::path::PathBuf;
use std::thread::{self, Builder};
use std::time::Duration;

use subtle::ConstantTimeEq;

use crate::assets;
use crate::edge::{Edge, error};
use crate::http::{Call, Head, Refused, Reply, Unread, send};
use crate::ports::{hex, random, usual_folder};

const USUAL_PORT: u16 = 8417;
/// Connections answered at the same time.
const WORKERS: usize = 32;
/// Room for one photo as text in an envelope.
const BODY_BYTES: usize = 32 * 1024 * 1024;

const FIELDS: [(&str, &str); 6] = [
    (
        "Content-Security-Policy",
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob: data:; connect-src 'self'; \
         font-src 'self'; media-src 'self' blob:; base-uri 'none'; form-action 'none'; object-src 'none'; \
         frame-ancestors 'none'",
    ),
    ("X-Content-Type-Options", "nosniff"),
    ("Cache-Control", "no-store"),
    ("Referrer-Policy", "no-referrer"),
    ("Cross-Origin-Opener-Policy", "same-origin"),
    ("Cross-Origin-Resource-Policy", "same-origin"),
];

/// Serves until the process is ended.
///
/// Errors: the data folder can't be opened, or nothing can listen on the port.
pub fn run(data: Option<PathBuf>, port: Option<u16>) -> Result<(), String> {
    let folder = match data {
        Some(folder) => folder,
        None => usual_folder().map_err(|problem| format!("{problem}: name one with --data DIR"))?,
    };
    let edge = Edge::open(&folder)?;
    let listener = listen(port)?;
    let host = listener.local_addr().map_err(|problem| problem.to_string())?.to_string();
    let token = hex(&random::<32>().map_err(|problem| problem.to_string())?);
    let site = Site { edge, host, token };
    announce(&site).map_err(|problem| format!("standard output: {problem}"))?;
    thread::scope(|scope| {
        for _ in 0..WORKERS {
            Builder::new().spawn_scoped(scope, || site.work(&listener)).map_err(|problem| problem.to_string())?;
        }
        Ok(())
    })
}

fn listen(port: Option<u16>) -> Result<TcpListener, String> {
    let wanted = port.unwrap_or(USUAL_PORT);
    match TcpListener::bind((Ipv4Addr::LOCALHOST, wanted)) {
        Err(problem) if problem.kind() == ErrorKind::AddrInUse && port.is_none() => listen(Some(0)),
        outcome => outcome.map_err(|problem| format!("port {wanted}: {problem}; choose another with --port N")),
    }
}

fn announce(site: &Site) -> std::io::Result<()> {
    let mut out = stdout().lock();
    writeln!(out, "Open http://{}/#token={}", site.host, site.token)?;
    out.flush()
}

struct Site {
    edge: Edge,
    /// Address and port, as a browser puts them into `Host`.
    host: String,
    token: String,
}

impl Site {
    fn work(&self, listener: &TcpListener) {
        loop {
            match listener.accept() {
                Ok((stream, _)) => self.answer(stream),
                // The process has too many files open, for one: let others finish.
                Err(_) => thread::sleep(Duration::from_millis(50)),
            }
        }
    }

    /// A reply that can't be sent has no reader left: nothing is lost with it.
    fn answer(&self, stream: TcpStream) {
        let _ = match Call::read(stream) {
            Ok(mut call) => {
                let reply = self.reply(&mut call).unwrap_or_else(|refused| refusal(&refused));
                call.reply(&reply)
            }
            Err(Unread::Refused(stream, refused)) => send(&stream, &refusal(&refused), true),
            Err(Unread::Gone) => Ok(()),
        };
    }

    fn reply(&self, call: &mut Call) -> Result<Reply, Refused> {
        if call.head.field("host")? != Some(&self.host) {
            return Err(Refused(403));
        }
        match (call.head.method.as_str(), call.head.target.as_str()) {
            ("POST", "/ask") => self.ask(call),
            (_, "/ask") => Ok(not_allowed("POST")),
            ("GET" | "HEAD", target) => self.file(&call.head, target),
            _ => Ok(not_allowed("GET, HEAD")),
        }
    }

    fn ask(&self, call: &mut Call) -> Result<Reply, Refused> {
        if !self.is_own(call.head.field("origin")?) || !self.is_trusted(call.head.field("x-mendline-token")?) {
            return Err(Refused(403));
        }
        let envelope = String::from_utf8(call.body(BODY_BYTES)?).map_err(|_| Refused(400))?;
        Ok(match self.edge.ask(&envelope) {
            Ok(response) => json(200, response),
            Err(says) => json(503, error("not_asked", &says)),
        })
    }

    fn file(&self, head: &Head, target: &str) -> Result<Reply, Refused> {
        let origin = head.field("origin")?;
        if origin.is_some() && !self.is_own(origin) {
            return Err(Refused(403));
        }
        let path = target.split('?').next().unwrap_or(target);
        let (bytes, media_type) = assets::file(path).ok_or(Refused(404))?;
        Ok(reply(200, media_type, Cow::Borrowed(bytes)))
    }

    fn is_own(&self, origin: Option<&str>) -> bool {
        origin.and_then(|origin| origin.strip_prefix("http://")) == Some(&self.host)
    }

    /// Compared in constant time: how long it takes says nothing about how much of a guess is right.
    fn is_trusted(&self, token: Option<&str>) -> bool {
        token.is_some_and(|token| token.as_bytes().ct_eq(self.token.as_bytes()).into())
    }
}

fn reply(status: u16, media_type: &'static str, body: Cow<'static, [u8]>) -> Reply {
    Reply { status, fields: [&FIELDS[..], &[("Content-Type", media_type)]].concat(), body }
}

fn json(status: u16, text: String) -> Reply {
    reply(status, "application/json", Cow::Owned(text.into_bytes()))
}

fn not_allowed(methods: &'static str) -> Reply {
    let mut reply = refusal(&Refused(405));
    reply.fields.push(("Allow", methods));
    reply
}

fn refusal(refused: &Refused) -> Reply {
    let (code, says) = match refused.0 {
        403 => ("not_trusted", "Open the address that mendline serve printed, with all that stands behind the #."),
        404 => ("no_such_file", "There is no such page."),
        405 => ("not_allowed", "This address answers no request of this kind."),
        408 => ("too_slow", "The request came too slowly. Nothing was recorded. Send it again."),
        411 => ("no_length", "The request must state its length in Content-Length."),
        413 => ("too_large", "More than 32 MB in one request. Nothing was recorded. Send a smaller photo."),
        431 => ("head_too_large", "The head of the request is longer than 16 kB."),
        _ => ("bad_request", "The request can't be read. Nothing was recorded."),
    };
    json(refused.0, error(code, says))
}
