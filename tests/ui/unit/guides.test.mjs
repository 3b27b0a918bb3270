// What a guide tells a person to tap stands on a screen, word for word.

import assert from "node:assert/strict";
import { test } from "node:test";
import { GUIDES, sectionsOf } from "../guides.mjs";
import { ENGLISH } from "../words.mjs";

const whole = (pattern) => {
  if (typeof pattern === "string") return pattern;
  if (Array.isArray(pattern)) return pattern.map(whole).join("");
  return pattern.value ?? whole(pattern.other);
};
const said = new Set(Object.values(ENGLISH.messages).map((pattern) => whole(pattern).replace(/[.?]$/, "")));

for (const name of GUIDES) {
  test(`every label that ${name} names stands in the catalogue`, () => {
    const labels = sectionsOf(name).flatMap((section) => section.labels);
    assert.ok(labels.length > 0);
    assert.deepEqual(labels.filter((label) => !said.has(label)), []);
  });
}
