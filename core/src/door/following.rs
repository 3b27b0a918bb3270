//! A hold on another phone, followed by its code alone: its clock is shown here, its record stays there.
//!
//! Nothing of it is a repair of this folder. What is kept is the code as it was photographed, on the shelf.

use serde::Serialize;

use super::pass::{self, Pass, Seen, Told, wrong};
use super::response::{Answer, Problem};
use super::{Visit, with_writing};
use crate::facts::Moment;
use crate::procedure::decide::OLDEST_MS;
use crate::procedure::repair::Repair;
use crate::shelf::{FollowedCode, ShelfEvent};
use crate::view::Other;

/// A hold that might have ended this long ago is shown no longer: half a day, when no crew stands at that manhole any
/// more, and a clock that nobody took off the list would only hide those that run. Our own choice, no source.
const LONG_OVER_MS: i64 = 12 * 3_600_000;

/// A hold of another phone, by its code.
#[derive(Clone, Debug, Serialize)]
pub struct FollowedView {
    pub repair: FollowedRepair,
    pub hold: FollowedHold,
    /// The phone that has the record.
    pub device: String,
    pub key: CodeKey,
    /// When the picture of the code was taken, by the wall clock of now.
    pub told_ms: i64,
    /// This phone was started anew since: the time goes by its wall clock.
    pub restarted: bool,
}

/// By what people know it; long names are cut.
#[derive(Clone, Debug, Serialize)]
pub struct FollowedRepair {
    pub id: String,
    pub number: String,
    pub rehearsal: bool,
    /// The node where the crew works.
    pub node: String,
    pub upstream: String,
    pub downstream: String,
    pub street: String,
}

/// Its clock. Times are by the wall clock of now.
#[derive(Clone, Debug, Serialize)]
pub struct FollowedHold {
    /// Counted there up to the last reading that the code tells of.
    pub counted_ms: i64,
    pub required_ms: i64,
    /// What counts in addition if every reading since is good and in time.
    pub pending_ms: i64,
    /// When release is possible at the earliest, if so.
    pub earliest_release_ms: i64,
    /// The next reading is due, if each is taken when it is due.
    pub reading_due_ms: i64,
    pub interval_ms: i64,
    pub lower_pa: i64,
    pub upper_pa: i64,
    pub last_ms: i64,
    pub last_pa: i64,
}

/// What this device knows of the key that signed the code.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum CodeKey {
    /// The phone is known here, and made the code.
    Known,
    /// No file of the phone was taken in here: nobody has checked who made the code.
    Unknown,
    /// The phone became known later, and did not make it.
    False,
}

impl FollowedView {
    /// Returns it as one clock among others.
    pub fn other(self) -> Other {
        let FollowedRepair { id, node, .. } = self.repair;
        Other { repair: id, node, due_ms: self.hold.reading_due_ms, holding: true, followed: true }
    }
}

