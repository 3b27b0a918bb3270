import test from "node:test";
import assert from "node:assert/strict";
import { sound, values, words } from "./kit.mjs";
import "../words.mjs";
import { figure, multiple, pct, ticks } from "../../../ui/drawings/svg.js";
import { defectsView, lineView } from "../../../ui/drawings/line.js";
import { detail } from "../../../ui/drawings/detail.js";
import { clockFace, mirrored } from "../../../ui/drawings/clock-face.js";
import { tempRule } from "../../../ui/drawings/temp-rule.js";
import { holdChart } from "../../../ui/drawings/hold-chart.js";
import { edges } from "../../../ui/drawings/edges.js";
import { faces } from "../../../ui/parts/faces.js";
import { PLACES, places } from "../../../ui/drawings/places.js";
import { scale } from "../../../ui/drawings/scale.js";
import { sumRule } from "../../../ui/drawings/sum-rule.js";
import { chain } from "../../../ui/drawings/chain.js";
import { timeLine } from "../../../ui/drawings/time-line.js";

const line = { nodes: ["MH 214", "MH 215"], length_m: 46.8, laterals_m: [6.35, 24.1], label: "the line" };
const placed = { packer: { at_m: 18.57, length_m: 1 }, patch: { at_m: 18.57, length_m: 0.6 }, target_m: 18.57 };

test("per cent is of the whole, and multiples survive binary fractions", () => {
  assert.equal(pct(18.57, 46.8), "39.68%");
  assert.ok(multiple(0.3, 0.1));
  assert.ok(!multiple(0.35, 0.1));
});

test("ticks: one a step, figures inside the drawing at both ends", () => {
  const text = sound(ticks({ from: 0, to: 10, every: 1, y: 0, name: (v) => (v % 10 ? undefined : v) }).join(""));
  assert.equal(text.match(/<line/g).length, 11);
  assert.doesNotMatch(text, /x="0%"[^>]*text-anchor/);
  assert.match(text, /x="100%"[^>]*text-anchor="end"/);
});

test("line: packer and patch to scale, their centres at the station", () => {
  const text = sound(lineView({ ...line, ...placed, hose_from: "start", rope_from: "end", detail: true }));
  assert.match(text, /<svg x="38\.61%" y="[\d.]+" width="2\.14%"/);
  assert.match(text, /<rect x="39\.04%" y="[\d.]+" width="1\.28%" height="6" class="d-patch"/);
  assert.match(words(text), /MH 214 MH 215 read here A .*46\.80 m/);
});

test("line: the hose comes from the node that is named, the reading point stands there", () => {
  const left = sound(lineView({ ...line, ...placed, hose_from: "start", rope_from: "end" }));
  const right = sound(lineView({ ...line, ...placed, hose_from: "end", rope_from: "start" }));
  assert.match(left, /x="0%"[^>]*dx="22"[^>]*>read here/);
  assert.match(right, /x="100%"[^>]*dx="-22"[^>]*>read here/);
});

test("line: a pipe that is only planned draws without packer or hose", () => assert.doesNotMatch(sound(lineView(line)), /d-packer|d-patch/));

test("line: names of neighbours lean away from each other, what is picked wears the accent", () => {
  const text = sound(defectsView({ ...line, observations: [{ at_m: 18.46, name: "crack", picked: true }, { at_m: 18.6, name: "damp", picked: true, arc: [10, 2], dots: [1] }, { at_m: 31.9, name: "roots", dots: [12] }] }));
  assert.match(text, /dx="-6" text-anchor="end">crack/);
  assert.match(text, /dx="6" >damp/);
  assert.equal(text.match(/class="d-patch-line"/g).length, 2);
  assert.match(text, /cx="0" cy="-8\.5"/);
});

