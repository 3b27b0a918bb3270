// Count: rising minutes, or one value that matters, with what it is measured against.

import { html } from "../html.js";

/** Returns the figure with its lines beside it: `count({ figure: 33, lines: ["of 60 min", "counted"] })`. */
export const count = ({ figure, lines, kind = "" }) => html`<p class="count ${kind}"><b>${figure}</b> <span>${lines.map((line, i) => html`${i > 0 && html`<br>`}${line}`)}</span></p>`;
