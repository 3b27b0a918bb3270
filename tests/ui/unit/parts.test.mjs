import test from "node:test";
import assert from "node:assert/strict";
import "../words.mjs";
import { html } from "../../../ui/html.js";
import { sound, values, words } from "./kit.mjs";
import { mast } from "../../../ui/parts/mast.js";
import { page } from "../../../ui/parts/page.js";
import { STAGES, stages } from "../../../ui/parts/stages.js";
import { warned } from "../../../ui/parts/warned.js";
import { others } from "../../../ui/parts/others.js";
import { clock } from "../../../ui/parts/clock.js";
import { count } from "../../../ui/parts/count.js";
import { ends, pending, tape } from "../../../ui/parts/tape.js";
import { budget, sum } from "../../../ui/parts/budget.js";
import { act, deck, gate, small, usual } from "../../../ui/parts/deck.js";
import { form } from "../../../ui/parts/action.js";
import { held, hold } from "../../../ui/parts/hold.js";
import { conditions } from "../../../ui/parts/conditions.js";
import { facts } from "../../../ui/parts/facts.js";
import { readings } from "../../../ui/parts/readings.js";
import { section } from "../../../ui/parts/section.js";
import { way } from "../../../ui/parts/way.js";
import { doNow, note } from "../../../ui/parts/note.js";
import { alarm } from "../../../ui/parts/alarm.js";
import { entry } from "../../../ui/parts/entry.js";
import { choice } from "../../../ui/parts/choice.js";
import { pair, yesNo } from "../../../ui/parts/pair.js";
import { field, file, lines, picks } from "../../../ui/parts/field.js";
import { table } from "../../../ui/parts/table.js";
import { light } from "../../../ui/parts/light.js";
import { liveCure, liveHold } from "../../../ui/parts/live.js";
import { problemList, problemOf, refusalNote } from "../../../ui/parts/problem-list.js";
import { dialog } from "../../../ui/parts/dialog.js";

const does = { do: "report", what: `a "quote" & <tag>` };

test("mast: one h1 that can take the focus, manhole in bold, the rule of stages", () => {
  const text = sound(mast({ title: "Hold", strong: "MH 118", where: "Lantern Lane", side: ["R-05", "11:24"], stage: 6 }));
  assert.equal(text.match(/<h1 tabindex="-1">/g).length, 1);
  assert.match(text, /<b>MH 118<\/b>/);
  assert.match(text, /R-05<br>11:24/);
  assert.equal(text.match(/class="past"/g).length, 6);
});

test("mast of a rehearsal says so in words", () => assert.match(words(sound(mast({ title: "x", where: "y", rehearsal: true }))), /REHEARSAL not a record/));

test("page of a rehearsal wears the frame", () => {
  assert.match(sound(page({ rehearsal: true, mast: "", main: html`<main></main>` })), /class="screen  ?rehearsal"/);
  assert.doesNotMatch(sound(page({ mast: "", main: html`<main></main>` })), /rehearsal/);
});

test("stages: ten, exactly one is now, and the label names it", () => {
  STAGES.forEach((_, at) => {
    const text = sound(stages(at));
    assert.equal(text.match(/<li/g).length, 10);
    assert.equal(text.match(/aria-current="step"/g).length, 1);
    assert.equal(text.match(/class="past"/g)?.length ?? 0, at);
  });
  assert.match(sound(stages(3)), /aria-label="Stage 4 of 10: Wet-out"/);
});

test("others: each clock by its manhole, the most pressing first; a late reading says so in a word", () => {
  const text = words(sound(others([{ repair: "R-05", manhole: "MH 118", due_ms: 160e3 }, { repair: "R-06", manhole: "MH 122", due_ms: -61e3 }])));
  assert.equal(text, "MH 122 reading late 1:01 MH 118 reading 2:40");
  const many = [5, 4, 3, 2, 1].map((n) => ({ repair: `R-0${n}`, manhole: `MH ${n}`, due_ms: n * 60e3, holding: n > 1 }));
  assert.equal(words(sound(others(many))), "MH 1 mixed, 1:00 MH 2 reading 2:00 3 more");
  assert.equal(String(html`${others([])}`), "");
});

