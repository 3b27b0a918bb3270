// Budget: the working time cut into what must happen in it, and any sum that is shown with its parts.

import { html, vars } from "../html.js";
import { minSec } from "../format.js";
import { say } from "../text/say.js";
import { tape } from "./tape.js";

/**
 * Returns the working time `total_ms` against its parts { label, ms }. What is left closes the list; what is missing stands
 * in the alarm colour, with the needle where the working time ends.
 */
export const budget = ({ total_ms: total, parts }) => {
  const needed = parts.reduce((sum, { ms }) => sum + ms, 0);
  const left = total - needed;
  const drawn = parts.map(({ ms }, i) => ({ kind: `b${i + 1}`, m: ms / 60e3 }));
  const n = Math.max(total, needed) / 60e3;
  return html`<div class="budget">${tape({ n, label: say("budget.label", { needed: minSec(needed, "up"), total: minSec(total) }), parts: left > 0 ? [...drawn, { kind: "b5", m: left / 60e3 }] : drawn })}
  ${left < 0 && html`<p class="short" ${vars({ from: total / 60e3, n })}><span>${say("budget.ends", { at: minSec(total) })}</span></p>`}
  ${rows([...parts.map(({ label, ms }, i) => ({ mark: `b${i + 1}`, label, value: minSec(ms, "up") })), left < 0
    ? { mark: "over", label: say("budget.short", { total: minSec(total) }), value: minSec(-left, "up") }
    : { mark: "b5", label: say("budget.left", { total: minSec(total) }), value: minSec(left) }])}</div>`;
};

/** Returns a sum in words: rows { mark, label, value }, the last one is what comes out. */
export const sum = (items) => html`<div class="budget sum">${rows(items)}</div>`;

const rows = (items) => html`<ol>${items.map(({ mark, label, value }) => html`<li><i class="${mark}"></i><b>${label}</b><span>${value}</span></li>`)}</ol>`;
