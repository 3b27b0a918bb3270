// The first screen: of a folder in which nothing can be recorded, of an empty one, and of a cure that ends tomorrow.

import assert from "node:assert/strict";
import { test } from "node:test";

import "../words.mjs";
import { render } from "../../../ui/screens/today.js";
import { cureCard } from "../../../ui/screens/repair/verification/found.js";

const EMPTY = { mixed: [], holding: [], curing: [], next: [], review: [], underway: [], taken: [], done: [], damaged: [], owner: "Town of Quillmere", crew: "", who: "Ines Varga" };

test("the first screen says why nothing can be recorded, and is silent where it can", () => {
  const closed = "The journal can only be read here. <b>";
  const shown = String(render({ ...EMPTY, closed }));
  assert.ok(shown.includes("Nothing can be recorded here") && shown.includes("only be read here. &lt;b&gt;"), shown);
  assert.ok(!String(render(EMPTY)).includes("Nothing can be recorded here"));
});

test("an empty first screen leads to a new repair once", () => {
  const ways = (view) => String(render(view)).split('href="#/intake"').length - 1;
  assert.equal(ways(EMPTY), 1);
  const one = { repair: "r", number: "R-01", upstream: "MH 031", downstream: "MH 032", street: "Kettle Row", dn_um: 200_000, status: "planned" };
  assert.equal(ways({ ...EMPTY, next: [one] }), 1);
});

test("a full cure that ends tomorrow says so, on the first screen and in the verification", () => {
  const now = { at_ms: Date.UTC(2026, 9, 14, 20), offset_min: 120 };
  const cure = { from_ms: now.at_ms, until_ms: now.at_ms + 4 * 3600e3, reached: false };
  const soon = { ...cure, until_ms: now.at_ms + 3600e3 };
  const summary = { repair: "r", node: "MH 031", street: "Kettle Row", number: "R-03" };
  const repair = { plan: { resin: { counts_from: { value: "joined" } } } };
  const first = (of) => String(render({ ...EMPTY, now, curing: [{ summary, cure: of }] }));
  const card = (of) => String(cureCard({ now, repair, cure: of }));
  for (const shown of [first, card]) {
    assert.match(shown(cure), /02:00.*Thu\u00a015\u00a0Oct/);
    assert.match(shown(soon), /23:00/);
    assert.doesNotMatch(shown(soon), /Thu/);
  }
});
