// The fields of a calculation, drawn by what the core says of each: numbers with their units, words, rows, places.

import { LIKELY_CELSIUS, UNITS, bare, likely } from "../../format.js";
import { attr, html } from "../../html.js";
import { field, lines, picks } from "../../parts/field.js";
import { yesNo } from "../../parts/pair.js";
import { say } from "../../text/say.js";
import { formOf } from "./asks.js";

/** Returns the fields, filled with what was typed or else with what the repair knows. */
export function fields(view, one) {
  const typed = view.drafts?.[formOf(view.repair, one.name)] ?? {};
  const known = view.known[one.name] ?? {};
  const fully = (typed["input.condition"] ?? known.condition) === "fully_deteriorated";
  return one.fields.filter(({ needed }) => needed !== "for fully_deteriorated" || fully).map((each) => drawn(each, typed, known));
}

function drawn(each, typed, known) {
  const name = `input.${each.name}`;
  const id = `w-${each.name}`;
  const label = say(`worked.field.${each.name}`);
  switch (each.kind) {
    case "number": return number({ ...each, id, name, label, typed: typed[name], known: known[each.name] });
    case "words": return picks({ id, name, label, value: typed[name] ?? known[each.name] ?? "", options: [{ value: "", label: say("field.choose") }, ...each.words.map((word) => ({ value: word, label: say(`worked.field.${word}`) === `worked.field.${word}` ? word : say(`worked.field.${word}`) }))] });
    case "yes_no": return html`<p class="entry-label">${label}</p>${yesNo({ legend: label, name, picked: typed[name], quiet: true })}`;
    case "rows": return html`${lines({ id, name, label, as: "rows", rows: 6, value: typed[name] ?? rows(known[each.name]) })}<p class="soft">${say("worked.rows")}</p>`;
    case "object": return each.name === "limits" ? limits(known.limits) : place({ each, name, id, label, typed, known: known[each.name] });
    default: return field({ id, name, label, value: typed[name] ?? "" });
  }
}

const shown = (value) => (value === undefined ? "" : String(Number(value.toPrecision(9))));

const rows = (all) => (all ?? []).map((row) => row.map((value) => shown(value)).join("  ")).join("\n");

// Between which wire steps a value is likely beside what the repair knows of it: outside, a slip of the unit is asked about.
function likelyBeside(unit, known) {
  if (unit === "°C") return LIKELY_CELSIUS;
  const wire = Object.values(UNITS).find((one) => one.unit === unit);
  return known > 0 && wire && ["mm", "m", "bar"].includes(unit) ? likely(known * wire.steps) : undefined;
}

// Typed as text, with or without its unit: the core reads it. What nobody has touched is sent as the repair knows it.
function number({ id, name, label, unit, beside, typed, known, as = "entry" }) {
  const there = known === undefined ? "" : beside ? String(Number(((known - beside.plus) / beside.per).toPrecision(5))) : shown(known);
  const value = bare(typed ?? there, beside?.unit ?? unit);
  return html`<label class="field measure" for="${id}">${label}
  <span class="with-unit"><input id="${id}" name="${name}" type="text" inputmode="text" autocomplete="off" value="${value}" data-as="${as}" ${attr("data-unit", beside?.unit ?? unit)} ${attr("data-plus", beside?.plus)} ${attr("data-likely", likelyBeside(unit, known)?.join(","))} ${known !== undefined && html`data-shown="${there}" data-recorded="${known}"`}>${(beside?.unit ?? unit) && html`<span class="unit">${beside?.unit ?? unit}</span>`}</span></label>`;
}

const place = ({ name, id, label, typed, known }) => ["lat", "lon"].map((axis) => number({
  id: `${id}-${axis}`, name: `${name}.${axis}`, label: `${label}, ${say(`worked.field.${axis}`)}`, unit: "°", as: "decimal", typed: typed[`${name}.${axis}`], known: known?.[axis],
}));

const limits = (known) => known && html`<p class="soft">${say("worked.limits", { source: known.source })}</p>`;
