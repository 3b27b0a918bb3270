// Clock face: where on the circumference, always with the viewing direction said below it.

import { html } from "../html.js";
import { say } from "../text/say.js";
import { arc, polar } from "./svg.js";

const R = 62;

/**
 * Returns the face. `marks` are { from, to, kind } in hours 0 to 12 as seen looking `direction`, "downstream" or "upstream";
 * a range runs clockwise. A kind is "defect", "dot", "lateral" or "round", which needs no hour. `seam` is an hour. Seen against the recorded direction,
 * hours are mirrored: `mirrored(3)` is 9.
 */
export function clockFace({ marks = [], seam, direction, recorded = direction }) {
  const turn = direction === recorded ? (mark) => mark : ({ from, to, ...rest }) => (from === undefined ? rest : { ...rest, from: mirrored(to ?? from), to: to === undefined ? undefined : mirrored(from) });
  const stitched = seam === undefined ? undefined : direction === recorded ? seam : mirrored(seam);
  return html`<svg class="clock-face" viewBox="-96 -92 192 186" role="img" aria-label="${say(`face.${direction}`)}"><circle class="d-line" r="${R}"/><circle class="d-line" r="69"/>
    ${hourTicks()}${[12, 3, 6, 9].map((hour) => { const [x, y] = polar(hour, 41); return html`<text x="${x}" y="${y + 5}" text-anchor="middle">${hour}</text>`; })}
    ${marks.map(turn).map(draw)}${stitched !== undefined && spoke(stitched, 46, 69, "d-heavy")}
    <text y="-77" text-anchor="middle">${say("face.crown")}</text><text y="87" text-anchor="middle">${say("face.invert")}</text>
    <path class="d-thin" d="M-29.1 54.7H29.1M-7 58.7H7"/><path class="d-thin" d="M-5 0H5M0 -5V5"/></svg>`;
}

/** Returns the hour as it is seen from the other side: 12 and 6 stay, 3 and 9 change places. */
export const mirrored = (hour) => { const other = (12 - hour) % 12; return other === 0 ? 12 : other; };

function draw({ from, to = from, kind }) {
  if (kind === "lateral") return html`<g transform="rotate(${(from % 12) * 30})"><rect class="d-paper" x="-9" y="-71" width="18" height="12"/><path class="d-line" d="M-9 -62V-82M9 -62V-82"/></g>`;
  if (kind === "round") return html`<circle class="d-arc" r="65.5"/>`;
  if (kind === "dot" || from === to) { const [x, y] = polar(from, 58); return html`<circle class="d-ink" cx="${x}" cy="${y}" r="5"/>`; }
  return html`<path class="d-arc" d="${arc(from, to, 65.5)}"/>${[from, to].map((hour) => spoke(hour, 59, 77, "d-line"))}`;
}

const spoke = (hour, inner, outer, kind) => html`<path class="${kind}" d="M${polar(hour, inner)}L${polar(hour, outer)}"/>`;

const hourTicks = () => Array.from({ length: 12 }, (_, hour) => spoke(hour, hour % 3 ? 56 : 52, R, "d-thin"));
