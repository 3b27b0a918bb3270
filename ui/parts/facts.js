// Facts: a label, air, a value with its unit.

import { html } from "../html.js";

/** Returns the list of { label, value, note }. */
export const facts = (items) => html`<dl class="facts">${items.map(({ label, value, note }) =>
  html`<div><dt>${label}</dt><dd>${value}${note && html` <small>${note}</small>`}</dd></div>`)}</dl>`;
