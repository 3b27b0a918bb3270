// The line in side view: shafts, hose, rope, packer, patch and the reading point. A plan of laterals where asked.

import { html } from "../html.js";
import { amount, number, quantity } from "../format.js";
import { say } from "../text/say.js";
import { arc as arcPath, at, bar, drawing, line, multiple, pct, polar, text, ticks } from "./svg.js";

const FALL = 5;         // px that the pipe falls over its length, so that the flow reads
const BORE = 15;        // px of pipe height
const TOP = 23;

/**
 * Returns the line. Lengths in metres from the reference node. `nodes` are the two names; `length_m`; `laterals_m` stations;
 * `packer` { at_m, length_m }, `patch` { at_m, length_m }, `target_m` is ruled with its figure where `target_named`, `detail` draws
 * the ring A. `hose_from` and `rope_from` are "start", "end" or nothing; `read_at` is the station of the reading point.
 */
export function lineView({ nodes, length_m: length, laterals_m: laterals = [], packer, patch, target_m: target, target_named: named = false, detail = false, hose_from: hose, rope_from: rope, read_at: read = true, label }) {
  const place = geometry(length, 72);
  return drawing({ height: 134, label, inside: html`${ground()}${shafts(nodes, place)}${pipe(place)}
    ${laterals.map((m) => lateral(m, place))}
    ${hose && hoseOf(hose, packer, place)}${rope && ropeOf(rope, packer, place)}
    ${read !== null && hose && readingPoint(hose, place)}
    ${packer && packerOf(packer, place)}${patch && patchOf(patch, place)}
    ${target !== undefined && line("d-dash", place.x(target), 56, place.x(target), 103)}
    ${named && text(place.x(target), 50, quantity("m", target * 1e6), { dx: 6, bold: true, halo: true })}
    ${detail && ring(target, place)}${stationRule(length, 106)}` });
}

/**
 * Returns the line with what was seen in it: `observations` are { at_m, name, picked, minor, arc: [from, to], dots: [hour] };
 * `minor` ones lose their name first where there is no room.
 */
export function defectsView({ nodes, length_m: length, observations, downstream = "right", label }) {
  const place = geometry(length, 98);
  return drawing({ height: 186, label, inside: html`${ground()}${shafts(nodes, place, 20)}${pipe(place)}
    ${at("80%", 109.5, html`<path class="d-thin" d="${downstream === "right" ? "M-16 0H14M8 -4L15 0L8 4" : "M16 0H-14M-8 -4L-15 0L-8 4"}"/>`)}
    ${spread(observations, length).map((seen) => observation(seen, place))}${stationRule(length, 158)}` });
}

const geometry = (length, crown) => ({ x: (m) => pct(m, length), crown: (m) => crown + (FALL * m) / length, middle: (m) => crown + BORE / 2 + (FALL * m) / length, length, top: crown });

const ground = () => html`<line class="d-heavy" x1="-22" y1="26" x2="-11" y2="26"/>${at("0%", 0, html`<line class="d-heavy" x1="11" y1="26" x2="13" y2="26"/>`)}
  <svg x="0" y="24.5" width="100%" height="3" overflow="visible"><rect class="d-ink" width="100%" height="3"/></svg>${bar("0", 28, "100%", 7, "d-ground")}`;

const shafts = (nodes, { top }, side = 16) => html`${[0, FALL].map((fall, i) => at(i ? "100%" : "0%", 0, html`<rect class="d-paper" x="-11" y="23" width="22" height="${top - 8 + fall}"/><path class="d-line" d="M-11 ${TOP}V${top + BORE + fall}H11V${TOP}"/><path class="d-heavy" d="M-15 24H-11M11 24H15"/>`))}
  ${text("0%", 13, nodes[0], { dx: side === 20 ? -20 : 16, bold: true })}${text("100%", 13, nodes[1], { dx: side === 20 ? 20 : -8, end: "end", bold: true })}`;

