// Warned: a clock that presses. With each warning it changes its words, its frame, its hatch and, last, its colour.

import { html } from "../html.js";
import { icon } from "./icon.js";

/**
 * Returns the clock `inside` as it looks under a warning: `level` is calm, half, ten, five, one or over, `says` its words.
 * Only the words are an alert: figures that run would be read out every second.
 */
export const warned = ({ level, says, inside }) => (level === "calm" ? html`<div class="warned">${inside}</div>`
  : html`<div class="warned is-${level}"><p class="warned-what" role="alert">${icon("warn")}<b>${says}</b></p>${inside}</div>`);
