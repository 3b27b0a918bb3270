// Photos: reduced on the screen, each with what it shows and when it was taken. The bytes are asked for when they come into sight.

import { html } from "../html.js";

/** Returns the photos { sha256, label, note }. They are fetched as soon as `details` around them is open. */
export const photos = (all) => html`<ul class="photos">${all.map(({ sha256, label, note }) => html`<li><figure><img data-photo="${sha256}" data-key="photo-${sha256}" alt="${label}"><figcaption>${label} <small>${note}</small></figcaption></figure></li>`)}</ul>`;
