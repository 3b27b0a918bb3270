// A defect entered by hand, where there is no inspection file: as somebody saw it, from either node and looking either way.

import { html } from "../html.js";
import { form } from "../parts/action.js";
import { act, deck } from "../parts/deck.js";
import { entry } from "../parts/entry.js";
import { field } from "../parts/field.js";
import { mast } from "../parts/mast.js";
import { page } from "../parts/page.js";
import { pair } from "../parts/pair.js";
import { section } from "../parts/section.js";
import { say } from "../text/say.js";
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
      <div class="intake-list">${line(typed)}${laterals(typed)}</div>
      <div class="intake-side">${section({ id: "hand-defect", title: say("hand.defect"), kind: "", inside: html`${text(typed, "words")}
        ${question(typed, "counted_from", [["upstream", node("upstream")], ["downstream", node("downstream")]])}
        ${metres(typed, "from_um", "from")}${metres(typed, "to_um", "to")}
        ${question(typed, "looking", [["downstream", say("face.downstream")], ["upstream", say("face.upstream")]])}
        ${hour(typed, "hour_from", say("hand.hour_from"))}${hour(typed, "hour_to", say("hand.hour_to"))}<p class="soft">${say("hand.clockwise")}</p>` })}
        ${sameHour(view, typed, "seen.same_hour")}${opened(view.contracts, typed)}</div>` })}</main>`,
    deck: deck({ act: act({ label: say("hand.act"), note: say("hand.act_note"), form: FORM }) }),
  });
}

const line = (typed) => section({ id: "hand-line", title: say("hand.line"), kind: "", inside: html`${["asset", "upstream", "downstream", "street"].map((name) => text(typed, name))}
  ${metres(typed, "length_um", "length")}${entry({ id: "height_um", name: "seen.height_um", label: say("hand.dn"), unit: "mm", steps: 1000, step: 25, min: 50, max: 3000, start: 200, value: typed["seen.height_um"] ?? "" })}
  ${["material", "carries"].map((name) => text(typed, name))}` });

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
