// Alarm: the mast floods, hatch on top. Shape, hatch, word, sound and vibration; colour last.

import { html } from "../html.js";

/**
 * Returns the flooded mast. `what` is said before the title, `beside` stands at the title's end (a count), `below` under it;
 * `items` are { label, value }. Only the words are an alert: figures that run would be read out every second.
 */
export const alarm = ({ strong, where, what, title, beside, below, items = [] }) => html`<header class="alarm">
  <p class="mast-where"><b>${strong}</b> ${where}</p>
  ${beside ? html`<div class="alarm-row">${words(what, title)}${beside}</div>` : words(what, title)}${below}
  ${items.length > 0 && html`<dl class="alarm-facts">${items.map(({ label, value }) => html`<div><dt>${label}</dt><dd>${value}</dd></div>`)}</dl>`}
</header>`;

const words = (what, title) => html`<div role="alert">${what && html`<p class="clock-what">${what}</p>`}<h1 tabindex="-1">${title}</h1></div>`;
