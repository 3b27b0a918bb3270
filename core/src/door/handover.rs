//! A live hold goes to another phone: what the code on the first one says, and how both clocks are told apart.
//!
//! The chain travels as a bundle. The code carries the moment that the first phone's clocks show while it is on the
//! screen, with the start times, the window and the last reading, so that a file that is older than the code is noticed.
//! It is signed by the first phone.

use base64::Engine as _;
use base64::engine::general_purpose::URL_SAFE_NO_PAD;
use p256::ecdsa::DerSignature;
use p256::ecdsa::signature::Verifier;
use qrcodegen::{QrCode, QrCodeEcc};
use serde::{Deserialize, Serialize};

use super::response::{Answer, Problem};
use super::{Visit, device_key};
use crate::bundle::read::public_key;
use crate::facts::Moment;
use crate::label;
use crate::procedure::decide::OLDEST_MS;
use crate::procedure::hold;
use crate::procedure::repair::{HandedOver, Repair};
use crate::procedure::{Command, times};
use crate::view::Code;

/// What every code begins with.
const TAG: &str = "MENDLINE-HOLD-1:";

/// Stands before what is signed, so that no signature can be taken for one of another kind.
const SIGNED: &[u8] = b"mendline/hold/1";

/// The least quiet zone of a code, in modules. Source: ISO/IEC 18004, 9.1.
const QUIET: i32 = 4;

/// What the code says: a JSON array in this order, because every letter makes the code finer and harder to photograph.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
struct Pass(Device, Clocks, Told);

/// The first phone.
type Device = String;

/// What its clocks show while the code is on its screen: wall clock, offset, boot clock, and which start that counts from,
/// as [`Moment`] names them.
type Clocks = (i64, i32, i64, String);

/// The hold by the first phone's boot clock (ms) and gauge (Pa).
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
struct Told {
    #[serde(rename = "r")]
    repair: String,
    #[serde(rename = "j")]
    joined_ms: i64,
    #[serde(rename = "t")]
    target_ms: i64,
    #[serde(rename = "w")]
    window_pa: (i64, i64),
    #[serde(rename = "l")]
    last: (i64, i64),
    #[serde(rename = "c")]
    counted_ms: i64,
}

impl Visit<'_> {
    /// Returns the code of a hold that this device handed over and nobody took; `None` where there is none, or where the
    /// device was started anew since, so that its clock no longer says how long ago that was.
    pub(super) fn handing_code(&self, repair: &Repair) -> Option<Code> {
        let handed = repair.handed().filter(|one| one.taken.is_none() && one.at.device == self.facts.device)?;
        let now = &self.facts.moment;
        if handed.at.moment.boot_id != now.boot_id {
            return None;
        }
        let key = device_key::open(&self.store.folder, &self.seed).ok()?;
        let moment = (now.at_ms, now.offset_min, now.boot_ms, now.boot_id.clone());
        let text = written(&Pass(self.facts.device.clone(), moment, told(repair)?), |bytes| key.sign(bytes))?;
        drawn(&QrCode::encode_text(&text, QrCodeEcc::Medium).ok()?)
    }

    /// Takes over a hold by a photo of the code taken `age_ms` ago, by what the first phone's clock shows, or without
    /// the first phone.
    pub(super) fn take_over(&mut self, id: &str, photo: &[u8], age_ms: i64, clock: &str) -> Result<Answer, Problem> {
        let repair = self.store.repair(id)?;
        let handed = repair.handed().cloned().ok_or_else(|| {
            let says = "Nobody has handed this hold over. Take in the file of the first phone, then try again.";
            Problem::error("not_handed", says)
        })?;
        let mut ours = self.facts.moment.clone();
        let typed = photo.is_empty() && !clock.trim().is_empty();
        let theirs = if !photo.is_empty() {
            let age_ms = age_ms.clamp(0, OLDEST_MS);
            ours.at_ms -= age_ms;
            ours.boot_ms -= age_ms;
            Some(self.told_by(photo, &repair)?)
        } else if typed {
            Some(shown_at(clock, &handed, &self.facts.moment)?)
        } else {
            None
        };
        self.tell_any(id, &Command::TakeOver { theirs, ours, typed })
    }

    fn told_by(&mut self, photo: &[u8], repair: &Repair) -> Result<Moment, Problem> {
        let said = match label::texts(photo) {
            Err(label::Fault::NoCode) => vec![],
            said => said?,
        };
        let text = said.iter().find_map(|text| text.strip_prefix(TAG)).ok_or_else(|| wrong(NO_CODE))?;
        let (Pass(device, (at_ms, offset_min, boot_ms, boot_id), hold), signed, signature) = read(text)
            .ok_or_else(|| wrong("The code can't be read. Take the picture again, or type what its clock shows."))?;
        let known = self.store.shelf()?.devices.get(&device).cloned();
        let key =
            known.ok_or_else(|| wrong("The phone that shows this code is not known here. Take its file in first."))?;
        if !genuine(&key, &signed, &signature) {
            return Err(wrong("This code was not made by the phone whose file was taken in. Nothing was taken over."));
        }
        if hold.repair != repair.id {
            return Err(wrong("This code is of another repair. Open that one here."));
        }
        if Some(hold) != told(repair) {
            return Err(wrong(
                "The first phone knows more of this hold than its file. Make its file anew, take it in, then take over.",
            ));
        }
        Ok(Moment { at_ms, offset_min, boot_ms, boot_id })
    }
}

