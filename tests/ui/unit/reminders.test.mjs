// When a clock wants to be heard. The moments are whole minutes from joining; the warnings before the end are common practice, no source.

import test from "node:test";
import assert from "node:assert/strict";
import "../words.mjs";
import { createReminders, remindersOf, runs } from "../../../ui/reminders.js";
import { warningAt, warningsOf } from "../../../ui/warnings.js";

const MIN = 60_000;

/** What the core says of a repair that was joined at 0 and has 32 minutes; `more` of the clock, the attempt and the answer. */
const mixed = ({ clock = {}, attempt = {}, ...more } = {}) => ({
  kind: "repair",
  repair: { plan: { choice: { from_node: "upstream" } }, line: { upstream: { name: "MH 1" }, downstream: { name: "MH 2" } }, attempts: [{ n: 1, joined: {}, ...attempt }] },
  clock: { working_ms: 32 * MIN, deadline_ms: 32 * MIN, mix_until_ms: 3 * MIN, way_in_ms: 14 * MIN, inflate_ms: 24 * MIN, on_target_ms: 28 * MIN, ...clock },
  others: [], ...more,
});

const held = (hold = {}, more = {}) => mixed({ clock: { stopped_ms: 20 * MIN }, hold: { missing_ms: 40 * MIN, earliest_release_ms: 80 * MIN, reading_due_ms: 30 * MIN, gap_from_ms: 35 * MIN, released_ms: null, ...hold }, ...more });

/** Runs the reminders from minute `from` to minute `to` by whole seconds; returns what was cued and when, in minutes. */
function heard(answer, from, to, { step = 1_000 } = {}) {
  const found = [];
  let cue, now;
  const reminders = createReminders({ play: (name) => { cue = name; }, speak: (says) => found.push([now / MIN, cue, says]), notice: (says) => found.at(-1).push(says) });
  reminders.take(answer);
  for (now = from * MIN; now <= to * MIN; now += step) reminders.tick(now);
  return found.map(([at, name, says, noticed]) => { assert.equal(noticed, says); return `${at} ${name}: ${says}`; });
}

test("from joining to the end: each warning once, at its moment, graver and graver; after it, again and again", () => {
  assert.deepEqual(heard(mixed(), 0, 33.5), [
    "3 tap: MH 1: mixed long enough.",
    "13 warn: MH 1: one minute to the way in.",
    "14 warn: MH 1: way in, now at the latest.",
    "16 warn: MH 1: half of the working time is gone.",
    "22 warn: MH 1: ten minutes of working time left.",
    "23 warn: MH 1: one minute to inflating.",
    "24 warn: MH 1: inflate, now at the latest.",
    "27 alarm: MH 1: one minute to target pressure. MH 1: five minutes of working time left.",
    "28 warn: MH 1: target pressure, now at the latest. The margin begins.",
    "31 alarm: MH 1: one minute of working time left.",
    ...[32, 32.5, 33, 33.5].map((at) => `${at} alarm: MH 1: working time is over. Where is the patch?`),
  ]);
});

test("what was tapped is not asked for", () => {
  const says = heard(mixed({ clock: { air_joined_ms: 10 * MIN } }), 0, 31).join();
  assert.doesNotMatch(says, /way in|inflat/);
  assert.match(says, /target pressure/);
});

test("a short working time leaves out the warnings that would come before half of it", () => {
  assert.deepEqual(warningsOf({ working_ms: 12 * MIN, deadline_ms: 12 * MIN }).map(({ name, at_ms }) => [name, at_ms / MIN]), [["half", 6], ["five", 7], ["one", 11], ["over", 12]]);
  assert.deepEqual(warningsOf({ working_ms: 1 * MIN, deadline_ms: 1 * MIN }).map(({ name }) => name), ["half", "over"]);
});

test("the screen shows the gravest warning that has come", () => {
  const { clock } = mixed();
  for (const [at, name] of [[0, "calm"], [15.99, "calm"], [16, "half"], [22, "ten"], [27, "five"], [31, "one"], [32, "over"], [500, "over"]]) assert.equal(warningAt(clock, at * MIN), name, `at ${at}`);
});

test("after target pressure, release or the end of the attempt the working time is silent", () => {
  for (const answer of [mixed({ clock: { stopped_ms: 20 * MIN } }), mixed({ attempt: { released: {} } }), mixed({ attempt: { ended: {} } })]) {
    assert.deepEqual(heard(answer, 0, 40), []);
    assert.equal(runs(answer), false);
  }
});

test("once somebody has said where the patch is, it is not asked again and again", () => {
  assert.equal(heard(mixed({ trouble: { kind: "time_over", place: "on_table" } }), 31.5, 40).length, 1);
});

test("nobody is nagged longer than ten minutes", () => {
  assert.equal(heard(mixed(), 32, 60).at(-1).split(" ")[0], "42");
  assert.deepEqual(heard(mixed(), 43, 60), []);
});

test("a program that begins after the end says at once what is asked again and again", () => {
  assert.deepEqual(heard(mixed(), 33.1, 33.6).map((line) => line.split(" ")[0]), ["33.1", "33.5"]);
});

