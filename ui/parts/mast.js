// Mast: the title block. Where, which repair, what now.

import { html } from "../html.js";
import { say } from "../text/say.js";
import { icon } from "./icon.js";
import { stages } from "./stages.js";

/**
 * Returns the header. `where` is said after `strong`, which names the manhole; `side` is a list of lines;
 * `between` stands between both; `stage` (0 to 9) draws the rule of stages below; `rehearsal` puts the word above everything.
 * `who` { name, spoken } says who taps, and makes the side a button that opens the dialog "who". `home` is the way to the
 * first screen: a window has no button of its own that leads back.
 */
export const mast = ({ title, strong, between = " ", where, side = [], stage, rehearsal = false, kind = "", who, home = true }) => html`<header class="mast ${kind}">
  ${rehearsal && html`<p class="rehearsal-word"><b>${say("rehearsal.word")}</b><span>${say("rehearsal.not_a_record")}</span></p>`}
  ${who ? html`<button type="button" class="mast-side" data-opens="who">${lines(side)}<br><b class="mast-who">${who.name}</b><span class="unseen"> ${who.spoken}</span></button>` : side.length > 0 && html`<p class="mast-side" data-key="mast-side">${lines(side)}</p>`}
  <p class="mast-where ${stage !== undefined && "mast-line"}">${home && html`<a class="mast-home ${strong && "mast-home-short"}" href="#/">${icon("back")}<span>${say("today.title")}</span></a> `}${strong && html`<b>${strong}</b>${where && between}`}${where}</p>
  <h1 tabindex="-1">${title}</h1>
  ${stage === undefined ? html`<div class="mast-end"></div>` : stages(stage)}
</header>`;

const lines = (side) => side.map((line, i) => html`${i > 0 && html`<br>`}${line}`);