test("warned: each warning has its words, its mark and its class; a calm clock has none", () => {
  assert.equal(sound(warned({ level: "calm", says: "", inside: html`x` })), '<div class="warned">x</div>');
  for (const level of ["half", "ten", "five", "one", "over"]) {
    const text = sound(warned({ level, says: `says ${level}`, inside: html`x` }));
    assert.match(text, new RegExp(`class="warned is-${level}"`));
    assert.match(text, new RegExp(`role="alert">.*<svg.*says ${level}`, "s"));
  }
});

test("clock: minutes are large, below one minute seconds, from an hour on hours", () => {
  assert.match(sound(clock({ what: "Working time left", ms: 1_122_000, note: "to 13:36" })), />18<small>:42<span>to 13:36<\/span>/);
  assert.match(sound(clock({ ms: 42_900 })), />42<small> s</);
  assert.match(sound(clock({ ms: 9_000 })), />9<small> s</);
  assert.match(sound(clock({ ms: 3_905_000 })), />1<small>:05 h</);
  assert.match(sound(clock({ ms: 1_122_000 })), /role="timer" aria-label="18\u00a0min 42\u00a0s left"/);
});

test("clock: time that is gone is rounded up", () => assert.match(sound(clock({ ms: 192_001, rising: true })), />3<small>:13/));

test("count carries what it is measured against", () => assert.equal(words(sound(count({ figure: 33, lines: ["of 60 min", "counted"] }))), "33 of 60 min counted"));

test("tape: lengths as they are, never below nothing, and a label in words", () => {
  const text = sound(tape({ n: 34, label: "18.7 of 34 minutes left", parts: [{ kind: "full", m: 18.7 }, { kind: "gone", m: -1 }], marks: [{ at: 9, name: 2 }] }));
  assert.deepEqual(values(text, "data-css"), ["--n:34", "--m:18.7", "--m:0", "--n:34", "--at:9"]);
  assert.match(text, /role="img" aria-label="18\.7 of 34 minutes left"/);
  assert.match(sound(ends(["0", { strong: "inside" }])), /<b>inside<\/b>/);
  assert.equal(words(sound(pending("7 more"))), "7 more");
});

// Worked example of the design's plan screen: 34:00 less 12:00, 6:30, 4:00 and 5:00 leaves 6:30.
test("budget: what is left closes the list", () => {
  const parts = [12, 6.5, 4, 5].map((m, i) => ({ label: `part ${i}`, ms: m * 60e3 }));
  assert.match(words(sound(budget({ total_ms: 34 * 60e3, parts }))), /Left of 34:00 6:30$/);
  const short = sound(budget({ total_ms: 19 * 60e3, parts }));
  assert.match(words(short), /working time ends, 19:00 .* Short of 19:00 by 8:30$/);
  assert.match(short, /class="over"/);
});

test("sum: the rows in order", () => assert.equal(words(sound(sum([{ mark: "b0", label: "nominal", value: "190 mm" }, { mark: "b5", label: "left", value: "156 mm" }]))), "nominal 190 mm left 156 mm"));

test("a request travels in its attribute as it is, whatever it holds", () => {
  for (const text of [sound(act({ label: "Go", does })), sound(hold({ label: "Go", note: "2 s", does })), sound(form({ id: "f", does, inside: "" }))]) {
    const [sent] = values(text, "data-request");
    assert.deepEqual(JSON.parse(sent.replaceAll("&quot;", '"').replaceAll("&lt;", "<").replaceAll("&gt;", ">").replaceAll("&amp;", "&")), does);
  }
});

test("act: a link leads on, a form's button sends it, any other is a plain button", () => {
  assert.match(sound(act({ label: "On", href: "#/x" })), /^<a class="act" href="#\/x"/);
  assert.match(sound(act({ label: "Send", form: "f" })), /^<button type="submit" class="act" form="f"/);
  assert.match(sound(act({ label: "Report", does })), /^<button type="button" class="act"/);
});

