//! The worked example: a crack in Kettle Row, mended at the second attempt. Its figures are those of an invented sheet.

use super::kit::{DAY_MS, Story, at_ms, no_position};
use super::plan::{defect, line, mc, plan, um};
use crate::procedure::answer::Value;
use crate::procedure::happening::ReadBy;
use crate::procedure::plan::Temperatures;
use crate::procedure::repair::CorrectionOf;
use crate::procedure::rules::{Rule, n, t};
use crate::procedure::stage::{Outcome, PatchPlace};
use crate::procedure::{Command, Happening};
use crate::units::{Pressure, Temperature};

/// Time, bar × 100, pipe and patch end in tenths of a degree, by sensor, what was written.
pub type Read = (&'static str, i64, i64, i64, bool, &'static str);

/// The readings after target pressure: a gap before 10:00:04, an excursion at 10:17:37.
pub const READINGS: [Read; 20] = [
    ("09:32:27", 131, 129, 222, false, ""),
    ("09:36:23", 131, 129, 230, true, ""),
    ("09:39:45", 131, 129, 246, false, ""),
    ("09:43:36", 131, 129, 263, false, ""),
    ("09:47:04", 130, 129, 277, false, ""),
    ("10:00:04", 130, 127, 320, true, "phone off, battery changed"),
    ("10:03:46", 128, 126, 323, false, ""),
    ("10:06:42", 129, 126, 316, false, ""),
    ("10:10:12", 129, 126, 306, false, ""),
    ("10:14:43", 129, 127, 288, true, ""),
    ("10:17:37", 104, 128, 272, false, "hose coupling tightened"),
    ("10:21:09", 129, 128, 249, false, ""),
    ("10:25:35", 129, 129, 228, false, ""),
    ("10:28:33", 128, 129, 211, true, ""),
    ("10:32:32", 128, 129, 194, false, ""),
    ("10:35:41", 126, 129, 186, false, ""),
    ("10:39:26", 126, 129, 173, false, ""),
    ("10:42:26", 126, 129, 168, true, ""),
    ("10:46:33", 127, 129, 161, false, ""),
    ("10:49:58", 125, 129, 156, false, ""),
];

fn temperatures(resin: i64) -> Temperatures {
    Temperatures { resin_mc: mc(resin), air_mc: mc(131), pipe_mc: mc(128), water_mc: Some(mc(134)) }
}

