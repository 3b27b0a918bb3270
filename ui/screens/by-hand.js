// A defect entered by hand, where there is no inspection file: as somebody saw it, from either node and looking either way.

import { html } from "../html.js";
import { form } from "../parts/action.js";
import { act, deck } from "../parts/deck.js";
import { entry } from "../parts/entry.js";
import { faces } from "../parts/faces.js";
import { field } from "../parts/field.js";
import { mast } from "../parts/mast.js";
import { page } from "../parts/page.js";
import { pair } from "../parts/pair.js";
import { section } from "../parts/section.js";
import { say } from "../text/say.js";
import { mirrored } from "../drawings/clock-face.js";
import { defectsView } from "../drawings/line.js";
import { figure } from "../drawings/svg.js";
import { inRecorded, typed as read } from "../format.js";
import { opened, sameHour } from "./opened.js";

export const title = () => say("hand.title");

const FORM = "by-hand";

/** Laterals that can be entered; an empty row is left out. */
const LATERALS = 8;

export function render(view) {
  const typed = view.drafts?.[FORM] ?? {};
  const node = (end) => typed[`seen.${end}`] || say(`hand.${end}`);
  return page({
    mast: mast({ title: title(), where: say("intake.title") }),
    main: html`<main>${form({ id: FORM, kind: "intake", then: "#/repair/{repair}/plan", does: { do: "enter_by_hand", seen: {} }, inside: html`
      ${drawn(typed)}<div class="intake-list">${line(typed)}${laterals(typed)}</div>
      <div class="intake-side">${section({ id: "hand-defect", title: say("hand.defect"), kind: "", inside: html`${text(typed, "words")}
        ${question(typed, "counted_from", [["upstream", node("upstream")], ["downstream", node("downstream")]])}
        ${metres(typed, "from_um", "from")}${metres(typed, "to_um", "to")}
        ${question(typed, "looking", [["downstream", say("face.downstream")], ["upstream", say("face.upstream")]])}
        ${hour(typed, "hour_from", say("hand.hour_from"))}${hour(typed, "hour_to", say("hand.hour_to"))}<p class="soft">${say("hand.clockwise")}</p>${clock(typed)}` })}
        ${sameHour(view, typed, "seen.same_hour")}${opened(view.contracts, typed)}</div>` })}</main>`,
    deck: deck({ act: act({ label: say("hand.act"), note: say("hand.act_note"), form: FORM }) }),
  });
}

const line = (typed) => section({ id: "hand-line", title: say("hand.line"), kind: "", inside: html`${["asset", "upstream", "downstream", "street"].map((name) => text(typed, name))}
  ${metres(typed, "length_um", "length")}${entry({ id: "height_um", name: "seen.height_um", label: say("hand.dn"), unit: "mm", steps: 1000, step: 25, min: 50, max: 3000, start: 200, value: typed["seen.height_um"] ?? "" })}
  ${["material", "carries"].map((name) => text(typed, name))}` });

// The line to scale as soon as its length is there, with what is entered so far, as it lies from the upstream node.
function drawn(typed) {
  const long = metresOf(typed, "length_um");
  if (!(long > 0)) return "";
  const from_top = (m) => (typed["seen.counted_from"] === "downstream" ? long - m : m);
  const spot = (m, more) => (m === null || m < 0 || m > long ? [] : [{ at_m: from_top(m), ...more }]);
  const [from, to] = [metresOf(typed, "from_um"), metresOf(typed, "to_um")];
  const middle = from === null ? to : to === null ? from : (from + to) / 2;
  const laterals = Array.from({ length: LATERALS }, (_, i) => spot(metresOf(typed, `laterals.${i}.station_um`), { name: say("line.lateral"), minor: true, ...ring(typed, `laterals.${i}.hour`) })).flat();
  const nodes = ["upstream", "downstream"].map((end) => typed[`seen.${end}`] || say(`hand.${end}`));
  return figure({ kind: "intake-draw", caption: say("hand.drawn", { node: nodes[0] }), inside: defectsView({
    nodes, length_m: long, observations: [...laterals, ...spot(middle, { name: say("hand.here"), picked: true, ...ring(typed, "hour_from", "hour_to") })], label: say("hand.drawing", { from: nodes[0], to: nodes[1] }),
  }) });
}

const metresOf = (typed, name) => inRecorded("m", typed[`seen.${name}`] ?? "");
const hourOf = (typed, name) => { const hour = read(typed[`seen.${name}`] ?? ""); return Number.isInteger(hour) && hour >= 1 && hour <= 12 ? hour : undefined; };
const facing = (typed) => typed["seen.looking"] ?? "downstream";

// The small clocks of the line are seen looking downstream.
function ring(typed, name, other) {
  const seen = (hour) => (hour === undefined || facing(typed) === "downstream" ? hour : mirrored(hour));
  const [from, to] = [seen(hourOf(typed, name)), other && seen(hourOf(typed, other))];
  if (from === undefined) return {};
  if (to === undefined || to === from) return { dots: [from] };
  return { arc: facing(typed) === "downstream" ? [from, to] : [to, from] };
}

// Both faces, so that the hour that was read is seen from either side.
function clock(typed) {
  const [from, to] = [hourOf(typed, "hour_from"), hourOf(typed, "hour_to")];
  const marks = from === undefined ? [] : [{ from, to, kind: to !== undefined && to !== from ? "defect" : "dot" }];
  return faces({ marks, recorded: facing(typed) });
}

// One row more than what is filled in, so that there is always a place for the next.
function laterals(typed) {
  const filled = Array.from({ length: LATERALS }, (_, i) => i).filter((i) => ["station_um", "hour", "diameter_um"].some((name) => typed[`seen.laterals.${i}.${name}`]));
  const rows = Math.min(LATERALS, (filled.at(-1) ?? -1) + 2);
  return section({ id: "hand-laterals", title: say("hand.laterals"), inside: html`<p class="soft">${say("hand.laterals_note")}</p>${Array.from({ length: rows }, (_, i) => html`<fieldset class="sheet-part"><legend>${say("hand.lateral", { n: i + 1 })}</legend>
    ${metres(typed, `laterals.${i}.station_um`, "station")}${hour(typed, `laterals.${i}.hour`, say("hand.hour"))}
    ${entry({ id: `laterals-${i}-diameter`, name: `seen.laterals.${i}.diameter_um`, label: say("hand.dn"), unit: "mm", steps: 1000, step: 25, min: 50, max: 1000, start: 100, value: typed[`seen.laterals.${i}.diameter_um`] ?? "" })}</fieldset>`)}` });
}

const text = (typed, name) => field({ id: `hand-${name}`, name: `seen.${name}`, label: say(`hand.${name}`), value: typed[`seen.${name}`] ?? "" });

const metres = (typed, name, label) => entry({ id: name.replaceAll(".", "-"), name: `seen.${name}`, label: say(`hand.${label}`), unit: "m", digits: 2, steps: 1_000_000, step: 0.01, min: 0, max: 5000, value: typed[`seen.${name}`] ?? "" });

const hour = (typed, name, label) => entry({ id: name.replaceAll(".", "-"), name: `seen.${name}`, label, unit: say("unit.hour"), step: 1, min: 1, max: 12, start: 12, value: typed[`seen.${name}`] ?? "" });

const question = (typed, name, options) => html`<p class="entry-label">${say(`hand.${name}`)}</p>${pair({ legend: say(`hand.${name}`), name: `seen.${name}`, quiet: true, picked: typed[`seen.${name}`] ?? options[0][0], options: options.map(([value, label]) => ({ value, label })) })}`;
