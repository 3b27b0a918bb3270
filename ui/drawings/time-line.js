// Time line of a repair: its attempts with their stages, and numbered marks where it went off the plan.

import { html } from "../html.js";
import { time } from "../format.js";
import { at, bar, drawing, hatch, line, pct, text } from "./svg.js";

/**
 * Returns the line from `from_ms` to `to_ms`. `attempts` are { name, failed, spans: [{ from_ms, to_ms, solid, name }] };
 * a failed one is hatched and struck out. `gaps` are not witnessed. `marks` are { at_ms, n, needs }: those that need a
 * decision wear the accent.
 */
export function timeLine({ id, from_ms: from, to_ms: to, offset_min: offset, attempts, gaps = [], marks, label }) {
  const x = (ms) => pct(ms - from, to - from);
  const width = (a, b) => pct(b - a, to - from);
  return drawing({ height: 120, label, inside: html`${hatch(id, "d-hatch-thin", 6)}
    ${attempts.map(({ name, failed, spans }) => html`${text(x(spans[0].from_ms), 16, name, { bold: true })}
      ${spans.map((span) => bar(x(span.from_ms), 26, width(span.from_ms, span.to_ms), 20, `d-outline ${span.solid ? "d-ink" : failed ? "" : "d-paper"}`, failed ? id : undefined))}
      ${failed && at(x(spans.at(-1).to_ms), 36, html`<path class="d-strike" d="M-6 -16L6 16"/>`)}
      ${spans.filter((span) => span.name && (middle(span) - spans[0].from_ms) / (to - from) > CLEAR).map((span) => text(x(middle(span)), 16, span.name, { soft: true, end: "middle", kind: "only-wide" }))}`)}
    ${gaps.map((gap) => html`${bar(x(gap.from_ms), 26, width(gap.from_ms, gap.to_ms), 20, "d-outline d-paper")}${bar(x(gap.from_ms), 26, width(gap.from_ms, gap.to_ms), 20, "", id)}`)}
    ${Object.entries(APART).map(([kind, least]) => html`<g class="${kind}">${apart(marks, from, to, least).map(({ at_ms: ms, n, needs, place }) => html`${line("d-thin", x(ms), 46, place, 58)}${at(place, 68, html`<circle class="${needs ? "d-patch" : "d-packer"}" r="11"/>`)}${text(place, 72.5, n, { bold: true, end: "middle", kind: needs ? "t-on" : "" })}`)}</g>`)}
    ${line("d-thin", "0%", 92, "100%", 92)}${hours(from, to, offset, x)}` });
}

/** From where on the name of a stage does not run into the name of its attempt, as a share of the line. */
const CLEAR = 0.1;

const middle = ({ from_ms: from, to_ms: to }) => (from + to) / 2;

/** How far apart two marks stand at least, as a share of the line, on a wide screen and on a narrow one. */
const APART = { "only-wide": 0.032, "only-narrow": 0.075 };

// Marks of nearly the same moment stand side by side, the last ones moved to the left where the line ends.
function apart(marks, from, to, wanted) {
  const least = Math.min(wanted, 1 / marks.length);
  const sorted = [...marks].sort((a, b) => a.at_ms - b.at_ms);
  const places = [];
  for (const { at_ms: ms } of sorted) places.push(Math.max((ms - from) / (to - from), (places.at(-1) ?? -1) + least));
  for (let i = places.length - 1, most = 1; i >= 0; i -= 1, most = places[i + 1] - least) places[i] = Math.min(places[i], most);
  return sorted.map((mark, i) => ({ ...mark, place: pct(places[i], 1) }));
}

// How many minutes lie between two ticks, and how many ticks between two that are named: days, hours, minutes.
const STEPS = [{ beyond: 24 * 3600e3, every: 60, named: 6 }, { beyond: 40 * 60e3, every: 10, named: 6 }, { beyond: -1, every: 1, named: 5 }];

function hours(from, to, offset, x) {
  const { every, named: nth } = STEPS.find(({ beyond }) => to - from > beyond);
  const marks = [];
  for (let m = Math.ceil((from / 60e3 + offset) / every) * every; (m - offset) * 60e3 <= to; m += every) {
    const ms = (m - offset) * 60e3;
    const named = m % (nth * every) === 0;
    const share = (ms - from) / (to - from);
    marks.push(html`${line(named ? "d-thin" : "d-faint", x(ms), 92, x(ms), named ? 101 : 97)}${named && share < 0.97 && text(x(ms), 115, time(ms, offset), { soft: true, end: share < 0.02 ? undefined : "middle", kind: m % (2 * nth * every) ? "only-wide" : "" })}`);
  }
  return marks;
}
