// Hold to confirm: what cannot be undone wants two seconds. The fill is the finger's time.

import { html } from "../html.js";
import { say } from "../text/say.js";
import { action } from "./action.js";
import { icon } from "./icon.js";

/**
 * Returns the button. `does` or `form` as for an action; `note` says what it brings; `holding` is said while it is held;
 * `alarm` only for the emergency release.
 */
export const hold = ({ label, note, holding = say("hold.holding"), alarm = false, does, then, form }) => action({
  does,
  then,
  form,
  kind: `act hold${alarm ? " is-alarm" : ""}`,
  more: html`data-hold="${label}" data-key="hold ${label}"`,
  inside: html`${words(label, note, holding)}<span class="over" aria-hidden="true">${words(label, note, holding)}</span>`,
});

/** Returns the button after its deed: what was recorded, and what comes next. */
export const held = ({ label, note }) => html`<p class="act hold" data-state="done"><b>${label}</b><small>${note}</small>${icon("tick")}</p>`;

const words = (label, note, holding) => html`<b><span class="idle">${label}</span><span class="busy">${say("hold.keep")}</span></b>
  <small><span class="idle">${note}</span><span class="busy">${holding}</span></small>${icon("hold")}`;
