// What the plan's documents say beside a field, and outside of which values a slip of the unit is asked about.

import test from "node:test";
import assert from "node:assert/strict";
import "../words.mjs";
import { asksOf } from "../../../ui/screens/repair/asks.js";
import { useUnits } from "../../../ui/format.js";

const view = { repair: { attempts: [], plan: { choice: { temperatures: { resin_mc: 18_000 }, diameter_least_um: 196_500 }, packer: { test_pressure_pa: { value: 50_000 }, test_ms: { value: 300_000 } }, patch: { bare_end_least_um: { value: 100_000 } } } } };
const shape = { unit: "bar", per: 100_000, decimals: 2 };
const asked = (kind, key, of = shape) => asksOf(view, kind, { key, shape: of });

// Common practice, no source: a test pressure lies below half a bar, a pipe beside a manhole between frost and a hot day.
test("a number is likely within a third and twice of what the documents ask", () => {
  assert.deepEqual(asked("packer_test", "gauge_pa").likely, [15_000, 100_000]);
  assert.deepEqual(asked("temperatures", "resin_mc").likely, [-20_000, 45_000]);
  assert.deepEqual(asked("bare_ends", "front_um").likely, [30_000, 500_000]);
  assert.equal(asked("packer_test", "held_ms").likely, undefined);
});

test("what the documents ask is said in the person's units", () => {
  useUnits("us");
  try { assert.match(asked("packer_test", "gauge_pa").aside, /7\.3\u00a0psi/); } finally { useUnits("si"); }
});
