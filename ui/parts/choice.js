// Choice: rows to pick from, the whole row is the target. What does not fit stays, with its reason.

import { attr, flag, html } from "../html.js";
import { icon } from "./icon.js";

/**
 * Returns the rows. `options` are { value, strong, text, note, at: [figure, note, unit], closed }; `picked` is a value, or a list
 * of values where `several` may be picked. `closed` rows cannot be picked; their note says why. `needed` must be answered.
 */
export const choice = ({ legend, aside, name, options, picked, several = false, needed = false, as = several ? "list" : undefined, kind = "section section-gap" }) => html`<fieldset class="choice ${kind}" data-key="${name}"><legend><h2>${legend}${aside && html` <small class="soft">${aside}</small>`}</h2></legend>
  ${options.map((option) => row({ ...option, name, several, as, needed: needed && legend, checked: several ? picked?.includes(option.value) : picked === option.value }))}</fieldset>`;

const row = ({ name, several, as, needed, checked, value, strong, text, note, at, closed }) => html`<label><input type="${several ? "checkbox" : "radio"}" name="${name}" value="${value}" ${attr("data-as", as)} ${attr("data-needed", needed)} ${flag("checked", checked)} ${flag("disabled", closed)}>
  <span><b>${strong}</b>${text && html` ${text}`}${note && html`<small>${note}</small>`}</span>${at && html`<span class="at"><b>${at[0]}</b>${at[2] && html` ${at[2]}`}<small>${at[1]}</small></span>`}${closed && icon("lock")}</label>`;
