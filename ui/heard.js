// Numbers that were typed with a unit of their own, and slips of the unit: the core reads them, the screen only asks back.

import { typed } from "./format.js";
import { say } from "./text/say.js";

const isQuantity = ({ dataset: { as, unit, spanned }, disabled, value }) => as === "number" && Boolean(unit) && spanned !== "yes" && !disabled && value.trim() !== "";
// What the core reads itself is only looked at for a slip.
const isEntry = ({ dataset: { as, likely }, disabled, value }) => as === "entry" && Boolean(likely) && !disabled && value.trim() !== "";

/**
 * Returns { controls, problems }: the controls with each number in the unit beside it. `ask` puts a request to the core, `sure`
 * holds by the field's id what somebody has said to be meant. A field in doubt is a problem with `meant`: what to take instead.
 */
export async function hear(controls, ask, sure) {
  const odd = controls.filter((one) => (isQuantity(one) || isEntry(one)) && (typed(one.value) === null || (one.dataset.likely && sure[one.id] !== one.value && one.value !== one.dataset.shown)));
  if (odd.length === 0) return { controls, problems: [] };
  const response = await ask({ do: "read", entries: odd.map(({ id, value, dataset: { unit, likely } }) => ({ id, typed: value, beside: unit, ...(likely && { likely: likely.split(",").map(Number) }) })) });
  const entries = response?.ok?.entries ?? [];
  const of = (one) => odd.find(({ id }) => id === one.id);
  const problems = entries.filter((one) => one.problem || (one.meant.length > 0 && sure[one.id] !== of(one).value)).map((one) => problemOf(one, of(one)));
  return { controls: controls.map((control) => taken(control, entries.find(({ id }) => id === control.id))), problems };
}

const taken = (control, entry) => (typeof entry?.value === "number" && isQuantity(control) ? { ...control, value: String(entry.value) } : control);

function problemOf({ id, problem, meant }, { label, value, dataset: { unit } }) {
  if (problem) return { field: id, text: say("heard.unreadable", { label, why: problem }) };
  const plain = typed(value) === null ? value : `${value} ${unit}`;
  return { field: id, text: say("heard.slip", { label, value: plain }), meant: [...meant, plain] };
}

/** Returns by its name what was typed with its unit, where it is not simply the recorded unit. */
export const asTyped = (controls) => Object.fromEntries(controls.filter((one) => isQuantity(one) && one.name && (typed(one.value) === null || (one.dataset.plus !== undefined && one.value !== one.dataset.shown)))
  .map(({ name, value, dataset: { unit } }) => [name, typed(value) === null ? value.trim() : `${value.trim()} ${unit}`]));
