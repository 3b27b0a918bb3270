// What the hold says of a leak: the core's verdict in words and a mark, never a figure that nobody computed.

import assert from "node:assert/strict";
import { test } from "node:test";
import "../words.mjs";
import { leak } from "../../../ui/screens/repair/leak.js";
import { sound, words } from "./kit.mjs";

const T = Date.UTC(2026, 9, 14, 9, 0);
const view = (of) => ({
  now: { at_ms: T, offset_min: 120 }, repair: { id: "r" },
  hold: { released_ms: null, earliest_release_ms: T + 30 * 60_000, leak: { verdict: "steady", readings: 5, missing: 0, since_ms: T - 40 * 60_000, per_hour_pa: 500, low_pa: -700, high_pa: 1_700, limit_ms: null, ...of } },
});
const said = (of) => words(sound(leak(view(of))));

test("without the air outside it says so, asks for it, and shows no figure", () => {
  const text = sound(leak(view({ verdict: "outside_missing", per_hour_pa: null, low_pa: null, high_pa: null })));
  assert.match(words(text), /Not known yet.*can’t be told from a leak.*Enter the air outside/);
  assert.match(text, /href="#\/repair\/r\/reading"/);
  assert.doesNotMatch(text, /class="reading"/);
});

test("too few readings say how many more", () => assert.match(said({ verdict: "too_few_readings", readings: 3, missing: 2, per_hour_pa: null }), /Too few readings.*2 more/));

test("a steady packer and one that only cools are told apart", () => {
  assert.match(said({}), /Met: No leak to be seen.*0\.005 bar between −0\.007 and 0\.017.bar, 95 %/);
  assert.match(said({ verdict: "cooling_only" }), /Met: Only cooling/);
});

test("a leak says how long the pressure lasts, and whether that is before the release", () => {
  assert.match(said({ verdict: "leaking", per_hour_pa: 12_000, limit_ms: T + 20 * 60_000 }), /Failed: The packer leaks.*0\.120 bar.*20:00 about 11:20, if it goes on/);
  assert.match(said({ verdict: "leaking", limit_ms: T + 50 * 60_000 }), /50:00 about 11:50, after the earliest release/);
  assert.match(said({ verdict: "leaking", limit_ms: T - 1 }), /now/);
});
