//! The crew of the rehearsal: a simulated clock, somebody who taps, and the door.

use std::path::Path;

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use chrono::{DateTime, FixedOffset, NaiveTime, TimeZone};
use mendline_core::door::{App, Envelope, Request};
use mendline_core::facts::{Moment, Position, PositionSource, Sensed};
use mendline_core::procedure::Command;
use mendline_core::procedure::answer::{Answer, Values};
use mendline_core::procedure::happening::Happening;
use mendline_core::procedure::rules::Rule;
use serde_json::Value;

use super::text;
use crate::ports::random;

/// The device of the rehearsal.
const DEVICE: &str = "k3f0rehearsal";

pub struct Crew {
    app: App,
    day: DateTime<FixedOffset>,
    seconds: i64,
    /// By how much the day runs behind the written times.
    behind: i64,
    taps: u64,
    person: &'static str,
}

impl Crew {
    /// Opens the folder, early on the invented day, and puts the example shelf in it.
    pub fn begin(data: &Path) -> Result<Self, String> {
        let zone = FixedOffset::east_opt(2 * 3600).ok_or("the offset of the rehearsal's clock is wrong")?;
        let day = zone.with_ymd_and_hms(2026, 10, 14, 0, 0, 0).single().ok_or("the rehearsal's day is wrong")?;
        let app = App::open(data).map_err(|fault| fault.to_string())?;
        let mut crew = Self { app, day, seconds: 6 * 3600, behind: 0, taps: 0, person: "ekdal" };
        crew.ask(Request::TakeExamples)?;
        Ok(crew)
    }

    /// Moves the clock to a time of the day, written `h:m:s`.
    pub fn at(&mut self, time: &str) -> &mut Self {
        use chrono::Timelike;
        if let Ok(time) = time.parse::<NaiveTime>() {
            self.seconds = i64::from(time.num_seconds_from_midnight()) + self.behind;
        }
        self
    }

    /// Lets the rest of the day begin later than written.
    pub fn wait(&mut self, seconds: i64) {
        self.behind += seconds;
    }

    /// Waits, if need be, so that a written time of the day is not before a moment in milliseconds since 1970.
    pub fn not_before(&mut self, time: &str, at_ms: i64) {
        let short = at_ms - self.ms(time) - self.behind * 1000;
        self.wait(short.max(0).div_euclid(1000) + i64::from(short > 0));
    }

    /// Passes the phone to somebody.
    pub fn by(&mut self, person: &'static str) -> &mut Self {
        self.person = person;
        self
    }

    /// Returns a time of the day, written `h:m:s`, in milliseconds since 1970.
    pub fn ms(&self, time: &str) -> i64 {
        use chrono::Timelike;
        let seconds = time.parse::<NaiveTime>().map_or(0, |time| time.num_seconds_from_midnight());
        self.day.timestamp_millis() + i64::from(seconds) * 1000
    }

    fn moment(&self) -> Moment {
        Moment {
            at_ms: self.day.timestamp_millis() + self.seconds * 1000,
            offset_min: 120,
            // The phone was started two hours before midnight.
            boot_ms: (self.seconds + 7200) * 1000,
            boot_id: "rehearsal".into(),
        }
    }

    /// Asks the core. Errors: its sentence, with the time of the tap.
    pub fn ask(&mut self, request: Request) -> Result<Value, String> {
        self.taps += 1;
        self.seconds += 1;
        let envelope = Envelope {
            id: format!("rehearsal-{}", self.taps),
            person: Some(self.person.to_owned()),
            position: yard(),
            battery_pct: Some(88),
            reader: Default::default(),
            typed: Default::default(),
            waited_ms: 0,
            on_paper_ms: None,
            pin: None,
            password: None,
            request,
        };
        let sent = serde_json::to_string(&envelope).map_err(|problem| problem.to_string())?;
        let mut fresh = [0; 16];
        fresh[..8].copy_from_slice(&self.taps.to_be_bytes());
        fresh[8..].copy_from_slice(&0x6d65_6e64_6c69_6e65_u64.to_be_bytes());
        let sensed = Sensed {
            moment: self.moment(),
            device: DEVICE.into(),
            fresh,
            seed: random().map_err(|problem| problem.to_string())?,
        };
        let answer: Value =
            serde_json::from_str(&self.app.handle(&sent, &sensed)).map_err(|problem| problem.to_string())?;
        match answer.get("ok") {
            Some(ok) => Ok(ok.clone()),
            None => Err(format!("at {}: {}", self.moment().at_ms, said(&answer))),
        }
    }

    pub fn tell(&mut self, repair: &str, command: Command) -> Result<Value, String> {
        self.ask(Request::Tell { repair: repair.to_owned(), command })
    }

    pub fn report(&mut self, repair: &str, happening: Happening) -> Result<Value, String> {
        self.tell(repair, Command::Report { happening, ago_ms: 0 })
    }

    pub fn done(&mut self, repair: &str, task: &str, values: Values) -> Result<Value, String> {
        self.tell(repair, Command::Answer { task: task.to_owned(), answer: Answer::Done { values } })
    }

    pub fn waive(&mut self, repair: &str, rule: Rule, subject: &str, reason: &str) -> Result<Value, String> {
        let command =
            Command::Waive { rule, subject: subject.to_owned(), reason: reason.to_owned(), foreman: "varga".into() };
        self.tell(repair, command)
    }

    pub fn photo(&mut self, repair: &str, key: &str, jpeg: &[u8]) -> Result<Value, String> {
        self.ask(Request::KeepPhoto {
            repair: repair.to_owned(),
            key: key.to_owned(),
            label: String::new(),
            bytes: STANDARD.encode(jpeg),
            copy_of: None,
        })
    }

    /// Returns the bytes of the certificate or the record.
    pub fn file(&mut self, which: &str, repair: &str) -> Result<Vec<u8>, String> {
        let repair = repair.to_owned();
        let answer = self.ask(match which {
            "certificate" => Request::Certificate { repair },
            _ => Request::Record { repair },
        })?;
        STANDARD.decode(text(&answer, "/bytes")).map_err(|problem| problem.to_string())
    }
}

/// A place in the open sea, so that it is nobody's street.
fn yard() -> Position {
    Position::Fix {
        lat_e7: 464_120_700,
        lon_e7: -248_853_000,
        accuracy_mm: Some(4_000),
        age_ms: 3_000,
        source: PositionSource::Typed,
    }
}

fn said(answer: &Value) -> String {
    let refusals = answer.pointer("/refusal/broken").and_then(Value::as_array);
    let broken = refusals.map(|all| all.iter().map(|one| text(one, "/says")).collect::<Vec<_>>().join(" "));
    broken.unwrap_or_else(|| text(answer, "/error/says").to_owned())
}
