// Light: day, sun or night.

import { flag, html } from "../html.js";
import { say } from "../text/say.js";

export const LIGHTS = ["day", "sun", "night"];

/** Returns the switch with `now` picked. */
export const light = (now) => html`<fieldset class="light"><legend class="unseen">${say("light.label")}</legend>${LIGHTS.map((name) =>
  html`<label><input type="radio" name="light" value="${name}" ${flag("checked", name === now)}>${say(`light.${name}`)}</label>`)}</fieldset>`;
