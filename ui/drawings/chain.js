// Chain: the record's entries as a rule, with the stages flagged, the head, and the place where something does not fit.

import { html } from "../html.js";
import { say } from "../text/say.js";
import { at, drawing, line, multiple, pct, text } from "./svg.js";

/**
 * Returns the chain of `entries` entries. `flags` are { entry, name, minor }: minor names are left out on a narrow screen.
 * `broken` { entry, says } draws the trouble below the rule.
 */
export function chain({ entries, flags = [], broken, label }) {
  const x = (entry) => pct(entry, entries);
  return drawing({ height: broken ? 88 : 66, label, inside: html`${line("d-line", "0%", 34, "100%", 34)}${entryTicks(entries, x)}
    ${flags.map(({ entry, name, minor }) => html`${line("d-line", x(entry), 24, x(entry), 34)}${text(x(entry), 19, name, { dx: -1, kind: minor ? "only-wide" : "" })}`)}
    ${at("100%", 34, html`<path class="d-patch" d="M0 -2L-7 -14H7Z"/>`)}${text("100%", 15, say("chain.head"), { bold: true, end: "end" })}
    ${broken && html`${at(x(broken.entry), 34, html`<path class="d-trouble" d="M0 -4L-9 14H9Z"/>`)}${text(x(broken.entry), 82, broken.says, { bold: true, end: sideEnd(broken.entry / entries) })}`}` });
}

// A long record is ticked in tens or hundreds, so that ticks never run into one grey. At most six figures stand below.
function entryTicks(entries, x) {
  const named = [50, 100, 500, 1000, 5000, 10_000, 50_000].find((n) => entries / n <= 6) ?? 10 ** Math.ceil(Math.log10(entries / 6));
  const marks = [];
  for (let n = 0; n <= entries; n += named / 50) {
    const long = multiple(n, named);
    const mid = multiple(n, named / 5);
    marks.push(html`${line(mid ? "d-thin" : "d-faint", x(n), 34, x(n), long ? 46 : mid ? 42 : 39)}${long && n > 0 && n < entries * 0.92 && text(x(n), 62, n, { soft: true, end: "middle" })}`);
  }
  return html`${marks}${line("d-thin", "100%", 34, "100%", 46)}${text("100%", 62, entries, { soft: true, end: "end" })}`;
}

const sideEnd = (share) => (share > 0.7 ? "end" : share < 0.3 ? undefined : "middle");