test("line: no line down from a name crosses another name", () => {
  // A crowded phone: each line down (x1, from y1) against each name (x, y, its letters at 7 of 300 px).
  const seen = [["lateral", 17.8], ["broken pipe", 13.1], ["open crack", 7.6], ["infiltration", 18.6], ["crack", 18.5], ["roots", 31.9], ["lateral", 24.1]].map(([name, at_m]) => ({ name, at_m, minor: name === "lateral" }));
  const text = sound(defectsView({ ...line, observations: seen }));
  const names = [...text.matchAll(/<text class="d-halo" x="([\d.]+)%" y="(\d+)"\s*(?:dx="(-?\d+)")?\s*(?:text-anchor="(\w+)")?\s*>([^<]+)</g)].map(([, x, y, dx = "0", anchor = "start", name]) => {
    const [wide, at] = [name.length * 7 / 3, Number(x) + Number(dx) / 3];
    const from = at - { start: 0, middle: wide / 2, end: wide }[anchor];
    return { name, y: Number(y), from, to: from + wide };
  });
  assert.ok(names.length >= 3, `${names.length} names`);
  const lines = [...text.matchAll(/<line class="d-thin" x1="([\d.]+)%" y1="(84|68|52)"/g)].map(([, x, y]) => ({ x: Number(x), y: Number(y) }));
  for (const { name, y, from, to } of names) for (const one of lines) assert.ok(one.y >= y + 4 || one.x <= from || one.x >= to, `a line at ${one.x} % runs through ${name}`);
});

test("detail: patch, defect and packer to one scale; cover on each side", () => {
  const text = sound(detail({ packer_mm: 1000, patch_mm: 600, defect_mm: 220, cover_mm: [156, 156], label: "x" }));
  assert.match(text, /<svg x="25%" y="36" width="50%"/);
  assert.match(text, /<rect x="35%" y="31" width="30%"/);
  assert.match(words(text), /patch 600 packer 1000 cover 156 156 cover defect 220/);
});

test("detail: an offset moves packer and patch, not the defect", () => {
  const text = sound(detail({ packer_mm: 1000, patch_mm: 600, defect_mm: 220, offset_mm: 100, cover_mm: [256, 56], label: "x" }));
  assert.match(text, /<rect x="40%" y="31" width="30%"/);
  assert.match(text, /<line class="d-line" x1="44\.5%"/);
});

test("clock face: 3 h is on the right looking downstream, and 9 h when the same is seen looking upstream", () => {
  const at = (hour) => values(sound(clockFace({ direction: "downstream", marks: [{ from: hour, kind: "dot" }] })), "cx").at(-1);
  assert.equal(at(3), "58");
  assert.equal(at(9), "-58");
  assert.equal(values(sound(clockFace({ direction: "upstream", recorded: "downstream", marks: [{ from: 3, kind: "dot" }] })), "cx").at(-1), "-58");
  assert.deepEqual([12, 1, 3, 6, 9, 11].map(mirrored), [12, 11, 9, 6, 3, 1]);
});

test("clock face: what goes all round has no hour and looks the same from both sides", () => {
  const round = (direction) => sound(clockFace({ direction, recorded: "downstream", marks: [{ kind: "round" }] }));
  assert.match(round("downstream"), /<circle class="d-arc" r="65\.5"\/>/);
  assert.equal(round("upstream").replace("upstream", "downstream"), round("downstream"));
});

test("both faces: each named by its direction, the hour mirrored on the second", () => {
  const text = sound(faces({ marks: [{ from: 3, kind: "dot" }] }));
  assert.deepEqual([...text.matchAll(/<circle class="d-ink" cx="(-?\d+)"/g)].map(([, x]) => Number(x)), [58, -58]);
  assert.match(words(text), /Seen looking downstream .*Seen looking upstream/s);
  const other = sound(faces({ marks: [{ from: 3, kind: "dot" }], recorded: "upstream" }));
  assert.deepEqual([...other.matchAll(/<circle class="d-ink" cx="(-?\d+)"/g)].map(([, x]) => Number(x)), [-58, 58]);
});

test("clock face: a range runs clockwise over the crown, the long way where it is long", () => {
  assert.match(sound(clockFace({ direction: "downstream", marks: [{ from: 10, to: 2 }] })), /A65\.5 65\.5 0 0 1/);
  assert.match(sound(clockFace({ direction: "downstream", marks: [{ from: 2, to: 10 }] })), /A65\.5 65\.5 0 1 1/);
});