test("deck: the reason stands with the act", () => {
  const text = words(sound(deck({ gate: gate({ reason: "Closed until 11:44", note: "at the earliest" }), more: usual({ repair: "R-05", ago: { min: 3, href: "#/ago" } }), act: act({ label: "Take a reading", href: "#/r" }) })));
  assert.equal(text, "Closed until 11:44 at the earliest Stop Photo Note 3 min ago Take a reading");
  assert.match(sound(deck({ more: [small({ mark: "stop", label: "Stop", href: "#" }), small({ mark: "ago", label: "Ago", href: "#" })] })), /deck-more two/);
});

test("hold: says how, names itself once to a reader, and is another button for another deed", () => {
  const text = sound(hold({ label: "Parts joined", note: "Hold 2 s", does, alarm: true }));
  assert.match(text, /class="act hold is-alarm"/);
  assert.match(text, /data-hold="Parts joined" data-key="hold Parts joined"/);
  assert.match(text, /<span class="over" aria-hidden="true">/);
  assert.match(sound(held({ label: "Joined at 13:02:10", note: "next" })), /data-state="done"/);
});

test("conditions: the mark's meaning is said, not only drawn", () => {
  const text = sound(conditions([{ state: "met", text: "Target reached" }, { state: "open", text: "Packer back", note: "by the rope" }, { state: "waived", text: "Permit", note: "nobody below", inside: html`<i></i>` }]));
  assert.equal(words(text), "Met: Target reached Open: Packer back by the rope Does not apply: Permit nobody below");
  assert.equal(text.match(/<li class="open">/g).length, 1);
});

test("facts, readings, section, way, notes", () => {
  assert.equal(words(sound(facts([{ label: "Line", value: "46.80 m", note: "clay" }]))), "Line 46.80 m clay");
  assert.equal(words(sound(readings([{ label: "Water", value: "0.35", unit: "m", then: "11:17" }]))), "Water 0.35 m 11:17");
  assert.match(sound(section({ id: "h", title: "Hold", aside: "x", inside: "y" })), /aria-labelledby="h"/);
  assert.equal(words(sound(way({ href: "#/x", label: "MH 214", note: "plan accepted" }))), "MH 214 plan accepted");
  assert.match(sound(note({ lead: "Both", text: "are kept", accent: true })), /class="note is-accent"/);
  assert.equal(sound(doNow(["a", "b"])).match(/<li>/g).length, 2);
});

test("alarm: only the words are an alert, the running figure is not", () => {
  const text = sound(alarm({ strong: "MH 214", where: "Tallow Street", what: "Working time is over", title: "Where is the patch?", beside: count({ figure: "+2:15", lines: ["since 13:36"] }), items: [{ label: "Age", value: "1 h" }] }));
  assert.match(text, /<div role="alert"><p class="clock-what">Working time is over<\/p><h1 tabindex="-1">Where is the patch\?<\/h1><\/div>/);
  assert.doesNotMatch(/role="alert">.*?<\/div>/.exec(text)[0], /2:15/);
});

test("entry: label, unit, buttons that say what they do, and the problem linked", () => {
  const text = sound(entry({ id: "bar", label: "Pressure", aside: "1.21 at 11:17", value: "1.2x", unit: "bar", step: 0.01, digits: 2, steps: 1e5, min: 0, max: 3, problem: "Pressure: a number, please." }));
  assert.match(text, /<label for="bar">/);
  assert.match(text, /inputmode="decimal"/);
  assert.match(text, /aria-label="Pressure less by 0\.01 bar"/);
  assert.match(text, /aria-label="Pressure more by 0\.01 bar"/);
  assert.match(text, /aria-describedby="bar-unit bar-problem" aria-invalid="true"/);
  assert.match(text, /data-min="0" data-max="3"/);
  assert.match(sound(entry({ id: "t", label: "T", unit: "°C", value: "<" })), /value="&lt;"/);
});

