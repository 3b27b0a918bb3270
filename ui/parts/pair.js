// Pair: two answers side by side.

import { flag, html } from "../html.js";
import { say } from "../text/say.js";
import { icon } from "./icon.js";

/** Returns the question with its answers { value, label }. `quiet` hides the legend where the words stand above; `needed` must be answered. */
export const pair = ({ legend, name, options, picked, quiet = false, as, needed = false }) => html`<fieldset data-key="${name}"><legend ${quiet && html`class="unseen"`}>${legend}</legend><div class="pair">${options.map(({ value, label }) =>
  html`<label><input type="radio" name="${name}" value="${value}" ${as && html`data-as="${as}"`} ${needed && html`data-needed="${legend}"`} ${flag("checked", picked === value)}>${icon("tick")}${label}</label>`)}</div></fieldset>`;

/** Returns a question that is answered yes or no, and sent as such. */
export const yesNo = ({ legend, name, picked, quiet, needed }) => pair({
  legend, name, quiet, picked, needed, as: "yes",
  options: [{ value: "yes", label: say("pair.yes") }, { value: "no", label: say("pair.no") }],
});