// The pipe opens into both shafts: paper over the shaft's wall, then its two lines.
const pipe = ({ top }) => html`${at("0%", 0, html`<rect class="d-paper" x="9" y="${top + 1}" width="5" height="13"/>`)}${at("100%", 0, html`<rect class="d-paper" x="-13" y="${top + 6}" width="5" height="13"/>`)}
  ${line("d-line", "0%", top, "100%", top + FALL)}${line("d-line", "0%", top + BORE, "100%", top + BORE + FALL)}
  ${at("0%", 0, html`<rect class="d-paper" x="-10" y="${top - 2}" width="20" height="15"/>`)}${at("100%", 0, html`<rect class="d-paper" x="-10" y="${top + 3}" width="20" height="15"/>`)}`;

const lateral = (m, place) => at(place.x(m), place.crown(m), html`<path class="d-thin" d="M-4 0V-14M4 0V-14"/><rect class="d-paper" x="-3.2" y="-1.5" width="6.4" height="3"/>`);

const ends = (packer) => [packer.at_m - packer.length_m / 2, packer.at_m + packer.length_m / 2];

// A bow down the shaft, with its reel: never a rigid rod round a corner.
function hoseOf(from, packer, place) {
  const y = place.middle(from === "start" ? 0 : place.length);
  const end = from === "start" ? ends(packer)[0] : ends(packer)[1];
  const turn = from === "start" ? "" : "scale(-1 1)";
  return html`${at(from === "start" ? "0%" : "100%", 0, html`<g transform="${turn}"><circle class="d-packer" cx="-15" cy="16" r="7"/><circle class="d-thin" cx="-15" cy="16" r="3"/><path class="d-heavy" d="M-12 9C-2 8 -5 24 -5 38V${y - 17.5}C-5 ${y - 4.5} 0 ${y} 12 ${y}"/></g>`)}
    ${line("d-heavy", from === "start" ? "10" : "100%", y, place.x(end), place.middle(packer.at_m))}`;
}

function ropeOf(from, packer, place) {
  const y = place.middle(from === "start" ? 0 : place.length);
  const end = from === "start" ? ends(packer)[0] : ends(packer)[1];
  const turn = from === "start" ? "scale(-1 1)" : "";
  return html`${line("d-dash", place.x(end), place.middle(packer.at_m), from === "start" ? "0%" : "100%", y)}
    ${at(from === "start" ? "0%" : "100%", 0, html`<g transform="${turn}"><path class="d-dash" d="M0 ${y}C5 ${y} 5 ${y - 13.5} 5 ${y - 19.5}V18"/><path class="d-line" d="M5 18L-6 24M5 18L16 24"/></g>`)}`;
}

function readingPoint(hose, place) {
  const start = hose === "start";
  const y = place.crown(start ? 0 : place.length);
  return html`${at(start ? "0%" : "100%", 0, html`<g transform="${start ? "" : "scale(-1 1)"}"><path class="d-heavy" d="M11 ${y + 1}V${y + 14}"/><path class="d-thin" d="M11 ${y - 1}L20 ${y - 18}"/></g>`)}
    ${text(start ? "0%" : "100%", y - 20, say("line.read_here"), { bold: true, halo: true, dx: start ? 22 : -22, end: start ? undefined : "end" })}`;
}

const packerOf = ({ at_m: m, length_m: long }, place) => html`<svg x="${place.x(m - long / 2)}" y="${place.middle(m) - 5}" width="${pct(long, place.length)}" height="11"><rect class="d-packer" width="100%" height="100%" rx="3"/></svg>`;

const patchOf = ({ at_m: m, length_m: long }, place) => [-1, BORE - 1].map((dy) => bar(place.x(m - long / 2), place.crown(m) + dy - 2, pct(long, place.length), 6, "d-patch"));

const ring = (m, place) => at(place.x(m), place.middle(m), html`<circle class="d-thin" r="16"/><path class="d-thin" d="M-11 -11L-19 -19H-25"/><text x="-29" y="-15" text-anchor="end" class="t-bold">A</text>`);

/** What a letter takes of the line's width where it is narrowest, on a phone. */
const LETTER = 7 / 300;

/** Where a name stands at its mark, the wanted way first. */
const SIDES = { left: ["left", "middle", "right"], right: ["right", "middle", "left"], middle: ["middle", "right", "left"] };

