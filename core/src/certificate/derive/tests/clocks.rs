//! Clocks that were set, devices that were started anew, readings after the release.

use super::kit::at_ms;
use super::story::{READINGS, accepted, discarded, let_down, mended, planned, pressed, reads, verified};
use crate::certificate::content::{Content, Hold, Interval};
use crate::procedure::repair::Reading;
use crate::shelf::contract::GapRule;
use crate::shelf::sheets::CountsFrom;
use crate::units::Span;

fn hold(content: &Content) -> &Hold {
    content.hold.value().unwrap()
}

fn note<'a>(content: &'a Content, label: &str) -> &'a str {
    &content.notes.iter().find(|note| note.label == label).unwrap().text
}

/// The example, with the clock four minutes back from 10:12 to the end of the hold.
fn with_the_clock_set_back() -> Content {
    let mut story = pressed(discarded(planned(false)));
    for read in READINGS {
        story.clock_off_ms = if at_ms(read.0) < at_ms("10:12") { 0 } else { -240_000 };
        reads(&mut story, read);
    }
    story.clock_off_ms = 0;
    let_down(&mut story);
    accepted(verified(story, 2_000)).content().unwrap()
}

#[test]
fn a_clock_set_in_the_hold_is_noted_and_bends_nothing() {
    let (set, plain) = (with_the_clock_set_back(), mended().content().unwrap());
    assert_eq!(hold(&set), hold(&plain));
    let text = note(&set, "Clock");
    assert!(text.starts_with("The clock of device K3F was set back by 4 min, seen at 10:10:43."), "{text}");
    assert!(set.answers[0].second.as_ref().unwrap().ends_with("2 clock changes"));
}

#[test]
fn across_a_restart_nothing_is_counted() {
    let mut story = pressed(discarded(planned(false)));
    for read in READINGS {
        if read.0 == "10:28:33" {
            story.restarts("10:27");
        }
        reads(&mut story, read);
    }
    let reading = |content: &Content, time: &str| {
        hold(content).readings.iter().find(|reading| reading.at_ms == at_ms(time)).unwrap().before
    };
    // 10:25:35 to 10:28:33, 2 min 58 s, are lost: 61 min 22 s less that are 58 min 24 s, too short by 1 min 36 s.
    story.by("varga", "K3F").at("10:49:58");
    story.waives(crate::procedure::Rule::HoldShort, "", "The rest was watched");
    story.by("ekdal", "K3F");
    let_down(&mut story);
    let content = accepted(verified(story, 2_000)).content().unwrap();
    assert_eq!(reading(&content, "10:28:33"), Some(Interval::Gap));
    assert_eq!(hold(&content).counted_ms, Span::from_ms((58 * 60 + 24) * 1_000));
    let row = content.checks.iter().find(|row| row.name == "Hold counted").unwrap();
    assert_eq!((&*row.margin, row.fails), ("FAILS by 1 min 36 s", true));
    let restart = content.notes.iter().find(|note| note.text.contains("started anew")).unwrap();
    assert!(restart.text.starts_with("2 min 58 s of the hold, 10:25 to 10:28"), "{}", restart.text);
}

#[test]
fn what_was_read_after_the_release_holds_nothing() {
    let later = |story: super::kit::Story| {
        story.changed(|repair| {
            let attempt = repair.attempts.last_mut().unwrap();
            let last: Reading = attempt.readings.last().unwrap().clone();
            let mut moment = last.at.moment.clone();
            moment.at_ms += 300_000;
            moment.boot_ms += 300_000;
            let at = crate::procedure::Stamp { moment, ..last.at.clone() };
            attempt.readings.push(Reading { at, ..last });
        })
    };
    let content = later(mended()).content().unwrap();
    assert_eq!(hold(&content), hold(&mended().content().unwrap()));
}

/// Counted from joining, the 24 min 50 s up to target pressure count too: 61 min 22 s + 24 min 50 s = 86 min 12 s.
#[test]
fn a_sheet_that_counts_from_joining_counts_what_came_before_pressure() {
    let story = mended().changed(|repair| {
        repair.plan.as_mut().unwrap().resin.counts_from.value = CountsFrom::Joined;
    });
    let content = story.content().unwrap();
    assert_eq!(hold(&content).counted_ms, Span::from_ms((61 * 60 + 22) * 1_000));
    assert!(
        hold(&content)
            .remark
            .starts_with("86 min 12 s counted, 24 min 50 s of it from joining to pressure, 60 min required")
    );
}

/// Of the gap of 13 min, interval and grace of 10 min 30 s count: 61 min 22 s + 10 min 30 s = 71 min 52 s.
#[test]
fn where_only_the_excess_is_lost_the_interval_is_still_a_gap() {
    let story = mended().changed(|repair| {
        repair.plan.as_mut().unwrap().contract.gap_rule.value = GapRule::Excess;
    });
    let content = story.content().unwrap();
    let hold = hold(&content);
    assert_eq!(hold.counted_ms, Span::from_ms((71 * 60 + 52) * 1_000));
    assert_eq!(hold.readings[6].before, Some(Interval::Gap));
    assert!(note(&content, "Not witnessed").starts_with("2 min 30 s of the hold, 09:57 to 10:00"));
}

#[test]
fn a_late_tap_keeps_both_times() {
    let story = mended().changed(|repair| {
        repair.attempts.last_mut().unwrap().joined.as_mut().unwrap().ago_ms = 120_000;
    });
    let content = story.content().unwrap();
    assert_eq!(
        note(&content, "Tapped late"),
        "Parts joined 09:04:20, tapped 2 min later by Tomas Ekdal: both times are kept."
    );
}
