// A document as a form, drawn from its table of fields: every value with its unit, and its source beside it.

import { html } from "../../html.js";
import { typed as read } from "../../format.js";
import { field, lines, measure, picks } from "../../parts/field.js";
import { pair, yesNo } from "../../parts/pair.js";
import { section } from "../../parts/section.js";
import { known, say } from "../../text/say.js";

/** How a figure is shown: its unit, or the name of its words, and how many wire steps make one. */
const UNITS = {
  mm: ["mm", 1e3], bar: ["bar", 1e5], celsius: ["°C", 1e3], g: ["g", 1e3], s: ["s", 1e3], min: ["min", 60e3], h: ["h", 3600e3], pct: ["%", 1], lfl: ["unit.lfl", 1], permille: ["%", 10], share: ["%", 1e4],
  ratio: ["unit.ratio", 1000], ppm: ["ppm", 1], months: ["unit.months", 1], count: ["", 1],
};

/** Returns the sections of a table. `sheet` is the document as recorded, or nothing for a new one; `typed` what was typed, by path. */
export const sheetForm = (table, path, sheet, typed) => table.map(({ title, fields }) => section({
  id: `sheet-${title}`, title: say(`sheet.section.${title}`), kind: "section-gap", inside: fields.map((one) => drawn(one, `${path}.${one.key}`, sheet?.[one.key], typed)),
}));

function drawn(one, path, value, typed) {
  if (one.rows) return rows(one, path, value ?? [], typed);
  const parted = one.sourced || one.group || one.variants;
  const optional = one.optional ? { ...one, needed: parted && wanted(path, value, typed) } : { needed: true, ...one };
  if (one.group) return group(optional, path, value, typed);
  if (!one.sourced) return one.variants ? variants(optional, path, value, typed) : control(optional, path, value, typed);
  const inner = one.variants ? variants(optional, `${path}.value`, value?.value, typed) : control(optional, `${path}.value`, value?.value, typed);
  return html`<div class="sourced">${inner}${control({ key: "source", as: "source", needed: optional.needed, of: one.key }, `${path}.source`, value?.source, typed)}</div>`;
}

// What may be left out is needed whole as soon as a part of it is there.
const wanted = (path, value, typed) => (value !== undefined && value !== null && !cleared(path, value, typed)) || Object.entries(typed).some(([name, text]) => name.startsWith(`${path}.`) && String(text).trim() !== "");

// A row or a group that was recorded and whose every field was emptied.
const cleared = (path, value, typed) => Object.keys(value).length > 0 && Object.keys(value).every((key) => typed[`${path}.${key}`] !== undefined && String(typed[`${path}.${key}`]).trim() === "");

const group = ({ key, group: fields, needed }, path, value, typed) => html`<fieldset class="sheet-part"><legend>${label(key)}</legend>${fields.map((one) => drawn({ ...one, of: key, optional: one.optional ?? !needed }, `${path}.${one.key}`, value?.[one.key], typed))}</fieldset>`;

function variants({ key, variants: all }, path, value, typed) {
  const kinds = Object.keys(all);
  const picked = typed[`${path}.kind`] ?? value?.kind ?? kinds[0];
  const recorded = picked === value?.kind ? value : undefined;
  return html`<fieldset class="sheet-part"><legend>${label(key)}</legend>${pair({ legend: label(key), name: `${path}.kind`, quiet: true, picked, options: kinds.map((kind) => ({ value: kind, label: word(kind) })) })}
    ${all[picked].map((one) => drawn({ ...one, of: key }, `${path}.${one.key}`, recorded?.[one.key], typed))}</fieldset>`;
}

// One row more than there are, so that there is a place for the next. A row that is emptied goes.
function rows({ key, rows: fields, most, least = 0 }, path, value, typed) {
  const indexes = Object.keys(typed).filter((name) => name.startsWith(`${path}.`) && String(typed[name]).trim() !== "").map((name) => Number(name.slice(path.length + 1).split(".")[0]));
  const count = Math.min(most, Math.max(value.length, ...indexes.map((i) => i + 1), 0) + 1);
  const filled = Array.from({ length: count }, (_, i) => wanted(`${path}.${i}`, value[i], typed)).filter(Boolean).length;
  return html`<fieldset class="sheet-list"><legend>${label(key)}</legend><p class="soft">${say("shelf.rows_note")}</p>${Array.from({ length: count }, (_, i) => {
    const at = `${path}.${i}`;
    const needed = wanted(at, value[i], typed) || (i === 0 && filled < least);
    return html`<fieldset class="sheet-row"><legend>${say("shelf.row", { n: i + 1 })}</legend>${fields.map((one) => control({ ...one, needed }, `${at}.${one.key}`, value[i]?.[one.key], typed))}</fieldset>`;
  })}</fieldset>`;
}

function control({ key, as, options, needed, of }, path, recorded, typed) {
  const id = path.replaceAll(".", "-").replaceAll("#", "");
  const at = { id, name: path, label: as === "source" ? say("sheet.source") : label(key), needed, ...(as === "source" && of && { called: say("sheet.source_of", { what: label(of) }) }) };
  const value = typed[path];
  if (as === "yes") return html`<div><p class="entry-label">${at.label}</p>${yesNo({ legend: at.label, name: path, picked: value ?? (recorded === undefined ? undefined : recorded ? "yes" : "no"), quiet: true })}</div>`;
  if (as === "choice") return picks({ ...at, value: value ?? recorded ?? "", options: [...(recorded === undefined ? [{ value: "", label: say("field.choose") }] : []), ...options.map((one) => ({ value: one, label: word(one) }))] });
  if (as === "date") return field({ ...at, type: "date", value: value ?? recorded ?? "" });
  if (as === "text" && ["detail", "caution"].includes(key)) return lines({ ...at, rows: 2, value: value ?? recorded ?? "" });
  if (as === "text" || as === "source") return field({ ...at, value: value ?? recorded ?? "", kind: as === "source" ? "field source" : "field" });
  const [unit, steps] = UNITS[as];
  const wrong = value !== undefined && value.trim() !== "" && read(value) === null;
  return measure({ ...at, unit: known(unit) ? say(unit) : unit, steps, value: value ?? shown(recorded, steps), problem: wrong ? say("problem.number", { label: at.label }) : undefined });
}

/** Returns a recorded figure in its unit with all its decimals, so that nothing changes when it is only looked at. */
export const shown = (recorded, steps) => (recorded === undefined || recorded === null ? "" : String(Number((recorded / steps).toFixed(8))).replace("-", "\u2212"));

const label = (key) => say(`sheet.${key}`);
const word = (key) => say(["option", "stage", "role"].map((of) => `${of}.${key}`).find(known) ?? `option.${key}`);
