// Edges: the patch as it was found, with folds, lifts and laterals.

import { html } from "../html.js";
import { quantity } from "../format.js";
import { say } from "../text/say.js";
import { at, bar, drawing, line, text } from "./svg.js";

const LEFT = 18;
const WIDE = 64;

/**
 * Returns the drawing of a patch from `from_m` to `to_m`. `found` are { kind: "fold" | "lift" | "lateral", at_m, hour, says };
 * from 9 over 12 to 3 they stand at the crown, else at the invert. `upstream_left` says which edge is on the left.
 */
export function edges({ from_m: from, to_m: to, found = [], upstream_left: up = true, label }) {
  const x = (m) => `${(LEFT + (WIDE * (m - from)) / (to - from)).toFixed(1)}%`;
  return drawing({ height: 170, label, inside: html`${bar("0", 21, "100%", 9, "d-ground")}${bar("0", 128, "100%", 9, "d-ground")}
    ${[30, 128].map((y) => line("d-line", "0%", y, "100%", y))}${bar(`${LEFT}%`, 31, `${WIDE}%`, 6, "d-patch")}${bar(`${LEFT}%`, 121, `${WIDE}%`, 6, "d-patch")}
    ${[`${LEFT}%`, `${LEFT + WIDE}%`].map((edge) => line("d-dash", edge, 12, edge, 148))}
    ${found.map((one) => mark(one, x(one.at_m)))}
    ${text(`${LEFT}%`, 164, quantity("m", from * 1e6), { end: "middle", bold: true })}${text(`${LEFT + WIDE}%`, 164, quantity("m", to * 1e6), { end: "middle", bold: true })}
    ${text("0%", 10, say(up ? "edge.upstream" : "edge.downstream"))}${text("100%", 10, say(up ? "edge.downstream" : "edge.upstream"), { end: "end" })}` });
}

const SHAPES = {
  fold: html`<path class="d-patch" d="M-12 0Q-3 0 -1 -7Q0 -10 1 -7Q3 0 12 0Z"/>`,
  lift: html`<path class="d-trouble" d="M-10 1L10 1L10 -9Z"/>`,
  lateral: html`<path class="d-paper" d="M-9 -10H9V1H-9Z"/><path class="d-line" d="M-9 1V-9M9 1V-9"/>`,
};

function mark({ kind, hour, says }, x) {
  const crown = hour >= 9 || hour <= 3;
  const [y, flip] = kind === "lateral" ? [crown ? 30 : 128, !crown] : [crown ? 37 : 121, crown];
  return html`${at(x, y, html`<g transform="${flip ? "scale(1 -1)" : ""}">${SHAPES[kind]}</g>`)}${text(x, crown ? (kind === "lateral" ? 54 : 66) : kind === "lateral" ? 112 : 100, says, { halo: true, end: "middle" })}`;
}
