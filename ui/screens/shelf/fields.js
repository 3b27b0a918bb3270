// A document as fields, from its own shape: the end of a name is its unit, a source stands beside its value.

import { html } from "../../html.js";
import { number } from "../../format.js";
import { entry } from "../../parts/entry.js";
import { field, picks } from "../../parts/field.js";
import { yesNo } from "../../parts/pair.js";
import { known, say } from "../../text/say.js";

const UNITS = {
  um: { unit: "mm", per: 1_000, digits: 1, step: 1 }, pa: { unit: "bar", per: 100_000, digits: 2, step: 0.01 }, mc: { unit: "°C", per: 1_000, digits: 1, step: 0.5 },
  mg: { unit: "g", per: 1_000, digits: 0, step: 1 }, ms: { unit: "min", per: 60_000, digits: 2, step: 0.5 }, pct: { unit: "%", per: 1, digits: 0, step: 1 },
  permille: { unit: "‰", per: 1, digits: 0, step: 1 }, ppm: { unit: "ppm", per: 1, digits: 0, step: 1 }, months: { unit: "months", per: 1, digits: 0, step: 1 },
};
const PLAIN = { unit: "", per: 1, digits: 0, step: 1 };

const CHOICES = {
  paper: ["a4", "letter"], gap_rule: ["whole", "excess"], doubtful: ["foreman_decides", "new_attempt"], counts_from: ["joined", "target_pressure"], cure_counts_from: ["joined", "target_pressure"],
  role: ["technician", "foreman", "reader"], stage: ["staging", "test_push", "sleeve_change", "wet_out", "placement", "inflation", "hold", "deflation", "verification"],
};

/** Returns all fields of a document; `typed` is what was changed and not yet sent. */
export const sheetFields = (sheet, typed) => fieldsAt(sheet, "document.sheet", typed, "");

const fieldsAt = (value, path, typed, key) => Object.entries(value).map(([name, inner]) => one(inner, `${path}.${name}`, typed, Array.isArray(value) ? key : name, Number.isNaN(Number(name)) ? undefined : Number(name)));

function one(value, path, typed, key, place) {
  if (value === null || (key === "kind" && place === undefined)) return "";
  if (Array.isArray(value)) return html`<fieldset class="sheet-list"><legend>${label(key)}</legend>${fieldsAt(value, path, typed, key)}</fieldset>`;
  if (typeof value === "object" && "value" in value && "source" in value && typeof value.value !== "object") {
    return html`<div class="sourced">${leaf(value.value, `${path}.value`, typed, key)}${leaf(value.source, `${path}.source`, typed, "source")}</div>`;
  }
  if (typeof value === "object") return html`<fieldset class="sheet-part"><legend>${place === undefined ? label(key) : say("shelf.row", { n: place + 1 })}</legend>${fieldsAt(value, path, typed, key)}</fieldset>`;
  return leaf(value, path, typed, key, place);
}

function leaf(value, path, typed, key, place) {
  const id = path.replaceAll(".", "-");
  const words = place === undefined ? label(key) : `${label(key)} ${place + 1}`;
  if (typeof value === "boolean") return html`<p class="entry-label">${words}</p>${yesNo({ legend: words, name: path, picked: typed[path] ?? (value ? "yes" : "no"), quiet: true })}`;
  if (CHOICES[key]) return picks({ id, name: path, label: words, value: typed[path] ?? value, options: CHOICES[key].map((choice) => ({ value: choice, label: label(choice) })) });
  if (typeof value === "number") {
    const { unit, per, digits, step } = UNITS[key.split("_").at(-1)] ?? PLAIN;
    return entry({ id, name: path, label: words, unit, digits, steps: per, step, value: typed[path] ?? number(value / per, digits).replace("\u2212", "-") });
  }
  return field({ id, name: path, label: words, value: typed[path] ?? value });
}

// A name that has a sentence is said with it; another is its own words without the unit.
const label = (key) => (known(`sheet.${key}`) ? say(`sheet.${key}`) : capital(key.replace(/_(um|pa|mc|mg|ms|pct|permille|ppm)$/, "").replaceAll("_", " ")));
const capital = (text) => text.charAt(0).toUpperCase() + text.slice(1);
