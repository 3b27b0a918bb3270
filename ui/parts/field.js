// Fields of text: one line, several lines, a list to pick from, a file or a photo.

import { localEntry } from "../format.js";
import { attr, flag, html } from "../html.js";

const problemOf = (id, problem) => problem && html`<span class="problem" id="${id}-problem">${problem}</span>`;
const linked = (id, problem) => problem && html`aria-invalid="true" aria-describedby="${id}-problem"`;
// What can't be left empty.
const need = (needed, called) => html`${needed && html`data-needed="yes" aria-required="true"`} ${attr("data-called", called)}`;

/**
 * Returns one line of text. `mode` is the keyboard: text, numeric, email; `type` may be "password" for a PIN;
 * `called` is what a problem calls it where the label alone does not say enough.
 */
export const field = ({ id, name = id, label, value = "", type = "text", mode, problem, kind = "field", max, needed, called }) => html`<label class="${kind}" for="${id}">${label}
  <input id="${id}" name="${name}" type="${type}" value="${value}" autocomplete="off" ${attr("inputmode", mode)} ${attr("maxlength", max)} ${need(needed, called)} ${linked(id, problem)}>${problemOf(id, problem)}</label>`;

/** Returns a field of several lines. */
export const lines = ({ id, name = id, label, value = "", problem, rows = 4, as, needed }) => html`<label class="field" for="${id}">${label}
  <textarea id="${id}" name="${name}" rows="${rows}" ${attr("data-as", as)} ${need(needed)} ${linked(id, problem)}>${value}</textarea>${problemOf(id, problem)}</label>`;

/** Returns a number with its unit beside it; `steps` is how many wire steps make one unit. */
export function measure({ id, name = id, label, problem, needed, ...given }) {
  const { value, unit, steps, plus, own } = localEntry({ value: "", steps: 1, ...given });
  return html`<label class="field measure" for="${id}">${label}
  <span class="with-unit"><input id="${id}" name="${name}" type="text" inputmode="decimal" value="${value}" autocomplete="off" data-as="number" data-steps="${steps}" ${attr("data-unit", unit)} ${attr("data-plus", plus)} ${own !== undefined && html`data-shown="${value}" data-recorded="${own}"`} ${need(needed)} ${linked(id, problem)}>${unit && html`<span class="unit">${unit}</span>`}</span>${problemOf(id, problem)}</label>`;
}

/** Returns a list to pick one from. `options` are { value, label }. */
export const picks = ({ id, name = id, label, value, options, problem, needed }) => html`<label class="field" for="${id}">${label}
  <select id="${id}" name="${name}" ${need(needed)} ${linked(id, problem)}>${options.map((option) => html`<option value="${option.value}" ${flag("selected", option.value === value)}>${option.label}</option>`)}</select>${problemOf(id, problem)}</label>`;

/** Returns an input for files. `camera` opens the camera where there is one. */
export const file = ({ id, name = id, label, accept, camera = false, several = false, named = false, problem }) => html`<label class="field file" for="${id}">${label}
  <input id="${id}" name="${name}" type="file" ${attr("accept", accept)} ${camera && html`capture="environment"`} ${flag("multiple", several)} ${named && html`data-filename="name"`} ${linked(id, problem)}>${problemOf(id, problem)}</label>`;
