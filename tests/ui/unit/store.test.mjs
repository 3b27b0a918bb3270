import test from "node:test";
import assert from "node:assert/strict";
import "../words.mjs";
import { createStore } from "../../../ui/store.js";

/** A core that can be silent, a storage, a clock and timers that the test turns by hand. */
function world({ kept = {} } = {}) {
  const at = { silent: false, ms: 0, wall: 1_000_000, ids: 0, seen: [], timers: [], answer: (envelope) => ({ id: envelope.id, ok: { did: envelope.request.do }, now: { at_ms: 1000, offset_min: 120 } }) };
  const storage = { getItem: (key) => kept[key] ?? null, setItem: (key, value) => { kept[key] = value; } };
  const store = createStore({
    ask: async (envelope) => { at.seen.push(envelope); if (at.silent) throw new Error("silent"); return at.answer(envelope); },
    storage, monotonic: () => at.ms, wall: () => at.wall, newId: () => `id-${(at.ids += 1)}`, facts: () => ({ person: "ekdal" }), later: (ms, run) => at.timers.push({ ms, run }),
  });
  return { at, store, kept };
}

const settle = () => new Promise((done) => setImmediate(done));

test("a report that got no answer is sent again with the same id, later and later", async () => {
  const { at, store } = world();
  at.silent = true;
  const answered = store.send({ do: "joined" });
  for (let i = 0; i < 5; i += 1) { await settle(); at.timers.shift()?.run?.(); }
  await settle();
  assert.equal(store.state.unreachable, true);
  assert.equal(new Set(at.seen.map(({ id }) => id)).size, 1);
  assert.ok(at.seen.length >= 5);
  at.silent = false;
  at.timers.shift().run();
  assert.deepEqual((await answered).ok, { did: "joined" });
  assert.equal(store.state.unreachable, false);
  assert.deepEqual(store.state.outbox, []);
});

test("a report says how long it waited, however long the core was silent and however often the program was started", async () => {
  const { at, store, kept } = world();
  at.silent = true;
  store.send({ do: "joined" });
  await settle();
  assert.equal(at.seen[0].waited_ms, 0);
  const again = world({ kept });
  again.at.wall = 1_090_000;
  again.store.flush();
  await settle();
  assert.equal(again.at.seen[0].waited_ms, 90_000);
  assert.equal("tapped_ms" in again.at.seen[0], false);
});

test("a wall clock that was set back makes no negative wait", async () => {
  const { at, store, kept } = world();
  at.silent = true;
  store.send({ do: "joined" });
  await settle();
  const again = world({ kept });
  again.at.wall = 0;
  again.store.flush();
  await settle();
  assert.equal(again.at.seen[0].waited_ms, 0);
});

test("what is typed for one repair is not seen in another, and is forgotten alone", () => {
  const { store } = world();
  store.go({ name: "repair", params: { id: "a" } });
  store.type("reading", "bar", "1.2");
  store.go({ name: "repair", params: { id: "b" } });
  assert.deepEqual([store.drafts(), store.draft("reading")], [{}, {}]);
  store.type("reading", "bar", "1.3");
  store.forget("reading", "a");
  assert.deepEqual(store.draft("reading"), { bar: "1.3" });
  store.go({ name: "repair", params: { id: "a" } });
  assert.deepEqual(store.drafts(), {});
});

test("the waits grow and then stay", async () => {
  const { at, store } = world();
  at.silent = true;
  store.send({ do: "joined" });
  const waits = [];
  for (let i = 0; i < 6; i += 1) { await settle(); const { ms, run } = at.timers.shift(); waits.push(ms); run(); }
  assert.deepEqual(waits, [500, 1000, 2000, 5000, 5000, 5000]);
});

test("a report outlives the program: it is kept before it is sent, and sent at the next start", async () => {
  const { at, store, kept } = world();
  at.silent = true;
  store.send({ do: "joined" });
  assert.match(kept["mendline.outbox"], /"do":"joined"/);
  await settle();
  const again = world({ kept });
  again.store.flush();
  await settle();
  assert.equal(again.at.seen[0].id, at.seen[0].id);
  assert.equal(kept["mendline.outbox"], "[]");
});

test("taps keep their order, each gets its own answer", async () => {
  const { at, store } = world();
  at.silent = true;
  const both = Promise.all([store.send({ do: "joined" }), store.send({ do: "on_target" })]);
  await settle();
  at.silent = false;
  at.timers.shift().run();
  assert.deepEqual((await both).map(({ ok }) => ok.did), ["joined", "on_target"]);
});

