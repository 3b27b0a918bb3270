// Original photos go to the core one after the other; what it says last is shown.

import test from "node:test";
import assert from "node:assert/strict";
import "../words.mjs";
import { sound } from "./kit.mjs";
import { compare } from "../../../ui/device/originals.js";
import { originals } from "../../../ui/screens/check/originals.js";

const soon = () => Promise.resolve();
const fileOf = (name, size) => ({ name, size, slice: (from, to) => new Blob([new Uint8Array(to - from)]) });

/** A core that takes pieces in and refuses photos called `refused`. */
function core() {
  const asked = [];
  const here = new Map();
  return { asked, ask: async (request) => {
    asked.push(request);
    if (request.do === "check_original") return request.name === "refused" ? { error: {} } : { ok: { seen: request.name, head: request.head } };
    here.set(request.name, Math.max(here.get(request.name) ?? 0, request.from + Buffer.from(request.bytes, "base64").length));
    return { ok: { here: here.get(request.name), of: request.of } };
  } };
}

test("each photo is brought whole before it is looked at, and the way is counted over all", async () => {
  const { ask, asked } = core();
  const way = [];
  const found = await compare(ask, "h1", [fileOf("a", 5_000), fileOf("b", 10)], (done, of) => way.push([done, of]), soon);
  assert.deepEqual(found, { seen: "b", head: "h1" });
  assert.deepEqual(asked.map((request) => request.do), ["bring", "bring", "check_original", "bring", "check_original"]);
  assert.deepEqual(way, [[4_096, 5_010], [5_000, 5_010], [5_010, 5_010]]);
});

test("a core that refuses a photo ends it", async () => {
  const { ask, asked } = core();
  assert.equal(await compare(ask, "h1", [fileOf("refused", 1), fileOf("b", 1)], () => {}, soon), undefined);
  assert.equal(asked.length, 2);
});

const photo = (state, more = {}) => ({ sha256: "0", title: `Edge ${state}`, state, files: [], taken: null, place: null, ...more });

test("what was found, changed, missing and not named is told apart by words", () => {
  const found = { photos: [photo("found", { files: ["a.jpg"], taken: { agrees: false, says: "taken late" } }), photo("missing"), photo("changed")], others: ["cat.jpg"], unreadable: ["big.jpg: too large"] };
  const text = sound(originals({ told: { originals: 3 }, head: "h1", originals: found }));
  for (const says of ["there, byte for byte", "taken late (ask why)", "not among the files that were brought", "Of 3 photos 1 are there byte for byte, 1 changed, 1 not brought yet", "changed: the file bears", "not named in the record", "could not be read"]) assert.match(text, new RegExp(says.replace(/[()]/g, "\\$&")));
});

test("before any photo is chosen it says how many there are; a record without photos asks for none", () => {
  assert.match(sound(originals({ told: { originals: 3 }, head: "h1" })), /names 3 photos/);
  assert.equal(originals({ told: { originals: 0 }, head: "h1" }), "");
  assert.equal(originals({ told: null, head: "" }), "");
});
