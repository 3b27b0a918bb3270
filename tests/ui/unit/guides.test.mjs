// What a guide tells a person to tap stands on a screen, word for word. Labels stand in the guides *so*.

import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { test } from "node:test";
import { ENGLISH } from "../words.mjs";

const FOLDER = new URL("../../../docs/guides/", import.meta.url);

const whole = (pattern) => {
  if (typeof pattern === "string") return pattern;
  if (Array.isArray(pattern)) return pattern.map(whole).join("");
  return pattern.value ?? whole(pattern.other);
};
const said = new Set(Object.values(ENGLISH.messages).map((pattern) => whole(pattern).replace(/[.?]$/, "")));

for (const name of readdirSync(FOLDER).filter((file) => file.endsWith(".md"))) {
  const text = readFileSync(new URL(name, FOLDER), "utf8").replace(/\n\s*/g, " ");
  // Bold words are titles of their own, unless they lead somewhere.
  const bold = [...text.matchAll(/\*\*(.+?)\*\*/g)].map(([, words]) => words).filter((words) => words.includes("→"));
  const italic = [...text.replace(/\*\*.+?\*\*/g, "").matchAll(/\*(.+?)\*/g)].map(([, words]) => words);
  const labels = [...bold, ...italic].flatMap((words) => words.split("→")).map((words) => words.trim().replace(/[.?]$/, ""));

  test(`every label that ${name} names stands in the catalogue`, () => {
    assert.ok(labels.length > 0);
    assert.deepEqual(labels.filter((label) => !said.has(label)), []);
  });
}
