import test from "node:test";
import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { ENGLISH, speakIn, wordsOf } from "../words.mjs";
import { known, LANGUAGES, nearest, say, within } from "../../../ui/text/say.js";
import { SILENT } from "../../../ui/text/silent.js";
import { together } from "../../../ui/text/together.js";

const UI = new URL("../../../ui/", import.meta.url);
const sources = readdirSync(UI, { recursive: true }).filter((name) => name.endsWith(".js")).map((name) => [name, readFileSync(new URL(name, UI), "utf8")]);
const all = sources.map(([, text]) => text).join("\n");
const ids = Object.keys(ENGLISH.messages);

test("every code that a screen says has its sentence", () => {
  const missing = sources.flatMap(([name, text]) => [...text.matchAll(/\b(?:say\(|_says: )"([\w.]+)"/g)].filter(([, code]) => !known(code)).map(([, code]) => `${name}: ${code}`));
  assert.deepEqual(missing, []);
});

test("a code made of two parts has a sentence for each of its values", () => {
  const open = new Set(sources.flatMap(([, text]) => [...text.matchAll(/\bsay\(`([\w.]+)\$\{/g)].map(([, prefix]) => prefix.replaceAll(".", "-"))));
  for (const prefix of open) assert.ok(ids.some((id) => id.startsWith(prefix)), `nothing begins with ${prefix}`);
});

test("no sentence stands in the catalogue that no screen says", () => {
  const quoted = new Set([...all.matchAll(/["`']([a-z][\w.]*)["`']/g)].map(([, code]) => code.replaceAll(".", "-")));
  const begun = [...all.matchAll(/`([a-z][\w.]*)\$\{/g)].map(([, prefix]) => prefix.replaceAll(".", "-")).filter((prefix) => prefix.length > 2);
  const ended = [...all.matchAll(/`\$\{\w+\}\.(\w+)`/g)].map(([, suffix]) => `-${suffix}`);
  const unused = ids.filter((id) => !quoted.has(id) && !begun.some((prefix) => id.startsWith(prefix)) && !ended.some((suffix) => id.endsWith(suffix)));
  assert.deepEqual(unused, []);
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

test("what is said before the core answers is what the catalogue says", () => {
  for (const [id, text] of Object.entries(SILENT)) assert.equal(ENGLISH.messages[id], text, id);
});

test("the language nearest to the device's is spoken, and English where none is", () => {
  assert.equal(nearest(["sv-SE", "de-AT", "en"]), "de");
  assert.equal(nearest(["sv-SE"]), "en");
});

test("within a sentence a first letter becomes small, save in German", () => {
  assert.equal(within("Foreman"), "foreman");
  speakIn("de");
  assert.equal(within("Polier"), "Polier");
  speakIn("en");
});

test("a line never ends between a figure and its unit, nor within a range", () => {
  const said = (text, language) => together(text, language).replaceAll("\u00a0", "_").replaceAll("\u2060", "+");
  assert.equal(said("1.3 bar at 15 °C, 94 % left: 6 min 17 s", "en"), "1.3_bar at 15_°C, 94_% left: 6_min 17_s");
  assert.equal(said("8 to 24 °C in DN 200", "en"), "8 to 24_°C in DN_200");
  assert.equal(said("stages 8–10, 10:05 – 10:20, N-14 – N-15", "en"), "stages 8–+10, 10:05_–_10:20, N-14 – N-15");
  assert.equal(said("8–10", "en"), "8–+10");
  assert.equal(said("4 minutes, 3 m.", "en"), "4 minutes, 3_m.");
  assert.equal(said("« 5 mètres » ? Oui : 3 m", "fr"), "«_5 mètres_»_? Oui_: 3_m");
});

test("every language answers with its own words", () => {
  for (const language of Object.keys(LANGUAGES)) assert.equal(wordsOf(language).language, language);
});

test("screens hold no style and no script in their markup", () => {
  for (const [name, text] of sources) assert.doesNotMatch(text, /html`[^`]*<[^>]*\s(?:style|on[a-z]+)=/, name);
});
