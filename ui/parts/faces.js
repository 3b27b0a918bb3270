// Both faces of the clock: the same place seen looking downstream and looking upstream, so that nobody mirrors in the head.

import { html } from "../html.js";
import { clockFace } from "../drawings/clock-face.js";
import { say } from "../text/say.js";

/** Returns both faces. `marks` and `seam` are those of a clock face, recorded as seen looking `recorded`. */
export const faces = ({ marks, seam, recorded = "downstream" }) => html`<div class="faces">${["downstream", "upstream"].map((direction) =>
  html`<figure>${clockFace({ marks, seam, direction, recorded })}<figcaption>${say(`face.${direction}`)}</figcaption></figure>`)}</div>`;
