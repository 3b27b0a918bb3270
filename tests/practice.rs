//! A rehearsal is played through the door, each mishap to its debrief; and it stays a rehearsal whatever is tried.

// The crew of `mendline demo` answers the tasks here too.
#[path = "../core/src/bin/mendline/demo/answers.rs"]
mod answers;
#[path = "practice/crew.rs"]
mod crew;

use serde_json::{Value, json};

use crew::{Crew, TODAY_MS};

/// Plays up to the second go: everything is ready to join.
fn ready(crew: &mut Crew) {
    crew.go_on();
    crew.answer_all("staging");
    crew.go_on();
    crew.wait(2).report(json!({ "what": "push_begun" }));
    crew.wait(4).report(json!({ "what": "mark_reached", "counter_um": 7_260_000 }));
    crew.wait(3).report(json!({ "what": "packer_back", "sound": true }));
    crew.answer_all("test_push");
    crew.go_on();
    crew.answer_all("sleeve_change");
    crew.go_on();
}

fn join(crew: &mut Crew) {
    let temperatures = crew.temperatures();
    crew.tell(json!({ "command": "second_go", "temperatures": temperatures }));
    crew.report(json!({ "what": "joined" }));
}

/// From the wet-out to target pressure, in good time.
fn place(crew: &mut Crew) {
    crew.wait(3);
    crew.answer_all("wet_out");
    crew.report(json!({ "what": "insertion_begun" }));
    crew.wait(7);
    assert_eq!(crew.sees("packer_at_mark"), true);
    crew.report(json!({ "what": "at_the_mark", "counter_um": 7_260_000, "beyond_um": 0 }));
    crew.report(json!({ "what": "air_joined" }));
    crew.wait(3);
    let gauge = crew.sees("gauge_pa");
    crew.report(json!({ "what": "target_reached", "gauge_pa": gauge }));
}

fn read(crew: &mut Crew, why: &str) -> i64 {
    let (gauge, pipe, water) = (crew.sees("gauge_pa"), crew.sees("pipe_mc"), crew.sees("upstream_um"));
    crew.report(json!({ "what": "reading", "gauge_pa": gauge, "pipe_mc": pipe, "upstream_um": water, "why": why }));
    gauge.as_i64().unwrap()
}

/// Reads every eight minutes until the gauge has been right for long enough, and lets the packer down.
fn hold(crew: &mut Crew) {
    for _ in 0..20 {
        crew.wait(8);
        read(crew, "");
        if crew.view()["hold"]["missing_ms"] == 0 {
            break;
        }
    }
    assert_eq!(crew.sees("sample_hard"), true);
    for stage in ["placement", "inflation", "hold"] {
        crew.answer_all(stage);
    }
    crew.report(json!({ "what": "sample_felt", "hard": true }));
    crew.tell(json!({ "command": "release" }));
}

/// From the release to the foreman's verdict.
fn verify(crew: &mut Crew) {
    crew.answer_all("deflation");
    crew.go_on();
    crew.answer_all("verification");
    judge(crew, true, &[]);
}

fn judge(crew: &mut Crew, accept: bool, reasons: &[&str]) {
    crew.person = "varga";
    crew.tell(json!({ "command": "judge", "accept": accept, "reasons": reasons }));
    crew.person = "ekdal";
}

fn discard(crew: &mut Crew, why: &str) {
    crew.tell(json!({ "command": "end_attempt", "outcome": "discarded", "reasons": [why], "in_pipe": "Nothing." }));
}

#[test]
fn without_a_mishap_the_whole_job_can_be_played_from_an_empty_folder_to_a_clean_debrief() {
    let mut crew = Crew::practising(&[]);
    ready(&mut crew);
    join(&mut crew);
    place(&mut crew);
    hold(&mut crew);
    verify(&mut crew);
    let debrief = crew.debrief();
    assert_eq!((debrief["over"].clone(), debrief["met"].clone()), (json!(true), json!([])));
    let notes = crew.wrong();
    assert!(notes.iter().all(|rule| rule == "late_fill_in"), "{notes:?}");
}

