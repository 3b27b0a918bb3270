// Section: a thick rule, a heading, then air. Never a box.

import { attr, html } from "../html.js";

/** Returns the section. `aside` stands at the heading's end. */
export const section = ({ id, title, aside, kind = "section-gap", inside }) =>
  html`<section class="section ${kind}" ${attr("data-key", id)} ${attr("aria-labelledby", id)}><h2 ${attr("id", id)}>${title}${aside && html` <small>${aside}</small>`}</h2>${inside}</section>`;
