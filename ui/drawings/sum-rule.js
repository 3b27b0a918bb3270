// Sum rule: the nominal cover less its errors, against what is asked.

import { html } from "../html.js";
import { number } from "../format.js";
import { say } from "../text/say.js";
import { bar, drawing, hatch, line, multiple, pct, text } from "./svg.js";

/** Returns the rule. In mm: `nominal`, `left` of it after the errors, `errors` from the first to the last, `asked`. */
export function sumRule({ id, nominal, left, errors, asked, label }) {
  const to = Math.max(nominal, asked);
  const x = (mm) => pct(mm, to);
  const kinds = [["", `${id}-1`], ["", `${id}-2`], ["d-paper", undefined]];
  let at = Math.max(0, left);
  return drawing({ height: 66, label, inside: html`${hatch(`${id}-1`, "d-hatch-ink", 6)}${hatch(`${id}-2`, "d-hatch-ink", 5, true)}
    ${left > 0 && bar("0", 10, x(left), 26, left < asked ? "d-trouble" : "d-patch")}
    ${errors.map((mm, i) => { const drawn = bar(x(at), 10, x(mm), 26, `d-outline ${kinds[i % 3][0]}`, kinds[i % 3][1]); at += mm; return drawn; })}
    ${line("d-line", "0%", 36, "100%", 36)}${scaleTicks(to, asked, x)}
    ${line("d-heavy", x(asked), 2, x(asked), 47)}${text(x(asked), 61, say("cover.asked", { n: number(asked) }), { bold: true, end: "end", dx: 4 })}
    ${asked < nominal * 0.87 && text("100%", 60, say("unit.mm", { n: number(nominal) }), { soft: true, end: "end" })}` });
}

function scaleTicks(to, asked, x) {
  const marks = [];
  for (let mm = 0; mm <= to; mm += 10) {
    const named = multiple(mm, 50);
    marks.push(html`${line("d-thin", x(mm), 36, x(mm), named ? 45 : 41)}${named && mm < asked - 0.25 * to && text(x(mm), 60, number(mm), { soft: true, end: mm === 0 ? undefined : "middle" })}`);
  }
  return marks;
}
