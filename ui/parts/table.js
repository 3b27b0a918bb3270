// Table: rows of readings. On large text it scrolls in its own strip.

import { html } from "../html.js";

/** Returns the table. `head` are the columns, each with its unit; the first cell of a row names the row. */
export const table = ({ label, head, rows }) => html`<div class="scroll" tabindex="0" role="region" aria-label="${label}"><table class="log"><thead><tr>${head.map((cell) => html`<th scope="col">${cell}</th>`)}</tr></thead>
  <tbody>${rows.map(([first, ...rest]) => html`<tr><th scope="row">${first}</th>${rest.map((cell) => html`<td>${cell}</td>`)}</tr>`)}</tbody></table></div>`;
