//! A live hold goes to another phone, and is taken over there.

use super::{Step, refuse};
use crate::facts::Moment;
use crate::procedure::event::Event;
use crate::procedure::repair::{Attempt, HandedOver};
use crate::procedure::rules::{Broken, Refusal, Rule, n, t};
use crate::procedure::stage::Stage;

/// The first phone's clock can't show less than it did at the hand-over, but for what is read in whole seconds.
const SLACK_MS: i64 = 2_000;

/// A photo of the code says nothing of now when it is older than this.
pub const OLDEST_MS: i64 = 2 * 60_000;

/// A clock that somebody typed may add this much to the hold before the foreman answers for it: as much as two clocks
/// drift apart and a person reads past.
const TYPED_SLACK_MS: i64 = 15_000;

impl Step<'_> {
    /// A rehearsal with a clock of its own stays where that clock runs.
    pub(super) fn hand_over(&mut self, to: &str) -> Result<(), Refusal> {
        let to = to.trim();
        let wrong = match self.repair.attempt() {
            _ if self.repair.practice.is_some() => Some("A rehearsal with a clock of its own stays on its phone."),
            Some(attempt) if holds(attempt) => None,
            _ => Some("Only a hold that runs is handed over."),
        };
        if let Some(what) = wrong {
            return bad(what);
        }
        if self.repair.is_away(&self.facts.device) && self.repair.handed().is_some_and(|one| one.taken.is_some()) {
            return bad("Another phone has taken this hold over. Hand it over there.");
        }
        self.record(Event::HandedOver { to: to.to_owned() });
        let whom = if to.is_empty() { "another phone" } else { to };
        self.record(Event::Noted { text: format!("The hold was handed over to {whom}.") });
        Ok(())
    }

    pub(super) fn take_over(&mut self, theirs: Option<&Moment>, ours: &Moment, typed: bool) -> Result<(), Refusal> {
        let Some(handed) = self.repair.handed().cloned() else {
            return bad("Nobody has handed this hold over, or it is over.");
        };
        if let Some(what) = self.wrong_with(&handed, theirs, ours) {
            return bad(what);
        }
        let back = handed.at.device == self.facts.device;
        let from: String = handed.at.device.chars().take(8).collect();
        let text = match theirs {
            _ if back => "The hold was taken back by the phone that had handed it over.".to_owned(),
            Some(theirs) => {
                let by = if typed { ", by its clock as somebody read it" } else { "" };
                format!("The hold was taken over from phone {from}{by}. {}", apart(ours.at_ms - theirs.at_ms))
            }
            None => format!(
                "The hold was taken over from phone {from} without its clock: the minutes in between are not witnessed."
            ),
        };
        let (theirs, ours) = (theirs.cloned(), ours.clone());
        let gained_ms = theirs.as_ref().filter(|_| typed).map_or(0, |theirs| gained(&handed, theirs, &ours));
        self.record(Event::TakenOver { theirs, ours, typed });
        self.record(Event::Noted { text });
        if gained_ms > TYPED_SLACK_MS {
            let values = [("what", t("The hold, by a clock that was typed,")), ("ago_ms", n(gained_ms))];
            let Broken { rule, subject, values } = Broken::with(Rule::LateTapInFavour, &values).about("typed clock");
            self.record(Event::Broke { rule, subject, values });
        }
        Ok(())
    }

    fn wrong_with(&self, handed: &HandedOver, theirs: Option<&Moment>, ours: &Moment) -> Option<&'static str> {
        let now = &self.facts.moment;
        let then = &handed.at.moment;
        let age_ms = now.boot_ms - ours.boot_ms;
        match theirs {
            _ if handed.taken.is_some() => Some("The hold was taken over already."),
            _ if ours.boot_id != now.boot_id || !(0..=OLDEST_MS).contains(&age_ms) => {
                Some("The picture of the code is too old. Take it again.")
            }
            Some(_) if handed.at.device == self.facts.device => Some("This phone handed the hold over itself."),
            Some(theirs) if theirs.boot_id != then.boot_id => {
                Some("The first phone was started anew since. Take the hold over without its clock.")
            }
            Some(theirs) if theirs.boot_ms < then.boot_ms - SLACK_MS => {
                Some("This time is before the hand-over. Read the clock of the first phone again.")
            }
            _ => None,
        }
    }
}

fn holds(attempt: &Attempt) -> bool {
    attempt.stage() == Stage::Hold && attempt.target.is_some() && attempt.released.is_none()
}

/// Returns how much longer the way between both phones took by `theirs` than by the wall clocks, in milliseconds: that
/// much may have been gained by typing.
fn gained(handed: &HandedOver, theirs: &Moment, ours: &Moment) -> i64 {
    let then = &handed.at.moment;
    (theirs.boot_ms - then.boot_ms) - (ours.at_ms - then.at_ms)
}

/// Says how far the wall clocks stand apart. Elapsed time is not touched by it.
fn apart(ahead_ms: i64) -> String {
    let seconds = ahead_ms.abs() / 1000;
    let by = format!("{} min {} s", seconds / 60, seconds % 60);
    match seconds {
        0 => "Both clocks showed the same time.".into(),
        _ if ahead_ms > 0 => format!("Its clock was {by} behind this one."),
        _ => format!("Its clock was {by} ahead of this one."),
    }
}

fn bad(what: &str) -> Result<(), Refusal> {
    refuse(Broken::with(Rule::BadValue, &[("what", t(what))]))
}