// Names of neighbours lean away from each other and stand on different heights. Where there is no room for a name, the mark
// stands without it; what is picked and what is damaged is named before the laterals.
function spread(observations, length) {
  const sorted = [...observations].sort((a, b) => a.at_m - b.at_m);
  const near = (a, b) => a && b && Math.abs(a.at_m - b.at_m) < length * 0.05;
  const taken = { names: [[], [], []], leaders: [] };
  const placed = new Map();
  for (const seen of [...sorted].sort((a, b) => weight(b) - weight(a))) {
    const i = sorted.indexOf(seen);
    const wanted = near(seen, sorted[i + 1]) ? "left" : near(seen, sorted[i - 1]) ? "right" : "middle";
    const found = room(seen, seen.at_m / length, SIDES[wanted], taken);
    placed.set(seen, found ?? { level: 0, side: wanted, none: !seen.picked });
  }
  return sorted.map((seen) => { const { level, side, none } = placed.get(seen); return { ...seen, level, side, name: none ? undefined : seen.name }; });
}

// The line down from a name crosses no name that stands lower, and no line from above crosses this name.
function room({ name = "" }, share, sides, { names, leaders }) {
  const wide = name.length * LETTER;
  const under = (level) => names.slice(0, level).flat();
  for (const level of names.keys()) {
    if (under(level).some(({ from, to }) => share > from && share < to)) continue;
    for (const side of sides) {
      const from = share - { left: wide + 0.02, middle: wide / 2, right: -0.02 }[side];
      const free = from > 0.02 && from + wide < 0.98 && names[level].every((other) => from + wide < other.from || from > other.to)
        && leaders.every((other) => other.level <= level || other.share < from || other.share > from + wide);
      if (free) { names[level].push({ from, to: from + wide }); leaders.push({ level, share }); return { level, side }; }
    }
  }
  return undefined;
}

const weight = ({ picked, minor }) => (picked ? 2 : minor ? 0 : 1);

const LEAN = { left: { end: "end", dx: -6 }, right: { end: undefined, dx: 6 }, middle: {} };

// What is picked wears the accent.
function observation({ at_m: m, name, picked, arc, dots = [], level, side }, place) {
  const x = place.x(m);
  const y = [84, 68, 52][level];
  const foot = picked ? place.middle(m) : place.crown(m);
  return html`${line(picked ? "d-patch-line" : "d-thin", x, y, x, foot.toFixed(1))}${name && text(x, y - 4, name, { bold: picked, end: "middle", halo: true, ...LEAN[side] })}
    ${picked && at(x, place.middle(m), html`<circle class="d-patch" r="5"/>`)}${(arc || dots.length > 0) && at(x, place.middle(m) + 27, mark(arc, dots, picked))}`;
}

// A small clock, seen looking downstream: an arc runs clockwise, a dot is one hour.
function mark(arc, dots, picked) {
  return html`<path class="d-faint" d="M0 -19V-10"/><circle class="d-packer" r="9.5"/><path class="d-thin" d="M0 -9.5V-6"/>
    ${arc && html`<path class="${picked ? "d-arc-small" : "d-heavy"}" d="${arcPath(arc[0], arc[1], 9.5)}"/>`}
    ${dots.map((hour) => { const [x, y] = polar(hour, arc ? 6.5 : 8.5); return html`<circle class="d-ink" cx="${x}" cy="${y}" r="3"/>`; })}`;
}

// Stations from the centre of the reference node, in the unit that is shown. The last figure is the length itself.
const stationRule = (metres, y) => {
  const length = amount("m", metres * 1e6);
  const named = [[600, 200], [250, 100], [120, 50], [60, 20], [12, 10], [4, 2]].find(([above]) => length > above)?.[1] ?? 1;
  return html`${line("d-thin", "0%", y, "100%", y)}${ticks({ from: 0, to: length, every: named / 10, y, long: (m) => multiple(m, named), mid: (m) => multiple(m, named / 2),
    name: (m) => (multiple(m, named) && m < length * 0.82 ? (m === 0 ? undefined : number(m)) : undefined) })}
  ${text("0%", y + 23, "0", { soft: true, end: "middle" })}${line("d-thin", "100%", y, "100%", y + 9)}${text("100%", y + 23, quantity("m", metres * 1e6), { soft: true, end: "end", dx: 20 })}`;
};