test("temperature rule: what is warmer than the limit has another shape", () => {
  const text = sound(tempRule({ id: "t", temps: [{ name: "pipe", celsius: 12 }, { name: "air", celsius: 21 }, { name: "resin", celsius: 24 }], limit: 17.5, limit_says: "17.5 °C gives 27:36", label: "x" }));
  assert.equal(text.match(/d-trouble/g).length, 2);
  assert.match(words(text), /17\.5 °C gives 27:36 pipe 12 air 21 resin 24/);
});

test("temperature rule: words with room keep off the line of the limit", () => {
  const text = sound(tempRule({ id: "t", temps: [{ name: "pipe", celsius: 12.8 }, { name: "air", celsius: 13.1 }, { name: "resin", celsius: 19.2 }], limit: 21, limit_says: "no go above 21 °C", label: "x" }));
  const limit = /class="d-heavy" x1="([\d.]+%)"/.exec(text)[1];
  assert.match(text, new RegExp(`x="${limit}" y="41" dx="-4" text-anchor="end">resin 19.2<`));
});

test("temperature rule draws without a limit and below zero", () => assert.match(words(sound(tempRule({ id: "t", temps: [{ name: "air", celsius: -2.5 }], label: "x" }))), /air \u22122\.5/));

const T = Date.UTC(2026, 9, 14, 8, 30);
const chart = { id: "c", window_bar: [1.1, 1.4], from_ms: T, to_ms: T + 80 * 60e3, offset_min: 120, label: "x" };

test("hold chart: a gap is dashed and named in whole minutes, the rest is solid", () => {
  const text = sound(holdChart({ ...chart, readings: [0, 8, 21, 30].map((m) => ({ at_ms: T + m * 60e3, bar: 1.2 })), gaps: [{ from_ms: T + 8 * 60e3, to_ms: T + 20.2 * 60e3 }], now_ms: T + 40 * 60e3, release_ms: T + 70 * 60e3 }));
  assert.equal(text.match(/class="d-heavy"/g).length, 2);
  assert.match(words(text), /1\.40 upper limit 1\.10 lower limit 13 min 11:10 release/);
  assert.match(words(text), /10:30 .*11:40/);
});

test("hold chart: a reading outside the window has another shape and lies inside the drawing", () => {
  const text = sound(holdChart({ ...chart, readings: [{ at_ms: T, bar: 1.2 }, { at_ms: T + 6e5, bar: 0.3 }] }));
  const y = Number(/y="([\d.]+)" width="1" height="1"><path class="d-trouble"/.exec(text)[1]);
  assert.ok(y > 0 && y < 146, `y ${y}`);
});

test("hold chart: the line of the release lies behind the names of the limits", () => {
  const text = sound(holdChart({ ...chart, readings: [], release_ms: T + 70 * 60e3 }));
  const [release, upper, lower] = ['class="d-dash"', "upper limit", "lower limit"].map((part) => text.indexOf(part));
  assert.ok(release > 0 && release < upper && release < lower, `${release} ${upper} ${lower}`);
});

test("hold chart draws with no reading yet", () => sound(holdChart({ ...chart, readings: [] })));

test("edges: crown above, invert below, every finding named", () => {
  const text = sound(edges({ from_m: 17.66, to_m: 18.26, label: "x", found: [{ kind: "fold", at_m: 17.9, hour: 7, says: "fold, 2 mm, 7 h" }, { kind: "lateral", at_m: 18.15, hour: 10, says: "lateral, 10 h" }, { kind: "lift", at_m: 17.7, hour: 12, says: "lift" }] }));
  assert.match(text, /y="121" width="1"/);
  assert.match(text, /y="30" width="1"/);
  assert.match(words(text), /fold, 2 mm, 7 h .*17\.66 m 18\.26 m upstream edge downstream edge/);
});

test("places: four answers, each with its drawing and its words", () => {
  const text = sound(places((place) => ({ href: `#/${place}` })));
  assert.equal(PLACES.length, 4);
  assert.equal(words(text), "On the table In the pipe, not expanded Touching the wall Stuck");
});

