// The clocks on the real core, in a page whose sound, vibration, speech, notices and wake lock are written down: what was cued, when,
// and what a device that slept, was killed or lost its focus shows.

import assert from "node:assert/strict";
import { test } from "node:test";
import { SIZES, goTo, onCore } from "./served.mjs";
import { workingTime } from "./stages.mjs";
import { Walk } from "./walk.mjs";

const served = onCore();
const SOON_MS = 8_000;
/** A cue comes within this of its moment. */
const NEAR_MS = 1_500;

/** Stands in for the device. All that it is asked for is kept in `cued`, with the wall time. */
function device() {
  const cued = [];
  const note = (kind, what) => cued.push({ kind, what, at: Date.now() });
  globalThis.cued = cued;
  globalThis.asleep = 0;
  const now = performance.now.bind(performance);
  performance.now = () => now() - globalThis.asleep;
  const knob = { setValueAtTime() {}, linearRampToValueAtTime() {} };
  class AudioContext {
    currentTime = 0;
    destination = {};
    resume() {}
    createGain() { return { gain: knob, connect: (to) => to }; }
    createOscillator() { const frequency = {}; return { frequency, connect: (to) => to, start: () => note("tone", frequency.value), stop() {} }; }
  }
  class Notification { static permission = "granted"; static requestPermission = async () => "granted"; constructor(title, { body }) { note("notice", body); } }
  class SpeechSynthesisUtterance { constructor(text) { this.text = text; } }
  const put = (target, name, value) => Object.defineProperty(target, name, { value, configurable: true, writable: true });
  put(globalThis, "AudioContext", AudioContext);
  put(globalThis, "Notification", Notification);
  put(globalThis, "SpeechSynthesisUtterance", SpeechSynthesisUtterance);
  put(globalThis, "speechSynthesis", { cancel() {}, speak: ({ text }) => note("speech", text) });
  put(navigator, "vibrate", (pattern) => { note("buzz", pattern); return true; });
  put(navigator, "wakeLock", { request: async () => { note("lit", true); return { addEventListener() {}, release: () => note("lit", false) }; } });
  globalThis.front = true;
  document.hasFocus = () => globalThis.front;
}

async function openPage(hash) {
  const { page, close } = await served.open(SIZES[0], { hash: "#/help" });
  await page.addInitScript(device);
  await page.reload();
  await goTo(page, hash);
  return { page, close, cued: (kind) => page.evaluate((one) => cued.filter((cue) => cue.kind === one), kind) };
}

/** A repair whose working time has `left_ms` to run. */
async function mixed(left_ms) {
  const repair = await (await (await new Walk(served.api).open({ number: "R-07" })).plan()).to("wet_out");
  await repair.go();
  await repair.report({ what: "joined" }, (workingTime(repair) - left_ms) / 60_000);
  return repair;
}

const discard = (repair) => repair.tell({ command: "end_attempt", outcome: "discarded", reasons: ["A test."], in_pipe: "Nothing." });
const heard = async (cued, text) => {
  for (let n = 0; n < 200; n += 1) {
    const found = (await cued("speech")).find(({ what }) => what.includes(text));
    if (found) return found;
    await new Promise((again) => setTimeout(again, 100));
  }
  throw new Error(`never said: ${text}; but ${JSON.stringify(await cued("speech"))}`);
};

const WARNINGS = [
  { name: "half", says: "half of the working time is gone", shown: "Half the time is gone", left: (working) => working / 2, buzz: [200, 100, 200], tones: [740, 740] },
  { name: "ten", says: "ten minutes of working time left", shown: "Less than 10 minutes left", left: () => 600_000, buzz: [200, 100, 200], tones: [740, 740] },
  { name: "five", says: "five minutes of working time left", shown: "Less than 5 minutes left", left: () => 300_000, buzz: [400, 150, 400, 150, 400], tones: [960, 640, 960, 640] },
  { name: "one", says: "one minute of working time left", shown: "Less than a minute left", left: () => 60_000, buzz: [400, 150, 400, 150, 400], tones: [960, 640, 960, 640] },
];

test("each warning comes at its moment, by words, mark, sound, vibration and speech; and as a notice when nobody looks", { timeout: 240_000 }, async () => {
  const working = workingTime(await (async () => { const repair = await (await (await new Walk(served.api).open({ number: "R-06" })).plan()).to("wet_out"); await repair.go(); return repair; })());
  const { page, close, cued } = await openPage("#/");
  for (const { name, says, shown, left, buzz, tones } of WARNINGS) {
    const repair = await mixed(left(working) + SOON_MS);
    const due = repair.view.clock.deadline_ms - left(working);
    await page.evaluate(() => { front = false; cued.length = 0; });
    await goTo(page, `#/repair/${repair.id}`);
    assert.equal(await page.locator(`.warned.is-${name}`).count(), 0, `${name} too early`);
    const { at } = await heard(cued, says);
    assert.ok(Math.abs(at - due) < NEAR_MS, `${name} was said ${at - due} ms after its moment`);
    const near = (cues) => cues.filter((cue) => Math.abs(cue.at - at) < 300).map(({ what }) => what);
    assert.deepEqual(near(await cued("tone")), tones, name);
    assert.deepEqual(near(await cued("buzz")), [buzz], name);
    assert.equal((await cued("notice")).filter(({ what }) => what.includes(says)).length, 1, name);
    await page.locator(`.warned.is-${name} [role=alert]`, { hasText: shown }).waitFor();
    await discard(repair);
  }
  await close();
});

