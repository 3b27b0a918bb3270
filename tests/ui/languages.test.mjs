// Somebody who reads German, Spanish or French meets no English on any screen.

import assert from "node:assert/strict";
import { test } from "node:test";
import { goTo, onCore } from "./served.mjs";
import { shots } from "./shots.mjs";
import { wordsOf } from "./words.mjs";

const LANGUAGES = ["de", "es", "fr"];

/** Words of English that are none of German, Spanish or French. */
const TELLING = ["the", "and", "is", "are", "were", "of", "with", "not", "before", "after", "from", "this", "that", "have", "be", "been", "by", "for", "which", "what", "when", "where", "there", "it", "its", "to", "than", "only", "every", "between", "above", "below", "behind", "without", "until"];

/** What stays as it is, each with its reason. */
const OWN = [
  "\\(invented\\)", "^ASTM F1216, ", "^straight line by least squares", // Names of documents, and sources as they were entered.
  "29 CFR 1910\\.146", "named by contract QM-2026-31",
  "Town of Quillmere, Sewers and Drains", // The owner's name.
  "Looked at on the street\\.", "rain from the west", "^The hose burst\\.$", "Through the joint$", // What people typed.
  "^buckling t = |^p' = ", // Formulas, as the checks name them.
  "^[A-Z][a-z]+ (gauge|counter|tape) [A-Z]-\\d+, |^(Scale|Thermometer) [A-Z]-\\d+, ", // Names of instruments.
];

const served = onCore();

/** Every text, name and placeholder of the page, with no more than one space between words. */
const said = () => {
  const found = new Set();
  const add = (text) => { const short = (text ?? "").replace(/\s+/g, " ").trim(); if (short) found.add(short); };
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  while (walker.nextNode()) if (!walker.currentNode.parentElement.closest("noscript, script")) add(walker.currentNode.textContent);
  for (const one of document.querySelectorAll("[aria-label], [placeholder], [title]")) ["aria-label", "placeholder", "title"].forEach((name) => add(one.getAttribute(name)));
  return [...found];
};

const plain = (text) => text.replace(/\s+/g, " ").trim();

/** Returns the messages that are one text in English and another in `language`. */
function english(language) {
  const [own, other] = ["en", language].map((tag) => wordsOf(tag).messages);
  const texts = Object.entries(own).filter(([id, text]) => typeof text === "string" && typeof other[id] === "string" && text !== other[id]);
  const spoken = new Set(Object.values(other).filter((text) => typeof text === "string").map(plain));
  return new Set(texts.map(([, text]) => plain(text)).filter((text) => !spoken.has(text)));
}

const TELLS = new RegExp(`(?<![\\p{L}\\d.-])(${TELLING.join("|")})(?![\\p{L}\\d-])`, "iu");
const KEPT = new RegExp(OWN.join("|"), "u");

/** Says whether a text is English. A name in braces stands for a value. */
const foreign = (text, sayings) => !KEPT.test(text) && (sayings.has(text) || TELLS.test(text.replace(/\{\w+\}/g, "")));

test("no English on any screen for a reader of another language", { timeout: 900_000 }, async () => {
  const readers = [];
  for (const language of LANGUAGES) {
    const opened = await served.open({ width: 1280, height: 800 }, { person: "varga" });
    await opened.page.evaluate((tag) => localStorage.setItem("mendline.language.varga", tag), language);
    await opened.page.reload();
    await opened.page.locator(`html[lang=${language}] h1`).waitFor();
    readers.push({ language, sayings: english(language), ...opened });
  }
  const found = [];
  for await (const { name, hash } of shots(served.api)) {
    await Promise.all(readers.map(async ({ language, sayings, page }) => {
      // The same screen anew: what the core says may have changed.
      await page.evaluate(() => { location.hash = "#/lost"; });
      await goTo(page, hash);
      const texts = await page.evaluate(said);
      found.push(...texts.filter((text) => foreign(text, sayings)).map((text) => `${language}, ${name}: ${text.slice(0, 200)}`));
    }));
  }
  for (const { close } of readers) await close();
  assert.deepEqual(found, []);
});
