//! A live hold goes to another phone: its chain travels as a bundle, and the code of the first one ties both clocks.

use super::pass::{self, Pass, wrong};
use super::response::{Answer, Problem};
use super::{Visit, device_key};
use crate::facts::Moment;
use crate::procedure::Command;
use crate::procedure::decide::OLDEST_MS;
use crate::procedure::repair::{HandedOver, Repair};
use crate::view::Code;

/// By what a hold is taken over; by nothing where the first phone is not here.
pub struct Tie<'a> {
    /// A picture of the code, taken `age_ms` ago.
    pub photo: &'a [u8],
    pub age_ms: i64,
    /// What somebody read off the clock of the first phone.
    pub clock: &'a str,
    /// By the code that this phone followed the hold by.
    pub followed: bool,
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
        let clocks = (now.at_ms, now.offset_min, now.boot_ms, now.boot_id.clone());
        let pass = Pass(self.facts.device.clone(), clocks, pass::told(repair, now)?);
        pass::drawn(&pass::written(&pass, |bytes| key.sign(bytes))?)
    }

    /// Takes over a hold by what `tie` says of the first phone's clocks.
    pub(super) fn take_over(&mut self, id: &str, tie: &Tie) -> Result<Answer, Problem> {
        let repair = self.store.repair(id)?;
        let handed = repair.handed().cloned().ok_or_else(|| {
            let says = "Nobody has handed this hold over. Take in the file of the first phone, then try again.";
            Problem::error("not_handed", says)
        })?;
        let mut ours = self.facts.moment.clone();
        let typed = tie.photo.is_empty() && !tie.followed && !tie.clock.trim().is_empty();
        let theirs = if !tie.photo.is_empty() {
            let age_ms = tie.age_ms.clamp(0, OLDEST_MS);
            ours.at_ms -= age_ms;
            ours.boot_ms -= age_ms;
            Some(self.told_by(tie.photo, &repair)?)
        } else if tie.followed {
            Some(self.tied(&repair)?)
        } else if typed {
            Some(shown_at(tie.clock, &handed, &self.facts.moment)?)
        } else {
            None
        };
        self.tell_any(id, &Command::TakeOver { theirs, ours, typed })
    }

    fn told_by(&mut self, photo: &[u8], repair: &Repair) -> Result<Moment, Problem> {
        let code = pass::photographed(photo)?;
        let Pass(device, _, hold) = &code.pass;
        let known = self.store.shelf()?.devices.get(device).cloned();
        let key =
            known.ok_or_else(|| wrong("The phone that shows this code is not known here. Take its file in first."))?;
        if !code.is_by(&key) {
            return Err(wrong("This code was not made by the phone whose file was taken in. Nothing was taken over."));
        }
        if hold.repair != repair.id {
            return Err(wrong("This code is of another repair. Open that one here."));
        }
        let theirs = code.pass.moment();
        if pass::told(repair, &theirs).as_ref() != Some(hold) {
            return Err(wrong(
                "The first phone knows more of this hold than its file. Make its file anew, take it in, then take over.",
            ));
        }
        Ok(theirs)
    }
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
