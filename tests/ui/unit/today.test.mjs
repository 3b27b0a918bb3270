// The first screen of a folder in which nothing can be recorded.

import assert from "node:assert/strict";
import { test } from "node:test";

import "../words.mjs";
import { render } from "../../../ui/screens/today.js";

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
