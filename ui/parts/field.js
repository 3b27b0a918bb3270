// Fields of text: one line, several lines, a list to pick from, a file or a photo.

import { attr, flag, html } from "../html.js";

const problemOf = (id, problem) => problem && html`<span class="problem" id="${id}-problem">${problem}</span>`;
const linked = (id, problem) => problem && html`aria-invalid="true" aria-describedby="${id}-problem"`;

/** Returns one line of text. `mode` is the keyboard: text, numeric, email; `type` may be "password" for a PIN. */
export const field = ({ id, name = id, label, value = "", type = "text", mode, problem, kind = "field", max }) => html`<label class="${kind}" for="${id}">${label}
  <input id="${id}" name="${name}" type="${type}" value="${value}" autocomplete="off" ${attr("inputmode", mode)} ${attr("maxlength", max)} ${linked(id, problem)}>${problemOf(id, problem)}</label>`;

/** Returns a field of several lines. */
export const lines = ({ id, name = id, label, value = "", problem, rows = 4, as }) => html`<label class="field" for="${id}">${label}
  <textarea id="${id}" name="${name}" rows="${rows}" ${attr("data-as", as)} ${linked(id, problem)}>${value}</textarea>${problemOf(id, problem)}</label>`;

/** Returns a list to pick one from. `options` are { value, label }. */
export const picks = ({ id, name = id, label, value, options, problem }) => html`<label class="field" for="${id}">${label}
  <select id="${id}" name="${name}" ${linked(id, problem)}>${options.map((option) => html`<option value="${option.value}" ${flag("selected", option.value === value)}>${option.label}</option>`)}</select>${problemOf(id, problem)}</label>`;

/** Returns an input for files. `camera` opens the camera where there is one. */
export const file = ({ id, name = id, label, accept, camera = false, several = false, named = false, problem }) => html`<label class="field file" for="${id}">${label}
  <input id="${id}" name="${name}" type="file" ${attr("accept", accept)} ${camera && html`capture="environment"`} ${flag("multiple", several)} ${named && html`data-filename="name"`} ${linked(id, problem)}>${problemOf(id, problem)}</label>`;
