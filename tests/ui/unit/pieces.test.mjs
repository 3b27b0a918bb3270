import test from "node:test";
import assert from "node:assert/strict";
import { base64, bring, pieces } from "../../../ui/device/pieces.js";

const soon = () => Promise.resolve();

/** A core that keeps what is brought, and is silent for the first `silent` questions. */
function core(silent = 0, kept = []) {
  const asked = [];
  return { asked, kept, ask: async (request) => {
    asked.push(request);
    if (asked.length <= silent) return undefined;
    const bytes = [...Buffer.from(request.bytes, "base64")];
    if (request.from <= kept.length) bytes.forEach((byte, n) => { kept[request.from + n] = byte; });
    return { ok: { here: kept.length, of: request.of } };
  } };
}

const fileOf = (bytes) => ({ name: "a", size: bytes.length, slice: (from, to) => new Blob([bytes.slice(from, to)]) });
const BYTES = Uint8Array.from({ length: 200_000 }, (_, n) => n % 251);

test("a file is brought whole, and a silent core is asked again", async () => {
  const { ask, kept } = core(2);
  const seen = [];
  assert.equal(await bring(ask, fileOf(BYTES), (done) => seen.push(done), soon), true);
  assert.deepEqual(Uint8Array.from(kept), BYTES);
  assert.deepEqual(seen, [4_096, 200_000]);
});

test("what is there already is not sent again", async () => {
  const { ask, asked } = core(0, [...BYTES.slice(0, 150_000)]);
  assert.equal(await bring(ask, fileOf(BYTES), () => {}, soon), true);
  assert.deepEqual(asked.map(({ from }) => from), [0, 150_000]);
});

test("a core that stays silent, refuses or does not move ends it", async () => {
  assert.equal(await bring(core(100).ask, fileOf(BYTES), () => {}, soon), false);
  assert.equal(await bring(async () => ({ error: {} }), fileOf(BYTES), () => {}, soon), false);
  assert.equal(await bring(async ({ of }) => ({ ok: { here: 0, of } }), fileOf(BYTES), () => {}, soon), false);
});

test("a made file comes piece by piece", async () => {
  const ask = async ({ from }) => ({ ok: { from, of: BYTES.length, bytes: base64(BYTES.slice(from, from + 90_000)) } });
  const parts = [];
  for await (const part of pieces(ask, { name: "a", bytes: BYTES.length }, () => {}, soon)) parts.push(...part);
  assert.deepEqual(Uint8Array.from(parts), BYTES);
  await assert.rejects(async () => { for await (const _ of pieces(async () => ({ ok: { bytes: "" } }), { name: "a", bytes: 3 }, () => {}, soon)); });
});
