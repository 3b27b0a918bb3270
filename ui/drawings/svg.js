// Pieces of every drawing. Across, lengths are per cent of the drawing, so they stay to scale at any width; heights are px.

import { attr, html } from "../html.js";

/** Returns `value` of `whole` as per cent. */
export const pct = (value, whole) => `${Number(((100 * value) / whole).toFixed(2))}%`;

/** Returns the drawing. `label` says in words what it shows; every figure in it also stands in the text beside it. */
export const drawing = ({ height, label, kind, inside }) => html`<svg ${attr("class", kind)} width="100%" height="${height}" role="img" aria-label="${label}">${inside}</svg>`;

/** Returns a figure with its caption. `flush` draws to the edge of the column. */
export const figure = ({ inside, caption, above, kind = "", flush = false }) => html`<figure class="drawing ${kind}${flush && html` is-flush`}">${above && html`<figcaption>${above}</figcaption>`}<div>${inside}</div>${caption && html`<figcaption>${caption}</figcaption>`}</figure>`;

/** Returns a straight line; `x` in per cent, `y` in px. */
export const line = (kind, x1, y1, x2, y2) => html`<line class="${kind}" x1="${x1}" y1="${y1}" x2="${x2}" y2="${y2}"/>`;

/** Returns what is drawn in px around the place `x` (per cent), `y`. */
export const at = (x, y, inside) => html`<svg x="${x}" y="${y}" width="1" height="1">${inside}</svg>`;

/** Returns text. `end` is "middle" or "end"; `halo` keeps it readable on lines; `dx` moves it in px. */
export const text = (x, y, words, { end, halo = false, bold = false, soft = false, dx, kind = "" } = {}) =>
  html`<text class="${[halo && "d-halo", bold && "t-bold", soft && "t-soft", kind].filter(Boolean).join(" ")}" x="${x}" y="${y}" ${attr("dx", dx)} ${attr("text-anchor", end)}>${words}</text>`;

/** Returns a hatch to be used as `fill="url(#id)"`. `stroke` is a class; `flat` draws lines that lie, else they lean. */
export const hatch = (id, stroke, gap, flat = false) => html`<defs><pattern id="${id}" width="${gap}" height="${gap}" patternUnits="userSpaceOnUse" ${!flat && html`patternTransform="rotate(45)"`}><path class="${stroke}" d="${flat ? `M0 1H${gap}` : `M0 0V${gap}`}"/></pattern></defs>`;

/** Returns a filled length on a rule: from `x`, `width`, both in per cent. */
export const bar = (x, y, width, height, kind, fill) => html`<rect x="${x}" y="${y}" width="${width}" height="${height}" ${attr("class", kind)} ${fill && html`fill="url(#${fill})"`}/>`;

/**
 * Returns ticks on the rule at height `y`, from `from` to `to` in steps of `every`. `name(value)` returns the figure below,
 * or nothing; a tick is long where `long(value)` says so, of middle length where `mid` does.
 */
export function ticks({ from, to, every, y, name = () => undefined, long = () => false, mid = () => false }) {
  const drawn = [];
  for (let i = Math.ceil(from / every - 1e-9); i * every <= to + 1e-9; i += 1) {
    const value = Number((i * every).toFixed(6));
    const x = pct(value - from, to - from);
    const size = long(value) ? 9 : mid(value) ? 6 : 3.5;
    drawn.push(line(size > 3.5 ? "d-thin" : "d-faint", x, y, x, y + size));
    const said = name(value);
    if (said !== undefined) drawn.push(text(x, y + 23, said, { soft: true, end: endAt(value, from, to) }));
  }
  return drawn;
}

// A figure at either end stays inside the drawing.
const endAt = (value, from, to) => (value === from ? undefined : value === to ? "end" : "middle");

/** Returns the point [x, y] at a clock hour on a circle of radius `r`, seen as drawn: 12 is up, 3 is right. */
export const polar = (hour, r) => {
  const angle = (hour / 12) * 2 * Math.PI;
  return [r * Math.sin(angle), -r * Math.cos(angle)].map((v) => Number(v.toFixed(1)) + 0);
};

/** Returns a path along a circle, clockwise from one hour to another. */
export const arc = (from, to, r) => `M${polar(from, r)}A${r} ${r} 0 ${(to - from + 12) % 12 > 6 ? 1 : 0} 1 ${polar(to, r)}`;

/** Returns the round step, 1, 2 or 5 of a power of ten, that is `least` or the next above it. */
export function roundStep(least) {
  const ten = 10 ** Math.floor(Math.log10(least) + 1e-9);
  return Number(([1, 2, 5, 10].find((one) => one * ten >= least * (1 - 1e-9)) * ten).toPrecision(1));
}

/** Returns whether `value` is a multiple of `step`, up to the rounding of binary fractions. */
export const multiple = (value, step) => Math.abs(value / step - Math.round(value / step)) < 1e-6;
