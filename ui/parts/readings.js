// Readings: values to be read at arm's length, each with its unit and when it was read.

import { html } from "../html.js";
import { icon } from "./icon.js";

/** Returns the values { label, value, unit, then, quiet, late }. `then` is the line below; `quiet` hides the label; `late` marks what is overdue. */
export const readings = (items, kind = "") => html`<dl class="readings ${kind}">${items.map(({ label, value, unit, then, quiet, late }) =>
  html`<div class="reading${late && html` is-late`}"><dt ${quiet && html`class="unseen"`}>${label}</dt><dd>${late && icon("warn")}${value}${unit && html` <small>${unit}</small>`}</dd>${then && html`<dd class="then">${then}</dd>`}</div>`)}</dl>`;
