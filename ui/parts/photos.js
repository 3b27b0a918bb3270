// Photos: small on the screen, each with what it shows and when it was taken. The bytes are asked for when they come into sight.

import { html } from "../html.js";

/** How many pixels the longer side of a small photo has, and of a large one. */
export const [SMALL, LARGE] = [480, 1600];

/** Returns the photos { sha256, label, note, href }. Those in a closed `details` are fetched when it is opened. */
export const photos = (all) => html`<ul class="photos">${all.map((one) => html`<li><a href="${one.href}">${photo(one)}</a></li>`)}</ul>`;

/** Returns one photo with its words. */
export const photo = ({ sha256, label, note, px = SMALL, over }) => html`<figure><div class="photo-box"><img data-photo="${sha256}" data-px="${px}" data-key="photo-${sha256}" alt="${label}">${over}</div><figcaption>${label} <small>${note}</small></figcaption></figure>`;