fn measured(resin: i64) -> [(&'static str, Value); 4] {
    let read = |tenths: i64| n(tenths * 100);
    [("resin_mc", read(resin)), ("air_mc", read(131)), ("pipe_mc", read(128)), ("water_mc", read(134))]
}

/// Opens the repair with its plan.
pub fn planned(rehearsal: bool) -> Story {
    let mut story = Story::new();
    let contract = Box::new(story.shelf.contracts[0].clone());
    let plan = Box::new(plan(&story.shelf));
    story.at("06:30").does(Command::Open {
        id: "r03".into(),
        number: "R-03".into(),
        rehearsal,
        line: Box::new(line()),
        defect: Box::new(defect()),
        contract,
        video_before: "V-031-A (2026-09-30)".into(),
    });
    story.does(Command::AcceptPlan { plan });
    story
}

/// The first attempt: the binding tears, the working time runs out on the table, the patch is thrown away.
pub fn discarded(mut story: Story) -> Story {
    story.at("06:42").does(Command::GoOn);
    site(&mut story);
    staging(&mut story, "06:45");
    story.at("07:04:11").photo("cover", "Cover of MH 031, number plate");
    story.at("07:21:40").photo("before", "").photo("clean", "");
    story.at("07:31").does(Command::GoOn).reports(Happening::PushBegun);
    story.at("07:38").reports(Happening::MarkReached { counter_um: Some(um(7_260)) });
    story.confirms(&["dry_push", "mark_agrees", "obstacles"]);
    story.at("07:44").reports(Happening::PackerBack { sound: true }).confirms(&["back"]);
    story.at("07:46").does(Command::GoOn);
    sleeve(&mut story, "07:50");
    story.at("08:04").does(Command::GoOn).does(Command::SecondGo { temperatures: temperatures(192) });
    story.at("08:05:42").reports(Happening::Joined);
    story.at("08:08").answers("parts_used", &weighed(406_000));
    story.at("08:41").reports(Happening::PatchIs { place: PatchPlace::OnTable });
    story.does(Command::EndAttempt {
        outcome: Outcome::Discarded,
        reasons: vec!["binding wire tore twice while the patch was bound on the table".into()],
        in_pipe: "Nothing of it is in the pipe".into(),
    });
    story
}

fn weighed(b: i64) -> [(&'static str, Value); 3] {
    [("how", t("weighed")), ("mass_a_mg", n(812_000)), ("mass_b_mg", n(b))]
}

/// What stays valid from attempt to attempt.
fn site(story: &mut Story) {
    story.confirms(&["suitability"]);
    let permit = [("number", t("CS-1014-1")), ("entry", t("entry")), ("who", t("T. Ekdal in MH 031, R. Aske attends"))];
    story.answers("permit", &permit);
    let flow = [("how", t("plug at MH 031, pumped round to MH 032")), ("until_ms", n(at_ms("15:00"))), ("plugs", n(2))];
    story.answers("flow", &flow);
    let diameter = [("least_um", n(196_500)), ("most_um", n(199_000)), ("how", t("two sections"))];
    story.answers("diameter", &diameter);
    let instruments = ["gauge", "thermometer", "counter", "tape", "scale"].into_iter();
    let named: Vec<_> = instruments.zip(["G-04", "T-09", "C-02", "T-02", "S-05"].map(t)).collect();
    story.answers("instruments", &named);
}

fn staging(story: &mut Story, viewed: &str) {
    let air = [
        ("oxygen_permille", n(209)),
        ("flammable_pct", n(0)),
        ("hydrogen_sulfide_ppm", n(0)),
        ("carbon_monoxide_ppm", n(1)),
        ("meter", t("A-03")),
    ];
    story.answers("air", &air);
    story.confirms(&["traffic", "residents", "weather", "packer_looked_over", "protection", "rope", "zero", "mark"]);
    story.answers("cleaned", &[("at_ms", n(at_ms("06:49") - DAY_MS)), ("how", t("jetted"))]);
    story.answers("viewed_again", &[("at_ms", n(at_ms(viewed))), ("found", t("no new deposits"))]);
    let test = [("gauge_pa", n(50_000)), ("held_ms", n(300_000)), ("drop_pa", n(0))];
    story.answers("packer_test", &test);
    let lots = [
        ("lot_a", t("26-0811-A")),
        ("expires_a", t("2027-02-11")),
        ("lot_b", t("26-0809-B")),
        ("expires_b", t("2027-02-09")),
        ("stored_least_mc", n(8_000)),
        ("stored_most_mc", n(24_000)),
        ("lot_patch", t("GM-5512")),
        ("lot_sleeve", t("SL-231")),
    ];
    story.answers("lots", &lots);
    story.answers("temperatures", &measured(192)).answers("battery", &[("pct", n(80))]);
    story.does_not_apply("first_membrane", "the sheet asks for none").confirms(&["first_sleeve"]);
}

fn sleeve(story: &mut Story, at: &str) {
    story.at(at).confirms(&["old_sleeve_off", "new_sleeve", "place_marked", "laid_ready"]);
    story.does_not_apply("membrane", "the sheet asks for none");
    story.answers("bare_ends", &[("front_um", n(198_000)), ("rear_um", n(202_000))]);
}

/// The second attempt up to target pressure.
pub fn pressed(mut story: Story) -> Story {
    story.at("08:42").does(Command::NewAttempt { pipe_unharmed: true, packer_unharmed: true });
    story.at("08:44");
    staging(&mut story, "08:49");
    story.at("08:49:02").photo("cover", "Cover of MH 031, number plate").photo("before", "").photo("clean", "");
    story.at("08:52").by("varga", "K3A");
    story.waives(Rule::CleaningOld, "", "road closure moved; no new deposits (photo 3)");
    story.by("ekdal", "K3F").at("08:55").does(Command::GoOn);
    sleeve(&mut story, "08:58");
    story.at("09:01:30").does(Command::GoOn);
    story.at("09:03:30").does(Command::SecondGo { temperatures: temperatures(192) });
    story.at("09:04:20").reports(Happening::Joined);
    story.at("09:06").answers("parts_used", &weighed(412_000));
    story.at("09:07").does(Command::Correct {
        of: CorrectionOf::Task { task: "parts_used".into(), field: "mass_b_mg".into() },
        value: n(406_000),
        reason: "Read with the lid on; photo 7 shows the scale".into(),
    });
    story.at("09:07:30").answers("mixed", &[("mixed_ms", n(190_000))]);
    story.position = no_position();
    story.at("09:13:48").photo("mat", "Soaked, no dry area; scale in view");
    story.at("09:17").confirms(&["soaked", "centred", "patch_bound", "sample", "surplus", "gloves_changed"]);
    story.answers("seam", &[("hour", n(5))]);
    story.at("09:17:10").reports(Happening::InsertionBegun);
    story.at("09:23").reports(Happening::AtTheMark { counter_um: Some(um(7_260)), beyond_um: Some(um(-3)) });
    story.at("09:23:06").photo("mark", "");
    story.at("09:24:40").confirms(&["way_in", "at_mark_seen"]);
    story.at("09:25:20").reports(Happening::AirJoined).confirms(&["regulator_zero", "raised_slowly"]);
    story.at("09:29:10").reports(Happening::TargetReached { gauge_pa: Pressure::from_pa(132_000) });
    story.at("09:29:31").photo("gauge", "Gauge G-04 at target pressure");
    story
}

pub fn reads(story: &mut Story, (time, centibar, pipe, patch, sensor, why): Read) {
    story.at(time).reports(Happening::Reading {
        gauge_pa: Pressure::from_pa(centibar * 1_000),
        pipe_mc: Some(mc(pipe)),
        water_mc: None,
        patch_mc: Some(Temperature::from_millicelsius(patch * 100)),
        upstream_um: None,
        by: if sensor { ReadBy::Sensor } else { ReadBy::Hand },
        gauge: "G-04".into(),
        why: why.into(),
        outside_pa: None,
    });
}

/// The hold and the release.
pub fn released(mut story: Story) -> Story {
    for read in READINGS {
        reads(&mut story, read);
    }
    let_down(&mut story);
    story
}

pub fn let_down(story: &mut Story) {
    story.at("10:49:58").confirms(&["readings", "upstream", "sample_felt"]);
    story.reports(Happening::SampleFelt { hard: true }).does(Command::Release);
    story.at("10:58").confirms(&["let_down"]);
    let back = [("rope", t("rope")), ("sleeve", t("back")), ("membrane", t("none")), ("bands", t("back"))];
    story.answers("all_back", &back).answers("packer_condition", &[("packer", t("sound"))]);
    story.at("10:59:20").does(Command::GoOn);
}

/// The camera, full cure, the lateral, the site.
pub fn verified(mut story: Story, fold_um: i64) -> Story {
    story.position = super::kit::at_the_cover();
    story.at("11:05:19").photo("upstream_edge", "");
    story.at("11:09:57").photo("downstream_edge", "");
    story.confirms(&["video"]);
    story.answers("edges", &[("upstream", t("bonded")), ("downstream", t("bonded"))]);
    let lies = [("hour", n(7)), ("from_um", n(6_960_000)), ("to_um", n(7_220_000)), ("where", t("7.1 m"))];
    story.answers("folds", &[[("height_um", n(fold_um))].as_slice(), &lies].concat());
    story.answers("surface", &[("surface", t("sound"))]).answers("infiltration", &[("seen", t("none"))]);
    story.at("13:18:10").reports(Happening::LateralOpened { lateral: 1, open_pct: 94, coupon: true });
    story.at("13:31:44").photo("", "Lateral cut after full cure, coupon out");
    story.answers("laterals", &[("coupons", n(1))]);
    story.at("13:44").answers("flow_restored", &[("plugs", n(2))]);
    let waste = [("what", t("patch, sample, wipes")), ("mass_g", n(6_100)), ("where_to", t("Quillmere yard"))];
    story.at("14:05").by("aske", "K3F").answers("waste", &waste).by("ekdal", "K3F");
    story.at("14:20").confirms(&["site_safe"]);
    story
}

/// Waives the lateral, accepts, signs and issues.
pub fn accepted(mut story: Story) -> Story {
    story.at("14:31").by("varga", "K3A");
    story.waives(Rule::LateralOpening, "lateral 1", "The rest is old clay lip (photo 12)");
    story.at("14:40").does(Command::Judge { accept: true, reasons: vec![] });
    story.at("14:49:05").by("ekdal", "K3F");
    story.signs("I did this repair, recorded it as it happened, and read the values marked H.");
    story.at("15:02:40").by("varga", "K3A");
    story.signs("I have reviewed this record, I answer for the departures named, and I issue this certificate.");
    let number = if story.repair().rehearsal { "REHEARSAL K3F-R009" } else { "K3F-0147" };
    story.at("15:02:52").does(Command::Issue { number: number.into() });
    story
}

/// The whole example: discarded once, then mended with two departures.
pub fn mended() -> Story {
    accepted(verified(released(pressed(discarded(planned(false)))), 2_000))
}

/// A practice of the same course, by the same people.
pub fn practised() -> Story {
    accepted(verified(released(pressed(discarded(planned(true)))), 2_000))
}

/// A hose bursts in the hold, a fold of 14 mm and a lifted edge: the foreman rejects.
pub fn rejected() -> Story {
    let mut story = pressed(discarded(planned(false)));
    for (time, centibar, pipe, patch, sensor, why) in READINGS {
        let burst = time == "10:17:37";
        let (centibar, why) = if burst { (86, "hose burst, joined again") } else { (centibar, why) };
        reads(&mut story, (time, centibar, pipe, patch, sensor, why));
    }
    let_down(&mut story);
    let mut story = verified(story, 14_000);
    story.at("14:30").answers(
        "edges",
        &[("upstream", t("lifted")), ("downstream", t("bonded")), ("where", t("5 o’clock, gap 3 mm"))],
    );
    story.at("14:31").by("varga", "K3A").does(Command::Judge {
        accept: false,
        reasons: vec![
            "net pressure lost in the hold".into(),
            "fold of 14 mm".into(),
            "upstream edge not bonded".into(),
        ],
    });
    story
}

/// The packer sticks after target pressure, the patch stays in the pipe, and the foreman closes the repair.
pub fn left_in_pipe() -> Story {
    let mut story = pressed(discarded(planned(false)));
    for read in READINGS.into_iter().take(3) {
        reads(&mut story, read);
    }
    story.at("09:41").reports(Happening::Burst);
    story.at("09:50").reports(Happening::Stuck).reports(Happening::PatchIs { place: PatchPlace::Stuck });
    story.does(Command::EndAttempt {
        outcome: Outcome::LeftInPipe,
        reasons: vec!["packer burst and stuck in the patch".into()],
        in_pipe: "Packer and patch are in the pipe, to be dug up".into(),
    });
    story.at("10:30").by("varga", "K3A").does(Command::CloseUnrepaired { reason: "The line is dug up.".into() });
    story
}

/// Closed without an attempt: the pipe is collapsed.
pub fn never_begun() -> Story {
    let mut story = planned(false);
    story.at("07:10").by("varga", "K3A").does(Command::CloseUnrepaired { reason: "the pipe has collapsed".into() });
    story
}
