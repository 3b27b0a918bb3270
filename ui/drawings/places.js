// Places: where the patch is when the working time is over. Four answers, each with its drawing.

import { html } from "../html.js";
import { say } from "../text/say.js";
import { action } from "../parts/action.js";

const PIPE = html`<path class="d-thin" d="M2 14H46M2 34H46"/>`;

const PICTURES = {
  table: html`<path class="d-line" d="M4 32H44M10 32V42M38 32V42"/><rect class="d-patch" x="12" y="26" width="24" height="6"/>`,
  in_pipe: html`${PIPE}<rect class="d-packer" x="10" y="20" width="28" height="8" rx="4"/><rect class="d-patch" x="16" y="18" width="16" height="3"/><rect class="d-patch" x="16" y="27" width="16" height="3"/>`,
  at_wall: html`${PIPE}<rect class="d-packer" x="8" y="16" width="32" height="16" rx="6"/><rect class="d-patch" x="14" y="14" width="20" height="4"/><rect class="d-patch" x="14" y="30" width="20" height="4"/>`,
  stuck: html`${PIPE}<rect class="d-packer" x="8" y="18" width="26" height="12" rx="5"/><path class="d-ink" d="M31 14H46L38 22ZM31 34H46L38 26Z"/><rect class="d-patch" x="12" y="16" width="16" height="3"/><rect class="d-patch" x="12" y="29" width="16" height="3"/>`,
};

/** The four answers, in the order in which a patch meets them. */
export const PLACES = Object.keys(PICTURES);

/** Returns the question's answers. `to(place)` returns what each does: { href } or { does }. */
export const places = (to) => html`<div class="places">${PLACES.map((place) => action({ ...to(place), kind: "place",
  inside: html`<svg class="place-pic" viewBox="0 0 48 48" aria-hidden="true">${PICTURES[place]}</svg><b>${say(`place.${place}`)}</b>` }))}</div>`;
