// Every sentence by its code. Screens hold no words of their own; the core holds the catalogue.

import { SILENT } from "./silent.js";

/** The languages of the catalogue, each by its own name. */
export const LANGUAGES = { en: "English", de: "Deutsch", es: "Español", fr: "Français" };

let spoken = { language: "en", messages: SILENT };
// Made when a number is said for the first time.
let rules = null;

/** Speaks from now on as the core's answer to `words` says: { language, messages }. */
export function speak(words) {
  spoken = words;
  rules = null;
}

/** Returns the language that is spoken. */
export const language = () => spoken.language;

/** Returns the language of the catalogue that is nearest to what a device asks for: `de-AT` is `de`; English where none is. */
export const nearest = (tags) => tags.map((tag) => tag.slice(0, 2)).find((tag) => tag in LANGUAGES) ?? "en";

const message = (code) => spoken.messages[code.replaceAll(".", "-")];

/** Returns the sentence of `code` with `values` in it. An unknown code is shown as it is, so that nothing is hidden. */
export function say(code, values = {}) {
  const found = message(code);
  return found === undefined ? code : put(found, values);
}

/** Says whether the catalogue has `code`. */
export const known = (code) => message(code) !== undefined;

// A number picks its own form before the form of its plural category.
function put(pattern, values) {
  if (typeof pattern === "string") return pattern;
  if (Array.isArray(pattern)) return pattern.map((part) => put(part, values)).join("");
  if ("value" in pattern) return values[pattern.value] ?? `{${pattern.value}}`;
  const by = values[pattern.by];
  rules ??= new Intl.PluralRules(spoken.language);
  return put(pattern.forms[by] ?? pattern.forms[typeof by === "number" ? rules.select(by) : ""] ?? pattern.other, values);
}

/** Returns a text as it stands within a sentence: with a small first letter, save in German, where a noun keeps its own. */
export const within = (text) => (spoken.language === "de" ? text : text.charAt(0).toLowerCase() + text.slice(1));
