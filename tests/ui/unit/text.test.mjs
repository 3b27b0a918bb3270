import test from "node:test";
import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { known, say } from "../../../ui/text/say.js";
import { en } from "../../../ui/text/en.js";

const UI = new URL("../../../ui/", import.meta.url);
const sources = readdirSync(UI, { recursive: true }).filter((name) => name.endsWith(".js")).map((name) => [name, readFileSync(new URL(name, UI), "utf8")]);

test("every code that a screen says has its sentence", () => {
  const missing = sources.flatMap(([name, text]) => [...text.matchAll(/\b(?:say\(|_says: )"([\w.]+)"/g)].filter(([, code]) => !known(code)).map(([, code]) => `${name}: ${code}`));
  assert.deepEqual(missing, []);
});

test("a code made of two parts has a sentence for each of its values", () => {
  const open = new Set(sources.flatMap(([, text]) => [...text.matchAll(/\bsay\(`([\w.]+)\$\{/g)].map(([, prefix]) => prefix)));
  for (const prefix of open) assert.ok(Object.keys(en.sentences).some((code) => code.startsWith(prefix)), `nothing begins with ${prefix}`);
});

test("values go into their places, and what is missing stays to be seen", () => {
  assert.equal(say("lost.text", { path: "/x" }), "No screen stands behind /x.");
  assert.equal(say("lost.text"), "No screen stands behind {path}.");
  assert.equal(say("no.such.code"), "no.such.code");
});

test("one and many have their own forms", () => {
  assert.match(say("waiting", { n: 1 }), /^1 report waits/);
  assert.match(say("waiting", { n: 2 }), /^2 reports wait/);
});

test("screens hold no style and no script in their markup", () => {
  for (const [name, text] of sources) assert.doesNotMatch(text, /html`[^`]*<[^>]*\s(?:style|on[a-z]+)=/, name);
});
