// Clock: the figure that counts, at the width of the screen. Minutes are large; below one minute the seconds are.

import { html } from "../html.js";
import { minSec, span } from "../format.js";
import { say } from "../text/say.js";

/**
 * Returns the clock of `ms`. `what` is said above, `note` small beside it. `count` draws it a size smaller.
 * `rising` rounds up, because that time is gone.
 */
export const clock = ({ what, ms, note, count = false, rising = false }) => {
  const round = rising ? "up" : "down";
  const [large, rest] = parts(ms, round);
  return html`${what && html`<p class="clock-what">${what}</p>`}
  <p class="clock-figure${count && html` is-count`}" role="timer" aria-label="${say(rising ? "clock.gone" : "clock.left", { span: span(ms, round) })}">${large}<small>${rest}${note && html`<span>${note}</span>`}</small></p>`;
};

// From an hour on the hours are the large ones, and the minutes follow.
function parts(ms, round) {
  const text = minSec(ms, round);
  if (/^\u2212?0:\d\d$/.test(text)) return [text.slice(-2).replace(/^0/, ""), " s"];
  const cut = text.indexOf(":");
  return [text.slice(0, cut), text.slice(cut, cut + 3) + (text.length > cut + 3 ? " h" : "")];
}
