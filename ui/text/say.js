// Every sentence by its code. Screens hold no words of their own.

import { en } from "./en.js";

const catalogue = en;
const rules = new Intl.PluralRules(catalogue.language);

/** Returns the sentence of `code` with `values` in it. An unknown code is shown as it is, so that nothing is hidden. */
export function say(code, values = {}) {
  const sentence = catalogue.sentences[code];
  if (sentence === undefined) return code;
  return typeof sentence === "function" ? sentence(values, plural) : sentence.replace(/\{(\w+)\}/g, (whole, name) => values[name] ?? whole);
}

/** Returns the form for `n`: `plural(n, { one: "1 photo", other: `${n} photos` })`. */
const plural = (n, forms) => forms[rules.select(n)] ?? forms.other;

/** Says whether the catalogue has `code`. */
export const known = (code) => code in catalogue.sentences;
