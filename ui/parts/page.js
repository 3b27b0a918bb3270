// The frame of a screen: mast, main, deck. A rehearsal wears its frame here, so no screen can forget it.

import { html } from "../html.js";

/** Returns a whole screen. `kind` is a class of the screen, such as "troubled". */
export const page = ({ kind = "", rehearsal = false, mast, main, deck }) =>
  html`<div class="screen ${kind} ${rehearsal && "rehearsal"}">${mast}${main}${deck}</div>`;
