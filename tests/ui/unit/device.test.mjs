import test from "node:test";
import assert from "node:assert/strict";
import "../words.mjs";
import { createPosition } from "../../../ui/device/position.js";
import { createCues } from "../../../ui/device/cue.js";
import { createLight } from "../../../ui/device/light.js";
import { createAnnouncer } from "../../../ui/device/announce.js";
import { createBattery } from "../../../ui/device/battery.js";
import { createNotices } from "../../../ui/device/notice.js";
import { createWake } from "../../../ui/device/wake.js";

function watched() {
  const at = { now: 10_000, stopped: 0 };
  const position = createPosition({ clock: () => at.now, watch: (found, failed) => { Object.assign(at, { found, failed }); return () => { at.stopped += 1; }; } });
  return { at, position };
}

test("no position is a reason, never a place", () => {
  const { at, position } = watched();
  assert.deepEqual(position.fact(), { kind: "absent", why: "not_asked" });
  position.follow(true);
  assert.deepEqual(position.fact(), { kind: "absent", why: "not_yet" });
  at.failed("refused");
  assert.deepEqual(position.fact(), { kind: "absent", why: "refused" });
});

test("a position carries how sure and how old it is, and grows older after the watch ends", () => {
  const { at, position } = watched();
  position.follow(true);
  at.found({ latitude: 59.33258, longitude: -18.0649, accuracy: 7.4, timestamp: 9_000 }, "receiver");
  assert.deepEqual(position.fact(), { kind: "fix", lat_e7: 593_325_800, lon_e7: -180_649_000, accuracy_mm: 7400, age_ms: 1000, source: "receiver" });
  position.follow(false);
  at.now = 70_000;
  assert.equal(position.fact().age_ms, 61_000);
  assert.equal(at.stopped, 1);
  position.follow(true);
  assert.equal(position.fact().kind, "fix");
});

test("a receiver that fails later does not take back a place that is known", () => {
  const { at, position } = watched();
  position.follow(true);
  at.found({ latitude: 1, longitude: 2, accuracy: undefined, timestamp: 12_000 }, "browser");
  at.failed("unavailable");
  assert.deepEqual(position.fact(), { kind: "fix", lat_e7: 10_000_000, lon_e7: 20_000_000, accuracy_mm: null, age_ms: 0, source: "browser" });
});

test("a device without sound or vibration is no error", () => {
  assert.deepEqual(createCues({ navigator: {} }).play("alarm"), { sound: false, buzz: false });
  assert.equal(createCues({ navigator: {} }).speak("Five minutes left"), false);
});

test("vibration follows the cue; a sound system that breaks is no error", () => {
  const buzzed = [];
  const cues = createCues({ navigator: { vibrate: (pattern) => buzzed.push(pattern) > 0 } });
  assert.equal(cues.play("alarm").buzz, true);
  assert.deepEqual(buzzed, [[400, 150, 400, 150, 400]]);
  assert.deepEqual(createCues({ navigator: {}, AudioContext: class { constructor() { throw new Error("no"); } } }).play("done"), { sound: false, buzz: false });
});

test("the light is kept, and an unknown one is day", () => {
  const kept = {};
  const storage = { getItem: (key) => kept[key] ?? null, setItem: (key, value) => { kept[key] = value; } };
  const root = { dataset: {} };
  createLight(root, storage).set("night");
  assert.equal(root.dataset.light, "night");
  assert.equal(createLight({ dataset: {} }, storage).now(), "night");
  kept["mendline.light"] = "green";
  assert.equal(createLight({ dataset: {} }, storage).now(), "day");
});

test("the same sentence twice is said twice", () => {
  const region = { textContent: "" };
  const timers = [];
  const announce = createAnnouncer(region, (_, run) => timers.push(run));
  announce("Recorded.");
  timers.shift()();
  assert.equal(region.textContent, "Recorded.");
  announce("Recorded.");
  assert.equal(region.textContent, "");
});

test("the charge is a whole number, or unknown", async () => {
  assert.equal(createBattery({}).percent(), null);
  const battery = createBattery({ getBattery: async () => ({ level: 0.889 }) });
  await Promise.resolve();
  await Promise.resolve();
  assert.equal(battery.percent(), 88);
});

test("the screen is kept lit while wanted, and taken up again when the page comes back", async () => {
  const page = { visibilityState: "visible", addEventListener: (_, run) => { page.come = run; } };
  const locks = [];
  const lock = () => { const one = { released: false, addEventListener: (_, run) => { one.lost = run; }, release: () => { one.released = true; } }; locks.push(one); return one; };
  const wake = createWake(page, { wakeLock: { request: async () => lock() } });
  wake.keep(true);
  await Promise.resolve();
  locks[0].lost();
  await page.come();
  assert.equal(locks.length, 2);
  wake.keep(false);
  assert.equal(locks[1].released, true);
  createWake(page, {}).keep(true);
});

/** A page that is or is not in front, with notices that are kept. */
function noticed({ permission = "granted", seen = "hidden", focus = false } = {}) {
  const given = [];
  class Notification { constructor(title, { body }) { given.push(`${title}: ${body}`); } }
  Object.assign(Notification, { permission, asked: 0, requestPermission: async () => { Notification.asked += 1; } });
  return { given, Notification, page: { visibilityState: seen, hasFocus: () => focus } };
}

test("a notice is given only when nobody looks and it is allowed", () => {
  for (const [state, n] of [[{}, 1], [{ seen: "visible", focus: false }, 1], [{ seen: "visible", focus: true }, 0], [{ permission: "denied" }, 0], [{ permission: "default" }, 0]]) {
    const { given, Notification, page } = noticed(state);
    assert.equal(createNotices({ Notification }, page).give("Mendline", "Reading is due."), n === 1);
    assert.equal(given.length, n, JSON.stringify(state));
  }
  assert.equal(createNotices({}, { visibilityState: "hidden" }).give("Mendline", "no notices here"), false);
});

test("the permission is asked for once, and a refusal is kept", () => {
  for (const [permission, times] of [["default", 1], ["granted", 0], ["denied", 0]]) {
    const { Notification, page } = noticed({ permission });
    createNotices({ Notification }, page).allow();
    assert.equal(Notification.asked, times);
  }
});

test("a phone rings by its own clock while the program sleeps, and is silenced when somebody looks again", () => {
  const rung = [];
  const cancelled = [];
  const { given, Notification, page } = noticed();
  const notices = createNotices({ Notification }, page, { ring: (all) => rung.push(...all), cancel: (ids) => cancelled.push(...ids) });
  notices.sleep("Mendline", Array.from({ length: 50 }, (_, i) => ({ at_ms: 1_000 * i, says: `no. ${i}` })), 500);
  assert.equal(rung.length, 32);
  assert.deepEqual(rung[1], { id: 7001, title: "Mendline", body: "no. 1", at_ms: 1_500 });
  notices.wake();
  assert.deepEqual(cancelled, rung.map(({ id }) => id));
  assert.equal(notices.give("Mendline", "said twice?"), false);
  assert.deepEqual(given, []);
});

test("the sound is woken by a touch, and where there is none that is no error", () => {
  let resumed = 0;
  class AudioContext { resume() { resumed += 1; } }
  assert.equal(createCues({ navigator: {}, AudioContext }).ready(), true);
  assert.equal(resumed, 1);
  assert.equal(createCues({ navigator: {} }).ready(), false);
});
