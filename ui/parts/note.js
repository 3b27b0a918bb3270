// Note: a caution or a reason, said where the step is. A bar at its side.

import { html } from "../html.js";

/** Returns the note; `lead` is its first words, in bold. */
export const note = ({ lead, text, accent = false }) => html`<p class="note${accent && html` is-accent`}">${lead && html`<b>${lead}</b> `}${text}</p>`;

/** Returns numbered steps for now, in the order in which they are done. */
export const doNow = (steps, kind = "") => html`<ol class="do-now ${kind}">${steps.map((step) => html`<li>${step}</li>`)}</ol>`;