#[test]
fn a_leaking_packer_is_seen_to_or_the_pressure_is_lost() {
    let mut good = Crew::practising(&["leaking_packer"]);
    ready(&mut good);
    join(&mut good);
    place(&mut good);
    good.wait(11);
    assert_eq!(good.sees("hiss"), true);
    let low = read(&mut good, "hose coupling tightened");
    let lower = good.view()["hold"]["window"]["lower_pa"].as_i64().unwrap();
    assert!(low < lower, "{low} is not below {lower}");
    assert_eq!(good.sees("hiss"), Value::Null);
    hold(&mut good);
    verify(&mut good);
    assert_eq!(good.met("leaking_packer"), (json!(true), "window_missed".into()));
    assert!(good.wrong().contains(&"window_missed".into()));

    let mut bad = Crew::practising(&["leaking_packer"]);
    ready(&mut bad);
    join(&mut bad);
    place(&mut bad);
    bad.wait(9);
    read(&mut bad, "");
    bad.wait(9);
    read(&mut bad, "");
    bad.report(json!({ "what": "released", "emergency": true }));
    bad.answer_all("deflation");
    bad.go_on();
    assert_eq!(bad.sees("edge_lifted"), true);
    judge(&mut bad, false, &["The edge has lifted."]);
    assert_eq!(bad.met("leaking_packer"), (json!(false), "pressure_lost".into()));
    for rule in ["pressure_lost", "released_early"] {
        assert!(bad.wrong().contains(&rule.into()), "{rule} is missing: {:?}", bad.wrong());
    }
}

#[test]
fn a_late_crew_throws_the_patch_away_or_inflates_too_late() {
    let mut good = Crew::practising(&["late_crew"]);
    ready(&mut good);
    join(&mut good);
    good.wait(3);
    assert_eq!(good.sees("crew_late"), Value::Null);
    let before = good.view()["clock"]["left_ms"].as_i64().unwrap();
    good.wait(2);
    assert_eq!(good.sees("crew_late"), true);
    let left = good.view()["clock"]["left_ms"].as_i64().unwrap();
    assert!(before - left > 10 * 60_000 && left > 0, "{before} and then {left}");
    good.wait(6);
    assert_eq!(good.view()["trouble"]["kind"], "time_over");
    good.report(json!({ "what": "patch_is", "place": "on_table" }));
    discard(&mut good, "The wet-out took too long.");
    assert_eq!(good.met("late_crew"), (json!(true), "late_inflation".into()));

    let mut bad = Crew::practising(&["late_crew"]);
    ready(&mut bad);
    join(&mut bad);
    bad.wait(5);
    place(&mut bad);
    bad.report(json!({ "what": "released", "emergency": true }));
    bad.answer_all("deflation");
    bad.go_on();
    judge(&mut bad, false, &["Inflated too late."]);
    assert_eq!(bad.met("late_crew"), (json!(false), "late_inflation".into()));
    assert!(bad.wrong().contains(&"late_inflation".into()));
}

#[test]
fn on_a_hot_day_the_resin_is_cooled_or_joined_without_a_go() {
    let mut good = Crew::practising(&["hot_day"]);
    good.go_on();
    good.answer_all("staging");
    good.go_on();
    good.report(json!({ "what": "push_begun" }));
    good.wait(4).report(json!({ "what": "mark_reached" }));
    good.report(json!({ "what": "packer_back", "sound": true }));
    good.answer_all("test_push");
    assert_eq!(good.refused(json!({ "command": "go_on" })), ["no_time"]);
    assert_eq!(good.sees("resin_cools"), true);
    good.wait(20);
    let temperatures = good.temperatures();
    good.report(json!({ "what": "temperatures_read", "temperatures": temperatures }));
    good.go_on();
    good.answer_all("sleeve_change");
    good.go_on();
    join(&mut good);
    place(&mut good);
    hold(&mut good);
    verify(&mut good);
    assert_eq!(good.met("hot_day"), (json!(true), "no_time".into()));

    let mut bad = Crew::practising(&["hot_day"]);
    bad.go_on();
    bad.answer_all("staging");
    bad.report(json!({ "what": "joined" }));
    bad.wait(15);
    discard(&mut bad, "It set in the hands.");
    assert_eq!(bad.met("hot_day"), (json!(false), "joined_without_go".into()));
    assert!(bad.wrong().contains(&"joined_without_go".into()));
}

#[test]
fn a_stuck_packer_is_reported_and_comes_back_by_the_rope_or_is_told_to_be_at_the_mark() {
    let mut good = Crew::practising(&["packer_stuck"]);
    ready(&mut good);
    join(&mut good);
    good.wait(3).report(json!({ "what": "insertion_begun" }));
    good.wait(5);
    assert_eq!(good.sees("rods_stuck"), true);
    let before = good.sees("counter_um");
    good.wait(1);
    assert_eq!(good.sees("counter_um"), before, "it does not move");
    good.report(json!({ "what": "stuck" }));
    assert_eq!(good.sees("rope_comes"), true);
    discard(&mut good, "Stuck in front of the joint; it came back by the rope.");
    assert_eq!(good.met("packer_stuck"), (json!(true), "trouble_reported".into()));

    let mut bad = Crew::practising(&["packer_stuck"]);
    ready(&mut bad);
    join(&mut bad);
    bad.wait(3).report(json!({ "what": "insertion_begun" }));
    bad.wait(5).report(json!({ "what": "at_the_mark", "beyond_um": 0 }));
    bad.report(json!({ "what": "air_joined" }));
    bad.report(json!({ "what": "target_reached", "gauge_pa": 125_000 }));
    bad.report(json!({ "what": "released", "emergency": true }));
    bad.answer_all("deflation");
    bad.go_on();
    judge(&mut bad, false, &["It sits in the wrong place."]);
    assert_eq!(bad.met("packer_stuck"), (json!(false), "trouble_reported".into()));
}

