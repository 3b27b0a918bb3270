// What a control does, as attributes: a link leads on, a button in a form sends it, any other button sends one request.

import { attr, html } from "../html.js";

/**
 * Returns a link or a button. `href` leads on; `form` names the form it sends; `does` is a request
 * `{ do: "…", … }`, sent as it stands. `then` is where the screen goes when it was recorded. `kind` is its class, `inside` what
 * it holds, `more` further attributes.
 */
export const action = ({ href, form, does, then, kind, inside, more = "" }) => {
  if (href !== undefined) return html`<a ${attr("class", kind)} href="${href}" ${more}>${inside}</a>`;
  const ask = does && request(does, then);
  return html`<button type="${form ? "submit" : "button"}" ${attr("class", kind)} ${attr("form", form)} ${ask} ${more}>${inside}</button>`;
};

/**
 * Returns a form that sends the request `does`, completed with what its fields hold. `live` only asks, and at every
 * change. `tidy` leaves out rows that were emptied. `large` brings its file piece by piece. `key` makes it another form where
 * it changes: nothing that was typed is taken along.
 */
export const form = ({ id, key, does, then, kind, live, tidy, large, inside }) =>
  html`<form id="${id}" ${attr("data-key", key)} ${attr("class", kind)} ${request(does, then)} ${live && html`data-live="yes"`} ${tidy && html`data-tidy="yes"`} ${large && html`data-large="yes"`} novalidate autocomplete="off">${inside}</form>`;

const request = (does, then) => html`data-request="${JSON.stringify(does)}" ${attr("data-then", then)}`;
