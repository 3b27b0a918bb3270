// Hold chart: pressure against time, the window clear between hatched limits, what was not witnessed, now, and the release.

import { html } from "../html.js";
import { figure, time } from "../format.js";
import { say } from "../text/say.js";
import { at, bar, drawing, hatch, line, pct, text } from "./svg.js";

const TOP = 8;

/**
 * Returns the chart, `height` px high. `readings` are { at_ms, bar } in order; `window_bar` [lower, upper]; `gaps` are
 * { from_ms, to_ms } not witnessed; `now_ms`; `release_ms` where known. `from_ms` to `to_ms` is the time drawn, `offset_min`
 * that of the place. `narrow` names every second figure only.
 */
export function holdChart({ id, height = 176, readings, window_bar: [lower, upper], gaps = [], now_ms: now, release_ms: release, from_ms: from, to_ms: to, offset_min: offset, narrow = false, label }) {
  const foot = height - 30;
  const x = (ms) => pct(ms - from, to - from);
  const y = scale(readings, lower, upper, foot);
  // While the needle is at the left, the limits are named at the right.
  const named = now !== undefined && (now - from) / (to - from) < 0.4 ? ["100%", { end: "end" }] : ["0%", {}];
  return drawing({ height, label, inside: html`${hatch(`${id}-out`, "d-hatch", 7)}${hatch(`${id}-gap`, "d-hatch-edge", 3.5)}
    ${bar("0", TOP, "100%", y(upper) - TOP, "", `${id}-out`)}${bar("0", y(lower), "100%", foot - y(lower), "", `${id}-out`)}
    ${release !== undefined && line("d-dash", x(release), TOP + 2, x(release), foot)}
    ${[[upper, "hold.upper", -9], [lower, "hold.lower", 17]].map(([limit, code, dy]) => html`${line("d-line", "0%", y(limit), "100%", y(limit))}${text(named[0], y(limit) + dy, say(code, { bar: figure("bar", limit * 1e5) }), { halo: true, ...named[1] })}`)}
    ${gaps.map((gap) => gapOf(gap, x, y(upper), y(lower), id))}
    ${readings.slice(1).map((reading, i) => line(across(readings[i], reading, gaps) ? "d-dash" : "d-heavy", x(readings[i].at_ms), y(readings[i].bar), x(reading.at_ms), y(reading.bar)))}
    ${readings.map((reading) => at(x(reading.at_ms), y(reading.bar), reading.bar < lower || reading.bar > upper ? html`<path class="d-trouble" d="M0 -8L8 6H-8Z"/>` : html`<circle class="d-point" r="4.5"/>`))}
    ${now !== undefined && needle(x(now), foot, time(now, offset), (now - from) / (to - from))}
    ${release !== undefined && text(x(release), (y(upper) + y(lower)) / 2 + 4, say("hold.release"), { halo: true, end: "end", dx: -6 })}
    ${line("d-thin", "0%", foot, "100%", foot)}${hours(from, to, offset, foot, narrow, x)}` });
}

// A third of the window is shown beyond each limit, more where a reading lies further out.
function scale(readings, lower, upper, foot) {
  const room = (upper - lower) / 3;
  const low = Math.min(lower - room, ...readings.map(({ bar: value }) => value - room / 2));
  const high = Math.max(upper + room, ...readings.map(({ bar: value }) => value + room / 2));
  return (value) => Number((TOP + ((high - value) / (high - low)) * (foot - TOP)).toFixed(1));
}

const gapOf = ({ from_ms: a, to_ms: b }, x, top, low, id) => html`<rect x="${x(a)}" y="${top + 1}" width="${Math.max(0, parseFloat(x(b)) - parseFloat(x(a))).toFixed(2)}%" height="${(low - top - 2).toFixed(1)}" fill="url(#${id}-gap)"/>
  ${text(`${((parseFloat(x(a)) + parseFloat(x(b))) / 2).toFixed(2)}%`, low - 8, say("hold.gap", { n: Math.ceil((b - a) / 60e3) }), { halo: true, end: "middle" })}`;

const across = (a, b, gaps) => gaps.some((gap) => gap.from_ms < b.at_ms && gap.to_ms > a.at_ms);

// The time stands on the side where there is room.
const needle = (x, foot, name, share) => html`${line("d-patch-line", x, TOP, x, foot)}${at(x, TOP, html`<path class="d-patch" d="M0 8L-6 -3H6Z"/>`)}${text(x, 20, name, share > 0.8 ? { halo: true, bold: true, dx: -10, end: "end" } : { halo: true, bold: true, dx: 10 })}`;

// Ticks every 5 minutes, or every 30 where hours are drawn; figures at 10 or 20, on the clock of the place.
function hours(from, to, offset, foot, narrow, x) {
  const every = to - from > 4 * 3600e3 ? 30 : to - from > 2 * 3600e3 ? 15 : 5;
  const named = every * (narrow ? 4 : 2);
  const first = Math.ceil((from / 60e3 + offset) / every) * every;
  const marks = [];
  for (let m = first; (m - offset) * 60e3 <= to; m += every) {
    const ms = (m - offset) * 60e3;
    const wanted = m % named === 0;
    const share = (ms - from) / (to - from);
    const shown = wanted && share < 0.97 && (!narrow || share > 0.05);
    marks.push(html`${line("d-thin", x(ms), foot, x(ms), foot + (wanted ? 7 : 4))}${shown && text(x(ms), foot + 22, time(ms, offset), { soft: true, end: share < 0.05 ? undefined : "middle" })}`);
  }
  return marks;
}