#[test]
fn a_clock_that_is_set_ahead_gives_nobody_a_minute_of_the_hold() {
    let mut good = Crew::practising(&["wrong_clock"]);
    ready(&mut good);
    join(&mut good);
    place(&mut good);
    good.wait(5);
    read(&mut good, "");
    let counted = good.view()["hold"]["counted_ms"].as_i64().unwrap();
    good.wait(3);
    assert_eq!(good.sees("clock_odd"), true);
    read(&mut good, "");
    let more = good.view()["hold"]["counted_ms"].as_i64().unwrap() - counted;
    assert!((170_000..200_000).contains(&more), "three minutes count as {more} ms");
    hold(&mut good);
    verify(&mut good);
    assert_eq!(good.met("wrong_clock"), (json!(true), "clock_set".into()));
    assert!(good.wrong().contains(&"clock_set".into()), "{:?}", good.wrong());

    let mut bad = Crew::practising(&["wrong_clock"]);
    ready(&mut bad);
    join(&mut bad);
    place(&mut bad);
    bad.wait(8);
    read(&mut bad, "");
    assert!(bad.refused(json!({ "command": "release" })).contains(&"hold_short".into()));
    bad.report(json!({ "what": "released", "emergency": true }));
    bad.answer_all("deflation");
    bad.go_on();
    judge(&mut bad, false, &["Let down too early."]);
    assert_eq!(bad.met("wrong_clock"), (json!(false), "released_early".into()));
}

#[test]
fn a_lateral_under_the_patch_is_opened_after_full_cure_or_cut_early() {
    let mut good = Crew::practising(&["lateral_under_patch"]);
    ready(&mut good);
    join(&mut good);
    place(&mut good);
    hold(&mut good);
    good.answer_all("deflation");
    good.go_on();
    assert_eq!(good.sees("lateral_covered"), true);
    good.answer_all("verification");
    good.person = "varga";
    assert!(good.refused(json!({ "command": "judge", "accept": true })).contains(&"lateral_covered".into()));
    good.person = "ekdal";
    good.wait(240).report(json!({ "what": "lateral_opened", "lateral": 1, "open_pct": 98, "coupon": true }));
    judge(&mut good, true, &[]);
    assert_eq!(good.met("lateral_under_patch"), (json!(true), "lateral_covered".into()));

    let mut bad = Crew::practising(&["lateral_under_patch"]);
    ready(&mut bad);
    join(&mut bad);
    place(&mut bad);
    hold(&mut bad);
    bad.answer_all("deflation");
    bad.go_on();
    bad.report(json!({ "what": "lateral_opened", "lateral": 1, "open_pct": 98, "coupon": true }));
    judge(&mut bad, false, &["Cut before it was hard."]);
    assert_eq!(bad.met("lateral_under_patch"), (json!(false), "lateral_cut_early".into()));
}

#[test]
fn a_surprise_is_not_named_before_it_strikes() {
    let mut crew = Crew::practising(&[]);
    let opened = crew.ask(json!({ "do": "practise", "surprise": true, "pace": 10 }));
    assert_eq!(opened["practice"]["debrief"]["met"], json!([]));
    assert_eq!(opened["repair"]["practice"]["mishaps"].as_array().unwrap().len(), 1);
}

#[test]
fn its_clock_is_told_with_the_answer_and_goes_on_at_another_pace() {
    let mut crew = Crew::practising(&[]);
    let repair = crew.id.clone();
    let asked = json!({ "do": "repair", "repair": repair });
    let first = crew.send(asked.clone())["now"].clone();
    assert_eq!((first["pace"].clone(), first["offset_min"].clone()), (json!(10), json!(120)));
    let at = |now: &Value| now["at_ms"].as_i64().unwrap();
    let later = crew.wait(5).send(asked.clone())["now"].clone();
    assert!((300_000..301_000).contains(&(at(&later) - at(&first))), "{first} and {later}");
    crew.ask(json!({ "do": "pace", "repair": repair, "pace": 1 }));
    let (before, real) = (crew.send(asked.clone())["now"].clone(), crew.real_ms);
    crew.wait(10);
    let after = crew.send(asked)["now"].clone();
    assert_eq!(at(&after) - at(&before), crew.real_ms - real);
    for pace in [0, 61] {
        let answer = crew.send(json!({ "do": "pace", "repair": repair, "pace": pace }));
        assert_eq!(answer["refusal"]["broken"][0]["rule"], "bad_value");
    }
}