test("choice: what does not fit stays, closed, with its reason", () => {
  const text = sound(choice({ legend: "Packer", name: "p", picked: "a", options: [{ value: "a", strong: "P-2", text: "fits" }, { value: "b", strong: "P-3", note: "for 200 – 300 mm", closed: true, at: ["1", "2"] }] }));
  assert.equal(text.match(/checked/g).length, 1);
  assert.equal(text.match(/disabled/g).length, 1);
  assert.match(words(text), /P-3 for 200 – 300 mm/);
  assert.equal(sound(choice({ legend: "O", name: "o", several: true, picked: ["a", "b"], options: [{ value: "a", strong: "A" }, { value: "b", strong: "B" }, { value: "c", strong: "C" }] })).match(/checked/g).length, 2);
});

test("pair: nothing is picked unless it was", () => {
  assert.doesNotMatch(sound(yesNo({ legend: "Soaked", name: "s" })), /checked/);
  assert.match(sound(pair({ legend: "Edge", name: "e", picked: "lifted", options: [{ value: "bonded", label: "Bonded" }, { value: "lifted", label: "Lifted" }] })), /value="lifted"\s+checked/);
});

test("fields keep what was typed and link their problem", () => {
  assert.match(sound(field({ id: "n", label: "Name", value: `"x" & <y>`, problem: "Name: is missing." })), /value="&quot;x&quot; &amp; &lt;y&gt;".*aria-describedby="n-problem"/);
  assert.match(sound(lines({ id: "l", label: "Seen", value: "a\n<b>" })), />a\n&lt;b&gt;<\/textarea>/);
  assert.match(sound(picks({ id: "p", label: "Material", value: "b", options: [{ value: "a", label: "Clay" }, { value: "b", label: "Concrete" }] })), /value="b" selected/);
  assert.match(sound(file({ id: "f", label: "Photo", accept: "image/*", camera: true })), /accept="image\/\*" capture="environment"/);
});

test("table: heads for rows and columns, and it scrolls in its own strip", () => {
  const text = sound(table({ label: "Readings", head: ["Time", "bar"], rows: [["11:17", "1.21"]] }));
  assert.match(text, /tabindex="0" role="region" aria-label="Readings"/);
  assert.match(text, /<th scope="row">11:17<\/th><td>1\.21<\/td>/);
});

test("light: exactly one is picked", () => assert.match(sound(light("sun")), /value="sun" checked/));

test("live hold: counted never runs over the tape, pending never beyond its end", () => {
  const text = sound(liveHold({ href: "#", manhole: "MH 118", where: "x", counted: 58, pending: 7, needed: 60, items: [{ label: "Due", value: "2:40" }] }));
  assert.deepEqual(values(text, "data-css"), ["--n:60", "--m:58", "--m:2"]);
  assert.match(text, /aria-label="58 of 60 minutes counted, 7 more wait for the next reading"/);
  assert.match(words(sound(liveCure({ href: "#", manhole: "MH 031", where: "x", gone: 4, needed: 9, when: "16:05", label: "4 of 9 h" }))), /full cure from 16:05 Don’t cut or test before\./);
  assert.match(words(sound(liveCure({ href: "#", manhole: "MH 031", where: "x", gone: 4, needed: 9, when: "01:06", day: "Tue 1 Dec", label: "4 of 9 h" }))), /full cure from 01:06 Tue 1 Dec Don’t/);
});

test("problems: counted in words, each leads to its field", () => {
  const text = sound(problemList([{ field: "bar", text: "Pressure: a number, please." }, { text: "No photo." }]));
  assert.match(words(text), /^2 things to put right/);
  assert.match(text, /data-jump="bar"/);
  assert.match(words(sound(problemList([{ text: "x" }]))), /^1 thing to put right/);
  assert.equal(String(html`${problemList([])}`), "");
  assert.equal(problemOf([{ field: "a", text: "t" }], "a"), "t");
  assert.equal(words(sound(refusalNote({ broken: [{ says: "Too early", way_out: "wait" }] }))), "Too early Way out: wait");
});

test("dialog: named by its title, and it can be closed", () => assert.match(sound(dialog({ id: "d", title: "Waive", inside: "x" })), /aria-labelledby="d-title".*method="dialog"/s));