test("an impatient second tap on the same thing is one report", async () => {
  const { at, store } = world();
  at.silent = true;
  const [first, second] = [store.send({ do: "joined" }), store.send({ do: "joined" })];
  assert.equal(first, second);
  await settle();
  assert.equal(store.state.outbox.length, 1);
});

test("a refusal is an answer: it is not sent again, and it stays in sight while the screen is drawn anew", async () => {
  const { at, store } = world();
  at.answer = ({ id, request }) => (request.do === "release" ? { id, refusal: { code: "too_early" } } : { id, ok: {} });
  await store.send({ do: "release" });
  assert.deepEqual(store.state.outbox, []);
  await store.look({ do: "today" });
  assert.deepEqual(store.state.refusal, { code: "too_early" });
  store.fault([]);
  assert.equal(store.state.refusal, null);
});

test("a slow answer to an older question does not replace a newer screen", async () => {
  const { at, store } = world();
  const answers = [];
  at.answer = () => new Promise((answer) => answers.push(answer));
  const old = store.look({ do: "today" });
  const fresh = store.look({ do: "repair" });
  await settle();
  answers[1]({ ok: { name: "fresh" } });
  answers[0]({ ok: { name: "old" } });
  await Promise.all([old, fresh]);
  assert.deepEqual(store.state.answer, { name: "fresh" });
});

test("the core's moment runs on by the monotonic clock", async () => {
  const { at, store } = world();
  assert.equal(store.now(), null);
  at.ms = 50;
  await store.look({ do: "today" });
  at.ms = 1550;
  assert.deepEqual(store.now(), { at_ms: 2500, offset_min: 120 });
});

test("a slow answer does not turn the clock back, and a device that slept is put right", async () => {
  const { at, store } = world();
  const answered = async (sent, atMs, received) => {
    at.ms = sent;
    at.answer = () => { at.ms = received; return { ok: {}, now: { at_ms: atMs, offset_min: 0 } }; };
    await store.look({ do: "today" });
    return store.now().at_ms;
  };
  assert.equal(await answered(0, 100_000, 4_000), 104_000);      // the first answer counts from the question: no second too many
  assert.equal(await answered(10_000, 112_000, 15_000), 115_000);  // it fits to what ran before
  assert.equal(await answered(20_000, 500_000, 20_100), 500_100);  // the device slept
  assert.equal(await answered(30_000, 505_000, 30_100), 505_100);  // the core's clock was set back
});

test("what was typed survives a new screen and a new start, until it was sent", () => {
  const { store, kept } = world();
  store.type("reading", "bar", "1.2");
  store.go({ name: "today" });
  assert.deepEqual(store.draft("reading"), { bar: "1.2" });
  assert.deepEqual(world({ kept }).store.draft("reading"), { bar: "1.2" });
  store.forget("reading");
  assert.deepEqual(world({ kept }).store.draft("reading"), {});
});

test("a storage that holds rubbish does not stop the start", () => {
  assert.deepEqual(world({ kept: { "mendline.outbox": "{", "mendline.drafts": "null" } }).store.state.outbox, []);
});

test("a question that writes nothing is neither kept nor asked again", async () => {
  const { at, store, kept } = world();
  assert.deepEqual((await store.ask({ do: "check_record" })).ok, { did: "check_record" });
  assert.equal(kept["mendline.outbox"], undefined);
  at.silent = true;
  assert.equal(await store.ask({ do: "check_record" }), undefined);
  assert.equal(store.state.unreachable, true);
  assert.deepEqual([store.state.outbox, at.timers], [[], []]);
});

test("a photo larger than the storage goes out all the same, and the reports beside it are kept", async () => {
  const { at, kept } = world();
  const full = createStore({
    ask: async (envelope) => { at.seen.push(envelope); throw new Error("silent"); },
    storage: { getItem: () => null, setItem: (key, value) => { if (value.length > 50_000) throw new Error("QuotaExceededError"); kept[key] = value; } },
    monotonic: () => 0, wall: () => 0, newId: () => `id-${(at.ids += 1)}`, facts: () => ({}), later: (ms, run) => at.timers.push({ ms, run }),
  });
  full.send({ do: "tell", command: "joined" });
  full.send({ do: "keep_photo", bytes: "x".repeat(60_000) });
  await settle();
  assert.deepEqual(JSON.parse(kept["mendline.outbox"]).map(({ request }) => request.do), ["tell"]);
  assert.deepEqual(full.state.outbox.map(({ request }) => request.do), ["tell", "keep_photo"]);
});