#[test]
fn its_clock_never_reaches_a_repair_in_earnest_nor_the_shelf() {
    let mut crew = Crew::practising(&[]);
    crew.ask(json!({ "do": "take_examples" }));
    ready(&mut crew);
    join(&mut crew);
    let opened = crew.send(mendline_tests::open_by_hand("SS-1"));
    let now = opened["now"]["at_ms"].as_i64().unwrap();
    assert_eq!(now, TODAY_MS + crew.real_ms);
    assert_eq!(opened["ok"]["repair"]["opened"]["moment"]["at_ms"], now);
    assert_eq!(opened["ok"]["practice"], Value::Null);
    let earnest = opened["ok"]["repair"]["id"].clone();
    let refused = crew.send(json!({ "do": "pace", "repair": earnest, "pace": 10 }));
    assert_eq!(refused["refusal"]["broken"][0]["rule"], "bad_value");
    // On the first screen it stands among what is under way, and no clock of it runs there.
    let today = crew.send(json!({ "do": "today" }));
    assert_eq!(today["now"]["at_ms"], TODAY_MS + crew.real_ms);
    assert_eq!((today["ok"]["mixed"].clone(), today["ok"]["holding"].clone()), (json!([]), json!([])));
    let underway = today["ok"]["underway"].as_array().unwrap();
    assert!(underway.iter().any(|one| one["repair"] == crew.id.as_str() && one["rehearsal"] == true), "{underway:?}");
    assert_eq!(crew.view()["others"], json!([]));
}

#[test]
fn whatever_is_tried_it_never_becomes_a_record() {
    let mut crew = Crew::practising(&[]);
    ready(&mut crew);
    join(&mut crew);
    place(&mut crew);
    hold(&mut crew);
    verify(&mut crew);
    let strokes = json!([[[10, 10], [500, 500], [900, 200]]]);
    for (person, name) in [("ekdal", "Tomas Ekdal"), ("varga", "Ines Varga")] {
        crew.person = person;
        crew.tell(json!({ "command": "sign", "name": name, "statement": "Practised.", "strokes": strokes }));
    }
    let repair = crew.id.clone();
    let issued = crew.ask(json!({ "do": "issue", "repair": repair }));
    assert!(issued["repair"]["issued"]["number"].as_str().unwrap().starts_with("REHEARSAL "));
    crew.ask(json!({ "do": "seal", "repair": repair }));
    for request in ["certificate", "record"] {
        let file = crew.ask(json!({ "do": request, "repair": repair }));
        let checked = crew.ask(json!({ "do": "check_record", "name": "file", "bytes": file["bytes"] }));
        assert_eq!(checked["finding"], "rehearsal", "{checked}");
    }
    // The flag at the top of the file, turned by hand, contradicts its entries.
    let file = crew.ask(json!({ "do": "record", "repair": repair }));
    let bytes = base64::Engine::decode(&base64::engine::general_purpose::STANDARD, file["bytes"].as_str().unwrap());
    let text = String::from_utf8(bytes.unwrap()).unwrap().replacen("\"rehearsal\":true", "\"rehearsal\":false", 1);
    let turned = base64::Engine::encode(&base64::engine::general_purpose::STANDARD, text);
    let checked = crew.send(json!({ "do": "check_record", "name": "file", "bytes": turned }));
    assert_ne!(checked["ok"]["finding"], "valid", "{checked}");
    // The number of the certificate was taken by the device's clock, not by the rehearsal's.
    let journal = rusqlite::Connection::open(crew.folder.path().join("journal.sqlite")).unwrap();
    let mut taken = journal.prepare("SELECT body FROM journal WHERE repair = 'numbers'").unwrap();
    let bodies: Vec<Vec<u8>> = taken.query_map([], |row| row.get(0)).unwrap().map(Result::unwrap).collect();
    assert!(!bodies.is_empty());
    for body in bodies {
        let body: Value = serde_json::from_slice(&body).unwrap();
        assert!(body.to_string().contains("\"boot_id\":\"this phone\""), "{body}");
    }
}
