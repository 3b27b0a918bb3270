// Others: another clock that runs never goes out of sight.

import { html } from "../html.js";
import { minSec } from "../format.js";
import { say } from "../text/say.js";

/** As many stand in the strip; the others are one tap away. */
const SHOWN = 3;

/**
 * Returns the line of other clocks { repair, manhole, due_ms, holding }, the most pressing first: how long until a hold wants
 * a reading, or until mixed resin must be under pressure. Nothing when there is none.
 */
export function others(clocks) {
  if (clocks.length === 0) return "";
  const sorted = [...clocks].sort((a, b) => a.due_ms - b.due_ms);
  const shown = sorted.slice(0, SHOWN);
  const groups = [["others.what", shown.filter(({ holding = true }) => holding)], ["others.mixed", shown.filter(({ holding = true }) => !holding)]];
  return html`<nav class="others" aria-label="${say("others.label")}">${groups.filter(([, all]) => all.length > 0).map(([what, all]) => html`<span class="others-what">${say(what)}</span> ${all.map(link)}`)}${
    sorted.length > SHOWN && html`<a href="#/">${say("others.more", { n: sorted.length - SHOWN })}</a>`}</nav>`;
}

const link = ({ repair, manhole, due_ms: due }) => html`<a href="#/repair/${repair}"><b>${manhole}</b> ${due < 0 ? say("others.late", { by: minSec(-due, "up") }) : minSec(due)}</a> `;
