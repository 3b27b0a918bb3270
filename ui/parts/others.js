// Others: another live hold never goes out of sight.

import { html } from "../html.js";
import { minSec } from "../format.js";
import { say } from "../text/say.js";

/** Returns the line of other holds { repair, manhole, due_ms }: how long until each wants a reading. Nothing when there is none. */
export const others = (holds) => holds.length > 0 && html`<nav class="others" aria-label="${say("others.label")}"><span class="others-what">${say("others.what")}</span> ${holds.map(({ repair, manhole, due_ms }) =>
  html`<a href="#/repair/${repair}"><b>${manhole}</b> ${due_ms < 0 ? say("others.late", { by: minSec(-due_ms, "up") }) : minSec(due_ms)}</a> `)}</nav>`;
