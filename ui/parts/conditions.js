// Conditions: what opens a gate. Mark, words, value; the mark has a shape and is said.

import { html } from "../html.js";
import { say } from "../text/say.js";
import { icon } from "./icon.js";

const MARKS = { met: "tick", open: "open", waived: "none", closed: "lock", failed: "cross", rehearsal: "rehearsal" };

/** Returns the list. An item is { state, text, note, inside }; a state is met, open, waived, closed, failed or rehearsal. */
export const conditions = (items, kind = "tight") => html`<ul class="conditions ${kind}">${items.map(({ state, text, note, inside }) =>
  html`<li${(state === "open" || state === "failed") && html` class="open"`}>${icon(MARKS[state])}<b><span class="unseen">${say(`condition.${state}`)} </span>${text}</b>${
    inside ? html`<div class="task">${note && html`<p>${note}</p>`}${inside}</div>` : note && html`<p>${note}</p>`}</li>`)}</ul>`;
