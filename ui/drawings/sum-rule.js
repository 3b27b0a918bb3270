// Sum rule: the nominal cover less its errors, against what is asked.

import { html } from "../html.js";
import { amount, figure, number, quantity } from "../format.js";
import { say } from "../text/say.js";
import { bar, drawing, hatch, line, multiple, pct, roundStep, text } from "./svg.js";

/** Returns the rule. In mm: `nominal`, `left` of it after the errors, `errors` from the first to the last, `asked`. */
export function sumRule({ id, nominal, left, errors, asked, label }) {
  const to = Math.max(nominal, asked);
  const x = (mm) => pct(mm, to);
  const kinds = [["", `${id}-1`], ["", `${id}-2`], ["d-paper", undefined]];
  let at = Math.max(0, left);
  return drawing({ height: 66, label, inside: html`${hatch(`${id}-1`, "d-hatch-ink", 6)}${hatch(`${id}-2`, "d-hatch-ink", 5, true)}
    ${left > 0 && bar("0", 10, x(left), 26, left < asked ? "d-trouble" : "d-patch")}
    ${errors.map((mm, i) => { const drawn = bar(x(at), 10, x(mm), 26, `d-outline ${kinds[i % 3][0]}`, kinds[i % 3][1]); at += mm; return drawn; })}
    ${line("d-line", "0%", 36, "100%", 36)}${scaleTicks(to, asked)}
    ${line("d-heavy", x(asked), 2, x(asked), 47)}${text(x(asked), 61, say("cover.asked", { n: figure("mm", asked * 1e3) }), { bold: true, end: "end", dx: 4 })}
    ${asked < nominal * 0.87 && text("100%", 60, quantity("mm", nominal * 1e3), { soft: true, end: "end" })}` });
}

// In the unit that is shown: a figure about five times over the length, four or five ticks to a figure.
function scaleTicks(longest, asked) {
  const [to, last] = [longest, asked - 0.25 * longest].map((mm) => amount("mm", mm * 1e3));
  const named = roundStep(to / 5);
  const every = named / (multiple(Math.log10(named / 2), 1) ? 4 : 5);
  const marks = [];
  for (let i = 0; i * every <= to; i += 1) {
    const [value, x] = [i * every, pct(i * every, to)];
    const long = multiple(value, named);
    marks.push(html`${line("d-thin", x, 36, x, long ? 45 : 41)}${long && value < last && text(x, 60, number(value, named < 1 ? 1 : 0), { soft: true, end: i === 0 ? undefined : "middle" })}`);
  }
  return marks;
}
