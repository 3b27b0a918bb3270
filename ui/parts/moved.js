// Moved: how far a large file has come.

import { number } from "../format.js";
import { html } from "../html.js";
import { say } from "../text/say.js";

const MB = 1e6;

/** Returns the state of a transfer, if one is under way; `code` is its sentence. */
export function moved({ moving }, code) {
  if (!moving) return "";
  const [done, of] = [moving.done, moving.of].map((bytes) => number(bytes / MB, 1));
  return html`<p class="lead" role="status"><progress value="${moving.done}" max="${Math.max(1, moving.of)}" aria-hidden="true"></progress> ${say(code, { done, of })}</p>`;
}