const NO_CODE: &str = "There is no code of a hold in this picture. Fill the picture with the code, hold still, keep light \
                       off it; or type what its clock shows.";

fn wrong(says: &str) -> Problem {
    Problem::error("pass", says)
}

/// Returns what the entries say of the hold, in the first phone's time.
fn told(repair: &Repair) -> Option<Told> {
    let (plan, attempt) = times::plan_and_attempt(repair)?;
    let (joined, target) = attempt.joined.as_ref().zip(attempt.target.as_ref())?;
    let last = hold::held(attempt).last();
    let (at, gauge) = last.map_or((&target.at, target.gauge_pa), |reading| (&reading.at, reading.gauge_pa));
    Some(Told {
        repair: repair.id.clone(),
        joined_ms: joined.moment.boot_ms,
        target_ms: target.at.moment.boot_ms,
        window_pa: (plan.computed.window.lower_pa.as_pa(), plan.computed.window.upper_pa.as_pa()),
        last: (at.moment.boot_ms, gauge.as_pa()),
        counted_ms: hold::state(plan, attempt)?.shown.counted_ms.as_ms(),
    })
}

fn written(pass: &Pass, sign: impl FnOnce(&[u8]) -> Vec<u8>) -> Option<String> {
    let text = serde_json::to_vec(pass).ok()?;
    let signature = sign(&[SIGNED, &text].concat());
    Some(format!("{TAG}{}.{}", URL_SAFE_NO_PAD.encode(text), URL_SAFE_NO_PAD.encode(signature)))
}

/// Returns what the code says, what was signed, and the signature.
fn read(text: &str) -> Option<(Pass, Vec<u8>, Vec<u8>)> {
    let (said, signature) = text.split_once('.')?;
    let said = URL_SAFE_NO_PAD.decode(said).ok()?;
    let pass = serde_json::from_slice(&said).ok()?;
    Some((pass, [SIGNED, &said].concat(), URL_SAFE_NO_PAD.decode(signature).ok()?))
}

fn genuine(key: &str, message: &[u8], signature: &[u8]) -> bool {
    let signature = DerSignature::try_from(signature).ok();
    public_key(key).zip(signature).is_some_and(|(key, signature)| key.verify(message, &signature).is_ok())
}

/// Returns the moment of the first phone at which its clock shows `clock` (hours, minutes, seconds by its own zone), the
/// nearest to what it should show now if both clocks went alike.
///
/// Errors: `clock` if it is no time of day.
fn shown_at(clock: &str, handed: &HandedOver, now: &Moment) -> Result<Moment, Problem> {
    const DAY_MS: i64 = 24 * 3_600_000;
    let wrong = || {
        let says = "Type what the clock of the first phone shows: hours, minutes and seconds, as 14:05:30.";
        Problem::error("clock", says)
    };
    let parts: Vec<i64> = clock.trim().split(':').map(str::parse).collect::<Result<_, _>>().map_err(|_| wrong())?;
    let [hours @ 0..24, minutes @ 0..60, seconds @ 0..60] = parts[..] else { return Err(wrong()) };
    let then = &handed.at.moment;
    let wanted = (hours * 3600 + minutes * 60 + seconds) * 1000;
    let local = now.at_ms + i64::from(then.offset_min) * 60_000;
    let ahead = (wanted - local).rem_euclid(DAY_MS);
    let by_ms = if ahead > DAY_MS / 2 { ahead - DAY_MS } else { ahead };
    let at_ms = now.at_ms + by_ms;
    // Its wall clock runs with its boot clock; how far they stand apart travelled with the hand-over.
    Ok(Moment { at_ms, boot_ms: then.boot_ms + (at_ms - then.at_ms), ..then.clone() })
}

fn drawn(code: &QrCode) -> Option<Code> {
    let size = code.size();
    let dark = (0..size).flat_map(|y| (0..size).map(move |x| (x, y))).filter(|(x, y)| code.get_module(*x, *y));
    let path = dark.map(|(x, y)| format!("M{},{}h1v1h-1z", x + QUIET, y + QUIET)).collect();
    Some(Code { path, modules: size + 2 * QUIET })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::procedure::Stamp;

    fn handed() -> HandedOver {
        let moment = Moment { at_ms: 1_791_964_800_000, offset_min: 120, boot_ms: 500_000, boot_id: "first".into() };
        HandedOver { at: Stamp { moment, ..Stamp::default() }, to: String::new(), taken: None }
    }

    /// 1 791 964 800 000 ms is 2026-10-14 08:00 UTC, 10:00 by the zone of the first phone. Source: GNU date.
    #[test]
    fn what_the_clock_shows_gives_the_moment_of_the_first_phone() {
        // The second phone is three minutes ahead: its clock shows 10:04:00 while the first shows 10:01:00.
        let now = Moment { at_ms: 1_791_964_800_000 + 240_000, offset_min: 120, ..Moment::default() };
        let found = shown_at("10:01:00", &handed(), &now).unwrap();
        assert_eq!((found.at_ms, found.boot_ms, found.boot_id.as_str()), (1_791_964_860_000, 560_000, "first"));
        // Half a day is the most that clocks may differ, over midnight too.
        assert_eq!(shown_at("09:59:30", &handed(), &now).unwrap().at_ms, 1_791_964_770_000);
        for wrong in ["", "10:01", "24:00:00", "10:60:00", "10:01:60", "ten", "10:01:00:00", "-1:00:00"] {
            assert!(shown_at(wrong, &handed(), &now).is_err(), "{wrong}");
        }
    }
}
