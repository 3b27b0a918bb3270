// Temperature rule: three temperatures against the limit above which there is no go.

import { html } from "../html.js";
import { amount, number, unitOf } from "../format.js";
import { at, bar, drawing, hatch, line, multiple, pct, text } from "./svg.js";

/**
 * Returns the rule. Temperatures in °C: `temps` are { name, celsius }, `limit` the warmest that still leaves time enough,
 * `limit_says` stands above it. What lies above the limit is hatched and wears the alarm colour with another shape.
 */
export function tempRule({ id, temps, limit: warmest, limit_says: says, label }) {
  const shown = (celsius) => amount("celsius", celsius * 1e3);
  const limit = warmest === undefined ? undefined : shown(warmest);
  const sorted = temps.map(({ name, celsius }) => ({ name, degrees: shown(celsius) })).sort((a, b) => a.degrees - b.degrees);
  const all = [...sorted.map(({ degrees }) => degrees), ...(limit === undefined ? [] : [limit])];
  const named = Math.max(...all) - Math.min(...all) > 30 ? 10 : 5;
  const from = Math.floor((Math.min(...all) - 4) / named) * named;
  const to = Math.max(Math.ceil((Math.max(...all) + 2) / named) * named, from + 15);
  const x = (degrees) => pct(degrees - from, to - from);
  return drawing({ height: 86, label, inside: html`${hatch(`${id}-hot`, "d-hatch", 7)}
    ${limit !== undefined && bar(x(limit), 32, pct(to - limit, to - from), 26, "", `${id}-hot`)}
    ${rule(from, to, named)}${line("d-thin", "0%", 58, "100%", 58)}
    ${limit !== undefined && html`${line("d-heavy", x(limit), 24, x(limit), 67)}${text(...limitWords(limit, from, to, x), 18, says, { bold: true, end: limitEnd(limit, from, to) })}`}
    ${sorted.map(({ degrees }) => at(x(degrees), 56, degrees > limit ? html`<path class="d-trouble" d="M0 0L-7 -12H7Z"/>` : html`<path class="d-ink" d="M0 0L-6 -11H6Z"/>`))}
    ${sorted.map(({ name, degrees }, i) => {
      const { from: place = degrees, ...side } = sideOf(sorted, i, to - from, limit);
      return text(x(place), crowded(sorted, i, to - from) ? 25 : 41, `${name} ${number(degrees, multiple(degrees, 1) ? 0 : 1)}`, { halo: true, bold: degrees > limit, ...side });
    })}` });
}

const apart = (sorted, i, j, whole) => (sorted[j] === undefined ? 1 : Math.abs(sorted[i].degrees - sorted[j].degrees) / whole);

// Between two close neighbours there is no room: its words stand one line higher.
const crowded = (sorted, i, whole) => apart(sorted, i, i - 1, whole) < 1 / 5 && apart(sorted, i, i + 1, whole) < 1 / 5;

// Neighbours closer than a fifth of the rule lean away from each other, the more the closer they are. Whoever has room keeps off
// the line of the limit: its words end or begin there.
function sideOf(sorted, i, whole, limit) {
  const [before, after] = [apart(sorted, i, i - 1, whole), apart(sorted, i, i + 1, whole)];
  if (crowded(sorted, i, whole)) return { end: "middle" };
  if (after < 1 / 5) return { end: "end", dx: after < 0.08 ? -1 : 6 };
  if (before < 1 / 5) return { dx: before < 0.08 ? 3 : -6 };
  const off = (limit - sorted[i].degrees) / whole;
  if (off >= 0 && off < 1 / 8) return { from: limit, end: "end", dx: -4 };
  if (off < 0 && off > -1 / 8) return { from: limit, dx: 4 };
  // A neighbour that leans this way takes the room up to here.
  if (before < 1 / 3 && apart(sorted, i - 1, i - 2, whole) < 1 / 5) return { dx: -6 };
  if (after < 1 / 3 && apart(sorted, i + 1, i + 2, whole) < 1 / 5) return { end: "end", dx: 6 };
  return { end: "middle" };
}

const limitWords = (limit, from, to, x) => [limit > from + 0.6 * (to - from) ? "100%" : limit < from + 0.3 * (to - from) ? "0%" : x(limit)];
const limitEnd = (limit, from, to) => (limit > from + 0.6 * (to - from) ? "end" : limit < from + 0.3 * (to - from) ? undefined : "middle");

function rule(from, to, named) {
  const every = named / 5;
  return Array.from({ length: (to - from) / every + 1 }, (_, i) => from + i * every).map((degrees) => {
    const x = pct(degrees - from, to - from);
    const long = multiple(degrees, named);
    return html`${line(long ? "d-thin" : "d-faint", x, 58, x, long ? 67 : 62.5)}${long && text(x, 82, degrees === to ? `${number(degrees)}\u00a0${unitOf("celsius")}` : number(degrees), { soft: true, end: degrees === from ? undefined : degrees === to ? "end" : "middle" })}`;
  });
}
