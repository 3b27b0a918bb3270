// Others: another clock that runs never goes out of sight.

import { html } from "../html.js";
import { minSec } from "../format.js";
import { say } from "../text/say.js";
import { icon } from "./icon.js";

/** As many stand in the strip; the others are one tap away. */
const SHOWN = 2;

/**
 * Returns the line of other clocks { repair, manhole, due_ms, holding, followed }, the most pressing first: how long until a hold wants
 * a reading, or until mixed resin must be under pressure. Nothing when there is none.
 */
export function others(clocks) {
  if (clocks.length === 0) return "";
  const sorted = [...clocks].sort((a, b) => a.due_ms - b.due_ms);
  return html`<nav class="others" aria-label="${say("others.label")}">${sorted.slice(0, SHOWN).map(link)}${
    sorted.length > SHOWN && html`<a class="others-more" href="#/">${say("others.more", { n: sorted.length - SHOWN })}</a>`}</nav>`;
}

const link = ({ repair, manhole, due_ms: due, holding = true, followed = false }) => html`<a href="#/${followed ? "follow" : "repair"}/${repair}"${due < 0 && html` class="is-late"`}><b>${manhole}</b> <span>${due < 0 && icon("warn")}${say(holding ? "others.what" : "others.mixed")} ${due < 0 ? say("others.late", { by: minSec(-due, "up") }) : minSec(due)}</span></a> `;