test("when the time is over the screen asks where the patch is, and asks again until somebody says", { timeout: 120_000 }, async () => {
  const repair = await mixed(SOON_MS);
  const { page, close, cued } = await openPage(`#/repair/${repair.id}`);
  const { at } = await heard(cued, "Where is the patch?");
  assert.ok(Math.abs(at - repair.view.clock.deadline_ms) < NEAR_MS);
  await page.getByRole("heading", { level: 1, name: "Where is the patch?" }).waitFor({ timeout: 20_000 });
  await page.waitForTimeout(500);
  await page.getByRole("button", { name: "On the table" }).click();
  await page.getByRole("heading", { level: 1, name: "On the table" }).waitFor();
  await discard(repair);
  await close();
});

test("a reading that is due is said, marked when it is late, and gives way to the reading", { timeout: 120_000 }, async () => {
  const repair = await mixed(60_000);
  await repair.report({ what: "target_reached", gauge_pa: 131_000 }, 0);
  const due = repair.view.hold.reading_due_ms;
  const again = await (await (await new Walk(served.api).open({ number: "R-05" })).plan()).to("wet_out");
  await again.go();
  const since = (due - repair.view.hold.target_ms - SOON_MS) / 60_000;
  await again.report({ what: "joined" }, since + 5);
  await again.report({ what: "target_reached", gauge_pa: 131_000 }, since);
  const { page, close, cued } = await openPage(`#/repair/${again.id}`);
  const { at } = await heard(cued, "reading is due");
  assert.ok(Math.abs(at - again.view.hold.reading_due_ms) < NEAR_MS);
  await page.locator(".reading.is-late", { hasText: "Reading is late by" }).waitFor();
  await again.report({ what: "reading", gauge_pa: 130_000, pipe_mc: 12_800, upstream_um: 300_000, by: "hand", gauge: "G-04" });
  await page.evaluate(() => document.dispatchEvent(new Event("visibilitychange")));
  await page.locator(".reading", { hasText: "Next reading in" }).waitFor();
  assert.equal(await page.locator(".reading.is-late").count(), 0);
  await discard(repair);
  await discard(again);
  await close();
});

/** What the large clock shows, in ms, and what it should. */
const clockOff = async (page, deadline) => {
  const [shown, now] = await page.evaluate(() => [document.querySelector(".clock-figure").innerText.replace(/to.*/s, "").replace(/\s/g, ""), Date.now()]);
  const [min, s] = shown.split(":").map(Number);
  return (min * 60 + s) * 1000 - (deadline - now);
};

test("a device that slept, and a program that was killed, show the right time", { timeout: 120_000 }, async () => {
  const repair = await mixed(900_000);
  const deadline = repair.view.clock.deadline_ms;
  const { page, close } = await openPage(`#/repair/${repair.id}`);
  assert.ok(Math.abs(await clockOff(page, deadline)) < 2_000);
  // In sleep the monotonic clock of a page stands still.
  await page.evaluate(() => { asleep += 120_000; });
  await page.waitForTimeout(2_500);
  assert.ok(Math.abs(await clockOff(page, deadline)) < 2_000, `after a sleep ${await clockOff(page, deadline)} ms off`);
  await page.reload();
  await page.locator(".clock-figure").waitFor();
  assert.equal(await page.evaluate(() => location.hash), `#/repair/${repair.id}`);
  assert.ok(Math.abs(await clockOff(page, deadline)) < 2_000, "after a kill");
  await discard(repair);
  await close();
});

test("the screen is kept lit while a clock runs, and only then", { timeout: 60_000 }, async () => {
  const { page, close, cued } = await openPage("#/");
  await page.waitForTimeout(300);
  assert.deepEqual(await cued("lit"), []);
  const repair = await mixed(900_000);
  await goTo(page, `#/repair/${repair.id}`);
  await page.waitForTimeout(300);
  assert.deepEqual((await cued("lit")).map(({ what }) => what), [true]);
  await discard(repair);
  await goTo(page, "#/");
  await page.waitForTimeout(500);
  assert.deepEqual((await cued("lit")).map(({ what }) => what), [true, false]);
  await close();
});

test("a clock is heard on a screen that shows none", { timeout: 60_000 }, async () => {
  const repair = await mixed(600_000 + 12_000);
  const { page, close, cued } = await openPage("#/help");
  await page.reload();
  await heard(cued, "ten minutes of working time left");
  await discard(repair);
  await close();
});

test("a touch on what has just appeared does nothing, a key does", { timeout: 60_000 }, async () => {
  const repair = await (await (await new Walk(served.api).open({ number: "R-04" })).plan()).to("test_push");
  const { page, close } = await openPage(`#/repair/${repair.id}`);
  await page.waitForTimeout(600);
  const begun = page.locator(".deck > .act", { hasText: "Test push begins" });
  const box = await begun.boundingBox();
  const touch = () => page.mouse.click(box.x + 80, box.y + 40);
  await touch();
  for (let n = 0; n < 30; n += 1) { await touch(); if (await page.locator(".deck > .act", { hasText: "Mark is at" }).count()) break; }
  await touch();
  await page.waitForTimeout(600);
  assert.match(await page.locator(".deck > .act").innerText(), /Mark is at the pipe mouth/, "a second touch went on");
  await page.locator(".deck > .act").focus();
  await page.keyboard.press("Enter");
  await page.locator(".deck > .act", { hasText: "Packer is back and sound" }).waitFor();
  await close();
});
