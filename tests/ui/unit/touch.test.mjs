import test from "node:test";
import assert from "node:assert/strict";
import "../words.mjs";
import { AGAIN_MS, HOLD_MS, IDLE, next, progress } from "../../../ui/touch/hold.js";
import { penAfter } from "../../../ui/touch/pad.js";
import { stepped } from "../../../ui/touch/entry.js";

/** Runs [event, ms] pairs from rest and returns the last state. */
const after = (...events) => events.reduce((state, [event, ms]) => next(state, event, ms), IDLE);

test("two seconds confirm, a moment less does not", () => {
  assert.equal(after(["down", 0], ["tick", HOLD_MS - 1]).phase, "held");
  assert.equal(after(["down", 0], ["tick", HOLD_MS]).done, true);
  assert.deepEqual(after(["down", 0], ["up", HOLD_MS - 1]), { phase: "idle", early: true });
});

test("a device too busy to draw still confirms what was held long enough", () => assert.equal(after(["down", 0], ["up", HOLD_MS]).done, true));

test("a finger that slides off confirms nothing, and says nothing", () => assert.deepEqual(after(["down", 0], ["leave", 500]), { phase: "idle", early: false }));

test("what was confirmed is confirmed once", () => {
  assert.equal(after(["down", 0], ["tick", 2000], ["tick", 2016]).done, undefined);
  assert.equal(after(["down", 0], ["tick", 2000], ["up", 2100]).done, undefined);
});

test("without a pointer: two presses within five seconds", () => {
  assert.equal(after(["press", 0]).phase, "armed");
  assert.equal(after(["press", 0], ["press", AGAIN_MS - 1]).done, true);
  assert.equal(after(["press", 0], ["press", AGAIN_MS]).phase, "armed");
  assert.equal(after(["press", 0], ["tick", AGAIN_MS]).lapsed, true);
  assert.equal(after(["press", 0], ["leave", 10]).phase, "idle");
});

test("a tap of a finger never counts as a press", () => assert.equal(after(["down", 0], ["up", 80], ["down", 200], ["up", 280]).done, undefined));

test("progress runs from nought to one", () => {
  const held = after(["down", 1000]);
  assert.equal(progress(held, 1000), 0);
  assert.equal(progress(held, 2000), 0.5);
  assert.equal(progress(held, 9000), 1);
  assert.equal(progress(IDLE, 9000), 0);
});

test("an entry steps on its grid without the dust of binary fractions", () => {
  const bar = { by: 0.01, digits: 2, min: 0, max: 3 };
  assert.equal(stepped("1.21", 1, bar), "1.22");
  assert.equal(stepped("1.21", -1, bar), "1.20");
  assert.equal(stepped("0.29", 1, bar), "0.30");
  assert.equal(stepped("1.213", 1, bar), "1.22");
  assert.equal(stepped("1.213", -1, bar), "1.21");
  let text = "0.00";
  for (let i = 0; i < 300; i += 1) text = stepped(text, 1, bar);
  assert.equal(text, "3.00");
  assert.equal(stepped(text, 1, bar), "3.00");
  assert.equal(stepped("0.00", -1, bar), "0.00");
});

test("a first press on an empty entry puts in where it starts", () => {
  assert.equal(stepped("", 1, { by: 1, start: 11 }), "11");
  assert.equal(stepped("abc", -1, { by: 1, min: 5 }), "5");
  assert.equal(stepped("", 1, { by: 1 }), "0");
});

test("below zero, and with a comma", () => {
  assert.equal(stepped("-1", -1, { by: 1 }), "-2");
  assert.equal(stepped("0", -1, { by: 0.5, digits: 1 }), "-0.5");
  assert.equal(stepped("1,5", 1, { by: 0.5, digits: 1 }), "2.0");
});

test("minutes and seconds step together", () => {
  const span = { by: 5, min: 0, spanned: true };
  assert.equal(stepped("3:10", 1, span), "3:15");
  assert.equal(stepped("2:58", 1, span), "3:00");
  assert.equal(stepped("0:03", -1, span), "0:00");
});

test("the pen goes by arrow keys, draws only while it is down, and stays in the field", () => {
  const keys = (...pressed) => pressed.reduce((pen, [key, far]) => penAfter(pen, key, far), { at: [100, 500] });
  assert.deepEqual(keys(["ArrowRight"], ["ArrowDown", true]), { at: [125, 600] });
  assert.deepEqual(keys([" "], ["ArrowRight"], ["ArrowUp"]), { at: [125, 475], stroke: [[100, 500], [125, 500], [125, 475]] });
  assert.deepEqual(keys([" "], ["ArrowRight"], [" "]), { at: [125, 500], done: [[100, 500], [125, 500]] });
  assert.deepEqual(keys(...Array(20).fill(["ArrowLeft", true])).at, [0, 500]);
  assert.equal(penAfter({ at: [0, 0] }, "Tab"), undefined);
});
