// Two ways to a picture: the camera, or the pictures of this device. What was chosen is shown before it is kept.

import { html } from "../html.js";
import { say } from "../text/say.js";
import { icon } from "./icon.js";

/** Returns both ways; `chosen` is { name, address } of the picture that was picked and not yet sent. */
export const shots = ({ id, name = "bytes", chosen }) => html`<div class="shots">${shot({ id: `${id}-camera`, name, label: say("photo.camera"), note: say("photo.camera_note"), camera: true })}${
  shot({ id: `${id}-file`, name, label: say("photo.gallery"), note: say("photo.gallery_note") })}</div>
  ${chosen && html`<figure class="chosen"><img data-key="${chosen.address}" src="${chosen.address}" alt="${say("photo.chosen", chosen)}"><figcaption>${chosen.name}</figcaption></figure>`}`;

const shot = ({ id, name, label, note, camera = false }) => html`<label class="shot" for="${id}"><b>${label}</b><small>${note}</small>${icon(camera ? "photo" : "go")}
  <input class="unseen" id="${id}" name="${name}" type="file" accept="image/*" data-called="${label}" ${camera && html`capture="environment"`}></label>`;