impl Visit<'_> {
    /// Follows the hold whose code is in a picture.
    ///
    /// Errors: `pass` for what is no code of a hold on another phone, or was not made by the phone that it names.
    pub(super) fn follow(&mut self, photo: &[u8], age_ms: i64) -> Result<Answer, Problem> {
        let seen = pass::photographed(photo)?;
        let Pass(device, _, hold) = &seen.pass;
        if *device == self.facts.device {
            return Err(wrong("This phone shows that code itself. Photograph it with the other phone."));
        }
        if self.key_of(&seen)? == CodeKey::False {
            return Err(wrong("This code was not made by the phone that it names. Nothing was kept."));
        }
        if self.is_here(&seen.pass) {
            return Err(wrong("The file of this hold is here already. Open the repair, and take the hold over there."));
        }
        let repair = hold.repair.clone();
        let age_ms = age_ms.max(0).saturating_add(self.waited_ms);
        if age_ms > LONG_OVER_MS {
            return Err(wrong("The picture of the code is too old. Take it again."));
        }
        let event = ShelfEvent::HoldFollowed { repair: repair.clone(), code: seen.text, age_ms };
        with_writing(self, |store, writing| store.record_shelf(writing, vec![event]))?;
        self.followed(&repair)
    }

    /// Shows what a repeated request follows.
    pub(super) fn followed_again(&mut self, photo: &[u8]) -> Result<Answer, Problem> {
        let Pass(_, _, hold) = pass::photographed(photo)?.pass;
        self.followed(&hold.repair)
    }

    /// Returns the clock of a hold; where it is not followed any more, the first screen, on which stands what there is.
    pub(super) fn followed(&mut self, repair: &str) -> Result<Answer, Problem> {
        let kept = self.store.shelf()?.followed.get(repair).cloned();
        match kept.and_then(|kept| self.shown_by(&kept)) {
            Some(shown) => Ok(Answer::Followed(Box::new(shown))),
            None => self.today(),
        }
    }

    pub(super) fn unfollow(&mut self, repair: &str) -> Result<Answer, Problem> {
        if self.store.shelf()?.followed.contains_key(repair) {
            let event = ShelfEvent::HoldUnfollowed { repair: repair.to_owned() };
            with_writing(self, |store, writing| store.record_shelf(writing, vec![event]))?;
        }
        self.today()
    }

    /// Returns every hold that is followed, the next to be read first. A shelf that can't be read tells of none.
    pub(super) fn all_followed(&mut self) -> Vec<FollowedView> {
        let Ok(shelf) = self.store.shelf() else { return vec![] };
        let kept: Vec<FollowedCode> = shelf.followed.values().cloned().collect();
        let mut shown: Vec<FollowedView> = kept.iter().filter_map(|kept| self.shown_by(kept)).collect();
        shown.sort_by_key(|one| one.hold.reading_due_ms);
        shown
    }

    /// Returns when the code was photographed by which this repair can be taken over.
    pub(super) fn tied_ms(&mut self, repair: &Repair) -> Option<i64> {
        self.tied(repair).ok()?;
        let kept = self.store.shelf().ok()?.followed.get(&repair.id)?;
        Some(self.facts.moment.at_ms - since(&kept.at, &self.facts.moment))
    }

    /// Returns what the first phone's clocks show now, by the code that was photographed here before.
    ///
    /// Errors: `pass` where the code tells nothing of now: this phone was started anew since, the picture was old, its phone
    /// did not make it, or the file is older than the code.
    pub(super) fn tied(&mut self, repair: &Repair) -> Result<Moment, Problem> {
        let none = || wrong("The code that was photographed before does not serve here. Photograph the code again.");
        let kept = self.store.shelf()?.followed.get(&repair.id).cloned().ok_or_else(none)?;
        let seen = pass::read(&kept.code).ok_or_else(none)?;
        let now = &self.facts.moment;
        let sure = kept.at.boot_id == now.boot_id && kept.age_ms <= OLDEST_MS;
        if !sure || self.key_of(&seen)? != CodeKey::Known || is_behind(repair, &seen.pass) {
            return Err(none());
        }
        let elapsed_ms = since(&kept.at, &self.facts.moment);
        let then = seen.pass.moment();
        Ok(Moment { at_ms: then.at_ms + elapsed_ms, boot_ms: then.boot_ms + elapsed_ms, ..then })
    }

    fn key_of(&mut self, seen: &Seen) -> Result<CodeKey, Problem> {
        let Pass(device, ..) = &seen.pass;
        Ok(match self.store.shelf()?.devices.get(device) {
            None => CodeKey::Unknown,
            Some(key) if seen.is_by(key) => CodeKey::Known,
            Some(_) => CodeKey::False,
        })
    }

    /// Returns whether the record of the hold is here: handed over with all that the code tells of, or over.
    fn is_here(&mut self, pass: &Pass) -> bool {
        let Pass(_, _, hold) = pass;
        let Ok(repair) = self.store.repair(&hold.repair) else { return false };
        let Some(attempt) = repair.attempts.iter().find(|one| one.n == hold.attempt) else { return false };
        let over = attempt.released.is_some() || attempt.ended.is_some();
        match &attempt.handed {
            _ if over => true,
            Some(handed) => handed.taken.is_some() || !is_behind(&repair, pass),
            None => false,
        }
    }

    /// Returns the clock of a code now; `None` where its record is here, or it is long over.
    fn shown_by(&mut self, kept: &FollowedCode) -> Option<FollowedView> {
        let seen = pass::read(&kept.code)?;
        if self.is_here(&seen.pass) {
            return None;
        }
        let key = self.key_of(&seen).ok()?;
        let now = &self.facts.moment;
        let elapsed_ms = since(&kept.at, now);
        let Pass(device, (_, _, boot_ms, _), told) = seen.pass;
        // The first phone's boot clock now, and what a moment of it is by the wall clock here.
        let theirs_ms = boot_ms + elapsed_ms;
        let hold = clock(&told, theirs_ms, now.at_ms);
        if now.at_ms - hold.earliest_release_ms > LONG_OVER_MS {
            return None;
        }
        let (number, node, upstream, downstream, street) = told.called;
        let (id, rehearsal) = (told.repair, told.rehearsal);
        Some(FollowedView {
            repair: FollowedRepair { id, number, rehearsal, node, upstream, downstream, street },
            hold,
            device,
            key,
            told_ms: now.at_ms - elapsed_ms,
            restarted: kept.at.boot_id != now.boot_id,
        })
    }
}

/// Returns the clock of a hold when the first phone's boot clock shows `theirs_ms` and the wall clock here `now_ms`.
fn clock(told: &Told, theirs_ms: i64, now_ms: i64) -> FollowedHold {
    let wall = |boot_ms: i64| now_ms - (theirs_ms - boot_ms);
    let missing_ms = (told.required_ms - told.counted_ms).max(0);
    let pending_ms = (theirs_ms - (told.earliest_ms - missing_ms)).clamp(0, missing_ms);
    let readings = (theirs_ms - told.last.0).max(0) / told.interval_ms + 1;
    FollowedHold {
        counted_ms: told.counted_ms,
        required_ms: told.required_ms,
        pending_ms,
        earliest_release_ms: wall(told.earliest_ms),
        reading_due_ms: wall(told.last.0 + readings * told.interval_ms),
        interval_ms: told.interval_ms,
        lower_pa: told.window_pa.0,
        upper_pa: told.window_pa.1,
        last_ms: wall(told.last.0),
        last_pa: told.last.1,
    }
}

/// Returns how long ago a moment of this device was, in milliseconds, never below zero: by the boot clock, across a restart
/// by the wall clock.
fn since(then: &Moment, now: &Moment) -> i64 {
    let same_start = then.boot_id == now.boot_id;
    (if same_start { now.boot_ms - then.boot_ms } else { now.at_ms - then.at_ms }).max(0)
}

/// Returns whether the code tells of a reading that the record here does not have.
fn is_behind(repair: &Repair, pass: &Pass) -> bool {
    let Pass(_, _, hold) = pass;
    let here = pass::told(repair, &pass.moment());
    here.is_none_or(|here| here.repair != hold.repair || here.attempt != hold.attempt || here.last.0 < hold.last.0)
}