test("scale: a value outside its window has the alarm's shape, and stays on the rule", () => {
  const of = (value) => sound(scale({ from: 1, to: 1.5, every: 0.1, long: 0.5, window: [1.1, 1.4], value, label: "x", left: "1.00", right: "1.50", says: "y" }));
  assert.match(of(1.21), /x="42%" y="9"[^>]*><path class="d-patch"/);
  assert.match(of(1.45), /class="d-trouble"/);
  assert.match(of(9), /x="100%" y="9"[^>]*><path class="d-trouble"/);
  assert.doesNotMatch(of(Number.NaN), /d-patch|d-trouble/);
  assert.match(sound(scale({ from: 0, to: 10, every: 1, long: 5, limit: 6, value: 7, label: "x", left: "0", right: "10 mm", says: "over" })), /d-trouble/);
});

// Worked example of the design's plan screen: 190 mm nominal less 19, 10 and 5 leaves 156.
test("sum rule: what is left, then the errors, end to end", () => {
  const text = sound(sumRule({ id: "s", nominal: 190, left: 156, errors: [19, 10, 5], asked: 150, label: "x" }));
  assert.match(text, /<rect x="0" y="10" width="82\.11%" height="26" class="d-patch"/);
  assert.match(text, /x="82\.11%" y="10" width="10%"/);
  assert.match(text, /x="97\.37%" y="10" width="2\.63%"/);
  assert.match(sound(sumRule({ id: "s", nominal: 140, left: 106, errors: [34], asked: 150, label: "x" })), /width="70\.67%" height="26" class="d-trouble"/);
  sound(sumRule({ id: "s", nominal: 20, left: -14, errors: [34], asked: 150, label: "x" }));
});

test("chain: a long record is ticked in tens, the head stands at its end", () => {
  assert.ok(sound(chain({ entries: 214, label: "x" })).match(/<line/g).length > 200);
  assert.ok(sound(chain({ entries: 42_100, label: "x" })).match(/<line/g).length < 500);
  assert.match(words(sound(chain({ entries: 4210, label: "x" }))), /^1000 2000 3000 4210 head$/);
  assert.match(words(sound(chain({ entries: 214, label: "x", flags: [{ entry: 1, name: "planned" }], broken: { entry: 140, says: "page 2" } }))), /214 planned head page 2/);
});

test("time line: marks in order, the one that asks for a decision wears the accent", () => {
  const text = sound(timeLine({ id: "tl", from_ms: T, to_ms: T + 6 * 3600e3, offset_min: 120, label: "x", attempts: [{ name: "Attempt 1", failed: true, spans: [{ from_ms: T, to_ms: T + 36e5 }] }], marks: [{ at_ms: T + 36e5, n: 1 }, { at_ms: T + 72e5, n: 2, needs: true }] }));
  assert.match(text, /class="d-strike"/);
  assert.deepEqual(text.match(/<circle class="d-patch"|<g class="only-\w+"/g), ['<g class="only-wide"', '<circle class="d-patch"', '<g class="only-narrow"', '<circle class="d-patch"']);
  assert.match(words(text), /Attempt 1 1 2 .*11:00/);
});

test("time line: minutes are named where an attempt took no longer", () => {
  assert.match(words(sound(timeLine({ id: "tl", from_ms: T, to_ms: T + 12 * 60e3, offset_min: 120, label: "x", attempts: [], marks: [] }))), /^(\d\d):(\d[05]) \1:\d[05]/);
});

test("time line: marks of one moment do not cover each other, on a phone either", () => {
  const text = sound(timeLine({ id: "tl", from_ms: T, to_ms: T + 6 * 3600e3, offset_min: 120, label: "x", attempts: [], marks: [1, 2, 3].map((n) => ({ at_ms: T + 36e5, n })) }));
  const places = [.../<g class="only-narrow">.*?<\/g>/s.exec(text)[0].matchAll(/<text class="t-bold" x="([\d.]+)%/g)].map(([, x]) => Number(x));
  assert.equal(places.length, 3);
  // A mark is 22 px wide, the line on a phone of 360 px 328.
  for (const i of [1, 2]) assert.ok(places[i] - places[i - 1] >= (100 * 22) / 328, `${places}`);
});

test("figure: caption below, or above", () => assert.equal(words(sound(figure({ inside: "x", above: "a", caption: "b", flush: true }))), "a x b"));
