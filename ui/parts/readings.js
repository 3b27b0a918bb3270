// Readings: values to be read at arm's length, each with its unit and when it was read.

import { html } from "../html.js";

/** Returns the values { label, value, unit, then, quiet }. `then` is the line below; `quiet` hides the label. */
export const readings = (items, kind = "") => html`<dl class="readings ${kind}">${items.map(({ label, value, unit, then, quiet }) =>
  html`<div class="reading"><dt ${quiet && html`class="unseen"`}>${label}</dt><dd>${value}${unit && html` <small>${unit}</small>`}</dd>${then && html`<dd class="then">${then}</dd>`}</div>`)}</dl>`;
