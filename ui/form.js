// From fields to a request: numbers in wire units, answers as they are, and a list of what can't be sent.

import { base64 } from "./device/pieces.js";
import { typed } from "./format.js";
import { say } from "./text/say.js";

/**
 * Returns { fields, problems } of a form's controls. A control is { name, value, type, checked, disabled, label, dataset };
 * `data-as` is number (times `data-steps`, to a whole wire step), entry (as it was typed, with its `data-unit`), decimal (as it is), rows (of numbers, one a line), yes (true or false), list, number-list, json, time (a local time with
 * `data-offset` minutes, to a moment), or text. A name with dots is a path. An empty field is left out,
 * unless it says that it is needed: then what is missing is said here.
 */
export function readForm(controls) {
  const fields = {};
  const problems = [];
  for (const control of controls) {
    if (!control.name || control.disabled || control.type === "file" || control.type === "submit") continue;
    if ((control.type === "radio" || control.type === "checkbox") && !control.checked) continue;
    const { value, problem } = read(control);
    if (problem) problems.push({ field: control.id, text: problem });
    else if (value !== undefined) put(fields, control.name, value, control.dataset.as?.endsWith("list"));
  }
  return { fields, problems: [...problems, ...unpicked(controls)] };
}

// A question that needs an answer says so by its words on each of them.
function unpicked(controls) {
  const asks = controls.filter(({ type, dataset }) => type === "radio" && dataset.needed);
  const open = asks.filter(({ name }) => !asks.some((other) => other.name === name && other.checked));
  return [...new Set(open.map(({ dataset }) => dataset.needed))].map((label) => ({ field: open.find(({ dataset }) => dataset.needed === label).id, text: say("problem.pick", { label }) }));
}

function read({ value, label, dataset: { as, steps = "1", min, max, spanned, offset = "0", needed, plus, unit, shown, recorded } }) {
  const text = value.trim();
  if (text === "") return needed ? { problem: say("problem.missing", { label }) } : {};
  if (as === "yes") return { value: text === "yes" };
  if (as === "number-list") return { value: Number(text) };
  if (as === "rows") return rows(text, label);
  if (as === "decimal") { const plain = typed(text); return plain === null ? { problem: say("problem.number", { label }) } : { value: plain }; }
  if (as === "json") return { value: JSON.parse(text) };
  if (as === "time") return { value: Date.parse(`${text}Z`) - Number(offset) * 60_000 };
  // What nobody has touched is sent as it was recorded, not as it was rounded to be shown.
  if (recorded !== undefined && text === shown) return { value: Number(recorded) };
  if (as === "entry") return { value: plus !== undefined && typed(text) !== null ? `${text} ${unit}` : text };
  if (as !== "number") return { value: text };
  const number = typed(text, { minSec: spanned === "yes" });
  if (number === null) return { problem: say("problem.number", { label }) };
  if (min !== undefined && number < Number(min)) return { problem: say("problem.below", { label, min }) };
  if (max !== undefined && number > Number(max)) return { problem: say("problem.above", { label, max }) };
  return { value: Math.round(number * Number(steps) + Number(plus ?? 0)) };
}

// One row a line, its numbers parted by spaces, semicolons or tabs.
function rows(text, label) {
  const all = text.split("\n").filter((line) => line.trim() !== "").map((line) => line.trim().split(/[\s;]+/).map((one) => typed(one)));
  return all.flat().includes(null) ? { problem: say("problem.number", { label }) } : { value: all };
}

function put(fields, name, value, list) {
  const path = name.split(".");
  const last = path.pop();
  // A number in the path is a place in a list.
  const at = path.reduce((inner, key, i) => (inner[key] ??= /^\d+$/.test(path[i + 1] ?? last) ? [] : {}), fields);
  if (list) (at[last] ??= []).push(value);
  else at[last] = value;
}

/**
 * Returns `base` completed with `more`, path by path; what stands in `more` wins. A list is replaced as a whole, but by keys
 * such as `#3` one place of it is completed.
 */
export const merged = (base, more) => Object.entries(more).reduce((all, [key, value]) => ({ ...all, [key]: both(all[key], value) }), base);

function both(old, value) {
  if (Array.isArray(old) && plain(value)) return old.map((one, i) => (value[`#${i}`] === undefined ? one : merged(one, value[`#${i}`])));
  return plain(value) && plain(old) ? merged(old, value) : value;
}

/** Returns `value` without the empty places of its lists. */
export function tidied(value) {
  if (Array.isArray(value)) return value.filter((one) => one !== undefined && one !== null && !(plain(one) && Object.keys(one).length === 0)).map(tidied);
  return plain(value) ? Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, tidied(inner)])) : value;
}

const plain = (value) => typeof value === "object" && value !== null && !Array.isArray(value);

/** Returns the first chosen file of a form as { name, field, bytes } with its bytes in base64, or nothing. */
export async function chosenFile(form) {
  const input = [...form.elements].find((control) => control.type === "file" && control.files.length > 0);
  if (!input) return undefined;
  const [picked] = input.files;
  return { name: picked.name, field: input.name, taken_ms: picked.lastModified, bytes: base64(new Uint8Array(await picked.arrayBuffer())) };
}

/** Returns a form's controls as plain data, each with the words of its label. */
export const controlsOf = (form) => [...form.elements].map((control) => ({
  id: control.id, name: control.name, value: control.value ?? "", type: control.type, checked: control.checked, disabled: control.disabled,
  dataset: control.dataset, label: control.dataset.called ?? control.labels?.[0]?.firstChild?.textContent.trim() ?? control.name,
}));
