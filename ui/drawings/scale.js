// Scale: where a value lies in its window, below an entry.

import { html } from "../html.js";
import { line, multiple, pct } from "./svg.js";
import { ends } from "../parts/tape.js";

/**
 * Returns the scale from `from` to `to` in steps of `every` (long ticks at `long`). `window` is [low, high] drawn solid,
 * `limit` one heavy line. `says` is the verdict in words below; `left` and `right` name the ends.
 */
export function scale({ from, to, every, long, window, limit, value, label, left, right, says }) {
  const x = (v) => pct(Math.min(to, Math.max(from, v)) - from, to - from);
  const n = Math.round((to - from) / every);
  return html`<div class="scale-wrap"><svg class="scale" role="img" aria-label="${label}">${Array.from({ length: n + 1 }, (_, i) => from + i * every).map((v) => line("d-thin", x(v), 20, x(v), multiple(v - from, long) ? 10 : 15))}
    ${window && html`<rect class="d-ink" x="${x(window[0])}" y="20" width="${pct(window[1] - window[0], to - from)}" height="5"/>`}${line("d-thin", "0%", 20, "100%", 20)}
    ${limit !== undefined && line("d-heavy", x(limit), 2, x(limit), 28)}
    ${Number.isFinite(value) && html`<svg x="${x(value)}" y="9" width="1" height="1"><path class="${value < from || value > to || outside(value, window, limit) ? "d-trouble" : "d-patch"}" d="M0 10L-8 -6H8Z"/></svg>`}</svg>${ends([left, { strong: says }, right])}</div>`;
}

const outside = (value, window, limit) => (window ? value < window[0] || value > window[1] : limit !== undefined && value > limit);