test("a hold asks for its reading, says when minutes begin to be lost, and when they may be enough", () => {
  assert.deepEqual(heard(held(), 20, 81), [
    "29 warn: MH 1: reading in one minute.",
    "30 warn: MH 1: reading is due.",
    "35 alarm: MH 1: from now on it is not witnessed.",
    "80 done: MH 1: the hold may be long enough. Take a reading.",
  ]);
  assert.deepEqual(heard(held({ released_ms: 25 * MIN }), 20, 81), []);
  assert.equal(runs(held()), true);
});

test("a pressure outside its window is said every two minutes", () => {
  const answer = held({ reading_due_ms: 90 * MIN, gap_from_ms: 95 * MIN }, { trouble: { kind: "pressure", low: true, at_ms: 21 * MIN } });
  assert.deepEqual(heard(answer, 20, 25.5), [21, 23, 25].map((at) => `${at} alarm: MH 1: pressure too low.`));
});

test("a packer that leaks is said five minutes before the lower limit", () => {
  const answer = held({ reading_due_ms: 90 * MIN, gap_from_ms: 95 * MIN, leak: { limit_ms: 40 * MIN } });
  assert.deepEqual(heard(answer, 30, 45), ["35 warn: MH 1: the packer leaks. About five minutes to the lower limit."]);
  assert.deepEqual(heard(held({ reading_due_ms: 90 * MIN, gap_from_ms: 95 * MIN, leak: { limit_ms: null } }), 30, 45), []);
});

test("full cure is said, unless the attempt was ended", () => {
  const cured = { cure: { until_ms: 240 * MIN, reached: false } };
  assert.deepEqual(heard(held({ released_ms: 1 }, cured), 239, 241), ["240 done: MH 1: full cure."]);
  assert.deepEqual(heard(mixed({ ...cured, attempt: { ended: {} } }), 239, 241), []);
});

test("other repairs are heard too, each by its manhole", () => {
  const others = [{ repair: "b", node: "MH 7", due_ms: 40 * MIN, holding: true }, { repair: "c", node: "MH 8", due_ms: 50 * MIN, holding: false }];
  const answer = held({ released_ms: 1 }, { others });
  assert.deepEqual(heard(answer, 35, 50), [
    "39 warn: MH 7: reading in one minute.", "40 alarm: MH 7: reading is due. MH 8: ten minutes of working time left.",
    "45 alarm: MH 8: five minutes of working time left.", "49 alarm: MH 8: one minute of working time left.", "50 alarm: MH 8: working time is over. Where is the patch?",
  ].map((line) => line.replace("40 alarm", "40 warn")));
  assert.equal(runs(answer), true);
});

test("the first screen hears all that runs", () => {
  const { clock } = mixed();
  const today = { kind: "today", mixed: [{ summary: { node: "MH 3" }, clock }], holding: [{ summary: { node: "MH 4" }, hold: held().hold }], curing: [{ summary: { node: "MH 5" }, cure: { until_ms: 9 * MIN, reached: false } }] };
  assert.deepEqual([...new Set(remindersOf(today).map(({ says }) => says.slice(0, 4)))], ["MH 3", "MH 4", "MH 5"]);
  assert.equal(runs(today), true);
  assert.equal(runs({ ...today, mixed: [], holding: [] }), false);
});

test("after a sleep everything is said at once: the gravest cue, of each subject only the latest, and nothing from before the start", () => {
  assert.deepEqual(heard(mixed(), 12, 29, { step: 17 * MIN }), ["29 alarm: MH 1: way in, now at the latest. MH 1: inflate, now at the latest. MH 1: five minutes of working time left. MH 1: target pressure, now at the latest. The margin begins."]);
  assert.deepEqual(heard(mixed(), 29, 30), []);
});

test("a clock that is set back says nothing twice", () => {
  const said = [];
  const reminders = createReminders({ play: () => {}, speak: (says) => said.push(says), notice: () => {} });
  reminders.take(mixed());
  for (const at of [15, 16, 15, 16, 17]) reminders.tick(at * MIN);
  assert.deepEqual(said, ["MH 1: half of the working time is gone."]);
});

test("an answer of another screen leaves the reminders as they are", () => {
  const said = [];
  const reminders = createReminders({ play: () => {}, speak: (says) => said.push(says), notice: () => {} });
  reminders.take(mixed());
  reminders.take({ kind: "shelf" });
  reminders.tick(15.5 * MIN);
  reminders.tick(16 * MIN);
  assert.equal(said.length, 1);
});

test("what is to come is told soonest first, for a device that sleeps meanwhile", () => {
  const reminders = createReminders({ play: () => {}, speak: () => {}, notice: () => {} });
  reminders.take(mixed());
  const coming = reminders.coming(30 * MIN);
  assert.deepEqual(coming.map(({ at_ms }) => at_ms / MIN), [31, 32, 32.5, 33, 33.5, 34]);
});

test("a test push that is timed keeps the screen lit until the mark is reached", () => {
  const push = (test_push) => ({ ...mixed({ attempt: { test_push } }), clock: null });
  assert.deepEqual([{}, { begun: {} }, { begun: {}, reached: [] }].map((one) => runs(push(one))), [false, true, false]);
});
